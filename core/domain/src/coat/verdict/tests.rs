use super::*;
use crate::coat::Solids;
use crate::coat::scale::ScaleAdvice;
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
fn readings_that_cannot_be_are_refused() {
    let refused = |reading: Reading, scale: Scale| {
        let (job, _, target) = mug(Sensitivity::Medium);
        judge(&reading, &target, &scale, &job, None).unwrap_err()
    };
    let g = Grams::new;
    let step = g(0.1);
    let two = |bare: f64, glazed: f64| Reading::TwoWeights { bare: g(bare), glazed: g(glazed) };
    let one = |grams: f64| Reading::Net(g(grams));
    assert_eq!(
        refused(two(310.2, 290.8), scale(0.1)),
        ReadingRefused::GlazedUnderBare { bare: g(310.2), glazed: g(290.8), step }
    );
    assert_eq!(refused(one(-19.4), scale(0.1)), ReadingRefused::Negative);
    assert_eq!(refused(one(0.0), scale(0.1)), ReadingRefused::Nothing);
    assert_eq!(refused(two(310.2, 310.2), scale(0.1)), ReadingRefused::Nothing);
    assert_eq!(refused(two(0.0, 19.4), scale(0.1)), ReadingRefused::NoBare);
    assert_eq!(
        refused(two(1_990.0, 2_009.4), scale(0.1)),
        ReadingRefused::OverCapacity { weight: g(2_009.4), capacity: g(2_000.0), step }
    );
    assert_eq!(refused(one(19.43), scale(0.1)), ReadingRefused::FinerThanStep { weight: g(19.43), step });
    let minimum = g(5.0);
    assert_eq!(
        refused(one(2.0), Scale { minimum: Some(minimum), ..scale(0.1) }),
        ReadingRefused::UnderMinimum { net: g(2.0), minimum, step }
    );
    assert_eq!(refused(one(f64::NAN), scale(0.1)), ReadingRefused::NoNumber);
    assert_eq!(refused(one(f64::INFINITY), scale(0.1)), ReadingRefused::NoNumber);
    assert!(matches!(refused(one(329.6), scale(0.1)), ReadingRefused::MoreThanPieceHolds { .. }));
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

/// A mug of 250 ml in a glaze that the studio has never used: 20.1 g, plausible from 10.8 to 37.5 g.
fn guess() -> (Job, Target, Trust) {
    let (job, ..) = mug(Sensitivity::Medium);
    let evidence = Evidence { controls: Vec::new(), tiles: Vec::new(), starting: STARTING_LAYDOWN };
    let target = target(&job, &evidence).unwrap();
    let trust = Trust::of(&target, &job, true, 0);
    (job, target, trust)
}

#[test]
fn nothing_is_within_on_a_guess_and_the_span_is_all_that_is_plausible() {
    let (job, target, trust) = guess();
    let judged = |grams: f64, step: f64| {
        let verdict = judge(&Reading::Net(Grams::new(grams)), &target, &scale(step), &job, None).unwrap();
        verdict.on_a_guess(&target, &trust)
    };
    assert!(target.interval.0 < target.low && target.high < target.interval.1);
    let edges = [target.interval.0.value(), target.interval.1.value()].map(|edge| (edge * 10.0).round() / 10.0);
    for grams in [edges[0] + 0.1, 15.0, 20.1, 25.0, edges[1] - 0.1] {
        let verdict = judged(grams, 0.1);
        assert_eq!(verdict.kind, VerdictKind::Guess, "{grams}");
        assert_eq!((verdict.low, verdict.high), target.interval);
        assert_eq!(verdict.weakness, Some(Weakness::FirstGuess));
    }
    assert_eq!(judged(edges[0] - 0.2, 0.1).kind, VerdictKind::Short);
    assert_eq!(judged(edges[1] + 0.2, 0.1).kind, VerdictKind::Over);
    assert_eq!(judged(20.1, 0.1).to_within, Grams::ZERO);
    // 5 g steps: 20 g is the nearest that it shows.
    assert_relative_eq!(judged(15.0, 5.0).to_within.value(), 5.0);
    assert_relative_eq!(judged(30.0, 5.0).to_within.value(), -10.0);
    assert!(!judged(15.0, 5.0).too_coarse);
}

#[test]
fn a_trusted_target_is_judged_as_it_is() {
    let (job, _, target) = mug(Sensitivity::Medium);
    let trust = Trust::of(&target, &job, true, 0);
    let verdict = net(19.4, 0.1, Sensitivity::Medium).unwrap();
    assert_eq!(verdict.on_a_guess(&target, &trust), verdict);
    let unchecked = Trust::of(&target, &job, false, 0);
    let verdict = verdict.on_a_guess(&target, &unchecked);
    assert_eq!((verdict.kind, verdict.weakness), (VerdictKind::Guess, Some(Weakness::Bucket)));
}

#[test]
fn no_correction_leads_to_a_weight_that_the_scale_does_not_take() {
    let (job, _, target) = mug(Sensitivity::Medium);
    let two = Reading::TwoWeights { bare: Grams::new(183.0), glazed: Grams::new(195.0) };
    let small = Scale { capacity: Grams::new(200.0), ..scale(0.1) };
    assert!(judge(&two, &target, &small, &job, None).unwrap().too_coarse, "183 g and 18.2 g are more than 200 g");
    let from_25 = Scale { minimum: Some(Grams::new(25.0)), ..scale(0.1) };
    assert!(judge(&Reading::Net(Grams::new(30.0)), &target, &from_25, &job, None).unwrap().too_coarse);
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
            VerdictKind::Guess | VerdictKind::ProbablyWithin => unreachable!("the target is no guess and not pooled"),
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
                VerdictKind::CannotTell | VerdictKind::Guess | VerdictKind::ProbablyWithin => {}
            }
        }
    }

    /// On every scale: what it says to do ends within, or it says that no weight it shows can pass; and then so says the
    /// advice before anything is weighed.
    #[test]
    fn doing_the_least_ends_within_or_no_weight_passes(
        at in 1u32..400, aim in 3.0..200.0f64, sensitivity in prop::sample::select(Sensitivity::ALL.to_vec()),
        step in prop::sample::select(vec![0.01, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0]), is_guess: bool,
    ) {
        let (job, control, _) = mug(sensitivity);
        let control = Control { wet: Grams::new(aim), ..control };
        let evidence = Evidence { controls: vec![control], tiles: Vec::new(), starting: STARTING_LAYDOWN };
        let target = target(&job, &evidence).unwrap();
        let scale = scale(step);
        let trust = Trust::of(&target, &job, !is_guess, 0);
        let judged = |net: Grams| {
            let verdict = judge(&Reading::Net(net), &target, &scale, &job, None)?;
            Ok::<_, ReadingRefused>(verdict.on_a_guess(&target, &trust))
        };
        let most = (aim * 2.0 / step).ceil() as u32;
        if let Ok(verdict) = judged(Grams::new(f64::from(at % most.max(1) + 1) * step)) {
            let advice = scale.advice(None, target.wet, (target.low, target.high));
            if verdict.too_coarse {
                prop_assert_eq!(advice, ScaleAdvice::TooCoarse);
                prop_assert!(verdict.kind != VerdictKind::Within);
            } else if let Ok(corrected) = judged(verdict.net + verdict.to_within) {
                let expect = if is_guess { VerdictKind::Guess } else { VerdictKind::Within };
                prop_assert_eq!(corrected.kind, expect);
                prop_assert_eq!(corrected.to_within, Grams::ZERO);
                prop_assert!(is_guess || advice != ScaleAdvice::TooCoarse);
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
