//! What taking a sheet in would do: which readings it would keep, which lines it cannot, and why.
//!
//! Two pure steps with one look into the studio between them: [`read`](super::read::read) makes readings of the lines,
//! [`Here::find`] looks which of them are here already, [`plan`] judges the rest. The dry run and the deed both go this way.

use std::collections::HashMap;

use uuid::Uuid;

use super::existing_coats::Here;
use super::read::{Aim, PieceName, Read, Reading, RowErrors, Terms};
use super::results::Fired;
use super::studio_snapshot::Ground;
use crate::evidence::uncertainty_e5;
use crate::in_words::{Sentence, reading_refused};
use crate::messages::import as say;
use laydown_domain::coat::Solids;
use laydown_domain::coat::target::{Control, Job, Source, Target, target};
use laydown_domain::coat::verdict::{Reading as Weighed, judge};
use laydown_domain::form::{Form, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{Grams, Laydown};
use laydown_store::{entity, query};

/// A piece of the sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Piece {
    /// One that is here, or that the sheet names by its id.
    Named(Uuid),
    /// A new one, first weighed then, unix ms.
    New(i64),
}

/// A coat that would be kept.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Planned {
    /// The line it stands on.
    pub(super) line: u64,
    /// Places in the ground, and among the plan's pieces.
    pub(super) form: usize,
    pub(super) glaze: usize,
    pub(super) bucket: usize,
    pub(super) piece: usize,
    /// The coat, but for what was not made yet: its own id, its piece's, its glaze's and its bucket's.
    pub(super) coat: entity::Coat,
    /// How it came out of the kiln.
    pub(super) fired: Option<Fired>,
}

/// What taking a sheet in would do.
pub(super) struct Plan {
    pub(super) ground: Ground,
    pub(super) terms: Terms,
    /// The coats that would be kept, in the order of time.
    pub(super) coats: Vec<Planned>,
    pub(super) pieces: Vec<Piece>,
    pub(super) row_errors: RowErrors,
    /// How many lines are here already.
    pub(super) already: usize,
    /// How many coats have no SG, so that one was assumed.
    pub(super) assumed: usize,
}

/// A piece while its coats come together.
struct Group {
    piece: usize,
    form: usize,
    first_at: i64,
    zones: Vec<ZoneKind>,
    is_coded: bool,
}

/// Judges what is not here yet, in the order of time and as it would have been judged that day.
pub(super) fn plan(read: Read, mut here: Here) -> Plan {
    let Read { mut ground, terms, mut readings, mut row_errors } = read;
    readings.sort_by_key(|reading| (reading.at, reading.line));
    let mut groups: HashMap<PieceName, Group> = HashMap::new();
    let mut pieces = Vec::new();
    let mut already = 0;
    // Those known again to the second go first, lest one an hour later takes another's place.
    for exact in [true, false] {
        readings.retain(|reading| {
            let shifts = if exact { &[0][..] } else { reading.shifts() };
            let Some(piece) = shifts.iter().find_map(|shift| here.take(&reading.key(*shift))) else { return true };
            already += 1;
            if let Some(name) = &reading.piece {
                let group = groups.entry(name.clone()).or_insert_with(|| {
                    pieces.push(Piece::Named(piece));
                    Group {
                        piece: pieces.len() - 1,
                        form: reading.form,
                        first_at: reading.at,
                        zones: Vec::new(),
                        is_coded: true,
                    }
                });
                group.zones.push(reading.zone);
            }
            false
        });
    }
    let mut coats = Vec::new();
    let mut assumed = 0;
    for reading in readings {
        let line = reading.line;
        if let Some(sentence) = code_is_taken(&reading, &groups, &here) {
            row_errors.add(line, sentence);
            continue;
        }
        let judged = match judged(&reading, &ground, terms.scale) {
            Ok(judged) => judged,
            Err(sentence) => {
                row_errors.add(line, sentence);
                continue;
            }
        };
        let (piece, bears_code) = piece_of(&reading, &mut groups, &mut pieces, &here);
        assumed += usize::from(judged.is_assumed);
        if let Some(control) = judged.control {
            ground.add_control(reading.glaze, reading.zone, reading.form, reading.at, control);
        }
        let coat = entity::Coat {
            code: reading.code.filter(|_| bears_code),
            control: reading.control,
            note: reading.note,
            ..judged.coat
        };
        let Reading { form, glaze, bucket, fired, .. } = reading;
        coats.push(Planned { line, form, glaze, bucket, piece, coat, fired });
    }
    Plan { ground, terms, coats, pieces, row_errors, already, assumed }
}

/// Why a coat cannot be on the piece whose code it bears.
fn code_is_taken(reading: &Reading, groups: &HashMap<PieceName, Group>, here: &Here) -> Option<String> {
    let name = reading.piece.as_ref().filter(|name| matches!(name, PieceName::Code(_)))?;
    let code = reading.code.as_ref()?;
    let of_editor = groups.get(name).map(|group| (group.form, &group.zones));
    let of_studio = here.codes.get(code).map(|borne| (borne.form, &borne.zones));
    let is_taken = |(form, zones): (usize, &Vec<ZoneKind>)| form != reading.form || zones.contains(&reading.zone);
    of_editor.into_iter().chain(of_studio).any(is_taken).then(|| say::code_taken(code))
}

/// The place of the reading's piece, and whether this coat is the one that bears its code.
fn piece_of(
    reading: &Reading,
    groups: &mut HashMap<PieceName, Group>,
    pieces: &mut Vec<Piece>,
    here: &Here,
) -> (usize, bool) {
    let mut add = |piece: Piece| {
        pieces.push(piece);
        pieces.len() - 1
    };
    let Some(name) = &reading.piece else { return (add(Piece::New(reading.at)), true) };
    if let Some(group) = groups.get_mut(name) {
        let is_the_same = match name {
            PieceName::Id(_) | PieceName::Code(_) => true,
            PieceName::Label(_) => {
                group.form == reading.form
                    && !group.zones.contains(&reading.zone)
                    && (reading.at - group.first_at).abs() <= query::LONGEST_ON_THE_SHELF_MS
            }
        };
        if is_the_same {
            group.zones.push(reading.zone);
            let bears_code = !group.is_coded;
            group.is_coded |= reading.code.is_some();
            return (group.piece, bears_code);
        }
    }
    let borne = reading.code.as_ref().and_then(|code| here.codes.get(code)).map(|borne| borne.piece);
    let named = match name {
        PieceName::Id(id) => Some(*id),
        PieceName::Code(_) => borne,
        PieceName::Label(_) => None,
    };
    let piece = named.map_or(Piece::New(reading.at), Piece::Named);
    let is_coded = reading.code.is_some();
    let group =
        Group { piece: add(piece), form: reading.form, first_at: reading.at, zones: vec![reading.zone], is_coded };
    let place = group.piece;
    groups.insert(name.clone(), group);
    // The piece may bear its code on a coat that is here.
    (place, named.is_none() || named != borne)
}

/// A reading with its target and its verdict.
struct Judged {
    coat: entity::Coat,
    control: Option<Control>,
    is_assumed: bool,
}

fn judged(reading: &Reading, ground: &Ground, scale: usize) -> Result<Judged, String> {
    let form = &ground.forms[reading.form];
    let glaze = &ground.glazes[reading.glaze];
    let shape: &Form = form.shape.as_ref().map_err(Clone::clone)?;
    let zone = shape.zone(reading.zone).ok_or_else(|| say::no_area(reading.zone.code(), &form.row.name))?;
    let (scale_row, scale) = ground.scales.get(scale).ok_or_else(say::no_scale)?;
    let (sg, is_assumed) = match (reading.sg, ground.sg(reading.bucket, reading.at)) {
        (Some(sg), _) => (SgReading::checked(sg), false),
        (None, Some(known)) => (known, false),
        (None, None) => (SgReading::unchecked(), true),
    };
    let solids = Solids::of(sg, glaze.powder).map_err(|error| error.sentence())?;
    let job = Job {
        form_name: form.row.name.clone(),
        zone: *zone,
        capacity: shape.capacity_to_grow_by(),
        class: shape.class,
        solids,
        sensitivity: glaze.sensitivity,
    };
    let aim = match &reading.aim {
        Some(aim) => as_told(aim, &job),
        None => {
            let evidence = ground.evidence(reading.glaze, reading.zone, reading.form, reading.at);
            target(&job, &evidence).map_err(|error| error.sentence())?
        }
    };
    let verdict =
        judge(&reading.weighed, &aim, scale, &job, None).map_err(|refused| reading_refused(&refused, &ground.style))?;
    let kind = reading.aim.and_then(|aim| aim.verdict).unwrap_or(verdict.kind);
    let (bare, glazed) = match reading.weighed {
        Weighed::Net(_) => (None, None),
        Weighed::TwoWeights { bare, glazed } => (Some(bare), Some(glazed)),
    };
    let coat = entity::Coat {
        form: form.row.id,
        zone: reading.zone.code().to_owned(),
        scale: scale_row.id,
        at: reading.at,
        bare_mg: bare.map(Grams::milligrams),
        glazed_mg: glazed.map(Grams::milligrams),
        net_mg: verdict.net.milligrams(),
        specific_gravity_e5: sg.sg.hundred_thousandths(),
        sg_uncertainty_e5: uncertainty_e5(sg),
        powder_density_e3: glaze.row.powder_density_e3,
        area_mm2: zone.area.square_millimetres(),
        aim_mg: aim.wet.milligrams(),
        low_mg: aim.low.milligrams(),
        high_mg: aim.high.milligrams(),
        source: aim.source.code().to_owned(),
        verdict: kind.code().to_owned(),
        laydown_mg_dm2: verdict.laydown.milligrams_per_dm2(),
        ..entity::Coat::default()
    };
    let control = reading.control.then(|| Control {
        wet: verdict.net,
        solids,
        area: zone.area,
        area_relative_uncertainty: zone.relative_uncertainty,
        class: shape.class,
        capacity: shape.capacity_to_grow_by(),
        form_name: form.row.name.clone(),
        same_form: true,
        net_standard_uncertainty: scale.net_standard_uncertainty(),
    });
    Ok(Judged { coat, control, is_assumed })
}

/// The sheet's aim as a target.
fn as_told(aim: &Aim, job: &Job) -> Target {
    let tolerance = job.sensitivity.tolerance();
    let (low, high) = aim.span.unwrap_or((aim.wet * (1.0 - tolerance), aim.wet * (1.0 + tolerance)));
    let dry = job.solids.dry(aim.wet);
    Target {
        wet: aim.wet,
        low,
        high,
        interval: (aim.wet, aim.wet),
        dry,
        laydown: Laydown::of(dry, job.zone.area),
        source: Source::Imported,
        pots: 0,
        tolerance,
    }
}
