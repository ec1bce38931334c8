//! Pieces weighed again bone dry: what their coats carry by themselves, where that and the SG disagree, and what targets make of it.

use laydown_app::{CommandResult, EditorEntry, EditorKind, EditorView, StudioError, WeighEntry};
use laydown_domain::form::ZoneKind;
use laydown_store::entity::{Coat, Entity};

use crate::{Bench, NOW, editor, net, two_weights};

impl Bench {
    fn dry_entry(&self, piece: &str, values: &[(&str, &str)]) -> EditorEntry {
        EditorEntry { id: piece.to_owned(), ..editor(EditorKind::DryWeight, "", values) }
    }

    fn dry_view(&self, piece: &str, values: &[(&str, &str)]) -> EditorView {
        self.studio.editor(NOW, &self.dry_entry(piece, values)).unwrap()
    }

    fn weigh_dry(&self, piece: &str, values: &[(&str, &str)]) -> Result<CommandResult, StudioError> {
        self.studio.save_record(NOW, &self.dry_entry(piece, values))
    }

    fn all_coats(&self) -> Vec<Coat> {
        self.studio.store().read(Coat::all).unwrap()
    }
}

fn said(view: &EditorView) -> String {
    view.results.iter().map(|note| note.text.as_str()).collect::<Vec<_>>().join("\n")
}

/// 312.4 g of mug and 20 g of glaze at SG 1.45, of which 10.09 g are powder.
fn glazed() -> (Bench, String) {
    let bench = Bench::set_up();
    bench.studio.save(NOW, two_weights("312.4", "332.4")).unwrap();
    let piece = bench.all_coats()[0].piece.to_string();
    (bench, piece)
}

#[test]
fn a_dry_piece_gives_the_coats_glaze_beside_the_sgs() {
    let (bench, piece) = glazed();
    let view = bench.dry_view(&piece, &[("bone_dry", "322.6")]);
    assert_eq!(view.fields.len(), 1, "the bare weight was read: {:?}", view.fields);
    let said = said(&view);
    assert!(said.contains("Weighed bare: 312.4 g."), "{said}");
    assert!(said.contains("Dry glaze: 10.2 ±0.3 g weighed; 10.1 ±0.5 g"), "{said}");
    assert!(said.contains("agree"), "{said}");
    let saved = bench.weigh_dry(&piece, &[("bone_dry", "322.6")]).unwrap();
    assert_eq!(bench.all_coats()[0].dry_mg, Some(10_200));
    assert!(
        bench
            .studio
            .coat(NOW, &bench.all_coats()[0].id.to_string())
            .unwrap()
            .lines
            .iter()
            .any(|line| line.value == "10.2 ±0.3 g dry")
    );
    assert!(bench.studio.piece(NOW, &piece).unwrap().coats[0].value.contains("10.2 ±0.3 g dry"));
    // Saved again it writes nothing, and undone it is gone.
    assert!(bench.weigh_dry(&piece, &[("bone_dry", "322.6")]).unwrap().undo.is_empty());
    assert_eq!(bench.dry_view(&piece, &[]).fields[0].text, "322.6");
    bench.studio.undo(NOW, &saved.undo).unwrap();
    assert_eq!(bench.all_coats()[0].dry_mg, None);
}

#[test]
fn where_the_two_disagree_it_names_what_could_be_wrong() {
    let (bench, piece) = glazed();
    // The bucket had thickened to 1.52 by evaporation: 11.12 g of powder.
    let thick = said(&bench.dry_view(&piece, &[("bone_dry", "324.0")]));
    assert!(thick.contains("more glaze than the SG says"), "{thick}");
    assert!(thick.contains("The SG was 1.5") && thick.contains("not 1.45"), "{thick}");
    assert!(thick.contains("still in the piece"), "{thick}");
    // 3 g of rinsing water were in the bisque when it was weighed bare.
    let rinsed = said(&bench.dry_view(&piece, &[("bone_dry", "319.5")]));
    assert!(rinsed.contains("3.0 g of water was in the bisque"), "{rinsed}");
}

#[test]
fn two_coats_share_the_dry_weight_and_say_so() {
    let (bench, piece) = glazed();
    let bucket = bench.bucket();
    let outside =
        WeighEntry { piece: piece.clone(), zone: Some(ZoneKind::Outside), bucket, ..two_weights("322.4", "332.4") };
    let entry = bench.weigh(outside.clone()).entry;
    let entry = WeighEntry { confirmed: "322.4 332.4".into(), ..entry };
    bench.studio.save(NOW, entry).unwrap();
    let view = bench.dry_view(&piece, &[("bone_dry", "327.4")]);
    assert!(said(&view).contains("2 coats together"), "{}", said(&view));
    bench.weigh_dry(&piece, &[("bone_dry", "327.4")]).unwrap();
    let mut coats = bench.all_coats();
    coats.sort_by_key(|coat| std::cmp::Reverse(coat.net_mg));
    let dry: Vec<i64> = coats.iter().map(|coat| coat.dry_mg.unwrap()).collect();
    assert_eq!(dry.iter().sum::<i64>(), 15_000);
    assert!((dry[0] - 2 * dry[1]).abs() <= 2, "by their wet weights, 20 g and 10 g: {dry:?}");
    let relative = |coat: &Coat| coat.dry_uncertainty_mg.unwrap() as f64 / coat.dry_mg.unwrap() as f64;
    assert!(coats.iter().all(|coat| relative(coat) > 0.0108), "less sure than 0.161 g of 15 g");
    // Undone where one coat leaves the piece: what was weighed was both.
    let moved = EditorEntry { id: coats[1].id.to_string(), ..editor(EditorKind::Coat, "", &[("piece", "new")]) };
    bench.studio.save_record(NOW, &moved).unwrap();
    assert!(bench.all_coats().iter().all(|coat| coat.dry_mg.is_none()));
}

#[test]
fn after_tare_the_bare_weight_is_asked_for() {
    let bench = Bench::set_up();
    bench.studio.save(NOW, net("20")).unwrap();
    let piece = bench.all_coats()[0].piece.to_string();
    assert_eq!(
        bench.dry_view(&piece, &[]).fields.iter().map(|field| field.key.as_str()).collect::<Vec<_>>(),
        ["bare", "bone_dry"]
    );
    assert!(bench.weigh_dry(&piece, &[("bone_dry", "322.4")]).is_err());
    bench.weigh_dry(&piece, &[("bare", "312.4"), ("bone_dry", "322.4")]).unwrap();
    let coat = &bench.all_coats()[0];
    assert_eq!((coat.bare_mg, coat.glazed_mg, coat.dry_mg), (Some(312_400), None, Some(10_000)));
    // It is still a coat that was weighed after tare.
    let view = bench
        .studio
        .editor(NOW, &EditorEntry { id: coat.id.to_string(), ..editor(EditorKind::Coat, "", &[]) })
        .unwrap();
    assert!(view.fields.iter().any(|field| field.key == "net"));
    // And it can be taken away again.
    bench.weigh_dry(&piece, &[("bone_dry", "")]).unwrap();
    assert_eq!(bench.all_coats()[0].dry_mg, None);
}

#[test]
fn impossible_dry_weights_are_refused_in_words_and_write_nothing() {
    let (bench, piece) = glazed();
    let before = bench.dump();
    for (weight, word) in
        [("312.4", "bare"), ("300", "bare"), ("332.4", "wet"), ("3224", "2000"), ("32a", ""), ("", "Weigh")]
    {
        let refused = bench.weigh_dry(&piece, &[("bone_dry", weight)]).unwrap_err();
        let StudioError::Refused { field, sentence } = refused else { panic!("{weight}: {refused:?}") };
        assert_eq!(field, "bone_dry");
        assert!(sentence.contains(word), "{weight}: {sentence}");
    }
    assert_eq!(bench.dump(), before);
}

#[test]
fn the_kiln_page_offers_the_pieces_that_wait() {
    let bench = Bench::set_up();
    assert!(bench.studio.kiln(NOW).unwrap().dry_label.is_empty());
    bench.studio.save(NOW, two_weights("312.4", "332.4")).unwrap();
    assert!(!bench.studio.kiln(NOW).unwrap().dry_label.is_empty());
    let view = bench.studio.editor(NOW, &editor(EditorKind::DryWeight, "", &[])).unwrap();
    let piece = &view.fields[0].items[0];
    assert!(piece.name.contains("Small mug"), "{piece:?}");
    bench.save(EditorKind::DryWeight, "", &[("piece", &piece.code), ("bone_dry", "322.6")]);
    assert_eq!(bench.all_coats()[0].dry_mg, Some(10_200));
}

/// A bucket that nobody had checked: the dry weight says what its glaze held, and the target of the next piece follows, once the
/// bucket is checked.
#[test]
fn a_dry_weight_mends_what_an_unchecked_bucket_said() {
    let aim = |dry: Option<&str>| {
        let unchecked = Bench::empty();
        unchecked.save(
            EditorKind::Form,
            "",
            &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")],
        );
        unchecked.save(EditorKind::Glaze, "", &[("name", "Ash white")]);
        unchecked.save(EditorKind::Scale, "", &[("name", "Bench scale"), ("capacity", "2000"), ("step", "0.1")]);
        let saved = unchecked.studio.save(NOW, two_weights("312.4", "332.4")).unwrap();
        unchecked.studio.set_control(NOW, &saved.id, true).unwrap();
        if let Some(dry) = dry {
            let piece = unchecked.all_coats()[0].piece.to_string();
            unchecked.weigh_dry(&piece, &[("bone_dry", dry)]).unwrap();
        }
        unchecked.save(EditorKind::Check, &unchecked.bucket(), &[("way", "typed"), ("typed", "1.45")]);
        unchecked.aim(net(""))
    };
    // Taken to be at 1.45, it was at 1.50: 10.83 g of powder and not 10.09 g. Four fifths of the difference are believed.
    let (without, with) = (aim(None), aim(Some("323.2")));
    assert_eq!(without, 20.0);
    assert!((21.0..21.5).contains(&with), "{with}");
}

/// A checked bucket and the same bucket today: the powder's density cancels, and the dry weight hardly moves the target.
#[test]
fn a_dry_weight_hardly_moves_the_target_of_a_checked_bucket() {
    let (bench, piece) = glazed();
    bench.studio.set_control(NOW, &bench.all_coats()[0].id.to_string(), true).unwrap();
    bench.weigh_dry(&piece, &[("bone_dry", "322.8")]).unwrap();
    let aim = bench.aim(net(""));
    assert!((20.0..=20.2).contains(&aim), "{aim}");
}
