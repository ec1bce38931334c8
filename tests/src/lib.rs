//! Nothing here: the tests lie in `tests/`, the benches in `benches/`.
