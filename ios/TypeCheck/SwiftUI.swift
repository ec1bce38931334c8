// This is not SwiftUI. It declares, by hand and from its public documentation, those parts of SwiftUI that the app uses, as
// signatures only, so that the app's views can be type-checked where there is no SwiftUI: it finds wrong names and types of
// our own models in them. Nothing here runs; what a view looks like, only an Apple machine can tell.

@_exported import Foundation
@_exported import Observation

private func notSwiftUI() -> Never { fatalError("declarations to check types against; see the top of this file") }

// MARK: Views

@MainActor @preconcurrency public protocol View {
    associatedtype Body: View
    @ViewBuilder var body: Body { get }
}

extension Never: View {
    public typealias Body = Never
    public var body: Never { notSwiftUI() }
}

public struct Drawn: View {
    public typealias Body = Never
    nonisolated public init() { notSwiftUI() }
    public var body: Never { notSwiftUI() }
}

public protocol Primitive: View where Body == Never {}
extension Primitive {
    public var body: Never { notSwiftUI() }
}

extension Optional: View where Wrapped: View {
    public typealias Body = Never
    public var body: Never { notSwiftUI() }
}

public struct TupleView<Content>: Primitive {}
public struct EmptyView: Primitive { nonisolated public init() { notSwiftUI() } }
public struct ConditionalContent<A, B>: Primitive {}

@resultBuilder public struct ViewBuilder {
    public static func buildBlock() -> EmptyView { notSwiftUI() }
    public static func buildBlock<C: View>(_ content: C) -> C { notSwiftUI() }
    public static func buildBlock<each C: View>(_ content: repeat each C) -> TupleView<(repeat each C)> { notSwiftUI() }
    public static func buildExpression<C: View>(_ content: C) -> C { notSwiftUI() }
    public static func buildIf<C: View>(_ content: C?) -> C? { notSwiftUI() }
    public static func buildEither<A: View, B: View>(first: A) -> ConditionalContent<A, B> { notSwiftUI() }
    public static func buildEither<A: View, B: View>(second: B) -> ConditionalContent<A, B> { notSwiftUI() }
}

public struct Group<Content: View>: Primitive {
    public init(@ViewBuilder content: () -> Content) { notSwiftUI() }
}

public struct HStack<Content: View>: Primitive {
    public init(alignment: VerticalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content) {
        notSwiftUI()
    }
}
public struct VStack<Content: View>: Primitive {
    public init(alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content)
    {
        notSwiftUI()
    }
}
public struct ZStack<Content: View>: Primitive {
    public init(alignment: Alignment = .center, @ViewBuilder content: () -> Content) { notSwiftUI() }
}
public struct Grid<Content: View>: Primitive {
    public init(
        alignment: Alignment = .center, horizontalSpacing: CGFloat? = nil, verticalSpacing: CGFloat? = nil,
        @ViewBuilder content: () -> Content
    ) { notSwiftUI() }
}
public struct GridRow<Content: View>: Primitive {
    public init(alignment: VerticalAlignment? = nil, @ViewBuilder content: () -> Content) { notSwiftUI() }
}
public struct GridItem: Sendable {
    public enum Size: Sendable {
        case adaptive(minimum: CGFloat, maximum: CGFloat = .infinity)
        case flexible(minimum: CGFloat = 10, maximum: CGFloat = .infinity)
    }
    public init(_ size: Size, spacing: CGFloat? = nil, alignment: Alignment? = nil) { notSwiftUI() }
}
public struct LazyVGrid<Content: View>: Primitive {
    public init(
        columns: [GridItem], alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil,
        @ViewBuilder content: () -> Content
    ) { notSwiftUI() }
}
public struct ViewThatFits<Content: View>: Primitive {
    public init(in axes: Axis.Set = [.horizontal, .vertical], @ViewBuilder content: () -> Content) { notSwiftUI() }
}
public struct GeometryReader<Content: View>: Primitive {
    public init(@ViewBuilder content: @escaping (GeometryProxy) -> Content) { notSwiftUI() }
}
public struct Spacer: Primitive { public init(minLength: CGFloat? = nil) { notSwiftUI() } }

public struct ForEach<Data: RandomAccessCollection, ID: Hashable, Content: View>: Primitive {
    public init(_ data: Data, @ViewBuilder content: @escaping (Data.Element) -> Content)
    where Data.Element: Identifiable, ID == Data.Element.ID { notSwiftUI() }
    public init(
        _ data: Data, id: KeyPath<Data.Element, ID>, @ViewBuilder content: @escaping (Data.Element) -> Content
    ) { notSwiftUI() }
}

public struct List<Content: View>: Primitive {
    public init(@ViewBuilder content: () -> Content) { notSwiftUI() }
    public init<Data: RandomAccessCollection>(
        _ data: Data, @ViewBuilder rowContent: @escaping (Data.Element) -> Content
    ) where Data.Element: Identifiable { notSwiftUI() }
}
public struct Section<Parent: View, Content: View, Footer: View>: Primitive {
    public init(@ViewBuilder content: () -> Content) where Parent == EmptyView, Footer == EmptyView { notSwiftUI() }
    public init(_ title: some StringProtocol, @ViewBuilder content: () -> Content)
    where Parent == Text, Footer == EmptyView { notSwiftUI() }
    public init(@ViewBuilder content: () -> Content, @ViewBuilder header: () -> Parent) where Footer == EmptyView {
        notSwiftUI()
    }
}
public struct ScrollView<Content: View>: Primitive {
    public init(_ axes: Axis.Set = .vertical, showsIndicators: Bool = true, @ViewBuilder content: () -> Content) {
        notSwiftUI()
    }
}
public struct ScrollViewProxy {
    @MainActor public func scrollTo<ID: Hashable>(_ id: ID, anchor: UnitPoint? = nil) { notSwiftUI() }
}
public struct ScrollViewReader<Content: View>: Primitive {
    public init(@ViewBuilder content: @escaping (ScrollViewProxy) -> Content) { notSwiftUI() }
}
public struct GeometryProxy: Sendable { public var size: CGSize { notSwiftUI() } }

public struct NavigationStack<Data, Root: View>: Primitive {
    public init(@ViewBuilder root: () -> Root) where Data == Never { notSwiftUI() }
    public init(path: Binding<Data>, @ViewBuilder root: () -> Root)
    where Data: MutableCollection & RandomAccessCollection & RangeReplaceableCollection, Data.Element: Hashable {
        notSwiftUI()
    }
}
public struct NavigationSplitView<Sidebar: View, Detail: View>: Primitive {
    public init(@ViewBuilder sidebar: () -> Sidebar, @ViewBuilder detail: () -> Detail) { notSwiftUI() }
}
public struct TabView<Selection: Hashable, Content: View>: Primitive {
    public init(selection: Binding<Selection>?, @ViewBuilder content: () -> Content) { notSwiftUI() }
}

// MARK: What one sees

public struct Text: Primitive {
    public init(_ words: some StringProtocol) { notSwiftUI() }
    public init(_ image: Image) { notSwiftUI() }
    public enum Case: Sendable { case uppercase, lowercase }
    public func font(_ font: Font?) -> Text { notSwiftUI() }
    public func foregroundStyle(_ style: some ShapeStyle) -> Text { notSwiftUI() }
}
public struct Image: Primitive {
    nonisolated public init(systemName: String) { notSwiftUI() }
    public init(uiImage: UIImageStandIn) { notSwiftUI() }
    public func resizable() -> Image { notSwiftUI() }
}
/// UIKit's UIImage: that module is built upon this one, and the class must be known here already.
public final class UIImageStandIn: Sendable {
    public var size: CGSize { notSwiftUI() }
    public init() { notSwiftUI() }
}
public struct Label<Title: View, Icon: View>: Primitive {
    public init(_ title: some StringProtocol, systemImage: String) where Title == Text, Icon == Image { notSwiftUI() }
}
public struct LabeledContent<Label: View, Content: View>: Primitive {
    public init(@ViewBuilder content: () -> Content, @ViewBuilder label: () -> Label) { notSwiftUI() }
}
public struct ProgressView<Label: View>: Primitive {
    public init(_ title: some StringProtocol) where Label == Text { notSwiftUI() }
    public init<V: BinaryFloatingPoint>(value: V?, total: V = 1.0) where Label == EmptyView { notSwiftUI() }
}
public struct ButtonRole: Sendable {
    public static var cancel: ButtonRole { notSwiftUI() }
    public static var destructive: ButtonRole { notSwiftUI() }
}
public struct Button<Label: View>: Primitive {
    public init(action: @escaping @MainActor () -> Void, @ViewBuilder label: () -> Label) { notSwiftUI() }
    public init(_ title: some StringProtocol, action: @escaping @MainActor () -> Void) where Label == Text {
        notSwiftUI()
    }
    public init(_ title: some StringProtocol, role: ButtonRole?, action: @escaping @MainActor () -> Void)
    where Label == Text { notSwiftUI() }
}
public struct DatePickerComponents: OptionSet, Sendable {
    public let rawValue: UInt
    public init(rawValue: UInt) { self.rawValue = rawValue }
    public static let date = DatePickerComponents(rawValue: 1)
}
public struct DatePicker: Primitive {
    public init(
        _ title: String, selection: Binding<Date>, displayedComponents: DatePickerComponents = .date
    ) { notSwiftUI() }
}
public struct Toggle<Label: View>: Primitive {
    public init(_ title: some StringProtocol, isOn: Binding<Bool>) where Label == Text { notSwiftUI() }
}
public struct TextField<Label: View>: Primitive {
    public init(_ title: some StringProtocol, text: Binding<String>) where Label == Text { notSwiftUI() }
    public init(_ title: some StringProtocol, text: Binding<String>, axis: Axis) where Label == Text { notSwiftUI() }
}

public struct SecureField<Label: View>: Primitive {
    public init(_ title: some StringProtocol, text: Binding<String>) where Label == Text { notSwiftUI() }
}

public struct Color: Sendable, Hashable, ShapeStyle {
    public init(uiColor: UIColorStandIn) { notSwiftUI() }
    public static var clear: Color { notSwiftUI() }
    public static var black: Color { notSwiftUI() }
    public static var white: Color { notSwiftUI() }
    public static var gray: Color { notSwiftUI() }
    public func opacity(_ opacity: Double) -> Color { notSwiftUI() }
}
extension Color: Primitive {}
/// UIKit's UIColor, as for UIImage.
open class UIColorStandIn: @unchecked Sendable {
    public init() { notSwiftUI() }
}
public protocol ShapeStyle: Sendable {}
extension ShapeStyle where Self == Color {
    public static var clear: Color { notSwiftUI() }
    public static var black: Color { notSwiftUI() }
    public static var white: Color { notSwiftUI() }
    public static var gray: Color { notSwiftUI() }
}

public struct Font: Sendable {
    public enum Design: Sendable { case `default`, rounded, monospaced, serif }
    public enum TextStyle: Sendable {
        case largeTitle, title, title2, title3, headline, subheadline, body, callout, footnote, caption, caption2
    }
    public struct Weight: Sendable {
        public static var regular: Weight { notSwiftUI() }
        public static var medium: Weight { notSwiftUI() }
        public static var semibold: Weight { notSwiftUI() }
        public static var bold: Weight { notSwiftUI() }
    }
    public static func system(_ style: TextStyle, design: Design? = nil, weight: Weight? = nil) -> Font { notSwiftUI() }
    public static func system(size: CGFloat, weight: Weight? = nil, design: Design? = nil) -> Font { notSwiftUI() }
    public static var largeTitle: Font { notSwiftUI() }
    public static var title: Font { notSwiftUI() }
    public static var title2: Font { notSwiftUI() }
    public static var title3: Font { notSwiftUI() }
    public static var headline: Font { notSwiftUI() }
    public static var subheadline: Font { notSwiftUI() }
    public static var body: Font { notSwiftUI() }
    public static var footnote: Font { notSwiftUI() }
    public static var caption: Font { notSwiftUI() }
    public func weight(_ weight: Weight) -> Font { notSwiftUI() }
    public func monospacedDigit() -> Font { notSwiftUI() }
    public func monospaced() -> Font { notSwiftUI() }
}

// MARK: Shapes and drawing

public protocol Shape: View, Sendable {}
extension Shape {
    public var body: Never { notSwiftUI() }
    public func fill(_ style: some ShapeStyle) -> some View { Drawn() }
    public func stroke(_ style: some ShapeStyle, lineWidth: CGFloat = 1) -> some View { Drawn() }
}
public struct Circle: Shape { nonisolated public init() { notSwiftUI() } }
public struct Capsule: Shape { nonisolated public init() { notSwiftUI() } }
public struct Rectangle: Shape { nonisolated public init() { notSwiftUI() } }
public struct RoundedRectangle: Shape { nonisolated public init(cornerRadius: CGFloat) { notSwiftUI() } }

public enum CGLineCap: Sendable { case butt, round, square }
public enum CGLineJoin: Sendable { case miter, round, bevel }
public struct StrokeStyle: Sendable {
    public init(
        lineWidth: CGFloat = 1, lineCap: CGLineCap = .butt, lineJoin: CGLineJoin = .miter, miterLimit: CGFloat = 10,
        dash: [CGFloat] = [], dashPhase: CGFloat = 0
    ) { notSwiftUI() }
}
public struct Angle: Sendable {
    public static func degrees(_ degrees: Double) -> Angle { notSwiftUI() }
}
public struct Path: Sendable {
    public init() { notSwiftUI() }
    public init(roundedRect: CGRect, cornerRadius: CGFloat) { notSwiftUI() }
    public init(ellipseIn: CGRect) { notSwiftUI() }
    public var boundingRect: CGRect { notSwiftUI() }
    public mutating func move(to: CGPoint) { notSwiftUI() }
    public mutating func addLine(to: CGPoint) { notSwiftUI() }
    public mutating func addLines(_ lines: [CGPoint]) { notSwiftUI() }
    public mutating func addCurve(to: CGPoint, control1: CGPoint, control2: CGPoint) { notSwiftUI() }
    public mutating func addArc(
        center: CGPoint, radius: CGFloat, startAngle: Angle, endAngle: Angle, clockwise: Bool
    ) { notSwiftUI() }
    public mutating func closeSubpath() { notSwiftUI() }
}
public struct GraphicsContext {
    public struct Shading: Sendable {
        public static func color(_ color: Color) -> Shading { notSwiftUI() }
    }
    public struct ResolvedText {
        public func measure(in size: CGSize) -> CGSize { notSwiftUI() }
    }
    public func resolve(_ text: Text) -> ResolvedText { notSwiftUI() }
    public func draw(_ text: ResolvedText, at: CGPoint, anchor: UnitPoint = .center) { notSwiftUI() }
    public func fill(_ path: Path, with shading: Shading) { notSwiftUI() }
    public func stroke(_ path: Path, with shading: Shading, lineWidth: CGFloat = 1) { notSwiftUI() }
    public func stroke(_ path: Path, with shading: Shading, style: StrokeStyle) { notSwiftUI() }
    public mutating func clip(to path: Path) { notSwiftUI() }
    public mutating func translateBy(x: CGFloat, y: CGFloat) { notSwiftUI() }
    public mutating func scaleBy(x: CGFloat, y: CGFloat) { notSwiftUI() }
}
public struct Canvas: Primitive {
    public init(renderer: @escaping (inout GraphicsContext, CGSize) -> Void) { notSwiftUI() }
}
@MainActor public final class ImageRenderer<Content: View> {
    public init(content: Content) { notSwiftUI() }
    public var scale: CGFloat {
        get { notSwiftUI() }
        set { notSwiftUI() }
    }
    public var uiImage: UIImageStandIn? { notSwiftUI() }
}

// MARK: Layout

public struct Axis: Sendable {
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int8
        public init(rawValue: Int8) { self.rawValue = rawValue }
        public static var horizontal: Set { notSwiftUI() }
        public static var vertical: Set { notSwiftUI() }
    }
    public static var horizontal: Axis { notSwiftUI() }
    public static var vertical: Axis { notSwiftUI() }
}
public enum Edge: Sendable {
    case top, leading, bottom, trailing
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int8
        public init(rawValue: Int8) { self.rawValue = rawValue }
        public static var all: Set { notSwiftUI() }
        public static var top: Set { notSwiftUI() }
        public static var bottom: Set { notSwiftUI() }
        public static var horizontal: Set { notSwiftUI() }
        public static var vertical: Set { notSwiftUI() }
    }
}
public enum VerticalEdge: Sendable { case top, bottom }
public struct Alignment: Sendable {
    public static var center: Alignment { notSwiftUI() }
    public static var leading: Alignment { notSwiftUI() }
    public static var trailing: Alignment { notSwiftUI() }
    public static var topLeading: Alignment { notSwiftUI() }
}
public struct HorizontalAlignment: Sendable {
    public static var leading: HorizontalAlignment { notSwiftUI() }
    public static var center: HorizontalAlignment { notSwiftUI() }
}
public struct VerticalAlignment: Sendable {
    public static var top: VerticalAlignment { notSwiftUI() }
    public static var center: VerticalAlignment { notSwiftUI() }
    public static var bottom: VerticalAlignment { notSwiftUI() }
    public static var firstTextBaseline: VerticalAlignment { notSwiftUI() }
}
public enum TextAlignment: Sendable { case leading, center, trailing }
public enum ContentMode: Sendable { case fit, fill }
public struct UnitPoint: Sendable {
    public static var center: UnitPoint { notSwiftUI() }
    public static var topLeading: UnitPoint { notSwiftUI() }
    public static var topTrailing: UnitPoint { notSwiftUI() }
    public static var trailing: UnitPoint { notSwiftUI() }
}
public struct ProposedViewSize: Sendable {
    public var width: CGFloat?
    public var height: CGFloat?
    public init(width: CGFloat?, height: CGFloat?) { notSwiftUI() }
    public init(_ size: CGSize) { notSwiftUI() }
}
public struct LayoutSubview {
    public func sizeThatFits(_ proposal: ProposedViewSize) -> CGSize { notSwiftUI() }
    public func place(at: CGPoint, anchor: UnitPoint = .topLeading, proposal: ProposedViewSize) { notSwiftUI() }
}
public struct LayoutSubviews: RandomAccessCollection {
    public var startIndex: Int { notSwiftUI() }
    public var endIndex: Int { notSwiftUI() }
    public subscript(index: Int) -> LayoutSubview { notSwiftUI() }
}
public protocol Layout: Sendable {
    typealias Subviews = LayoutSubviews
    func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize
    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ())
}
extension Layout {
    @MainActor public func callAsFunction<V: View>(@ViewBuilder _ content: () -> V) -> some View { Drawn() }
}

// MARK: State

@propertyWrapper public struct Binding<Value> {
    public init(get: @escaping @MainActor () -> Value, set: @escaping @MainActor (Value) -> Void) { notSwiftUI() }
    public var wrappedValue: Value {
        get { notSwiftUI() }
        nonmutating set { notSwiftUI() }
    }
    public var projectedValue: Binding<Value> { notSwiftUI() }
}
@propertyWrapper public struct State<Value> {
    public init(wrappedValue: Value) { notSwiftUI() }
    public init(initialValue: Value) { notSwiftUI() }
    public var wrappedValue: Value {
        get { notSwiftUI() }
        nonmutating set { notSwiftUI() }
    }
    public var projectedValue: Binding<Value> { notSwiftUI() }
}
extension State where Value: ExpressibleByNilLiteral {
    public init() { notSwiftUI() }
}
@propertyWrapper public struct SceneStorage<Value> {
    public init(_ key: String) where Value == Data? { notSwiftUI() }
    public var wrappedValue: Value {
        get { notSwiftUI() }
        nonmutating set { notSwiftUI() }
    }
    public var projectedValue: Binding<Value> { notSwiftUI() }
}
@propertyWrapper public struct ScaledMetric<Value: BinaryFloatingPoint> {
    public init(wrappedValue: Value, relativeTo: Font.TextStyle) { notSwiftUI() }
    public var wrappedValue: Value { notSwiftUI() }
}
@propertyWrapper public struct FocusState<Value: Hashable> {
    @propertyWrapper public struct Binding {
        public init() { notSwiftUI() }
        public var wrappedValue: Value {
            get { notSwiftUI() }
            nonmutating set { notSwiftUI() }
        }
        public var projectedValue: FocusState<Value>.Binding { notSwiftUI() }
    }
    public init() where Value == Bool { notSwiftUI() }
    public init<T: Hashable>() where Value == T? { notSwiftUI() }
    public var wrappedValue: Value {
        get { notSwiftUI() }
        nonmutating set { notSwiftUI() }
    }
    public var projectedValue: FocusState<Value>.Binding { notSwiftUI() }
}
@propertyWrapper public struct Environment<Value> {
    public init(_ key: KeyPath<EnvironmentValues, Value>) { notSwiftUI() }
    public init(_ type: Value.Type) where Value: AnyObject & Observable { notSwiftUI() }
    public var wrappedValue: Value { notSwiftUI() }
}
public protocol EnvironmentKey {
    associatedtype Value
    static var defaultValue: Value { get }
}
public struct EnvironmentValues {
    public subscript<K: EnvironmentKey>(key: K.Type) -> K.Value {
        get { notSwiftUI() }
        set { notSwiftUI() }
    }
    public var dismiss: DismissAction { notSwiftUI() }
    public var scenePhase: ScenePhase { notSwiftUI() }
    public var isEnabled: Bool { notSwiftUI() }
    public var dynamicTypeSize: DynamicTypeSize { notSwiftUI() }
    public var displayScale: CGFloat { notSwiftUI() }
    public var horizontalSizeClass: UserInterfaceSizeClass? { notSwiftUI() }
    public var verticalSizeClass: UserInterfaceSizeClass? { notSwiftUI() }
    public var colorScheme: ColorScheme {
        get { notSwiftUI() }
        set { notSwiftUI() }
    }
}
@MainActor public struct DismissAction { public func callAsFunction() { notSwiftUI() } }
public enum ScenePhase: Sendable { case background, inactive, active }
public enum UserInterfaceSizeClass: Sendable { case compact, regular }
public enum ColorScheme: Sendable { case light, dark }

// MARK: The app

@MainActor @preconcurrency public protocol App {
    associatedtype Body: Scene
    @SceneBuilder var body: Body { get }
    init()
}
extension App {
    public static func main() { notSwiftUI() }
}
@MainActor @preconcurrency public protocol Scene {}
extension Scene {
    public func onChange<V: Equatable>(
        of value: V, initial: Bool = false, _ act: @escaping (_ before: V, _ now: V) -> Void
    ) -> some Scene { SceneStandIn() }
}
public struct SceneStandIn: Scene {}
@resultBuilder public struct SceneBuilder {
    public static func buildBlock<C: Scene>(_ content: C) -> C { notSwiftUI() }
}
public struct WindowGroup<Content: View>: Scene {
    public init(@ViewBuilder content: () -> Content) { notSwiftUI() }
}

// MARK: Modifiers

@MainActor @preconcurrency public protocol ViewModifier {
    typealias Content = Drawn
    associatedtype Body: View
    @ViewBuilder func body(content: Content) -> Body
}
public protocol PrimitiveButtonStyle {}
public struct PlainButtonStyle: PrimitiveButtonStyle {}
public struct BorderedButtonStyle: PrimitiveButtonStyle {}
public struct BorderedProminentButtonStyle: PrimitiveButtonStyle {}
extension PrimitiveButtonStyle where Self == PlainButtonStyle {
    public static var plain: PlainButtonStyle { notSwiftUI() }
}
extension PrimitiveButtonStyle where Self == BorderedButtonStyle {
    public static var bordered: BorderedButtonStyle { notSwiftUI() }
}
extension PrimitiveButtonStyle where Self == BorderedProminentButtonStyle {
    public static var borderedProminent: BorderedProminentButtonStyle { notSwiftUI() }
}
public struct InsetGroupedListStyle {
    public static var insetGrouped: InsetGroupedListStyle { notSwiftUI() }
}
public enum ControlSize: Sendable { case mini, small, regular, large }
public enum Visibility: Sendable { case automatic, visible, hidden }
public enum NavigationBarItem {
    public enum TitleDisplayMode: Sendable { case automatic, inline, large }
}
public struct ToolbarPlacement: Sendable {
    public static var navigationBar: ToolbarPlacement { notSwiftUI() }
    public static var tabBar: ToolbarPlacement { notSwiftUI() }
}
public struct ToolbarItemPlacement: Sendable {
    public static var cancellationAction: ToolbarItemPlacement { notSwiftUI() }
    public static var destructiveAction: ToolbarItemPlacement { notSwiftUI() }
    public static var primaryAction: ToolbarItemPlacement { notSwiftUI() }
}
public protocol ToolbarContent {}
public struct ToolbarItem<Content: View>: ToolbarContent {
    @MainActor public init(placement: ToolbarItemPlacement, @ViewBuilder content: () -> Content) { notSwiftUI() }
}
extension Optional: ToolbarContent where Wrapped: ToolbarContent {}
public struct ToolbarItems: ToolbarContent {}
@resultBuilder public struct ToolbarContentBuilder {
    public static func buildExpression<C: ToolbarContent>(_ content: C) -> C { notSwiftUI() }
    public static func buildBlock<each C: ToolbarContent>(_ content: repeat each C) -> ToolbarItems { notSwiftUI() }
    public static func buildIf<C: ToolbarContent>(_ content: C?) -> C? { notSwiftUI() }
}
public struct PresentationDetent: Hashable, Sendable {
    public static let medium = PresentationDetent()
    public static let large = PresentationDetent()
}
public enum ScrollDismissesKeyboardMode: Sendable { case automatic, interactively }
public struct TextInputAutocapitalization: Sendable {
    public static var never: TextInputAutocapitalization { notSwiftUI() }
    public static var sentences: TextInputAutocapitalization { notSwiftUI() }
    public static var characters: TextInputAutocapitalization { notSwiftUI() }
}
// swift-format-ignore: AlwaysUseLowerCamelCase
public enum UIKeyboardType: Sendable { case `default`, numbersAndPunctuation, decimalPad, URL }
public enum DynamicTypeSize: Comparable, Sendable { case large, xLarge, xxLarge, xxxLarge, accessibility1 }
public struct AccessibilityTraits: OptionSet, Sendable {
    public let rawValue: Int
    public init(rawValue: Int) { self.rawValue = rawValue }
    public static let isSelected = AccessibilityTraits(rawValue: 1)
    public static let isImage = AccessibilityTraits(rawValue: 2)
    public static let updatesFrequently = AccessibilityTraits(rawValue: 4)
}
public enum AccessibilityChildBehavior: Sendable { case ignore, contain, combine }
public struct SensoryFeedback: Equatable, Sendable {
    public struct Weight: Equatable, Sendable {
        public static let light = Weight()
        public static let medium = Weight()
    }
    public static let success = SensoryFeedback()
    public static let warning = SensoryFeedback()
    public static func impact(weight: Weight = .medium, intensity: Double = 1) -> SensoryFeedback { notSwiftUI() }
}

public protocol Gesture<Value> { associatedtype Value }
public struct Watched<Value>: Gesture {}
public struct Transaction {}
@propertyWrapper public struct GestureState<Value> {
    public init(wrappedValue: Value) { notSwiftUI() }
    public var wrappedValue: Value { notSwiftUI() }
    public var projectedValue: GestureState<Value> { notSwiftUI() }
}
extension Gesture {
    public func updating<State>(
        _ state: GestureState<State>, body: @escaping (Value, inout State, inout Transaction) -> Void
    ) -> Watched<Value> { notSwiftUI() }
    public func onEnded(_ act: @escaping @MainActor (Value) -> Void) -> Watched<Value> { notSwiftUI() }
    public func onChanged(_ act: @escaping @MainActor (Value) -> Void) -> Watched<Value> { notSwiftUI() }
}
public struct LongPressGesture: Gesture {
    public typealias Value = Bool
    public init(minimumDuration: Double = 0.5) { notSwiftUI() }
}
extension Gesture {
    public func sequenced<Other: Gesture>(before other: Other) -> SequenceGesture<Self, Other> { notSwiftUI() }
}
public struct SequenceGesture<First: Gesture, Second: Gesture>: Gesture {
    public enum Value {
        case first(First.Value)
        case second(First.Value, Second.Value?)
    }
}
public struct MagnifyGesture: Gesture {
    public struct Value: Sendable {
        public var magnification: CGFloat
    }
    public init(minimumScaleDelta: CGFloat = 0.01) { notSwiftUI() }
}
public struct DragGesture: Gesture {
    public struct Value: Sendable {
        public var startLocation: CGPoint
        public var location: CGPoint
        public var translation: CGSize
    }
    public init(minimumDistance: CGFloat = 10, coordinateSpace: CoordinateSpace = .local) { notSwiftUI() }
}
public enum CoordinateSpace: Sendable { case local, global }

@MainActor public func withAnimation<Result>(_ body: () throws -> Result) rethrows -> Result { notSwiftUI() }

extension View {
    public func padding(_ edges: Edge.Set = .all, _ length: CGFloat? = nil) -> some View { Drawn() }
    public func padding(_ length: CGFloat) -> some View { Drawn() }
    public func frame(width: CGFloat? = nil, height: CGFloat? = nil, alignment: Alignment = .center) -> some View {
        Drawn()
    }
    public func frame(
        minWidth: CGFloat? = nil, idealWidth: CGFloat? = nil, maxWidth: CGFloat? = nil, minHeight: CGFloat? = nil,
        idealHeight: CGFloat? = nil, maxHeight: CGFloat? = nil, alignment: Alignment = .center
    ) -> some View { Drawn() }
    public func position(x: CGFloat = 0, y: CGFloat = 0) -> some View { Drawn() }
    public func aspectRatio(_ ratio: CGFloat? = nil, contentMode: ContentMode) -> some View { Drawn() }
    public func scaledToFit() -> some View { Drawn() }
    public func ignoresSafeArea() -> some View { Drawn() }
    public func safeAreaInset<V: View>(edge: VerticalEdge, @ViewBuilder content: () -> V) -> some View { Drawn() }
    public func onGeometryChange<T: Equatable & Sendable>(
        for type: T.Type, of: @escaping @Sendable (GeometryProxy) -> T, action: @escaping (T) -> Void
    ) -> some View { Drawn() }
    public func id(_ id: some Hashable) -> some View { Drawn() }
    public func tag(_ tag: some Hashable) -> some View { Drawn() }

    public func font(_ font: Font?) -> some View { Drawn() }
    public func fontWeight(_ weight: Font.Weight?) -> some View { Drawn() }
    public func monospacedDigit() -> some View { Drawn() }
    public func lineLimit(_ number: Int?) -> some View { Drawn() }
    public func lineLimit(_ number: Int, reservesSpace: Bool) -> some View { Drawn() }
    public func minimumScaleFactor(_ factor: CGFloat) -> some View { Drawn() }
    public func multilineTextAlignment(_ alignment: TextAlignment) -> some View { Drawn() }
    public func textCase(_ letters: Text.Case?) -> some View { Drawn() }
    public func dynamicTypeSize(_ size: DynamicTypeSize) -> some View { Drawn() }
    public func dynamicTypeSize<R: RangeExpression>(_ sizes: R) -> some View where R.Bound == DynamicTypeSize {
        Drawn()
    }

    public func foregroundStyle(_ style: some ShapeStyle) -> some View { Drawn() }
    public func background(_ style: some ShapeStyle) -> some View { Drawn() }
    public func background(_ style: some ShapeStyle, in shape: some Shape) -> some View { Drawn() }
    public func overlay<V: View>(alignment: Alignment = .center, @ViewBuilder content: () -> V) -> some View { Drawn() }
    public func border(_ style: some ShapeStyle, width: CGFloat = 1) -> some View { Drawn() }
    public func opacity(_ opacity: Double) -> some View { Drawn() }
    public func tint(_ color: Color?) -> some View { Drawn() }
    public func contentShape(_ shape: some Shape) -> some View { Drawn() }

    public func buttonStyle(_ style: some PrimitiveButtonStyle) -> some View { Drawn() }
    public func controlSize(_ size: ControlSize) -> some View { Drawn() }
    public func disabled(_ disabled: Bool) -> some View { Drawn() }
    public func listStyle(_ style: InsetGroupedListStyle) -> some View { Drawn() }
    public func listRowBackground(_ view: (some View)?) -> some View { Drawn() }
    public func scrollContentBackground(_ visibility: Visibility) -> some View { Drawn() }
    public func scrollDismissesKeyboard(_ mode: ScrollDismissesKeyboardMode) -> some View { Drawn() }
    public func keyboardType(_ type: UIKeyboardType) -> some View { Drawn() }
    public func textInputAutocapitalization(_ how: TextInputAutocapitalization?) -> some View { Drawn() }
    public func autocorrectionDisabled(_ disabled: Bool = true) -> some View { Drawn() }
    public func focused<Value: Hashable>(_ binding: FocusState<Value?>.Binding, equals: Value) -> some View { Drawn() }
    public func focused(_ binding: FocusState<Bool>.Binding) -> some View { Drawn() }

    public func navigationTitle(_ title: some StringProtocol) -> some View { Drawn() }
    public func navigationBarTitleDisplayMode(_ mode: NavigationBarItem.TitleDisplayMode) -> some View { Drawn() }
    public func navigationBarBackButtonHidden(_ hidden: Bool = true) -> some View { Drawn() }
    public func navigationDestination<D: Hashable, C: View>(
        for type: D.Type, @ViewBuilder destination: @escaping (D) -> C
    ) -> some View { Drawn() }
    public func tabItem<V: View>(@ViewBuilder _ label: () -> V) -> some View { Drawn() }
    public func toolbar<Content: ToolbarContent>(@ToolbarContentBuilder content: () -> Content) -> some View { Drawn() }
    public func toolbar(_ visibility: Visibility, for bars: ToolbarPlacement...) -> some View { Drawn() }

    public func sheet<Item: Identifiable, Content: View>(
        item: Binding<Item?>, onDismiss: (() -> Void)? = nil, @ViewBuilder content: @escaping (Item) -> Content
    ) -> some View { Drawn() }
    public func sheet<Content: View>(
        isPresented: Binding<Bool>, onDismiss: (() -> Void)? = nil, @ViewBuilder content: @escaping () -> Content
    ) -> some View { Drawn() }
    public func fullScreenCover<Content: View>(
        isPresented: Binding<Bool>, onDismiss: (() -> Void)? = nil, @ViewBuilder content: @escaping () -> Content
    ) -> some View { Drawn() }
    public func presentationDetents(_ detents: Set<PresentationDetent>) -> some View { Drawn() }
    public func alert<A: View, M: View>(
        _ title: some StringProtocol, isPresented: Binding<Bool>, @ViewBuilder actions: () -> A,
        @ViewBuilder message: () -> M
    ) -> some View { Drawn() }
    public func confirmationDialog<A: View, M: View>(
        _ title: some StringProtocol, isPresented: Binding<Bool>, titleVisibility: Visibility = .automatic,
        @ViewBuilder actions: () -> A, @ViewBuilder message: () -> M
    ) -> some View { Drawn() }
    public func fileMover(
        isPresented: Binding<Bool>, file: URL?, onCompletion: @escaping (Result<URL, any Error>) -> Void,
        onCancellation: @escaping () -> Void
    ) -> some View { Drawn() }
    public func fileImporter(
        isPresented: Binding<Bool>, allowedContentTypes: [UTTypeStandIn], allowsMultipleSelection: Bool,
        onCompletion: @escaping (Result<[URL], any Error>) -> Void, onCancellation: @escaping () -> Void
    ) -> some View { Drawn() }

    public func onAppear(perform act: (() -> Void)? = nil) -> some View { Drawn() }
    public func onDisappear(perform act: (() -> Void)? = nil) -> some View { Drawn() }
    public func onChange<V: Equatable>(
        of value: V, initial: Bool = false, _ act: @escaping (_ before: V, _ now: V) -> Void
    ) -> some View { Drawn() }
    public func onChange<V: Equatable>(of value: V, initial: Bool = false, _ act: @escaping () -> Void) -> some View {
        Drawn()
    }
    public func task(
        priority: TaskPriority = .userInitiated, @_inheritActorContext _ act: @escaping @Sendable () async -> Void
    ) -> some View { Drawn() }
    public func task(
        id: some Equatable, priority: TaskPriority = .userInitiated,
        @_inheritActorContext _ act: @escaping @Sendable () async -> Void
    ) -> some View { Drawn() }
    public func onTapGesture(
        count: Int = 1, coordinateSpace: CoordinateSpace = .local, perform act: @escaping (CGPoint) -> Void
    ) -> some View { Drawn() }
    public func gesture(_ gesture: some Gesture) -> some View { Drawn() }
    public func labelsHidden() -> some View { Drawn() }
    public func accessibilityHint(_ hint: String) -> some View { Drawn() }
    public func scaleEffect(_ scale: CGFloat) -> some View { Drawn() }
    public func offset(_ offset: CGSize) -> some View { Drawn() }
    public func simultaneousGesture(_ gesture: some Gesture) -> some View { Drawn() }
    public func sensoryFeedback<T: Equatable>(
        trigger: T, _ feedback: @escaping (_ before: T, _ now: T) -> SensoryFeedback?
    ) -> some View { Drawn() }

    public func environment<V>(_ key: WritableKeyPath<EnvironmentValues, V>, _ value: V) -> some View { Drawn() }
    public func environment<T: AnyObject & Observable>(_ object: T?) -> some View { Drawn() }
    public func modifier(_ modifier: some ViewModifier) -> some View { Drawn() }

    public func accessibilityLabel(_ words: some StringProtocol) -> some View { Drawn() }
    public func accessibilityValue(_ words: some StringProtocol) -> some View { Drawn() }
    public func accessibilityHidden(_ hidden: Bool) -> some View { Drawn() }
    public func accessibilityElement(children: AccessibilityChildBehavior = .ignore) -> some View { Drawn() }
    public func accessibilityAddTraits(_ traits: AccessibilityTraits) -> some View { Drawn() }
    public func accessibilityActions<C: View>(@ViewBuilder _ actions: () -> C) -> some View { Drawn() }
}
/// UniformTypeIdentifiers' UTType, as for UIImage.
public struct UTTypeStandIn: Sendable {
    public static var zip: UTTypeStandIn { notSwiftUI() }
    public static var data: UTTypeStandIn { notSwiftUI() }
    public static var folder: UTTypeStandIn { notSwiftUI() }
}

// MARK: UIKit inside SwiftUI

@MainActor @preconcurrency public protocol UIViewControllerRepresentable: View where Body == Never {
    associatedtype UIViewControllerType
    associatedtype Coordinator = Void
    typealias Context = UIViewControllerRepresentableContext<Self>
    func makeUIViewController(context: Context) -> UIViewControllerType
    func updateUIViewController(_ controller: UIViewControllerType, context: Context)
    func makeCoordinator() -> Coordinator
}
extension UIViewControllerRepresentable {
    public var body: Never { notSwiftUI() }
}
extension UIViewControllerRepresentable where Coordinator == Void {
    public func makeCoordinator() { notSwiftUI() }
}
@MainActor public struct UIViewControllerRepresentableContext<R: UIViewControllerRepresentable> {
    public var coordinator: R.Coordinator { notSwiftUI() }
}
