//! An invented studio to look around in: two glazes, three forms, a body, a month of glazing days with a test row, two firings and one that
//! is being loaded.
//! It is made through the same commands as a potter's own.

use crate::{Assessment, EditorEntry, EditorKind, Now, Result, Studio, StudioError, Value, WeighEntry};
use laydown_domain::form::ZoneKind;

const DAY_MS: i64 = 86_400_000;
const MINUTE_MS: i64 = 60_000;

/// A glazing day: how many days ago, which glaze and what its bucket's SG was, and what was glazed.
struct Day {
    days_ago: i64,
    glaze: usize,
    specific_gravity: &'static str,
    pieces: &'static [(usize, i64)],
    /// Whether it was a test row, poured from thin to thick on purpose.
    row: bool,
}

const FORMS: [&[(&str, &str)]; 3] = [
    &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")],
    &[("name", "Large mug"), ("class", "rounded_mug"), ("capacity", "450 ml")],
    &[
        ("name", "Soup bowl"),
        ("class", "deep_bowl"),
        ("way", "profile"),
        ("points", "0\t6.4\t\n0.6\t6.2\t\n1.3\t8\t\n2.4\t10.8\t\n3.9\t12.9\t\n5.8\t14.2\t\n7.4\t14.9\t"),
        ("wall", "0.5 cm"),
        ("floor", "0.5 cm"),
        ("foot_width", "0.6 cm"),
        ("foot_height", "0.6 cm"),
        ("bare_foot", "0.6 cm"),
        ("overlap", "1.2 cm"),
        ("fill", "1.5 cm"),
    ],
];

/// Name, shrinkage to bisque and to the glaze firing, density of the bisque.
const BODY: [(&str, &str); 4] =
    [("name", "White stoneware"), ("to_bisque", "6%"), ("to_fired", "12%"), ("bisque_density", "1.85")];

const GLAZES: [(&str, &str, &str); 2] = [("Ash white", "medium", "1.45"), ("Iron red", "high", "1.48")];

const DAYS: [Day; 9] = [
    Day { days_ago: 29, glaze: 0, specific_gravity: "1.45", pieces: &[(0, 6), (1, 2)], row: false },
    Day { days_ago: 27, glaze: 0, specific_gravity: "1.45", pieces: &[(0, 7)], row: true },
    Day { days_ago: 26, glaze: 1, specific_gravity: "1.48", pieces: &[(0, 4)], row: false },
    Day { days_ago: 21, glaze: 0, specific_gravity: "1.46", pieces: &[(1, 6)], row: false },
    Day { days_ago: 17, glaze: 1, specific_gravity: "1.49", pieces: &[(1, 4), (2, 2)], row: false },
    Day { days_ago: 12, glaze: 0, specific_gravity: "1.46", pieces: &[(2, 5)], row: false },
    Day { days_ago: 8, glaze: 1, specific_gravity: "1.47", pieces: &[(0, 5)], row: false },
    Day { days_ago: 3, glaze: 0, specific_gravity: "1.44", pieces: &[(0, 8), (2, 3)], row: false },
    Day { days_ago: 0, glaze: 0, specific_gravity: "1.44", pieces: &[(0, 3)], row: false },
];

/// A firing: how many days ago, its top temperature, hours, and how its witness cone was read.
struct Fired {
    days_ago: i64,
    top: &'static str,
    hours: &'static str,
    witness: &'static str,
}

const KILN: [(&str, &str); 4] = [("name", "Garden kiln"), ("across", "55"), ("deep", "50"), ("shelves", "3")];

const FIRINGS: [Fired; 2] = [
    Fired { days_ago: 19, top: "1221", hours: "9.5", witness: "at" },
    Fired { days_ago: 6, top: "1228", hours: "9", witness: "hard" },
];

/// How the invented hand strays from the target, as fractions of it, one pour after another.
const STRAY: [f64; 11] = [0.02, -0.05, 0.04, -0.01, 0.09, 0.0, -0.03, -0.11, 0.05, 0.01, 0.03];

/// How kiln and eye stray, as if the coat were so much thicker: two pots alike do not always come out alike.
const SEEN: [f64; 7] = [0.01, -0.03, 0.02, 0.0, 0.03, -0.02, -0.01];

/// How a test row strays on purpose.
const ROW: [f64; 7] = [-0.24, -0.16, -0.09, 0.0, 0.08, 0.15, 0.23];

/// Fills an empty studio; answers with the number of coats kept.
///
/// # Errors
/// Those of the commands it gives.
pub fn fill(studio: &Studio, now: Now) -> Result<usize> {
    let began = now.at(now.unix_ms - 30 * DAY_MS);
    save(studio, began, EditorKind::Body, "", &BODY)?;
    let forms =
        FORMS.iter().map(|values| save(studio, began, EditorKind::Form, "", values)).collect::<Result<Vec<_>>>()?;
    for (name, sensitivity, specific_gravity) in GLAZES {
        let values = [("name", name), ("sensitivity", sensitivity), ("specific_gravity", specific_gravity)];
        save(studio, began, EditorKind::Glaze, "", &values)?;
    }
    save(studio, began, EditorKind::Scale, "", &[("name", "Bench scale"), ("capacity", "2000 g"), ("step", "0.1 g")])?;
    save(
        studio,
        began,
        EditorKind::Vessel,
        "",
        &[("name", "Jam jar"), ("empty", "186.4 g"), ("with_water", "498.2 g")],
    )?;
    let buckets = buckets(studio, began)?;

    let kiln = save(studio, began, EditorKind::Kiln, "", &KILN)?;

    let mut stray = STRAY.iter().cycle();
    let mut saved = 0;
    let mut unfired: Vec<(String, f64)> = Vec::new();
    let mut firings = FIRINGS.iter().peekable();
    for day in &DAYS {
        while let Some(fired) = firings.next_if(|fired| fired.days_ago > day.days_ago) {
            let at = now.at(now.unix_ms - fired.days_ago * DAY_MS);
            fire(studio, at, &kiln, fired, &std::mem::take(&mut unfired))?;
        }
        let mut at = now.at(now.unix_ms - day.days_ago * DAY_MS - 90 * MINUTE_MS);
        let bucket = &buckets[day.glaze];
        save(studio, at, EditorKind::Check, bucket, &[("way", "typed"), ("typed", day.specific_gravity)])?;
        for (form, pieces) in day.pieces {
            for piece in 0..*pieces {
                at = at.at(at.unix_ms + 2 * MINUTE_MS);
                let entry = WeighEntry {
                    form: forms[*form].clone(),
                    bucket: bucket.clone(),
                    zone: Some(ZoneKind::Inside),
                    ..WeighEntry::default()
                };
                let aim = aim(studio, at, &entry)?;
                let off = if day.row { ROW.get(piece as usize) } else { stray.next() };
                let off = off.copied().unwrap_or_default();
                let poured = aim * (1.0 + off);
                let coat = studio.save(at, WeighEntry { net: format!("{poured:.1}"), ..entry })?;
                // The potter takes the third piece of a form's first run as the one to compare with.
                if piece == 2 && saved < 20 && !day.row {
                    studio.set_control(at, &coat.id, true)?;
                }
                unfired.push((studio.coat(at, &coat.id)?.piece, off));
                saved += 1;
            }
        }
        // A row that is poured from thin to thick on purpose is no drift.
        if day.row {
            studio.answer_drift(at, &studio.bucket(at, bucket)?.glaze_id)?;
        }
    }
    let loading = begin(studio, now, &kiln)?;
    let waiting = studio.firing(now, &loading)?.waiting;
    let some: Vec<String> = waiting.into_iter().flat_map(|row| row.pieces).take(5).collect();
    studio.load(now, &loading, &some, 0)?;
    Ok(saved)
}

fn begin(studio: &Studio, at: Now, kiln: &str) -> Result<String> {
    let program = "100 an hour to 600, 150 to the end, hold 10 minutes";
    let firing = save(studio, at, EditorKind::Firing, "", &[("kiln", kiln), ("cone", "6"), ("program", program)])?;
    change(studio, at, EditorKind::WitnessCones, &firing, &[("witnesses", "one")])?;
    Ok(firing)
}

/// Loads, fires and looks at `pieces`: what was poured too thick runs, what was poured too thin is liked less.
fn fire(studio: &Studio, at: Now, kiln: &str, fired: &Fired, pieces: &[(String, f64)]) -> Result<()> {
    let firing = begin(studio, at, kiln)?;
    studio.load_all(at, &firing)?;
    studio.advance(at, &firing)?;
    let values = [("top", fired.top), ("hours", fired.hours), ("witness", fired.witness)];
    change(studio, at, EditorKind::Firing, &firing, &values)?;
    let unloaded = at.at(at.unix_ms + DAY_MS);
    for ((piece, off), seen) in pieces.iter().zip(SEEN.iter().cycle()) {
        let (thickness, stars) = match off + seen {
            off if off > 0.07 => ("thick", 2),
            off if off < -0.07 => ("thin", 2),
            off if off.abs() < 0.025 => ("right", 5),
            _ => ("right", 4),
        };
        let inside = Assessment::Thickness { zone: "inside".to_owned(), thickness: thickness.to_owned() };
        studio.assess(unloaded, &firing, piece, &inside)?;
        if thickness == "thick" {
            studio.assess(unloaded, &firing, piece, &Assessment::Fault { fault: "running".to_owned(), on: true })?;
        }
        studio.assess(unloaded, &firing, piece, &Assessment::Liking { stars })?;
    }
    studio.advance(unloaded, &firing)?;
    Ok(())
}

fn save(studio: &Studio, at: Now, kind: EditorKind, subject: &str, values: &[(&str, &str)]) -> Result<String> {
    record(studio, at, kind, "", subject, values)
}

fn change(studio: &Studio, at: Now, kind: EditorKind, id: &str, values: &[(&str, &str)]) -> Result<String> {
    record(studio, at, kind, id, "", values)
}

fn record(
    studio: &Studio,
    at: Now,
    kind: EditorKind,
    id: &str,
    subject: &str,
    values: &[(&str, &str)],
) -> Result<String> {
    let values = values.iter().map(|(key, text)| Value { key: (*key).to_owned(), text: (*text).to_owned() }).collect();
    let entry = EditorEntry { kind, id: id.to_owned(), subject: subject.to_owned(), values, draft: String::new() };
    Ok(studio.save_record(at, &entry)?.id)
}

/// The glazes' first buckets, in the order of [`GLAZES`].
fn buckets(studio: &Studio, at: Now) -> Result<Vec<String>> {
    let rows = studio.buckets(at)?.buckets;
    let bucket = |name: &str| rows.iter().find(|row| row.glaze == name).map(|row| row.id.clone());
    GLAZES.iter().map(|(name, ..)| bucket(name).ok_or_else(|| StudioError::missing("bucket"))).collect()
}

/// The aim as the screen shows it, in grams: what the invented potter pours towards.
fn aim(studio: &Studio, at: Now, entry: &WeighEntry) -> Result<f64> {
    let target = studio.weigh(at, Some(entry.clone()))?.target;
    let shown = target.map(|target| target.wet).unwrap_or_default();
    let digits: String = shown.chars().take_while(|c| c.is_ascii_digit() || *c == '.').collect();
    digits.parse().map_err(|_| StudioError::missing("target"))
}
