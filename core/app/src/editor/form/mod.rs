//! The editor of a form: by its capacity, by points measured with calipers, by a photograph, or by areas calculated otherwise.

mod draw;
mod photo;
mod points;
mod touch;

use self::draw::{BARE_FOOT, FILL, Frame, OVERLAP, Sketch};
use self::photo::{Marks, TAKEN};
use super::builder::{Ask, EditorBuilder, coded_item, item};
use super::notation::{AREA, LENGTH, MASS, VOLUME};
use super::{EditContext, FieldKind, Item, Note, PendingWrite};
use crate::archive::{Archivable, in_use};
use crate::date_text::sentence_case;
use crate::evidence::usable;
use crate::form_geometry::{self, zone_cautions};
use crate::in_words::StyleWords as _;
use crate::in_words::{Named, Sentence};
use crate::lists;
use crate::messages::{editor as shared, editor_form as say};
use crate::{Result, StudioError};
use laydown_domain::form::silhouette::{KnownSize, Sureness, Trace, Traced};
use laydown_domain::form::{Form, FormError, ProfileError, ProfilePoint, ShapeClass, Stage, Usual, ZoneKind, tube};
use laydown_domain::units::{Grams, Millilitres, Millimetres, SquareCentimetres, Style, parse};
use laydown_store::entity;
use uuid::Uuid;

pub(super) use self::photo::photographed;
pub(super) use self::touch::touched;

/// Distance from the lens to the pot unless told: an arm's length. Common practice, no source.
const CAMERA: Millimetres = Millimetres::new(600.0);

/// Zones whose targets change by less than this factor of each other are spoken of together.
const ALIKE: f64 = 1.02;

/// Two ways of knowing what a form holds may differ by this much before it is said. Common practice, no source.
const CAPACITIES_SYNC_NOW: f64 = 0.1;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Form> = context.current()?;
    let saved = current.as_ref();
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|form| form.name.as_str()));
    let shapes = ShapeClass::ALL.iter().map(|class| shape_item(*class)).collect();
    let class = builder.choice(
        Ask::new("class", say::shape()).help(say::shape_help()),
        saved.map(|form| form.class.as_str()),
        FieldKind::Outline,
        shapes,
    );
    let Some(class) = class else { return Ok(None) };
    // Nobody fills a plate with water.
    let usual_way = (class == ShapeClass::Plate.code()).then_some(ONE_MEASURE);
    let way = builder.choice(Ask::new("way", say::way()), saved.map(way_of).or(usual_way), FieldKind::Choice, ways());
    // Known in another way than before, it is described anew; in the same way, what is not touched stays.
    let described = saved.filter(|form| way.as_deref() == Some(way_of(form)));
    let blank = entity::Form { class, ..described.cloned().unwrap_or_default() };
    let found = match way.as_deref() {
        Some(AREAS) => by_areas(builder, saved, blank),
        Some(PROFILE) => by_profile(context, builder, saved, blank)?,
        Some(PHOTO) => by_photo(context, builder, saved, blank)?,
        Some(ONE_MEASURE) => by_one_measure(builder, saved, described, blank),
        _ => by_capacity(builder, saved, described, blank),
    };
    // Its clay tells apart what pots of mixed bodies need; a profile asks for it beside its stage.
    let found = match way.as_deref() {
        Some(PROFILE | PHOTO) => found,
        _ => {
            let body = clay(context, builder, saved)?;
            found.map(|form| entity::Form { body, ..form })
        }
    };
    let Some(form) = found else { return Ok(None) };
    match form_geometry::try_shape(context.conn, &form) {
        Ok(Ok(shape)) => {
            for note in follows(&shape, &form, builder.style) {
                builder.result(note);
            }
            if let Some(before) = saved
                && let Some(Ok(before)) = usable(form_geometry::try_shape(context.conn, before))?
            {
                for note in target_changes(&before, &shape, builder.style) {
                    builder.result(note);
                }
            }
            builder.result_if(form_geometry::bisque_check(context.conn, &form)?.map(Note::attention));
        }
        Ok(Err(error)) => {
            builder.field_error(field_of(&error, way.as_deref()), error);
            return Ok(None);
        }
        // What a newer version says of a form stays, and can be calculated with there.
        Err(StudioError::Refused { sentence, .. } | StudioError::Newer { sentence }) => {
            builder.result(Note::attention(sentence));
        }
        Err(error) => return Err(error),
    }
    let Some(name) = name else { return Ok(None) };
    let sentence = shared::is_saved(&name);
    let form = move |id| entity::Form { id, name, ..form };
    Ok(Some(PendingWrite::one(context, sentence, form)))
}

const CAPACITY: &str = "capacity";
const PROFILE: &str = "profile";
const PHOTO: &str = "photograph";
const AREAS: &str = "area";
const ONE_MEASURE: &str = "one_measure";

/// The measures that a form can be known by alone, which are their fields' keys, too.
const WIDTH: &str = "width";
const HEIGHT: &str = "height";
const CLAY: &str = "clay";

fn ways() -> Vec<Item> {
    vec![
        item(CAPACITY, say::way_capacity(), say::way_capacity_detail()),
        item(PROFILE, say::way_points(), say::way_points_detail()),
        item(PHOTO, say::way_photograph(), say::way_photograph_detail()),
        item(ONE_MEASURE, say::way_one_measure(), say::way_one_measure_detail()),
        item(AREAS, say::way_areas(), say::way_areas_detail()),
    ]
}

fn way_of(form: &entity::Form) -> &'static str {
    if form.inside_area_mm2.is_some() || form.outside_area_mm2.is_some() {
        AREAS
    } else if form.profile.is_some() {
        PROFILE
    } else if form.capacity_ul.is_none() && measure_of(form).is_some() {
        ONE_MEASURE
    } else {
        CAPACITY
    }
}

/// Which one measure a form is known by.
fn measure_of(form: &entity::Form) -> Option<&'static str> {
    let measures = [(WIDTH, form.width_um), (HEIGHT, form.height_um), (CLAY, form.clay_mg)];
    measures.into_iter().find_map(|(measure, known)| known.map(|_| measure))
}

fn by_capacity(
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Form>,
    described: Option<&entity::Form>,
    blank: entity::Form,
) -> Option<entity::Form> {
    let ask = Ask::new("capacity", say::capacity()).hint(builder.style.volume.symbol()).help(say::capacity_help());
    let capacity = builder.quantity(ask, saved.and_then(|form| form.capacity_ul), VOLUME);
    let form = lines_and_handle(builder, capacity, described, blank)?;
    Some(entity::Form {
        capacity_ul: Some(capacity?.microlitres()),
        width_um: None,
        height_um: None,
        clay_mg: None,
        ..form
    })
}

/// By its width, its height or its clay alone, the rest being as usual for its class.
fn by_one_measure(
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Form>,
    described: Option<&entity::Form>,
    blank: entity::Form,
) -> Option<entity::Form> {
    let measures = vec![
        item(WIDTH, say::known_width(), say::known_width_detail()),
        item(HEIGHT, say::known_height(), ""),
        item(CLAY, say::clay(), say::clay_detail()),
    ];
    let measure = builder.choice(
        Ask::new("measure", say::way_one_measure()),
        described.and_then(measure_of),
        FieldKind::Choice,
        measures,
    )?;
    let (length, mass) = (builder.style.length.symbol(), builder.style.mass.symbol());
    let known = |of: fn(&entity::Form) -> Option<i64>| saved.and_then(of);
    let blank = entity::Form { capacity_ul: None, width_um: None, height_um: None, clay_mg: None, ..blank };
    let form = match measure.as_str() {
        CLAY => {
            let clay = builder.quantity(Ask::new(CLAY, say::clay()).hint(mass), known(|form| form.clay_mg), MASS);
            clay.map(|clay| entity::Form { clay_mg: Some(clay.milligrams()), ..blank })
        }
        HEIGHT => {
            let ask = Ask::new(HEIGHT, say::known_height()).hint(length).help(say::capacity_help());
            let height = builder.quantity(ask, known(|form| form.height_um), LENGTH);
            height.map(|height| entity::Form { height_um: Some(height.micrometres()), ..blank })
        }
        _ => {
            let ask = Ask::new(WIDTH, say::known_width()).hint(length).help(say::capacity_help());
            let width = builder.quantity(ask, known(|form| form.width_um), LENGTH);
            width.map(|width| entity::Form { width_um: Some(width.micrometres()), ..blank })
        }
    };
    lines_and_handle(builder, None, described, form?)
}

/// Where its glaze ends and what handle it has, where its class says the rest.
fn lines_and_handle(
    builder: &mut EditorBuilder<'_>,
    capacity: Option<Millilitres>,
    described: Option<&entity::Form>,
    form: entity::Form,
) -> Option<entity::Form> {
    let usual = form.class.parse::<ShapeClass>().ok().and_then(|class| class.usual(capacity));
    let is_own = |form: &entity::Form| form.bare_foot_um.or(form.overlap_um).or(form.handle_length_um).is_some();
    builder.shown = builder.switch(Ask::new("more", say::foot_lip_handle()), described.is_some_and(is_own));
    let usual_foot = usual.map_or_else(String::new, |usual| builder.style.length(usual.lines.bare_foot));
    let bare_foot = length(
        builder,
        Ask::new(BARE_FOOT, say::bare_foot()).help(say::waxed_foot_help(usual_foot)),
        described.and_then(|form| form.bare_foot_um),
    );
    let overlap = length(
        builder,
        Ask::new(OVERLAP, say::overlap()).help(say::overlap_help()),
        described.and_then(|form| form.overlap_um),
    );
    let handle = handle(builder, described);
    builder.shown = true;
    let (bare_foot_um, overlap_um, (handle_length_um, handle_girth_um)) = (bare_foot?, overlap?, handle?);
    Some(entity::Form { bare_foot_um, overlap_um, handle_length_um, handle_girth_um, ..form })
}

/// Usual handles: length and girth, mm. Common practice, no source.
const HANDLES: [(&str, (f64, f64)); 3] = [("small", (90.0, 40.0)), ("usual", (120.0, 50.0)), ("large", (160.0, 60.0))];
const NO_HANDLE: &str = "none";
const OWN_HANDLE: &str = "own";

/// Length and girth of its handle, um: one of the usual ones, or as measured.
fn handle(builder: &mut EditorBuilder<'_>, saved: Option<&entity::Form>) -> Option<(Option<i64>, Option<i64>)> {
    let um = |(long, around): (f64, f64)| [long, around].map(|mm| Some(Millimetres::new(mm).micrometres()));
    let kept = saved.map(|form| [form.handle_length_um, form.handle_girth_um]).filter(|kept| *kept != [None, None]);
    let known = |kept: [Option<i64>; 2]| {
        HANDLES.iter().find(|(_, size)| um(*size) == kept).map_or(OWN_HANDLE, |(code, _)| *code)
    };
    let mut items = vec![item(NO_HANDLE, say::handle_none(), "")];
    for (code, (long, around)) in HANDLES {
        let (long, around) = (Millimetres::new(long), Millimetres::new(around));
        let size = say::handle_size(builder.style.length(long), builder.style.length(around));
        let area = builder.style.area(tube(long, around));
        items.push(item(code, say::handle_code(code), format!("{size}, {area}")));
    }
    items.push(item(OWN_HANDLE, say::handle_own(), ""));
    let chosen = builder.choice(Ask::new("handle", say::handle()), kept.map(known), FieldKind::Choice, items);
    match chosen.as_deref() {
        Some(OWN_HANDLE) => {
            let kept = kept.unwrap_or_default();
            let long = length(builder, Ask::new("handle_length", say::handle_length()), kept[0]);
            let girth = Ask::new("handle_girth", say::handle_girth()).help(say::handle_girth_help());
            let around = length(builder, girth, kept[1]);
            Some((long?, around?))
        }
        Some(code) => match HANDLES.iter().find(|(known, _)| *known == code) {
            Some((_, size)) => {
                let [long, around] = um(*size);
                Some((long, around))
            }
            None => Some((None, None)),
        },
        None => Some((None, None)),
    }
}

fn by_areas(
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Form>,
    blank: entity::Form,
) -> Option<entity::Form> {
    let inside =
        area(builder, Ask::new("inside_area", say::area_inside()), saved.and_then(|form| form.inside_area_mm2));
    let outside =
        area(builder, Ask::new("outside_area", say::area_outside()), saved.and_then(|form| form.outside_area_mm2));
    let capacity = capacity_if_known(builder, saved);
    Some(entity::Form { inside_area_mm2: inside?, outside_area_mm2: outside?, capacity_ul: capacity?, ..blank })
}

/// From points: those kept, those a photograph gave, or the class's own to begin with.
fn by_profile(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Form>,
    blank: entity::Form,
) -> Result<Option<entity::Form>> {
    let style = builder.style;
    let Some(usual) = usual(builder, saved, &blank) else { return Ok(None) };
    let traced = traced(builder).and_then(Result::ok);
    let saved_points = saved.and_then(|form| form.profile.clone());
    let begin = match (&traced, saved_points) {
        (Some((_, traced)), _) => points::stored(&profile_points(traced)),
        (None, Some(points)) => points,
        (None, None) => usual.as_ref().map(|usual| points::stored(&usual.profile.points)).unwrap_or_default(),
    };
    let symbol = style.length.symbol();
    let table = builder.table(
        Ask::new("points", say::points()).help(say::points_help()),
        &points::shown(&begin, style),
        vec![say::height_in(symbol), say::across_in(symbol), say::wall_in(symbol)],
    );
    let points = points::patched(&table, &begin, style);
    let details = details(context, builder, saved, usual.as_ref(), blank)?;
    let points = match points {
        Ok(points) => points,
        Err(sentence) => {
            builder.field_error("points", sentence);
            return Ok(None);
        }
    };
    let Some(details) = details else { return Ok(None) };
    let form = entity::Form {
        profile: Some(points),
        traced_e4: traced.map_or(saved.and_then(|form| form.traced_e4), |(_, traced)| Some(uncertainty_e4(&traced))),
        ..details
    };
    draw(builder, &form, "way");
    Ok(Some(form))
}

/// From the outline found in a photograph.
fn by_photo(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Form>,
    blank: entity::Form,
) -> Result<Option<entity::Form>> {
    let Some(usual) = usual(builder, saved, &blank) else { return Ok(None) };
    let file = builder.photo(
        Ask::new(TAKEN.photo, say::photograph()).help(say::photograph_help()),
        vec![item("camera", say::take_photograph(), ""), item("gallery", say::choose_picture(), "")],
    );
    let known = builder.choice(
        Ask::new("known", say::known()),
        None,
        FieldKind::Choice,
        vec![
            item("height", say::known_height(), ""),
            item("width", say::known_width(), say::known_width_detail()),
            item("length", say::known_length(), say::known_length_detail()),
        ],
    );
    let symbol = builder.style.length.symbol();
    let size = builder.quantity(Ask::new("size", say::size()).hint(symbol), None, LENGTH);
    // A camera that noted its focal length says how far it was away.
    let camera = if carried_trace(builder).is_some_and(|trace| trace.focal.is_some()) {
        Some(CAMERA)
    } else {
        builder.quantity(
            Ask::new("camera_distance", say::camera_distance()).hint(symbol).help(say::camera_distance_help()),
            Some(CAMERA.micrometres()),
            LENGTH,
        )
    };
    let details = details(context, builder, saved, usual.as_ref(), blank)?;
    let (Some(file), Some(trace)) = (file, carried_trace(builder)) else {
        builder.require("photo", say::photograph_missing());
        return Ok(None);
    };
    let by_length = known.as_deref() == Some("length");
    builder.draw(photo::draw(TAKEN.photo, &file, &trace, by_length.then(|| marks(builder))));
    let found = traced(builder);
    let sure = found.as_ref().and_then(|found| found.as_ref().ok()).map_or(trace.sure, |(_, traced)| traced.sure);
    builder.result(sureness(&trace, sure));
    let (Some(_), Some(_)) = (size, camera) else { return Ok(None) };
    let traced = match found {
        Some(Ok((_, traced))) => traced,
        Some(Err(sentence)) => {
            builder.field_error("size", sentence);
            return Ok(None);
        }
        None => return Ok(None),
    };
    let points = profile_points(&traced);
    Ok(details.map(|details| entity::Form {
        profile: Some(points::stored(&points)),
        traced_e4: Some(uncertainty_e4(&traced)),
        ..details
    }))
}

/// The class's own profile, at the size that is kept: what a form begins from. A tile has none, and is told so; of a class that
/// this version does not know it is not known, and not needed where there is a profile already.
fn usual(builder: &mut EditorBuilder<'_>, saved: Option<&entity::Form>, blank: &entity::Form) -> Option<Option<Usual>> {
    let has_profile = saved.is_some_and(|form| form.profile.is_some());
    match blank.class.parse::<ShapeClass>() {
        Ok(class) => {
            let usual = class.usual(saved.and_then(|form| form.capacity_ul).map(Millilitres::from_microlitres));
            if usual.is_none() {
                builder.field_error("way", say::tile_has_no_profile());
            }
            usual.map(Some)
        }
        Err(_) if has_profile => Some(None),
        Err(error) => {
            builder.field_error("class", error);
            None
        }
    }
}

/// What is known beside the outline: the size it was taken at, the wall, the foot, the glaze lines, the handle.
fn details(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Form>,
    usual: Option<&Usual>,
    blank: entity::Form,
) -> Result<Option<entity::Form>> {
    let saved = saved.filter(|form| form.profile.is_some());
    let or_usual = |pick: fn(&entity::Form) -> Option<i64>, usual: Option<Millimetres>| {
        saved.map_or(usual.map(Millimetres::micrometres), pick)
    };
    let foot = usual.and_then(|usual| usual.profile.foot);
    let Some((stage, body)) = made_of(context, builder, saved)? else { return Ok(None) };
    let wall = length(
        builder,
        Ask::new("wall", say::wall()).help(say::wall_help()),
        or_usual(|form| form.wall_um, usual.map(|usual| usual.profile.wall)),
    );
    let opened = saved
        .is_some_and(|form| form.handle_length_um.or(form.overlap_um).or(form.bisque_mg).or(form.fill_um).is_some());
    builder.shown = builder.switch(Ask::new("more", say::more()), opened);
    let floor = length(
        builder,
        Ask::new("floor", say::floor()).help(say::floor_help()),
        or_usual(|form| form.floor_um, usual.map(|usual| usual.profile.floor)),
    );
    let foot_width = length(
        builder,
        Ask::new("foot_width", say::foot_width()).help(say::foot_width_help()),
        or_usual(|form| form.foot_width_um, foot.map(|foot| foot.width)),
    );
    let foot_height = length(
        builder,
        Ask::new("foot_height", say::foot_height()),
        or_usual(|form| form.foot_height_um, foot.map(|foot| foot.height)),
    );
    let bare_foot = length(
        builder,
        Ask::new(BARE_FOOT, say::bare_foot()).help(say::bare_foot_help()),
        or_usual(|form| form.bare_foot_um, usual.map(|usual| usual.lines.bare_foot)),
    );
    let overlap = length(
        builder,
        Ask::new(OVERLAP, say::overlap()).help(say::overlap_help()),
        or_usual(|form| form.overlap_um, None),
    );
    let fill = length(builder, Ask::new(FILL, say::fill()).help(say::fill_help()), or_usual(|form| form.fill_um, None));
    let handle_length =
        length(builder, Ask::new("handle_length", say::handle_length()), or_usual(|form| form.handle_length_um, None));
    let handle_girth = length(
        builder,
        Ask::new("handle_girth", say::handle_girth()).help(say::handle_girth_help()),
        or_usual(|form| form.handle_girth_um, None),
    );
    let extra = area(
        builder,
        Ask::new("extra_area", say::extra_area()).help(say::extra_area_help()),
        saved.and_then(|form| form.extra_area_mm2),
    );
    let bisque = builder.optional(
        Ask::new("bisque", say::bisque_weight()).hint(builder.style.mass.symbol()).help(say::bisque_weight_help()),
        saved.and_then(|form| form.bisque_mg),
        MASS,
    );
    let capacity = capacity_if_known(builder, saved);
    builder.shown = true;
    // A band or a line at no depth is none, unless that is what was stored.
    let some = |um: Option<i64>, pick: fn(&entity::Form) -> Option<i64>| {
        um.filter(|um| *um > 0 || saved.and_then(pick) == Some(*um))
    };
    let whole = || {
        Some(entity::Form {
            stage,
            body,
            wall_um: wall?,
            floor_um: floor?,
            foot_width_um: some(foot_width?, |form| form.foot_width_um),
            foot_height_um: some(foot_height?, |form| form.foot_height_um),
            bare_foot_um: bare_foot?,
            overlap_um: some(overlap?, |form| form.overlap_um),
            fill_um: some(fill?, |form| form.fill_um),
            handle_length_um: some(handle_length?, |form| form.handle_length_um),
            handle_girth_um: some(handle_girth?, |form| form.handle_girth_um),
            extra_area_mm2: some(extra?, |form| form.extra_area_mm2),
            bisque_mg: bisque?.map(Grams::milligrams),
            capacity_ul: capacity?,
            ..blank
        })
    };
    Ok(whole())
}

/// The code of the stage when it was measured, and the body that tells what it was as bisque.
fn made_of(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Form>,
) -> Result<Option<(Option<String>, Option<Uuid>)>> {
    let stages = Stage::ALL.iter().map(|stage| coded_item(*stage, "")).collect();
    let stage = builder.choice_asked_later(
        Ask::new("stage", say::stage()).help(say::stage_help()),
        saved.map(|form| form.stage.as_deref()),
        Stage::Bisque.code(),
        stages,
    );
    // A form that says nothing of its stage was measured as bisque.
    let is_bisque = stage.as_deref().is_none_or(|stage| stage == Stage::Bisque.code());
    let saved_body = saved.and_then(|form| form.body);
    let is_asked = saved_body.is_some() || !in_use::<entity::Body>(context.conn, None)?.is_empty();
    let body = clay(context, builder, saved)?;
    if body.is_none() && !is_bisque {
        let (field, sentence) = if is_asked { ("body", say::choose_body()) } else { ("stage", say::add_body_first()) };
        builder.field_error(field, sentence);
        return Ok(None);
    }
    Ok(Some((stage, body)))
}

/// The body that a form is made of, where the studio has any.
fn clay(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Form>,
) -> Result<Option<Uuid>> {
    let saved_body = saved.and_then(|form| form.body);
    let bodies = in_use::<entity::Body>(context.conn, saved_body)?;
    if bodies.is_empty() && saved_body.is_none() {
        return Ok(None);
    }
    let none = item("", say::body_not_said(), "");
    let items =
        std::iter::once(none).chain(bodies.iter().map(|body| item(&body.id.to_string(), body.called(), ""))).collect();
    let saved_code = saved_body.map(|id| id.to_string());
    let ask = Ask::new("body", say::body());
    let chosen = builder.choice_or(ask, saved_code.as_deref(), FieldKind::Choice, items, shared::not_on_this_phone());
    Ok(chosen.and_then(|id| id.parse().ok()))
}

/// Draws the form as it was measured.
fn draw(builder: &mut EditorBuilder<'_>, form: &entity::Form, below: &str) {
    // What a newer version says of a profile is not drawn here.
    let Ok(Some(measured)) = form_geometry::measured(form) else { return };
    let points = &measured.profile.points;
    let cut = measured.profile.cut().ok();
    let frame = Frame::around(points, builder.entered_value(touch::FRAME).and_then(Frame::read));
    let fill = form.fill_um.map(Millimetres::from_micrometres);
    let sketch = Sketch { points, frame, lines: &measured.lines, fill, style: builder.style };
    builder.draw(sketch.draw(below, cut.as_ref()));
}

/// What follows from the measures: what it holds, what is glazed, and what to mind.
fn follows(shape: &Form, form: &entity::Form, style: &Style) -> Vec<Note> {
    let mut notes = Vec::new();
    if form.profile.is_some() {
        notes.extend(holds(shape, form, style).map(Note::plain));
    }
    for zone in &shape.zones {
        if zone.kind != ZoneKind::Whole || shape.zones.len() == 1 {
            notes.push(Note::plain(say::zone_area(
                zone.kind.code(),
                style.area(zone.area),
                style.percent(2.0 * zone.relative_uncertainty, 0),
            )));
        }
    }
    let handle = form_geometry::handle(form);
    if let Some(outside) = shape.zone(ZoneKind::Outside).filter(|_| shape.parts.is_empty() && handle.is_positive()) {
        notes.push(Note::plain(say::handle_is(style.area(handle), style.area(outside.area))));
    }
    if !shape.parts.is_empty() {
        let parts: Vec<String> = shape
            .parts
            .iter()
            .filter(|part| part.area.is_positive())
            .map(|part| say::part_area(part.part.code(), style.area(part.area)))
            .collect();
        notes.push(Note::plain(say::parts(sentence_case(&parts.join(", ")))));
    }
    if let Some(off) = shape.capacity_disagreement().filter(|off| off.abs() > CAPACITIES_SYNC_NOW) {
        notes.push(Note::attention(say::capacities_differ(
            if off > 0.0 { "more" } else { "less" },
            style.percent(off.abs(), 0),
        )));
    }
    notes.extend(zone_cautions(shape, form, ZoneKind::Whole, style).into_iter().map(Note::attention));
    notes
}

/// What another size does to targets: those of this form from other forms' control pieces change with its areas, or with what
/// it holds where only that changed. Its own keep their grams.
fn target_changes(before: &Form, after: &Form, style: &Style) -> Vec<Note> {
    let changes = |ratio: f64| {
        let percent = style.percent((ratio - 1.0).abs(), 0);
        let sign = if ratio > 1.0 { "+" } else { "-" };
        (percent != style.percent(0.0, 0)).then(|| format!("{sign}{percent}"))
    };
    let ratios: Vec<(ZoneKind, f64)> =
        after.zones.iter().filter_map(|zone| Some((zone.kind, zone.area / before.zone(zone.kind)?.area))).collect();
    let least = ratios.iter().fold(f64::MAX, |least, (_, ratio)| least.min(*ratio));
    let is_alike = ratios.iter().all(|(_, ratio)| *ratio < least * ALIKE);
    let by_capacity = || {
        let growth = after.class.growth(ZoneKind::Inside, before.capacity?, after.capacity?)?;
        changes(growth.ratio)
    };
    let mut sentences: Vec<String> = if is_alike {
        ratios.first().and_then(|(_, ratio)| changes(*ratio)).map(say::targets_change).into_iter().collect()
    } else {
        let each = ratios.iter().filter_map(|(zone, ratio)| Some((zone, changes(*ratio)?)));
        each.map(|(zone, change)| say::targets_of_zone_change(zone.code(), change)).collect()
    };
    if sentences.is_empty() {
        sentences.extend(by_capacity().map(say::targets_change_by_capacity));
    }
    let mut notes: Vec<Note> = sentences.into_iter().map(Note::attention).collect();
    if !notes.is_empty() {
        notes.push(Note::plain(say::own_targets_stay()));
    }
    notes
}

fn holds(shape: &Form, form: &entity::Form, style: &Style) -> Option<String> {
    let holds = style.volume(shape.profile_capacity?);
    let in_use = form.fill_um.and_then(|um| Some((um, shape.capacity_in_use?)));
    Some(match in_use {
        Some((um, capacity)) => {
            say::holds_in_use(holds, style.volume(capacity), style.length(Millimetres::from_micrometres(um)))
        }
        None => say::holds(holds),
    })
}

/// The outline in a photograph at the size that is entered; `None` while there is none, the sentence where it cannot be.
fn traced(builder: &EditorBuilder<'_>) -> Option<Result<(Trace, Traced), String>> {
    let trace = carried_trace(builder)?;
    let length = |key| builder.entered_value(key).and_then(|text| parse::length(text, builder.style).ok());
    let size = length("size")?;
    let camera = length("camera_distance").unwrap_or(CAMERA);
    let known = match builder.entered_value("known") {
        Some("width") => KnownSize::Width(size),
        Some("length") => marks(builder).known(size, &trace),
        _ => KnownSize::Height(size),
    };
    let traced = trace.profile(&known, camera);
    Some(traced.map(|traced| (trace, traced)).map_err(|error| error.sentence()))
}

fn carried_trace(builder: &EditorBuilder<'_>) -> Option<Trace> {
    builder.entered_value(TAKEN.trace).and_then(|text| serde_json::from_str(text).ok())
}

fn marks(builder: &EditorBuilder<'_>) -> Marks {
    builder.entered_value(TAKEN.marks).and_then(Marks::read).unwrap_or_default()
}

fn profile_points(traced: &Traced) -> Vec<ProfilePoint> {
    traced.points.iter().map(|&(height, radius)| ProfilePoint { height, radius, wall: None }).collect()
}

fn uncertainty_e4(traced: &Traced) -> i64 {
    (traced.relative_uncertainty * 1e4).round() as i64
}

/// How far the outline is to be trusted.
fn sureness(trace: &Trace, sure: Sureness) -> Note {
    let sentence = match trace.handle {
        Some(side) => say::sureness_and_handle(side.code(), sure.name()),
        None => sure.name(),
    };
    Note::attention(sentence)
}

fn length(builder: &mut EditorBuilder<'_>, ask: Ask, um: Option<i64>) -> Option<Option<i64>> {
    let read = builder.optional(ask.hint(builder.style.length.symbol()), um, LENGTH)?;
    Some(read.map(Millimetres::micrometres))
}

fn area(builder: &mut EditorBuilder<'_>, ask: Ask, mm2: Option<i64>) -> Option<Option<i64>> {
    let read = builder.optional(ask.hint(builder.style.area.symbol()), mm2, AREA)?;
    Some(read.map(SquareCentimetres::square_millimetres))
}

fn capacity_if_known(builder: &mut EditorBuilder<'_>, saved: Option<&entity::Form>) -> Option<Option<i64>> {
    let ask = Ask::new("capacity", say::capacity_if_measured()).hint(builder.style.volume.symbol());
    Some(builder.optional(ask, saved.and_then(|form| form.capacity_ul), VOLUME)?.map(Millilitres::microlitres))
}

fn shape_item(class: ShapeClass) -> Item {
    Item { outline: lists::points(class.outline()), ..coded_item(class, "") }
}

/// The field to go back to.
fn field_of(error: &FormError, way: Option<&str>) -> &'static str {
    match error {
        FormError::Profile(error) => match error {
            ProfileError::NoWall => "wall",
            ProfileError::Floor => "floor",
            ProfileError::FootRing => "foot_width",
            ProfileError::NothingToGlaze => BARE_FOOT,
            _ => "points",
        },
        FormError::Capacity { .. } => "capacity",
        FormError::Area { .. } => "inside_area",
        FormError::OneMeasure { .. } | FormError::HeightOfPlate => "measure",
        FormError::NoSize | FormError::HoldsNothing => match way {
            Some(AREAS) => "inside_area",
            Some(ONE_MEASURE) => "measure",
            _ => "capacity",
        },
    }
}
