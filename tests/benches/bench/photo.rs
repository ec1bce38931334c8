//! A photograph of twelve megapixels. The peer decodes the same bytes and turns them grey, and nothing else.

use std::hint::black_box;
use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};
use laydown_domain::form::silhouette::{KnownSize, trace};
use laydown_domain::units::Millimetres;

use crate::{Goal, row, timed};

const ROUNDS: usize = 15;

pub fn rows() {
    let photograph = photograph();
    let mut times = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        times.0.push(timed(|| _ = black_box(trace(black_box(&photograph)).unwrap())));
        times.1.push(timed(|| _ = black_box(image::load_from_memory(black_box(&photograph)).unwrap().into_luma8())));
    }
    let found = trace(&photograph).unwrap();
    // The drawing is flat, as a cup is seen from far away.
    let (known, far) = (KnownSize::Height(Millimetres::new(110.0)), Millimetres::new(19_000.0));
    for _ in 0..ROUNDS {
        times.2.push(timed(|| _ = black_box(found.profile(black_box(&known), far).unwrap())));
    }
    row("outline in a photograph of 12 megapixels", times.0, times.1.clone(), Goal::Times(2.0));
    row("its profile once the size is known", times.2, times.1, Goal::None);
}

/// A tapered cup on a plain ground, with the noise of a small lens, as a JPEG of quality 85.
fn photograph() -> Vec<u8> {
    let mut chance = 1u32;
    let picture = RgbImage::from_fn(4_000, 3_000, |x, y| {
        let (across, up) = ((f64::from(x) - 2_000.0).abs(), 2_500.0 - f64::from(y));
        let is_clay = (0.0..=2_000.0).contains(&up) && across < 600.0 + 0.15 * up;
        let light = 1.0 - across / 9_000.0;
        Rgb((if is_clay { [140.0, 82.0, 60.0] } else { [198.0, 200.0, 204.0] }).map(|colour: f64| {
            // Numerical Recipes' quick generator: only its upper bits are noise.
            chance = chance.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (colour * light + f64::from(chance >> 29) - 3.5) as u8
        }))
    });
    let mut bytes = Cursor::new(Vec::new());
    picture.write_with_encoder(JpegEncoder::new_with_quality(&mut bytes, 85)).unwrap();
    bytes.into_inner()
}
