//! Commands are told apart by their clocks: each begins in a millisecond of its own, whatever the phone's clock does.

use std::collections::BTreeSet;

use fastrand::Rng;
use laydown_store::{Store, StoreError, Undo, command_of, latest_commands};
use laydown_tests::work::all_events;
use laydown_tests::{NOW, glaze_called, open};

const DAY: i64 = 86_400_000;

/// Makes `things` things in one command.
fn command(store: &Store, now: i64, things: usize) -> Undo {
    let made = store.transact(now, |tx| {
        for _ in 0..things {
            let id = tx.new_id();
            tx.put(&glaze_called(id, "Ash white"))?;
        }
        Ok::<_, StoreError>(())
    });
    made.unwrap().undo
}

/// As they can be compared.
fn told(undo: &Undo) -> String {
    serde_json::to_string(undo).unwrap()
}

#[test]
fn the_journal_tells_the_same_commands_as_were_given() {
    for seed in 0..40 {
        let mut rng = Rng::with_seed(seed);
        let folder = tempfile::tempdir().unwrap();
        let phones = [1, 2].map(|number| open(&folder.path().join(number.to_string()), 100 * seed + number));
        let mut made: BTreeSet<String> = BTreeSet::new();
        let mut clocks = [NOW, NOW];
        for _ in 0..30 {
            let at = rng.usize(..phones.len());
            // It stands still, goes on, is set back, runs far ahead, and is put right again.
            clocks[at] = match rng.u8(..8) {
                0..=2 => clocks[at],
                3 => clocks[at] + 1,
                4 => clocks[at] - rng.i64(0..3),
                5 => NOW - DAY,
                6 => NOW + 500 * DAY + rng.i64(0..3),
                _ => NOW + rng.i64(0..3),
            };
            if rng.u8(..4) == 0 {
                let events = all_events(&phones[1 - at]);
                phones[at].merge(clocks[at], &events).unwrap();
            } else {
                made.insert(told(&command(&phones[at], clocks[at], rng.usize(1..4))));
            }
        }
        for (at, phone) in phones.iter().enumerate() {
            let now = clocks[at];
            let own = phone.device();
            let commands = phone.read(|conn| latest_commands(conn, now, 1_000, 50)).unwrap();
            let own_commands = commands.iter().filter(|command| command.events[0].device == own);
            let own_told: BTreeSet<String> = own_commands.map(|command| told(&command.undo)).collect();
            let own_made: BTreeSet<String> =
                made.iter().filter(|undo| undo.contains(&own.0.to_string())).cloned().collect();
            assert_eq!(own_told, own_made, "seed {seed}");
            for command in &commands {
                for event in &command.events {
                    let of = phone.read(|conn| command_of(conn, event.id())).unwrap();
                    assert_eq!(of, command.undo, "seed {seed}");
                }
            }
        }
    }
}

/// 65,536 events fill the counter of a millisecond exactly.
#[test]
fn a_command_that_fills_its_millisecond_is_told_from_the_next() {
    let (_folder, store) = laydown_tests::studio();
    let id = store.transact(NOW, |tx| Ok::<_, StoreError>(tx.new_id())).unwrap().value;
    let full = store.transact(NOW, |tx| {
        // One thing that is renamed again and again would be folded each time; these are things of a kind that is not known here.
        for number in 0..=u32::from(u16::MAX) {
            let thing = uuid::Uuid::from_u128(id.as_u128() + u128::from(number));
            tx.append(laydown_store::journal::Kind::named("test".to_owned()), thing, serde_json::Map::default())?;
        }
        Ok::<_, StoreError>(())
    });
    let full = full.unwrap().undo;
    let next = command(&store, NOW, 1);
    let commands = store.read(|conn| latest_commands(conn, NOW, 10, 5)).unwrap();
    assert_eq!(commands.iter().map(|command| command.undo).collect::<Vec<_>>(), [next, full]);
}
