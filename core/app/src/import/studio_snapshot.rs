//! What a sheet's readings are matched with and judged by: all that the studio knows, read once, with the days on which
//! it came to know it.

use std::collections::{BTreeMap, HashMap};

use rusqlite::Connection;

use super::cells::plain;
use crate::archive::in_use;
use crate::evidence::{
    MOST_CONTROLS, Pieces, powder_density, scale_of, sensitivity, sg_of, style, teaching_tile, usable,
};
use crate::form_geometry::try_shape;
use crate::in_words::Sentence;
use crate::messages::import as say;
use crate::{Result, StudioError};
use laydown_domain::coat::scale::Scale;
use laydown_domain::coat::target::{Control, Evidence, STARTING_LAYDOWN, Sensitivity, TileEvidence};
use laydown_domain::coat::tile::TileResult;
use laydown_domain::form::{Form, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{Laydown, PowderDensity, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::query;

/// A form, in use or archived.
pub(super) struct KnownForm {
    pub(super) row: entity::Form,
    /// Its areas, or why it has none.
    pub(super) shape: Result<Form, String>,
}

/// A glaze, in use or archived, or one that the sheet would make.
pub(super) struct KnownGlaze {
    pub(super) row: entity::Glaze,
    pub(super) sensitivity: Sensitivity,
    pub(super) powder: PowderDensity,
    /// Tiles and when they were coated.
    tiles: Vec<(i64, TileEvidence)>,
    /// Control pieces of each zone, oldest first: when, the form's place, and the piece.
    controls: BTreeMap<ZoneKind, Vec<(i64, usize, Control)>>,
    pub(super) made: bool,
}

/// A bucket, in use or archived, or one that the sheet would make.
pub(super) struct KnownBucket {
    pub(super) row: entity::Bucket,
    /// Its glaze's place.
    pub(super) glaze: usize,
    /// Its checks, oldest first.
    checks: Vec<(i64, SgReading)>,
    pub(super) made: bool,
}

/// All of it. A form, a glaze or a bucket is meant by its place.
pub(super) struct Ground {
    pub(super) style: Style,
    pub(super) forms: Vec<KnownForm>,
    pub(super) glazes: Vec<KnownGlaze>,
    pub(super) buckets: Vec<KnownBucket>,
    /// Scales in use, the finest first.
    pub(super) scales: Vec<(entity::Scale, Scale)>,
    /// Kilns in use.
    pub(super) kilns: Vec<entity::Kiln>,
    form_names: HashMap<String, Option<usize>>,
    glaze_names: HashMap<String, Option<usize>>,
    bucket_names: HashMap<(usize, String), usize>,
    /// The first bucket in use of each glaze, and how many there are.
    in_use: HashMap<usize, (usize, usize)>,
}

impl Ground {
    pub(super) fn survey(conn: &Connection) -> Result<Ground> {
        let mut forms = Vec::new();
        for row in entity::Form::all(conn)? {
            let shape = match try_shape(conn, &row) {
                Ok(shape) => shape.map_err(|error| error.sentence()),
                Err(StudioError::Refused { sentence, .. } | StudioError::Newer { sentence }) => Err(sentence),
                Err(error) => return Err(error),
            };
            forms.push(KnownForm { row, shape });
        }
        let mut glazes = Vec::new();
        let mut pieces = Pieces::new(conn);
        for row in entity::Glaze::all(conn)? {
            let mut controls = BTreeMap::new();
            for zone in ZoneKind::ALL {
                let mut of_zone = Vec::new();
                for known in query::control_pieces(conn, row.id, zone.code(), u32::MAX)?.iter().rev() {
                    let form = forms.iter().position(|form| form.row.id == known.form);
                    if let (Some(form), Some(control)) = (form, pieces.control(known, &row, *zone, known.form)?) {
                        of_zone.push((known.at, form, control));
                    }
                }
                controls.insert(*zone, of_zone);
            }
            let mut tiles = Vec::new();
            for tile in query::tiles(conn, row.id, TileResult::Right.code(), u32::MAX)? {
                tiles.extend(teaching_tile(&tile, &row)?.map(|evidence| (tile.at, evidence)));
            }
            glazes.push(KnownGlaze {
                sensitivity: sensitivity(&row),
                powder: powder_density(&row),
                tiles,
                controls,
                made: false,
                row,
            });
        }
        let mut buckets = Vec::new();
        for row in entity::Bucket::all(conn)? {
            let Some(glaze) = glazes.iter().position(|glaze| glaze.row.id == row.glaze) else { continue };
            let mut checks = Vec::new();
            for check in query::checks(conn, row.id, u32::MAX)?.iter().rev() {
                checks.extend(usable(sg_of(check))?.map(|reading| (check.at, reading)));
            }
            buckets.push(KnownBucket { row, glaze, checks, made: false });
        }
        let mut scales = Vec::new();
        for row in in_use::<entity::Scale>(conn, None)? {
            scales.extend(usable(scale_of(&row))?.map(|scale| (row, scale)));
        }
        scales.sort_by_key(|(row, _)| row.step_mg);
        let kilns = in_use::<entity::Kiln>(conn, None)?;
        Ok(Ground { kilns, ..Ground::new(style(conn)?, forms, glazes, buckets, scales) })
    }

    pub(super) fn new(
        style: Style,
        forms: Vec<KnownForm>,
        glazes: Vec<KnownGlaze>,
        buckets: Vec<KnownBucket>,
        scales: Vec<(entity::Scale, Scale)>,
    ) -> Ground {
        let form_names = names(forms.iter().map(|form| (form.row.name.as_str(), form.row.gone)));
        let glaze_names = names(glazes.iter().map(|glaze| (glaze.row.name.as_str(), glaze.row.gone)));
        let mut bucket_names = HashMap::new();
        for gone in [false, true] {
            for (place, bucket) in buckets.iter().enumerate().filter(|(_, bucket)| bucket.row.gone == gone) {
                bucket_names.entry((bucket.glaze, plain(&bucket.row.name))).or_insert(place);
            }
        }
        let mut in_use = HashMap::new();
        for (place, bucket) in buckets.iter().enumerate().filter(|(_, bucket)| !bucket.row.gone) {
            in_use.entry(bucket.glaze).or_insert((place, 0)).1 += 1;
        }
        Ground {
            style,
            forms,
            glazes,
            buckets,
            scales,
            kilns: Vec::new(),
            form_names,
            glaze_names,
            bucket_names,
            in_use,
        }
    }

    /// The form that is called so; `None` where there is none, or more than one.
    pub(super) fn form(&self, name: &str) -> Option<usize> {
        self.form_names.get(&plain(name)).copied().flatten()
    }

    /// The glaze that is called so; `None` where there is none, or more than one.
    pub(super) fn glaze(&self, name: &str) -> Option<usize> {
        self.glaze_names.get(&plain(name)).copied().flatten()
    }

    /// A glaze as one is taken for before anything is known of it.
    pub(super) fn make_glaze(&mut self, name: &str) -> usize {
        let sensitivity = Sensitivity::Medium;
        let powder = PowderDensity::default();
        let row = entity::Glaze {
            name: name.to_owned(),
            sensitivity: sensitivity.code().to_owned(),
            powder_density_e3: powder.thousandths(),
            starting_laydown_mg_dm2: STARTING_LAYDOWN.milligrams_per_dm2(),
            ..entity::Glaze::default()
        };
        self.glazes.push(KnownGlaze {
            row,
            sensitivity,
            powder,
            tiles: Vec::new(),
            controls: BTreeMap::new(),
            made: true,
        });
        let place = self.glazes.len() - 1;
        self.glaze_names.insert(plain(name), Some(place));
        place
    }

    /// The bucket of this glaze that is called so, or a new one. Where no name is given: the only one in use, else one
    /// that is called after the sheet.
    pub(super) fn bucket(&mut self, glaze: usize, name: &str, at: i64) -> usize {
        let in_use = self.in_use.get(&glaze).copied();
        let name = match (name, in_use) {
            ("", Some((only, 1))) => return only,
            ("", _) => say::bucket_name(),
            (name, _) => name.to_owned(),
        };
        let key = (glaze, plain(&name));
        if let Some(place) = self.bucket_names.get(&key).copied() {
            let bucket = &mut self.buckets[place];
            if bucket.made {
                bucket.row.mixed_at = bucket.row.mixed_at.min(at);
            }
            return place;
        }
        // A bucket of years ago is not offered for weighing, unless it is the glaze's only one.
        let row = entity::Bucket { name, mixed_at: at, gone: in_use.is_some(), ..entity::Bucket::default() };
        self.buckets.push(KnownBucket { row, glaze, checks: Vec::new(), made: true });
        let place = self.buckets.len() - 1;
        self.bucket_names.insert(key, place);
        self.in_use.entry(glaze).or_insert((place, 1));
        place
    }

    /// The bucket's SG as it was known on that day; `None` before its first check.
    pub(super) fn sg(&self, bucket: usize, at: i64) -> Option<SgReading> {
        let checks = &self.buckets[bucket].checks;
        let before = checks.partition_point(|(checked, _)| *checked <= at);
        checks[..before].last().map(|(_, reading)| *reading)
    }

    /// What was known on that day of how thick this glaze should lie.
    pub(super) fn evidence(&self, glaze: usize, zone: ZoneKind, form: usize, at: i64) -> Evidence {
        let glaze = &self.glazes[glaze];
        let controls = glaze.controls.get(&zone).map_or(&[][..], Vec::as_slice);
        let before = controls.partition_point(|(weighed, ..)| *weighed <= at);
        let mut of_form: HashMap<usize, u32> = HashMap::new();
        let newest = controls[..before].iter().rev().filter(|(_, of, _)| {
            let count = of_form.entry(*of).or_default();
            *count += 1;
            *count <= MOST_CONTROLS
        });
        Evidence {
            controls: newest.map(|(_, of, control)| Control { same_form: *of == form, ..control.clone() }).collect(),
            tiles: glaze.tiles.iter().filter(|(coated, _)| *coated <= at).map(|(_, tile)| *tile).collect(),
            starting: Laydown::from_milligrams_per_dm2(glaze.row.starting_laydown_mg_dm2),
        }
    }

    /// From then on a control piece of the sheet is one that others are compared with.
    pub(super) fn add_control(&mut self, glaze: usize, zone: ZoneKind, form: usize, at: i64, control: Control) {
        let controls = self.glazes[glaze].controls.entry(zone).or_default();
        let place = controls.partition_point(|(weighed, ..)| *weighed <= at);
        controls.insert(place, (at, form, control));
    }
}

/// Where each name stands; those in use go before those archived, and a name that two bear means neither.
fn names<'a>(all: impl Iterator<Item = (&'a str, bool)> + Clone) -> HashMap<String, Option<usize>> {
    let mut names = HashMap::new();
    for gone in [false, true] {
        let mut of_these = HashMap::new();
        for (place, (name, _)) in all.clone().enumerate().filter(|(_, (_, is_gone))| *is_gone == gone) {
            of_these.entry(plain(name)).and_modify(|place| *place = None).or_insert(Some(place));
        }
        for (name, place) in of_these {
            names.entry(name).or_insert(place);
        }
    }
    names
}
