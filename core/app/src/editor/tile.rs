//! The editor of a test tile: its area and its coat say how thick the test was.

use uuid::Uuid;

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder};
use super::control::choose;
use super::notation::{AREA, MASS, SG};
use super::{EditContext, Note, PendingWrite};
use crate::archive::in_use;
use crate::evidence::{latest_sg, tile_evidence};
use crate::in_words::{StyleWords, thin_glaze, thin_tile};
use crate::messages::{editor as shared, editor_tile as say};
use crate::{Result, StudioError};
use laydown_domain::coat::tile::share_if_thin;
use laydown_domain::units::{Grams, Laydown, SpecificGravity};
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
    let area = builder.quantity(
        Ask::new("area", say::area()).hint(style.area.symbol()).help(say::area_help()),
        saved.map(|tile| tile.area_mm2),
        AREA,
    );
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
        builder.result_if(share_if_thin(laydown, pots).map(|share| Note::attention(thin_tile(share, style))));
    }
    let Some(name) = name else { return Ok(None) };
    Ok(Some(PendingWrite::one(context, shared::is_saved(name), tile)))
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
