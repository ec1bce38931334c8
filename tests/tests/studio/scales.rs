//! Scales: their own test of ten loads, a known weight, the class on the plate, and which of them decides about this piece.

use laydown_app::{EditorEntry, EditorKind, EditorView, Note, StudioError};
use laydown_store::entity::{Entity, Scale, ScaleTest};

use crate::{Bench, NOW, editor, net, two_weights};

const TEN: &str = "312.4\n312.5\n312.4\n312.3\n312.4\n312.6\n312.4\n312.3\n312.5\n312.4";
/// The same load on a scale that draughts reach.
const UNSTEADY: &str = "312.4\n313.1\n311.9\n312.6\n311.6\n312.9\n312.2\n313.3\n311.8\n312.4";

fn said(results: &[Note]) -> String {
    results.iter().map(|note| note.text.as_str()).collect::<Vec<_>>().join("\n")
}

impl Bench {
    fn test_view(&self, values: &[(&str, &str)]) -> EditorView {
        self.studio.editor(NOW, &editor(EditorKind::ScaleTest, "", values)).unwrap()
    }

    fn scale(&self) -> Scale {
        self.studio.store().read(Scale::all).unwrap().remove(0)
    }
}

#[test]
fn ten_loads_say_how_well_a_scale_repeats_and_weigh_counts_with_it() {
    let bench = Bench::set_up();
    let saved = bench.studio.save(NOW, net("20")).unwrap();
    bench.studio.set_control(NOW, &saved.id, true).unwrap();
    let certainty = || bench.weigh(net("20.0")).verdict.unwrap().certainty;
    let before = certainty();
    assert!(before.contains("±0.08 g"), "{before}");

    // The table comes with ten empty rows.
    assert_eq!(bench.test_view(&[]).fields[1].text.split('\n').count(), 10);
    let steady = said(&bench.test_view(&[("readings", TEN)]).results);
    assert!(steady.contains("10 readings: mean 312.42 g, standard deviation 0.09 g (0.06 to 0.17 g"), "{steady}");
    let unsteady = bench.test_view(&[("readings", UNSTEADY)]);
    assert!(said(&unsteady.results).contains("worse than its step"), "{}", said(&unsteady.results));
    // 0.565 g: a net weight is known to 1.96 × √2 × 0.565 g, and four of that are 7% of 89.6 g.
    assert!(said(&unsteady.results).contains("Good for coats from 89.6 g at ±7%"), "{}", said(&unsteady.results));

    let saved = bench.try_save(EditorKind::ScaleTest, "", &[("readings", UNSTEADY)]).unwrap();
    assert_eq!(bench.scale().repeatability_mg, Some(565));
    let after = certainty();
    assert!(after.contains("±1.57 g"), "{after}");
    let section = bench.studio.setup(NOW).unwrap().sections.into_iter().find(|of| of.editor == EditorKind::ScaleTest);
    assert!(section.unwrap().rows[0].detail.contains("0.57 g"));

    // Undone, Weigh counts as before.
    bench.studio.undo(NOW, &saved.undo).unwrap();
    assert_eq!(certainty(), before);
}

#[test]
fn a_repeatability_under_the_step_changes_next_to_nothing() {
    let bench = Bench::set_up();
    bench.save(EditorKind::ScaleTest, "", &[("readings", &["50.0"; 10].join("\n"))]);
    assert_eq!(bench.scale().repeatability_mg, Some(0));
    let verdict = bench.weigh(net("20.0")).verdict.unwrap();
    assert!(verdict.certainty.contains("±0.08 g"), "{}", verdict.certainty);
}

#[test]
fn a_known_weight_is_checked_and_the_class_says_what_is_allowed() {
    let bench = Bench::set_up();
    let check = |shown: &str| said(&bench.test_view(&[("known", "500"), ("shown", shown)]).results);
    assert!(check("500.1").contains("Right for the known weight"), "{}", check("500.1"));
    assert!(check("500.4").contains("0.4 g too much"), "{}", check("500.4"));
    assert!(check("499.6").contains("0.4 g too little"), "{}", check("499.6"));
    let scale = bench.scale().id.to_string();
    let class = |class: &str| {
        let entry = EditorEntry { id: scale.clone(), ..editor(EditorKind::Scale, "", &[("accuracy_class", class)]) };
        said(&bench.studio.editor(NOW, &entry).unwrap().results)
    };
    // 20,000 steps of 0.1 g are class II; 1,000 g of it are 10,000 steps, ±1 step at first, ±2 in use.
    assert!(class("II").contains("Class II allows ±0.2 g in use at 1000.0 g"), "{}", class("II"));
    assert!(class("III").contains("Check its plate"), "{}", class("III"));
    let entry = EditorEntry { id: scale, ..editor(EditorKind::Scale, "", &[("accuracy_class", "II")]) };
    bench.studio.save_record(NOW, &entry).unwrap();
    assert!(check("500.1").contains("±0.1 g is allowed"), "{}", check("500.1"));
    assert!(check("500.2").contains("too much"), "{}", check("500.2"));
}

#[test]
fn what_is_no_test_is_refused_in_words() {
    let bench = Bench::set_up();
    let before = bench.dump();
    let readings = |from: &str, to: &str| TEN.replacen(from, to, 1);
    for (values, field, word) in [
        (vec![("readings", "312.4\n312.5".to_owned())], "readings", "10 times"),
        (vec![("readings", readings("312.6", "31.26"))], "readings", "Row 6"),
        (vec![("readings", readings("312.6", "3126"))], "readings", "Row 6"),
        (vec![("readings", readings("312.6", "31o.6"))], "readings", "Row 6"),
        (vec![("known", "500".to_owned())], "shown", "known weight"),
        (vec![], "readings", "ten times"),
    ] {
        let values: Vec<(&str, &str)> = values.iter().map(|(key, text)| (*key, text.as_str())).collect();
        let refused = bench.try_save(EditorKind::ScaleTest, "", &values).unwrap_err();
        let StudioError::Refused { field: found, sentence } = refused else { panic!("{refused:?}") };
        assert_eq!(found, field, "{sentence}");
        assert!(sentence.contains(word), "{sentence}");
    }
    assert_eq!(bench.dump(), before);
}

#[test]
fn weigh_says_which_scale_decides_about_this_piece() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Scale, "", &[("name", "Kitchen scale"), ("capacity", "5000"), ("step", "5")]);
    bench.save(EditorKind::Scale, "", &[("name", "Pocket scale"), ("capacity", "200"), ("step", "0.01")]);
    let saved = bench.studio.save(NOW, net("20")).unwrap();
    bench.studio.set_control(NOW, &saved.id, true).unwrap();
    let view = bench.weigh(two_weights("312.4", ""));
    let detail = |title: &str| view.scales.iter().find(|row| row.title == title).unwrap().detail.clone();
    for (scale, word) in [
        ("Bench scale", "good for this coat"),
        ("Kitchen scale", "too coarse for this coat"),
        ("Pocket scale", "too small for this piece"),
    ] {
        assert!(detail(scale).ends_with(word), "{scale}: {}", detail(scale));
    }
}

#[test]
fn a_test_is_corrected_archived_and_brought_back() {
    let bench = Bench::set_up();
    let test = bench.save(EditorKind::ScaleTest, "", &[("readings", TEN)]);
    let first = bench.scale().repeatability_mg;
    let corrected = TEN.replacen("312.6", "312.4", 1);
    let entry = EditorEntry { id: test.clone(), ..editor(EditorKind::ScaleTest, "", &[("readings", &corrected)]) };
    bench.studio.save_record(NOW, &entry).unwrap();
    assert!(bench.scale().repeatability_mg < first);
    bench.studio.remove(NOW, EditorKind::ScaleTest, &test).unwrap();
    assert!(bench.studio.store().read(ScaleTest::all).unwrap()[0].gone);
    bench.studio.unarchive(NOW, EditorKind::ScaleTest, &test).unwrap();
    assert!(!bench.studio.store().read(ScaleTest::all).unwrap()[0].gone);
}
