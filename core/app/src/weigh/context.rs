//! Everything one weighing rests on, read from the studio: what lies on the bench beside the scale.

use rusqlite::Connection;
use uuid::Uuid;

use super::pooled::Known;
use super::question::question;
use super::remembered::bucket_of;
use super::{Field, NextCoat, Question, WeighEntry, WeighMode, last_field};
use crate::archive::{Archivable, found, in_use};
use crate::buckets::is_old;
use crate::evidence::{
    MOST_CONTROLS, controls, own_controls, powder_density, scale_of, sensitivity, sg_as_of, tiles, uncertainty_e5,
    usable,
};
use crate::form_geometry::{shape, zone_cautions};
use crate::in_words::{self, Sentence};
use crate::messages::{buckets, editor_coat, weigh as say};
use crate::{Note, Now, Result, StudioError};
use laydown_domain::coat::Solids;
use laydown_domain::coat::scale::{Scale, ScaleAdvice};
use laydown_domain::coat::target::{Control, Evidence, Job, Source, Target, of_both_sides, target};
use laydown_domain::coat::trust::Trust;
use laydown_domain::coat::verdict::{Reading, Verdict};
use laydown_domain::form::{Form, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::learning::dip_time::is_dip;
use laydown_domain::units::{Grams, Laydown, PowderDensity, Seconds, Style, parse};
use laydown_store::{entity, query};

/// What lies on the bench.
pub(super) struct WeighContext {
    pub(super) entry: WeighEntry,
    pub(super) style: Style,
    pub(super) form: entity::Form,
    pub(super) glaze: entity::Glaze,
    pub(super) bucket: entity::Bucket,
    pub(super) scale_row: entity::Scale,
    pub(super) scale: Scale,
    pub(super) zones: Vec<ZoneKind>,
    pub(super) job: Job,
    pub(super) sg: SgReading,
    pub(super) checked_at: Option<i64>,
    /// Whether water or powder went in or out since then.
    pub(super) is_changed: bool,
    pub(super) evidence: Evidence,
    sides: Vec<(Job, Evidence)>,
    tiles_not_asked: u32,
    came_out_right: usize,
    pub(super) known: Known,
    zone_cautions: Vec<String>,
}

impl WeighContext {
    /// Reads what `entry` names and fills what it leaves open; `None` while the studio lacks a form, a bucket or a scale.
    pub(super) fn load(conn: &Connection, style: Style, entry: &WeighEntry) -> Result<Option<WeighContext>> {
        WeighContext::load_as_of(conn, style, entry, None)
    }

    /// The same with the bucket as it was at `at` (unix ms); as it is now where that is not given.
    pub(super) fn load_as_of(
        conn: &Connection,
        style: Style,
        entry: &WeighEntry,
        at: Option<i64>,
    ) -> Result<Option<WeighContext>> {
        let (Some(form), Some(bucket), Some(scale)) = (
            pick::<entity::Form>(conn, &entry.form)?,
            pick::<entity::Bucket>(conn, &bucket_of(conn, entry)?)?,
            pick::<entity::Scale>(conn, &entry.scale)?,
        ) else {
            return Ok(None);
        };
        let glaze: entity::Glaze = found(conn, bucket.glaze)?;
        let shape = shape(conn, &form)?;
        let zones: Vec<ZoneKind> = shape.zones.iter().map(|zone| zone.kind).collect();
        let Some(zone) = entry.zone.and_then(|kind| shape.zone(kind)).or_else(|| shape.zones.first()) else {
            return Err(StudioError::refused("form", say::no_area_to_glaze(&form.name)));
        };
        let way = entry.way.unwrap_or_default();
        let field = match (way, entry.field) {
            (_, Field::Seconds) => Field::Seconds,
            (WeighMode::TwoWeights, Field::Net) => Field::Bare,
            (WeighMode::Net, _) => Field::Net,
            (_, field) => field,
        };
        let (sg, checked_at) = sg_as_of(conn, bucket.id, at)?;
        let job = Job {
            form_name: form.name.clone(),
            zone: *zone,
            capacity: shape.capacity_to_grow_by(),
            class: shape.class,
            solids: Solids::of(sg, powder_density(&glaze))?,
            sensitivity: sensitivity(&glaze),
        };
        let zone_cautions = zone_cautions(&shape, &form, zone.kind, &style);
        let evidence = Evidence {
            controls: controls(conn, &glaze, zone.kind, form.id)?,
            tiles: tiles(conn, &glaze)?,
            starting: Laydown::from_milligrams_per_dm2(glaze.starting_laydown_mg_dm2),
        };
        let sides = sides(conn, &glaze, form.id, &shape, &job, &evidence)?;
        let tiles_not_asked = if evidence.controls.is_empty() && evidence.tiles.is_empty() {
            query::tiles_not_asked(conn, glaze.id)?
        } else {
            0
        };
        let came_out_right = if evidence.controls.is_empty() {
            0
        } else {
            query::controls_came_out_right(conn, bucket.glaze, zone.kind.code(), MOST_CONTROLS)?
        };
        let entry = WeighEntry {
            form: form.id.to_string(),
            bucket: bucket.id.to_string(),
            zone: Some(zone.kind),
            scale: scale.id.to_string(),
            way: Some(way),
            field,
            ..entry.clone()
        };
        Ok(Some(WeighContext {
            entry,
            style,
            form,
            glaze,
            bucket,
            scale: scale_of(&scale)?,
            scale_row: scale,
            zones,
            job,
            sg,
            checked_at,
            is_changed: false,
            evidence,
            sides,
            tiles_not_asked,
            came_out_right: came_out_right as usize,
            known: Known::default(),
            zone_cautions,
        }))
    }

    /// What was shown is what is kept: nothing that has gone since is replaced behind the potter's back.
    pub(super) fn is_what_was_shown(&self, entry: &WeighEntry) -> Result<()> {
        let ids = [
            (&entry.form, &self.entry.form, entity::Form::WHAT),
            (&entry.bucket, &self.entry.bucket, entity::Bucket::WHAT),
            (&entry.scale, &self.entry.scale, entity::Scale::WHAT),
        ];
        if let Some((.., what)) = ids.into_iter().find(|(shown, found, _)| !shown.is_empty() && shown != found) {
            return Err(StudioError::missing(what));
        }
        match entry.zone {
            Some(zone) if zone != self.zone() => Err(StudioError::missing("zone")),
            _ => Ok(()),
        }
    }

    pub(super) fn zone(&self) -> ZoneKind {
        self.job.zone.kind
    }

    pub(super) fn mass(&self, grams: Grams) -> String {
        self.style.mass(grams, self.scale.step)
    }

    pub(super) fn target(&self) -> Result<Target> {
        self.chosen_target().map_or_else(|| self.best_target(), Ok)
    }

    /// The target by the best single kind of evidence.
    pub(super) fn best_target(&self) -> Result<Target> {
        // One dip that no control piece is known of takes what its sides take.
        match self.both_sides()? {
            Some(both) if self.evidence.controls.is_empty() => Ok(both),
            _ => target_of(&self.job, &self.evidence),
        }
    }

    /// What both sides take by their own control pieces; `None` where neither side has any.
    fn both_sides(&self) -> Result<Option<Target>> {
        let [(inside, known_inside), (outside, known_outside)] = self.sides.as_slice() else { return Ok(None) };
        let targets = (target_of(inside, known_inside)?, target_of(outside, known_outside)?);
        Ok(Some(of_both_sides(&self.job, [(&targets.0, inside.zone.area), (&targets.1, outside.zone.area)])))
    }

    /// Where control pieces of one dip and of its sides disagree by more than the glaze allows.
    fn sides_differ(&self, target: &Target) -> Option<String> {
        if matches!(target.source, Source::Pooled { .. } | Source::Kept) {
            return None;
        }
        let both = self.both_sides().ok().flatten().filter(|_| !self.evidence.controls.is_empty())?;
        let off = (both.wet / target.wet - 1.0).abs();
        (off > target.tolerance).then(|| say::sides_differ(self.mass(both.wet), self.mass(target.wet)))
    }

    /// The reading as typed, and the weights to keep with it.
    pub(super) fn reading(&self) -> Result<(Reading, Typed)> {
        let mass = |field: Field, text: &str| {
            parse::mass(text, &self.style).map_err(|error| StudioError::refused(field.key(), error.sentence()))
        };
        match self.entry.way.unwrap_or_default() {
            WeighMode::Net => {
                let net = mass(Field::Net, &self.entry.net)?;
                Ok((Reading::Net(net), Typed { bare: None, glazed: None }))
            }
            WeighMode::TwoWeights => {
                let bare = mass(Field::Bare, &self.entry.bare)?;
                let glazed = mass(Field::Glazed, &self.entry.glazed)?;
                Ok((Reading::TwoWeights { bare, glazed }, Typed { bare: Some(bare), glazed: Some(glazed) }))
            }
        }
    }

    /// How long it was dipped or poured over, where that is typed.
    pub(super) fn seconds(&self) -> Result<Option<Seconds>> {
        if self.entry.seconds.trim().is_empty() {
            return Ok(None);
        }
        let refused = |sentence| StudioError::refused(Field::Seconds.key(), sentence);
        let time = parse::seconds(&self.entry.seconds, &self.style).map_err(|error| refused(error.sentence()))?;
        if is_dip(time) { Ok(Some(time)) } else { Err(refused(editor_coat::dip_impossible())) }
    }

    /// How far the target can be trusted.
    pub(super) fn trust(&self, target: &Target) -> Trust {
        // A check that has faded, or a bucket that was changed by nobody knows how much, is as good as none.
        let is_checked = self.checked_at.is_some() && self.sg.standard_uncertainty < SgReading::UNCHECKED;
        let of = |target: &Target, job: &Job| Trust::of(target, job, is_checked, self.came_out_right);
        // A side without a control piece of its own is a guess, and so is the whole.
        if target.source == Source::Sides
            && let [(inside, known_inside), (outside, known_outside)] = self.sides.as_slice()
            && let (Ok(one), Ok(other)) = (target_of(inside, known_inside), target_of(outside, known_outside))
        {
            return of(&one, inside).and(of(&other, outside));
        }
        of(target, &self.job)
    }

    /// What is said of the reading as typed: its verdict, or a question where it is probably a slip.
    pub(super) fn answer(&self, conn: &Connection, target: &Target) -> Result<Answer> {
        let (reading, typed) = self.reading()?;
        let judged = self.judged(&reading, target);
        if let Some(question) = question(conn, self, &reading, target, &judged)? {
            return Ok(Answer::Question(question));
        }
        match judged {
            Ok(verdict) => Ok(Answer::Verdict(verdict.on_a_guess(target, &self.trust(target)), typed)),
            Err(refused) => {
                let field = last_field(self.entry.way.unwrap_or_default());
                Err(StudioError::refused(field.key(), in_words::reading_refused(&refused, &self.style)))
            }
        }
    }

    pub(super) fn coat(
        &self,
        id: Uuid,
        now: Now,
        piece: Uuid,
        typed: Typed,
        target: &Target,
        verdict: &Verdict,
    ) -> entity::Coat {
        entity::Coat {
            id,
            piece,
            form: self.form.id,
            bucket: self.bucket.id,
            glaze: self.bucket.glaze,
            zone: self.zone().code().to_owned(),
            scale: self.scale_row.id,
            at: now.unix_ms,
            bare_mg: typed.bare.map(Grams::milligrams),
            glazed_mg: typed.glazed.map(Grams::milligrams),
            net_mg: verdict.net.milligrams(),
            specific_gravity_e5: self.sg.sg.hundred_thousandths(),
            sg_uncertainty_e5: uncertainty_e5(self.sg),
            powder_density_e3: self.glaze.powder_density_e3,
            area_mm2: self.job.zone.area.square_millimetres(),
            aim_mg: target.wet.milligrams(),
            // What was said at the time: for a guess, all that was plausible.
            low_mg: verdict.low.milligrams(),
            high_mg: verdict.high.milligrams(),
            source: target.source.code().to_owned(),
            verdict: verdict.kind.code().to_owned(),
            laydown_mg_dm2: verdict.laydown.milligrams_per_dm2(),
            control: false,
            note: None,
            code: None,
            confirmed: self.entry.is_confirmed(),
            added_mg: None,
            rubbed_off_mg: None,
            hand: None,
            dry_mg: None,
            dry_uncertainty_mg: None,
            dip_ms: None,
        }
    }

    /// The entry for the piece after this one. After a second coat it begins where the piece before it began.
    pub(super) fn next_piece(&self) -> WeighEntry {
        let begun = if self.entry.piece.is_empty() { None } else { other_side(self.zone()) };
        WeighEntry { zone: Some(begun.unwrap_or(self.zone())), ..self.entry.clone().cleared() }
    }

    /// The other zones of the same piece, offered once this coat is kept.
    pub(super) fn next_coats(&self, piece: Uuid) -> Vec<NextCoat> {
        let (other, label) = match self.zone() {
            ZoneKind::Inside => (ZoneKind::Outside, say::next_outside()),
            ZoneKind::Outside => (ZoneKind::Inside, say::next_inside()),
            ZoneKind::Whole => return Vec::new(),
        };
        if !self.entry.piece.is_empty() || !self.zones.contains(&other) {
            return Vec::new();
        }
        vec![NextCoat {
            label,
            entry: WeighEntry { piece: piece.to_string(), zone: Some(other), ..self.entry.clone().cleared() },
        }]
    }

    pub(super) fn notes(&self, now: Now, target: &Target) -> Vec<Note> {
        let mut notes = Vec::new();
        match self.checked_at {
            None => {
                let assumed = self.style.specific_gravity(self.sg.sg);
                notes.push(Note::attention(say::no_sg_yet(&self.bucket.name, assumed)));
            }
            Some(at) if is_old(now, Some(at)) => notes.push(Note::attention(say::old_sg(now.days_ago(at)))),
            Some(_) => {}
        }
        if self.is_changed {
            notes.push(Note::attention(buckets::changed_since()));
        }
        if self.checked_at.is_some() {
            notes.extend(in_words::thin_glaze(self.sg.sg, &self.style).map(Note::attention));
        }
        if PowderDensity::from_thousandths(self.glaze.powder_density_e3).is_err() {
            let usual = self.style.number(f64::from(PowderDensity::default()), 1);
            notes.push(Note::attention(say::impossible_density(&self.glaze.name, usual)));
        }
        if self.tiles_not_asked > 0 {
            notes.push(Note::attention(say::tiles_not_asked(self.tiles_not_asked)));
        }
        notes.extend(self.notes_on_evidence(target));
        notes.extend(self.sides_differ(target).map(Note::attention));
        notes.extend(self.zone_cautions.iter().map(Note::plain));
        let span = (target.low, target.high);
        let advice = self.scale.advice(None, target.wet, span);
        // By chances a coarse scale can say "probably".
        let is_by_chance = matches!(target.source, Source::Pooled { .. }) && advice != ScaleAdvice::OverCapacity;
        if advice != ScaleAdvice::Decides && !is_by_chance {
            let deciding = self.scale.what_decides(span);
            notes.push(Note::attention(in_words::scale_advice(&self.scale, advice, &deciding, target, &self.style)));
        }
        notes
    }
}

/// The wet glaze that a piece of `form` takes from a bucket, inside and outside together, by the best single evidence; `None` where it
/// cannot be said.
pub(crate) fn wet_per_piece(
    conn: &Connection,
    style: &Style,
    form: &entity::Form,
    bucket: Uuid,
) -> Result<Option<Grams>> {
    let entry = WeighEntry { form: form.id.to_string(), bucket: bucket.to_string(), ..WeighEntry::default() };
    let load =
        |zone| usable(WeighContext::load(conn, *style, &WeighEntry { zone, ..entry.clone() })).map(Option::flatten);
    let Some(first) = load(None)? else { return Ok(None) };
    let sides = [ZoneKind::Inside, ZoneKind::Outside];
    if !sides.iter().all(|side| first.zones.contains(side)) {
        return Ok(usable(first.best_target())?.map(|target| target.wet));
    }
    let mut wet = Grams::ZERO;
    for side in sides {
        let Some(context) = load(Some(side))? else { return Ok(None) };
        let Some(target) = usable(context.best_target())? else { return Ok(None) };
        wet = wet + target.wet;
    }
    Ok(Some(wet))
}

fn target_of(job: &Job, evidence: &Evidence) -> Result<Target> {
    target(job, evidence).map_err(|error| StudioError::refused("", error.sentence()))
}

/// The inside and the outside of a form, each with what is known of it, for one dip over both; none where neither side has a
/// control piece of its own.
fn sides(
    conn: &Connection,
    glaze: &entity::Glaze,
    form: Uuid,
    shape: &Form,
    dip: &Job,
    known: &Evidence,
) -> Result<Vec<(Job, Evidence)>> {
    if dip.zone.kind != ZoneKind::Whole {
        return Ok(Vec::new());
    }
    let mut sides = Vec::new();
    let mut is_known = false;
    for kind in [ZoneKind::Inside, ZoneKind::Outside] {
        let Some(zone) = shape.zone(kind) else { return Ok(Vec::new()) };
        let own = own_controls(conn, glaze, kind, form)?;
        is_known |= !own.is_empty();
        let controls = match own.is_empty() {
            true => known.controls.iter().cloned().map(Control::of_one_side).collect(),
            false => own,
        };
        sides.push((Job { zone: *zone, ..dip.clone() }, Evidence { controls, ..known.clone() }));
    }
    Ok(if is_known { sides } else { Vec::new() })
}

/// The side that a second coat goes onto.
fn other_side(zone: ZoneKind) -> Option<ZoneKind> {
    match zone {
        ZoneKind::Inside => Some(ZoneKind::Outside),
        ZoneKind::Outside => Some(ZoneKind::Inside),
        ZoneKind::Whole => None,
    }
}

/// What is said of a reading.
pub(super) enum Answer {
    /// Its verdict, and the weights to save with it.
    Verdict(Verdict, Typed),
    /// It is asked about first.
    Question(Question),
}

/// The weights typed in the two-weights way.
pub(super) struct Typed {
    bare: Option<Grams>,
    glazed: Option<Grams>,
}

/// The one named, or the one in use that was made first while none is named or the named one is archived.
fn pick<E: Archivable>(conn: &Connection, id: &str) -> Result<Option<E>> {
    let named = match id.parse() {
        Ok(id) => E::load(conn, id)?.filter(|entity| !entity.gone()),
        Err(_) => None,
    };
    match named {
        Some(entity) => Ok(Some(entity)),
        None => Ok(in_use(conn, None)?.into_iter().next()),
    }
}
