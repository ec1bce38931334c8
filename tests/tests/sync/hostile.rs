//! Rounds against a server that does not mean well, or a bad line: each ends in time, with what it did or a sentence, and
//! costs no more than it must.

use std::collections::BTreeMap;
use std::net::TcpListener;
use std::path::PathBuf;
use std::process::Command;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc;
use std::thread;
use std::time::{Duration, Instant};

use laydown_app::in_words::Sentence;
use laydown_sync::{Connection, Options, RemoteConfig, RemoteError, RemoteStore, RetryPolicy, Secret};
use laydown_tests::memory;

use crate::adversary::{Adversary, Asked, Trick, list_page, multistatus};
use crate::plain_http::PlainHttp;
use crate::studio::{Device, all_agree};

const PASSWORD: &str = "slip and sieve";
const MB: usize = 1 << 20;

/// Few and short waits, and time for a machine that has much else to do.
const QUICK: RetryPolicy = RetryPolicy {
    times: 2,
    first: Duration::from_millis(20),
    longest: Duration::from_millis(100),
    answer: Duration::from_secs(20),
};

/// For answers that are to be given up.
const HASTY: RetryPolicy = RetryPolicy { answer: Duration::from_millis(500), ..QUICK };

/// After this long something hangs.
const HANGS: Duration = Duration::from_secs(180);

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    WebDav,
    S3,
}

const BOTH: [Kind; 2] = [Kind::WebDav, Kind::S3];

fn place(kind: Kind, server: &str) -> RemoteConfig {
    match kind {
        Kind::WebDav => RemoteConfig::WebDav {
            address: format!("http://{server}/dav/"),
            user: "potter".to_owned(),
            password: Secret::from(PASSWORD.to_owned()),
        },
        Kind::S3 => RemoteConfig::S3 {
            address: format!("http://{server}"),
            region: "us-east-1".to_owned(),
            bucket: "pots".to_owned(),
            folder: "/studio/".to_owned(),
            key: "potter".to_owned(),
            secret: Secret::from(PASSWORD.to_owned()),
        },
    }
}

fn connect(kind: Kind, server: &Adversary) -> Connection {
    connect_with(kind, server, QUICK)
}

fn connect_with(kind: Kind, server: &Adversary, retry: RetryPolicy) -> Connection {
    Connection::open(&place(kind, &server.at().to_string()), Some(PlainHttp::client()), retry).unwrap()
}

/// Where a file lies on the server.
fn on_server(kind: Kind, path: &str) -> String {
    match kind {
        Kind::WebDav => path.to_owned(),
        Kind::S3 => format!("studio/{path}"),
    }
}

/// Fails where `work` is not done in [`HANGS`].
fn ends<T: Send + 'static>(what: &str, work: impl FnOnce() -> T + Send + 'static) -> T {
    let (done, waiting) = mpsc::channel();
    thread::spawn(move || done.send(work()));
    waiting.recv_timeout(HANGS).unwrap_or_else(|_| panic!("{what} hangs, or failed"))
}

fn puts(asked: &[Asked]) -> Vec<&str> {
    asked.iter().filter(|asked| asked.method == "PUT").map(|asked| asked.path.as_str()).collect()
}

/// Two phones that have met through this server.
fn met(kind: Kind, server: &Adversary) -> (Device, Device) {
    let (mut a, mut b) = (Device::new(1), Device::new(2));
    a.weigh(3);
    a.photograph(1);
    b.weigh(3);
    all_agree(&[&a, &b], &connect(kind, server), &Options::default());
    server.take_asked();
    (a, b)
}

/// Does `trick` to the listing of `folder`, the first so many times.
fn on_listing(server: &Adversary, folder: &'static str, mut times: usize, trick: Trick) {
    server.plan(move |asked| {
        let hit = asked.lists() && asked.path.contains(folder) && times > 0;
        if !hit {
            return Trick::Honest;
        }
        times -= 1;
        trick.clone()
    });
}

#[test]
fn a_listing_that_breaks_in_the_middle_is_begun_anew_and_nothing_is_sent_again() {
    for trick in [Trick::Status(503), Trick::Drop, Trick::Cut(150)] {
        let server = Adversary::start();
        let (a, _b) = met(Kind::WebDav, &server);
        on_listing(&server, "/journal", 1, trick.clone());
        let outcome = a.sync(&connect(Kind::WebDav, &server)).unwrap();
        assert_eq!(puts(&server.take_asked()), [""; 0], "{trick:?}: sent again");
        assert_eq!((outcome.events_out, outcome.photographs_out), (0, 0), "{trick:?}");
    }
}

#[test]
fn a_listing_that_is_not_whole_is_an_error() {
    // A folder that was named a moment ago is gone, closed, or its list ends too soon.
    let cut = multistatus(&[("/dav/devices/".to_owned(), None)]);
    let cut = cut[..cut.len() - 20].to_vec();
    let tricks = [
        Trick::Status(404),
        Trick::Status(503),
        Trick::Status(403),
        Trick::Drop,
        Trick::Cut(150),
        Trick::Body(207, cut),
    ];
    for trick in tricks {
        let server = Adversary::start();
        let (a, b) = met(Kind::WebDav, &server);
        on_listing(&server, "/journal", usize::MAX, trick.clone());
        for phone in [&a, &b] {
            let went = phone.sync(&connect(Kind::WebDav, &server));
            assert!(went.is_err(), "{trick:?}: {went:?}");
        }
        let asked = server.take_asked();
        assert_eq!(puts(&asked), [""; 0], "{trick:?}: sent again");
        assert!(asked.len() < 100, "{trick:?}: begun anew {} times", asked.len());
        server.be_honest();
        assert_eq!(a.sync(&connect(Kind::WebDav, &server)).unwrap().events_out, 0);
    }
    let server = Adversary::start();
    let (a, _b) = met(Kind::S3, &server);
    let cut = list_page(&[("studio/devices/x", 3)], Some("studio/devices/x"));
    for trick in [Trick::Status(503), Trick::Cut(150), Trick::Body(200, cut[..cut.len() - 30].to_vec())] {
        on_listing(&server, "", usize::MAX, trick.clone());
        let went = a.sync(&connect(Kind::S3, &server));
        assert!(went.is_err(), "{trick:?}: {went:?}");
        assert_eq!(puts(&server.take_asked()), [""; 0], "{trick:?}: sent again");
    }
}

#[test]
fn what_a_listing_says_of_other_places_is_no_file_here() {
    let server = Adversary::start();
    let (a, b) = met(Kind::WebDav, &server);
    let host = server.at();
    for address in [
        "http://127.0.0.2/dav/devices/x.zst".to_owned(),
        "//127.0.0.2/dav/devices/x.zst".to_owned(),
        format!("http://potter@{host}/dav/devices/x.zst"),
        "/etc/passwd".to_owned(),
        "/dav/holiday.jpg".to_owned(),
        "/dav/devices/../../etc/passwd".to_owned(),
        "/dav/devices/%2e%2e/%2e%2e/etc/passwd".to_owned(),
        "/dav/devices/a%2f..%2f..%2fb".to_owned(),
        "/dav/devices/a\\b".to_owned(),
        "/dav/devices/deep/er".to_owned(),
        "/dav/devices//er".to_owned(),
        String::new(),
    ] {
        let listing = [("/dav/devices/".to_owned(), None), (address.clone(), Some(7))];
        let body = multistatus(&listing);
        server.plan(move |asked| if asked.lists() { Trick::Body(207, body.clone()) } else { Trick::Honest });
        let listed = connect(Kind::WebDav, &server).list();
        assert!(listed.as_ref().map_or(true, Vec::is_empty), "{address}: {listed:?}");
    }
    // An address may also be whole.
    let listing =
        [(format!("http://{host}/dav/devices/"), None), (format!("http://{host}/dav/devices/a%20b"), Some(7))];
    let body = multistatus(&listing);
    server.plan(move |asked| if asked.lists() { Trick::Body(207, body.clone()) } else { Trick::Honest });
    let listed = connect(Kind::WebDav, &server).list().unwrap();
    assert_eq!(listed.iter().map(|file| (file.path.as_str(), file.size)).collect::<Vec<_>>(), [("devices/a b", 7)]);
    server.be_honest();
    all_agree(&[&a, &b], &connect(Kind::WebDav, &server), &Options::default());

    let server = Adversary::start();
    for key in ["", "x", "studio", "etc/passwd", "studio/holiday.jpg", "studio/devices/../../x"] {
        let body = list_page(&[(key, 7)], None);
        server.plan(move |asked| if asked.lists() { Trick::Body(200, body.clone()) } else { Trick::Honest });
        let listed = connect(Kind::S3, &server).list();
        assert!(listed.as_ref().map_or(true, Vec::is_empty), "{key}: {listed:?}");
    }
}

#[test]
fn a_list_without_end_ends_in_an_error() {
    // The same page for ever, with and without a key on it; a folder in a folder in a folder.
    for page in [list_page(&[("studio/devices/x", 3)], Some("again")), list_page(&[], Some("again"))] {
        let server = Adversary::start();
        server.plan(move |_| Trick::Body(200, page.clone()));
        let remote = connect(Kind::S3, &server);
        let listed = ends("an endless list", move || remote.list());
        assert!(listed.is_err(), "{:?}", listed.map(|list| list.len()));
    }
    // Ever new keys, ever new tokens.
    let server = Adversary::start();
    let mut number = 0;
    server.plan(move |_| {
        number += 1;
        let key = format!("studio/devices/{number}");
        Trick::Body(200, list_page(&[(&key, 3)], Some(&key)))
    });
    let remote = connect(Kind::S3, &server);
    let listed = ends("an endless list", move || remote.list());
    assert!(listed.is_err(), "{:?}", listed.map(|list| list.len()));

    let server = Adversary::start();
    server.plan(|asked| {
        let here = format!("/dav/{}", asked.path);
        let inner = ["a", "b", "c"].map(|name| (format!("{here}{name}/"), None));
        Trick::Body(207, multistatus(&[[(here, None)].as_slice(), &inner].concat()))
    });
    let remote = connect(Kind::WebDav, &server);
    let listed = ends("folders in folders", move || remote.list());
    assert!(listed.map_or(true, |list| list.is_empty()));
    assert!(server.take_asked().len() < 20_000);
}

#[test]
fn nothing_goes_to_another_host() {
    for kind in BOTH {
        for (status, method) in [(307, "PUT"), (301, "GET"), (302, "PROPFIND"), (308, "PUT"), (303, "GET")] {
            let other = TcpListener::bind("127.0.0.1:0").unwrap();
            let to = format!("http://{}/dav/x", other.local_addr().unwrap());
            let server = Adversary::start();
            let mut a = Device::new(1);
            a.weigh(2);
            server.plan(move |asked| {
                let hit = asked.method == method || (asked.lists() && method == "PROPFIND");
                if hit { Trick::Redirect(status, to.clone()) } else { Trick::Honest }
            });
            let went = a.sync(&connect(kind, &server));
            let error = went.unwrap_err();
            assert!(matches!(error, RemoteError::Redirected), "{kind:?} {status} {method}: {error:?}");
            other.set_nonblocking(true).unwrap();
            assert!(other.accept().is_err(), "{kind:?} {status} {method}: somebody called");
        }
    }
}

#[test]
fn a_redirect_on_the_same_host_is_followed_but_not_in_a_circle() {
    let server = Adversary::start();
    let (a, b) = met(Kind::WebDav, &server);
    // As a server does that wants a slash, or moved the folder.
    server.plan(|asked| {
        if asked.path.starts_with("moved/") || asked.headers.get("depth").is_some_and(|depth| depth == "0") {
            Trick::Honest
        } else {
            Trick::Redirect(307, format!("/dav2/{}", asked.path.replace(' ', "%20")))
        }
    });
    // Round and round: the server's root does not matter to it.
    let remote = connect(Kind::WebDav, &server);
    let went = ends("a circle of redirects", move || remote.list());
    assert!(went.is_err());
    assert!(server.take_asked().len() < 40, "a circle was followed");
    let mut first = true;
    server.plan(move |asked| {
        first = !first;
        if first || asked.method == "MKCOL" {
            Trick::Honest
        } else {
            Trick::Redirect(308, format!("/dav/{}", asked.path))
        }
    });
    let mut c = Device::new(3);
    c.weigh(1);
    let outcome = c.sync(&connect(Kind::WebDav, &server)).unwrap();
    assert!(outcome.events_in > 0 && outcome.events_out > 0);
    server.be_honest();
    all_agree(&[&a, &b, &c], &connect(Kind::WebDav, &server), &Options::default());
}

#[test]
fn a_server_that_says_a_byte_now_and_then_is_given_up() {
    for kind in BOTH {
        // What is listed, and what is fetched.
        for lists in [true, false] {
            let server = Adversary::start();
            met(kind, &server);
            server.plan(move |asked| if asked.lists() == lists { Trick::Slow(300) } else { Trick::Honest });
            let remote = connect_with(kind, &server, HASTY);
            let went = ends("a slow server", move || Device::new(3).sync(&remote).map(|_| ()));
            let error = went.unwrap_err();
            assert!(matches!(error, RemoteError::TooSlow), "{kind:?}: {error:?}");
        }
    }
}

/// Sets stop after a while, and says how long it took from then on till `work` ended and the connection was gone.
fn stopped(remote: Connection, work: impl FnOnce(&Connection) -> Result<(), RemoteError> + Send + 'static) -> Duration {
    let stop = Arc::new(AtomicBool::new(false));
    let remote = remote.until(Arc::clone(&stop));
    let (done, waiting) = mpsc::channel();
    thread::spawn(move || {
        let went = work(&remote);
        drop(remote);
        done.send(went)
    });
    thread::sleep(Duration::from_millis(600));
    stop.store(true, Ordering::Relaxed);
    let from = Instant::now();
    let went = waiting.recv_timeout(HANGS / 6).unwrap_or_else(|_| panic!("it does not stop"));
    assert!(matches!(went, Err(RemoteError::Stopped)), "{went:?}");
    from.elapsed()
}

#[test]
fn stop_is_obeyed_whatever_is_waited_for() {
    let patient =
        RetryPolicy { first: Duration::from_secs(50), longest: Duration::from_secs(50), ..RetryPolicy::default() };
    let path = "devices/a/journal/b/c";
    type Work = fn(&Connection) -> Result<(), RemoteError>;
    let list: Work = |remote| remote.list().map(|_| ());
    let get: Work = |remote| remote.get("devices/a/journal/b/c", 66 * MB as u64).map(|_| ());
    let put: Work = |remote| remote.put("devices/a/journal/b/c", vec![0; 64 * MB]);
    let tricks = [
        // The head of an answer, its body, the wait before the next try, and a body that nobody takes.
        Trick::Silent,
        Trick::Slow(100),
        Trick::Endless(b"<a>".repeat(9), None),
        Trick::Status(503),
        Trick::Deaf,
    ];
    for kind in BOTH {
        for trick in &tricks {
            for (name, work) in [("list", list), ("get", get), ("put", put)] {
                if matches!((name, trick), ("put", Trick::Endless(..)))
                    || (name != "put" && matches!(trick, Trick::Deaf))
                {
                    continue;
                }
                let server = Adversary::start();
                server.put(&on_server(kind, path), &[7; 5_000]);
                let done = trick.clone();
                server.plan(move |_| match &done {
                    // Slow enough to be there when it is to stop, quick enough to go on.
                    Trick::Endless(..) => Trick::Slow(20),
                    other => other.clone(),
                });
                let remote = connect_with(kind, &server, patient);
                let took = stopped(remote, work);
                assert!(took < Duration::from_secs(5), "{kind:?} {name} {trick:?}: {took:?}");
            }
        }
    }
}

#[cfg(unix)]
#[test]
fn stop_is_obeyed_where_a_folder_does_not_answer() {
    let folder = tempfile::tempdir().unwrap();
    // Whoever opens it waits till somebody writes.
    assert!(Command::new("mkfifo").arg(folder.path().join("pipe")).status().unwrap().success());
    let remote =
        Connection::open(&RemoteConfig::Folder(folder.path().to_owned()), None, RetryPolicy::default()).unwrap();
    let took = stopped(remote, |remote| remote.get("pipe", 9).map(|_| ()));
    assert!(took < Duration::from_secs(5), "{took:?}");
    // Lets the thread that still waits go.
    drop(std::fs::OpenOptions::new().read(true).write(true).open(folder.path().join("pipe")).unwrap());
}

/// What the other process of [`memory_stays_small`] does: it reads what the server there has to say.
#[test]
#[ignore = "run by memory_stays_small in a process of its own"]
fn reading_all_there_is() {
    let told = |name| std::env::var(name).unwrap();
    let kind = if told("KIND") == "s3" { Kind::S3 } else { Kind::WebDav };
    let needed = memory::needed(|| {
        let remote = Connection::open(&place(kind, &told("SERVER")), Some(PlainHttp::client()), HASTY).unwrap();
        let went = if told("WHAT") == "list" {
            remote.list().map(|_| ())
        } else {
            remote.get("devices/a/journal/b/c", 66 * MB as u64).map(|_| ())
        };
        assert!(went.is_err(), "{went:?}");
    });
    std::fs::write(PathBuf::from(told("RESULT")), needed.unwrap().to_string()).unwrap();
}

#[cfg(target_os = "linux")]
#[test]
fn memory_stays_small() {
    let long = multistatus(&[("/dav/devices/".to_owned(), None)]);
    let deep = b"<a>".repeat(MB / 3);
    let mut bomb = b"<!DOCTYPE a [<!ENTITY a \"".to_vec();
    bomb.extend(b"lol".repeat(1_000));
    bomb.extend(b"\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]><multistatus>");
    let tricks = [
        ("get", "a body without end", Trick::Endless(vec![7; MB], None)),
        ("get", "a body longer than any", Trick::Endless(vec![7; MB], Some(300 * MB as u64))),
        ("get", "headers", Trick::Headers(100_000)),
        ("get", "interim answers", Trick::Interim),
        ("list", "spaces", Trick::Endless(vec![b' '; MB], None)),
        ("list", "a byte at a time", Trick::Endless(b" ".to_vec(), None)),
        ("list", "lists in a list", Trick::Endless(long, None)),
        ("list", "elements in elements", Trick::Endless(b"<a>".repeat(1_000), None)),
        ("list", "a deep list", Trick::Body(207, deep)),
        ("list", "entities", Trick::Body(207, bomb)),
        ("list", "headers", Trick::Headers(100_000)),
    ];
    let folder = tempfile::tempdir().unwrap();
    let result = folder.path().join("memory");
    for kind in BOTH {
        for (what, name, trick) in &tricks {
            let server = Adversary::start();
            server.put(&on_server(kind, "devices/a/journal/b/c"), b"nothing");
            let done = trick.clone();
            server.plan(move |_| done.clone());
            let mut other = Command::new(std::env::current_exe().unwrap());
            other.args(["--exact", "hostile::reading_all_there_is", "--ignored", "--nocapture"]);
            other.env("KIND", if kind == Kind::S3 { "s3" } else { "webdav" }).env("WHAT", what);
            other.env("SERVER", server.at().to_string()).env("RESULT", &result);
            let output = ends("reading all there is", move || other.output().unwrap());
            let shown = format!("{kind:?} {what}, {name}");
            assert!(output.status.success(), "{shown}: {}", String::from_utf8_lossy(&output.stdout));
            let taken: usize = std::fs::read_to_string(&result).unwrap().parse().unwrap();
            assert!(taken < 200 * 1_024, "{shown}: {taken} kB");
            eprintln!("{shown}: {taken} kB");
        }
    }
}

/// A little chance that is the same for a seed.
struct Chance(u64);

impl Chance {
    fn below(&mut self, most: u64) -> u64 {
        // SplitMix64.
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (mixed ^ (mixed >> 31)) % most
    }

    fn trick(&mut self, elsewhere: &str) -> Trick {
        match self.below(19) {
            0 => Trick::Drop,
            1 => Trick::Cut(self.below(600) as usize),
            2 => Trick::Length(1 + self.below(50) as i64),
            3 => Trick::Length(-1 - self.below(50) as i64),
            4 => Trick::Endless(vec![b'<'; MB], None),
            5 => Trick::Endless(vec![0; MB], Some(MOST)),
            6 => Trick::Slow(100),
            7 => Trick::Silent,
            8 => Trick::Status(503),
            9 => Trick::Status(404),
            10 => Trick::Status(401),
            11 => Trick::Redirect(307, elsewhere.to_owned()),
            12 => Trick::Redirect(301, "/dav/devices/".to_owned()),
            13 => Trick::Body(207, multistatus(&[("/dav/devices/".to_owned(), None), ("/etc".to_owned(), Some(3))])),
            14 => Trick::Body(200, list_page(&[("studio/devices/x", 3)], Some("again"))),
            15 => Trick::Headers(self.below(2_000) as usize),
            16 => Trick::Swap,
            17 => Trick::Replay,
            _ => [Trick::Half, Trick::Late][self.below(2) as usize].clone(),
        }
    }
}

const MOST: u64 = 1 << 40;

/// Two phones that meet where the server misbehaves as `seed` has it, and again where it does not any more.
fn rounds(seed: u64) {
    let kind = BOTH[seed as usize % 2];
    let server = Adversary::start();
    let other = TcpListener::bind("127.0.0.1:0").unwrap();
    let elsewhere = format!("http://{}/", other.local_addr().unwrap());
    let mut chance = Chance(seed);
    if chance.below(2) == 0 {
        server.keep_all();
    }
    let (mut a, mut b) = (Device::new(1), Device::new(2));
    for number in 0..2 {
        a.weigh(4);
        b.weigh(2);
        a.photograph(number);
        if number == 0 && chance.below(2) == 0 {
            a.sync(&connect(kind, &server)).unwrap();
        }
    }
    let own = [&a, &b].map(Device::events);
    let one_in = 2 + chance.below(30);
    let mut tricks = Chance(seed ^ 0xadad);
    server.plan(move |_| if tricks.below(one_in) == 0 { tricks.trick(&elsewhere) } else { Trick::Honest });
    for phone in [&a, &b, &a, &b] {
        match phone.sync(&connect_with(kind, &server, HASTY)) {
            Ok(outcome) => assert!(outcome.file_errors.iter().all(|trouble| !trouble.sentence().is_empty())),
            Err(error) => {
                let said = format!("{} {error:?} {}", error.sentence(), error.details());
                assert!(!error.sentence().is_empty() && !said.contains(PASSWORD), "{said}");
            }
        }
    }
    // Each has its own and nothing but what the other made.
    for (phone, other) in [(&a, &own[1]), (&b, &own[0])] {
        let theirs = phone.events();
        for (device, events) in &theirs {
            let true_ones = own.iter().find_map(|own| own.get(device)).unwrap();
            assert!(true_ones.starts_with(events), "seed {seed}: {} has what nobody made", device.0);
        }
        let me = phone.store.device();
        assert!(
            !other.contains_key(&me) && theirs[&me].len() == own.iter().find_map(|own| own.get(&me)).unwrap().len()
        );
    }
    server.be_honest();
    let lying = server.files();
    server.take_asked();
    for phone in [&a, &b] {
        let outcome = phone.sync(&connect(kind, &server)).unwrap();
        assert!(outcome.file_errors.iter().all(|trouble| !trouble.sentence().is_empty()));
    }
    let again: BTreeMap<String, Vec<u8>> =
        server.take_asked().into_iter().filter(|asked| asked.method == "PUT").map(|put| (put.path, put.body)).collect();
    for (path, bytes) in again {
        assert!(lying.get(&path) != Some(&bytes), "seed {seed}: {path} lay there whole and was put again");
    }
    all_agree(&[&a, &b], &connect(kind, &server), &Options::default());
    other.set_nonblocking(true).unwrap();
    assert!(other.accept().is_err(), "seed {seed}: somebody called elsewhere");
}

/// `LAYDOWN_ADVERSARY` says how many seconds to go on; without it, a few rounds.
#[test]
fn whatever_the_server_does_the_phones_agree_once_it_is_honest() {
    let seconds = std::env::var("LAYDOWN_ADVERSARY").ok().map(|seconds| seconds.parse().unwrap());
    let until = Instant::now() + Duration::from_secs(seconds.unwrap_or_default());
    let mut seed = 0;
    while seed < 16 || Instant::now() < until {
        ends(&format!("seed {seed}"), move || rounds(seed));
        seed += 1;
    }
    eprintln!("{seed} seeds");
}
