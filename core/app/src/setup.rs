//! The Studio screen: everything that is set up once and used for years.

use rusqlite::Connection;

use super::archive::in_use;
use super::backup;
use super::bisque::absorption;
use super::evidence::{scale_of, sensitivity, style, tile_evidence, usable};
use super::in_words::{StyleWords, caution_text, caution_title, name_of};
use super::lists::{self, by_name, scale_detail};
use super::messages::{editor_bisque_lot as bisque_lot, editor_tile_ladder as ladder, setup as say};
use super::{EditorKind, Now, Result, Row, Studio, meanwhile};
use laydown_domain::bisque::Soaking;
use laydown_domain::caution::Caution;
use laydown_domain::coat::tile::TileResult;
use laydown_domain::form::ZoneKind;
use laydown_domain::learning::repeatability::Repeatability;
use laydown_domain::units::{Grams, Millimetres, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::query;

/// The most control pieces listed: the newest ones.
const MOST_CONTROL_COATS: u32 = 60;
/// Among how many of its newest tests the one of a scale is looked for that counts.
const LATEST_TESTS: u32 = 20;

/// A list on the Studio screen.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct Section {
    /// The sheet that opens from its rows and adds to it.
    pub editor: EditorKind,
    /// What the list is called.
    pub title: String,
    /// What the button that adds to it says.
    pub add_label: String,
    /// What stands there while it is empty.
    pub empty: String,
    /// Its rows.
    pub rows: Vec<Row>,
}

/// A caution in full.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct CautionView {
    /// What it is about.
    pub title: String,
    /// What to mind and whom to ask.
    pub text: String,
}

/// All that the Studio screen shows.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct SetupView {
    /// The lists.
    pub sections: Vec<Section>,
    /// What is to be said of backups.
    pub backup: String,
    /// How much other phones did meanwhile that is to be read; empty where nothing is.
    pub meanwhile: String,
    /// The cautions.
    pub cautions: Vec<CautionView>,
}

#[uniffi::export]
impl Studio {
    /// The Studio screen.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn setup(&self, now: Now) -> Result<SetupView> {
        self.store.read(|conn| {
            let style = style(conn)?;
            Ok(SetupView {
                sections: vec![
                    section(EditorKind::Form, say::forms(), say::add_form(), say::no_forms(), forms(conn, &style)?),
                    section(EditorKind::Body, say::bodies(), say::add_body(), say::no_bodies(), bodies(conn, &style)?),
                    section(
                        EditorKind::BisqueLot,
                        say::bisque_lots(),
                        say::add_bisque_lot(),
                        say::no_bisque_lots(),
                        bisque_lots(conn, now, &style)?,
                    ),
                    section(EditorKind::Glaze, say::glazes(), say::add_glaze(), say::no_glazes(), glazes(conn)?),
                    section(
                        EditorKind::Control,
                        say::controls(),
                        say::add_control(),
                        say::no_controls(),
                        known_amounts(conn, now, &style)?,
                    ),
                    section(EditorKind::Tile, say::tiles(), say::add_tile(), say::no_tiles(), tiles(conn, &style)?),
                    section(EditorKind::TileLadder, ladder::section(), ladder::add(), ladder::none(), Vec::new()),
                    section(
                        EditorKind::Scale,
                        say::scales(),
                        say::add_scale(),
                        say::no_scales(),
                        scales(conn, &style)?,
                    ),
                    section(
                        EditorKind::ScaleTest,
                        say::scale_tests(),
                        say::add_scale_test(),
                        say::no_scale_tests(),
                        scale_tests(conn, now, &style)?,
                    ),
                    section(EditorKind::Kiln, say::kilns(), say::add_kiln(), say::no_kilns(), kilns(conn, &style)?),
                    section(EditorKind::Vessel, say::vessels(), say::add_vessel(), say::no_vessels(), vessels(conn)?),
                ],
                backup: backup::in_a_line(conn, now)?,
                meanwhile: meanwhile::in_a_line(conn)?,
                cautions: Caution::ALL
                    .iter()
                    .map(|caution| CautionView { title: caution_title(*caution), text: caution_text(*caution) })
                    .collect(),
            })
        })
    }
}

fn section(editor: EditorKind, title: String, add_label: String, empty: String, rows: Vec<Row>) -> Section {
    Section { editor, title, add_label, empty, rows: by_name(rows) }
}

fn row(id: uuid::Uuid, title: String, detail: String) -> Row {
    Row { id: id.to_string(), title, detail, chosen: false, outline: Vec::new() }
}

fn forms(conn: &Connection, style: &Style) -> Result<Vec<Row>> {
    lists::forms(conn, style, "")
}

fn bodies(conn: &Connection, style: &Style) -> Result<Vec<Row>> {
    let bodies = in_use::<entity::Body>(conn, None)?.into_iter();
    Ok(bodies
        .map(|body| {
            let percent = |e4: i64| style.percent(e4 as f64 / 1e4, 1);
            let detail = say::shrinks(percent(body.to_bisque_e4), percent(body.to_fired_e4));
            row(body.id, body.name, detail)
        })
        .collect())
}

fn bisque_lots(conn: &Connection, now: Now, style: &Style) -> Result<Vec<Row>> {
    let lots = in_use::<entity::BisqueLot>(conn, None)?.into_iter();
    Ok(lots
        .map(|lot| {
            let drinks = absorption(&lot).map(|fraction| style.percent(fraction, 1)).unwrap_or_default();
            let detail = bisque_lot::row(drinks, name_of::<Soaking>(&lot.soaking), now.day(lot.at));
            row(lot.id, lot.name, detail)
        })
        .collect())
}

fn glazes(conn: &Connection) -> Result<Vec<Row>> {
    in_use::<entity::Glaze>(conn, None)?
        .into_iter()
        .map(|glaze| {
            let detail = say::thickness(sensitivity(&glaze).code());
            Ok(row(glaze.id, glaze.name, detail))
        })
        .collect()
}

fn scales(conn: &Connection, style: &Style) -> Result<Vec<Row>> {
    let scales = in_use::<entity::Scale>(conn, None)?.into_iter();
    Ok(scales.map(|scale| row(scale.id, scale.name.clone(), scale_detail(&scale, style))).collect())
}

/// The newest test of each scale.
fn scale_tests(conn: &Connection, now: Now, style: &Style) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for scale in in_use::<entity::Scale>(conn, None)? {
        let tests = query::scale_tests(conn, scale.id, LATEST_TESTS)?;
        let Some(test) = tests.into_iter().find(|test| !test.gone) else { continue };
        let step = Grams::from_milligrams(scale.step_mg);
        let readings: Vec<Grams> =
            test.readings.iter().flat_map(|all| &all.0).copied().map(Grams::from_milligrams).collect();
        let found = usable(scale_of(&scale))?.and_then(|scale| Repeatability::of(&readings, &scale).ok());
        let detail = match found {
            Some(found) => say::scale_repeats(style.mass(found.standard_deviation, step / 10.0), now.days_ago(test.at)),
            None => say::scale_checked(now.days_ago(test.at)),
        };
        rows.push(row(test.id, scale.name, detail));
    }
    Ok(rows)
}

fn kilns(conn: &Connection, style: &Style) -> Result<Vec<Row>> {
    let kilns = in_use::<entity::Kiln>(conn, None)?.into_iter();
    Ok(kilns
        .map(|kiln| {
            let across = style.length(Millimetres::from_micrometres(kiln.across_um));
            let detail = match kiln.deep_um {
                Some(deep) => {
                    say::oblong_shelves(kiln.shelves, across, style.length(Millimetres::from_micrometres(deep)))
                }
                None => say::round_shelves(kiln.shelves, across),
            };
            row(kiln.id, kiln.name, detail)
        })
        .collect())
}

fn vessels(conn: &Connection) -> Result<Vec<Row>> {
    let vessels = in_use::<entity::Vessel>(conn, None)?.into_iter();
    Ok(vessels.map(|vessel| row(vessel.id, vessel.name, String::new())).collect())
}

fn tiles(conn: &Connection, style: &Style) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for tile in in_use::<entity::Tile>(conn, None)? {
        let Some(glaze) = entity::Glaze::load(conn, tile.glaze)? else { continue };
        let detail = usable(tile_evidence(&tile, &glaze))?.flatten().map_or_else(
            || match tile.aim_mg.map(Grams::from_milligrams) {
                Some(wet) => say::planned_tile(&glaze.name, style.mass(wet, Grams::new(0.1))),
                None => glaze.name.clone(),
            },
            |found| {
                let laydown = style.laydown_with_unit(found.laydown);
                match &tile.came_out {
                    Some(code) => say::tile(&glaze.name, laydown, name_of::<TileResult>(code)),
                    None => say::tile_not_asked(&glaze.name, laydown),
                }
            },
        );
        rows.push(row(tile.id, tile.name, detail));
    }
    Ok(rows)
}

/// The amounts known to be right, the newest first.
pub(super) fn known_amounts(conn: &Connection, now: Now, style: &Style) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for coat in query::latest_control_coats(conn, MOST_CONTROL_COATS)? {
        let (Some(form), Some(glaze)) = (entity::Form::load(conn, coat.form)?, entity::Glaze::load(conn, coat.glaze)?)
        else {
            continue;
        };
        let wet = style.mass(Grams::from_milligrams(coat.net_mg), Grams::new(0.1));
        let detail = say::weighed_control(&glaze.name, wet, now.moment(coat.at));
        rows.push(row(coat.id, format!("{}, {}", form.name, name_of::<ZoneKind>(&coat.zone)), detail));
    }
    for known in in_use::<entity::Control>(conn, None)? {
        let (Some(form), Some(glaze)) =
            (entity::Form::load(conn, known.form)?, entity::Glaze::load(conn, known.glaze)?)
        else {
            continue;
        };
        let wet = style.mass(Grams::from_milligrams(known.net_mg), Grams::new(0.1));
        rows.push(row(
            known.id,
            format!("{}, {}", form.name, name_of::<ZoneKind>(&known.zone)),
            say::typed_control(&glaze.name, wet),
        ));
    }
    Ok(rows)
}
