//! The scenarios in `tests/scenarios`, played through the facade; Kotlin and Swift play the same files (their README says how
//! they read). With `LAYDOWN_WRITE_SCENARIOS=1` the answers are written into the files instead of being compared with them.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

use chrono::DateTime;
use laydown_app::{
    Assessment, ClashAnswer, EditorEntry, EditorKind, Now, ProgressListener, Spot, Stop, Studio, StudioError,
    SyncProgress, TargetChoice, Touch, Value as Entered, WeighEntry, folder_at,
};
use serde::Serialize;
use serde_json::{Map, Value, json};
use tempfile::TempDir;

const WRITE: &str = "LAYDOWN_WRITE_SCENARIOS";
const GIVEN: [&str; 2] = ["vase.png", "readings.csv"];
/// Places on a drawing or a gauge are written to a millionth of it: the last digits differ between processors.
const FINEST: f64 = 1e-6;

#[test]
fn every_scenario_answers_as_written() {
    let mut differences = Vec::new();
    let mut played = 0;
    for file in scenarios() {
        let mut scenario: Value = serde_json::from_str(&fs::read_to_string(&file).unwrap()).unwrap();
        let mut stage = Stage::new(scenario["utc_offset_s"].as_i64().unwrap() as i32);
        let name = file.file_name().unwrap().to_string_lossy().into_owned();
        for (at, step) in scenario["steps"].as_array_mut().unwrap().iter_mut().enumerate() {
            let (outcome, answer) = stage.play(step);
            if std::env::var_os(WRITE).is_some() {
                let step = step.as_object_mut().unwrap();
                step.retain(|key, _| key != "answers" && key != "refuses");
                step.insert(outcome.to_owned(), answer);
            } else {
                let said = step.get("say").and_then(Value::as_str).unwrap_or_default();
                let call = step["call"].as_str().unwrap();
                let place = format!("{name}, step {} ({call}: {said}): {outcome}", at + 1);
                compare(&place, step.get(outcome).unwrap_or(&json!("no such outcome")), &answer, &mut differences);
            }
            played += 1;
        }
        if std::env::var_os(WRITE).is_some() {
            fs::write(file, laid_out(&scenario)).unwrap();
        }
    }
    assert!(played > 100, "only {played} steps were found");
    assert!(differences.is_empty(), "{}", differences.join("\n"));
}

#[test]
fn no_call_of_the_facade_is_left_out() {
    let stories: String = scenarios().iter().map(|file| fs::read_to_string(file).unwrap()).collect();
    let names = exported_calls(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/app/src"));
    assert!(names.len() > 30, "{names:?}");
    let left_out = names.iter().filter(|name| !stories.contains(&format!("\"call\": \"{name}\"")));
    assert_eq!(left_out.collect::<Vec<_>>(), Vec::<&String>::new());
}

/// The names of all calls that a shell can make of a studio, read from the sources below `folder`.
fn exported_calls(folder: &Path) -> Vec<String> {
    let mut names = Vec::new();
    for entry in fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()) {
        if entry.is_dir() {
            names.extend(exported_calls(&entry));
            continue;
        }
        let source = fs::read_to_string(&entry).unwrap();
        for block in source.split("#[uniffi::export]\nimpl Studio {").skip(1) {
            let block = block.split_once("\n}\n").unwrap().0;
            let calls = block.split("\n    pub fn ").skip(1).map(|call| call.split_once('(').unwrap());
            names.extend(
                calls.filter(|(_, rest)| rest.trim_start().starts_with("&self")).map(|(name, _)| name.to_owned()),
            );
        }
    }
    names
}

/// The files, in the order of their names.
fn scenarios() -> Vec<PathBuf> {
    let files = fs::read_dir(here()).unwrap().map(|file| file.unwrap().path());
    let mut files: Vec<PathBuf> =
        files.filter(|file| file.extension().is_some_and(|ending| ending == "json")).collect();
    files.sort();
    files
}

fn here() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios")
}

/// The studios of one scenario, and the names it has for ids.
struct Stage {
    folder: TempDir,
    studios: BTreeMap<String, Arc<Studio>>,
    now: Now,
    /// Text as the studio gives it → the name written for it.
    names: BTreeMap<String, String>,
    numbered: usize,
}

impl Stage {
    fn new(utc_offset_s: i32) -> Stage {
        let folder = TempDir::new().unwrap();
        // Copies, for the studio lays a smaller picture beside the one it is given.
        for file in GIVEN {
            fs::copy(here().join(file), folder.path().join(file)).unwrap();
        }
        Stage {
            folder,
            studios: BTreeMap::new(),
            now: Now { unix_ms: 0, utc_offset_s },
            names: BTreeMap::new(),
            numbered: 0,
        }
    }

    /// Plays one step; says whether it was answered or refused, and with what, under the scenario's names.
    fn play(&mut self, step: &Value) -> (&'static str, Value) {
        self.now.unix_ms = match step.get("at") {
            Some(at) => DateTime::parse_from_rfc3339(at.as_str().unwrap()).unwrap().timestamp_millis(),
            None => self.now.unix_ms + 1000,
        };
        let name = step.get("studio").and_then(Value::as_str).unwrap_or("studio").to_owned();
        let studio = match self.studios.get(&name) {
            Some(studio) => Ok(studio.clone()),
            None => Studio::open(&self.folder.path().join(format!("{name}.laydown")), self.now).map(Arc::new),
        };
        let with = self.known(step.get("with").unwrap_or(&Value::Null));
        let answer = studio.and_then(|studio| {
            self.studios.insert(name, studio.clone());
            call(&studio, self.now, step["call"].as_str().unwrap(), &With(&with))
        });
        let (outcome, answer) = match answer {
            Ok(answer) => ("answers", answer),
            Err(error) => ("refuses", refusal(&error)),
        };
        for (name, place) in step.get("bind").and_then(Value::as_object).into_iter().flatten() {
            let text = answer.pointer(place.as_str().unwrap()).and_then(Value::as_str);
            let text = text.unwrap_or_else(|| panic!("{name}: no text at {place} in {answer}"));
            self.names.insert(text.to_owned(), format!("${name}"));
        }
        (outcome, self.named(&answer))
    }

    /// `value` with what the scenario's names stand for in place of them.
    fn known(&self, value: &Value) -> Value {
        let text = |text: &str| {
            if let Some((text, _)) = self.names.iter().find(|(_, name)| *name == text) {
                return text.clone();
            }
            text.replace("$folder", self.folder.path().to_str().unwrap())
        };
        each_text(value, &mut |found| text(found))
    }

    /// `value` with names in place of what differs from run to run: ids, and the folder.
    fn named(&mut self, value: &Value) -> Value {
        each_text(value, &mut |text| {
            if let Some(name) = self.names.get(text) {
                return name.clone();
            }
            let mut named = text.replace(self.folder.path().to_str().unwrap(), "$folder");
            for id in ids(&named) {
                let number = &mut self.numbered;
                let name = self.names.entry(id.clone()).or_insert_with(|| {
                    *number += 1;
                    format!("${number}")
                });
                named = named.replace(&id, name);
            }
            named
        })
    }
}

/// The ids in `text`, in their order.
fn ids(text: &str) -> Vec<String> {
    const LENGTH: usize = 36;
    let is_id = |part: &&str| part.is_ascii() && uuid::Uuid::try_parse(part).is_ok();
    (0..text.len()).filter_map(|at| text.get(at..at + LENGTH)).filter(is_id).map(str::to_owned).collect()
}

/// `value` with `change` made to every text in it, keys in the order of the alphabet.
fn each_text(value: &Value, change: &mut impl FnMut(&str) -> String) -> Value {
    match value {
        Value::String(text) => Value::String(change(text)),
        Value::Array(items) => items.iter().map(|item| each_text(item, change)).collect(),
        Value::Object(fields) => {
            let sorted: BTreeMap<&String, &Value> = fields.iter().collect();
            Value::Object(sorted.into_iter().map(|(key, value)| (key.clone(), each_text(value, change))).collect())
        }
        other => other.clone(),
    }
}

fn refusal(error: &StudioError) -> Value {
    match error {
        StudioError::Refused { field, sentence } => {
            json!({ "error": "Refused", "field": field, "sentence": sentence })
        }
        StudioError::Missing { sentence } => json!({ "error": "Missing", "sentence": sentence }),
        StudioError::Busy { sentence } => json!({ "error": "Busy", "sentence": sentence }),
        StudioError::Full { sentence } => json!({ "error": "Full", "sentence": sentence }),
        StudioError::Newer { sentence } => json!({ "error": "Newer", "sentence": sentence }),
        StudioError::NotAStudio { sentence } => json!({ "error": "NotAStudio", "sentence": sentence }),
        StudioError::Damaged { sentence } => json!({ "error": "Damaged", "sentence": sentence }),
        StudioError::Unreadable { sentence } => json!({ "error": "Unreadable", "sentence": sentence }),
        StudioError::Elsewhere { sentence } => json!({ "error": "Elsewhere", "sentence": sentence }),
    }
}

/// What a step calls with.
struct With<'a>(&'a Value);

impl With<'_> {
    fn text(&self, key: &str) -> &str {
        self.0[key].as_str().unwrap_or_else(|| panic!("no text {key} in {}", self.0))
    }

    fn texts(&self, key: &str) -> Vec<String> {
        self.0[key].as_array().unwrap().iter().map(|text| text.as_str().unwrap().to_owned()).collect()
    }

    fn path(&self, name: &str) -> &Path {
        Path::new(self.text(name))
    }

    fn paths(&self, name: &str) -> Vec<PathBuf> {
        self.texts(name).into_iter().map(PathBuf::from).collect()
    }

    fn flag(&self, key: &str) -> bool {
        self.0[key].as_bool().unwrap()
    }

    fn number(&self, key: &str) -> u32 {
        self.0[key].as_u64().unwrap().try_into().unwrap()
    }

    fn of(&self, key: &str) -> With<'_> {
        With(&self.0[key])
    }

    fn spot(&self, key: &str) -> Spot {
        Spot { x: self.0[key]["x"].as_f64().unwrap(), y: self.0[key]["y"].as_f64().unwrap() }
    }

    fn values(&self, key: &str) -> Vec<Entered> {
        let values = self.0.get(key).and_then(Value::as_object).into_iter().flatten();
        values.map(|(key, text)| Entered { key: key.clone(), text: text.as_str().unwrap().to_owned() }).collect()
    }

    fn weigh_entry(&self) -> Option<WeighEntry> {
        self.0.get("entry").map(|entry| serde_json::from_value(entry.clone()).unwrap())
    }

    fn choice(&self) -> TargetChoice {
        match self.text("choice") {
            "AllEvidence" => TargetChoice::AllEvidence,
            "BestEvidence" => TargetChoice::BestEvidence,
            "Kept" => TargetChoice::Kept,
            choice => panic!("no choice is called {choice}"),
        }
    }

    fn answer(&self) -> ClashAnswer {
        match self.text("answer") {
            "Ours" => ClashAnswer::Ours,
            "Theirs" => ClashAnswer::Theirs,
            "Both" => ClashAnswer::Both,
            answer => panic!("no answer is called {answer}"),
        }
    }

    fn kind(&self) -> EditorKind {
        let name = self.text("kind");
        match name {
            "Form" => EditorKind::Form,
            "Body" => EditorKind::Body,
            "BisqueLot" => EditorKind::BisqueLot,
            "Kiln" => EditorKind::Kiln,
            "Firing" => EditorKind::Firing,
            "WitnessCones" => EditorKind::WitnessCones,
            "Piece" => EditorKind::Piece,
            "Glaze" => EditorKind::Glaze,
            "Bucket" => EditorKind::Bucket,
            "Check" => EditorKind::Check,
            "BucketEntry" => EditorKind::BucketEntry,
            "Mix" => EditorKind::Mix,
            "Thin" => EditorKind::Thin,
            "Vessel" => EditorKind::Vessel,
            "Scale" => EditorKind::Scale,
            "ScaleTest" => EditorKind::ScaleTest,
            "Tile" => EditorKind::Tile,
            "TileLadder" => EditorKind::TileLadder,
            "Control" => EditorKind::Control,
            "Coat" => EditorKind::Coat,
            "DryWeight" => EditorKind::DryWeight,
            "Preference" => EditorKind::Preference,
            "SyncLocation" => EditorKind::SyncLocation,
            _ => panic!("no sheet is called {name}"),
        }
    }

    fn editor_entry(&self) -> EditorEntry {
        let entry = self.of("entry");
        let text = |key| entry.0.get(key).and_then(Value::as_str).unwrap_or_default().to_owned();
        EditorEntry {
            kind: entry.kind(),
            id: text("id"),
            subject: text("subject"),
            values: entry.values("values"),
            draft: text("draft"),
        }
    }

    fn touch(&self) -> Touch {
        let touch = self.of("touch");
        match touch.text("how") {
            "move" => Touch::Move { grip: touch.text("grip").to_owned(), to: touch.spot("to") },
            "add" => Touch::Add { at: touch.spot("at") },
            "remove" => Touch::Remove { grip: touch.text("grip").to_owned() },
            how => panic!("no touch is called {how}"),
        }
    }

    fn look(&self) -> Assessment {
        let look = self.of("look");
        let text = |key| look.text(key).to_owned();
        match look.text("of") {
            "thickness" => Assessment::Thickness { zone: text("zone"), thickness: text("thickness") },
            "fault" => Assessment::Fault { fault: text("fault"), on: look.flag("on") },
            "where" => Assessment::Where { touch: look.touch() },
            "liking" => Assessment::Liking { stars: look.number("stars").try_into().unwrap() },
            "note" => Assessment::Note { text: text("text") },
            "control" => Assessment::Control { on: look.flag("on") },
            "again" => Assessment::Again { on: look.flag("on") },
            of => panic!("no look is called {of}"),
        }
    }
}

/// Whether it was told how far a sync is.
#[derive(Default)]
struct Eye(AtomicBool);

impl ProgressListener for Eye {
    fn progress(&self, _: SyncProgress) {
        self.0.store(true, Ordering::Relaxed);
    }
}

fn call(studio: &Studio, now: Now, call: &str, with: &With<'_>) -> Result<Value, StudioError> {
    fn seen(answer: Result<impl Serialize, StudioError>) -> Result<Value, StudioError> {
        answer.map(|answer| serde_json::to_value(answer).unwrap())
    }
    match call {
        "weigh" => seen(studio.weigh(now, with.weigh_entry())),
        "pieces_to_glaze" => seen(studio.pieces_to_glaze(now, &with.weigh_entry().unwrap(), with.text("code"))),
        "remember" => seen(studio.remember(now, &with.weigh_entry().unwrap())),
        "save" => seen(studio.save(now, with.weigh_entry().unwrap())),
        "coat" => seen(studio.coat(now, with.text("id"))),
        "set_control" => seen(studio.set_control(now, with.text("id"), with.flag("control"))),
        "choose_target" => seen(studio.choose_target(now, with.text("target"), with.choice())),
        "why_target" => seen(studio.why_target(now, with.text("target"))),
        "set_counts" => {
            let target = with.text("target");
            seen(studio.set_counts(now, target, with.text("firing"), with.text("piece"), with.flag("counts")))
        }
        "remove_coat" => seen(studio.remove_coat(now, with.text("id"))),
        "undo" => seen(studio.undo(now, with.text("token"))),
        "redo" => seen(studio.redo(now, with.text("token"))),
        "recent_changes" => seen(studio.recent_changes(now)),
        "history" => seen(studio.history(now, with.text("id"))),
        "archived" => seen(studio.archived(now)),
        "unarchive" => seen(studio.unarchive(now, with.kind(), with.text("id"))),
        "meanwhile" => seen(studio.meanwhile(now)),
        "meanwhile_read" => seen(studio.meanwhile_read(now)),
        "settle_clash" => seen(studio.settle_clash(now, with.text("id"), with.answer())),
        "devices" => seen(studio.devices(now)),
        "sync_now" => {
            let (secrets, folder) = (with.values("secrets"), folder_at(with.text("folder")).unwrap());
            let (metered, check) = (with.flag("metered"), with.flag("check"));
            let eye = Arc::new(Eye::default());
            let answer = studio.sync_now(now, secrets, metered, check, Some(folder), None, eye.clone(), Stop::new());
            assert!(eye.0.load(Ordering::Relaxed) || answer.is_err(), "nobody was told how far it was");
            seen(answer)
        }
        "forget_sync_location" => seen(studio.forget_sync_location(now)),
        "set_up_as_new_phone" => seen(studio.set_up_as_new_phone(now)),
        "buckets" => seen(studio.buckets(now)),
        "bucket" => seen(studio.bucket(now, with.text("id"))),
        "setup" => seen(studio.setup(now)),
        "editor" => seen(studio.editor(now, &with.editor_entry())),
        "save_record" => seen(studio.save_record(now, &with.editor_entry())),
        "remove" => seen(studio.remove(now, with.kind(), with.text("id"))),
        "touch" => seen(studio.touch(now, &with.editor_entry(), &with.touch())),
        "photograph" => seen(studio.photograph(now, &with.editor_entry(), with.path("file"))),
        "backup" => seen(studio.backup(now)),
        "back_up" => seen(studio.back_up(with.path("into"))),
        "backed_up" => seen(studio.backed_up(now, with.path("copy"))),
        "set_backup_schedule" => seen(studio.set_backup_schedule(now, with.text("every"))),
        "set_backup_folder" => seen(studio.set_backup_folder(now, with.text("place"), with.text("called"))),
        "backup_due" => seen(studio.backup_due(now, with.flag("asked"))),
        "automatic_backup_done" => {
            seen(studio.automatic_backup_done(now, with.text("place"), with.text("file"), with.path("copy")))
        }
        "backups_removed" => seen(studio.backups_removed(now, &with.texts("files"))),
        "backup_failed" => seen(studio.backup_failed(now, with.text("trouble").parse().unwrap())),
        "export" => seen(studio.export(with.text("what"), with.path("into"))),
        "restore" => seen(studio.restore(now, with.path("from"))),
        "import" => seen(studio.import(now, with.path("file"), &with.values("chosen"))),
        "import_spreadsheet" => seen(studio.import_spreadsheet(now, with.path("file"), &with.values("chosen"))),
        "kiln" => seen(studio.kiln(now)),
        "firing" => seen(studio.firing(now, with.text("id"))),
        "load" => seen(studio.load(now, with.text("firing"), &with.texts("pieces"), with.number("shelf"))),
        "load_all" => seen(studio.load_all(now, with.text("firing"))),
        "place" => seen(studio.place(now, with.text("firing"), with.text("piece"), with.spot("to"))),
        "take_out" => seen(studio.take_out(now, with.text("firing"), with.text("piece"))),
        "set_checklist_item" => {
            seen(studio.set_checklist_item(now, with.text("firing"), with.text("what"), with.flag("done")))
        }
        "advance" => seen(studio.advance(now, with.text("firing"))),
        "assessment" => seen(studio.assessment(now, with.text("firing"), with.text("piece"))),
        "assess" => seen(studio.assess(now, with.text("firing"), with.text("piece"), &with.look())),
        "save_photo" => seen(studio.save_photo(now, with.text("piece"), with.text("firing"), with.path("file"))),
        "remove_photo" => seen(studio.remove_photo(now, with.text("id"))),
        "piece" => seen(studio.piece(now, with.text("id"))),
        "find_pieces" => seen(studio.find_pieces(now, &with.values("wanted"), 0)),
        "compare" => seen(studio.compare(now, with.text("left"), with.text("right"))),
        "contact_sheet" => seen(studio.contact_sheet(now, with.text("firing"))),
        "piece_sheet" => seen(studio.piece_sheet(now, with.text("firing"), with.text("piece"))),
        "write_pdf" => seen(studio.write_pdf(with.text("title"), &with.paths("pages"), with.path("into"))),
        "sizes" => seen(studio.sizes(now, with.text("known"))),
        "findings" => seen(studio.findings(now)),
        "glaze_findings" => seen(studio.glaze_findings(now, with.text("id"))),
        "answer_drift" => seen(studio.answer_drift(now, with.text("id"))),
        "write_charts" => seen(studio.write_charts(now, with.text("id"), with.path("into"))),
        "adopt_best" => seen(studio.adopt_best(now, with.text("id"), with.text("best"))),
        "preferences" => seen(studio.preferences()),
        call => panic!("no call is named {call}"),
    }
}

/// Says in `differences` where `answer` is not what was `written`.
fn compare(place: &str, written: &Value, answer: &Value, differences: &mut Vec<String>) {
    match (written, answer) {
        (Value::Object(written), Value::Object(answer)) if written.keys().eq(answer.keys()) => {
            for (key, value) in answer {
                compare(&format!("{place}.{key}"), &written[key], value, differences);
            }
        }
        (Value::Array(written), Value::Array(answer)) if written.len() == answer.len() => {
            for (at, value) in answer.iter().enumerate() {
                compare(&format!("{place}[{at}]"), &written[at], value, differences);
            }
        }
        (Value::Number(written), Value::Number(answer))
            if (written.as_f64().unwrap() - answer.as_f64().unwrap()).abs() <= FINEST => {}
        (written, answer) if written == answer => {}
        _ => differences.push(format!("{place}\n  written: {written}\n  answer:  {answer}")),
    }
}

const WIDTH: usize = 120;

/// A scenario as it lies in its file: a step's parts in the order in which they happen, what fits on one line.
fn laid_out(scenario: &Value) -> String {
    const PARTS: [&str; 8] = ["say", "studio", "at", "call", "with", "bind", "answers", "refuses"];
    let steps = scenario["steps"].as_array().unwrap().iter().map(|step| {
        let parts = PARTS.iter().filter_map(|part| step.get(part).map(|value| (*part, value)));
        let parts: Vec<String> =
            parts.map(|(part, value)| format!("      {}: {}", json!(part), broken(value, 6, part.len() + 4))).collect();
        format!("    {{\n{}\n    }}", parts.join(",\n"))
    });
    let steps: Vec<String> = steps.collect();
    let (title, offset) = (&scenario["title"], &scenario["utc_offset_s"]);
    format!(
        "{{\n  \"title\": {title},\n  \"utc_offset_s\": {offset},\n  \"steps\": [\n{}\n  ]\n}}\n",
        steps.join(",\n")
    )
}

/// `value` on one line if it fits behind `before` characters, else a part to a line, indented by `indent`; small items of a
/// list share lines.
fn broken(value: &Value, indent: usize, before: usize) -> String {
    let line = on_one_line(value);
    if indent + before + line.chars().count() < WIDTH {
        return line;
    }
    let (margin, inner) = (" ".repeat(indent), " ".repeat(indent + 2));
    match value {
        Value::Object(fields) => {
            let field = |(key, value): (&String, &Value)| {
                format!("{inner}{}: {}", json!(key), broken(value, indent + 2, key.len() + 5))
            };
            format!("{{\n{}\n{margin}}}", sorted(fields).map(field).collect::<Vec<_>>().join(",\n"))
        }
        Value::Array(items) => {
            let mut lines = vec![String::new()];
            for (at, item) in items.iter().enumerate() {
                let item = broken(item, indent + 2, 1) + if at + 1 < items.len() { "," } else { "" };
                let line = lines.last_mut().unwrap();
                if line.is_empty() {
                    *line = inner.clone() + &item;
                } else if !item.contains('\n') && line.chars().count() + item.chars().count() < WIDTH {
                    *line += &format!(" {item}");
                } else {
                    lines.push(inner.clone() + &item);
                }
            }
            format!("[\n{}\n{margin}]", lines.join("\n"))
        }
        _ => line,
    }
}

fn on_one_line(value: &Value) -> String {
    match value {
        Value::Object(fields) => {
            let fields = sorted(fields).map(|(key, value)| format!("{}: {}", json!(key), on_one_line(value)));
            format!("{{{}}}", fields.collect::<Vec<_>>().join(", "))
        }
        Value::Array(items) => format!("[{}]", items.iter().map(on_one_line).collect::<Vec<_>>().join(", ")),
        Value::Number(number) if number.is_f64() => {
            format!("{:.6}", number.as_f64().unwrap()).trim_end_matches('0').trim_end_matches('.').to_owned()
        }
        other => other.to_string(),
    }
}

fn sorted(fields: &Map<String, Value>) -> impl Iterator<Item = (&String, &Value)> {
    fields.iter().collect::<BTreeMap<_, _>>().into_iter()
}
