use approx::assert_relative_eq;
use proptest::prelude::*;

use super::*;
use Thickness::{Right, Thick, Thin};

fn observations(of: &[(&[f64], Thickness)]) -> Vec<(Laydown, Thickness)> {
    of.iter().flat_map(|(laydowns, thickness)| laydowns.iter().map(|g| (Laydown::new(*g), *thickness))).collect()
}

fn window(estimate: WindowEstimate) -> Window {
    let WindowEstimate::Window(window) = estimate else { panic!("{estimate:?}") };
    window
}

#[test]
fn a_window_lies_between_the_thin_and_the_thick() {
    let pots = observations(&[
        (&[4.2, 4.5, 4.8], Thin),
        (&[4.9, 5.1, 5.3, 5.4, 5.6, 5.8, 5.9, 6.2], Right),
        (&[6.4, 6.9, 7.2], Thick),
    ]);
    let window = window(estimate(&pots));
    let (from, to, best) = (window.from.unwrap(), window.to.unwrap(), window.best.unwrap());
    assert!(from > Laydown::new(4.6) && from < Laydown::new(5.2), "{from:?}");
    assert!(to > Laydown::new(5.8) && to < Laydown::new(6.5), "{to:?}");
    assert!(best.between.0 < best.laydown && best.laydown < best.between.1);
    assert!(from < best.laydown && best.laydown < to);
}

#[test]
fn an_end_is_named_when_two_pots_lie_beyond_it() {
    let right: &[f64] = &[5.0, 5.1, 5.2, 5.4, 5.5, 5.6, 5.8];
    let none = window(estimate(&observations(&[(right, Right), (&[6.9], Thick)])));
    assert_eq!(none, Window { from: None, to: None, best: None });
    let upper = window(estimate(&observations(&[(right, Right), (&[6.9, 7.0], Thick)])));
    assert!(upper.from.is_none() && upper.best.is_none() && upper.to.unwrap() < Laydown::new(6.9));
    let lower = window(estimate(&observations(&[(right, Right), (&[4.0, 4.1], Thin)])));
    assert!(lower.to.is_none() && lower.best.is_none() && lower.from.unwrap() > Laydown::new(4.1));
}

#[test]
fn what_cannot_be_learned_is_not_claimed() {
    assert_eq!(estimate(&observations(&[(&[5.0, 5.1, 5.2, 5.4, 5.5, 5.6, 5.8], Right)])), WindowEstimate::TooFew);
    assert_eq!(
        estimate(&observations(&[(&[6.0, 6.1, 6.2, 6.4, 6.5, 6.6, 6.8, 7.0], Thick)])),
        WindowEstimate::NoneRight
    );
    // Every amount gives everything.
    let all: &[f64] = &[4.5, 5.0, 5.5, 6.0, 6.5];
    assert_eq!(estimate(&observations(&[(all, Thin), (all, Right), (all, Thick)])), WindowEstimate::Mixed);
    // A coat that weighs nothing has no logarithm and does not count.
    assert_eq!(estimate(&observations(&[(&[0.0; 9], Right)])), WindowEstimate::TooFew);
}

#[test]
fn the_ends_are_where_the_chance_is_as_promised() {
    let points: Vec<(f64, Thickness)> =
        observations(&[(&[3.9, 4.5, 4.9], Thin), (&[4.8, 5.1, 5.3, 5.6, 6.0], Right), (&[5.9, 6.9, 7.2], Thick)])
            .iter()
            .map(|(laydown, thickness)| (laydown.value().ln(), *thickness))
            .collect();
    let fit = Fit::of(&points).unwrap();
    let half_width_at = fit.half_width_at(0.6).unwrap();
    assert_relative_eq!(fit.right(fit.middle + half_width_at), 0.6, max_relative = 1e-12);
    assert_relative_eq!(fit.right(fit.middle - half_width_at), 0.6, max_relative = 1e-12);
    assert!(fit.right(fit.middle) > 0.6);
    assert_eq!(fit.half_width_at(fit.right(fit.middle) + 1e-9), None);
}

fn any_points() -> impl Strategy<Value = Vec<(f64, Thickness)>> {
    let thickness = prop::sample::select(Thickness::ALL.to_vec());
    prop::collection::vec((0.5..3.5f64, thickness), 1..60)
}

proptest! {
    /// The derivatives against differences, at any place.
    #[test]
    fn derivatives_are_those_of_the_value(points in any_points(), m in 1.0..2.5f64, ln_w in -1.0..3.0f64, ln_s in 1.0..4.0f64) {
        let place = DVector::from_column_slice(&[m, ln_w, ln_s]);
        let here = posterior(&place, &points);
        const BY: f64 = 1e-5;
        for axis in 0..3 {
            let mut off = DVector::zeros(3);
            off[axis] = BY;
            let (up, down) = (posterior(&(&place + &off), &points), posterior(&(&place - &off), &points));
            let slope = (up.value - down.value) / (2.0 * BY);
            let scale = 1.0 + here.curvature.abs().max();
            prop_assert!((slope - here.slope[axis]).abs() < 1e-6 * scale, "{} {}", slope, here.slope[axis]);
            let bent = (up.slope - down.slope) / (2.0 * BY);
            for other in 0..3 {
                prop_assert!((bent[other] - here.curvature[(other, axis)]).abs() < 1e-5 * scale);
            }
        }
    }

    /// Whatever was found on the pots, in whatever order, there is an answer, and it is a place of rest.
    #[test]
    fn there_is_always_a_fit(points in any_points()) {
        let fit = Fit::of(&points).expect("the prior keeps it finite");
        prop_assert!(fit.middle.is_finite() && fit.half_width > 0.0 && fit.steepness > 0.0 && fit.middle_sd > 0.0);
        let place = DVector::from_column_slice(&[fit.middle, (fit.steepness * fit.half_width).ln(), fit.steepness.ln()]);
        prop_assert!(posterior(&place, &points).slope.norm() < 1e-3);
        let mut turned = points.clone();
        turned.reverse();
        prop_assert!((Fit::of(&turned).unwrap().middle - fit.middle).abs() < 1e-6);
    }
}
