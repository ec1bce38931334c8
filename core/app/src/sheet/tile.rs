//! The sheet of a test tile: its area and its coat say how thick the test was.

use uuid::Uuid;

use super::control::choose;
use super::draft::{Ask, Draft, area_text, mass_text};
use super::{Desk, Keeping, Note};
use crate::facts::{latest_sg, tile_evidence};
use crate::rows::in_use;
use crate::{Result, StudioError};
use laydown_domain::coat::tile::thin_warning;
use laydown_domain::units::{Grams, Laydown, SpecificGravity, parse};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Tile> = desk.current()?;
    let kept = current.as_ref();
    let style = draft.style;
    draft.title = kept.map_or("New test tile", |_| "Test tile").to_owned();
    draft.remove_label = "Put this test tile away";

    let Some(glaze) = choose::<entity::Glaze>(desk, draft, Ask::new("glaze", "Glaze"), kept.map(|tile| tile.glaze))?
    else {
        return Ok(None);
    };
    let mass_text = |mg: Option<i64>| mg.map(|mg| mass_text(style, mg));
    let glaze_id = glaze.id;
    let name = draft.text(Ask::new("name", "Name").hint("Tile 12"), kept.map(|tile| tile.name.as_str()));
    let area = draft.quantity(
        Ask::new("area", "Glazed area")
            .hint(style.area.symbol())
            .help("Length times width of what was covered; both sides if both were."),
        kept.map(|tile| area_text(style, tile.area_mm2)),
        parse::area,
    );
    let wet = draft.optional(
        Ask::new("net", "Wet weight of the coat").hint(style.mass.symbol()),
        mass_text(kept.and_then(|tile| tile.net_mg)),
        parse::mass,
    );
    let sg_kept = match kept {
        Some(tile) => tile.specific_gravity_e5,
        None => bucket_sg(desk, glaze.id)?,
    };
    let sg = draft.optional(
        Ask::new("specific_gravity", "SG it was dipped at").hint("1.45"),
        sg_kept.and_then(|e5| SpecificGravity::from_hundred_thousandths(e5).ok()).map(|sg| style.specific_gravity(sg)),
        parse::specific_gravity,
    );
    let dry = draft.optional(
        Ask::new("dry", "Or weight of the coat when bone dry")
            .hint(style.mass.symbol())
            .help("Better than the wet weight, if you waited."),
        mass_text(kept.and_then(|tile| tile.dry_mg)),
        parse::mass,
    );
    let (Some(area), Some(wet), Some(sg), Some(dry)) = (area, wet, sg, dry) else { return Ok(None) };
    if dry.is_none() && (wet.is_none() || sg.is_none()) {
        draft.refuse("weights", "Give the dry weight, or the wet weight and the SG.");
        return Ok(None);
    }
    let (called, at) = (name.clone().unwrap_or_default(), kept.map_or(desk.now.unix_ms, |tile| tile.at));
    let tile = move |id| entity::Tile {
        id,
        glaze: glaze_id,
        name: called.clone(),
        area_mm2: area.square_millimetres(),
        net_mg: wet.map(Grams::milligrams),
        dry_mg: dry.map(Grams::milligrams),
        specific_gravity_e5: sg.map(SpecificGravity::hundred_thousandths),
        at,
        gone: false,
    };
    let laydown = match tile_evidence(&tile(Uuid::nil()), &glaze) {
        Ok(Some(evidence)) => evidence.laydown,
        Ok(None) => return Ok(None),
        Err(StudioError::Refused { sentence, .. }) => {
            draft.refuse("area", sentence);
            return Ok(None);
        }
        Err(error) => return Err(error),
    };
    draft.result(Note::plain(format!("Laydown {}.", style.laydown(laydown))));
    draft.result_if(sg.and_then(|sg| sg.doubt(style)).map(Note::attention));
    let pots = Laydown::from_milligrams_per_dm2(glaze.starting_laydown_mg_dm2);
    draft.result_if(thin_warning(laydown, pots, style).map(Note::attention));
    let Some(name) = name else { return Ok(None) };
    Ok(Some(Keeping::one(desk.id, format!("{name} is kept."), tile)))
}

/// The SG of the glaze's bucket in use, as the likely one for a tile dipped now.
fn bucket_sg(desk: &Desk<'_>, glaze: Uuid) -> Result<Option<i64>> {
    for bucket in in_use::<entity::Bucket>(desk.conn, None)? {
        if bucket.glaze == glaze {
            let (reading, checked) = latest_sg(desk.conn, bucket.id)?;
            if checked.is_some() {
                return Ok(Some(reading.sg.hundred_thousandths()));
            }
        }
    }
    Ok(None)
}
