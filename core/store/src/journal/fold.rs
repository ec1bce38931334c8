//! What an entity is now, from all that was ever written about it.

use std::collections::HashSet;

use serde_json::Value;

use super::event::{Body, Event, EventId, Kind};

/// What an entity is now: the last value set for each of its fields.
#[derive(Debug, Clone, PartialEq)]
pub struct State {
    /// What sort of thing it is.
    pub kind: Kind,
    /// Its fields; those taken away are not there.
    pub fields: Body,
}

/// Folds the events of one entity into what it is now; `None` where all that was said of it is taken back.
///
/// Each field has the value of the last standing event that set it, last by [`Event::order`], so that phones that hold
/// the same events agree, whatever the order they came in and however often. Events that give the entity another kind
/// than its earliest event gave it are left out.
pub fn fold<'a>(events: impl IntoIterator<Item = &'a Event>) -> Option<State> {
    let ordered = in_order(events);
    let standing = standing_of(&ordered);
    let mut about = ordered.iter().filter(|event| event.kind != Kind::RETRACT);
    let kind = about.next()?.kind.clone();

    let mut said = ordered.iter().filter(|event| event.kind == kind && standing.contains(&event.id())).peekable();
    said.peek()?;
    let mut fields = Body::new();
    for event in said {
        fields.extend(event.body.iter().map(|(name, value)| (name.clone(), value.clone())));
    }
    fields.retain(|_, value| *value != Value::Null);
    Some(State { kind, fields })
}

/// Which of one entity's events stand: those that no standing retraction takes back. Retractions are events too, so
/// retracting one lets its target stand again.
pub fn standing<'a>(events: impl IntoIterator<Item = &'a Event>) -> HashSet<EventId> {
    standing_of(&in_order(events))
}

fn in_order<'a>(events: impl IntoIterator<Item = &'a Event>) -> Vec<&'a Event> {
    let mut ordered: Vec<&Event> = events.into_iter().collect();
    ordered.sort_by_key(|event| event.order());
    ordered
}

/// Walks back from the last event. A phone can only retract what it has seen, so a retraction always sorts after its
/// target and is settled before the walk reaches that target; one that sorts before its target is forged, and void.
/// So no ring of retractions can arise.
fn standing_of(ordered: &[&Event]) -> HashSet<EventId> {
    let mut retracted = HashSet::new();
    let mut standing = HashSet::with_capacity(ordered.len());
    for event in ordered.iter().rev() {
        if retracted.contains(&event.id()) {
            continue;
        }
        standing.insert(event.id());
        retracted.extend(event.retracted());
    }
    standing
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use proptest::sample::Index;
    use serde_json::json;
    use uuid::Uuid;

    use super::*;
    use crate::journal::{Clock, DeviceId};

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
    fn forged_retractions_and_rings_do_nothing() {
        let set = event(1, 10, json!({"name": "Rain"}));
        check(&[retract(2, 5, 1), set.clone()], json!({"name": "Rain"}));
        // 2 and 3 name each other: only the later one can have seen the other.
        let ring = [set.clone(), retract(2, 20, 3), retract(3, 30, 2)];
        assert_eq!(standing(&ring), HashSet::from([id(1), id(3)]));
        check(&[set, retract(4, 40, 4)], json!({"name": "Rain"}));
    }

    #[test]
    fn an_entity_keeps_the_kind_it_was_made_with() {
        let glaze = event(1, 10, json!({"name": "Rain"}));
        let form = Event { kind: Kind::of("form"), ..event(2, 20, json!({"name": "Mug"})) };
        assert_eq!(fold([&form, &glaze]).unwrap().kind, Kind::of("glaze"));
        check(&[form, glaze], json!({"name": "Rain"}));
    }

    /// A history of one entity on three phones that share a clock: sets, clearings and retractions of earlier ones.
    fn history() -> impl Strategy<Value = Vec<Event>> {
        let step = (0..4i64, 0..3u128, 0..3u8, 0..4i64, any::<Index>());
        prop::collection::vec(step, 1..24).prop_map(|steps| {
            let mut events: Vec<Event> = Vec::new();
            let mut at = 10;
            for (wait, device, act, value, target) in steps {
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
            prop_assert_eq!(standing(&arrived), standing(&events));
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
