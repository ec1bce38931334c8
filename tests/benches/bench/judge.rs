//! The pure calculation: a verdict, its words, a target. The peer does the bare sums of a verdict and nothing else: no
//! refusals, no correction in whole steps, no control piece; that of the words formats as many plain sentences.

use std::hint::black_box;
use std::time::Duration;

use laydown_app::in_words;
use laydown_domain::coat::Solids;
use laydown_domain::coat::scale::Scale;
use laydown_domain::coat::target::{Control, Evidence, Job, STARTING_LAYDOWN, Sensitivity, target};
use laydown_domain::coat::verdict::{Reading, judge};
use laydown_domain::form::{Form, ShapeClass, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{Grams, Millilitres, PowderDensity, SpecificGravity, Style};

use crate::{Goal, row, timed};

const ROUNDS: usize = 300;
/// Calls timed together, since one is shorter than a clock can tell.
const CALLS: u32 = 1_000;
const GOAL: Duration = Duration::from_micros(50);

pub fn rows() {
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

    let bare = || {
        let [from, to, low, high] = black_box([310.2, 326.5, aim.low.value(), aim.high.value()]);
        let half_width = (1.0 - 0.05f64.sqrt()) * black_box(0.1);
        let net = to - from;
        let laydown = net * solids.fraction.value() / zone.area.value();
        black_box((net - half_width >= low && net + half_width <= high, net + half_width < low, laydown));
    };
    let verdict = || judge(black_box(&reading), &aim, &scale, &job, Some(&control)).unwrap();
    beside("judge a reading", || _ = black_box(verdict()), bare, Goal::Within(GOAL));
    let bare_words = || {
        for figure in black_box([15.2, 16.3, 19.4, 3.1, 1.8, 8.6, 5.1]) {
            black_box(format!("This coat carries {figure:.1} g, and that is so much."));
        }
    };
    beside(
        "judge a reading and say it",
        || _ = black_box(in_words::verdict(&verdict(), &style)),
        bare_words,
        Goal::Within(GOAL),
    );
    let aim_again = || _ = black_box(target(black_box(&job), &evidence).unwrap());
    beside("target from 24 control pieces", aim_again, bare, Goal::None);
}

fn beside(what: &str, mut ours: impl FnMut(), mut bare: impl FnMut(), goal: Goal) {
    let mut times = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        times.0.push(timed(|| (0..CALLS).for_each(|_| ours())) / CALLS);
        times.1.push(timed(|| (0..CALLS).for_each(|_| bare())) / CALLS);
    }
    row(what, times.0, times.1, goal);
}
