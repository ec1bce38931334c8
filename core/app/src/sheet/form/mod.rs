//! The sheet of a form: by its capacity, by points measured with calipers, by a photograph, or by areas reckoned otherwise.

mod draw;
mod photo;
mod points;
mod touch;

use self::draw::{BARE_FOOT, FILL, Frame, OVERLAP, Sketch};
use self::photo::{Marks, TAKEN};
use super::draft::{Ask, Draft, area_text, coded_item, item, length_text, mass_text, volume_text};
use super::{Desk, FieldKind, Item, Keeping, Note};
use crate::Result;
use crate::facts::code;
use crate::lists;
use crate::rows::{Keepsake, in_use};
use crate::shapes::{self, zone_cautions};
use crate::words::sentence_case;
use laydown_domain::form::silhouette::{KnownSize, Sureness, Trace, Traced};
use laydown_domain::form::{Form, FormError, ProfileError, ProfilePoint, ShapeClass, Stage, Usual, ZoneKind};
use laydown_domain::units::{Grams, Millilitres, Millimetres, SquareCentimetres, Style, parse};
use laydown_store::entity;

pub(super) use self::photo::photographed;
pub(super) use self::touch::touched;

/// Distance from the lens to the pot unless told: an arm's length. Common practice, no source.
const CAMERA: Millimetres = Millimetres::new(600.0);

/// Two ways of knowing what a form holds may differ by this much before it is said. Common practice, no source.
const CAPACITIES_AGREE: f64 = 0.1;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Form> = desk.current()?;
    let kept = current.as_ref();
    draft.title = kept.map_or("New form", |_| "Form").to_owned();
    draft.remove_label = "Put this form away";

    let name = draft.text(Ask::new("name", "Name").hint("Breakfast mug"), kept.map(|form| form.name.as_str()));
    let shapes = ShapeClass::ALL.iter().map(|class| shape_item(*class)).collect();
    let class = draft.choice(
        Ask::new("class", "Shape").help("The outline nearest to yours."),
        kept.map(|form| form.class.as_str()),
        FieldKind::Outline,
        shapes,
    );
    let Some(class) = class else { return Ok(None) };
    let way = draft.choice(Ask::new("way", "Known by"), kept.map(way_of), FieldKind::Choice, ways());
    let blank = entity::Form { class, ..entity::Form::default() };
    let found = match way.as_deref() {
        Some(AREA) => by_areas(draft, kept, blank),
        Some(PROFILE) => by_profile(desk, draft, kept, blank)?,
        Some(PHOTO) => by_photo(desk, draft, kept, blank)?,
        _ => by_capacity(draft, kept, blank),
    };
    let Some(form) = found else { return Ok(None) };
    let shape = match shapes::try_shape(desk.conn, &form)? {
        Ok(shape) => shape,
        Err(error) => {
            draft.refuse(field_of(&error, way.as_deref() == Some(AREA)), error);
            return Ok(None);
        }
    };
    for note in follows(&shape, &form, draft.style) {
        draft.result(note);
    }
    draft.result_if(shapes::bisque_check(desk.conn, &form)?.map(Note::attention));
    let Some(name) = name else { return Ok(None) };
    let sentence = format!("{name} is kept.");
    let form = move |id| entity::Form { id, name, ..form };
    Ok(Some(Keeping::one(desk.id, sentence, form)))
}

const CAPACITY: &str = "capacity";
const PROFILE: &str = "profile";
const PHOTO: &str = "photograph";
const AREA: &str = "area";

fn ways() -> Vec<Item> {
    vec![
        item(
            CAPACITY,
            "Capacity",
            "Fill the bisque piece to the rim and weigh or measure the water. Quick, and a little rough.",
        ),
        item(PROFILE, "Measured points", "A few widths taken with calipers, the wall, the foot. The surest."),
        item(
            PHOTO,
            "A photograph",
            "From the side, level with its middle, before a plain ground, with one size known.",
        ),
        item(AREA, "Areas", "If you have measured or reckoned the glazed areas yourself."),
    ]
}

fn way_of(form: &entity::Form) -> &'static str {
    if form.inside_area_mm2.is_some() || form.outside_area_mm2.is_some() {
        AREA
    } else if form.profile.is_some() {
        PROFILE
    } else {
        CAPACITY
    }
}

fn by_capacity(draft: &mut Draft<'_>, kept: Option<&entity::Form>, blank: entity::Form) -> Option<entity::Form> {
    let ask = Ask::new("capacity", "Capacity to the rim")
        .hint(draft.style.volume.symbol())
        .help("Of the bisque piece, not of the fired one.");
    let kept = kept.and_then(|form| form.capacity_ul).map(|ul| volume_text(draft.style, ul));
    let capacity = draft.quantity(ask, kept, parse::volume)?;
    Some(entity::Form { capacity_ul: Some(capacity.microlitres()), ..blank })
}

fn by_areas(draft: &mut Draft<'_>, kept: Option<&entity::Form>, blank: entity::Form) -> Option<entity::Form> {
    let inside = area(draft, Ask::new("inside_area", "Area inside"), kept.and_then(|form| form.inside_area_mm2));
    let outside = area(
        draft,
        Ask::new("outside_area", "Area outside, as far as it is glazed"),
        kept.and_then(|form| form.outside_area_mm2),
    );
    let capacity = capacity_if_known(draft, kept);
    Some(entity::Form { inside_area_mm2: inside?, outside_area_mm2: outside?, capacity_ul: capacity?, ..blank })
}

/// From points: those kept, those a photograph gave, or the class's own to begin with.
fn by_profile(
    desk: &Desk<'_>,
    draft: &mut Draft<'_>,
    kept: Option<&entity::Form>,
    blank: entity::Form,
) -> Result<Option<entity::Form>> {
    let style = draft.style;
    let Some(usual) = usual(draft, kept, &blank)? else { return Ok(None) };
    let traced = traced(draft).and_then(Result::ok);
    let begin = match (&traced, kept.and_then(|form| form.profile.as_ref())) {
        (Some((_, traced)), _) => profile_points(traced),
        (None, Some(points)) => shapes::profile_points(points)?,
        (None, None) => usual.profile.points.clone(),
    };
    let symbol = style.length.symbol();
    let table = draft.table(
        Ask::new("points", "Outside, from the ground up")
            .help("Height above the ground and width across, where the outline bends: foot, belly, neck, rim."),
        &points::text(&begin, style),
        vec![format!("Height, {symbol}"), format!("Across, {symbol}"), format!("Wall, {symbol}")],
    );
    let points = points::read(&table, style);
    let details = details(desk, draft, kept, &usual, blank)?;
    let points = match points {
        Ok(points) => points,
        Err(sentence) => {
            draft.refuse("points", sentence);
            return Ok(None);
        }
    };
    let Some(details) = details else { return Ok(None) };
    let form = entity::Form {
        profile: Some(points::stored(&points)),
        traced_e4: traced.map_or(kept.and_then(|form| form.traced_e4), |(_, traced)| Some(uncertainty_e4(&traced))),
        ..details
    };
    draw(draft, &form, &points, "way")?;
    Ok(Some(form))
}

/// From the outline found in a photograph.
fn by_photo(
    desk: &Desk<'_>,
    draft: &mut Draft<'_>,
    kept: Option<&entity::Form>,
    blank: entity::Form,
) -> Result<Option<entity::Form>> {
    let Some(usual) = usual(draft, kept, &blank)? else { return Ok(None) };
    let file = draft.photo(
        Ask::new(TAKEN.photo, "Photograph").help(
            "Stand the piece before a plain wall or cloth, its handle to one side. Hold the phone level, at half the height of the piece, an arm's length away.",
        ),
        vec![
            item("camera", "Take the photograph", ""),
            item("gallery", "Choose a picture", ""),
        ],
    );
    let known = draft.choice(
        Ask::new("known", "What do you know of it?"),
        None,
        FieldKind::Choice,
        vec![
            item("height", "Its height", ""),
            item("width", "Its width at the widest", "Without the handle."),
            item(
                "length",
                "A coin or a ruler in the picture",
                "It must stand upright or lie beside the piece, as far from the phone as the middle of the piece.",
            ),
        ],
    );
    let symbol = draft.style.length.symbol();
    let size = draft.quantity(Ask::new("size", "How much is that?").hint(symbol), None, parse::length);
    let camera = draft.quantity(
        Ask::new("camera_distance", "From the phone to the piece").hint(symbol).help("About is good enough."),
        Some(draft.style.length_number(CAMERA)),
        parse::length,
    );
    let details = details(desk, draft, kept, &usual, blank)?;
    let (Some(file), Some(trace)) = (file, carried_trace(draft)) else {
        draft.want("photo", "Photograph: take one, or choose a picture.".to_owned());
        return Ok(None);
    };
    let by_length = known.as_deref() == Some("length");
    draft.draw(photo::draw(TAKEN.photo, &file, &trace, by_length.then(|| marks(draft))));
    draft.result(sureness(&trace));
    let (Some(_), Some(_)) = (size, camera) else { return Ok(None) };
    let traced = match traced(draft) {
        Some(Ok((_, traced))) => traced,
        Some(Err(sentence)) => {
            draft.refuse("size", sentence);
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

/// The class's own profile, at the size that is kept: what a form begins from. A tile has none.
fn usual(draft: &mut Draft<'_>, kept: Option<&entity::Form>, blank: &entity::Form) -> Result<Option<Usual>> {
    let class: ShapeClass = code(&blank.class)?;
    let usual = class.usual(kept.and_then(|form| form.capacity_ul).map(Millilitres::from_microlitres));
    if usual.is_none() {
        draft.refuse("way", "A tile has no profile. Choose “Areas” and give the area of its glazed face.");
    }
    Ok(usual)
}

/// What is known beside the outline: the size it was taken at, the wall, the foot, the glaze lines, the handle.
fn details(
    desk: &Desk<'_>,
    draft: &mut Draft<'_>,
    kept: Option<&entity::Form>,
    usual: &Usual,
    blank: entity::Form,
) -> Result<Option<entity::Form>> {
    let kept = kept.filter(|form| form.profile.is_some());
    let or_usual = |pick: fn(&entity::Form) -> Option<i64>, usual: Option<Millimetres>| {
        kept.map_or(usual.map(Millimetres::micrometres), pick)
    };
    let foot = usual.profile.foot;
    let Some((stage, body)) = made_of(desk, draft, kept)? else { return Ok(None) };
    let wall = length(
        draft,
        Ask::new("wall", "Wall").help("Its usual thickness; a point may have its own."),
        or_usual(|form| form.wall_um, Some(usual.profile.wall)),
    );
    let opened = kept
        .is_some_and(|form| form.handle_length_um.or(form.overlap_um).or(form.bisque_mg).or(form.fill_um).is_some());
    draft.shown = draft.switch(Ask::new("more", "Foot, glaze lines, handle, weight"), opened);
    let floor = length(
        draft,
        Ask::new("floor", "Floor, in the middle"),
        or_usual(|form| form.floor_um, Some(usual.profile.floor)),
    );
    let foot_width = length(
        draft,
        Ask::new("foot_width", "Foot ring, width of the clay").help("Empty for a flat bottom."),
        or_usual(|form| form.foot_width_um, foot.map(|foot| foot.width)),
    );
    let foot_height = length(
        draft,
        Ask::new("foot_height", "Foot ring, height"),
        or_usual(|form| form.foot_height_um, foot.map(|foot| foot.height)),
    );
    let bare_foot = length(
        draft,
        Ask::new(BARE_FOOT, "Bare foot").help("The height above the ground at which the glaze begins."),
        or_usual(|form| form.bare_foot_um, Some(usual.lines.bare_foot)),
    );
    let overlap = length(
        draft,
        Ask::new(OVERLAP, "Overlap below the rim")
            .help("How far down, outside, both glazes lie on each other. Empty for none."),
        or_usual(|form| form.overlap_um, None),
    );
    let fill = length(
        draft,
        Ask::new(FILL, "Filled to, below the rim")
            .help("Where the drink ends, if you want to know what it holds in use."),
        or_usual(|form| form.fill_um, None),
    );
    let handle_length = length(
        draft,
        Ask::new("handle_length", "Handle, length along it"),
        or_usual(|form| form.handle_length_um, None),
    );
    let handle_girth = length(
        draft,
        Ask::new("handle_girth", "Handle, girth").help("A strip of paper around it."),
        or_usual(|form| form.handle_girth_um, None),
    );
    let extra = area(
        draft,
        Ask::new("extra_area", "Knob, spout and the like, area"),
        kept.and_then(|form| form.extra_area_mm2),
    );
    let bisque = draft.optional(
        Ask::new("bisque", "Weight of a bisque piece")
            .hint(draft.style.mass.symbol())
            .help("With its handle. It shows whether a size was mistyped."),
        kept.and_then(|form| form.bisque_mg).map(|mg| mass_text(draft.style, mg)),
        parse::mass,
    );
    let capacity = capacity_if_known(draft, kept);
    draft.shown = true;
    // A band or a line at no depth is none.
    let some = |um: Option<i64>| um.filter(|um| *um > 0);
    let whole = || {
        Some(entity::Form {
            stage: Some(stage.code().to_owned()),
            body,
            wall_um: wall?,
            floor_um: floor?,
            foot_width_um: some(foot_width?),
            foot_height_um: some(foot_height?),
            bare_foot_um: bare_foot?,
            overlap_um: some(overlap?),
            fill_um: some(fill?),
            handle_length_um: some(handle_length?),
            handle_girth_um: some(handle_girth?),
            extra_area_mm2: some(extra?),
            bisque_mg: bisque?.map(Grams::milligrams),
            capacity_ul: capacity?,
            ..blank
        })
    };
    Ok(whole())
}

/// When it was measured, and the body that tells what it was as bisque.
fn made_of(
    desk: &Desk<'_>,
    draft: &mut Draft<'_>,
    kept: Option<&entity::Form>,
) -> Result<Option<(Stage, Option<uuid::Uuid>)>> {
    let stages = Stage::ALL.iter().map(|stage| coded_item(stage, "")).collect();
    let kept_stage = kept.and_then(|form| form.stage.as_deref()).unwrap_or(Stage::Bisque.code());
    let stage = draft.choice(
        Ask::new("stage", "Measured when").help("Glaze is weighed onto bisque: other sizes are reckoned back to it."),
        Some(kept_stage),
        FieldKind::Choice,
        stages,
    );
    let stage: Stage = code(&stage.unwrap_or_default())?;
    let kept_body = kept.and_then(|form| form.body);
    let bodies = in_use::<entity::Body>(desk.conn, kept_body)?;
    if bodies.is_empty() {
        if stage != Stage::Bisque {
            draft.refuse("stage", "Add its body under Studio first: how it shrinks says how large it was as bisque.");
            return Ok(None);
        }
        return Ok(Some((stage, None)));
    }
    let none = item("", "Not said", "");
    let items =
        std::iter::once(none).chain(bodies.iter().map(|body| item(&body.id.to_string(), &body.called(), ""))).collect();
    let chosen =
        draft.choice(Ask::new("body", "Body"), kept_body.map(|id| id.to_string()).as_deref(), FieldKind::Choice, items);
    let body = bodies.iter().map(|body| body.id).find(|id| Some(id.to_string()) == chosen);
    if body.is_none() && stage != Stage::Bisque {
        draft.refuse("body", "Choose its body: how it shrinks says how large it was as bisque.");
        return Ok(None);
    }
    Ok(Some((stage, body)))
}

/// Draws the form as it was measured.
fn draw(draft: &mut Draft<'_>, form: &entity::Form, points: &[ProfilePoint], below: &str) -> Result<()> {
    let Some(measured) = shapes::measured(form)? else { return Ok(()) };
    let cut = measured.profile.cut().ok();
    let frame = Frame::around(points, draft.carried(touch::FRAME).and_then(Frame::read));
    let fill = form.fill_um.map(Millimetres::from_micrometres);
    let sketch = Sketch { points, frame, lines: &measured.lines, fill, style: draft.style };
    draft.draw(sketch.draw(below, cut.as_ref()));
    Ok(())
}

/// What follows from the measures: what it holds, what is glazed, and what to mind.
fn follows(shape: &Form, form: &entity::Form, style: &Style) -> Vec<Note> {
    let mut notes = Vec::new();
    if form.profile.is_some() {
        notes.extend(holds(shape, form, style).map(Note::plain));
    }
    for zone in &shape.zones {
        if zone.kind != ZoneKind::Whole || shape.zones.len() == 1 {
            notes.push(Note::plain(format!(
                "{}: {}, give or take {}",
                sentence_case(zone.kind.name()),
                style.area(zone.area),
                style.percent(2.0 * zone.relative_uncertainty, 0)
            )));
        }
    }
    if !shape.parts.is_empty() {
        let parts: Vec<String> = shape
            .parts
            .iter()
            .filter(|part| part.area.is_positive())
            .map(|part| format!("{} {}", part.part.name(), style.area(part.area)))
            .collect();
        notes.push(Note::plain(format!("{}.", sentence_case(&parts.join(", ")))));
    }
    if let Some(off) = shape.capacity_disagreement().filter(|off| off.abs() > CAPACITIES_AGREE) {
        notes.push(Note::attention(format!(
            "The measured capacity is {} {} than the points give. Look for a mistyped width or height.",
            style.percent(off.abs(), 0),
            if off > 0.0 { "more" } else { "less" }
        )));
    }
    notes.extend(zone_cautions(shape, form, ZoneKind::Whole, style).into_iter().map(Note::attention));
    notes
}

fn holds(shape: &Form, form: &entity::Form, style: &Style) -> Option<String> {
    let holds = format!("Holds {} to the rim", style.volume(shape.profile_capacity?));
    let in_use = form.fill_um.and_then(|um| Some((um, shape.capacity_in_use?)));
    Some(match in_use {
        Some((um, capacity)) => format!(
            "{holds}, {} filled to {} below it",
            style.volume(capacity),
            style.length(Millimetres::from_micrometres(um))
        ),
        None => holds,
    })
}

/// The outline in a photograph at the size that is entered; `None` while there is none, the sentence where it cannot be.
fn traced(draft: &Draft<'_>) -> Option<Result<(Trace, Traced), String>> {
    let trace = carried_trace(draft)?;
    let length = |key| draft.carried(key).and_then(|text| parse::length(text, draft.style).ok());
    let size = length("size")?;
    let camera = length("camera_distance").unwrap_or(CAMERA);
    let known = match draft.carried("known") {
        Some("width") => KnownSize::Width(size),
        Some("length") => marks(draft).known(size, &trace),
        _ => KnownSize::Height(size),
    };
    let traced = trace.profile(&known, camera);
    Some(traced.map(|traced| (trace, traced)).map_err(|error| error.to_string()))
}

fn carried_trace(draft: &Draft<'_>) -> Option<Trace> {
    draft.carried(TAKEN.trace).and_then(|text| serde_json::from_str(text).ok())
}

fn marks(draft: &Draft<'_>) -> Marks {
    draft.carried(TAKEN.marks).and_then(Marks::read).unwrap_or_default()
}

fn profile_points(traced: &Traced) -> Vec<ProfilePoint> {
    traced.points.iter().map(|&(height, radius)| ProfilePoint { height, radius, wall: None }).collect()
}

fn uncertainty_e4(traced: &Traced) -> i64 {
    (traced.relative_uncertainty * 1e4).round() as i64
}

/// How far the outline is to be trusted.
fn sureness(trace: &Trace) -> Note {
    let handle = match trace.handle {
        Some(side) => format!(" The handle on the {} is left out: give its size below.", side.name()),
        None => String::new(),
    };
    let sentence = format!("{}{handle}", trace.sure.name());
    match trace.sure {
        Sureness::Sure => Note::plain(sentence),
        Sureness::Fair | Sureness::Doubtful => Note::attention(sentence),
    }
}

fn length(draft: &mut Draft<'_>, ask: Ask, um: Option<i64>) -> Option<Option<i64>> {
    let kept = um.map(|um| length_text(draft.style, um));
    let read = draft.optional(ask.hint(draft.style.length.symbol()), kept, parse::length)?;
    Some(read.map(Millimetres::micrometres))
}

fn area(draft: &mut Draft<'_>, ask: Ask, mm2: Option<i64>) -> Option<Option<i64>> {
    let kept = mm2.map(|mm2| area_text(draft.style, mm2));
    let read = draft.optional(ask.hint(draft.style.area.symbol()), kept, parse::area)?;
    Some(read.map(SquareCentimetres::square_millimetres))
}

fn capacity_if_known(draft: &mut Draft<'_>, kept: Option<&entity::Form>) -> Option<Option<i64>> {
    let ask = Ask::new("capacity", "Capacity to the rim, if measured").hint(draft.style.volume.symbol());
    let kept = kept.and_then(|form| form.capacity_ul).map(|ul| volume_text(draft.style, ul));
    Some(draft.optional(ask, kept, parse::volume)?.map(Millilitres::microlitres))
}

fn shape_item(class: ShapeClass) -> Item {
    Item { outline: lists::points(class.outline()), ..coded_item(&class, "") }
}

/// The field to go back to.
fn field_of(error: &FormError, by_area: bool) -> &'static str {
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
        _ if by_area => "inside_area",
        _ => "capacity",
    }
}
