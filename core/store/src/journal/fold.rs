//! What an entity is now, from all that was ever written about it.
//!
//! All of it follows from the set of events alone, never from the order in which they came:
//!
//! 1. **Order.** Clock, then device, then sequence. But whatever the clocks say, an event comes after the earlier ones of
//!    its own device, after the event that it retracts, and after those that it says it has seen.
//! 2. **Fields.** Each field has the last value that a standing event gave it. A value that the field cannot have is left out.
//! 3. **Kinds apart.** Events of another kind are about another thing that has the same id: no event changes a kind.
//! 4. **Retractions.** An event stands unless a standing retraction names it. A retraction is an event too.
//! 5. **Nothing is lost unseen.** The retraction of an event that made the whole thing is void while an edit that builds on it
//!    stands and whoever retracted had not seen that edit. Once he has, retracting again counts.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet, BinaryHeap, HashMap, HashSet};

use serde_json::Value;

use super::event::{Body, DeviceId, Event, EventId, Kind, SEEN};

/// What an entity is now: the last value set for each of its fields.
#[derive(Debug, Clone, PartialEq)]
pub struct State {
    /// What sort of thing it is.
    pub kind: Kind,
    /// Its fields; those taken away are not there.
    pub fields: Body,
}

/// What the fold is told of the things that events are about.
pub trait Rules {
    /// Whether a field of something of this kind can have this value.
    fn can_be(&self, kind: &Kind, field: &str, value: &Value) -> bool;

    /// Whether a body has all that something of this kind needs, so that an event with it makes the whole thing.
    fn is_whole(&self, kind: &Kind, body: &Body) -> bool;
}

/// Rules for what nothing is known of: any value may be, and nothing is whole.
#[derive(Debug, Clone, Copy, Default)]
pub struct NoRules;

impl Rules for NoRules {
    fn can_be(&self, _: &Kind, _: &str, _: &Value) -> bool {
        true
    }

    fn is_whole(&self, _: &Kind, _: &Body) -> bool {
        false
    }
}

/// Folds the events of one entity into what it is now, as a thing of `kind`; `None` where all that was said of it is retracted.
pub fn fold<'a>(events: impl IntoIterator<Item = &'a Event>, kind: &Kind, rules: &dyn Rules) -> Option<State> {
    History::of(events, rules).state(kind, rules)
}

/// All that was ever written about one entity, in order, and what of it stands.
pub struct History<'a> {
    ordered: Vec<&'a Event>,
    stands: Vec<bool>,
    restored: Vec<Restored>,
}

/// A retraction that is void, and the edit that makes it so.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Restored {
    /// The event that made the thing, and stands again.
    pub made: EventId,
    /// Its retraction.
    pub retraction: EventId,
    /// The edit that whoever retracted had not seen.
    pub edit: EventId,
}

impl<'a> History<'a> {
    /// The history of one entity; its events in any order, however often each.
    pub fn of(events: impl IntoIterator<Item = &'a Event>, rules: &dyn Rules) -> History<'a> {
        let ordered = in_order(events);
        let Standing { stands, restored } = effective(&ordered, rules);
        History { ordered, stands, restored }
    }

    /// The events in order, each once, and whether each stands.
    pub fn events(&self) -> impl DoubleEndedIterator<Item = (&'a Event, bool)> {
        self.ordered.iter().copied().zip(self.stands.iter().copied())
    }

    /// The events that stand.
    pub fn effective(&self) -> HashSet<EventId> {
        self.events().filter(|(_, stands)| *stands).map(|(event, _)| event.id()).collect()
    }

    /// The retractions that are void since whoever made them had not seen an edit.
    pub fn restored(&self) -> &[Restored] {
        &self.restored
    }

    /// What the entity is as a thing of `kind`; `None` where nothing of that stands.
    pub fn state(&self, kind: &Kind, rules: &dyn Rules) -> Option<State> {
        let mut said = self.events().filter(|(event, stands)| *stands && event.kind == *kind).peekable();
        said.peek()?;
        let mut fields = Body::new();
        for (event, _) in said {
            let set = event.body.iter().filter(|(name, value)| *name != SEEN && rules.can_be(kind, name, value));
            fields.extend(set.map(|(name, value)| (name.clone(), value.clone())));
        }
        fields.retain(|_, value| *value != Value::Null);
        Some(State { kind: kind.clone(), fields })
    }
}

/// The events in the order that every phone agrees on, each once.
fn in_order<'a>(events: impl IntoIterator<Item = &'a Event>) -> Vec<&'a Event> {
    let mut ordered: Vec<&Event> = events.into_iter().collect();
    if ordered.len() < 2 {
        return ordered;
    }
    ordered.sort_by_key(|event| event.order());
    ordered.dedup_by_key(|event| event.id());
    let before = Before::of(&ordered);
    if before.are_saved() { ordered } else { before.order(&ordered) }
}

/// What must come before each event, whatever the clocks say.
struct Before(Vec<Vec<usize>>);

impl Before {
    fn of(by_clock: &[&Event]) -> Before {
        let mut of_device: HashMap<DeviceId, Vec<(i64, usize)>> = HashMap::new();
        for (at, event) in by_clock.iter().enumerate() {
            of_device.entry(event.device).or_default().push((event.seq, at));
        }
        of_device.values_mut().for_each(|events| events.sort_unstable());
        let place = |id: EventId| {
            let events = of_device.get(&id.device)?;
            let found = events.binary_search_by_key(&id.seq, |(seq, _)| *seq).ok()?;
            Some((events, found))
        };
        let needed = by_clock.iter().map(|event| {
            let earlier = place(event.id()).and_then(|(events, own)| events.get(own.checked_sub(1)?));
            // Only what is there can have been seen: nobody can say that he has seen all that another will ever write.
            let named = event.retracted().into_iter().chain(event.seen().into_iter().flatten());
            let named = named.filter_map(|id| place(id).and_then(|(events, found)| events.get(found)));
            earlier.into_iter().chain(named).map(|(_, at)| *at).collect()
        });
        Before(needed.collect())
    }

    /// Whether the order by the clocks does already.
    fn are_saved(&self) -> bool {
        self.0.iter().enumerate().all(|(at, before)| before.iter().all(|earlier| *earlier < at))
    }

    /// By the clocks as far as that may be. Where events say of each other that they came before, which no honest device does,
    /// the first of them by the clocks comes first.
    fn order<'a>(&self, by_clock: &[&'a Event]) -> Vec<&'a Event> {
        let mut after: Vec<Vec<usize>> = vec![Vec::new(); by_clock.len()];
        let mut open: Vec<usize> = vec![0; by_clock.len()];
        for (at, before) in self.0.iter().enumerate() {
            for earlier in before.iter().filter(|earlier| **earlier != at) {
                after[*earlier].push(at);
                open[at] += 1;
            }
        }
        let mut left: BTreeSet<usize> = (0..by_clock.len()).collect();
        let mut ready: BinaryHeap<Reverse<usize>> =
            left.iter().filter(|at| open[**at] == 0).map(|at| Reverse(*at)).collect();
        let mut ordered = Vec::with_capacity(by_clock.len());
        while let Some(next) = ready.pop().map(|Reverse(at)| at).or_else(|| left.first().copied()) {
            if !left.remove(&next) {
                continue;
            }
            ordered.push(by_clock[next]);
            for later in &after[next] {
                open[*later] = open[*later].saturating_sub(1);
                if open[*later] == 0 {
                    ready.push(Reverse(*later));
                }
            }
        }
        ordered
    }
}

struct Standing {
    stands: Vec<bool>,
    restored: Vec<Restored>,
}

/// Walks back from the last event: a retraction comes after its target and is settled before the walk reaches that, so no
/// ring of retractions can arise. What makes whole things is looked at in the end, since that depends on what else stands.
fn effective(ordered: &[&Event], rules: &dyn Rules) -> Standing {
    if ordered.iter().all(|event| event.kind != Kind::RETRACT) {
        return Standing { stands: vec![true; ordered.len()], restored: Vec::new() };
    }
    let place: HashMap<EventId, usize> = ordered.iter().enumerate().map(|(at, event)| (event.id(), at)).collect();
    let mut retractions: Vec<Vec<usize>> = vec![Vec::new(); ordered.len()];
    for (at, event) in ordered.iter().enumerate() {
        let target = event.retracted().and_then(|target| place.get(&target).copied());
        if let Some(target) = target.filter(|target| *target < at && ordered[*target].entity == event.entity) {
            retractions[target].push(at);
        }
    }
    let mut stands = vec![true; ordered.len()];
    for at in (0..ordered.len()).rev() {
        stands[at] = !retractions[at].iter().any(|retraction| stands[*retraction]);
    }

    let mut restored = Vec::new();
    let seen = Seen { ordered, retractions: &retractions, stands: &stands };
    for (made, edits) in edits_by_whole(ordered, rules) {
        if stands[made] {
            continue;
        }
        let by: Vec<usize> = retractions[made].iter().copied().filter(|retraction| stands[*retraction]).collect();
        let unseen = edits.into_iter().find(|edit| stands[*edit] && !by.iter().any(|by| seen.had(*by, *edit)));
        if let Some(edit) = unseen {
            let restore = |by: &usize| Restored {
                made: ordered[made].id(),
                retraction: ordered[*by].id(),
                edit: ordered[edit].id(),
            };
            restored.extend(by.iter().map(restore));
        }
    }
    for restored in &restored {
        stands[place[&restored.made]] = true;
    }
    Standing { stands, restored }
}

/// Each event that makes a whole thing, with the edits that build on it: those after it and before the next such.
fn edits_by_whole(ordered: &[&Event], rules: &dyn Rules) -> BTreeMap<usize, Vec<usize>> {
    let mut last: HashMap<(&Kind, uuid::Uuid), usize> = HashMap::new();
    let mut edits: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for (at, event) in ordered.iter().enumerate().filter(|(_, event)| event.kind != Kind::RETRACT) {
        if rules.is_whole(&event.kind, &event.body) {
            last.insert((&event.kind, event.entity), at);
        } else if let Some(whole) = last.get(&(&event.kind, event.entity)) {
            edits.entry(*whole).or_default().push(at);
        }
    }
    edits
}

/// What those who retracted had seen.
struct Seen<'a> {
    ordered: &'a [&'a Event],
    retractions: &'a [Vec<usize>],
    stands: &'a [bool],
}

impl Seen<'_> {
    /// Whether an edit was seen by whoever made a retraction, or did it again after it had been undone.
    fn had(&self, retraction: usize, edit: usize) -> bool {
        let (mut to_ask, mut asked) = (vec![retraction], HashSet::new());
        while let Some(by) = to_ask.pop() {
            if !asked.insert(by) {
                continue;
            }
            if self.had_itself(self.ordered[by], self.ordered[edit]) {
                return true;
            }
            let again = self.retractions[by].iter().flat_map(|undone| &self.retractions[*undone]);
            to_ask.extend(again.copied().filter(|again| self.stands[*again]));
        }
        false
    }

    fn had_itself(&self, by: &Event, edit: &Event) -> bool {
        if by.device == edit.device {
            return edit.seq < by.seq;
        }
        match by.seen() {
            Some(seen) => seen.iter().any(|last| last.device == edit.device && edit.seq <= last.seq),
            // Made before retractions said what they had seen. What was seen has an earlier clock.
            None => edit.order() < by.order(),
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use proptest::sample::Index;
    use serde_json::json;
    use uuid::Uuid;

    use super::*;
    use crate::journal::Clock;

    const GLAZE: Kind = Kind::of("glaze");

    /// What has a name and a density is whole; a name is a text.
    struct Glazes;

    impl Rules for Glazes {
        fn can_be(&self, _: &Kind, field: &str, value: &Value) -> bool {
            field != "name" || value.is_string()
        }

        fn is_whole(&self, _: &Kind, body: &Body) -> bool {
            body.contains_key("name") && body.contains_key("density")
        }
    }

    fn fold<'a>(events: impl IntoIterator<Item = &'a Event>) -> Option<State> {
        super::fold(events, &GLAZE, &NoRules)
    }

    fn effective<'a>(events: impl IntoIterator<Item = &'a Event>) -> HashSet<EventId> {
        History::of(events, &NoRules).effective()
    }

    fn id(number: i64) -> EventId {
        EventId { device: DeviceId(Uuid::from_u128(900)), seq: number }
    }

    fn event(number: i64, at: i64, body: Value) -> Event {
        Event {
            device: DeviceId(Uuid::from_u128(900)),
            seq: number,
            clock: Clock::ZERO.tick(at),
            entity: Uuid::from_u128(1),
            kind: Kind::of("glaze"),
            body: body.as_object().unwrap().clone(),
        }
    }

    fn retract(number: i64, at: i64, target: i64) -> Event {
        Event { kind: Kind::RETRACT, body: Event::retraction(id(target)), ..event(number, at, json!({})) }
    }

    fn check(events: &[Event], expect: Value) {
        let found = fold(events).map(|state| Value::Object(state.fields));
        assert_eq!(found.unwrap_or(Value::Null), expect);
    }

    #[test]
    fn the_last_value_of_each_field_wins() {
        let first = event(1, 10, json!({"name": "Rain", "gone": false}));
        let second = event(2, 20, json!({"name": "Soft rain"}));
        check(&[first.clone(), second.clone()], json!({"name": "Soft rain", "gone": false}));
        check(&[second, first], json!({"name": "Soft rain", "gone": false}));
    }

    #[test]
    fn null_takes_a_field_away_until_it_is_set_again() {
        let set = event(1, 10, json!({"note": "gritty", "name": "Rain"}));
        let cleared = event(2, 20, json!({"note": null}));
        check(&[set.clone(), cleared.clone()], json!({"name": "Rain"}));
        check(&[set, cleared, event(3, 30, json!({"note": "sieved"}))], json!({"name": "Rain", "note": "sieved"}));
    }

    #[test]
    fn retract_and_redo() {
        let set = event(1, 10, json!({"name": "Rain"}));
        let renamed = event(2, 20, json!({"name": "Hail"}));
        let undo = retract(3, 30, 2);
        let redo = retract(4, 40, 3);
        check(&[set.clone(), renamed.clone(), undo.clone()], json!({"name": "Rain"}));
        check(&[set.clone(), renamed.clone(), undo.clone(), redo.clone()], json!({"name": "Hail"}));
        check(&[set, renamed, undo, redo, retract(5, 50, 4)], json!({"name": "Rain"}));
    }

    #[test]
    fn nothing_is_left_when_all_is_taken_back() {
        check(&[], Value::Null);
        check(&[event(1, 10, json!({"name": "Rain"})), retract(2, 20, 1)], Value::Null);
        check(&[retract(2, 20, 1)], Value::Null);
        check(&[event(1, 10, json!({})), event(2, 20, json!({"a": 1})), retract(3, 30, 2)], json!({}));
    }

    #[test]
    fn a_retraction_by_a_clock_that_is_behind_counts_and_a_ring_does_not() {
        let set = event(1, 10, json!({"name": "Rain"}));
        check(&[retract(2, 5, 1), set.clone()], Value::Null);
        // 2 and 3 name each other: only the later one can have seen the other.
        let ring = [set.clone(), retract(2, 20, 3), retract(3, 30, 2)];
        assert_eq!(effective(&ring), HashSet::from([id(1), id(3)]));
        check(&[set, retract(4, 40, 4)], json!({"name": "Rain"}));
    }

    #[test]
    fn a_retraction_takes_nothing_from_another_entity() {
        let set = event(1, 10, json!({"name": "Rain"}));
        let elsewhere = Event { entity: Uuid::from_u128(2), ..retract(2, 20, 1) };
        assert_eq!(effective(&[set.clone(), elsewhere]), HashSet::from([id(1), id(2)]));
    }

    fn on(device: u128, event: Event) -> Event {
        Event { device: DeviceId(Uuid::from_u128(device)), ..event }
    }

    fn having_seen(mut event: Event, seen: &[EventId]) -> Event {
        event.body.insert(SEEN.to_owned(), Event::as_seen(seen.iter().copied()));
        event
    }

    fn name(events: &[&Event]) -> Option<Value> {
        let state = super::fold(events.iter().copied(), &GLAZE, &Glazes)?;
        state.fields.contains_key("density").then(|| state.fields["name"].clone())
    }

    #[test]
    fn what_was_made_comes_back_while_an_edit_stands_that_its_retraction_had_not_seen() {
        let made = event(1, 1_000, json!({"name": "Rain", "density": 1}));
        for clock in [10, 1_005, 9_000] {
            let edit = having_seen(on(901, event(1, clock, json!({"name": "Hail"}))), &[made.id()]);
            let undo = having_seen(retract(2, 1_010, 1), &[]);
            assert_eq!(name(&[&made, &edit, &undo]), Some(json!("Hail")), "{clock}");
            let history = [made.clone(), edit.clone(), undo.clone()];
            let restored = Restored { made: made.id(), retraction: undo.id(), edit: edit.id() };
            assert_eq!(History::of(&history, &Glazes).restored(), [restored]);
            // Undone again with the edit in sight, it is gone; and back when that is done again.
            let knowing = having_seen(retract(3, 10_000, 1), &[edit.id()]);
            assert_eq!(name(&[&made, &edit, &undo, &knowing]), None);
            let redo = having_seen(retract(4, 10_001, 3), &[edit.id()]);
            assert_eq!(name(&[&made, &edit, &undo, &knowing, &redo]), Some(json!("Hail")));
            let undo_redo = having_seen(retract(5, 10_002, 4), &[edit.id()]);
            assert_eq!(name(&[&made, &edit, &undo, &knowing, &redo, &undo_redo]), None);
            // Where the edit is undone too, the undoing of the whole counts.
            let no_edit = Event { body: Event::retraction(edit.id()), ..on(901, retract(2, 9_500, 1)) };
            assert_eq!(name(&[&made, &edit, &undo, &no_edit]), None);
        }
    }

    #[test]
    fn a_retraction_of_before_had_seen_what_its_clock_says() {
        let made = event(1, 10, json!({"name": "Rain", "density": 1}));
        let undo = retract(2, 30, 1);
        let edit = |at| on(901, event(1, at, json!({"name": "Hail"})));
        assert_eq!(name(&[&made, &undo, &edit(20)]), None);
        assert_eq!(name(&[&made, &undo, &edit(40)]), Some(json!("Hail")));
    }

    #[test]
    fn what_was_seen_comes_before_whatever_the_clocks_say() {
        let far = on(901, event(1, 7_000_000_000_000, json!({"name": "For ever", "density": 1})));
        let now = having_seen(event(1, 10, json!({"name": "Rain"})), &[far.id()]);
        let next = event(2, 11, json!({"density": 2}));
        assert_eq!(name(&[&far, &now, &next]), Some(json!("Rain")));
        // Nobody has seen what is not there.
        let forged =
            having_seen(on(902, event(1, 0, json!({"name": "Hijacked"}))), &[EventId { seq: 1 << 39, ..now.id() }]);
        assert_eq!(name(&[&far, &now, &forged]), Some(json!("Rain")));
        // A device whose clock went back says things in the order in which it said them.
        assert_eq!(name(&[&event(3, 5, json!({"name": "Snow"})), &far, &now, &next]), Some(json!("Snow")));
    }

    #[test]
    fn a_value_that_cannot_be_is_left_out() {
        let made = event(1, 10, json!({"name": "Rain", "density": 1}));
        for value in [json!(7), Value::Null, json!([[]])] {
            assert_eq!(name(&[&made, &event(2, 20, json!({"name": value}))]), Some(json!("Rain")));
        }
    }

    #[test]
    fn no_event_makes_another_kind_of_an_entity() {
        let glaze = event(2, 20, json!({"name": "Rain"}));
        let form = Event { kind: Kind::of("form"), ..on(901, event(1, 0, json!({"name": "Mug"}))) };
        check(&[form.clone(), glaze.clone()], json!({"name": "Rain"}));
        let as_form = super::fold([&glaze, &form], &form.kind, &NoRules).unwrap();
        assert_eq!(as_form.fields["name"], "Mug");
    }

    /// A history of one entity on three phones that share a clock: sets, clearings and retractions of earlier ones.
    fn history() -> impl Strategy<Value = Vec<Event>> {
        let step = (0..4i64, 0..3u128, 0..3u8, 0..4i64, any::<Index>());
        prop::collection::vec(step, 1..24).prop_map(|migrations| {
            let mut events: Vec<Event> = Vec::new();
            let mut at = 10;
            for (wait, device, act, value, target) in migrations {
                at += wait;
                let number = events.len() as i64 + 1;
                let made = match act {
                    0 => event(number, at, json!({"a": value, "b": value})),
                    1 => event(number, at, json!({"a": null, "c": value})),
                    // Of an earlier one, or of one that is not there.
                    _ => match events.get(target.index(events.len() + 1)) {
                        Some(target) => Event { body: Event::retraction(target.id()), ..retract(number, at, 0) },
                        None => retract(number, at, number + 1),
                    },
                };
                events.push(Event { device: DeviceId(Uuid::from_u128(900 + device)), ..made });
            }
            events
        })
    }

    /// A history, and the same events as they may arrive: in any order, some twice.
    fn history_and_arrival() -> impl Strategy<Value = (Vec<Event>, Vec<Event>)> {
        (history(), prop::collection::vec(any::<Index>(), 0..12)).prop_flat_map(|(events, again)| {
            let mut arrived = events.clone();
            arrived.extend(again.iter().map(|index| index.get(&events).clone()));
            (Just(events), Just(arrived).prop_shuffle())
        })
    }

    proptest! {
        #[test]
        fn any_order_and_any_repetition_folds_the_same((events, arrived) in history_and_arrival()) {
            prop_assert_eq!(fold(&arrived), fold(&events));
            prop_assert_eq!(effective(&arrived), effective(&events));
        }

        #[test]
        fn undoing_the_last_event_gives_back_what_was_and_redoing_what_is(events in history()) {
            let last = events.len() as i64;
            let undo = Event { body: Event::retraction(events[events.len() - 1].id()), ..retract(last + 1, 1_000, 0) };
            let redo = retract(last + 2, 2_000, last + 1);
            let before = fold(&events[..events.len() - 1]);
            let after = fold(&events);
            // The last in arrival is the last in order only where no other event shares its millisecond.
            prop_assume!(events.iter().all(|event| event.order() <= events[events.len() - 1].order()));
            let undone: Vec<Event> = events.iter().cloned().chain([undo]).collect();
            prop_assert_eq!(fold(&undone), before);
            let redone: Vec<Event> = undone.iter().cloned().chain([redo]).collect();
            prop_assert_eq!(fold(&redone), after);
        }
    }
}
