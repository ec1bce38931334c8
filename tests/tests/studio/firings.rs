//! A firing's number, date and name, its witness cones, pieces that were never weighed, bisque, and pots that are fired twice.

use std::path::Path;

use laydown_app::{Assessment, EditorEntry, EditorKind, EditorView, StudioError, Tone};

use crate::{Bench, DAY_MS, NOW, editor, net};

impl Bench {
    fn edited(&self, kind: EditorKind, id: &str, values: &[(&str, &str)]) -> Result<(), StudioError> {
        let entry = EditorEntry { id: id.into(), ..editor(kind, "", values) };
        self.studio.save_record(NOW, &entry).map(|_| ())
    }

    fn again(&self, firing: &str, piece: &str) {
        self.say(firing, piece, Assessment::Again { on: true });
    }
}

fn text(view: &EditorView, key: &str) -> String {
    view.fields.iter().find(|field| field.key == key).unwrap_or_else(|| panic!("{key}: {view:?}")).text.clone()
}

#[test]
fn each_photograph_and_answer_stays_with_its_firing() {
    let (bench, pieces) = Bench::glazed(2);
    let piece = &pieces[0];
    let first = bench.firings()[0].clone();
    bench.studio.load(NOW, &first, &pieces, 0).unwrap();
    bench.studio.advance(NOW, &first).unwrap();
    bench.say(&first, piece, Assessment::Fault { fault: "running".into(), on: true });
    bench.again(&first, piece);
    bench.studio.save_photo(NOW, piece, &first, &bench.photograph("first.jpg")).unwrap();

    // A second coat after the first firing belongs to the second.
    let coat =
        bench.studio.pieces_to_glaze(NOW, &net(""), &code_of(&bench, piece)).unwrap().groups[0].pieces[0].clone();
    let later = NOW.at(NOW.unix_ms + DAY_MS);
    let entry = laydown_app::WeighEntry { net: "12.3".into(), ..coat.entry };
    bench.studio.save(later, bench.studio.weigh(later, Some(entry)).unwrap().entry).unwrap();
    let third_day = NOW.at(NOW.unix_ms + 2 * DAY_MS);
    let second = bench.studio.save_record(later, &editor(EditorKind::Firing, "", &[])).unwrap().id;
    bench.studio.load(later, &second, std::slice::from_ref(piece), 0).unwrap();
    bench.studio.advance(third_day, &second).unwrap();
    let liking = Assessment::Liking { stars: 5 };
    bench.studio.assess(third_day, &second, piece, &liking).unwrap();
    bench.studio.save_photo(third_day, piece, &second, &bench.photograph("the second.jpg")).unwrap();

    let (one, two) = (bench.assessment(&first, piece), bench.assessment(&second, piece));
    assert_eq!((one.photos.len(), two.photos.len()), (1, 1));
    assert_ne!(one.photos[0].file, two.photos[0].file);
    assert!(one.photos[0].caption.starts_with("Firing 1: ") && two.photos[0].caption.starts_with("Firing 2: "));
    assert_eq!(one.record.iter().filter(|line| line.value.contains(" g,")).count(), 1, "{:?}", one.record);
    assert_eq!(two.record.iter().filter(|line| line.value.contains(" g,")).count(), 2, "{:?}", two.record);
    let before = two.record.last().unwrap();
    assert!(before.label.starts_with("Firing 1: ") && before.value.starts_with("Runs"), "{before:?}");

    // Side by side, everything is of the firing that is named; the last one where none is.
    let line = |view: &laydown_app::CompareView, label: &str| {
        let found = view.lines.iter().find(|line| line.label == label).unwrap();
        (found.left.clone(), found.right.clone())
    };
    let view = bench.studio.compare(NOW, &one.compare, &two.compare).unwrap();
    assert_eq!((&view.left, &view.right), (&one.compare, &two.compare));
    assert_eq!((&view.left_photo, &view.right_photo), (&one.photos[0].preview, &two.photos[0].preview));
    let (left, right) = line(&view, "Came out");
    assert!(left.starts_with("Runs") && right == "Rated 5 of 5", "{left} | {right}");
    let (left, right) = line(&view, "Outside: wet weight");
    assert_eq!((left.as_str(), right.as_str()), ("–", "12.3 g"));
    let last = bench.studio.compare(NOW, piece, "").unwrap();
    assert_eq!((last.left, last.left_photo), (two.compare, two.photos[0].preview.clone()));
    assert!(last.others.iter().any(|other| other.id == one.compare), "its own other firing: {:?}", last.others);
}

fn code_of(bench: &Bench, piece: &str) -> String {
    bench.studio.piece(NOW, piece).unwrap().title.rsplit(' ').next().unwrap().to_owned()
}

#[test]
fn a_piece_waits_for_one_firing_at_a_time() {
    let (bench, pieces) = Bench::glazed(1);
    let first = bench.firings()[0].clone();
    let second = bench.begin();
    let waits = |firing: &str| bench.firing(firing).waiting.len();
    assert_eq!((waits(&first), waits(&second)), (1, 1));
    bench.studio.load(NOW, &first, &pieces, 0).unwrap();
    assert_eq!((waits(&first), waits(&second)), (0, 0));
    bench.studio.advance(NOW, &first).unwrap();
    // Fired and not looked at: it is still in there.
    let refused = bench.studio.load(NOW, &second, &pieces, 0);
    assert!(
        matches!(&refused, Err(StudioError::Refused { sentence, .. }) if sentence.contains("Firing 1")),
        "{refused:?}"
    );
    bench.again(&first, &pieces[0]);
    assert_eq!((waits(&first), waits(&second)), (0, 1), "not offered to the firing that it came out of");
    bench.studio.load(NOW, &second, &pieces, 0).unwrap();
    assert_eq!(waits(&second), 0);
}

#[test]
fn pieces_that_were_never_weighed_are_fired_and_looked_at() {
    let (bench, weighed) = Bench::glazed(1);
    let firing = bench.firings()[0].clone();
    let code = code_of(&bench, &weighed[0]);
    let add = |values: &[(&str, &str)]| bench.studio.save_record(NOW, &editor(EditorKind::Piece, &firing, values));
    for (wrong, field) in [
        (&[][..], "name"),
        (&[("code", code.as_str())], "code"),
        (&[("name", "Bowl"), ("pieces", "1.5")], "pieces"),
        (&[("name", "Bowl"), ("pieces", "1000")], "pieces"),
        (&[("name", "Bowl"), ("shelf", "7")], "shelf"),
    ] {
        let before = bench.dump();
        let refused = add(wrong);
        assert!(
            matches!(&refused, Err(StudioError::Refused { field: at, .. }) if at == field),
            "{wrong:?}: {refused:?}"
        );
        assert_eq!(bench.dump(), before);
    }
    let many = add(&[("name", "Egg cup"), ("pieces", "3"), ("shelf", "1")]).unwrap();
    assert_eq!(many.sentence, "3 pieces on shelf 2.");
    let teapot = add(&[("name", "Teapot"), ("code", "ab 17")]).unwrap().id;
    let view = bench.firing(&firing);
    assert_eq!(view.pieces.len(), 4);
    let grip = view.shelves[0].drawing.grips.iter().find(|grip| grip.key == teapot).unwrap();
    assert_eq!((grip.name.as_str(), grip.label.as_str()), ("Teapot, AB17", "AB17"));
    assert!(view.shelves[1].drawing.grips.iter().all(|grip| grip.label == "Egg"), "{:?}", view.shelves[1]);

    // Taken out again it waits, and can go in again.
    bench.studio.take_out(NOW, &firing, &teapot).unwrap();
    let waiting = bench.firing(&firing).waiting;
    let row = waiting.iter().find(|row| row.pieces == [teapot.clone()]).unwrap();
    assert_eq!(row.title, "Teapot, AB17");
    assert!(row.detail.starts_with("not weighed"), "{}", row.detail);
    bench.studio.load(NOW, &firing, std::slice::from_ref(&teapot), 0).unwrap();

    bench.studio.advance(NOW, &firing).unwrap();
    let look = bench.assessment(&firing, &teapot);
    assert_eq!((look.title.as_str(), look.record.len(), look.can_be_control), ("Teapot, AB17", 0, false));
    assert_eq!(look.questions.iter().map(|question| question.zone.as_str()).collect::<Vec<_>>(), ["inside", "outside"]);
    bench.say(&firing, &teapot, Assessment::Thickness { zone: "inside".into(), thickness: "right".into() });
    bench.studio.save_photo(NOW, &teapot, &firing, &bench.photograph("teapot.jpg")).unwrap();
    let page = bench.studio.piece(NOW, &teapot).unwrap();
    assert!(page.is_unweighed && page.photos.len() == 1 && page.firings[0].detail.contains("Inside right"), "{page:?}");
    let compared = bench.studio.compare(NOW, &teapot, &weighed[0]).unwrap();
    assert!(Path::new(&compared.left_photo).is_file());

    // What it is called can be changed; it goes only while nothing was found on it.
    bench.edited(EditorKind::Piece, &teapot, &[("name", "Big teapot")]).unwrap();
    assert_eq!(bench.studio.piece(NOW, &teapot).unwrap().title, "Big teapot, AB17");
    assert!(matches!(bench.studio.remove(NOW, EditorKind::Piece, &teapot), Err(StudioError::Refused { .. })));
    let removed = bench.studio.remove(NOW, EditorKind::Piece, &many.id).unwrap();
    assert_eq!(bench.firing(&firing).pieces.len(), 3);
    bench.studio.undo(NOW, &removed.undo).unwrap();
    assert_eq!(bench.firing(&firing).pieces.len(), 4);
    bench.studio.undo(NOW, &many.undo).unwrap();
    assert_eq!(bench.firing(&firing).pieces.len(), 1, "one undo takes all three away");
}

#[test]
fn a_firing_has_a_number_a_date_and_a_name_and_begins_as_the_last_one() {
    let bench = Bench::glazed(1).0;
    let first = bench.firings()[0].clone();
    assert!(bench.firing(&first).title.starts_with("Firing 1: cone 6, Garden kiln"), "{}", bench.firing(&first).title);
    bench.edited(EditorKind::Firing, &first, &[("cone", "10"), ("program", "slow"), ("cone_kind", "large")]).unwrap();
    let new = bench.shown(EditorKind::Firing, "", &[]);
    let shown = ["cone", "program", "cone_kind", "number", "date"].map(|key| text(&new, key));
    assert_eq!(shown, ["10", "slow", "large", "2", "2026-11-25"]);
    let order: Vec<&str> = new.fields.iter().map(|field| field.key.as_str()).collect();
    assert_eq!(order[..3], ["fires", "cone", "program"], "what changes from firing to firing comes first");
    assert_eq!(new.save_label, "Start loading");

    let second = bench.save(EditorKind::Firing, "", &[("name", "Autumn market"), ("date", "2026-11-20")]);
    let view = bench.firing(&second);
    assert_eq!(view.title, "Firing 2: Autumn market");
    assert!(
        view.lines.iter().any(|line| line.label == "Started" && line.value.starts_with("20 Nov")),
        "{:?}",
        view.lines
    );
    let day = |values: &[(&str, &str)]| bench.edited(EditorKind::Firing, &second, values);
    for wrong in ["", "2026-13-01", "25.11.2026", "2029-01-01"] {
        assert!(
            matches!(day(&[("date", wrong)]), Err(StudioError::Refused { field, .. }) if field == "date"),
            "{wrong}"
        );
    }
    assert!(matches!(day(&[("number", "1.5")]), Err(StudioError::Refused { field, .. }) if field == "number"));

    // After it, the day is that on which it was fired.
    bench.studio.advance(NOW, &second).unwrap();
    assert_eq!(text(&bench.shown(EditorKind::Firing, &second, &[]), "date"), "2026-11-25");
    day(&[("date", "2026-11-22")]).unwrap();
    let lines = bench.firing(&second).lines;
    let of = |label: &str| lines.iter().find(|line| line.label == label).unwrap().value.clone();
    assert!(of("Fired").starts_with("22 Nov") && of("Started").starts_with("20 Nov"), "{lines:?}");
}

#[test]
fn witness_cones_far_from_the_aim_are_questioned() {
    let bench = Bench::glazed(1).0;
    let bisque = bench.save(EditorKind::Firing, "", &[("fires", "bisque"), ("cone", "01")]);
    let row = bench.firing(&bisque).cones.unwrap();
    assert_eq!((row.title.as_str(), row.editor), ("Witness cones", EditorKind::WitnessCones));
    let place = |values: &[(&str, &str)]| bench.edited(EditorKind::WitnessCones, &bisque, values);
    let typed = [("witnesses", "others"), ("cones", "5 6 7")];
    let asked = bench.shown(EditorKind::WitnessCones, &bisque, &typed);
    let question = asked.fields.iter().find(|field| field.key == "meant").unwrap();
    assert_eq!(question.label, "Did you mean 05, 06, 07?");
    assert!(!asked.can_save && question.text.is_empty(), "neither is chosen before it is");
    assert!(matches!(place(&typed), Err(StudioError::Refused { field, .. }) if field == "meant"));
    let answered = |answer| [typed[0], typed[1], ("meant", answer)];
    place(&answered("typed")).unwrap();
    assert_eq!(bench.firing(&bisque).cones.unwrap().detail, "5, 6, 7");
    place(&answered("meant")).unwrap();
    assert_eq!(bench.firing(&bisque).cones.unwrap().detail, "07, 06, 05");
    // What is placed is not asked about again, and what is no cone is named.
    assert!(bench.shown(EditorKind::WitnessCones, &bisque, &[]).can_save);
    let wrong = place(&[("witnesses", "others"), ("cones", "5, 66")]);
    assert!(matches!(&wrong, Err(StudioError::Refused { sentence, .. }) if sentence.contains("cone 66")), "{wrong:?}");
    place(&[("witnesses", "three")]).unwrap();
    assert_eq!(bench.firing(&bisque).cones.unwrap().detail, "02, 01, 1");

    // Afterwards each that was placed is read, also one that is not beside the aim.
    place(&[("witnesses", "others"), ("cones", "03, 01")]).unwrap();
    bench.studio.advance(NOW, &bisque).unwrap();
    let row = bench.firing(&bisque).cones.unwrap();
    assert_eq!((row.title.as_str(), row.editor), ("Read the cones", EditorKind::Firing));
    bench.edited(EditorKind::Firing, &bisque, &[("03", "flat"), ("witness", "soft")]).unwrap();
    let notes = bench.firing(&bisque).notes;
    assert!(notes.iter().any(|note| note.text == "Cone 01 soft: under target."), "{notes:?}");
    assert_eq!(text(&bench.shown(EditorKind::Firing, &bisque, &[]), "03"), "flat");
}

#[test]
fn a_bisque_firing_takes_bare_clay_only() {
    let (bench, glazed) = Bench::glazed(2);
    let last = bench.save(EditorKind::Firing, "", &[("fires", "bisque")]);
    let view = bench.firing(&last);
    assert!(view.title.starts_with("Firing 2: bisque to cone 06, "), "{}", view.title);
    assert!(view.waiting.is_empty(), "glazed ware is not offered: {:?}", view.waiting);
    assert!(
        view.before.iter().any(|item| item.code == "bone_dry") && view.before.iter().all(|item| item.code != "foot")
    );
    bench.studio.set_checklist_item(NOW, &last, "bone_dry", true).unwrap();
    assert!(bench.studio.set_checklist_item(NOW, &last, "foot", true).is_err());
    bench.studio.save_record(NOW, &editor(EditorKind::Piece, &last, &[("name", "Mug"), ("pieces", "40")])).unwrap();
    let full = bench.firing(&last);
    assert!(
        full.notes.iter().all(|note| !note.text.contains("overlap") && !note.text.contains("closer")),
        "{:?}",
        full.notes
    );
    assert!(full.shelves[0].drawing.grips.iter().all(|grip| !grip.warns), "bare clay may touch and be stacked");

    bench.studio.advance(NOW, &last).unwrap();
    let look = bench.assessment(&last, "");
    assert!(look.questions.is_empty(), "there is no glaze to be thin or thick: {:?}", look.questions);
    bench.say(&last, &look.piece, Assessment::Fault { fault: "dunting".into(), on: true });
    bench.studio.advance(NOW, &last).unwrap();
    // What was bisque fired does not wait as if it were glazed.
    let next = bench.begin();
    assert_eq!(bench.firing(&next).waiting.iter().flat_map(|row| &row.pieces).count(), glazed.len());
    // The next bisque firing begins as the last one did, and a glaze firing as the last glaze firing.
    assert_eq!(text(&bench.shown(EditorKind::Firing, "", &[("fires", "bisque")]), "cone"), "06");
    assert_eq!(text(&bench.shown(EditorKind::Firing, "", &[]), "cone"), "6");
}

#[test]
fn no_pot_stands_on_another_unseen_and_a_fired_plan_is_a_picture() {
    let (bench, pieces) = Bench::glazed(3);
    let firing = bench.firings()[0].clone();
    bench.studio.load(NOW, &firing, &pieces, 0).unwrap();
    assert!(bench.firing(&firing).notes.iter().all(|note| !note.text.contains("overlap")));
    let grip = |key: &str| {
        let view = bench.firing(&firing);
        view.shelves[0].drawing.grips.iter().find(|grip| grip.key == key).unwrap().clone()
    };
    assert_eq!(grip(&pieces[0]).label, code_of(&bench, &pieces[0]));
    bench.studio.place(NOW, &firing, &pieces[0], grip(&pieces[1]).at).unwrap();
    let view = bench.firing(&firing);
    let warning = view.notes.iter().find(|note| note.text.starts_with("Shelf 1: 1 pair overlaps")).unwrap();
    assert_eq!(warning.tone, Tone::Warning);
    let warned = |key: &str| grip(key).warns;
    assert!(warned(&pieces[0]) && warned(&pieces[1]) && !warned(&pieces[2]));

    bench.studio.advance(NOW, &firing).unwrap();
    let view = bench.firing(&firing);
    assert_eq!(view.shelves[0].drawing.grips.len(), 3);
    assert!(view.shelves[0].drawing.grips.iter().all(|grip| !grip.movable));
    assert!(bench.studio.place(NOW, &firing, &pieces[0], grip(&pieces[2]).at).is_err());
    bench.studio.advance(NOW, &firing).unwrap();
    let done = bench.firing(&firing);
    assert_eq!(done.shelves[0].drawing.grips.len(), 3, "the plan stays readable");
    assert!(done.shelves[0].drawing.grips.iter().all(|grip| !grip.movable && !grip.removable));
    assert!(done.waiting.is_empty() && done.add_label.is_empty() && done.cones.is_none());
}

#[test]
fn pieces_of_one_form_can_be_ticked_together() {
    let (bench, _) = Bench::glazed(3);
    bench.save(EditorKind::Form, "", &[("name", "Bowl"), ("class", "open_bowl"), ("capacity", "400 ml")]);
    let form = bench.weigh(net("")).forms.into_iter().find(|row| row.title == "Bowl").unwrap().id;
    for _ in 0..2 {
        let entry = laydown_app::WeighEntry { form: form.clone(), ..net("21.0") };
        bench.studio.save(NOW, bench.weigh(entry).entry).unwrap();
    }
    let view = bench.firing(&bench.firings()[0]);
    let groups: Vec<(&str, usize)> =
        view.groups.iter().map(|group| (group.title.as_str(), group.pieces.len())).collect();
    assert_eq!(groups, [("Bowl: all 2", 2), ("Small mug: all 3", 3)]);
    // Where all that waits is of one form, ticking all does it.
    assert!(Bench::glazed(3).0.firing_groups().is_empty());
}

impl Bench {
    fn firing_groups(&self) -> Vec<String> {
        self.firing(&self.firings()[0]).groups.into_iter().map(|group| group.title).collect()
    }
}

#[test]
fn tables_of_firings_and_pieces_read_as_a_person_would_write_them() {
    let (bench, pieces) = Bench::glazed(1);
    let firing = bench.firings()[0].clone();
    bench.edited(EditorKind::WitnessCones, &firing, &[("witnesses", "three")]).unwrap();
    bench.studio.load(NOW, &firing, &pieces, 0).unwrap();
    bench.studio.save_record(NOW, &editor(EditorKind::Piece, &firing, &[("name", "Teapot"), ("code", "T7")])).unwrap();
    bench.studio.advance(NOW, &firing).unwrap();
    bench
        .edited(EditorKind::Firing, &firing, &[("witness", "at"), ("witness_low", "flat"), ("name", "Market")])
        .unwrap();
    bench.say(&firing, &pieces[0], Assessment::Fault { fault: "raw_cracking".into(), on: true });
    bench.studio.save_photo(NOW, &pieces[0], &firing, &bench.photograph("one.jpg")).unwrap();
    let table = |what: &str| {
        let file = bench.folder.path().join(format!("{what}.csv"));
        bench.studio.export(what, &file).unwrap();
        let text = std::fs::read_to_string(file).unwrap();
        let mut reader = csv::Reader::from_reader(text.trim_start_matches('\u{feff}').as_bytes());
        let headers = reader.headers().unwrap().clone();
        let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        move |row: usize, column: &str| {
            let at = headers.iter().position(|header| header == column).unwrap();
            rows[row][at].to_owned()
        }
    };
    let firings = table("firings");
    assert_eq!(["number", "name", "ware"].map(|column| firings(0, column)), ["1", "Market", "glazed"]);
    assert_eq!(firings(0, "witness_cones"), "5 flat; 6 bent; 7");
    let rows = table("pieces");
    let (mug, teapot) = if rows(0, "form") == "Small mug" { (0, 1) } else { (1, 0) };
    assert_eq!((rows(teapot, "form"), rows(teapot, "code")), ("Teapot".to_owned(), "T7".to_owned()));
    assert_eq!((rows(mug, "faults"), rows(mug, "firing_number")), ("raw cracking".to_owned(), "1".to_owned()));
    let photo = bench.assessment(&firing, &pieces[0]).photos.remove(0).file;
    assert!(photo.contains(&rows(mug, "photos")) && rows(mug, "photos").len() == 64, "{photo}");
}
