//! The Backup page: everything into one file that can lie elsewhere, and such a file taken in again.

use std::io::Write;
use std::path::Path;

use chrono::{DateTime, Utc};
use rusqlite::Connection;

use super::facts::code;
use super::words::count;
use super::{Note, Now, Result, Studio};
use crate::form::ZoneKind;
use crate::store::backup::{Contents, check_backup};
use crate::store::entity::{Bucket, Check, Coat, Entity, Finding, Firing, Form, Glaze, Kiln, Placement};
use crate::store::{StoreError, chosen, query};
use crate::units::{Celsius, Grams, Laydown};

/// When this phone last made a backup, unix ms, as it is remembered.
const BACKED_UP: &str = "backed_up";
/// After so many days without one the potter is reminded.
const REMIND_AFTER_DAYS: i64 = 30;

/// The Backup page.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize)]
pub struct BackupView {
    /// What a backup is for, and what it holds.
    pub intro: String,
    /// When this phone last made one.
    pub last: String,
    /// The name to offer for a new one.
    pub name: String,
    /// What to mind.
    pub notes: Vec<Note>,
}

impl Studio {
    /// The Backup page.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn backup(&self, now: Now) -> Result<BackupView> {
        self.store.read(|conn| {
            let last = last_backup(conn)?;
            let day = DateTime::<Utc>::from_timestamp_millis(now.unix_ms + i64::from(now.utc_offset_s) * 1000);
            Ok(BackupView {
                intro: "Everything in one file: all weights, firings and photographs. Keep it somewhere else than on this phone, and laydown takes it in again on any phone. Whoever has the file can read it.".to_owned(),
                last: match last {
                    Some(at) => format!("Last backup: {}.", now.moment(at)),
                    None => "No backup has been made on this phone.".to_owned(),
                },
                name: format!("laydown-{}.zip", day.map(|day| day.format("%Y-%m-%d").to_string()).unwrap_or_default()),
                notes: reminder(conn, now)?.into_iter().map(Note::attention).collect(),
            })
        })
    }

    /// Writes everything into one file at `into`, and reads it again to be sure. Answers with what to say.
    ///
    /// # Errors
    /// [`super::StudioError::Full`] or [`super::StudioError::Unreadable`] when it cannot be written; then it is not there.
    pub fn back_up(&self, into: &Path) -> Result<String> {
        self.store.back_up(
            into,
            &[("readings", &readings), ("checks", &checks), ("firings", &firings), ("pieces", &pieces)],
        )?;
        Ok(in_words(check_backup(into)?))
    }

    /// Reads the backup that has arrived where it is to lie, `copy`, and remembers that there is one. Answers with what to
    /// say.
    ///
    /// # Errors
    /// [`super::StudioError::Refused`] when it did not arrive whole.
    pub fn backed_up(&self, now: Now, copy: &Path) -> Result<String> {
        let contents = check_backup(copy)?;
        self.command(now, |tx| Ok(tx.choose(BACKED_UP, Some(&now.unix_ms.to_string()))?))?;
        Ok(format!("Backup made and read again: {}.", in_words(contents)))
    }

    /// Takes a backup in: what is here already stays as it is, what is new is added. Answers with what to say.
    ///
    /// # Errors
    /// [`super::StudioError::Refused`] when it is no backup, damaged or newer. Nothing is taken in then.
    pub fn take_in(&self, now: Now, from: &Path) -> Result<String> {
        let taken = self.store.take_in(now.unix_ms, from)?;
        if taken.new == Contents::default() {
            return Ok(format!("All of it was here already: {}.", in_words(taken.held)));
        }
        Ok(format!("Taken in: {}, of {} in the backup.", in_words(taken.new), in_words(taken.held)))
    }
}

/// What the Studio screen says of backups: the reminder, or when the last one was.
pub(super) fn in_a_line(conn: &Connection, now: Now) -> Result<String> {
    let reminder = reminder(conn, now)?;
    Ok(match (reminder, last_backup(conn)?) {
        (Some(reminder), _) => reminder,
        (None, Some(at)) => format!("Last one: {}", now.moment(at)),
        (None, None) => "Everything in one file, to keep elsewhere".to_owned(),
    })
}

/// What to say while there has been no backup for long, and there is something to lose.
fn reminder(conn: &Connection, now: Now) -> Result<Option<String>> {
    let Some(first) = query::first_coat_at(conn)? else { return Ok(None) };
    Ok(match last_backup(conn)? {
        Some(at) if now.days_since(at) > REMIND_AFTER_DAYS => {
            Some(format!("The last backup is {} days old. A lost phone loses what came since.", now.days_since(at)))
        }
        None if now.days_since(first) > REMIND_AFTER_DAYS => {
            Some("There has never been a backup. A lost phone loses everything: Studio, Backup.".to_owned())
        }
        _ => None,
    })
}

fn last_backup(conn: &Connection) -> Result<Option<i64>> {
    Ok(chosen(conn, BACKED_UP)?.and_then(|text| text.parse().ok()))
}

fn in_words(contents: Contents) -> String {
    let mut words = format!(
        "{} and {}",
        count(contents.events as i64, "entry", "entries"),
        count(contents.photos as i64, "photograph", "photographs")
    );
    if contents.missing > 0 {
        words += &format!(" ({} more could not be found)", contents.missing);
    }
    words
}

// ---- the tables for a spreadsheet: RFC 4180, numbers with a point, times in UTC, units in the headers ----

fn readings(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let mut table = Table::begin(
        to,
        &[
            "at",
            "piece",
            "code",
            "form",
            "glaze",
            "bucket",
            "zone",
            "wet_weight_g",
            "aim_g",
            "low_g",
            "high_g",
            "verdict",
            "laydown_g_per_dm2",
            "specific_gravity",
            "control_piece",
            "note",
        ],
    )?;
    let grams = |mg: i64| Grams::from_milligrams(mg).value().to_string();
    query::each_coat(conn, |coat: Coat| {
        table.row(&[
            time(coat.at),
            coat.piece.to_string(),
            coat.code.unwrap_or_default(),
            name::<Form>(conn, coat.form, |form| form.name)?,
            name::<Glaze>(conn, coat.glaze, |glaze| glaze.name)?,
            name::<Bucket>(conn, coat.bucket, |bucket| bucket.name)?,
            code::<ZoneKind>(&coat.zone).map_or(coat.zone.clone(), |zone| zone.name().to_owned()),
            grams(coat.net_mg),
            grams(coat.aim_mg),
            grams(coat.low_mg),
            grams(coat.high_mg),
            coat.verdict,
            Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2).value().to_string(),
            (coat.specific_gravity_e5 as f64 / 1e5).to_string(),
            yes(coat.control),
            coat.note.unwrap_or_default(),
        ])
    })?;
    table.end()
}

fn checks(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let mut table = Table::begin(to, &["at", "bucket", "specific_gravity", "flow_s", "note"])?;
    for check in Check::all(conn)? {
        table.row(&[
            time(check.at),
            name::<Bucket>(conn, check.bucket, |bucket| bucket.name)?,
            (check.specific_gravity_e5 as f64 / 1e5).to_string(),
            check.flow_ms.map(|ms| (ms as f64 / 1e3).to_string()).unwrap_or_default(),
            check.note.unwrap_or_default(),
        ])?;
    }
    table.end()
}

fn firings(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let mut table = Table::begin(
        to,
        &["firing", "begun", "fired", "kiln", "cone", "cone_kind", "top_c", "minutes", "program", "state", "note"],
    )?;
    for firing in Firing::all(conn)?.into_iter().filter(|firing| !firing.gone) {
        table.row(&[
            firing.id.to_string(),
            time(firing.at),
            firing.fired_at.map(time).unwrap_or_default(),
            name::<Kiln>(conn, firing.kiln, |kiln| kiln.name)?,
            firing.cone,
            firing.cone_kind,
            firing.top_mc.map(|mc| Celsius::from_millidegrees(mc).value().to_string()).unwrap_or_default(),
            firing.minutes.map(|minutes| minutes.to_string()).unwrap_or_default(),
            firing.program.unwrap_or_default(),
            firing.state,
            firing.note.unwrap_or_default(),
        ])?;
    }
    table.end()
}

fn pieces(conn: &Connection, to: &mut dyn Write) -> Result<(), StoreError> {
    let mut table = Table::begin(
        to,
        &["piece", "firing", "shelf", "inside", "outside", "overlap", "faults", "liking_1_to_5", "fire_again", "note"],
    )?;
    for placed in Placement::all(conn)?.into_iter().filter(|placed| !placed.gone) {
        let found = query::finding(conn, placed.piece, placed.firing)?.unwrap_or_else(Finding::default);
        let faults = found.faults.unwrap_or_default().0;
        let faults = faults.into_iter().map(|(fault, place)| format!("{fault} {place}").trim().to_owned());
        table.row(&[
            placed.piece.to_string(),
            placed.firing.to_string(),
            (placed.shelf + 1).to_string(),
            found.inside.unwrap_or_default(),
            found.outside.unwrap_or_default(),
            found.overlap.unwrap_or_default(),
            faults.collect::<Vec<_>>().join("; "),
            found.liking.map(|stars| stars.to_string()).unwrap_or_default(),
            yes(found.again),
            found.note.unwrap_or_default(),
        ])?;
    }
    table.end()
}

/// A table being written.
struct Table<'a>(csv::Writer<&'a mut dyn Write>);

impl<'a> Table<'a> {
    fn begin(to: &'a mut dyn Write, headers: &[&str]) -> Result<Table<'a>, StoreError> {
        let mut writer = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(to);
        writer.write_record(headers).map_err(of_csv)?;
        Ok(Table(writer))
    }

    fn row(&mut self, cells: &[String]) -> Result<(), StoreError> {
        // A cell that a spreadsheet would take for a formula is only ever text.
        let plain = |cell: &String| {
            let is_formula = cell.starts_with(['=', '+', '@']) || cell.starts_with('-') && cell.parse::<f64>().is_err();
            if is_formula { format!("'{cell}") } else { cell.clone() }
        };
        self.0.write_record(cells.iter().map(plain)).map_err(of_csv)
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

/// "2026-11-25T10:15:00Z".
fn time(unix_ms: i64) -> String {
    let time = DateTime::<Utc>::from_timestamp_millis(unix_ms);
    time.map(|time| time.format("%Y-%m-%dT%H:%M:%SZ").to_string()).unwrap_or_default()
}

fn yes(is: bool) -> String {
    if is { "yes" } else { "no" }.to_owned()
}

fn name<E: Entity>(conn: &Connection, id: uuid::Uuid, called: impl FnOnce(E) -> String) -> Result<String, StoreError> {
    Ok(E::load(conn, id)?.map(called).unwrap_or_default())
}
