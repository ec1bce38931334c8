//! Targets from everything known: fired pots move them by themselves, are undone and kept, and bad input is said.

use fastrand::Rng;
use laydown_app::{Assessment, EditorKind, Now, TargetChoice, TargetView, WeighEntry, WeighView, WhyTargetView};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_store::StoreError;

use crate::{Bench, DAY_MS, NOW, editor, leading_number, net};

/// Ten pots in order on the small mug, whose start is about 21 g: right from 15.8 to 20.0 g.
const IN_ORDER: [(&str, &str); 10] = [
    ("13.6", "thin"),
    ("14.4", "thin"),
    ("15.2", "thin"),
    ("16.2", "right"),
    ("17.0", "right"),
    ("17.8", "right"),
    ("18.6", "right"),
    ("19.4", "right"),
    ("20.6", "thick"),
    ("21.8", "thick"),
];

impl Bench {
    /// Saves a coat of this weight, also one far off its aim, and answers with its piece.
    fn poured(&self, at: Now, entry: &WeighEntry, wet: &str) -> String {
        let entry = WeighEntry { net: wet.to_owned(), ..entry.clone() };
        let view = self.studio.weigh(at, Some(entry)).unwrap();
        let sure = view.question.and_then(|question| question.choices.into_iter().last());
        let entry = sure.map_or(view.entry, |choice| choice.entry);
        let saved = self.studio.save(at, entry).unwrap();
        self.studio.coat(at, &saved.id).unwrap().piece
    }

    /// Glazes, fires and judges pots.
    fn judged(&self, pots: &[(&str, &str)]) -> (String, Vec<String>) {
        let pieces: Vec<String> = pots.iter().map(|(wet, _)| self.poured(NOW, &net(""), wet)).collect();
        let firing = self.fire_at("6");
        for (piece, (_, thickness)) in pieces.iter().zip(pots) {
            self.came_out(&firing, piece, "inside", thickness);
        }
        (firing, pieces)
    }

    fn target(&self) -> TargetView {
        self.weigh(net("")).target.unwrap()
    }

    pub(crate) fn says(&self, words: &str) -> bool {
        self.weigh(net("")).notes.iter().any(|note| note.text.contains(words))
    }

    fn why(&self) -> WhyTargetView {
        self.studio.why_target(NOW, &self.target().id).unwrap()
    }

    /// What the studio shows once nothing of the fit is remembered.
    fn calculated_anew(self) -> (Bench, WeighView) {
        let forget = self.studio.store().transact(NOW.unix_ms, |tx| tx.choose("pooled", None));
        forget.map_err(|error: StoreError| error).unwrap();
        let bench = self.reopen();
        let view = bench.weigh(net("19.0"));
        (bench, view)
    }
}

#[test]
fn forty_judged_pots_bring_the_target_near_a_truth_that_nobody_told() {
    let mut worst = 0.0f64;
    for seed in 0..6 {
        let mut random = Rng::with_seed(0x1A7D + seed);
        let bench = Bench::with_kiln();
        let start = bench.aim(net(""));
        // Up to a third off the start, and a window of a fifth to either side.
        let truth = start * (0.30 * (2.0 * random.f64() - 1.0)).exp();
        let mut now = NOW;
        for _ in 0..5 {
            let mut pieces = Vec::new();
            for _ in 0..8 {
                let aim = leading_number(&bench.studio.weigh(now, Some(net(""))).unwrap().target.unwrap().wet);
                // Hands stray by about a tenth.
                let stray: f64 = (0..12).map(|_| random.f64()).sum::<f64>() - 6.0;
                let wet = aim * (0.12 * stray).exp();
                now = now.at(now.unix_ms + 60_000);
                pieces.push((bench.poured(now, &net(""), &format!("{wet:.1}")), wet));
            }
            let firing = bench.studio.save_record(now, &editor(EditorKind::Firing, "", &[("cone", "6")])).unwrap().id;
            bench.studio.load_all(now, &firing).unwrap();
            bench.studio.advance(now, &firing).unwrap();
            for (piece, wet) in pieces {
                // Kiln and eye stray too.
                let seen = (wet / truth).ln() + 0.03 * (random.f64() + random.f64() - 1.0);
                let look = if seen < -0.2 {
                    "thin"
                } else if seen > 0.2 {
                    "thick"
                } else {
                    "right"
                };
                bench.came_out(&firing, &piece, "inside", look);
            }
            now = now.at(now.unix_ms + 7 * DAY_MS);
        }
        let target = bench.studio.weigh(now, Some(net(""))).unwrap().target.unwrap();
        assert!(target.source.starts_with("From 40 fired pots"), "{}", target.source);
        let off = (leading_number(&target.wet) / truth).ln();
        println!("seed {seed}: start {start}, truth {truth:.1}, target {}, {off:+.3}", target.wet);
        worst = worst.max(off.abs());
    }
    assert!(worst < 0.07, "{worst}");
}

#[test]
fn a_target_that_fired_pots_move_says_so_once_and_goes_back_in_one_tap() {
    let bench = Bench::with_kiln();
    let before = bench.target();
    bench.judged(&IN_ORDER[..7]);
    assert_eq!(bench.target(), before, "seven pots are too few");
    assert!(bench.why().answer.iter().any(|words| words.starts_with("7 fired and rated coats")), "{:?}", bench.why());
    bench.judged(&IN_ORDER[7..]);

    let after = bench.target();
    let moved = format!("After 10 fired pots: {} becomes {}.", before.wet.trim_end_matches(" g"), after.wet);
    assert!(bench.says(&moved), "{:?}", bench.weigh(net("")).notes);
    assert_eq!(after.source, "From 10 fired pots.");
    assert!(leading_number(&after.wet) < leading_number(&before.wet));
    let labels: Vec<&str> = after.options.iter().map(|option| option.label.as_str()).collect();
    assert_eq!(labels, [format!("Back to {}", before.wet), format!("Keep {}", after.wet)]);

    // Back in one tap from the announcement, which holds after a restart, and undone.
    let announced = bench.weigh(net("")).moved.unwrap();
    assert_eq!((announced.text, announced.keep.label), (moved, format!("Keep {}", before.wet)));
    let back = bench.studio.choose_target(NOW, &bench.target().id, announced.keep.choice).unwrap();
    assert_eq!(bench.weigh(net("")).moved, None);
    let bench = bench.reopen();
    assert_eq!((bench.target().wet, bench.target().source), (before.wet.clone(), before.source.clone()));
    assert!(!bench.says("becomes"));
    bench.studio.undo(NOW, &back.undo).unwrap();
    assert_eq!(bench.target().wet, after.wet);
    assert!(!bench.says("becomes"), "it was said");

    // A kept target stays whatever the pots say, and follows the bucket.
    bench.studio.choose_target(NOW, &bench.target().id, TargetChoice::Kept).unwrap();
    bench.judged(&[("14.4", "right"), ("14.0", "right"), ("15.0", "right"), ("17.4", "thick"), ("17.8", "thick")]);
    let kept = bench.target();
    assert_eq!((kept.wet.as_str(), kept.source.as_str()), (after.wet.as_str(), "The amount you keep for this form."));
    let verdict = bench.weigh(net(kept.wet.trim_end_matches(" g"))).verdict.unwrap();
    assert!(verdict.certainty.starts_with("Chance of coming out right: "), "{}", verdict.certainty);
    bench.save(EditorKind::Check, &bench.bucket(), &[("way", "typed"), ("typed", "1.60")]);
    assert!(bench.aim(net("")) < leading_number(&after.wet));
    bench.studio.choose_target(NOW, &bench.target().id, TargetChoice::AllEvidence).unwrap();
    assert!(bench.target().source.starts_with("From 15 fired pots"), "{}", bench.target().source);
}

#[test]
fn the_first_coat_saved_by_it_ends_the_announcement() {
    let bench = Bench::with_kiln();
    bench.judged(&IN_ORDER);
    assert!(bench.says("becomes"));
    bench.poured(NOW, &net(""), "17.8");
    assert!(!bench.says("becomes"));
}

#[test]
fn a_verdict_says_its_chance_and_is_green_only_with_four_in_five() {
    let bench = Bench::with_kiln();
    bench.judged(&IN_ORDER);
    bench.judged(&IN_ORDER);
    let aim = bench.target().wet;
    let verdict = |text: &str| bench.weigh(net(text)).verdict.unwrap();
    let on_aim = verdict(aim.trim_end_matches(" g"));
    assert_eq!(on_aim.kind, VerdictKind::Within, "{on_aim:?}");
    assert!(on_aim.certainty.contains(" 9 in 10") || on_aim.certainty.contains(" 8 in 10"), "{}", on_aim.certainty);
    assert_eq!(on_aim.rests, "Rests on 20 fired pots. SG checked today.");
    assert_eq!((verdict("14.2").kind, verdict("21.9").kind), (VerdictKind::Short, VerdictKind::Over));
    let mut edge = (150..175).map(|tenths| verdict(&format!("{:.1}", f64::from(tenths) / 10.0)));
    let between = edge.find(|verdict| verdict.kind == VerdictKind::CannotTell).unwrap();
    assert!(between.detail.starts_with("Too far from the aim to be sure. Stay within "), "{}", between.detail);

    let scale = bench.weigh(net("")).entry.scale;
    // The same pots on a scale for the kitchen: half the coats were "can't tell" there.
    let kitchen = bench.save(EditorKind::Scale, "", &[("name", "Kitchen scale"), ("capacity", "5000"), ("step", "1")]);
    let coarse = |text: &str| bench.weigh(WeighEntry { scale: kitchen.clone(), ..net(text) }).verdict.unwrap();
    assert_eq!(coarse("18").kind, VerdictKind::ProbablyWithin, "{:?}", coarse("18"));
    assert_eq!(coarse("18").headline, "PROBABLY WITHIN");
    // A bucket that nobody checked is no ground for green.
    let glaze = bench.studio.bucket(NOW, &bench.bucket()).unwrap().glaze_id;
    let pail = bench.save(EditorKind::Bucket, &glaze, &[("name", "Pail")]);
    let on_aim = WeighEntry { bucket: pail, scale, ..net(aim.trim_end_matches(" g")) };
    let unchecked = bench.weigh(on_aim).verdict.unwrap();
    assert_eq!(unchecked.kind, VerdictKind::Guess);
}

#[test]
fn what_is_remembered_is_what_would_be_calculated() {
    let mut bench = Bench::with_kiln();
    let (firing, pieces) = bench.judged(&IN_ORDER);
    let changes: [&dyn Fn(&Bench); 8] = [
        &|bench| bench.came_out(&firing, &pieces[3], "inside", "thin"),
        &|bench| bench.studio.assess(NOW, &firing, &pieces[4], &Assessment::Control { on: true }).map(drop).unwrap(),
        &|bench| bench.studio.set_counts(NOW, &bench.target().id, &firing, &pieces[8], false).map(drop).unwrap(),
        &|bench| {
            let tile = [("name", "Row 3"), ("size", "area"), ("area", "35"), ("dry", "2.1"), ("came_out", "right")];
            bench.save(EditorKind::Tile, "", &tile);
        },
        // A coat that is new and on no fired piece changes nothing, and a second one on a fired piece might.
        &|bench| drop(bench.poured(NOW, &net(""), "18.0")),
        &|bench| drop(bench.poured(NOW, &WeighEntry { piece: pieces[2].clone(), ..net("") }, "2.0")),
        &|bench| {
            let coat = bench.weigh(net("")).recent[0].id.clone();
            bench.studio.remove_coat(NOW, &coat).unwrap();
        },
        &|bench| {
            let glaze = bench.first_glaze();
            let id = [("name", "Ash white"), ("sensitivity", "high"), ("starting_laydown", "7.0")];
            let entry = laydown_app::EditorEntry { id: glaze, ..editor(EditorKind::Glaze, "", &id) };
            bench.studio.save_record(NOW, &entry).unwrap();
        },
    ];
    for (at, change) in changes.iter().enumerate() {
        let before = bench.weigh(net("19.0"));
        change(&bench);
        let shown = bench.weigh(net("19.0"));
        assert!(before.target.is_some() && shown.target.is_some());
        let anew;
        (bench, anew) = bench.calculated_anew();
        assert_eq!((&shown.target, &shown.verdict, &shown.notes), (&anew.target, &anew.verdict, &anew.notes), "{at}");
    }
}

#[test]
fn the_page_lists_each_piece_with_its_weight_and_one_can_be_left_out() {
    let bench = Bench::with_kiln();
    let (firing, pieces) = bench.judged(&IN_ORDER);
    let why = bench.why();
    assert_eq!(why.title, format!("Why {}?", bench.target().wet));
    let pots: Vec<_> = why.rows.iter().filter(|row| !row.firing.is_empty()).collect();
    assert_eq!((pots.len(), why.rows.len()), (10, 12), "and the start, and what is usual");
    assert!((why.rows.iter().map(|row| row.share).sum::<f64>() - 1.0).abs() < 1e-9);
    assert!(why.rows.is_sorted_by(|one, other| one.share >= other.share));
    let row = pots.iter().find(|row| row.piece == pieces[2]).unwrap();
    assert!(row.title.starts_with("Small mug, ") && row.title.ends_with(", inside"), "{}", row.title);
    assert!(row.detail.contains(": 15.2 g, thin. Without it: "), "{}", row.detail);
    assert_eq!(bench.studio.piece(NOW, &row.piece).unwrap().piece, pieces[2]);

    // A piece that was photographed is shown.
    assert!(why.rows.iter().all(|row| row.photo.is_empty()));
    bench.studio.save_photo(NOW, &pieces[2], "", &bench.photograph("before.jpg")).unwrap();
    bench.studio.save_photo(NOW, &pieces[2], &firing, &bench.photograph("after.jpg")).unwrap();
    bench.studio.save_photo(NOW, &pieces[2], "", &bench.photograph("later.jpg")).unwrap();
    let shown = bench.studio.assessment(NOW, &firing, &pieces[2]).unwrap().photos;
    let row = bench.why().rows.into_iter().find(|row| row.piece == pieces[2]).unwrap();
    assert_eq!(row.photo, shown[0].preview, "that of the firing after which it was judged");

    let before = bench.target().wet;
    let left_out = bench.studio.set_counts(NOW, &bench.target().id, &firing, &pieces[2], false).unwrap();
    let after = bench.target().wet;
    assert_ne!(after, before);
    assert_eq!(left_out.sentence, format!("Left out. {before} becomes {after}."));
    let why = bench.why();
    let last = why.rows.last().unwrap();
    assert!(!last.counts && last.piece == pieces[2] && last.toggle == "Count again", "{last:?}");
    assert!(last.detail.ends_with("Does not count."), "{}", last.detail);
    bench.studio.undo(NOW, &left_out.undo).unwrap();
    assert_eq!(bench.target().wet, before);
    // The pot stays a finding: only targets leave it out.
    bench.studio.set_counts(NOW, &bench.target().id, &firing, &pieces[2], false).unwrap();
    assert_eq!(bench.findings().windows[0].chart.dots.len(), 10);
    bench.studio.set_counts(NOW, &bench.target().id, &firing, &pieces[2], true).unwrap();
    assert_eq!(bench.target().wet, before);
}

fn alike(thickness: &'static str) -> Vec<(&'static str, &'static str)> {
    ["19.0", "19.4", "19.8", "20.2", "20.6", "21.0", "21.4", "21.8"].map(|wet| (wet, thickness)).to_vec()
}

#[test]
fn pots_that_all_came_out_right_say_no_more_than_that() {
    let bench = Bench::with_kiln();
    bench.judged(&alike("right"));
    assert!(bench.says("All fired pots came out right."));
    assert!((19.0..22.0).contains(&bench.aim(net(""))), "{:?}", bench.target());
}

#[test]
fn pots_that_all_came_out_thick_lower_the_target_and_make_nothing_green() {
    let bench = Bench::with_kiln();
    bench.judged(&alike("thick"));
    assert!(bench.says("All fired pots came out thick. The target may still be too high."));
    let target = bench.target();
    assert!(leading_number(&target.wet) < 19.0 && target.span.starts_with("May be "), "{target:?}");
    let verdict = bench.weigh(net(target.wet.trim_end_matches(" g"))).verdict.unwrap();
    assert_eq!((verdict.kind, verdict.headline.as_str()), (VerdictKind::Guess, "NEAR: TOO FEW POTS YET"));
    assert!(verdict.certainty.starts_with("Chance of coming out right: about"), "{}", verdict.certainty);
}

#[test]
fn swapped_ratings_are_warned_of() {
    let bench = Bench::with_kiln();
    let swap = |thickness| match thickness {
        "thin" => "thick",
        "thick" => "thin",
        right => right,
    };
    let swapped: Vec<(&str, &str)> = IN_ORDER.iter().map(|(wet, thickness)| (*wet, swap(*thickness))).collect();
    bench.judged(&swapped);
    assert!(bench.says("Were the ratings swapped?"), "{:?}", bench.weigh(net("")).notes);
    assert_ne!(bench.weigh(net("18.0")).verdict.unwrap().kind, VerdictKind::Within);
}

#[test]
fn two_pots_move_nothing() {
    let bench = Bench::with_kiln();
    let before = bench.target();
    bench.judged(&[("17.0", "thick"), ("17.4", "thick")]);
    assert_eq!(bench.target(), before);
}

#[test]
fn one_typo_of_ten_hardly_counts_and_is_named() {
    let bench = Bench::with_kiln();
    bench.judged(&IN_ORDER);
    let without = bench.aim(net(""));
    let bench = Bench::with_kiln();
    let mut pots = IN_ORDER;
    // Typed as half of what it was, and confirmed.
    pots[5].0 = "8.9";
    let (_, pieces) = bench.judged(&pots);
    let off = bench.aim(net("")) / without - 1.0;
    assert!(off.abs() < 0.04, "{off}");
    assert!(bench.says("does not fit the others and hardly counts"), "{:?}", bench.weigh(net("")).notes);
    let code = bench.studio.piece(NOW, &pieces[5]).unwrap().title;
    assert!(bench.says(&code), "{code}");
}

#[test]
fn mixed_bodies_are_said_and_each_has_its_own_target() {
    let bench = Bench::with_kiln();
    let mut pieces = Vec::new();
    let mut mugs = Vec::new();
    // The same row on both clays, a quarter more on the second; each has two sizes, or body and form could not be told apart.
    for (body, more) in [("Stoneware", 1.0), ("Porcelain", 1.25)] {
        let values = [("name", body), ("to_bisque", "6%"), ("to_fired", "12%")];
        let id = bench.save(EditorKind::Body, "", &values);
        for capacity in ["250 ml", "400 ml"] {
            let values = [("name", body), ("class", "cylinder_mug"), ("capacity", capacity), ("body", &id)];
            let form = bench.save(EditorKind::Form, "", &values);
            let entry = WeighEntry { form: form.clone(), ..net("") };
            let start = bench.aim(entry.clone());
            for (wet, thickness) in IN_ORDER {
                // The row is one of a mug whose start is 21 g.
                let wet = wet.parse::<f64>().unwrap() / 21.0 * start * more;
                pieces.push((bench.poured(NOW, &entry, &format!("{wet:.1}")), thickness));
            }
            mugs.push(form);
        }
    }
    let forms = [mugs[0].clone(), mugs[2].clone()];
    let firing = bench.fire_at("6");
    for (piece, thickness) in &pieces {
        bench.came_out(&firing, piece, "inside", thickness);
    }
    let weigh = |form: &String| bench.weigh(WeighEntry { form: form.clone(), ..net("") });
    let note = weigh(&forms[0]).notes.into_iter().find(|note| note.text.contains("different amounts")).unwrap().text;
    assert!(note.contains("Porcelain takes ") && note.ends_with("Each form's target goes by its clay body."), "{note}");
    let [stoneware, porcelain] = forms.each_ref().map(|form| leading_number(&weigh(form).target.unwrap().wet));
    assert!((porcelain / stoneware - 1.25).abs() < 0.06, "{stoneware} {porcelain}");
}

#[test]
fn sizes_and_tiles_go_by_fired_pots_where_weigh_does() {
    let bench = Bench::with_kiln();
    let (firing, pieces) = bench.judged(&IN_ORDER[..7]);
    bench.studio.assess(NOW, &firing, &pieces[6], &Assessment::Control { on: true }).unwrap();
    let small = bench.weigh(net("")).entry.form;
    let sizes = |bench: &Bench| bench.studio.sizes(NOW, "").unwrap().sizes;
    assert_eq!(sizes(&bench)[0].wet, "18.6 g", "seven pots are too few: the control piece");
    bench.judged(&IN_ORDER[7..]);
    let large = [("name", "Large mug"), ("class", "cylinder_mug"), ("capacity", "450 ml")];
    let large = bench.save(EditorKind::Form, "", &large);
    for (form, row) in [&small, &large].into_iter().zip(sizes(&bench)) {
        let target = bench.weigh(WeighEntry { form: form.clone(), ..net("") }).target.unwrap();
        assert_eq!((row.form.as_str(), row.wet.as_str()), (form.as_str(), target.wet.as_str()));
        assert_eq!(
            (row.reason.as_str(), row.span),
            (target.source.as_str(), target.span.replace("Target: ", "").replace("May be ", ""))
        );
    }
    let tile = [("glaze", bench.first_glaze()), ("size", "area".to_owned()), ("area", "100".to_owned())];
    let values: Vec<(&str, &str)> = tile.iter().map(|(key, text)| (*key, text.as_str())).collect();
    let said = bench.studio.editor(NOW, &editor(EditorKind::Tile, "", &values)).unwrap();
    let takes = said.results.iter().find(|note| note.text.contains("this tile takes")).unwrap().text.clone();
    // 17.8 g on the small mug by all pots, its area of 175 cm²: so many hundredths of it.
    let area = bench
        .studio
        .store()
        .read(|conn| laydown_store::query::latest_coats(conn, 1).map(|coats| coats[0].area_mm2 as f64 / 100.0));
    let on_mug = bench.aim(WeighEntry { form: small, ..net("") });
    let takes = leading_number(takes.split("takes ").nth(1).unwrap());
    assert!((takes - on_mug * 100.0 / area.unwrap()).abs() < 0.11, "{takes} {on_mug}");
}
