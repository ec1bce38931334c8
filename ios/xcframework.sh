#!/usr/bin/env bash
# Builds the Rust library for iPhone, iPad and their simulators, and packs it where Package.swift looks for it:
#
#     ios/xcframework.sh
#
# Needs a Mac with Xcode, and rustup for the three targets.
set -euo pipefail

die() {
    echo "xcframework.sh: $*" >&2
    exit 1
}

[[ $(uname -s) == Darwin ]] || die "Xcode exists on a Mac only. Elsewhere the kit is tested with: make ios"
xcodebuild -version >/dev/null 2>&1 || die "Xcode is missing, or not chosen: install it, then run: sudo xcode-select --switch /Applications/Xcode.app"
command -v rustup >/dev/null || die "rustup is missing: install it, so that Rust can build for the iPhone"

cd "$(dirname "${BASH_SOURCE[0]}")/.."
target=${CARGO_TARGET_DIR:-target}
library=liblaydown_bindings.a
packed=ios/LaydownCoreFFI.xcframework
# What Swift is built for; C code in the library would else be built for the newest.
export IPHONEOS_DEPLOYMENT_TARGET=17.0

device=aarch64-apple-ios
simulators=(aarch64-apple-ios-sim x86_64-apple-ios)
rustup target add "$device" "${simulators[@]}"
for triple in "$device" "${simulators[@]}"; do
    cargo rustc --release --package laydown-bindings --lib --crate-type staticlib --target "$triple"
done

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
lipo -create "$target/${simulators[0]}/release/$library" "$target/${simulators[1]}/release/$library" \
    -output "$work/$library"

# A map without the name of the library: a static one is linked by being in the framework.
mkdir "$work/headers"
cp ios/Sources/LaydownCoreFFI/LaydownCoreFFI.h "$work/headers/"
cat >"$work/headers/module.modulemap" <<'MAP'
module LaydownCoreFFI {
    header "LaydownCoreFFI.h"
    export *
}
MAP

rm -rf "$packed"
xcodebuild -create-xcframework \
    -library "$target/$device/release/$library" -headers "$work/headers" \
    -library "$work/$library" -headers "$work/headers" \
    -output "$packed"
echo "Packed into $packed. Now open ios/Project/Laydown.xcodeproj"
