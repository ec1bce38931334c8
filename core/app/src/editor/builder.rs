//! The fields of an editor while it is laid out and read.

use std::borrow::Cow;

use super::notation::Notation;
use super::{Drawing, EditorField, EditorView, FieldKind, Item, Note, StudioError, Value};
use crate::date_text::{Now, sentence_case};
use crate::in_words::{Named, Sentence};
use crate::messages::{common, editor as say};
use laydown_domain::coded::Coded;
use laydown_domain::units::Style;
use laydown_domain::visible::cleaned;

/// The most letters of a name.
pub(crate) const LONGEST_NAME: usize = 80;
/// The most letters of a remark.
pub(crate) const LONGEST_REMARK: usize = 400;

/// How far ahead a day may lie, days.
const MOST_DAYS_AHEAD: i64 = 366;

/// An SG to show how one is written: a usual dipping glaze.
pub(super) const EXAMPLE_SG: f64 = 1.45;

/// What a field is called and how it explains itself.
pub(super) struct Ask {
    /// Its key.
    pub key: Cow<'static, str>,
    /// What it asks for.
    pub label: String,
    /// An example or a unit.
    pub hint: String,
    /// What it is for.
    pub help: String,
}

impl Ask {
    pub(super) fn new(key: impl Into<Cow<'static, str>>, label: impl Into<String>) -> Ask {
        Ask { key: key.into(), label: label.into(), hint: String::new(), help: String::new() }
    }

    pub(super) fn hint(self, hint: impl Into<String>) -> Ask {
        Ask { hint: hint.into(), ..self }
    }

    pub(super) fn help(self, help: impl Into<String>) -> Ask {
        Ask { help: help.into(), ..self }
    }
}

/// An editor being laid out: what was entered, and the fields so far.
pub(super) struct EditorBuilder<'a> {
    pub(super) style: &'a Style,
    values: &'a [Value],
    pub(super) title: String,
    pub(super) save_label: String,
    pub(super) remove_label: String,
    fields: Vec<EditorField>,
    /// Whether fields are shown; one that must be put right is shown all the same.
    pub(super) shown: bool,
    results: Vec<Note>,
    drawing: Option<Drawing>,
    wanting: Option<StudioError>,
}

impl<'a> EditorBuilder<'a> {
    pub(super) fn new(style: &'a Style, values: &'a [Value]) -> EditorBuilder<'a> {
        EditorBuilder {
            style,
            values,
            title: String::new(),
            save_label: say::save(),
            remove_label: String::new(),
            fields: Vec::new(),
            shown: true,
            results: Vec::new(),
            drawing: None,
            wanting: None,
        }
    }

    /// A line of text that must not be empty.
    pub(super) fn text(&mut self, ask: Ask, saved: Option<&str>) -> Option<String> {
        self.line(ask, saved, FieldKind::Text, LONGEST_NAME)
    }

    /// A line that counts letter by letter, such as an address, and must not be empty.
    pub(super) fn exact(&mut self, ask: Ask, saved: Option<&str>) -> Option<String> {
        self.line(ask, saved, FieldKind::Exact, LONGEST_REMARK)
    }

    /// The same, and empty where it is left out; `None` when it cannot be taken as it stands.
    pub(super) fn exact_or_none(&mut self, ask: Ask, saved: Option<&str>) -> Option<String> {
        if self.entered(&ask, saved).trim().is_empty() {
            self.push(ask, String::new(), FieldKind::Exact, Vec::new(), String::new());
            return Some(String::new());
        }
        self.exact(ask, saved)
    }

    fn line(&mut self, ask: Ask, saved: Option<&str>, kind: FieldKind, longest: usize) -> Option<String> {
        let text = self.entered(&ask, saved);
        if saved == Some(text.as_str()) {
            self.push(ask, text.clone(), kind, Vec::new(), String::new());
            return Some(text);
        }
        let wanting = say::write_here(&ask.label);
        let trimmed = if kind == FieldKind::Exact { text.trim().to_owned() } else { cleaned(&text) };
        if trimmed.chars().count() > longest {
            self.push(ask, text, kind, Vec::new(), say::too_long(longest));
            return None;
        }
        let key = ask.key.clone();
        self.push(ask, text, kind, Vec::new(), String::new());
        if trimmed.is_empty() {
            self.require(&key, wanting);
            return None;
        }
        Some(trimmed)
    }

    /// A secret, of which no letter is shown again: whether it can be taken. Left empty it stays as it was `given` before.
    pub(super) fn secret(&mut self, ask: Ask, given: bool, fewest: usize) -> bool {
        let typed = self.entered(&ask, None).chars().count();
        let ask = if given { ask.hint(say::secret_saved()) } else { ask };
        let key = ask.key.clone();
        let wanting = say::type_here(&ask.label);
        let refusal = match typed {
            0 => String::new(),
            typed if typed < fewest => say::too_short(fewest),
            typed if typed > LONGEST_REMARK => say::too_long(LONGEST_REMARK),
            _ => String::new(),
        };
        let good = refusal.is_empty();
        self.push(ask, String::new(), FieldKind::Secret, Vec::new(), refusal);
        if typed == 0 && !given {
            self.require(&key, wanting);
            return false;
        }
        good
    }

    /// A folder that the shell reaches: what it is called, and what the shell finds it again by.
    pub(super) fn folder(&mut self, ask: Ask, saved: Option<String>) -> Option<(String, String)> {
        let text = self.entered(&ask, saved.as_deref());
        let (key, wanting) = (ask.key.clone(), say::choose_here(&ask.label));
        let found = text.split_once('\n').map(|(name, handle)| (name.to_owned(), handle.to_owned()));
        let found = found.filter(|(name, handle)| !name.is_empty() && !handle.is_empty());
        self.push(ask, text, FieldKind::Folder, Vec::new(), String::new());
        if found.is_none() {
            self.require(&key, wanting);
        }
        found
    }

    /// A remark that may be left out: `Some(None)` when it is, `None` when it cannot be taken as it stands.
    pub(super) fn remark(&mut self, ask: Ask, saved: Option<&str>) -> Option<Option<String>> {
        self.remark_of(ask, saved, LONGEST_REMARK)
    }

    /// The same for a name that may be left out.
    pub(super) fn name_or_none(&mut self, ask: Ask, saved: Option<&str>) -> Option<Option<String>> {
        self.remark_of(ask, saved, LONGEST_NAME)
    }

    fn remark_of(&mut self, ask: Ask, saved: Option<&str>, longest: usize) -> Option<Option<String>> {
        let text = self.entered(&ask, saved);
        if text == saved.unwrap_or_default() {
            self.push(ask, text, FieldKind::Text, Vec::new(), String::new());
            return Some(saved.map(str::to_owned));
        }
        let trimmed = cleaned(&text);
        let too_long = trimmed.chars().count() > longest;
        let refusal = if too_long { say::too_long(longest) } else { String::new() };
        self.push(ask, text, FieldKind::Text, Vec::new(), refusal);
        (!too_long).then(|| Some(trimmed).filter(|text| !text.is_empty()))
    }

    /// A day: in the field as ISO 8601 writes it, beside the one item that says it in words. `saved` is a moment, unix ms; while the
    /// field shows its day, it is the answer, and else the middle of the day that was entered.
    pub(super) fn day(&mut self, ask: Ask, saved: i64, now: Now) -> Option<i64> {
        let shown = now.iso_day(saved);
        let text = self.entered(&ask, Some(&shown));
        let chosen = if text.trim() == shown { Some(saved) } else { now.noon_of(text.trim()) };
        // No kiln is fired that far ahead, and a clock that is set wrong is noticed.
        let chosen = chosen.filter(|moment| *moment == saved || now.days_since(*moment) >= -MOST_DAYS_AHEAD);
        let refusal = if chosen.is_none() { say::no_day() } else { String::new() };
        let words = chosen.map(|moment| now.day(moment)).unwrap_or_default();
        self.push(ask, text, FieldKind::Day, vec![item("", words, "")], refusal);
        chosen
    }

    /// A quantity that must be there. `saved` is the stored number.
    pub(super) fn quantity<T>(&mut self, ask: Ask, saved: Option<i64>, notation: Notation<T>) -> Option<T> {
        let wanting = say::fill_in(&ask.label);
        let key = ask.key.clone();
        let found = self.optional(ask, saved, notation)?;
        if found.is_none() {
            self.require(&key, wanting);
        }
        found
    }

    /// A quantity that may be left out: `Some(None)` when it is, `None` when it cannot be taken as it stands. While the field
    /// shows the `saved` number, that number is the answer, exactly.
    pub(super) fn optional<T>(&mut self, ask: Ask, saved: Option<i64>, notation: Notation<T>) -> Option<Option<T>> {
        let shown = saved.map(|stored| (stored, (notation.show)(stored, self.style)));
        let text = self.entered(&ask, shown.as_ref().map(|(_, shown)| shown.as_str()));
        let read = match shown.filter(|(_, shown)| shown.trim() == text.trim()) {
            Some((stored, _)) => (notation.stored)(stored).map(Some),
            None if text.trim().is_empty() => Ok(None),
            None => (notation.read)(&text, self.style).map(Some),
        };
        let refusal = read.as_ref().map_or_else(Sentence::sentence, |_| String::new());
        self.push(ask, text, FieldKind::Number, Vec::new(), refusal);
        read.ok()
    }

    /// One of `items`; the first unless another is saved or entered. A `saved` code that is none of them came from a newer
    /// version: it stays, under a name that says so. What is entered and is none of them is refused, and the editor is laid
    /// out as with the first.
    pub(super) fn choice(
        &mut self,
        ask: Ask,
        saved: Option<&str>,
        kind: FieldKind,
        items: Vec<Item>,
    ) -> Option<String> {
        self.choice_or(ask, saved, kind, items, sentence_case(&common::newer()))
    }

    /// As [`EditorBuilder::choice`]; `unknown` is what a saved code is called that is none of `items`.
    pub(super) fn choice_or(
        &mut self,
        ask: Ask,
        saved: Option<&str>,
        kind: FieldKind,
        mut items: Vec<Item>,
        unknown: String,
    ) -> Option<String> {
        if let Some(code) = saved.filter(|code| !items.iter().any(|item| item.code == *code)) {
            items.push(item(code, unknown, ""));
        }
        let is_one = |code: &str| items.iter().any(|item| item.code == code);
        let refused = self.entered_value(&ask.key).filter(|code| !code.is_empty() && !is_one(code)).map(str::to_owned);
        let entered = self.entered(&ask, saved);
        let chosen =
            items.iter().find(|item| item.code == entered).or_else(|| items.first()).map(|item| item.code.clone());
        let refusal = if refused.is_some() { say::choose_from_list(&ask.label) } else { String::new() };
        self.push(ask, refused.or_else(|| chosen.clone()).unwrap_or_default(), kind, items, refusal);
        chosen
    }

    /// One of `items`, none of which is taken before it is chosen: a question that must be answered.
    pub(super) fn question(&mut self, ask: Ask, items: Vec<Item>) -> Option<String> {
        let key = ask.key.clone();
        let wanting = ask.label.clone();
        let entered = self.entered(&ask, None);
        let answer = items.iter().find(|item| item.code == entered).map(|item| item.code.clone());
        self.push(ask, answer.clone().unwrap_or_default(), FieldKind::Choice, items, String::new());
        if answer.is_none() {
            self.require(&key, wanting);
        }
        answer
    }

    /// As [`EditorBuilder::choice`], for what an older version did not ask: a record that says nothing of it shows the `usual`
    /// code, and goes on saying nothing until another is chosen. `saved` is what the record says, `None` for a new record.
    pub(super) fn choice_asked_later(
        &mut self,
        ask: Ask,
        saved: Option<Option<&str>>,
        usual: &str,
        items: Vec<Item>,
    ) -> Option<String> {
        let shown = saved.flatten().unwrap_or(usual);
        let chosen = self.choice(ask, Some(shown), FieldKind::Choice, items);
        chosen.filter(|chosen| saved != Some(None) || chosen != shown)
    }

    /// Yes or no.
    pub(super) fn switch(&mut self, ask: Ask, saved: bool) -> bool {
        let text = self.entered(&ask, Some(if saved { "yes" } else { "no" }));
        let on = text == "yes";
        self.push(ask, text, FieldKind::Switch, Vec::new(), String::new());
        on
    }

    /// A table of numbers, as it is typed: one line for each row, with tabs between the cells.
    pub(super) fn table(&mut self, ask: Ask, saved: &str, columns: Vec<String>) -> String {
        let text = self.entered(&ask, Some(saved));
        self.push(ask, text.clone(), FieldKind::Table, Vec::new(), String::new());
        if let Some(field) = self.fields.last_mut() {
            field.columns = columns;
        }
        text
    }

    /// Text of several lines, as it is typed or pasted.
    pub(super) fn lines(&mut self, ask: Ask, saved: &str) -> String {
        let text = self.entered(&ask, Some(saved));
        self.push(ask, text.clone(), FieldKind::Lines, Vec::new(), String::new());
        text
    }

    /// A photograph, to be had in the ways of `items`; answers with the name of its file.
    pub(super) fn photo(&mut self, ask: Ask, items: Vec<Item>) -> Option<String> {
        let file = self.entered(&ask, None);
        self.push(ask, file.clone(), FieldKind::Photo, items, String::new());
        Some(file).filter(|file| !file.is_empty())
    }

    /// What travels with the entry under `key` and is no field.
    pub(super) fn entered_value(&self, key: &str) -> Option<&str> {
        self.values.iter().rev().find(|value| value.key == key).map(|value| value.text.as_str())
    }

    /// Draws what is entered.
    pub(super) fn draw(&mut self, drawing: Drawing) {
        self.drawing = Some(drawing);
    }

    /// Says beside the field `key` why it cannot be taken together with the others.
    pub(super) fn field_error(&mut self, key: &str, error: impl Sentence) {
        let sentence = error.sentence();
        if let Some(field) = self.fields.iter_mut().find(|field| field.key == key) {
            field.refusal = sentence;
        } else {
            // The field is not in sight: it is said where it can be read.
            self.results.push(Note::attention(sentence.clone()));
            self.require(key, sentence);
        }
    }

    /// Shows what follows from what is entered.
    pub(super) fn result(&mut self, note: Note) {
        self.results.push(note);
    }

    /// The same, if there is something to show.
    pub(super) fn result_if(&mut self, note: Option<Note>) {
        self.results.extend(note);
    }

    /// Whether a field cannot be taken as it stands.
    pub(super) fn has_error(&self) -> bool {
        self.fields.iter().any(|field| !field.refusal.is_empty())
    }

    /// The first thing that keeps the editor from being kept.
    pub(super) fn first_error(self) -> StudioError {
        let refused = self.fields.into_iter().find(|field| !field.refusal.is_empty());
        match (refused, self.wanting) {
            (Some(field), _) => StudioError::refused(&field.key, field.refusal),
            (None, Some(wanting)) => wanting,
            (None, None) => StudioError::refused("", say::nothing_to_save()),
        }
    }

    pub(super) fn into_view(self, can_save: bool, exists: bool) -> EditorView {
        EditorView {
            title: self.title,
            fields: self.fields,
            drawing: self.drawing,
            results: self.results,
            save_label: self.save_label,
            can_save,
            remove_label: if exists { self.remove_label } else { String::new() },
            draft: String::new(),
        }
    }

    /// Says what is still to be filled in before it can be kept.
    pub(super) fn require(&mut self, key: &str, sentence: String) {
        if self.wanting.is_none() {
            self.wanting = Some(StudioError::refused(key, sentence));
        }
    }

    fn entered(&self, ask: &Ask, saved: Option<&str>) -> String {
        self.entered_value(&ask.key).or(saved).unwrap_or_default().to_owned()
    }

    fn push(&mut self, ask: Ask, text: String, kind: FieldKind, items: Vec<Item>, refusal: String) {
        if !self.shown && refusal.is_empty() {
            return;
        }
        self.fields.push(EditorField {
            key: ask.key.into_owned(),
            label: ask.label,
            text,
            hint: ask.hint,
            help: ask.help,
            kind,
            items,
            columns: Vec::new(),
            refusal,
        });
    }
}

/// An item for one of a closed list.
pub(super) fn coded_item<T: Coded + Named>(value: T, detail: impl ToString) -> Item {
    item(value.code(), sentence_case(&value.name()), detail)
}

/// An item without an outline.
pub(crate) fn item(code: &str, name: impl ToString, detail: impl ToString) -> Item {
    Item { code: code.to_owned(), name: name.to_string(), detail: detail.to_string(), outline: Vec::new() }
}
