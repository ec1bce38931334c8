//! Rows that came from elsewhere with numbers that cannot be, and text that cannot be seen: every screen still comes up.

use std::fmt::Debug;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::mpsc::{RecvTimeoutError, Sender, channel};
use std::time::Duration;

use laydown_store::entity::{
    Body, Bucket, Check, Coat, Control, Entity, Finding, Firing, Form, Glaze, Kiln, Placement, Preference, Scale, Tile,
    Vessel,
};
use laydown_store::journal::Kind;
use serde_json::{Value as Json, json};
use uuid::Uuid;

use super::*;

/// Ten times what a screen needs on a loaded machine; one that hangs never comes up.
const LIMIT: Duration = Duration::from_secs(20);

const IMPOSSIBLE: [i64; 5] = [0, -1, 1, i64::MAX, i64::MIN];

impl Bench {
    /// One of everything that can be shown.
    fn with_everything() -> Bench {
        let bench = Bench::set_up();
        bench.save(EditorKind::Check, &bench.bucket(), &[("way", "typed"), ("typed", "1.45")]);
        bench.save(EditorKind::Body, "", &[("name", "Stoneware"), ("to_bisque", "6"), ("to_fired", "12")]);
        bench.save(EditorKind::Vessel, "", &[("name", "Jar"), ("empty", "100"), ("with_water", "350")]);
        bench.save(EditorKind::Tile, "", &[("name", "Tile 1"), ("area", "35"), ("dry", "2")]);
        bench.save(EditorKind::Control, "", &[("zone", "outside"), ("net", "19.4"), ("specific_gravity", "1.45")]);
        bench.save(EditorKind::Kiln, "", &[("name", "Garden"), ("across", "50"), ("deep", "40"), ("shelves", "3")]);
        let saved = bench.studio.save(NOW, net("19.4")).unwrap();
        bench.studio.set_control(NOW, &saved.id, true).unwrap();
        let firing = bench.save(EditorKind::Firing, "", &[("cone", "6")]);
        bench.studio.load_all(NOW, &firing).unwrap();
        let coat = bench.one::<Coat>();
        bench.put(&Finding {
            id: Uuid::from_u128(7),
            firing: firing.parse().unwrap(),
            piece: coat.piece,
            at: NOW.unix_ms,
            inside: Some("right".to_owned()),
            liking: Some(3),
            ..Finding::default()
        });
        bench.save(EditorKind::Preference, "", &[("speak", "no")]);
        bench
    }

    fn one<E: Entity>(&self) -> E {
        self.studio.store().read(E::all).unwrap().remove(0)
    }

    fn put<E: Entity>(&self, entity: &E) {
        let saved = self.studio.store().transact(NOW.unix_ms, |tx| tx.put(entity).map(|_| ()));
        saved.map_err(|error: StoreError| error).unwrap();
    }
}

/// What came up wrong, by the name of the screen.
struct Screens<'a> {
    bench: &'a Bench,
    told: &'a Sender<(String, String)>,
}

impl Screens<'_> {
    fn all(&self, with: &str) {
        let bench = self.bench;
        let studio = &bench.studio;
        let ids = Ids::of(bench);
        self.comes_up(with, "weigh", || studio.weigh(NOW, None));
        self.comes_up(with, "weigh 19.4", || studio.weigh(NOW, Some(net("19.4"))));
        self.comes_up(with, "weigh both", || studio.weigh(NOW, Some(two_weights("300", "319.4"))));
        self.comes_up(with, "buckets", || studio.buckets(NOW));
        self.comes_up(with, "bucket", || studio.bucket(NOW, &ids.bucket));
        self.comes_up(with, "house", || studio.setup(NOW));
        self.comes_up(with, "findings", || studio.findings(NOW));
        self.comes_up(with, "glaze findings", || studio.glaze_findings(NOW, &ids.glaze));
        self.comes_up(with, "sizes", || studio.sizes(NOW, ""));
        self.comes_up(with, "kiln", || studio.kiln(NOW));
        self.comes_up(with, "firing", || studio.firing(NOW, &ids.firing));
        self.comes_up(with, "contact sheet", || studio.contact_sheet(NOW, &ids.firing));
        self.comes_up(with, "piece", || studio.piece(NOW, &ids.piece));
        self.comes_up(with, "look at", || studio.assessment(NOW, &ids.firing, &ids.piece));
        self.comes_up(with, "compare", || studio.compare(NOW, &ids.piece, &ids.piece));
        self.comes_up(with, "find", || studio.find_pieces(NOW, &[], 0));
        self.comes_up(with, "coat", || studio.coat(NOW, &ids.coat));
        self.comes_up(with, "doings", || studio.recent_changes(NOW));
        self.comes_up(with, "history", || studio.history(NOW, &ids.coat));
        self.comes_up(with, "devices", || studio.devices(NOW));
        for (kind, id, subject) in ids.sheets() {
            let entry = EditorEntry { id, subject, ..editor(kind, "", &[]) };
            self.listener(with, &format!("sheet {kind:?}"), || match studio.editor(NOW, &entry) {
                // A sheet may say what must be put right; the file is sound.
                Err(StudioError::Damaged { sentence }) => Err(sentence),
                answer => Ok(format!("{answer:?}")),
            });
        }
    }

    fn comes_up<T: Debug>(&self, with: &str, screen: &str, show: impl FnOnce() -> Result<T, StudioError>) {
        self.listener(with, screen, || match show() {
            Ok(view) => Ok(format!("{view:?}")),
            Err(error) => Err(format!("{error:?}")),
        });
    }

    fn listener(&self, with: &str, screen: &str, show: impl FnOnce() -> Result<String, String>) {
        let trouble = match catch_unwind(AssertUnwindSafe(show)) {
            Err(_) => "panics".to_owned(),
            Ok(Err(error)) => error,
            Ok(Ok(shown)) if ["NaN", "inf ", "inf,"].iter().any(|odd| shown.contains(odd)) => {
                let at = shown.find("NaN").or_else(|| shown.find("inf")).unwrap_or_default();
                format!("shows {}", shown.chars().skip(at.saturating_sub(80)).take(160).collect::<String>())
            }
            Ok(Ok(_)) => String::new(),
        };
        self.told.send((format!("{screen} with {with}"), trouble)).unwrap();
    }
}

struct Ids {
    glaze: String,
    bucket: String,
    firing: String,
    piece: String,
    coat: String,
    form: String,
    scale: String,
    tile: String,
    control: String,
    kiln: String,
    vessel: String,
    body: String,
}

impl Ids {
    fn of(bench: &Bench) -> Ids {
        let coat = bench.one::<Coat>();
        Ids {
            glaze: bench.one::<Glaze>().id.to_string(),
            bucket: bench.one::<Bucket>().id.to_string(),
            firing: bench.one::<Firing>().id.to_string(),
            piece: coat.piece.to_string(),
            coat: coat.id.to_string(),
            form: bench.one::<Form>().id.to_string(),
            scale: bench.one::<Scale>().id.to_string(),
            tile: bench.one::<Tile>().id.to_string(),
            control: bench.one::<Control>().id.to_string(),
            kiln: bench.one::<Kiln>().id.to_string(),
            vessel: bench.one::<Vessel>().id.to_string(),
            body: bench.one::<Body>().id.to_string(),
        }
    }

    /// Kind, id, subject.
    fn sheets(&self) -> Vec<(EditorKind, String, String)> {
        let own = |kind, id: &String| (kind, id.clone(), String::new());
        vec![
            own(EditorKind::Glaze, &self.glaze),
            own(EditorKind::Bucket, &self.bucket),
            (EditorKind::Check, String::new(), self.bucket.clone()),
            (EditorKind::Thin, String::new(), self.bucket.clone()),
            (EditorKind::BucketEntry, String::new(), self.bucket.clone()),
            (EditorKind::Mix, String::new(), self.glaze.clone()),
            own(EditorKind::Form, &self.form),
            own(EditorKind::Scale, &self.scale),
            own(EditorKind::Tile, &self.tile),
            own(EditorKind::Control, &self.control),
            own(EditorKind::Control, &self.coat),
            own(EditorKind::Kiln, &self.kiln),
            own(EditorKind::Vessel, &self.vessel),
            own(EditorKind::Body, &self.body),
            own(EditorKind::Firing, &self.firing),
        ]
    }
}

/// Walks on a thread of its own and gives up on a screen that does not come up.
fn watched(walk: impl FnOnce(&Sender<(String, String)>) + Send + 'static) {
    let (told, heard) = channel();
    let walker = std::thread::spawn(move || walk(&told));
    let (mut last, mut seen, mut wrong) = (String::new(), 0, Vec::new());
    loop {
        match heard.recv_timeout(LIMIT) {
            Ok((screen, trouble)) => {
                seen += 1;
                if !trouble.is_empty() {
                    wrong.push(format!("{screen}: {trouble}"));
                }
                last = screen;
            }
            Err(RecvTimeoutError::Timeout) => panic!("hangs after {last}; before it: {wrong:#?}"),
            Err(RecvTimeoutError::Disconnected) => break,
        }
    }
    walker.join().expect("the walk comes to its end");
    assert!(seen > 100, "only {seen} screens");
    assert!(wrong.is_empty(), "{} wrong: {:#?}", wrong.len(), &wrong[..wrong.len().min(40)]);
}

/// Each number of the one `E` there is, made impossible, and then as it was again.
fn with_impossible_numbers<E: Entity>(bench: &Bench, told: &Sender<(String, String)>) {
    let good: E = bench.one();
    let fields = serde_json::to_value(&good).unwrap();
    for (name, was) in fields.as_object().unwrap() {
        // An absent number may come, too: those fields are named for their unit.
        let may_be_number = was.is_i64() || (was.is_null() && name.contains('_') && !name.ends_with("_kind"));
        if !may_be_number {
            continue;
        }
        for number in IMPOSSIBLE {
            let mut changed = fields.clone();
            changed[name] = json!(number);
            let Ok(mut odd) = serde_json::from_value::<E>(changed) else { continue };
            odd.set_id(good.id());
            bench.put(&odd);
            Screens { bench, told }.all(&format!("{} {name} = {number}", E::KIND.name()));
        }
        bench.put(&good);
    }
}

#[test]
fn impossible_numbers_leave_every_screen_standing() {
    watched(|told| {
        let bench = Bench::with_everything();
        Screens { bench: &bench, told }.all("nothing odd");
        with_impossible_numbers::<Glaze>(&bench, told);
        with_impossible_numbers::<Bucket>(&bench, told);
        with_impossible_numbers::<Check>(&bench, told);
        with_impossible_numbers::<Form>(&bench, told);
        with_impossible_numbers::<Scale>(&bench, told);
        with_impossible_numbers::<Coat>(&bench, told);
        with_impossible_numbers::<Control>(&bench, told);
        with_impossible_numbers::<Tile>(&bench, told);
        with_impossible_numbers::<Vessel>(&bench, told);
        with_impossible_numbers::<Body>(&bench, told);
        with_impossible_numbers::<Kiln>(&bench, told);
        with_impossible_numbers::<Firing>(&bench, told);
        with_impossible_numbers::<Placement>(&bench, told);
        with_impossible_numbers::<Finding>(&bench, told);
    });
}

/// The fields of an `E` that hold a code of a list, each with one that only a newer laydown knows, and then as they were.
fn with_unknown_codes<E: Entity>(bench: &Bench, told: &Sender<(String, String)>, fields: &[&str]) {
    let good: E = bench.one();
    for field in fields {
        let mut changed = serde_json::to_value(&good).unwrap();
        changed[*field] = match *field {
            "faults" | "witnesses" => json!([["of_a_newer_laydown", "of_a_newer_laydown"]]),
            _ => json!("of_a_newer_laydown"),
        };
        let mut newer: E = serde_json::from_value(changed).unwrap();
        newer.set_id(good.id());
        bench.put(&newer);
        Screens { bench, told }.all(&format!("an unknown {} of a {}", field, E::KIND.name()));
        bench.put(&good);
    }
}

#[test]
fn what_a_newer_laydown_wrote_leaves_every_screen_standing() {
    watched(|told| {
        let bench = Bench::with_everything();
        with_unknown_codes::<Glaze>(&bench, told, &["sensitivity"]);
        with_unknown_codes::<Check>(&bench, told, &["how"]);
        with_unknown_codes::<Form>(&bench, told, &["class", "stage"]);
        with_unknown_codes::<Coat>(&bench, told, &["zone", "source", "verdict"]);
        with_unknown_codes::<Control>(&bench, told, &["zone"]);
        with_unknown_codes::<Tile>(&bench, told, &["came_out"]);
        with_unknown_codes::<Firing>(&bench, told, &["cone", "cone_kind", "state", "witnesses", "checked"]);
        with_unknown_codes::<Finding>(&bench, told, &["inside", "outside", "overlap", "faults"]);
        with_unknown_codes::<Preference>(&bench, told, &["mass", "volume", "area", "length", "decimal"]);
        let entity = bench.one::<Glaze>().id();
        let unknown = bench.studio.store().transact(NOW.unix_ms, |tx| {
            let body = json!({"of_a_newer_laydown": [1, {"a": null}]}).as_object().unwrap().clone();
            tx.append(Glaze::KIND, entity, body.clone())?;
            let new = tx.new_id();
            tx.append(Kind::of("of_a_newer_laydown"), new, body)
        });
        unknown.map_err(|error: StoreError| error).unwrap();
        Screens { bench: &bench, told }.all("an unknown kind and an unknown field");
    });
}

/// Direction overrides, a line break, a byte order mark, zero width.
const HIDDEN: &str = "A\u{202e}s\nh\u{feff}\u{200b}\u{7}";
const SHOWN: &str = "A�s�h���";

#[test]
fn what_cannot_be_seen_is_shown_as_marks_wherever_a_name_is_shown() {
    let bench = Bench::with_everything();
    let name = HIDDEN.to_owned();
    bench.put(&Glaze { name: name.clone(), ..bench.one() });
    bench.put(&Bucket { name: name.clone(), ..bench.one() });
    bench.put(&Form { name: name.clone(), ..bench.one() });
    bench.put(&Scale { name: name.clone(), ..bench.one() });
    bench.put(&Kiln { name: name.clone(), ..bench.one() });
    bench.put(&Tile { name: name.clone(), ..bench.one() });
    bench.put(&Coat { note: Some(name.clone()), code: Some(name.clone()), ..bench.one() });
    bench.put(&Firing { note: Some(name.clone()), program: Some(name), ..bench.one() });
    let ids = Ids::of(&bench);
    let studio = &bench.studio;
    let mut shown = vec![
        format!("{:?}", studio.weigh(NOW, Some(net("19.4"))).unwrap()),
        format!("{:?}", studio.buckets(NOW).unwrap()),
        format!("{:?}", studio.setup(NOW).unwrap()),
        format!("{:?}", studio.findings(NOW).unwrap()),
        format!("{:?}", studio.kiln(NOW).unwrap()),
        format!("{:?}", studio.firing(NOW, &ids.firing).unwrap()),
        format!("{:?}", studio.piece(NOW, &ids.piece).unwrap()),
        format!("{:?}", studio.coat(NOW, &ids.coat).unwrap()),
        format!("{:?}", studio.recent_changes(NOW).unwrap()),
        format!("{:?}", studio.history(NOW, &ids.glaze).unwrap()),
    ];
    for (kind, id, subject) in ids.sheets() {
        shown.push(format!("{:?}", studio.editor(NOW, &EditorEntry { id, subject, ..editor(kind, "", &[]) }).unwrap()));
    }
    for shown in &shown {
        // Debug writes what cannot be seen with its number.
        for hidden in ["\\u{202e}", "\\u{feff}", "\\u{200b}", "\\u{7}", "s\\nh"] {
            assert!(!shown.contains(hidden), "{hidden}: {shown}");
        }
    }
    assert!(shown[..4].iter().all(|shown| shown.contains(SHOWN)), "{shown:#?}");
    // Keeping something else of it leaves the name as it came.
    let entry = EditorEntry { id: ids.glaze.clone(), ..editor(EditorKind::Glaze, "", &[("sensitivity", "high")]) };
    studio.save_record(NOW, &entry).unwrap();
    let journal = studio.store().read(|conn| laydown_store::events_of(conn, ids.glaze.parse().unwrap())).unwrap();
    let last = journal.iter().max_by_key(|event| event.order()).unwrap();
    assert_eq!(last.body.keys().collect::<Vec<_>>(), ["sensitivity"]);
    let named: Vec<&Json> = journal.iter().filter_map(|event| event.body.get("name")).collect();
    assert!(named.contains(&&json!(HIDDEN)), "{named:?}");
}

#[test]
fn a_typed_name_is_one_line_that_can_be_seen() {
    let bench = Bench::set_up();
    let typed = " A\u{202e}sh\n\u{feff}white\u{200b}\t";
    bench.save(EditorKind::Scale, "", &[("name", typed), ("capacity", "2000"), ("step", "1")]);
    let names: Vec<String> =
        bench.studio.store().read(Scale::all).unwrap().into_iter().map(|scale| scale.name).collect();
    assert!(names.contains(&"Ash white".to_owned()), "{names:?}");
    let only_hidden =
        bench.try_save(EditorKind::Scale, "", &[("name", "\u{200b}"), ("capacity", "2000"), ("step", "1")]);
    assert!(matches!(only_hidden, Err(StudioError::Refused { .. })), "{only_hidden:?}");
}

#[test]
fn a_thin_slurry_is_doubted_and_next_to_water_is_refused() {
    let bench = Bench::set_up();
    let check = |typed: &str| {
        let entry = editor(EditorKind::Check, &bench.bucket(), &[("way", "typed"), ("typed", typed)]);
        bench.studio.editor(NOW, &entry).unwrap()
    };
    for refused in ["1.001", "1.000004", "1.019", "1001 g/l", "0.1 Bé"] {
        let view = check(refused);
        assert!(!view.can_save, "{refused}");
        let refusal = view.fields.iter().find(|field| field.key == "typed").unwrap().refusal.clone();
        assert!(refusal.contains("Stir the bucket to the bottom"), "{refused}: {refusal}");
    }
    let doubted = |typed: &str| {
        let view = check(typed);
        assert!(view.can_save, "{typed}");
        view.results.iter().any(|note| note.text.contains("very thin for a glaze"))
    };
    assert!(doubted("1.02") && doubted("1.14") && !doubted("1.15") && !doubted("1.45"));
    bench.save(EditorKind::Check, &bench.bucket(), &[("way", "typed"), ("typed", "1.05")]);
    let notes = bench.weigh(net("19.4")).notes;
    assert!(notes.iter().any(|note| note.text.contains("SG 1.05 is very thin for a glaze")), "{notes:?}");
}

/// A sheet, what is usually typed into it, and the fields that are typed otherwise.
type Typed = (EditorKind, &'static [(&'static str, &'static str)], &'static [&'static str]);

#[test]
fn nothing_typed_makes_a_studio_damaged() {
    let numbers = ["0", "0.0004", "0.0005", "0.001", "1.000004", "1.019996", "2.199996", "29.996", "99.9996", "1e9"];
    let sheets: [Typed; 7] = [
        (EditorKind::Glaze, &[("name", "G")], &["specific_gravity", "powder_density", "starting_laydown"]),
        (
            EditorKind::Scale,
            &[("name", "S"), ("capacity", "100"), ("step", "0.1")],
            &["capacity", "step", "minimum", "repeatability"],
        ),
        (
            EditorKind::Body,
            &[("name", "B"), ("to_bisque", "6"), ("to_fired", "12")],
            &["to_bisque", "to_fired", "bisque_density"],
        ),
        (
            EditorKind::Vessel,
            &[("name", "V"), ("empty", "50"), ("with_water", "150")],
            &["empty", "with_water", "water_temperature"],
        ),
        (EditorKind::Tile, &[("name", "T"), ("area", "35"), ("dry", "2")], &["area", "dry", "net", "specific_gravity"]),
        (
            EditorKind::Control,
            &[("zone", "inside"), ("net", "19.4"), ("specific_gravity", "1.45")],
            &["net", "specific_gravity"],
        ),
        (EditorKind::Form, &[("name", "F"), ("class", "jar"), ("capacity", "250")], &["capacity"]),
    ];
    watched(move |told| {
        let bench = Bench::set_up();
        for (kind, usual, fields) in sheets {
            for field in fields {
                for number in numbers {
                    let mut values: Vec<(&str, &str)> = usual.iter().filter(|(key, _)| key != field).copied().collect();
                    values.push((field, number));
                    let with = format!("{kind:?} {field} = {number}");
                    if bench.try_save(kind, "", &values).is_err() {
                        told.send((with, String::new())).unwrap();
                        continue;
                    }
                    let screens = Screens { bench: &bench, told };
                    let studio = &bench.studio;
                    screens.comes_up(&with, "weigh", || studio.weigh(NOW, Some(net("19.4"))));
                    screens.comes_up(&with, "house", || studio.setup(NOW));
                    screens.comes_up(&with, "buckets", || studio.buckets(NOW));
                    let rows: Vec<(EditorKind, String)> = studio
                        .setup(NOW)
                        .into_iter()
                        .flat_map(|setup| setup.sections)
                        .flat_map(|section| section.rows.into_iter().map(move |row| (section.editor, row.id)))
                        .collect();
                    for (kind, id) in rows.iter().filter(|(found, _)| *found == kind) {
                        let entry = EditorEntry { id: id.clone(), ..editor(*kind, "", &[]) };
                        screens.comes_up(&with, "sheet", || {
                            let view = studio.editor(NOW, &entry)?;
                            let refused: Vec<String> = view.fields.into_iter().map(|field| field.refusal).collect();
                            if view.can_save {
                                Ok(())
                            } else {
                                Err(StudioError::Missing { sentence: refused.concat() })
                            }
                        });
                        // For the next one, so that each stands by itself.
                        if bench.studio.remove(NOW, *kind, id).is_err() {
                            panic!("{with}: {kind:?} cannot be removed");
                        }
                    }
                    if kind == EditorKind::Form || kind == EditorKind::Scale || kind == EditorKind::Glaze {
                        bench.save(
                            EditorKind::Form,
                            "",
                            &[("name", "Mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")],
                        );
                        bench.save(EditorKind::Glaze, "", &[("name", "Ash"), ("specific_gravity", "1.45")]);
                        bench.save(EditorKind::Scale, "", &[("name", "Scale"), ("capacity", "2000"), ("step", "0.1")]);
                    }
                }
            }
        }
    });
}
