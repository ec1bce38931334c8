//! A glaze by its dry materials: the density of its powder, and what to weigh for a batch.

use super::material::{Hazard, density_by_name, hazards_by_name};
use super::slurry::{SlurryError, dry_per_litre, solids_fraction};
use crate::units::{Grams, Millilitres, PowderDensity, SpecificGravity, Style, UnitError, parse};
use crate::visible::cleaned;

/// More materials than any recipe has.
pub const MOST_MATERIALS: usize = 40;
/// The most letters of a material's name.
pub const LONGEST_NAME: usize = 80;
/// A material that rounding moves by more than this share of itself is named. Common practice, no source.
pub const ROUNDING_MATTERS: f64 = 0.02;

/// More glaze, in grams or millilitres, than any studio mixes.
const LARGEST: f64 = 1e9;

/// What a line that sums up a recipe begins with; it is no material.
const TOTALS: &[&str] = &["total", "totals", "sum", "summe", "somme", "suma"];

/// One dry material of a recipe.
#[derive(Debug, Clone, PartialEq)]
pub struct Material {
    /// What the potter calls it.
    pub name: String,
    /// Parts by weight; of an addition, per cent on top of all that are none.
    pub parts: f64,
    /// Whether it comes on top of the base recipe.
    pub is_addition: bool,
    /// Relative density of its powder, where the potter gave one.
    pub density: Option<PowderDensity>,
    /// What a kilogram costs, in the potter's currency, where that was given.
    pub price_per_kg: Option<f64>,
}

impl Material {
    /// Its density: as given, by its name, or as most glaze powders have it.
    pub fn powder_density(&self) -> PowderDensity {
        self.density.or_else(|| density_by_name(&self.name)).unwrap_or_default()
    }
}

/// Dry materials in parts by weight, and additions in per cent on top. Its parts sum to more than nothing.
#[derive(Debug, Clone, PartialEq)]
pub struct Recipe {
    materials: Vec<Material>,
}

/// Why a recipe cannot be read or used. Lines are counted from 1.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum RecipeError {
    /// A line without an amount.
    NoAmount {
        /// The line.
        line: usize,
    },
    /// A line with a number at both ends, where either could be the amount.
    WhichAmount {
        /// The line.
        line: usize,
    },
    /// A line without a name.
    NoName {
        /// The line.
        line: usize,
    },
    /// A name that is too long.
    LongName {
        /// The line.
        line: usize,
    },
    /// A figure that cannot be.
    Figure {
        /// The line.
        line: usize,
        /// Why.
        error: UnitError,
    },
    /// The parts sum to nothing.
    Nothing,
    /// More than [`MOST_MATERIALS`].
    TooMany,
}

/// What to weigh for a batch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Batch {
    /// All dry materials together, additions included.
    pub powder: Grams,
    /// Water; one gram of it is taken as one millilitre.
    pub water: Grams,
    /// Wet glaze that comes of it.
    pub volume: Millilitres,
}

impl Batch {
    /// So much powder with the water that brings it to `sg`.
    ///
    /// # Errors
    /// When there is no powder or more than 1000 t, or `sg` is as heavy as the powder itself.
    pub fn of_powder(powder: Grams, sg: SpecificGravity, density: PowderDensity) -> Result<Batch, SlurryError> {
        if !(powder.is_positive() && powder.value() <= LARGEST) {
            return Err(SlurryError::NothingToMix);
        }
        let solids = solids_fraction(sg, density)?.value();
        let wet = powder.value() / solids;
        Ok(Batch { powder, water: Grams::new(wet) - powder, volume: Millilitres::new(wet / sg.value()) })
    }

    /// So much wet glaze at `sg`.
    ///
    /// # Errors
    /// When there is no volume or more than 1000 m³, or `sg` is as heavy as the powder itself.
    pub fn of_volume(volume: Millilitres, sg: SpecificGravity, density: PowderDensity) -> Result<Batch, SlurryError> {
        if !(volume.is_positive() && volume.value() <= LARGEST) {
            return Err(SlurryError::NoVolume);
        }
        solids_fraction(sg, density)?;
        let powder = dry_per_litre(sg, density) * (volume.value() / 1_000.0);
        Ok(Batch { powder, water: Grams::new(volume.value() * sg.value()) - powder, volume })
    }
}

impl Recipe {
    /// A recipe of these materials.
    ///
    /// # Errors
    /// [`RecipeError::Nothing`] when the parts that are no additions sum to nothing, [`RecipeError::TooMany`].
    pub fn new(materials: Vec<Material>) -> Result<Recipe, RecipeError> {
        if materials.len() > MOST_MATERIALS {
            return Err(RecipeError::TooMany);
        }
        let recipe = Recipe { materials };
        let base = recipe.base_parts();
        if base.is_finite() && base > 0.0 { Ok(recipe) } else { Err(RecipeError::Nothing) }
    }

    /// Reads lines as potters write or paste them: "Potash feldspar 42.5", "+ Copper carbonate 2%" for an addition, or cells with
    /// tabs or semicolons between them: name, parts, density, price of a kilogram. Empty lines and totals are left out.
    ///
    /// # Errors
    /// [`RecipeError`] with the first line that cannot be read.
    pub fn read(text: &str, style: &Style) -> Result<Recipe, RecipeError> {
        let mut materials = Vec::new();
        for (at, line) in text.lines().enumerate() {
            materials.extend(material(at + 1, line, style)?);
        }
        Recipe::new(materials)
    }

    /// The materials, as they were given.
    pub fn materials(&self) -> &[Material] {
        &self.materials
    }

    fn base_parts(&self) -> f64 {
        self.materials.iter().filter(|material| !material.is_addition).map(|material| material.parts).sum()
    }

    /// Grams of each material, in order, in a gram of the base recipe: those that are no additions sum to 1.
    fn shares(&self) -> impl Iterator<Item = f64> + '_ {
        let base = self.base_parts();
        self.materials.iter().map(move |material| material.parts / if material.is_addition { 100.0 } else { base })
    }

    /// Grams of all dry materials, additions included, for a gram of the base recipe.
    pub fn powder_per_base(&self) -> f64 {
        self.shares().sum()
    }

    /// What to weigh of each material, in order, for so much of the base recipe: additions come on top.
    pub fn weights(&self, base: Grams) -> Vec<Grams> {
        self.shares().map(|share| base * share).collect()
    }

    /// The density of the mixed powder: its mass by the sum of the volumes of its materials.
    ///
    /// # Errors
    /// When the result is no powder density.
    pub fn powder_density(&self) -> Result<PowderDensity, UnitError> {
        let volume: f64 =
            self.shares().zip(&self.materials).map(|(share, material)| share / material.powder_density().value()).sum();
        PowderDensity::new(self.powder_per_base() / volume)
    }

    /// What a kilogram of the mixed powder costs; `None` while any material has no price.
    pub fn price_per_kg(&self) -> Option<f64> {
        let cost: Option<f64> =
            self.shares().zip(&self.materials).map(|(share, material)| Some(share * material.price_per_kg?)).sum();
        Some(cost? / self.powder_per_base())
    }

    /// What can hurt in its materials, known by their names, in the order of [`Hazard::ALL`].
    pub fn hazards(&self) -> Vec<Hazard> {
        let names: Vec<Vec<Hazard>> = self.materials.iter().map(|material| hazards_by_name(&material.name)).collect();
        Hazard::ALL.iter().copied().filter(|hazard| names.iter().any(|found| found.contains(hazard))).collect()
    }
}

/// A weight as a scale with this step shows it.
pub fn on_scale(weight: Grams, step: Grams) -> Grams {
    if step.is_positive() { Grams::new((weight / step).round() * step.value()).as_stored() } else { weight.as_stored() }
}

/// How far rounding to the scale's step moves a weight, as a share of it; `None` where it does not matter.
pub fn rounding_that_matters(weight: Grams, step: Grams) -> Option<f64> {
    let off = (on_scale(weight, step) - weight).abs() / weight;
    (off > ROUNDING_MATTERS).then_some(off)
}

/// The material of one line; `None` of an empty one and of a total.
fn material(line: usize, text: &str, style: &Style) -> Result<Option<Material>, RecipeError> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let (is_addition, text) = match text.strip_prefix('+') {
        Some(rest) => (true, rest.trim_start()),
        None => (false, text),
    };
    let figure = |text: &str| parse::number(text, style).map_err(|error| RecipeError::Figure { line, error });
    let cells: Vec<&str> = text.split(['\t', ';']).map(str::trim).collect();
    let (name, amount, more) = match cells.as_slice() {
        [only] => {
            let (name, amount) = name_and_amount(line, only, style)?;
            (name, amount, &[][..])
        }
        [name, amount, more @ ..] => (*name, *amount, more),
        [] => return Ok(None),
    };
    let name = cleaned(name);
    if TOTALS.contains(&name.trim_end_matches(':').to_lowercase().as_str()) {
        return Ok(None);
    }
    if name.is_empty() {
        return Err(RecipeError::NoName { line });
    }
    if name.chars().count() > LONGEST_NAME {
        return Err(RecipeError::LongName { line });
    }
    if amount.is_empty() {
        return Err(RecipeError::NoAmount { line });
    }
    let cell = |at: usize| more.get(at).copied().filter(|cell| !cell.is_empty());
    let density =
        cell(0).map(|text| PowderDensity::new(figure(text)?).map_err(|error| RecipeError::Figure { line, error }));
    Ok(Some(Material {
        name,
        parts: thousandths(figure(amount.trim_end_matches('%').trim_end())?),
        is_addition,
        density: density.transpose()?,
        price_per_kg: cell(1).map(|text| figure(text).map(thousandths)).transpose()?,
    }))
}

/// As it is stored.
fn thousandths(value: f64) -> f64 {
    (value * 1e3).round() / 1e3
}

/// A line without cells: the amount is the last word of it, or the first.
fn name_and_amount<'a>(line: usize, text: &'a str, style: &Style) -> Result<(&'a str, &'a str), RecipeError> {
    let text = text.trim_end_matches(['%', ' ']);
    let is_amount =
        |word: &str| word.starts_with(|c: char| c.is_ascii_digit() || c == '-') && looks_like_figure(word, style);
    let last = text.rsplit_once(char::is_whitespace).filter(|(_, word)| is_amount(word));
    let first = text.split_once(char::is_whitespace).filter(|(word, _)| is_amount(word.trim_end_matches('%')));
    match (first, last) {
        (Some(_), Some(_)) => Err(RecipeError::WhichAmount { line }),
        (None, Some((name, amount))) => Ok((name.trim(), amount)),
        (Some((amount, name)), None) => Ok((name.trim(), amount)),
        (None, None) => Err(RecipeError::NoAmount { line }),
    }
}

/// Whether a word is a figure, or one that is refused for what it says and not for how it is written.
fn looks_like_figure(word: &str, style: &Style) -> bool {
    !matches!(
        parse::number(word, style),
        Err(UnitError::NotANumber { .. } | UnitError::UnknownUnit { .. } | UnitError::Empty { .. })
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn read(text: &str) -> Result<Recipe, RecipeError> {
        Recipe::read(text, &Style::default())
    }

    #[test]
    fn lines_are_read_as_potters_write_and_paste_them() {
        let recipe = read(
            "Potash feldspar 42.5\n\n Silica\t27,5 \nWhiting 20%\n10 Kaolin\nTotal 100\n+ Copper carbonate 2 %\n+Tin oxide; 5; 6.9; 41.50",
        )
        .unwrap();
        let lines: Vec<(&str, f64, bool)> = recipe
            .materials()
            .iter()
            .map(|material| (material.name.as_str(), material.parts, material.is_addition))
            .collect();
        assert_eq!(
            lines,
            [
                ("Potash feldspar", 42.5, false),
                ("Silica", 27.5, false),
                ("Whiting", 20.0, false),
                ("Kaolin", 10.0, false),
                ("Copper carbonate", 2.0, true),
                ("Tin oxide", 5.0, true)
            ]
        );
        let tin = &recipe.materials()[5];
        assert_eq!((tin.density.map(PowderDensity::value), tin.price_per_kg), (Some(6.9), Some(41.5)));
        assert_eq!(recipe.hazards(), [Hazard::Silica, Hazard::Copper]);
    }

    #[test]
    fn additions_come_on_top() {
        let recipe = read("Feldspar 40\nSilica 40\n+ Red iron oxide 10").unwrap();
        let weights: Vec<f64> = recipe.weights(Grams::new(1_000.0)).into_iter().map(Grams::value).collect();
        assert_eq!(weights, [500.0, 500.0, 100.0]);
        assert_relative_eq!(recipe.powder_per_base(), 1.1);
    }

    #[test]
    fn densities_are_weighted_by_volume() {
        // 1 g at 2 and 1 g at 6: 2 g in 0.6667 ml.
        let recipe = read("One;50;2\nOther;50;6").unwrap();
        assert_relative_eq!(recipe.powder_density().unwrap().value(), 3.0, max_relative = 1e-12);
        assert_eq!(read("Something 1").unwrap().powder_density().unwrap(), PowderDensity::default());
    }

    #[test]
    fn the_price_of_the_powder_needs_every_price() {
        let recipe = read("One;50;;2\nOther;50;;6").unwrap();
        assert_relative_eq!(recipe.price_per_kg().unwrap(), 4.0);
        assert_eq!(read("One;50;;2\nOther 50").unwrap().price_per_kg(), None);
    }

    #[test]
    fn what_cannot_be_is_named_with_its_line() {
        assert_eq!(read(""), Err(RecipeError::Nothing));
        assert_eq!(read("Silica 0\nKaolin 0"), Err(RecipeError::Nothing));
        assert_eq!(read("+ Copper carbonate 2"), Err(RecipeError::Nothing));
        assert_eq!(read("Silica 5\nKaolin"), Err(RecipeError::NoAmount { line: 2 }));
        assert_eq!(read("20 Frit 3134"), Err(RecipeError::WhichAmount { line: 1 }));
        assert_eq!(read("Frit 3134 20").unwrap().materials()[0].parts, 20.0);
        assert_eq!(read("\t20"), Err(RecipeError::NoAmount { line: 1 }));
        assert_eq!(read(";20"), Err(RecipeError::NoName { line: 1 }));
        assert!(matches!(read("Silica -5"), Err(RecipeError::Figure { line: 1, error: UnitError::Negative { .. } })));
        assert!(matches!(read("Silica; -5"), Err(RecipeError::Figure { line: 1, .. })));
        assert!(matches!(
            read("Silica;5;0.2"),
            Err(RecipeError::Figure { error: UnitError::NoPowderDensity { .. }, .. })
        ));
        assert_eq!(read(&format!("{} 5", "x".repeat(81))), Err(RecipeError::LongName { line: 1 }));
        assert_eq!(read(&"Silica 1\n".repeat(41)), Err(RecipeError::TooMany));
    }

    #[test]
    fn a_batch_by_powder_and_one_by_volume_agree() {
        let (sg, density) = (SpecificGravity::new(1.45).unwrap(), PowderDensity::default());
        let by_volume = Batch::of_volume(Millilitres::new(5_000.0), sg, density).unwrap();
        let by_powder = Batch::of_powder(by_volume.powder, sg, density).unwrap();
        assert_relative_eq!(by_powder.volume.value(), 5_000.0, max_relative = 1e-12);
        assert_relative_eq!(by_powder.water.value(), by_volume.water.value(), max_relative = 1e-12);
        assert_eq!(Batch::of_powder(Grams::ZERO, sg, density), Err(SlurryError::NothingToMix));
        assert_eq!(Batch::of_volume(Millilitres::ZERO, sg, density), Err(SlurryError::NoVolume));
        let heavy = SpecificGravity::new(1.8).unwrap();
        let light = PowderDensity::new(1.6).unwrap();
        assert!(matches!(
            Batch::of_volume(Millilitres::new(1.0), heavy, light),
            Err(SlurryError::HeavierThanPowder { .. })
        ));
    }

    #[test]
    fn rounding_is_named_where_it_moves_a_material() {
        let step = Grams::new(1.0);
        assert_eq!(on_scale(Grams::new(1.4), step), Grams::new(1.0));
        assert_relative_eq!(rounding_that_matters(Grams::new(1.4), step).unwrap(), 0.4 / 1.4);
        assert_eq!(rounding_that_matters(Grams::new(140.4), step), None);
        assert_relative_eq!(rounding_that_matters(Grams::new(0.4), step).unwrap(), 1.0);
    }
}
