//! The example that judges a file of readings: its output on the invented day, and what bad files get.

// The example has no library of its own; its `main` is for the command line.
#[allow(dead_code)]
#[path = "../../core/app/examples/glazing_day.rs"]
mod glazing_day;

use glazing_day::{as_json, as_table, read_day};

const DAY: &str = include_str!("../../core/app/examples/glazing_day.csv");

fn table(file: &[u8]) -> String {
    as_table(&read_day(file).unwrap())
}

#[test]
fn the_invented_day_as_a_table() {
    insta::assert_snapshot!(table(DAY.as_bytes()));
}

#[test]
fn the_invented_day_for_machines() {
    insta::assert_snapshot!(as_json(&read_day(DAY.as_bytes()).unwrap()).unwrap());
}

#[test]
fn every_row_of_the_day_is_answered_under_its_own_line() {
    let day: Vec<serde_json::Value> =
        serde_json::from_str(&as_json(&read_day(DAY.as_bytes()).unwrap()).unwrap()).unwrap();
    let lines: Vec<u64> = day.iter().map(|outcome| outcome["line"].as_u64().unwrap()).collect();
    assert_eq!(lines, (2..=41).collect::<Vec<u64>>());
    assert!(day.iter().all(|outcome| outcome["piece"].is_object() != outcome["refused"].is_string()));
}

#[test]
fn bad_rows_are_named_and_the_rest_is_judged() {
    let mut file = b"form,shape,capacity,glaze,sg,net,step\n".to_vec();
    for row in [
        &b"Mug,cylinder_mug,250,Ash,1.45,19.4,0.1\n"[..],
        b"\n\r\n",
        b"Mug,lantern,250,Ash,1.45,19.4,0.1\n",
        b"Mug,cylinder_mug,250,Ash,1.45\n",
        b"\"A mug\nof two lines\",cylinder_mug,,Ash,1.45,19.4,0.1\n",
        b"M\xffg,cylinder_mug,250,Ash,1.45,19.4,0.1\n",
        b"Mug,cylinder_mug,250,Ash,1.45,\"1,23.5\",0.1\n",
        b"Mug,cylinder_mug,250,Ash,1.45,,0.1\n",
        b"Mug,cylinder_mug,250,Ash,1.45,\"19,4\",\"0,1\"\n",
    ] {
        file.extend_from_slice(row);
    }
    let table = table(&file);
    let refused: Vec<&str> = table.lines().filter(|line| line.starts_with("line ") && line.contains(": ")).collect();
    assert_eq!(
        refused,
        [
            "line 5: “lantern” is not a shape this version of laydown knows. Update laydown, then open the studio again.",
            "line 6: This row has 5 fields and the first row 7.",
            "line 7: Neither capacity nor area is given.",
            "line 9: This row is not text in UTF-8. Save the file as UTF-8.",
            "line 10: “1,23.5” has more than one decimal mark. Leave out the thousands mark.",
            "line 11: No weight is given.",
        ]
    );
    assert!(
        table.contains("\n2 judged: 0 within, 0 short, 0 over, 0 can't tell, 2 a guess, 0 probably within."),
        "{table}"
    );
}

#[test]
fn a_file_without_the_needed_columns_is_refused() {
    assert_eq!(
        read_day(&b"piece,grams\nMug,19.4\n"[..]).unwrap_err(),
        "there is no column “form”. The first row names the columns."
    );
    assert_eq!(read_day(&b""[..]).unwrap_err(), "there is no column “form”. The first row names the columns.");
}

#[test]
fn a_file_with_no_rows_is_an_empty_day() {
    let table = table(b"form,shape,capacity,glaze,sg,net,step\n");
    assert!(
        table.ends_with("0 judged: 0 within, 0 short, 0 over, 0 can't tell, 0 a guess, 0 probably within.\n"),
        "{table}"
    );
}
