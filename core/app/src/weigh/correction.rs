//! A coat that was saved and is corrected: what follows from what was corrected. While it is the same coat of the same glaze, it
//! is held against the target that was said then; on another zone or from another bucket, against what is known today.

use rusqlite::Connection;

use super::context::WeighContext;
use super::{Field, WeighEntry};
use crate::evidence::{scale_of, sensitivity, sg_reading, uncertainty_e5, usable};
use crate::in_words;
use crate::{Result, StudioError};
use laydown_domain::coat::target::Source;
use laydown_domain::coat::verdict::{ReadingRefused, VerdictKind};
use laydown_domain::coat::{MOST_LAYDOWN, Solids};
use laydown_domain::units::{Grams, Laydown, PowderDensity, SquareCentimetres, Style};
use laydown_store::entity::{self, Coat, Entity};

/// Stored weights are rounded to milligrams, so that a span is only nearly what its tolerance says.
const ROUNDING: f64 = 0.002;

/// `after` with its area, target, verdict and laydown, where `before` was saved.
pub(crate) fn corrected(conn: &Connection, style: Style, before: &Coat, after: Coat) -> Result<Coat> {
    let job = |coat: &Coat| (coat.form, coat.bucket, coat.zone.clone());
    if job(before) == job(&after) {
        return if before.net_mg == after.net_mg {
            Ok(after)
        } else {
            judged(conn, style, is_guess(conn, before)?, after)
        };
    }
    let scale = entity::Scale::load(conn, after.scale)?.filter(|scale| !scale.gone);
    let entry = WeighEntry {
        form: after.form.to_string(),
        bucket: after.bucket.to_string(),
        zone: Some(after.zone.parse()?),
        scale: scale.map(|scale| scale.id.to_string()).unwrap_or_default(),
        ..WeighEntry::default()
    };
    let context = WeighContext::load_as_of(conn, style, &entry, Some(after.at))?;
    let context = context.ok_or_else(|| StudioError::missing("to_weigh_with"))?;
    context.is_what_was_shown(&entry)?;
    let target = context.target()?;
    let trust = context.trust(&target);
    let (low, high) = trust.span(&target);
    let after = Coat {
        specific_gravity_e5: context.sg.sg.hundred_thousandths(),
        sg_uncertainty_e5: uncertainty_e5(context.sg),
        powder_density_e3: context.glaze.powder_density_e3,
        area_mm2: context.job.zone.area.square_millimetres(),
        aim_mg: target.wet.milligrams(),
        low_mg: low.milligrams(),
        high_mg: high.milligrams(),
        source: target.source.code().to_owned(),
        ..after
    };
    judged(conn, style, trust.weakness().is_some(), after)
}

/// Whether the target of a coat was a guess when it was said. Where that cannot be told it is taken for one.
fn is_guess(conn: &Connection, coat: &Coat) -> Result<bool> {
    match coat.verdict.parse() {
        Ok(VerdictKind::Within | VerdictKind::ProbablyWithin | VerdictKind::CannotTell) => return Ok(false),
        Ok(VerdictKind::Short | VerdictKind::Over) => {}
        Ok(VerdictKind::Guess) | Err(_) => return Ok(true),
    }
    if [Source::Tile.code(), Source::Starting.code()].contains(&coat.source.as_str()) || coat.aim_mg <= 0 {
        return Ok(true);
    }
    let tolerance = entity::Glaze::load(conn, coat.glaze)?.map(|glaze| sensitivity(&glaze).tolerance());
    let reach = (coat.high_mg - coat.aim_mg) as f64 / coat.aim_mg as f64;
    Ok(tolerance.is_none_or(|tolerance| (reach - tolerance).abs() > ROUNDING))
}

/// The coat with the verdict on its weight and its laydown, by the span, the area and the SG that are in it.
fn judged(conn: &Connection, style: Style, is_guess: bool, coat: Coat) -> Result<Coat> {
    let net = Grams::from_milligrams(coat.net_mg);
    let refused = |why| Err(StudioError::refused(Field::Net.key(), in_words::reading_refused(&why, &style)));
    if !net.is_positive() {
        return refused(ReadingRefused::Nothing);
    }
    let powder = PowderDensity::from_thousandths(coat.powder_density_e3).unwrap_or_default();
    let solids = Solids::of(sg_reading(coat.specific_gravity_e5, coat.sg_uncertainty_e5)?, powder)?;
    let area = SquareCentimetres::from_square_millimetres(coat.area_mm2);
    let laydown = Laydown::of(solids.dry(net), area);
    let scale = entity::Scale::load(conn, coat.scale)?;
    let scale = scale.map(|scale| usable(scale_of(&scale))).transpose()?.flatten();
    if laydown > MOST_LAYDOWN {
        let step = scale.map_or(Grams::new(0.1), |scale| scale.step);
        let most = solids.wet(MOST_LAYDOWN.dry_on(area));
        return refused(ReadingRefused::MoreThanPieceHolds { net, most, step });
    }
    let half_width = scale.map_or(Grams::ZERO, |scale| scale.net_half_width());
    let span = (Grams::from_milligrams(coat.low_mg), Grams::from_milligrams(coat.high_mg));
    let verdict = VerdictKind::of(net, half_width, span, is_guess);
    Ok(Coat { verdict: verdict.code().to_owned(), laydown_mg_dm2: laydown.milligrams_per_dm2(), ..coat })
}
