// swift-tools-version: 6.0

import PackageDescription

// On an iPhone the library is packed into a framework: see xcframework.sh. Tests run on this machine against the library
// that cargo builds for it: see ios.mk, which tells the linker where that lies.
#if os(Linux)
    let isForThisMachine = true
#else
    let isForThisMachine = Context.environment["LAYDOWN_FOR_THIS_MACHINE"] != nil
#endif

let library: Target =
    isForThisMachine
    // The map is written by hand: the generated one names Apple's modules, which other platforms lack.
    ? .systemLibrary(name: "LaydownCoreFFI")
    : .binaryTarget(name: "LaydownCoreFFI", path: "LaydownCoreFFI.xcframework")

let package = Package(
    name: "Laydown",
    platforms: [.iOS(.v17), .macOS(.v14)],
    products: [
        .library(name: "LaydownKit", targets: ["LaydownKit"]),
        .library(name: "LaydownCore", targets: ["LaydownCore"]),
    ],
    targets: [
        library,
        .target(
            name: "LaydownCore", dependencies: ["LaydownCoreFFI"],
            // What the library itself asks for: the system's time zone, and its judgement of certificates.
            linkerSettings: ["CoreFoundation", "Security"].map { .linkedFramework($0, .when(platforms: [.iOS])) }),
        .target(name: "LaydownKit", dependencies: ["LaydownCore"]),
        .testTarget(name: "LaydownKitTests", dependencies: ["LaydownKit", "LaydownCore"]),
    ]
)
