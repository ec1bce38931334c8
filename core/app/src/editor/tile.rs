//! The editor of a test tile: its area and its coat say how thick the test was.

use uuid::Uuid;

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, coded_item, item};
use super::control::choose;
use super::notation::{AREA, LENGTH, MASS, SG};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::archive::in_use;
use crate::evidence::{
    finest_step, latest_sg, own_controls, powder_density, sensitivity, tile_evidence, tile_result, tiles, usable,
};
use crate::in_words::{StyleWords, thin_glaze, thin_tile};
use crate::messages::{editor as shared, editor_tile as say};
use crate::{Result, StudioError, pooled};
use laydown_domain::coat::Solids;
use laydown_domain::coat::target::{Evidence, Job, target};
use laydown_domain::coat::tile::{TileResult, share_if_thin};
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
    let results = TileResult::ALL.iter().map(|result| coded_item(*result, "")).collect();
    let came_out = builder.choice_asked_later(
        Ask::new("came_out", say::came_out()).help(say::came_out_help()),
        saved.map(|tile| tile.came_out.as_deref()),
        TileResult::NotFired.code(),
        results,
    );
    if let (Some(glaze), Some(area), Some(Some(sg))) = (&glaze.thing, area, sg) {
        builder.result_if(takes(context, glaze, area, sg, style)?.map(Note::plain));
    }
    let (Some(area), Some(wet), Some(sg), Some(dry)) = (area, wet, sg, dry) else { return Ok(None) };
    if dry.is_none() && (wet.is_none() || sg.is_none()) {
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
        gone: current.as_ref().is_some_and(|tile| tile.gone),
        came_out: came_out.clone(),
    };
    // What a tile of a glaze that is not here says of it is known when the glaze is.
    if let Some(glaze) = &glaze.thing {
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

const SIDES: &str = "sides";
const BY_AREA: &str = "area";

/// The glazed area of the tile: by its two sides, or as it is typed.
fn area(builder: &mut EditorBuilder<'_>, saved: Option<&entity::Tile>) -> Option<SquareCentimetres> {
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

/// How much glaze this tile takes to be as thick as the glaze's pots are to be: by all fired pots, else by the zone of which most control pieces are
/// known, else by tiles, else by the starting laydown.
fn takes(
    context: &EditContext<'_>,
    glaze: &entity::Glaze,
    area: SquareCentimetres,
    sg: SpecificGravity,
    style: &Style,
) -> Result<Option<String>> {
    let Some(solids) = usable(Solids::of(SgReading::checked(sg), powder_density(glaze)).map_err(Into::into))? else {
        return Ok(None);
    };
    let says = |wet: Grams, laydown: Laydown| -> Result<Option<String>> {
        let wet = style.mass(wet, finest_step(context.conn)?);
        Ok(Some(say::takes(style.specific_gravity(sg), wet, style.laydown_with_unit(laydown))))
    };
    if let Some(laydown) = pooled::laydown(context.conn, context.now, glaze)? {
        return says(solids.wet(laydown.dry_on(area)), laydown);
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
    let Ok(target) = target(&job, &evidence) else { return Ok(None) };
    says(target.wet, target.laydown)
}

/// The SG of the glaze's bucket in use, as the likely one for a tile dipped now.
fn bucket_sg(context: &EditContext<'_>, glaze: Uuid) -> Result<Option<i64>> {
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
