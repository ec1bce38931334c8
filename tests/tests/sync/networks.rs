//! Networks that fail, break or never come back: each is told, and none is waited for.

use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Arc, mpsc};
use std::thread;
use std::time::{Duration, Instant};

use laydown_app::in_words::Sentence;
use laydown_sync::http_client::{HttpAnswer, HttpCall, HttpClient, HttpRequest, NetworkError};
use laydown_sync::{Connection, RemoteConfig, RemoteError, RemoteStore, RetryPolicy, Secret};

const QUICK: RetryPolicy = RetryPolicy {
    times: 2,
    first: Duration::from_millis(10),
    longest: Duration::from_millis(20),
    answer: Duration::from_secs(20),
};

/// What a client does.
#[derive(Debug, Clone)]
enum Trick {
    Fail(NetworkError),
    /// Never comes back from what is called so.
    Hang(&'static str),
    Panic,
    /// Hands over more than was asked for.
    TooMuch,
    /// Says that so many bytes come, and sends less.
    Short,
}

#[derive(Clone)]
struct Tricky {
    trick: Trick,
    begun: Arc<AtomicUsize>,
    cancelled: Arc<AtomicUsize>,
}

impl Tricky {
    fn new(trick: Trick) -> Tricky {
        Tricky { trick, begun: Arc::default(), cancelled: Arc::default() }
    }

    fn at(&self, call: &'static str) {
        while matches!(self.trick, Trick::Hang(hangs) if hangs == call) {
            thread::sleep(Duration::from_secs(1));
        }
    }

    fn connect(&self) -> Connection {
        let place = RemoteConfig::WebDav {
            address: "https://storage.example/dav/".to_owned(),
            user: "potter".to_owned(),
            password: Secret::from("slip and sieve".to_owned()),
        };
        Connection::open(&place, Some(Arc::new(self.clone())), QUICK).unwrap()
    }

    fn list(&self) -> RemoteError {
        self.connect().list().unwrap_err()
    }
}

impl HttpClient for Tricky {
    fn begin(&self, request: HttpRequest) -> Result<Arc<dyn HttpCall>, NetworkError> {
        assert_eq!(request.method, "PROPFIND");
        assert_eq!(request.url, "https://storage.example/dav/devices/");
        self.begun.fetch_add(1, Ordering::SeqCst);
        self.at("begin");
        Ok(Arc::new(self.clone()))
    }
}

impl HttpCall for Tricky {
    fn answer(&self) -> Result<HttpAnswer, NetworkError> {
        self.at("answer");
        match &self.trick {
            Trick::Fail(error) => Err(error.clone()),
            Trick::Panic => panic!("the shell broke"),
            _ => Ok(HttpAnswer { status: 207, headers: vec![("Content-Length".to_owned(), "100".to_owned())] }),
        }
    }

    fn read(&self, most: usize) -> Result<Vec<u8>, NetworkError> {
        self.at("read");
        Ok(if matches!(self.trick, Trick::TooMuch) { vec![b' '; most + 1] } else { Vec::new() })
    }

    fn cancel(&self) {
        self.cancelled.fetch_add(1, Ordering::SeqCst);
        self.at("cancel");
    }
}

#[test]
fn what_a_network_says_is_told_and_tried_again_where_it_may_pass() {
    let broken = NetworkError::Broken { details: "a reset".to_owned() };
    for (error, tries, sentence) in [
        (NetworkError::NoNetwork, 3, "This phone has no network."),
        (NetworkError::UnknownHost, 3, "No server has this name."),
        (NetworkError::Refused, 3, "No answer."),
        (NetworkError::TimedOut, 3, "The server did not answer in time."),
        (broken, 3, "The connection broke."),
        (NetworkError::CertificateDate, 1, "The server's certificate is out of date"),
        (NetworkError::CertificateHost, 1, "The certificate belongs to another server"),
        (NetworkError::Certificate, 1, "This phone does not trust the server's certificate"),
    ] {
        let client = Tricky::new(Trick::Fail(error.clone()));
        let said = client.list();
        assert!(matches!(&said, RemoteError::Network(told) if *told == error), "{said:?}");
        assert!(said.sentence().starts_with(sentence), "{said:?}");
        assert_eq!(client.begun.load(Ordering::SeqCst), tries, "{error:?}");
    }
}

#[test]
fn a_client_that_breaks_its_word_is_an_error() {
    for trick in [Trick::Panic, Trick::TooMuch] {
        let said = Tricky::new(trick.clone()).list();
        assert!(matches!(said, RemoteError::Network(NetworkError::Broken { .. })), "{trick:?}: {said:?}");
    }
    let said = Tricky::new(Trick::Short).list();
    assert!(matches!(said, RemoteError::Failed { .. }), "{said:?}");
}

#[test]
fn a_network_that_never_comes_back_is_cancelled_and_not_waited_for() {
    for call in ["begin", "answer", "read"] {
        let client = Tricky::new(Trick::Hang(call));
        let stop = Arc::new(AtomicBool::new(false));
        let remote = client.connect().until(Arc::clone(&stop));
        let (done, waiting) = mpsc::channel();
        thread::spawn(move || {
            let went = remote.list();
            drop(remote);
            done.send(went)
        });
        thread::sleep(Duration::from_millis(200));
        stop.store(true, Ordering::Relaxed);
        let went = waiting.recv_timeout(Duration::from_secs(5)).unwrap_or_else(|_| panic!("{call} is waited for"));
        assert!(matches!(went, Err(RemoteError::Stopped)), "{went:?}");
        let from = Instant::now();
        while call != "begin" && client.cancelled.load(Ordering::SeqCst) == 0 {
            assert!(from.elapsed() < Duration::from_secs(30), "{call} is never cancelled");
            thread::sleep(Duration::from_millis(10));
        }
    }
}

#[test]
fn a_server_without_a_client_is_no_network() {
    let place = RemoteConfig::WebDav {
        address: "https://storage.example/dav/".to_owned(),
        user: String::new(),
        password: Secret::from(String::new()),
    };
    let opened = Connection::open(&place, None, QUICK);
    assert!(matches!(opened, Err(RemoteError::Network(NetworkError::NoNetwork))));
    let RemoteConfig::WebDav { user, password, .. } = place else { unreachable!() };
    let place = RemoteConfig::WebDav { address: "http://storage.example/dav/".to_owned(), user, password };
    let opened = Connection::open(&place, Some(Arc::new(Tricky::new(Trick::Panic))), QUICK);
    assert!(matches!(opened, Err(RemoteError::NotEncrypted)));
}
