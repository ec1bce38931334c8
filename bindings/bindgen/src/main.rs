//! Generates the Kotlin and Swift sides of the facade from the built library. A crate of its own, so that
//! the generator's many dependencies are not built into, or rebuilt with, the library.

fn main() {
    uniffi::uniffi_bindgen_main();
}
