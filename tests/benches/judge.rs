//! How long a verdict and a target take. The goal for a verdict is under 50 microseconds.

#![allow(missing_docs, reason = "criterion's macros make undocumented functions")]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use laydown::coat::Solids;
use laydown::coat::scale::Scale;
use laydown::coat::target::{Control, Evidence, Job, STARTING_LAYDOWN, Sensitivity, target};
use laydown::coat::verdict::{Reading, judge};
use laydown::form::{Form, ShapeClass, ZoneKind};
use laydown::glaze::slurry::SgReading;
use laydown::units::{Grams, Millilitres, PowderDensity, SpecificGravity, Style};

fn verdict(criterion: &mut Criterion) {
    let form = Form::by_capacity(ShapeClass::CylinderMug, Millilitres::new(250.0)).unwrap();
    let zone = *form.zone(ZoneKind::Inside).unwrap();
    let solids = Solids::of(SgReading::checked(SpecificGravity::USUAL), PowderDensity::default()).unwrap();
    let job = Job {
        form_name: "Small mug".to_owned(),
        zone,
        capacity: form.capacity,
        class: form.class,
        solids,
        sensitivity: Sensitivity::Medium,
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
    let evidence = Evidence { controls: vec![control.clone(); 24], tiles: Vec::new(), starting: STARTING_LAYDOWN };
    let scale = Scale::new(Grams::new(2_000.0), Grams::new(0.1), None, None).unwrap();
    let aim = target(&job, &evidence).unwrap();
    let reading = Reading::TwoWeights { bare: Grams::new(310.2), glazed: Grams::new(326.5) };
    let style = Style::default();

    criterion.bench_function("judge", |bencher| {
        bencher.iter(|| judge(black_box(&reading), &aim, &scale, &job, Some(&control)).unwrap());
    });
    criterion.bench_function("judge, with its words", |bencher| {
        bencher.iter(|| judge(black_box(&reading), &aim, &scale, &job, Some(&control)).unwrap().in_words(&style));
    });
    criterion.bench_function("target from 24 control pieces", |bencher| {
        bencher.iter(|| target(black_box(&job), &evidence).unwrap());
    });
}

criterion_group!(benches, verdict);
criterion_main!(benches);
