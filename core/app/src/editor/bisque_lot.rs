//! The editor of a bisque lot: how much water the ware of one bisque firing drinks, found in a kitchen.

use super::builder::{Ask, EditorBuilder, coded_item, item};
use super::notation::{MASS, TEMPERATURE};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::Result;
use crate::archive::in_use;
use crate::bisque::earlier_absorptions;
use crate::evidence::finest_step;
use crate::in_words::{Named as _, StyleWords as _, soaked_pores, trend_of_lots};
use crate::messages::{editor as shared, editor_bisque_lot as say, editor_firing};
use laydown_domain::bisque::{SoakError, SoakedPiece, Soaking, USUAL_ABSORPTION, trend};
use laydown_domain::coat::coverage::NORMAL_95;
use laydown_domain::glaze::slurry::water_density;
use laydown_domain::kiln::cone::Cone;
use laydown_domain::units::{Celsius, Grams};
use laydown_store::entity;

/// Of the water, unless told. Common practice, no source.
const ROOM: Celsius = Celsius::new(20.0);
/// The coolest and the hottest cone that bisque is fired to. Common practice, no source.
const BISQUE_CONES: (&str, &str) = ("010", "1");

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::BisqueLot> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|lot| lot.name.as_str()));
    let body = body(context, builder, saved)?;
    let cone_saved = saved.and_then(|lot| lot.cone.clone()).unwrap_or_default();
    let cones = Cone::all().filter(|cone| {
        let (from, to) = (BISQUE_CONES.0.parse(), BISQUE_CONES.1.parse());
        matches!((from, to), (Ok(from), Ok(to)) if (from..=to).contains(cone))
    });
    let cones = cones.map(|cone| item(cone.code(), editor_firing::cone(cone.code()), ""));
    let cone = builder.choice(
        Ask::new("cone", say::cone()),
        Some(&cone_saved),
        FieldKind::Choice,
        std::iter::once(item("", say::not_known(), "")).chain(cones).collect(),
    );
    let at =
        builder.day(Ask::new("date", say::fired_on()), saved.map_or(context.now.unix_ms, |lot| lot.at), context.now);
    let ways = Soaking::ALL.iter().map(|way| coded_item(*way, say::way(way.code()))).collect();
    let ask = Ask::new("soaking", say::soaking()).help(say::soaking_help());
    let soaking = builder.choice(ask, saved.map(|lot| lot.soaking.as_str()), FieldKind::Choice, ways);
    let mass = |key, label: String| Ask::new(key, label).hint(style.mass.symbol());
    let dry =
        builder.quantity(mass("bone_dry", say::dry()).help(say::dry_help()), saved.map(|lot| lot.bone_dry_mg), MASS);
    let soaked =
        builder.quantity(mass("soaked", say::soaked()).help(say::soaked_help()), saved.map(|lot| lot.soaked_mg), MASS);
    let suspended = builder.optional(
        mass("suspended", say::suspended()).help(say::suspended_help()),
        saved.and_then(|lot| lot.suspended_mg),
        MASS,
    );
    // Only what hangs in water minds how warm that is.
    builder.shown = suspended != Some(None);
    let temperature = builder.quantity(
        Ask::new("water_temperature", say::temperature()),
        Some(saved.map_or(ROOM.millidegrees(), |lot| lot.water_temperature_mc)),
        TEMPERATURE,
    );
    builder.shown = true;
    let (Some(dry), Some(soaked), Some(suspended), Some(temperature)) = (dry, soaked, suspended, temperature) else {
        return Ok(None);
    };
    let water = match water_density(temperature) {
        Ok(water) => water,
        Err(error) => {
            builder.field_error("water_temperature", error);
            return Ok(None);
        }
    };
    let found = match (SoakedPiece { dry, soaked, suspended }).absorption(water, finest_step(context.conn)?) {
        Ok(found) => found,
        Err(error) => {
            let field = match error {
                SoakError::SuspendedOverDry => "suspended",
                SoakError::NoWeight => "bone_dry",
                SoakError::SoakedUnderDry | SoakError::TooMuch | SoakError::NoWater => "soaked",
            };
            builder.field_error(field, error);
            return Ok(None);
        }
    };
    let (Some(at), Some(soaking)) = (at, soaking) else { return Ok(None) };
    let percent = |fraction: f64| style.percent(fraction, 1);
    let way = soaking.parse::<Soaking>().map_or_else(|_| soaking.clone(), Soaking::name);
    let doubt = style.number(found.standard_uncertainty * NORMAL_95 * 100.0, 1);
    builder.result(Note::plain(say::drinks(percent(found.fraction), doubt, way)));
    let (from, to) = USUAL_ABSORPTION;
    builder.result(Note::plain(say::usual(style.number(from * 100.0, 0), style.percent(to, 0))));
    builder.result_if(found.pores.map(|pores| Note::plain(soaked_pores(&pores, style))));
    let earlier = earlier_absorptions(context.conn, context.id, body, &soaking, at)?;
    builder.result_if(trend_of_lots(trend(found.fraction, &earlier), style));
    let Some(name) = name else { return Ok(None) };
    let sentence = shared::is_saved(&name);
    let lot = move |id| entity::BisqueLot {
        id,
        name,
        body,
        cone: cone.filter(|cone| !cone.is_empty()),
        at,
        soaking,
        bone_dry_mg: dry.milligrams(),
        soaked_mg: soaked.milligrams(),
        suspended_mg: suspended.map(Grams::milligrams),
        water_temperature_mc: temperature.millidegrees(),
        gone: current.as_ref().is_some_and(|lot| lot.gone),
    };
    Ok(Some(PendingWrite::one(context, sentence, lot)))
}

/// The body it is of; may be left open.
fn body(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::BisqueLot>,
) -> Result<Option<uuid::Uuid>> {
    let known = saved.and_then(|lot| lot.body);
    let bodies: Vec<entity::Body> = in_use(context.conn, known)?;
    let items = bodies.iter().map(|body| item(&body.id.to_string(), &body.name, ""));
    let saved = known.map(|id| id.to_string()).unwrap_or_default();
    let chosen = builder.choice_or(
        Ask::new("body", say::body()),
        Some(&saved),
        FieldKind::Choice,
        std::iter::once(item("", say::not_known(), "")).chain(items).collect(),
        shared::not_on_this_phone(),
    );
    Ok(chosen.and_then(|id| id.parse().ok()))
}
