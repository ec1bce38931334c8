#!/usr/bin/env bash
# Type-checks the app's views against the declarations beside this script. Run through tools/swift, after the package was
# built: its modules are what the views are checked against.
set -euo pipefail
[[ $(uname -s) == Linux ]] || {
    echo "check.sh: this machine has the true SwiftUI: build ios/Project/Laydown.xcodeproj"
    exit 0
}
cd "$(dirname "${BASH_SOURCE[0]}")/.."

modules=.build/typecheck
mkdir -p "$modules"
for module in SwiftUI UIKit PhotosUI AVFoundation UniformTypeIdentifiers Security Network BackgroundTasks; do
    [[ $modules/$module.swiftmodule -nt TypeCheck/$module.swift ]] ||
        swiftc -swift-version 6 -parse-as-library -emit-module -module-name "$module" -I "$modules" \
            -o "$modules/$module.swiftmodule" "TypeCheck/$module.swift"
done
find App -name '*.swift' ! -name PictureFile.swift -print0 |
    xargs -0 swiftc -emit-sil -wmo -o /dev/null -swift-version 6 -parse-as-library -warnings-as-errors -module-name Laydown \
        -I "$modules" -I .build/debug/Modules -Xcc -fmodule-map-file=Sources/LaydownCoreFFI/module.modulemap \
        TypeCheck/PictureFile.swift TypeCheck/Foundation.swift
