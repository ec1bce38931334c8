//! Prints the stamp of what crosses the boundary, for `tools/bindings`.

fn main() {
    use std::io::Write;

    let _ = writeln!(std::io::stdout(), "{}", laydown_app::build_stamp());
}
