//! Every public calculation of the pure modules over a grid of extremes. None may hang or panic, and what a call answers with
//! is finite or an error.

use std::fmt::Debug;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::mpsc::{RecvTimeoutError, Sender, channel};
use std::thread;
use std::time::Duration;

use laydown_app::in_words;
use laydown_domain::bisque::{self, SoakedPiece, UsualBare};
use laydown_domain::coat::dry::{DryGlaze, WetCoat, disagreement};
use laydown_domain::coat::scale::{AccuracyClass, Scale};
use laydown_domain::coat::slip::slip;
use laydown_domain::coat::target::{
    Control, Evidence, Job, Sensitivity, Target, TileEvidence, carry_over, of_both_sides, target,
};
use laydown_domain::coat::trust::Trust;
use laydown_domain::coat::verdict::{Reading, judge};
use laydown_domain::coat::{Solids, tile};
use laydown_domain::form::profile::Point;
use laydown_domain::form::silhouette::{Axis, KnownSize, Sureness, Trace};
use laydown_domain::form::{
    FootRing, Form, GlazeLines, Known, Measured, Profile, ProfilePoint, ShapeClass, Shrinkage, Stage, Zone, ZoneKind,
    revolve, tube, weight_check,
};
use laydown_domain::glaze::bucket::{self, Change, Contents};
use laydown_domain::glaze::flow_cup::{FlowCup, flow_change};
use laydown_domain::glaze::recipe::{self, Batch, Material, Recipe};
use laydown_domain::glaze::slurry::{self, SgReading, SolidsFraction};
use laydown_domain::glaze::{material, sg_age};
use laydown_domain::kiln::cone::{Cone, ConeKind, Witness};
use laydown_domain::kiln::fault::{Fault, Thickness};
use laydown_domain::kiln::{cone, piece_code};
use laydown_domain::learning::dip_time::{Dip, DipLaw};
use laydown_domain::learning::observation::{FiredObservation, groups};
use laydown_domain::learning::pooled::{
    Assumptions, ControlPot, Fitted, GlazeEvidence, JudgedPot, Place, PooledJob, RestsOn, RightTile, chance_right,
    judge as judge_by_chance, proportions, target_for,
};
use laydown_domain::learning::repeatability::{KnownWeightCheck, Repeatability};
use laydown_domain::learning::size::Sizes;
use laydown_domain::learning::spread::Spread;
use laydown_domain::learning::window::{Fit, Window, estimate};
use laydown_domain::learning::{consumption, control_chart, cusum, fault, hand, set};
use laydown_domain::units::{
    AreaUnit, Celsius, DecimalMark, Grams, Laydown, LengthUnit, MassUnit, Millilitres, Millimetres, PowderDensity,
    Seconds, SpecificGravity, SquareCentimetres, Style, VolumeUnit, parse,
};
use uuid::Uuid;

/// Ten times what any call needs on a loaded machine; one that hangs never answers.
const LIMIT: Duration = Duration::from_secs(10);

/// Numbers that are hard on a formula: nothing, next to nothing, usual, huge, below nothing, and none at all.
const HARD: [f64; 11] = [0.0, -0.0, 5e-324, 1e-9, 0.5, 1e9, f64::MAX, -1.0, f64::INFINITY, f64::NEG_INFINITY, f64::NAN];

/// Fewer of them, for calls that take many.
const FEW: [f64; 6] = [0.0, 1e-9, 1.0, 1e9, -1.0, f64::NAN];

const SPECIFIC_GRAVITIES: [f64; 13] =
    [0.99, 1.0, 1.000_004, 1.000_01, 1.001, 1.019_996, 1.02, 1.15, 1.45, 2.0, 2.199_99, 2.199_996, 2.2];

const DENSITIES: [f64; 6] = [1.499_6, 1.5, 1.6, 2.6, 7.0, 7.000_4];

/// Runs calls one after the other on a thread of its own, and gives up on one that does not come back.
struct Watchdog {
    answers: Sender<(String, String)>,
}

impl Watchdog {
    fn walk(calls: impl FnOnce(&Watchdog) + Send + 'static) {
        let (answers, heard) = channel();
        let walker = thread::spawn(move || calls(&Watchdog { answers }));
        let mut last = "the first call".to_owned();
        let mut made = 0;
        let mut wrong = Vec::new();
        loop {
            match heard.recv_timeout(LIMIT) {
                Ok((call, trouble)) => {
                    made += 1;
                    if !trouble.is_empty() && wrong.len() < 20 {
                        wrong.push(format!("{call}: {trouble}"));
                    }
                    last = call;
                }
                Err(RecvTimeoutError::Timeout) => panic!("hangs after {last}; before it: {wrong:#?}"),
                Err(RecvTimeoutError::Disconnected) => break,
            }
        }
        walker.join().expect("the walk comes to its end");
        assert!(made > 50, "only {made} calls");
        assert!(wrong.is_empty(), "{wrong:#?}");
    }

    /// A call that may refuse: what it answers with is finite.
    fn fallible<T: Debug, E>(&self, name: impl Debug, call: impl FnOnce() -> Result<T, E>) -> Option<T> {
        let mut given = None;
        self.watch(&name, true, || {
            given = call().ok();
            format!("{given:?}")
        });
        given
    }

    /// The same for a call that answers with nothing where it cannot.
    fn optional<T: Debug>(&self, name: impl Debug, call: impl FnOnce() -> Option<T>) -> Option<T> {
        self.fallible(name, || call().ok_or(()))
    }

    /// A call that cannot refuse: finite when all it is given is.
    fn total<T: Debug>(&self, name: impl Debug, given: &[f64], call: impl FnOnce() -> T) {
        let is_usual = |value: &f64| (1e-6..1e7).contains(value);
        self.watch(&name, given.iter().all(is_usual), || format!("{:?}", call()));
    }

    fn watch(&self, name: &impl Debug, is_finite: bool, call: impl FnOnce() -> String) {
        let trouble = match catch_unwind(AssertUnwindSafe(call)) {
            Err(_) => "panics".to_owned(),
            Ok(answer) if is_finite && (answer.contains("NaN") || answer.contains("inf")) => {
                let at = answer.find("NaN").or_else(|| answer.find("inf")).unwrap_or_default();
                let around = answer.chars().skip(at.saturating_sub(120)).take(240);
                format!("answers …{}…", around.collect::<String>())
            }
            Ok(_) => String::new(),
        };
        self.answers.send((format!("{name:?}"), trouble)).expect("the watchdog listens");
    }
}

fn styles() -> Vec<Style> {
    let american = Style {
        mass: MassUnit::Ounce,
        volume: VolumeUnit::UsFluidOunce,
        area: AreaUnit::SquareInch,
        length: LengthUnit::Inch,
        decimal: DecimalMark::Comma,
    };
    vec![Style::default(), american]
}

fn specific_gravities() -> Vec<SpecificGravity> {
    SPECIFIC_GRAVITIES.into_iter().chain(HARD).filter_map(|value| SpecificGravity::new(value).ok()).collect()
}

fn densities() -> Vec<PowderDensity> {
    DENSITIES.into_iter().chain(HARD).filter_map(|value| PowderDensity::new(value).ok()).collect()
}

#[test]
fn units_and_their_notation() {
    Watchdog::walk(|dog| {
        for a in HARD {
            for b in HARD {
                dog.total(("laydown", a, b), &[a, b], || Laydown::of(Grams::new(a), SquareCentimetres::new(b)));
                dog.total(("dry on", a, b), &[a, b], || Laydown::new(a).dry_on(SquareCentimetres::new(b)));
                for style in styles() {
                    dog.total(("mass", a, b), &[a, b], || style.mass(Grams::new(a), Grams::new(b)));
                }
            }
            dog.total(("stored", a), &[a], || {
                let grams = Grams::from_milligrams(Grams::new(a).milligrams());
                (grams, Seconds::new(a).milliseconds(), Celsius::new(a).millidegrees(), grams.is_positive())
            });
            for style in styles() {
                dog.total(("written", a), &[a], || {
                    (
                        style.number(a, 3),
                        style.volume(Millilitres::new(a)),
                        style.area(SquareCentimetres::new(a)),
                        style.length(Millimetres::new(a)),
                        style.laydown_number(Laydown::new(a)),
                    )
                });
            }
        }
        for value in SPECIFIC_GRAVITIES.into_iter().chain(HARD) {
            dog.fallible(("sg", value), || SpecificGravity::new(value));
        }
        for value in DENSITIES.into_iter().chain(HARD) {
            dog.fallible(("powder density", value), || PowderDensity::new(value));
        }
        for stored in [0, 1, -1, 100_000, 100_001, 102_000, 219_999, 220_000, i64::MAX, i64::MIN] {
            dog.fallible(("stored sg", stored), || SpecificGravity::from_hundred_thousandths(stored));
            dog.fallible(("stored density", stored), || PowderDensity::from_thousandths(stored));
        }
    });
    Watchdog::walk(|dog| {
        let long = "9".repeat(400);
        let texts = [
            "",
            "0",
            "-0",
            "0.0004",
            "0,0004",
            "1e308",
            "1e-308",
            "NaN",
            "inf",
            "-1",
            "1/0",
            "0/0",
            "4294967295",
            "1 1/3",
            "½",
            "99999999999999999999999999999999999999",
            "0.00000000000000000000000000000000000001",
            "1.001",
            "1.45",
            "1.000004",
            "2.199996",
            "1450 g/l",
            "1 g/0 ml",
            "0 g/l",
            "145 Bé",
            "144.999999 Bé",
            "0 Bé",
            "0 Tw",
            "240 Tw",
            "1:00",
            "4294967295:59",
            "-50",
            "1500",
            "-459 F",
            "1 lb 2 oz",
            "\u{feff}1",
            "\u{202e}1",
            &long,
        ];
        for style in styles() {
            for text in texts {
                dog.fallible(("mass", text), || parse::mass(text, &style));
                dog.fallible(("volume", text), || parse::volume(text, &style));
                dog.fallible(("area", text), || parse::area(text, &style));
                dog.fallible(("length", text), || parse::length(text, &style));
                dog.fallible(("number", text), || parse::number(text, &style));
                dog.fallible(("seconds", text), || parse::seconds(text, &style));
                dog.fallible(("temperature", text), || parse::temperature(text, &style));
                dog.fallible(("specific gravity", text), || parse::specific_gravity(text, &style));
            }
        }
    });
}

#[test]
fn the_glaze_in_the_bucket() {
    Watchdog::walk(|dog| {
        for a in HARD {
            dog.fallible(("solids", a), || SolidsFraction::new(a));
            dog.fallible(("water", a), || slurry::water_density(Celsius::new(a)));
            dog.fallible(("twaddell", a), || slurry::sg_from_twaddell(a));
            for b in HARD {
                dog.fallible(("baume", a, b), || slurry::sg_from_baume(a, b));
                for density in densities() {
                    dog.fallible(("mix", a, b, density), || {
                        slurry::specific_gravity_of_mix(Grams::new(a), Grams::new(b), density)
                    });
                }
                for c in HARD {
                    dog.fallible(("by volume", a, b, c), || {
                        slurry::sg_by_volume(Grams::new(a), Grams::new(b), Millilitres::new(c))
                    });
                    for d in FEW {
                        dog.fallible(("by vessel", a, b, c, d), || {
                            slurry::sg_by_vessel(Grams::new(a), Grams::new(b), Celsius::new(d), Grams::new(c))
                        });
                        dog.fallible(("checked by volume", a, b, c, d), || {
                            SgReading::by_volume(Grams::new(a), Grams::new(b), Millilitres::new(c), Grams::new(d))
                        });
                    }
                }
            }
        }
        for a in FEW {
            for (b, c) in FEW.into_iter().flat_map(|b| FEW.into_iter().map(move |c| (b, c))) {
                for d in HARD {
                    dog.fallible(("checked by vessel", a, b, c, d), || {
                        let room = Celsius::new(20.0);
                        SgReading::by_vessel(Grams::new(a), Grams::new(b), room, Grams::new(c), Grams::new(d))
                    });
                }
            }
        }
        for density in densities() {
            for sg in specific_gravities() {
                dog.fallible(("fraction", sg, density), || slurry::solids_fraction(sg, density));
                dog.total(("dry", sg, density), &[1.0], || slurry::dry_per_litre(sg, density));
                for to in specific_gravities() {
                    for volume in HARD {
                        dog.fallible(("thin", volume, sg, to, density), || {
                            slurry::thin(Millilitres::new(volume), sg, to, density)
                        });
                    }
                }
            }
        }
    });
}

fn solids() -> Vec<Solids> {
    let mut all = Vec::new();
    for sg in specific_gravities() {
        for density in densities() {
            for standard_uncertainty in [0.0, 0.005, 0.04, 1e9, f64::NAN] {
                all.extend(Solids::of(SgReading { sg, standard_uncertainty }, density).ok());
            }
        }
    }
    all
}

fn scales() -> Vec<Scale> {
    let mut all = Vec::new();
    for capacity in HARD.into_iter().chain([0.015, 1.0, 2_000.0]) {
        for step in [0.0, 0.000_4, 0.001, 0.001_5, 0.1, 1.0, 2.835, 1e9, f64::NAN] {
            for rest in [None, Some(0.0), Some(0.000_4), Some(0.999_6), Some(1e300), Some(f64::NAN)] {
                let (capacity, step, rest) = (Grams::new(capacity), Grams::new(step), rest.map(Grams::new));
                all.extend(
                    [(rest, None), (None, rest)]
                        .into_iter()
                        .filter_map(|(minimum, repeatability)| Scale::new(capacity, step, minimum, repeatability).ok()),
                );
            }
        }
    }
    all
}

fn job(solids: Solids, area: f64, relative_uncertainty: f64, capacity: Option<f64>) -> Job {
    Job {
        form_name: "Mug".to_owned(),
        zone: Zone { kind: ZoneKind::Inside, area: SquareCentimetres::new(area), relative_uncertainty },
        capacity: capacity.map(Millilitres::new),
        class: ShapeClass::CylinderMug,
        solids,
        sensitivity: Sensitivity::Medium,
    }
}

fn control(solids: Solids, wet: f64, area: f64, same_form: bool) -> Control {
    Control {
        wet: Grams::new(wet),
        solids,
        area: SquareCentimetres::new(area),
        area_relative_uncertainty: 0.08,
        class: ShapeClass::CylinderMug,
        capacity: Some(Millilitres::new(area)),
        form_name: "Bowl".to_owned(),
        same_form,
        net_standard_uncertainty: Grams::new(0.04),
    }
}

#[test]
fn the_scale() {
    Watchdog::walk(|dog| {
        for class in AccuracyClass::ALL {
            for a in HARD {
                dog.optional(("limits", class, a), || class.limits(Grams::new(a)));
                dog.optional(("permitted", class, a), || class.permitted_error(a));
            }
        }
        for scale in scales() {
            dog.optional(("scale", scale), || {
                let doubt = scale.doubt_about_label();
                Some((scale.net_half_width(), scale.net_standard_uncertainty(), scale.classes(), doubt))
            });
            for a in FEW {
                for b in FEW {
                    dog.optional(("advice", scale, a, b), || {
                        Some((
                            scale.advice(Some(Grams::new(a)), Grams::new(b), (Grams::new(a), Grams::new(b))),
                            scale.what_decides((Grams::new(a), Grams::new(b))),
                        ))
                    });
                }
            }
        }
    });
}

#[test]
fn the_target_and_the_verdict() {
    Watchdog::walk(|dog| {
        let style = Style::default();
        let usual = Solids::of(SgReading::unchecked(), PowderDensity::default()).unwrap();
        let scale = Scale::new(Grams::new(2_000.0), Grams::new(0.1), None, None).unwrap();
        let mut targets: Vec<(Job, Target)> = Vec::new();
        let mut aim = |job: Job, evidence: Evidence| {
            let name = ("target", job.solids, job.zone.area, evidence.clone());
            if let Some(found) = dog.fallible(name, || target(&job, &evidence)) {
                targets.push((job, found));
            }
        };
        let evidence = |controls: Vec<Control>, starting: f64| Evidence {
            controls,
            tiles: Vec::new(),
            starting: Laydown::new(starting),
        };
        for solids in solids() {
            for same_form in [true, false] {
                let known = vec![control(solids, 19.4, 187.0, same_form)];
                aim(job(usual, 187.0, 0.02, Some(250.0)), evidence(known.clone(), 5.5));
                aim(job(solids, 187.0, 0.02, None), evidence(known, 5.5));
            }
            aim(job(solids, 187.0, 0.02, None), evidence(Vec::new(), 5.5));
        }
        for a in HARD {
            aim(job(usual, a, 0.02, Some(a)), evidence(Vec::new(), 5.5));
            aim(job(usual, 187.0, a, None), evidence(vec![control(usual, 19.4, 187.0, false)], 5.5));
            aim(job(usual, 187.0, 0.02, None), evidence(Vec::new(), a));
            for b in HARD {
                for same_form in [true, false] {
                    aim(job(usual, 187.0, 0.02, Some(250.0)), evidence(vec![control(usual, a, b, same_form)], 5.5));
                }
                let tiles = vec![TileEvidence { laydown: Laydown::new(a), relative_uncertainty: b }];
                aim(
                    job(usual, 187.0, 0.02, None),
                    Evidence { controls: Vec::new(), tiles, starting: Laydown::new(5.5) },
                );
            }
        }
        for (job, target) in &targets {
            let known = control(usual, 19.4, 187.0, false);
            dog.optional(("carry over", job.zone.area, job.capacity), || Some(carry_over(&known, job)));
            let side = (target, job.zone.area);
            dog.optional(("both sides", target), || Some(of_both_sides(job, [side, side])));
            dog.optional(("target in words", target), || Some(in_words::target(target, &style, scale.step)));
            for a in HARD {
                let readings = [
                    Reading::Net(Grams::new(a)),
                    Reading::TwoWeights { bare: Grams::new(300.0), glazed: Grams::new(a) },
                ];
                for reading in readings {
                    let trust = Trust::of(target, job, false, 0);
                    dog.fallible(("judge", reading, target), || {
                        judge(&reading, target, &scale, job, Some(&known))
                            .map(|verdict| in_words::verdict(&verdict.on_a_guess(target, &trust), &style))
                    });
                    dog.optional(("slip", reading, target), || {
                        let (span, bare) = (trust.span(target), Some(Grams::new(300.0)));
                        slip(&reading, target, span, &scale, &job.solids, bare)
                    });
                }
            }
        }
        for scale in scales() {
            let Some((job, target)) = targets.first() else { panic!("no target at all") };
            for net in [0.001, 0.1, 19.4, 1e9] {
                let reading = Reading::Net(Grams::new(net));
                dog.fallible(("judge on", scale, net), || {
                    judge(&reading, target, &scale, job, None).map(|verdict| in_words::verdict(&verdict, &style))
                });
            }
        }
    });
}

#[test]
fn test_tiles() {
    Watchdog::walk(|dog| {
        for a in HARD {
            for b in HARD {
                dog.fallible(("dry tile", a, b), || tile::tile_from_dry(SquareCentimetres::new(a), Grams::new(b)));
                dog.total(("thin tile", a, b), &[a, b], || tile::share_if_thin(Laydown::new(a), Laydown::new(b)));
                for solids in solids().into_iter().step_by(7).filter(|solids| solids.relative_uncertainty.is_finite()) {
                    dog.fallible(("wet tile", a, b, solids), || {
                        tile::tile(SquareCentimetres::new(a), Grams::new(b), &solids)
                    });
                    dog.total(("as thick as", a, b), &[a, b], || {
                        tile::as_thick_as(Laydown::new(a), &job(solids, b, 0.02, None))
                    });
                }
            }
        }
    });
}

#[test]
fn dry_pieces_scale_tests_soaked_bisque_and_dips() {
    Watchdog::walk(|dog| {
        let scale = Scale::new(Grams::new(2_000.0), Grams::new(0.1), None, None).unwrap();
        for a in HARD {
            for b in HARD {
                let (one, other) = (Grams::new(a), Grams::new(b));
                let weighed = dog.fallible(("dry piece", a, b), || DryGlaze::of_piece(one, other, &scale));
                dog.total(("known weight", a, b), &[a, b], || {
                    KnownWeightCheck::of(one, other, &scale, Some(AccuracyClass::Medium))
                });
                dog.total(("trend", a, b), &[a, b], || bisque::trend(a, &[b, a, b]));
                dog.optional(("usual bare", a, b), || UsualBare::of(&[one, other, one, other, one]));
                dog.total(("wet bisque", a, b), &[a, b], || UsualBare::said(one).water_in(other, Some(0.08)));
                dog.fallible(("repeatability", a, b), || Repeatability::of(&[one, other, one, other, one], &scale));
                for c in HARD {
                    let piece = SoakedPiece { dry: one, soaked: other, suspended: Some(Grams::new(c)) };
                    dog.fallible(("absorption", a, b, c), || piece.absorption(0.998, Grams::new(0.1)));
                    let dip = |time, laid| Dip { time: Seconds::new(time), laydown: Laydown::new(laid) };
                    let dips = [dip(a, b), dip(b, a), dip(2.0, 4.0), dip(4.0, 5.6)];
                    dog.optional(("dips", a, b, c), || {
                        let law = DipLaw::of(&dips)?;
                        Some((law, law.hint(Laydown::new(c))?))
                    });
                }
                for solids in solids().into_iter().step_by(7).filter(|solids| solids.relative_uncertainty.is_finite()) {
                    let coat = WetCoat {
                        wet: other,
                        wet_standard_uncertainty: scale.net_standard_uncertainty(),
                        sg: SgReading::unchecked(),
                        powder: PowderDensity::default(),
                        solids,
                    };
                    let Some(weighed) = weighed else { continue };
                    dog.fallible(("split", a, b, solids), || weighed.split(&[coat, coat]));
                    if b.is_finite() && b < 1e12 {
                        dog.optional(("disagreement", a, b, solids), || disagreement(weighed, one, &[coat]));
                        dog.optional(("combined", a, b, solids), || {
                            coat.dry().dry.is_positive().then(|| DryGlaze::combined(weighed, coat.dry(), coat.powder))
                        });
                    }
                    for count in [0, 1, 5, 1_000_000_000] {
                        dog.total(("ladder", a, b, count), &[a, b], || {
                            tile::ladder(Laydown::new(a), SquareCentimetres::new(b), &solids, count)
                        });
                    }
                }
            }
        }
    });
}

fn profile(points: &[(f64, f64)], wall: f64, floor: f64, foot: Option<f64>) -> Profile {
    let mm = Millimetres::new;
    let point = |&(height, radius): &(f64, f64)| ProfilePoint { height: mm(height), radius: mm(radius), wall: None };
    Profile {
        points: points.iter().map(point).collect(),
        wall: mm(wall),
        floor: mm(floor),
        foot: foot.map(|size| FootRing { width: mm(size), height: mm(size) }),
    }
}

#[test]
fn forms() {
    Watchdog::walk(|dog| {
        for class in ShapeClass::ALL.iter().copied() {
            for a in HARD.into_iter().chain([5.0, 4.999_999_9, 100_000.0]) {
                dog.fallible(("by capacity", class, a), || Form::by_capacity(class, Millilitres::new(a)));
                // Of a class made to hold so much; a form refuses what no potter makes.
                dog.total(("usual", class, a), &[a], || class.usual(Some(Millilitres::new(a))));
                for kind in ZoneKind::ALL {
                    dog.total(("area", class, a), &[a], || class.area(*kind, Millilitres::new(a)));
                    let (usual, given) = (Millilitres::new(350.0), Millilitres::new(a));
                    dog.total(("growth", class, a), &[a], || class.growth(*kind, usual, given));
                }
                for b in HARD.into_iter().chain([1.0, 0.999_999_9, 50_000.0]) {
                    let area = |value: f64| Some(SquareCentimetres::new(value));
                    dog.fallible(("by area", class, a, b), || Form::by_area(class, area(a), area(b)));
                }
            }
        }
        for a in HARD {
            for b in HARD {
                dog.fallible(("shrinkage", a, b), || {
                    let shrinkage = Shrinkage::new(a, b)?;
                    let all = Stage::ALL.iter().flat_map(|from| Stage::ALL.iter().map(|to| (*from, *to)));
                    Ok::<_, laydown_domain::form::ShrinkageError>(
                        all.map(|(from, to)| shrinkage.factor(from, to)).collect::<Vec<_>>(),
                    )
                });
                dog.total(("tube", a, b), &[a, b], || tube(Millimetres::new(a), Millimetres::new(b)));
                dog.total(("lip", a, b), &[a, b], || revolve::round_lip(a, b));
                let line: Vec<Point> =
                    [(0.0, 1.0), (a, b), (b, a), (2.0, 1.0)].map(|(height, radius)| Point { height, radius }).to_vec();
                dog.total(("revolve", a, b), &[a, b], || {
                    (
                        revolve::swept_area(&line),
                        revolve::swept_volume(&line),
                        revolve::swept_volume_below(&line, a),
                        revolve::length(&line),
                        revolve::split(&line, b),
                        revolve::without_loops(&line),
                        revolve::first_crossing(&line),
                    )
                });
            }
        }
        dog.total("nothing to turn", &[], || (revolve::without_loops(&[]), revolve::first_crossing(&[])));
    });
}

#[test]
fn profiles() {
    Watchdog::walk(|dog| {
        let sizes: Vec<f64> = HARD.into_iter().chain([0.001, 4.0, 40.0, 750.0, 1_500.0]).collect();
        let mug = |height: f64, radius: f64| vec![(0.0, 36.0), (8.0, 40.0), (height / 2.0, 40.0), (height, radius)];
        let look = |profile: &Profile, lines: &GlazeLines, depth: f64| {
            dog.fallible(("cut", profile, depth), || {
                let cut = profile.cut()?;
                let parts = cut.parts(lines)?;
                Ok::<_, laydown_domain::form::ProfileError>((
                    cut.capacity(),
                    cut.capacity_to(Millimetres::new(depth)),
                    cut.clay(),
                    cut.widest(),
                    parts,
                ))
            });
            let measured = Measured {
                profile: profile.clone(),
                lines: *lines,
                extra: SquareCentimetres::new(12.0),
                fill: Some(Millimetres::new(depth)),
                traced: None,
            };
            let known = Known { measured: Some(measured), ..Known::default() };
            dog.fallible(("form", profile, depth), || {
                Form::new(ShapeClass::CylinderMug, &known)
                    .map(|form| (form.outline(), form.widest(), form.capacity_disagreement(), form))
            });
        };
        let lines = |bare: f64, overlap: f64| GlazeLines {
            bare_foot: Millimetres::new(bare),
            overlap: Millimetres::new(overlap),
        };
        for &a in &sizes {
            for &b in &sizes {
                look(&profile(&mug(a, b), 4.0, 4.0, None), &lines(8.0, 0.0), 5.0);
                look(&profile(&mug(92.0, 40.0), a, b, None), &lines(8.0, 0.0), 5.0);
                look(&profile(&mug(92.0, 40.0), 4.0, 4.0, Some(a)), &lines(8.0, b), 5.0);
                look(&profile(&mug(92.0, 40.0), 4.0, 4.0, None), &lines(a, 0.0), b);
                dog.fallible(("weight", a, b), || {
                    weight_check(&profile(&mug(92.0, 40.0), 4.0, 4.0, None), Grams::new(a), b)
                });
                dog.fallible(("scaled", a, b), || profile(&mug(92.0, 40.0), 4.0, 4.0, None).scaled(a).scaled(b).cut());
            }
        }
        let many: Vec<(f64, f64)> =
            (0..60).map(|at| (f64::from(at) * 20.0, if at % 2 == 0 { 40.0 } else { 60.0 })).collect();
        look(&profile(&many, 4.0, 4.0, None), &lines(8.0, 0.0), 5.0);
        look(&profile(&[], 4.0, 4.0, None), &lines(8.0, 0.0), 5.0);
    });
}

#[test]
fn outlines_from_photographs() {
    Watchdog::walk(|dog| {
        let trace = |radii: Vec<f64>, foot: (f64, f64), rim: (f64, f64)| Trace {
            width: 100,
            height: 100,
            axis: Axis { foot, rim },
            radii,
            left: Vec::new(),
            right: Vec::new(),
            handle: None,
            unlike: 0.0,
            sure: Sureness::Sure,
            unclear: 0.0,
            foot_arc: None,
            rim_arc: None,
            focal: None,
        };
        for a in HARD {
            for b in HARD {
                let mm = Millimetres::new;
                for known in [
                    KnownSize::Height(mm(a)),
                    KnownSize::Width(mm(a)),
                    KnownSize::Length { length: mm(a), from: (0.1, 0.1), to: (0.1, 0.1) },
                    KnownSize::Length { length: mm(90.0), from: (a, b), to: (b, a) },
                ] {
                    let pot = trace(vec![0.2; 40], (0.5, 0.9), (0.5, 0.1));
                    dog.fallible(("traced", &known, b), || pot.profile(&known, mm(b)));
                    let odd = trace(vec![a; 40], (0.5, b), (b, 0.1));
                    dog.fallible(("odd trace", &known, a, b), || odd.profile(&known, mm(500.0)));
                }
            }
        }
        for radii in [Vec::new(), vec![0.2], vec![0.2; 2]] {
            let pot = trace(radii, (0.5, 0.9), (0.5, 0.1));
            dog.fallible("short trace", || {
                pot.profile(&KnownSize::Height(Millimetres::new(90.0)), Millimetres::new(500.0))
            });
        }
    });
}

#[test]
fn the_kiln() {
    Watchdog::walk(|dog| {
        for cone in Cone::all() {
            for rate in HARD.into_iter().chain([60.0, 150.0]) {
                for kind in ConeKind::ALL {
                    dog.optional(("bends", cone, rate), || cone.bends_at(*kind, rate));
                }
            }
            for placed in [vec![], vec![cone], Cone::all().collect()] {
                for aimed in Cone::all() {
                    dog.optional(("cones meant", aimed, cone), || {
                        cone::likely_meant(aimed, &placed).map(|cones| cones.len() as f64)
                    });
                }
            }
            for reading in cone::Reading::ALL {
                dog.optional(("witness", cone, reading), || {
                    cone::against_aim(cone, &[Witness { cone, reading: *reading }])
                });
            }
        }
        let long = "A".repeat(100_000);
        for text in ["", "A", "3333", "33333", "\u{feff}33333", "3333\u{0301}3", long.as_str()] {
            dog.fallible(("code", &text[..text.len().min(8)]), || piece_code::read(text));
        }
    });
}

#[test]
fn one_target_from_everything() {
    Watchdog::walk(|dog| {
        let place = |uncertainty: f64| Place {
            form: Uuid::from_u128(1),
            zone: ZoneKind::Inside,
            class: ShapeClass::Jar,
            area_relative_uncertainty: uncertainty,
            body: None,
            cone: Cone::all().next(),
        };
        for a in HARD {
            for b in HARD {
                dog.total(("proportions", a, b), &[a, b], || {
                    let area = SquareCentimetres::new;
                    proportions(&[(area(a), 0.02, area(b)), (area(200.0), b, area(a))], 0.08)
                });
                dog.total(("sums", a, b), &[a, b], || cusum::sums(&[a, b, a, b, a, b]));
                let Ok(sg) = SpecificGravity::new(1.45) else { continue };
                let (checks, reading) =
                    ([(a, SgReading::checked(sg)), (b, SgReading::unchecked())], SgReading::checked(sg));
                dog.total(("walk", a, b), &[a, b], || (sg_age::walk(&checks, &[]), sg_age::aged(reading, a, b)));
                for thickness in Thickness::ALL {
                    let pot = |id: u128, x: f64, uncertainty: f64, day: f64| JudgedPot {
                        id: Uuid::from_u128(id),
                        place: place(uncertainty),
                        laydown: Laydown::new(x),
                        relative_uncertainty: uncertainty,
                        thickness: *thickness,
                        day,
                    };
                    let evidence = GlazeEvidence {
                        pots: vec![
                            pot(1, a, 0.01, 0.0),
                            pot(2, b, 0.01, 0.0),
                            pot(3, 5.5, a, 0.0),
                            pot(4, 5.5, 0.01, b),
                        ],
                        controls: vec![ControlPot {
                            id: Uuid::from_u128(5),
                            place: place(b),
                            laydown: Laydown::new(a),
                            relative_uncertainty: 0.01,
                            day: a,
                        }],
                        tiles: vec![RightTile {
                            id: Uuid::from_u128(6),
                            laydown: Laydown::new(b),
                            relative_uncertainty: a,
                        }],
                        starting: Laydown::new(a),
                        sensitivity: Sensitivity::High,
                    };
                    let fit = || Fitted::new(&evidence, &place(0.02), b, &Assumptions::default(), None);
                    if dog.optional(("pooled", a, b, thickness), || fit().map(|fit| fit.parameters())).is_none() {
                        continue;
                    }
                    let (Some(fit), Ok(solids)) = (fit(), Solids::of(reading, PowderDensity::default())) else {
                        continue;
                    };
                    for x in HARD {
                        let job = PooledJob { place: place(0.02), area: SquareCentimetres::new(x), solids };
                        dog.optional(("pooled target", a, b, thickness, x), || fit.target(&job, &evidence));
                        for class in [ShapeClass::Jar, ShapeClass::Plate, ShapeClass::Tile] {
                            let proportions = proportions(&[], 0.08);
                            let known = vec![Millilitres::new(a), Millilitres::new(b)];
                            let sizes = Sizes { class, zone: ZoneKind::Whole, proportions, known };
                            dog.optional(("size", class, a, b, x), || {
                                sizes.at(Millilitres::new(x), &fit.outlook(), &solids)
                            });
                        }
                        dog.optional(("chances", a, b, thickness, x), || {
                            fit.chances(&job, Grams::new(a), Grams::new(b))
                        });
                        let zone = Zone { kind: ZoneKind::Inside, area: job.area, relative_uncertainty: 0.02 };
                        let job = Job {
                            form_name: "form".to_owned(),
                            zone,
                            capacity: None,
                            class: ShapeClass::CylinderMug,
                            solids,
                            sensitivity: Sensitivity::High,
                        };
                        let scale = Scale::new(Grams::new(2_000.0), Grams::new(0.1), None, None).unwrap();
                        dog.optional(("pooled verdict", a, b, thickness, x), || {
                            let (outlook, rests_on) = (fit.outlook(), RestsOn { pots: 2, controls: 1 });
                            let target = target_for(&outlook, &job, &scale, rests_on)?;
                            let reading = Reading::Net(Grams::new(19.4));
                            let verdict = judge_by_chance(&reading, &target, &outlook, &scale, &job, None);
                            Some((target, verdict.ok(), chance_right(&outlook, &job, &scale, Grams::new(a))))
                        });
                    }
                }
            }
        }
    });
}

#[test]
fn what_fired_pots_say() {
    Watchdog::walk(|dog| {
        let series = |a: f64, b: f64| [vec![], vec![a], vec![a, b], vec![a, b, 1.0, a, b, 1.0, a, b, 1.0]];
        for a in HARD {
            for b in HARD {
                for values in series(a, b) {
                    dog.total(("chart", &values), &[a, b], || control_chart::individuals(&values));
                    dog.total(("drift", &values), &[a, b], || cusum::drift(&values));
                    dog.total(("hands", &values), &[a, b], || {
                        hand::by_hand(&values.iter().map(|value| ("Ana", *value)).collect::<Vec<_>>())
                    });
                    let laydowns: Vec<Laydown> = values.iter().map(|value| Laydown::new(*value)).collect();
                    for size in [0, 1, 2, 4, usize::MAX] {
                        dog.total(("match", &values, size), &[a, b], || set::best(&laydowns, size));
                    }
                    let coats: Vec<(f64, Grams)> = values.iter().map(|value| (*value, Grams::new(b))).collect();
                    dog.optional(("use", &values), || consumption::weekly_use(&coats, a));
                    dog.total(("set", &values), &[a, b], || {
                        Spread::of(&values).map(|set| (set.relative_spread(), set))
                    });
                    dog.total(("average", &values), &[a, b], || {
                        let average = control_chart::moving_average(&values, a, b, control_chart::WEIGHT);
                        (average.trend(), average)
                    });
                }
                if let Ok(sg) = SpecificGravity::new(1.45) {
                    dog.optional(("left", a, b), || {
                        consumption::left(Millilitres::new(a), sg, Grams::new(b), Grams::new(a))
                    });
                }
                dog.total(("new near", a, b), &[a, b], || cusum::new_near(&[a, b, a], usize::from(a > b), 2));
                for thickness in Thickness::ALL {
                    let mut pots = vec![(Laydown::new(a), Thickness::Right); 6];
                    pots.extend([(Laydown::new(b), *thickness), (Laydown::new(b), Thickness::Thin)]);
                    pots.extend([(Laydown::new(5.5), Thickness::Thick), (Laydown::new(a), *thickness)]);
                    dog.optional(("lesson", a, b, thickness), || Some(estimate(&pots)));
                    let points: Vec<(f64, Thickness)> = pots.iter().map(|(x, found)| (x.value(), *found)).collect();
                    if let Some(fit) = dog.optional(("fit", a, b, thickness), || Fit::of(&points)) {
                        for x in HARD {
                            dog.optional(("reach", fit, x), || fit.half_width_at(x));
                            dog.total(("right", fit, x), &[x], || fit.right(x));
                        }
                    }
                    let window = Window { from: Some(Laydown::new(a)), to: Some(Laydown::new(b)), best: None };
                    let looks: Vec<FiredObservation> = pots
                        .iter()
                        .map(|(laydown, thickness)| FiredObservation {
                            laydown: *laydown,
                            thickness: *thickness,
                            zone: ZoneKind::Inside,
                            cone: "6".to_owned(),
                            body: None,
                            faults: Fault::ALL.to_vec(),
                        })
                        .collect();
                    dog.total(("shares", a, b), &[a, b], || {
                        (fault::shares(&looks, Some(&window)), groups(looks.clone()).len())
                    });
                }
            }
        }
    });
}

#[test]
fn mixing_and_buckets() {
    Watchdog::walk(|dog| {
        for a in HARD {
            for cup in FlowCup::ALL {
                dog.fallible(("viscosity", cup, a), || cup.viscosity(Seconds::new(a)));
            }
            let sg = SgReading::unchecked();
            dog.optional(("flow change", a), || flow_change(&[(sg, Seconds::new(a))], (sg, Seconds::new(30.0))));
            for b in HARD {
                let (grams, ml, mm) = (Grams::new(a), Millilitres::new(a), Millimetres::new);
                dog.total(("level", a, b), &[a, b], || bucket::volume_at_level(mm(300.0), Some(mm(b)), mm(a)));
                dog.total(("on scale", a, b), &[a, b], || recipe::on_scale(grams, Grams::new(b)));
                dog.total(("rounding", a, b), &[a, b], || recipe::rounding_that_matters(grams, Grams::new(b)));
                for density in densities() {
                    let material = |parts: f64, is_addition: bool| Material {
                        name: "Silica".to_owned(),
                        parts,
                        is_addition,
                        density: Some(density),
                        price_per_kg: Some(b),
                    };
                    let mixed = Recipe::new(vec![material(a, false), material(b, true)]);
                    if let Ok(mixed) = &mixed {
                        dog.total(("weights", a, b), &[a, b], || mixed.weights(grams));
                        dog.total(("price", a, b), &[a, b], || mixed.price_per_kg());
                        dog.fallible(("powder", a, b), || mixed.powder_density());
                    }
                }
                for sg in specific_gravities() {
                    let density = PowderDensity::default();
                    let reading = SgReading::checked(sg);
                    dog.total(("evaporation", a, b, sg), &[a, b], || bucket::evaporation(ml, sg, b));
                    dog.optional(("pieces", a, b, sg), || bucket::pieces_left(ml, Millilitres::new(b), sg, grams));
                    dog.total(("water in", a, sg), &[a], || bucket::water_in(ml, sg, density));
                    dog.fallible(("batch", a, sg), || Batch::of_powder(grams, sg, density));
                    dog.fallible(("batch of volume", a, sg), || Batch::of_volume(ml, sg, density));
                    let contents = Contents { volume: Some(Millilitres::new(b)), sg: reading };
                    for change in [
                        Change::Water(ml),
                        Change::WaterOff(ml),
                        Change::Powder(grams),
                        Change::Taken(grams),
                        Change::Weighs(grams),
                    ] {
                        dog.total(("contents", a, b, sg), &[a, b], || contents.after(change, density));
                    }
                    let checks = [(a, reading), (b, SgReading::unchecked())];
                    let (walk, rise) = (sg_age::walk(&checks, &[b]), sg_age::rise(&checks, &[b]));
                    dog.total(("projected", a, b, sg), &[a, b], || sg_age::projected(reading, a, walk, rise));
                    dog.total(("due", a, b, sg), &[a, b], || sg_age::days_until_due(reading, walk, rise));
                }
            }
        }
        for text in ["", "\u{0}", "+", ";", ";;;;", "+;+;", "9 9", "%", "- -", "x\ty\tz", "Silica 1e999", "٣ ٣"] {
            for style in styles() {
                dog.fallible(("recipe", text), || Recipe::read(text, &style));
            }
            dog.total(("named", text), &[], || (material::density_by_name(text), material::hazards_by_name(text)));
        }
    });
}
