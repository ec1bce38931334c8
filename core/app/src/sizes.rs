//! The Sizes screen: one amount is known to be right on one form; what does every other form take, and why?

use rusqlite::Connection;
use uuid::Uuid;

use super::archive::{Archivable, found, in_use};
use super::evidence::{
    Pieces, bucket_in_use, bucket_today, code, finest_step, latest_sg, parse_id, powder_density, scale_of, sensitivity,
    sg_reading, style, usable,
};
use super::form_geometry::shape;
use super::in_words;
use super::lists::outline;
use super::messages::sizes as say;
use super::pooled::{Cache, Chosen, chosen};
use super::setup::known_amounts;
use super::{Now, Point, Result, Row, Studio, StudioError};
use laydown_domain::coat::Solids;
use laydown_domain::coat::target::{Control, Evidence, Job, carry_over, target};
use laydown_domain::form::ZoneKind;
use laydown_domain::learning::pooled::target_for;
use laydown_domain::units::{Laydown, SpecificGravity, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::query::ControlPiece;

/// What one form should take.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct SizeRow {
    /// The form's id.
    pub form: String,
    /// The form's name.
    pub title: String,
    /// The right half of its outline.
    pub outline: Vec<Point>,
    /// The wet weight to aim for.
    pub wet: String,
    /// What is accepted.
    pub span: String,
    /// Why it is that much.
    pub reason: String,
}

/// What every form should take, going by one amount that is known to be right.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct SizesView {
    /// The amounts to go by, one of them chosen.
    pub known: Vec<Row>,
    /// What stands above the list: the amount gone by and today's SG, or what to do while there is none.
    pub intro: String,
    /// The forms, the one gone by first.
    pub sizes: Vec<SizeRow>,
}

#[uniffi::export]
impl Studio {
    /// Every form's amount, going by the known one with the id `known`, or by the newest if it is empty or gone.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn sizes(&self, now: Now, known: &str) -> Result<SizesView> {
        self.store.read(|conn| {
            let style = style(conn)?;
            let mut rows = known_amounts(conn, now, &style)?;
            let place = rows.iter().position(|row| row.id == known).unwrap_or_default();
            let Some(row) = rows.get_mut(place) else {
                return Ok(SizesView { known: rows, intro: say::nothing_known(), sizes: Vec::new() });
            };
            row.chosen = true;
            let (intro, sizes) = match Known::load(conn, parse_id(&row.id, entity::Control::WHAT)?) {
                Ok(known) => (known.intro(&style), known.sizes(conn, now, &self.pooled, &style)?),
                // Another amount can still be gone by.
                Err(StudioError::Newer { sentence } | StudioError::Refused { sentence, .. }) => (sentence, Vec::new()),
                Err(error) => return Err(error),
            };
            Ok(SizesView { known: rows, intro, sizes })
        })
    }
}

/// An amount that is known to be right, and the bucket as it stands today.
struct Known {
    piece: ControlPiece,
    zone: ZoneKind,
    glaze: entity::Glaze,
    today: Solids,
    sg: SpecificGravity,
}

impl Known {
    fn load(conn: &Connection, id: Uuid) -> Result<Known> {
        let (piece, zone, glaze) = match entity::Coat::load(conn, id)? {
            Some(coat) => (ControlPiece::from(&coat), coat.zone, coat.glaze),
            None => {
                let control: entity::Control = found(conn, id)?;
                (ControlPiece::from(&control), control.zone, control.glaze)
            }
        };
        let glaze: entity::Glaze = found(conn, glaze)?;
        // Today's bucket is the one that Weigh uses; without one, the glaze is taken as it was then.
        let sg = match bucket_in_use(conn, glaze.id)? {
            Some(bucket) => latest_sg(conn, bucket.id)?.0,
            None => sg_reading(piece.specific_gravity_e5, piece.sg_uncertainty_e5)?,
        };
        let today = Solids::of(sg, powder_density(&glaze))?;
        Ok(Known { piece, zone: code(&zone)?, glaze, today, sg: sg.sg })
    }

    fn intro(&self, style: &Style) -> String {
        say::intro(&self.glaze.name, style.specific_gravity(self.sg))
    }

    /// The forms that have the zone: the one gone by first, the others in the order of their names.
    fn sizes(&self, conn: &Connection, now: Now, pooled: &Cache, style: &Style) -> Result<Vec<SizeRow>> {
        let step = finest_step(conn)?;
        let bucket = bucket_in_use(conn, self.glaze.id)?;
        let today = bucket.map(|bucket| bucket_today(conn, now, &self.glaze, bucket.id)).transpose()?.flatten();
        let scales = in_use::<entity::Scale>(conn, None)?;
        let scale = scales.iter().min_by_key(|scale| scale.step_mg).map(|scale| usable(scale_of(scale))).transpose()?;
        let mut forms = in_use::<entity::Form>(conn, Some(self.piece.form))?;
        forms.sort_by(|a, b| (a.id != self.piece.form, &a.name).cmp(&(b.id != self.piece.form, &b.name)));
        let mut pieces = Pieces::new(conn);
        let mut sizes = Vec::new();
        for form in forms {
            let Some(shape) = usable(shape(conn, &form))? else { continue };
            let (Some(zone), Some(control)) =
                (shape.zone(self.zone), pieces.control(&self.piece, &self.glaze, self.zone, form.id)?)
            else {
                continue;
            };
            let job = Job {
                form_name: form.name.clone(),
                zone: *zone,
                capacity: shape.capacity_to_grow_by(),
                class: shape.class,
                solids: self.today,
                sensitivity: sensitivity(&self.glaze),
            };
            // What Weigh says of it, where fired pots set the target.
            let by_pots = match (scale.flatten(), today) {
                (Some(scale), Some((_, solids))) if chosen(&self.glaze, form.id, self.zone) == Chosen::All => {
                    let job = Job { solids, ..job.clone() };
                    let learned = pooled.at(conn, now, &self.glaze, &form, &job)?;
                    learned.and_then(|learned| target_for(&learned.outlook, &job, &scale, learned.rests_on()))
                }
                _ => None,
            };
            let carried = reason(&control, &job, style);
            let evidence = Evidence {
                controls: vec![control],
                tiles: Vec::new(),
                starting: Laydown::from_milligrams_per_dm2(self.glaze.starting_laydown_mg_dm2),
            };
            let is_by_pots = by_pots.is_some();
            let Some(target) = by_pots.or_else(|| target(&job, &evidence).ok()) else { continue };
            let words = in_words::target(&target, style, step);
            sizes.push(SizeRow {
                form: form.id.to_string(),
                title: form.name,
                outline: outline(&shape),
                wet: words.aim,
                span: words.span,
                reason: if is_by_pots { words.source } else { carried },
            });
        }
        Ok(sizes)
    }
}

/// Why a form takes more or less than the one gone by.
fn reason(control: &Control, job: &Job, style: &Style) -> String {
    let carried = carry_over(control, job);
    let times = style.number(carried.area_ratio, 2);
    match (control.same_form, carried.by_capacity, control.capacity.zip(job.capacity)) {
        (true, ..) => say::the_form_gone_by(),
        (false, true, Some((theirs, ours))) => say::by_capacity(times, style.volume(ours), style.volume(theirs)),
        _ => say::by_area(times, style.area(job.zone.area), style.area(control.area)),
    }
}
