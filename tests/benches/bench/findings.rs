//! What fired pots say, in a studio with 100,000 coats, each fired and looked at.
//!
//! The peer reads the same rows with the same query from a bare SQLite connection: no lesson and no words.

use std::path::Path;
use std::time::Duration;

use laydown_app::{Now, Studio, WeighEntry, WeighView};
use laydown_store::entity::{Entity, Finding, Firing, Kiln};
use laydown_store::journal::{Ids, SeededIds};
use laydown_store::{StoreError, query};
use rusqlite::Connection;
use uuid::Uuid;

use laydown_tests::{NOW, coat, furnish, open};

use crate::{Goal, row, timed};

const COATS: i64 = 100_000;
const OF_ONE_FIRING: usize = 50;
const TIMES: usize = 40;
/// As many coats as the studio looks through.
const NEWEST: u32 = 4_000;
const GOAL: Duration = Duration::from_millis(20);
/// Weigh is as fast by fired pots as by control pieces alone, within what a hand can tell.
const AS_TODAY: f64 = 1.5;
/// As in a studio where nothing was judged.
const OPEN_GOAL: Duration = Duration::from_millis(5);

pub fn rows() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("findings");
    let glaze = filled(&path, true).to_string();
    let now = Now { unix_ms: NOW + COATS * 60_000, utc_offset_s: 0 };
    let studio = Studio::open(&path, now).unwrap();
    let conn = Connection::open(&path).unwrap();
    let (mut lists, mut pages, mut list_rows, mut page_rows) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    let bare = || assert_eq!(query::coats_and_findings(&conn, NEWEST).unwrap().len(), NEWEST as usize);
    for _ in 0..TIMES {
        lists.push(timed(|| assert!(studio.findings(now).unwrap().glazes[0].detail.contains("(400 pots)"))));
        list_rows.push(timed(bare));
        pages.push(timed(|| assert_eq!(studio.glaze_findings(now, &glaze).unwrap().windows[0].chart.dots.len(), 400)));
        page_rows.push(timed(bare));
    }
    row("Findings in 100,000 coats", lists, list_rows, Goal::Within(GOAL));
    row("  the findings of one glaze", pages, page_rows, Goal::Within(GOAL));
    drop(studio);
    weighing(&path, now, bare);
    let never_judged = folder.path().join("never judged");
    filled(&never_judged, false);
    beside_control_pieces(&path, &never_judged, now);
}

/// The Weigh screen by all fired pots beside the same coats of which none was ever judged, where control pieces set the target:
/// both take turns.
fn beside_control_pieces(judged: &Path, never_judged: &Path, now: Now) {
    let sides = [(judged, "fired pots"), (never_judged, "control piece")];
    let weighed = |view: WeighView, from: &str| {
        let target = view.target.unwrap();
        assert!(target.source.contains(from), "{}", target.source);
    };
    let [mut opened, mut again, mut judging] = [(); 3].map(|()| [Vec::new(), Vec::new()]);
    let studios = sides.map(|(path, _)| Studio::open(path, now).unwrap());
    let entries: Vec<_> = studios.iter().map(|studio| studio.weigh(now, None).unwrap().entry).collect();
    for (studio, entry) in studios.iter().zip(&entries) {
        studio.remember(now, entry).unwrap();
    }
    for _ in 0..TIMES {
        for (side, (path, from)) in sides.iter().enumerate() {
            let net = WeighEntry { net: "23.1".to_owned(), ..entries[side].clone() };
            opened[side].push(timed(|| weighed(Studio::open(path, now).unwrap().weigh(now, None).unwrap(), from)));
            again[side].push(timed(|| weighed(studios[side].weigh(now, None).unwrap(), from)));
            judging[side].push(timed(|| weighed(studios[side].weigh(now, Some(net)).unwrap(), from)));
        }
    }
    for (what, [ours, peer]) in [
        ("Weigh by fired pots beside control pieces: open", opened),
        ("  the view again", again),
        ("  a reading judged", judging),
    ] {
        row(what, ours, peer, Goal::Times(AS_TODAY));
    }
}

/// The Weigh screen by what all these pots say: opened with what was remembered, again, and once one more was judged.
fn weighing(path: &Path, now: Now, bare: impl Fn()) {
    let by_pots = |view: WeighView| assert!(view.target.unwrap().source.contains("fired pots"));
    let studio = Studio::open(path, now).unwrap();
    let entry = studio.weigh(now, None).unwrap().entry;
    studio.remember(now, &entry).unwrap();
    let mut finding = studio.store().read(Finding::all).unwrap().pop().unwrap();
    let (mut opened, mut again, mut changed) = (Vec::new(), Vec::new(), Vec::new());
    let mut rows = [Vec::new(), Vec::new(), Vec::new()];
    for at in 0..TIMES {
        opened.push(timed(|| by_pots(Studio::open(path, now).unwrap().weigh(now, None).unwrap())));
        again.push(timed(|| by_pots(studio.weigh(now, None).unwrap())));
        rows.iter_mut().for_each(|rows| rows.push(timed(&bare)));
        finding.liking = Some(1 + at as i64 % 5);
        studio.store().transact(NOW, |tx| tx.put(&finding)).unwrap();
        changed.push(timed(|| by_pots(studio.weigh(now, None).unwrap())));
        // So that what is remembered holds when it is opened next.
        studio.remember(now, &entry).unwrap();
    }
    let [of_opened, of_again, of_changed] = rows;
    row("open 100,000 judged coats, the Weigh screen", opened, of_opened, Goal::Within(OPEN_GOAL));
    row("  the Weigh screen again", again, of_again, Goal::Within(OPEN_GOAL));
    row("  the Weigh screen after one more was judged", changed, of_changed, Goal::Within(GOAL));
}

/// Every coat on a piece of its own, in a firing of fifty, and looked at where it `is_judged`: thin, right or thick by its weight.
/// Answers with the glaze.
fn filled(path: &Path, is_judged: bool) -> Uuid {
    let store = open(path, 1);
    let bench = furnish(&store);
    let mut ids = SeededIds::new(6);
    let kiln = ids.next(NOW);
    let shelves = Kiln { name: "Garden kiln".into(), round: true, across_um: 400_000, shelves: 2, ..Kiln::default() };
    store.transact(NOW, |tx| tx.put(&Kiln { id: kiln, ..shelves })).unwrap();
    let numbers: Vec<i64> = (0..COATS).collect();
    for load in numbers.chunks(OF_ONE_FIRING) {
        let saved = store.transact(NOW, |tx| {
            let firing = ids.next(NOW);
            let aimed = Firing { kiln, at: NOW, cone: "6".into(), cone_kind: "large".into(), ..Firing::default() };
            tx.put(&Firing { id: firing, state: "done".into(), ..aimed })?;
            for number in load {
                let coat = coat(&bench, &mut ids, *number);
                let inside = match coat.net_mg {
                    ..22_500 => "thin",
                    24_500.. => "thick",
                    _ => "right",
                };
                tx.put(&coat)?;
                if !is_judged {
                    continue;
                }
                let id = ids.next(coat.at);
                let inside = Some(inside.to_owned());
                tx.put(&Finding { id, firing, piece: coat.piece, at: coat.at, inside, ..Finding::default() })?;
            }
            Ok::<_, StoreError>(())
        });
        saved.unwrap();
    }
    bench.glaze.id
}
