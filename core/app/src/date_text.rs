//! Times in the potter's words. The offset from UTC comes in with the time, so that this stays pure.

use chrono::{DateTime, Datelike, FixedOffset, NaiveDate, Offset, Timelike, Utc};

use super::messages::dates as say;

/// The moment of a call and the local offset from UTC, from the shell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Record)]
pub struct Now {
    /// Milliseconds since 1970-01-01T00:00:00Z.
    pub unix_ms: i64,
    /// Seconds that local time is ahead of UTC.
    pub utc_offset_s: i32,
}

const MINUTE_MS: i64 = 60_000;
pub(super) const HOUR_MS: i64 = 60 * MINUTE_MS;
pub(super) const DAY_MS: i64 = 24 * HOUR_MS;

/// The months as messages select them.
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

impl Now {
    /// The same local clock at another moment.
    pub fn at(self, unix_ms: i64) -> Now {
        Now { unix_ms, ..self }
    }

    /// The moment at which the local day began, in milliseconds.
    pub(crate) fn day_start(self) -> i64 {
        let offset_ms = i64::from(self.utc_offset_s) * 1000;
        self.unix_ms.saturating_add(offset_ms).div_euclid(DAY_MS).saturating_mul(DAY_MS).saturating_sub(offset_ms)
    }

    /// How many local midnights lie between `unix_ms` and now.
    pub(crate) fn days_since(self, unix_ms: i64) -> i64 {
        self.day_start().saturating_sub(self.at(unix_ms).day_start()).div_euclid(DAY_MS)
    }

    /// "today", "yesterday", "5 days ago"; a moment still to come is "today" or "later": clocks are wrong sometimes.
    pub(crate) fn days_ago(self, unix_ms: i64) -> String {
        match self.days_since(unix_ms) {
            0 => say::today(),
            1 => say::yesterday(),
            days if days < 0 => say::later(),
            days => say::days_ago(days),
        }
    }

    /// "just now", "25 min ago", "3 h ago", and from a day on as [`Now::days_ago`].
    pub(crate) fn ago(self, unix_ms: i64) -> String {
        match self.unix_ms.saturating_sub(unix_ms) {
            passed if !(0..DAY_MS).contains(&passed) => self.days_ago(unix_ms),
            passed if passed < MINUTE_MS => say::just_now(),
            passed if passed < HOUR_MS => say::minutes_ago(passed / MINUTE_MS),
            passed => say::hours_ago(passed / HOUR_MS),
        }
    }

    /// The clock for today ("10:42"), else the date ("3 Nov 10:42", with the year if it is another).
    pub(crate) fn moment(self, unix_ms: i64) -> String {
        let (Some(then), Some(now)) = (self.local(unix_ms), self.local(self.unix_ms)) else {
            return String::new();
        };
        let clock = || say::clock(format!("{:02}", then.hour()), format!("{:02}", then.minute()));
        let month = || say::month(MONTHS[then.month0() as usize]);
        if then.date_naive() == now.date_naive() {
            clock()
        } else if then.year() == now.year() {
            say::date_and_clock(then.day(), month(), clock())
        } else {
            say::date(then.day(), month(), then.year())
        }
    }

    /// The day with its year: "3 Nov 2026".
    pub(crate) fn day(self, unix_ms: i64) -> String {
        let then = self.local(unix_ms);
        then.map(|then| say::date(then.day(), say::month(MONTHS[then.month0() as usize]), then.year()))
            .unwrap_or_default()
    }

    /// The local day as ISO 8601 writes it: "2026-11-03".
    pub(crate) fn iso_day(self, unix_ms: i64) -> String {
        self.local(unix_ms).map(|then| then.format("%Y-%m-%d").to_string()).unwrap_or_default()
    }

    /// The middle of a local day that is written so, unix ms; `None` where it is no day.
    pub(crate) fn noon_of(self, iso_day: &str) -> Option<i64> {
        let noon = NaiveDate::parse_from_str(iso_day, "%Y-%m-%d").ok()?.and_hms_opt(12, 0, 0)?;
        Some(noon.and_utc().timestamp_millis() - i64::from(self.utc_offset_s) * 1000)
    }

    /// The local date and time for the name of a file, as `pattern` says.
    pub(crate) fn stamp(self, pattern: &str) -> String {
        self.local(self.unix_ms).map(|now| now.format(pattern).to_string()).unwrap_or_default()
    }

    fn local(self, unix_ms: i64) -> Option<DateTime<FixedOffset>> {
        let offset = FixedOffset::east_opt(self.utc_offset_s).unwrap_or_else(|| Utc.fix());
        DateTime::<Utc>::from_timestamp_millis(unix_ms).map(|time| time.with_timezone(&offset))
    }
}

/// A text with its first letter large, for a line of its own.
pub(super) fn sentence_case(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 2026-11-25 00:30 in a place two hours ahead of UTC.
    const NOW: Now = Now { unix_ms: 1_795_559_400_000, utc_offset_s: 7200 };

    #[test]
    fn a_day_begins_at_the_local_midnight() {
        assert_eq!(NOW.day_start(), NOW.unix_ms - 30 * 60_000);
        assert_eq!(NOW.days_since(NOW.unix_ms - 31 * 60_000), 1);
        assert_eq!(NOW.days_since(NOW.unix_ms - 29 * 60_000), 0);
    }

    #[test]
    fn a_day_is_written_and_read_where_one_is() {
        assert_eq!((NOW.day(NOW.unix_ms).as_str(), NOW.iso_day(NOW.unix_ms).as_str()), ("25 Nov 2026", "2026-11-25"));
        let noon = NOW.noon_of("2026-11-25").unwrap();
        assert_eq!((NOW.moment(noon).as_str(), NOW.days_since(noon)), ("12:00", 0));
        assert_eq!((NOW.noon_of("2026-02-30"), NOW.noon_of("25.11.2026"), NOW.noon_of("")), (None, None, None));
    }

    #[test]
    fn moments_say_no_more_than_is_needed() {
        assert_eq!(NOW.moment(NOW.unix_ms), "00:30");
        assert_eq!(NOW.moment(NOW.unix_ms - 3_600_000), "24 Nov 23:30");
        assert_eq!(NOW.moment(NOW.unix_ms - 400 * DAY_MS), "21 Oct 2025");
        assert_eq!(NOW.days_ago(NOW.unix_ms - 5 * DAY_MS), "5 days ago");
        let ago = |ms| NOW.ago(NOW.unix_ms - ms);
        assert_eq!([0, 59_999].map(ago), ["just now"; 2]);
        assert_eq!(
            [60_000, HOUR_MS - 1, HOUR_MS, DAY_MS - 1].map(ago),
            ["1 min ago", "59 min ago", "1 h ago", "23 h ago"]
        );
        assert_eq!([DAY_MS, 2 * DAY_MS, -HOUR_MS].map(ago), ["yesterday", "2 days ago", "today"]);
        assert_eq!(NOW.days_ago(NOW.unix_ms + 3 * DAY_MS), "on a future date");
    }
}
