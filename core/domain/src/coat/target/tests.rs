use super::*;
use crate::form::{Form, ZoneKind};
use crate::glaze::slurry::SgReading;
use crate::units::{PowderDensity, SpecificGravity};
use approx::assert_relative_eq;
use proptest::prelude::*;

fn solids(sg: f64) -> Solids {
    Solids::of(SgReading::checked(SpecificGravity::new(sg).unwrap()), PowderDensity::default()).unwrap()
}

fn job(form: &Form, sg: f64) -> Job {
    Job {
        form_name: "Today's form".to_owned(),
        zone: *form.zone(ZoneKind::Inside).unwrap(),
        capacity: form.capacity,
        class: form.class,
        solids: solids(sg),
        sensitivity: Sensitivity::Medium,
    }
}

fn control(form: &Form, wet: f64, sg: f64) -> Control {
    let zone = form.zone(ZoneKind::Inside).unwrap();
    Control {
        wet: Grams::new(wet),
        solids: solids(sg),
        area: zone.area,
        area_relative_uncertainty: zone.relative_uncertainty,
        class: form.class,
        capacity: form.capacity,
        form_name: "Known form".to_owned(),
        same_form: false,
        net_standard_uncertainty: Grams::new(0.041),
    }
}

fn mug(ml: f64) -> Form {
    Form::by_capacity(ShapeClass::CylinderMug, Millilitres::new(ml)).unwrap()
}

fn controls(controls: Vec<Control>) -> Evidence {
    Evidence { controls, tiles: Vec::new(), starting: STARTING_LAYDOWN }
}

#[test]
fn a_larger_mug_from_a_smaller_one() {
    // common practice, no source: 250 ml takes a little under 20 g wet inside, 450 ml about 30 g.
    let known = control(&mug(250.0), 19.8, 1.45);
    let target = target(&job(&mug(450.0), 1.45), &controls(vec![known])).unwrap();
    assert!((target.wet.value() - 30.0).abs() <= 1.0, "{:?}", target.wet);
    assert_eq!(target.source, Source::ControlOtherSizeByCapacity { form_name: "Known form".to_owned() });
    assert_eq!(target.pots, 1);
}

#[test]
fn a_usual_start_is_near_twenty_grams_in_a_small_mug() {
    // common practice, no source
    let target = target(&job(&mug(250.0), 1.45), &controls(Vec::new())).unwrap();
    assert_relative_eq!(target.laydown.value(), 5.5, max_relative = 1e-9);
    assert!((18.0..=22.0).contains(&target.wet.value()), "{:?}", target.wet);
    assert_eq!((target.source.clone(), target.pots), (Source::Starting, 0));
    assert!(target.interval.0 < target.wet * 0.6 && target.interval.1 > target.wet * 1.7);
}

#[test]
fn the_same_form_goes_before_any_other_evidence() {
    let form = mug(250.0);
    let same = Control { same_form: true, ..control(&form, 19.4, 1.45) };
    let evidence = Evidence {
        controls: vec![control(&mug(450.0), 40.0, 1.45), same.clone()],
        tiles: vec![TileEvidence { laydown: Laydown::new(9.0), relative_uncertainty: 0.03 }],
        starting: STARTING_LAYDOWN,
    };
    let found = target(&job(&form, 1.45), &evidence).unwrap();
    assert_eq!(found.source, Source::ControlSameForm);
    assert_relative_eq!(found.wet.value(), 19.4, max_relative = 1e-12);
    assert_relative_eq!(found.low.value(), 19.4 * 0.93, max_relative = 1e-12);
    assert_relative_eq!(found.high.value(), 19.4 * 1.07, max_relative = 1e-12);

    let without_controls = Evidence { controls: Vec::new(), ..evidence };
    let found = target(&job(&form, 1.45), &without_controls).unwrap();
    assert_eq!((found.source, found.pots), (Source::Tile, 0));
    assert_relative_eq!(found.laydown.value(), 9.0, max_relative = 1e-12);
}

#[test]
fn a_thinner_bucket_needs_more_grams_for_the_same_dry_glaze() {
    let form = mug(250.0);
    let known = Control { same_form: true, ..control(&form, 19.4, 1.50) };
    let found = target(&job(&form, 1.40), &controls(vec![known.clone()])).unwrap();
    assert_relative_eq!(found.dry.value(), known.solids.dry(known.wet).value(), max_relative = 1e-12);
    assert!(found.wet > known.wet);
}

#[test]
fn measured_areas_are_surer_than_capacities() {
    let measured = |class, area: f64| Form::by_area(class, Some(SquareCentimetres::new(area)), None).unwrap();
    let known = control(&measured(ShapeClass::Jar, 300.0), 30.0, 1.45);
    let found = target(&job(&measured(ShapeClass::Jar, 200.0), 1.45), &controls(vec![known.clone()])).unwrap();
    assert_eq!(found.source, Source::ControlOtherSizeByArea { form_name: "Known form".to_owned() });
    assert_relative_eq!(found.wet.value(), 20.0, max_relative = 1e-12);
    let other_class = job(&measured(ShapeClass::Plate, 200.0), 1.45);
    assert!(carry_over(&known, &other_class).relative_uncertainty > 0.08);
}

#[test]
fn more_pots_make_a_surer_aim() {
    let form = mug(250.0);
    let width = |weights: &[f64]| {
        let known = weights.iter().map(|wet| Control { same_form: true, ..control(&form, *wet, 1.45) }).collect();
        let found = target(&job(&form, 1.45), &controls(known)).unwrap();
        (found.interval.1 / found.interval.0).ln()
    };
    assert!(width(&[19.4, 19.6, 19.2, 19.5]) < width(&[19.4, 19.6]));
    assert!(width(&[19.4, 19.6]) < width(&[19.4]));
    assert!(width(&[16.0, 23.0, 19.0]) > width(&[19.0, 19.4, 19.8]));
}

#[test]
fn an_unchecked_bucket_makes_a_wider_aim() {
    let form = mug(250.0);
    let known = Control { same_form: true, ..control(&form, 19.4, 1.45) };
    let checked = job(&form, 1.45);
    let unchecked =
        Job { solids: Solids::of(SgReading::unchecked(), PowderDensity::default()).unwrap(), ..checked.clone() };
    let width = |job: &Job| {
        let found = target(job, &controls(vec![known.clone()])).unwrap();
        found.interval.1 / found.interval.0
    };
    assert!(width(&unchecked) > width(&checked));
}

#[test]
fn evidence_that_cannot_be_is_refused() {
    let form = mug(250.0);
    let no_weight = Control { wet: Grams::ZERO, ..control(&form, 19.4, 1.45) };
    assert!(matches!(target(&job(&form, 1.45), &controls(vec![no_weight])), Err(TargetError::UnusableControl { .. })));
    let mut no_area = job(&form, 1.45);
    no_area.zone.area = SquareCentimetres::ZERO;
    assert!(matches!(target(&no_area, &controls(Vec::new())), Err(TargetError::NoArea { .. })));
    let nothing = Evidence { controls: Vec::new(), tiles: Vec::new(), starting: Laydown::ZERO };
    assert_eq!(target(&job(&form, 1.45), &nothing), Err(TargetError::NothingToGoBy));
    let bad_tile = TileEvidence { laydown: Laydown::new(f64::NAN), relative_uncertainty: 0.1 };
    let evidence = Evidence { tiles: vec![bad_tile], ..nothing };
    assert_eq!(target(&job(&form, 1.45), &evidence), Err(TargetError::UnusableTile));
}

proptest! {
    #[test]
    fn the_aim_grows_with_the_control_and_stays_in_its_interval(
        wet in 1.0..200.0f64, more in 1.01..2.0f64, ml in 50.0..2_000.0f64, sg in 1.2..1.8f64,
    ) {
        let job = job(&mug(ml), sg);
        let aim = |wet: f64| target(&job, &controls(vec![control(&mug(300.0), wet, 1.45)])).unwrap();
        let (lighter, heavier) = (aim(wet), aim(wet * more));
        prop_assert!(lighter.wet < heavier.wet);
        prop_assert!(lighter.interval.0 < lighter.wet && lighter.wet < lighter.interval.1);
        prop_assert!(lighter.low < lighter.wet && lighter.wet < lighter.high);
    }
}

#[test]
fn the_outside_grows_less_than_the_inside_and_is_less_sure() {
    let of = |kind: ZoneKind| {
        let (small, large) = (mug(250.0), mug(1_000.0));
        let zone = |form: &Form| *form.zone(kind).unwrap();
        let control = Control {
            area: zone(&small).area,
            area_relative_uncertainty: zone(&small).relative_uncertainty,
            ..control(&small, 20.0, 1.45)
        };
        carry_over(&control, &Job { zone: zone(&large), ..job(&large, 1.45) })
    };
    let (inside, outside) = (of(ZoneKind::Inside), of(ZoneKind::Outside));
    assert!(inside.by_capacity && outside.by_capacity);
    assert_relative_eq!(inside.area_ratio, 4f64.powf(2.0 / 3.0), max_relative = 1e-12);
    assert_relative_eq!(outside.area_ratio, 4f64.powf(0.62), max_relative = 1e-12);
    assert!(outside.relative_uncertainty > inside.relative_uncertainty);
}

#[test]
fn one_dip_takes_what_both_sides_take() {
    let form = mug(350.0);
    let zone = |kind| *form.zone(kind).unwrap();
    let of = |kind, wet: f64| {
        let job = Job { zone: zone(kind), ..job(&form, 1.45) };
        let control = Control { area: zone(kind).area, same_form: true, ..control(&form, wet, 1.45) };
        target(&job, &controls(vec![control])).unwrap()
    };
    let (inside, outside) = (of(ZoneKind::Inside, 36.8), of(ZoneKind::Outside, 33.5));
    let dip = Job { zone: zone(ZoneKind::Whole), ..job(&form, 1.45) };
    let sides = [(&inside, zone(ZoneKind::Inside).area), (&outside, zone(ZoneKind::Outside).area)];
    let both = of_both_sides(&dip, sides);
    assert_relative_eq!(both.wet.value(), 70.3, max_relative = 1e-9);
    assert_eq!((both.source.clone(), both.pots), (Source::Sides, 2));
    assert!(both.interval.0 < both.wet && both.wet < both.interval.1);

    // And back: what one dip is known to take goes to its sides by their areas.
    let known = Control { area: dip.zone.area, ..control(&form, 70.3, 1.45) }.of_one_side();
    let side = |kind| target(&Job { zone: zone(kind), ..job(&form, 1.45) }, &controls(vec![known.clone()])).unwrap();
    let (inside, outside) = (side(ZoneKind::Inside), side(ZoneKind::Outside));
    assert_relative_eq!((inside.wet + outside.wet).value(), 70.3, max_relative = 1e-9);
    assert_relative_eq!(inside.laydown.value(), outside.laydown.value(), max_relative = 1e-9);
    assert!(matches!(inside.source, Source::ControlOtherSizeByArea { .. }));
}
