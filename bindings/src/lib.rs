//! The library that the shells load: `laydown-app` and nothing else.

laydown_app::uniffi_reexport_scaffolding!();
