//! The words potters write over their columns and into them, in the languages whose spreadsheets are read.
//!
//! The words are from memory, as studios say them. Accents may be left out, as on a keyboard without them.

use super::columns::ColumnRole;
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::fault::Thickness;

/// The order of the languages in every row.
const LANGUAGES: usize = 6;

/// English, German, French, Spanish, Italian, Dutch; words with spaces between them.
type InEach = [&'static str; LANGUAGES];

/// Words in what a column is called, and what it then holds. The first row that fits is taken, so the narrower words stand
/// above: a "glazed weight" is no wet weight, and a "control piece" no piece.
const COLUMNS: &[(ColumnRole, InEach)] = &[
    (
        ColumnRole::Note,
        [
            "note notes remark remarks comment comments",
            "notiz notizen bemerkung bemerkungen anmerkung anmerkungen kommentar",
            "note notes remarque remarques commentaire commentaires",
            "nota notas observación observaciones comentario comentarios",
            "nota note osservazione osservazioni commento commenti",
            "notitie notities opmerking opmerkingen",
        ],
    ),
    (ColumnRole::Cone, ["cone", "kegel", "cône", "cono", "cono", "kegel"]),
    (
        ColumnRole::Fired,
        [
            "fired firing",
            "gebrannt brand brenndatum glattbrand",
            "cuit cuite cuisson",
            "cocido cocida cocción hornada",
            "cotto cotta cottura",
            "gestookt stook stookdatum",
        ],
    ),
    (ColumnRole::Result, ["result outcome", "ergebnis", "résultat", "resultado", "risultato", "resultaat"]),
    (
        ColumnRole::Faults,
        [
            "fault faults defect defects",
            "fehler",
            "défaut défauts",
            "defecto defectos",
            "difetto difetti",
            "fout fouten",
        ],
    ),
    (
        ColumnRole::Liking,
        [
            "rating stars score",
            "bewertung sterne",
            "appréciation étoiles",
            "valoración estrellas",
            "valutazione stelle",
            "beoordeling sterren",
        ],
    ),
    (
        ColumnRole::Date,
        [
            "date day at when",
            "datum wann",
            "date jour quand",
            "fecha día cuándo",
            "data giorno quando",
            "datum dag wanneer",
        ],
    ),
    (ColumnRole::Time, ["time", "uhrzeit zeit", "heure", "hora", "ora orario", "tijd"]),
    (
        ColumnRole::Aim,
        [
            "aim target",
            "ziel zielgewicht soll sollgewicht",
            "cible objectif visé",
            "objetivo",
            "obiettivo",
            "doel doelgewicht streefgewicht",
        ],
    ),
    (
        ColumnRole::Low,
        ["low lowest least min", "mindestens minimum", "minimum mini", "mínimo", "minimo", "minimum minstens"],
    ),
    (
        ColumnRole::High,
        ["high highest most max", "höchstens maximum", "maximum maxi", "máximo", "massimo", "maximum hoogstens"],
    ),
    (
        ColumnRole::Bare,
        [
            "bare bisque before",
            "schrüh schrühgewicht schrühware geschrüht roh rohgewicht leergewicht unglasiert vor vorher",
            "biscuit dégourdi nu avant",
            "bizcocho bizcochado antes",
            "biscotto biscottato prima",
            "biscuit biscuitgewicht kaal ongeglazuurd voor",
        ],
    ),
    (
        ColumnRole::Glazed,
        [
            "glazed after",
            "glasiert nach nachher danach",
            "émaillé émaillée après",
            "esmaltado esmaltada después",
            "smaltato smaltata dopo",
            "geglazuurd na erna",
        ],
    ),
    (
        ColumnRole::SpecificGravity,
        ["sg gravity density", "dichte glasurdichte", "densité", "densidad", "densità", "dichtheid sm"],
    ),
    (
        ColumnRole::Wet,
        [
            "wet net weight coat grams",
            "nass nassgewicht netto nettogewicht gewicht glasurgewicht auftrag auftragsgewicht gramm",
            "humide net poids couche grammes",
            "húmedo neto peso capa gramos",
            "umido bagnato netto peso strato grammi",
            "nat natgewicht netto gewicht glazuurgewicht laag gram",
        ],
    ),
    (
        ColumnRole::Bucket,
        ["bucket batch", "eimer charge ansatz", "seau lot", "cubo balde lote", "secchio lotto", "emmer partij"],
    ),
    (
        ColumnRole::Control,
        ["control", "kontrolle kontrollstück", "contrôle témoin", "control testigo", "controllo campione", "controle"],
    ),
    (ColumnRole::Code, ["code foot", "code fuß kürzel", "code pied", "código pie", "codice piede", "code voet"]),
    (
        ColumnRole::Zone,
        [
            "zone side surface",
            "zone seite bereich",
            "zone côté face",
            "zona lado cara superficie",
            "zona lato superficie",
            "zone zijde kant",
        ],
    ),
    (ColumnRole::Verdict, ["verdict", "urteil", "verdict", "veredicto", "giudizio", "oordeel"]),
    (
        ColumnRole::Form,
        [
            "form shape pot",
            "form gefäß gefäss topf",
            "forme modèle pot",
            "forma modelo vasija",
            "forma modello vaso",
            "vorm model pot",
        ],
    ),
    (ColumnRole::Glaze, ["glaze", "glasur", "émail glaçure", "esmalte vidriado", "smalto", "glazuur"]),
    (
        ColumnRole::Piece,
        ["piece no number", "stück nummer nr", "pièce numéro", "pieza número", "pezzo numero", "stuk nummer nr"],
    ),
];

/// A figure per something else is none of what is read: "laydown g per dm2".
const PER: InEach = ["per", "pro je", "par", "por", "per al", "per"];

/// Grams in the name of a column; the other units are only written in English.
const GRAMS: InEach = ["g gram grams", "g gramm", "g gramme grammes", "g gramo gramos", "g grammo grammi", "g gram"];

/// A side of the piece.
const ZONES: &[(ZoneKind, [&[&str]; LANGUAGES])] = &[
    (
        ZoneKind::Inside,
        [
            &["inside", "in", "interior", "inner"],
            &["innen", "innenseite"],
            &["intérieur", "dedans"],
            &["dentro", "interior"],
            &["interno", "dentro"],
            &["binnen", "binnenkant"],
        ],
    ),
    (
        ZoneKind::Outside,
        [
            &["outside", "out", "exterior", "outer"],
            &["außen", "aussen", "außenseite"],
            &["extérieur", "dehors"],
            &["fuera", "exterior"],
            &["esterno", "fuori"],
            &["buiten", "buitenkant"],
        ],
    ),
    (
        ZoneKind::Whole,
        [
            &["whole", "both", "all", "all over", "inside and outside", "in and out"],
            &["beide", "beides", "ganz", "innen und außen", "innen und aussen"],
            &["les deux", "tout", "intérieur et extérieur"],
            &["ambos", "todo", "dentro y fuera"],
            &["entrambi", "tutto", "dentro e fuori"],
            &["beide", "geheel", "binnen en buiten"],
        ],
    ),
];

/// How thick a fired glaze looks.
const THICKNESSES: &[(Thickness, InEach)] = &[
    (Thickness::Thin, ["thin", "dünn", "mince fin", "fino fina delgado", "sottile", "dun"]),
    (
        Thickness::Right,
        [
            "right good ok",
            "richtig gut ok",
            "juste bon bonne",
            "correcto bien bueno",
            "giusto buono bene",
            "goed juist",
        ],
    ),
    (Thickness::Thick, ["thick", "dick", "épais épaisse", "grueso gruesa", "spesso", "dik"]),
];

const YES: InEach = ["yes y true", "ja j", "oui o", "sí s", "sì vero", "ja"];
const NO: InEach = ["no n false", "nein", "non", "no", "no falso", "nee"];

/// What a column holds by the words of its name, which are in small letters.
pub(super) fn column(words: &[String]) -> Option<ColumnRole> {
    if words.iter().any(|word| is_among(&PER, word)) {
        return None;
    }
    COLUMNS.iter().find(|(_, names)| words.iter().any(|word| is_among(names, word))).map(|(holds, _)| *holds)
}

/// Whether the word says grams.
pub(super) fn is_grams(word: &str) -> bool {
    is_among(&GRAMS, word)
}

/// A side of the piece; `text` is in small letters.
pub(super) fn zone(text: &str) -> Option<ZoneKind> {
    let is_it =
        |names: &[&[&str]; LANGUAGES]| names.iter().flat_map(|names| names.iter()).any(|name| is_same(name, text));
    ZONES.iter().find(|(_, names)| is_it(names)).map(|(zone, _)| *zone)
}

/// How thick a fired glaze looks, also with "too" before it; `text` is in small letters.
pub(super) fn thickness(text: &str) -> Option<Thickness> {
    let word = text.rsplit(' ').next().unwrap_or(text);
    THICKNESSES.iter().find(|(_, names)| is_among(names, word)).map(|(thickness, _)| *thickness)
}

/// Yes or no; `text` is in small letters.
pub(super) fn yes(text: &str) -> Option<bool> {
    if is_among(&YES, text) { Some(true) } else { is_among(&NO, text).then_some(false) }
}

fn is_among(names: &InEach, word: &str) -> bool {
    names.iter().flat_map(|names| names.split(' ')).any(|name| is_same(name, word))
}

/// The same word, with its accents or without them.
fn is_same(name: &str, word: &str) -> bool {
    name == word || without_accents(name).eq(without_accents(word))
}

/// The letters that these languages write with accents, without them.
fn without_accents(word: &str) -> impl Iterator<Item = char> + '_ {
    word.chars().map(|letter| match letter {
        'à' | 'á' | 'â' | 'ä' => 'a',
        'ç' => 'c',
        'è' | 'é' | 'ê' | 'ë' => 'e',
        'ì' | 'í' | 'î' | 'ï' => 'i',
        'ñ' => 'n',
        'ò' | 'ó' | 'ô' | 'ö' => 'o',
        'ù' | 'ú' | 'û' | 'ü' => 'u',
        other => other,
    })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::*;

    /// A word that stood in two rows would be read as the upper one, whatever the lower one says.
    #[test]
    fn no_word_means_two_things() {
        let mut rows: BTreeMap<String, ColumnRole> = BTreeMap::new();
        for (holds, names) in COLUMNS {
            for name in names.iter().flat_map(|names| names.split(' ')) {
                let plain: String = without_accents(name).collect();
                let before = rows.insert(plain, *holds);
                assert!(before.is_none_or(|before| before == *holds), "{name} is {before:?} and {holds:?}");
            }
        }
        assert!(rows.len() > 180, "{}", rows.len());
    }

    #[test]
    fn words_are_known_with_their_accents_and_without() {
        for word in ["émail", "email", "glaçure", "glacure"] {
            assert_eq!(column(&[word.to_owned()]), Some(ColumnRole::Glaze), "{word}");
        }
        assert_eq!(column(&["gewicht".to_owned(), "pro".to_owned(), "dm2".to_owned()]), None);
        for (text, side) in
            [("außen", ZoneKind::Outside), ("interieur", ZoneKind::Inside), ("les deux", ZoneKind::Whole)]
        {
            assert_eq!(zone(text), Some(side), "{text}");
        }
        assert_eq!((yes("oui"), yes("nein"), yes("si"), yes("maybe")), (Some(true), Some(false), Some(true), None));
    }
}
