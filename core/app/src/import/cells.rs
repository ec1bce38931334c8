//! What stands in a cell: a day and a time, a yes or a no, a side of the piece.

use chrono::{FixedOffset, NaiveDate, NaiveTime, TimeZone};

use super::vocabulary;
use crate::Now;
use laydown_domain::coded::coded;
use laydown_domain::form::ZoneKind;
use laydown_domain::units::DecimalMark;

coded! {
    /// Which comes first where a date is written in figures.
    "date_order" DateOrder {
        /// 3/11/2026 is in November.
        DayFirst = "day_first",
        /// 3/11/2026 is in March.
        MonthFirst = "month_first",
    }
}

/// A moment as it stands in a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Stamp {
    date: NaiveDate,
    time: Option<NaiveTime>,
    /// Where the sheet says how far its clock is from UTC.
    offset: Option<FixedOffset>,
}

impl Stamp {
    /// With the time that stands in a cell of its own.
    pub(super) fn with_time(self, text: &str) -> Option<Stamp> {
        let (time, offset) = clock(text)?;
        Some(Stamp { time: Some(time), offset, ..self })
    }

    pub(super) fn has_time(self) -> bool {
        self.time.is_some()
    }

    /// Whether the moment is known whatever the clocks did in summer.
    pub(super) fn is_exact(self) -> bool {
        self.offset.is_some()
    }

    /// Unix ms; noon by the local clock where no time is given.
    pub(super) fn unix_ms(self, now: Now) -> Option<i64> {
        let offset = self.offset.or_else(|| FixedOffset::east_opt(now.utc_offset_s))?;
        let local = self.date.and_time(self.time.unwrap_or(NaiveTime::from_hms_opt(12, 0, 0)?));
        Some(offset.from_local_datetime(&local).single()?.timestamp_millis())
    }
}

/// Why a cell is no date.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum DateError {
    /// It is none.
    NoDate,
    /// It is another day when the month comes first.
    TwoWays,
}

/// A date whose order in figures may not be known yet.
enum Day {
    Known(NaiveDate),
    /// Year, and the two figures before it.
    Figures(i32, u32, u32),
}

/// Whether the text is a date, in whatever order.
pub(super) fn is_date(text: &str) -> bool {
    day_and_clock(text).is_some()
}

/// The order that this date can only have; `None` where it may have either, or its order is plain.
pub(super) fn order_of(text: &str) -> Option<DateOrder> {
    match day_and_clock(text)? {
        (Day::Figures(_, first, second), _) if first > 12 && second <= 12 => Some(DateOrder::DayFirst),
        (Day::Figures(_, first, second), _) if second > 12 && first <= 12 => Some(DateOrder::MonthFirst),
        _ => None,
    }
}

/// Reads a date with or without a time: ISO 8601, figures in the order given, or a month by its English name.
pub(super) fn stamp(text: &str, order: Option<DateOrder>) -> Result<Stamp, DateError> {
    let (day, clock) = day_and_clock(text).ok_or(DateError::NoDate)?;
    let date = match day {
        Day::Known(date) => Some(date),
        Day::Figures(year, first, second) if first == second => NaiveDate::from_ymd_opt(year, second, first),
        Day::Figures(year, first, second) => match order {
            Some(DateOrder::DayFirst) => NaiveDate::from_ymd_opt(year, second, first),
            Some(DateOrder::MonthFirst) => NaiveDate::from_ymd_opt(year, first, second),
            None => return Err(DateError::TwoWays),
        },
    };
    let (time, offset) = clock.map_or((None, None), |(time, offset)| (Some(time), offset));
    Ok(Stamp { date: date.ok_or(DateError::NoDate)?, time, offset })
}

type Clock = (NaiveTime, Option<FixedOffset>);

/// Dates are ASCII, and longer text is none.
fn day_and_clock(text: &str) -> Option<(Day, Option<Clock>)> {
    let text = text.trim();
    if text.len() > 40 || !text.is_ascii() {
        return None;
    }
    let Some(colon) = text.find(':') else { return Some((day(text)?, None)) };
    let hour = text[..colon].rfind(|c: char| !c.is_ascii_digit())? + 1;
    let date = text[..hour].trim_end_matches([' ', ',', 'T', 't']);
    Some((day(date)?, Some(clock(&text[hour..])?)))
}

fn day(text: &str) -> Option<Day> {
    if text.len() == 8 && text.bytes().all(|byte| byte.is_ascii_digit()) {
        let figures = (text[..4].parse().ok()?, text[4..6].parse().ok()?, text[6..].parse().ok()?);
        return NaiveDate::from_ymd_opt(figures.0, figures.1, figures.2).map(Day::Known);
    }
    let parts: Vec<&str> = text.split([' ', '/', '-', '.', ',']).filter(|part| !part.is_empty()).collect();
    let &[first, second, third] = parts.as_slice() else { return None };
    let number = |part: &str| part.trim_end_matches(|c: char| c.is_ascii_alphabetic()).parse::<u32>().ok();
    let known = |year: &str, month: u32, day: &str| {
        NaiveDate::from_ymd_opt(four_figures(year)?, month, number(day)?).map(Day::Known)
    };
    if let Some(month) = month(second) {
        return if first.len() == 4 { known(first, month, third) } else { known(third, month, first) };
    }
    if let Some(month) = month(first) {
        return known(third, month, second);
    }
    let figures = |part: &str| part.parse::<u32>().ok();
    if first.len() == 4 {
        return known(first, figures(second)?, third);
    }
    let (year, first, second) = (four_figures(third)?, figures(first)?, figures(second)?);
    // Where dates are written with points, the day comes first.
    if text.contains('.') {
        return NaiveDate::from_ymd_opt(year, second, first).map(Day::Known);
    }
    ((1..=31).contains(&first) && (1..=31).contains(&second) && (first <= 12 || second <= 12))
        .then_some(Day::Figures(year, first, second))
}

/// A year of four figures, or of this century where it has two.
fn four_figures(text: &str) -> Option<i32> {
    match (text.len(), text.parse::<u16>().ok()?) {
        (4, year) => Some(i32::from(year)),
        (2, year) => Some(i32::from(year) + 2000),
        _ => None,
    }
}

fn month(text: &str) -> Option<u32> {
    const MONTHS: [&str; 12] = [
        "january",
        "february",
        "march",
        "april",
        "may",
        "june",
        "july",
        "august",
        "september",
        "october",
        "november",
        "december",
    ];
    let text = text.to_ascii_lowercase();
    let named =
        MONTHS.iter().zip(1..).find(|(name, _)| text.len() >= 3 && (name.starts_with(&text) || text == "sept"))?;
    Some(if text == "sept" { 9 } else { named.1 })
}

/// "10:15", "10:15:30.5", "3:05 pm", "10:15Z", "10:15+02:00".
fn clock(text: &str) -> Option<Clock> {
    let text = text.trim().to_ascii_lowercase();
    let end = text.find(|c: char| !c.is_ascii_digit() && c != ':' && c != '.').unwrap_or(text.len());
    let (figures, rest) = (&text[..end], text[end..].trim());
    let mut parts = figures.split(':');
    let hour: u32 = parts.next()?.parse().ok()?;
    let minute: u32 = parts.next()?.parse().ok()?;
    let seconds = parts.next().map_or(Some(0.0), |seconds| seconds.parse::<f64>().ok())?;
    let half = match rest {
        "am" | "a.m." => Some(0),
        "pm" | "p.m." => Some(12),
        _ => None,
    };
    let hour = match half {
        Some(half) if (1..=12).contains(&hour) => hour % 12 + half,
        Some(_) => return None,
        None => hour,
    };
    let is_whole = parts.next().is_none() && (0.0..60.0).contains(&seconds);
    let time = NaiveTime::from_hms_milli_opt(hour, minute, seconds as u32, (seconds.fract() * 1e3) as u32)?;
    let offset = match rest {
        "" => None,
        "z" | "utc" => Some(FixedOffset::east_opt(0)?),
        _ if half.is_some() => None,
        rest => Some(rest.parse().ok()?),
    };
    is_whole.then_some((time, offset))
}

/// Yes or no; an empty cell is no.
pub(super) fn yes(text: &str) -> Option<bool> {
    match text.to_lowercase().as_str() {
        "" | "0" | "-" => Some(false),
        "1" | "x" | "✓" | "✔" => Some(true),
        word => vocabulary::yes(word),
    }
}

/// A side of the piece in the words that are in use.
pub(super) fn zone(text: &str) -> Option<ZoneKind> {
    vocabulary::zone(&plain(text))
}

/// The text as it is compared: in small letters, with one space between words.
pub(super) fn plain(text: &str) -> String {
    text.split_whitespace().map(str::to_lowercase).collect::<Vec<_>>().join(" ")
}

/// The decimal mark that these numbers are written with: where one of them can be read in one way only, the others are
/// written as it is. `None` where no number has a mark, `Err` where they could be meant two ways. `thousands` says whether
/// a number may be so large that a mark parts its thousands.
pub(super) fn decimal_mark<'a>(
    numbers: impl Iterator<Item = &'a str>,
    thousands: bool,
) -> Result<Option<DecimalMark>, TwoWays> {
    let (mut point, mut comma, mut either) = (false, false, false);
    for number in numbers {
        let Some((before, after)) = number.split_once(['.', ',']) else { continue };
        if after.contains(['.', ',']) {
            continue;
        }
        let figures = after.bytes().take_while(u8::is_ascii_digit).count();
        if thousands && figures == 3 && (1..=3).contains(&before.len()) && !before.starts_with('0') {
            either = true;
        } else if figures > 0 {
            *(if number.contains(',') { &mut comma } else { &mut point }) = true;
        }
    }
    match (point, comma) {
        (true, false) => Ok(Some(DecimalMark::Point)),
        (false, true) => Ok(Some(DecimalMark::Comma)),
        _ if either => Err(TwoWays),
        _ => Ok(None),
    }
}

/// Numbers that could be meant two ways.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct TwoWays;
