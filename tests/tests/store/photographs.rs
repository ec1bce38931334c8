//! Photographs when the process is killed, the disk is full or the folder may not be written: every record has its file,
//! and no file is left without a record.
#![cfg(unix)]

use std::collections::{BTreeSet, HashSet};
use std::fs;
use std::io::Cursor;
use std::os::unix::fs::{MetadataExt, PermissionsExt};
use std::os::unix::process::CommandExt;
use std::path::{Path, PathBuf};
use std::process::Child;
use std::time::Duration;

use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::{ImageEncoder, ImageFormat, Rgb, RgbImage};
use laydown_app::in_words::Sentence;
use laydown_app::{Now, Studio, StudioError};
use laydown_store::entity::{Entity, Photo};
use laydown_store::journal::RandomIds;
use laydown_store::photos::{Photos, prepare_photo};
use laydown_store::{Store, StoreError};
use sha2::{Digest, Sha256};
use uuid::Uuid;

use crate::disasters::{OTHER_PROCESS, other, told, whole};
use laydown_tests::{NOW, a_piece};

const NOW_HERE: Now = Now { unix_ms: NOW, utc_offset_s: 0 };
const ROUNDS: u64 = 48;
const PICTURES: u32 = 400;

/// Small pictures, no two alike, in a folder of their own.
fn pictures(folder: &Path, count: u32) -> PathBuf {
    let pictures = folder.join("pictures");
    fs::create_dir(&pictures).unwrap();
    for number in 0..count {
        let [.., high, low] = number.to_be_bytes();
        let picture = RgbImage::from_fn(16, 12, |x, y| Rgb([high, low, (x * 16 + y) as u8]));
        picture.save_with_format(pictures.join(format!("{number:05}.png")), ImageFormat::Png).unwrap();
    }
    pictures
}

/// One picture whose file is large: it is all noise.
fn large_picture(folder: &Path) -> PathBuf {
    let mut chance = 1u32;
    let picture = RgbImage::from_fn(1_200, 900, |_, _| {
        // Numerical Recipes' quick generator: only its upper bits are noise.
        chance = chance.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let [high, low, ..] = chance.to_be_bytes();
        Rgb([high, low, high ^ low])
    });
    let file = folder.join("large.png");
    picture.save_with_format(&file, ImageFormat::Png).unwrap();
    assert!(fs::metadata(&file).unwrap().len() > 2_500_000);
    file
}

/// A studio in which there is a piece to photograph.
fn studio_with_a_piece(folder: &Path) -> (PathBuf, String) {
    let path = folder.join("studio");
    let piece = a_piece(&Store::open(&path, NOW, RandomIds).unwrap());
    (path, piece.to_string())
}

fn photographer(shell: &str, studio: &Path, pictures: &Path, first: u64, most: u64) -> Child {
    let mut command = other(Path::new(OTHER_PROCESS), shell, "photograph", studio);
    command.arg(pictures).args([first.to_string(), most.to_string()]).spawn().unwrap()
}

/// The names of all files in a studio's folder of photographs, and in its folder of staged files.
fn files(studio: &Path) -> (BTreeSet<String>, BTreeSet<String>) {
    let names = |folder: PathBuf| match fs::read_dir(folder) {
        Ok(entries) => {
            let files = entries.map(Result::unwrap).filter(|entry| entry.path().is_file());
            files.map(|entry| entry.file_name().into_string().unwrap()).collect()
        }
        Err(error) => {
            assert_eq!(error.kind(), std::io::ErrorKind::NotFound);
            BTreeSet::new()
        }
    };
    let folder = studio.with_extension("photos");
    (names(folder.clone()), names(folder.join("new")))
}

fn hash(file: &Path) -> String {
    Sha256::digest(fs::read(file).unwrap()).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// The photographs of an opened studio: each has a file of its name and a preview that can be shown, none has more.
fn sound(path: &Path, store: &Store) -> Vec<Photo> {
    let photos = store.read(Photo::all).unwrap();
    let names: HashSet<&str> = photos.iter().map(|photo| photo.sha256.as_str()).collect();
    for name in &names {
        assert_eq!(hash(&store.photos().file(name)), *name);
        image::open(store.photos().preview(name)).unwrap();
    }
    let (settled, newcomers) = files(path);
    assert_eq!(newcomers, BTreeSet::new());
    let expected: BTreeSet<String> =
        names.iter().flat_map(|name| [format!("{name}.picture"), format!("{name}.preview.jpg")]).collect();
    assert_eq!(settled, expected);
    photos
}

#[test]
fn killed_at_any_moment_no_photograph_is_lost_and_none_is_orphaned() {
    let folder = tempfile::tempdir().unwrap();
    let (path, _) = studio_with_a_piece(folder.path());
    let pictures = pictures(folder.path(), PICTURES);
    let (mut saved, mut between, mut round) = (Vec::new(), 0, 0);
    // Files are written in a small part of the time: now and then it takes more rounds until a kill falls there.
    while round < ROUNDS || between == 0 && round < 10 * ROUNDS {
        let mut child = photographer("", &path, &pictures, round * 31, u64::MAX >> 1);
        // The earliest kills come while the file is being made; the later ones anywhere within a keep.
        std::thread::sleep(Duration::from_millis(5 + round * 7_919 % 211));
        child.kill().unwrap();
        let (now_saved, ended) = told(&mut child);
        child.wait().unwrap();
        assert_eq!(ended, None);
        saved.extend(now_saved);

        let (_, newcomers) = files(&path);
        let store = whole(&path, &[]);
        let photos = sound(&path, &store);
        let there: HashSet<Uuid> = photos.iter().map(|photo| photo.id).collect();
        assert!(saved.iter().all(|id| there.contains(id)), "an acknowledged photograph is lost");
        let has_record = |file: &String| photos.iter().any(|photo| file.starts_with(&photo.sha256));
        between += usize::from(newcomers.iter().any(|file| !has_record(file)));
        round += 1;
    }
    eprintln!("{} photographs kept; {between} of {round} kills fell between a file and its record", saved.len());
    assert!(saved.len() > 20, "only {} photographs were kept: the kills tested nothing", saved.len());
    assert!(between > 0, "no kill fell between a file and its record");
}

#[test]
fn a_photograph_without_its_record_is_swept() {
    let folder = tempfile::tempdir().unwrap();
    let (path, _) = studio_with_a_piece(folder.path());
    let pictures = pictures(folder.path(), 2);
    let mut child = photographer("", &path, &pictures, 0, 1);
    let (saved, _) = told(&mut child);
    assert!(child.wait().unwrap().success());
    let mut child = other(Path::new(OTHER_PROCESS), "", "perish", &path);
    let mut child = child.arg(pictures.join("00001.png")).spawn().unwrap();
    assert_eq!(told(&mut child), (vec![], None));
    assert!(!child.wait().unwrap().success());
    let (settled, newcomers) = files(&path);
    assert_eq!((settled.len(), newcomers.len()), (2, 2), "a picture and a preview with a record, the same without");
    let photos = sound(&path, &whole(&path, &[]));
    assert_eq!(photos.iter().map(|photo| photo.id).collect::<Vec<_>>(), saved);
}

#[test]
fn a_photograph_larger_than_a_file_may_be() {
    let folder = tempfile::tempdir().unwrap();
    let (path, _) = studio_with_a_piece(folder.path());
    let large = folder.path().join("large");
    fs::create_dir(&large).unwrap();
    large_picture(&large);
    // No file of the child may grow past 2048 blocks of 512 or 1024 bytes; the signal for it is ignored, so the write fails.
    let mut child = photographer("trap '' XFSZ; ulimit -f 2048;", &path, &large, 0, 1);
    let (saved, ended) = told(&mut child);
    assert!(child.wait().unwrap().success());
    assert!(saved.is_empty());
    let ended = ended.unwrap();
    assert!(ended.contains("nothing else was lost"), "{ended}");
    // Of what was begun nothing is left; the preview, which was whole, goes when the studio is opened next.
    assert!(files(&path).1.iter().all(|file| file.ends_with(".preview.jpg")), "{:?}", files(&path));
    assert!(sound(&path, &whole(&path, &[])).is_empty());
    // With room again, the same photograph is kept.
    let mut child = photographer("", &path, &large, 0, 1);
    assert_eq!(told(&mut child).0.len(), 1);
    assert!(child.wait().unwrap().success());
    assert_eq!(sound(&path, &whole(&path, &[])).len(), 1);
}

/// What is kept is read again years later: a part of a kind that few programs know must not get in the way of that.
#[test]
fn a_picture_held_on_its_side_is_the_same_picture_when_another_phone_takes_it_in() {
    // One directory with one entry: the orientation, turned by a quarter (EXIF 2.32, 4.6.4: tag 0x0112, 6).
    let exif = b"II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\x06\0\0\0\0\0\0\0".to_vec();
    let picture = RgbImage::from_fn(40, 30, |x, y| Rgb([x as u8, y as u8, 90]));
    let mut png = Vec::new();
    let mut encoder = PngEncoder::new(&mut png);
    encoder.set_exif_metadata(exif.clone()).unwrap();
    picture.write_with_encoder(encoder).unwrap();
    let mut jpeg = Vec::new();
    let mut encoder = JpegEncoder::new(&mut jpeg);
    encoder.set_exif_metadata(exif).unwrap();
    picture.write_with_encoder(encoder).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let photos = Photos::of_studio(&folder.path().join("studio"));
    for held in [png, jpeg] {
        let photo = prepare_photo(&held).unwrap();
        assert_eq!((photo.width, photo.height), (30, 40));
        photos.put(&photo).unwrap();
        assert_eq!(prepare_photo(&fs::read(photos.file(&photo.sha256)).unwrap()).unwrap(), photo);
    }
}

#[test]
fn what_is_saved_can_be_read_again_whatever_lay_beside_the_picture() {
    let folder = tempfile::tempdir().unwrap();
    let picture = RgbImage::from_fn(24, 16, |x, y| Rgb([x as u8 * 9, y as u8 * 9, 80]));
    let mut jpeg = Cursor::new(Vec::new());
    picture.write_to(&mut jpeg, ImageFormat::Jpeg).unwrap();
    let mut saved = 0;
    for (marker, content) in
        (0x01..=0xFE).flat_map(|marker| [(marker, [0; 6]), (marker, [0xFF, 0xDA, 0, 2, 0xFF, 0xE1])])
    {
        let mut bytes = jpeg.get_ref().clone();
        bytes.splice(2..2, [0xFF, marker, 0, 8].into_iter().chain(content));
        let Ok(photo) = prepare_photo(&bytes) else { continue };
        let photos = Photos::of_studio(&folder.path().join(format!("{marker:02x}-{}", content[0])));
        photos.put(&photo).unwrap();
        let again = prepare_photo(&fs::read(photos.file(&photo.sha256)).unwrap());
        assert_eq!(again.unwrap(), photo, "{marker:02x} {content:?}");
        saved += 1;
    }
    assert!(saved > 60, "{saved}");
}

/// The system's own error of a full disk, from the device that is always full.
#[test]
#[cfg(target_os = "linux")]
fn a_photograph_for_which_there_is_no_room() {
    let folder = tempfile::tempdir().unwrap();
    let (path, piece) = studio_with_a_piece(folder.path());
    let picture = pictures(folder.path(), 1).join("00000.png");
    let name = prepare_photo(&fs::read(&picture).unwrap()).unwrap().sha256;
    let newcomers = path.with_extension("photos").join("new");
    for ending in ["preview.jpg", "picture"] {
        let studio = Studio::open(&path, NOW_HERE).unwrap();
        fs::create_dir_all(&newcomers).unwrap();
        std::os::unix::fs::symlink("/dev/full", newcomers.join(format!("{name}.{ending}.partial"))).unwrap();
        let before = studio.store().dump().unwrap();
        let refused = studio.save_photo(NOW_HERE, &piece, "", &picture).unwrap_err();
        let StudioError::Full { sentence } = refused else { panic!("{refused:?}") };
        assert!(sentence.starts_with("The phone is full, so this was not saved"), "{sentence}");
        assert_eq!(studio.store().dump().unwrap(), before);
        assert!(files(&path).1.iter().all(|file| file.ends_with(".preview.jpg")), "{:?}", files(&path));
        drop(studio);
        assert!(sound(&path, &whole(&path, &[])).is_empty());
    }
    Studio::open(&path, NOW_HERE).unwrap().save_photo(NOW_HERE, &piece, "", &picture).unwrap();
    assert_eq!(sound(&path, &whole(&path, &[])).len(), 1);
}

#[test]
fn a_photograph_whose_record_finds_no_room() {
    let folder = tempfile::tempdir().unwrap();
    let (path, piece) = studio_with_a_piece(folder.path());
    let pictures = pictures(folder.path(), PICTURES);
    let studio = Studio::open(&path, NOW_HERE).unwrap();
    let pages = |most: i64| {
        let set = studio.store().transact(NOW, |tx| {
            Ok::<i64, StoreError>(
                tx.conn().query_row(&format!("PRAGMA max_page_count = {most}"), [], |row| row.get(0))?,
            )
        });
        set.unwrap();
    };
    let save = |number: u32| studio.save_photo(NOW_HERE, &piece, "", &pictures.join(format!("{number:05}.png")));
    pages(1);
    let (full, refused) =
        (0..PICTURES).find_map(|number| Some((number, save(number).err()?))).expect("no room in the end");
    let StudioError::Full { sentence } = refused else { panic!("{refused:?}") };
    assert!(sentence.starts_with("The phone is full, so this was not saved"), "{sentence}");
    let saved = studio.store().read(Photo::all).unwrap().len();
    assert_eq!(saved, full as usize);
    pages(1_000_000);
    save(full).unwrap();
    drop(studio);
    assert_eq!(sound(&path, &whole(&path, &[])).len(), saved + 1);
}

#[test]
fn a_folder_of_photographs_that_may_not_be_written() {
    let folder = tempfile::tempdir().unwrap();
    let allow = |path: &Path, mode| fs::set_permissions(path, fs::Permissions::from_mode(mode)).unwrap();
    let home = folder.path().join("home");
    let path = home.join("studio");
    let pictures = pictures(folder.path(), 1);
    let newcomers = path.with_extension("photos").join("new");
    fs::create_dir_all(&newcomers).unwrap();
    a_piece(&whole(&path, &[]));
    // Root may do anything, so the child runs as nobody, from a place where nobody can reach the program.
    let program = folder.path().join("program");
    fs::copy(OTHER_PROCESS, &program).unwrap();
    for path in [folder.path(), &program, &pictures] {
        allow(path, 0o755);
    }
    allow(&home, 0o777);
    allow(&path, 0o666);
    allow(&newcomers, 0o555);
    let mut command = other(&program, "", "photograph", &path);
    command.arg(&pictures).args(["0", "1"]);
    if fs::metadata("/proc/self").is_ok_and(|own| own.uid() == 0) {
        command.uid(65_534).gid(65_534);
    }
    let mut child = command.spawn().unwrap();
    let (saved, ended) = told(&mut child);
    assert!(child.wait().unwrap().success());
    allow(&newcomers, 0o755);
    assert!(saved.is_empty());
    let ended = ended.unwrap();
    assert!(ended.starts_with("Unreadable") && ended.contains(&StoreError::NotAllowed.sentence()), "{ended}");
    assert_eq!(files(&path), (BTreeSet::new(), BTreeSet::new()));
    assert!(sound(&path, &whole(&path, &[])).is_empty());
}
