//! What a verdict is worth: a guess is never called within, a slip is asked about, and a half typed number is not judged.

use laydown_app::{EditorKind, Field, StudioError, WeighEntry, WeighView};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::ZoneKind;

use super::{Bench, NOW, net, two_weights};

impl Bench {
    /// The studio of a first day, with one piece of 19.5 g that is compared with.
    fn with_control() -> Bench {
        let bench = Bench::set_up();
        let saved = bench.studio.save(NOW, net("19.5")).unwrap();
        bench.studio.set_control(NOW, &saved.id, true).unwrap();
        bench
    }

    /// The question about a reading, and the label of each answer.
    fn asked(&self, entry: WeighEntry) -> (String, Vec<String>) {
        let view = self.weigh(entry);
        assert!(view.verdict.is_none() && !view.can_save, "it counts for nothing yet");
        assert!(view.gauge.is_some_and(|gauge| gauge.reading.is_none()));
        let question = view.question.unwrap_or_else(|| panic!("{:?} {:?}", view.verdict, view.refusal));
        (question.text, question.choices.into_iter().map(|choice| choice.label).collect())
    }

    /// The entry after the answer of this label.
    fn answer(&self, entry: WeighEntry, label: &str) -> WeighEntry {
        let choices = self.weigh(entry).question.unwrap().choices;
        choices.into_iter().find(|choice| choice.label == label).unwrap().entry
    }
}

/// The glazed piece's weight is being typed.
fn glazed_of(bare: &str, glazed: &str) -> WeighEntry {
    WeighEntry { field: Field::Glazed, ..two_weights(bare, glazed) }
}

fn headline(view: &WeighView) -> &str {
    &view.verdict.as_ref().unwrap().headline
}

#[test]
fn a_first_day_is_never_green() {
    let bench = Bench::set_up();
    let view = bench.weigh(net("20.0"));
    let verdict = view.verdict.clone().unwrap();
    assert_eq!((verdict.kind, headline(&view)), (VerdictKind::Guess, "NEAR YOUR FIRST GUESS"));
    assert_eq!(verdict.rests, "No pots or tiles of this glaze yet. SG checked today. Area estimated.");
    let target = view.target.unwrap();
    assert!(target.span.starts_with("May be "), "{}", target.span);
    // The whole of what is known is on the gauge, and it is wider than what a trusted target would accept.
    let gauge = view.gauge.unwrap();
    assert!(gauge.guess && gauge.low > 0.0 && gauge.high < 1.0 && gauge.low < gauge.aim && gauge.aim < gauge.high);
    let saved = bench.studio.save(NOW, net("20.0")).unwrap();
    assert!(saved.sentence.contains("a guess"), "{}", saved.sentence);

    // A control piece makes the same reading green; what was said of the first coat stays.
    bench.studio.set_control(NOW, &saved.id, true).unwrap();
    let view = bench.weigh(net("20.0"));
    assert_eq!((view.verdict.as_ref().unwrap().kind, headline(&view)), (VerdictKind::Within, "WITHIN"));
    assert!(view.target.unwrap().span.starts_with("Target: "));
    assert!(!view.gauge.unwrap().guess);
    assert_eq!((view.recent[0].verdict, view.recent[0].word.as_str()), (VerdictKind::Guess, "a guess"));
    let record = bench.studio.coat(NOW, &saved.id).unwrap();
    let then = record.lines.iter().find(|line| line.label == "Target when weighed").unwrap();
    assert!(then.value.contains("a guess: may be "), "{}", then.value);
}

#[test]
fn a_bucket_that_was_never_checked_is_said_in_the_headline() {
    let bench = Bench::with_control();
    assert_eq!(headline(&bench.weigh(net("19.5"))), "WITHIN");
    let glaze = bench.studio.bucket(NOW, &bench.bucket()).unwrap().glaze_id;
    let pail = bench.save(EditorKind::Bucket, &glaze, &[("name", "Pail")]);
    let view = bench.weigh(WeighEntry { bucket: pail, ..net("19.5") });
    assert_eq!(headline(&view), "NEAR: SG NOT CHECKED");
    assert!(view.verdict.unwrap().rests.ends_with("SG not checked."));
}

#[test]
fn one_dip_over_a_known_and_an_unknown_side_is_a_guess() {
    let bench = Bench::with_control();
    let dip = WeighEntry { zone: Some(ZoneKind::Whole), ..net("45.0") };
    let verdict = bench.weigh(dip).verdict.unwrap();
    assert_eq!(verdict.kind, VerdictKind::Guess, "{}: {}", verdict.headline, verdict.rests);
}

#[test]
fn slips_are_asked_about_and_one_tap_mends_them() {
    let bench = Bench::with_control();
    let before = bench.dump();
    for typed in ["195", "1.95", "1950"] {
        let (text, labels) = bench.asked(net(typed));
        assert_eq!(text, "Did you mean 19.5 g?", "{typed}");
        assert_eq!(labels[0], "19.5 g");
        let refused = bench.studio.save(NOW, net(typed)).unwrap_err();
        assert!(matches!(refused, StudioError::Refused { ref sentence, .. } if *sentence == text), "{refused:?}");
        let mended = bench.answer(net(typed), "19.5 g");
        assert_eq!(bench.weigh(mended.clone()).verdict.unwrap().kind, VerdictKind::Within);
        assert_eq!(mended.net, "19.5");
    }
    assert!(bench.asked(net("39.0")).0.contains("twice the aim of 19.5 g"));
    let (text, labels) = bench.asked(net("9.8"));
    assert_eq!(text, "9.8 g is what 19.4 g weighs once the water has gone. Is it dry already?");
    assert_eq!(labels, ["No, it is wet"]);
    assert!(bench.asked(net("60.0")).0.contains("far from the aim"));

    let (text, _) = bench.asked(two_weights("312.5", "3320"));
    assert_eq!(text, "Did you mean 332.0 g?");
    let (text, labels) = bench.asked(two_weights("332.0", "312.5"));
    assert_eq!((text.ends_with("the wrong way round?"), labels[0].as_str()), (true, "Swap them"));
    let swapped = bench.answer(two_weights("332.0", "312.5"), "Swap them");
    assert_eq!((swapped.bare.as_str(), swapped.glazed.as_str()), ("312.5", "332.0"));
    assert_eq!(bench.dump(), before);
}

#[test]
fn a_reading_that_is_right_is_saved_after_one_tap_and_says_so() {
    let bench = Bench::with_control();
    let right = bench.answer(net("39.0"), "It is right");
    let view = bench.weigh(right.clone());
    assert_eq!((view.question, view.verdict.unwrap().kind, view.can_save), (None, VerdictKind::Over, true));
    let saved = bench.studio.save(NOW, right.clone()).unwrap();
    let lines = bench.studio.coat(NOW, &saved.id).unwrap().lines;
    assert!(lines.iter().any(|line| line.value == "Far off the aim, confirmed"), "{lines:?}");
    // It holds for this reading alone.
    assert!(bench.weigh(WeighEntry { net: "41.0".into(), ..right }).question.is_some());
    assert!(bench.studio.weigh(NOW, None).unwrap().entry.confirmed.is_empty());
    let usual = bench.studio.save(NOW, net("19.5")).unwrap();
    let lines = bench.studio.coat(NOW, &usual.id).unwrap().lines;
    assert!(lines.iter().all(|line| line.label != "Reading"), "{lines:?}");
}

#[test]
fn a_forgotten_tare_is_known_by_what_the_bare_piece_weighs() {
    let bench = Bench::with_control();
    // More than the wall can hold, and no more is known.
    assert!(bench.weigh(net("325.0")).refusal.is_some());
    bench.studio.save(NOW, two_weights("310.0", "329.5")).unwrap();
    let (text, labels) = bench.asked(net("325.0"));
    assert_eq!(text, "325.0 g is about a bare piece (310.0 g) and its coat. Was the tare forgotten?");
    assert_eq!(labels, ["Enter the bare weight too"]);
    let two = bench.answer(net("325.0"), &labels[0]);
    assert_eq!((two.glazed.as_str(), two.bare.as_str(), two.net.as_str()), ("325.0", "", ""));
}

#[test]
fn a_weight_that_another_scale_shows_offers_that_scale() {
    let bench = Bench::with_control();
    let scale = bench.weigh(net("")).entry.scale;
    let read = WeighEntry { scale, ..net("19.43") };
    bench.save(EditorKind::Scale, "", &[("name", "Fine scale"), ("capacity", "500"), ("step", "0.01")]);
    let (text, labels) = bench.asked(read.clone());
    assert_eq!(
        (text.as_str(), labels),
        ("Bench scale cannot show this weight. Which scale did you use?", vec!["Fine scale".to_owned()])
    );
    let other = bench.answer(read, "Fine scale");
    assert_eq!(bench.weigh(other).verdict.unwrap().kind, VerdictKind::Within);
}

#[test]
fn a_verdict_waits_for_the_last_digit() {
    let bench = Bench::with_control();
    for typed in ["1", "19", "19.", "3", "31", "31."] {
        let view = bench.weigh(net(typed));
        assert!(view.verdict.is_none() && view.question.is_none() && view.refusal.is_none(), "{typed}");
        assert_eq!(view.waiting, "Type every digit the scale shows, such as 19.5 g.", "{typed}");
        assert_eq!(view.gauge.unwrap().reading, None);
    }
    assert!(bench.weigh(net("19")).can_save, "Save takes it as it stands");
    for (typed, kind) in [("31.4", VerdictKind::Over), ("19.5", VerdictKind::Within), ("13.0", VerdictKind::Short)] {
        let view = bench.weigh(net(typed));
        assert_eq!((view.verdict.map(|verdict| verdict.kind), view.waiting.as_str()), (Some(kind), ""), "{typed}");
    }
    for (bare, glazed) in [("312.5", "3"), ("312.5", "33"), ("312.5", "332"), ("312.5", "332."), ("99.5", "119")] {
        let view = bench.weigh(glazed_of(bare, glazed));
        assert!(view.verdict.is_none() && view.refusal.is_none() && !view.waiting.is_empty(), "{bare} {glazed}");
    }
    for (bare, glazed) in [("312.5", "332.0"), ("312", "331"), ("99.5", "119.0")] {
        assert!(bench.weigh(glazed_of(bare, glazed)).verdict.is_some(), "{bare} {glazed}");
    }
    // What was typed with its unit is finished.
    assert!(bench.weigh(net("19 g")).verdict.is_some());
}

/// On a scale for the kitchen: what is said before weighing is what the verdict says.
#[test]
fn a_kitchen_scale_says_before_weighing_that_no_weight_can_pass() {
    let bench = Bench::with_control();
    let kitchen = bench.save(EditorKind::Scale, "", &[("name", "Kitchen scale"), ("capacity", "5000"), ("step", "5")]);
    let on_it = |text: &str| bench.weigh(WeighEntry { scale: kitchen.clone(), ..net(text) });
    let notes: Vec<String> = on_it("").notes.into_iter().map(|note| note.text).collect();
    let said =
        "no weight it shows can pass. Weigh 5 pieces together (aim 97 g), or use a scale that reads in 1 g steps.";
    assert!(notes.iter().any(|note| note.ends_with(said)), "{notes:?}");
    for (typed, act) in [
        ("10", "Add some, then use a finer scale"),
        ("20", "Use a finer scale"),
        ("30", "Take some off, then use a finer scale"),
    ] {
        let view = bench.weigh(WeighEntry { confirmed: typed.to_owned(), ..on_it(typed).entry });
        assert_eq!(view.verdict.map(|verdict| verdict.act), Some(act.to_owned()), "{typed} {:?}", view.question);
    }
}
