//! What counts as evidence of how thick a coat should be, and that a corrected figure counts for then as for now.

use laydown_app::{EditorEntry, EditorKind, EditorView, StudioError, WeighEntry};
use laydown_domain::form::ZoneKind;
use laydown_store::entity::{Entity, Tile};

use crate::{Bench, NOW, editor, leading_number, net};

impl Bench {
    /// The only editor of a kind that has this name.
    fn named(&self, kind: EditorKind, name: &str) -> String {
        let sections = self.studio.setup(NOW).unwrap().sections;
        let section = sections.into_iter().find(|section| section.editor == kind).unwrap();
        section.rows.into_iter().find(|row| row.title == name).unwrap().id
    }

    fn change(&self, kind: EditorKind, id: &str, values: &[(&str, &str)]) {
        let entry = EditorEntry { id: id.to_owned(), ..editor(kind, "", values) };
        self.studio.save_record(NOW, &entry).unwrap();
    }

    pub(crate) fn shown(&self, kind: EditorKind, id: &str, values: &[(&str, &str)]) -> EditorView {
        self.studio.editor(NOW, &EditorEntry { id: id.to_owned(), ..editor(kind, "", values) }).unwrap()
    }

    fn on(&self, form: &str, zone: ZoneKind) -> WeighEntry {
        WeighEntry { form: self.named(EditorKind::Form, form), zone: Some(zone), ..net("") }
    }

    fn target_on(&self, form: &str, zone: ZoneKind) -> f64 {
        self.aim(self.on(form, zone))
    }

    fn control_on(&self, form: &str, zone: ZoneKind, wet: &str) -> String {
        let entry = self.weigh(WeighEntry { net: wet.to_owned(), ..self.on(form, zone) }).entry;
        let coat = self.studio.save(NOW, entry).unwrap();
        self.studio.set_control(NOW, &coat.id, true).unwrap();
        coat.id
    }
}

#[test]
fn a_corrected_powder_density_moves_no_control_target() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Form, "", &[("name", "Large mug"), ("class", "cylinder_mug"), ("capacity", "450 ml")]);
    bench.control_on("Small mug", ZoneKind::Inside, "18.2");
    let before = ["Small mug", "Large mug"].map(|form| bench.target_on(form, ZoneKind::Inside));
    let glaze = bench.named(EditorKind::Glaze, "Ash white");
    bench.change(EditorKind::Glaze, &glaze, &[("name", "Ash white"), ("powder_density", "3.2")]);
    assert_eq!(["Small mug", "Large mug"].map(|form| bench.target_on(form, ZoneKind::Inside)), before);
}

fn area(form: &str, class: &'static str, inside: &'static str) -> Vec<(&'static str, String)> {
    vec![
        ("name", form.to_owned()),
        ("class", class.to_owned()),
        ("way", "area".to_owned()),
        ("inside_area", inside.to_owned()),
    ]
}

fn as_typed<'a>(values: &'a [(&'a str, String)]) -> Vec<(&'a str, &'a str)> {
    values.iter().map(|(key, text)| (*key, text.as_str())).collect()
}

#[test]
fn a_corrected_area_counts_for_control_pieces_of_before() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Form, "", &as_typed(&area("Cup", "rounded_mug", "200")));
    bench.save(EditorKind::Form, "", &as_typed(&area("Bowl", "open_bowl", "300")));
    bench.control_on("Cup", ZoneKind::Inside, "20.0");
    assert_eq!(bench.target_on("Bowl", ZoneKind::Inside), 30.0);
    let cup = bench.named(EditorKind::Form, "Cup");

    let corrected = area("Cup", "rounded_mug", "240");
    let view = bench.shown(EditorKind::Form, &cup, &as_typed(&corrected));
    let said = |words: &str| view.results.iter().any(|note| note.text == words);
    assert!(said("Targets of this form from other forms change by +20%."), "{:?}", view.results);
    bench.change(EditorKind::Form, &cup, &as_typed(&corrected));
    assert_eq!(bench.target_on("Bowl", ZoneKind::Inside), 25.0);
    // It is the same pot: what was right on it stays right on it.
    assert_eq!(bench.target_on("Cup", ZoneKind::Inside), 20.0);

    // Known by its outside alone, the form has no inside any more: the area of then counts.
    bench.change(
        EditorKind::Form,
        &cup,
        &[("name", "Cup"), ("class", "rounded_mug"), ("way", "area"), ("inside_area", ""), ("outside_area", "230")],
    );
    assert_eq!(bench.target_on("Bowl", ZoneKind::Inside), 30.0);
}

#[test]
fn another_capacity_says_what_it_does_to_targets() {
    let bench = Bench::set_up();
    let mug = bench.named(EditorKind::Form, "Small mug");
    let shown = |capacity: &str| {
        let values = [("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", capacity)];
        let notes = bench.shown(EditorKind::Form, &mug, &values).results.into_iter().map(|note| note.text);
        notes.filter(|text| text.contains("argets")).collect::<Vec<_>>()
    };
    assert_eq!(shown("250 ml"), [""; 0]);
    // 1.2^(2/3) is 1.13.
    assert_eq!(shown("300 ml")[0], "Targets of this form from other forms change by +13%.");
    assert_eq!(shown("200 ml")[0], "Targets of this form from other forms change by -14%.");
}

#[test]
fn fired_pots_are_compared_by_the_area_that_their_form_has_now() {
    let bench = Bench::with_kiln();
    let row: &[(&str, &str)] = &[
        ("14.2", "thin"),
        ("15.6", "thin"),
        ("17.2", "right"),
        ("18.4", "right"),
        ("19.6", "right"),
        ("20.6", "right"),
        ("21.4", "right"),
        ("23.8", "thick"),
        ("25.2", "thick"),
    ];
    bench.fired("6", row);
    let words = || bench.findings().windows[0].words.clone();
    assert!(words().starts_with("Right between 4."), "{}", words());
    // Eight times the capacity has four times the area.
    let mug = bench.named(EditorKind::Form, "Small mug");
    bench.change(EditorKind::Form, &mug, &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "2000 ml")]);
    assert!(words().starts_with("Right between 1."), "{}", words());
    // And by the density that is known now: half of what each weighed was taken for water.
    bench.change(EditorKind::Form, &mug, &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")]);
    let before = words();
    bench.change(EditorKind::Glaze, &bench.first_glaze(), &[("name", "Ash white"), ("powder_density", "3.2")]);
    assert_ne!(words(), before);
}

#[test]
fn many_control_pieces_of_another_form_do_not_crowd_out_this_ones() {
    let bench = Bench::set_up();
    bench.save(EditorKind::Form, "", &[("name", "Large mug"), ("class", "cylinder_mug"), ("capacity", "450 ml")]);
    bench.control_on("Small mug", ZoneKind::Inside, "16.0");
    for minute in 1..=24 {
        let later = NOW.at(NOW.unix_ms + minute * 60_000);
        let entry = bench.weigh(WeighEntry { net: "37.0".to_owned(), ..bench.on("Large mug", ZoneKind::Inside) }).entry;
        let coat = bench.studio.save(later, entry).unwrap();
        bench.studio.set_control(later, &coat.id, true).unwrap();
    }
    assert_eq!(bench.target_on("Small mug", ZoneKind::Inside), 16.0);
}

#[test]
fn one_dip_takes_what_inside_and_outside_take() {
    let bench = Bench::set_up();
    let starting =
        [ZoneKind::Inside, ZoneKind::Outside, ZoneKind::Whole].map(|zone| bench.target_on("Small mug", zone));
    assert!((starting[0] + starting[1] - starting[2]).abs() < 0.15, "{starting:?}");
    bench.control_on("Small mug", ZoneKind::Inside, "23.0");
    let outside = bench.target_on("Small mug", ZoneKind::Outside);
    let view = bench.weigh(bench.on("Small mug", ZoneKind::Whole));
    assert!((leading_number(&view.target.as_ref().unwrap().wet) - (23.0 + outside)).abs() < 0.15, "{view:?}");
    bench.control_on("Small mug", ZoneKind::Outside, "19.0");
    assert_eq!(bench.target_on("Small mug", ZoneKind::Whole), 42.0);

    // A dip known to be right of itself goes before, and says where its sides say otherwise.
    let says_so = |zone| {
        bench.weigh(bench.on("Small mug", zone)).notes.iter().any(|note| note.text.contains("one dip takes 60.0 g"))
    };
    assert!(!says_so(ZoneKind::Whole));
    bench.control_on("Small mug", ZoneKind::Whole, "60.0");
    assert_eq!(bench.target_on("Small mug", ZoneKind::Whole), 60.0);
    assert!(says_so(ZoneKind::Whole) && !says_so(ZoneKind::Inside));
}

#[test]
fn a_side_goes_by_the_dips_over_all_while_it_has_no_control_piece() {
    let bench = Bench::set_up();
    bench.control_on("Small mug", ZoneKind::Whole, "52.0");
    let sides = [ZoneKind::Inside, ZoneKind::Outside].map(|zone| bench.target_on("Small mug", zone));
    assert!((sides[0] + sides[1] - 52.0).abs() < 0.15, "{sides:?}");
}

/// 35 cm², as a small tile has, with so much bone dry glaze on it.
fn tile<'a>(dry: &'a str, came_out: &'a str) -> [(&'a str, &'a str); 5] {
    [("name", "Row 3"), ("size", "area"), ("area", "35"), ("dry", dry), ("came_out", came_out)]
}

#[test]
fn a_tile_teaches_once_it_was_fired_and_came_out_right() {
    let bench = Bench::set_up();
    let start = bench.aim(net(""));
    // 2.1 g on 35 cm² are 6.0 g per 100 cm².
    let id = bench.save(EditorKind::Tile, "", &[("name", "Row 3"), ("size", "area"), ("area", "35"), ("dry", "2.1")]);
    assert_eq!(bench.aim(net("")), start);
    for result in ["not_fired", "thin", "thick"] {
        bench.change(EditorKind::Tile, &id, &tile("2.1", result));
        assert_eq!(bench.aim(net("")), start, "{result}");
    }
    bench.change(EditorKind::Tile, &id, &tile("2.1", "right"));
    assert!((bench.aim(net("")) / start - 6.0 / 5.5).abs() < 0.01);
    assert!(bench.shown(EditorKind::Tile, &id, &[]).results.iter().any(|note| note.text == "Targets use this tile."));

    // Less than 70% of what pots carry teaches nothing, whatever it looks like.
    bench.change(EditorKind::Tile, &id, &tile("1.0", "right"));
    assert_eq!(bench.aim(net("")), start);
    let view = bench.shown(EditorKind::Tile, &id, &[]);
    assert!(view.results.iter().any(|note| note.text.contains("targets leave it out")), "{:?}", view.results);
}

#[test]
fn a_tile_is_known_by_its_sides_and_says_how_much_it_takes() {
    let bench = Bench::set_up();
    let values = [("name", "Row 4"), ("long", "5 cm"), ("wide", "8 cm"), ("specific_gravity", "1.45"), ("dry", "2.4")];
    let view = bench.shown(EditorKind::Tile, "", &values);
    let said = |words: &str| view.results.iter().any(|note| note.text.contains(words));
    // 40 cm² at 5.5 g per 100 cm² are 2.2 g dry; at SG 1.45 and 2.6 for the powder a gram holds 0.504 g dry.
    assert!(said("At SG 1.45 this tile takes 4.4 g for this glaze's target of 5.5 g"), "{:?}", view.results);
    assert!(said("Laydown 6.0 g"), "{:?}", view.results);
    bench.control_on("Small mug", ZoneKind::Inside, "23.0");
    let more = bench.shown(EditorKind::Tile, "", &values);
    assert!(!more.results.iter().any(|note| note.text.contains("takes 4.4 g")), "{:?}", more.results);
}

#[test]
fn a_pot_that_came_out_wrong_is_no_control_piece() {
    let bench = Bench::with_kiln();
    let coat = bench.studio.save(NOW, bench.weigh(net("23.0")).entry).unwrap().id;
    let piece = bench.studio.coat(NOW, &coat).unwrap().piece;
    let firing = bench.fire_at("6");
    bench.came_out(&firing, &piece, "inside", "thick");
    match bench.studio.set_control(NOW, &coat, true) {
        Err(StudioError::Refused { sentence, .. }) => assert!(sentence.contains("too thick"), "{sentence}"),
        answer => panic!("{answer:?}"),
    }
    bench.came_out(&firing, &piece, "inside", "right");
    bench.studio.set_control(NOW, &coat, true).unwrap();
    assert_eq!(bench.aim(net("")), 23.0);
}

#[test]
fn a_control_piece_that_is_not_known_to_be_right_is_asked_about() {
    let bench = Bench::with_kiln();
    let question = |coat: &str| bench.studio.coat(NOW, coat).unwrap().control_question;
    let save = |wet: &str| bench.studio.save(NOW, bench.weigh(net(wet)).entry).unwrap().id;
    let (near, over) = (save("20.0"), save("25.0"));
    assert!(question(&near).contains("not fired yet"), "{}", question(&near));
    // On a first guess nothing is judged over.
    assert!(question(&over).contains("not fired yet"), "{}", question(&over));
    let piece = bench.studio.coat(NOW, &near).unwrap().piece;
    let firing = bench.fire_at("6");
    assert!(question(&near).contains("You have not said"), "{}", question(&near));
    bench.came_out(&firing, &piece, "inside", "right");
    assert_eq!(question(&near), "");
    bench.studio.set_control(NOW, &over, true).unwrap();
    assert_eq!(question(&over), "", "to take the mark off, nothing is asked");
}

#[test]
fn a_tile_of_an_earlier_version_asks_how_it_came_out() {
    let bench = Bench::set_up();
    let start = bench.aim(net(""));
    let id = bench.save(EditorKind::Tile, "", &tile("2.1", "right"));
    bench
        .studio
        .store()
        .transact(NOW.unix_ms, |tx| {
            let tile = Tile::load(tx.conn(), id.parse().unwrap())?.unwrap();
            tx.put(&Tile { came_out: None, ..tile })
        })
        .unwrap();
    let asked = || {
        bench.weigh(net("")).notes.iter().any(|note| note.text.contains("A test tile of this glaze does not count yet"))
    };
    assert_eq!(bench.aim(net("")), start);
    assert!(asked());
    bench.change(EditorKind::Tile, &id, &[("came_out", "right")]);
    assert!(bench.aim(net("")) > start && !asked());
}
