// swift-tools-version: 6.0

import PackageDescription

// The library itself comes from cargo: see ios.mk, which tells the linker where it lies.
let package = Package(
    name: "Laydown",
    platforms: [.iOS(.v17), .macOS(.v14)],
    products: [.library(name: "LaydownKit", targets: ["LaydownKit"])],
    targets: [
        // The map is written by hand: the generated one names Apple's modules, which other platforms lack.
        .systemLibrary(name: "LaydownCoreFFI"),
        .target(name: "LaydownCore", dependencies: ["LaydownCoreFFI"]),
        .target(name: "LaydownKit", dependencies: ["LaydownCore"]),
        .testTarget(name: "LaydownKitTests", dependencies: ["LaydownKit", "LaydownCore"]),
    ]
)
