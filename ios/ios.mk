# The Swift shell. Included by the Makefile above; on Linux, tools/swift brings the tool chain.

swift_run = tools/swift $(1) || [ $$? -eq 77 ]
swift_sources = ios/Package.swift ios/Sources/LaydownKit ios/Tests ios/App ios/TypeCheck
app_sources = $(shell find ios/App -name '*.swift')
APPLE := $(CURDIR)/target/apple
host_library = $(CURDIR)/ios/.build/host
# Where the tests find the servers that the phone's own network is to meet.
servers = $(host_library)/servers
cargo_target = $(or $(CARGO_TARGET_DIR),target)
# Debian's Observation library leaves a symbol open that nothing here comes to call.
linker_flags = -Xlinker -L$(host_library) -Xlinker -rpath=$(host_library) -Xlinker --allow-shlib-undefined
ifeq ($(shell uname -s),Darwin)
linker_flags = -Xlinker -L$(host_library) -Xlinker -rpath -Xlinker $(host_library)
endif

.PHONY: ios ios-test ios-lint ios-types ios-library

ios: ios-lint ios-types

# The library is copied because cargo's target folder may lie outside the checkout, where the tool chain cannot see it.
ios-test: $(REMOTE)/ready
	cargo build --package laydown-bindings
	mkdir -p $(host_library)
	cp $(cargo_target)/debug/liblaydown_bindings.$(if $(filter Darwin,$(shell uname -s)),dylib,so) $(host_library)/
	tests/remote/with_servers $(servers) $(call swift_run,tests/remote/trusting $(servers)/authority.pem \
	    env LAYDOWN_FOR_THIS_MACHINE=1 LAYDOWN_SERVERS=$(servers) swift test --package-path ios --disable-sandbox --disable-xctest $(linker_flags))

ios-lint:
	$(call swift_run,swift-format lint --strict --recursive $(swift_sources))
	$(call swift_run,swiftc -parse $(app_sources))

# SwiftUI exists on Apple's machines only: elsewhere the views are checked against declarations of what they use of it, and
# against the kit's modules, which the tests have built.
ios-types: ios-test
	$(call swift_run,ios/TypeCheck/check.sh)

# On a Mac ios/xcframework.sh builds it. Here C is compiled by zig, which brings Apple's headers; nothing is linked, though one of
# the libraries (crc-fast) also asks for a dynamic form of itself, which nobody uses.
ios-library: $(APPLE)/ready ## The Rust library built for the iPhone where there is no Xcode, to see that it can be
	rustup target add aarch64-apple-ios
	LAYDOWN_ZIG=$(APPLE)/venv SDKROOT=$(CURDIR)/ios IPHONEOS_DEPLOYMENT_TARGET=17.0 CC_aarch64_apple_ios=$(CURDIR)/ios/apple-cc \
	    CARGO_TARGET_AARCH64_APPLE_IOS_LINKER=true cargo rustc --quiet --package laydown-bindings --lib --crate-type staticlib --target aarch64-apple-ios
	ls -l $(cargo_target)/aarch64-apple-ios/debug/liblaydown_bindings.a

$(APPLE)/ready: ios/requirements.txt
	mkdir -p $(APPLE)
	python3 -m venv $(APPLE)/venv || { echo "Python's venv is missing. Type: apt-get install -y python3-venv"; exit 1; }
	$(APPLE)/venv/bin/pip install --quiet --disable-pip-version-check --requirement ios/requirements.txt
	touch $@
