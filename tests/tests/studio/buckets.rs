//! A bucket over its days: what is done to it, what it holds, where its SG is, and how it is brought back to one that worked.

use laydown_app::{BucketView, EditorEntry, EditorKind, EditorView, Now, StudioError};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_store::entity::{BucketEntry, Coat, Entity};

use crate::{Bench, DAY_MS, NOW, editor, net};

fn show(bench: &Bench, now: Now, kind: EditorKind, values: &[(&str, &str)]) -> EditorView {
    bench.studio.editor(now, &editor(kind, &bench.bucket(), values)).unwrap()
}

fn put(bench: &Bench, now: Now, kind: EditorKind, values: &[(&str, &str)]) -> String {
    bench.studio.save_record(now, &editor(kind, &bench.bucket(), values)).unwrap().id
}

fn said(view: &EditorView) -> String {
    view.results.iter().map(|note| note.text.as_str()).collect::<Vec<_>>().join("\n")
}

fn refusal(view: &EditorView, key: &str) -> String {
    view.fields.iter().find(|field| field.key == key).unwrap().refusal.clone()
}

fn page(bench: &Bench, now: Now) -> BucketView {
    bench.studio.bucket(now, &bench.bucket()).unwrap()
}

fn line(view: &BucketView, label: &str) -> String {
    let found = view.lines.iter().find(|line| line.label == label);
    found.map_or_else(|| panic!("no {label}: {:?}", view.lines), |line| line.value.clone())
}

fn soon() -> Now {
    NOW.at(NOW.unix_ms + 3_600_000)
}

fn after(days: i64) -> Now {
    NOW.at(NOW.unix_ms + days * DAY_MS)
}

/// A bucket 30 cm wide and 35 cm deep with 10 l at SG 1.45.
fn measured() -> Bench {
    let bench = Bench::set_up();
    let change = [("volume", "10 l"), ("diameter", "30 cm"), ("depth", "35 cm")];
    let entry = EditorEntry { id: bench.bucket(), ..editor(EditorKind::Bucket, "", &change) };
    bench.studio.save_record(NOW, &entry).unwrap();
    bench
}

/// By hand: 10 l; a coat of 29 g at 1.45 is 20 ml; a litre of water. Then a level of 12.0 cm: π/4 × 30² × 12 = 8,482 ml.
#[test]
fn the_volume_follows_coats_entries_and_levels() {
    let bench = measured();
    assert_eq!(line(&page(&bench, NOW), "In the bucket now"), "10000 ml");
    bench.studio.save(after(1), net("29.0")).unwrap();
    assert_eq!(line(&page(&bench, after(1)), "In the bucket now"), "9980 ml");
    let water = put(&bench, after(2), EditorKind::BucketEntry, &[("what", "water"), ("volume", "1 l")]);
    assert_eq!(line(&page(&bench, after(2)), "In the bucket now"), "10980 ml");
    let level = show(&bench, after(3), EditorKind::BucketEntry, &[("what", "level"), ("level", "12")]);
    assert!(said(&level).contains("That is 8482 ml."), "{}", said(&level));
    put(&bench, after(3), EditorKind::BucketEntry, &[("what", "level"), ("level", "12")]);
    assert_eq!(line(&page(&bench, after(3)), "In the bucket now"), "8482 ml");
    // Removing the water changes nothing after a level, and undoing brings it back.
    let removed = bench.studio.remove(after(4), EditorKind::BucketEntry, &water).unwrap();
    assert_eq!(page(&bench, after(4)).notebook.len(), 2);
    bench.studio.undo(after(4), &removed.undo).unwrap();
    assert_eq!(page(&bench, after(4)).notebook.len(), 3);
}

#[test]
fn the_notebook_has_checks_and_entries_in_one_order_each_to_be_corrected() {
    let bench = measured();
    let water =
        put(&bench, after(1), EditorKind::BucketEntry, &[("what", "water"), ("volume", "400"), ("note", "too thick")]);
    put(&bench, after(2), EditorKind::Check, &[("way", "typed"), ("typed", "1.43"), ("flow", "31"), ("cup", "ford_4")]);
    put(&bench, after(3), EditorKind::BucketEntry, &[("what", "deflocculant")]);
    let rows: Vec<(EditorKind, String, String)> =
        page(&bench, after(3)).notebook.into_iter().map(|row| (row.kind, row.what, row.detail)).collect();
    assert_eq!(
        rows,
        [
            (EditorKind::BucketEntry, "Deflocculant added".into(), String::new()),
            (EditorKind::Check, "SG 1.43".into(), "31.0 s, Ford cup No. 4".into()),
            (EditorKind::BucketEntry, "Water added: 400 ml".into(), "too thick".into()),
            (EditorKind::Check, "SG 1.45".into(), String::new()),
        ]
    );
    // An entry and a check are corrected where they stand.
    let correct = |kind, id: &str, values: &[(&str, &str)]| {
        let entry = EditorEntry { id: id.to_owned(), ..editor(kind, "", values) };
        bench.studio.save_record(after(3), &entry).unwrap();
    };
    correct(EditorKind::BucketEntry, &water, &[("volume", "300")]);
    let check = page(&bench, after(3)).notebook[1].id.clone();
    correct(EditorKind::Check, &check, &[("typed", "1.42")]);
    let page = page(&bench, after(3));
    assert_eq!((page.notebook[2].what.as_str(), page.notebook[1].what.as_str()), ("Water added: 300 ml", "SG 1.42"));
    assert_eq!(page.sg, "SG 1.42");
    // A check made by mistake goes, and the one before it counts again.
    bench.studio.remove(after(3), EditorKind::Check, &check).unwrap();
    assert_eq!(bench.studio.bucket(after(3), &bench.bucket()).unwrap().sg, "SG 1.45");
    let archived = bench.studio.archived(after(3)).unwrap().sections;
    assert_eq!(archived[0].rows[0].title, "First bucket, SG 1.42");
    bench.studio.unarchive(after(3), EditorKind::Check, &check).unwrap();
    assert_eq!(bench.studio.bucket(after(3), &bench.bucket()).unwrap().sg, "SG 1.42");
}

#[test]
fn what_cannot_be_is_refused_with_its_sentence() {
    let bench = measured();
    let rim = show(&bench, NOW, EditorKind::BucketEntry, &[("what", "level"), ("level", "36")]);
    assert!(refusal(&rim, "level").contains("above the rim: the bucket is 35 cm deep"), "{}", refusal(&rim, "level"));
    // 10 l at 1.45 are 10,000 × (1 − 0.45/1.6) = 7,188 ml of water.
    let water = show(&bench, NOW, EditorKind::BucketEntry, &[("what", "water_off"), ("volume", "8 l")]);
    assert!(refusal(&water, "volume").contains("only 7188 ml of water"), "{}", refusal(&water, "volume"));
    let negative = show(&bench, NOW, EditorKind::BucketEntry, &[("what", "powder"), ("amount", "-5")]);
    assert!(refusal(&negative, "amount").contains("below zero"));
    let hot = [("name", "Jar"), ("empty", "100"), ("with_water", "400"), ("water_temperature", "400")];
    let hot = bench.studio.editor(NOW, &editor(EditorKind::Vessel, "", &hot)).unwrap();
    assert!(refusal(&hot, "with_water").contains("Water at 400 °C"), "{}", refusal(&hot, "with_water"));
    bench.save(EditorKind::Vessel, "", &[("name", "Jar"), ("empty", "100"), ("with_water", "400")]);
    let light = show(&bench, NOW, EditorKind::Check, &[("way", "vessel"), ("full", "90")]);
    assert!(refusal(&light, "full").contains("no more full than empty"), "{}", refusal(&light, "full"));
    assert!([rim, water, negative, hot, light].iter().all(|view| !view.can_save));
}

#[test]
fn a_flow_cup_says_a_viscosity_only_inside_its_seconds() {
    let bench = measured();
    let check = |flow: &str, cup: &str| {
        said(&show(
            &bench,
            NOW,
            EditorKind::Check,
            &[("way", "typed"), ("typed", "1.45"), ("flow", flow), ("cup", cup)],
        ))
    };
    // ASTM D1200 as reproduced (FORD-4): 3.85 × (36 − 4.49) = 121 mm²/s.
    assert!(check("36", "ford_4").contains("An oil of 121 mm²/s"), "{}", check("36", "ford_4"));
    let fast = check("14", "ford_4");
    assert!(fast.contains("made for 20 to 100 seconds. The Ford cup No. 3 would do"), "{fast}");
    assert!(!fast.contains("mm²/s"));
    assert!(!check("14", "other").contains("mm²/s"));
}

#[test]
fn a_gelled_or_settled_bucket_is_told_from_a_thick_one_by_its_own_history() {
    let bench = measured();
    for (day, flow) in [(1, "30"), (2, "31"), (3, "32")] {
        put(
            &bench,
            after(day),
            EditorKind::Check,
            &[("way", "typed"), ("typed", "1.45"), ("flow", flow), ("cup", "ford_4")],
        );
    }
    let check = |sg: &str, flow: &str, cup: &str| {
        let values = [("way", "typed"), ("typed", sg), ("flow", flow), ("cup", cup)];
        said(&show(&bench, after(4), EditorKind::Check, &values))
    };
    let slow = check("1.45", "44", "ford_4");
    assert!(slow.contains("gelled") && slow.contains("wait ten minutes") && slow.contains("sieve"), "{slow}");
    assert!(check("1.45", "22", "ford_4").contains("flows faster"), "{}", check("1.45", "22", "ford_4"));
    assert!(!check("1.45", "34", "ford_4").contains("flows"));
    assert!(!check("1.53", "60", "ford_4").contains("gelled"), "thicker by its SG");
    // Another cup has no history here.
    assert!(!check("1.45", "60", "zahn_2").contains("gelled"));
}

/// BRG-09's formula by hand: 10 l from 1.45 to 1.40 take 10,000 × 0.05/0.40 = 1,250 ml.
#[test]
fn thinning_is_done_once_written_down_and_followed_until_it_is_checked() {
    let bench = measured();
    let view = show(&bench, soon(), EditorKind::Thin, &[("to", "1.4")]);
    assert!(view.results[0].text.contains("1250 ml"), "{}", said(&view));
    let entry = EditorEntry { draft: view.draft, ..editor(EditorKind::Thin, &bench.bucket(), &[("to", "1.4")]) };
    let saved = bench.studio.save_record(soon(), &entry).unwrap();
    let again = bench.studio.save_record(soon(), &entry).unwrap();
    assert_eq!((&saved.id, &saved.undo), (&again.id, &again.undo), "done once");
    let entries = bench.studio.store().read(BucketEntry::all).unwrap();
    assert_eq!(
        entries.iter().map(|entry| (entry.what.as_str(), entry.volume_ul)).collect::<Vec<_>>(),
        [("water", Some(1_250_000))]
    );
    let page = page(&bench, soon());
    assert_eq!(line(&page, "In the bucket now"), "11250 ml");
    assert!(line(&page, "SG to expect today").starts_with("1.40 ± "), "{}", line(&page, "SG to expect today"));
    assert!(page.notes.iter().any(|note| note.text.contains("since the last check")), "{:?}", page.notes);
    // Targets follow: thinner glaze takes more grams for the same powder: 0.45/1.45 against 0.40/1.40.
    let thinned = bench.studio.weigh(soon(), Some(net(""))).unwrap().target.unwrap();
    let thinned = crate::leading_number(&thinned.wet);
    let before = Bench::set_up().aim(net(""));
    assert!((thinned / before - (0.45 / 1.45) / (0.40 / 1.40)).abs() < 0.01, "{thinned} against {before}");
}

#[test]
fn water_into_a_bucket_of_unknown_volume_makes_its_targets_a_guess() {
    let bench = Bench::set_up();
    let coat = bench.studio.save(NOW, net("19.4")).unwrap();
    bench.studio.set_control(NOW, &coat.id, true).unwrap();
    let verdict = |now: Now| bench.studio.weigh(now, Some(net("19.4"))).unwrap().verdict.unwrap().kind;
    let before = verdict(soon());
    put(&bench, soon(), EditorKind::BucketEntry, &[("what", "water"), ("volume", "400")]);
    let later = NOW.at(NOW.unix_ms + 2 * 3_600_000);
    let view = bench.studio.weigh(later, Some(net("19.4"))).unwrap();
    assert!(view.notes.iter().any(|note| note.text.contains("since the last check")), "{:?}", view.notes);
    assert!(bench.studio.buckets(later).unwrap().buckets[0].attention);
    assert_eq!(verdict(later), VerdictKind::Guess);
    // Checked again it is as before.
    put(&bench, later, EditorKind::Check, &[("way", "typed"), ("typed", "1.45")]);
    assert_eq!(verdict(later), before);
    assert!(!bench.studio.buckets(later).unwrap().buckets[0].attention);
}

#[test]
fn too_thin_a_glaze_is_brought_back_with_powder_or_by_taking_water_off() {
    let bench = measured();
    let view = show(&bench, soon(), EditorKind::Thin, &[("to", "1.5")]);
    // 10,000 × 0.05/0.5 = 1,000 ml off, or 10,000 × 0.05/(1 − 1.5/2.6) = 1,182 g of powder.
    assert!(said(&view).contains("1000 ml") && said(&view).contains("1182 g"), "{}", said(&view));
    put(&bench, soon(), EditorKind::Thin, &[("to", "1.5"), ("by", "powder"), ("done_powder", "1180")]);
    let entries = bench.studio.store().read(BucketEntry::all).unwrap();
    assert_eq!((entries[0].what.as_str(), entries[0].amount_mg), ("powder", Some(1_180_000)));
    assert!(line(&page(&bench, soon()), "SG to expect today").starts_with("1.50 ± "));
}

#[test]
fn a_bucket_is_brought_back_to_what_worked() {
    let bench = measured();
    let coat = bench.studio.save(NOW, net("19.4")).unwrap();
    bench.studio.set_control(NOW, &coat.id, true).unwrap();
    put(&bench, after(1), EditorKind::Check, &[("way", "typed"), ("typed", "1.52")]);
    let glaze = bench.studio.bucket(NOW, &bench.bucket()).unwrap().glaze_id;
    let working = EditorEntry { id: glaze.clone(), ..editor(EditorKind::Glaze, "", &[("working_sg", "1.43")]) };
    bench.studio.save_record(NOW, &working).unwrap();
    let view = show(&bench, after(1), EditorKind::Thin, &[]);
    let goal = view.fields.iter().find(|field| field.key == "goal").unwrap();
    let offered: Vec<(&str, &str)> = goal.items.iter().map(|item| (item.name.as_str(), item.detail.as_str())).collect();
    assert_eq!(offered[..2], [("The working SG", "1.43"), ("As for the control piece", "1.45")]);
    assert!(offered[2].0.starts_with("As checked") && offered.last().unwrap().0 == "Another SG", "{offered:?}");
    // The working SG comes first: 10,000 × 0.09/0.43, less the coat of 19.4 g.
    assert!(view.results[0].text.contains("2090 ml"), "{}", said(&view));
    let control = show(&bench, after(1), EditorKind::Thin, &[("goal", "control")]);
    assert!(control.results[0].text.contains("1553 ml"), "{}", said(&control));
    // A new lot is mixed to it as well.
    let mix = bench.studio.editor(NOW, &editor(EditorKind::Mix, &glaze, &[("powder", "1000")])).unwrap();
    assert_eq!(mix.fields.iter().find(|field| field.key == "specific_gravity").unwrap().text, "1.43");
}

/// A bucket that dries: 0.008 in four days, again and again. Until it is checked again, Weigh goes by what is to be expected, and says
/// itself less sure.
#[test]
fn a_thickening_bucket_is_weighed_for_as_it_is_today_and_not_as_it_was() {
    let bench = measured();
    for at in 1..8 {
        let sg = format!("{:.3}", 1.45 + 0.008 * f64::from(at));
        put(&bench, after(i64::from(at) * 4), EditorKind::Check, &[("way", "typed"), ("typed", &sg)]);
    }
    let today = page(&bench, after(28));
    let later = page(&bench, after(34));
    let expected = |view: &BucketView| line(view, "SG to expect today");
    assert!(expected(&today).starts_with("1.51 ± 0.0"), "{}", expected(&today));
    // 6 days at 0.00099.
    assert!(
        expected(&later).starts_with("1.51 ± 0.03") || expected(&later).starts_with("1.51 ± 0.02"),
        "{}",
        expected(&later)
    );
    // Its walk is √((28 × 0.004² + 7 × (0.008² − 2 × 0.005²))/56) a day, its rise 0.00071 unsure: 0.0125 is passed after 9.1 days.
    assert_eq!((line(&today, "Next check"), line(&later, "Next check")), ("In 10 days".into(), "In 4 days".into()));
    assert_eq!(line(&page(&bench, after(40)), "Next check"), "Now");
    assert!(line(&today, "Evaporation").ends_with("each day it is open"), "{}", line(&today, "Evaporation"));
    let weigh = |now: Now| bench.studio.weigh(now, Some(net("19.4"))).unwrap();
    let (fresh, old) = (weigh(after(28)), weigh(after(38)));
    let wet = |view: &laydown_app::WeighView| crate::leading_number(&view.target.as_ref().unwrap().wet);
    assert!(wet(&old) < wet(&fresh), "thicker by then: {} against {}", wet(&old), wet(&fresh));
    // What is saved with the coat is what was expected, and how sure that was.
    bench.studio.save(after(38), net("19.4")).unwrap();
    let coat = bench.studio.store().read(Coat::all).unwrap().pop().unwrap();
    assert!(coat.specific_gravity_e5 > 150_600 + 500 && coat.sg_uncertainty_e5 > 1_000, "{coat:?}");
}

/// 0.8 kg empty: 8.05 kg are 7,250 g of glaze, at 1.45 5,000 ml.
#[test]
fn a_bucket_that_is_weighed_says_how_much_is_in_it() {
    let bench = measured();
    let weighed = [("what", "weighed"), ("amount", "8.05 kg")];
    let untared = show(&bench, soon(), EditorKind::BucketEntry, &weighed);
    assert!(said(&untared).contains("Give this bucket its empty weight"), "{}", said(&untared));
    let tare = EditorEntry { id: bench.bucket(), ..editor(EditorKind::Bucket, "", &[("empty", "0.8 kg")]) };
    bench.studio.save_record(soon(), &tare).unwrap();
    assert!(said(&show(&bench, soon(), EditorKind::BucketEntry, &weighed)).contains("That is 5000 ml."));
    put(&bench, soon(), EditorKind::BucketEntry, &weighed);
    assert_eq!(line(&page(&bench, soon()), "In the bucket now"), "5000 ml");
    let light = show(&bench, soon(), EditorKind::BucketEntry, &[("what", "weighed"), ("amount", "0.7 kg")]);
    assert!(refusal(&light, "amount").contains("no more full than empty"), "{}", refusal(&light, "amount"));
}

#[test]
fn sizes_go_by_the_bucket_that_is_weighed_from() {
    let bench = measured();
    let coat = bench.studio.save(NOW, net("19.4")).unwrap();
    bench.studio.set_control(NOW, &coat.id, true).unwrap();
    let old = bench.bucket();
    let glaze = page(&bench, NOW).glaze_id;
    let lot = bench.studio.save_record(after(1), &editor(EditorKind::Mix, &glaze, &[("powder", "2000")])).unwrap().id;
    let check = editor(EditorKind::Check, &lot, &[("way", "typed"), ("typed", "1.52")]);
    bench.studio.save_record(after(1), &check).unwrap();
    let intro = || bench.studio.sizes(after(1), "").unwrap().intro;
    let weigh_from = |bucket: &str| {
        let entry = laydown_app::WeighEntry { bucket: bucket.to_owned(), ..net("") };
        bench.studio.remember(after(1), &entry).unwrap();
    };
    weigh_from(&old);
    assert!(intro().contains("1.45"), "{}", intro());
    weigh_from(&lot);
    assert!(intro().contains("1.52"), "{}", intro());
}

#[test]
fn pieces_are_left_for_each_form_with_enough_to_dip_into() {
    let bench = measured();
    let left = line(&page(&bench, NOW), "Small mug");
    let pieces: f64 = left.split(' ').nth(1).unwrap().parse().unwrap();
    // 14,500 g less a third, by what a mug takes inside and outside: by hand from the two aims.
    let sides = ["inside", "outside"].map(|side| {
        let zone = if side == "inside" {
            laydown_domain::form::ZoneKind::Inside
        } else {
            laydown_domain::form::ZoneKind::Outside
        };
        bench.aim(laydown_app::WeighEntry { zone: Some(zone), ..net("") })
    });
    let by_hand = 14_500.0 * 2.0 / 3.0 / (sides[0] + sides[1]);
    assert!((pieces - by_hand).abs() < by_hand * 0.01 + 1.0, "{left} against {by_hand}");
}

#[test]
fn an_entry_given_twice_is_one_and_one_of_a_form_is_refused() {
    let bench = measured();
    let view = show(&bench, NOW, EditorKind::BucketEntry, &[("what", "sieved")]);
    let entry =
        EditorEntry { draft: view.draft, ..editor(EditorKind::BucketEntry, &bench.bucket(), &[("what", "sieved")]) };
    let first = bench.studio.save_record(NOW, &entry).unwrap();
    let second = bench.studio.save_record(NOW, &entry).unwrap();
    assert_eq!((&first.id, &first.undo), (&second.id, &second.undo));
    assert_eq!(bench.studio.store().read(BucketEntry::all).unwrap().len(), 1);
    let nowhere = bench.studio.save_record(NOW, &editor(EditorKind::BucketEntry, "", &[("what", "sieved")]));
    assert!(matches!(nowhere, Err(StudioError::Missing { .. })));
}

#[test]
fn a_bucket_is_drawn_over_time_once_it_was_seen_often_enough() {
    let bench = measured();
    let glaze = page(&bench, NOW).glaze_id;
    let titles = |bench: &Bench| -> Vec<String> {
        let sections = bench.studio.glaze_findings(after(9), &glaze).unwrap().sections;
        sections.into_iter().filter(|section| section.chart.is_some()).map(|section| section.title).collect()
    };
    assert!(titles(&bench).is_empty());
    for (day, sg, flow, cm) in [(2, "1.46", "30", "14"), (4, "1.48", "33", "13"), (6, "1.50", "38", "12")] {
        let check = [("way", "typed"), ("typed", sg), ("flow", flow), ("cup", "ford_4")];
        put(&bench, after(day), EditorKind::Check, &check);
        put(&bench, after(day), EditorKind::BucketEntry, &[("what", "level"), ("level", cm)]);
    }
    assert_eq!(titles(&bench), ["SG of First bucket", "Flow of First bucket", "Volume of First bucket"]);
    let sections = bench.studio.glaze_findings(after(9), &glaze).unwrap().sections;
    let of = |title: &str| sections.iter().find(|section| section.title.starts_with(title)).unwrap();
    assert_eq!(of("SG").words, "It thickened: SG 1.45 on 25 Nov 2026, 1.50 now.");
    assert_eq!(of("Flow").words, "30 s on 27 Nov 2026, 38 s now, by the Ford cup No. 4.");
    // π/4 × 3² × 1.4 = 9.9 l, and at 12 cm 8.5 l.
    assert_eq!(of("Volume").words, "9.9 l on 27 Nov 2026, 8.5 l now, by its level.");
    let chart = of("SG").chart.as_ref().unwrap();
    assert_eq!(chart.dots.len(), 4);
    assert!(chart.dots.windows(2).all(|pair| pair[1].at.x > pair[0].at.x && pair[1].at.y < pair[0].at.y), "{chart:?}");
}
