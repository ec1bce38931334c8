//! Devices that hold the same events show the same studio, whatever the order of arrival.

use laydown_store::entity::{Entity, Glaze};
use laydown_store::journal::{Clock, Event, SeededIds};
use laydown_store::{Refusal, Store, StoreError, Undo, devices, events_after};
use proptest::prelude::*;
use proptest::sample::Index;
use tempfile::TempDir;
use uuid::Uuid;

use laydown_tests::{NOW, coat, furnish, glaze_called, open, save, studio};

fn everything(store: &Store) -> Vec<Event> {
    store
        .read(|conn| {
            let mut events = Vec::new();
            for (device, _) in devices(conn)? {
                events.extend(events_after(conn, device, 0)?);
            }
            Ok::<_, StoreError>(events)
        })
        .unwrap()
}

fn restore(store: &Store, events: &[Event]) -> usize {
    let ingested = store.transact(NOW, |tx| tx.ingest(events)).unwrap().value;
    assert_eq!(ingested.refusals(), []);
    ingested.new
}

/// One act on one of three phones.
#[derive(Debug, Clone)]
enum Act {
    Rename { glaze: u8, name: u8 },
    Thicken { glaze: u8, laydown: i64 },
    PutAway { glaze: u8 },
    Undo { which: Index },
    Hear { from: usize },
}

fn act() -> impl Strategy<Value = Act> {
    prop_oneof![
        (0..3u8, any::<u8>()).prop_map(|(glaze, name)| Act::Rename { glaze, name }),
        (0..3u8, 1_000..9_000i64).prop_map(|(glaze, laydown)| Act::Thicken { glaze, laydown }),
        (0..3u8).prop_map(|glaze| Act::PutAway { glaze }),
        any::<Index>().prop_map(|which| Act::Undo { which }),
        (0..3usize).prop_map(|from| Act::Hear { from }),
    ]
}

struct Phone {
    store: Store,
    done: Vec<Undo>,
    _folder: TempDir,
}

fn phones() -> Vec<Phone> {
    (0..3)
        .map(|seed| {
            let folder = tempfile::tempdir().unwrap();
            Phone { store: open(&folder.path().join("studio"), 10 + seed), done: Vec::new(), _folder: folder }
        })
        .collect()
}

fn play(phones: &mut [Phone], at: usize, now: i64, act: &Act) {
    if let Act::Hear { from } = act {
        let heard = everything(&phones[*from].store);
        restore(&phones[at].store, &heard);
        return;
    }
    let phone = &mut phones[at];
    let change = |glaze: u8, change: &dyn Fn(Glaze) -> Glaze| {
        phone
            .store
            .transact(now, |tx| {
                let id = Uuid::from_u128(u128::from(glaze) + 1);
                let known = Glaze::load(tx.conn(), id)?.unwrap_or_else(|| glaze_called(id, "new"));
                tx.put(&change(known))
            })
            .unwrap()
            .undo
    };
    let undo = match act {
        Act::Rename { glaze, name } => change(*glaze, &|known| Glaze { name: format!("glaze {name}"), ..known }),
        Act::Thicken { glaze, laydown } => {
            change(*glaze, &|known| Glaze { starting_laydown_mg_dm2: *laydown, ..known })
        }
        Act::PutAway { glaze } => change(*glaze, &|known| Glaze { gone: true, ..known }),
        Act::Undo { which } if !phone.done.is_empty() => {
            phone.store.undo(now, phone.done[which.index(phone.done.len())]).unwrap().undo
        }
        Act::Undo { .. } | Act::Hear { .. } => return,
    };
    phone.done.push(undo);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn the_same_events_make_the_same_studio(
        acts in prop::collection::vec((0..3usize, -3..10i64, act()), 1..24),
        seed in any::<[u64; 3]>(),
    ) {
        let mut phones = phones();
        let mut now = NOW;
        for (at, wait, act) in &acts {
            now += wait;
            play(&mut phones, *at, now, act);
        }
        let mut all: Vec<Event> = phones.iter().flat_map(|phone| everything(&phone.store)).collect();
        for (phone, seed) in phones.iter().zip(seed) {
            // Each phone hears everything in an order of its own, some of it twice, in two sittings.
            all.sort_by_key(|event| (event.entity.as_u128() as u64 ^ event.seq as u64).wrapping_mul(seed | 1));
            let (early, late) = all.split_at(all.len() / 2);
            restore(&phone.store, late);
            restore(&phone.store, early);
            prop_assert_eq!(restore(&phone.store, &all), 0);
        }
        let dumps: Vec<String> = phones.iter().map(|phone| phone.store.dump().unwrap()).collect();
        prop_assert_eq!(&dumps[0], &dumps[1]);
        prop_assert_eq!(&dumps[0], &dumps[2]);
        phones[2].store.rebuild().unwrap();
        prop_assert_eq!(&dumps[0], &phones[2].store.dump().unwrap());
    }
}

#[test]
fn phones_that_change_different_fields_both_get_their_way() {
    let (_here, store) = studio();
    let bench = furnish(&store);
    let folder = tempfile::tempdir().unwrap();
    let other = open(&folder.path().join("studio"), 77);
    restore(&other, &everything(&store));
    store.transact(NOW, |tx| tx.put(&Glaze { name: "Summer ash".into(), ..bench.glaze.clone() })).unwrap();
    let thicker = Glaze { starting_laydown_mg_dm2: 6_200, ..bench.glaze.clone() };
    other.transact(NOW, |tx| tx.put(&thicker)).unwrap();
    restore(&store, &everything(&other));
    restore(&other, &everything(&store));
    let both = store.read(|conn| Glaze::load(conn, bench.glaze.id)).unwrap().unwrap();
    assert_eq!((both.name.as_str(), both.starting_laydown_mg_dm2), ("Summer ash", 6_200));
    assert_eq!(store.dump().unwrap(), other.dump().unwrap());
}

#[test]
fn a_change_made_after_hearing_of_another_wins_though_this_phone_runs_late() {
    let (_here, late) = studio();
    let bench = furnish(&late);
    let folder = tempfile::tempdir().unwrap();
    let early = open(&folder.path().join("studio"), 77);
    restore(&early, &everything(&late));
    let hour = 3_600_000;
    early.transact(NOW + hour, |tx| tx.put(&glaze_called(bench.glaze.id, "An hour fast"))).unwrap();
    restore(&late, &everything(&early));
    late.transact(NOW + 1, |tx| tx.put(&glaze_called(bench.glaze.id, "Corrected"))).unwrap();
    restore(&early, &everything(&late));
    for store in [&late, &early] {
        assert_eq!(store.read(|conn| Glaze::load(conn, bench.glaze.id)).unwrap().unwrap().name, "Corrected");
    }
}

#[test]
fn a_studio_copied_to_two_phones_is_noticed_and_nothing_is_taken_in() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    drop(store);
    let path = folder.path().join("studio.laydown");
    let copy = folder.path().join("copy.laydown");
    std::fs::copy(&path, &copy).unwrap();
    let (store, copied) = (open(&path, 20), open(&copy, 21));
    save(&store, &coat(&bench, &mut SeededIds::new(1), 1)).unwrap();
    save(&copied, &coat(&bench, &mut SeededIds::new(2), 2)).unwrap();
    save(&copied, &coat(&bench, &mut SeededIds::new(2), 3)).unwrap();
    let before = store.dump().unwrap();
    let heard = store.transact(NOW, |tx| tx.ingest(&everything(&copied))).unwrap().value;
    assert_eq!((heard.new, heard.forked()), (0, Some((store.device(), 6))));
    assert_eq!(store.dump().unwrap(), before);
}

#[test]
fn an_older_copy_of_a_studio_takes_its_own_later_events_back_in() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    let path = folder.path().join("studio.laydown");
    drop(store);
    let backup = folder.path().join("backup.laydown");
    std::fs::copy(&path, &backup).unwrap();
    let store = open(&path, 20);
    save(&store, &coat(&bench, &mut SeededIds::new(1), 1)).unwrap();
    let restored = open(&backup, 21);
    assert_eq!(restore(&restored, &everything(&store)), 1);
    let saved = save(&restored, &coat(&bench, &mut SeededIds::new(2), 2)).unwrap();
    restored.undo(NOW, saved.undo).unwrap();
    assert_eq!(restored.dump().unwrap(), store.dump().unwrap());
}

#[test]
fn events_no_phone_can_have_made_are_refused_and_the_rest_comes_in() {
    let (_here, store) = studio();
    let bench = furnish(&store);
    let folder = tempfile::tempdir().unwrap();
    let other = open(&folder.path().join("studio"), 77);
    let good = everything(&store);
    let too_late: Clock = serde_json::from_str(&i64::MAX.to_string()).unwrap();
    for bad in [
        Event { seq: 0, ..good[0].clone() },
        Event { seq: -4, ..good[0].clone() },
        Event { seq: i64::MAX, ..good[0].clone() },
        Event { seq: 1 << 39, ..good[0].clone() },
        Event { clock: too_late, ..good[0].clone() },
    ] {
        let taken = other.transact(NOW, |tx| tx.ingest(&[bad, good[1].clone()])).unwrap().value;
        let why: Vec<Refusal> = taken.refused.iter().map(|refused| refused.why).collect();
        assert_eq!(why, [Refusal::NoSuchNumber]);
    }
    assert_eq!(everything(&other), [good[1].clone()]);
    restore(&other, &good);
    assert_eq!(other.dump().unwrap(), store.dump().unwrap());
    let foreign = store.transact(NOW, |tx| tx.put(&glaze_called(bench.glaze.id, "Hail"))).unwrap().undo;
    assert!(matches!(other.undo(NOW, foreign), Err(StoreError::BadEvent { .. })), "undo is for one's own commands");
}
