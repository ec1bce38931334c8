//! One target of laydown-fuzz under libFuzzer, the one that the variable LAYDOWN_FUZZ names: one program for all, since
//! each would be linked with everything.
#![no_main]

use std::sync::LazyLock;

use laydown_fuzz::Target;
use libfuzzer_sys::fuzz_target;

static TARGET: LazyLock<Target> =
    LazyLock::new(|| Target::named(&std::env::var("LAYDOWN_FUZZ").expect("LAYDOWN_FUZZ names a target")));

fuzz_target!(|input: &[u8]| {
    TARGET.run(input);
});
