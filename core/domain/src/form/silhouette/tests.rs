use std::io::Cursor;

use approx::assert_relative_eq;
use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, Rgb, RgbImage};

use super::*;
use crate::form::profile::Point;
use crate::form::revolve;

const GROUND: [u8; 3] = [190, 200, 205];
const CLAY: [u8; 3] = [120, 70, 50];
/// So far away that nothing looks nearer than anything else, mm.
const FAR: Millimetres = Millimetres::new(19_000.0);

fn mm(value: f64) -> Millimetres {
    Millimetres::new(value)
}

/// A picture of 800 by 600 in which each place is clay or ground, its edges softened as a lens does.
fn drawn(is_clay: impl Fn(f64, f64) -> bool) -> RgbImage {
    RgbImage::from_fn(800, 600, |x, y| {
        let inside = (0..4).filter(|part| {
            let (right, down) = (f64::from(part % 2), f64::from(part / 2));
            is_clay(f64::from(x) + right, f64::from(y) + down)
        });
        let share = inside.count() as f64 / 4.0;
        Rgb([0, 1, 2].map(|c| (f64::from(GROUND[c]) + share * (f64::from(CLAY[c]) - f64::from(GROUND[c]))) as u8))
    })
}

/// A tapered cup 300 pixels high, 140 wide at the foot and 220 at the rim, turned about the picture's middle.
fn cup(tilt: f64) -> impl Fn(f64, f64) -> bool {
    move |x, y| {
        let (sin, cos) = tilt.to_radians().sin_cos();
        let (x, y) = (x - 400.0, y - 300.0);
        let (across, up) = (cos * x + sin * y, 150.0 + sin * x - cos * y);
        (0.0..=300.0).contains(&up) && across.abs() <= 70.0 + 40.0 * up / 300.0
    }
}

fn encoded(picture: &RgbImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    picture.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

fn png(is_clay: impl Fn(f64, f64) -> bool) -> Vec<u8> {
    encoded(&drawn(is_clay), ImageFormat::Png)
}

/// The same JPEG with the orientation that a phone writes beside it.
fn oriented(jpeg: &[u8], orientation: u8) -> Vec<u8> {
    let exif = [
        b"\xFF\xE1\x00\x22Exif\0\0MM\0\x2A\0\0\0\x08\0\x01".as_slice(),
        b"\x01\x12\0\x03\0\0\0\x01\0",
        &[orientation],
        b"\0\0\0\0\0\0",
    ]
    .concat();
    [&jpeg[..2], &exif, &jpeg[2..]].concat()
}

/// The same JPEG with the focal length for a full frame, mm, that a phone writes beside it.
fn focused(jpeg: &[u8], focal: u8) -> Vec<u8> {
    let exif = [
        b"\xFF\xE1\x00\x34Exif\0\0II\x2A\0\x08\0\0\0\x01\0".as_slice(),
        // The Exif directory, right behind this one, with one entry.
        b"\x69\x87\x04\0\x01\0\0\0\x1A\0\0\0\0\0\0\0\x01\0",
        b"\x05\xA4\x03\0\x01\0\0\0",
        &[focal],
        b"\0\0\0\0\0\0\0",
    ]
    .concat();
    [&jpeg[..2], &exif, &jpeg[2..]].concat()
}

fn line(points: &[(Millimetres, Millimetres)]) -> Vec<Point> {
    points.iter().map(|(height, radius)| Point { height: height.value(), radius: radius.value() }).collect()
}

#[test]
fn a_cup_seen_from_afar_has_the_area_and_volume_of_a_frustum() {
    let trace = trace(&png(cup(0.0))).unwrap();
    let traced = trace.profile(&KnownSize::Height(mm(90.0)), FAR).unwrap();
    // Radii 21 and 33 mm over 90 mm: check-values.json, frustum.
    let (foot, rim, height) = (21.0f64, 33.0, 90.0f64);
    let slant = height.hypot(rim - foot);
    let area = std::f64::consts::PI * (foot + rim) * slant;
    let volume = std::f64::consts::PI / 3.0 * height * (foot * foot + foot * rim + rim * rim);
    assert_relative_eq!(revolve::swept_area(&line(&traced.fine)), area, max_relative = 0.01);
    assert_relative_eq!(revolve::swept_volume(&line(&traced.fine)), volume, max_relative = 0.01);
    assert!((8..=16).contains(&traced.points.len()), "{}", traced.points.len());
    assert_relative_eq!(revolve::swept_volume(&line(&traced.points)), volume, max_relative = 0.015);
    assert_eq!((trace.sure, trace.handle), (Sureness::Fair, None));
}

#[test]
fn each_way_to_give_the_size_leads_to_the_same_profile() {
    let trace = trace(&png(cup(0.0))).unwrap();
    let sizes = [
        KnownSize::Height(mm(90.0)),
        KnownSize::Width(mm(66.0)),
        KnownSize::Length { length: mm(30.0), from: (600.0, 440.0), to: (700.0, 440.0) },
    ];
    let areas = sizes.map(|known| {
        let traced = trace.profile(&known, FAR).unwrap();
        assert!((0.02..0.08).contains(&traced.relative_uncertainty), "{}", traced.relative_uncertainty);
        revolve::swept_area(&line(&traced.fine))
    });
    assert_relative_eq!(areas[0], areas[1], max_relative = 0.01);
    assert_relative_eq!(areas[0], areas[2], max_relative = 0.01);
}

#[test]
fn a_focal_length_that_the_camera_noted_stands_for_the_distance() {
    let jpeg = encoded(&drawn(cup(0.0)), ImageFormat::Jpeg);
    assert_eq!(trace(&jpeg).unwrap().focal, None);
    let noted = trace(&focused(&jpeg, 200)).unwrap();
    // 800 x 600 pixels have a diagonal of 1,000; that of a full frame is 43.27 mm (CIPA DCG-001).
    assert_relative_eq!(noted.focal.unwrap(), 200.0 * 1000.0 / 43.27, max_relative = 1e-3);
    let height = KnownSize::Height(mm(90.0));
    let by = |distance: f64| noted.profile(&height, mm(distance)).unwrap().fine;
    assert_eq!(by(300.0), by(900.0));
    // No lens of a phone, and a picture that was cropped.
    assert_eq!(trace(&focused(&jpeg, 2)).unwrap().focal, None);
    let cropped = image::imageops::crop_imm(&drawn(cup(0.0)), 0, 0, 800, 560).to_image();
    assert_eq!(trace(&focused(&encoded(&cropped, ImageFormat::Jpeg), 26)).unwrap().focal, None);
}

#[test]
fn light_that_falls_off_to_the_sides_is_no_piece_that_runs_out_of_the_picture() {
    let mut lit = drawn(cup(0.0));
    for (x, _, pixel) in lit.enumerate_pixels_mut() {
        let light = 1.0 - (f64::from(x) - 400.0).abs() / 1_600.0;
        pixel.0 = pixel.0.map(|colour| (f64::from(colour) * light) as u8);
    }
    let height = KnownSize::Height(mm(90.0));
    let area = |trace: Trace| revolve::swept_area(&line(&trace.profile(&height, FAR).unwrap().fine));
    let found = trace(&encoded(&lit, ImageFormat::Png)).unwrap();
    assert_relative_eq!(area(found), area(trace(&png(cup(0.0))).unwrap()), max_relative = 0.01);
}

#[test]
fn a_phone_held_a_little_aslant_is_put_right_and_more_is_refused() {
    for tilt in [-4.0, -1.5, 4.0] {
        let trace = trace(&png(cup(tilt))).unwrap();
        let (foot, rim) = (trace.axis.foot, trace.axis.rim);
        let found = (rim.0 - foot.0).atan2(foot.1 - rim.1).to_degrees();
        assert_relative_eq!(found, tilt, epsilon = 0.15);
        let volume = |trace: &Trace| {
            let traced = trace.profile(&KnownSize::Height(mm(90.0)), FAR).unwrap();
            revolve::swept_volume(&line(&traced.fine))
        };
        assert_relative_eq!(volume(&trace), 209_466.0, max_relative = 0.015);
    }
    assert_eq!(trace(&png(cup(9.0))), Err(PhotoError::TooTilted));
}

#[test]
fn a_handle_is_left_out_and_named() {
    for (side, sign) in [(Side::Left, -1.0), (Side::Right, 1.0)] {
        let bare = trace(&png(cup(2.0))).unwrap();
        let body = cup(2.0);
        let with_handle = trace(&png(move |x, y| {
            let (across, down) = (sign * (x - 400.0) - 90.0, y - 300.0);
            let ring = (across / 60.0).powi(2) + (down / 80.0).powi(2);
            body(x, y) || (across > 0.0 && (0.55..1.0).contains(&ring))
        }))
        .unwrap();
        assert_eq!(with_handle.handle, Some(side));
        for (with, without) in with_handle.radii.iter().zip(&bare.radii).skip(8).take(145) {
            assert_relative_eq!(with, without, epsilon = 1.5);
        }
    }
}

#[test]
fn the_eight_ways_a_phone_turns_a_picture_all_come_out_upright() {
    let upright = drawn(cup(0.0));
    let whole = DynamicImage::ImageRgb8(upright);
    // What the sensor holds for each orientation, after the table of Exif 2.32 (JEITA CP-3451), tag 274.
    let stored = [
        whole.clone(),
        whole.fliph(),
        whole.rotate180(),
        whole.flipv(),
        whole.rotate270().flipv(),
        whole.rotate270(),
        whole.rotate90().flipv(),
        whole.rotate90(),
    ];
    for (picture, orientation) in stored.iter().zip(1..) {
        let jpeg = oriented(&encoded(&picture.to_rgb8(), ImageFormat::Jpeg), orientation);
        let found = trace(&jpeg).unwrap();
        assert_eq!((found.width, found.height), (800, 600), "{orientation}");
        assert!(found.axis.foot.1 > found.axis.rim.1 + 250.0, "{orientation}");
        assert!(found.radii[150] > found.radii[10] + 25.0, "{orientation}");
        let preview = image::load_from_memory(&upright_preview(&jpeg, 200).unwrap()).unwrap();
        assert_eq!((preview.width(), preview.height()), (200, 150), "{orientation}");
    }
}

#[test]
fn a_preview_says_nothing_of_where_it_was_taken() {
    let jpeg = oriented(&encoded(&drawn(cup(0.0)), ImageFormat::Jpeg), 6);
    let preview = upright_preview(&jpeg, 5_000).unwrap();
    let mut decoder = ImageReader::with_format(Cursor::new(&preview), ImageFormat::Jpeg).into_decoder().unwrap();
    assert_eq!(decoder.dimensions(), (600, 800));
    assert_eq!(decoder.exif_metadata().unwrap(), None);
}

#[test]
fn what_is_no_whole_picture_is_refused_in_words() {
    let jpeg = encoded(&drawn(cup(0.0)), ImageFormat::Jpeg);
    let png = png(cup(0.0));
    assert_eq!(trace(b""), Err(PhotoError::NoPicture));
    assert_eq!(trace(b"Shopping: cobalt, sponges"), Err(PhotoError::NoPicture));
    assert_eq!(trace(b"GIF89a\x01\0\x01\0\0\0\0;"), Err(PhotoError::NoPicture));
    for cut in [jpeg.len() / 3, jpeg.len() / 2, jpeg.len() - 2, 20] {
        assert_eq!(trace(&jpeg[..cut]), Err(PhotoError::CutShort), "{cut}");
        assert_eq!(upright_preview(&jpeg[..cut], 100), Err(PhotoError::CutShort), "{cut}");
    }
    for cut in [png.len() / 3, png.len() / 2, 40] {
        assert_eq!(trace(&png[..cut]), Err(PhotoError::CutShort), "{cut}");
    }
}

#[test]
fn a_hundred_megapixels_are_refused_by_the_header_alone() {
    let mut png = png(|_, _| false);
    png[16..24].copy_from_slice(&[0, 0, 0x2E, 0xE0, 0, 0, 0x20, 0x8D]);
    // The header's checksum must agree, or it would be refused for that.
    let checksum = png[12..29].iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| (crc >> 1) ^ (0xEDB8_8320 & (crc & 1).wrapping_neg()))
    });
    png[29..33].copy_from_slice(&(!checksum).to_be_bytes());
    assert_eq!(trace(&png), Err(PhotoError::TooLarge));

    let mut jpeg = encoded(&drawn(|_, _| false), ImageFormat::Jpeg);
    let frame = jpeg.windows(2).position(|pair| pair == [0xFF, 0xC0]).unwrap();
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0x20, 0x8D, 0x2E, 0xE0]);
    assert_eq!(trace(&jpeg), Err(PhotoError::TooLarge));
}

#[test]
fn pictures_without_one_whole_upright_piece_are_refused() {
    let disc = |x: f64, y: f64, at: (f64, f64), radius: f64| (x - at.0).hypot(y - at.1) < radius;
    let refused = |is_clay: &dyn Fn(f64, f64) -> bool| trace(&png(is_clay)).unwrap_err();
    assert_eq!(refused(&|_, _| false), PhotoError::Nothing);
    assert_eq!(refused(&|x, y| disc(x, y, (400.0, 300.0), 20.0)), PhotoError::TooFar);
    assert_eq!(refused(&|x, y| disc(x, y, (400.0, 560.0), 100.0)), PhotoError::CutOff);
    let two = |x: f64, y: f64| disc(x, y, (200.0, 300.0), 120.0) || disc(x, y, (600.0, 300.0), 110.0);
    assert_eq!(refused(&two), PhotoError::NotAlone);
    assert_eq!(refused(&|x, y| ((x / 37.0) as i32 + (y / 41.0) as i32) % 2 == 0), PhotoError::Busy);
    assert_eq!(refused(&|x, y| (x - 400.0).abs() < 250.0 && (y - 300.0).abs() < 50.0), PhotoError::TooFlat);
    // One side bulges above, the other below.
    let lump = |x: f64, y: f64| {
        let bulge = 40.0 * ((y - 150.0) / 300.0 * std::f64::consts::TAU).sin();
        y > 150.0 && y < 450.0 && x > 300.0 - bulge && x < 500.0 - bulge
    };
    assert_eq!(refused(&lump), PhotoError::Lopsided);
    // A cup put over a bottle: above the neck the wall stands out at once.
    let stacked = |x: f64, y: f64| {
        let half = if y < 250.0 { 90.0 } else { 55.0 };
        (100.0..450.0).contains(&y) && (x - 400.0).abs() < half
    };
    assert_eq!(refused(&stacked), PhotoError::Stacked);
    let night = encoded(&RgbImage::from_pixel(800, 600, Rgb([9, 10, 12])), ImageFormat::Png);
    assert_eq!(trace(&night), Err(PhotoError::TooDark));
    let stamp = encoded(&RgbImage::from_pixel(120, 90, Rgb(GROUND)), ImageFormat::Png);
    assert_eq!(trace(&stamp), Err(PhotoError::TooSmall));
    for length in [2_400, 54_000] {
        let strip = encoded(&RgbImage::from_pixel(length, 240, Rgb(GROUND)), ImageFormat::Png);
        assert_eq!(trace(&strip), Err(PhotoError::TooSmall), "of which nothing is left when it is made small");
    }
}

#[test]
fn sizes_that_cannot_be_are_refused() {
    let trace = trace(&png(cup(0.0))).unwrap();
    let nowhere = KnownSize::Length { length: mm(30.0), from: (5.0, 5.0), to: (5.0, 5.0) };
    let sizes = [0.0, -90.0, 1.0, 90_000.0, f64::NAN, f64::INFINITY].map(mm);
    let given = sizes.into_iter().flat_map(|size| [KnownSize::Height(size), KnownSize::Width(size)]);
    for known in given.chain([nowhere]) {
        assert_eq!(trace.profile(&known, mm(600.0)), Err(PhotoError::Size), "{known:?}");
    }
    for camera in [0.0, -1.0, f64::NAN, 40.0, 1e9] {
        assert_eq!(trace.profile(&KnownSize::Height(mm(90.0)), mm(camera)), Err(PhotoError::Size), "{camera}");
    }
}

#[test]
fn a_trace_that_was_stored_is_short_and_comes_back_whole() {
    let trace = trace(&png(cup(1.0))).unwrap();
    let text = serde_json::to_string(&trace).unwrap();
    assert!(text.len() < 4_000, "{}", text.len());
    let back: Trace = serde_json::from_str(&text).unwrap();
    assert_eq!(back, trace);
}

#[test]
fn a_stored_trace_that_was_tampered_with_is_refused_and_does_not_panic() {
    let whole = trace(&png(cup(0.0))).unwrap();
    let known = KnownSize::Height(mm(90.0));
    for radii in [vec![], vec![50.0; 3], vec![0.0; 161], vec![f64::NAN; 161], vec![1e300; 161]] {
        let trace = Trace { radii, ..whole.clone() };
        assert!(trace.profile(&known, mm(600.0)).is_err(), "{:?}", trace.radii.first());
    }
    let upside_down = Trace { axis: Axis { foot: whole.axis.foot, rim: whole.axis.foot }, ..whole };
    assert_eq!(upside_down.profile(&known, mm(600.0)), Err(PhotoError::Size));
}
