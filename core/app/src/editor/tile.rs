//! The editor of a test tile: its area and its coat say how thick the test was.

use uuid::Uuid;

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, coded_item, item};
use super::control::choose;
use super::notation::{AREA, LENGTH, MASS, SG};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::archive::in_use;
use crate::evidence::{
    bucket_in_use, bucket_today, finest_step, latest_sg, own_controls, powder_density, sensitivity, tile_evidence,
    tile_result, tiles, usable,
};
use crate::form_geometry::shape;
use crate::in_words::{Named as _, StyleWords, thin_glaze, thin_tile};
use crate::messages::{editor as shared, editor_tile as say};
use crate::{Result, StudioError, pooled};
use laydown_domain::coat::Solids;
use laydown_domain::coat::target::{Evidence, Job, target};
use laydown_domain::coat::tile::{TileResult, as_thick_as, share_if_thin};
use laydown_domain::form::{MEASURED_AREA, ShapeClass, Zone, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{Grams, Laydown, SpecificGravity, SquareCentimetres, Style};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Tile> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let Some(glaze) =
        choose::<entity::Glaze>(context, builder, Ask::new("glaze", shared::glaze()), saved.map(|tile| tile.glaze))?
    else {
        return Ok(None);
    };
    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|tile| tile.name.as_str()));
    let area = area(builder, saved);
    let wet = builder.optional(
        Ask::new("net", say::net()).hint(style.mass.symbol()),
        saved.and_then(|tile| tile.net_mg),
        MASS,
    );
    let sg_saved = match saved {
        Some(tile) => tile.specific_gravity_e5,
        None => bucket_sg(context, glaze.id)?,
    };
    let sg = builder.optional(
        Ask::new("specific_gravity", shared::dipped_at()).hint(style.number(EXAMPLE_SG, 2)),
        sg_saved,
        SG,
    );
    let dry = builder.optional(
        Ask::new("dry", say::dry()).hint(style.mass.symbol()).help(say::dry_help()),
        saved.and_then(|tile| tile.dry_mg),
        MASS,
    );
    let coats_saved = saved.map(|tile| tile.coats.map(|coats| coats.to_string()));
    let coats = builder.choice_asked_later(
        Ask::new("coats", say::coats()).help(say::coats_help()),
        coats_saved.as_ref().map(|coats| coats.as_deref()),
        "1",
        (1..=MOST_COATS).map(|coats| item(&coats.to_string(), say::so_many_coats(coats), "")).collect(),
    );
    let results = TileResult::ALL.iter().map(|result| coded_item(*result, "")).collect();
    let came_out = builder.choice_asked_later(
        Ask::new("came_out", say::came_out()).help(say::came_out_help()),
        saved.map(|tile| tile.came_out.as_deref()),
        TileResult::NotFired.code(),
        results,
    );
    let pot_form = form_to_compare(context, builder)?;
    let planned = saved.and_then(|tile| tile.aim_mg).map(Grams::from_milligrams);
    if let (Some(glaze), Some(area), Some(Some(sg))) = (&glaze.thing, area, sg) {
        match planned {
            Some(wet) => builder.result(Note::plain(say::planned(style.mass(wet, finest_step(context.conn)?)))),
            None => builder.result_if(takes(context, glaze, area, sg, style)?.map(Note::plain)),
        }
    }
    let (Some(area), Some(wet), Some(sg), Some(dry)) = (area, wet, sg, dry) else { return Ok(None) };
    let has_weight = dry.is_some() || (wet.is_some() && sg.is_some());
    if !has_weight && planned.is_none() {
        builder.field_error("weights", say::no_weight());
        return Ok(None);
    }
    let (called, at) = (name.clone().unwrap_or_default(), saved.map_or(context.now.unix_ms, |tile| tile.at));
    let tile = move |id| entity::Tile {
        id,
        glaze: glaze.id,
        name: called.clone(),
        area_mm2: area.square_millimetres(),
        net_mg: wet.map(Grams::milligrams),
        dry_mg: dry.map(Grams::milligrams),
        specific_gravity_e5: sg.map(SpecificGravity::hundred_thousandths),
        at,
        came_out: came_out.clone(),
        coats: coats.as_deref().and_then(|coats| coats.parse().ok()),
        ..current.clone().unwrap_or_default()
    };
    // What a tile of a glaze that is not here says of it is known when the glaze is.
    if let Some(glaze) = glaze.thing.as_ref().filter(|_| has_weight) {
        let laydown = match tile_evidence(&tile(Uuid::nil()), glaze) {
            Ok(Some(evidence)) => evidence.laydown,
            Ok(None) => return Ok(None),
            Err(StudioError::Refused { sentence, .. }) => {
                builder.field_error("area", sentence);
                return Ok(None);
            }
            Err(error) => return Err(error),
        };
        builder.result(Note::plain(shared::laydown_is(style.laydown_with_unit(laydown))));
        for note in as_thick_on(context, glaze, laydown, sg, pot_form.as_ref(), style)? {
            builder.result(note);
        }
        builder.result_if(sg.and_then(|sg| thin_glaze(sg, style)).map(Note::attention));
        let pots = Laydown::from_milligrams_per_dm2(glaze.starting_laydown_mg_dm2);
        builder.result(match share_if_thin(laydown, pots) {
            Some(share) => Note::attention(thin_tile(share, style)),
            None => Note::plain(say::counts(tile_result(&tile(Uuid::nil())).code())),
        });
    }
    let Some(name) = name else { return Ok(None) };
    Ok(Some(PendingWrite::one(context, shared::is_saved(name), tile)))
}

/// The most coats that a tile is asked about.
const MOST_COATS: usize = 3;

/// A form on which a coat as thick as the tile's is said, to compare with; only asked, and not kept.
fn form_to_compare(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<entity::Form>> {
    let mut forms = in_use::<entity::Form>(context.conn, None)?;
    if forms.is_empty() {
        return Ok(None);
    }
    forms.sort_by(|one, other| one.name.cmp(&other.name));
    let items = forms.iter().map(|form| item(&form.id.to_string(), &form.name, ""));
    let items = std::iter::once(item("", say::no_form(), "")).chain(items).collect();
    let chosen = builder.choice(Ask::new("compare_with", say::compare_with()), None, FieldKind::Choice, items);
    Ok(forms.into_iter().find(|form| chosen.as_deref() == Some(form.id.to_string().as_str())))
}

/// What a coat as thick as the tile's weighs on each zone of a form, from the glaze's newest bucket as it is today; from one as the
/// tile was dipped in where that was never checked.
fn as_thick_on(
    context: &EditContext<'_>,
    glaze: &entity::Glaze,
    laydown: Laydown,
    sg: Option<SpecificGravity>,
    form: Option<&entity::Form>,
    style: &Style,
) -> Result<Vec<Note>> {
    let Some(form) = form else { return Ok(Vec::new()) };
    let Some(shape) = usable(shape(context.conn, form))? else { return Ok(Vec::new()) };
    let bucket = bucket_in_use(context.conn, glaze.id)?;
    let today = bucket.map(|bucket| bucket_today(context.conn, context.now, glaze, bucket.id)).transpose()?.flatten();
    let as_dipped = || Solids::of(SgReading::checked(sg?), powder_density(glaze)).ok();
    let Some(solids) = today.map(|(_, solids)| solids).or_else(as_dipped) else { return Ok(Vec::new()) };
    let step = finest_step(context.conn)?;
    let note = |zone: &Zone| {
        let job = Job {
            form_name: form.name.clone(),
            zone: *zone,
            capacity: None,
            class: shape.class,
            solids,
            sensitivity: sensitivity(glaze),
        };
        let wet = style.mass(as_thick_as(laydown, &job), step);
        Note::plain(say::as_thick_as(wet, &form.name, zone.kind.name()))
    };
    Ok(shape.zones.iter().map(note).collect())
}

const SIDES: &str = "sides";
const BY_AREA: &str = "area";

/// The glazed area of the tile: by its two sides, or as it is typed.
pub(super) fn area(builder: &mut EditorBuilder<'_>, saved: Option<&entity::Tile>) -> Option<SquareCentimetres> {
    let style = builder.style;
    let is_area = saved.is_some() || builder.entered_value(BY_AREA).is_some();
    let known = builder.choice(
        Ask::new("size", say::size()),
        is_area.then_some(BY_AREA),
        FieldKind::Choice,
        vec![item(SIDES, say::by_sides(), ""), item(BY_AREA, say::by_area(), "")],
    );
    if known.as_deref() == Some(BY_AREA) {
        return builder.quantity(
            Ask::new("area", say::area()).hint(style.area.symbol()).help(say::area_help()),
            saved.map(|tile| tile.area_mm2),
            AREA,
        );
    }
    let symbol = style.length.symbol();
    let long = builder.quantity(Ask::new("long", say::long()).hint(symbol), None, LENGTH);
    let wide = builder.quantity(Ask::new("wide", say::wide()).hint(symbol).help(say::sides_help()), None, LENGTH);
    Some(SquareCentimetres::new(long?.value() * wide?.value() / 100.0))
}

/// How much glaze this tile takes to be as thick as the glaze's pots are to be.
fn takes(
    context: &EditContext<'_>,
    glaze: &entity::Glaze,
    area: SquareCentimetres,
    sg: SpecificGravity,
    style: &Style,
) -> Result<Option<String>> {
    let Some(solids) = solids_at(glaze, sg)? else { return Ok(None) };
    let Some(laydown) = aim(context, glaze, area, solids)? else { return Ok(None) };
    let wet = style.mass(solids.wet(laydown.dry_on(area)), finest_step(context.conn)?);
    Ok(Some(say::takes(style.specific_gravity(sg), wet, style.laydown_with_unit(laydown))))
}

/// Dry glaze per gram at an SG that was checked; `None` where it cannot be.
pub(super) fn solids_at(glaze: &entity::Glaze, sg: SpecificGravity) -> Result<Option<Solids>> {
    usable(Solids::of(SgReading::checked(sg), powder_density(glaze)).map_err(Into::into))
}

/// How thick the glaze's pots are to be: by all fired pots, else by the zone of which most control pieces are known, else by tiles,
/// else by the starting laydown.
pub(super) fn aim(
    context: &EditContext<'_>,
    glaze: &entity::Glaze,
    area: SquareCentimetres,
    solids: Solids,
) -> Result<Option<Laydown>> {
    if let Some(laydown) = pooled::laydown(context.conn, context.now, glaze)? {
        return Ok(Some(laydown));
    }
    let mut controls = Vec::new();
    for zone in ZoneKind::ALL {
        let known = own_controls(context.conn, glaze, *zone, Uuid::nil())?;
        if known.len() > controls.len() {
            controls = known;
        }
    }
    let job = Job {
        form_name: glaze.name.clone(),
        zone: Zone { kind: ZoneKind::Whole, area, relative_uncertainty: MEASURED_AREA },
        capacity: None,
        class: ShapeClass::Tile,
        solids,
        sensitivity: sensitivity(glaze),
    };
    let evidence = Evidence {
        controls,
        tiles: tiles(context.conn, glaze)?,
        starting: Laydown::from_milligrams_per_dm2(glaze.starting_laydown_mg_dm2),
    };
    Ok(target(&job, &evidence).ok().map(|target| target.laydown))
}

/// The SG of the glaze's bucket in use, as the likely one for a tile dipped now.
pub(super) fn bucket_sg(context: &EditContext<'_>, glaze: Uuid) -> Result<Option<i64>> {
    for bucket in in_use::<entity::Bucket>(context.conn, None)? {
        if bucket.glaze == glaze {
            let (reading, checked) = latest_sg(context.conn, bucket.id)?;
            if checked.is_some() {
                return Ok(Some(reading.sg.hundred_thousandths()));
            }
        }
    }
    Ok(None)
}
