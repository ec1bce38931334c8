//! A potter's own spreadsheet: what the dry run says, what is kept, what is refused, and what comes back as it went out.

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use laydown_app::{EditorKind, ImportView, Mark, Now, StudioError, Value};
use proptest::prelude::*;

use super::{Bench, NOW, net};

fn editor(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/studio/sheets").join(name)
}

fn values(values: &[(&str, &str)]) -> Vec<Value> {
    values.iter().map(|(key, text)| Value { key: (*key).to_owned(), text: (*text).to_owned() }).collect()
}

impl Bench {
    fn import(&self, file: &Path, chosen: &[(&str, &str)]) -> ImportView {
        self.studio.import(NOW, file, &values(chosen)).unwrap()
    }

    fn write(&self, name: &str, text: impl AsRef<[u8]>) -> PathBuf {
        let path = self.folder.path().join(name);
        fs::write(&path, text).unwrap();
        path
    }

    fn import_text(&self, text: &str) -> ImportView {
        self.import(&self.write("text.csv", text), &[])
    }

    fn refusal(&self, bytes: impl AsRef<[u8]>) -> String {
        let file = self.write("hostile.csv", bytes);
        match self.studio.import(NOW, &file, &[]) {
            Err(StudioError::Refused { field, sentence }) if field == "file" => sentence,
            other => panic!("{other:?}"),
        }
    }

    fn glaze(&self) -> String {
        let sections = self.studio.setup(NOW).unwrap().sections;
        let section = sections.into_iter().find(|section| section.editor == EditorKind::Glaze).unwrap();
        section.rows[0].id.clone()
    }

    fn coats(&self) -> usize {
        self.dump().lines().filter(|line| line.starts_with("coat ")).count()
    }

    fn buckets_named(&self, name: &str) -> usize {
        self.dump().lines().filter(|line| line.starts_with("bucket ") && line.contains(&format!("'{name}'"))).count()
    }

    /// The readings as laydown writes them for a spreadsheet.
    fn readings(&self) -> String {
        let file = self.folder.path().join("readings-out.csv");
        self.studio.export("readings", &file).unwrap();
        fs::read_to_string(file).unwrap()
    }
}

/// Which code stands in the choice under `key`.
fn stands<'a>(view: &'a ImportView, key: &str) -> &'a str {
    let field = view.columns.iter().chain(&view.questions).find(|field| field.key == key);
    field.map_or("nothing is asked", |field| field.text.as_str())
}

#[test]
fn a_dry_run_says_what_would_happen_and_the_deed_does_it() {
    let bench = Bench::set_up();
    let before = bench.dump();
    let view = bench.import(&editor("plain.csv"), &[]);
    let holds: Vec<&str> = view.columns.iter().map(|field| field.text.as_str()).collect();
    assert_eq!(holds, ["date", "form", "glaze", "zone", "wet", "specific_gravity", "note"]);
    assert_eq!(view.columns[4].help, "19.4; 19.4; 21.0");
    assert_eq!(view.found, "4 readings would be imported. 3 lines cannot be imported.");
    assert_eq!(
        view.row_errors,
        [
            "Line 5: There is no form “Tall mug” here. Add it first, or choose one above.",
            "Line 6: “=E2*1.1” is a formula. Save the sheet with its result instead.",
            "Line 8: “Total” is not a date. Write it as 2026-11-25, for example.",
        ]
    );
    assert_eq!(view.readings[0].title, "Small mug, inside");
    assert!(view.readings[0].detail.starts_with("4 Mar 2025, 19.4 g, Ash white, "), "{:?}", view.readings[0]);
    assert_eq!((view.take_in_label.as_str(), view.can_take_in), ("Import 4 readings", true));
    assert!(view.notes.iter().any(|note| note.text.starts_with("1 reading has no SG")), "{:?}", view.notes);
    assert_eq!(bench.dump(), before, "a dry run changes nothing");

    let saved = bench.studio.import_spreadsheet(NOW, &editor("plain.csv"), &[]).unwrap();
    assert_eq!(saved.sentence, "Imported: 4 readings. 3 lines were left out.");
    assert_eq!(bench.coats(), 4);
    assert!(bench.readings().contains("\"says \"\"good\"\", dries well\""));

    let again = bench.import(&editor("plain.csv"), &[]);
    assert_eq!(again.found, "Nothing would be imported. 4 lines are here already. 3 lines cannot be imported.");
    let refused = bench.studio.import_spreadsheet(NOW, &editor("plain.csv"), &[]).unwrap_err();
    assert!(refused.to_string().starts_with("Nothing would be imported."));

    let undone = bench.studio.undo(NOW, &saved.undo).unwrap();
    assert_eq!(bench.dump(), before, "one undo takes it all back");
    bench.studio.undo(NOW, &undone.undo).unwrap();
    assert_eq!(bench.coats(), 4);
}

#[test]
fn a_name_that_is_not_here_is_what_the_user_says_it_is() {
    let bench = Bench::set_up();
    let view = bench.import(&editor("plain.csv"), &[]);
    let question = view.questions.iter().find(|field| field.key == "form:tall mug").unwrap();
    assert_eq!(question.label, "Form “Tall mug”");
    assert_eq!(
        question.items.iter().map(|item| item.name.as_str()).collect::<Vec<_>>(),
        ["Leave these lines out", "Small mug"]
    );
    let small = question.items[1].code.clone();
    let view = bench.import(&editor("plain.csv"), &[("form:tall mug", &small)]);
    assert_eq!(view.found, "5 readings would be imported. 2 lines cannot be imported.");
}

#[test]
fn a_glaze_can_be_made_with_a_bucket_and_a_form_cannot() {
    let bench = Bench::set_up();
    let file = editor("windows.csv");
    let view = bench.import(&file, &[]);
    assert_eq!(view.row_errors, ["Line 2: There is no glaze “Céladon” here. Add it first, or choose one above."]);
    assert!(view.notes.iter().any(|note| note.text.contains("not in UTF-8")));
    let chosen = [("glaze:céladon", "make")];
    let view = bench.import(&file, &chosen);
    assert_eq!(view.found, "1 reading would be imported.");
    assert!(view.notes.iter().any(|note| note.text == "New buckets: From the spreadsheet."));
    let saved = bench.studio.import_spreadsheet(NOW, &file, &values(&chosen)).unwrap();
    assert!(bench.readings().contains(",“matt” at the rim,"));
    assert_eq!(bench.buckets_named("From the spreadsheet"), 1);
    assert!(bench.studio.buckets(NOW).unwrap().buckets.iter().any(|bucket| bucket.glaze == "Céladon"));
    assert_eq!(bench.import(&file, &[]).found, "Nothing would be imported. 1 line is here already.");
    bench.studio.undo(NOW, &saved.undo).unwrap();
    assert_eq!(bench.buckets_named("From the spreadsheet"), 0);
}

#[test]
fn semicolons_commas_and_a_title_are_found_out() {
    let bench = Bench::set_up();
    let view = bench.import(&editor("semicolons.csv"), &[]);
    assert_eq!((stands(&view, "column:1"), stands(&view, "column:3")), ("date", "glaze"));
    assert_eq!((stands(&view, "column:5"), stands(&view, "column:6")), ("bare", "glazed"));
    assert_eq!(view.found, "2 readings would be imported.", "{:?}", view.row_errors);
    assert!(view.readings[0].detail.starts_with("4 Mar 2024, 19.4 g"), "{:?}", view.readings[0]);
    bench.studio.import_spreadsheet(NOW, &editor("semicolons.csv"), &[]).unwrap();
    let readings = bench.readings();
    assert!(readings.lines().nth(2).unwrap().contains(",1.455,no,"), "{readings}");
    assert!(bench.dump().contains("bare_mg=310200"));
}

#[test]
fn dates_that_can_be_read_both_ways_are_asked_about() {
    let bench = Bench::set_up();
    let file = editor("tabs.tsv");
    let view = bench.import(&file, &[]);
    assert_eq!((view.found.as_str(), view.can_take_in), ("Found 2 lines. Answer the questions first.", false));
    let question = view.questions.iter().find(|field| field.key == "order").unwrap();
    assert_eq!(question.refusal, "Choose which comes first in the dates: the day or the month.");
    let refused = bench.studio.import_spreadsheet(NOW, &file, &[]).unwrap_err();
    assert!(matches!(refused, StudioError::Refused { field, .. } if field == "order"));

    // Ounces on a scale of 0.1 g: what was read off another scale is not passed off as this one's.
    let american = bench.import(&file, &[("order", "month_first")]);
    assert!(american.row_errors[0].starts_with("Line 2: This scale reads in 0.1 g steps"), "{american:?}");
    let fine =
        bench.save(EditorKind::Scale, "", &[("name", "Fine scale"), ("capacity", "500 g"), ("step", "0.001 oz")]);
    let american = bench.import(&file, &[("order", "month_first"), ("scale", &fine)]);
    let days: Vec<&str> = american.readings.iter().map(|row| row.detail.split(',').next().unwrap()).collect();
    assert_eq!(days, ["4 Mar 2025", "6 May 2025"]);
    let european = bench.import(&file, &[("order", "day_first"), ("scale", &fine)]);
    let days: Vec<&str> = european.readings.iter().map(|row| row.detail.split(',').next().unwrap()).collect();
    assert_eq!(days, ["3 Apr 2025", "5 Jun 2025"]);
}

#[test]
fn a_day_after_the_twelfth_says_how_the_others_are_written() {
    let bench = Bench::set_up();
    let view = bench.import_text(
        "date,form,glaze,zone,wet g\n3/4/2025,Small mug,Ash white,in,19.4\n25/4/2025,Small mug,Ash white,in,19.5\n",
    );
    assert!(view.readings[0].detail.starts_with("3 Apr 2025"), "{view:?}");
}

#[test]
fn a_editor_without_headers_or_columns_is_asked_for_them() {
    let bench = Bench::set_up();
    let view = bench.import(&editor("bare.csv"), &[]);
    assert_eq!(view.columns[0].label, "Column 1");
    let said: Vec<&str> = view.notes.iter().map(|note| note.text.as_str()).collect();
    assert!(said.contains(&"No column is set to Date. Choose one."), "{said:?}");
    let chosen =
        [("column:0", "date"), ("column:1", "form"), ("column:2", "glaze"), ("column:3", "zone"), ("column:4", "wet")];
    assert_eq!(bench.import(&editor("bare.csv"), &chosen).found, "2 readings would be imported.");

    let form = view.questions.iter().find(|field| field.key == "form").unwrap().items[0].code.clone();
    let chosen =
        [("column:0", "date"), ("form", &form), ("column:2", "glaze"), ("zone", "outside"), ("column:4", "wet")];
    let view = bench.import(&editor("bare.csv"), &chosen);
    assert_eq!(view.readings[0].title, "Small mug, outside");
    let view = bench.import(&editor("bare.csv"), &[("column:0", "date"), ("column:1", "date")]);
    assert_eq!(view.columns[1].refusal, "Two columns are set to date. Leave one out.");
}

#[test]
fn a_decimal_mark_that_could_be_a_thousands_mark_is_asked_about() {
    let bench = Bench::set_up();
    let text = "date;form;glaze;zone;bare g;glazed g\n2025-03-04;Small mug;Ash white;in;1,310;1,330\n";
    let view = bench.import_text(text);
    assert!(!view.can_take_in);
    assert!(stands(&view, "decimal").is_empty());
    let file = bench.folder.path().join("text.csv");
    assert!(!bench.import(&file, &[("decimal", "neither")]).can_take_in);
    let large = bench.import(&file, &[("decimal", "point")]);
    assert!(large.row_errors[0].contains("1,310"), "laydown still asks rather than guesses: {large:?}");
    let small = bench.import(&file, &[("decimal", "comma")]);
    assert!(small.row_errors[0].contains("cannot show"), "{small:?}");
}

#[test]
fn what_laydown_wrote_comes_back_as_it_went_out() {
    let bench = Bench::empty();
    laydown_app::sample::fill(&bench.studio, NOW).unwrap();
    let coat = bench.weigh(net("")).recent[0].id.clone();
    bench.studio.remove_coat(NOW, &coat).unwrap();
    let went_out = bench.readings();
    let file = bench.write("readings.csv", &went_out);
    let lines = went_out.lines().count() - 1;
    let view = bench.import(&file, &[]);
    assert_eq!(view.found, format!("Nothing would be imported. {lines} lines are here already."));

    // The same studio on another phone, before anything was weighed there.
    for id in coat_ids(&bench) {
        bench.studio.remove_coat(NOW, &id).unwrap();
    }
    assert_eq!(bench.coats(), 0);
    let view = bench.import(&file, &[]);
    assert_eq!(view.found, format!("{lines} readings would be imported."), "{:?}", view.row_errors);
    bench.studio.import_spreadsheet(NOW, &file, &[]).unwrap();
    assert_eq!(sorted(&bench.readings()), sorted(&went_out));
    assert_eq!(bench.import(&file, &[]).found, format!("Nothing would be imported. {lines} lines are here already."));
    // Its pieces are still in their firings.
    let newest = bench.weigh(net("")).recent[0].id.clone();
    let piece = bench.studio.coat(NOW, &newest).unwrap().piece;
    assert!(!bench.studio.piece(NOW, &piece).unwrap().title.is_empty());
}

fn coat_ids(bench: &Bench) -> Vec<String> {
    let hex = bench
        .dump()
        .lines()
        .filter(|line| line.starts_with("coat "))
        .map(|line| line[5..37].to_owned())
        .collect::<Vec<_>>();
    hex.into_iter().map(|hex| uuid::Uuid::parse_str(&hex).unwrap().to_string()).collect()
}

fn sorted(text: &str) -> Vec<&str> {
    let mut lines: Vec<&str> = text.lines().collect();
    lines.sort_unstable();
    lines
}

#[test]
fn a_reading_is_judged_by_what_was_known_on_its_day() {
    let bench = Bench::set_up();
    let header = "date,form,glaze,zone,wet g,sg,control\n";
    let line = |day: &str, wet: &str, control: &str| format!("{day},Small mug,Ash white,in,{wet},1.45,{control}\n");
    let text =
        [header, &line("2025-03-01", "30.0", ""), &line("2025-03-02", "30.0", "yes"), &line("2025-03-03", "30.0", "")]
            .concat();
    let file = bench.write("days.csv", &text);
    let view = bench.import(&file, &[]);
    let verdicts: Vec<&str> = view.readings.iter().map(|row| row.detail.rsplit(", ").next().unwrap()).collect();
    assert_eq!(verdicts, ["over", "over", "within"], "the control piece of the second day judges the third");
    bench.studio.import_spreadsheet(NOW, &file, &[]).unwrap();
    assert_eq!(bench.aim(net("")), 30.0, "and today's");
}

#[test]
fn the_coats_of_one_piece_come_together_and_can_be_found() {
    let bench = Bench::set_up();
    let text = "date,piece,code,form,glaze,zone,wet g,note\n\
        2023-03-01,A7,,Small mug,Ash white,in,19.4,\n\
        2023-03-02,A7,,Small mug,Ash white,out,18.0,second coat\n\
        2024-05-02,A7,,Small mug,Ash white,in,19.1,another year\n\
        2024-05-03,,CODE,Small mug,Ash white,in,19.2,\n";
    let code = laydown_domain::kiln::piece_code::candidates(42).next().unwrap();
    let text = text.replace("CODE", &code);
    let file = bench.write("pieces.csv", &text);
    let view = bench.import(&file, &[]);
    assert_eq!(view.found, "4 readings would be imported.", "{view:?}");
    bench.studio.import_spreadsheet(NOW, &file, &[]).unwrap();
    let readings = bench.readings();
    let pieces: Vec<&str> = readings.lines().skip(1).map(|line| line.rsplit(',').next().unwrap()).collect();
    assert_eq!(pieces[0], pieces[1]);
    assert!(pieces[1] != pieces[2] && pieces[2] != pieces[3]);
    assert!(readings.contains(",Piece A7. second coat,") && readings.contains(",Piece A7,"), "{readings}");
    let found = bench.studio.find_pieces(NOW, &values(&[("code", &code)]), 0).unwrap();
    assert_eq!(found.pieces.len(), 1);
    assert!(found.pieces[0].detail.contains("2024"), "{:?}", found.pieces);
    let first = bench.studio.piece(NOW, pieces[0]).unwrap();
    assert!(!first.title.is_empty());

    // Another coat on the foot that is pencilled so, and one that cannot be.
    let more = format!(
        "date,code,form,glaze,zone,wet g\n2024-05-04,{code},Small mug,Ash white,out,17.0\n2024-05-05,{code},Small mug,Ash white,in,17.0\n"
    );
    let view = bench.import(&bench.write("more.csv", more), &[]);
    assert_eq!(view.found, "1 reading would be imported. 1 line cannot be imported.");
    assert!(view.row_errors[0].contains(&format!("The code {code} is already on another piece")), "{view:?}");
}

#[test]
fn lines_of_one_day_and_weight_are_each_saved_once() {
    let bench = Bench::set_up();
    let header = "date,form,glaze,zone,wet g\n";
    let mug = "2025-03-04,Small mug,Ash white,in,19.4\n";
    let file = bench.write("day.csv", [header, mug, mug].concat());
    bench.studio.import_spreadsheet(NOW, &file, &[]).unwrap();
    let file = bench.write("day.csv", [header, mug, mug, mug].concat());
    assert_eq!(bench.import(&file, &[]).found, "1 reading would be imported. 2 lines are here already.");
    // In summer the phone's clock is another hour from UTC; the day is the same.
    let summer = Now { utc_offset_s: NOW.utc_offset_s + 3600, ..NOW };
    let view = bench.studio.import(summer, &file, &[]).unwrap();
    assert_eq!(view.found, "1 reading would be imported. 2 lines are here already.");
}

#[test]
fn an_aim_in_the_editor_goes_before_a_calculated_one() {
    let bench = Bench::set_up();
    let file = bench.write("aim.csv", "date,form,glaze,zone,wet g,sg,target g\n2025-03-04,Small mug,Ash white,in,30.0,1.45,30\n2025-03-04,Small mug,Ash white,in,40.0,1.45,30\n");
    let view = bench.import(&file, &[]);
    let verdicts: Vec<&str> = view.readings.iter().map(|row| row.detail.rsplit(", ").next().unwrap()).collect();
    assert_eq!(verdicts, ["within", "over"]);
}

#[test]
fn what_cannot_be_is_refused_line_by_line() {
    let bench = Bench::set_up();
    let text = "date,form,glaze,zone,wet g,control,code,note\n\
        2031-01-01,Small mug,Ash white,in,19.4,,,\n\
        1950-01-01,Small mug,Ash white,in,19.4,,,\n\
        2025-02-30,Small mug,Ash white,in,19.4,,,\n\
        2025-03-04,,Ash white,in,19.4,,,\n\
        2025-03-04,Small mug,,in,19.4,,,\n\
        2025-03-04,Small mug,Ash white,,19.4,,,\n\
        2025-03-04,Small mug,Ash white,rim,19.4,,,\n\
        2025-03-04,Small mug,Ash white,in,,,,\n\
        2025-03-04,Small mug,Ash white,in,-3,,,\n\
        2025-03-04,Small mug,Ash white,in,0,,,\n\
        2025-03-04,Small mug,Ash white,in,900,,,\n\
        2025-03-04,Small mug,Ash white,in,19.4,perhaps,,\n\
        2025-03-04,Small mug,Ash white,in,19.4,,12,\n\
        2025-03-04,Small mug,Ash white,in,19,4,,,\n\
        ,,,,,,,\n\
        \n\
        2025-03-04,Small mug,Ash white,in,19.4\n";
    let view = bench.import_text(text);
    assert_eq!(view.found, "1 reading would be imported. 14 lines cannot be imported.", "{:#?}", view.row_errors);
    let expected = [
        "Line 2: 2031-01-01 is in the future. Check the date.",
        "Line 3: 1950-01-01 is too long ago. You can import readings from 1970 on.",
        "Line 4: “2025-02-30” is not a date. Write it as 2026-11-25, for example.",
        "Line 5: It has no form.",
        "Line 6: It has no glaze.",
        "Line 7: It has no zone. Write inside, outside or both.",
        "Line 8: “rim” is not a zone. Write inside, outside or both.",
        "Line 9: It has no weight.",
        "Line 10: A weight cannot be below zero. Leave out the minus sign.",
        "Line 11: The scale shows no glaze. Weigh the piece after coating.",
    ];
    for (said, expected) in view.row_errors.iter().zip(expected) {
        assert_eq!(said.split(':').next(), expected.split(':').next());
        if !expected.contains("minus") {
            assert_eq!(said, expected);
        }
    }
    assert!(view.row_errors[10].contains("more glaze than this piece can hold"), "{:?}", view.row_errors);
    assert_eq!(view.readings[0].id, "18");
}

#[test]
fn hostile_files_are_refused_in_a_sentence() {
    let bench = Bench::set_up();
    let before = bench.dump();
    assert_eq!(bench.refusal(""), "This file is empty. Choose the spreadsheet, saved as CSV.");
    assert_eq!(bench.refusal("\r\n \r\n"), "This file is empty. Choose the spreadsheet, saved as CSV.");
    assert!(bench.refusal("date,form\n").starts_with("There are no readings below the first line."));
    assert!(bench.refusal(b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR").starts_with("This is not a text file"));
    assert!(bench.refusal(b"a,b\n1,\0\n").starts_with("This is not a text file"));
    assert!(bench.refusal(b"PK\x03\x04\x14\0").contains("choose Save as, CSV"));
    let wide = format!("{}\n{}\n", vec!["a"; 10_000].join(","), vec!["1"; 10_000].join(","));
    assert!(bench.refusal(wide).starts_with("This sheet has 10000 columns"));
    assert!(bench.refusal("date,form\n2025-03-04,mug\n".repeat(500_000)).contains("more than 100000 lines"));
    let quote = "date,form,note\n2025-03-04,mug,\"good\n2025-03-04,mug,fine\n2025-03-05,mug,\n";
    assert!(bench.refusal(quote).starts_with("Line 2: a quotation mark is opened and never closed"));
    let long = format!("date,form,note\n2025-03-04,mug,\"{}\n", "2025-03-04,mug,fine\n".repeat(10_000));
    assert!(bench.refusal(long).starts_with("Line 2: a quotation mark"));

    // Four gigabytes that take no room on the disk.
    let huge = bench.folder.path().join("huge.csv");
    fs::File::create(&huge).unwrap().set_len(4 << 30).unwrap();
    let refused = bench.studio.import(NOW, &huge, &[]).unwrap_err().to_string();
    assert!(refused.starts_with("This file is larger than 20 MB"), "{refused}");
    let refused = bench.studio.import(NOW, bench.folder.path(), &[]).unwrap_err().to_string();
    assert!(refused.starts_with("This is not a file."), "{refused}");
    let refused = bench.studio.import(NOW, &bench.folder.path().join("gone.csv"), &[]).unwrap_err().to_string();
    assert_eq!(refused, "File not found. Choose it again.");
    assert_eq!(bench.dump(), before);
}

#[test]
fn a_full_editor_is_planned_and_counted() {
    let bench = Bench::set_up();
    let file = bench.folder.path().join("long.csv");
    let mut out = std::io::BufWriter::new(fs::File::create(&file).unwrap());
    writeln!(out, "date,form,glaze,zone,wet g").unwrap();
    for line in 0..2_000 {
        let form = if line % 10 == 0 { "Jug" } else { "Small mug" };
        writeln!(
            out,
            "2024-{:02}-{:02},{form},Ash white,in,{}.{}",
            line % 12 + 1,
            line % 28 + 1,
            17 + line % 5,
            line % 10
        )
        .unwrap();
    }
    out.into_inner().unwrap();
    let view = bench.import(&file, &[]);
    assert_eq!(view.found, "1800 readings would be imported. 200 lines cannot be imported.");
    assert_eq!(view.row_errors.len(), 51);
    assert_eq!(view.row_errors[50], "And 150 more lines.");
}

#[test]
fn buckets_are_found_or_made_and_old_ones_are_not_offered() {
    let bench = Bench::set_up();
    let line = |day: u32, bucket: &str| format!("2024-03-{day:02},Small mug,Ash white,{bucket},in,19.{}\n", day % 10);
    let mut text = "date,form,glaze,bucket,zone,wet g\n".to_owned();
    text += &[line(1, "first  BUCKET"), line(2, ""), line(3, "Batch 7"), line(4, "batch 7")].concat();
    text += &line(5, &"x".repeat(81));
    let file = bench.write("buckets.csv", text);
    let view = bench.import(&file, &[]);
    assert_eq!(view.found, "4 readings would be imported. 1 line cannot be imported.");
    assert!(view.row_errors[0].contains("is longer than 80 characters"), "{view:?}");
    assert!(view.notes.iter().any(|note| note.text == "New buckets: Batch 7."), "{:?}", view.notes);
    bench.studio.import_spreadsheet(NOW, &file, &[]).unwrap();
    assert_eq!(bench.buckets_named("Batch 7"), 1);
    assert_eq!(bench.studio.buckets(NOW).unwrap().buckets.len(), 1, "one of years ago is not for weighing");

    // With two buckets in use nobody can say which it was.
    bench.save(EditorKind::Bucket, &bench.glaze(), &[("name", "Second bucket")]);
    let file = bench.write("more.csv", format!("date,form,glaze,bucket,zone,wet g\n{}", line(6, "")));
    bench.studio.import_spreadsheet(NOW, &file, &[]).unwrap();
    assert_eq!(bench.buckets_named("From the spreadsheet"), 1);
}

#[test]
fn a_check_counts_from_its_day_on() {
    let bench = Bench::set_up();
    // The glaze was made with a check of SG 1.45, now; the sheet knows of none before.
    let today = "date,form,glaze,zone,wet g\n2026-11-25T23:30:00Z,Small mug,Ash white,in,19.4\n2024-11-25,Small mug,Ash white,in,19.4\n";
    let view = bench.import_text(today);
    assert!(view.notes.iter().any(|note| note.text.starts_with("1 reading has no SG")), "{:?}", view.notes);
}

/// What is counted in the sentence of a view: taken in, here already, refused.
fn counted(view: &ImportView) -> [usize; 3] {
    let mut counted = [0; 3];
    for sentence in view.found.split(". ") {
        let number = sentence.split(' ').next().unwrap().parse().unwrap_or(0);
        let place = if sentence.contains("would be") {
            0
        } else if sentence.contains("already") {
            1
        } else {
            2
        };
        counted[place] = number;
    }
    counted
}

fn cell() -> impl Strategy<Value = String> {
    prop_oneof![
        Just("Small mug".to_owned()),
        Just("Ash white".to_owned()),
        Just("inside".to_owned()),
        Just("2025-03-04".to_owned()),
        "[0-9]{1,2}[/.-][0-9]{1,2}[/.-][0-9]{2,4}",
        "[0-9]{1,4}[.,]?[0-9]{0,3} ?(g|oz|kg)?",
        "[=+@-]?[A-Za-z0-9 ]{0,12}",
        "\\PC{0,12}",
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn any_bytes_are_planned_or_refused_in_a_sentence(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        let bench = Bench::set_up();
        match bench.studio.import(NOW, &bench.write("any.csv", &bytes), &[]) {
            Ok(view) => prop_assert!(!view.found.is_empty()),
            Err(error) => prop_assert!(!error.to_string().is_empty()),
        }
    }

    #[test]
    fn every_line_is_saved_refused_or_here_already(
        rows in prop::collection::vec(prop::collection::vec(cell(), 5..7), 1..30),
        good in prop::collection::vec((0..28u32, 170..230u32), 1..20),
    ) {
        let bench = Bench::set_up();
        let mut writer = csv::WriterBuilder::new().flexible(true).from_writer(Vec::new());
        writer.write_record(["date", "form", "glaze", "zone", "wet g", "note"]).unwrap();
        for (day, wet) in &good {
            let (date, wet) = (format!("2025-03-{:02}", day + 1), format!("{}.{}", wet / 10, wet % 10));
            writer.write_record([&date, "Small mug", "Ash white", "inside", &wet, ""]).unwrap();
        }
        for row in &rows {
            writer.write_record(row).unwrap();
        }
        let file = bench.write("rows.csv", writer.into_inner().unwrap());
        let chosen = [("order", "day_first"), ("decimal", "point")];
        let lines = good.len() + rows.iter().filter(|row| row.iter().any(|cell| !cell.trim().is_empty())).count();
        let view = bench.import(&file, &chosen);
        let [saved, here, refused] = counted(&view);
        prop_assert_eq!((saved + refused, here), (lines, 0), "{:?}", view);
        prop_assert!(saved >= good.len());
        bench.studio.import_spreadsheet(NOW, &file, &values(&chosen)).unwrap();
        prop_assert_eq!(bench.coats(), saved);
        prop_assert_eq!(counted(&bench.import(&file, &chosen)), [0, saved, refused]);
    }
}

const NOTEBOOK: &str = "Date,Piece,Form,Glaze,Zone,Wet weight,Fired,Cone,Result,Faults,Rating\n\
    2026-01-10,A,Small mug,Ash white,inside,14.2,2026-01-12,6,thin,,2\n\
    2026-01-10,A,Small mug,Ash white,outside,15.1,2026-01-12,cone 6,right,,2\n\
    2026-01-10,B,Small mug,Ash white,inside,17.2,2026-01-12,6,right,,****\n\
    2026-01-11,C,Small mug,Ash white,inside,18.4,2026-01-12,6,right,,5/5\n\
    2026-02-03,D,Small mug,Ash white,inside,25.2,2026-02-03,6,too thick,running; pinholing,1\n\
    2026-02-03,E,Small mug,Ash white,inside,20.0,,,,,\n";

#[test]
fn a_notebook_with_results_teaches_from_the_first_day() {
    let bench = Bench::with_kiln();
    let view = bench.import_text(NOTEBOOK);
    assert_eq!(view.row_errors, Vec::<String>::new());
    assert!(
        view.found.ends_with("6 readings would be imported. 5 of them say how they came out of the kiln."),
        "{}",
        view.found
    );
    let file = bench.write("notebook.csv", NOTEBOOK);
    let before = bench.dump();
    let done = bench.studio.import_spreadsheet(NOW, &file, &[]).unwrap();

    // One firing for each day and cone, done, with what was seen of each piece.
    let firings = bench.studio.kiln(NOW).unwrap().firings;
    assert_eq!(firings.len(), 2, "{firings:?}");
    assert!(firings.iter().all(|firing| !firing.chosen && firing.title.contains("Cone 6")), "{firings:?}");
    let january = bench.firing(&firings[1].id);
    assert_eq!((january.pieces.len(), january.next.as_str()), (3, "Open again"), "{january:?}");
    let february = bench.firing(&firings[0].id);
    assert_eq!(february.pieces.len(), 1);
    let detail = &february.pieces[0].detail;
    assert!(detail.contains("thick") && detail.contains("uns") && detail.contains("inholes"), "{detail}");
    // Each counts for its glaze, inside and outside together while they are few; also the one fired on the day it was glazed.
    let windows = bench.findings().windows;
    let mut marks: Vec<Mark> = windows.iter().flat_map(|window| &window.chart.dots).map(|dot| dot.mark).collect();
    marks.sort_by_key(|mark| *mark as u8);
    assert_eq!(marks, [Mark::Thin, Mark::Right, Mark::Right, Mark::Right, Mark::Thick]);

    assert!(!bench.import_text(NOTEBOOK).can_take_in, "all of it is here");
    bench.studio.undo(NOW, &done.undo).unwrap();
    assert_eq!(bench.studio.kiln(NOW).unwrap().firings.len(), 0);
    assert_eq!(bench.coats(), before.lines().filter(|line| line.starts_with("coat ")).count());
}

#[test]
fn results_that_cannot_be_are_named_by_their_lines() {
    let bench = Bench::with_kiln();
    let line = |more: &str| format!("2026-01-10,Small mug,Ash white,inside,17,{more}\n");
    let sheet = |lines: &[&str]| {
        let lines: String = lines.iter().map(|more| line(more)).collect();
        format!("Date,Form,Glaze,Zone,Wet weight,Fired,Cone,Result,Faults,Rating\n{lines}")
    };
    let cases = [
        (",6,thin,,", "It says how it came out, but not when it was fired."),
        ("2026-01-09,6,thin,,", "It was fired before it was glazed."),
        ("2026-01-12,,thin,,", "It has no cone."),
        ("2026-01-12,hot,thin,,", "“hot” is not a cone."),
        ("2026-01-12,6,brown,,", "“brown” is not a result."),
        ("2026-01-12,6,thin,ugly,", "“ugly” is not a fault that laydown knows."),
        ("2026-01-12,6,thin,,11", "“11” is not a rating."),
        ("soon,6,thin,,", "“soon” is not a date"),
        ("2027-01-12,6,thin,,", "2027-01-12 is in the future."),
    ];
    let view = bench.import_text(&sheet(&cases.map(|(more, _)| more)));
    for (at, (_, sentence)) in cases.iter().enumerate() {
        let said = &view.row_errors[at];
        assert!(said.contains(sentence), "{said} is not {sentence}");
    }
    // What the sheet leaves open is asked.
    let open = |text: &str, chosen: &[(&str, &str)]| {
        let view = bench.import(&bench.write("open.csv", text), chosen);
        let refused = view.questions.iter().map(|field| field.refusal.clone()).filter(|refusal| !refusal.is_empty());
        (view.can_take_in, refused.chain(view.notes.iter().map(|note| note.text.clone())).collect::<Vec<_>>().join(" "))
    };
    let no_cone =
        "Date,Form,Glaze,Zone,Wet weight,Fired,Result\n2026-01-10,Small mug,Ash white,inside,17,2026-01-12,right\n";
    let (can, said) = open(no_cone, &[]);
    assert!(!can && said.contains("No column is set to Cone."), "{said}");
    assert!(open(no_cone, &[("cone", "6")]).0);
    let (can, said) =
        open("Date,Form,Glaze,Zone,Wet weight,Result\n2026-01-10,Small mug,Ash white,inside,17,right\n", &[]);
    assert!(!can && said.contains("No column is set to the day of the firing."), "{said}");
    let without = Bench::set_up();
    let view = without.import_text(&sheet(&["2026-01-12,6,thin,,"]));
    assert!(view.notes.iter().any(|note| note.text.starts_with("There is no kiln here yet.")), "{:?}", view.notes);
}
