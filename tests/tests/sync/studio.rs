//! Invented studios to keep alike, and how to tell that they are.

use std::collections::BTreeMap;
use std::io::Cursor;
use std::sync::atomic::AtomicBool;

use image::{ImageFormat, Rgb, RgbImage};
use laydown_store::entity::{Coat, Photo};
use laydown_store::journal::{DeviceId, Event, SeededIds};
use laydown_store::photos::prepare_photo;
use laydown_store::{Entity, Store, StoreError, devices, events_after};
use laydown_sync::{Options, Outcome, RemoteError, RemoteStore, sync};
use laydown_tests::{Bench, NOW, coat, furnish, open};
use tempfile::TempDir;

/// A device with its studio.
pub struct Device {
    pub folder: TempDir,
    pub store: Store,
    pub bench: Bench,
    ids: SeededIds,
    made: i64,
}

impl Device {
    pub fn new(seed: u64) -> Device {
        let folder = tempfile::tempdir().unwrap();
        let store = open(&folder.path().join("studio.laydown"), seed);
        let bench = furnish(&store);
        Device { folder, store, bench, ids: SeededIds::new(seed + 1_000), made: 0 }
    }

    /// Weighs so many coats.
    pub fn weigh(&mut self, coats: i64) {
        let saved = self.store.transact(NOW, |tx| {
            for _ in 0..coats {
                self.made += 1;
                tx.put(&coat(&self.bench, &mut self.ids, self.made))?;
            }
            Ok::<_, StoreError>(())
        });
        saved.unwrap();
    }

    /// Takes a photograph of about 20 kB that nobody else has.
    pub fn photograph(&mut self, number: u8) {
        let mut noise = u32::from(number) + 7;
        let picture = RgbImage::from_fn(96, 72, |_, _| {
            noise = noise.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            let [a, b, c, _] = noise.to_be_bytes();
            Rgb([a, b, c])
        });
        let mut bytes = Cursor::new(Vec::new());
        picture.write_to(&mut bytes, ImageFormat::Png).unwrap();
        let photo = prepare_photo(&bytes.into_inner()).unwrap();
        let saved = self.store.transact(NOW, |tx| {
            self.store.photos().put(&photo)?;
            let record = Photo {
                id: tx.new_id(),
                piece: tx.new_id(),
                sha256: photo.sha256.clone(),
                at: NOW,
                width: i64::from(photo.width),
                height: i64::from(photo.height),
                ..Photo::default()
            };
            tx.put(&record)
        });
        saved.unwrap();
        self.store.commit_staged_photos().unwrap();
    }

    pub fn sync(&self, remote: &dyn RemoteStore) -> Result<Outcome, RemoteError> {
        self.sync_so(remote, &Options::default())
    }

    pub fn sync_so(&self, remote: &dyn RemoteStore, options: &Options) -> Result<Outcome, RemoteError> {
        sync(&self.store, remote, options, &AtomicBool::new(false), &mut |_| ())
    }

    /// The journal of each device, as far as it is here.
    pub fn events(&self) -> BTreeMap<DeviceId, Vec<Event>> {
        let all = self.store.read(|conn| {
            let every = devices(conn)?.into_iter().map(|(device, _)| Ok((device, events_after(conn, device, 0)?)));
            every.collect::<Result<_, StoreError>>()
        });
        all.unwrap()
    }

    /// All that a studio holds: its journal, what it amounts to, and its photographs bit for bit.
    pub fn holds(&self) -> Held {
        let (coats, photos) =
            self.store.read(|conn| Ok::<_, StoreError>((Coat::all(conn)?, Photo::all(conn)?))).unwrap();
        let pictures = photos.iter().map(|photo| std::fs::read(self.store.photos().file(&photo.sha256)).unwrap());
        Held { events: self.events(), coats, pictures: pictures.collect(), photos }
    }
}

#[derive(Debug, PartialEq)]
pub struct Held {
    pub events: BTreeMap<DeviceId, Vec<Event>>,
    pub coats: Vec<Coat>,
    pub photos: Vec<Photo>,
    pub pictures: Vec<Vec<u8>>,
}

/// Syncs each in turn until all have seen all, then holds them against each other.
pub fn all_agree(devices: &[&Device], remote: &dyn RemoteStore, options: &Options) {
    for device in devices.iter().chain(devices) {
        let outcome = device.sync_so(remote, options).unwrap();
        assert!(outcome.file_errors.is_empty(), "{:?}", outcome.file_errors);
    }
    let first = devices[0].holds();
    for device in &devices[1..] {
        assert!(device.holds() == first, "two studios differ");
        assert_eq!(device.store.read(|conn| Ok::<_, StoreError>(Coat::all(conn)?.len())).unwrap(), first.coats.len());
    }
    for device in devices {
        let idle = device.sync_so(remote, options).unwrap();
        assert_eq!((idle.events_in, idle.events_out, idle.photographs_in, idle.photographs_out), (0, 0, 0, 0));
    }
}
