//! A coat that was saved by mistake is corrected, and the history shows what it was.

use laydown_app::{CommandResult, EditorEntry, EditorKind, StudioError, Value, WeighEntry};
use laydown_domain::form::ZoneKind;

use crate::{Bench, NOW, net, two_weights};

const LATER: i64 = 60_000;

impl Bench {
    fn try_correct(&self, coat: &str, values: &[(&str, &str)]) -> Result<CommandResult, StudioError> {
        let values = values.iter().map(|(key, text)| Value { key: (*key).into(), text: (*text).into() }).collect();
        let (kind, id) = (EditorKind::Coat, coat.to_owned());
        let entry = EditorEntry { kind, id, subject: String::new(), values, draft: String::new() };
        self.studio.save_record(NOW.at(NOW.unix_ms + LATER), &entry)
    }

    fn correct(&self, coat: &str, values: &[(&str, &str)]) -> CommandResult {
        self.try_correct(coat, values).unwrap()
    }

    /// Saves an inside and, on the same piece, an outside; answers with their ids.
    fn mug(&self, inside: &str, outside: &str) -> (String, String) {
        let entry = WeighEntry { zone: Some(ZoneKind::Inside), ..net(inside) };
        let first = self.studio.save(NOW, self.weigh(entry).entry).unwrap();
        let next = WeighEntry { net: outside.to_owned(), ..first.next[0].entry.clone() };
        let second = self.studio.save(NOW, self.weigh(next).entry).unwrap();
        (first.id, second.id)
    }

    /// What the record of a coat says, by its labels.
    fn line(&self, coat: &str, label: &str) -> String {
        let lines = self.studio.coat(NOW, coat).unwrap().lines;
        lines.into_iter().find(|line| line.label == label).map(|line| line.value).unwrap_or_default()
    }

    fn piece_title(&self, coat: &str) -> (String, String) {
        let piece = self.studio.coat(NOW, coat).unwrap().piece;
        (self.studio.piece(NOW, &piece).unwrap().title, piece)
    }

    fn history(&self, coat: &str) -> Vec<String> {
        let changes = self.studio.history(NOW, coat).unwrap().recent_changes;
        changes.into_iter().map(|change| change.title).collect()
    }
}

#[test]
fn a_weight_is_corrected_and_the_history_shows_what_it_was() {
    let bench = Bench::set_up();
    let (inside, _) = bench.mug("19.4", "20.1");
    let (laydown, target) = (bench.line(&inside, "Laydown"), bench.line(&inside, "Target when weighed"));
    let corrected = bench.correct(&inside, &[("net", "17.4")]);
    assert_eq!(bench.line(&inside, "Wet weight"), "17.4 g");
    assert_ne!(bench.line(&inside, "Laydown"), laydown);
    // What was said then stays as it was said.
    assert_eq!(bench.line(&inside, "Target when weighed"), target);
    let history = bench.history(&inside);
    assert!(history[0].contains("Wet weight: 17.4 g") && history[1].contains("Wet weight: 19.4 g"), "{history:?}");
    bench.studio.undo(NOW, &corrected.undo).unwrap();
    assert_eq!((bench.line(&inside, "Wet weight"), bench.line(&inside, "Laydown")), ("19.4 g".into(), laydown));
    // Saying what is there changes nothing.
    let before = bench.dump();
    assert_eq!(bench.correct(&inside, &[("net", "19.4")]).undo, "");
    assert_eq!(bench.dump(), before);
}

#[test]
fn a_touch_up_counts_once_however_often_it_is_saved() {
    let bench = Bench::set_up();
    let (inside, _) = bench.mug("19.4", "20.1");
    for _ in 0..2 {
        bench.correct(&inside, &[("added", "0.8"), ("rubbed_off", "0.3")]);
        assert_eq!(bench.line(&inside, "Wet weight"), "19.9 g");
    }
    assert_eq!(bench.line(&inside, "Added in a touch-up"), "0.8 g");
    assert_eq!(bench.line(&inside, "Rubbed off"), "0.3 g");
    // The weight as read is corrected beside it, and the touch-up taken back.
    bench.correct(&inside, &[("net", "18.4")]);
    assert_eq!(bench.line(&inside, "Wet weight"), "18.9 g");
    bench.correct(&inside, &[("added", ""), ("rubbed_off", "")]);
    assert_eq!(bench.line(&inside, "Wet weight"), "18.4 g");

    let two = bench.studio.save(NOW, bench.weigh(two_weights("312.4", "331.8")).entry).unwrap().id;
    bench.correct(&two, &[("glazed", "331.9"), ("rubbed_off", "0.5")]);
    assert_eq!(bench.line(&two, "Wet weight"), "19.0 g");
    assert_eq!(bench.line(&two, "Bare, glazed"), "312.4 g, 331.9 g");
    for (values, field) in [
        (&[("glazed", "300")][..], "glazed"),
        (&[("rubbed_off", "25")], "glazed"),
        (&[("added", "900")], "glazed"),
        (&[("bare", "much")], "bare"),
    ] {
        let before = bench.dump();
        let Err(StudioError::Refused { field: found, sentence }) = bench.try_correct(&two, values) else { panic!() };
        assert_eq!(found, field, "{sentence}");
        assert_eq!(bench.dump(), before);
    }
}

#[test]
fn a_corrected_weight_is_judged_against_the_target_of_then_and_never_green_on_a_guess() {
    let bench = Bench::set_up();
    let (inside, _) = bench.mug("19.4", "20.1");
    assert_eq!(bench.line(&inside, "Verdict"), "A guess");
    for (weight, verdict) in [("5", "Short"), ("19", "A guess"), ("60", "Over"), ("19.4", "A guess")] {
        bench.correct(&inside, &[("net", weight)]);
        assert_eq!(bench.line(&inside, "Verdict"), verdict, "{weight}");
    }
    // Against a target that is trusted: the first one is the control piece.
    bench.studio.set_control(NOW, &inside, true).unwrap();
    let second = WeighEntry { zone: Some(ZoneKind::Inside), ..net("19.2") };
    let second = bench.studio.save(NOW, bench.weigh(second).entry).unwrap().id;
    assert_eq!(bench.line(&second, "Verdict"), "Within");
    for (weight, verdict) in [("15", "Short"), ("19.4", "Within"), ("25", "Over"), ("19.2", "Within")] {
        bench.correct(&second, &[("net", weight)]);
        assert_eq!(bench.line(&second, "Verdict"), verdict, "{weight}");
    }
}

#[test]
fn another_zone_or_bucket_has_its_own_area_sg_and_target() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Glaze, "", &[("name", "Liner"), ("specific_gravity", "1.5")]);
    let buckets = bench.studio.buckets(NOW).unwrap().buckets;
    let bucket = |glaze: &str| buckets.iter().find(|bucket| bucket.glaze == glaze).unwrap().id.clone();
    let save = |zone, bucket: &str| {
        let entry = WeighEntry { zone: Some(zone), bucket: bucket.to_owned(), ..net("19.4") };
        bench.studio.save(NOW, bench.weigh(entry).entry).unwrap().id
    };
    let (ash, liner) = (bucket("Ash white"), bucket("Liner"));
    let wrong = save(ZoneKind::Inside, &ash);
    let right = save(ZoneKind::Outside, &liner);
    let corrected = bench.correct(&wrong, &[("zone", "outside"), ("bucket", &liner)]);
    for label in ["Wet weight", "Verdict", "Target when weighed", "Laydown", "Glaze, bucket", "SG", "Area"] {
        assert_eq!(bench.line(&wrong, label), bench.line(&right, label), "{label}");
    }
    assert!(bench.studio.coat(NOW, &wrong).unwrap().title.ends_with("outside"));
    bench.studio.undo(NOW, &corrected.undo).unwrap();
    assert_eq!(bench.line(&wrong, "SG"), "1.45");
    // A check made afterwards is not that of then.
    bench.save(EditorKind::Check, &liner, &[("way", "typed"), ("typed", "1.40")]);
    bench.correct(&wrong, &[("bucket", &liner)]);
    assert_eq!(bench.line(&wrong, "SG"), "1.50");
}

#[test]
fn a_coat_is_put_onto_another_piece_and_no_piece_is_left_without_coats() {
    let bench = Bench::set_up();
    let (inside, outside) = bench.mug("19.4", "20.1");
    let other = WeighEntry { zone: Some(ZoneKind::Inside), ..net("19.2") };
    let other = bench.studio.save(NOW, bench.weigh(other).entry).unwrap().id;
    let ((first, first_id), (second, second_id)) = (bench.piece_title(&inside), bench.piece_title(&other));
    assert_ne!(first, second);

    let moved = bench.correct(&outside, &[("piece", &second_id)]);
    assert_eq!(bench.piece_title(&outside).0, second);
    assert_eq!(bench.piece_title(&inside).0, first);
    bench.studio.undo(NOW, &moved.undo).unwrap();
    assert_eq!(bench.piece_title(&outside).0, first);

    // The coat that bears the code leaves it on the piece.
    bench.correct(&inside, &[("piece", "new")]);
    let (own, own_id) = bench.piece_title(&inside);
    assert!(own != first && own != second && own.starts_with("Small mug, "), "{own}");
    assert_eq!(bench.piece_title(&outside).0, first);
    // A piece whose only coat leaves is no piece any more, and its code leads to the coat.
    bench.correct(&inside, &[("piece", &first_id)]);
    assert_eq!(bench.piece_title(&inside).0, first);
    assert!(bench.studio.piece(NOW, &own_id).is_err());
    let entry = bench.weigh(net("")).entry;
    let found = bench.studio.pieces_to_glaze(NOW, &entry, own.rsplit(' ').next().unwrap()).unwrap();
    assert_eq!(found.groups[0].pieces[0].title, first);

    // One that is in a firing stays where it is.
    bench.save(
        EditorKind::Kiln,
        "",
        &[("name", "Garden kiln"), ("round", "yes"), ("across", "40 cm"), ("shelves", "2")],
    );
    let firing = bench.save(EditorKind::Firing, "", &[("cone", "6")]);
    bench.studio.load(NOW, &firing, &[second_id], 0).unwrap();
    let Err(StudioError::Refused { field, sentence }) = bench.try_correct(&other, &[("piece", &first_id)]) else {
        panic!()
    };
    assert!(field == "piece" && sentence.contains("in a firing"), "{sentence}");
}
