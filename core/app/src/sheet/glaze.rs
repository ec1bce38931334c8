//! The sheet of a glaze. A new glaze comes with its first bucket, so that one can weigh at once.

use super::draft::{Ask, Draft, bare, coded_item, laydown, powder_density};
use super::{Desk, FieldKind, Keeping, Note};
use crate::Result;
use crate::facts::check;
use laydown_domain::coat::target::{STARTING_LAYDOWN, Sensitivity};
use laydown_domain::glaze::slurry::{SgReading, solids_fraction};
use laydown_domain::units::{Laydown, PowderDensity, parse};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Glaze> = desk.current()?;
    let kept = current.as_ref();
    let style = draft.style;
    draft.title = kept.map_or("New glaze", |_| "Glaze").to_owned();
    draft.remove_label = "Put this glaze and its buckets away";

    let name = draft.text(Ask::new("name", "Name").hint("Ash white"), kept.map(|glaze| glaze.name.as_str()));
    let sensitivity = draft.choice(
        Ask::new("sensitivity", "How touchy is it about thickness?"),
        kept.map_or(Some(Sensitivity::Medium.code()), |glaze| Some(glaze.sensitivity.as_str())),
        FieldKind::Choice,
        Sensitivity::ALL
            .iter()
            .map(|level| coded_item(level, &format!("{} either way is accepted", style.percent(level.tolerance(), 0))))
            .collect(),
    );
    let sg = if kept.is_none() {
        let ask = Ask::new("specific_gravity", "SG of the bucket, if checked")
            .hint("1.45")
            .help("A litre that weighs 1450 g has SG 1.45. You can check it later.");
        draft.optional(ask, None, parse::specific_gravity)
    } else {
        Some(None)
    };
    let density_kept = kept.map_or(PowderDensity::default().thousandths(), |glaze| glaze.powder_density_e3);
    let density = draft.quantity(
        Ask::new("powder_density", "Density of the dry powder")
            .help("2.6 suits most glazes; higher with much zircon, barium or other heavy oxides."),
        Some(bare(style, density_kept as f64 / 1e3)),
        powder_density,
    );
    let laydown_kept = kept.map_or(STARTING_LAYDOWN.milligrams_per_dm2(), |glaze| glaze.starting_laydown_mg_dm2);
    let laydown = draft.quantity(
        Ask::new("starting_laydown", "Starting laydown, dry g on 100 cm²")
            .help("Used until a test tile or a control piece says better."),
        Some(bare(style, Laydown::from_milligrams_per_dm2(laydown_kept).value())),
        laydown,
    );
    let (Some(sensitivity), Some(density), Some(laydown), Some(sg)) = (sensitivity, density, laydown, sg) else {
        return Ok(None);
    };
    draft.result_if(sg.and_then(|sg| sg.doubt(style)).map(Note::attention));
    match sg.map(|sg| solids_fraction(sg, density)).transpose() {
        Ok(solids) => draft.result_if(solids.map(|solids| {
            Note::plain(format!("The bucket is {} powder by weight.", style.percent(solids.value(), 0)))
        })),
        Err(error) => {
            draft.refuse("specific_gravity", error);
            return Ok(None);
        }
    }
    let Some(name) = name else { return Ok(None) };
    let sentence = format!("{name} is kept.");
    let glaze = move |id| entity::Glaze {
        id,
        name,
        sensitivity,
        powder_density_e3: density.thousandths(),
        starting_laydown_mg_dm2: laydown.milligrams_per_dm2(),
        gone: false,
    };
    if desk.id.is_some() {
        return Ok(Some(Keeping::one(desk.id, sentence, glaze)));
    }
    let at = desk.now.unix_ms;
    Ok(Some(Keeping {
        sentence,
        write: Box::new(move |tx| {
            let (id, bucket) = (tx.new_id(), tx.new_id());
            tx.put(&glaze(id))?;
            tx.put(&entity::Bucket {
                id: bucket,
                glaze: id,
                name: "First bucket".to_owned(),
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
