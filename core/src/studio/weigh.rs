//! The Weigh screen: how much this piece should take, what the scale says, and Keep.

use rusqlite::Connection;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::buckets::is_old;
use super::facts::{
    code, controls, latest_sg, parse_id, scale_of, sensitivity, shape, style, tiles, uncertainty_e5, verdict_kind,
};
use super::rows::{Keepsake, found, in_use};
use super::words::{count, sentence_case};
use super::{Kept, Note, Now, Result, Row, SheetKind, Studio, StudioError};
use crate::coat::scale::{Scale, ScaleAdvice};
use crate::coat::target::{Evidence, Job, Target, target};
use crate::coat::verdict::{Reading, Verdict, VerdictKind, judge};
use crate::coat::{Solids, when_to_read};
use crate::form::ZoneKind;
use crate::glaze::slurry::SgReading;
use crate::store::entity::{self, Entity};
use crate::store::{chosen, query};
use crate::units::{Grams, Laydown, PowderDensity, Style, parse};

/// How the coat's weight is read off the scale.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Way {
    /// The scale was tared on the bare piece: it shows the coat alone.
    #[default]
    Net,
    /// The bare piece and the glazed piece are weighed, each by itself.
    TwoWeights,
}

/// A field of the Weigh screen that the keypad can fill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Field {
    /// The coat, net after tare.
    #[default]
    Net,
    /// The piece before the coat.
    Bare,
    /// The piece with its wet coat.
    Glazed,
}

/// What is chosen and typed on the Weigh screen. Empty ids and `None` mean: as last time.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct WeighEntry {
    /// The form's id.
    pub form: String,
    /// The bucket's id.
    pub bucket: String,
    /// The zone to be coated.
    pub zone: Option<ZoneKind>,
    /// The scale's id.
    pub scale: String,
    /// How the scale is read.
    pub way: Option<Way>,
    /// The piece, when this coat goes onto one that already carries a coat; else empty.
    pub piece: String,
    /// The field that the keypad fills.
    pub field: Field,
    /// The coat's net weight, as typed.
    pub net: String,
    /// The bare piece's weight, as typed.
    pub bare: String,
    /// The glazed piece's weight, as typed.
    pub glazed: String,
}

impl WeighEntry {
    fn cleared(self) -> WeighEntry {
        let field = first_field(self.way.unwrap_or_default());
        WeighEntry {
            piece: String::new(),
            field,
            net: String::new(),
            bare: String::new(),
            glazed: String::new(),
            ..self
        }
    }
}

/// A coat that may follow on the same piece, ready to weigh.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct NextCoat {
    /// What the button says.
    pub label: String,
    /// The entry to go on with.
    pub entry: WeighEntry,
}

/// What the studio still lacks before a piece can be weighed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Missing {
    /// The sheet that adds it.
    pub sheet: SheetKind,
    /// What it is and why it is wanted.
    pub title: String,
    /// One sentence more.
    pub detail: String,
    /// Whether it is there already.
    pub done: bool,
}

/// The aim for this coat, in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct TargetView {
    /// The wet weight aimed at, with its unit.
    pub wet: String,
    /// The accepted span.
    pub span: String,
    /// What the target comes from.
    pub source: String,
    /// How many pots it rests on.
    pub rests_on: String,
    /// How sure the aim itself is.
    pub sure: String,
    /// How narrow the span is and why.
    pub tolerance: String,
}

/// Where the reading lies, for a drawn gauge; all from 0 to 1 along the gauge.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Gauge {
    /// Where the accepted span begins.
    pub low: f64,
    /// Where the accepted span ends.
    pub high: f64,
    /// The aim.
    pub aim: f64,
    /// The reading, held inside the gauge; absent before there is one.
    pub reading: Option<f64>,
    /// Half of the width within which the scale cannot tell.
    pub blur: f64,
}

/// What the reading means, in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct VerdictView {
    /// Which of the four it is; the shell gives each a shape and a colour.
    pub kind: VerdictKind,
    /// One or two words that are read at arm's length.
    pub headline: String,
    /// What to do about it.
    pub act: String,
    /// Why, in a sentence.
    pub detail: String,
    /// How sure the reading is.
    pub certainty: String,
    /// The dry glaze in the coat and its laydown.
    pub carries: String,
    /// What the same coat would weigh on the control piece; empty if there is none.
    pub on_control: String,
    /// The sentence to speak.
    pub spoken: String,
}

/// A field that cannot be taken as it stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Refusal {
    /// The field to go back to.
    pub field: Field,
    /// What is wrong and what to do.
    pub sentence: String,
}

/// A field to fill, as it stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct WeighField {
    /// Which field.
    pub field: Field,
    /// What it asks for.
    pub label: String,
    /// What is typed so far.
    pub text: String,
    /// The unit it is taken in if none is typed.
    pub unit: String,
    /// Whether the keypad fills this one now.
    pub active: bool,
}

/// A coat kept lately.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct RecentCoat {
    /// The coat's id.
    pub id: String,
    /// When it was kept.
    pub when: String,
    /// The form and the zone.
    pub title: String,
    /// Its wet weight.
    pub wet: String,
    /// Its verdict.
    pub verdict: VerdictKind,
    /// The verdict in a word.
    pub word: String,
    /// Whether it is a control piece.
    pub control: bool,
}

/// All that the Weigh screen shows.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WeighView {
    /// The entry with everything that was left open filled in.
    pub entry: WeighEntry,
    /// What must be added first; empty when the studio can weigh.
    pub missing: Vec<Missing>,
    /// The chosen form, glaze and bucket, zone and scale, each in a word or two.
    pub form: String,
    /// The glaze and bucket in use.
    pub bucket: String,
    /// The zone in use.
    pub zone: String,
    /// The scale in use.
    pub scale: String,
    /// The forms to choose from.
    pub forms: Vec<Row>,
    /// The buckets to choose from.
    pub buckets: Vec<Row>,
    /// The zones of the form; each row's id is the zone's code.
    pub zones: Vec<Row>,
    /// The scales to choose from.
    pub scales: Vec<Row>,
    /// The fields the keypad fills, in order.
    pub fields: Vec<WeighField>,
    /// The aim.
    pub target: Option<TargetView>,
    /// The gauge under the aim.
    pub gauge: Option<Gauge>,
    /// What the reading means, once there is one.
    pub verdict: Option<VerdictView>,
    /// What cannot be taken as it stands.
    pub refusal: Option<Refusal>,
    /// What else should be known here.
    pub notes: Vec<Note>,
    /// The coats kept last, newest first.
    pub recent: Vec<RecentCoat>,
    /// Today's count.
    pub tally: String,
    /// Whether Keep would take it.
    pub can_keep: bool,
}

/// How many of the last coats the screen lists.
const RECENT: u32 = 8;

const ENTRY_KEY: &str = "weigh";

impl Studio {
    /// The Weigh screen for `entry`, or for what was remembered if there is none.
    ///
    /// # Errors
    /// Only when the file cannot be read; whatever is wrong with the entry is said inside the view.
    pub fn weigh(&self, now: Now, entry: Option<WeighEntry>) -> Result<WeighView> {
        self.store.read(|conn| {
            let entry = match entry {
                Some(entry) => entry,
                None => remembered(conn)?,
            };
            view(conn, now, entry)
        })
    }

    /// Remembers what is chosen and half typed, for the next start. Not part of the journal.
    ///
    /// # Errors
    /// When the file cannot be written.
    pub fn remember(&self, entry: &WeighEntry) -> Result<()> {
        let text = remember_text(entry)?;
        self.command(Now { unix_ms: 0, utc_offset_s: 0 }, |tx| Ok(tx.choose(ENTRY_KEY, Some(&text))?))?;
        Ok(())
    }

    /// Keeps the coat that `entry` describes. When this returns, it survives a pulled battery.
    ///
    /// # Errors
    /// [`StudioError::Refused`] with the field to go back to; [`StudioError::Missing`] when something chosen is gone;
    /// [`StudioError::Full`] or [`StudioError::Busy`] when the file cannot be written. Nothing is half kept.
    pub fn keep(&self, now: Now, entry: WeighEntry) -> Result<Kept> {
        let stored = self.command(now, |tx| {
            // What was shown is what is kept: nothing that has gone since is replaced behind the potter's back.
            still_there::<entity::Form>(tx.conn(), &entry.form)?;
            still_there::<entity::Bucket>(tx.conn(), &entry.bucket)?;
            still_there::<entity::Scale>(tx.conn(), &entry.scale)?;
            let Some(bench) = Bench::lay(tx.conn(), &entry)? else {
                return Err(StudioError::refused(
                    "",
                    "Add a form, a glaze and a scale first: then a piece can be weighed.",
                ));
            };
            let (reading, typed) = bench.reading()?;
            let target = bench.target()?;
            let verdict = bench.judge(&reading, &target)?;
            let id = tx.new_id();
            let piece = match bench.entry.piece.as_str() {
                "" => tx.new_id(),
                piece => parse_id(piece, "piece")?,
            };
            tx.put(&bench.coat(id, now, piece, typed, &target, &verdict))?;
            tx.choose(ENTRY_KEY, Some(&remember_text(&bench.next_piece())?))?;
            let sentence = format!("Kept: {}, {}, {}.", bench.title(), bench.mass(verdict.net), word(verdict.kind));
            Ok((id, sentence, bench.next_coats(piece)))
        })?;
        let (id, sentence, next) = stored.value;
        Ok(Kept { next, ..Kept::new(id.to_string(), sentence, stored.undo) })
    }
}

fn remember_text(entry: &WeighEntry) -> Result<String> {
    serde_json::to_string(entry).map_err(|error| StudioError::Unreadable { sentence: error.to_string() })
}

fn remembered(conn: &Connection) -> Result<WeighEntry> {
    // A remembered entry of another version is only a convenience: what cannot be read of it is chosen anew.
    Ok(chosen(conn, ENTRY_KEY)?.and_then(|text| serde_json::from_str(&text).ok()).unwrap_or_default())
}

/// Refuses an id that names something put away; one left open is filled later.
fn still_there<E: Keepsake>(conn: &Connection, id: &str) -> Result<()> {
    match named::<E>(conn, id)? {
        None if !id.is_empty() => Err(StudioError::missing(E::WHAT)),
        _ => Ok(()),
    }
}

fn named<E: Keepsake>(conn: &Connection, id: &str) -> Result<Option<E>> {
    match id.parse() {
        Ok(id) => Ok(E::load(conn, id)?.filter(|entity| !entity.gone())),
        Err(_) => Ok(None),
    }
}

/// The one named, or the one in use that was made first while none is named or the named one is put away.
fn pick<E: Keepsake>(conn: &Connection, id: &str) -> Result<Option<E>> {
    match named(conn, id)? {
        Some(entity) => Ok(Some(entity)),
        None => Ok(in_use(conn, None)?.into_iter().next()),
    }
}

fn first_field(way: Way) -> Field {
    match way {
        Way::Net => Field::Net,
        Way::TwoWeights => Field::Bare,
    }
}

/// Everything one weighing rests on, read from the studio: what lies on the bench beside the scale.
struct Bench {
    entry: WeighEntry,
    style: Style,
    form: entity::Form,
    glaze: entity::Glaze,
    bucket: entity::Bucket,
    scale_row: entity::Scale,
    scale: Scale,
    zones: Vec<ZoneKind>,
    job: Job,
    sg: SgReading,
    checked_at: Option<i64>,
    evidence: Evidence,
}

impl Bench {
    /// Reads what `entry` names and fills what it leaves open; `None` while the studio lacks a form, a bucket or a scale.
    fn lay(conn: &Connection, entry: &WeighEntry) -> Result<Option<Bench>> {
        let (Some(form), Some(bucket), Some(scale)) = (
            pick::<entity::Form>(conn, &entry.form)?,
            pick::<entity::Bucket>(conn, &entry.bucket)?,
            pick::<entity::Scale>(conn, &entry.scale)?,
        ) else {
            return Ok(None);
        };
        let glaze: entity::Glaze = found(conn, bucket.glaze)?;
        let shape = shape(&form)?;
        let zones: Vec<ZoneKind> = shape.zones.iter().map(|zone| zone.kind).collect();
        let Some(zone) = entry.zone.and_then(|kind| shape.zone(kind)).or_else(|| shape.zones.first()) else {
            return Err(StudioError::refused(
                "form",
                format!("{} has no area to glaze. Open it in Studio and give one.", form.name),
            ));
        };
        let way = entry.way.unwrap_or_default();
        let field = match (way, entry.field) {
            (Way::TwoWeights, Field::Net) => Field::Bare,
            (Way::Net, _) => Field::Net,
            (_, field) => field,
        };
        let (sg, checked_at) = latest_sg(conn, bucket.id)?;
        let powder_density = PowderDensity::from_thousandths(glaze.powder_density_e3)?;
        let job = Job {
            form_name: form.name.clone(),
            zone: *zone,
            capacity: shape.capacity,
            class: shape.class,
            solids: Solids::of(sg, powder_density)?,
            sensitivity: sensitivity(&glaze)?,
        };
        let evidence = Evidence {
            controls: controls(conn, bucket.glaze, zone.kind, form.id)?,
            tiles: tiles(conn, &glaze)?,
            starting: Laydown::from_milligrams_per_dm2(glaze.starting_laydown_mg_dm2),
        };
        let entry = WeighEntry {
            form: form.id.to_string(),
            bucket: bucket.id.to_string(),
            zone: Some(zone.kind),
            scale: scale.id.to_string(),
            way: Some(way),
            field,
            ..entry.clone()
        };
        Ok(Some(Bench {
            entry,
            style: style(conn)?,
            form,
            glaze,
            bucket,
            scale: scale_of(&scale)?,
            scale_row: scale,
            zones,
            job,
            sg,
            checked_at,
            evidence,
        }))
    }

    fn zone(&self) -> ZoneKind {
        self.job.zone.kind
    }

    fn title(&self) -> String {
        format!("{}, {}", self.form.name, self.zone().name())
    }

    fn mass(&self, grams: Grams) -> String {
        self.style.mass(grams, self.scale.step)
    }

    fn target(&self) -> Result<Target> {
        target(&self.job, &self.evidence).map_err(|error| StudioError::refused("", error))
    }

    /// The reading as typed, and the weights to keep with it.
    fn reading(&self) -> Result<(Reading, Typed)> {
        let mass = |field: Field, text: &str| {
            parse::mass(text, &self.style).map_err(|error| StudioError::refused(field.key(), error))
        };
        match self.entry.way.unwrap_or_default() {
            Way::Net => {
                let net = mass(Field::Net, &self.entry.net)?;
                Ok((Reading::Net(net), Typed { bare: None, glazed: None }))
            }
            Way::TwoWeights => {
                let bare = mass(Field::Bare, &self.entry.bare)?;
                let glazed = mass(Field::Glazed, &self.entry.glazed)?;
                Ok((Reading::TwoWeights { bare, glazed }, Typed { bare: Some(bare), glazed: Some(glazed) }))
            }
        }
    }

    fn judge(&self, reading: &Reading, target: &Target) -> Result<Verdict> {
        judge(reading, target, &self.scale, &self.job, self.evidence.controls.first()).map_err(|refused| {
            StudioError::refused(last_field(self.entry.way.unwrap_or_default()).key(), refused.in_words(&self.style))
        })
    }

    fn coat(&self, id: Uuid, now: Now, piece: Uuid, typed: Typed, target: &Target, verdict: &Verdict) -> entity::Coat {
        entity::Coat {
            id,
            piece,
            form: self.form.id,
            bucket: self.bucket.id,
            glaze: self.bucket.glaze,
            zone: self.zone().code().to_owned(),
            scale: self.scale_row.id,
            at: now.unix_ms,
            bare_mg: typed.bare.map(Grams::milligrams),
            glazed_mg: typed.glazed.map(Grams::milligrams),
            net_mg: verdict.net.milligrams(),
            specific_gravity_e5: self.sg.sg.hundred_thousandths(),
            sg_uncertainty_e5: uncertainty_e5(self.sg),
            powder_density_e3: self.glaze.powder_density_e3,
            area_mm2: self.job.zone.area.square_millimetres(),
            aim_mg: target.wet.milligrams(),
            low_mg: target.low.milligrams(),
            high_mg: target.high.milligrams(),
            source: target.source.code().to_owned(),
            verdict: verdict.kind.code().to_owned(),
            laydown_mg_dm2: verdict.laydown.milligrams_per_dm2(),
            control: false,
            note: None,
        }
    }

    /// The entry for the piece after this one. After a second coat it begins where the piece before it began.
    fn next_piece(&self) -> WeighEntry {
        let begun = if self.entry.piece.is_empty() { None } else { other_side(self.zone()) };
        WeighEntry { zone: Some(begun.unwrap_or(self.zone())), ..self.entry.clone().cleared() }
    }

    /// The other zones of the same piece, offered once this coat is kept.
    fn next_coats(&self, piece: Uuid) -> Vec<NextCoat> {
        let Some(other) = other_side(self.zone()) else { return Vec::new() };
        if !self.entry.piece.is_empty() || !self.zones.contains(&other) {
            return Vec::new();
        }
        let entry = WeighEntry { zone: Some(other), ..self.entry.clone().cleared() };
        vec![NextCoat {
            label: format!("{} of this piece", sentence_case(other.name())),
            entry: WeighEntry { piece: piece.to_string(), ..entry },
        }]
    }

    fn notes(&self, now: Now, target: &Target) -> Vec<Note> {
        let mut notes = Vec::new();
        if !self.entry.piece.is_empty() {
            notes.push(Note::attention(when_to_read(1)));
        }
        match self.checked_at {
            None => notes.push(Note::attention(format!(
                "{} has no SG yet: {} is assumed, and the target is only as good as that. Check the bucket.",
                self.bucket.name,
                self.style.specific_gravity(self.sg.sg)
            ))),
            Some(at) if is_old(now, Some(at)) => notes.push(Note::attention(format!(
                "SG was checked {}. Stir and check the bucket: glaze thickens and settles.",
                now.days_ago(at)
            ))),
            Some(_) => {}
        }
        let advice = self.scale.advice(None, target.wet, target.wet * target.tolerance);
        if advice != ScaleAdvice::Decides {
            notes.push(Note::attention(self.scale.advice_in_words(advice, &self.style)));
        }
        notes
    }
}

/// The side that a second coat goes onto.
fn other_side(zone: ZoneKind) -> Option<ZoneKind> {
    match zone {
        ZoneKind::Inside => Some(ZoneKind::Outside),
        ZoneKind::Outside => Some(ZoneKind::Inside),
        ZoneKind::Whole => None,
    }
}

/// The weights typed in the two-weights way.
struct Typed {
    bare: Option<Grams>,
    glazed: Option<Grams>,
}

impl Field {
    /// The field's key in refusals.
    pub fn key(self) -> &'static str {
        match self {
            Field::Net => "net",
            Field::Bare => "bare",
            Field::Glazed => "glazed",
        }
    }

    fn from_key(key: &str) -> Option<Field> {
        [Field::Net, Field::Bare, Field::Glazed].into_iter().find(|field| field.key() == key)
    }
}

fn last_field(way: Way) -> Field {
    match way {
        Way::Net => Field::Net,
        Way::TwoWeights => Field::Glazed,
    }
}

fn view(conn: &Connection, now: Now, entry: WeighEntry) -> Result<WeighView> {
    let style = style(conn)?;
    let bench = Bench::lay(conn, &entry)?;
    let entry = bench.as_ref().map_or(entry, |bench| bench.entry.clone());
    let mut view = WeighView {
        missing: Vec::new(),
        form: String::new(),
        bucket: String::new(),
        zone: String::new(),
        scale: String::new(),
        forms: forms(conn, &style, &entry.form)?,
        buckets: buckets(conn, now, &style, &entry.bucket)?,
        zones: Vec::new(),
        scales: scales(conn, &style, &entry.scale)?,
        fields: fields(&entry, &style),
        target: None,
        gauge: None,
        verdict: None,
        refusal: None,
        notes: Vec::new(),
        recent: recent(conn, now, &style)?,
        tally: tally(conn, now)?,
        can_keep: false,
        entry,
    };
    let Some(bench) = bench else {
        view.missing = missing(&view);
        return Ok(view);
    };
    view.form = bench.form.name.clone();
    view.bucket = format!("{}, {}", bench.glaze.name, bench.bucket.name);
    view.zone = sentence_case(bench.zone().name());
    view.scale = bench.scale_row.name.clone();
    view.zones = zones(&bench);
    let target = match bench.target() {
        Ok(target) => target,
        Err(StudioError::Refused { sentence, .. }) => {
            view.notes.push(Note::attention(sentence));
            return Ok(view);
        }
        Err(error) => return Err(error),
    };
    view.notes = bench.notes(now, &target);
    view.target = Some(target_view(&bench, &target));
    let mut net = None;
    if ready_to_judge(&view.entry) {
        match bench.reading().and_then(|(reading, _)| bench.judge(&reading, &target)) {
            Ok(verdict) => {
                net = Some(verdict.net);
                view.verdict = Some(verdict_view(&bench, &verdict));
                view.can_keep = true;
            }
            Err(StudioError::Refused { field, sentence }) => {
                view.refusal = Field::from_key(&field).map(|field| Refusal { field, sentence });
            }
            Err(error) => return Err(error),
        }
    }
    view.gauge = Some(gauge(&bench, &target, net));
    Ok(view)
}

/// Whether there is enough typed to say something.
fn ready_to_judge(entry: &WeighEntry) -> bool {
    match entry.way.unwrap_or_default() {
        Way::Net => !entry.net.trim().is_empty(),
        Way::TwoWeights => {
            let (bare, glazed) = (entry.bare.trim(), entry.glazed.trim());
            !bare.is_empty() && !glazed.is_empty() && !still_being_typed(bare, glazed)
        }
    }
}

/// A glazed weight with fewer digits than the bare one is still being typed: to tell the potter off for it
/// would only distract.
fn still_being_typed(bare: &str, glazed: &str) -> bool {
    let whole_digits = |text: &str| text.chars().take_while(char::is_ascii_digit).count();
    glazed.chars().all(|c| c.is_ascii_digit()) && whole_digits(glazed) < whole_digits(bare)
}

fn target_view(bench: &Bench, target: &Target) -> TargetView {
    let words = target.in_words(&bench.style, bench.scale.step);
    TargetView {
        wet: bench.mass(target.wet),
        span: words.span,
        source: words.source,
        rests_on: words.rests_on,
        sure: words.sure,
        tolerance: format!(
            "{} either way is accepted: {} is set to “{}”.",
            bench.style.percent(target.tolerance, 0),
            bench.glaze.name,
            bench.job.sensitivity.name()
        ),
    }
}

fn verdict_view(bench: &Bench, verdict: &Verdict) -> VerdictView {
    let words = verdict.in_words(&bench.style);
    VerdictView {
        kind: verdict.kind,
        headline: words.headline,
        act: words.act,
        detail: words.detail,
        certainty: words.certainty,
        carries: words.carries,
        // Said only where it says something new: not when it is the weight just read.
        on_control: words.on_control.filter(|_| differs_on_control(bench, verdict)).unwrap_or_default(),
        spoken: words.spoken,
    }
}

fn differs_on_control(bench: &Bench, verdict: &Verdict) -> bool {
    verdict.on_control.is_some_and(|wet| bench.mass(wet) != bench.mass(verdict.net))
}

fn gauge(bench: &Bench, target: &Target, net: Option<Grams>) -> Gauge {
    let half_span = 2.5 * target.wet.value() * target.tolerance;
    let place = |grams: f64| ((grams - target.wet.value()) / (2.0 * half_span) + 0.5).clamp(0.0, 1.0);
    Gauge {
        low: place(target.low.value()),
        high: place(target.high.value()),
        aim: place(target.wet.value()),
        reading: net.map(|net| place(net.value())),
        blur: (bench.scale.net_half_width().value() / (2.0 * half_span)).min(0.5),
    }
}

fn fields(entry: &WeighEntry, style: &Style) -> Vec<WeighField> {
    let field = |field: Field, label: &str, text: &str| WeighField {
        field,
        label: label.to_owned(),
        text: text.to_owned(),
        unit: style.mass.symbol().to_owned(),
        active: field == entry.field,
    };
    match entry.way.unwrap_or_default() {
        Way::Net => vec![field(Field::Net, "Coat, after tare", &entry.net)],
        Way::TwoWeights => {
            vec![field(Field::Bare, "Bare piece", &entry.bare), field(Field::Glazed, "Glazed piece", &entry.glazed)]
        }
    }
}

fn missing(view: &WeighView) -> Vec<Missing> {
    let step = |sheet, title: &str, detail: &str, done| Missing {
        sheet,
        title: title.to_owned(),
        detail: detail.to_owned(),
        done,
    };
    vec![
        step(
            SheetKind::Form,
            "A form",
            "What you throw again and again: its shape and how much it holds.",
            !view.forms.is_empty(),
        ),
        step(
            SheetKind::Glaze,
            "A glaze",
            "Its name, how touchy it is about thickness, and the bucket's SG.",
            !view.buckets.is_empty(),
        ),
        step(SheetKind::Scale, "A scale", "How much it carries and the step it reads in.", !view.scales.is_empty()),
    ]
}

fn zones(bench: &Bench) -> Vec<Row> {
    bench
        .zones
        .iter()
        .map(|kind| Row {
            id: kind.code().to_owned(),
            title: sentence_case(kind.name()),
            detail: String::new(),
            chosen: *kind == bench.zone(),
        })
        .collect()
}

/// What a list row says of a form.
pub(super) fn form_detail(form: &entity::Form, style: &Style) -> Result<String> {
    let shape = shape(form)?;
    let mut parts = vec![shape.class.name().to_owned()];
    parts.extend(shape.capacity.map(|capacity| style.volume(capacity)));
    if let Some(inside) = shape.zone(ZoneKind::Inside) {
        parts.push(format!("inside {}", style.area(inside.area)));
    }
    Ok(parts.join(", "))
}

fn forms(conn: &Connection, style: &Style, chosen: &str) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for form in in_use::<entity::Form>(conn, chosen.parse().ok())? {
        let id = form.id.to_string();
        rows.push(Row { chosen: id == chosen, id, detail: form_detail(&form, style)?, title: form.name });
    }
    Ok(by_name(rows))
}

fn buckets(conn: &Connection, now: Now, style: &Style, chosen: &str) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for bucket in in_use::<entity::Bucket>(conn, chosen.parse().ok())? {
        let glaze: entity::Glaze = found(conn, bucket.glaze)?;
        let (sg, checked_at) = latest_sg(conn, bucket.id)?;
        let detail = match checked_at {
            Some(at) => format!("{}, SG {}, checked {}", bucket.name, style.specific_gravity(sg.sg), now.days_ago(at)),
            None => format!("{}, SG not checked", bucket.name),
        };
        let id = bucket.id.to_string();
        rows.push(Row { chosen: id == chosen, id, title: glaze.name, detail });
    }
    Ok(by_name(rows))
}

fn scales(conn: &Connection, style: &Style, chosen: &str) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for scale in in_use::<entity::Scale>(conn, chosen.parse().ok())? {
        let id = scale.id.to_string();
        rows.push(Row { chosen: id == chosen, id, detail: scale_detail(&scale, style), title: scale.name });
    }
    Ok(by_name(rows))
}

/// Lists are in the order of their words, where a potter looks for them.
pub(super) fn by_name(mut rows: Vec<Row>) -> Vec<Row> {
    rows.sort_by(|a, b| (&a.title, &a.detail).cmp(&(&b.title, &b.detail)));
    rows
}

/// What a list row says of a scale.
pub(super) fn scale_detail(scale: &entity::Scale, style: &Style) -> String {
    let step = Grams::from_milligrams(scale.step_mg);
    // Nobody says "2000.0 g": the capacity is shown to a whole gram, unless the step is coarser.
    let capacity = style.mass(Grams::from_milligrams(scale.capacity_mg), step.max(Grams::new(1.0)));
    format!("to {capacity}, step {}", style.mass(step, step))
}

fn recent(conn: &Connection, now: Now, style: &Style) -> Result<Vec<RecentCoat>> {
    query::latest_coats(conn, RECENT)?.iter().map(|coat| recent_coat(conn, now, style, coat)).collect()
}

fn recent_coat(conn: &Connection, now: Now, style: &Style, coat: &entity::Coat) -> Result<RecentCoat> {
    let form = entity::Form::load(conn, coat.form)?.map_or_else(|| "A form".to_owned(), |form| form.name);
    let kind = verdict_kind(coat)?;
    Ok(RecentCoat {
        id: coat.id.to_string(),
        when: now.moment(coat.at),
        title: format!("{form}, {}", code::<ZoneKind>(&coat.zone)?.name()),
        wet: style.mass(Grams::from_milligrams(coat.net_mg), step_of(conn, coat)?),
        verdict: kind,
        word: word(kind).to_owned(),
        control: coat.control,
    })
}

/// The step of the scale a coat was weighed on, so that its weight is shown as it was read.
pub(super) fn step_of(conn: &Connection, coat: &entity::Coat) -> Result<Grams> {
    let scale = entity::Scale::load(conn, coat.scale)?;
    Ok(scale.map_or(Grams::new(0.1), |scale| Grams::from_milligrams(scale.step_mg)))
}

fn tally(conn: &Connection, now: Now) -> Result<String> {
    let (all, within) = query::tally(conn, now.day_start(), VerdictKind::Within.code())?;
    Ok(match all {
        0 => "Nothing weighed today.".to_owned(),
        all => format!("{} today, {within} within.", count(all, "coat", "coats")),
    })
}

/// A verdict in one word, for lists.
pub(super) fn word(kind: VerdictKind) -> &'static str {
    match kind {
        VerdictKind::Within => "within",
        VerdictKind::Short => "short",
        VerdictKind::Over => "over",
        VerdictKind::CannotTell => "cannot tell",
    }
}
