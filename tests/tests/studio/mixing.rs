//! A glaze by its materials, and the mixing sheet that makes a new lot of it.

use laydown_app::{EditorEntry, EditorKind, EditorView, StudioError, Tone};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_store::entity::{Bucket, Entity, Glaze, Pairs};

use crate::{Bench, DAY_MS, NOW, editor, net};

const RECIPE: &str = "Potash feldspar 40\nSilica 30\nWhiting 20\nKaolin 10\n+ Copper carbonate 2%";

fn show(bench: &Bench, entry: &EditorEntry) -> EditorView {
    bench.studio.editor(NOW, entry).unwrap()
}

fn said(view: &EditorView) -> String {
    view.results.iter().map(|note| note.text.as_str()).collect::<Vec<_>>().join("\n")
}

fn refusal(view: &EditorView, key: &str) -> String {
    view.fields.iter().find(|field| field.key == key).unwrap().refusal.clone()
}

/// The glaze of [`Bench::set_up`], as stored.
fn stored(bench: &Bench) -> Glaze {
    bench.studio.store().read(Glaze::all).unwrap().pop().unwrap()
}

fn glaze_entry(bench: &Bench, values: &[(&str, &str)]) -> EditorEntry {
    EditorEntry { id: stored(bench).id.to_string(), ..editor(EditorKind::Glaze, "", values) }
}

fn mix(bench: &Bench, values: &[(&str, &str)]) -> EditorEntry {
    editor(EditorKind::Mix, &stored(bench).id.to_string(), values)
}

fn with_recipe() -> Bench {
    let bench = Bench::set_up();
    bench.studio.save_record(NOW, &glaze_entry(&bench, &[("materials", RECIPE)])).unwrap();
    bench
}

/// 40 at 2.6, 30 at 2.65, 20 at 2.7, 10 at 2.6 and 2 at 4.0: 102 g in 38.4592 ml.
#[test]
fn the_powder_density_follows_the_materials_unless_the_potter_gave_one() {
    let bench = with_recipe();
    assert_eq!((stored(&bench).powder_density_e3, stored(&bench).density_from.as_deref()), (2_652, Some("materials")));
    // Its own figure stays, and the difference is said.
    let own = glaze_entry(&bench, &[("density_from", "own"), ("powder_density", "2.9")]);
    assert!(
        said(&show(&bench, &own)).contains("The materials make 2.652, and 2.9 is used."),
        "{}",
        said(&show(&bench, &own))
    );
    bench.studio.save_record(NOW, &own).unwrap();
    bench.studio.save_record(NOW, &glaze_entry(&bench, &[("materials", "Silica 5\nZircon 5")])).unwrap();
    assert_eq!(stored(&bench).powder_density_e3, 2_900);
    // One that was typed before there were materials is not replaced either.
    let typed = Bench::set_up();
    typed.studio.save_record(NOW, &glaze_entry(&typed, &[("powder_density", "2.8")])).unwrap();
    typed.studio.save_record(NOW, &glaze_entry(&typed, &[("materials", RECIPE)])).unwrap();
    assert_eq!(stored(&typed).powder_density_e3, 2_800);
}

#[test]
fn hazards_are_known_by_name_and_can_be_corrected() {
    let bench = with_recipe();
    let view = show(&bench, &glaze_entry(&bench, &[]));
    assert!(said(&view).contains("contain silica and copper."), "{}", said(&view));
    assert!(view.results.iter().any(|note| note.tone == Tone::Warning && note.text.contains("safety data sheet")));
    let correct = [("correct_hazards", "yes"), ("copper", "no"), ("lead", "yes")];
    bench.studio.save_record(NOW, &glaze_entry(&bench, &correct)).unwrap();
    let pair = |code: &str, answer: &str| (code.to_owned(), answer.to_owned());
    assert_eq!(stored(&bench).hazards, Some(Pairs(vec![pair("copper", "no"), pair("lead", "yes")])));
    let mixing = said(&show(&bench, &mix(&bench, &[("powder", "1000")])));
    assert!(mixing.contains("Lead:") && !mixing.contains("Copper:"), "{mixing}");
}

#[test]
fn a_recipe_that_cannot_be_is_refused_with_its_line() {
    let bench = Bench::set_up();
    for (text, why) in [
        ("Silica 0\nKaolin 0", "add up to nothing"),
        ("Silica 30\nKaolin -5", "Line 2: A number cannot be below zero."),
        ("Silica 30\nKaolin", "Line 2: write how much"),
        ("20 Frit 3134", "Line 1 has a number at both ends."),
        ("Silica; 5; 9.5", "Line 1: Powder density 9.50 is not between 1.5 and 7."),
    ] {
        let entry = glaze_entry(&bench, &[("materials", text)]);
        let view = show(&bench, &entry);
        assert!(refusal(&view, "materials").contains(why), "{text}: {}", refusal(&view, "materials"));
        assert!(!view.can_save);
        assert!(
            matches!(bench.studio.save_record(NOW, &entry), Err(StudioError::Refused { field, .. }) if field == "materials")
        );
    }
}

/// By hand: 2,000 g of base take 40 g of copper carbonate on top. 2,040 g at density 2.652 and SG 1.45 are a share of powder of
/// 2.652 × 0.45 / (1.45 × 1.652) = 0.49820, so 4,094.7 g of glaze: 2,054.7 g of water, 2,823.9 ml.
#[test]
fn a_mixing_sheet_says_what_to_weigh_and_makes_a_bucket() {
    let bench = with_recipe();
    let entry = mix(&bench, &[("powder", "2 kg"), ("specific_gravity", "1.45")]);
    let view = show(&bench, &entry);
    let switches: Vec<&str> = view
        .fields
        .iter()
        .filter(|field| field.key.starts_with("weighed_"))
        .map(|field| field.label.as_str())
        .collect();
    assert_eq!(
        switches,
        [
            "Potash feldspar: 800.0 g",
            "Silica: 600.0 g",
            "Whiting: 400.0 g",
            "Kaolin: 200.0 g",
            "Copper carbonate: 40.0 g",
            "Water: 2054.7 g"
        ]
    );
    assert!(said(&view).contains("Makes 2824 ml at SG 1.45, with 2040 g of dry glaze."), "{}", said(&view));
    assert!(said(&view).contains("Weigh every powder"));
    let saved = bench.studio.save_record(NOW, &EditorEntry { draft: view.draft.clone(), ..entry.clone() }).unwrap();
    let lot = bench.studio.store().read(|conn| Bucket::load(conn, saved.id.parse().unwrap())).unwrap().unwrap();
    assert_eq!((lot.mixed_at, lot.name.as_str()), (NOW.unix_ms, "Lot of 25 Nov 2026"));
    assert!((lot.volume_ul.unwrap() - 2_823_900).abs() < 300, "{lot:?}");
    assert_eq!(bench.studio.bucket(NOW, &saved.id).unwrap().sg, "SG not checked");
    // Saved again it is the same lot, also where nothing is entered any more.
    let again = bench.studio.save_record(NOW, &EditorEntry { draft: view.draft, values: vec![], ..entry }).unwrap();
    assert_eq!((again.id, again.undo), (saved.id, saved.undo.clone()));
    bench.studio.undo(NOW, &saved.undo).unwrap();
    assert_eq!(bench.studio.buckets(NOW).unwrap().buckets.len(), 1);
}

/// The other way round: 5 litres at 1.45.
#[test]
fn a_batch_by_volume_is_the_same_as_one_by_its_powder() {
    let bench = with_recipe();
    let by_volume = show(&bench, &mix(&bench, &[("by", "volume"), ("volume", "5 l"), ("specific_gravity", "1.45")]));
    // 5,000 × 2.652 × 0.45 / 1.652 = 3,612.0 g in all, of which 100 of 102 parts are base.
    assert!(said(&by_volume).contains("Makes 5000 ml at SG 1.45, with 3612 g of dry glaze."), "{}", said(&by_volume));
    let feldspar = by_volume.fields.iter().find(|field| field.label.starts_with("Potash")).unwrap();
    assert_eq!(feldspar.label, "Potash feldspar: 1416.5 g");
}

#[test]
fn what_was_ticked_off_survives_a_restart_and_belongs_to_its_weight() {
    let bench = with_recipe();
    let typed = [("powder", "2000")];
    let tick = |view: &EditorView| {
        view.fields
            .iter()
            .find(|field| field.label.starts_with("Silica"))
            .map(|field| (field.key.clone(), field.text.clone()))
            .unwrap()
    };
    let (key, _) = tick(&show(&bench, &mix(&bench, &typed)));
    let view = show(&bench, &mix(&bench, &[typed[0], (&key, "yes")]));
    assert!(said(&view).contains("1 of 6 weighed."), "{}", said(&view));
    let bench = bench.reopen();
    let view = show(&bench, &mix(&bench, &[]));
    assert_eq!(tick(&view), (key.clone(), "yes".to_owned()));
    // Another batch is other weights, of which none is weighed.
    let other = show(&bench, &mix(&bench, &[("powder", "1000")]));
    assert_eq!(tick(&other).1, "no");
    let back = show(&bench, &mix(&bench, &typed));
    assert_eq!(tick(&back), (key, "yes".to_owned()));
    // A sheet from the week before last is begun anew, and so is one that was saved.
    let later = NOW.at(NOW.unix_ms + 8 * DAY_MS);
    assert!(!bench.studio.editor(later, &mix(&bench, &[])).unwrap().can_save);
    bench.studio.save_record(NOW, &mix(&bench, &[])).unwrap();
    assert!(!show(&bench, &mix(&bench, &[])).can_save);
}

#[test]
fn rounding_is_said_where_it_matters() {
    let bench = with_recipe();
    bench.save(EditorKind::Scale, "", &[("name", "Kitchen"), ("capacity", "300"), ("step", "1")]);
    let kitchen = |view: &EditorView| {
        let field = view.fields.iter().find(|field| field.key == "scale").unwrap();
        field.items.iter().find(|item| item.name == "Kitchen").unwrap().code.clone()
    };
    let first = show(&bench, &mix(&bench, &[("powder", "70")]));
    assert!(!said(&first).contains("finer scale"), "the finest scale comes first: {}", said(&first));
    let code = kitchen(&first);
    let coarse = show(&bench, &mix(&bench, &[("powder", "70"), ("scale", &code)]));
    assert!(said(&coarse).contains("Copper carbonate: this scale shows 1 g for 1.40 g, 29% out."), "{}", said(&coarse));
    let heavy = show(&bench, &mix(&bench, &[("powder", "1000"), ("scale", &code)]));
    assert!(said(&heavy).contains("Potash feldspar: 400 g is more than this scale can weigh."), "{}", said(&heavy));
}

#[test]
fn a_mix_that_cannot_be_is_refused_beside_its_field() {
    let bench = with_recipe();
    let nothing = show(&bench, &mix(&bench, &[("powder", "0")]));
    assert!(refusal(&nothing, "powder").contains("must both weigh something"), "{}", refusal(&nothing, "powder"));
    let negative = show(&bench, &mix(&bench, &[("powder", "-5")]));
    assert!(refusal(&negative, "powder").contains("below zero"));
    let heavy = show(&bench, &mix(&bench, &[("powder", "500"), ("specific_gravity", "2.3")]));
    assert!(!refusal(&heavy, "specific_gravity").is_empty());
    assert!(!nothing.can_save && !negative.can_save && !heavy.can_save);
    // A glaze without materials is mixed too: powder and water.
    let plain = Bench::set_up();
    let view = show(&plain, &mix(&plain, &[("powder", "1000"), ("specific_gravity", "1.444")]));
    let labels: Vec<&str> = view
        .fields
        .iter()
        .filter(|field| field.key.starts_with("weighed_"))
        .map(|field| field.label.as_str())
        .collect();
    assert_eq!(labels[0], "Ash white: 1000.0 g");
    // Equal weights of powder and water make 1.444 (common practice, no source).
    assert!(labels[1].starts_with("Water: 100"), "{labels:?}");
}

#[test]
fn a_new_lot_is_weighed_with_at_once_and_is_a_guess_until_it_is_checked() {
    let bench = with_recipe();
    let lot = bench.save(EditorKind::Mix, &stored(&bench).id.to_string(), &[("powder", "2000")]);
    let view = bench.weigh(laydown_app::WeighEntry { bucket: lot, ..net("20.0") });
    assert_eq!(view.verdict.unwrap().kind, VerdictKind::Guess);
}
