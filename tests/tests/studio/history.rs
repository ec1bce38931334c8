//! Recent changes, undone and done again; what two phones said of one thing; clocks that are wrong by years.

use laydown_app::{HistoryEntry, HistoryView};
use laydown_store::StoreError;
use laydown_store::entity::{Coat, Entity};
use laydown_store::journal::{Ids, SeededIds};

use super::*;

const MINUTE_MS: i64 = 60_000;

impl Bench {
    fn recent_changes(&self) -> Vec<HistoryEntry> {
        self.studio.recent_changes(NOW).unwrap().recent_changes
    }

    fn titles(&self) -> Vec<String> {
        self.recent_changes().into_iter().map(|entry| entry.title).collect()
    }

    /// Edits the one glaze there is, `minutes` later.
    fn edit_glaze(&self, id: &str, minutes: i64, values: &[(&str, &str)]) {
        let entry = EditorEntry { id: id.to_owned(), ..editor(EditorKind::Glaze, "", values) };
        self.studio.save_record(NOW.at(NOW.unix_ms + minutes * MINUTE_MS), &entry).unwrap();
    }

    fn only_glaze(&self) -> String {
        let sections = self.studio.setup(NOW).unwrap().sections;
        sections.into_iter().find(|section| section.editor == EditorKind::Glaze).unwrap().rows[0].id.clone()
    }

    /// Takes in all that the other has.
    fn hear(&self, other: &Bench) {
        let file = self.folder.path().join("heard.zip");
        other.studio.back_up(&file).unwrap();
        self.studio.restore(NOW, &file).unwrap();
    }
}

fn said(history: &HistoryView) -> Vec<(&str, &str)> {
    history.recent_changes.iter().map(|entry| (entry.title.as_str(), entry.detail.as_str())).collect()
}

#[test]
fn what_was_done_is_listed_taken_back_and_done_again() {
    let bench = Bench::empty();
    assert!(bench.studio.recent_changes(NOW).unwrap().intro.starts_with("No changes yet"));
    let bench = Bench::set_up();
    bench.studio.save(NOW.at(NOW.unix_ms + MINUTE_MS), net("19.4")).unwrap();
    bench.edit_glaze(&bench.only_glaze(), 2, &[("name", "Snow")]);
    let recent_changes = bench.recent_changes();
    assert_eq!(
        (recent_changes[0].title.as_str(), recent_changes[1].title.as_str()),
        ("Glaze: Snow", "Coat: Small mug, inside, 19.4 g")
    );
    assert!(recent_changes[0].detail.ends_with(", this phone, changed: name"), "{}", recent_changes[0].detail);
    assert!(recent_changes.iter().all(|entry| !entry.is_undone && !entry.token.is_empty()));

    let later = NOW.at(NOW.unix_ms + 3 * MINUTE_MS);
    let before = bench.dump();
    let coat = recent_changes[1].token.clone();
    bench.studio.undo(later, &coat).unwrap();
    assert!(bench.weigh(net("")).recent.is_empty());
    let shown = bench.recent_changes().into_iter().find(|entry| entry.title == recent_changes[1].title).unwrap();
    assert!(shown.is_undone && shown.detail.ends_with("undone"), "{shown:?}");
    assert_eq!(bench.recent_changes().len(), recent_changes.len(), "taking back is no doing of its own");
    let done = bench.studio.redo(later, &shown.token).unwrap();
    assert_eq!(bench.dump(), before);
    // Done again twice is once, and said to be; and what was done again can be undone by its own token, once.
    let refused = bench.studio.redo(later, &shown.token).unwrap_err();
    assert_eq!(refused.to_string(), "Nothing to redo.");
    assert_eq!(bench.dump(), before);
    bench.studio.undo(later, &done.undo).unwrap();
    assert!(bench.weigh(net("")).recent.is_empty());
    let refused = bench.studio.undo(later, &done.undo).unwrap_err();
    assert_eq!(refused.to_string(), "Nothing to undo.");
    for nonsense in ["", "{}", "{\"device\":\"00000000-0000-0000-0000-000000000000\",\"first\":1,\"last\":1}"] {
        assert!(matches!(bench.studio.redo(later, nonsense), Err(StudioError::Refused { .. })), "{nonsense}");
    }
}

#[test]
fn a_large_import_is_taken_back_and_done_again_whole() {
    let bench = Bench::set_up();
    let before = bench.dump();
    let saved = bench.studio.save(NOW, net("19.4")).unwrap();
    let coat = bench.studio.store().read(Coat::all).unwrap().remove(0);
    bench.studio.undo(NOW, &saved.undo).unwrap();
    // More events than a millisecond can count, given at a moment at which others were given too.
    let mut ids = SeededIds::new(5);
    let mut import = |coats: usize| {
        let saved = bench.studio.store().transact(NOW.unix_ms, |tx| {
            (0..coats).try_for_each(|_| tx.put(&Coat { id: ids.next(NOW.unix_ms), ..coat.clone() }).map(|_| ()))
        });
        saved.map_err(|error: StoreError| error).unwrap();
    };
    import(70_000);
    import(3);
    let after = bench.dump();
    let (small, large) = (bench.recent_changes().remove(0), bench.recent_changes().remove(1));
    assert_eq!(small.title, "Coat: Small mug, inside, 19.4 g, and 2 more");
    assert_eq!(large.title, "Coat: Small mug, inside, 19.4 g, and 69999 more");
    bench.studio.undo(NOW, &large.token).unwrap();
    assert_eq!(bench.studio.store().read(Coat::all).unwrap().len(), 3);
    bench.studio.undo(NOW, &small.token).unwrap();
    assert!(bench.dump() == before);
    let recent_changes = bench.recent_changes();
    assert!(recent_changes[..2].iter().all(|entry| entry.is_undone), "{:?}", &recent_changes[..2]);
    for entry in &recent_changes[..2] {
        bench.studio.redo(NOW, &entry.token).unwrap();
    }
    assert!(bench.dump() == after);
}

#[test]
fn a_removed_coat_can_be_done_again_too() {
    let bench = Bench::set_up();
    let saved = bench.studio.save(NOW.at(NOW.unix_ms + MINUTE_MS), net("19.4")).unwrap();
    let before = bench.dump();
    bench.studio.remove_coat(NOW.at(NOW.unix_ms + 2 * MINUTE_MS), &saved.id).unwrap();
    let token = bench.recent_changes().into_iter().find(|entry| entry.is_undone).unwrap().token;
    bench.studio.redo(NOW.at(NOW.unix_ms + 3 * MINUTE_MS), &token).unwrap();
    assert_eq!(bench.dump(), before);
}

#[test]
fn two_phones_that_said_different_things_sync_now_and_both_are_shown() {
    let (sink, kiln) = (Bench::set_up(), Bench::empty());
    kiln.save(EditorKind::Preference, "", &[("phone", "Phone at the kiln")]);
    kiln.hear(&sink);
    let glaze = sink.only_glaze();
    sink.edit_glaze(&glaze, 1, &[("name", "Snow")]);
    kiln.edit_glaze(&glaze, 2, &[("name", "Hail")]);
    kiln.edit_glaze(&glaze, 3, &[("sensitivity", "high")]);
    sink.hear(&kiln);
    kiln.hear(&sink);
    assert_eq!(sink.dump(), kiln.dump());

    let history = sink.studio.history(NOW, &glaze).unwrap();
    assert_eq!(history.title, "Glaze: Hail");
    let said = said(&history);
    assert_eq!(said[0].0, "Sensitivity to thickness: sensitive");
    assert_eq!(said[1].0, "Name: Hail");
    assert_eq!(said[2].0, "Name: Snow");
    assert!(said[1].1.ends_with(", Phone at the kiln"), "{said:?}");
    assert!(said[2].1.ends_with(", this phone, changed later on Phone at the kiln"), "{said:?}");
    assert!(said[3].0.contains("Starting laydown: ") && said[3].0.contains("Name: Ash white"), "{said:?}");
    // Only what this phone said, and not what the thing began with, is undone here.
    let can_turn: Vec<bool> = history.recent_changes.iter().map(|entry| !entry.token.is_empty()).collect();
    assert_eq!(can_turn, [false, false, true, false]);
    assert!(sink.titles().iter().any(|title| title == "Glaze: Hail"));
    assert!(matches!(sink.studio.history(NOW, "nothing"), Err(StudioError::Missing { .. })));

    let devices = sink.studio.devices(NOW).unwrap();
    let titles: Vec<&str> = devices.devices.iter().map(|row| row.title.as_str()).collect();
    assert_eq!(titles, ["This phone", "Phone at the kiln"]);
    assert!(devices.notes.is_empty());
    assert_eq!(kiln.studio.devices(NOW).unwrap().devices[0].title, "This phone (Phone at the kiln)");
}

#[test]
fn a_clock_that_is_years_wrong_is_said_and_breaks_nothing() {
    let (right, wrong) = (Bench::set_up(), Bench::empty());
    wrong.hear(&right);
    let glaze = right.only_glaze();
    let years = 365 * 24 * 60;
    wrong.edit_glaze(&glaze, 70 * years, &[("name", "From the year 2096")]);
    right.hear(&wrong);
    assert_eq!(right.dump(), wrong.dump());
    let notes = right.studio.devices(NOW).unwrap().notes;
    assert!(notes[0].text.starts_with("Some entries are dated up to 25550 days ahead"), "{notes:?}");

    // What is said here afterwards still counts after it, though this clock shows an earlier year.
    right.edit_glaze(&glaze, 5, &[("name", "Snow")]);
    wrong.hear(&right);
    assert_eq!(right.dump(), wrong.dump());
    assert_eq!(wrong.studio.history(NOW, &glaze).unwrap().title, "Glaze: Snow");

    // A clock that went back by years orders what this phone itself says as it was said.
    right.edit_glaze(&glaze, -30 * years, &[("name", "Rain")]);
    assert_eq!(right.studio.history(NOW, &glaze).unwrap().title, "Glaze: Rain");
}

#[test]
fn a_second_coat_by_a_phone_that_is_two_days_behind_shows_on_its_piece_after_the_first() {
    let (sink, kiln) = (Bench::set_up(), Bench::empty());
    let first = sink.studio.save(NOW, net("19.4")).unwrap();
    let next = first.next[0].entry.clone();
    let piece = next.piece.clone();
    kiln.hear(&sink);
    let second = WeighEntry { net: "15.0".to_owned(), ..next };
    for behind in [2, 400] {
        let behind = NOW.at(NOW.unix_ms - behind * 24 * 60 * MINUTE_MS);
        kiln.studio.save(behind, second.clone()).unwrap();
    }
    sink.hear(&kiln);
    for bench in [&sink, &kiln] {
        let coats = bench.studio.piece(NOW, &piece).unwrap().coats;
        let zones: Vec<&str> = coats.iter().filter_map(|coat| coat.label.split(',').next()).collect();
        assert_eq!(zones, ["Inside", "Outside", "Outside"]);
    }
}

#[test]
fn what_one_phone_undid_and_another_had_changed_comes_back_and_is_said() {
    let (sink, kiln) = (Bench::set_up(), Bench::empty());
    kiln.save(EditorKind::Preference, "", &[("phone", "Phone at the kiln")]);
    kiln.hear(&sink);
    let glaze = sink.only_glaze();
    let made = sink.recent_changes().into_iter().find(|entry| entry.thing == glaze).unwrap();
    let two_days = 2 * 24 * 60;
    kiln.edit_glaze(&glaze, -two_days, &[("name", "Snow")]);
    sink.studio.undo(NOW.at(NOW.unix_ms + MINUTE_MS), &made.token).unwrap();
    sink.hear(&kiln);
    kiln.hear(&sink);
    assert_eq!(sink.dump(), kiln.dump());
    assert_eq!(sink.only_glaze(), glaze);
    let said: Vec<String> = sink.recent_changes().into_iter().map(|entry| entry.detail).collect();
    let came_back =
        "undone on this phone, but Phone at the kiln had changed it, so it came back. Undo it again to remove it";
    assert!(said.iter().any(|said| said.contains(came_back)), "{said:?}");
    assert!(sink.titles().contains(&"Glaze: Snow".to_owned()));
    // Now that the edit was seen, undoing counts, and what the other said is seen to be gone with it.
    let made = sink.recent_changes().into_iter().find(|entry| entry.token == made.token).unwrap();
    sink.studio.undo(NOW.at(NOW.unix_ms + 2 * MINUTE_MS), &made.token).unwrap();
    kiln.hear(&sink);
    assert_eq!(sink.dump(), kiln.dump());
    let gone: Vec<String> = kiln.recent_changes().into_iter().map(|entry| entry.detail).collect();
    assert!(gone.iter().any(|said| said.contains("hidden, since what it belongs to was undone")), "{gone:?}");
}

#[test]
fn a_coat_on_a_form_that_was_undone_elsewhere_asks_for_the_form() {
    let (sink, kiln) = (Bench::set_up(), Bench::empty());
    kiln.hear(&sink);
    let form = sink.recent_changes().into_iter().find(|entry| entry.title.starts_with("Form: ")).unwrap();
    kiln.studio.save(NOW.at(NOW.unix_ms + MINUTE_MS), net("19.4")).unwrap();
    sink.studio.undo(NOW.at(NOW.unix_ms + MINUTE_MS), &form.token).unwrap();
    sink.hear(&kiln);
    let coat = sink.recent_changes().into_iter().find(|entry| entry.title.starts_with("Coat: ")).unwrap();
    assert!(coat.detail.ends_with("its form was undone: redo that to get it back"), "{coat:?}");
    sink.studio.redo(NOW.at(NOW.unix_ms + 2 * MINUTE_MS), &form.token).unwrap();
    let coat = sink.recent_changes().into_iter().find(|entry| entry.title.starts_with("Coat: ")).unwrap();
    assert!(!coat.detail.contains("undone"), "{coat:?}");
}

#[test]
fn a_phone_whose_name_was_used_by_another_is_set_up_as_a_new_one_and_saves_its_record() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Preference, "", &[("phone", "Phone at the sink")]);
    bench.studio.save(NOW, net("19.4")).unwrap();
    let copy = Bench { folder: TempDir::new().unwrap(), ..Bench::empty() };
    // With the log beside it: what was saved last lies there.
    for file in ["studio.laydown", "studio.laydown-wal"] {
        std::fs::copy(bench.folder.path().join(file), copy.folder.path().join(file)).unwrap();
    }
    let copy = copy.reopen();
    let before = bench.studio.store().device();
    assert_eq!(copy.studio.store().device(), before);
    let said = copy.studio.set_up_as_new_phone(NOW).unwrap();
    assert!(said.starts_with("The others now see this as a new phone"), "{said}");
    assert_ne!(copy.studio.store().device(), before);
    assert_eq!(copy.weigh(net("")).recent.len(), 1);
    copy.studio.save(NOW, net("19.1")).unwrap();
    bench.studio.save(NOW, net("19.2")).unwrap();
    bench.hear(&copy);
    copy.hear(&bench);
    assert_eq!(bench.dump(), copy.dump());
    let titles: Vec<String> = copy.studio.devices(NOW).unwrap().devices.into_iter().map(|row| row.title).collect();
    assert_eq!(titles, ["This phone (Phone at the sink)", "Phone at the sink"]);
    let copy = copy.reopen();
    assert_ne!(copy.studio.store().device(), before);
}
