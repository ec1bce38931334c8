//! Test tiles: how many coats, as thick as what on a form, and a ladder of them from thin to thick.

use laydown_app::{EditorEntry, EditorKind, EditorView, StudioError};
use laydown_store::entity::{Entity, Piece, Tile};

use crate::{Bench, NOW, editor, leading_number, net};

fn said(view: &EditorView) -> String {
    view.results.iter().map(|note| note.text.as_str()).collect::<Vec<_>>().join("\n")
}

impl Bench {
    fn view(&self, kind: EditorKind, values: &[(&str, &str)]) -> EditorView {
        self.studio.editor(NOW, &editor(kind, "", values)).unwrap()
    }

    fn tiles(&self) -> Vec<Tile> {
        let mut tiles = self.studio.store().read(Tile::all).unwrap();
        tiles.sort_by(|one, other| one.name.cmp(&other.name));
        tiles
    }
}

#[test]
fn a_tile_says_how_much_the_same_thickness_is_on_a_form() {
    let bench = Bench::set_up();
    let form = bench.studio.weigh(NOW, None).unwrap().forms[0].id.clone();
    // The start of 5.5 g per 100 cm² is what Weigh aims at: a tile of as much is as thick as that aim.
    let aim = bench.aim(net(""));
    let values = [("size", "area"), ("area", "40 cm²"), ("dry", "2.2"), ("coats", "2"), ("compare_with", &form)];
    let said = said(&bench.view(EditorKind::Tile, &values));
    let inside = said.lines().find(|line| line.contains("inside") && line.starts_with("As thick as")).unwrap();
    let grams = leading_number(inside.strip_prefix("As thick as ").unwrap());
    assert!((grams - aim).abs() < 0.11, "{grams} {aim}");
    bench.save(EditorKind::Tile, "", &[&values[..], &[("name", "Tile 1")]].concat());
    assert_eq!(bench.tiles()[0].coats, Some(2));
}

#[test]
fn a_ladder_is_planned_with_its_grams_and_labels() {
    let bench = Bench::set_up();
    let values = [("size", "area"), ("area", "40 cm²")];
    let view = bench.view(EditorKind::TileLadder, &values);
    let said = said(&view);
    // 5.5 g on 100 cm², 40 cm², half powder at SG 1.45 (0.5043): 4.36 g wet for the one on the aim.
    for line in ["A1: 2.6 g wet, 60%", "A3: 4.4 g wet, 100%", "A5: 6.1 g wet, 140%", "Scratch the label"] {
        assert!(said.contains(line), "{line}: {said}");
    }
    let entry = EditorEntry { draft: view.draft, ..editor(EditorKind::TileLadder, "", &values) };
    let saved = bench.studio.save_record(NOW, &entry).unwrap();
    let tiles = bench.tiles();
    assert_eq!(tiles.iter().map(|tile| tile.name.as_str()).collect::<Vec<_>>(), ["A1", "A2", "A3", "A4", "A5"]);
    assert!(tiles.iter().all(|tile| tile.net_mg.is_none() && tile.came_out.as_deref() == Some("not_fired")));
    // Saved again with its draft it is there already, and the next ladder has another letter.
    assert_eq!(bench.studio.save_record(NOW, &entry).unwrap().id, saved.id);
    assert_eq!(bench.tiles().len(), 5);
    assert!(self::said(&bench.view(EditorKind::TileLadder, &values)).contains("B1: "));
    // None of them counts for targets, and the list says what each is planned with.
    assert!(bench.weigh(net("")).target.unwrap().rests_on.contains("Not based"));
    let section = bench.studio.setup(NOW).unwrap().sections.into_iter().find(|of| of.editor == EditorKind::Tile);
    assert!(section.unwrap().rows.iter().any(|row| row.title == "A3" && row.detail.contains("planned with 4.4 g")));
    // One undo takes all of them back.
    bench.studio.undo(NOW, &saved.undo).unwrap();
    assert!(bench.tiles().is_empty());
}

#[test]
fn a_planned_tile_is_glazed_fired_and_teaches_once_it_came_out_right() {
    let bench = Bench::set_up();
    bench.save(EditorKind::TileLadder, "", &[("size", "area"), ("area", "40 cm²"), ("count", "3")]);
    let ids: Vec<String> = bench.tiles().iter().map(|tile| tile.id.to_string()).collect();
    let change = |id: &str, values: &[(&str, &str)]| {
        let entry = EditorEntry { id: id.to_owned(), ..editor(EditorKind::Tile, "", values) };
        let view = bench.studio.editor(NOW, &entry).unwrap();
        bench.studio.save_record(NOW, &entry).unwrap();
        said(&view)
    };
    // It can be renamed before it has a weight.
    assert!(change(&ids[2], &[("name", "A3 rim")]).contains("Planned: 6.1 g wet"));
    let source = || bench.weigh(net("")).target.unwrap().source;
    assert!(change(&ids[1], &[("net", "4.4")]).contains("leave it out until it is fired"));
    assert!(!source().contains("tile"));
    change(&ids[1], &[("came_out", "right")]);
    assert!(source().contains("tile"), "{}", source());
    // Right, but at 60% too thin to say anything of pots.
    assert!(change(&ids[0], &[("net", "2.6"), ("came_out", "right")]).contains("60%"));
    let right = bench.tiles().into_iter().filter(|tile| tile.came_out.as_deref() == Some("right")).count();
    assert_eq!(right, 2);
}

#[test]
fn a_ladder_goes_into_a_firing_as_pieces() {
    let bench = Bench::set_up();
    bench.save(
        EditorKind::Kiln,
        "",
        &[("name", "Garden kiln"), ("round", "yes"), ("across", "40 cm"), ("shelves", "2")],
    );
    let firing = bench.save(EditorKind::Firing, "", &[("cone", "6")]);
    bench.save(EditorKind::TileLadder, "", &[("size", "area"), ("area", "40 cm²"), ("firing", &firing)]);
    let view = bench.studio.firing(NOW, &firing).unwrap();
    let titles: Vec<&str> = view.pieces.iter().map(|piece| piece.title.as_str()).collect();
    assert_eq!(titles.len(), 5);
    assert!(titles.contains(&"Test tile A1"), "{titles:?}");
    assert_eq!(bench.studio.store().read(Piece::all).unwrap().len(), 5);
}

#[test]
fn an_impossible_ladder_is_refused_and_writes_nothing() {
    let bench = Bench::set_up();
    let before = bench.dump();
    for (values, field) in [
        (vec![("size", "area"), ("area", "40"), ("count", "2")], "count"),
        (vec![("size", "area"), ("area", "40"), ("count", "10")], "count"),
        (vec![("size", "area"), ("area", "40"), ("count", "4.5")], "count"),
        (vec![("size", "area"), ("area", "-3")], "area"),
        (vec![("size", "area"), ("area", "40"), ("specific_gravity", "0.9")], "specific_gravity"),
    ] {
        let refused = bench.try_save(EditorKind::TileLadder, "", &values).unwrap_err();
        assert!(matches!(&refused, StudioError::Refused { field: found, .. } if found == field), "{refused:?}");
    }
    assert_eq!(bench.dump(), before);
}
