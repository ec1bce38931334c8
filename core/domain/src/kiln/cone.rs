//! Pyrometric cones: their order, when a self-supporting or a large one bends, and how a witness cone is read.
//!
//! A cone measures heat-work, not temperature: a temperature is only ever named with the kind of cone and the rate of
//! heating over the last hundred degrees.

use std::cmp::Ordering;
use std::fmt;
use std::str::FromStr;

use crate::UnknownCode;
use crate::coded::coded;
use crate::units::Celsius;

coded! {
    /// A kind of cone: each bends at a temperature of its own.
    "cone_kind" ConeKind {
        /// Stands by itself on its base.
        SelfSupporting = "self_supporting",
        /// Stands in a plaque or a wad of clay.
        Large = "large",
    }
}

coded! {
    /// How a witness cone looks after the firing.
    "reading" Reading {
        /// It has not bent: less heat-work.
        Standing = "standing",
        /// It has begun to bend: a little less.
        Soft = "soft",
        /// Its tip is level with its base: this cone.
        At = "at",
        /// It has bent further: a little more.
        Hard = "hard",
        /// It lies flat or has melted: more.
        Flat = "flat",
    }
}

/// The cones potters fire to, from the coolest to the hottest.
const NAMES: [&str; 35] = [
    "022", "021", "020", "019", "018", "017", "016", "015", "014", "013", "012", "011", "010", "09", "08", "07", "06",
    "05", "04", "03", "02", "01", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13",
];

/// A cone by its number. Ordered by heat-work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, serde::Deserialize)]
#[serde(into = "&'static str", try_from = "String")]
pub struct Cone(usize);

impl Cone {
    /// Every cone, from the coolest to the hottest.
    pub fn all() -> impl Iterator<Item = Cone> {
        (0..NAMES.len()).map(Cone)
    }

    /// The number as it is stamped on it, for example "06" or "6".
    pub fn code(self) -> &'static str {
        NAMES[self.0]
    }

    /// The next one up; `None` after the hottest.
    pub fn hotter(self) -> Option<Cone> {
        Some(Cone(self.0 + 1)).filter(|cone| cone.0 < NAMES.len())
    }

    /// The next one down; `None` before the coolest.
    pub fn cooler(self) -> Option<Cone> {
        self.0.checked_sub(1).map(Cone)
    }

    /// When its tip comes level with its base at `rate` °C an hour; `None` where the tables here do not say, as for a
    /// cone they leave out or a rate outside 60 to 150 °C an hour.
    pub fn bends_at(self, kind: ConeKind, rate: f64) -> Option<Celsius> {
        let table = match kind {
            ConeKind::SelfSupporting => SELF_SUPPORTING,
            ConeKind::Large => LARGE,
        };
        let &(_, slow, fast) = table.iter().find(|(name, ..)| *name == self.code())?;
        let share = (rate - SLOW) / (FAST - SLOW);
        (0.0..=1.0).contains(&share).then(|| Celsius::new(slow + share * (fast - slow)))
    }
}

impl fmt::Display for Cone {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "cone {}", self.code())
    }
}

impl From<Cone> for &'static str {
    fn from(cone: Cone) -> &'static str {
        cone.code()
    }
}

impl TryFrom<String> for Cone {
    type Error = UnknownCode;

    fn try_from(code: String) -> Result<Cone, UnknownCode> {
        code.parse()
    }
}

impl FromStr for Cone {
    type Err = UnknownCode;

    fn from_str(code: &str) -> Result<Cone, UnknownCode> {
        let place = NAMES.iter().position(|name| *name == code);
        place.map(Cone).ok_or_else(|| UnknownCode::new("cone", code))
    }
}

/// The rates of the tables, °C an hour (108 and 270 °F an hour).
const SLOW: f64 = 60.0;
const FAST: f64 = 150.0;

/// Cone, °C at the slow rate, °C at the fast rate. From a dealer's copy of the maker's self-supporting column in °F (the
/// checks CONE-SS name it); cones 016, 08, 02, 7, 11, 12 and 13 are from memory.
const SELF_SUPPORTING: &[(&str, f64, f64)] = &[
    ("022", 586.0, 590.0),
    ("021", 600.0, 617.0),
    ("020", 626.0, 638.0),
    ("019", 678.0, 695.0),
    ("018", 715.0, 734.0),
    ("017", 738.0, 763.0),
    ("016", 772.0, 796.0),
    ("015", 791.0, 818.0),
    ("014", 807.0, 838.0),
    ("013", 837.0, 861.0),
    ("012", 861.0, 882.0),
    ("011", 875.0, 894.0),
    ("010", 903.0, 915.0),
    ("09", 920.0, 930.0),
    ("08", 942.0, 956.0),
    ("07", 976.0, 987.0),
    ("06", 998.0, 1013.0),
    ("05", 1031.0, 1044.0),
    ("04", 1063.0, 1077.0),
    ("03", 1086.0, 1104.0),
    ("02", 1102.0, 1122.0),
    ("01", 1119.0, 1138.0),
    ("1", 1137.0, 1154.0),
    ("2", 1142.0, 1164.0),
    ("3", 1152.0, 1170.0),
    ("4", 1162.0, 1183.0),
    ("5", 1186.0, 1207.0),
    ("6", 1222.0, 1243.0),
    ("7", 1239.0, 1257.0),
    ("8", 1249.0, 1271.0),
    ("9", 1260.0, 1280.0),
    ("10", 1285.0, 1305.0),
    ("11", 1294.0, 1315.0),
    ("12", 1306.0, 1326.0),
    ("13", 1331.0, 1348.0),
];

/// The same for large cones, from a dealer's page (the checks CONE-LG name it); cones 019 to 011, 07 to 05, 02, 01, 2, 3, 5, 8,
/// 12 and 13 are from memory, and none is known below 019. Older tables differ by up to 20 °C.
const LARGE: &[(&str, f64, f64)] = &[
    ("019", 676.0, 693.0),
    ("018", 712.0, 732.0),
    ("017", 736.0, 761.0),
    ("016", 769.0, 794.0),
    ("015", 788.0, 816.0),
    ("014", 807.0, 836.0),
    ("013", 837.0, 859.0),
    ("012", 858.0, 880.0),
    ("011", 873.0, 892.0),
    ("010", 898.0, 913.0),
    ("09", 917.0, 928.0),
    ("08", 942.0, 954.0),
    ("07", 973.0, 985.0),
    ("06", 995.0, 1011.0),
    ("05", 1030.0, 1046.0),
    ("04", 1060.0, 1070.0),
    ("03", 1086.0, 1101.0),
    ("02", 1101.0, 1120.0),
    ("01", 1117.0, 1137.0),
    ("1", 1136.0, 1154.0),
    ("2", 1142.0, 1162.0),
    ("3", 1152.0, 1168.0),
    ("4", 1160.0, 1181.0),
    ("5", 1184.0, 1205.0),
    ("6", 1220.0, 1241.0),
    ("7", 1237.0, 1255.0),
    ("8", 1247.0, 1269.0),
    ("9", 1257.0, 1278.0),
    ("10", 1282.0, 1303.0),
    ("11", 1293.0, 1312.0),
    ("12", 1304.0, 1324.0),
    ("13", 1321.0, 1346.0),
];

/// Witness cones stand at most so many cones from the one aimed at; further off they tell nothing of it. Common practice, no
/// source.
const NEAR: usize = 3;

/// What was probably meant by witness cones that are all far from the cone aimed at: the same numbers with the leading zero that
/// was forgotten, or without one too many, where that brings them nearer; in the same order. `None` where nothing speaks for that.
pub fn likely_meant(aimed: Cone, witnesses: &[Cone]) -> Option<Vec<Cone>> {
    let nearest = |cones: &[Cone]| cones.iter().map(|cone| cone.0.abs_diff(aimed.0)).min();
    let now = nearest(witnesses).filter(|away| *away > NEAR)?;
    let zero_turned = |cone: &Cone| match cone.code().strip_prefix('0') {
        Some(without) => without.parse().ok(),
        None => format!("0{}", cone.code()).parse().ok(),
    };
    let meant = witnesses.iter().map(zero_turned).collect::<Option<Vec<Cone>>>()?;
    (nearest(&meant)? < now).then_some(meant)
}

/// A witness cone as it was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Witness {
    /// Which cone.
    pub cone: Cone,
    /// How it looks.
    pub reading: Reading,
}

/// How the heat-work that a witness cone shows lies to the cone aimed at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AgainstAim {
    /// As aimed.
    AsAimed,
    /// Near what was aimed at.
    Near,
    /// More.
    Over,
    /// Less.
    Under,
}

/// The witness cone that tells most, and what it says against the cone aimed at; `None` where there is none.
pub fn against_aim(aimed: Cone, witnesses: &[Witness]) -> Option<(Witness, AgainstAim)> {
    let reached = witnesses.iter().filter(|witness| witness.reading >= Reading::At).max_by_key(|witness| witness.cone);
    let short = witnesses.iter().filter(|witness| witness.reading < Reading::At).min_by_key(|witness| witness.cone);
    let at_aim = witnesses.iter().find(|witness| witness.cone == aimed);
    let telling = at_aim.or(reached).or(short)?;
    let against = match (telling.cone.cmp(&aimed), telling.reading) {
        (Ordering::Equal, Reading::At) => AgainstAim::AsAimed,
        (Ordering::Equal, Reading::Hard | Reading::Flat) => AgainstAim::Over,
        (Ordering::Equal | Ordering::Less, _) => AgainstAim::Under,
        (Ordering::Greater, Reading::Standing | Reading::Soft) => AgainstAim::Near,
        (Ordering::Greater, _) => AgainstAim::Over,
    };
    Some((*telling, against))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cone(code: &str) -> Cone {
        code.parse().unwrap()
    }

    #[test]
    fn cones_are_ordered_by_heat() {
        assert!(cone("06") < cone("6") && cone("022") < cone("01") && cone("01") < cone("1"));
        assert_eq!(cone("01").hotter(), Some(cone("1")));
        assert_eq!(cone("022").cooler(), None);
        assert_eq!(cone("13").hotter(), None);
        assert!("6.5".parse::<Cone>().is_err() && "".parse::<Cone>().is_err());
    }

    #[test]
    fn a_hotter_cone_bends_later_and_a_faster_firing_too() {
        for kind in ConeKind::ALL {
            let bends: Vec<(f64, f64)> = Cone::all()
                .filter_map(|cone| Some((cone.bends_at(*kind, 60.0)?.value(), cone.bends_at(*kind, 150.0)?.value())))
                .collect();
            assert!(bends.len() >= 32 && bends.is_sorted() && bends.iter().all(|(slow, fast)| slow < fast));
        }
        assert_eq!(cone("6").bends_at(ConeKind::Large, 105.0), Some(Celsius::new(1230.5)));
        for rate in [0.0, 59.0, 151.0, f64::NAN] {
            assert_eq!(cone("6").bends_at(ConeKind::Large, rate), None);
        }
        assert_eq!(cone("022").bends_at(ConeKind::Large, 60.0), None);
    }

    #[test]
    fn a_forgotten_zero_is_asked_about_and_a_usual_set_is_not() {
        let meant = |aimed: &str, typed: &[&str]| {
            let typed: Vec<Cone> = typed.iter().map(|code| cone(code)).collect();
            likely_meant(cone(aimed), &typed).map(|cones| cones.iter().map(|cone| cone.code()).collect::<Vec<_>>())
        };
        assert_eq!(meant("01", &["5", "6", "7"]), Some(vec!["05", "06", "07"]));
        assert_eq!(meant("6", &["05", "06", "07"]), Some(vec!["5", "6", "7"]));
        assert_eq!(meant("06", &["6"]), Some(vec!["06"]));
        assert_eq!(meant("10", &["010"]), Some(vec!["10"]));
        for (aimed, usual) in [("6", &["5", "6", "7"][..]), ("01", &["02", "01", "1"]), ("1", &["02"]), ("6", &[])] {
            assert_eq!(meant(aimed, usual), None, "{aimed} {usual:?}");
        }
        // Far away, but no zero explains it.
        assert_eq!((meant("10", &["6"]), meant("6", &["13"])), (None, None));
    }

    #[test]
    fn witnesses_are_read_against_the_aim() {
        let read = |readings: &[(&str, Reading)]| {
            let witnesses: Vec<Witness> =
                readings.iter().map(|&(code, reading)| Witness { cone: cone(code), reading }).collect();
            let (telling, against) = against_aim(cone("6"), &witnesses)?;
            Some((telling.cone.code(), telling.reading, against))
        };
        assert_eq!(read(&[]), None);
        assert_eq!(read(&[("6", Reading::At)]), Some(("6", Reading::At, AgainstAim::AsAimed)));
        let soft = read(&[("5", Reading::Flat), ("6", Reading::Soft)]);
        assert_eq!(soft, Some(("6", Reading::Soft, AgainstAim::Under)));
        assert_eq!(read(&[("7", Reading::At)]), Some(("7", Reading::At, AgainstAim::Over)));
        assert_eq!(read(&[("5", Reading::At)]), Some(("5", Reading::At, AgainstAim::Under)));
        assert_eq!(read(&[("7", Reading::Standing)]), Some(("7", Reading::Standing, AgainstAim::Near)));
    }
}
