//! What the Weigh screen shows, from what lies on the bench.

use crate::in_words::StyleWords as _;
use rusqlite::Connection;

use super::context::{Answer, WeighContext};
use super::dip;
use super::glazed_piece::GlazedPiece;
use super::{
    Field, FieldError, Gauge, RecentCoat, SetupStep, TargetView, VerdictView, WeighEntry, WeighField, WeighMode,
    WeighView, first_field,
};
use crate::bisque::{absorption, lot_of, usual_bare};
use crate::date_text::sentence_case;
use crate::draft;
use crate::evidence::{preference, scale_of, step_of, style_of, usable, verdict_kind};
use crate::in_words::{self, Named, name_of};
use crate::kiln::piece_name;
use crate::lists::{buckets, forms, scales};
use crate::messages::{common, editor_bisque_lot as lot, weigh as say};
use crate::pooled::Cache;
use crate::{EditorKind, Note, Now, Result, Row, StudioError};
use laydown_domain::coat::scale::ScaleAdvice;
use laydown_domain::coat::target::{Source, Target};
use laydown_domain::coat::verdict::{Verdict, VerdictKind};
use laydown_domain::form::ZoneKind;
use laydown_domain::units::{Grams, Style, parse};
use laydown_store::entity::{self, Entity};
use laydown_store::query;

/// How many of the last coats the screen lists.
const RECENT: u32 = 8;

pub(super) fn view(conn: &Connection, now: Now, entry: WeighEntry, cache: &Cache) -> Result<WeighView> {
    let preference = preference(conn)?;
    let style = style_of(&preference);
    let entry = match entry.field {
        Field::Seconds if !preference.ask_dip => {
            WeighEntry { field: first_field(entry.way.unwrap_or_default()), ..entry }
        }
        _ => entry,
    };
    // What is chosen may have come from elsewhere with figures that cannot be: something else can still be chosen.
    let learned = WeighContext::load(conn, style, &entry).and_then(|mut context| {
        context.iter_mut().try_for_each(|context| context.learn(conn, now, cache))?;
        Ok(context)
    });
    let (context, trouble) = match learned {
        Err(StudioError::Refused { sentence, .. } | StudioError::Newer { sentence }) => (None, Some(sentence)),
        loaded => (loaded?, None),
    };
    let mut entry = context.as_ref().map_or(entry, |context| context.entry.clone());
    if entry.draft.is_empty() {
        entry.draft = draft::hand_out(conn, now, "coat")?.to_string();
    }
    let mut view = WeighView {
        missing: Vec::new(),
        form: String::new(),
        bucket: String::new(),
        zone: String::new(),
        scale: String::new(),
        forms: forms(conn, &style, &entry.form)?,
        buckets: buckets(conn, now, &style, &entry.bucket)?,
        zones: Vec::new(),
        scales: scales(conn, &style, &entry.scale)?,
        fields: fields(&entry, &style, preference.ask_dip),
        target: None,
        gauge: None,
        verdict: None,
        question: None,
        waiting: String::new(),
        refusal: None,
        moved: None,
        notes: Vec::new(),
        recent: recent(conn, now, &style)?,
        tally: tally(conn, now)?,
        can_save: false,
        entry,
    };
    let Some(context) = context else {
        match trouble {
            Some(sentence) => view.notes.push(Note::attention(sentence)),
            None => view.missing = missing(&view),
        }
        return Ok(view);
    };
    view.form = context.form.name.clone();
    view.bucket = say::glaze_and_bucket(&context.glaze.name, &context.bucket.name);
    let piece = GlazedPiece::of(conn, &view.entry)?;
    let zone = context.zone();
    view.zone = piece.as_ref().map_or_else(|| sentence_case(&zone.name()), |piece| piece.zone_title(zone));
    view.scale = context.scale_row.name.clone();
    view.zones = zones(&context);
    let target = match context.target() {
        Ok(target) => target,
        Err(StudioError::Refused { sentence, .. }) => {
            view.notes.push(Note::attention(sentence));
            return Ok(view);
        }
        Err(error) => return Err(error),
    };
    view.notes = piece.iter().flat_map(|piece| piece.notes(now)).chain(context.notes(now, &target)).collect();
    if piece.is_none() {
        view.notes.extend(wet_bisque(conn, now, &context)?);
    }
    view.notes.extend(dip::hint(conn, now, &context, &target)?);
    // Whoever comes to the bench next sees whose name is on it.
    view.notes.extend(preference.hand.map(|hand| Note::plain(say::glazed_by(hand))));
    view.moved = context.moved(&target);
    view.target = Some(target_view(&context, &target));
    scales_for(conn, &context, &target, &mut view.scales)?;
    let (mut net, mut laydown) = (None, None);
    if is_all_there(&view.entry) {
        let usual = still_being_typed(&context, &target);
        match context.answer(conn, &target) {
            answer if usual.is_some() => {
                view.waiting = usual.map(say::every_digit).unwrap_or_default();
                view.can_save = matches!(answer, Ok(Answer::Verdict(..)));
            }
            Ok(Answer::Verdict(verdict, _)) => {
                net = Some(verdict.net);
                laydown = Some(verdict.laydown);
                view.verdict = Some(verdict_view(&context, now, &target, &verdict));
                view.can_save = true;
            }
            Ok(Answer::Question(question)) => view.question = Some(question),
            Err(StudioError::Refused { field, sentence }) => {
                view.refusal = Field::from_key(&field).map(|field| FieldError { field, sentence });
            }
            Err(error) => return Err(error),
        }
    }
    if preference.ask_dip
        && let Err(StudioError::Refused { sentence, .. }) = context.seconds()
    {
        view.refusal = Some(FieldError { field: Field::Seconds, sentence });
        view.can_save = false;
    }
    let sums = piece.iter().flat_map(|piece| piece.sum_notes(zone, laydown, &style)).collect::<Vec<_>>();
    view.notes.splice(0..0, sums);
    view.gauge = Some(gauge(&context, &target, net));
    Ok(view)
}

/// That a bare piece is heavier than those of its form, as rinsed bisque is that has not dried.
fn wet_bisque(conn: &Connection, now: Now, context: &WeighContext) -> Result<Option<Note>> {
    let is_bare_typed = context.entry.way == Some(WeighMode::TwoWeights);
    let bare = parse::mass(&context.entry.bare, &context.style).ok().filter(|_| is_bare_typed);
    let (Some(bare), Some(usual)) = (bare, usual_bare(conn, &context.form)?) else { return Ok(None) };
    let most = lot_of(conn, context.form.body, now.unix_ms)?.as_ref().and_then(absorption);
    let over = usual.water_in(bare, most);
    let mass = |grams: Grams| context.mass(grams);
    Ok(over.map(|over| Note::attention(lot::wet(mass(bare), mass(over), mass(usual.weight)))))
}

/// Says of each scale whether it can decide about this coat on this piece.
fn scales_for(conn: &Connection, context: &WeighContext, target: &Target, rows: &mut [Row]) -> Result<()> {
    let span = (target.low, target.high);
    let is_by_chance = matches!(target.source, Source::Pooled { .. });
    let typed = parse::mass(&context.entry.bare, &context.style).ok();
    let piece = typed.or(context.form.bisque_mg.map(Grams::from_milligrams));
    for row in rows {
        let scale = row.id.parse().ok().map(|id| entity::Scale::load(conn, id)).transpose()?.flatten();
        if let Some(scale) = scale.map(|scale| usable(scale_of(&scale))).transpose()?.flatten() {
            let advice = match scale.advice(piece, target.wet, span) {
                // By chances a coarse scale can say "probably".
                ScaleAdvice::TooCoarse if is_by_chance => ScaleAdvice::DecidesOnlyJust,
                advice => advice,
            };
            let fits = in_words::fits(advice);
            row.detail = [std::mem::take(&mut row.detail), fits].join(", ");
        }
    }
    Ok(())
}

/// Whether every field has something typed in it.
fn is_all_there(entry: &WeighEntry) -> bool {
    match entry.way.unwrap_or_default() {
        WeighMode::Net => !entry.net.trim().is_empty(),
        WeighMode::TwoWeights => !entry.bare.trim().is_empty() && !entry.glazed.trim().is_empty(),
    }
}

/// A reading as long as this one is expected to be, while it is still being typed: a verdict on "31" that is on its way to
/// "31.4" would only distract. `None` once it is finished.
fn still_being_typed(context: &WeighContext, target: &Target) -> Option<String> {
    let entry = &context.entry;
    let (typed, usual) = match (entry.way.unwrap_or_default(), entry.field) {
        (WeighMode::Net, _) => (&entry.net, context.style.mass_number(target.wet, context.scale.step)),
        (WeighMode::TwoWeights, Field::Bare) => (&entry.bare, entry.glazed.trim().to_owned()),
        (WeighMode::TwoWeights, _) => {
            let bare = parse::mass(&entry.bare, &context.style).ok()?;
            // As the bare piece was read: some leave out what is nothing.
            let whole = (bare + target.wet) / Grams::new(context.style.mass.grams());
            (&entry.glazed, context.style.number(whole, decimals(entry.bare.trim()).unwrap_or(0)))
        }
    };
    is_unfinished(typed.trim(), &usual).then(|| format!("{usual} {}", context.style.mass.symbol()))
}

/// Whether a number has fewer digits than the usual one and none of them where its last digits go.
fn is_unfinished(typed: &str, usual: &str) -> bool {
    let digits = |text: &str| text.chars().filter(char::is_ascii_digit).count();
    let is_plain = typed.chars().all(|c| c.is_ascii_digit() || ".,".contains(c));
    let is_open = match decimals(usual) {
        Some(usual) => decimals(typed).unwrap_or(0) < usual,
        None => decimals(typed).is_none(),
    };
    is_plain && is_open && digits(typed) < digits(usual)
}

/// How many digits follow the decimal mark; `None` where there is no mark.
fn decimals(text: &str) -> Option<usize> {
    text.split_once(['.', ',']).map(|(_, after)| after.chars().filter(char::is_ascii_digit).count())
}

fn target_view(context: &WeighContext, target: &Target) -> TargetView {
    let words = in_words::target(target, &context.style, context.scale.step);
    let trust = context.trust(target);
    let (low, high) = trust.span(target);
    let span = in_words::span(&context.style, low, high, context.scale.step);
    TargetView {
        id: context.target_id(),
        wet: context.mass(target.wet),
        span: if trust.weakness().is_some() { say::may_be(span) } else { say::right_is(span) },
        source: words.source,
        rests_on: context.right_on_aim(target).map_or(words.rests_on, in_words::right_on_aim),
        sure: words.sure,
        tolerance: match target.source {
            Source::Pooled { .. } => in_words::accepted_by_chance(),
            _ => say::tolerance(
                context.style.percent(target.tolerance, 0),
                &context.glaze.name,
                context.job.sensitivity.code(),
            ),
        },
        options: context.options(target),
        why: in_words::why_target(),
    }
}

fn verdict_view(context: &WeighContext, now: Now, target: &Target, verdict: &Verdict) -> VerdictView {
    let words = in_words::verdict(verdict, &context.style);
    VerdictView {
        kind: verdict.kind,
        headline: words.headline,
        act: words.act,
        detail: words.detail,
        rests: in_words::rests(&context.trust(target), context.checked_at.map(|at| now.days_ago(at))),
        certainty: words.certainty,
        carries: words.carries,
        // Said only where it says something new: not when it is the weight just read.
        on_control: words.on_control.filter(|_| differs_on_control(context, verdict)).unwrap_or_default(),
        spoken: words.spoken,
    }
}

fn differs_on_control(context: &WeighContext, verdict: &Verdict) -> bool {
    verdict.on_control.is_some_and(|wet| context.mass(wet) != context.mass(verdict.net))
}

/// So much of the gauge lies beyond the span on either side, as a part of the way from the aim to its farther end.
const BEYOND: f64 = 0.2;

fn gauge(context: &WeighContext, target: &Target, net: Option<Grams>) -> Gauge {
    let trust = context.trust(target);
    let (low, high) = trust.span(target);
    let aim = target.wet.value();
    let reaches = (high.value() - aim).max(aim - low.value()) * (1.0 + BEYOND);
    let half_span = (2.5 * aim * target.tolerance).max(reaches);
    let place = |grams: f64| ((grams - aim) / (2.0 * half_span) + 0.5).clamp(0.0, 1.0);
    Gauge {
        low: place(low.value()),
        high: place(high.value()),
        guess: trust.weakness().is_some(),
        aim: place(aim),
        reading: net.map(|net| place(net.value())),
        blur: (context.scale.net_half_width().value() / (2.0 * half_span)).min(0.5),
    }
}

fn fields(entry: &WeighEntry, style: &Style, asks_seconds: bool) -> Vec<WeighField> {
    let field = |field: Field, label: String, text: &str| WeighField {
        field,
        label,
        text: text.to_owned(),
        unit: style.mass.symbol().to_owned(),
        active: field == entry.field,
    };
    let mut fields = match entry.way.unwrap_or_default() {
        WeighMode::Net => vec![field(Field::Net, say::net(), &entry.net)],
        WeighMode::TwoWeights => {
            vec![field(Field::Bare, say::bare(), &entry.bare), field(Field::Glazed, say::glazed(), &entry.glazed)]
        }
    };
    if asks_seconds {
        let seconds = field(Field::Seconds, say::seconds(), &entry.seconds);
        fields.push(WeighField { unit: say::seconds_unit(), ..seconds });
    }
    fields
}

fn missing(view: &WeighView) -> Vec<SetupStep> {
    let step = |editor, title, detail, done| SetupStep { editor, title, detail, done };
    vec![
        step(EditorKind::Form, say::form(), say::form_help(), !view.forms.is_empty()),
        step(EditorKind::Glaze, say::glaze(), say::glaze_help(), !view.buckets.is_empty()),
        step(EditorKind::Scale, say::scale(), say::scale_help(), !view.scales.is_empty()),
    ]
}

fn zones(context: &WeighContext) -> Vec<Row> {
    context
        .zones
        .iter()
        .map(|kind| Row {
            id: kind.code().to_owned(),
            title: sentence_case(&kind.name()),
            detail: String::new(),
            chosen: *kind == context.zone(),
            outline: Vec::new(),
        })
        .collect()
}

fn recent(conn: &Connection, now: Now, style: &Style) -> Result<Vec<RecentCoat>> {
    let coats = query::latest_coats(conn, RECENT)?;
    let rows = coats.iter().map(|coat| usable(recent_coat(conn, now, style, coat)));
    Ok(rows.collect::<Result<Vec<_>>>()?.into_iter().flatten().collect())
}

fn recent_coat(conn: &Connection, now: Now, style: &Style, coat: &entity::Coat) -> Result<RecentCoat> {
    let piece = piece_name(conn, std::slice::from_ref(coat))?;
    let glaze = entity::Glaze::load(conn, coat.glaze)?.map(|glaze| glaze.name);
    let kind = verdict_kind(coat);
    Ok(RecentCoat {
        id: coat.id.to_string(),
        when: glaze.into_iter().chain([now.moment(coat.at)]).collect::<Vec<_>>().join(", "),
        title: common::form_and_zone(piece, name_of::<ZoneKind>(&coat.zone)),
        wet: style.mass(Grams::from_milligrams(coat.net_mg), step_of(conn, coat)?),
        verdict: kind,
        word: name_of::<VerdictKind>(&coat.verdict),
        control: coat.control,
    })
}

fn tally(conn: &Connection, now: Now) -> Result<String> {
    let (all, within) = query::tally(conn, now.day_start(), VerdictKind::Within.code())?;
    Ok(match all {
        0 => say::nothing_today(),
        all => say::today(all, within),
    })
}
