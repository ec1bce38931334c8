//! What each column of a sheet holds: guessed from what it is called, and changed by the potter.

use super::vocabulary;
use crate::editor::Value;
use laydown_domain::coded::coded;

coded! {
    /// What a column holds.
    "column" ColumnRole {
        /// Nothing that is taken in.
        Nothing = "nothing",
        /// The day, or the day and the time.
        Date = "date",
        /// The time of day, in a column of its own.
        Time = "time",
        /// The form.
        Form = "form",
        /// The glaze.
        Glaze = "glaze",
        /// The bucket.
        Bucket = "bucket",
        /// The zone.
        Zone = "zone",
        /// The wet weight of the coat.
        Wet = "wet",
        /// Previous piece the coat.
        Bare = "bare",
        /// The piece with the coat.
        Glazed = "glazed",
        /// The bucket's specific gravity that day.
        SpecificGravity = "specific_gravity",
        /// What the piece is called, so that its coats come together.
        Piece = "piece",
        /// The code on its foot.
        Code = "code",
        /// Whether it is a control piece.
        Control = "control",
        /// A remark.
        Note = "note",
        /// The wet weight that was aimed at.
        Aim = "aim",
        /// The least that was accepted.
        Low = "low",
        /// The most that was accepted.
        High = "high",
        /// What was said of the coat.
        Verdict = "verdict",
        /// The day of the firing.
        Fired = "fired",
        /// The cone it was fired to.
        Cone = "cone",
        /// How thick the fired glaze looks.
        Result = "result",
        /// What went wrong.
        Faults = "faults",
        /// How the potter likes it.
        Liking = "liking",
    }
}

impl ColumnRole {
    /// Whether a number is read from it.
    pub(super) fn is_number(self) -> bool {
        self.is_weight() || self == ColumnRole::SpecificGravity
    }

    /// Whether a weight is read from it.
    pub(super) fn is_weight(self) -> bool {
        matches!(
            self,
            ColumnRole::Wet
                | ColumnRole::Bare
                | ColumnRole::Glazed
                | ColumnRole::Aim
                | ColumnRole::Low
                | ColumnRole::High
        )
    }
}

/// A unit other than grams as it stands in what a column is called.
const UNITS: &[(&str, &str)] = &[
    ("kg", "kg"),
    ("oz", "oz"),
    ("ounce", "oz"),
    ("ounces", "oz"),
    ("lb", "lb"),
    ("lbs", "lb"),
    ("pound", "lb"),
    ("pounds", "lb"),
];

/// A column of the sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Column {
    /// What it is called.
    pub(super) header: String,
    /// What it holds.
    pub(super) holds: ColumnRole,
    /// The unit of its weights, where its name says one.
    pub(super) unit: Option<&'static str>,
}

/// The key of the choice for the column at this place.
pub(super) fn key(place: usize) -> String {
    format!("column:{place}")
}

/// What stands under `key` among what was chosen; the last word counts.
pub(super) fn chosen<'a>(values: &'a [Value], key: &str) -> Option<&'a str> {
    values.iter().rev().find(|value| value.key == key).map(|value| value.text.trim())
}

/// The columns: as chosen, else as guessed. A second column for the same thing is never a guess.
pub(super) fn columns(headers: &[String], values: &[Value]) -> Vec<Column> {
    let mut taken: Vec<ColumnRole> = Vec::new();
    let picked = |place: usize| chosen(values, &key(place)).and_then(|code| code.parse::<ColumnRole>().ok());
    let all_picked: Vec<ColumnRole> = (0..headers.len()).filter_map(picked).collect();
    headers
        .iter()
        .enumerate()
        .map(|(place, header)| {
            let words = in_words(header);
            let guess =
                || vocabulary::column(&words).filter(|holds| !taken.contains(holds) && !all_picked.contains(holds));
            let holds = picked(place).or_else(guess).unwrap_or(ColumnRole::Nothing);
            taken.push(holds);
            let unit = words.iter().rev().find_map(|word| unit(word)).filter(|_| holds.is_weight());
            Column { header: header.clone(), holds, unit }
        })
        .collect()
}

fn in_words(header: &str) -> Vec<String> {
    let header = header.replace('.', "").to_lowercase();
    header.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).map(str::to_owned).collect()
}

fn unit(word: &str) -> Option<&'static str> {
    let other = || UNITS.iter().find(|(name, _)| *name == word).map(|(_, unit)| *unit);
    if vocabulary::is_grams(word) { Some("g") } else { other() }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn guessed(headers: &[&str]) -> Vec<ColumnRole> {
        let headers: Vec<String> = headers.iter().map(|header| (*header).to_owned()).collect();
        columns(&headers, &[]).into_iter().map(|column| column.holds).collect()
    }

    #[test]
    fn columns_are_known_by_their_names() {
        use ColumnRole::*;
        let headers = [
            "Weight after glazing (g)",
            "Date glazed",
            "Bisque weight",
            "Side",
            "Glaze",
            "Shape",
            "S.G.",
            "Notes on glaze",
        ];
        assert_eq!(guessed(&headers)[..4], [Glazed, Date, Bare, Zone]);
        assert_eq!(guessed(&headers)[4..], [Glaze, Form, SpecificGravity, Note]);
        assert_eq!(
            guessed(&["SG", "Coat, oz", "Net weight"]),
            [SpecificGravity, Wet, Nothing],
            "one column for each thing"
        );
        assert_eq!(
            guessed(&[
                "at",
                "piece",
                "code",
                "form",
                "glaze",
                "bucket",
                "zone",
                "wet_weight_g",
                "aim_g",
                "low_g",
                "high_g"
            ]),
            [Date, Piece, Code, Form, Glaze, Bucket, Zone, Wet, Aim, Low, High]
        );
        assert_eq!(
            guessed(&["verdict", "laydown_g_per_dm2", "specific_gravity", "control_piece", "note"]),
            [Verdict, Nothing, SpecificGravity, Control, Note]
        );
    }

    #[test]
    fn columns_are_known_in_the_languages_of_the_studio() {
        use ColumnRole::*;
        let holds = [Date, Form, Glaze, Zone, Wet, SpecificGravity, Bare, Glazed, Bucket, Control, Note];
        for headers in [
            [
                "Datum",
                "Form",
                "Glasur",
                "Seite",
                "Nassgewicht (g)",
                "Dichte",
                "Rohgewicht",
                "Gewicht danach",
                "Eimer",
                "Kontrollstück",
                "Bemerkung",
            ],
            [
                "Date d’émaillage",
                "Forme",
                "Émail",
                "Côté",
                "Poids humide (g)",
                "Densité",
                "Poids avant",
                "Poids après émaillage",
                "Seau",
                "Témoin",
                "Remarques",
            ],
            [
                "Fecha",
                "Forma",
                "Esmalte",
                "Lado",
                "Peso húmedo (g)",
                "Densidad",
                "Peso antes",
                "Peso esmaltado",
                "Cubo",
                "Pieza de control",
                "Observaciones",
            ],
            [
                "Data",
                "Forma",
                "Smalto",
                "Lato",
                "Peso umido (g)",
                "Densità",
                "Peso biscotto",
                "Peso dopo",
                "Secchio",
                "Controllo",
                "Osservazioni",
            ],
            [
                "Datum",
                "Vorm",
                "Glazuur",
                "Kant",
                "Nat gewicht (g)",
                "Dichtheid",
                "Gewicht voor glazuren",
                "Gewicht na glazuren",
                "Emmer",
                "Controle",
                "Opmerkingen",
            ],
        ] {
            assert_eq!(guessed(&headers), holds, "{headers:?}");
            let headers: Vec<String> = headers.iter().map(|header| (*header).to_owned()).collect();
            assert_eq!(columns(&headers, &[])[4].unit, Some("g"), "{headers:?}");
        }
        assert_eq!(guessed(&["Auftrag in Gramm", "Gewicht pro dm²"]), [Wet, Nothing]);
        assert_eq!(guessed(&["Stück", "Kürzel", "Uhrzeit", "Ziel"]), [Piece, Code, Time, Aim]);
    }

    #[test]
    fn what_the_user_says_goes_before_a_guess() {
        let headers = ["Weight".to_owned(), "Scale".to_owned()];
        let values = [Value { key: key(1), text: "wet".to_owned() }];
        let holds: Vec<ColumnRole> = columns(&headers, &values).into_iter().map(|column| column.holds).collect();
        assert_eq!(holds, [ColumnRole::Nothing, ColumnRole::Wet]);
    }

    #[test]
    fn a_unit_is_read_from_the_name() {
        let headers = ["Wet weight (oz)".to_owned(), "Bare_kg".to_owned(), "Aim".to_owned()];
        let units: Vec<_> = columns(&headers, &[]).into_iter().map(|column| column.unit).collect();
        assert_eq!(units, [Some("oz"), Some("kg"), None]);
    }
}
