//! Names of the values of closed lists, as labels and in lines of names.

use std::str::FromStr;

use crate::messages::{common, names as say};
use laydown_domain::bisque::Soaking;
use laydown_domain::coat::target::Sensitivity;
use laydown_domain::coat::tile::TileResult;
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::silhouette::{Side, Sureness};
use laydown_domain::form::{Part, ShapeClass, Stage, ZoneKind};
use laydown_domain::glaze::bucket::EntryKind;
use laydown_domain::glaze::flow_cup::FlowCup;
use laydown_domain::glaze::material::Hazard;
use laydown_domain::kiln::cone::{ConeKind, Reading};
use laydown_domain::kiln::fault::{Fault, Thickness};
use laydown_domain::units::{AreaUnit, DecimalMark, LengthUnit, MassUnit, VolumeUnit};

/// A value of a closed list that has a name for people.
pub trait Named: Copy {
    /// The name a potter reads, in the language in use: small letters where a sentence would have them.
    fn name(self) -> String;
}

/// The name of the value that a stored code stands for; a newer version's has no name here.
pub(crate) fn name_of<T: Named + FromStr>(code: &str) -> String {
    code.parse().map_or_else(|_| common::newer(), T::name)
}

/// The message of each value's name.
macro_rules! names {
    ($($list:ident { $($value:ident $message:ident,)+ })+) => {
        $(impl Named for $list {
            fn name(self) -> String {
                match self { $($list::$value => say::$message(),)+ }
            }
        })+
    };
}

names! {
    Soaking {
        Boiled soaking_boiled,
        Cold soaking_cold,
        Vacuum soaking_vacuum,
    }
    VerdictKind {
        Within verdict_within,
        Short verdict_short,
        Over verdict_over,
        CannotTell verdict_cannot_tell,
        Guess verdict_guess,
        ProbablyWithin verdict_probably_within,
    }
    ZoneKind {
        Inside zone_inside,
        Outside zone_outside,
        Whole zone_whole,
    }
    TileResult {
        NotFired tile_not_fired,
        Thin tile_thin,
        Right tile_right,
        Thick tile_thick,
    }
    EntryKind {
        Water entry_water,
        WaterOff entry_water_off,
        Powder entry_powder,
        Flocculant entry_flocculant,
        Deflocculant entry_deflocculant,
        Sieved entry_sieved,
        Level entry_level,
        Weighed entry_weighed,
        Note entry_note,
    }
    FlowCup {
        Ford1 cup_ford_1,
        Ford2 cup_ford_2,
        Ford3 cup_ford_3,
        Ford4 cup_ford_4,
        Ford5 cup_ford_5,
        Zahn1 cup_zahn_1,
        Zahn2 cup_zahn_2,
        Zahn3 cup_zahn_3,
        Zahn4 cup_zahn_4,
        Zahn5 cup_zahn_5,
        Iso3 cup_iso_3,
        Iso4 cup_iso_4,
        Iso5 cup_iso_5,
        Iso6 cup_iso_6,
    }
    Hazard {
        Silica hazard_silica,
        Barium hazard_barium,
        Manganese hazard_manganese,
        Lithium hazard_lithium,
        Cobalt hazard_cobalt,
        Chromium hazard_chromium,
        Nickel hazard_nickel,
        Vanadium hazard_vanadium,
        Copper hazard_copper,
        Soluble hazard_soluble,
        Lead hazard_lead,
        Cadmium hazard_cadmium,
    }
    Sensitivity {
        Low sensitivity_low,
        Medium sensitivity_medium,
        High sensitivity_high,
    }
    Part {
        Foot part_foot,
        OutsideWall part_outside_wall,
        OverlapBand part_overlap_band,
        Rim part_rim,
        InsideWall part_inside_wall,
        InsideFloor part_inside_floor,
    }
    ShapeClass {
        CylinderMug shape_cylinder_mug,
        RoundedMug shape_rounded_mug,
        OpenBowl shape_open_bowl,
        DeepBowl shape_deep_bowl,
        Plate shape_plate,
        Bottle shape_bottle,
        Jar shape_jar,
        Vase shape_vase,
        Teapot shape_teapot,
        Planter shape_planter,
        Tile shape_tile,
    }
    Stage {
        Bisque stage_bisque,
        Thrown stage_thrown,
        Fired stage_fired,
    }
    Side {
        Left side_left,
        Right side_right,
    }
    Sureness {
        Sure sureness_sure,
        Fair sureness_fair,
        Doubtful sureness_doubtful,
    }
    MassUnit {
        Gram mass_gram,
        Ounce mass_ounce,
    }
    VolumeUnit {
        Millilitre volume_millilitre,
        UsFluidOunce volume_us_fluid_ounce,
        ImperialFluidOunce volume_imperial_fluid_ounce,
    }
    AreaUnit {
        SquareCentimetre area_square_centimetre,
        SquareInch area_square_inch,
    }
    LengthUnit {
        Centimetre length_centimetre,
        Millimetre length_millimetre,
        Inch length_inch,
    }
    DecimalMark {
        Point decimal_point,
        Comma decimal_comma,
    }
    Thickness {
        Thin thickness_thin,
        Right thickness_right,
        Thick thickness_thick,
    }
    Fault {
        Crawling fault_crawling,
        Beading fault_beading,
        RawCracking fault_raw_cracking,
        Flaking fault_flaking,
        Crazing fault_crazing,
        DelayedCrazing fault_delayed_crazing,
        Shivering fault_shivering,
        Dunting fault_dunting,
        Pinholing fault_pinholing,
        Pitting fault_pitting,
        Blistering fault_blistering,
        Bloating fault_bloating,
        Running fault_running,
        Pooling fault_pooling,
        Sagging fault_sagging,
        Thin fault_thin,
        Dry fault_dry,
        Overfired fault_overfired,
        Underfired fault_underfired,
        Stuck fault_stuck,
        Warped fault_warped,
        Cracked fault_cracked,
        Plucked fault_plucked,
        Matting fault_matting,
        Scumming fault_scumming,
        Blushing fault_blushing,
        Speck fault_speck,
        BareSpot fault_bare_spot,
        MetalMarking fault_metal_marking,
    }
    ConeKind {
        SelfSupporting cone_kind_self_supporting,
        Large cone_kind_large,
    }
    Reading {
        Standing cone_reading_standing,
        Soft cone_reading_soft,
        At cone_reading_at,
        Hard cone_reading_hard,
        Flat cone_reading_flat,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ASTM F109-12: blister in the text as seen at https://wnwk.com/doc/188239.html (its opening); the rest from memory.
    #[test]
    fn terms_of_the_standard_are_the_names() {
        for term in ["blister", "crawl", "craz", "dunt", "pinhol", "pit", "speck"] {
            assert!(Fault::ALL.iter().any(|fault| fault.name().starts_with(term)), "{term}");
        }
    }
}
