//! The newest schema with a filled sample, as SQL on standard output. Run once for each release that adds a step:
//! `cargo run -p laydown-tests --example released_schema > tests/tests/store/samples/create_vN.sql`.
#![allow(clippy::print_stdout, reason = "it prints the sample")]

fn main() {
    print!("{}", laydown_tests::newest_sample());
}
