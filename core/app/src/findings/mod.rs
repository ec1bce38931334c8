//! The Findings screen: what fired pots say about each glaze, beside what targets rest on today.

mod bisque;
mod bucket;
mod chart;
mod consumption;
mod drift;
mod faults;
mod fired;
mod hands;
mod repeats;
mod sets;
mod sizes;
mod svg;
mod text;

use std::path::Path;

use rusqlite::Connection;

use super::archive::{found, in_use};
use super::evidence::{bucket_in_use, bucket_today, finest_step, parse_id, style};
use super::in_words::StyleWords;
use super::messages::{findings as say, pooled};
use super::pooled::{Known, known_by, shapes};
use super::{CommandResult, Line, Note, Now, Result, Row, Studio, StudioError};
use drift::Series;
use faults::Faults;
use fired::{Fired, MOST_LOOKS, NEWEST, OfGlaze, Weighed};
pub(crate) use fired::{JudgedCoats, judged_coats, thickness};
use laydown_domain::coat::MOST_LAYDOWN;
use laydown_domain::form::ZoneKind;
use laydown_domain::learning::observation::{ENOUGH, FiredObservation, groups};
use laydown_domain::learning::window::{Window, WindowEstimate, estimate};
use laydown_domain::units::{Laydown, Style};
use laydown_store::{StoreError, entity, whole_file};
use text::{Place, Rest, rests, scope, sentence, sentences, sureness, window_chart};

pub use chart::{AxisTick, Band, ChartLine, ChartSpot, ChartView, Dot, LegendEntry, Mark, Stroke};

/// All that the Findings screen shows.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct FindingsView {
    /// The glazes in use, each with what is known of it in a sentence.
    pub glazes: Vec<Row>,
    /// What to do while nothing is known of any.
    pub empty: String,
    /// What else should be known.
    pub notes: Vec<Note>,
}

/// What the pots of one glaze say that belong together.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct WindowView {
    /// Which pots: "Cone 6, inside".
    pub title: String,
    /// What they say.
    pub words: String,
    /// Where the best lies and how sure that is; empty where it is not known.
    pub sure: String,
    /// The pots, each by its laydown.
    pub chart: ChartView,
    /// Their faults, each with how many pots had it and how sure that is.
    pub faults: Vec<Line>,
    /// The fault that goes most with the amount, drawn; `None` where there is none, or no window.
    pub fault_chart: Option<ChartView>,
}

/// One question about a glaze, answered: in words, figures and a chart, each where there is one.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct FindingsSection {
    /// What it is about.
    pub title: String,
    /// The answer in a sentence or two; empty where the figures say it all.
    pub words: String,
    /// Its figures.
    pub lines: Vec<Line>,
    /// The same drawn.
    pub chart: Option<ChartView>,
    /// What the button says that calls [`Studio::answer_drift`]; empty where nothing is to be answered.
    pub answer: String,
}

/// All that is known of one glaze.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct GlazeFindingsView {
    /// The glaze's id.
    pub id: String,
    /// Its name.
    pub title: String,
    /// What its pots say, the largest group first.
    pub windows: Vec<WindowView>,
    /// What to do while none was looked at.
    pub empty: String,
    /// What targets rest on today, zone by zone.
    pub rests: Vec<Line>,
    /// What the button that starts from the best says; empty where there is nothing to take over.
    pub take: String,
    /// What it does.
    pub take_help: String,
    /// What to hand to [`Studio::adopt_best`].
    pub best: String,
    /// What else is known: whether coats keep to their aims, what other sizes take, which pieces match, what is used.
    pub sections: Vec<FindingsSection>,
    /// What else should be known.
    pub notes: Vec<Note>,
}

#[uniffi::export]
impl Studio {
    /// The Findings screen.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn findings(&self, now: Now) -> Result<FindingsView> {
        self.store.read(|conn| {
            let style = style(conn)?;
            let mut fired = Fired::read(conn)?;
            let mut rows = Vec::new();
            for glaze in in_use::<entity::Glaze>(conn, None)? {
                let known = fired.glazes.remove(&glaze.id).unwrap_or_default();
                rows.push((known.observations.len(), row(conn, now, &glaze, known, &style)?));
            }
            // Those of which most is known first.
            rows.sort_by(|a, b| b.0.cmp(&a.0).then_with(|| a.1.title.cmp(&b.1.title)));
            let is_empty = rows.iter().all(|(observations, _)| *observations == 0);
            let mut notes = Vec::new();
            if !is_empty {
                notes.push(Note::plain(say::amount_only()));
            }
            notes.extend(cut(&fired));
            Ok(FindingsView {
                glazes: rows.into_iter().map(|(_, row)| row).collect(),
                empty: if is_empty { say::how_to_begin() } else { String::new() },
                notes,
            })
        })
    }

    /// What is known of the glaze `id`.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such glaze.
    pub fn glaze_findings(&self, now: Now, id: &str) -> Result<GlazeFindingsView> {
        let glaze_id = parse_id(id, "glaze")?;
        self.store.read(|conn| {
            let style = style(conn)?;
            let glaze: entity::Glaze = found(conn, glaze_id)?;
            let mut fired = Fired::read(conn)?;
            let OfGlaze { coats, observations, counted } = fired.glazes.remove(&glaze_id).unwrap_or_default();
            let groups = groups(observations).into_iter().map(Group::of).collect::<Vec<_>>();
            let rests = rests(conn, &glaze, &coats, &groups)?;
            let windows = groups.iter().map(|group| group.view(conn, &glaze, &rests, &style));
            let windows = windows.collect::<Result<Vec<_>>>()?;
            let offer = offer(&glaze, &groups, &style);
            let mut notes: Vec<Note> = groups.iter().flat_map(|group| group.against(&rests, &style)).collect();
            if counted >= ENOUGH {
                notes.push(Note::plain(pooled::sets_targets()));
            }
            if !windows.is_empty() {
                notes.push(Note::plain(say::amount_only()));
            }
            notes.extend(cut(&fired));
            let known = known_by(conn, &glaze, fired.judged(glaze_id))?;
            let sections = sections(conn, now, &glaze, &coats, &known, &style)?;
            Ok(GlazeFindingsView {
                id: id.to_owned(),
                title: glaze.name.clone(),
                empty: if windows.is_empty() { say::how_to_begin() } else { String::new() },
                windows,
                rests: rests.iter().map(|rest| rest.line(&style)).collect(),
                take: offer.as_ref().map(|offer| offer.label.clone()).unwrap_or_default(),
                take_help: offer.as_ref().map(|offer| offer.help.clone()).unwrap_or_default(),
                best: offer.map(|offer| offer.best.milligrams_per_dm2().to_string()).unwrap_or_default(),
                sections,
                notes,
            })
        })
    }

    /// Writes all charts of the glaze `id` into one SVG file at `into`, which is there whole or not at all: to be printed, or laid
    /// beside a firing's sheet.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such glaze; [`StudioError::Full`] or [`StudioError::Unreadable`] when the file
    /// cannot be written.
    pub fn write_charts(&self, now: Now, id: &str, into: &Path) -> Result<()> {
        let view = self.glaze_findings(now, id)?;
        let of_windows = view.windows.iter().flat_map(|window| [Some(&window.chart), window.fault_chart.as_ref()]);
        let of_sections = view.sections.iter().map(|section| section.chart.as_ref());
        let charts: Vec<&ChartView> = of_windows.chain(of_sections).flatten().collect();
        whole_file(into, svg::page(&view.title, &charts).as_bytes()).map_err(StoreError::from)?;
        Ok(())
    }

    /// Notes that the potter has seen where coats of the glaze `id` drift to: from here on they are looked at anew.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such glaze.
    pub fn answer_drift(&self, now: Now, id: &str) -> Result<CommandResult> {
        let glaze_id = parse_id(id, "glaze")?;
        let stored = self.command(now, |tx| {
            let glaze: entity::Glaze = found(tx.conn(), glaze_id)?;
            Ok(tx.put(&entity::Glaze { drift_answered_at: Some(now.unix_ms), ..glaze })?)
        })?;
        Ok(CommandResult::new(id.to_owned(), say::drift_is_noted(), stored.undo))
    }

    /// Takes the best laydown, as [`GlazeFindingsView::best`] names it, as the starting value of the glaze `id`.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such glaze; [`StudioError::Refused`] when `best` is no laydown.
    pub fn adopt_best(&self, now: Now, id: &str, best: &str) -> Result<CommandResult> {
        let glaze_id = parse_id(id, "glaze")?;
        let best = best.parse().ok().map(Laydown::from_milligrams_per_dm2);
        let best = best.filter(|best| best.is_positive() && *best <= MOST_LAYDOWN);
        let best = best.ok_or_else(|| StudioError::refused("", say::no_best()))?;
        let stored = self.command(now, |tx| {
            let glaze: entity::Glaze = found(tx.conn(), glaze_id)?;
            let sentence = say::now_starts_from(&glaze.name, style(tx.conn())?.laydown_with_unit(best));
            tx.put(&entity::Glaze { starting_laydown_mg_dm2: best.milligrams_per_dm2(), ..glaze })?;
            Ok(sentence)
        })?;
        Ok(CommandResult::new(id.to_owned(), stored.value, stored.undo))
    }
}

/// What is known beside windows: a drift first while it is not answered.
fn sections(
    conn: &Connection,
    now: Now,
    glaze: &entity::Glaze,
    coats: &[Weighed],
    known: &Known,
    style: &Style,
) -> Result<Vec<FindingsSection>> {
    let mut sections = Vec::new();
    let newest = bucket_in_use(conn, glaze.id)?;
    let today = newest.map(|bucket| bucket_today(conn, now, glaze, bucket.id)).transpose()?.flatten();
    if let Some((_, solids)) = today {
        let step = finest_step(conn)?;
        let shapes = shapes(conn, now, known, &solids)?;
        sections.extend(shapes.iter().filter_map(|shape| sizes::section(shape, &solids, step, style)));
    }
    sections.extend(sets::section(conn, now, glaze, coats, known, style)?);
    sections.extend(consumption::section(conn, now, glaze, coats, style)?);
    sections.extend(hands::section(coats, style));
    sections.extend(bucket::sections(conn, now, glaze, style)?);
    sections.extend(bisque::sections(conn, now, coats, style)?);
    sections.extend(repeats::sections(conn, now, coats, style)?);
    if let Some(series) = Series::of(glaze, coats) {
        let place = if series.alarm(now, style).is_some() { 0 } else { sections.len() };
        sections.splice(place..place, series.section(conn, now, style)?);
    }
    Ok(sections)
}

fn cut(fired: &Fired) -> Option<Note> {
    fired.is_cut.then(|| Note::plain(say::only_the_newest(NEWEST, MOST_LOOKS)))
}

fn row(conn: &Connection, now: Now, glaze: &entity::Glaze, known: OfGlaze, style: &Style) -> Result<Row> {
    let alarm = Series::of(glaze, &known.coats).and_then(|series| series.alarm(now, style));
    let finding = match groups(known.observations).into_iter().next().map(Group::of) {
        Some(group) => {
            let finding = sentence(&group.observations, &group.estimate, style, Place::AfterColon);
            say::scope_and_finding(scope(conn, &group.observations)?, finding)
        }
        None => match known.coats.len() {
            0 => say::no_coat(),
            coats => say::none_looked_at(coats),
        },
    };
    let detail = sentences([alarm, Some(finding)]);
    Ok(Row { id: glaze.id.to_string(), title: glaze.name.clone(), detail, chosen: false, outline: Vec::new() })
}

/// Pots that are spoken of together, with what they say.
struct Group {
    observations: Vec<FiredObservation>,
    estimate: WindowEstimate,
}

impl Group {
    fn of(observations: Vec<FiredObservation>) -> Group {
        let of: Vec<_> = observations.iter().map(|observation| (observation.laydown, observation.thickness)).collect();
        Group { estimate: estimate(&of), observations }
    }

    fn window(&self) -> Option<&Window> {
        match &self.estimate {
            WindowEstimate::Window(window) => Some(window),
            WindowEstimate::TooFew | WindowEstimate::NoneRight | WindowEstimate::Mixed => None,
        }
    }

    /// The zone, where all of its pots share it.
    fn zone(&self) -> Option<ZoneKind> {
        let first = self.observations.first()?.zone;
        self.observations.iter().all(|observation| observation.zone == first).then_some(first)
    }

    fn view(&self, conn: &Connection, glaze: &entity::Glaze, rests: &[Rest], style: &Style) -> Result<WindowView> {
        let title = scope(conn, &self.observations)?;
        let words = sentence(&self.observations, &self.estimate, style, Place::Alone);
        let aim = self.zone().and_then(|zone| rests.iter().find(|rest| rest.zone == zone)).map(|rest| rest.laydown);
        let aim = aim.unwrap_or_else(|| starting(glaze));
        let faults = Faults::of(&self.observations, self.window());
        Ok(WindowView {
            sure: self.window().map(|window| sureness(window, style)).unwrap_or_default(),
            chart: window_chart(&title, &words, &self.observations, self.window(), aim, style),
            faults: faults.lines(),
            fault_chart: faults.chart(style),
            title,
            words,
        })
    }

    /// Where targets rest on control pieces or tiles that lie outside the window.
    fn against(&self, rests: &[Rest], style: &Style) -> Option<Note> {
        let best = self.window()?.best?.laydown;
        let (from, to) = self.window().and_then(|window| window.from.zip(window.to))?;
        let zone = self.zone()?;
        let rest = rests.iter().find(|rest| rest.zone == zone)?;
        if (from..=to).contains(&rest.laydown) {
            return None;
        }
        rest.outside_the_window(best, style).map(Note::attention)
    }
}

fn starting(glaze: &entity::Glaze) -> Laydown {
    Laydown::from_milligrams_per_dm2(glaze.starting_laydown_mg_dm2)
}

/// What can be taken over as starting value.
struct Offer {
    best: Laydown,
    label: String,
    help: String,
}

/// The best of the largest group that has one, where the glaze starts elsewhere.
fn offer(glaze: &entity::Glaze, groups: &[Group], style: &Style) -> Option<Offer> {
    let best = groups.iter().filter_map(|group| group.window()?.best).map(|best| rounded(best.laydown)).next()?;
    let now = starting(glaze);
    if rounded(now) == best || best > MOST_LAYDOWN {
        return None;
    }
    Some(Offer {
        best,
        label: say::start_from(style.laydown_with_unit(best)),
        help: say::start_from_help(style.laydown_with_unit(now)),
    })
}

/// To a tenth of a gram per 100 cm², as fine as it is shown.
fn rounded(laydown: Laydown) -> Laydown {
    Laydown::from_milligrams_per_dm2((laydown.milligrams_per_dm2() + 50).div_euclid(100) * 100)
}
