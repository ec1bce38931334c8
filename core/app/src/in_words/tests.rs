//! What is read in these words, in English.

use super::*;
use laydown_domain::coat::scale::Scale;
use laydown_domain::coat::target::{
    Control, Evidence, Job, STARTING_LAYDOWN, Sensitivity, Target, TileEvidence, target as target_of,
};
use laydown_domain::coat::trust::Trust;
use laydown_domain::coat::verdict::{Reading, ReadingRefused, Verdict, judge};
use laydown_domain::coat::{Solids, tile};
use laydown_domain::form::{Form, ProfileError, ShapeClass, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{
    AreaUnit, DecimalMark, Grams, Laydown, MassUnit, Millilitres, PowderDensity, SpecificGravity, Style, parse,
};
use proptest::prelude::*;

fn scale(step: f64) -> Scale {
    Scale::new(Grams::new(2_000.0), Grams::new(step), None, None).unwrap()
}

/// A 250 ml mug whose control pieces took 19.4 g.
fn mug(sensitivity: Sensitivity, controls: usize) -> (Job, Control, Target) {
    let form = Form::by_capacity(ShapeClass::CylinderMug, Millilitres::new(250.0)).unwrap();
    let zone = *form.zone(ZoneKind::Inside).unwrap();
    let sg = SgReading::checked(SpecificGravity::USUAL);
    let solids = Solids::of(sg, PowderDensity::default()).unwrap();
    let job = Job {
        form_name: "Small mug".to_owned(),
        zone,
        capacity: form.capacity,
        class: form.class,
        solids,
        sensitivity,
    };
    let control = Control {
        wet: Grams::new(19.4),
        solids,
        area: zone.area,
        area_relative_uncertainty: zone.relative_uncertainty,
        class: form.class,
        capacity: form.capacity,
        form_name: job.form_name.clone(),
        same_form: true,
        net_standard_uncertainty: Grams::new(0.041),
    };
    let controls = vec![control.clone(); controls];
    let evidence = Evidence { controls, tiles: Vec::new(), starting: STARTING_LAYDOWN };
    let target = target_of(&job, &evidence).unwrap();
    (job, control, target)
}

fn net(grams: f64, step: f64, sensitivity: Sensitivity) -> Result<Verdict, ReadingRefused> {
    let (job, control, target) = mug(sensitivity, 1);
    judge(&Reading::Net(Grams::new(grams)), &target, &scale(step), &job, Some(&control))
}

fn words(grams: f64, step: f64, sensitivity: Sensitivity) -> VerdictWords {
    verdict(&net(grams, step, sensitivity).unwrap(), &Style::default())
}

fn point() -> Style {
    Style::default()
}

fn comma() -> Style {
    Style { decimal: DecimalMark::Comma, ..point() }
}

#[test]
fn words_for_each_verdict() {
    let short = words(16.3, 0.1, Sensitivity::Medium);
    assert_eq!((short.headline.as_str(), short.act.as_str()), ("SHORT", "Add 1.9 g"));
    assert_eq!(short.detail, "Target 18.0 to 20.8 g. Add 3.1 g for the aim.");
    assert_eq!(short.spoken, "Short. Add 1.9 grams.");
    assert_eq!(short.certainty, "Accurate to ±0.08 g.");
    assert_eq!(short.carries, "8.2 g dry, 4.4 g per 100 cm²");
    assert_eq!(short.on_control.unwrap(), "On your control piece this coat would weigh 16.3 g.");

    let over = words(22.4, 0.1, Sensitivity::Medium);
    assert_eq!((over.headline.as_str(), over.act.as_str()), ("OVER", "Take off 1.8 g"));
    assert_eq!(over.detail, "Target 18.0 to 20.8 g. Sponge, scrape or wash off 3.0 g for the aim.");
    assert_eq!(over.spoken, "Over. Take off 1.8 grams.");

    let within = words(19.1, 0.1, Sensitivity::Medium);
    assert_eq!((within.headline.as_str(), within.act.as_str()), ("WITHIN", "Save it"));
    assert_eq!(within.detail, "0.3 g under the aim, within 18.0 to 20.8 g.");
    assert_eq!(words(19.4, 0.1, Sensitivity::Medium).detail, "Right on the aim.");

    let edge = words(18.0, 0.1, Sensitivity::Medium);
    assert_eq!((edge.headline.as_str(), edge.act.as_str()), ("CAN'T TELL", "Add 0.2 g to be sure"));
    assert_eq!(edge.detail, "Too near the edge of 18.0 to 20.8 g for a scale that reads in 0.1 g steps.");

    let coarse = words(19.0, 1.0, Sensitivity::High);
    assert_eq!((coarse.headline.as_str(), coarse.act.as_str()), ("CAN'T TELL", "Use a finer scale"));
    assert_eq!(coarse.detail, "Too coarse: this scale reads in 1 g steps, and the target is 18.7 to 20.1 g.");
    assert_eq!(coarse.spoken, "Can't tell. This scale is too coarse.");
    assert!(net(19.0, 1.0, Sensitivity::High).unwrap().too_coarse);
    let coarse_edge = words(18.0, 1.0, Sensitivity::Medium);
    assert_eq!(coarse_edge.act, "Add 1 g to be sure");
    assert_eq!(coarse_edge.spoken, "Can't tell. Add 1 gram to be sure.");
    // Far out, even a coarse scale tells.
    let far = words(12.0, 1.0, Sensitivity::High);
    assert_eq!((far.headline.as_str(), far.act.as_str()), ("SHORT", "Add some, then use a finer scale"));
    let far = words(30.0, 1.0, Sensitivity::High);
    assert_eq!((far.headline.as_str(), far.act.as_str()), ("OVER", "Take some off, then use a finer scale"));
}

/// The grams that an act tells to add, below nothing to take off; `None` where it tells no amount.
fn told(act: &str) -> Option<Grams> {
    let (sign, amount) = match (act.strip_prefix("Add "), act.strip_prefix("Take off ")) {
        (Some(amount), _) => (1.0, amount),
        (_, Some(amount)) => (-1.0, amount),
        _ => return None,
    };
    let amount = amount.trim_end_matches(" to be sure").trim_end_matches(", or save it");
    amount.starts_with(|c: char| c.is_ascii_digit()).then(|| parse::mass(amount, &point()).unwrap() * sign)
}

proptest! {
    /// On every scale, aim and tolerance: after what the act tells, the verdict is within; or no amount was told, and then the
    /// advice has said that no weight the scale shows can pass, and what would decide it.
    #[test]
    fn following_the_act_ends_within(
        at in 1u32..400, aim in 3.0..70.0f64, sensitivity in prop::sample::select(Sensitivity::ALL.to_vec()),
        step in prop::sample::select(vec![0.1, 0.5, 1.0, 2.0, 5.0]), is_guess: bool,
    ) {
        let (job, control, _) = mug(sensitivity, 1);
        let controls = vec![Control { wet: Grams::new(aim), ..control }];
        let target = target_of(&job, &Evidence { controls, tiles: Vec::new(), starting: STARTING_LAYDOWN }).unwrap();
        let (scale, trust) = (scale(step), Trust::of(&target, &job, !is_guess, 0));
        let judged = |net: Grams| {
            let judged = judge(&Reading::Net(net), &target, &scale, &job, None);
            judged.map(|verdict| verdict.on_a_guess(&target, &trust))
        };
        let most = (aim * 2.0 / step).ceil() as u32;
        let Ok(read) = judged(Grams::new(f64::from(at % most + 1) * step)) else { return Ok(()) };
        let words = verdict(&read, &point());
        let done = match told(&words.act) {
            Some(amount) => judged(read.net + amount).unwrap(),
            None if read.too_coarse => {
                let span = (target.low, target.high);
                let advice = scale.advice(None, target.wet, span);
                let said = scale_advice(&scale, advice, &scale.what_decides(span), &target, &point());
                prop_assert!(said.contains("no weight it shows can pass"), "{}: {}", words.act, said);
                return Ok(());
            }
            None => read,
        };
        let expect = if is_guess { "NEAR: SG NOT CHECKED" } else { "WITHIN" };
        let done = verdict(&done, &point());
        prop_assert_eq!(&done.headline, expect, "{} {}", words.headline, words.act);
        prop_assert_eq!(done.act, "Save it");
    }
}

#[test]
fn the_least_that_helps_comes_first() {
    // 0.1 g over what is sure to be right is not headlined by the way to the aim.
    assert_eq!(words(20.8, 0.1, Sensitivity::Medium).act, "Take off 0.2 g to be sure");
    assert_eq!(words(20.9, 0.1, Sensitivity::Medium).act, "Take off 0.3 g");
}

#[test]
fn a_guess_says_so_in_its_headline_and_its_voice() {
    let (job, ..) = mug(Sensitivity::Medium, 0);
    let evidence = |tiles| Evidence { controls: Vec::new(), tiles, starting: STARTING_LAYDOWN };
    let said = |grams: f64, target: &Target, checked: bool| {
        let trust = Trust::of(target, &job, checked, 0);
        let judged = judge(&Reading::Net(Grams::new(grams)), target, &scale(0.1), &job, None).unwrap();
        let rests = rests(&trust, checked.then(|| "today".to_owned()));
        (verdict(&judged.on_a_guess(target, &trust), &point()), rests)
    };
    let start = target_of(&job, &evidence(Vec::new())).unwrap();
    let (near, rests) = said(20.0, &start, true);
    assert_eq!((near.headline.as_str(), near.act.as_str()), ("NEAR YOUR FIRST GUESS", "Save it"));
    assert_eq!(near.spoken, "Near your first guess. Save it.");
    assert!(near.detail.contains("Right may be"), "{}", near.detail);
    assert_eq!(rests, "No pots or tiles of this glaze yet. SG checked today. Area estimated.");
    assert_eq!(said(15.0, &start, true).0.headline, "UNDER YOUR FIRST GUESS");
    assert_eq!(said(25.0, &start, true).0.headline, "OVER YOUR FIRST GUESS");
    assert!(said(25.0, &start, true).0.spoken.starts_with("Over your first guess. Take off "));

    let tile = TileEvidence { laydown: Laydown::new(5.5), relative_uncertainty: 0.02 };
    let tiles = target_of(&job, &evidence(vec![tile])).unwrap();
    let (near, rests) = said(20.0, &tiles, false);
    assert_eq!(near.headline, "NEAR YOUR TILES");
    assert_eq!(rests, "Rests on test tiles, no pots. SG not checked. Area estimated.");
    let (_, _, control) = mug(Sensitivity::Medium, 3);
    let (near, rests) = said(19.4, &control, false);
    assert_eq!(near.headline, "NEAR: SG NOT CHECKED");
    assert_eq!(rests, "Rests on 3 control pieces, none judged after firing. SG not checked.");
    assert_eq!(said(19.4, &control, true).0.headline, "WITHIN");
    assert_eq!(
        super::rests(&Trust::of(&control, &job, true, 2), None),
        "Rests on 2 control pieces that came out right. SG not checked."
    );
}

/// A kitchen scale for a mug: said before anything is weighed, with what would decide it.
#[test]
fn a_coarse_scale_says_what_would_decide() {
    let (_, _, target) = mug(Sensitivity::Medium, 1);
    let said = |step: f64, capacity: f64| {
        let scale = Scale { capacity: Grams::new(capacity), ..scale(step) };
        let span = (target.low, target.high);
        scale_advice(&scale, scale.advice(None, target.wet, span), &scale.what_decides(span), &target, &point())
    };
    assert_eq!(
        said(5.0, 5_000.0),
        "This scale reads in 5 g steps: no weight it shows can pass. \
         Weigh 5 pieces together (aim 97 g), or use a scale that reads in 1 g steps."
    );
    assert_eq!(
        said(5.0, 60.0),
        "This scale reads in 5 g steps: no weight it shows can pass. Use a scale that reads in 1 g steps or finer."
    );
}

#[test]
fn a_comma_on_screen_and_a_point_for_the_ear() {
    let style = Style { decimal: DecimalMark::Comma, ..Style::default() };
    let words = verdict(&net(16.3, 0.1, Sensitivity::Medium).unwrap(), &style);
    assert_eq!(words.act, "Add 1,9 g");
    assert_eq!(words.spoken, "Short. Add 1.9 grams.");
}

#[test]
fn readings_that_cannot_be_are_refused_with_what_to_do() {
    let check = |reading: Reading, scale: Scale, expect: &str| {
        let (job, _, target) = mug(Sensitivity::Medium, 1);
        let refused = judge(&reading, &target, &scale, &job, None).unwrap_err();
        assert_eq!(reading_refused(&refused, &Style::default()), expect);
    };
    let two = |bare: f64, glazed: f64| Reading::TwoWeights { bare: Grams::new(bare), glazed: Grams::new(glazed) };
    let one = |grams: f64| Reading::Net(Grams::new(grams));
    check(
        two(310.2, 290.8),
        scale(0.1),
        "It weighs less glazed (290.8 g) than bare (310.2 g). Check that both are for this piece, and not swapped.",
    );
    check(one(-19.4), scale(0.1), "The weight is below zero. Tare with the bare piece on the scale, then weigh again.");
    check(one(0.0), scale(0.1), "The scale shows no glaze. Weigh the piece after coating.");
    check(two(310.2, 310.2), scale(0.1), "The scale shows no glaze. Weigh the piece after coating.");
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
    check(one(f64::NAN), scale(0.1), "That is not a weight. Type what the scale shows.");
    check(one(f64::INFINITY), scale(0.1), "That is not a weight. Type what the scale shows.");
    let (job, _, target) = mug(Sensitivity::Medium, 1);
    let whole_pot = judge(&one(329.6), &target, &scale(0.1), &job, None).unwrap_err();
    assert!(matches!(whole_pot, ReadingRefused::MoreThanPieceHolds { .. }));
    assert!(
        reading_refused(&whole_pot, &Style::default()).ends_with("Check that you tared the scale with the bare piece.")
    );
}

#[test]
fn nonsense_is_refused_with_a_sentence() {
    let check = |text: &str, style: Style, expect: &str| {
        assert_eq!(parse::mass(text, &style).unwrap_err().sentence(), expect, "{text:?}");
    };
    check("", point(), "Type the weight, for example 19.4.");
    check("   ", comma(), "Type the weight, for example 19,4.");
    check("l9.4", point(), "“l9.4” cannot be read as a weight. Use figures, for example 19.4.");
    check("19.O", point(), "“o” is not a unit of weight. Write it like 19.4 g, or type figures only.");
    check("1e3", point(), "“e” is not a unit of weight. Write it like 19.4 g, or type figures only.");
    check("inf", point(), "“inf” cannot be read as a weight. Use figures, for example 19.4.");
    check("NaN", point(), "“NaN” cannot be read as a weight. Use figures, for example 19.4.");
    check("1,23.5", point(), "“1,23.5” has more than one decimal mark. Leave out the thousands mark.");
    check("1.234.56", point(), "“1.234.56” has more than one decimal mark. Leave out the thousands mark.");
    check("1,234", point(), "Is “1,234” 1234, or a little over 1? Write 1234, or use “.” as the decimal mark.");
    check("1.234", comma(), "Is “1.234” 1234, or a little over 1? Write 1234, or use “,” as the decimal mark.");
    check("1 23", point(), "“1 23” has a space inside a number. Write it without.");
    check("-3", point(), "A weight cannot be below zero. Check the minus sign, or tare the scale again.");
    check("−3", point(), "A weight cannot be below zero. Check the minus sign, or tare the scale again.");
    check("101 kg", point(), "That weight is over the limit of 100 kg. Check the figure and the unit.");
    check(
        "2 oz 1 lb",
        point(),
        "“2 oz 1 lb” mixes units. Write the larger unit first, and name each, for example 1 lb 2 oz.",
    );
    check(
        "1 lb 2",
        point(),
        "“1 lb 2” mixes units. Write the larger unit first, and name each, for example 1 lb 2 oz.",
    );
    check("12 ml", point(), "“ml” is not a unit of weight. Write it like 19.4 g, or type figures only.");
}

#[test]
fn the_span_on_a_coarse_scale_names_no_reading_that_is_not_accepted() {
    // 19.5 g and 7% either way: 18.135 to 20.865 g.
    let (low, high) = (Grams::new(18.135), Grams::new(20.865));
    let said = |step: f64| span(&point(), low, high, Grams::new(step));
    assert_eq!(said(0.1), "18.1 to 20.9 g");
    assert_eq!(said(0.2), "18.1 to 20.9 g");
    assert_eq!(said(0.5), "18.15 to 20.85 g");
    assert_eq!(said(1.0), "18.2 to 20.8 g", "and not 18 to 21 g");
    assert_eq!(said(5.0), "18.5 to 20.5 g");
    assert_eq!(said(20.0), "18.2 to 20.8 g", "steps of 2 g leave no more than 20 to 20 g");
    let ounce = Grams::new(MassUnit::Ounce.grams());
    let american = Style { mass: MassUnit::Ounce, ..point() };
    // 0.6397 to 0.7360 oz.
    assert_eq!(span(&american, low, high, ounce / 10.0), "0.64 to 0.73 oz");
}

#[test]
fn words_name_source_pots_and_sureness() {
    let (.., aim) = mug(Sensitivity::Medium, 3);
    let said = target(&aim, &point(), Grams::new(0.1));
    assert_eq!(said.aim, "19.4 g");
    assert_eq!(said.span, "18.0 to 20.8 g");
    assert_eq!(said.source, "From your control pieces of this form.");
    assert_eq!(said.rests_on, "Based on 3 pots.");
    assert_eq!(said.sure, "The right amount is most likely between 18.3 and 20.6 g.");

    let (.., aim) = mug(Sensitivity::Medium, 1);
    let said = target(&aim, &point(), Grams::new(0.1));
    assert_eq!(
        (said.source.as_str(), said.rests_on.as_str()),
        ("From your control piece of this form.", "Based on 1 pot.")
    );

    let (.., aim) = mug(Sensitivity::Medium, 0);
    let said = target(&aim, &point(), Grams::new(1.0));
    assert_eq!(said.source, "From the usual start for a glaze: 5.5 g per 100 cm².");
    assert_eq!(said.rests_on, "Not based on any pots yet. Save one you like as your control piece.");
    assert!(said.sure.starts_with("First guess: the right amount may be anywhere between "), "{}", said.sure);
}

#[test]
fn a_laydown_is_said_with_its_area() {
    let american = Style { mass: MassUnit::Ounce, area: AreaUnit::SquareInch, ..point() };
    assert_eq!(point().laydown_with_unit(Laydown::new(5.5)), "5.5 g per 100 cm²");
    assert_eq!(american.laydown_with_unit(Laydown::new(5.5)), "1.25 oz per 100 in²");
}

#[test]
fn doubts_name_what_is_odd() {
    let of_scale = |capacity: f64, step: f64| {
        scale_doubt(&Scale::new(Grams::new(capacity), Grams::new(step), None, None).unwrap(), &point())
    };
    assert_eq!(of_scale(2_000.0, 0.1), None);
    assert_eq!(
        of_scale(5_000.0, 0.01).unwrap(),
        "Only a laboratory balance weighs 5000.00 g in steps of 0.01 g. Check the plate again."
    );
    assert_eq!(
        of_scale(500.0, 10.0).unwrap(),
        "A scale for 500 g with steps of 10 g has very few steps. Check the plate again."
    );
    let of_glaze = |value: f64| thin_glaze(SpecificGravity::new(value).unwrap(), &point());
    assert_eq!(of_glaze(1.15), None);
    assert_eq!(
        of_glaze(1.149).unwrap(),
        "SG 1.149 is very thin for a glaze. Stir the bucket to the bottom and check it again."
    );
    let share = tile::share_if_thin(Laydown::new(3.3), Laydown::new(5.5)).unwrap();
    assert_eq!(
        thin_tile(share, &point()),
        "This tile carries only 60% of what the pots will, so targets leave it out. Glaze a thicker one."
    );
}

#[test]
fn a_second_coat_needs_its_own_tare() {
    assert!(when_to_read(0).contains("as soon as the drip stops"));
    assert!(when_to_read(1).contains("tare") && when_to_read(2).contains("tare"));
}

#[test]
fn a_point_of_a_profile_is_named() {
    let level = ProfileError::SameHeight { point: 3 }.sentence();
    assert!(level.starts_with("Points 2 and 3 are at the same height."));
}

#[test]
fn absurd_specific_gravity_says_what_to_do() {
    let said = |text: &str| parse::specific_gravity(text, &point()).unwrap_err().sentence();
    assert_eq!(
        said("1"),
        "SG 1.00 is no heavier than water, and a glaze always is. Stir the bucket to the bottom and weigh again."
    );
    assert_eq!(
        said("1450"),
        "SG 1450.00 is heavier than any glaze that pours. Check the figure: 1450 g to the litre is 1.45."
    );
}

#[test]
fn an_unknown_code_is_said_with_what_it_should_have_named() {
    let said = "lid".parse::<ZoneKind>().unwrap_err().sentence();
    assert_eq!(said, "“lid” is not a zone this version of laydown knows. Update laydown, then open the studio again.");
}
