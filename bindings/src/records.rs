//! The view records and entries that cross the boundary, mirrored from `laydown::studio` field by field
//! (a field that differs does not compile), so that the core itself knows nothing of the generator.

pub use laydown::coat::verdict::VerdictKind;
pub use laydown::form::ZoneKind;
pub use laydown::studio::*;

/// What a reading means.
#[uniffi::remote(Enum)]
pub enum VerdictKind {
    /// The whole of the reading's uncertainty lies inside the accepted span.
    Within,
    /// It lies wholly below.
    Short,
    /// It lies wholly above.
    Over,
    /// The scale cannot decide it.
    CannotTell,
}

/// A zone of a form.
#[uniffi::remote(Enum)]
pub enum ZoneKind {
    /// The inside.
    Inside,
    /// The outside, as far as it is glazed.
    Outside,
    /// Inside and outside in one coat.
    Whole,
}

/// What a row in a list shows: a title, a line under it, and whether it is the one in use.
#[uniffi::remote(Record)]
pub struct Row {
    /// The entity's id, to hand back in a command.
    pub id: String,
    /// The first line.
    pub title: String,
    /// The second, quieter line; may be empty.
    pub detail: String,
    /// Whether this is the one chosen now.
    pub chosen: bool,
    /// The right half of its outline, from the axis at the foot to the rim; empty for what has none.
    pub outline: Vec<Point>,
}

/// How loudly a note speaks.
#[uniffi::remote(Enum)]
pub enum Tone {
    /// Something worth knowing.
    Plain,
    /// Something to look at before going on.
    Attention,
    /// Something that can hurt a person or spoil the work.
    Warning,
}

/// A sentence beside the main thing on a screen.
#[uniffi::remote(Record)]
pub struct Note {
    /// How loudly it speaks; never told by colour alone.
    pub tone: Tone,
    /// The sentence.
    pub text: String,
}

/// The answer to a command: what was kept and how to take it back.
#[uniffi::remote(Record)]
pub struct Kept {
    /// The id of what was kept.
    pub id: String,
    /// What happened, in one short sentence.
    pub sentence: String,
    /// Hand this to [`Studio::undo`] to take the command back; empty where there is nothing to take back.
    pub undo: String,
    /// The coats that may follow on the same piece, each ready to weigh.
    pub next: Vec<NextCoat>,
}

/// What a shell itself acts on, beside what it shows.
#[uniffi::remote(Record)]
pub struct Preferences {
    /// Whether the verdict is spoken.
    pub speak: bool,
    /// Whether a key or a verdict is felt.
    pub tick: bool,
    /// The decimal mark on the keypad.
    pub decimal: String,
}

/// The moment of a call and the local offset from UTC, from the shell.
#[uniffi::remote(Record)]
pub struct Now {
    /// Milliseconds since 1970-01-01T00:00:00Z.
    pub unix_ms: i64,
    /// Seconds that local time is ahead of UTC.
    pub utc_offset_s: i32,
}

/// How the coat's weight is read off the scale.
#[uniffi::remote(Enum)]
pub enum Way {
    /// The scale was tared on the bare piece: it shows the coat alone.
    Net,
    /// The bare piece and the glazed piece are weighed, each by itself.
    TwoWeights,
}

/// A field of the Weigh screen that the keypad can fill.
#[uniffi::remote(Enum)]
pub enum Field {
    /// The coat, net after tare.
    Net,
    /// The piece before the coat.
    Bare,
    /// The piece with its wet coat.
    Glazed,
}

/// What is chosen and typed on the Weigh screen. Empty ids and `None` mean: as last time.
#[uniffi::remote(Record)]
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

/// A coat that may follow on the same piece, ready to weigh.
#[uniffi::remote(Record)]
pub struct NextCoat {
    /// What the button says.
    pub label: String,
    /// The entry to go on with.
    pub entry: WeighEntry,
}

/// What the studio still lacks before a piece can be weighed.
#[uniffi::remote(Record)]
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
#[uniffi::remote(Record)]
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
#[uniffi::remote(Record)]
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
#[uniffi::remote(Record)]
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
#[uniffi::remote(Record)]
pub struct Refusal {
    /// The field to go back to.
    pub field: Field,
    /// What is wrong and what to do.
    pub sentence: String,
}

/// A field to fill, as it stands.
#[uniffi::remote(Record)]
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
#[uniffi::remote(Record)]
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
#[uniffi::remote(Record)]
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

/// A line of a record: what it is and what it says.
#[uniffi::remote(Record)]
pub struct Line {
    /// What it is.
    pub label: String,
    /// What it says.
    pub value: String,
}

/// The record of one coat.
#[uniffi::remote(Record)]
pub struct CoatView {
    /// The coat's id.
    pub id: String,
    /// The id of the piece it is on.
    pub piece: String,
    /// The form and the zone.
    pub title: String,
    /// The record, line by line.
    pub lines: Vec<Line>,
    /// Whether it is a control piece.
    pub control: bool,
    /// What the button that turns it into a control piece, or back, says.
    pub control_label: String,
}

/// One bucket in the list.
#[uniffi::remote(Record)]
pub struct BucketRow {
    /// The bucket's id.
    pub id: String,
    /// The glaze.
    pub glaze: String,
    /// The bucket's own name.
    pub name: String,
    /// Its last SG, or "SG not checked".
    pub sg: String,
    /// When that was, and how many coats were kept since.
    pub since: String,
    /// Whether the check is missing or old.
    pub attention: bool,
}

/// All that the Buckets screen shows.
#[uniffi::remote(Record)]
pub struct BucketsView {
    /// The buckets in use.
    pub buckets: Vec<BucketRow>,
    /// What to do while there is none.
    pub empty: String,
    /// Cautions that belong here.
    pub notes: Vec<Note>,
}

/// One check of a bucket.
#[uniffi::remote(Record)]
pub struct CheckRow {
    /// When it was.
    pub when: String,
    /// What it said.
    pub sg: String,
    /// Flow cup seconds if there were any.
    pub flow: String,
}

/// One bucket's page.
#[uniffi::remote(Record)]
pub struct BucketView {
    /// The bucket's id.
    pub id: String,
    /// The glaze's id, for adding another bucket of it.
    pub glaze_id: String,
    /// The glaze.
    pub glaze: String,
    /// The bucket's own name.
    pub name: String,
    /// Its last SG, large.
    pub sg: String,
    /// When that was and what has been taken since.
    pub since: String,
    /// What the SG means: powder, water, dry glaze in a litre.
    pub lines: Vec<Line>,
    /// Its checks, newest first.
    pub checks: Vec<CheckRow>,
    /// What else should be known.
    pub notes: Vec<Note>,
}

/// Which sheet.
#[uniffi::remote(Enum)]
pub enum SheetKind {
    /// A form: a shape at a size.
    Form,
    /// A clay body: how it shrinks.
    Body,
    /// A kiln: its shelves.
    Kiln,
    /// A firing.
    Firing,
    /// A glaze; a new one comes with its first bucket.
    Glaze,
    /// A bucket of a glaze; its subject is the glaze.
    Bucket,
    /// A check of a bucket's SG; its subject is the bucket.
    Check,
    /// Water to thin a bucket, or to take off; its subject is the bucket. Reckons only, keeps nothing.
    Thin,
    /// A vessel for checking SG.
    Vessel,
    /// A scale.
    Scale,
    /// A test tile.
    Tile,
    /// A control piece: a coat weighed here, or an amount known to be right.
    Control,
    /// Units, sound and touch on this phone.
    Preference,
    /// Where the phones of the studio meet. Its secrets are the shell's to keep.
    MeetingPlace,
}

/// A field's key and what is entered in it.
#[uniffi::remote(Record)]
pub struct Value {
    /// The field's key.
    pub key: String,
    /// What is entered: text as typed, an item's code, or "yes" and "no".
    pub text: String,
}

/// A sheet as it is being filled in.
#[uniffi::remote(Record)]
pub struct SheetEntry {
    /// Which sheet.
    pub kind: SheetKind,
    /// The entity being changed; empty for a new one.
    pub id: String,
    /// What the sheet is about where it needs that: the glaze of a bucket, the bucket of a check; else empty.
    pub subject: String,
    /// What has been entered so far; a field not named here shows what is kept, or its usual value.
    pub values: Vec<Value>,
}

/// How a field is filled in.
#[uniffi::remote(Enum)]
pub enum FieldKind {
    /// Free text.
    Text,
    /// A line that counts letter by letter, such as an address: the keyboard adds no capital and corrects nothing.
    Exact,
    /// A secret: shown as dots, never filled in by the core, and kept by the shell where the platform keeps secrets, under
    /// the field's key, once the sheet is kept. Left empty, the one that is kept there stays.
    Secret,
    /// A folder, chosen in the platform's own way: what stands in it has two lines, the folder's name and what the shell
    /// finds it again by.
    Folder,
    /// A number or quantity in people's notation; the shell shows digits.
    Number,
    /// One of the items.
    Choice,
    /// One of the items, each with an outline to pick by looking.
    Outline,
    /// Yes or no.
    Switch,
    /// A table of numbers: what stands in it has one line for each row, with tabs between the cells. The shell shows
    /// the columns' names over them and lets rows be added and taken away.
    Table,
    /// A photograph: what stands in it is the name of the file. The items are the ways to get one.
    Photo,
}

/// A point of an outline: from 0 to 1 from the axis outwards, and from 0 to 1 upwards from the foot.
#[uniffi::remote(Record)]
pub struct Point {
    /// Distance from the axis.
    pub radius: f64,
    /// Height above the foot.
    pub height: f64,
}

/// One of the things to choose from in a field.
#[uniffi::remote(Record)]
pub struct Item {
    /// What to hand back.
    pub code: String,
    /// What it is called.
    pub name: String,
    /// One line about it; may be empty.
    pub detail: String,
    /// The right half of its outline, from the axis at the foot to the rim; empty where there is none.
    pub outline: Vec<Point>,
}

/// One field of a sheet.
#[uniffi::remote(Record)]
pub struct SheetField {
    /// Its key.
    pub key: String,
    /// What it asks for.
    pub label: String,
    /// What stands in it.
    pub text: String,
    /// An example or a unit, shown while it is empty; may be empty.
    pub hint: String,
    /// What it is for, or what it means; may be empty.
    pub help: String,
    /// How it is filled in.
    pub kind: FieldKind,
    /// The things to choose from.
    pub items: Vec<Item>,
    /// What the columns of a table are called; empty for every other kind.
    pub columns: Vec<String>,
    /// What is wrong with what stands in it; empty when nothing is.
    pub refusal: String,
}

/// A sheet as it is shown.
#[uniffi::remote(Record)]
pub struct SheetView {
    /// What the sheet is called.
    pub title: String,
    /// Its fields, in order.
    pub fields: Vec<SheetField>,
    /// What is drawn of it, to look at and to take hold of; shown below the field it names.
    pub drawing: Option<Drawing>,
    /// What follows from what is entered: areas, an SG, an amount of water.
    pub results: Vec<Note>,
    /// What the button that keeps it says; empty on a sheet that only reckons.
    pub keep_label: String,
    /// Whether keeping would be accepted.
    pub can_keep: bool,
    /// What the button that removes it says; empty where nothing can be removed.
    pub remove_label: String,
}

/// A list on the Studio screen.
#[uniffi::remote(Record)]
pub struct Section {
    /// The sheet that opens from its rows and adds to it.
    pub sheet: SheetKind,
    /// What the list is called.
    pub title: String,
    /// What the button that adds to it says.
    pub add_label: String,
    /// What stands there while it is empty.
    pub empty: String,
    /// Its rows.
    pub rows: Vec<Row>,
}

/// A caution in full.
#[uniffi::remote(Record)]
pub struct CautionView {
    /// What it is about.
    pub title: String,
    /// What to mind and whom to ask.
    pub text: String,
}

/// All that the Studio screen shows.
#[uniffi::remote(Record)]
pub struct HouseView {
    /// The lists.
    pub sections: Vec<Section>,
    /// What is to be said of backups.
    pub backup: String,
    /// The cautions.
    pub cautions: Vec<CautionView>,
}

/// A place in a drawing, both ways in widths of the drawing: x from its left edge, y from its upper one.
#[uniffi::remote(Record)]
pub struct Spot {
    /// From the left edge, 0 to 1.
    pub x: f64,
    /// From the upper edge, 0 to `tall` of the drawing.
    pub y: f64,
}

/// How a shape is painted.
#[uniffi::remote(Enum)]
pub enum Ink {
    /// The clay where the form is cut: filled.
    Clay,
    /// The form as it stands, bare: filled.
    Bisque,
    /// Glazed outside: filled.
    Glazed,
    /// Where both glazes lie: filled.
    Overlap,
    /// A line of the form.
    Line,
    /// A thin line to go by: the axis, the ground.
    Guide,
    /// What was seen in a photograph: a bright line.
    Seen,
}

/// A line or an area of a drawing.
#[uniffi::remote(Record)]
pub struct Shape {
    /// How it is painted.
    pub ink: Ink,
    /// Its corners; an area closes itself.
    pub spots: Vec<Spot>,
}

/// Something to take hold of and drag.
#[uniffi::remote(Record)]
pub struct Grip {
    /// What to hand back.
    pub key: String,
    /// Where it is held.
    pub at: Spot,
    /// The line it moves, from end to end; empty for a point.
    pub line: Vec<Spot>,
    /// What it is called, with where it stands: "Point 3: 6.2 cm high, 8.4 cm across".
    pub name: String,
    /// Whether it can be taken away.
    pub removable: bool,
}

/// A drawing in a box as wide as 1 and as tall as `tall`.
#[uniffi::remote(Record)]
pub struct Drawing {
    /// The key of the field it belongs below.
    pub below: String,
    /// Height of the box, in widths of it.
    pub tall: f64,
    /// The photograph that lies under it and fills the box; empty where there is none.
    pub photo: String,
    /// What is painted, the lowest first.
    pub shapes: Vec<Shape>,
    /// What can be dragged.
    pub grips: Vec<Grip>,
    /// What it shows, for whoever listens.
    pub words: String,
}

/// What a finger does to a drawing.
#[uniffi::remote(Enum)]
pub enum Touch {
    /// Drags the grip of this key to a place.
    Move {
        /// The grip's key.
        grip: String,
        /// Where to.
        to: Spot,
    },
    /// Taps a place where no grip is.
    Add {
        /// Where.
        at: Spot,
    },
    /// Takes the grip of this key away.
    Remove {
        /// The grip's key.
        grip: String,
    },
}

/// A sheet after a touch or a photograph.
#[uniffi::remote(Record)]
pub struct Redrawn {
    /// What is entered by it, in place of what was entered under the same keys.
    pub values: Vec<Value>,
    /// The sheet with that.
    pub view: SheetView,
}

/// What every form should take, going by one amount that is known to be right.
#[uniffi::remote(Record)]
pub struct SizesView {
    /// The amounts to go by, one of them chosen.
    pub known: Vec<Row>,
    /// What stands above the list: the amount gone by and today's SG, or what to do while there is none.
    pub intro: String,
    /// The forms, the one gone by first.
    pub sizes: Vec<SizeRow>,
}

/// What one form should take.
#[uniffi::remote(Record)]
pub struct SizeRow {
    /// The form's id.
    pub form: String,
    /// The form's name.
    pub title: String,
    /// The right half of its outline.
    pub outline: Vec<Point>,
    /// The wet weight to aim for.
    pub wet: String,
    /// What is accepted.
    pub span: String,
    /// Why it is that much.
    pub reason: String,
}

/// Equal pieces that wait for a firing: one with a code, or a run of them.
#[uniffi::remote(Record)]
pub struct WaitingRow {
    /// The pieces' ids.
    pub pieces: Vec<String>,
    /// The form, and the code if there is one.
    pub title: String,
    /// Its glazes, and when it was glazed.
    pub detail: String,
}

/// All that the Kiln screen shows.
#[uniffi::remote(Record)]
pub struct KilnView {
    /// How many pieces wait, or what to do while none does.
    pub waiting: String,
    /// The firings, newest first.
    pub firings: Vec<Row>,
    /// What to do while there is no firing.
    pub empty: String,
    /// Whether there is a kiln to load.
    pub has_kiln: bool,
    /// Cautions that belong here.
    pub cautions: Vec<String>,
}

/// Something to look at before the firing.
#[uniffi::remote(Record)]
pub struct Tick {
    /// What to hand back.
    pub code: String,
    /// What to look at.
    pub text: String,
    /// Whether it was.
    pub done: bool,
}

/// A piece in a firing.
#[uniffi::remote(Record)]
pub struct PlacedPiece {
    /// The piece's id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// Where it stands, and what was found on it.
    pub detail: String,
    /// Whether it has been looked at after the firing.
    pub looked_at: bool,
}

/// One shelf, seen from above.
#[uniffi::remote(Record)]
pub struct ShelfView {
    /// Its number, from 0 at the bottom.
    pub number: u32,
    /// What it is called, and how much of it is free.
    pub title: String,
    /// The shelf with its pieces; each piece is a grip, keyed by its id.
    pub drawing: Drawing,
}

/// One firing as its page shows it.
#[uniffi::remote(Record)]
pub struct FiringView {
    /// Its id.
    pub id: String,
    /// The cone aimed at and the kiln.
    pub title: String,
    /// Its record.
    pub lines: Vec<Line>,
    /// How far it has come.
    pub state: String,
    /// Whether it is still being loaded.
    pub is_loading: bool,
    /// What to look at before; empty once it is fired.
    pub before: Vec<Tick>,
    /// The shelves, the lowest first; empty once all is done.
    pub shelves: Vec<ShelfView>,
    /// The pieces that could be put in; empty once all is done.
    pub waiting: Vec<WaitingRow>,
    /// What stands above them.
    pub waiting_label: String,
    /// The pieces in it.
    pub pieces: Vec<PlacedPiece>,
    /// What the button to look at the pieces says; empty while there is nothing to look at.
    pub look_label: String,
    /// Earlier firings of this kiln, the newest first; the id is the firing's.
    pub earlier: Vec<Row>,
    /// What to mind.
    pub notes: Vec<Note>,
    /// What the button to the next state says.
    pub next: String,
    /// What that means, to be asked before it is done; empty when it can simply be done.
    pub next_question: String,
}

/// A photograph that can be shown.
#[uniffi::remote(Record)]
pub struct PhotoView {
    /// Its id.
    pub id: String,
    /// The picture's file.
    pub file: String,
    /// A small upright copy of it.
    pub preview: String,
}

/// One of the answers to a question.
#[uniffi::remote(Record)]
pub struct Choice {
    /// What to hand back.
    pub code: String,
    /// What it is called.
    pub name: String,
    /// Whether it is the answer.
    pub chosen: bool,
}

/// How thick the glaze looks on one zone.
#[uniffi::remote(Record)]
pub struct ZoneQuestion {
    /// The zone's key: `inside`, `outside` or `overlap`.
    pub zone: String,
    /// What is asked.
    pub label: String,
    /// Thin, right, thick.
    pub choices: Vec<Choice>,
}

/// A fault to tap on or off.
#[uniffi::remote(Record)]
pub struct FaultChip {
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// Whether the piece has it.
    pub on: bool,
    /// Its name, where on the piece it is, and what it often speaks of; to be said while it is on.
    pub hint: String,
}

/// A piece after its firing.
#[uniffi::remote(Record)]
pub struct LookView {
    /// The firing's id.
    pub firing: String,
    /// The piece's id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// Which of how many.
    pub place: String,
    /// Its coats as they were weighed.
    pub record: Vec<Line>,
    /// Its photographs from this firing.
    pub photos: Vec<PhotoView>,
    /// How thick the glaze looks.
    pub questions: Vec<ZoneQuestion>,
    /// The faults.
    pub faults: Vec<FaultChip>,
    /// The piece's outline with the faults that have a place; none while there is no fault.
    pub drawing: Option<Drawing>,
    /// How much the potter likes it, 1 to 5; 0 while not said.
    pub liking: u8,
    /// What the potter noted.
    pub note: String,
    /// Whether one of its coats is a control piece.
    pub control: bool,
    /// Whether it is to be fired again.
    pub again: bool,
    /// What to mind.
    pub notes: Vec<Note>,
    /// The piece before; empty for the first.
    pub previous: String,
    /// The piece after; empty for the last.
    pub next: String,
}

/// What is said of a piece with one tap.
#[uniffi::remote(Enum)]
pub enum Look {
    /// How thick a zone looks; the same again takes it back.
    Thickness {
        /// The zone's key.
        zone: String,
        /// The code of the thickness.
        thickness: String,
    },
    /// A fault, on or off.
    Fault {
        /// Its code.
        fault: String,
        /// Whether the piece has it.
        on: bool,
    },
    /// Where on the piece a fault is, as the drawing was touched.
    Where {
        /// A tap places the fault that was put on last.
        touch: Touch,
    },
    /// How much it is liked, 1 to 5; the same again, or 0, takes it back.
    Liking {
        /// So many.
        stars: u8,
    },
    /// A note.
    Note {
        /// The note; empty takes it away.
        text: String,
    },
    /// Whether it is a control piece.
    Control {
        /// Whether it is.
        on: bool,
    },
    /// Whether it is to be fired again.
    Again {
        /// Whether it is.
        on: bool,
    },
}

/// A piece's page.
#[uniffi::remote(Record)]
pub struct PieceView {
    /// Its id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// Its coats as they were weighed, the oldest first.
    pub coats: Vec<Line>,
    /// Its firings and what came out of them, the oldest first; the id is the firing's.
    pub firings: Vec<Row>,
    /// What to say while it has been in none.
    pub unfired: String,
    /// Its photographs, the oldest first.
    pub photos: Vec<PhotoView>,
}

/// Pieces that were looked for.
#[uniffi::remote(Record)]
pub struct PiecesView {
    /// What one can look by, beside the code.
    pub filters: Vec<Filter>,
    /// How many were found.
    pub found: String,
    /// The pieces, those glazed last first.
    pub pieces: Vec<Row>,
}

/// One thing to look by.
#[uniffi::remote(Record)]
pub struct Filter {
    /// Its key, to hand back with the id of a row.
    pub key: String,
    /// What it is called.
    pub label: String,
    /// What is chosen: "Any form", "Breakfast mug".
    pub chosen: String,
    /// What can be chosen; the first, with an empty id, is any.
    pub rows: Vec<Row>,
}

/// One thing that is compared.
#[uniffi::remote(Record)]
pub struct CompareLine {
    /// What it is.
    pub label: String,
    /// What it is on the left piece.
    pub left: String,
    /// What it is on the right one.
    pub right: String,
    /// Whether they differ.
    pub differs: bool,
}

/// Two pieces side by side.
#[uniffi::remote(Record)]
pub struct CompareView {
    /// The left piece's id.
    pub left: String,
    /// Its form and code.
    pub left_title: String,
    /// The file of its latest photograph; empty where there is none.
    pub left_photo: String,
    /// The right piece's id; empty while there is none to compare with.
    pub right: String,
    /// Its form and code, or that none is chosen.
    pub right_title: String,
    /// The file of its latest photograph; empty where there is none.
    pub right_photo: String,
    /// Line by line.
    pub lines: Vec<CompareLine>,
    /// What it can be compared with: control pieces of its glaze first, then others of its form or glaze.
    pub others: Vec<Row>,
}

/// One piece on the sheet.
#[uniffi::remote(Record)]
pub struct ContactTile {
    /// The file of a small picture of it; empty where none was taken.
    pub photo: String,
    /// Its form and code.
    pub title: String,
    /// Its glazes.
    pub glazes: String,
    /// Where it stood, and what came out.
    pub detail: String,
}

/// A firing on one sheet.
#[uniffi::remote(Record)]
pub struct ContactSheetView {
    /// The cone, the kiln and the day.
    pub title: String,
    /// How many pieces, how they were liked, and the faults counted.
    pub summary: String,
    /// The pieces, in the order in which they were loaded.
    pub tiles: Vec<ContactTile>,
}

/// The Backup page.
#[uniffi::remote(Record)]
pub struct BackupView {
    /// What a backup is for, and what it holds.
    pub intro: String,
    /// When this phone last made one.
    pub last: String,
    /// The name to offer for a new one.
    pub name: String,
    /// What to mind.
    pub notes: Vec<Note>,
    /// How often one is made by itself, to choose from; the id is for [`Studio::back_up_every`].
    pub every: Vec<Row>,
    /// What is done by itself, or what to do so that something is.
    pub by_itself: String,
    /// What the folder is called into which that is done; empty while none is chosen.
    pub place: String,
    /// Tables that can be written for a spreadsheet, the one wanted most first.
    pub tables: Vec<Export>,
    /// The journal, for other programs.
    pub journal: Export,
}

/// Something that can be written for other programs.
#[uniffi::remote(Record)]
pub struct Export {
    /// To hand to [`Studio::export`].
    pub what: String,
    /// What it is called.
    pub title: String,
    /// What is in it.
    pub detail: String,
    /// The name to offer for the file.
    pub name: String,
    /// Its media type.
    pub media_type: String,
}

/// A backup that is to be made now.
#[uniffi::remote(Record)]
pub struct BackupTask {
    /// The folder, as it was given.
    pub place: String,
    /// The name for the file.
    pub name: String,
}

/// Why a backup was not made by itself.
#[uniffi::remote(Enum)]
pub enum BackupTrouble {
    /// The folder is not there.
    PlaceGone,
    /// The phone's system no longer lets the app write there.
    NotAllowed,
    /// No room in the folder.
    PlaceFull,
    /// No room on the phone itself.
    PhoneFull,
    /// It could not be made for another reason than room.
    NotMade,
    /// What lies in the folder is not what was written.
    NotWhole,
    /// Any other failure of the folder.
    NoAnswer,
}

/// Something that was done.
#[uniffi::remote(Record)]
pub struct Doing {
    /// What it was about.
    pub title: String,
    /// When, on which phone, and what became of it.
    pub detail: String,
    /// To hand to undo, or to redo where it is taken back; empty where it cannot be turned on this phone.
    pub token: String,
    /// Whether it is taken back.
    pub taken_back: bool,
    /// The id of what it was about, whose history can be asked for.
    pub thing: String,
}

/// A list of what was done, the newest first.
#[uniffi::remote(Record)]
pub struct HistoryView {
    /// What it is the history of.
    pub title: String,
    /// How to read it, or what stands there while it is empty.
    pub intro: String,
    /// What was done.
    pub doings: Vec<Doing>,
}

/// The phones of the studio.
#[uniffi::remote(Record)]
pub struct DevicesView {
    /// How phones come to agree.
    pub intro: String,
    /// Where they meet.
    pub meeting: MeetingView,
    /// The phones, this one first.
    pub devices: Vec<Row>,
    /// Clocks that cannot be right.
    pub notes: Vec<Note>,
}

/// What taking a spreadsheet in would do.
#[uniffi::remote(Record)]
pub struct ImportView {
    /// What to do here.
    pub intro: String,
    /// The columns of the sheet: a choice each, with a few of its cells.
    pub columns: Vec<SheetField>,
    /// What the sheet leaves open: how its dates and numbers are written, what a name means, which scale was used.
    pub questions: Vec<SheetField>,
    /// How many readings would be taken in, and how many lines not.
    pub found: String,
    /// What to mind.
    pub notes: Vec<Note>,
    /// The first readings as they would be kept; their ids are the numbers of their lines.
    pub readings: Vec<Row>,
    /// What is wrong with the lines that cannot be taken in: "Line 7: …". The first of them; the last says how many more.
    pub complaints: Vec<String>,
    /// What the button says.
    pub take_in_label: String,
    /// Whether it can be taken in as it stands.
    pub can_take_in: bool,
}

/// Where the phones of the studio meet, as it is shown.
#[uniffi::remote(Record)]
pub struct MeetingView {
    /// Where they meet; or, while no place is chosen, what one is good for.
    pub place: String,
    /// Whether a place is chosen.
    pub chosen: bool,
    /// What the shell finds the chosen folder again by; empty where the place is no folder.
    pub folder: String,
    /// When they last agreed, and what came and went; empty while no place is chosen.
    pub last: String,
    /// What waits here; empty when nothing does.
    pub waits: String,
    /// What went wrong, and what is to be done.
    pub notes: Vec<Note>,
}

/// All that the Findings screen shows.
#[uniffi::remote(Record)]
pub struct FindingsView {
    /// The glazes in use, each with what is known of it in a sentence.
    pub glazes: Vec<Row>,
    /// What to do while nothing is known of any.
    pub empty: String,
    /// What else should be known.
    pub notes: Vec<Note>,
}

/// What the pots of one glaze say that belong together.
#[uniffi::remote(Record)]
pub struct WindowView {
    /// Which pots: "Cone 6, inside".
    pub title: String,
    /// What they say.
    pub words: String,
    /// Where the best lies and how sure that is; empty where it is not known.
    pub sure: String,
    /// The pots, each by its laydown.
    pub chart: ChartView,
    /// Their faults, each with how many pots had it.
    pub faults: Vec<Line>,
}

/// All that is known of one glaze.
#[uniffi::remote(Record)]
pub struct GlazeFindingsView {
    /// The glaze's id.
    pub id: String,
    /// Its name.
    pub title: String,
    /// What its pots say, the largest group first.
    pub windows: Vec<WindowView>,
    /// What to do while none was looked at.
    pub empty: String,
    /// What targets rest on today, zone by zone.
    pub rests: Vec<Line>,
    /// What the button that starts from the best says; empty where there is nothing to take over.
    pub take: String,
    /// What it does.
    pub take_help: String,
    /// What to hand to [`Studio::take_best`].
    pub best: String,
    /// Whether coats keep to their aims; `None` while there are too few.
    pub drift: Option<ChartView>,
    /// The last set; none while there is none.
    pub sets: Vec<Line>,
    /// What else should be known.
    pub notes: Vec<Note>,
}

/// A place in a chart: fractions of its width from the left and of its height from the top, 0 to 1.
#[uniffi::remote(Record)]
pub struct ChartSpot {
    /// From the left.
    pub x: f64,
    /// From the top.
    pub y: f64,
}

/// The shape of a dot. Each is told from the others without its colour.
#[uniffi::remote(Enum)]
pub enum Mark {
    /// Came out thin: a triangle that points down.
    Thin,
    /// Came out right: a filled disc.
    Right,
    /// Came out thick: a triangle that points up.
    Thick,
    /// A coat as others: a small disc.
    Coat,
    /// A coat that lies out further than the others let expect: a cross.
    Outlier,
}

/// How a line is drawn.
#[uniffi::remote(Enum)]
pub enum Stroke {
    /// What is aimed at: drawn through.
    Aim,
    /// The best of the window: dashed.
    Best,
    /// A moving average: drawn through, heavier.
    Average,
}

/// One thing that was weighed.
#[uniffi::remote(Record)]
pub struct Dot {
    /// Where.
    pub at: ChartSpot,
    /// As what.
    pub mark: Mark,
}

/// An area between two corners.
#[uniffi::remote(Record)]
pub struct Band {
    /// Its upper left corner.
    pub from: ChartSpot,
    /// Its lower right corner.
    pub to: ChartSpot,
}

/// A line through spots.
#[uniffi::remote(Record)]
pub struct ChartLine {
    /// How it is drawn.
    pub stroke: Stroke,
    /// Its spots, from left to right or from top to bottom.
    pub spots: Vec<ChartSpot>,
}

/// A place on an axis with its words.
#[uniffi::remote(Record)]
pub struct AxisTick {
    /// From the left, or from the top.
    pub at: f64,
    /// What stands there.
    pub words: String,
}

/// What a mark, a stroke or the band stands for; with neither mark nor stroke it is the band.
#[uniffi::remote(Record)]
pub struct LegendEntry {
    /// The mark, if it is one.
    pub mark: Option<Mark>,
    /// The stroke, if it is one.
    pub stroke: Option<Stroke>,
    /// What it stands for.
    pub words: String,
}

/// A chart.
#[uniffi::remote(Record)]
pub struct ChartView {
    /// What it shows.
    pub title: String,
    /// The same in words, for everyone who reads or listens rather than looks.
    pub words: String,
    /// What runs across.
    pub across_title: String,
    /// The axis below, from left to right.
    pub across: Vec<AxisTick>,
    /// The axis on the left, from top to bottom.
    pub up: Vec<AxisTick>,
    /// Areas, painted first.
    pub bands: Vec<Band>,
    /// Lines, painted over them.
    pub lines: Vec<ChartLine>,
    /// Dots, painted last.
    pub dots: Vec<Dot>,
    /// What stands for what, of all that is painted.
    pub legend: Vec<LegendEntry>,
}
