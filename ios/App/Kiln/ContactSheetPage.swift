import LaydownCore
import LaydownKit
import SwiftUI
import UIKit

/// A firing on a page, to be looked at, shared and printed.
struct ContactSheetPage: View {
    @State private var screen: ContactSheetScreen
    @State private var shared: SharedFile?
    /// The pages as they are shown: painted once, not with every change on the screen.
    @State private var pictures: [UIImage] = []

    /// Pixels to a point of the page: 150 to the inch on the screen, 200 on paper.
    private static let scale = 150.0 / 72.0
    private static let paperScale = 200.0 / 72.0

    init(frame: AppModel, firing: String, piece: String = "") {
        _screen = State(
            initialValue: frame.screen("contact sheet \(firing) \(piece)") {
                ContactSheetScreen(frame: frame, firing: firing, piece: piece)
            })
    }

    var body: some View {
        ScrollView {
            if let view = screen.view {
                VStack(spacing: 16) {
                    Trouble(sentence: screen.trouble)
                    // In reach before the pages, of which there may be many.
                    Flow {
                        Button(Words.sharePicture) { Task { shared = await editor() } }
                        Button(Words.sharePdf) { Task { shared = await document() } }
                        Button(Words.print) { Task { await printPages(view.title) } }
                    }
                    .buttonStyle(.bordered)
                    .controlSize(.large)
                    ForEach(pictures.indices, id: \.self) { page in
                        Image(uiImage: pictures[page])
                            .resizable()
                            .scaledToFit()
                            .accessibilityLabel("\(view.title). \(view.summary)")
                    }
                }
                .padding(16)
                .frame(maxWidth: 700)
            }
        }
        .background(Color.ground)
        .navigationTitle(screen.isOnePiece ? Words.sharePiece : Words.contactSheet)
        .navigationBarTitleDisplayMode(.inline)
        .refreshed { await screen.refresh() }
        .onChange(of: screen.view, initial: true) { _, view in
            guard let view else { return }
            pictures = screen.pages.indices.compactMap {
                picture(of: paper($0, view), scale: ContactSheetPage.scale)
            }
        }
        .sheet(item: $shared) { ShareSheet(file: $0.url) }
    }

    private func paper(_ page: Int, _ view: ContactSheetView) -> ContactPaper {
        ContactPaper(
            editor: view, tiles: screen.pages[page], across: screen.across, down: screen.down,
            words: Words.pageOf(page + 1, screen.pages.count))
    }

    private func picture(of content: some View, scale: CGFloat) -> UIImage? {
        let renderer = ImageRenderer(content: content)
        renderer.scale = scale
        return renderer.uiImage
    }

    /// All pages below one another as one picture.
    private func editor() async -> SharedFile? {
        guard let view = screen.view else { return nil }
        let pages = screen.pages.indices.map { paper($0, view) }
        let all = VStack(spacing: 0) { ForEach(pages.indices, id: \.self) { pages[$0] } }
        // What could not be painted is empty, and refused with its sentence.
        let jpeg = picture(of: all, scale: ContactSheetPage.scale).map(Picture.jpeg) ?? Data()
        return await screen.file(of: jpeg).map(SharedFile.init)
    }

    /// The same as a document of pages.
    private func document() async -> SharedFile? {
        guard let view = screen.view else { return nil }
        let pages = screen.pages.indices.map { page in
            picture(of: paper(page, view), scale: ContactSheetPage.paperScale).map(Picture.jpeg) ?? Data()
        }
        return await screen.document(of: pages).map(SharedFile.init)
    }

    private func printPages(_ title: String) async {
        guard let document = await document() else { return }
        let printer = UIPrintInteractionController.shared
        let job = UIPrintInfo.printInfo()
        job.jobName = title
        printer.printInfo = job
        printer.printingItem = document.url
        printer.present(animated: true)
    }
}

/// A page of A4, in points of 1/72 inch: black on white, since it is to be printed.
private struct ContactPaper: View {
    static let size = CGSize(width: 595, height: 842)

    let editor: ContactSheetView
    let tiles: [ContactTile]
    let across: Int
    let down: Int
    /// Which page of how many.
    let words: String

    /// One piece by itself is written large.
    private var small: CGFloat { down == 1 ? 14 : 9 }
    private var strong: CGFloat { down == 1 ? 20 : 10 }
    private static let edge = 36.0
    private static let gap = 12.0

    var body: some View {
        VStack(alignment: .leading, spacing: ContactPaper.gap) {
            Text(editor.title).font(.system(size: 18, weight: .bold)).lineLimit(2)
            ForEach(editor.firing, id: \.self) { Text($0).font(.system(size: small)).lineLimit(2) }
            if !editor.summary.isEmpty { Text(editor.summary).font(.system(size: small)).lineLimit(3) }
            Grid(horizontalSpacing: ContactPaper.gap, verticalSpacing: ContactPaper.gap) {
                ForEach(0..<down, id: \.self) { row in
                    GridRow {
                        ForEach(0..<across, id: \.self) { column in
                            cell(row * across + column)
                        }
                    }
                }
            }
            Text(words).font(.system(size: 9))
        }
        .padding(ContactPaper.edge)
        .frame(width: ContactPaper.size.width, height: ContactPaper.size.height, alignment: .topLeading)
        .foregroundStyle(.black)
        .background(.white)
        .environment(\.colorScheme, .light)
        .dynamicTypeSize(.large)
    }

    @ViewBuilder
    private func cell(_ at: Int) -> some View {
        if tiles.indices.contains(at) {
            VStack(alignment: .leading, spacing: 2) {
                photo(tiles[at].photo)
                Text(tiles[at].title).font(.system(size: strong, weight: .bold)).lineLimit(1)
                ForEach(tiles[at].coats.prefix(3), id: \.self) { Text($0).font(.system(size: small)).lineLimit(2) }
                Text(tiles[at].detail).font(.system(size: small)).lineLimit(3)
            }
            .frame(maxWidth: .infinity, maxHeight: .infinity, alignment: .topLeading)
        } else {
            Color.clear
        }
    }

    @ViewBuilder
    private func photo(_ file: String) -> some View {
        // Read at once: a page that is painted does not wait for what comes later.
        let tallest = down == 1 ? 560.0 : 150.0
        if let image = PictureFile.read(file, pixels: down == 1 ? 1600 : 800) {
            Image(uiImage: image).resizable().scaledToFit().frame(maxWidth: .infinity, maxHeight: tallest)
        } else {
            Text(Words.noPhoto)
                .font(.system(size: 9))
                .frame(maxWidth: .infinity, minHeight: 100, maxHeight: tallest)
                .border(.gray, width: 0.75)
        }
    }
}
