//! The screens' calls as a shell makes them: a first day, a run of mugs, wrong input, undo, another day.

mod archived;
mod backups;
mod bisque;
mod buckets;
mod coming_back;
mod correcting;
mod dips;
mod drafts;
mod dry;
mod editing;
mod elsewhere;
mod evidence;
mod finding;
mod findings;
mod firings;
mod forms;
mod history;
mod import;
mod kiln;
mod mixing;
mod pooled;
mod scales;
mod sections;
mod tiles;
mod truth;

use laydown_app::{EditorEntry, EditorKind, Now, Studio, StudioError, Value, WeighEntry, WeighMode};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::ZoneKind;
use laydown_store::StoreError;
use tempfile::TempDir;

const NOW: Now = Now { unix_ms: 1_795_600_000_000, utc_offset_s: 3600 };
const DAY_MS: i64 = 86_400_000;

struct Bench {
    folder: TempDir,
    studio: Studio,
}

impl Bench {
    fn empty() -> Bench {
        let folder = TempDir::new().unwrap();
        let studio = Studio::open(&folder.path().join("studio.laydown"), NOW).unwrap();
        Bench { folder, studio }
    }

    /// A form of 250 ml, a glaze at SG 1.45 and a scale that reads in 0.1 g.
    fn set_up() -> Bench {
        let bench = Bench::empty();
        bench.save(EditorKind::Form, "", &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")]);
        bench.save(EditorKind::Glaze, "", &[("name", "Ash white"), ("specific_gravity", "1.45")]);
        bench.save(EditorKind::Scale, "", &[("name", "Bench scale"), ("capacity", "2000"), ("step", "0.1")]);
        bench
    }

    fn reopen(self) -> Bench {
        drop(self.studio);
        let studio = Studio::open(&self.folder.path().join("studio.laydown"), NOW).unwrap();
        Bench { folder: self.folder, studio }
    }

    fn save(&self, kind: EditorKind, subject: &str, values: &[(&str, &str)]) -> String {
        self.try_save(kind, subject, values).unwrap().id
    }

    fn try_save(
        &self,
        kind: EditorKind,
        subject: &str,
        values: &[(&str, &str)],
    ) -> Result<laydown_app::CommandResult, StudioError> {
        // A minute after the set-up, so that the newest check is the newest.
        let later = if kind == EditorKind::Check { NOW.at(NOW.unix_ms + 60_000) } else { NOW };
        self.studio.save_record(later, &editor(kind, subject, values))
    }

    fn bucket(&self) -> String {
        self.studio.buckets(NOW).unwrap().buckets[0].id.clone()
    }

    fn weigh(&self, entry: WeighEntry) -> laydown_app::WeighView {
        self.studio.weigh(NOW, Some(entry)).unwrap()
    }

    fn aim(&self, entry: WeighEntry) -> f64 {
        leading_number(&self.weigh(entry).target.unwrap().wet)
    }

    /// Id and title of each control piece on the Studio screen.
    fn controls(&self) -> Vec<(String, String)> {
        let sections = self.studio.setup(NOW).unwrap().sections;
        let section = sections.into_iter().find(|section| section.editor == EditorKind::Control).unwrap();
        section.rows.into_iter().map(|row| (row.id, row.title)).collect()
    }

    /// What the journal's tables hold, to see that a refused command left nothing behind.
    fn dump(&self) -> String {
        self.studio.store().dump().unwrap()
    }
}

fn editor(kind: EditorKind, subject: &str, values: &[(&str, &str)]) -> EditorEntry {
    let values = values.iter().map(|(key, text)| Value { key: (*key).into(), text: (*text).into() }).collect();
    EditorEntry { kind, id: String::new(), subject: subject.to_owned(), values, draft: String::new() }
}

fn net(text: &str) -> WeighEntry {
    WeighEntry { net: text.to_owned(), ..WeighEntry::default() }
}

fn two_weights(bare: &str, glazed: &str) -> WeighEntry {
    WeighEntry {
        way: Some(WeighMode::TwoWeights),
        bare: bare.to_owned(),
        glazed: glazed.to_owned(),
        ..WeighEntry::default()
    }
}

fn leading_number(text: &str) -> f64 {
    text.split(' ').next().unwrap().parse().unwrap()
}

#[test]
fn an_empty_studio_says_what_it_needs_and_then_weighs() {
    let bench = Bench::empty();
    let view = bench.weigh(net("19.4"));
    assert_eq!(view.missing.iter().map(|step| step.done).collect::<Vec<_>>(), [false; 3]);
    assert!(!view.can_save);
    assert!(matches!(bench.studio.save(NOW, net("19.4")), Err(StudioError::Refused { .. })));

    bench.save(EditorKind::Form, "", &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250")]);
    assert_eq!(bench.weigh(net("")).missing.iter().filter(|step| step.done).count(), 1);
    bench.save(EditorKind::Glaze, "", &[("name", "Ash white")]);
    bench.save(EditorKind::Scale, "", &[("name", "Bench scale"), ("capacity", "2000"), ("step", "0.1")]);
    let view = bench.weigh(net("19.4"));
    assert!(view.missing.is_empty());
    assert!(view.can_save);
    assert!(view.notes.iter().any(|note| note.text.contains("has no SG yet")), "{:?}", view.notes);
}

/// Common practice, no source: a mug of 250 ml takes a little under 20 g wet inside.
#[test]
fn a_first_target_is_near_what_users_pour() {
    let aim = Bench::set_up().aim(net(""));
    assert!((17.0..=23.0).contains(&aim), "{aim}");
}

#[test]
fn a_saved_coat_survives_undo_redo_and_a_new_start() {
    let bench = Bench::set_up();
    let saved = bench.studio.save(NOW, net("19.4")).unwrap();
    assert_eq!(bench.weigh(net("")).recent[0].wet, "19.4 g");
    let undone = bench.studio.undo(NOW, &saved.undo).unwrap();
    assert!(bench.weigh(net("")).recent.is_empty());
    bench.studio.undo(NOW, &undone.undo).unwrap();

    let bench = bench.reopen();
    let view = bench.studio.weigh(NOW, None).unwrap();
    assert_eq!(view.recent.iter().map(|coat| coat.wet.as_str()).collect::<Vec<_>>(), ["19.4 g"]);
    assert!(view.tally.starts_with("1 coat today"), "{}", view.tally);
    assert!(view.entry.net.is_empty());
}

#[test]
fn half_typed_digits_and_choices_are_remembered() {
    let bench = Bench::set_up();
    bench.studio.remember(NOW, &WeighEntry { bare: "312.5".into(), ..two_weights("312.5", "33") }).unwrap();
    let bench = bench.reopen();
    let entry = bench.studio.weigh(NOW, None).unwrap().entry;
    assert_eq!((entry.way, entry.bare.as_str(), entry.glazed.as_str()), (Some(WeighMode::TwoWeights), "312.5", "33"));
}

#[test]
fn a_control_piece_moves_the_target_and_names_itself() {
    let bench = Bench::set_up();
    let saved = bench.studio.save(NOW, net("18.2")).unwrap();
    bench.studio.set_control(NOW, &saved.id, true).unwrap();
    let target = bench.weigh(net("")).target.unwrap();
    assert_eq!(target.wet, "18.2 g");
    assert!(target.source.contains("control piece"), "{}", target.source);
    assert!(target.rests_on.contains("1 pot"), "{}", target.rests_on);

    // Common practice, no source: from a little under 20 g on 250 ml, about 30 g on 450 ml, within 1 g:
    // here 18.2 g times (450/250)^(2/3).
    bench.save(EditorKind::Form, "", &[("name", "Large mug"), ("class", "cylinder_mug"), ("capacity", "450 ml")]);
    let large = bench.studio.weigh(NOW, None).unwrap().forms.into_iter().find(|row| row.title == "Large mug").unwrap();
    let aim = bench.aim(WeighEntry { form: large.id, ..net("") });
    assert!((aim - 18.2 * (450.0_f64 / 250.0).powf(2.0 / 3.0)).abs() < 0.06, "{aim}");

    // It stands among the control pieces, takes a remark, and can be put back among the others from there.
    let row = &bench.controls()[0];
    assert_eq!((row.0.as_str(), row.1.as_str()), (saved.id.as_str(), "Small mug, inside"));
    let remark = EditorEntry { id: saved.id.clone(), ..editor(EditorKind::Control, "", &[("note", "even, no drips")]) };
    bench.studio.save_record(NOW, &remark).unwrap();
    let view = bench.studio.editor(NOW, &EditorEntry { values: vec![], ..remark }).unwrap();
    assert_eq!(view.fields[0].text, "even, no drips");
    bench.studio.remove(NOW, EditorKind::Control, &saved.id).unwrap();
    assert!(bench.controls().is_empty());
    assert!(!bench.weigh(net("")).target.unwrap().source.contains("control piece"));
}

#[test]
fn thicker_glaze_takes_fewer_grams() {
    let bench = Bench::set_up();
    let known = bench.aim(net(""));
    bench.save(EditorKind::Check, &bench.bucket(), &[("way", "typed"), ("typed", "1.55")]);
    let thicker = bench.aim(net(""));
    // Brongniart at relative density 2.6: w = 2.6 (SG - 1)/(1.6 SG).
    let w = |sg: f64| 2.6 * (sg - 1.0) / (1.6 * sg);
    assert!((thicker - known * w(1.45) / w(1.55)).abs() < 0.11, "{known} {thicker}");
}

#[test]
fn a_second_coat_belongs_to_the_same_piece_and_wants_a_new_tare() {
    let bench = Bench::set_up();
    let saved = bench.studio.save(NOW, WeighEntry { zone: Some(ZoneKind::Inside), ..net("19.4") }).unwrap();
    let next = &saved.next[0];
    assert_eq!(next.entry.zone, Some(ZoneKind::Outside));
    let view = bench.weigh(WeighEntry { net: "17".into(), ..next.entry.clone() });
    assert!(view.notes.iter().any(|note| note.text.to_lowercase().contains("tare")), "{:?}", view.notes);
    bench.studio.save(NOW, WeighEntry { net: "17".into(), ..next.entry.clone() }).unwrap();
    let pieces: i64 = bench
        .studio
        .store()
        .read(|conn| {
            Ok::<_, StudioError>(
                conn.query_row("SELECT count(DISTINCT piece) FROM coat", [], |row| row.get(0)).unwrap(),
            )
        })
        .unwrap();
    assert_eq!(pieces, 1);
    let next = bench.studio.weigh(NOW, None).unwrap().entry;
    assert!(next.piece.is_empty(), "the next piece is a new one");
    assert_eq!(next.zone, Some(ZoneKind::Inside), "and begins where the one before began");
}

/// What cannot be taken on the Weigh screen: the field, and a word that the sentence must hold.
#[test]
fn wrong_readings_are_refused_in_words_and_nothing_is_saved() {
    let bench = Bench::set_up();
    let before = bench.dump();
    let check = |entry: WeighEntry, field: &str, word: &str| {
        let shown = bench.weigh(entry.clone());
        let refused = bench.studio.save(NOW, entry.clone()).unwrap_err();
        let StudioError::Refused { field: found, sentence } = refused else { panic!("{entry:?}: {refused:?}") };
        assert_eq!(found, field, "{entry:?}: {sentence}");
        assert!(sentence.to_lowercase().contains(word), "{entry:?}: {sentence}");
        assert!(!shown.can_save, "{entry:?}");
    };
    check(net(""), "net", "");
    check(net("19a4"), "net", "");
    check(net("1,23.5"), "net", "mark");
    check(net("-3"), "net", "");
    check(net("0"), "net", "");
    check(net("2001"), "net", "");
    check(net("150"), "net", "");
    check(net("19.43"), "net", "step");
    check(two_weights("312.5", "300.0"), "glazed", "bare");
    check(two_weights("", "300.0"), "bare", "");
    check(two_weights("1990.0", "2011.0"), "glazed", "2000");
    check(two_weights("2011.0", "2030.0"), "glazed", "2000");
    check(two_weights("312.5", "312.5"), "glazed", "no glaze");
    check(two_weights("312.5", "33l.9"), "glazed", "");
    check(two_weights("1.31,5", "1331.9"), "bare", "mark");
    assert_eq!(bench.dump(), before);
}

/// While the view was on the screen, another process archived what it showed. The view shows another in its place; Keep
/// must not take it, or the coat would be kept on a form that the potter never saw.
#[test]
fn nothing_is_saved_onto_another_thing_than_the_one_shown() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Form, "", &[("name", "Bottle"), ("class", "cylinder_mug"), ("capacity", "300 ml")]);
    bench.save(EditorKind::Bucket, &bench.studio.bucket(NOW, &bench.bucket()).unwrap().glaze_id, &[("name", "Pail")]);
    bench.save(EditorKind::Scale, "", &[("name", "Spare scale"), ("capacity", "2000"), ("step", "0.1")]);
    let shown = bench.weigh(net("19.4")).entry;
    let other = Studio::open(&bench.folder.path().join("studio.laydown"), NOW).unwrap();
    for (kind, id, word) in [
        (EditorKind::Form, &shown.form, "form"),
        (EditorKind::Bucket, &shown.bucket, "bucket"),
        (EditorKind::Scale, &shown.scale, "scale"),
    ] {
        let gone = other.remove(NOW, kind, id).unwrap();
        let before = bench.dump();
        let refused = bench.studio.save(NOW, shown.clone()).unwrap_err();
        let StudioError::Missing { sentence } = refused else { panic!("{kind:?}: {refused:?}") };
        assert_eq!(sentence, format!("This {word} is no longer in the studio. Choose another."));
        assert_eq!(bench.dump(), before);
        let view = bench.weigh(shown.clone());
        assert!(view.can_save && view.entry != shown, "the view goes on with another one, in sight");
        other.undo(NOW, &gone.undo).unwrap();
    }
    bench.studio.save(NOW, shown.clone()).unwrap();

    let lined = [("name", "Lined pot"), ("way", "area"), ("inside_area", "210 cm2")];
    let form = bench.save(EditorKind::Form, "", &lined);
    let outside = WeighEntry { form, zone: Some(ZoneKind::Outside), ..shown };
    assert_eq!(bench.weigh(outside.clone()).entry.zone, Some(ZoneKind::Inside));
    assert!(matches!(bench.studio.save(NOW, outside), Err(StudioError::Missing { .. })), "it has no such zone");
    let never = WeighEntry { form: "no id".to_owned(), ..net("19.4") };
    assert!(matches!(bench.studio.save(NOW, never), Err(StudioError::Missing { .. })));
}

#[test]
fn a_full_disk_says_so_and_the_same_reading_is_saved_once_there_is_room() {
    let bench = Bench::set_up();
    let most_pages = |pages: i64| {
        let set = bench.studio.store().transact(NOW.unix_ms, |tx| {
            let set: i64 = tx
                .conn()
                .query_row(&format!("PRAGMA max_page_count = {pages}"), [], |row| row.get(0))
                .map_err(StoreError::from)?;
            Ok::<_, StoreError>(set)
        });
        set.unwrap();
    };
    most_pages(1);
    let mut saved = 0;
    let (refused, before) = loop {
        let before = bench.dump();
        match bench.studio.save(NOW, net("19.4")) {
            Ok(_) => saved += 1,
            Err(refused) => break (refused, before),
        }
    };
    let StudioError::Full { sentence } = refused else { panic!("{refused:?}") };
    assert_eq!(
        sentence,
        "The phone is full, so this was not saved; nothing else was lost. Free some space, then save it again."
    );
    assert_eq!(bench.dump(), before);
    assert!(bench.weigh(net("19.4")).can_save, "the screen still reads");
    most_pages(1_000_000);
    bench.studio.save(NOW, net("19.4")).unwrap();
    assert!(bench.weigh(net("")).tally.starts_with(&format!("{} coat", saved + 1)));
}

#[test]
fn files_that_are_no_studio_of_ours_are_refused_in_words_and_left_alone() {
    let bench = Bench::set_up();
    bench.studio.save(NOW, net("19.4")).unwrap();
    let Bench { folder, studio } = bench;
    drop(studio);
    let path = folder.path().join("studio.laydown");
    let refused = |bytes: &[u8]| {
        let other = folder.path().join("other");
        std::fs::write(&other, bytes).unwrap();
        let refused = Studio::open(&other, NOW).err().unwrap();
        assert_eq!(std::fs::read(&other).unwrap(), bytes, "{refused:?}");
        assert!(refused.to_string().contains("left unchanged"), "{refused}");
        refused
    };
    assert!(matches!(refused(b"19.4 g, 18.9 g, 20.2 g"), StudioError::NotAStudio { .. }));

    let sound = std::fs::read(&path).unwrap();
    // A file cut off within its first page.
    assert!(matches!(refused(&sound[..64]), StudioError::Damaged { .. }));
    let conn = rusqlite::Connection::open(&path).unwrap();
    conn.pragma_update(None, "user_version", 99).unwrap();
    conn.pragma_update(None, "journal_mode", "DELETE").unwrap();
    drop(conn);
    assert!(matches!(refused(&std::fs::read(&path).unwrap()), StudioError::Newer { .. }));
    let nowhere = Studio::open(&folder.path().join("no such folder/studio"), NOW).err().unwrap();
    assert!(matches!(&nowhere, StudioError::Unreadable { sentence } if sentence.contains("folder")), "{nowhere:?}");
}

#[test]
fn two_studios_on_one_file_see_each_other_and_one_that_holds_it_is_named() {
    let bench = Bench::set_up();
    let path = bench.folder.path().join("studio.laydown");
    let other = Studio::open(&path, NOW).unwrap();
    bench.studio.save(NOW, net("19.4")).unwrap();
    other.save(NOW.at(NOW.unix_ms + 1), net("20.1")).unwrap();
    let seen = |studio: &Studio| {
        let recent = studio.weigh(NOW, None).unwrap().recent;
        recent.into_iter().map(|coat| coat.wet).collect::<Vec<_>>()
    };
    assert_eq!(seen(&bench.studio), ["20.1 g", "19.4 g"]);
    assert_eq!(seen(&other), seen(&bench.studio));

    let holder = rusqlite::Connection::open(&path).unwrap();
    holder.execute_batch("BEGIN IMMEDIATE").unwrap();
    let refused = bench.studio.save(NOW, net("18.8")).unwrap_err();
    let StudioError::Busy { sentence } = refused else { panic!("{refused:?}") };
    assert!(sentence.contains("Nothing was lost: close the other copy, then try again."), "{sentence}");
    assert_eq!(seen(&bench.studio).len(), 2, "reading goes on");
    holder.execute_batch("ROLLBACK").unwrap();
    bench.studio.save(NOW, net("18.8")).unwrap();
}

#[test]
fn the_verdicts_are_told_apart() {
    let bench = Bench::set_up();
    let aim = bench.aim(net(""));
    let kind = |grams: f64| bench.weigh(net(&format!("{grams:.1}"))).verdict.unwrap().kind;
    assert_eq!(kind(aim), VerdictKind::Guess);
    let saved = bench.studio.save(NOW, net(&format!("{aim:.1}"))).unwrap();
    bench.studio.set_control(NOW, &saved.id, true).unwrap();
    assert_eq!(kind(aim), VerdictKind::Within);
    assert_eq!(kind(aim * 0.8), VerdictKind::Short);
    assert_eq!(kind(aim * 1.2), VerdictKind::Over);

    bench.save(EditorKind::Scale, "", &[("name", "Kitchen scale"), ("capacity", "5000"), ("step", "5")]);
    let scales = bench.weigh(net("")).scales;
    let kitchen = scales.iter().find(|row| row.title == "Kitchen scale").unwrap();
    let view = bench.weigh(WeighEntry { scale: kitchen.id.clone(), ..net("20") });
    assert_eq!(view.verdict.unwrap().kind, VerdictKind::CannotTell);
    assert!(view.notes.iter().any(|note| note.text.contains("5 g")), "{:?}", view.notes);
}

#[test]
fn the_units_and_the_decimal_mark_are_the_users() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Preference, "", &[("decimal", "comma")]);
    let view = bench.weigh(net("19,4"));
    assert!(view.verdict.is_some(), "{:?}", view.refusal);
    assert!(view.target.unwrap().wet.contains(','));
    bench.save(EditorKind::Preference, "", &[("mass", "ounce"), ("decimal", "point")]);
    assert!(bench.weigh(net("")).target.unwrap().wet.ends_with(" oz"));
}

#[test]
fn what_is_put_away_leaves_the_lists_and_stays_in_the_record() {
    let bench = Bench::set_up();
    let saved = bench.studio.save(NOW, net("19.4")).unwrap();
    let form = bench.weigh(net("")).forms[0].id.clone();
    let put_away = bench.studio.remove(NOW, EditorKind::Form, &form).unwrap();
    assert!(!bench.weigh(net("")).missing[0].done);
    assert!(bench.studio.coat(NOW, &saved.id).unwrap().title.starts_with("Small mug"));
    bench.studio.undo(NOW, &put_away.undo).unwrap();
    assert!(bench.weigh(net("")).missing.is_empty());
}

#[test]
fn two_phones_screens_on_one_file_see_each_other_and_lose_nothing() {
    let bench = Bench::set_up();
    let other = Studio::open(&bench.folder.path().join("studio.laydown"), NOW).unwrap();
    std::thread::scope(|threads| {
        for studio in [&bench.studio, &other] {
            threads.spawn(move || (0..20).for_each(|_| drop(studio.save(NOW, net("19.4")).unwrap())));
        }
    });
    assert!(bench.weigh(net("")).tally.starts_with("40 coats today"));
    assert_eq!(other.store().dump().unwrap(), bench.dump());
}

#[test]
fn a_coat_taken_back_is_gone_until_that_is_taken_back() {
    let bench = Bench::set_up();
    let saved = bench.studio.save(NOW, net("19.4")).unwrap();
    bench.studio.set_control(NOW, &saved.id, true).unwrap();
    let back = bench.studio.remove_coat(NOW, &saved.id).unwrap();
    assert!(matches!(bench.studio.coat(NOW, &saved.id), Err(StudioError::Missing { .. })));
    bench.studio.undo(NOW, &back.undo).unwrap();
    assert!(bench.studio.coat(NOW, &saved.id).unwrap().control);
}

#[test]
fn a_bucket_is_checked_from_any_vessel_and_says_when_it_has_gelled() {
    let bench = Bench::set_up();
    bench.save(
        EditorKind::Vessel,
        "",
        &[("name", "Jam jar"), ("empty", "200"), ("with_water", "499.46"), ("water_temperature", "20")],
    );
    let vessel =
        bench.studio.setup(NOW).unwrap().sections.iter().find(|s| s.editor == EditorKind::Vessel).unwrap().rows[0]
            .id
            .clone();
    // 299.46 g of water at 20 °C (0.998207 g/ml, WAT-01) is 300.0 ml; 450 g of glaze in it is SG 1.5.
    let values = [("way", "vessel"), ("vessel", vessel.as_str()), ("full", "649.2"), ("flow", "12")];
    bench.save(EditorKind::Check, &bench.bucket(), &values);
    let bucket = bench.studio.bucket(NOW, &bench.bucket()).unwrap();
    assert_eq!(bucket.sg, "SG 1.50");
    assert_eq!(bucket.notebook.len(), 2);

    let slower = [("way", "vessel"), ("vessel", vessel.as_str()), ("full", "649.2"), ("flow", "17")];
    let view = bench.studio.editor(NOW, &editor(EditorKind::Check, &bench.bucket(), &slower)).unwrap();
    assert!(view.results.iter().any(|note| note.text.contains("gelled")), "{:?}", view.results);
}

/// BRG-09: 11.2 l at SG 1.75 thinned to 1.50 takes 5.6 l of water
/// (S. Altmann, "Brongniart's formula revisited", Clayart archive).
#[test]
fn thinning_says_how_much_water() {
    let bench = Bench::set_up();
    let values = [("from", "1.75"), ("to", "1.5"), ("volume", "11200 ml")];
    let view = bench.studio.editor(NOW, &editor(EditorKind::Thin, &bench.bucket(), &values)).unwrap();
    assert!(view.results[0].text.contains("5600 ml"), "{:?}", view.results);
    assert!(view.can_save && view.save_label.contains("check it"), "{}", view.save_label);
}

#[test]
fn sheets_refuse_what_cannot_be_with_the_field_named() {
    let bench = Bench::set_up();
    let before = bench.dump();
    let bucket = bench.bucket();
    let check = |kind, subject: &str, values: &[(&str, &str)], field: &str| {
        let refused = bench.try_save(kind, subject, values).unwrap_err();
        let StudioError::Refused { field: found, sentence } = refused else { panic!("{values:?}: {refused:?}") };
        assert_eq!(found, field, "{values:?}: {sentence}");
        assert!(sentence.len() > 10, "{sentence}");
    };
    let form = |capacity: &'static str| [("name", "Mug"), ("class", "cylinder_mug"), ("capacity", capacity)];
    check(EditorKind::Form, "", &form(""), "capacity");
    check(EditorKind::Form, "", &form("0"), "capacity");
    check(EditorKind::Form, "", &form("lots"), "capacity");
    check(EditorKind::Form, "", &form("99999999"), "capacity");
    check(EditorKind::Form, "", &[("name", "  "), ("capacity", "250")], "name");
    check(EditorKind::Glaze, "", &[("name", "Red"), ("specific_gravity", "0.98")], "specific_gravity");
    check(EditorKind::Glaze, "", &[("name", "Red"), ("powder_density", "0.5")], "powder_density");
    check(EditorKind::Check, &bucket, &[("way", "typed"), ("typed", "1.0")], "typed");
    check(EditorKind::Check, &bucket, &[("way", "typed"), ("typed", "3")], "typed");
    check(EditorKind::Check, &bucket, &[("way", "typed"), ("typed", "1450")], "typed");
    check(EditorKind::Check, &bucket, &[("way", "typed"), ("typed", "thick")], "typed");
    check(EditorKind::Check, &bucket, &[("way", "typed"), ("typed", "1.4,5")], "typed");
    check(EditorKind::Check, &bucket, &[("way", "volume"), ("full", "80"), ("volume", "100 ml")], "full");
    check(EditorKind::Scale, "", &[("name", "S"), ("capacity", "10"), ("step", "20")], "step");
    check(EditorKind::Vessel, "", &[("name", "V"), ("empty", "200"), ("with_water", "150")], "with_water");
    check(EditorKind::Tile, "", &[("name", "T"), ("area", "20")], "weights");
    assert_eq!(bench.dump(), before);
}

#[test]
fn an_old_check_is_called_old() {
    let bench = Bench::set_up();
    let later = NOW.at(NOW.unix_ms + 20 * DAY_MS);
    let view = bench.studio.weigh(later, Some(net(""))).unwrap();
    assert!(view.notes.iter().any(|note| note.text.contains("20 days ago")), "{:?}", view.notes);
    assert!(bench.studio.buckets(later).unwrap().buckets[0].attention);
}

#[test]
fn the_sample_studio_is_whole_and_its_tables_are_the_fold_of_its_journal() {
    let bench = Bench::empty();
    let saved = laydown_app::sample::fill(&bench.studio, NOW).unwrap();
    assert!(saved >= 40, "{saved}");
    let view = bench.studio.weigh(NOW, None).unwrap();
    assert!(view.missing.is_empty() && view.forms.len() == 3 && view.buckets.len() == 2);
    let before = bench.dump();
    bench.studio.store().rebuild().unwrap();
    assert_eq!(bench.dump(), before);
}
