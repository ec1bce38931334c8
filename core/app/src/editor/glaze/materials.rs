//! The materials of a glaze in its editor: lines of text, the powder density that follows, and what can hurt in them.

use crate::date_text::sentence_case;
use crate::editor::Note;
use crate::editor::builder::{Ask, EditorBuilder, item};
use crate::editor::notation::{POWDER_DENSITY, bare};
use crate::evidence::{hazard_is_in, recipe};
use crate::in_words::{Named, hurts};
use crate::lists::and;
use crate::messages::editor_glaze as say;
use laydown_domain::glaze::material::Hazard;
use laydown_domain::glaze::recipe::Recipe;
use laydown_domain::units::{PowderDensity, Style};
use laydown_store::entity::{self, Material, Materials as Stored, Pairs};

/// The powder's density follows from the materials.
const FROM_MATERIALS: &str = "materials";
/// The potter typed it.
const OWN: &str = "own";

/// What is entered of a glaze's materials.
pub(super) struct Materials {
    /// As they are to be stored.
    pub(super) stored: Option<Stored>,
    /// Where the potter says otherwise than their names, as it is to be stored.
    pub(super) hazards: Option<Pairs>,
    recipe: Option<Recipe>,
    is_changed: bool,
}

/// Where the density of the powder comes from, and how much it is.
pub(super) struct Density {
    pub(super) density: PowderDensity,
    /// As it is to be stored.
    pub(super) from: Option<String>,
}

/// The lines of the materials and their hazards; `None` when they cannot be taken as they stand.
pub(super) fn fields(builder: &mut EditorBuilder<'_>, saved: Option<&entity::Glaze>) -> Option<Materials> {
    let style = builder.style;
    let before = saved.and_then(|glaze| glaze.materials.as_ref());
    let shown: Vec<String> = before.iter().flat_map(|stored| &stored.0).map(|material| line(material, style)).collect();
    let text = builder.lines(
        Ask::new("materials", say::materials()).hint(say::materials_hint()).help(say::materials_help()),
        &shown.join("\n"),
    );
    let answers = saved.and_then(|glaze| glaze.hazards.as_ref());
    if text.trim() == shown.join("\n").trim() {
        let recipe = saved.and_then(recipe);
        let hazards = hazard_fields(builder, recipe.as_ref(), answers);
        return Some(Materials { stored: before.cloned(), hazards, recipe, is_changed: false });
    }
    if text.trim().is_empty() {
        return Some(Materials { stored: None, hazards: answers.cloned(), recipe: None, is_changed: true });
    }
    match Recipe::read(&text, style) {
        Ok(recipe) => {
            let stored = recipe.materials().iter().map(|material| {
                let new = stored(material);
                // A line that was not touched stays as it is stored.
                let place = shown.iter().position(|shown| *shown == line(&new, style));
                place.and_then(|place| before?.0.get(place).cloned()).unwrap_or(new)
            });
            let stored = Some(Stored(stored.collect()));
            let hazards = hazard_fields(builder, Some(&recipe), answers);
            Some(Materials { stored, hazards, recipe: Some(recipe), is_changed: true })
        }
        Err(error) => {
            builder.field_error("materials", error);
            None
        }
    }
}

/// The density of the powder: from the materials, or the potter's own; `None` when it cannot be taken as it stands.
pub(super) fn powder_density(
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Glaze>,
    materials: &Materials,
) -> Option<Density> {
    let style = builder.style;
    let usual = PowderDensity::default();
    let density_saved = saved.map_or(usual.thousandths(), |glaze| glaze.powder_density_e3);
    let mut from = saved.and_then(|glaze| glaze.density_from.clone());
    let mut computed = None;
    if let Some(recipe) = &materials.recipe {
        let found = match recipe.powder_density() {
            Ok(found) => found,
            Err(error) => {
                builder.field_error("materials", error);
                return None;
            }
        };
        let had_materials = saved.filter(|glaze| glaze.materials.is_some());
        // A density that somebody typed before there were materials stays.
        let is_own = had_materials.is_some() || density_saved != usual.thousandths();
        let number = bare(style, found.value());
        from = builder.choice_asked_later(
            Ask::new("density_from", say::powder_density()),
            had_materials.map(|glaze| glaze.density_from.as_deref()),
            if is_own { OWN } else { FROM_MATERIALS },
            vec![item(FROM_MATERIALS, say::density_from_materials(), number), item(OWN, say::density_own(), "")],
        );
        if from.as_deref() == Some(FROM_MATERIALS) {
            let is_as_saved = !materials.is_changed
                && saved.is_some_and(|glaze| glaze.density_from.as_deref() == Some(FROM_MATERIALS));
            let stored = PowderDensity::from_thousandths(density_saved).ok().filter(|_| is_as_saved);
            return Some(Density { density: stored.unwrap_or(found), from });
        }
        computed = Some(found);
    }
    let density = builder.quantity(
        Ask::new("powder_density", say::powder_density()).help(say::powder_density_help(bare(style, usual.value()))),
        Some(density_saved),
        POWDER_DENSITY,
    )?;
    if let Some(computed) = computed.filter(|computed| (computed.value() - density.value()).abs() >= DIFFERS) {
        builder
            .result(Note::attention(say::density_differs(bare(style, computed.value()), bare(style, density.value()))));
    }
    Some(Density { density, from })
}

/// A density that differs so much from that of the materials is said. Common practice, no source.
const DIFFERS: f64 = 0.1;

/// What can hurt in the materials, with switches to correct it; answers with what is to be stored of that.
fn hazard_fields(builder: &mut EditorBuilder<'_>, recipe: Option<&Recipe>, answers: Option<&Pairs>) -> Option<Pairs> {
    let Some(recipe) = recipe else { return answers.cloned() };
    if let Some(price) = recipe.price_per_kg() {
        builder.result(Note::plain(say::price(builder.style.number(price, 2))));
    }
    let by_name = recipe.hazards();
    let is_in = |hazard: Hazard, answers: Option<&Pairs>| hazard_is_in(hazard, answers, &by_name);
    let mut after = answers.cloned().unwrap_or_default();
    let correct = Ask::new("correct_hazards", say::correct_hazards()).help(say::correct_hazards_help());
    if builder.switch(correct, answers.is_some_and(|answers| !answers.0.is_empty())) {
        for hazard in Hazard::ALL {
            let before = is_in(*hazard, answers);
            let now = builder.switch(Ask::new(hazard.code(), sentence_case(&hazard.name())), before);
            if now != before {
                after.0.retain(|(code, _)| code != hazard.code());
                if now != by_name.contains(hazard) {
                    after.0.push((hazard.code().to_owned(), if now { "yes" } else { "no" }.to_owned()));
                }
            }
        }
    }
    let found: Vec<Hazard> = Hazard::ALL.iter().copied().filter(|hazard| is_in(*hazard, Some(&after))).collect();
    if !found.is_empty() {
        builder
            .result(Note::attention(say::contains(and(&found.iter().map(|hazard| hazard.name()).collect::<Vec<_>>()))));
        found.iter().for_each(|hazard| builder.result(Note::warning(hurts(*hazard))));
        builder.result(Note::warning(say::data_sheet()));
    }
    if after.0.is_empty() && answers.is_none() { None } else { Some(after) }
}

/// A material as its line shows it.
fn line(material: &Material, style: &Style) -> String {
    let plus = if material.addition { "+ " } else { "" };
    let percent = if material.addition { "%" } else { "" };
    let number = |thousandths: i64| bare(style, thousandths as f64 / 1e3);
    let optional = |thousandths: Option<i64>| thousandths.map(number).unwrap_or_default();
    let (name, parts) = (&material.name, number(material.parts_e3));
    let begins_with_digit = name.starts_with(|c: char| c.is_ascii_digit());
    match (material.density_e3, material.price_e3) {
        (None, None) if begins_with_digit => format!("{plus}{name}; {parts}{percent}"),
        (None, None) => format!("{plus}{name} {parts}{percent}"),
        (density, None) => format!("{plus}{name}; {parts}{percent}; {}", optional(density)),
        (density, price) => format!("{plus}{name}; {parts}{percent}; {}; {}", optional(density), optional(price)),
    }
}

/// A material as it is stored.
fn stored(material: &laydown_domain::glaze::recipe::Material) -> Material {
    let thousandths = |value: f64| (value * 1e3).round() as i64;
    Material {
        name: material.name.clone(),
        parts_e3: thousandths(material.parts),
        addition: material.is_addition,
        density_e3: material.density.map(PowderDensity::thousandths),
        price_e3: material.price_per_kg.map(thousandths),
        ..Material::default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_that_is_shown_reads_back() {
        let style = Style::default();
        for text in [
            "Potash feldspar 42.5",
            "+ Copper carbonate 2%",
            "20 mesh silica; 30",
            "Tin oxide; 5; 6.9; 41.5",
            "+ Rutile; 1.25%; ; 9.8",
            "Frit 3134 20",
            "Talc; 4; 2.75",
        ] {
            let base = if text.starts_with('+') { "\nSilica 1" } else { "" };
            let recipe = Recipe::read(&format!("{text}{base}"), &style).unwrap();
            assert_eq!(line(&stored(&recipe.materials()[0]), &style), text);
        }
    }
}
