//! Common glaze materials: how dense each is, and what of it can hurt. Known by name alone, so a potter can say otherwise.

use crate::coded::coded;
use crate::units::PowderDensity;

coded! {
    /// What can hurt in a material, beyond being dust.
    "hazard" Hazard {
        /// Crystalline silica: its dust damages the lungs for good.
        Silica = "silica",
        /// Soluble barium: poisonous when swallowed or breathed in.
        Barium = "barium",
        /// Manganese: dust and kiln fumes damage the nerves.
        Manganese = "manganese",
        /// Soluble lithium: poisonous when swallowed.
        Lithium = "lithium",
        /// Cobalt: sensitises lungs and skin, and may cause cancer.
        Cobalt = "cobalt",
        /// Chromium: may turn into the kind that causes cancer.
        Chromium = "chromium",
        /// Nickel: sensitises the skin; its dust may cause cancer.
        Nickel = "nickel",
        /// Vanadium: poisonous, irritates the lungs.
        Vanadium = "vanadium",
        /// Copper: harmful when swallowed; leaches from many glazes.
        Copper = "copper",
        /// Soluble alkalis and borates: caustic or harmful, and they move through a coat as it dries.
        Soluble = "soluble",
        /// Lead: poisonous; stays in the body.
        Lead = "lead",
        /// Cadmium: poisonous; causes cancer.
        Cadmium = "cadmium",
    }
}

/// Materials that go by some names.
struct Known {
    /// Each a run of words of the name, in lower case; one that ends in `*` is the beginning of a word.
    names: &'static [&'static str],
    /// Relative density of the powder's grains; `None` where it varies too much to say.
    density: Option<f64>,
    hazards: &'static [Hazard],
}

const fn known(names: &'static [&'static str], density: f64, hazards: &'static [Hazard]) -> Known {
    Known { names, density: Some(density), hazards }
}

/// Names in English, German, French and Spanish, and as formulas. The first row that fits gives the density; hazards of all rows that
/// fit count. Densities: feldspar to clays within the ranges of Harrison et al., Handbook for Australian Potters, as reproduced
/// (tests); pure compounds from memory of the CRC Handbook. Hazards: from memory of the classifications under Regulation (EC)
/// 1272/2008 and of usual studio safety advice. A safety data sheet comes before any row of this table.
static KNOWN: &[Known] = &[
    known(&["nepheline*", "nephelin*", "nefelina*"], 2.6, &[]),
    known(
        &["feldspar*", "feldspath*", "feldespato*", "*feldspat", "felspar*", "orthoclase*", "albite*"],
        2.6,
        &[Hazard::Silica],
    ),
    known(
        &["silica", "sio2", "quartz*", "quarz*", "cuarzo*", "silice", "sílice", "flint*", "feuerstein*"],
        2.65,
        &[Hazard::Silica],
    ),
    known(&["cornish*", "cornwall*", "pegmatit*"], 2.6, &[Hazard::Silica]),
    known(&["whiting*", "calcium carbonate", "chalk*", "kreide*", "craie*", "creta*", "caco3", "calcite*"], 2.7, &[]),
    known(&["dolomit*", "dolomia*"], 2.85, &[]),
    known(&["talc*", "talk", "talkum", "steatit*"], 2.75, &[Hazard::Silica]),
    known(&["wollaston*"], 2.9, &[]),
    known(&["bentonit*", "hectorit*"], 2.6, &[Hazard::Silica]),
    known(
        &["kaolin*", "caolin*", "caolín*", "clay*", "*clay", "ton", "argile*", "arcilla*", "epk", "grolleg*", "slip*"],
        2.6,
        &[Hazard::Silica],
    ),
    known(&["pyrophyll*"], 2.8, &[Hazard::Silica]),
    known(&["petalit*"], 2.4, &[]),
    known(&["spodumen*"], 3.1, &[]),
    known(&["bone ash", "knochenasche*", "cendre d os", "ceniza de hueso*", "tricalcium phosphate"], 3.1, &[]),
    known(&["soda ash", "sodium carbonate", "na2co3"], 2.5, &[Hazard::Soluble]),
    known(&["pearl ash", "potassium carbonate", "pottasche*", "k2co3"], 2.4, &[Hazard::Soluble]),
    known(&["sodium bicarbonate", "nahco3"], 2.2, &[Hazard::Soluble]),
    known(&["borax*", "bórax*"], 1.7, &[Hazard::Soluble]),
    known(&["boric acid", "borsäure", "acide borique", "ácido bórico"], 1.5, &[Hazard::Soluble]),
    known(&["wood ash", "holzasche*", "ash"], 2.6, &[Hazard::Soluble]),
    known(&["colemanit*", "gerstley*", "ulexit*"], 2.4, &[]),
    known(&["zircon*", "zirkon*", "circon*", "zircopax*"], 4.6, &[]),
    known(&["tin oxide", "tin dioxide", "zinnoxid*", "oxyde d étain", "óxido de estaño", "sno2"], 6.9, &[]),
    known(&["zinc*", "zink*", "zno"], 5.6, &[]),
    known(&["titan*", "rutil*", "tio2"], 4.2, &[]),
    known(&["ilmenit*"], 4.7, &[]),
    known(&["yellow ochre", "ochre*", "ocker*", "ocre*"], 3.5, &[]),
    known(
        &["iron oxide", "red iron*", "black iron*", "eisenoxid*", "oxyde de fer", "óxido de hierro", "fe2o3"],
        5.2,
        &[],
    ),
    known(&["magnesium carbonate", "magnesi*", "mgco3"], 3.0, &[]),
    known(&["strontium*", "estroncio*", "srco3"], 3.7, &[]),
    known(&["alumina hydrate", "aluminium hydroxide", "aluminum hydroxide", "hydrated alumina"], 2.4, &[]),
    known(&["alumina*", "al2o3"], 3.95, &[]),
    known(&["fluorspar*", "fluorit*"], 3.2, &[]),
    known(&["barium carbonate", "bariumcarbonat", "baco3"], 4.4, &[Hazard::Barium]),
    known(&["barium*", "baryum*", "bario"], 4.4, &[Hazard::Barium]),
    known(&["lithium*", "litio", "li2co3"], 2.1, &[Hazard::Lithium]),
    known(&["manganese carbonate", "mangancarbonat", "mnco3"], 3.7, &[Hazard::Manganese]),
    known(&["mangan*", "mno2"], 5.0, &[Hazard::Manganese]),
    known(
        &["cobalt carbonate", "kobaltcarbonat", "carbonate de cobalt", "carbonato de cobalto", "coco3"],
        4.1,
        &[Hazard::Cobalt],
    ),
    known(&["cobalt*", "kobalt*", "co3o4", "coo"], 6.1, &[Hazard::Cobalt]),
    known(&["chrom*", "cromo", "dichromate*", "bichromate*", "cr2o3"], 5.2, &[Hazard::Chromium]),
    known(&["nickel*", "níquel", "niquel", "nio"], 6.7, &[Hazard::Nickel]),
    known(&["vanad*", "v2o5"], 3.4, &[Hazard::Vanadium]),
    known(
        &["copper carbonate", "kupfercarbonat", "carbonate de cuivre", "carbonato de cobre", "malachit*", "cuco3"],
        4.0,
        &[Hazard::Copper],
    ),
    known(&["copper*", "kupfer*", "cuivre", "cobre", "cuo"], 6.3, &[Hazard::Copper]),
    Known {
        names: &["lead", "red lead", "litharge*", "galena*", "blei*", "plomb", "plomo", "pbo", "pb3o4"],
        density: None,
        hazards: &[Hazard::Lead],
    },
    Known { names: &["cadmium*", "cadmio", "cds"], density: None, hazards: &[Hazard::Cadmium] },
];

/// The density of the powder of the material of this name; `None` where the name is not known.
pub fn density_by_name(name: &str) -> Option<PowderDensity> {
    rows(name).find_map(|known| known.density).and_then(|density| PowderDensity::new(density).ok())
}

/// What can hurt in the material of this name, in the order of [`Hazard::ALL`]; none where the name is not known.
pub fn hazards_by_name(name: &str) -> Vec<Hazard> {
    let mut found: Vec<Hazard> = rows(name).flat_map(|known| known.hazards).copied().collect();
    found.sort_unstable();
    found.dedup();
    found
}

fn rows(name: &str) -> impl Iterator<Item = &'static Known> {
    let lower = name.to_lowercase();
    let words: Vec<String> =
        lower.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).map(str::to_owned).collect();
    KNOWN.iter().filter(move |known| known.names.iter().any(|pattern| is_named(&words, pattern)))
}

/// Whether the words of `pattern` follow each other somewhere in `words`.
fn is_named(words: &[String], pattern: &str) -> bool {
    let pattern: Vec<&str> = pattern.split(' ').collect();
    words.windows(pattern.len()).any(|window| window.iter().zip(&pattern).all(|(word, part)| fits(word, part)))
}

fn fits(word: &str, part: &str) -> bool {
    match (part.strip_prefix('*'), part.strip_suffix('*')) {
        (Some(end), _) => word.ends_with(end),
        (_, Some(beginning)) => word.starts_with(beginning),
        _ => word == part,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hazards_are_known_by_name_and_only_then() {
        let codes = |name: &str| hazards_by_name(name).into_iter().map(Hazard::code).collect::<Vec<_>>().join(" ");
        assert_eq!(codes("Potash feldspar"), "silica");
        assert_eq!(codes("Kalifeldspat"), "silica");
        assert_eq!(codes("Silica 325 mesh"), "silica");
        assert_eq!(codes("Zirconium silicate"), "", "a silicate is no free silica");
        assert_eq!(codes("Barium Carbonate"), "barium");
        assert_eq!(codes("BaCO3"), "barium");
        assert_eq!(codes("carbonate de cobalt"), "cobalt");
        assert_eq!(codes("Potassium dichromate"), "chromium");
        assert_eq!(codes("Red lead"), "lead");
        assert_eq!(codes("Leadless frit"), "");
        assert_eq!(codes("Soda ash"), "soluble");
        assert_eq!(codes("Whiting"), "");
        assert_eq!(codes("Dust from the moon"), "");
        let found: std::collections::BTreeSet<Hazard> = KNOWN.iter().flat_map(|known| known.hazards).copied().collect();
        assert_eq!(found.len(), Hazard::ALL.len(), "each hazard has a material");
    }

    #[test]
    fn the_more_exact_name_gives_the_density() {
        let density = |name: &str| density_by_name(name).map(PowderDensity::value);
        assert_eq!(density("Cobalt carbonate"), Some(4.1));
        assert_eq!(density("Cobalt oxide"), Some(6.1));
        assert_eq!(density("Bone ash"), Some(3.1));
        assert_eq!(density("Alumina hydrate"), Some(2.4));
        assert_eq!(density("Frit 3134"), None);
    }

    #[test]
    fn every_row_can_be_found_and_has_a_density_that_can_be() {
        for known in KNOWN {
            assert!(known.density.is_none_or(|density| PowderDensity::new(density).is_ok()), "{:?}", known.names);
            for name in known.names {
                let name = name.replace('*', "");
                assert!(rows(&name).any(|row| std::ptr::eq(row, known)), "{name}");
                assert_eq!(name, name.to_lowercase());
            }
        }
    }
}
