//! The main job from a file of readings: `cargo run --example glazing_day -- FILE.csv [--json]`.
//!
//! The file is comma-separated (RFC 4180), one coat a row, its first row naming the columns:
//!
//! | column | what it holds |
//! |---|---|
//! | `form` | name of the form |
//! | `shape` | code of its shape, for example `cylinder_mug` |
//! | `capacity` or `area` | what it holds to the rim, or the glazed area of the zone |
//! | `glaze` | name of the glaze |
//! | `sg` | specific gravity of the bucket today; empty if nobody checked it |
//! | `tare`, `gross` | bare and glazed weight; or |
//! | `net` | the weight after tare |
//! | `step` | step of the scale |
//! | `zone` | optional: `inside` (taken if empty), `outside` or `whole` |
//! | `sensitivity` | optional: `low`, `medium` (taken if empty) or `high` |
//! | `control` | optional: `yes` for a piece the potter knows to be right; the rows below are compared with it |
//!
//! Quantities are written as a potter writes them, bare numbers in g, ml and cm². A row that cannot be used is reported
//! with its line and what is wrong, and the others are still judged.

use std::io::{Read, Write};
use std::process::ExitCode;

use laydown_app::in_words::{self, Named, Sentence};
use laydown_domain::coat::Solids;
use laydown_domain::coat::scale::Scale;
use laydown_domain::coat::target::{Control, Evidence, Job, STARTING_LAYDOWN, Sensitivity, Source, Target, target};
use laydown_domain::coat::trust::Trust;
use laydown_domain::coat::verdict::{Reading, Verdict, VerdictKind, judge};
use laydown_domain::form::{Form, MEASURED_AREA, ShapeClass, Zone, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{Grams, PowderDensity, Style, parse};
use serde::{Deserialize, Serialize};

/// No capacity is asked for in the file, so no reading is taken to be over it.
const AMPLE: Grams = Grams::new(100_000.0);

/// Columns that a file must have, whatever it leaves empty.
const NEEDED: [&str; 5] = ["form", "shape", "glaze", "sg", "step"];

fn main() -> ExitCode {
    let (flags, paths): (Vec<_>, Vec<_>) = std::env::args().skip(1).partition(|argument| argument.starts_with("--"));
    let json = flags.iter().any(|flag| flag == "--json");
    let ([path], true) = (paths.as_slice(), flags.iter().all(|flag| flag == "--json")) else {
        eprintln!("Say which file: glazing_day FILE.csv [--json]");
        return ExitCode::FAILURE;
    };
    let printed = std::fs::File::open(path)
        .map_err(|error| error.to_string())
        .and_then(read_day)
        .and_then(|day| if json { as_json(&day) } else { Ok(as_table(&day)) })
        .and_then(|text| std::io::stdout().write_all(text.as_bytes()).map_err(|error| error.to_string()));
    match printed {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{path}: {error}");
            ExitCode::FAILURE
        }
    }
}

/// A row as it stands in the file.
#[derive(Debug, Deserialize)]
struct Row {
    form: String,
    shape: String,
    #[serde(default)]
    capacity: String,
    #[serde(default)]
    area: String,
    glaze: String,
    sg: String,
    #[serde(default)]
    tare: String,
    #[serde(default)]
    gross: String,
    #[serde(default)]
    net: String,
    step: String,
    #[serde(default)]
    zone: String,
    #[serde(default)]
    sensitivity: String,
    #[serde(default)]
    control: String,
}

/// A row judged, or why not.
#[derive(Debug, Serialize)]
pub struct Outcome {
    line: u64,
    #[serde(flatten)]
    result: Judged,
}

#[derive(Debug, Serialize)]
#[serde(rename_all = "snake_case")]
enum Judged {
    Piece(Box<Piece>),
    Refused(String),
}

/// A coat with its target and its verdict; the unit ends the name.
#[derive(Debug, Serialize)]
struct Piece {
    form: String,
    glaze: String,
    zone: &'static str,
    aim_g: f64,
    low_g: f64,
    high_g: f64,
    aim_interval_g: [f64; 2],
    source: &'static str,
    pots: usize,
    net_g: f64,
    half_width_g: f64,
    verdict: &'static str,
    to_aim_g: f64,
    to_within_g: f64,
    dry_g: f64,
    laydown_g_per_100_cm2: f64,
    #[serde(skip)]
    words: [String; 6],
}

/// A control piece and what it is a control for.
struct Known {
    glaze: String,
    zone: ZoneKind,
    control: Control,
}

/// Judges every row of a file.
///
/// # Errors
/// When the file cannot be read, or a needed column is missing.
pub fn read_day(mut file: impl Read) -> Result<Vec<Outcome>, String> {
    let mut bytes = Vec::new();
    file.read_to_end(&mut bytes).map_err(|error| error.to_string())?;
    let mut reader = csv::ReaderBuilder::new().flexible(true).trim(csv::Trim::All).from_reader(bytes.as_slice());
    let headers = reader.headers().map_err(|error| format!("the first row cannot be read: {error}"))?.clone();
    if let Some(missing) = NEEDED.iter().find(|needed| !headers.iter().any(|header| header == **needed)) {
        return Err(format!("there is no column “{missing}”. The first row names the columns."));
    }
    let mut known: Vec<Known> = Vec::new();
    let mut day = Vec::new();
    let mut records = reader.records();
    loop {
        let at = records.reader().position().clone();
        let Some(record) = records.next() else { return Ok(day) };
        let judged = match record {
            Ok(record) => judge_record(&record, &headers, &mut known),
            Err(_) => Err("This row is not text in UTF-8. Save the file as UTF-8.".to_owned()),
        };
        // The reader counts from where it stood, before any empty lines.
        let rest = bytes.get(at.byte() as usize..).unwrap_or_default();
        let empty_lines = rest.iter().take_while(|byte| matches!(byte, b'\n' | b'\r')).filter(|byte| **byte == b'\n');
        let line = at.line() + empty_lines.count() as u64;
        let result = judged.map_or_else(Judged::Refused, |piece| Judged::Piece(Box::new(piece)));
        day.push(Outcome { line, result });
    }
}

fn judge_record(
    record: &csv::StringRecord,
    headers: &csv::StringRecord,
    known: &mut Vec<Known>,
) -> Result<Piece, String> {
    if record.len() != headers.len() {
        return Err(format!("This row has {} fields and the first row {}.", record.len(), headers.len()));
    }
    let row: Row = record.deserialize(Some(headers)).map_err(|error| error.to_string())?;
    judge_row(row, known)
}

fn said(error: impl Sentence) -> String {
    error.sentence()
}

fn judge_row(row: Row, known: &mut Vec<Known>) -> Result<Piece, String> {
    let style = Style::default();
    let (job, zone) = job(&row, &style)?;
    let scale = Scale::new(AMPLE, parse::mass(&row.step, &style).map_err(said)?, None, None).map_err(said)?;
    let reading = reading(&row, &style)?;
    let is_control = match row.control.as_str() {
        "" | "no" => false,
        "yes" => true,
        other => return Err(format!("control is “{other}”: write yes or no.")),
    };

    let of_glaze = known.iter().filter(|known| known.glaze == row.glaze && known.zone == zone);
    let controls: Vec<Control> = of_glaze
        .map(|known| Control { same_form: known.control.form_name == row.form, ..known.control.clone() })
        .collect();
    let evidence = Evidence { controls, tiles: Vec::new(), starting: STARTING_LAYDOWN };
    let target = target(&job, &evidence).map_err(said)?;
    let verdict = judge(&reading, &target, &scale, &job, evidence.controls.first())
        .map_err(|refused| in_words::reading_refused(&refused, &style))?;
    // A control piece of the list is one that its potter knows to be right.
    let verdict = verdict.on_a_guess(&target, &Trust::of(&target, &job, !row.sg.is_empty(), evidence.controls.len()));
    if is_control {
        let control = Control {
            wet: verdict.net,
            solids: job.solids,
            area: job.zone.area,
            area_relative_uncertainty: job.zone.relative_uncertainty,
            class: job.class,
            capacity: job.capacity,
            form_name: row.form.clone(),
            same_form: true,
            net_standard_uncertainty: scale.net_standard_uncertainty(),
        };
        known.push(Known { glaze: row.glaze.clone(), zone, control });
    }
    Ok(piece(row, zone, &target, &verdict, &style))
}

fn job(row: &Row, style: &Style) -> Result<(Job, ZoneKind), String> {
    let zone: ZoneKind = if row.zone.is_empty() { ZoneKind::Inside } else { row.zone.parse().map_err(said)? };
    let class: ShapeClass = row.shape.parse().map_err(said)?;
    let (zone_of_form, capacity) = match (row.capacity.as_str(), row.area.as_str()) {
        ("", "") => return Err("Neither capacity nor area is given.".into()),
        (capacity, "") => {
            let form = Form::by_capacity(class, parse::volume(capacity, style).map_err(said)?).map_err(said)?;
            let zone = form.zone(zone).ok_or_else(|| format!("A {} has no zone “{}”.", class.name(), zone.name()))?;
            (*zone, form.capacity)
        }
        ("", area) => {
            // Checked as a form's area is, whichever zone it belongs to.
            let area = parse::area(area, style).map_err(said)?;
            Form::by_area(class, Some(area), None).map_err(said)?;
            (Zone { kind: zone, area, relative_uncertainty: MEASURED_AREA }, None)
        }
        _ => return Err("Both capacity and area are given. Leave one empty.".into()),
    };
    let sg = if row.sg.is_empty() {
        SgReading::unchecked()
    } else {
        SgReading::checked(parse::specific_gravity(&row.sg, style).map_err(said)?)
    };
    let sensitivity =
        if row.sensitivity.is_empty() { Sensitivity::Medium } else { row.sensitivity.parse().map_err(said)? };
    let solids = Solids::of(sg, PowderDensity::default()).map_err(said)?;
    Ok((Job { form_name: row.form.clone(), zone: zone_of_form, capacity, class, solids, sensitivity }, zone))
}

fn reading(row: &Row, style: &Style) -> Result<Reading, String> {
    match (row.tare.as_str(), row.gross.as_str(), row.net.as_str()) {
        ("", "", "") => Err("No weight is given.".into()),
        ("", "", net) => Ok(Reading::Net(parse::mass(net, style).map_err(said)?)),
        (tare, gross, "") if !tare.is_empty() && !gross.is_empty() => Ok(Reading::TwoWeights {
            bare: parse::mass(tare, style).map_err(said)?,
            glazed: parse::mass(gross, style).map_err(said)?,
        }),
        _ => Err("Give tare and gross, or net alone.".into()),
    }
}

fn piece(row: Row, zone: ZoneKind, target: &Target, verdict: &Verdict, style: &Style) -> Piece {
    let aim = in_words::target(target, style, verdict.step);
    let words = in_words::verdict(verdict, style);
    let grams = |grams: Grams| grams.milligrams() as f64 / 1_000.0;
    let rests_on = match &target.source {
        Source::ControlSameForm => format!("{} of this form", target.pots),
        Source::ControlOtherSizeByArea { form_name } | Source::ControlOtherSizeByCapacity { form_name } => {
            format!("{} of {form_name}", target.pots)
        }
        _ => "a usual start".to_owned(),
    };
    Piece {
        form: row.form,
        glaze: row.glaze,
        zone: zone.code(),
        aim_g: grams(target.wet),
        low_g: grams(verdict.low),
        high_g: grams(verdict.high),
        aim_interval_g: [grams(target.interval.0), grams(target.interval.1)],
        source: target.source.code(),
        pots: target.pots,
        net_g: grams(verdict.net),
        half_width_g: grams(verdict.half_width),
        verdict: verdict.kind.code(),
        to_aim_g: grams(verdict.to_aim),
        to_within_g: grams(verdict.to_within),
        dry_g: grams(verdict.dry),
        laydown_g_per_100_cm2: verdict.laydown.milligrams_per_dm2() as f64 / 1_000.0,
        words: [
            format!("{} ({})", aim.aim, in_words::span(style, verdict.low, verdict.high, verdict.step)),
            rests_on,
            style.mass(verdict.net, verdict.step),
            words.headline,
            words.act,
            words.carries,
        ],
    }
}

/// Columns of the table, with their widths.
const COLUMNS: [(&str, usize); 9] = [
    ("line", 4),
    ("form, zone", 22),
    ("glaze", 10),
    ("aim", 24),
    ("from", 16),
    ("net", 8),
    ("verdict", 22),
    ("do", 26),
    ("carries", 0),
];

/// The day as a table to read.
pub fn as_table(day: &[Outcome]) -> String {
    let mut lines = vec![table_line(COLUMNS.map(|(title, _)| title))];
    let mut refused = Vec::new();
    let mut counts = VerdictKind::ALL.iter().map(|kind| (*kind, 0)).collect::<Vec<_>>();
    for outcome in day {
        match &outcome.result {
            Judged::Piece(piece) => {
                let [aim, from, net, verdict, act, carries] = piece.words.each_ref().map(String::as_str);
                let line = outcome.line.to_string();
                let form = format!("{}, {}", piece.form, piece.zone);
                lines.push(table_line([&line, &form, &piece.glaze, aim, from, net, verdict, act, carries]));
                for (kind, count) in &mut counts {
                    *count += usize::from(kind.code() == piece.verdict);
                }
            }
            Judged::Refused(why) => refused.push(format!("line {}: {why}", outcome.line)),
        }
    }
    let judged = day.len() - refused.len();
    let kinds: Vec<String> = counts.iter().map(|(kind, count)| format!("{count} {}", kind.name())).collect();
    lines.push(format!("\n{judged} judged: {}.", kinds.join(", ")));
    if !refused.is_empty() {
        lines.push(format!("{} not judged:", refused.len()));
        lines.extend(refused);
    }
    lines.join("\n") + "\n"
}

fn table_line(cells: [&str; 9]) -> String {
    let padded: Vec<String> = cells.iter().zip(COLUMNS).map(|(cell, (_, width))| format!("{cell:<width$}")).collect();
    padded.join("  ").trim_end().to_owned()
}

/// The day for machines: a list with one object a row.
///
/// # Errors
/// When a number cannot be written.
pub fn as_json(day: &[Outcome]) -> Result<String, String> {
    serde_json::to_string_pretty(day).map(|text| text + "\n").map_err(|error| error.to_string())
}
