//! All insides first, the outsides an hour later: coming back to a piece by its code or from the list, each zone with its glaze.

use laydown_app::{CommandResult, EditorKind, Now, PieceToGlaze, PiecesToGlazeView, Tone, WeighEntry, WeighView};
use laydown_domain::form::ZoneKind;

use crate::{Bench, DAY_MS, NOW, leading_number, net};

const MINUTE_MS: i64 = 60_000;

fn later(ms: i64) -> Now {
    NOW.at(NOW.unix_ms + ms)
}

impl Bench {
    /// A run of insides, a minute after one another; answers with the codes.
    fn insides(&self, weights: &[&str]) -> Vec<String> {
        let save = |(at, net): (usize, &&str)| {
            let now = later(at as i64 * MINUTE_MS);
            let entry = self.studio.weigh(now, None).unwrap().entry;
            let entry = WeighEntry { zone: Some(ZoneKind::Inside), net: (*net).to_owned(), ..entry };
            code_in(&self.studio.save(now, entry).unwrap())
        };
        weights.iter().enumerate().map(save).collect()
    }

    fn pieces(&self, now: Now, code: &str) -> PiecesToGlazeView {
        let entry = self.studio.weigh(now, None).unwrap().entry;
        self.studio.pieces_to_glaze(now, &entry, code).unwrap()
    }

    fn pick(&self, now: Now, code: &str) -> WeighView {
        let piece = only(self.pieces(now, code));
        self.studio.weigh(now, Some(piece.entry)).unwrap()
    }

    fn save_at(&self, now: Now, entry: &WeighEntry, net: &str) -> CommandResult {
        self.studio.save(now, WeighEntry { net: net.to_owned(), ..entry.clone() }).unwrap()
    }

    fn piece_of(&self, coat: &CommandResult) -> String {
        self.studio.coat(NOW, &coat.id).unwrap().piece
    }
}

/// The code that is told with a first coat.
fn code_in(saved: &CommandResult) -> String {
    let told = saved.sentence.rsplit("Mark ").next().unwrap();
    let code = told.split_once(" on the foot").map(|(code, _)| code.to_owned());
    code.unwrap_or_else(|| panic!("{}", saved.sentence))
}

fn only(view: PiecesToGlazeView) -> PieceToGlaze {
    let mut pieces: Vec<PieceToGlaze> = view.groups.into_iter().flat_map(|group| group.pieces).collect();
    assert_eq!(pieces.len(), 1, "{pieces:?}, {}", view.nothing);
    pieces.remove(0)
}

#[test]
fn insides_wait_for_their_outsides_newest_first() {
    let bench = Bench::set_up();
    let codes = bench.insides(&["19.4", "19.6", "19.2"]);
    let now = later(60 * MINUTE_MS);
    let view = bench.pieces(now, "");
    let headings: Vec<&str> = view.groups.iter().map(|group| group.heading.as_str()).collect();
    assert_eq!(headings, ["Insides waiting for outsides"]);
    let titles: Vec<&str> = view.groups[0].pieces.iter().map(|piece| piece.title.as_str()).collect();
    let expected: Vec<String> = codes.iter().rev().map(|code| format!("Small mug, {code}")).collect();
    assert_eq!(titles, expected);
    assert_eq!(view.groups[0].pieces[0].detail, "Ash white inside, 58 min ago");

    // So does the list of what was saved lately.
    let recent = &bench.weigh(net("")).recent[0];
    assert_eq!(recent.title, format!("Small mug, {}, inside", codes[2]));
    assert!(recent.when.starts_with("Ash white, "), "{}", recent.when);
    let picked = bench.studio.weigh(now, Some(view.groups[0].pieces[2].entry.clone())).unwrap();
    assert_eq!(picked.zone, format!("Outside, {}", codes[0]));
    assert_eq!((picked.entry.zone, picked.entry.net.as_str()), (Some(ZoneKind::Outside), ""));
    let saved = bench.save_at(now, &picked.entry, "20.1");
    assert!(
        saved.sentence.starts_with(&format!("Saved: Small mug {}, outside, 20.1 g", codes[0])),
        "{}",
        saved.sentence
    );
    let piece = bench.studio.piece(now, &bench.piece_of(&saved)).unwrap();
    assert_eq!(piece.title, format!("Small mug, {}", codes[0]));

    let view = bench.pieces(now, "");
    assert_eq!(view.groups.iter().map(|group| group.pieces.len()).collect::<Vec<_>>(), [2, 1]);
    assert_eq!(view.groups[1].heading, "Other unfired pieces");
    // The next one begins inside again, on a new piece.
    let next = bench.studio.weigh(now, None).unwrap();
    assert_eq!((next.zone.as_str(), next.entry.piece.as_str()), ("Inside", ""));
}

#[test]
fn a_code_typed_narrows_the_list_and_finds_its_piece() {
    let bench = Bench::set_up();
    let codes = bench.insides(&["19.4", "19.6", "19.2"]);
    let now = later(DAY_MS / 2);
    for code in &codes {
        let spoken = format!(" {}-{} ", code[..2].to_lowercase(), &code[2..]);
        assert_eq!(only(bench.pieces(now, &spoken)).title, format!("Small mug, {code}"));
        let begun = bench.pieces(now, &code[..1]);
        let titles = begun.groups.iter().flat_map(|group| &group.pieces).map(|piece| &piece.title);
        assert!(titles.clone().any(|title| title.ends_with(code.as_str())), "{begun:?}");
        assert!(titles.clone().all(|title| title.contains(&format!(", {}", &code[..1]))), "{begun:?}");
    }
    // One letter wrong is a slip and no other piece.
    let mut wrong = codes[0].clone();
    wrong.replace_range(0..1, if wrong.starts_with('A') { "C" } else { "A" });
    let view = bench.pieces(now, &wrong);
    assert!(view.groups.is_empty() && !view.nothing.is_empty(), "{view:?}");
    assert!(bench.pieces(now, "!").nothing.len() > 10);
}

#[test]
fn the_wall_is_wet_then_damp_then_dry() {
    let bench = Bench::set_up();
    let code = bench.insides(&["19.4"]).remove(0);
    for (passed, tone, words) in [
        (20 * MINUTE_MS, Tone::Attention, "20 min ago. Its wall is still wet"),
        (180 * MINUTE_MS, Tone::Attention, "3 h ago. Its wall may still be damp"),
        (2 * DAY_MS, Tone::Plain, "was glazed inside 2 days ago."),
    ] {
        let note = bench.pick(later(passed), &code).notes.remove(0);
        assert!(note.text.starts_with(&code) && note.text.contains(words), "{note:?}");
        assert_eq!(note.tone, tone);
    }
}

#[test]
fn undoing_a_coat_keeps_the_piece_and_its_code() {
    let bench = Bench::set_up();
    let entry = bench.weigh(WeighEntry { zone: Some(ZoneKind::Inside), ..net("19.4") }).entry;
    let first = bench.studio.save(NOW, entry.clone()).unwrap();
    let (code, piece) = (code_in(&first), bench.piece_of(&first));
    let undone = bench.studio.undo(NOW, &first.undo).unwrap();

    // What is offered, the code typed again, and the same draft: all lead to that piece.
    let offered = &undone.next[0];
    assert_eq!(offered.label, format!("Weigh {code} again"));
    let typed = only(bench.pieces(NOW, &code));
    assert_eq!((typed.title.as_str(), typed.detail.as_str()), (&*format!("Small mug, {code}"), "Its coat was undone"));
    for again in [&offered.entry, &typed.entry, &entry] {
        let view = bench.weigh(again.clone());
        assert_eq!(view.zone, format!("Inside, {code}"));
        // Half typed, it is there after a restart.
        bench.studio.remember(NOW, &view.entry).unwrap();
        assert_eq!(bench.studio.weigh(NOW, None).unwrap().zone, view.zone);
        let saved = bench.save_at(NOW, &view.entry, "19.8");
        assert_eq!((code_in(&saved), bench.piece_of(&saved)), (code.clone(), piece.clone()));
        assert_eq!(only(bench.pieces(NOW, &code)).detail, "Ash white inside, just now");
        bench.studio.remove_coat(NOW, &saved.id).unwrap();
    }

    // Another piece gets another code, and doing it again brings the first one back.
    let other = bench.studio.save(NOW, bench.weigh(net("19.2")).entry).unwrap();
    assert_ne!(code_in(&other), code);
    let redone = bench.studio.undo(NOW, &undone.undo).unwrap();
    assert!(redone.next.is_empty());
    assert_eq!(only(bench.pieces(NOW, &code)).title, format!("Small mug, {code}"));
}

#[test]
fn the_code_outlives_the_coat_that_it_was_given_with() {
    let bench = Bench::set_up();
    let code = bench.insides(&["19.4"]).remove(0);
    let inside = bench.weigh(net("")).recent[0].id.clone();
    let outside = bench.save_at(NOW, &bench.pick(NOW, &code).entry, "20.1");
    bench.studio.remove_coat(NOW, &inside).unwrap();
    assert_eq!(bench.studio.piece(NOW, &bench.piece_of(&outside)).unwrap().title, format!("Small mug, {code}"));
    // The inside is what is missing now.
    let view = bench.pick(NOW, &code);
    assert_eq!(view.zone, format!("Inside, {code}"));
    let again = bench.save_at(NOW, &view.entry, "19.6");
    assert_eq!(bench.piece_of(&again), bench.piece_of(&outside));
}

#[test]
fn each_zone_remembers_its_bucket() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Glaze, "", &[("name", "Liner"), ("specific_gravity", "1.5")]);
    let buckets = bench.studio.buckets(NOW).unwrap().buckets;
    let bucket = |glaze: &str| buckets.iter().find(|bucket| bucket.glaze == glaze).unwrap().id.clone();
    let (liner, ash) = (bucket("Liner"), bucket("Ash white"));
    let inside = WeighEntry { zone: Some(ZoneKind::Inside), bucket: liner.clone(), ..net("19.4") };
    let first = bench.studio.save(NOW, bench.weigh(inside).entry).unwrap();
    // The outside has none yet, and begins with what is there.
    let outside = first.next[0].entry.clone();
    assert_eq!(bench.weigh(outside.clone()).entry.bucket, liner);
    let second = bench.save_at(NOW, &WeighEntry { bucket: ash.clone(), ..bench.weigh(outside).entry }, "20.1");
    assert!(second.sentence.contains("outside"), "{}", second.sentence);

    // The next piece begins inside, with the liner; its outside follows in the other.
    let next = bench.studio.weigh(NOW, None).unwrap().entry;
    assert_eq!((next.zone, &next.bucket), (Some(ZoneKind::Inside), &liner));
    let third = bench.save_at(NOW, &next, "19.2");
    assert_eq!(third.next[0].entry.bucket, ash);
    // So does turning to a zone by hand, and coming back to a piece, and a restart changes nothing.
    let bench = bench.reopen();
    let turned =
        |zone| WeighEntry { zone: Some(zone), bucket: String::new(), ..bench.studio.weigh(NOW, None).unwrap().entry };
    assert_eq!(bench.weigh(turned(ZoneKind::Outside)).entry.bucket, ash);
    assert_eq!(bench.weigh(turned(ZoneKind::Inside)).entry.bucket, liner);
    assert_eq!(bench.pick(NOW, &code_in(&third)).entry.bucket, ash);

    // What is chosen for a zone counts before anything is saved with it.
    bench.studio.remember(NOW, &WeighEntry { bucket: ash.clone(), ..turned(ZoneKind::Inside) }).unwrap();
    bench.studio.remember(NOW, &turned(ZoneKind::Outside)).unwrap();
    assert_eq!(bench.weigh(turned(ZoneKind::Inside)).entry.bucket, ash);
}

#[test]
fn a_piece_without_a_code_says_so_and_a_new_piece_is_a_tap_away() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Preference, "", &[("code_pieces", "no")]);
    let first = bench.studio.save(NOW, bench.weigh(net("19.4")).entry).unwrap();
    let view = bench.weigh(first.next[0].entry.clone());
    assert_eq!(view.zone, "Outside, same piece");
    assert!(view.notes[0].text.starts_with("This piece was glazed inside just now."), "{:?}", view.notes);
    let list = bench.studio.pieces_to_glaze(NOW, &view.entry, "").unwrap();
    assert_eq!(list.groups[0].pieces[0].title, "New piece");
    assert_eq!(bench.weigh(list.groups[0].pieces[0].entry.clone()).entry.piece, "");
    // An empty studio has nothing to come back to.
    let empty = Bench::set_up();
    assert_eq!(empty.pieces(NOW, "").nothing, "No unfired piece has a coat.");
}

/// Two dips of one glaze on one zone: each is a coat of its own, and the sum is said.
#[test]
fn a_second_dip_of_a_zone_says_what_both_come_to() {
    let bench = Bench::set_up();
    let code = bench.insides(&["19.4"]).remove(0);
    let outside = bench.pick(NOW, &code).entry;
    assert!(!bench.weigh(outside.clone()).notes.iter().any(|note| note.text.contains("already has")));
    let inside = WeighEntry { zone: Some(ZoneKind::Inside), net: "15.0".into(), ..outside.clone() };
    let view = bench.weigh(inside);
    // Of one bucket, grams and laydown go together.
    let recorded = bench.studio.coat(NOW, &view.recent[0].id).unwrap().lines;
    let first = leading_number(&recorded.iter().find(|line| line.label == "Laydown").unwrap().value);
    assert_eq!(view.notes[0].tone, Tone::Attention);
    assert_eq!(view.notes[0].text, format!("This zone already has a coat: {first:.1} g per 100 cm²."));
    let sum = view.notes[1].text.strip_prefix("With this coat it carries ").unwrap();
    assert!((leading_number(sum) - first * (1.0 + 15.0 / 19.4)).abs() < 0.11, "{sum} {first}");
    bench.save_at(NOW, &view.entry, "15.0");
    let third = bench.weigh(WeighEntry { draft: String::new(), ..view.entry });
    assert!(third.notes[0].text.starts_with("This zone already has 2 coats: "), "{:?}", third.notes);
}
