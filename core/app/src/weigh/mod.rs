//! The Weigh screen: how much this piece should take, what the scale says, and Keep.

mod context;
mod correction;
mod dip;
mod glazed_piece;
mod pooled;
mod question;
mod remembered;
mod view;

use rusqlite::Connection;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

pub(super) use self::context::wet_per_piece;
use self::context::{Answer, WeighContext};
pub(super) use self::correction::corrected;
use self::glazed_piece::GlazedPiece;
pub use self::glazed_piece::{PieceGroup, PieceToGlaze, PiecesToGlazeView};
pub(super) use self::glazed_piece::{unfired_newest_first, weigh_undone_again};
use self::remembered::Remembered;
pub(super) use self::remembered::weighed_from;
use self::view::view;
use super::draft::{self, Draft};
use super::evidence::{preference, step_of, style_of, usable};
use super::in_words::name_of;
use super::messages::weigh as say;
use super::pooled::TargetOption;
use super::{CommandResult, EditorKind, Note, Now, Result, Row, Studio, StudioError};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::piece_code;
use laydown_domain::units::{Grams, Seconds, Style, parse};
use laydown_store::entity::{self, Coat, Entity};
use laydown_store::{Undo, query};

/// How the coat's weight is read off the scale.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, uniffi::Enum)]
pub enum WeighMode {
    /// The scale was tared on the bare piece: it shows the coat alone.
    #[default]
    Net,
    /// The bare piece and the glazed piece are weighed, each by itself.
    TwoWeights,
}

/// A field of the Weigh screen that the keypad can fill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, uniffi::Enum)]
pub enum Field {
    /// The coat, net after tare.
    #[default]
    Net,
    /// Previous piece the coat.
    Bare,
    /// The piece with its wet coat.
    Glazed,
    /// How long it was dipped or poured over; shown where this phone asks for it, and may stay empty.
    Seconds,
}

/// What is chosen and typed on the Weigh screen. Empty ids and `None` mean: as last time.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize, uniffi::Record)]
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
    pub way: Option<WeighMode>,
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
    /// The draft that the view handed out for this coat, so that saving twice saves once; empty until it has.
    #[uniffi(default = "")]
    pub draft: String,
    /// The reading that was asked about and is right, as it was typed then; empty while there is none. Another reading is asked
    /// about again.
    #[uniffi(default = "")]
    pub confirmed: String,
    /// How long it was dipped or poured over, in seconds, as typed.
    #[uniffi(default = "")]
    pub seconds: String,
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
            draft: String::new(),
            confirmed: String::new(),
            seconds: String::new(),
            ..self
        }
    }

    /// Whether `coat` is what it describes: the same things, and the same readings.
    fn is_of(&self, coat: &Coat, style: &Style) -> bool {
        let is_id = |text: &str, id: Uuid| text.is_empty() || text.parse() == Ok(id);
        let is_read = |text: &str, mg: Option<i64>| parse::mass(text, style).ok().map(Grams::milligrams) == mg;
        let same_reading = match self.way.unwrap_or_default() {
            WeighMode::Net => coat.glazed_mg.is_none() && is_read(&self.net, Some(coat.net_mg)),
            WeighMode::TwoWeights => is_read(&self.bare, coat.bare_mg) && is_read(&self.glazed, coat.glazed_mg),
        };
        same_reading
            && is_id(&self.form, coat.form)
            && is_id(&self.bucket, coat.bucket)
            && is_id(&self.scale, coat.scale)
            && is_id(&self.piece, coat.piece)
            && self.zone.is_none_or(|zone| zone.code() == coat.zone)
    }

    /// The reading as it is typed.
    fn typed(&self) -> String {
        match self.way.unwrap_or_default() {
            WeighMode::Net => self.net.trim().to_owned(),
            WeighMode::TwoWeights => format!("{} {}", self.bare.trim(), self.glazed.trim()),
        }
    }

    /// Whether the potter has said that this reading is right.
    fn is_confirmed(&self) -> bool {
        !self.confirmed.is_empty() && self.confirmed == self.typed()
    }
}

/// A reading that is probably a slip, asked about before it counts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct Question {
    /// What is asked.
    pub text: String,
    /// What can be answered; typing another reading answers too.
    pub choices: Vec<Suggestion>,
}

/// An answer to a question, ready to go on with.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct Suggestion {
    /// What the button says.
    pub label: String,
    /// The entry to go on with.
    pub entry: WeighEntry,
}

/// A coat that may follow on the same piece, ready to weigh.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct NextCoat {
    /// What the button says.
    pub label: String,
    /// The entry to go on with.
    pub entry: WeighEntry,
}

/// What the studio still lacks before a piece can be weighed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct SetupStep {
    /// The sheet that adds it.
    pub editor: EditorKind,
    /// What it is and why it is wanted.
    pub title: String,
    /// One sentence more.
    pub detail: String,
    /// Whether it is there already.
    pub done: bool,
}

/// The aim for this coat, in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct TargetView {
    /// Names what is weighed, to hand to [`Studio::why_target`] and what belongs to it.
    pub id: String,
    /// The wet weight aimed at, with its unit.
    pub wet: String,
    /// The accepted span, in words; for a guess all that is plausible.
    pub span: String,
    /// What the target comes from.
    pub source: String,
    /// How many pots it rests on.
    pub rests_on: String,
    /// How sure the aim itself is.
    pub sure: String,
    /// How narrow the span is and why.
    pub tolerance: String,
    /// Other ways in which it can be chosen, each a button; the first takes back what fired pots did to it.
    pub options: Vec<TargetOption>,
    /// What the button says that opens [`Studio::why_target`].
    pub why: String,
}

/// Where the reading lies, for a drawn gauge; all from 0 to 1 along the gauge.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, uniffi::Record)]
pub struct Gauge {
    /// Where the accepted span begins; for a guess, what is plausible.
    pub low: f64,
    /// Where it ends.
    pub high: f64,
    /// Whether the span is a guess's: drawn neither green nor as if it were accepted.
    pub guess: bool,
    /// The aim.
    pub aim: f64,
    /// The reading, held inside the gauge; absent before there is one.
    pub reading: Option<f64>,
    /// Half of the width within which the scale cannot tell.
    pub blur: f64,
}

/// What the reading means, in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct VerdictView {
    /// Which it is; the shell gives each a shape and a colour.
    pub kind: VerdictKind,
    /// One or two words that are read at arm's length.
    pub headline: String,
    /// What to do about it.
    pub act: String,
    /// Why, in a sentence.
    pub detail: String,
    /// What the target rests on, in a line.
    pub rests: String,
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
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct FieldError {
    /// The field to go back to.
    pub field: Field,
    /// What is wrong and what to do.
    pub sentence: String,
}

/// A field to fill, as it stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
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
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct RecentCoat {
    /// The coat's id.
    pub id: String,
    /// Its glaze, and when it was saved.
    pub when: String,
    /// The form, the code on the foot, and the zone.
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

/// That fired pots have moved the target, said until the first coat is saved by it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct MovedTarget {
    /// From what to what, and by how many pots.
    pub text: String,
    /// The one button that takes it back.
    pub keep: TargetOption,
}

/// All that the Weigh screen shows.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct WeighView {
    /// The entry with everything that was left open filled in.
    pub entry: WeighEntry,
    /// What must be added first; empty when the studio can weigh.
    pub missing: Vec<SetupStep>,
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
    /// What is asked about a reading that is probably a slip; then there is no verdict yet.
    pub question: Option<Question>,
    /// What to do while the reading is still being typed, in the verdict's place; else empty.
    pub waiting: String,
    /// What cannot be taken as it stands.
    pub refusal: Option<FieldError>,
    /// That fired pots have moved the target, to be said before all notes.
    pub moved: Option<MovedTarget>,
    /// What else should be known here.
    pub notes: Vec<Note>,
    /// The coats kept last, newest first.
    pub recent: Vec<RecentCoat>,
    /// Today's count.
    pub tally: String,
    /// Whether Save would take it.
    pub can_save: bool,
}

#[uniffi::export]
impl Studio {
    /// The Weigh screen for `entry`, or for what was remembered if there is none.
    ///
    /// # Errors
    /// Only when the file cannot be read; whatever is wrong with the entry is said inside the view.
    pub fn weigh(&self, now: Now, entry: Option<WeighEntry>) -> Result<WeighView> {
        self.store.read(|conn| {
            let entry = match entry {
                Some(entry) => entry,
                None => Remembered::load(conn)?.entry,
            };
            view(conn, now, entry, &self.pooled)
        })
    }

    /// Remembers what is chosen and half typed, for the next start. Not part of the journal. What comes after its coat was saved
    /// is too late, and is not remembered.
    ///
    /// # Errors
    /// When the file cannot be written.
    pub fn remember(&self, now: Now, entry: &WeighEntry) -> Result<()> {
        let draft = draft::named(&entry.draft)?;
        self.command(now, |tx| {
            let is_late = draft.map(|draft| draft::is_saved(tx.conn(), draft)).transpose()?.unwrap_or(false);
            if is_late {
                return Ok(());
            }
            self.pooled.save(tx)?;
            Remembered::load(tx.conn())?.with(entry).save(tx)
        })?;
        Ok(())
    }

    /// Saves the coat that `entry` describes. When this returns, it survives a pulled battery. Saved again with the same draft
    /// and the same readings it answers as the first time; once that coat is undone, it is a new one.
    ///
    /// # Errors
    /// [`StudioError::Refused`] with the field to go back to; [`StudioError::Missing`] when something chosen is gone;
    /// [`StudioError::Full`] or [`StudioError::Busy`] when the file cannot be written. Nothing is half kept.
    pub fn save(&self, now: Now, entry: WeighEntry) -> Result<CommandResult> {
        let draft = draft::named(&entry.draft)?;
        let stored = self.command(now, |tx| {
            let preference = preference(tx.conn())?;
            let style = style_of(&preference);
            let draft = draft.map(|draft| {
                Draft::find(tx.conn(), draft, |id| {
                    Ok(Coat::load(tx.conn(), id)?.is_some_and(|coat| entry.is_of(&coat, &style)))
                })
            });
            let draft = draft.transpose()?;
            if let Some(Draft::Saved(id)) = draft
                && let Some(coat) = Coat::load(tx.conn(), id)?
            {
                return saved_before(tx.conn(), style, &entry, &coat);
            }
            let Some(mut context) = WeighContext::load(tx.conn(), style, &entry)? else {
                return Err(nothing_to_weigh_with(&entry));
            };
            context.learn(tx.conn(), now, &self.pooled)?;
            context.is_what_was_shown(&entry)?;
            let target = context.target()?;
            let (verdict, typed) = match context.answer(tx.conn(), &target)? {
                Answer::Verdict(verdict, typed) => (verdict, typed),
                Answer::Question(question) => {
                    let field = last_field(context.entry.way.unwrap_or_default());
                    return Err(StudioError::refused(field.key(), question.text));
                }
            };
            let id = match draft {
                Some(Draft::Open(id)) => id,
                _ => tx.new_id(),
            };
            let known = GlazedPiece::of(tx.conn(), &context.entry)?;
            let is_first = known.as_ref().is_none_or(GlazedPiece::is_bare);
            let (piece, mut code) = known.map_or_else(|| (tx.new_id(), None), |piece| (piece.id, piece.code));
            if is_first && preference.code_pieces && code.is_none() {
                code = new_code(tx.conn(), piece)?;
            }
            let coat = context.coat(id, now, piece, typed, &target, &verdict);
            let dip = if preference.ask_dip { context.seconds()? } else { None };
            let coat = Coat { code, hand: preference.hand, dip_ms: dip.map(Seconds::milliseconds), ..coat };
            tx.put(&coat)?;
            let remembered = Remembered::load(tx.conn())?.with(&context.entry);
            let next = remembered.next_coats(context.next_coats(piece));
            let next_piece = remembered.in_its_bucket(context.next_piece());
            remembered.with(&next_piece).save(tx)?;
            context.remember_announced(tx, &target)?;
            self.pooled.save(tx)?;
            let sentence = sentence(&context.form.name, &coat, context.mass(verdict.net), is_first);
            Ok(Saved { id, sentence, next, first: None })
        })?;
        let Saved { id, sentence, next, first } = stored.value;
        Ok(CommandResult { next, ..CommandResult::new(id.to_string(), sentence, first.unwrap_or(stored.undo)) })
    }
}

/// What is answered to a coat that is saved.
struct Saved {
    id: Uuid,
    sentence: String,
    next: Vec<NextCoat>,
    /// What undoes it, where an earlier command saved it.
    first: Option<Undo>,
}

/// What was answered when the coat of `entry` was saved.
fn saved_before(conn: &Connection, style: Style, entry: &WeighEntry, coat: &Coat) -> Result<Saved> {
    let form = entity::Form::load(conn, coat.form)?.map_or_else(say::some_form, |form| form.name);
    let wet = style.mass(Grams::from_milligrams(coat.net_mg), step_of(conn, coat)?);
    // What is gone since is nothing to go on with.
    let shown = WeighEntry { zone: coat.zone.parse().ok(), ..entry.clone() };
    let context = usable(WeighContext::load(conn, style, &shown))?.flatten();
    let context = context.filter(|context| context.is_what_was_shown(&shown).is_ok());
    let is_first = query::coats_of_piece(conn, coat.piece)?.first().is_none_or(|first| first.id == coat.id);
    let next = context.map(|context| context.next_coats(coat.piece)).unwrap_or_default();
    Ok(Saved {
        id: coat.id,
        sentence: sentence(&form, coat, wet, is_first),
        next: Remembered::load(conn)?.next_coats(next),
        first: draft::made_by(conn, coat.id)?,
    })
}

/// "Saved: Small mug, inside, 19.4 g, within." With the code, which goes onto the foot with the first coat.
fn sentence(form: &str, coat: &Coat, wet: String, is_first: bool) -> String {
    let (zone, kind) = (name_of::<ZoneKind>(&coat.zone), name_of::<VerdictKind>(&coat.verdict));
    match &coat.code {
        Some(code) if is_first => say::saved_with_code(form, zone, wet, kind, code),
        Some(code) => say::saved_on_piece(form, code, zone, wet, kind),
        None => say::saved(form, zone, wet, kind),
    }
}

/// A code that no piece has yet, as short as there is one; `None` only when none was found. Which are tried follows from the
/// piece's own name, so that two phones that are apart hardly ever give out the same.
pub(super) fn new_code(conn: &Connection, piece: Uuid) -> Result<Option<String>> {
    for code in piece_code::candidates(piece.as_u128()) {
        if query::piece_of_code(conn, &code)?.is_none() {
            return Ok(Some(code));
        }
    }
    Ok(None)
}

/// Why there is nothing to weigh with: what was chosen has gone and nothing is left, or nothing was ever there.
fn nothing_to_weigh_with(entry: &WeighEntry) -> StudioError {
    if [&entry.form, &entry.bucket, &entry.scale].iter().all(|id| id.is_empty()) {
        StudioError::refused("", say::add_to_weigh())
    } else {
        StudioError::missing("to_weigh_with")
    }
}

impl Field {
    /// The field's key in refusals.
    pub fn key(self) -> &'static str {
        match self {
            Field::Net => "net",
            Field::Bare => "bare",
            Field::Glazed => "glazed",
            Field::Seconds => "seconds",
        }
    }

    fn from_key(key: &str) -> Option<Field> {
        [Field::Net, Field::Bare, Field::Glazed, Field::Seconds].into_iter().find(|field| field.key() == key)
    }
}

/// The field that the keypad fills first.
fn first_field(way: WeighMode) -> Field {
    match way {
        WeighMode::Net => Field::Net,
        WeighMode::TwoWeights => Field::Bare,
    }
}

/// The field whose reading completes the weight.
fn last_field(way: WeighMode) -> Field {
    match way {
        WeighMode::Net => Field::Net,
        WeighMode::TwoWeights => Field::Glazed,
    }
}
