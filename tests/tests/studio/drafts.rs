//! A command given twice does it once: after an answer was lost, a tap too many, or a turn of the phone.

use laydown_app::{CommandResult, EditorEntry, EditorKind, NextCoat, WeighEntry};
use laydown_domain::form::ZoneKind;

use crate::{Bench, NOW, editor, net};

/// An entry as the Weigh screen has it once the studio has answered.
fn begun(bench: &Bench, entry: WeighEntry) -> WeighEntry {
    let view = bench.weigh(entry);
    assert!(!view.entry.draft.is_empty());
    view.entry
}

fn save(bench: &Bench, entry: &WeighEntry) -> CommandResult {
    bench.studio.save(NOW, entry.clone()).unwrap()
}

fn recent(bench: &Bench) -> Vec<String> {
    bench.weigh(net("")).recent.into_iter().map(|coat| coat.id).collect()
}

#[test]
fn a_coat_saved_twice_is_saved_once_and_answered_as_before() {
    let bench = Bench::set_up();
    let entry = begun(&bench, WeighEntry { zone: Some(ZoneKind::Inside), ..net("19.4") });
    assert_eq!(bench.weigh(entry.clone()).entry, entry, "the draft stays while one types");
    let first = save(&bench, &entry);
    let after = bench.dump();
    // Later, too: the answer may have been lost for a while.
    assert_eq!(bench.studio.save(NOW.at(NOW.unix_ms + 60_000), entry.clone()).unwrap(), first);
    assert_eq!(bench.dump(), after);
    assert!(!first.next.is_empty());

    // What follows on the same piece has a draft of its own.
    let NextCoat { entry: next, .. } = first.next[0].clone();
    let next = begun(&bench, WeighEntry { net: "20".into(), ..next });
    assert_ne!(next.draft, entry.draft);
    let second = save(&bench, &next);
    assert_ne!(second.id, first.id);
    assert_eq!(save(&bench, &next), second);
    assert_eq!(save(&bench, &entry), first);
    assert_eq!(recent(&bench).len(), 2);
}

#[test]
fn the_same_draft_with_another_reading_is_another_coat() {
    let bench = Bench::set_up();
    let entry = begun(&bench, net("19.4"));
    let first = save(&bench, &entry);
    // The answer was lost, and the potter read the scale again: neither reading is lost.
    let corrected = WeighEntry { net: "19.6".into(), ..entry.clone() };
    let second = save(&bench, &corrected);
    assert_ne!(second.id, first.id);
    assert_eq!(save(&bench, &corrected), second);
    assert_eq!(save(&bench, &entry), first);
    assert_eq!(recent(&bench).len(), 2);
}

#[test]
fn a_coat_that_was_undone_can_be_saved_again() {
    let bench = Bench::set_up();
    let entry = begun(&bench, net("19.4"));
    let first = save(&bench, &entry);
    let undone = bench.studio.undo(NOW, &first.undo).unwrap();
    let second = save(&bench, &entry);
    assert_ne!(second.id, first.id);
    assert_eq!(save(&bench, &entry), second);
    assert_eq!(recent(&bench), std::slice::from_ref(&second.id));
    // The first one can still be done again: nothing of it is used up.
    bench.studio.undo(NOW, &undone.undo).unwrap();
    assert_eq!(recent(&bench).len(), 2);
}

#[test]
fn a_late_remember_brings_no_digits_back() {
    let bench = Bench::set_up();
    let entry = begun(&bench, net("19.4"));
    bench.studio.remember(NOW, &entry).unwrap();
    assert_eq!(bench.studio.weigh(NOW, None).unwrap().entry, entry, "half typed");
    save(&bench, &entry);
    bench.studio.remember(NOW, &entry).unwrap();
    let view = bench.studio.weigh(NOW, None).unwrap();
    assert_eq!(view.entry.net, "");
    assert_ne!(view.entry.draft, entry.draft);
}

#[test]
fn what_is_begun_on_two_screens_or_phones_at_once_has_two_drafts() {
    let (bench, other) = (Bench::set_up(), Bench::set_up());
    let draft = |bench: &Bench, kind| bench.studio.editor(NOW, &editor(kind, "", &[])).unwrap().draft;
    let drafts = [
        begun(&bench, net("")).draft,
        draft(&bench, EditorKind::Scale),
        draft(&bench, EditorKind::Glaze),
        begun(&other, net("")).draft,
    ];
    for (at, draft) in drafts.iter().enumerate() {
        let id: uuid::Uuid = draft.parse().unwrap();
        assert_eq!(id.get_version_num(), 7);
        assert!(drafts[..at].iter().all(|before| before != draft));
    }
    assert_eq!(draft(&bench, EditorKind::Scale), drafts[1], "asked for twice it is the same");
    assert_eq!(draft(&bench, EditorKind::Preference), "");
}

/// Everything that an editor makes.
const NEW: &[(EditorKind, &[(&str, &str)])] = &[
    (EditorKind::Form, &[("name", "Bowl"), ("class", "open_bowl"), ("way", "profile")]),
    (EditorKind::Form, &[("name", "Mug"), ("capacity", "9 fl oz")]),
    (EditorKind::Body, &[("name", "Stoneware"), ("to_bisque", "6"), ("to_fired", "12")]),
    (EditorKind::Glaze, &[("name", "Celadon"), ("specific_gravity", "1450 g/l")]),
    (EditorKind::Bucket, &[("name", "Second"), ("volume", "1 us gal")]),
    (EditorKind::Check, &[("way", "typed"), ("typed", "40 Bé")]),
    (EditorKind::Check, &[("way", "vessel"), ("full", "640 g")]),
    (EditorKind::Vessel, &[("name", "Jar"), ("empty", "4 oz"), ("with_water", "300 g")]),
    (EditorKind::Scale, &[("name", "Pocket"), ("capacity", "7 oz"), ("step", "0.01 oz")]),
    (EditorKind::Tile, &[("name", "Row 1"), ("area", "50"), ("net", "5.05")]),
    (EditorKind::Control, &[("net", "19.4 g"), ("specific_gravity", "1.45")]),
    (EditorKind::Kiln, &[("name", "Front"), ("across", "17 in"), ("deep", "17 in"), ("shelves", "4")]),
    (EditorKind::Firing, &[("cone", "6"), ("number", "7"), ("note", "windy")]),
    (EditorKind::Piece, &[("name", "Teapot"), ("code", "17")]),
];

#[test]
fn a_record_saved_twice_is_saved_once_and_answered_as_before() {
    for style in
        [&[][..], &[("mass", "ounce"), ("length", "inch"), ("volume", "us_fluid_ounce"), ("area", "square_inch")]]
    {
        let bench = Bench::set_up();
        bench.save(EditorKind::Vessel, "", &[("name", "Jam jar"), ("empty", "186.4 g"), ("with_water", "498.2 g")]);
        bench.save(EditorKind::Kiln, "", &[("name", "Back"), ("across", "40 cm"), ("deep", "40 cm"), ("shelves", "4")]);
        bench.save(EditorKind::Preference, "", style);
        let (bucket, glaze) = (bench.bucket(), bench.studio.findings(NOW).unwrap().glazes[0].id.clone());
        for (at, (kind, values)) in NEW.iter().enumerate() {
            let subject = match kind {
                EditorKind::Bucket => glaze.as_str(),
                EditorKind::Check => bucket.as_str(),
                _ => "",
            };
            let now = NOW.at(NOW.unix_ms + 1_000 * (at as i64 + 1));
            let entry = editor(*kind, subject, values);
            let draft = bench.studio.editor(now, &entry).unwrap().draft;
            let entry = EditorEntry { draft, ..entry };
            assert_eq!(bench.studio.editor(now, &entry).unwrap().draft, entry.draft, "{kind:?}");
            let first = bench.studio.save_record(now, &entry).unwrap();
            assert_eq!(first.id, entry.draft, "{kind:?}");
            let after = bench.dump();
            assert_eq!(bench.studio.save_record(now.at(now.unix_ms + 500), &entry).unwrap(), first, "{kind:?}");
            assert_eq!(bench.dump(), after, "{kind:?}");
            // One undo takes away all that it made; then it can be saved anew.
            bench.studio.undo(now, &first.undo).unwrap();
            let again = bench.studio.save_record(now, &entry).unwrap();
            assert_ne!(again.id, first.id, "{kind:?}");
            assert_eq!(bench.studio.save_record(now, &entry).unwrap(), again, "{kind:?}");
            bench.studio.undo(now, &again.undo).unwrap();
            assert!(bench.studio.undo(now, &first.undo).is_err(), "{kind:?}");
        }
    }
}

#[test]
fn a_draft_that_is_saved_already_is_changed_and_not_doubled() {
    let bench = Bench::set_up();
    let entry = editor(EditorKind::Scale, "", &[("name", "Pocket"), ("capacity", "200"), ("step", "0.01")]);
    let entry = EditorEntry { draft: bench.studio.editor(NOW, &entry).unwrap().draft, ..entry };
    let first = bench.studio.save_record(NOW, &entry).unwrap();
    let mut renamed = entry.clone();
    renamed.values[0].text = "Pocket scale".into();
    let second = bench.studio.save_record(NOW, &renamed).unwrap();
    assert_eq!(second.id, first.id);
    assert_ne!(second.undo, first.undo);
    assert_eq!(bench.weigh(net("")).scales.len(), 2);
}
