//! From the lines of a sheet to readings: which form, glaze and zone, what was weighed and when. What could be meant two
//! ways is asked, or refused with the line it stands on.

use std::collections::BTreeMap;

use uuid::Uuid;

use super::cells::{self, DateError, DateOrder, TwoWays, plain};
use super::columns::{self, Column, ColumnRole, chosen};
use super::results::{self, Fired};
use super::studio_snapshot::Ground;
use super::table::{Row, Table};
use crate::Now;
use crate::date_text::DAY_MS;
use crate::editor::{LONGEST_NAME, LONGEST_REMARK, Value};
use crate::in_words::{Named, Sentence};
use crate::messages::import as say;
use laydown_domain::coat::verdict::{Reading as Weighed, VerdictKind};
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::cone::Cone;
use laydown_domain::kiln::piece_code;
use laydown_domain::truncate::truncate;
use laydown_domain::units::{DecimalMark, Grams, SpecificGravity, Style, parse};
use laydown_store::query;

/// Names that are asked about; the rest are complained of.
pub(super) const ASKED: usize = 20;
/// Complaints that are shown; the rest are counted.
const SHOWN: usize = 50;

/// The keys of what is asked beside the columns.
pub(super) const ORDER: &str = "order";
pub(super) const DECIMAL: &str = "decimal";
pub(super) const UNIT: &str = "unit";
pub(super) const SCALE: &str = "scale";
pub(super) const FORM: &str = "form";
pub(super) const GLAZE: &str = "glaze";
pub(super) const ZONE: &str = "zone";
pub(super) const CONE: &str = "cone";
pub(super) const KILN: &str = "kiln";
/// What is chosen for a glaze that is to be made.
pub(super) const MAKE: &str = "make";

/// Units of a weight whose column does not say one.
pub(super) const UNITS: [&str; 4] = ["g", "kg", "oz", "lb"];

/// Something to answer before anything can be taken in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct OpenQuestion {
    /// The key of the choice that answers it.
    pub(super) key: String,
    pub(super) sentence: String,
}

/// A name in the sheet that the studio does not know.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Unknown {
    /// [`FORM`] or [`GLAZE`].
    pub(super) what: &'static str,
    /// As it is written first.
    pub(super) written: String,
    /// How many lines have it.
    pub(super) lines: usize,
}

impl Unknown {
    /// The key of the choice of what it is.
    pub(super) fn key(&self) -> String {
        name_key(self.what, &self.written)
    }
}

fn name_key(what: &str, name: &str) -> String {
    format!("{what}:{}", plain(name))
}

/// A line as read: what was weighed, when, on what.
pub(super) struct Reading {
    pub(super) line: u64,
    pub(super) at: i64,
    /// Whether the sheet says how far its clock is from UTC.
    pub(super) is_exact: bool,
    pub(super) form: usize,
    pub(super) glaze: usize,
    pub(super) bucket: usize,
    pub(super) zone: ZoneKind,
    pub(super) weighed: Weighed,
    pub(super) net_mg: i64,
    pub(super) sg: Option<SpecificGravity>,
    pub(super) piece: Option<PieceName>,
    pub(super) code: Option<String>,
    pub(super) control: bool,
    pub(super) note: Option<String>,
    pub(super) aim: Option<Aim>,
    pub(super) fired: Option<Fired>,
}

/// An aim that came with the sheet.
#[derive(Clone, Copy)]
pub(super) struct Aim {
    pub(super) wet: Grams,
    /// What was accepted; the glaze's own span where the sheet does not say.
    pub(super) span: Option<(Grams, Grams)>,
    pub(super) verdict: Option<VerdictKind>,
}

/// What brings the coats of one piece together.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub(super) enum PieceName {
    /// Its id, as laydown writes it.
    Id(Uuid),
    /// Its code.
    Code(String),
    /// What the potter calls it, for as long as no other piece is called so.
    Label(String),
}

/// The lines as read.
pub(super) struct Read {
    pub(super) ground: Ground,
    pub(super) terms: Terms,
    pub(super) readings: Vec<Reading>,
    pub(super) row_errors: RowErrors,
}

/// What the sheet says and what the potter said of it.
pub(super) struct Terms {
    pub(super) columns: Vec<Column>,
    /// What must be answered first; as long as there is something, no line is read.
    pub(super) open: Vec<OpenQuestion>,
    /// Names that the studio does not know.
    pub(super) unknown: Vec<Unknown>,
    /// How many lines there are.
    pub(super) lines: usize,
    /// The scale's place in the ground.
    pub(super) scale: usize,
    /// The kiln's place in the ground.
    pub(super) kiln: usize,
    /// Whether the sheet says when pieces were fired.
    pub(super) has_firings: bool,
    /// Whether the order of dates, the decimal mark and the unit are asked for.
    pub(super) asks_order: bool,
    pub(super) asks_decimal: bool,
    pub(super) asks_unit: bool,
}

/// Lines that cannot be imported, and why.
#[derive(Debug, Default)]
pub(super) struct RowErrors {
    /// The first of them, by line.
    pub(super) shown: BTreeMap<u64, String>,
    /// How many there are.
    pub(super) all: usize,
}

impl RowErrors {
    pub(super) fn add(&mut self, line: u64, sentence: String) {
        self.all += 1;
        self.shown.insert(line, sentence);
        if self.shown.len() > SHOWN {
            self.shown.pop_last();
        }
    }
}

/// How the cells are to be read.
pub(super) struct Reader<'a> {
    pub(super) now: Now,
    values: &'a [Value],
    columns: &'a [Column],
    pub(super) order: Option<DateOrder>,
    /// Where a column's mark is not known, none of its numbers needs one.
    marks: Vec<Option<DecimalMark>>,
    unit: &'a str,
    /// What holds for the whole sheet where it has no column for it.
    form: Option<usize>,
    glaze: Option<usize>,
    zone: Option<ZoneKind>,
    pub(super) cone: Option<Cone>,
}

/// Makes readings of the lines. What the columns hold and what else was chosen stands in `values`.
pub(super) fn read(table: &Table, values: &[Value], mut ground: Ground, now: Now) -> Read {
    let columns = columns::columns(&table.headers, values);
    let mut open = missing(&columns, &ground);
    let cells = |column: usize| table.rows.iter().map(move |row| row.cell(column));
    let dates = (0..columns.len()).filter(|place| columns[*place].holds == ColumnRole::Date);

    let (order, asks_order) = order(dates.flat_map(cells), chosen(values, ORDER));
    if asks_order && order.is_none() {
        open.push(OpenQuestion { key: ORDER.to_owned(), sentence: say::say_order() });
    }
    let found: Vec<_> = (0..columns.len())
        .map(|place| match columns[place].holds {
            holds if holds.is_number() => cells::decimal_mark(cells(place), holds.is_weight()),
            _ => Ok(None),
        })
        .collect();
    let decimal = chosen(values, DECIMAL).and_then(|code| code.parse().ok());
    let (marks, asks_decimal) = marks(&found, decimal);
    if asks_decimal && decimal.is_none() {
        open.push(OpenQuestion { key: DECIMAL.to_owned(), sentence: say::say_decimal() });
    }
    let asks_unit = columns.iter().any(|column| column.holds.is_weight() && column.unit.is_none());
    let form = chosen_id(values, FORM).and_then(|id| ground.forms.iter().position(|form| form.row.id == id));
    let glaze = chosen_id(values, GLAZE).and_then(|id| ground.glazes.iter().position(|glaze| glaze.row.id == id));
    let scale = chosen_id(values, SCALE).and_then(|id| ground.scales.iter().position(|(scale, _)| scale.id == id));
    let zone = chosen(values, ZONE).and_then(|code| code.parse().ok());
    let lacks = |holds: ColumnRole| columns.iter().all(|column| column.holds != holds);
    for (holds, key, is_known, sentence) in [
        (ColumnRole::Form, FORM, form.is_some(), say::no_form_column as fn() -> String),
        (ColumnRole::Glaze, GLAZE, glaze.is_some(), say::no_glaze_column),
        (ColumnRole::Zone, ZONE, zone.is_some(), say::no_zone_column),
    ] {
        if lacks(holds) && !is_known {
            open.push(OpenQuestion { key: key.to_owned(), sentence: sentence() });
        }
    }
    let kiln = chosen_id(values, KILN).and_then(|id| ground.kilns.iter().position(|kiln| kiln.id == id));
    let cone = chosen(values, CONE).and_then(results::cone_named);
    let has_firings = !lacks(ColumnRole::Fired);
    if has_firings && lacks(ColumnRole::Cone) && cone.is_none() {
        open.push(OpenQuestion { key: CONE.to_owned(), sentence: say::no_cone_column() });
    }
    let unit = chosen(values, UNIT).and_then(|unit| UNITS.into_iter().find(|code| *code == unit));
    let unit = unit.unwrap_or(ground.style.mass.symbol());
    let reader = Reader { now, values, columns: &columns, order, marks, unit, form, glaze, zone, cone };
    let mut readings = Vec::new();
    let mut row_errors = RowErrors::default();
    let mut unknown = BTreeMap::new();
    if open.is_empty() {
        for row in &table.rows {
            match reader.reading(row, &mut ground, &mut unknown) {
                Ok(reading) => readings.push(reading),
                Err(sentence) => row_errors.add(row.line, sentence),
            }
        }
    }
    let mut unknown: Vec<Unknown> = unknown.into_values().collect();
    unknown.sort_by(|a, b| (a.what, b.lines, &a.written).cmp(&(b.what, a.lines, &b.written)));
    let terms = Terms {
        columns,
        open,
        unknown,
        lines: table.rows.len(),
        scale: scale.unwrap_or_default(),
        kiln: kiln.unwrap_or_default(),
        has_firings,
        asks_order,
        asks_decimal,
        asks_unit,
    };
    Read { ground, terms, readings, row_errors }
}

fn chosen_id(values: &[Value], key: &str) -> Option<Uuid> {
    chosen(values, key)?.parse().ok()
}

/// What a reading cannot do without.
fn missing(columns: &[Column], ground: &Ground) -> Vec<OpenQuestion> {
    let mut open = Vec::new();
    let mut ask = |key: &str, sentence: String| open.push(OpenQuestion { key: key.to_owned(), sentence });
    let has = |holds: ColumnRole| columns.iter().any(|column| column.holds == holds);
    for (place, column) in columns.iter().enumerate() {
        if column.holds != ColumnRole::Nothing && columns[..place].iter().any(|before| before.holds == column.holds) {
            let key = columns::key(place);
            ask(&key, say::two_columns(say::role(column.holds.code())));
        }
    }
    if !has(ColumnRole::Date) {
        ask("", say::no_date_column());
    }
    if !(has(ColumnRole::Wet) || has(ColumnRole::Bare) && has(ColumnRole::Glazed)) {
        ask("", say::no_weight_column());
    }
    if ground.scales.is_empty() {
        ask(SCALE, say::no_scale_yet());
    }
    if has(ColumnRole::Fired) && ground.kilns.is_empty() {
        ask(KILN, say::no_kiln_yet());
    }
    if results::OUTCOMES.iter().any(|outcome| has(*outcome)) && !has(ColumnRole::Fired) {
        ask("", say::no_fired_column());
    }
    open
}

/// The order of dates in figures, and whether the potter is asked for it.
fn order<'a>(dates: impl Iterator<Item = &'a str>, chosen: Option<&str>) -> (Option<DateOrder>, bool) {
    let (mut day_first, mut month_first, mut either) = (false, false, false);
    for date in dates {
        match cells::order_of(date) {
            Some(DateOrder::DayFirst) => day_first = true,
            Some(DateOrder::MonthFirst) => month_first = true,
            None => either |= cells::stamp(date, None) == Err(DateError::TwoWays),
        }
    }
    match (day_first, month_first) {
        (true, false) => (Some(DateOrder::DayFirst), false),
        (false, true) => (Some(DateOrder::MonthFirst), false),
        (false, false) if !either => (None, false),
        _ => (chosen.and_then(|code| code.parse().ok()), true),
    }
}

/// The decimal mark of each column, and whether the potter is asked for it: what one column leaves open, the others may
/// say.
fn marks(
    found: &[Result<Option<DecimalMark>, TwoWays>],
    chosen: Option<DecimalMark>,
) -> (Vec<Option<DecimalMark>>, bool) {
    let plain = |mark: DecimalMark| found.contains(&Ok(Some(mark)));
    let of_all = match (plain(DecimalMark::Point), plain(DecimalMark::Comma)) {
        (true, false) => Some(DecimalMark::Point),
        (false, true) => Some(DecimalMark::Comma),
        _ => None,
    };
    let asks = of_all.is_none() && found.contains(&Err(TwoWays));
    let of_all = of_all.or(chosen);
    (found.iter().map(|mark| mark.ok().flatten().or(of_all)).collect(), asks)
}

impl Reader<'_> {
    pub(super) fn cell<'r>(&self, row: &'r Row, holds: ColumnRole) -> &'r str {
        self.columns.iter().position(|column| column.holds == holds).map_or("", |place| row.cell(place))
    }

    fn reading(
        &self,
        row: &Row,
        ground: &mut Ground,
        unknown: &mut BTreeMap<(&'static str, String), Unknown>,
    ) -> Result<Reading, String> {
        if row.is_longer_than(self.columns.len()) {
            return Err(say::more_cells());
        }
        let (at, is_exact) = self.at(row)?;
        // Both before either is refused, so that the potter is asked about both at once.
        let form = self.form(row, ground, unknown);
        let glaze = self.glaze(row, ground, unknown);
        let (form, glaze) = (form?, glaze?);
        let zone = match (self.cell(row, ColumnRole::Zone), self.zone) {
            ("", Some(zone)) => zone,
            ("", None) => return Err(say::no_zone()),
            (text, _) => cells::zone(text).ok_or_else(|| say::not_a_zone(short(text)))?,
        };
        let (weighed, net_mg) = self.weighed(row, ground)?;
        let sg = match self.number_cell(row, ColumnRole::SpecificGravity)? {
            Some((text, style)) => {
                let sg = parse::specific_gravity(
                    text,
                    &Style { mass: ground.style.mass, volume: ground.style.volume, ..style },
                );
                Some(sg.map_err(|error| error.sentence())?)
            }
            None => None,
        };
        let code = match self.cell(row, ColumnRole::Code) {
            "" => None,
            text => Some(piece_code::read(text).map_err(|_| say::not_a_code(short(text)))?),
        };
        let control = self.cell(row, ColumnRole::Control);
        let control = cells::yes(control).ok_or_else(|| say::not_yes_or_no(short(control)))?;
        let (piece, label) = match self.cell(row, ColumnRole::Piece) {
            "" => (code.clone().map(PieceName::Code), None),
            text => match named_by_laydown(text, at) {
                Some(id) => (Some(PieceName::Id(id)), None),
                None => (Some(code.clone().map_or_else(|| PieceName::Label(plain(text)), PieceName::Code)), Some(text)),
            },
        };
        let note = self.cell(row, ColumnRole::Note);
        let note = match label {
            Some(label) if note.is_empty() => say::piece_in_note(label),
            Some(label) if !note.starts_with(&say::piece_in_note(label)) => say::piece_and_note(label, note),
            _ => note.to_owned(),
        };
        if note.chars().count() > LONGEST_REMARK {
            return Err(say::note_too_long(LONGEST_REMARK));
        }
        let aim = self.aim(row, ground)?;
        let fired = Fired::read(self, row, at)?;
        let bucket = ground.bucket(glaze, &new_name(self.cell(row, ColumnRole::Bucket))?, at);
        let note = Some(note).filter(|note| !note.is_empty());
        Ok(Reading {
            line: row.line,
            at,
            is_exact,
            form,
            glaze,
            bucket,
            zone,
            weighed,
            net_mg,
            sg,
            piece,
            code,
            control,
            note,
            aim,
            fired,
        })
    }

    fn at(&self, row: &Row) -> Result<(i64, bool), String> {
        let text = self.cell(row, ColumnRole::Date);
        let stamp = match cells::stamp(text, self.order) {
            Ok(stamp) => stamp,
            Err(_) if text.is_empty() => return Err(say::no_date()),
            Err(_) if text.starts_with('=') => return Err(say::a_formula(short(text))),
            Err(_) => return Err(say::not_a_date(short(text))),
        };
        let stamp = match self.cell(row, ColumnRole::Time) {
            "" => stamp,
            _ if stamp.has_time() => stamp,
            time => stamp.with_time(time).ok_or_else(|| say::not_a_time(short(time)))?,
        };
        match stamp.unix_ms(self.now) {
            Some(at) if at > self.now.unix_ms + DAY_MS => Err(say::still_to_come(short(text))),
            Some(at) if at >= 0 => Ok((at, stamp.is_exact())),
            _ => Err(say::too_long_ago(short(text))),
        }
    }

    fn form(
        &self,
        row: &Row,
        ground: &Ground,
        unknown: &mut BTreeMap<(&'static str, String), Unknown>,
    ) -> Result<usize, String> {
        let name = self.cell(row, ColumnRole::Form);
        if name.is_empty() {
            return self.form.ok_or_else(say::no_form);
        }
        if let Some(form) = ground.form(name) {
            return Ok(form);
        }
        let known = |id: &str| ground.forms.iter().position(|form| form.row.id.to_string() == id);
        self.what_it_is(FORM, name, unknown).and_then(known).ok_or_else(|| say::form_not_here(short(name)))
    }

    fn glaze(
        &self,
        row: &Row,
        ground: &mut Ground,
        unknown: &mut BTreeMap<(&'static str, String), Unknown>,
    ) -> Result<usize, String> {
        let name = self.cell(row, ColumnRole::Glaze);
        if name.is_empty() {
            return self.glaze.ok_or_else(say::no_glaze);
        }
        if let Some(glaze) = ground.glaze(name).filter(|glaze| !ground.glazes[*glaze].made) {
            return Ok(glaze);
        }
        let found = match self.what_it_is(GLAZE, name, unknown) {
            Some(MAKE) => Some(match ground.glaze(name) {
                Some(made) => made,
                None => ground.make_glaze(&new_name(name)?),
            }),
            Some(id) => ground.glazes.iter().position(|glaze| !glaze.made && glaze.row.id.to_string() == id),
            None => None,
        };
        found.ok_or_else(|| say::glaze_not_here(short(name)))
    }

    /// What was chosen for a name that the studio does not know.
    fn what_it_is(
        &self,
        what: &'static str,
        name: &str,
        unknown: &mut BTreeMap<(&'static str, String), Unknown>,
    ) -> Option<&str> {
        let asked = unknown.entry((what, plain(name)));
        asked.or_insert_with(|| Unknown { what, written: name.to_owned(), lines: 0 }).lines += 1;
        chosen(self.values, &name_key(what, name)).filter(|choice| !choice.is_empty())
    }

    /// The number in the column for this, with how it is to be read; `None` where there is none.
    fn number_cell<'r>(&self, row: &'r Row, holds: ColumnRole) -> Result<Option<(&'r str, Style)>, String> {
        let Some(place) = self.columns.iter().position(|column| column.holds == holds) else { return Ok(None) };
        let text = row.cell(place);
        if text.is_empty() {
            return Ok(None);
        }
        if text.starts_with('=') {
            return Err(say::a_formula(short(text)));
        }
        Ok(Some((text, Style { decimal: self.marks[place].unwrap_or(DecimalMark::Point), ..Style::default() })))
    }

    fn weight(&self, row: &Row, holds: ColumnRole) -> Result<Option<Grams>, String> {
        let Some((text, style)) = self.number_cell(row, holds)? else { return Ok(None) };
        let unit = self.columns.iter().find(|column| column.holds == holds).and_then(|column| column.unit);
        let has_unit = text.contains(char::is_alphabetic);
        let text = if has_unit { text.to_owned() } else { format!("{text} {}", unit.unwrap_or(self.unit)) };
        parse::mass(&text, &style).map(Some).map_err(|error| error.sentence())
    }

    /// What was weighed, and the wet weight as it is stored.
    fn weighed(&self, row: &Row, ground: &Ground) -> Result<(Weighed, i64), String> {
        let wet = self.weight(row, ColumnRole::Wet)?;
        let both = self.weight(row, ColumnRole::Bare)?.zip(self.weight(row, ColumnRole::Glazed)?);
        match (wet, both) {
            (None, None) => Err(say::no_weight()),
            (Some(wet), None) => Ok((Weighed::Net(wet), wet.milligrams())),
            (wet, Some((bare, glazed))) => {
                let net = glazed - bare;
                if let Some(wet) = wet.filter(|wet| wet.milligrams() != net.milligrams()) {
                    let written = |grams: Grams| ground.style.mass(grams, Grams::new(0.1));
                    return Err(say::weights_differ(written(wet), written(net)));
                }
                Ok((Weighed::TwoWeights { bare, glazed }, net.milligrams()))
            }
        }
    }

    fn aim(&self, row: &Row, ground: &Ground) -> Result<Option<Aim>, String> {
        let Some(wet) = self.weight(row, ColumnRole::Aim)? else { return Ok(None) };
        let span = self.weight(row, ColumnRole::Low)?.zip(self.weight(row, ColumnRole::High)?);
        let (low, high) = span.unwrap_or((wet, wet));
        if !(wet.is_positive() && low <= wet && wet <= high) {
            let written = |grams: Grams| ground.style.mass(grams, Grams::new(0.1));
            return Err(say::aim_outside(written(wet), written(low), written(high)));
        }
        let verdict = match self.cell(row, ColumnRole::Verdict) {
            "" => None,
            text => Some(verdict(text).ok_or_else(|| say::not_a_verdict(short(text)))?),
        };
        Ok(Some(Aim { wet, span, verdict: verdict.filter(|_| span.is_some()) }))
    }
}

/// A verdict by its code, as laydown's own tables have it, or by its name.
fn verdict(text: &str) -> Option<VerdictKind> {
    let text = plain(text);
    let code = text.replace(' ', "_");
    VerdictKind::ALL.iter().copied().find(|kind| kind.code() == code || plain(&kind.name()) == text)
}

/// A name as something new may bear it.
fn new_name(text: &str) -> Result<String, String> {
    let name = text.split_whitespace().collect::<Vec<_>>().join(" ");
    if name.chars().count() > LONGEST_NAME {
        return Err(say::name_too_long(short(text), LONGEST_NAME));
    }
    Ok(name)
}

/// A piece's id as laydown writes it, if a coat of that day can be on it.
fn named_by_laydown(text: &str, at: i64) -> Option<Uuid> {
    let id: Uuid = text.parse().ok()?;
    let (seconds, nanos) = id.get_timestamp()?.to_unix();
    let named = i64::try_from(seconds).ok()?.checked_mul(1_000)? + i64::from(nanos) / 1_000_000;
    let is_of_its_time = named - DAY_MS <= at && at <= named + query::LONGEST_ON_THE_SHELF_MS;
    (id.get_version_num() == 7 && is_of_its_time).then_some(id)
}

/// The most letters of a cell that are repeated. An id of laydown's own stays whole: cut, it would name nothing.
const REPEATED: usize = 36;

/// What stands in a cell, short enough to repeat in a sentence.
pub(super) fn short(text: &str) -> String {
    truncate(text, REPEATED)
}
