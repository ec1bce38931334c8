//! No file from elsewhere takes more than its size allows: 1 MB at most 2 s and 100 MB of memory, 10 MB 10 s and 200 MB. The
//! files of 10 MB take minutes, and are read with `LAYDOWN_HOSTILE_MB=10` alone, as `make fuzz` sets it.

use laydown_fuzz::hostile::{COSTS, READERS, Reader};

fn holds(name: &str) {
    let reader = Reader::named(name);
    let largest = if std::env::var("LAYDOWN_HOSTILE_MB").is_ok_and(|most| most == "10") { COSTS.len() } else { 1 };
    let failures: Vec<String> = COSTS[..largest].iter().flat_map(|cost| reader.failures(*cost)).collect();
    assert!(failures.is_empty(), "{name}:\n{}", failures.join("\n"));
}

macro_rules! readers {
    ($($test:ident: $name:literal,)+) => {
        $(#[test]
        fn $test() {
            holds($name);
        })+

        #[test]
        fn none_is_left_out() {
            assert_eq!(READERS.map(|reader| reader.name), [$($name),+]);
        }
    };
}

readers! {
    checking_a_backup: "check a backup",
    taking_in_a_backup: "take in a backup",
    taking_in_a_journal: "take in a journal",
    segments: "segment",
    spreadsheets: "spreadsheet",
    photographs: "photograph",
    photographs_of_a_form: "photograph of a form",
    damaged_studios: "damaged studio",
}
