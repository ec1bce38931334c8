use super::*;
use crate::coat::Solids;
use crate::coat::target::{Evidence, STARTING_LAYDOWN, Sensitivity, target};
use crate::form::{Form, ShapeClass, ZoneKind};
use crate::glaze::slurry::SgReading;
use crate::units::{Millilitres, PowderDensity, SpecificGravity};
use approx::assert_relative_eq;
use proptest::prelude::*;

fn scale(step: f64) -> Scale {
    Scale::new(Grams::new(2_000.0), Grams::new(step), None, None).unwrap()
}

fn solids(sg: f64) -> Solids {
    Solids::of(SgReading::checked(SpecificGravity::new(sg).unwrap()), PowderDensity::default()).unwrap()
}

/// A 250 ml mug whose control piece took 19.4 g.
fn mug(sensitivity: Sensitivity) -> (Job, Control, Target) {
    let form = Form::by_capacity(ShapeClass::CylinderMug, Millilitres::new(250.0)).unwrap();
    let zone = *form.zone(ZoneKind::Inside).unwrap();
    let job = Job {
        form_name: "Small mug".to_owned(),
        zone,
        capacity: form.capacity,
        class: form.class,
        solids: solids(1.45),
        sensitivity,
    };
    let control = Control {
        wet: Grams::new(19.4),
        solids: job.solids,
        area: zone.area,
        area_relative_uncertainty: zone.relative_uncertainty,
        class: form.class,
        capacity: form.capacity,
        form_name: job.form_name.clone(),
        same_form: true,
        net_standard_uncertainty: Grams::new(0.041),
    };
    let evidence = Evidence { controls: vec![control.clone()], tiles: Vec::new(), starting: STARTING_LAYDOWN };
    let target = target(&job, &evidence).unwrap();
    (job, control, target)
}

fn net(grams: f64, step: f64, sensitivity: Sensitivity) -> Result<Verdict, ReadingRefused> {
    let (job, control, target) = mug(sensitivity);
    judge(&Reading::Net(Grams::new(grams)), &target, &scale(step), &job, Some(&control))
}

fn words(grams: f64, step: f64, sensitivity: Sensitivity) -> VerdictWords {
    net(grams, step, sensitivity).unwrap().in_words(&Style::default())
}

#[test]
fn a_fine_scale_decides_a_mug_and_a_coarse_one_only_just() {
    // common practice, no source: 1 to 2 g either way is fine on such a mug; usual sensitivity allows 1.36 g.
    let kinds = |step: f64| {
        let steps = (12.0 / step) as usize;
        (0..=steps).map(|at| net(13.0 + at as f64 * step, step, Sensitivity::Medium).unwrap().kind).collect::<Vec<_>>()
    };
    let share = |kinds: &[VerdictKind], kind| kinds.iter().filter(|k| **k == kind).count() as f64 / kinds.len() as f64;
    let (fine, coarse) = (kinds(0.1), kinds(1.0));
    assert!(share(&fine, VerdictKind::CannotTell) < 0.05);
    assert!(share(&fine, VerdictKind::Within) > 0.15);
    assert_eq!(coarse.iter().filter(|kind| **kind == VerdictKind::Within).count(), 1);
    assert!(share(&coarse, VerdictKind::CannotTell) > 0.15);
    for kinds in [fine, coarse] {
        assert_eq!(kinds.first(), Some(&VerdictKind::Short));
        assert_eq!(kinds.last(), Some(&VerdictKind::Over));
    }
}

#[test]
fn the_guard_band_is_the_half_width_of_the_reading() {
    // Low edge 18.042; half-width 0.0776: within from 18.12, short below 17.96.
    let kind = |grams: f64| net(grams, 0.1, Sensitivity::Medium).unwrap().kind;
    assert_eq!(kind(17.9), VerdictKind::Short);
    assert_eq!(kind(18.0), VerdictKind::CannotTell);
    assert_eq!(kind(18.1), VerdictKind::CannotTell);
    assert_eq!(kind(18.2), VerdictKind::Within);
    assert_eq!(kind(20.6), VerdictKind::Within);
    assert_eq!(kind(20.7), VerdictKind::CannotTell);
    assert_eq!(kind(20.9), VerdictKind::Over);
}

#[test]
fn numbers_of_a_short_coat() {
    let verdict = net(16.3, 0.1, Sensitivity::Medium).unwrap();
    assert_eq!(verdict.kind, VerdictKind::Short);
    assert_relative_eq!(verdict.to_aim.value(), 3.1, max_relative = 1e-9);
    // From 18.12 it is surely within; the scale shows 18.2.
    assert_relative_eq!(verdict.to_within.value(), 1.9, max_relative = 1e-9);
    assert_relative_eq!(verdict.dry.value(), 16.3 * solids(1.45).fraction.value(), max_relative = 1e-12);
    assert_relative_eq!(verdict.on_control.unwrap().value(), 16.3, max_relative = 1e-12);
}

#[test]
fn the_same_coat_on_the_control_piece_counts_its_own_bucket_and_size() {
    let (job, control, target) = mug(Sensitivity::Medium);
    let larger = Control {
        same_form: false,
        capacity: Some(Millilitres::new(450.0)),
        area: control.area * (450.0f64 / 250.0).powf(2.0 / 3.0),
        solids: solids(1.55),
        ..control
    };
    let verdict = judge(&Reading::Net(Grams::new(19.4)), &target, &scale(0.1), &job, Some(&larger)).unwrap();
    let expect = 19.4 * 1.479_727_2 * solids(1.45).fraction.value() / solids(1.55).fraction.value();
    assert_relative_eq!(verdict.on_control.unwrap().value(), expect, max_relative = 1e-6);
}

#[test]
fn words_for_each_verdict() {
    let short = words(16.3, 0.1, Sensitivity::Medium);
    assert_eq!((short.headline.as_str(), short.act.as_str()), ("SHORT", "Add 3.1 g"));
    assert_eq!(short.detail, "Target 18.0 to 20.8 g. Add 1.9 g.");
    assert_eq!(short.spoken, "Short. Add 3.1 grams.");
    assert_eq!(short.certainty, "Accurate to ±0.08 g.");
    assert_eq!(short.carries, "8.2 g dry, 4.4 g per 100 cm²");
    assert_eq!(short.on_control.unwrap(), "On your control piece this coat would weigh 16.3 g.");

    let over = words(22.4, 0.1, Sensitivity::Medium);
    assert_eq!((over.headline.as_str(), over.act.as_str()), ("OVER", "Take off 3.0 g"));
    assert_eq!(over.detail, "Target 18.0 to 20.8 g. Sponge, scrape or wash off 1.8 g.");
    assert_eq!(over.spoken, "Over. Take off 3.0 grams.");

    let within = words(19.1, 0.1, Sensitivity::Medium);
    assert_eq!((within.headline.as_str(), within.act.as_str()), ("WITHIN", "Save it"));
    assert_eq!(within.detail, "0.3 g under the aim, inside 18.0 to 20.8 g.");
    assert_eq!(words(19.4, 0.1, Sensitivity::Medium).detail, "Right on the aim.");

    let edge = words(18.0, 0.1, Sensitivity::Medium);
    assert_eq!((edge.headline.as_str(), edge.act.as_str()), ("CANNOT TELL", "Add 0.2 g to be sure"));
    assert_eq!(edge.detail, "Too near the edge of 18.0 to 20.8 g for a scale that reads in 0.1 g steps.");

    let coarse = words(19.0, 1.0, Sensitivity::High);
    assert_eq!((coarse.headline.as_str(), coarse.act.as_str()), ("CANNOT TELL", "Use a finer scale"));
    assert_eq!(coarse.detail, "Too coarse: this scale reads in 1 g steps, and the target is 18.7 to 20.1 g.");
    assert_eq!(coarse.spoken, "Cannot tell. This scale is too coarse.");
    assert!(net(19.0, 1.0, Sensitivity::High).unwrap().too_coarse);
    let coarse_edge = words(18.0, 1.0, Sensitivity::Medium);
    assert_eq!(coarse_edge.act, "Add 1 g to be sure");
    assert_eq!(coarse_edge.spoken, "Cannot tell. Add 1 gram to be sure.");
    // Far out, even a coarse scale tells.
    assert_eq!(net(12.0, 1.0, Sensitivity::High).unwrap().kind, VerdictKind::Short);
}

#[test]
fn a_comma_on_screen_and_a_point_for_the_ear() {
    let style = Style { decimal: DecimalMark::Comma, ..Style::default() };
    let words = net(16.3, 0.1, Sensitivity::Medium).unwrap().in_words(&style);
    assert_eq!(words.act, "Add 3,1 g");
    assert_eq!(words.spoken, "Short. Add 3.1 grams.");
}

#[test]
fn readings_that_cannot_be_are_refused_with_what_to_do() {
    let check = |reading: Reading, scale: Scale, expect: &str| {
        let (job, _, target) = mug(Sensitivity::Medium);
        assert_eq!(judge(&reading, &target, &scale, &job, None).unwrap_err().to_string(), expect);
    };
    let two = |bare: f64, glazed: f64| Reading::TwoWeights { bare: Grams::new(bare), glazed: Grams::new(glazed) };
    let one = |grams: f64| Reading::Net(Grams::new(grams));
    check(
        two(310.2, 290.8),
        scale(0.1),
        "It weighs less glazed (290.8 g) than bare (310.2 g). Check that both are of this piece, and the right way round.",
    );
    check(one(-19.4), scale(0.1), "The weight is below zero. Tare with the bare piece on the scale, then weigh again.");
    check(one(0.0), scale(0.1), "The scale shows no glaze. Weigh the piece after the coat.");
    check(two(310.2, 310.2), scale(0.1), "The scale shows no glaze. Weigh the piece after the coat.");
    check(two(0.0, 19.4), scale(0.1), "The bare piece must weigh something. Weigh it before glazing.");
    check(
        two(1_990.0, 2_009.4),
        scale(0.1),
        "2009.4 g is more than this scale weighs (2000.0 g). Use a larger scale, or choose the scale you used.",
    );
    check(
        one(19.43),
        scale(0.1),
        "This scale reads in 0.1 g steps and cannot show 19.43 g. Type what it shows, or choose the scale you used.",
    );
    check(
        one(2.0),
        Scale { minimum: Some(Grams::new(5.0)), ..scale(0.1) },
        "2.0 g is less than this scale should weigh (5.0 g). Use a finer scale.",
    );
    check(one(f64::NAN), scale(0.1), "That is no weight. Type what the scale shows.");
    check(one(f64::INFINITY), scale(0.1), "That is no weight. Type what the scale shows.");
    let (job, _, target) = mug(Sensitivity::Medium);
    let whole_pot = judge(&one(329.6), &target, &scale(0.1), &job, None).unwrap_err();
    assert!(matches!(whole_pot, ReadingRefused::MoreThanPieceHolds { .. }));
    assert!(whole_pot.to_string().ends_with("Was the scale tared with the bare piece?"));
}

#[test]
fn sums_of_decimal_fractions_are_no_finer_than_the_step() {
    for step in [0.01, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0] {
        for at in [1u32, 3, 7, 194, 3_102, 19_999] {
            assert!(scale_can_show(Grams::new(f64::from(at) * step), Grams::new(step)), "{at} × {step}");
            assert!(!scale_can_show(Grams::new((f64::from(at) + 0.3) * step), Grams::new(step)), "{at} × {step}");
        }
    }
    assert!(scale_can_show(Grams::new(0.1 + 0.2), Grams::new(0.1)));
    // 0.005 oz, stored as 142 mg.
    assert!(scale_can_show(Grams::new(10.275), Grams::new(0.142)));
}

#[test]
fn two_weights_and_net_agree() {
    let (job, _, target) = mug(Sensitivity::Medium);
    let two = Reading::TwoWeights { bare: Grams::new(310.2), glazed: Grams::new(326.5) };
    let by_two = judge(&two, &target, &scale(0.1), &job, None).unwrap();
    let by_net = judge(&Reading::Net(Grams::new(16.3)), &target, &scale(0.1), &job, None).unwrap();
    assert_eq!(by_two.kind, by_net.kind);
    assert_relative_eq!(by_two.net.value(), by_net.net.value(), max_relative = 1e-12);
}

proptest! {
    #[test]
    fn more_glaze_never_moves_the_verdict_back(
        steps in proptest::collection::vec(1u32..1_500, 2..40), step in prop::sample::select(vec![0.01, 0.1, 0.5, 1.0]),
        sensitivity in prop::sample::select(Sensitivity::ALL.to_vec()),
    ) {
        let place = |verdict: &Verdict| match verdict.kind {
            VerdictKind::Short => 0,
            VerdictKind::CannotTell if verdict.to_aim > Grams::ZERO && !verdict.too_coarse => 1,
            VerdictKind::Within => 2,
            VerdictKind::CannotTell if verdict.too_coarse => 2,
            VerdictKind::CannotTell => 3,
            VerdictKind::Over => 4,
        };
        let mut steps = steps;
        steps.sort_unstable();
        let mut last = 0;
        for at in steps {
            if let Ok(verdict) = net(f64::from(at) * step, step, sensitivity) {
                let now = place(&verdict);
                prop_assert!(now >= last);
                last = now;
            }
        }
    }

    #[test]
    fn what_is_called_within_is_within_whatever_the_rounding(
        true_bare in 100.0..500.0f64, true_net in 10.0..30.0f64, step in prop::sample::select(vec![0.1, 0.5, 1.0]),
    ) {
        let shown = |grams: f64| Grams::new((grams / step).round() * step);
        let reading = Reading::TwoWeights { bare: shown(true_bare), glazed: shown(true_bare + true_net) };
        let (job, _, target) = mug(Sensitivity::Medium);
        if let Ok(verdict) = judge(&reading, &target, &scale(step), &job, None) {
            // The rounding errs by a whole step at the most, the half-width covers 95%: the rest is under a quarter step.
            let slack = Grams::new(step) - verdict.half_width;
            let truth = Grams::new(true_net);
            match verdict.kind {
                VerdictKind::Within => prop_assert!(truth >= target.low - slack && truth <= target.high + slack),
                VerdictKind::Short => prop_assert!(truth <= target.low + slack),
                VerdictKind::Over => prop_assert!(truth >= target.high - slack),
                VerdictKind::CannotTell => {}
            }
        }
    }

    #[test]
    fn doing_what_it_says_brings_it_within(at in 50u32..600, sensitivity in prop::sample::select(Sensitivity::ALL.to_vec())) {
        let verdict = net(f64::from(at) / 10.0, 0.1, sensitivity);
        if let Ok(verdict) = verdict {
            let (job, _, target) = mug(sensitivity);
            let scale = Scale { step: Grams::new(0.000_01), ..scale(0.1) };
            let aimed = judge(&Reading::Net(verdict.net + verdict.to_aim), &target, &scale, &job, None);
            if let Ok(aimed) = aimed {
                prop_assert_eq!(aimed.kind, VerdictKind::Within);
            }
            let corrected = verdict.net + verdict.to_within;
            prop_assert!(corrected >= target.low + verdict.half_width - NOISE);
            prop_assert!(corrected <= target.high - verdict.half_width + NOISE);
        }
    }
}
