//! A potter's own spreadsheet, saved as CSV: which column holds what, what taking it in would do, and taking it in.
//!
//! A line is judged as it would have been on its day, by the checks, tiles and control pieces that were known then; an aim
//! that stands in the sheet goes before that. What laydown wrote itself comes back as it went out.

mod cells;
mod columns;
mod existing_coats;
mod plan;
mod read;
mod results;
mod studio_snapshot;
mod table;
#[cfg(test)]
mod tests;
mod vocabulary;

use std::path::Path;

use rusqlite::Connection;
use uuid::{Builder, Uuid};

use self::cells::DateOrder;
use self::columns::{ColumnRole, chosen};
use self::existing_coats::Here;
use self::plan::{Piece, Plan, Planned, plan};
use self::read::{ASKED, MAKE, UNITS, Unknown, read, short};
use self::studio_snapshot::Ground;
use self::table::{Table, TableError};
use super::editor::{EditorField, FieldKind, Item, Value, item};
use super::evidence::code;
use super::{CommandResult, Note, Now, Result, Row, Studio, StudioError};
use crate::date_text::sentence_case;
use crate::in_words::{Named, Sentence};
use crate::messages::import as say;
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::coded::Coded;
use laydown_domain::form::ZoneKind;
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::kiln::cone::Cone;
use laydown_domain::units::{DecimalMark, Grams, SpecificGravity};
use laydown_store::Transaction;
use laydown_store::entity;

/// Cells of a column that are shown, so that one sees what it holds.
const EXAMPLES: usize = 3;
/// Readings that are shown as they would be kept.
const PREVIEW: usize = 6;

/// What taking a spreadsheet in would do.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ImportView {
    /// What to do here.
    pub intro: String,
    /// The columns of the sheet: a choice each, with a few of its cells.
    pub columns: Vec<EditorField>,
    /// What the sheet leaves open: how its dates and numbers are written, what a name means, which scale was used.
    pub questions: Vec<EditorField>,
    /// How many readings would be imported, and how many lines not.
    pub found: String,
    /// What to mind.
    pub notes: Vec<Note>,
    /// The first readings as they would be kept; their ids are the numbers of their lines.
    pub readings: Vec<Row>,
    /// What is wrong with the lines that cannot be imported: "Line 7: …". The first of them; the last says how many more.
    pub row_errors: Vec<String>,
    /// What the button says.
    pub take_in_label: String,
    /// Whether it can be taken in as it stands.
    pub can_take_in: bool,
}

#[uniffi::export]
impl Studio {
    /// What taking in the spreadsheet in `file` would do. `columns` holds what was chosen: under the key of a column or a
    /// question of the view, the code of an item.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when the file is no sheet that can be read; its sentence says what to do.
    pub fn import(&self, now: Now, file: &Path, columns: &[Value]) -> Result<ImportView> {
        let table = Table::open(file)?;
        self.store.read(|conn| {
            let plan = planned(conn, now, &table, columns)?;
            view(&plan, now, &table, columns)
        })
    }

    /// Takes the spreadsheet in `file` in, as [`Studio::import`] said with the same `columns`. One command, with one undo.
    ///
    /// # Errors
    /// As [`Studio::import`], and [`StudioError::Refused`] with the key of what is still open, or when nothing is left to
    /// take in. Nothing is half taken in.
    pub fn import_spreadsheet(&self, now: Now, file: &Path, columns: &[Value]) -> Result<CommandResult> {
        let table = Table::open(file)?;
        let stored = self.command(now, |tx| {
            let plan = planned(tx.conn(), now, &table, columns)?;
            if let Some(open) = plan.terms.open.first() {
                return Err(StudioError::refused(&open.key, &open.sentence));
            }
            if plan.coats.is_empty() {
                return Err(StudioError::refused("", found(&plan)));
            }
            let sentence = taken_in(&plan);
            write(tx, now, plan)?;
            Ok(sentence)
        })?;
        Ok(CommandResult::new(String::new(), stored.value, stored.undo))
    }
}

impl From<TableError> for StudioError {
    fn from(error: TableError) -> StudioError {
        StudioError::refused("file", error.sentence())
    }
}

fn planned(conn: &Connection, now: Now, table: &Table, values: &[Value]) -> Result<Plan> {
    let read = read(table, values, Ground::survey(conn)?, now);
    let here = Here::find(conn, &read)?;
    Ok(plan(read, here))
}

/// Saves what is planned: the glazes and buckets that are to be made and used, the coats, and how they came out of the kiln.
fn write(tx: &mut Transaction<'_>, now: Now, plan: Plan) -> Result<()> {
    let Plan { mut ground, terms, coats, pieces, .. } = plan;
    let used_glazes = used(&coats, ground.glazes.len(), |planned| planned.glaze);
    let used_buckets = used(&coats, ground.buckets.len(), |planned| planned.bucket);
    for (glaze, _) in ground.glazes.iter_mut().zip(used_glazes).filter(|(glaze, used)| glaze.made && *used) {
        glaze.row.id = tx.new_id();
        tx.put(&glaze.row)?;
    }
    for (bucket, _) in ground.buckets.iter_mut().zip(used_buckets).filter(|(bucket, used)| bucket.made && *used) {
        bucket.row.id = tx.new_id();
        bucket.row.glaze = ground.glazes[bucket.glaze].row.id;
        tx.put(&bucket.row)?;
    }
    let pieces: Vec<Uuid> = pieces
        .into_iter()
        .map(|piece| match piece {
            Piece::Named(id) => id,
            Piece::New(at) => dated(tx.new_id(), at),
        })
        .collect();
    for planned in &coats {
        let id = tx.new_id();
        tx.put(&entity::Coat {
            id,
            piece: pieces[planned.piece],
            glaze: ground.glazes[planned.glaze].row.id,
            bucket: ground.buckets[planned.bucket].row.id,
            ..planned.coat.clone()
        })?;
    }
    results::write(tx, now, &ground, terms.kiln, &coats, &pieces)
}

/// Which of so many things the coats have to do with.
fn used(coats: &[Planned], all: usize, place: fn(&Planned) -> usize) -> Vec<bool> {
    let mut used = vec![false; all];
    coats.iter().for_each(|planned| used[place(planned)] = true);
    used
}

/// The same id as if it had been given at `unix_ms`: a piece's coats are looked for in the weeks after it was named.
fn dated(id: Uuid, unix_ms: i64) -> Uuid {
    let mut random = [0; 10];
    random.copy_from_slice(&id.as_bytes()[6..]);
    Builder::from_unix_timestamp_millis(unix_ms.max(0).unsigned_abs(), &random).into_uuid()
}

fn view(plan: &Plan, now: Now, table: &Table, values: &[Value]) -> Result<ImportView> {
    let readings = plan.coats.iter().take(PREVIEW).map(|planned| reading(plan, now, planned));
    let mut row_errors: Vec<String> =
        plan.row_errors.shown.iter().map(|(line, sentence)| say::line_error(line, sentence)).collect();
    if let Some(more) = plan.row_errors.all.checked_sub(row_errors.len()).filter(|more| *more > 0) {
        row_errors.push(say::more_line_errors(more));
    }
    Ok(ImportView {
        intro: say::intro(),
        columns: column_fields(plan, table),
        questions: questions(plan, values),
        found: found(plan),
        notes: notes(plan, table),
        readings: readings.collect::<Result<_>>()?,
        row_errors,
        take_in_label: match plan.coats.len() {
            0 => say::take_in_nothing(),
            coats => say::take_in(coats),
        },
        can_take_in: plan.terms.open.is_empty() && !plan.coats.is_empty(),
    })
}

/// "48 readings would be imported. 2 lines are here already. 3 lines cannot be imported."
fn found(plan: &Plan) -> String {
    if !plan.terms.open.is_empty() {
        return say::found_but_open(plan.terms.lines);
    }
    let mut sentences = vec![match plan.coats.len() {
        0 => say::nothing_would_be_imported(),
        coats => say::would_be_imported(coats),
    }];
    let fired = plan.coats.iter().filter(|planned| planned.fired.is_some()).count();
    if fired > 0 {
        sentences.push(say::with_results(fired));
    }
    if plan.already > 0 {
        sentences.push(say::here_already(plan.already));
    }
    if plan.row_errors.all > 0 {
        sentences.push(say::cannot_be_imported(plan.row_errors.all));
    }
    sentences.join(" ")
}

/// "Restored: 48 readings. 3 lines were left out."
fn taken_in(plan: &Plan) -> String {
    let imported = say::imported(plan.coats.len());
    match plan.row_errors.all {
        0 => imported,
        lines => [imported, say::left_out(lines)].join(" "),
    }
}

fn reading(plan: &Plan, now: Now, planned: &Planned) -> Result<Row> {
    let coat = &planned.coat;
    let step = plan.ground.scales.get(plan.terms.scale).map_or(Grams::new(0.1), |(_, scale)| scale.step);
    let zone: ZoneKind = code(&coat.zone)?;
    let verdict: VerdictKind = code(&coat.verdict)?;
    Ok(Row {
        id: planned.line.to_string(),
        title: format!("{}, {}", plan.ground.forms[planned.form].row.name, zone.name()),
        detail: format!(
            "{}, {}, {}, {}",
            now.moment(coat.at),
            plan.ground.style.mass(Grams::from_milligrams(coat.net_mg), step),
            plan.ground.glazes[planned.glaze].row.name,
            verdict.name()
        ),
        chosen: coat.control,
        outline: Vec::new(),
    })
}

fn notes(plan: &Plan, table: &Table) -> Vec<Note> {
    let answered_beside = |key: &str| key.is_empty();
    let mut notes: Vec<Note> = plan
        .terms
        .open
        .iter()
        .filter(|open| answered_beside(&open.key) || open.key == read::SCALE || open.key == read::KILN)
        .map(|open| Note::attention(&open.sentence))
        .collect();
    notes.extend(table.note.as_deref().map(Note::attention));
    if plan.assumed > 0 {
        let sg = plan.ground.style.specific_gravity(SgReading::unchecked().sg);
        notes.push(Note::attention(say::sg_assumed(plan.assumed, sg)));
    }
    let doubted = |planned: &&Planned| (planned.coat.specific_gravity_e5 as f64) < SpecificGravity::DOUBTFUL * 1e5;
    let thin = plan.coats.iter().filter(doubted).count();
    if thin > 0 {
        let least = plan.ground.style.number(SpecificGravity::DOUBTFUL, 2);
        notes.push(Note::attention(say::sg_very_thin(thin, least)));
    }
    let used = used(&plan.coats, plan.ground.buckets.len(), |planned| planned.bucket);
    let made = plan.ground.buckets.iter().zip(used).filter(|(bucket, used)| bucket.made && *used);
    let made: Vec<&str> = made.map(|(bucket, _)| bucket.row.name.as_str()).collect();
    if let Some(more) = made.len().checked_sub(ASKED).filter(|more| *more > 0) {
        notes.push(Note::plain(say::new_buckets_and_more(more, made[..ASKED].join(", "))));
    } else if !made.is_empty() {
        notes.push(Note::plain(say::new_buckets(made.join(", "))));
    }
    notes
}

fn column_fields(plan: &Plan, table: &Table) -> Vec<EditorField> {
    let role = |role: &ColumnRole| item(role.code(), sentence_case(&say::role(role.code())), "");
    let items: Vec<Item> = ColumnRole::ALL.iter().map(role).collect();
    plan.terms
        .columns
        .iter()
        .enumerate()
        .map(|(place, column)| {
            let cells = table.rows.iter().map(|row| row.cell(place)).filter(|cell| !cell.is_empty());
            let examples: Vec<String> = cells.take(EXAMPLES).map(short).collect();
            let help = if examples.is_empty() { say::column_empty() } else { examples.join("; ") };
            let key = columns::key(place);
            choice(plan, &key, &short(&column.header), &help, column.holds.code(), items.clone())
        })
        .collect()
}

fn questions(plan: &Plan, values: &[Value]) -> Vec<EditorField> {
    let mut questions = Vec::new();
    let mut ask = |key: &str, label: String, help: String, text: &str, items: Vec<Item>| {
        questions.push(choice(plan, key, &label, &help, text, items));
    };
    let picked = |key: &str| chosen(values, key).unwrap_or_default();
    if plan.terms.asks_order {
        let order = |order: &DateOrder| item(order.code(), say::date_order(order.code()), "");
        let items = DateOrder::ALL.iter().map(order).collect();
        ask(read::ORDER, say::ask_order(), say::ask_order_help(), picked(read::ORDER), items);
    }
    if plan.terms.asks_decimal {
        let items = coded_items(DecimalMark::ALL);
        ask(read::DECIMAL, say::ask_decimal(), say::ask_decimal_help(), picked(read::DECIMAL), items);
    }
    if plan.terms.asks_unit {
        let items = UNITS.iter().map(|code| item(code, say::unit(code), "")).collect();
        let unit = chosen(values, read::UNIT).unwrap_or(plan.ground.style.mass.symbol());
        ask(read::UNIT, say::ask_unit(), say::ask_unit_help(), unit, items);
    }
    let ground = &plan.ground;
    let forms = || {
        let in_use = ground.forms.iter().filter(|form| !form.row.gone);
        in_use.map(|form| item(&form.row.id.to_string(), &form.row.name, "")).collect::<Vec<_>>()
    };
    let glazes = || {
        let in_use = ground.glazes.iter().filter(|glaze| !glaze.row.gone && !glaze.made);
        in_use.map(|glaze| item(&glaze.row.id.to_string(), &glaze.row.name, "")).collect::<Vec<_>>()
    };
    let lacks = |holds: ColumnRole| plan.terms.columns.iter().all(|column| column.holds != holds);
    if lacks(ColumnRole::Form) {
        ask(read::FORM, say::ask_form(), String::new(), picked(read::FORM), forms());
    }
    if lacks(ColumnRole::Glaze) {
        ask(read::GLAZE, say::ask_glaze(), String::new(), picked(read::GLAZE), glazes());
    }
    if lacks(ColumnRole::Zone) {
        ask(read::ZONE, say::ask_zone(), String::new(), picked(read::ZONE), coded_items(ZoneKind::ALL));
    }
    let scales: Vec<Item> = ground.scales.iter().map(|(row, _)| item(&row.id.to_string(), &row.name, "")).collect();
    if scales.len() > 1 {
        let scale = scales.get(plan.terms.scale).map(|item| item.code.clone()).unwrap_or_default();
        ask(read::SCALE, say::ask_scale(), say::ask_scale_help(), &scale, scales);
    }
    if plan.terms.has_firings && lacks(ColumnRole::Cone) {
        let items = Cone::all().map(|cone| item(cone.code(), cone.code(), "")).collect();
        ask(read::CONE, say::ask_cone(), String::new(), picked(read::CONE), items);
    }
    if plan.terms.has_firings && ground.kilns.len() > 1 {
        let kilns: Vec<Item> = ground.kilns.iter().map(|kiln| item(&kiln.id.to_string(), &kiln.name, "")).collect();
        let kiln = kilns.get(plan.terms.kiln).map(|item| item.code.clone()).unwrap_or_default();
        ask(read::KILN, say::ask_kiln(), String::new(), &kiln, kilns);
    }
    for what in [read::FORM, read::GLAZE] {
        for unknown in plan.terms.unknown.iter().filter(|unknown| unknown.what == what).take(ASKED) {
            let (label, help, items) = unknown_in_words(unknown, if what == read::FORM { forms() } else { glazes() });
            ask(&unknown.key(), label, help, picked(&unknown.key()), items);
        }
    }
    questions
}

fn unknown_in_words(unknown: &Unknown, known: Vec<Item>) -> (String, String, Vec<Item>) {
    let is_glaze = unknown.what == read::GLAZE;
    let written = short(&unknown.written);
    let label = if is_glaze { say::ask_glaze_name(written) } else { say::ask_form_name(written) };
    let help = say::ask_name_help(unknown.lines);
    let mut items = vec![item("", say::leave_lines_out(), "")];
    if is_glaze {
        items.push(item(MAKE, say::make_glaze(), say::make_glaze_help()));
    }
    items.extend(known);
    (label, help, items)
}

fn choice(plan: &Plan, key: &str, label: &str, help: &str, text: &str, items: Vec<Item>) -> EditorField {
    let refusal = plan.terms.open.iter().find(|open| open.key == key).map(|open| open.sentence.clone());
    EditorField {
        key: key.to_owned(),
        label: label.to_owned(),
        text: text.to_owned(),
        hint: String::new(),
        help: help.to_owned(),
        kind: FieldKind::Choice,
        items,
        columns: Vec::new(),
        refusal: refusal.unwrap_or_default(),
    }
}

fn coded_items<T: Coded + Named>(all: &[T]) -> Vec<Item> {
    all.iter().map(|value| item(value.code(), sentence_case(&value.name()), "")).collect()
}
