//! The editor of a glaze. A new glaze comes with its first bucket, so that one can weigh at once.

mod materials;

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, coded_item};
use super::notation::{LAYDOWN, SG};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::Result;
use crate::evidence::check;
use crate::in_words::StyleWords as _;
use crate::in_words::thin_glaze;
use crate::messages::{editor as shared, editor_glaze as say};
use laydown_domain::coat::target::{STARTING_LAYDOWN, Sensitivity};
use laydown_domain::glaze::slurry::{SgReading, solids_fraction};
use laydown_domain::units::SpecificGravity;
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
    let Some(materials) = materials::fields(builder, saved) else { return Ok(None) };
    let Some(density) = materials::powder_density(builder, saved, &materials) else { return Ok(None) };
    let working_sg = builder.optional(
        Ask::new("working_sg", say::working_sg()).help(say::working_sg_help()).hint(style.number(EXAMPLE_SG, 2)),
        saved.and_then(|glaze| glaze.working_sg_e5),
        SG,
    );
    let laydown_saved = saved.map_or(STARTING_LAYDOWN.milligrams_per_dm2(), |glaze| glaze.starting_laydown_mg_dm2);
    let laydown = builder.quantity(
        Ask::new("starting_laydown", say::starting_laydown()).help(say::starting_laydown_help()),
        Some(laydown_saved),
        LAYDOWN,
    );
    let (Some(sensitivity), Some(laydown), Some(sg), Some(working_sg)) = (sensitivity, laydown, sg, working_sg) else {
        return Ok(None);
    };
    let materials::Density { density, from: density_from } = density;
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
        materials: materials.stored,
        density_from,
        hazards: materials.hazards,
        working_sg_e5: working_sg.map(SpecificGravity::hundred_thousandths),
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
                mixed_at: at,
                ..entity::Bucket::default()
            })?;
            if let Some(sg) = sg {
                let check = check(tx.new_id(), bucket, at, SgReading::checked(sg), "typed");
                tx.put(&check)?;
            }
            Ok(id)
        }),
    }))
}
