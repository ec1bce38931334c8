//! A studio with ten thousand photographs: opening it, looking at a fired piece, a piece's page.
//!
//! The peer reads the same rows with the same queries from a bare SQLite connection: no words, and no look into the folder.

use std::fs;
use std::io::Cursor;
use std::path::Path;
use std::thread;
use std::time::{Duration, Instant};

use image::{ImageFormat, Rgb, RgbImage};
use laydown_app::{Now, Studio};
use laydown_store::entity::{Coat, Firing, Kiln, Photo, Placement};
use laydown_store::journal::{Ids, SeededIds};
use laydown_store::photos::{PreparedPhoto, prepare_photo};
use laydown_store::{Store, StoreError, query};
use rusqlite::Connection;
use uuid::Uuid;

use laydown_tests::{NOW, coat, furnish, open};

use crate::{Goal, row, timed};

const PIECES: usize = 2_500;
const OF_ONE_PIECE: usize = 4;
const OF_ONE_FIRING: usize = 50;
const LOOKS: usize = 200;
const OPENINGS: usize = 40;

/// From a tap to all that the screen shows.
const GOAL: Duration = Duration::from_millis(20);

/// A piece and the firing it came out of.
struct Fired {
    firing: Uuid,
    piece: Uuid,
}

pub fn rows() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    let now = Now { unix_ms: NOW, utc_offset_s: 0 };
    let start = Instant::now();
    let fired = filled(&path);
    let filling = start.elapsed();
    let settling = timed(|| drop(Studio::open(&path, now).unwrap()));
    let files =
        fs::read_dir(path.with_extension("photos")).unwrap().filter(|file| file.as_ref().unwrap().path().is_file());
    assert_eq!(files.count(), 2 * PIECES * OF_ONE_PIECE, "each with its preview, none the same as another");

    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for _ in 0..OPENINGS {
        ours.push(timed(|| drop(Studio::open(&path, now).unwrap())));
        theirs.push(timed(|| look(&Connection::open(&path).unwrap(), &fired[0])));
    }
    let count = PIECES * OF_ONE_PIECE;
    row(&format!("open {count} photographs"), ours, theirs, Goal::Within(GOAL));

    let studio = Studio::open(&path, now).unwrap();
    let conn = Connection::open(&path).unwrap();
    let (mut looks, mut pages, mut rows, mut page_rows) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for one in fired.iter().step_by(PIECES / LOOKS) {
        let (firing, piece) = (one.firing.to_string(), one.piece.to_string());
        looks.push(timed(|| assert_eq!(studio.assessment(now, &firing, &piece).unwrap().photos.len(), OF_ONE_PIECE)));
        pages.push(timed(|| assert_eq!(studio.piece(now, &piece).unwrap().photos.len(), OF_ONE_PIECE)));
        rows.push(timed(|| look(&conn, one)));
        page_rows.push(timed(|| page(&conn, one)));
    }
    row("  look at a fired piece", looks, rows, Goal::Within(GOAL));
    row("  a piece's page", pages, page_rows, Goal::Within(GOAL));
    println!(
        "  developed and kept at {:.0} photographs a second; the first opening, which moves {} files, took {:.2} s",
        count as f64 / filling.as_secs_f64(),
        2 * count,
        settling.as_secs_f64()
    );
}

fn look(conn: &Connection, one: &Fired) {
    assert_eq!(query::placements(conn, one.firing).unwrap().len(), OF_ONE_FIRING);
    assert!(query::finding(conn, one.piece, one.firing).unwrap().is_none());
    page(conn, one);
}

fn page(conn: &Connection, one: &Fired) {
    assert_eq!(query::coats_of_piece(conn, one.piece).unwrap().len(), 1);
    assert_eq!(query::placements_of_piece(conn, one.piece).unwrap().len(), 1);
    assert_eq!(query::photos(conn, one.piece).unwrap().len(), OF_ONE_PIECE);
}

/// Every piece with one coat, in a firing of fifty, four times photographed.
fn filled(path: &Path) -> Vec<Fired> {
    let store = open(path, 1);
    let bench = furnish(&store);
    let mut ids = SeededIds::new(5);
    let kiln = ids.next(NOW);
    let saved = store.transact(NOW, |tx| {
        let shelves =
            Kiln { name: "Garden kiln".into(), round: true, across_um: 400_000, shelves: 2, ..Kiln::default() };
        tx.put(&Kiln { id: kiln, ..shelves })
    });
    saved.unwrap();
    let mut fired = Vec::new();
    for first in (0..PIECES).step_by(OF_ONE_FIRING) {
        let firing = ids.next(NOW);
        let load: Vec<Coat> =
            (first..first + OF_ONE_FIRING).map(|number| coat(&bench, &mut ids, number as i64)).collect();
        let photos = developed(first * OF_ONE_PIECE, OF_ONE_FIRING * OF_ONE_PIECE);
        fire(&store, &mut ids, kiln, firing, &load, &photos).unwrap();
        fired.extend(load.iter().map(|coat| Fired { firing, piece: coat.piece }));
    }
    fired
}

fn fire(
    store: &Store,
    ids: &mut SeededIds,
    kiln: Uuid,
    firing: Uuid,
    load: &[Coat],
    photos: &[PreparedPhoto],
) -> Result<(), StoreError> {
    let saved = store.transact(NOW, |tx| {
        let aimed = Firing { kiln, at: NOW, cone: "6".into(), cone_kind: "large".into(), ..Firing::default() };
        tx.put(&Firing { id: firing, state: "done".into(), fired_at: Some(NOW), ..aimed })?;
        for (coat, photos) in load.iter().zip(photos.chunks(OF_ONE_PIECE)) {
            let piece = coat.piece;
            tx.put(coat)?;
            tx.put(&Placement { id: ids.next(NOW), firing, piece, x_e4: 5_000, y_e4: 5_000, ..Placement::default() })?;
            for photo in photos {
                store.photos().put(photo)?;
                tx.put(&Photo {
                    id: ids.next(NOW),
                    piece,
                    firing: Some(firing),
                    sha256: photo.sha256.clone(),
                    at: NOW,
                    width: photo.width.into(),
                    height: photo.height.into(),
                    gone: false,
                })?;
            }
        }
        Ok::<_, StoreError>(())
    });
    saved.map(|_| ())
}

/// So many pictures from the `first` on, developed on all cores.
fn developed(first: usize, count: usize) -> Vec<PreparedPhoto> {
    let numbers: Vec<usize> = (first..first + count).collect();
    let cores = thread::available_parallelism().map_or(1, usize::from);
    thread::scope(|scope| {
        let parts = numbers.chunks(count.div_ceil(cores));
        let running: Vec<_> =
            parts.map(|part| scope.spawn(|| part.iter().copied().map(picture).collect::<Vec<_>>())).collect();
        running.into_iter().flat_map(|part| part.join().unwrap()).collect()
    })
}

/// A picture of 16 by 12 dots, like no other.
fn picture(number: usize) -> PreparedPhoto {
    let [.., high, low] = number.to_be_bytes();
    let picture = RgbImage::from_fn(16, 12, |x, y| Rgb([high, low, (x * 16 + y) as u8]));
    let mut bytes = Cursor::new(Vec::new());
    picture.write_to(&mut bytes, ImageFormat::Png).unwrap();
    prepare_photo(bytes.get_ref()).unwrap()
}
