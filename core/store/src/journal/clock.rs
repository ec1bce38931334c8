//! The hybrid logical clock that orders events across phones whose own clocks are wrong.

use serde::{Deserialize, Serialize};

/// Bits of the packed clock that count events within one millisecond.
const COUNTER_BITS: u32 = 16;

/// A moment of the hybrid logical clock: unix milliseconds in the upper 48 bits, a counter in the lower 16.
///
/// It follows the phone's clock when that runs ahead, and counts on from the last moment seen when the phone's clock
/// stands still or was set back, so that an event made after another was seen always sorts after it.
/// Source of the method: Kulkarni, Demirbas, Madappa, Avva and Leone, "Logical Physical Clocks" (2014); from memory.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Clock(i64);

impl Clock {
    /// Before every event.
    pub const ZERO: Clock = Clock(0);

    /// The last moment an event may carry: the start of the year 2200.
    ///
    /// A later one can only come from a broken file. Were it believed, every event after it would have to follow it.
    pub const LATEST: Clock = Clock(7_258_118_400_000 << COUNTER_BITS);

    /// How far ahead of this phone's own clock another's is followed: 400 days, ms. A date that is wrong by a year happens; the order
    /// of what one phone kept after it saw another's then still shows.
    pub const MOST_AHEAD_MS: i64 = 400 * 86_400_000;

    /// No phone has an earlier date than laydown, unless its battery was empty: the start of 2026, unix ms.
    pub const EARLIEST_NOW_MS: i64 = 1_767_225_600_000;

    /// The clock packed in `packed`, or `None` where that lies outside [`Clock::ZERO`] to [`Clock::LATEST`].
    pub fn from_packed(packed: i64) -> Option<Clock> {
        (Clock::ZERO.0..=Clock::LATEST.0).contains(&packed).then_some(Clock(packed))
    }

    /// The packed form: milliseconds shifted left by 16, plus the counter. Sorts as the clock does.
    pub fn packed(self) -> i64 {
        self.0
    }

    /// Unix time of this moment, ms. Near the time on the phone that made the event, never a measure of it.
    pub const fn millis(self) -> i64 {
        self.0 >> COUNTER_BITS
    }

    /// How many events came before within the same millisecond.
    pub fn counter(self) -> u16 {
        (self.0 & i64::from(u16::MAX)) as u16
    }

    /// The moment for the next event on this phone, whose own clock now says `now_ms` (unix ms).
    ///
    /// Always later than `self`, whatever the phone's clock says; a full counter carries into the next millisecond.
    /// Only at [`Clock::LATEST`] does it stand still: events of one device then still sort by their sequence.
    #[must_use]
    pub fn tick(self, now_ms: i64) -> Clock {
        let wall = now_ms.clamp(0, Clock::LATEST.millis()) << COUNTER_BITS;
        Clock(wall.max(self.0 + 1).min(Clock::LATEST.0))
    }

    /// As [`Clock::tick`] for the first event of a command: in a millisecond that no event before it has, so that what one command
    /// made can be told from what the next one made, also where the phone's clock stands still or was set back.
    #[must_use]
    pub fn begin(self, now_ms: i64) -> Clock {
        // The millisecond after a full counter is where a command that goes on goes on.
        let free = self.millis() + if self.counter() == u16::MAX { 2 } else { 1 };
        self.tick(now_ms.max(free))
    }

    /// Whether an event with this clock goes on with the command of the event `before` it on the same phone.
    pub fn goes_on_from(self, before: Clock) -> bool {
        // At the latest moment the clock stands still and tells no command from the next: there each event is one.
        if before == Clock::LATEST {
            return false;
        }
        // Within a command each event is one later. What is not later than the one before it was made after a clock that was far
        // ahead and is not followed any more.
        let is_carried = before.counter() == u16::MAX && self.0 == before.0 + 1;
        self > before && (self.millis() == before.millis() || is_carried)
    }

    /// This clock after an event of another phone, stamped `remote`, was seen: never earlier than either. One that is more
    /// than [`Clock::MOST_AHEAD_MS`] later than this phone's own clock, which says `now_ms` (unix ms), is not followed.
    #[must_use]
    pub fn observe(self, remote: Clock, now_ms: i64) -> Clock {
        if remote.is_ahead(now_ms) { self } else { self.max(remote) }
    }

    /// Whether this moment is more than [`Clock::MOST_AHEAD_MS`] later than `now_ms` (unix ms).
    pub fn is_ahead(self, now_ms: i64) -> bool {
        self.millis() > now_ms.max(Clock::EARLIEST_NOW_MS).saturating_add(Clock::MOST_AHEAD_MS)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    const NOW: i64 = 1_790_000_000_000;

    #[test]
    fn follows_the_wall_clock_when_it_moves_on() {
        let first = Clock::ZERO.tick(NOW);
        assert_eq!((first.millis(), first.counter()), (NOW, 0));
        let next = first.tick(NOW + 5);
        assert_eq!((next.millis(), next.counter()), (NOW + 5, 0));
    }

    #[test]
    fn counts_within_a_millisecond_and_when_the_phone_is_set_back() {
        let first = Clock::ZERO.tick(NOW);
        let same = first.tick(NOW);
        assert_eq!((same.millis(), same.counter()), (NOW, 1));
        let set_back = same.tick(NOW - 86_400_000);
        assert_eq!((set_back.millis(), set_back.counter()), (NOW, 2));
    }

    #[test]
    fn a_full_counter_carries_into_the_next_millisecond() {
        let full = (0..=u16::MAX).fold(Clock::ZERO, |clock, _| clock.tick(NOW));
        assert_eq!((full.millis(), full.counter()), (NOW, u16::MAX));
        let carried = full.tick(NOW);
        assert_eq!((carried.millis(), carried.counter()), (NOW + 1, 0));
        assert!(carried > full);
    }

    #[test]
    fn a_command_begins_in_a_millisecond_of_its_own_and_goes_on_however_long_it_is() {
        let first = Clock::ZERO.begin(NOW);
        assert_eq!((first.millis(), first.counter()), (NOW, 0));
        for now in [NOW, NOW - 86_400_000] {
            let next = first.tick(NOW).begin(now);
            assert_eq!((next.millis(), next.counter()), (NOW + 1, 0));
            assert!(!next.goes_on_from(first.tick(NOW)));
        }
        let mut clock = first;
        for _ in 0..100_000 {
            let next = clock.tick(NOW);
            assert!(next.goes_on_from(clock));
            clock = next;
        }
        // Also where it ended with a full counter, on a phone whose clock stands still.
        let full = (0..u16::MAX).fold(Clock::ZERO.begin(NOW), |clock, _| clock.tick(NOW));
        assert_eq!(full.counter(), u16::MAX);
        assert!(full.tick(NOW).goes_on_from(full));
        assert!(!full.begin(NOW).goes_on_from(full));
        // And where a clock that was ahead is not followed any more, and the next command falls into its millisecond.
        let ahead = Clock::ZERO.begin(NOW).tick(NOW);
        assert!(!Clock::ZERO.begin(NOW).goes_on_from(ahead));
        assert_eq!(Clock::LATEST.begin(i64::MAX), Clock::LATEST);
        assert!(!Clock::LATEST.goes_on_from(Clock::LATEST));
    }

    #[test]
    fn an_event_made_after_seeing_another_phones_sorts_after_it() {
        let ahead = Clock::ZERO.tick(NOW + 3_600_000);
        let here = Clock::ZERO.tick(NOW).observe(ahead, NOW);
        assert!(here.tick(NOW + 1) > ahead);
        let far = Clock::ZERO.tick(NOW + 2 * Clock::MOST_AHEAD_MS);
        assert_eq!(here.observe(far, NOW), here);
    }

    #[test]
    fn absurd_times_are_held_in_range() {
        assert_eq!(Clock::ZERO.tick(i64::MIN), Clock(1));
        assert_eq!(Clock::ZERO.tick(i64::MAX), Clock::LATEST);
        assert_eq!(Clock::LATEST.tick(NOW), Clock::LATEST);
        assert_eq!(Clock::from_packed(-1), None);
        assert_eq!(Clock::from_packed(i64::MAX), None);
        assert_eq!(Clock::from_packed(Clock::LATEST.packed()), Some(Clock::LATEST));
    }

    proptest! {
        #[test]
        fn never_goes_back(times in prop::collection::vec(any::<i64>().prop_map(|ms| ms.rem_euclid(NOW * 2)), 1..200)) {
            let mut clock = Clock::ZERO;
            for now in times {
                let next = clock.tick(now);
                prop_assert!(next > clock);
                prop_assert!(next.millis() >= now);
                clock = next;
            }
        }
    }
}
