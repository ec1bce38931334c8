//! The tables for a spreadsheet: RFC 4180, numbers with a point, times in UTC as ISO 8601 writes them, units in the headers,
//! so that they read the same in whatever country the spreadsheet thinks it is. They lie in a backup and are exported apart.
//!
//! They begin with a byte order mark: without it the commonest spreadsheet takes UTF-8 for an older encoding, and every
//! accent in a glaze's name comes out wrong. Programs that read UTF-8 know the mark.

use std::collections::HashMap;
use std::io::Write;

use chrono::{DateTime, Utc};
use rusqlite::Connection;
use uuid::Uuid;

use crate::StudioError;
use crate::evidence::code;
use crate::form_geometry::shape;
use crate::kiln::Pot;
use laydown_domain::form::{ShapeClass, ZoneKind};
use laydown_domain::kiln::cone::Reading;
use laydown_domain::units::{Celsius, Grams, Laydown, Millilitres, SquareCentimetres};
use laydown_domain::visible::after_hidden;
use laydown_store::StoreError;
use laydown_store::backup::TableWriter;
use laydown_store::entity::{Body, Bucket, Check, Coat, Entity, Finding, Firing, Form, Glaze, Kiln, Placement};
use laydown_store::query;

/// A table as it is offered.
pub(super) struct TableKind {
    /// Its name, which is also that of its file and picks its words on the screen.
    pub(super) name: &'static str,
    write: fn(&Connection, &mut dyn Write) -> Result<(), StoreError>,
}

impl TableKind {
    pub(super) fn writer(&self) -> TableWriter<'_> {
        (self.name, &self.write)
    }
}

/// Every table, the one that is wanted most first.
pub(super) const TABLES: &[TableKind] = &[
    TableKind { name: "readings", write: readings },
    TableKind { name: "pieces", write: pieces },
    TableKind { name: "firings", write: firings },
    TableKind { name: "buckets", write: buckets },
    TableKind { name: "checks", write: checks },
    TableKind { name: "glazes", write: glazes },
    TableKind { name: "forms", write: forms },
];

fn readings(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let headers = [
        "at",
        "form",
        "glaze",
        "bucket",
        "zone",
        "wet_weight_g",
        "bare_g",
        "glazed_g",
        "aim_g",
        "low_g",
        "high_g",
        "verdict",
        "laydown_g_per_dm2",
        "specific_gravity",
        "control_piece",
        "code",
        "note",
        "piece",
    ];
    let mut table = Table::begin(to, &headers)?;
    let mut names = Names::default();
    query::each_coat(conn, |coat: Coat| {
        table.row(&[
            time(coat.at),
            names.of::<Form>(conn, coat.form, |form| form.name)?,
            names.of::<Glaze>(conn, coat.glaze, |glaze| glaze.name)?,
            names.of::<Bucket>(conn, coat.bucket, |bucket| bucket.name)?,
            code::<ZoneKind>(&coat.zone).map_or(coat.zone.clone(), |zone| zone_cell(zone).to_owned()),
            grams(coat.net_mg),
            maybe(coat.bare_mg, grams),
            maybe(coat.glazed_mg, grams),
            grams(coat.aim_mg),
            grams(coat.low_mg),
            grams(coat.high_mg),
            coat.verdict,
            laydown(coat.laydown_mg_dm2),
            specific_gravity(coat.specific_gravity_e5),
            yes(coat.control),
            coat.code.unwrap_or_default(),
            coat.note.unwrap_or_default(),
            coat.piece.to_string(),
        ])
    })?;
    table.end()
}

fn pieces(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let headers = [
        "form",
        "code",
        "glazes",
        "fired",
        "kiln",
        "cone",
        "shelf",
        "inside",
        "outside",
        "overlap",
        "faults",
        "liking_1_to_5",
        "fire_again",
        "note",
        "photos",
        "piece",
        "firing",
        "firing_number",
    ];
    let mut table = Table::begin(to, &headers)?;
    for placed in Placement::all(conn)?.into_iter().filter(|placed| !placed.gone) {
        let firing = Firing::load(conn, placed.firing)?.unwrap_or_default();
        let pot = Pot::load(conn, placed.piece).and_then(|pot| pot.in_firing(conn, &firing)).map_err(of_app)?;
        let mut of_piece: Vec<String> = Vec::new();
        for coat in &pot.coats {
            let glaze = name::<Glaze>(conn, coat.glaze, |glaze| glaze.name)?;
            if !of_piece.contains(&glaze) {
                of_piece.push(glaze);
            }
        }
        let form = pot.form_id().map(|form| name::<Form>(conn, form, |form| form.name)).transpose()?;
        let photos = query::photos(conn, placed.piece)?.into_iter();
        let photos = photos.filter(|photo| photo.firing == Some(placed.firing)).map(|photo| photo.sha256);
        let found = query::finding(conn, placed.piece, placed.firing)?.unwrap_or_else(Finding::default);
        let faults = found.faults.unwrap_or_default().0;
        let faults = faults.iter().map(|(fault, place)| fault_cell(fault, place));
        table.row(&[
            form.unwrap_or_else(|| pot.own_name().to_owned()),
            pot.code().to_owned(),
            of_piece.join("; "),
            maybe(firing.fired_at, time),
            name::<Kiln>(conn, firing.kiln, |kiln| kiln.name)?,
            firing.cone,
            placed.shelf.saturating_add(1).to_string(),
            found.inside.unwrap_or_default(),
            found.outside.unwrap_or_default(),
            found.overlap.unwrap_or_default(),
            faults.collect::<Vec<_>>().join("; "),
            maybe(found.liking, |stars| stars.to_string()),
            yes(found.again),
            found.note.unwrap_or_default(),
            photos.collect::<Vec<_>>().join("; "),
            placed.piece.to_string(),
            placed.firing.to_string(),
            maybe(firing.number, |number| number.to_string()),
        ])?;
    }
    table.end()
}

fn firings(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let headers = [
        "begun",
        "fired",
        "kiln",
        "cone",
        "cone_kind",
        "top_c",
        "minutes",
        "program",
        "state",
        "note",
        "firing",
        "number",
        "name",
        "ware",
        "witness_cones",
    ];
    let mut table = Table::begin(to, &headers)?;
    for firing in Firing::all(conn)?.into_iter().filter(|firing| !firing.gone) {
        table.row(&[
            time(firing.at),
            maybe(firing.fired_at, time),
            name::<Kiln>(conn, firing.kiln, |kiln| kiln.name)?,
            firing.cone,
            firing.cone_kind,
            maybe(firing.top_mc, |mc| Celsius::from_millidegrees(mc).value().to_string()),
            maybe(firing.minutes, |minutes| minutes.to_string()),
            firing.program.unwrap_or_default(),
            firing.state,
            firing.note.unwrap_or_default(),
            firing.id.to_string(),
            maybe(firing.number, |number| number.to_string()),
            firing.name.unwrap_or_default(),
            firing.fires.unwrap_or_else(|| "glazed".to_owned()),
            firing.witnesses.unwrap_or_default().0.iter().map(witness_cell).collect::<Vec<_>>().join("; "),
        ])?;
    }
    table.end()
}

fn buckets(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let headers = ["bucket", "glaze", "mixed", "volume_ml", "checked", "specific_gravity", "in_use"];
    let mut table = Table::begin(to, &headers)?;
    for bucket in Bucket::all(conn)? {
        let check = query::latest_check(conn, bucket.id)?;
        table.row(&[
            bucket.name,
            name::<Glaze>(conn, bucket.glaze, |glaze| glaze.name)?,
            time(bucket.mixed_at),
            maybe(bucket.volume_ul, millilitres),
            maybe(check.as_ref(), |check| time(check.at)),
            maybe(check.as_ref(), |check| specific_gravity(check.specific_gravity_e5)),
            yes(!bucket.gone),
        ])?;
    }
    table.end()
}

fn checks(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let mut table = Table::begin(to, &["at", "bucket", "specific_gravity", "how", "flow_s", "temperature_c", "note"])?;
    for check in Check::all(conn)?.into_iter().filter(|check| !check.gone) {
        table.row(&[
            time(check.at),
            name::<Bucket>(conn, check.bucket, |bucket| bucket.name)?,
            specific_gravity(check.specific_gravity_e5),
            check.how,
            maybe(check.flow_ms, |ms| (ms as f64 / 1e3).to_string()),
            maybe(check.temperature_mc, |mc| Celsius::from_millidegrees(mc).value().to_string()),
            check.note.unwrap_or_default(),
        ])?;
    }
    table.end()
}

fn glazes(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let headers = ["glaze", "sensitivity", "powder_specific_gravity", "starting_laydown_g_per_dm2", "in_use"];
    let mut table = Table::begin(to, &headers)?;
    for glaze in Glaze::all(conn)? {
        table.row(&[
            glaze.name,
            glaze.sensitivity,
            (glaze.powder_density_e3 as f64 / 1e3).to_string(),
            laydown(glaze.starting_laydown_mg_dm2),
            yes(!glaze.gone),
        ])?;
    }
    table.end()
}

fn forms(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let headers = ["form", "shape", "body", "capacity_ml", "inside_area_cm2", "outside_area_cm2", "in_use"];
    let mut table = Table::begin(to, &headers)?;
    for form in Form::all(conn)? {
        // One that this version cannot calculate has no areas here: its measures are in the journal, and no backup fails by it.
        let shape = shape(conn, &form).ok();
        let area = |zone: ZoneKind| {
            let area = shape.as_ref().and_then(|shape| shape.zone(zone)).map(|zone| zone.area);
            maybe(area, |area| {
                SquareCentimetres::from_square_millimetres(area.square_millimetres()).value().to_string()
            })
        };
        table.row(&[
            form.name,
            code::<ShapeClass>(&form.class).map_or(form.class.clone(), |class| class_cell(class).to_owned()),
            form.body.map(|body| name::<Body>(conn, body, |body| body.name)).transpose()?.unwrap_or_default(),
            maybe(shape.as_ref().and_then(|shape| shape.capacity), |capacity| millilitres(capacity.microlitres())),
            area(ZoneKind::Inside),
            area(ZoneKind::Outside),
            yes(!form.gone),
        ])?;
    }
    table.end()
}

/// "running, outside at 87% of the height".
fn fault_cell(fault: &str, place: &str) -> String {
    let fault = fault.replace('_', " ");
    match place.split_once(' ').and_then(|(side, height)| Some((side, height.parse::<u16>().ok()?))) {
        Some((side, thousandths)) => format!("{fault}, {side} at {}% of the height", thousandths / 10),
        None => fault,
    }
}

/// "6 bent", or "6" while it was not read.
fn witness_cell((cone, reading): &(String, String)) -> String {
    let reading = match reading.parse() {
        Ok(Reading::Standing) => "not bent",
        Ok(Reading::Soft) => "soft",
        Ok(Reading::At) => "bent",
        Ok(Reading::Hard) => "hard",
        Ok(Reading::Flat) => "flat",
        Err(_) => reading,
    };
    format!("{cone} {reading}").trim_end().to_owned()
}

fn of_app(error: StudioError) -> StoreError {
    StoreError::Fault { details: error.to_string() }
}

/// As the headers, what stands in the cells is in English, whatever language the app speaks: what reads a table goes on
/// reading it.
fn zone_cell(zone: ZoneKind) -> &'static str {
    match zone {
        ZoneKind::Inside => "inside",
        ZoneKind::Outside => "outside",
        ZoneKind::Whole => "inside and outside",
    }
}

fn class_cell(class: ShapeClass) -> &'static str {
    match class {
        ShapeClass::CylinderMug => "straight mug",
        ShapeClass::RoundedMug => "rounded mug",
        ShapeClass::OpenBowl => "open bowl",
        ShapeClass::DeepBowl => "deep bowl",
        ShapeClass::Plate => "plate",
        ShapeClass::Bottle => "bottle",
        ShapeClass::Jar => "jar",
        ShapeClass::Vase => "vase",
        ShapeClass::Teapot => "teapot",
        ShapeClass::Planter => "planter",
        ShapeClass::Tile => "tile",
    }
}

/// A table being written.
struct Table<'a>(csv::Writer<&'a mut dyn Write>);

impl<'a> Table<'a> {
    fn begin(to: &'a mut dyn Write, headers: &[&str]) -> Result<Table<'a>, StoreError> {
        to.write_all("\u{feff}".as_bytes())?;
        let mut writer = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(to);
        writer.write_record(headers).map_err(of_csv)?;
        Ok(Table(writer))
    }

    fn row(&mut self, cells: &[String]) -> Result<(), StoreError> {
        self.0.write_record(cells.iter().map(|cell| as_text(cell))).map_err(of_csv)
    }

    fn end(mut self) -> Result<(), StoreError> {
        Ok(self.0.flush()?)
    }
}

fn of_csv(error: csv::Error) -> StoreError {
    match error.into_kind() {
        csv::ErrorKind::Io(error) => error.into(),
        other => StoreError::Fault { details: format!("{other:?}") },
    }
}

/// A cell that a spreadsheet would run as a formula, as when a note begins with an equals sign or a sheet from elsewhere
/// was taken in, gets an apostrophe before it: it is only ever text. Quotation marks do not do that: they are gone by the
/// time the spreadsheet looks at the cell. Source: OWASP, CSV Injection (owasp.org/www-community/attacks/CSV_Injection).
fn as_text(cell: &str) -> String {
    if is_taken_for_a_formula(cell) && !is_number(cell) || is_marked(cell) {
        format!("'{cell}")
    } else {
        cell.to_owned()
    }
}

/// A cell as it was before [`as_text`].
pub(crate) fn as_it_was(cell: &str) -> &str {
    cell.strip_prefix('\'').filter(|rest| is_taken_for_a_formula(rest) || is_marked(rest)).unwrap_or(cell)
}

fn is_number(cell: &str) -> bool {
    cell.parse().is_ok_and(f64::is_finite)
}

/// Also the wide forms, which some spreadsheets take for the narrow ones, and behind spaces and characters that cannot be
/// seen, which some leave out.
fn is_taken_for_a_formula(cell: &str) -> bool {
    cell.starts_with(['\t', '\r', '\n']) || after_hidden(cell).starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠'])
}

/// What looks as if it had been given an apostrophe is given one more, so that each cell comes back as it was.
fn is_marked(cell: &str) -> bool {
    cell.starts_with('\'') && is_taken_for_a_formula(cell.trim_start_matches('\''))
}

/// "2026-11-25T10:15:00Z".
fn time(unix_ms: i64) -> String {
    let time = DateTime::<Utc>::from_timestamp_millis(unix_ms);
    time.map(|time| time.format("%Y-%m-%dT%H:%M:%SZ").to_string()).unwrap_or_default()
}

fn grams(milligrams: i64) -> String {
    Grams::from_milligrams(milligrams).value().to_string()
}

fn millilitres(microlitres: i64) -> String {
    Millilitres::from_microlitres(microlitres).value().to_string()
}

fn laydown(milligrams_per_dm2: i64) -> String {
    Laydown::from_milligrams_per_dm2(milligrams_per_dm2).value().to_string()
}

fn specific_gravity(hundred_thousandths: i64) -> String {
    (hundred_thousandths as f64 / 1e5).to_string()
}

fn yes(is: bool) -> String {
    if is { "yes" } else { "no" }.to_owned()
}

/// An empty cell for what is not known.
fn maybe<T>(value: Option<T>, written: impl FnOnce(T) -> String) -> String {
    value.map(written).unwrap_or_default()
}

/// Names that were looked up: a million coats are of a few dozen forms and glazes.
#[derive(Default)]
struct Names(HashMap<Uuid, String>);

impl Names {
    fn of<E: Entity>(
        &mut self,
        conn: &Connection,
        id: Uuid,
        called: impl FnOnce(E) -> String,
    ) -> Result<String, StoreError> {
        if let Some(known) = self.0.get(&id) {
            return Ok(known.clone());
        }
        let found = name(conn, id, called)?;
        self.0.insert(id, found.clone());
        Ok(found)
    }
}

fn name<E: Entity>(conn: &Connection, id: Uuid, called: impl FnOnce(E) -> String) -> Result<String, StoreError> {
    Ok(E::load(conn, id)?.map(called).unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn what_a_spreadsheet_would_run_is_text() {
        for cell in
            ["=1+1", "=HYPERLINK(\"x\")", "+1+1", "-1+1", "-dry", "@SUM(A1)", "\t=1", "＝1+1", "=cmd|' /C calc'!A0"]
        {
            assert_eq!(as_text(cell), format!("'{cell}"));
        }
        for hidden in
            [" ", "\u{a0}", "\t", "\r", "\u{feff}", "\u{200b}", "\u{200d}", "\u{202e}", "\u{feff} \u{200b}", "\0"]
        {
            for cell in ["=1+1", "+1", "-1", "@SUM(A1)", "＝1"] {
                let cell = format!("{hidden}{cell}");
                assert_eq!(as_text(&cell), format!("'{cell}"), "{cell:?}");
                assert_eq!(as_it_was(&as_text(&cell)), cell);
            }
        }
        for cell in ["", "a=1", "-5", "-0.5", "+3", "'tis", "''", "Ash - white", "2026-11-25T10:15:00Z"] {
            assert_eq!(as_text(cell), cell);
        }
        assert_eq!((as_text("'=1").as_str(), as_it_was("''=1")), ("''=1", "'=1"));
    }

    proptest! {
        #[test]
        fn every_cell_comes_back_as_it_was(cell in "['=+@\\-＝\t a1\u{feff}\u{200b}\u{202e}]{0,6}") {
            let written = as_text(&cell);
            prop_assert_eq!(as_it_was(&written), cell.as_str());
            prop_assert!(!is_taken_for_a_formula(&written) || is_number(&written));
        }
    }
}
