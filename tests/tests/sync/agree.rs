//! A sync as the page has it: what is refused, what is said of it afterwards, and that it stops while nobody answers.

use std::net::TcpListener;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;
use std::time::{Duration, Instant};

use laydown_app::{EditorEntry, EditorKind, Now, Studio, StudioError, Value};
use laydown_app::{SyncRequest, sync_now};
use laydown_sync::{Connection, RemoteConfig, RemoteStore, RetryPolicy};
use tempfile::TempDir;

use crate::plain_http::PlainHttp;

const NOW: Now = Now { unix_ms: 1_795_600_000_000, utc_offset_s: 0 };

struct Phone {
    folder: TempDir,
    studio: Studio,
}

impl Phone {
    fn new(place: &[(&str, &str)]) -> Phone {
        let folder = tempfile::tempdir().unwrap();
        let studio = Studio::open(&folder.path().join("studio.laydown"), NOW).unwrap();
        let phone = Phone { folder, studio };
        phone.save(EditorKind::SyncLocation, place);
        phone
    }

    fn save(&self, kind: EditorKind, values: &[(&str, &str)]) {
        let (id, subject) = (String::new(), String::new());
        self.studio
            .save_record(NOW, &EditorEntry { kind, id, subject, values: of(values), draft: String::new() })
            .unwrap();
    }

    fn sync_now(
        &self,
        secrets: &[(&str, &str)],
        remote: Option<&dyn RemoteStore>,
        stop: &Arc<AtomicBool>,
    ) -> Result<String, StudioError> {
        let secrets = of(secrets);
        let how = SyncRequest {
            secrets: &secrets,
            metered: false,
            check: false,
            folder: remote,
            client: Some(PlainHttp::client()),
            stop: Arc::clone(stop),
        };
        sync_now(&self.studio, NOW, &how, &mut |_| ())
    }

    fn notes(&self) -> Vec<String> {
        self.studio.devices(NOW).unwrap().sync.notes.into_iter().map(|note| note.text).collect()
    }
}

fn of(values: &[(&str, &str)]) -> Vec<Value> {
    values.iter().map(|(key, text)| Value { key: (*key).to_owned(), text: (*text).to_owned() }).collect()
}

const SERVER: [(&str, &str); 4] =
    [("kind", "webdav"), ("user", "sink"), ("password", "only for the sink"), ("photographs_wait", "no")];

#[test]
fn a_sync_stops_while_nobody_answers() {
    // Takes the call, and never says a word.
    let deaf = TcpListener::bind("127.0.0.1:0").unwrap();
    let address = format!("http://{}/dav", deaf.local_addr().unwrap());
    let phone = Phone::new(&[SERVER.as_slice(), &[("address", &address)]].concat());
    let stop = Arc::new(AtomicBool::new(false));
    let setter = Arc::clone(&stop);
    let begun = Instant::now();
    thread::spawn(move || {
        thread::sleep(Duration::from_millis(300));
        setter.store(true, Ordering::Relaxed);
    });
    let refused = phone.sync_now(&[("password", "only for the sink")], None, &stop).unwrap_err();
    assert!(matches!(&refused, StudioError::Elsewhere { sentence } if sentence.starts_with("Stopped.")), "{refused:?}");
    assert!(begun.elapsed() < Duration::from_secs(3), "{:?}", begun.elapsed());
    assert!(phone.notes()[0].contains("Stopped."), "{:?}", phone.notes());
}

#[test]
fn a_password_that_is_not_here_is_asked_for_and_nothing_is_sent() {
    let server = TcpListener::bind("127.0.0.1:0").unwrap();
    let address = format!("http://{}/dav", server.local_addr().unwrap());
    let phone = Phone::new(&[SERVER.as_slice(), &[("address", &address)]].concat());
    let refused = phone.sync_now(&[("passphrase", "slip and sieve")], None, &Arc::default()).unwrap_err();
    assert!(matches!(&refused, StudioError::Refused { field, .. } if field == "password"), "{refused:?}");
    server.set_nonblocking(true).unwrap();
    assert!(server.accept().is_err(), "somebody called");
    // What the studio's file holds of it is where, not the secret.
    let file = std::fs::read(phone.folder.path().join("studio.laydown-wal")).unwrap();
    let holds = |text: &str| file.windows(text.len()).any(|part| part == text.as_bytes());
    assert!(holds(&address));
    assert!(!holds("only for the sink"));
}

#[test]
fn what_is_missing_there_is_said_with_the_phone_that_has_it() {
    let remote = tempfile::tempdir().unwrap();
    let way = Connection::open(&RemoteConfig::Folder(remote.path().to_owned()), None, RetryPolicy::default()).unwrap();
    let place = [("kind", "folder"), ("folder", "Shelf\nhandle")];
    let (tablet, kiln) = (Phone::new(&place), Phone::new(&place));
    for (times, name) in ["Tablet", "Tablet by the sink", "Tablet by the door"].into_iter().enumerate() {
        tablet.save(EditorKind::Preference, &[("phone", name)]);
        tablet.sync_now(&[], Some(&way), &Arc::default()).unwrap();
        if times == 0 {
            // Takes in the first, and so knows the tablet's name.
            assert_eq!(kiln.sync_now(&[], Some(&way), &Arc::default()).unwrap(), "Received: 1 entry.");
        }
    }
    let second = way.list().unwrap().into_iter().find(|file| file.path.contains("000000000002-")).unwrap();
    std::fs::remove_file(remote.path().join(&second.path)).unwrap();
    let came = kiln.sync_now(&[], Some(&way), &Arc::default()).unwrap();
    assert_eq!(came, "Nothing was new on either side.");
    assert_eq!(kiln.notes(), ["Entry 2 of Tablet is missing there. Choose “Sync now” on that phone, then here again."]);
    // The tablet looks through all it ever put there, and then the two agree.
    let how = SyncRequest {
        secrets: &[],
        metered: false,
        check: true,
        folder: Some(&way),
        client: None,
        stop: Arc::default(),
    };
    sync_now(&tablet.studio, NOW, &how, &mut |_| ()).unwrap();
    assert_eq!(kiln.sync_now(&[], Some(&way), &Arc::default()).unwrap(), "Received: 2 entries.");
    assert_eq!(kiln.notes(), Vec::<String>::new());
}

/// What the sheet of the location asks.
fn asked(phone: &Phone) -> Vec<String> {
    let (id, subject) = (String::new(), String::new());
    let entry = EditorEntry { kind: EditorKind::SyncLocation, id, subject, values: Vec::new(), draft: String::new() };
    phone.studio.editor(NOW, &entry).unwrap().fields.into_iter().map(|field| field.key).collect()
}

#[test]
fn a_phone_starts_afresh_beside_files_that_its_passphrase_does_not_open() {
    let remote = tempfile::tempdir().unwrap();
    let way = Connection::open(&RemoteConfig::Folder(remote.path().to_owned()), None, RetryPolicy::default()).unwrap();
    let place = [("kind", "folder"), ("folder", "Shelf\nhandle"), ("sealed", "yes")];
    let with = |passphrase| [place.as_slice(), &[("passphrase", passphrase)]].concat();
    let sync = |phone: &Phone, passphrase| phone.sync_now(&[("passphrase", passphrase)], Some(&way), &Arc::default());
    let (stranger, own) = ("a stranger's few words", "slip and sieve");
    let theirs = Phone::new(&with(stranger));
    theirs.save(EditorKind::Preference, &[("phone", "Tablet")]);
    sync(&theirs, stranger).unwrap();
    let there = way.list().unwrap();

    let mine = Phone::new(&with(own));
    mine.save(EditorKind::Preference, &[("phone", "Phone by the sink")]);
    assert!(!asked(&mine).iter().any(|key| key == "afresh"), "asked before there was a reason");
    let refused = sync(&mine, own).unwrap_err();
    assert!(matches!(&refused, StudioError::Refused { field, .. } if field == "passphrase"), "{refused:?}");
    assert!(mine.notes()[0].contains("start afresh there"), "{:?}", mine.notes());
    assert_eq!(way.list().unwrap(), there, "something was put there without leave");

    // The sheet now offers it, and it holds for one sync.
    assert!(asked(&mine).iter().any(|key| key == "afresh"));
    mine.save(EditorKind::SyncLocation, &[with(own).as_slice(), &[("afresh", "yes")]].concat());
    assert_eq!(sync(&mine, own).unwrap(), "Sent: 1 entry.");
    assert!(mine.notes()[0].contains("not encrypted with your passphrase"), "{:?}", mine.notes());
    assert!(!asked(&mine).iter().any(|key| key == "afresh"), "asked after it was done");
    assert_eq!(sync(&mine, own).unwrap(), "Nothing was new on either side.");

    // What lay there lies there still, and its own phone goes on.
    let now = way.list().unwrap();
    assert!(there.iter().all(|file| now.contains(file)));
    theirs.save(EditorKind::Preference, &[("phone", "Tablet by the door")]);
    assert_eq!(sync(&theirs, stranger).unwrap(), "Sent: 1 entry.");
    // Another phone of the studio that has the passphrase reads what was begun anew.
    let third = Phone::new(&with(own));
    assert!(sync(&third, own).unwrap().starts_with("Received: 1 entry."));
}
