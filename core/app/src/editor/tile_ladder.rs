//! The editor of a ladder of test tiles: one glaze from thin to thick, each tile with its grams and a label to scratch, planned and
//! put into a firing.

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, item};
use super::control::choose;
use super::notation::{COUNT, SG};
use super::tile::{aim, area, bucket_sg, solids_at};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::Result;
use crate::evidence::finest_step;
use crate::in_words::StyleWords as _;
use crate::kiln::{FiringState, firing_title, put_unweighed};
use crate::messages::{editor as shared, editor_tile_ladder as say};
use laydown_domain::coat::tile::{Rung, THIN_SHARE, TileResult, ladder};
use laydown_domain::glaze::slurry::solids_fraction;
use laydown_domain::units::PowderDensity;
use laydown_store::entity::{self, Entity as _};
use laydown_store::query;

/// The usual ladder, and the shortest and longest that are offered.
const USUAL: i64 = 5;
const FEWEST: f64 = 3.0;
const MOST: f64 = 9.0;
/// Among how many firings those that are being loaded are looked for.
const FIRINGS: u32 = 20;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    builder.title = say::title();
    builder.save_label = say::save();
    let style = builder.style;
    let Some(glaze) = choose::<entity::Glaze>(context, builder, Ask::new("glaze", shared::glaze()), None)? else {
        return Ok(None);
    };
    let Some(thing) = &glaze.thing else { return Ok(None) };
    let area = area(builder, None);
    let count = builder.quantity(Ask::new("count", say::count()).help(say::count_help()), Some(USUAL), COUNT);
    let sg = builder.quantity(
        Ask::new("specific_gravity", say::sg()).hint(style.number(EXAMPLE_SG, 2)),
        bucket_sg(context, glaze.id)?,
        SG,
    );
    let firing = firing(context, builder)?;
    let (Some(area), Some(count), Some(sg)) = (area, count, sg) else { return Ok(None) };
    if !(FEWEST..=MOST).contains(&count) || count.fract() != 0.0 {
        builder.field_error("count", say::count_impossible(FEWEST.to_string(), MOST.to_string()));
        return Ok(None);
    }
    let density = PowderDensity::from_thousandths(thing.powder_density_e3).unwrap_or_default();
    if let Err(error) = solids_fraction(sg, density) {
        builder.field_error("specific_gravity", error);
        return Ok(None);
    }
    let Some(solids) = solids_at(thing, sg)? else { return Ok(None) };
    let Some(aim) = aim(context, thing, area, solids)? else { return Ok(None) };
    let series = next_series(&entity::Tile::all(context.conn)?);
    let rungs: Vec<(String, Rung)> = ladder(aim, area, &solids, count as usize)
        .into_iter()
        .enumerate()
        .map(|(at, rung)| (format!("{series}{}", at + 1), rung))
        .collect();
    let step = finest_step(context.conn)?;
    builder.result(Note::plain(say::aim(style.laydown_with_unit(aim))));
    for (label, rung) in &rungs {
        builder.result(Note::plain(say::rung(label, style.mass(rung.wet, step), style.percent(rung.share, 0))));
    }
    builder.result(Note::plain(say::scratch()));
    builder.result(Note::plain(say::thin_ones(style.percent(THIN_SHARE, 0))));
    let sentence = say::planned(rungs.len());
    // A ladder is planned once: what was saved with this draft is there.
    if let Some(id) = context.id {
        return Ok(Some(PendingWrite::nothing(id, sentence)));
    }
    let (glaze, at, first) = (glaze.id, context.now.unix_ms, context.new_id);
    Ok(Some(PendingWrite {
        sentence,
        write: Box::new(move |tx| {
            let first = first.unwrap_or_else(|| tx.new_id());
            let mut pieces = Vec::new();
            for (number, (label, rung)) in rungs.into_iter().enumerate() {
                let id = if number == 0 { first } else { tx.new_id() };
                if firing.is_some() {
                    let piece = entity::Piece { id: tx.new_id(), name: say::piece(&label), at, ..Default::default() };
                    pieces.push(piece.id);
                    tx.put(&piece)?;
                }
                tx.put(&entity::Tile {
                    id,
                    glaze,
                    name: label,
                    area_mm2: area.square_millimetres(),
                    specific_gravity_e5: Some(sg.hundred_thousandths()),
                    at,
                    came_out: Some(TileResult::NotFired.code().to_owned()),
                    coats: Some(1),
                    aim_mg: Some(rung.wet.milligrams()),
                    ..Default::default()
                })?;
            }
            if let Some(firing) = firing {
                put_unweighed(tx, &firing, &pieces, 0)?;
            }
            Ok(first)
        }),
    }))
}

/// Which firing that is being loaded the tiles go into; may be left open.
fn firing(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<entity::Firing>> {
    let loading = FiringState::Loading.code();
    let firings = query::firings(context.conn, FIRINGS)?.into_iter().filter(|firing| firing.state == loading);
    let firings: Vec<entity::Firing> = firings.collect();
    if firings.is_empty() {
        return Ok(None);
    }
    let mut items = vec![item("", say::no_firing(), "")];
    for firing in &firings {
        items.push(item(&firing.id.to_string(), firing_title(context.conn, firing)?, ""));
    }
    let chosen = builder.choice(Ask::new("firing", say::firing()), None, FieldKind::Choice, items);
    Ok(firings.into_iter().find(|firing| chosen.as_deref() == Some(firing.id.to_string().as_str())))
}

/// The next letters that no tile is labelled with: A to Z, then AA and on. Archived tiles keep theirs, since they lie in a drawer.
fn next_series(tiles: &[entity::Tile]) -> String {
    let is_free = |series: &String| {
        !tiles.iter().any(|tile| {
            let number = tile.name.strip_prefix(series.as_str());
            number.is_some_and(|number| !number.is_empty() && number.chars().all(|digit| digit.is_ascii_digit()))
        })
    };
    let letters = || ('A'..='Z').map(String::from);
    let pairs = letters().flat_map(|first| ('A'..='Z').map(move |second| format!("{first}{second}")));
    letters().chain(pairs).find(is_free).unwrap_or_else(|| "Z".to_owned())
}
