//! How long a coat was dipped or poured: noted where a coat is corrected, and a hint once a few are.

use laydown_app::{EditorEntry, EditorKind, Field, StudioError, WeighEntry};
use laydown_store::entity::{Coat, Entity};

use crate::{Bench, NOW, editor, net};

impl Bench {
    fn time(&self, coat: &str, seconds: &str) -> Result<laydown_app::CommandResult, StudioError> {
        let entry = EditorEntry { id: coat.to_owned(), ..editor(EditorKind::Coat, "", &[("dip", seconds)]) };
        self.studio.save_record(NOW, &entry)
    }

    fn dip_hint(&self) -> Option<String> {
        let notes = self.weigh(net("")).notes.into_iter().map(|note| note.text);
        notes.into_iter().find(|text| text.starts_with("About"))
    }
}

#[test]
fn a_few_timed_coats_hint_how_long_to_dip_and_never_set_the_target() {
    let bench = Bench::set_up();
    let aim = bench.weigh(net("")).target.unwrap();
    // 10 g after a second, and as the square root of the time: 20 g after four; each a little off.
    let coats = [("14.2", "2"), ("17.1", "3"), ("20.2", "4"), ("22.1", "5"), ("19.8", "4")];
    for (at, (wet, seconds)) in coats.into_iter().enumerate() {
        let saved = bench.studio.save(NOW, net(wet)).unwrap();
        bench.time(&saved.id, seconds).unwrap();
        assert_eq!(bench.dip_hint().is_some(), at >= 3, "from four dips on");
    }
    let hint = bench.dip_hint().unwrap();
    let numbers: Vec<f64> = hint.split([' ', ',', ':']).filter_map(|word| word.parse().ok()).collect();
    let [time, from, to, dips] = numbers[..] else { panic!("{hint}") };
    let grams: f64 = aim.wet.split(' ').next().unwrap().parse().unwrap();
    assert!((time - (grams / 9.95).powi(2)).abs() < 0.15, "{hint} for {grams} g");
    assert!(from < time && time < to && to - from < 2.0, "{hint}");
    assert_eq!(dips, 5.0);
    assert_eq!(bench.weigh(net("")).target.unwrap(), aim);
    let lines = bench.studio.coat(NOW, &bench.weigh(net("")).recent[0].id).unwrap().lines;
    assert!(lines.iter().any(|line| line.label == "Dipped or poured" && line.value.ends_with(".0 s")), "{lines:?}");
}

#[test]
fn another_bucket_and_touched_up_coats_say_nothing_here() {
    let bench = Bench::set_up();
    let mut coats = Vec::new();
    for (wet, seconds) in [("14.2", "2"), ("17.1", "3"), ("20.2", "4"), ("22.1", "5")] {
        let saved = bench.studio.save(NOW, net(wet)).unwrap();
        bench.time(&saved.id, seconds).unwrap();
        coats.push(saved.id);
    }
    assert!(bench.dip_hint().is_some());
    let entry = EditorEntry { id: coats[0].clone(), ..editor(EditorKind::Coat, "", &[("added", "1.1")]) };
    let touched_up = bench.studio.save_record(NOW, &entry).unwrap();
    assert_eq!(bench.dip_hint(), None);
    bench.studio.undo(NOW, &touched_up.undo).unwrap();
    let glaze = bench.studio.bucket(NOW, &bench.bucket()).unwrap().glaze_id;
    let other = bench.save(EditorKind::Bucket, &glaze, &[("name", "Pail")]);
    let view = bench.weigh(WeighEntry { bucket: other, ..net("") });
    assert!(view.notes.iter().all(|note| !note.text.starts_with("About")), "{:?}", view.notes);
}

#[test]
fn impossible_seconds_are_refused() {
    let bench = Bench::set_up();
    let saved = bench.studio.save(NOW, net("19.4")).unwrap();
    let before = bench.dump();
    for seconds in ["0", "-3", "4000", "x"] {
        let refused = bench.time(&saved.id, seconds).unwrap_err();
        assert!(matches!(&refused, StudioError::Refused { field, .. } if field == "dip"), "{seconds}: {refused:?}");
    }
    assert_eq!(bench.dump(), before);
}

#[test]
fn weigh_asks_for_seconds_where_the_phone_is_set_to_and_they_may_stay_empty() {
    let bench = Bench::set_up();
    let keys = || bench.weigh(net("")).fields.into_iter().map(|field| field.field).collect::<Vec<_>>();
    assert_eq!(keys(), [Field::Net]);
    bench.save(EditorKind::Preference, "", &[("ask_dip", "yes")]);
    assert_eq!(keys(), [Field::Net, Field::Seconds]);
    let timed = |seconds: &str| WeighEntry { seconds: seconds.into(), field: Field::Seconds, ..net("19.4") };
    let dips = || {
        let mut coats = bench.studio.store().read(Coat::all).unwrap();
        coats.sort_by_key(|coat| coat.dip_ms);
        coats.into_iter().map(|coat| coat.dip_ms).collect::<Vec<_>>()
    };
    bench.studio.save(NOW, timed("4")).unwrap();
    bench.studio.save(NOW, timed("")).unwrap();
    assert_eq!(dips(), [None, Some(4_000)]);
    assert!(bench.studio.weigh(NOW, None).unwrap().entry.seconds.is_empty(), "the next piece has its own");
    let before = bench.dump();
    for seconds in ["0", "900", "four"] {
        let view = bench.weigh(timed(seconds));
        assert!(!view.can_save && view.refusal.unwrap().field == Field::Seconds, "{seconds}");
        let refused = bench.studio.save(NOW, timed(seconds)).unwrap_err();
        assert!(matches!(&refused, StudioError::Refused { field, .. } if field == "seconds"), "{refused:?}");
    }
    assert_eq!(bench.dump(), before);
    // Switched off, what was typed counts no more, and the keypad fills the weight again.
    bench.save(EditorKind::Preference, "", &[("ask_dip", "no")]);
    assert_eq!(bench.weigh(timed("5")).entry.field, Field::Net);
    bench.studio.save(NOW, timed("5")).unwrap();
    assert_eq!(dips(), [None, None, Some(4_000)]);
}
