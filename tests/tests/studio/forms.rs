//! The form sheet: points, drags, bodies, refusals; and the amounts of every form from one that is known.

use laydown_app::{
    Drawing, EditorEntry, EditorKind, EditorView, Ink, Redrawn, Spot, StudioError, Touch, Value, WeighEntry,
};

use laydown_domain::form::ZoneKind;

use crate::{Bench, NOW, editor, leading_number, net};

const MUG: &str = "0\t7.2\t\n4\t8.4\t\n9.2\t8\t";

fn by_points<'a>(points: &'a str, more: &[(&'a str, &'a str)]) -> Vec<(&'a str, &'a str)> {
    let mut values =
        vec![("name", "Tall mug"), ("class", "rounded_mug"), ("way", "profile"), ("points", points), ("wall", "0.4")];
    values.extend_from_slice(more);
    values
}

fn entry(values: &[(&str, &str)]) -> EditorEntry {
    editor(EditorKind::Form, "", values)
}

fn view(bench: &Bench, values: &[(&str, &str)]) -> EditorView {
    bench.studio.editor(NOW, &entry(values)).unwrap()
}

fn text<'a>(view: &'a EditorView, key: &str) -> &'a str {
    &view.fields.iter().find(|field| field.key == key).unwrap().text
}

fn refusal<'a>(view: &'a EditorView, key: &str) -> &'a str {
    &view.fields.iter().find(|field| field.key == key).unwrap().refusal
}

/// The number that follows `name` in the results: "Inside: 214 cm², give or take 4%".
fn result(view: &EditorView, name: &str) -> f64 {
    let note = view.results.iter().find_map(|note| note.text.strip_prefix(name));
    leading_number(note.unwrap_or_else(|| panic!("{name} is not in {:?}", view.results)).trim())
}

fn grip(drawing: &Drawing, key: &str) -> Spot {
    drawing.grips.iter().find(|grip| grip.key == key).unwrap().at
}

fn with(entry: &EditorEntry, redrawn: &Redrawn) -> EditorEntry {
    EditorEntry { values: [entry.values.clone(), redrawn.values.clone()].concat(), ..entry.clone() }
}

#[test]
fn measured_points_give_what_it_holds_and_what_is_glazed() {
    let bench = Bench::empty();
    let view = view(&bench, &by_points(MUG, &[]));
    assert!(view.can_save, "{view:?}");
    // By hand: a cylinder 7.6 cm wide inside and 8.8 cm deep holds 399 ml and has 255 cm² inside.
    let holds = result(&view, "Holds ");
    assert!((370.0..=430.0).contains(&holds), "{holds}");
    let inside = result(&view, "Inside:");
    assert!((230.0..=270.0).contains(&inside), "{inside}");
    let drawing = view.drawing.as_ref().unwrap();
    assert_eq!(drawing.below, "way");
    for ink in [Ink::Bisque, Ink::Glazed, Ink::Clay, Ink::Line] {
        assert!(drawing.shapes.iter().any(|shape| shape.ink == ink && shape.spots.len() > 2), "{ink:?}");
    }
    let inside_box = |spot: &Spot| (0.0..=1.0).contains(&spot.x) && (0.0..=drawing.tall).contains(&spot.y);
    assert!(drawing.shapes.iter().all(|shape| shape.spots.iter().all(inside_box)));
    assert_eq!(drawing.grips.iter().filter(|grip| grip.key.starts_with("point.")).count(), 3);

    let id = bench.save(EditorKind::Form, "", &by_points(MUG, &[]));
    let saved = bench.studio.editor(NOW, &EditorEntry { id, ..entry(&[]) }).unwrap();
    assert_eq!((text(&saved, "way"), text(&saved, "points")), ("profile", MUG));
    assert_eq!(saved.results, view.results);
}

#[test]
fn a_new_form_begins_from_its_class() {
    let bench = Bench::empty();
    for class in ["open_bowl", "bottle", "plate"] {
        let view = view(&bench, &[("name", "New"), ("class", class), ("way", "profile")]);
        assert!(view.can_save && text(&view, "points").lines().count() >= 3, "{class}: {view:?}");
    }
    let tile = view(&bench, &[("name", "Tile"), ("class", "tile"), ("way", "profile")]);
    assert!(!tile.can_save && refusal(&tile, "way").contains("has no profile"));
}

#[test]
fn a_dragged_point_is_typed_into_the_table_and_the_area_follows() {
    let bench = Bench::empty();
    let mut entry = entry(&by_points(MUG, &[]));
    let before = bench.studio.editor(NOW, &entry).unwrap();
    let start = grip(before.drawing.as_ref().unwrap(), "point.1");
    let mut last = result(&before, "Inside:");
    for step in 1..=4 {
        let to = Spot { x: start.x - 0.02 * f64::from(step), y: start.y };
        let redrawn = bench.studio.touch(NOW, &entry, &Touch::Move { grip: "point.1".into(), to }).unwrap();
        let inside = result(&redrawn.view, "Inside:");
        assert!(inside < last, "{inside} after {last}");
        last = inside;
        // The point lies under the finger, to the half millimetre.
        let at = grip(redrawn.view.drawing.as_ref().unwrap(), "point.1");
        assert!((at.x - to.x).abs() < 0.005 && (at.y - to.y).abs() < 0.005, "{at:?} {to:?}");
        entry = with(&entry, &redrawn);
    }
    assert_ne!(text(&bench.studio.editor(NOW, &entry).unwrap(), "points"), MUG);

    // Past the edge the frame grows, so that what is drawn stays in sight.
    let out = Touch::Move { grip: "point.1".into(), to: Spot { x: 0.999, y: start.y } };
    let wide = bench.studio.touch(NOW, &entry, &out).unwrap();
    let drawing = wide.view.drawing.as_ref().unwrap();
    assert!(drawing.grips.iter().all(|grip| (0.0..=1.0).contains(&grip.at.x)), "{drawing:?}");
}

#[test]
fn points_are_added_on_the_wall_and_taken_away() {
    let bench = Bench::empty();
    let entry = entry(&by_points(MUG, &[]));
    let drawing = bench.studio.editor(NOW, &entry).unwrap().drawing.unwrap();
    let (foot, belly) = (grip(&drawing, "point.0"), grip(&drawing, "point.1"));
    let between = Spot { x: (foot.x + belly.x) / 2.0, y: (foot.y + belly.y) / 2.0 };
    let added = bench.studio.touch(NOW, &entry, &Touch::Add { at: between }).unwrap();
    assert_eq!(text(&added.view, "points").lines().count(), 4);
    let removed = bench.studio.touch(NOW, &with(&entry, &added), &Touch::Remove { grip: "point.1".into() }).unwrap();
    assert_eq!(text(&removed.view, "points"), MUG);
    for meaningless in [
        Touch::Add { at: Spot { x: 0.5, y: 0.1 } },
        Touch::Remove { grip: "point.9".into() },
        Touch::Move { grip: "handle".into(), to: between },
        Touch::Move { grip: "point.1".into(), to: Spot { x: f64::NAN, y: f64::INFINITY } },
    ] {
        let redrawn = bench.studio.touch(NOW, &entry, &meaningless).unwrap();
        assert_eq!(text(&redrawn.view, "points"), MUG, "{meaningless:?}");
    }
}

#[test]
fn the_glaze_lines_are_dragged_and_zones_follow() {
    let bench = Bench::empty();
    let entry = entry(&by_points(MUG, &[("bare_foot", "0.6")]));
    let before = bench.studio.editor(NOW, &entry).unwrap();
    let outside = result(&before, "Outside:");
    let line = grip(before.drawing.as_ref().unwrap(), "bare_foot");
    let to = Spot { y: line.y - 0.1, ..line };
    let raised = bench.studio.touch(NOW, &entry, &Touch::Move { grip: "bare_foot".into(), to }).unwrap();
    assert!(result(&raised.view, "Outside:") < outside - 10.0);

    let inside = result(&before, "Inside:");
    let rim = grip(before.drawing.as_ref().unwrap(), "overlap");
    let to = Spot { y: rim.y + 0.1, ..rim };
    let banded = bench.studio.touch(NOW, &entry, &Touch::Move { grip: "overlap".into(), to }).unwrap();
    assert!(result(&banded.view, "Inside:") > inside + 10.0, "the inside glaze runs over the lip");
    assert!(banded.view.results.iter().any(|note| note.text.contains("crawl or run")), "{:?}", banded.view.results);
    assert!(banded.view.drawing.unwrap().shapes.iter().any(|shape| shape.ink == Ink::Overlap));
}

#[test]
fn points_that_make_no_pot_are_named_and_the_drawing_stays() {
    let bench = Bench::empty();
    for (points, said) in [
        ("0\t7\t\n9\t8\t", "at least three points"),
        ("0\t7\t\n4\t8\t\n4\t9\t\n9\t8\t", "Points 2 and 3 are at the same height"),
        ("0\t7\t\n4\t8\t\n900\t8\t", "Point 3 is not a possible size"),
        ("0\t7\t\n4\t0.6\t\n9\t8\t", "At point 2 the wall is thicker"),
        ("0\t7\t\n4\t8\t\n9\twide\t", "Point 3: "),
        ("0\t7\t\n4\t\t\n9\t8\t", "Point 2: give both"),
        ("0\t7\t\n9\t4\t\n2\t5\t\n4\t12\t", "crosses itself"),
    ] {
        let view = view(&bench, &by_points(points, &[]));
        assert!(!view.can_save && refusal(&view, "points").contains(said), "{said}: {:?}", refusal(&view, "points"));
        assert!(matches!(
            bench.try_save(EditorKind::Form, "", &by_points(points, &[])),
            Err(StudioError::Refused { field, .. }) if field == "points"
        ));
    }
    let thick = view(&bench, &by_points(MUG, &[("more", "yes"), ("floor", "12")]));
    assert!(refusal(&thick, "floor").contains("higher than the pot"), "{thick:?}");
    // Out of sight, it is said all the same.
    let hidden = view(&bench, &by_points(MUG, &[("floor", "12")]));
    assert!(!hidden.can_save && hidden.results.iter().any(|note| note.text.contains("higher than the pot")));
}

#[test]
fn a_fired_pot_is_calculated_back_to_its_bisque() {
    let bench = Bench::empty();
    let as_bisque = result(&view(&bench, &by_points(MUG, &[])), "Inside:");
    let fired = by_points(MUG, &[("stage", "fired")]);
    assert!(refusal(&view(&bench, &fired), "stage").contains("Add its body"));
    let body = bench.save(
        EditorKind::Body,
        "",
        &[("name", "White stoneware"), ("to_bisque", "6"), ("to_fired", "12%"), ("bisque_density", "1.85")],
    );
    assert!(refusal(&view(&bench, &fired), "body").contains("Choose its body"));
    let fired = view(&bench, &by_points(MUG, &[("stage", "fired"), ("body", &body)]));
    let larger = (0.94f64 / 0.88).powi(2);
    assert!((result(&fired, "Inside:") / as_bisque - larger).abs() < 0.01, "{:?}", fired.results);
}

#[test]
fn a_weighed_bisque_shows_a_mistyped_point() {
    let bench = Bench::empty();
    let points = "0\t7.2\t\n2\t8\t\n4\t8.4\t\n7\t8.2\t\n9.2\t8\t";
    let weighed = |points: &str, bisque: &str| {
        let view = view(&bench, &by_points(points, &[("bisque", bisque)]));
        view.results.iter().find(|note| note.text.contains("weighed piece")).map(|note| note.text.clone())
    };
    let plain = view(&bench, &by_points(points, &[]));
    assert!(plain.can_save);
    assert_eq!(weighed(points, "190 g"), None);
    let mistyped = "0\t7.2\t\n2\t8\t\n4\t18.4\t\n7\t8.2\t\n9.2\t8\t";
    let said = weighed(mistyped, "190 g").unwrap();
    assert!(said.contains("lighter") && said.contains("point 3"), "{said}");
    assert!(weighed(points, "1900 g").unwrap().contains("heavier"));
}

#[test]
fn a_measured_capacity_that_differs_is_said() {
    let bench = Bench::empty();
    let off = view(&bench, &by_points(MUG, &[("more", "yes"), ("capacity", "700 ml")]));
    assert!(off.results.iter().any(|note| note.text.contains("more than the points give")), "{:?}", off.results);
    let filled = view(&bench, &by_points(MUG, &[("more", "yes"), ("fill", "1.5")]));
    assert!(filled.results.iter().any(|note| note.text.contains("filled to 1.5 cm below it")), "{:?}", filled.results);
    assert!(filled.drawing.unwrap().grips.iter().any(|grip| grip.key == "fill"));
}

#[test]
fn lengths_are_in_the_users_unit() {
    let bench = Bench::empty();
    let id = bench.save(EditorKind::Form, "", &by_points(MUG, &[]));
    bench.save(EditorKind::Preference, "", &[("length", "inch"), ("decimal", "comma")]);
    let saved = bench.studio.editor(NOW, &EditorEntry { id, ..entry(&[]) }).unwrap();
    assert_eq!(text(&saved, "points"), "0\t2,83\t\n1,57\t3,31\t\n3,62\t3,15\t");
    assert_eq!(saved.fields.iter().find(|field| field.key == "points").unwrap().columns[0], "Height, in");
}

#[test]
fn one_known_amount_gives_every_forms_amount_with_the_reason() {
    let bench = Bench::set_up();
    let empty = bench.studio.sizes(NOW, "").unwrap();
    assert!(empty.sizes.is_empty() && empty.intro.contains("No amount is known to be right yet"));
    bench.save(EditorKind::Form, "", &[("name", "Large mug"), ("class", "cylinder_mug"), ("capacity", "450 ml")]);
    bench.save(EditorKind::Form, "", &by_points(MUG, &[]));
    let small = bench.weigh(net("")).forms.into_iter().find(|form| form.title == "Small mug").unwrap().id;
    let coat = bench.studio.save(NOW, bench.weigh(WeighEntry { form: small, ..net("19.6") }).entry).unwrap();
    bench.studio.set_control(NOW, &coat.id, true).unwrap();
    let view = bench.studio.sizes(NOW, "").unwrap();
    assert_eq!(view.known.iter().filter(|row| row.chosen).count(), 1);
    let amounts: Vec<(&str, f64)> =
        view.sizes.iter().map(|size| (size.title.as_str(), leading_number(&size.wet))).collect();
    assert_eq!(amounts[0], ("Small mug", 19.6));
    let large = amounts.iter().find(|(title, _)| *title == "Large mug").unwrap().1;
    // (450/250)^(2/3), POW-01 in check-values.json.
    assert!((large / 19.6 - 1.479_727_2).abs() < 0.01, "{large}");
    assert!(view.sizes.iter().all(|size| !size.outline.is_empty() && !size.reason.is_empty()));
    assert!(view.sizes.iter().any(|size| size.reason.contains("grows more slowly")), "{:?}", view.sizes);
}

#[test]
fn a_picture_that_is_none_is_refused_and_the_entry_stands() {
    let bench = Bench::empty();
    let entry = entry(&[("name", "Traced"), ("class", "rounded_mug"), ("way", "photograph"), ("size", "9.2")]);
    let view = bench.studio.editor(NOW, &entry).unwrap();
    assert!(!view.can_save);
    let file = bench.folder.path().join("letter.jpg");
    std::fs::write(&file, "Dear studio, this is a letter.").unwrap();
    for missing_or_no_picture in [file.as_path(), &bench.folder.path().join("gone.jpg")] {
        let refused = bench.studio.photograph(NOW, &entry, missing_or_no_picture).unwrap_err();
        assert!(matches!(refused, StudioError::Refused { field, .. } if field == "photo"));
    }
    let carried = Value { key: "trace".into(), text: "{\"width\": -1}".into() };
    let spoilt = EditorEntry { values: [entry.values.clone(), vec![carried]].concat(), ..entry };
    assert!(!bench.studio.editor(NOW, &spoilt).unwrap().can_save);
}

/// A JPEG of a dark jar, 600 pixels high, before a light ground, seen from far away.
fn jar_before_a_wall(file: &std::path::Path) {
    let half_width = |y: u32| {
        let up = f64::from(750 - y) / 600.0;
        130.0 + 90.0 * (up * std::f64::consts::PI).sin()
    };
    let picture = image::RgbImage::from_fn(1200, 900, |x, y| {
        let inside = (150..750).contains(&y) && (f64::from(x) - 600.0).abs() < half_width(y);
        image::Rgb(if inside { [92, 60, 48] } else { [205, 205, 200] })
    });
    picture.save_with_format(file, image::ImageFormat::Jpeg).unwrap();
}

#[test]
fn a_photograph_and_one_size_make_a_form_that_can_be_edited() {
    let bench = Bench::empty();
    let file = bench.folder.path().join("jar.jpg");
    jar_before_a_wall(&file);
    let begun = entry(&[("name", "Traced jar"), ("class", "jar"), ("way", "photograph")]);
    let redrawn = bench.studio.photograph(NOW, &begun, &file).unwrap();
    let drawing = redrawn.view.drawing.as_ref().unwrap();
    assert!(std::path::Path::new(&drawing.photo).is_file() && drawing.below == "photo");
    assert!(drawing.shapes.iter().any(|shape| shape.ink == Ink::Seen && shape.spots.len() > 20));
    assert!(!redrawn.view.can_save, "a size is wanted first");

    let value = |key: &str, text: &str| Value { key: key.into(), text: text.into() };
    let sized = |more: &[Value]| EditorEntry {
        values: [with(&begun, &redrawn).values, more.to_vec()].concat(),
        ..begun.clone()
    };
    // From so far away that perspective does nothing, 12 cm high is 0.2 mm a pixel.
    let far = [value("size", "12"), value("camera_distance", "9 m")];
    let view = bench.studio.editor(NOW, &sized(&far)).unwrap();
    assert!(view.can_save, "{view:?}");
    let points = bench.studio.save_record(NOW, &sized(&far)).unwrap();
    let saved = bench.studio.editor(NOW, &EditorEntry { id: points.id, ..entry(&[]) }).unwrap();
    assert_eq!(text(&saved, "way"), "profile");
    let across = |line: &str| line.split('\t').nth(1).unwrap().parse::<f64>().unwrap();
    let widest = text(&saved, "points").lines().map(across).fold(0.0, f64::max);
    assert!((widest - 8.8).abs() < 0.1, "{widest}");

    // A ruler beside it: 440 pixels, the jar's own width, are 8.8 cm.
    let ruler = [value("known", "length"), value("size", "8.8"), value("camera_distance", "9 m")];
    let marked = sized(&ruler);
    let grips = bench.studio.editor(NOW, &marked).unwrap().drawing.unwrap().grips;
    assert_eq!(grips.len(), 2);
    let moved = |entry: EditorEntry, grip: &str, x: f64| {
        let to = Spot { x: x / 1200.0, y: 450.0 / 1200.0 };
        let redrawn = bench.studio.touch(NOW, &entry, &Touch::Move { grip: grip.into(), to }).unwrap();
        (with(&entry, &redrawn), redrawn.view)
    };
    let (marked, _) = moved(marked, &grips[0].key, 380.0);
    let (_, by_ruler) = moved(marked, &grips[1].key, 820.0);
    let (one, other) = (result(&view, "Inside:"), result(&by_ruler, "Inside:"));
    assert!((one / other - 1.0).abs() < 0.01, "{one} {other}");
}

/// A form known by its capacity has a handle and a waxed foot: 12 cm by 5 cm around is 60 cm² (length times girth).
#[test]
fn a_form_by_capacity_has_a_foot_a_lip_and_a_handle() {
    let bench = Bench::set_up();
    let mug = [("name", "Large mug"), ("class", "cylinder_mug"), ("capacity", "350 ml")];
    let with = |more: &[(&str, &str)]| {
        let values = [&mug[..], &[("more", "yes")], more].concat();
        bench.studio.editor(NOW, &editor(EditorKind::Form, "", &values)).unwrap()
    };
    let says = |view: &EditorView, start: &str| {
        let note = view.results.iter().find(|note| note.text.starts_with(start));
        note.unwrap_or_else(|| panic!("{start}: {:?}", view.results)).text.clone()
    };
    let area = |view: &EditorView, zone: &str| -> f64 { says(view, zone).split(' ').nth(1).unwrap().parse().unwrap() };
    let plain = with(&[]);
    let (inside, outside) = (area(&plain, "Inside:"), area(&plain, "Outside:"));
    let handled = with(&[("handle", "usual")]);
    assert_eq!((area(&handled, "Inside:"), area(&handled, "Outside:")), (inside, outside + 60.0));
    assert_eq!(says(&handled, "Handle:"), format!("Handle: 60.0 cm² of {:.0} cm² outside", outside + 60.0));
    let own = with(&[("handle", "own"), ("handle_length", "10 cm"), ("handle_girth", "40 mm")]);
    assert_eq!(area(&own, "Outside:"), outside + 40.0);
    assert!(area(&with(&[("bare_foot", "20 mm")]), "Outside:") < outside - 10.0);
    assert!(area(&with(&[("overlap", "1 cm")]), "Inside:") > inside + 20.0);
    let refused = with(&[("bare_foot", "30 cm")]);
    let field = refused.fields.iter().find(|field| field.key == "bare_foot").unwrap();
    assert!(!field.refusal.is_empty() && !refused.can_save);

    // Kept, it shows again, and the outside of a piece of it takes a third more.
    let id = bench.save(EditorKind::Form, "", &[&mug[..], &[("more", "yes"), ("handle", "usual")]].concat());
    let entry = EditorEntry { id: id.clone(), ..editor(EditorKind::Form, "", &[]) };
    let view = bench.studio.editor(NOW, &entry).unwrap();
    let text = |key: &str| view.fields.iter().find(|field| field.key == key).unwrap().text.clone();
    assert_eq!((text("more"), text("handle")), ("yes".into(), "usual".into()));
    let plain = bench.save(EditorKind::Form, "", &mug);
    let aim = |form: &str| {
        bench.aim(WeighEntry { form: form.to_owned(), zone: Some(ZoneKind::Outside), ..Default::default() })
    };
    let more = aim(&id) / aim(&plain);
    assert!((more - (outside + 60.0) / outside).abs() < 0.01, "{more}");
}

#[test]
fn one_measure_is_enough_and_is_said_to_be_rough() {
    let bench = Bench::empty();
    let one = |class, measure, value: &'static str| {
        let values =
            [("name", "One"), ("class", class), ("way", "one_measure"), ("measure", measure), (measure, value)];
        let view = view(&bench, &values);
        let area = |name| result(&view, name);
        let sure = view.results.iter().find(|note| note.text.starts_with("Inside: ")).map(|note| note.text.clone());
        (area("Inside: "), area("Outside: "), sure.unwrap())
    };
    // A plate covers a disc of its width: 573 cm² at 27 cm.
    let (inside, _, sure) = one("plate", "width", "270 mm");
    assert!((573.0..630.0).contains(&inside) && sure.ends_with("give or take 16%"), "{inside}: {sure}");
    // Twice as wide, four times the area.
    let ratio = one("open_bowl", "width", "240 mm").0 / one("open_bowl", "width", "120 mm").0;
    assert!((ratio - 4.0).abs() < 0.02, "{ratio}");
    let sure = one("open_bowl", "width", "240 mm").2;
    assert!(sure.ends_with("give or take 30%"), "rougher than a plate: {sure}");
    let sure = one("cylinder_mug", "height", "100 mm").2;
    assert!(sure.ends_with("give or take 50%"), "rougher still: {sure}");
    // Eight times the clay is twice as wide.
    let ratio = one("deep_bowl", "clay", "2 kg").0 / one("deep_bowl", "clay", "250 g").0;
    assert!((ratio - 4.0).abs() < 0.02, "{ratio}");
    // Nothing is measured by it: a verdict says so.
    let plate =
        [("name", "Plate"), ("class", "plate"), ("way", "one_measure"), ("measure", "width"), ("width", "27 cm")];
    let id = bench.save(EditorKind::Form, "", &plate);
    let again = bench.studio.editor(NOW, &EditorEntry { id, ..editor(EditorKind::Form, "", &[]) }).unwrap();
    assert_eq!(["way", "measure", "width"].map(|key| text(&again, key)), ["one_measure", "width", "27"]);

    for (class, measure, value, sentence) in [
        ("plate", "height", "22 mm", "A plate's height does not tell its size. Give its width."),
        ("cylinder_mug", "width", "8 m", "A pot of this shape and size would hold about"),
        ("tile", "width", "80 mm", "A tile holds nothing. Give the area of its glazed face."),
    ] {
        let values =
            [("name", "One"), ("class", class), ("way", "one_measure"), ("measure", measure), (measure, value)];
        let view = view(&bench, &values);
        assert!(!view.can_save && refusal(&view, "measure").starts_with(sentence), "{class}: {:?}", view.fields);
    }
}
