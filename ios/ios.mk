# The Swift shell. Included by the Makefile above; on Linux, tools/swift brings the tool chain.

swift_run = tools/swift $(1) || [ $$? -eq 77 ]
swift_sources = ios/Package.swift ios/Sources/LaydownKit ios/Tests ios/App ios/TypeCheck
app_sources = $(shell find ios/App -name '*.swift')
host_library = $(CURDIR)/ios/.build/host
cargo_target = $(or $(CARGO_TARGET_DIR),target)
# Debian's Observation library leaves a symbol open that nothing here comes to call.
linker_flags = -Xlinker -L$(host_library) -Xlinker -rpath=$(host_library) -Xlinker --allow-shlib-undefined
ifeq ($(shell uname -s),Darwin)
linker_flags = -Xlinker -L$(host_library) -Xlinker -rpath -Xlinker $(host_library)
endif

.PHONY: ios ios-test ios-lint ios-types

ios: ios-lint ios-types

# The library is copied because cargo's target folder may lie outside the checkout, where the tool chain cannot see it.
ios-test:
	cargo build --package laydown-bindings
	mkdir -p $(host_library)
	cp $(cargo_target)/debug/liblaydown_bindings.$(if $(filter Darwin,$(shell uname -s)),dylib,so) $(host_library)/
	$(call swift_run,env LAYDOWN_FOR_THIS_MACHINE=1 swift test --package-path ios --disable-sandbox --disable-xctest $(linker_flags))

ios-lint:
	$(call swift_run,swift-format lint --strict --recursive $(swift_sources))
	$(call swift_run,swiftc -parse $(app_sources))

# SwiftUI exists on Apple's machines only: elsewhere the views are checked against declarations of what they use of it, and
# against the kit's modules, which the tests have built.
ios-types: ios-test
	$(call swift_run,ios/TypeCheck/check.sh)
