//! A server on loopback that speaks enough WebDAV and S3 to hold a studio's files, and misbehaves as it is told to.
//!
//! Its files are honest: a [`Trick`] changes what is answered, never what is stored, but for [`Trick::Half`].
//! Every loop in it ends by itself once the server is dropped.

use std::collections::{BTreeMap, BTreeSet};
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{SocketAddr, TcpListener, TcpStream};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::Duration;

/// What is done to one answer.
#[derive(Debug, Clone)]
pub enum Trick {
    /// Answers as a good server does.
    Honest,
    /// Takes the request in and closes the connection without a word.
    Drop,
    /// Sends so many bytes of the answer, its head included, and closes the connection.
    Cut(usize),
    /// Announces a length that differs from what is sent by so many bytes.
    Length(i64),
    /// Sends this body again and again, announced as none or as so long; up to 400 MB.
    Endless(Vec<u8>, Option<u64>),
    /// Sends a byte of the body every so many milliseconds; of the head, where there is no body.
    Slow(u64),
    /// Never answers.
    Silent,
    /// Never answers what is put, and never reads it either.
    Deaf,
    /// Answers with this status alone.
    Status(u16),
    /// Answers with a redirect of this status to this address.
    Redirect(u16, String),
    /// Answers with this status and body.
    Body(u16, Vec<u8>),
    /// Answers with the body of another file.
    Swap,
    /// Answers with what this file was before.
    Replay,
    /// Puts so many lines before the head's end.
    Headers(usize),
    /// Says "100 Continue" again and again before the answer.
    Interim,
    /// Stores the first half of what is put, and drops the connection.
    Half,
    /// Stores what is put, and drops the connection.
    Late,
}

/// What was asked.
#[derive(Debug, Clone)]
pub struct Asked {
    pub method: String,
    /// Below the server's root, without the slash in front.
    pub path: String,
    pub query: BTreeMap<String, String>,
    /// With names in small letters.
    pub headers: BTreeMap<String, String>,
    pub body: Vec<u8>,
}

impl Asked {
    /// Whether it asks what files there are.
    pub fn lists(&self) -> bool {
        (self.method == "PROPFIND" && self.headers.get("depth").is_some_and(|depth| depth != "0"))
            || self.query.contains_key("list-type")
    }
}

type Plan = Box<dyn FnMut(&Asked) -> Trick + Send>;

#[derive(Default)]
struct Files {
    /// Each with what it was before, the newest last.
    files: BTreeMap<String, Vec<Vec<u8>>>,
    folders: BTreeSet<String>,
    /// Nothing can be removed.
    keeps_all: bool,
}

struct Shared {
    files: Mutex<Files>,
    plan: Mutex<Plan>,
    asked: Mutex<Vec<Asked>>,
    ended: AtomicBool,
}

/// The server; it ends when it is dropped.
pub struct Adversary {
    at: SocketAddr,
    shared: Arc<Shared>,
}

/// Keys on a page of an S3 list: few, so that there are several.
const PAGE: usize = 3;
const MOST_SENT: usize = 400 << 20;

impl Adversary {
    pub fn start() -> Adversary {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let at = listener.local_addr().unwrap();
        let shared = Arc::new(Shared {
            files: Mutex::default(),
            plan: Mutex::new(Box::new(|_| Trick::Honest)),
            asked: Mutex::default(),
            ended: AtomicBool::new(false),
        });
        let serving = Arc::clone(&shared);
        thread::spawn(move || {
            for stream in listener.incoming() {
                if serving.ended.load(Ordering::Relaxed) {
                    return;
                }
                let shared = Arc::clone(&serving);
                // A connection that breaks is the client's business.
                thread::spawn(move || stream.map(|stream| serve(&shared, stream)));
            }
        });
        Adversary { at, shared }
    }

    pub fn at(&self) -> SocketAddr {
        self.at
    }

    pub fn plan(&self, plan: impl FnMut(&Asked) -> Trick + Send + 'static) {
        *self.shared.plan.lock().unwrap() = Box::new(plan);
    }

    pub fn be_honest(&self) {
        self.plan(|_| Trick::Honest);
    }

    /// Refuses to remove anything from now on.
    pub fn keep_all(&self) {
        self.shared.files.lock().unwrap().keeps_all = true;
    }

    /// All that was asked since this was last called.
    pub fn take_asked(&self) -> Vec<Asked> {
        std::mem::take(&mut *self.shared.asked.lock().unwrap())
    }

    /// The files as they are now, by their paths below the root.
    pub fn files(&self) -> BTreeMap<String, Vec<u8>> {
        let files = self.shared.files.lock().unwrap();
        files.files.iter().map(|(path, versions)| (path.clone(), versions.last().unwrap().clone())).collect()
    }

    /// Puts a file there as a client would.
    pub fn put(&self, path: &str, bytes: &[u8]) {
        self.shared.files.lock().unwrap().put(path, bytes.to_vec());
    }
}

impl Drop for Adversary {
    fn drop(&mut self) {
        self.shared.ended.store(true, Ordering::Relaxed);
        // Wakes the thread that waits for a call.
        let _ = TcpStream::connect(self.at);
    }
}

impl Files {
    fn put(&mut self, path: &str, bytes: Vec<u8>) {
        for (at, _) in path.match_indices('/') {
            self.folders.insert(path[..at].to_owned());
        }
        self.files.entry(path.to_owned()).or_default().push(bytes);
    }

    fn latest(&self, path: &str) -> Option<&Vec<u8>> {
        self.files.get(path)?.last()
    }
}

fn serve(shared: &Shared, stream: TcpStream) {
    let mut reader = BufReader::new(stream.try_clone().unwrap());
    let mut stream = stream;
    while !shared.ended.load(Ordering::Relaxed) {
        let Some((asked, length)) = read_head(&mut reader) else { return };
        let trick = (shared.plan.lock().unwrap())(&asked);
        if matches!(trick, Trick::Deaf) && asked.method == "PUT" {
            shared.asked.lock().unwrap().push(asked);
            return hold(shared);
        }
        let mut asked = asked;
        asked.body = vec![0; length];
        if reader.read_exact(&mut asked.body).is_err() {
            return;
        }
        shared.asked.lock().unwrap().push(asked.clone());
        if answer(shared, &mut stream, &asked, trick).is_none() {
            return;
        }
    }
}

fn hold(shared: &Shared) {
    while !shared.ended.load(Ordering::Relaxed) {
        thread::sleep(Duration::from_millis(20));
    }
}

fn read_head(reader: &mut impl BufRead) -> Option<(Asked, usize)> {
    let mut line = String::new();
    if reader.read_line(&mut line).ok()? == 0 {
        return None;
    }
    let mut words = line.split_ascii_whitespace();
    let (method, target) = (words.next()?.to_owned(), words.next()?);
    let (path, query) = target.split_once('?').unwrap_or((target, ""));
    let path = decoded(path.trim_start_matches('/').split_once('/').map_or("", |(_, path)| path));
    let pairs = query.split('&').filter_map(|pair| pair.split_once('='));
    let query = pairs.map(|(key, value)| (key.to_owned(), decoded(value))).collect();
    let mut headers = BTreeMap::new();
    loop {
        let mut line = String::new();
        reader.read_line(&mut line).ok()?;
        let Some((name, value)) = line.split_once(':') else { break };
        headers.insert(name.to_ascii_lowercase(), value.trim().to_owned());
    }
    let length = headers.get("content-length").map_or(Some(0), |length| length.parse().ok())?;
    Some((Asked { method, path, query, headers, body: Vec::new() }, length))
}

fn decoded(text: &str) -> String {
    let mut bytes = Vec::new();
    let mut rest = text.as_bytes();
    while let [first, tail @ ..] = rest {
        let hex = tail.get(..2).and_then(|hex| u8::from_str_radix(std::str::from_utf8(hex).ok()?, 16).ok());
        match hex {
            Some(byte) if *first == b'%' => {
                bytes.push(byte);
                rest = &tail[2..];
            }
            _ => {
                bytes.push(*first);
                rest = tail;
            }
        }
    }
    String::from_utf8(bytes).unwrap()
}

/// Answers; `None` where the connection is closed then.
fn answer(shared: &Shared, stream: &mut TcpStream, asked: &Asked, trick: Trick) -> Option<()> {
    if matches!(trick, Trick::Drop) {
        return None;
    }
    if let (Trick::Half | Trick::Late, "PUT") = (&trick, asked.method.as_str()) {
        let length = if matches!(trick, Trick::Half) { asked.body.len() / 2 } else { asked.body.len() };
        shared.files.lock().unwrap().put(&asked.path, asked.body[..length].to_vec());
        return None;
    }
    // What gets no answer is not done either.
    let done = !matches!(trick, Trick::Status(_) | Trick::Redirect(..) | Trick::Silent);
    let (mut status, mut body) =
        if done { honest(&mut shared.files.lock().unwrap(), asked) } else { (200, Vec::new()) };
    let mut head = String::new();
    let mut announced = 0;
    match &trick {
        Trick::Silent => {
            hold(shared);
            return None;
        }
        Trick::Status(other) => (status, body) = (*other, Vec::new()),
        Trick::Redirect(other, to) => {
            (status, body) = (*other, Vec::new());
            head += &format!("Location: {to}\r\n");
        }
        Trick::Body(other, replaced) => (status, body) = (*other, replaced.clone()),
        Trick::Swap if status == 200 && asked.method == "GET" && !asked.lists() => {
            let files = shared.files.lock().unwrap();
            body =
                files.files.iter().find(|(path, _)| **path != asked.path).map_or(body, |(_, other)| other[0].clone());
        }
        Trick::Replay if status == 200 && asked.method == "GET" && !asked.lists() => {
            body = shared.files.lock().unwrap().files[&asked.path][0].clone();
        }
        Trick::Headers(lines) => (0..*lines).for_each(|line| head += &format!("X-{line}: nothing\r\n")),
        Trick::Length(by) => announced = *by,
        Trick::Interim => {
            let part = b"HTTP/1.1 100 Continue\r\n\r\n".repeat(1_000);
            return send_on(shared, stream, &part);
        }
        _ => {}
    }
    let length = body.len() as i64 + announced;
    let framing = match &trick {
        Trick::Endless(_, None) => "Transfer-Encoding: chunked\r\n".to_owned(),
        Trick::Endless(_, Some(length)) => format!("Content-Length: {length}\r\n"),
        _ => format!("Content-Length: {}\r\n", length.max(0)),
    };
    let mut whole = format!("HTTP/1.1 {status} As told\r\n{framing}{head}\r\n").into_bytes();
    if let Trick::Endless(part, framed) = &trick {
        stream.write_all(&whole).ok()?;
        let chunk = [format!("{:x}\r\n", part.len()).as_bytes(), part, b"\r\n"].concat();
        return send_on(shared, stream, if framed.is_some() { part } else { &chunk });
    }
    let at_once = if body.is_empty() { 0 } else { whole.len() };
    whole.extend(body);
    match trick {
        Trick::Cut(after) => {
            stream.write_all(&whole[..after.min(whole.len())]).ok()?;
            None
        }
        Trick::Slow(pause) => {
            stream.write_all(&whole[..at_once]).ok()?;
            for byte in whole.split_off(at_once) {
                if shared.ended.load(Ordering::Relaxed) {
                    return None;
                }
                stream.write_all(&[byte]).ok()?;
                thread::sleep(Duration::from_millis(pause));
            }
            Some(())
        }
        Trick::Length(_) => {
            stream.write_all(&whole).ok()?;
            None
        }
        _ => stream.write_all(&whole).ok(),
    }
}

/// Sends the same again and again, and closes the connection at last.
fn send_on(shared: &Shared, stream: &mut TcpStream, part: &[u8]) -> Option<()> {
    let mut sent = 0;
    while sent < MOST_SENT && !shared.ended.load(Ordering::Relaxed) {
        stream.write_all(part).ok()?;
        sent += part.len();
    }
    None
}

/// What a good server does and answers.
fn honest(files: &mut Files, asked: &Asked) -> (u16, Vec<u8>) {
    if !asked.headers.contains_key("authorization") {
        return (401, Vec::new());
    }
    let path = asked.path.trim_end_matches('/');
    match asked.method.as_str() {
        "PROPFIND" if files.folders.contains(path) || path.is_empty() => {
            let deep = asked.headers.get("depth").is_some_and(|depth| depth == "1");
            (207, multistatus(&in_folder(files, path, deep)))
        }
        "PROPFIND" => match files.latest(path) {
            Some(bytes) => (207, multistatus(&[(format!("/dav/{path}"), Some(bytes.len()))])),
            None => (404, Vec::new()),
        },
        "MKCOL" => {
            files.folders.insert(path.to_owned());
            (201, Vec::new())
        }
        "PUT" => {
            files.put(path, asked.body.clone());
            (if asked.query.contains_key("x-id") { 200 } else { 201 }, Vec::new())
        }
        "GET" if asked.query.contains_key("list-type") => (200, page(files, &asked.query)),
        "GET" => files.latest(path).map_or((404, Vec::new()), |bytes| (200, bytes.clone())),
        "DELETE" if !files.keeps_all => {
            files.files.remove(path);
            (204, Vec::new())
        }
        _ => (405, Vec::new()),
    }
}

/// A folder and what lies in it, by their addresses; files with their lengths.
fn in_folder(files: &Files, folder: &str, deep: bool) -> Vec<(String, Option<usize>)> {
    let mut found = vec![(format!("/dav/{folder}/").replace("//", "/"), None)];
    let prefix = if folder.is_empty() { String::new() } else { format!("{folder}/") };
    let direct =
        |path: &&String| path.strip_prefix(&prefix).is_some_and(|rest| !rest.is_empty() && !rest.contains('/'));
    if deep {
        found.extend(files.folders.iter().filter(direct).map(|path| (format!("/dav/{path}/"), None)));
        let inside = files.files.iter().filter(|(path, _)| direct(path));
        found.extend(inside.map(|(path, versions)| (format!("/dav/{path}"), versions.last().map(Vec::len))));
    }
    found
}

/// A WebDAV answer about these addresses; those with a length are files.
pub fn multistatus(found: &[(String, Option<usize>)]) -> Vec<u8> {
    let responses = found.iter().map(|(address, size)| {
        let what = match size {
            Some(size) => format!("<D:getcontentlength>{size}</D:getcontentlength><D:resourcetype/>"),
            None => "<D:resourcetype><D:collection/></D:resourcetype>".to_owned(),
        };
        format!(
            "<D:response><D:href>{address}</D:href><D:propstat><D:prop>{what}\
             <D:getlastmodified>Fri, 17 Feb 2023 03:37:22 GMT</D:getlastmodified></D:prop>\
             <D:status>HTTP/1.1 200 OK</D:status></D:propstat></D:response>"
        )
    });
    let responses: String = responses.collect();
    format!("<?xml version=\"1.0\"?><D:multistatus xmlns:D=\"DAV:\">{responses}</D:multistatus>").into_bytes()
}

/// A page of an S3 list.
fn page(files: &Files, query: &BTreeMap<String, String>) -> Vec<u8> {
    let empty = String::new();
    let (prefix, after) = (query.get("prefix").unwrap_or(&empty), query.get("continuation-token").unwrap_or(&empty));
    let mut keys: Vec<(&str, usize)> = files
        .files
        .iter()
        .filter(|(key, _)| key.starts_with(prefix) && *key > after)
        .map(|(key, versions)| (key.as_str(), versions.last().unwrap().len()))
        .collect();
    let more = keys.len() > PAGE;
    keys.truncate(PAGE);
    let token = if more { keys.last().map(|(key, _)| (*key).to_owned()) } else { None };
    list_page(&keys, token.as_deref())
}

/// A page of an S3 list with these keys and lengths; with `token` there is another after it.
pub fn list_page(keys: &[(&str, usize)], token: Option<&str>) -> Vec<u8> {
    let contents = keys.iter().map(|(key, size)| {
        format!(
            "<Contents><Key>{key}</Key><LastModified>2023-02-17T03:37:22.000Z</LastModified><Size>{size}</Size></Contents>"
        )
    });
    let contents: String = contents.collect();
    let next = token.map_or(String::new(), |token| format!("<NextContinuationToken>{token}</NextContinuationToken>"));
    let more = token.is_some();
    format!("<ListBucketResult><IsTruncated>{more}</IsTruncated>{next}{contents}</ListBucketResult>").into_bytes()
}
