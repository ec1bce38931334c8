//! From the rows of the store to the quantities that the pure modules calculate with.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;
use std::str::FromStr;

use rusqlite::Connection;
use uuid::Uuid;

use super::archive::in_use;
use super::contents::BucketHistory;
use super::form_geometry::shape;
use super::in_words::Sentence;
use super::in_words::decimal_mark;
use super::messages::common as say;
use super::weigh::weighed_from;
use super::{Now, Result, StudioError};
use laydown_domain::UnknownCode;
use laydown_domain::coat::Solids;
use laydown_domain::coat::dry::DryGlaze;
use laydown_domain::coat::scale::Scale;
use laydown_domain::coat::target::{Control, Sensitivity, TileEvidence};
use laydown_domain::coat::tile::{self, TileResult};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::{AREA_FROM_CAPACITY, Form, ZoneKind};
use laydown_domain::glaze::material::Hazard;
use laydown_domain::glaze::recipe::{Material, Recipe};
use laydown_domain::glaze::slurry::{SgReading, SolidsFraction};
use laydown_domain::units::{
    AreaUnit, Grams, Laydown, LengthUnit, MassUnit, PowderDensity, SpecificGravity, SquareCentimetres, Style,
    VolumeUnit,
};
use laydown_store::entity::{self, Entity, Pairs};
use laydown_store::query::{ControlPiece, WeighedDry};
use laydown_store::{query, this_device};

/// The most control pieces of one form that a target rests on: the newest ones, so that it follows the studio's hand.
pub(super) const MOST_CONTROLS: u32 = 24;

/// An id as the shell hands it back.
pub(super) fn parse_id(text: &str, what: &str) -> Result<Uuid> {
    text.parse().map_err(|_| StudioError::missing(what))
}

/// A code kept in a row, where the screen is about that row alone; one that this version does not know came from a newer one.
/// Among other rows a code is asked for with `parse().ok()`, and an unknown one stands by itself.
pub(super) fn code<T: FromStr<Err = UnknownCode>>(text: &str) -> Result<T> {
    Ok(text.parse()?)
}

/// This device's preferences, or the defaults.
pub(super) fn preference(conn: &Connection) -> Result<entity::Preference> {
    let device = this_device(conn)?.0;
    Ok(entity::Preference::load(conn, device)?.unwrap_or_else(|| entity::Preference {
        id: device,
        mass: MassUnit::Gram.code().to_owned(),
        volume: VolumeUnit::Millilitre.code().to_owned(),
        area: AreaUnit::SquareCentimetre.code().to_owned(),
        length: LengthUnit::Centimetre.code().to_owned(),
        decimal: decimal_mark().code().to_owned(),
        speak: true,
        tick: true,
        code_pieces: true,
        phone: None,
        hand: None,
        ask_dip: false,
    }))
}

/// The units and the decimal mark the potter wants to read.
pub(super) fn style(conn: &Connection) -> Result<Style> {
    Ok(style_of(&preference(conn)?))
}

/// The same from preferences that have been read. A unit that only a newer version knows is shown as the usual one.
pub(super) fn style_of(preference: &entity::Preference) -> Style {
    let usual = Style::default();
    Style {
        mass: preference.mass.parse().unwrap_or(usual.mass),
        volume: preference.volume.parse().unwrap_or(usual.volume),
        area: preference.area.parse().unwrap_or(usual.area),
        length: preference.length.parse().unwrap_or(usual.length),
        decimal: preference.decimal.parse().unwrap_or(usual.decimal),
    }
}

/// What was made of a row; `None` where its figures or codes cannot be, as when they came from elsewhere: a screen shows the
/// rest.
pub(super) fn usable<T>(made: Result<T>) -> Result<Option<T>> {
    match made {
        Ok(made) => Ok(Some(made)),
        Err(StudioError::Refused { .. } | StudioError::Newer { .. }) => Ok(None),
        Err(error) => Err(error),
    }
}

/// The density of a glaze's powder; the usual one where the row's cannot be.
pub(super) fn powder_density(glaze: &entity::Glaze) -> PowderDensity {
    PowderDensity::from_thousandths(glaze.powder_density_e3).unwrap_or_default()
}

/// A glaze's dry materials; `None` where none are given, or what came from elsewhere makes no recipe.
pub(super) fn recipe(glaze: &entity::Glaze) -> Option<Recipe> {
    let materials = glaze.materials.as_ref()?.0.iter().map(material).collect();
    Recipe::new(materials).ok()
}

fn material(stored: &entity::Material) -> Material {
    Material {
        name: stored.name.clone(),
        parts: stored.parts_e3 as f64 / 1e3,
        is_addition: stored.addition,
        density: stored.density_e3.and_then(|density| PowderDensity::from_thousandths(density).ok()),
        price_per_kg: stored.price_e3.map(|price| price as f64 / 1e3),
    }
}

/// What can hurt in a glaze's materials: known by their names, unless the potter said otherwise.
pub(super) fn hazards(glaze: &entity::Glaze) -> Vec<Hazard> {
    let by_name = recipe(glaze).map(|recipe| recipe.hazards()).unwrap_or_default();
    let answers = glaze.hazards.as_ref();
    Hazard::ALL.iter().copied().filter(|hazard| hazard_is_in(*hazard, answers, &by_name)).collect()
}

/// Whether a hazard is in a glaze: as the potter answered, else as the names of its materials say.
pub(super) fn hazard_is_in(hazard: Hazard, answers: Option<&Pairs>, by_name: &[Hazard]) -> bool {
    let answer = answers.and_then(|answers| answers.0.iter().find(|(code, _)| code == hazard.code()));
    answer.map_or_else(|| by_name.contains(&hazard), |(_, answer)| answer == "yes")
}

/// A kept SG in words, also one that cannot be.
pub(super) fn sg_in_words(style: &Style, hundred_thousandths: i64) -> String {
    match SpecificGravity::from_hundred_thousandths(hundred_thousandths) {
        Ok(sg) => style.specific_gravity(sg),
        Err(_) => say::impossible_sg(style.number(hundred_thousandths as f64 / 1e5, 2)),
    }
}

/// The scale as the verdict needs it.
pub(super) fn scale_of(scale: &entity::Scale) -> Result<Scale> {
    Scale::new(
        Grams::from_milligrams(scale.capacity_mg),
        Grams::from_milligrams(scale.step_mg),
        scale.minimum_mg.map(Grams::from_milligrams),
        scale.repeatability_mg.map(Grams::from_milligrams),
    )
    .map_err(|error| StudioError::refused("scale", error.sentence()))
}

/// The bucket's last SG and when it was read; an assumed one and `None` if it never was, or what was kept cannot be.
pub(super) fn latest_sg(conn: &Connection, bucket: Uuid) -> Result<(SgReading, Option<i64>)> {
    let Some(check) = query::latest_check(conn, bucket)? else { return Ok((SgReading::unchecked(), None)) };
    Ok(usable(sg_of(&check))?.map_or((SgReading::unchecked(), None), |reading| (reading, Some(check.at))))
}

/// The bucket of a glaze that is in use now: the one that was weighed from last on this phone, else the one mixed last; `None` while
/// none is in use.
pub(super) fn bucket_in_use(conn: &Connection, glaze: Uuid) -> Result<Option<entity::Bucket>> {
    let mut buckets = in_use::<entity::Bucket>(conn, None)?;
    buckets.retain(|bucket| bucket.glaze == glaze);
    let weighed_from = weighed_from(conn)?.into_iter();
    let last = weighed_from.filter_map(|id| buckets.iter().position(|bucket| bucket.id == id)).next();
    let newest = || (0..buckets.len()).max_by_key(|at| buckets[*at].mixed_at);
    Ok(last.or_else(newest).map(|at| buckets.swap_remove(at)))
}

/// A bucket of `glaze` as it stands today, as sure as its last check still is; `None` where its figures cannot be.
pub(super) fn bucket_today(
    conn: &Connection,
    now: Now,
    glaze: &entity::Glaze,
    bucket: Uuid,
) -> Result<Option<(SpecificGravity, Solids)>> {
    let (sg, checked_at) = latest_sg(conn, bucket)?;
    let sg = checked_at.map_or(Ok(sg), |at| BucketHistory::read(conn, bucket)?.sg_today(conn, now, sg, at))?;
    Ok(usable(Solids::of(sg, powder_density(glaze)).map_err(Into::into))?.map(|solids| (sg.sg, solids)))
}

/// The same as it was known at `at` (unix ms): by the last check until then, or by the first one after it where there was none.
pub(super) fn sg_as_of(conn: &Connection, bucket: Uuid, at: Option<i64>) -> Result<(SgReading, Option<i64>)> {
    let Some(at) = at else { return latest_sg(conn, bucket) };
    let Some(check) = query::check_as_of(conn, bucket, at)? else { return latest_sg(conn, bucket) };
    Ok(usable(sg_of(&check))?.map_or((SgReading::unchecked(), None), |reading| (reading, Some(check.at))))
}

/// What a check found.
pub(super) fn sg_of(check: &entity::Check) -> Result<SgReading> {
    sg_reading(check.specific_gravity_e5, check.standard_uncertainty_e5)
}

/// An SG and its uncertainty from their scaled integers.
pub(super) fn sg_reading(hundred_thousandths: i64, uncertainty: i64) -> Result<SgReading> {
    let sg = SpecificGravity::from_hundred_thousandths(hundred_thousandths)?;
    Ok(SgReading::new(sg, uncertainty as f64 / 1e5)?)
}

/// The glaze's sensitivity; the usual one where only a newer version knows it.
pub(super) fn sensitivity(glaze: &entity::Glaze) -> Sensitivity {
    glaze.sensitivity.parse().unwrap_or(Sensitivity::Medium)
}

/// The verdict kept with a coat; one that only a newer version knows says nothing here.
pub(super) fn verdict_kind(coat: &entity::Coat) -> VerdictKind {
    coat.verdict.parse().unwrap_or(VerdictKind::CannotTell)
}

/// The control pieces that say how much this glaze takes in this zone, the newest first: its own, or for a side without any
/// those of dips over all.
pub(super) fn controls(conn: &Connection, glaze: &entity::Glaze, zone: ZoneKind, form: Uuid) -> Result<Vec<Control>> {
    let own = own_controls(conn, glaze, zone, form)?;
    if !own.is_empty() || zone == ZoneKind::Whole {
        return Ok(own);
    }
    let dips = own_controls(conn, glaze, ZoneKind::Whole, form)?;
    Ok(dips.into_iter().map(Control::of_one_side).collect())
}

/// The control pieces of this glaze and zone, the newest first: coats weighed here and amounts typed in.
pub(super) fn own_controls(
    conn: &Connection,
    glaze: &entity::Glaze,
    zone: ZoneKind,
    form: Uuid,
) -> Result<Vec<Control>> {
    let mut pieces = Pieces::new(conn);
    let known = query::control_pieces(conn, glaze.id, zone.code(), MOST_CONTROLS)?;
    let controls = known.into_iter().map(|known| pieces.control(&known, glaze, zone, form));
    Ok(controls.collect::<Result<Vec<_>>>()?.into_iter().flatten().collect())
}

/// The forms and scales that the control pieces share: each is read once, since Save waits for this.
pub(super) struct Pieces<'a> {
    conn: &'a Connection,
    forms: BTreeMap<Uuid, Option<KnownForm>>,
    scales: BTreeMap<Uuid, Grams>,
}

/// What is known of a form today.
struct KnownForm {
    name: String,
    shape: Form,
    body: Option<Uuid>,
}

impl<'a> Pieces<'a> {
    pub(super) fn new(conn: &'a Connection) -> Pieces<'a> {
        Pieces { conn, forms: BTreeMap::new(), scales: BTreeMap::new() }
    }

    /// A control piece by what is known today: the area that its form has now, or had then where it has the zone no more,
    /// and the density of the glaze's powder, so that a corrected figure counts for then as for now. `None` when the form is
    /// not known here, as when only some of a studio's events have arrived, or a figure cannot be.
    pub(super) fn control(
        &mut self,
        known: &ControlPiece,
        glaze: &entity::Glaze,
        zone: ZoneKind,
        form: Uuid,
    ) -> Result<Option<Control>> {
        // How sure an amount from memory is lies in the spread from pot to pot.
        let net_standard_uncertainty =
            known.scale.map_or(Ok(Grams::ZERO), |scale| self.net_standard_uncertainty(scale))?;
        let wet = Grams::from_milligrams(known.net_mg);
        let solids = solids_then(known.specific_gravity_e5, known.sg_uncertainty_e5, glaze);
        let Some(solids) = usable(solids)?.filter(|_| wet.is_positive()) else { return Ok(None) };
        let (solids, net_standard_uncertainty) = match known.dry {
            Some(dry) => weighed_dry(solids, wet, net_standard_uncertainty, dry, glaze),
            None => (solids, net_standard_uncertainty),
        };
        let Some(KnownForm { name, shape, .. }) = self.form(known.form)? else { return Ok(None) };
        let (area, area_relative_uncertainty) = area_now(Some(shape), zone, known.area_mm2);
        if !area.is_positive() {
            return Ok(None);
        }
        Ok(Some(Control {
            wet,
            solids,
            area,
            area_relative_uncertainty,
            class: shape.class,
            capacity: shape.capacity_to_grow_by(),
            form_name: name.clone(),
            same_form: known.form == form,
            net_standard_uncertainty,
        }))
    }

    /// The laydown of a coat by what is known today, as of a control piece; `None` where a figure cannot be.
    pub(super) fn laydown(
        &mut self,
        coat: &WeighedCoat,
        glaze: &entity::Glaze,
        zone: ZoneKind,
    ) -> Result<Option<Laydown>> {
        let wet = Grams::from_milligrams(coat.net_mg);
        let solids = usable(solids_then(coat.specific_gravity_e5, coat.sg_uncertainty_e5, glaze))?;
        let solids = match (solids, coat.dry) {
            (Some(solids), Some(dry)) => {
                let net_standard_uncertainty = self.net_standard_uncertainty(coat.scale)?;
                Some(weighed_dry(solids, wet, net_standard_uncertainty, dry, glaze).0)
            }
            (solids, _) => solids,
        };
        let shape = self.form(coat.form)?.map(|form| &form.shape);
        let (area, _) = area_now(shape, zone, coat.area_mm2);
        let laydown = solids.map(|solids| Laydown::of(solids.dry(wet), area));
        Ok(laydown.filter(|laydown| laydown.is_positive()))
    }

    /// The clay of a form, where known.
    pub(super) fn body(&mut self, form: Uuid) -> Result<Option<Uuid>> {
        Ok(self.form(form)?.and_then(|form| form.body))
    }

    fn form(&mut self, id: Uuid) -> Result<Option<&KnownForm>> {
        let known = match self.forms.entry(id) {
            Entry::Occupied(known) => known.into_mut(),
            Entry::Vacant(new) => {
                let known = match entity::Form::load(self.conn, id)? {
                    Some(form) => usable(shape(self.conn, &form))?.map(|shape| KnownForm {
                        name: form.name,
                        shape,
                        body: form.body,
                    }),
                    None => None,
                };
                new.insert(known)
            }
        };
        Ok(known.as_ref())
    }

    fn net_standard_uncertainty(&mut self, scale: Uuid) -> Result<Grams> {
        match self.scales.entry(scale) {
            Entry::Occupied(known) => Ok(*known.get()),
            Entry::Vacant(new) => {
                let scale = entity::Scale::load(self.conn, scale)?;
                let scale = scale.map(|scale| usable(scale_of(&scale))).transpose()?.flatten();
                Ok(*new.insert(scale.map_or(Grams::ZERO, |scale| scale.net_standard_uncertainty())))
            }
        }
    }
}

/// What the laydown of an earlier coat is calculated from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct WeighedCoat {
    pub(super) form: Uuid,
    /// Wet weight, mg.
    pub(super) net_mg: i64,
    /// Specific gravity of the bucket then, hundred-thousandths.
    pub(super) specific_gravity_e5: i64,
    /// Standard uncertainty of that, hundred-thousandths.
    pub(super) sg_uncertainty_e5: i64,
    /// Area as it was taken to be then, mm2.
    pub(super) area_mm2: i64,
    /// The scale.
    pub(super) scale: Uuid,
    /// Its dry glaze, from the piece weighed again bone dry.
    pub(super) dry: Option<WeighedDry>,
}

impl From<&entity::Coat> for WeighedCoat {
    fn from(coat: &entity::Coat) -> WeighedCoat {
        WeighedCoat {
            form: coat.form,
            net_mg: coat.net_mg,
            specific_gravity_e5: coat.specific_gravity_e5,
            sg_uncertainty_e5: coat.sg_uncertainty_e5,
            area_mm2: coat.area_mm2,
            scale: coat.scale,
            dry: WeighedDry::of(coat.dry_mg, coat.dry_uncertainty_mg),
        }
    }
}

/// Dry glaze per gram of a coat by its SG and by its dry weight together, and what is left of the wet weight's own uncertainty: it
/// is in the whole. The SG's alone where the dry weight cannot be that of this coat, as after the coat was corrected.
fn weighed_dry(
    solids: Solids,
    wet: Grams,
    net_standard_uncertainty: Grams,
    dry: WeighedDry,
    glaze: &entity::Glaze,
) -> (Solids, Grams) {
    let weighed = DryGlaze {
        dry: Grams::from_milligrams(dry.dry_mg),
        standard_uncertainty: Grams::from_milligrams(dry.uncertainty_mg),
    };
    let relative = solids.relative_uncertainty.hypot(net_standard_uncertainty / wet);
    let by_sg = DryGlaze { dry: solids.dry(wet), standard_uncertainty: solids.dry(wet) * relative };
    if !weighed.dry.is_positive() || weighed.dry >= wet {
        return (solids, net_standard_uncertainty);
    }
    let both = DryGlaze::combined(weighed, by_sg, powder_density(glaze));
    match SolidsFraction::new(both.dry / wet) {
        Ok(fraction) => (Solids { fraction, relative_uncertainty: both.relative_uncertainty() }, Grams::ZERO),
        Err(_) => (solids, net_standard_uncertainty),
    }
}

/// The area of a zone as its form has it now, and one standard uncertainty as a fraction of it; where the form has it no
/// more the area of then, as unsure as the roughest way of knowing one.
fn area_now(shape: Option<&Form>, zone: ZoneKind, then_mm2: i64) -> (SquareCentimetres, f64) {
    shape
        .and_then(|shape| shape.zone(zone))
        .map_or((SquareCentimetres::from_square_millimetres(then_mm2), AREA_FROM_CAPACITY), |zone| {
            (zone.area, zone.relative_uncertainty)
        })
}

/// Dry glaze per gram of the bucket when an earlier coat was weighed, by the powder's density as it is known today.
fn solids_then(specific_gravity_e5: i64, uncertainty_e5: i64, glaze: &entity::Glaze) -> Result<Solids> {
    Ok(Solids::of(sg_reading(specific_gravity_e5, uncertainty_e5)?, powder_density(glaze))?)
}

/// The glaze's test tiles that say how thick its pots should be: fired, come out right, and not too thin for that.
pub(super) fn tiles(conn: &Connection, glaze: &entity::Glaze) -> Result<Vec<TileEvidence>> {
    let tiles = query::tiles(conn, glaze.id, TileResult::Right.code(), MOST_CONTROLS)?;
    let evidence = tiles.iter().map(|tile| teaching_tile(tile, glaze)).collect::<Result<Vec<_>>>()?;
    Ok(evidence.into_iter().flatten().collect())
}

/// What a tile says of pots; `None` while it says nothing.
pub(super) fn teaching_tile(tile: &entity::Tile, glaze: &entity::Glaze) -> Result<Option<TileEvidence>> {
    let starting = Laydown::from_milligrams_per_dm2(glaze.starting_laydown_mg_dm2);
    let evidence = usable(tile_evidence(tile, glaze))?.flatten();
    Ok(evidence.filter(|found| tile::teaches(tile_result(tile), found.laydown, starting)))
}

/// How a tile came out; one that nobody was asked about counts as not fired.
pub(super) fn tile_result(tile: &entity::Tile) -> TileResult {
    tile.came_out.as_deref().and_then(|code| code.parse().ok()).unwrap_or(TileResult::NotFired)
}

/// A tile's laydown, from its dry weight if there is one, else from its wet weight and SG.
pub(super) fn tile_evidence(tile: &entity::Tile, glaze: &entity::Glaze) -> Result<Option<TileEvidence>> {
    let area = SquareCentimetres::from_square_millimetres(tile.area_mm2);
    let evidence = match (tile.dry_mg, tile.net_mg, tile.specific_gravity_e5) {
        (Some(dry), ..) => tile::tile_from_dry(area, Grams::from_milligrams(dry)),
        (None, Some(net), Some(sg)) => {
            let reading = SgReading::checked(SpecificGravity::from_hundred_thousandths(sg)?);
            let solids = Solids::of(reading, powder_density(glaze))?;
            tile::tile(area, Grams::from_milligrams(net), &solids)
        }
        _ => return Ok(None),
    };
    evidence.map(Some).map_err(|error| StudioError::refused("area", error.sentence()))
}

/// A check of a bucket as it is kept.
pub(super) fn check(id: Uuid, bucket: Uuid, at: i64, reading: SgReading, how: &str) -> entity::Check {
    entity::Check {
        id,
        bucket,
        at,
        specific_gravity_e5: reading.sg.hundred_thousandths(),
        standard_uncertainty_e5: uncertainty_e5(reading),
        how: how.to_owned(),
        ..entity::Check::default()
    }
}

/// The uncertainty of an SG as it is stored, in hundred-thousandths.
pub(super) fn uncertainty_e5(reading: SgReading) -> i64 {
    (reading.standard_uncertainty * 1e5).round() as i64
}

/// The finest step among the scales in use: the one a potter takes to the bucket. A gram if there is none.
pub(super) fn finest_step(conn: &Connection) -> Result<Grams> {
    let steps = in_use::<entity::Scale>(conn, None)?.into_iter().map(|scale| scale.step_mg).min();
    Ok(steps.map_or(Grams::new(1.0), Grams::from_milligrams))
}

/// The step of the scale a coat was weighed on, so that its weight is shown as it was read.
pub(super) fn step_of(conn: &Connection, coat: &entity::Coat) -> Result<Grams> {
    let scale = entity::Scale::load(conn, coat.scale)?;
    Ok(scale.map_or(Grams::new(0.1), |scale| Grams::from_milligrams(scale.step_mg)))
}
