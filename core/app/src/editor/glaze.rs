//! The editor of a glaze. A new glaze comes with its first bucket, so that one can weigh at once.

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, coded_item};
use super::notation::{LAYDOWN, POWDER_DENSITY, SG, bare};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::Result;
use crate::evidence::check;
use crate::in_words::StyleWords as _;
use crate::in_words::thin_glaze;
use crate::messages::{editor as shared, editor_glaze as say};
use laydown_domain::coat::target::{STARTING_LAYDOWN, Sensitivity};
use laydown_domain::glaze::slurry::{SgReading, solids_fraction};
use laydown_domain::units::PowderDensity;
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Glaze> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|glaze| glaze.name.as_str()));
    let sensitivity = builder.choice(
        Ask::new("sensitivity", say::sensitivity()),
        saved.map_or(Some(Sensitivity::Medium.code()), |glaze| Some(glaze.sensitivity.as_str())),
        FieldKind::Choice,
        Sensitivity::ALL
            .iter()
            .map(|level| coded_item(*level, say::accepted(style.percent(level.tolerance(), 0))))
            .collect(),
    );
    let sg = if saved.is_none() {
        let example = style.number(EXAMPLE_SG, 2);
        let ask = Ask::new("specific_gravity", say::sg()).help(say::sg_help(&example)).hint(example);
        builder.optional(ask, None, SG)
    } else {
        Some(None)
    };
    let density_saved = saved.map_or(PowderDensity::default().thousandths(), |glaze| glaze.powder_density_e3);
    let density = builder.quantity(
        Ask::new("powder_density", say::powder_density())
            .help(say::powder_density_help(bare(style, PowderDensity::default().value()))),
        Some(density_saved),
        POWDER_DENSITY,
    );
    let laydown_saved = saved.map_or(STARTING_LAYDOWN.milligrams_per_dm2(), |glaze| glaze.starting_laydown_mg_dm2);
    let laydown = builder.quantity(
        Ask::new("starting_laydown", say::starting_laydown()).help(say::starting_laydown_help()),
        Some(laydown_saved),
        LAYDOWN,
    );
    let (Some(sensitivity), Some(density), Some(laydown), Some(sg)) = (sensitivity, density, laydown, sg) else {
        return Ok(None);
    };
    builder.result_if(sg.and_then(|sg| thin_glaze(sg, style)).map(Note::attention));
    match sg.map(|sg| solids_fraction(sg, density)).transpose() {
        Ok(solids) => {
            builder.result_if(solids.map(|solids| Note::plain(say::powder_in_bucket(style.percent(solids.value(), 0)))))
        }
        Err(error) => {
            builder.field_error("specific_gravity", error);
            return Ok(None);
        }
    }
    let Some(name) = name else { return Ok(None) };
    let sentence = shared::is_saved(&name);
    let glaze = move |id| entity::Glaze {
        id,
        name,
        sensitivity,
        powder_density_e3: density.thousandths(),
        starting_laydown_mg_dm2: laydown.milligrams_per_dm2(),
        ..current.unwrap_or_default()
    };
    if context.id.is_some() {
        return Ok(Some(PendingWrite::one(context, sentence, glaze)));
    }
    let (at, new_id) = (context.now.unix_ms, context.new_id);
    Ok(Some(PendingWrite {
        sentence,
        write: Box::new(move |tx| {
            let (id, bucket) = (new_id.unwrap_or_else(|| tx.new_id()), tx.new_id());
            tx.put(&glaze(id))?;
            tx.put(&entity::Bucket {
                id: bucket,
                glaze: id,
                name: say::first_bucket(),
                volume_ul: None,
                mixed_at: at,
                gone: false,
            })?;
            if let Some(sg) = sg {
                let check = check(tx.new_id(), bucket, at, SgReading::checked(sg), "typed");
                tx.put(&check)?;
            }
            Ok(id)
        }),
    }))
}
