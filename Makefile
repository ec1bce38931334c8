# The only commands anyone needs. `make` alone lists them.
# Each target installs what it still needs, or says the exact line to type.

SHELL := bash
.SHELLFLAGS := -eu -o pipefail -c
.DEFAULT_GOAL := help

help: ## This list
	@grep -hE '^[a-z-]+:.*##' $(MAKEFILE_LIST) | sed -E 's/:[^#]*## /\t/' | sort | expand -t 16

include tests/tests.mk
include android/android.mk
include android/package/package.mk
include ios/ios.mk

test: check bindings-verify rust-test oracle photos backup import android-test page-test ios ## Every test there is, nothing skipped
	@echo "All tests passed."

check: ## Formatting, lints, and that both shells know every choice
	cargo fmt --all --check
	cargo clippy --quiet --workspace --all-targets -- -D warnings
	tools/parity

rust-test: $(REMOTE)/ready ## The tests in Rust
	cargo test --workspace

bindings: ## Writes the Kotlin and Swift sides of the facade
	tools/bindings

bindings-verify: ## Fails if the committed Kotlin or Swift differs from the library
	tools/bindings --verify

.PHONY: help test check rust-test bindings bindings-verify
