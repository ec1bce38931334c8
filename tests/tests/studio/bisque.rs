//! Bisque lots: what they drink, how they stand to the lots before, and rinsed bisque that is still wet at Weigh.

use laydown_app::{EditorEntry, EditorKind, EditorView, StudioError, WeighEntry};
use laydown_store::entity::{BisqueLot, Body, Entity, Form};

use crate::{Bench, NOW, editor, net, two_weights};

fn said(view: &EditorView) -> String {
    view.results.iter().map(|note| note.text.as_str()).collect::<Vec<_>>().join("\n")
}

impl Bench {
    fn lot(&self, name: &str, date: &str, soaked: &str) {
        let values = [("name", name), ("date", date), ("soaking", "cold"), ("bone_dry", "100"), ("soaked", soaked)];
        self.save(EditorKind::BisqueLot, "", &values);
    }

    fn lot_view(&self, values: &[(&str, &str)]) -> EditorView {
        self.studio.editor(NOW, &editor(EditorKind::BisqueLot, "", values)).unwrap()
    }
}

/// The weights of ASTM C373's formulas: dry 100, suspended 58, saturated 112 g.
#[test]
fn a_lot_says_what_its_ware_drinks() {
    let bench = Bench::set_up();
    let by_hand = bench.lot_view(&[("bone_dry", "100"), ("soaked", "112")]);
    assert!(said(&by_hand).contains("Absorbs 12.0%"), "{}", said(&by_hand));
    assert!(said(&by_hand).contains("boiled"), "{}", said(&by_hand));
    assert!(!by_hand.fields.iter().any(|field| field.key == "water_temperature"), "nothing hangs in water");
    let hung = bench.lot_view(&[("bone_dry", "100"), ("soaked", "112"), ("suspended", "58")]);
    // 54 ml displaced, at the 0.998 g/ml of water at 20 °C.
    assert!(said(&hung).contains("Bulk density 1.85 g/ml; open pores are 22% of its volume"), "{}", said(&hung));
    assert!(hung.fields.iter().any(|field| field.key == "water_temperature"));
    bench.lot("Bisque 14", "2026-10-01", "108");
    let section = bench.studio.setup(NOW).unwrap().sections.into_iter().find(|of| of.editor == EditorKind::BisqueLot);
    assert!(section.unwrap().rows[0].detail.contains("absorbs 8.0% (cold-soaked)"));
}

#[test]
fn impossible_weights_are_refused_and_write_nothing() {
    let bench = Bench::set_up();
    let before = bench.dump();
    for (dry, soaked, suspended, field, word) in [
        ("10", "14", "12", "suspended", "less than dry"),
        ("100", "99", "", "soaked", "less than dry"),
        ("100", "1080", "", "soaked", "absorbs that much"),
        ("0", "10", "", "bone_dry", "It cannot be 0"),
    ] {
        let values = [("name", "Odd"), ("bone_dry", dry), ("soaked", soaked), ("suspended", suspended)];
        let refused = bench.try_save(EditorKind::BisqueLot, "", &values).unwrap_err();
        let StudioError::Refused { field: found, sentence } = refused else { panic!("{refused:?}") };
        assert_eq!(found, field, "{sentence}");
        assert!(sentence.contains(word), "{sentence}");
    }
    assert_eq!(bench.dump(), before);
}

#[test]
fn a_lot_is_held_against_those_before_it_that_were_soaked_alike() {
    let bench = Bench::set_up();
    for (name, date, soaked) in [("1", "2026-08-01", "108"), ("2", "2026-09-01", "108.2"), ("3", "2026-10-01", "107.9")]
    {
        bench.lot(name, date, soaked);
    }
    let view = |soaked: &str, way: &str| {
        said(&bench.lot_view(&[("date", "2026-11-01"), ("soaking", way), ("bone_dry", "100"), ("soaked", soaked)]))
    };
    assert!(view("108.1", "cold").contains("Like the lots before: 8.0%"), "{}", view("108.1", "cold"));
    assert!(view("110", "cold").contains("More than the lots before"), "{}", view("110", "cold"));
    assert!(view("106", "cold").contains("Less than the lots before"), "{}", view("106", "cold"));
    assert!(!view("110", "boil").contains("lots before"), "{}", view("110", "boil"));
    // Archived, a lot says nothing more; brought back it does.
    let lots = bench.studio.store().read(BisqueLot::all).unwrap();
    for lot in &lots[1..] {
        bench.studio.remove(NOW, EditorKind::BisqueLot, &lot.id.to_string()).unwrap();
    }
    assert!(!view("110", "cold").contains("lots before"));
    bench.studio.unarchive(NOW, EditorKind::BisqueLot, &lots[1].id.to_string()).unwrap();
    assert!(view("110", "cold").contains("More than the lots before"));
}

#[test]
fn rinsed_bisque_that_is_still_wet_is_pointed_out_before_it_is_glazed() {
    let bench = Bench::set_up();
    let notes = |bare: &str| {
        let view = bench.weigh(two_weights(bare, ""));
        view.notes.into_iter().map(|note| note.text).filter(|text| text.contains("rinsed")).collect::<Vec<_>>()
    };
    assert!(notes("326.0").is_empty(), "nothing is known of bare pieces yet");
    for bare in ["310.0", "314.0", "306.0", "312.0", "309.0"] {
        let glazed = format!("{:.1}", bare.parse::<f64>().unwrap() + 20.0);
        bench.studio.save(NOW, two_weights(bare, &glazed)).unwrap();
    }
    assert!(notes("313.0").is_empty());
    let wet = notes("326.0");
    assert!(wet[0].contains("16.0 g more") && wet[0].contains("about 310.0 g"), "{wet:?}");
    // After tare nobody knows.
    assert!(bench.weigh(net("")).notes.iter().all(|note| !note.text.contains("rinsed")));
    // A second coat goes onto a piece that carries the first.
    let first = bench.weigh(net("")).recent[0].id.clone();
    let piece = bench.studio.coat(NOW, &first).unwrap().piece;
    let view = bench.weigh(WeighEntry { piece, ..two_weights("330.0", "") });
    assert!(view.notes.iter().all(|note| !note.text.contains("rinsed")), "{:?}", view.notes);
}

/// What a lot drinks says what can be water: more than that is another pot.
#[test]
fn a_heavier_pot_is_not_taken_for_a_wet_one() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Body, "", &[("name", "White stoneware"), ("to_bisque", "6"), ("to_fired", "12")]);
    let form = bench.studio.weigh(NOW, None).unwrap().forms[0].id.clone();
    let body = bench.studio.setup(NOW).unwrap().sections.into_iter().find(|of| of.editor == EditorKind::Body);
    let body = body.unwrap().rows[0].id.clone();
    let set = |form: &str| {
        bench.studio.store().transact(NOW.unix_ms, |tx| {
            let form = Form::load(tx.conn(), form.parse().unwrap())?.unwrap();
            let body = Some(body.parse().unwrap());
            tx.put(&Form { body, bisque_mg: Some(310_000), ..form }).map(|_| ())
        })
    };
    set(&form).unwrap();
    let is_warned =
        |bare: &str| bench.weigh(two_weights(bare, "")).notes.iter().any(|note| note.text.contains("rinsed"));
    assert!(is_warned("380.0"));
    let values = [("name", "14"), ("date", "2026-10-01"), ("body", &body), ("bone_dry", "100"), ("soaked", "108")];
    bench.save(EditorKind::BisqueLot, "", &values);
    assert!(!is_warned("380.0"), "70 g of water are more than 310 g of this bisque drink");
    assert!(is_warned("335.0"));
    let lot = bench.studio.store().read(BisqueLot::all).unwrap()[0].id.to_string();
    let entry = EditorEntry { id: lot, ..editor(EditorKind::BisqueLot, "", &[]) };
    assert_eq!(bench.studio.editor(NOW, &entry).unwrap().fields[1].text, body);
}

#[test]
fn lots_and_scale_tests_are_drawn_among_the_findings_of_the_glazes_they_move() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Body, "", &[("name", "White stoneware"), ("to_bisque", "6"), ("to_fired", "12")]);
    let (body, form) = bench
        .studio
        .store()
        .read(|conn| Ok::<_, StudioError>((Body::all(conn)?.remove(0).id, Form::all(conn)?.remove(0))))
        .unwrap();
    bench.studio.store().transact(NOW.unix_ms, |tx| tx.put(&Form { body: Some(body), ..form })).unwrap();
    bench.studio.save(NOW, net("19.4")).unwrap();
    let glaze = bench.studio.findings(NOW).unwrap().glazes[0].id.clone();
    let sections = || bench.studio.glaze_findings(NOW, &glaze).unwrap().sections;
    let of = |word: &str| sections().into_iter().find(|section| section.title.starts_with(word));
    let body = body.to_string();
    for (name, date, soaked) in [("1", "2026-08-01", "108"), ("2", "2026-09-01", "108.2"), ("3", "2026-10-01", "111")] {
        assert!(of("Bisque").is_none() || name == "3", "one lot is no trend");
        let values = [("name", name), ("date", date), ("body", &body), ("bone_dry", "100"), ("soaked", soaked)];
        bench.save(EditorKind::BisqueLot, "", &values);
    }
    let bisque = of("Bisque").unwrap();
    assert!(
        bisque.words.contains("absorbs 11.0%") && bisque.words.contains("More than the lots before"),
        "{}",
        bisque.words
    );
    let chart = bisque.chart.unwrap();
    assert_eq!((chart.dots.len(), chart.lines[0].spots.len()), (3, 3));
    assert!(chart.dots[2].at.y < chart.dots[0].at.y, "what drinks more stands higher");

    let test = |from: f64, apart: f64| {
        let row = |at: usize| format!("{:.1}", from + if at.is_multiple_of(2) { apart } else { -apart });
        (0..10).map(row).collect::<Vec<_>>().join("\n")
    };
    bench.save(EditorKind::ScaleTest, "", &[("readings", &test(300.0, 0.1))]);
    assert!(of("Scale").is_none());
    bench
        .studio
        .save_record(NOW.at(NOW.unix_ms + 1), &editor(EditorKind::ScaleTest, "", &[("readings", &test(300.0, 0.9))]))
        .unwrap();
    let scale = of("Scale").unwrap();
    assert!(scale.words.contains("worse than"), "{}", scale.words);
    assert_eq!(scale.chart.unwrap().dots.len(), 2);
    // They go to paper with the others.
    let file = bench.folder.path().join("charts.svg");
    bench.studio.write_charts(NOW, &glaze, &file).unwrap();
    assert!(std::fs::read_to_string(file).unwrap().contains("White stoneware"));
}
