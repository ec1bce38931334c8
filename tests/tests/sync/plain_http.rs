//! HTTP/1.1 without encryption, for rounds against servers on loopback: what a shell's client does, in as few lines.
//!
//! The shells' own clients meet the same servers in their own tests.

use std::io::{self, BufRead, BufReader, ErrorKind, Read, Write};
use std::net::{Shutdown, TcpStream, ToSocketAddrs};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};

use laydown_sync::http_client::{HttpAnswer, HttpCall, HttpClient, HttpRequest, NetworkError};
use url::Url;

/// The most bytes of an answer's head, interim answers included.
const MOST_HEAD: u64 = 256 << 10;

pub struct PlainHttp;

impl PlainHttp {
    pub fn client() -> Arc<dyn HttpClient> {
        Arc::new(PlainHttp)
    }
}

impl HttpClient for PlainHttp {
    fn begin(&self, request: HttpRequest) -> Result<Arc<dyn HttpCall>, NetworkError> {
        Ok(Arc::new(PlainCall {
            request,
            stream: Mutex::default(),
            body: Mutex::default(),
            cancelled: AtomicBool::new(false),
        }))
    }
}

struct PlainCall {
    request: HttpRequest,
    /// For whoever cancels; never held while something is waited for.
    stream: Mutex<Option<TcpStream>>,
    body: Mutex<Option<Body>>,
    cancelled: AtomicBool,
}

struct Body {
    reader: BufReader<TcpStream>,
    framing: Framing,
}

/// What is left of a body.
#[derive(Clone, Copy)]
enum Framing {
    Length(u64),
    /// Of the chunk that is being read.
    Chunk(u64),
    UntilClosed,
    Ended,
}

impl HttpCall for PlainCall {
    fn answer(&self) -> Result<HttpAnswer, NetworkError> {
        let (answer, body) = self.exchange().map_err(|error| self.named(&error))?;
        *self.body.lock().unwrap() = Some(body);
        Ok(answer)
    }

    fn read(&self, most: usize) -> Result<Vec<u8>, NetworkError> {
        let mut body = self.body.lock().unwrap();
        body.as_mut().expect("an answer").part(most).map_err(|error| self.named(&error))
    }

    fn cancel(&self) {
        self.cancelled.store(true, Ordering::SeqCst);
        if let Some(stream) = &*self.stream.lock().unwrap() {
            let _ = stream.shutdown(Shutdown::Both);
        }
    }
}

impl PlainCall {
    fn exchange(&self) -> io::Result<(HttpAnswer, Body)> {
        let request = &self.request;
        let url = Url::parse(&request.url).map_err(io::Error::other)?;
        let host = &url[url::Position::BeforeHost..url::Position::AfterPort];
        let at = host.to_socket_addrs()?.next().ok_or(ErrorKind::NotFound)?;
        let mut stream = TcpStream::connect_timeout(&at, request.connect)?;
        stream.set_read_timeout(Some(request.silence))?;
        *self.stream.lock().unwrap() = Some(stream.try_clone()?);
        if self.cancelled.load(Ordering::SeqCst) {
            return Err(ErrorKind::ConnectionAborted.into());
        }
        let target = &url[url::Position::BeforePath..url::Position::AfterQuery];
        let mut head = format!("{} {target} HTTP/1.1\r\nhost: {host}\r\nconnection: close\r\n", request.method);
        request.headers.iter().for_each(|(name, value)| head += &format!("{name}: {value}\r\n"));
        head += &format!("content-length: {}\r\n\r\n", request.body.len());
        stream.write_all(head.as_bytes())?;
        // A server may answer before it has read all.
        let sent = stream.write_all(&request.body);
        let mut reader = BufReader::new(stream);
        let answer = head_of(&mut (&mut reader).take(MOST_HEAD)).map_err(|error| sent.err().unwrap_or(error))?;
        let framing = framing(&request.method, &answer)?;
        Ok((answer, Body { reader, framing }))
    }

    fn named(&self, error: &io::Error) -> NetworkError {
        match error.kind() {
            _ if self.cancelled.load(Ordering::SeqCst) => NetworkError::Stopped,
            ErrorKind::ConnectionRefused => NetworkError::Refused,
            ErrorKind::TimedOut | ErrorKind::WouldBlock => NetworkError::TimedOut,
            kind => NetworkError::Broken { details: kind.to_string() },
        }
    }
}

/// The next line of a head, without its end; a head that ends sooner is none.
fn line(reader: &mut impl BufRead) -> io::Result<String> {
    let mut line = String::new();
    reader.read_line(&mut line)?;
    line.strip_suffix("\r\n").map(str::to_owned).ok_or_else(|| ErrorKind::UnexpectedEof.into())
}

fn head_of(reader: &mut impl BufRead) -> io::Result<HttpAnswer> {
    loop {
        let status =
            line(reader)?.split(' ').nth(1).and_then(|status| status.parse().ok()).ok_or(ErrorKind::InvalidData)?;
        let mut headers = Vec::new();
        loop {
            let line = line(reader)?;
            if line.is_empty() {
                break;
            }
            let (name, value) = line.split_once(':').ok_or(ErrorKind::InvalidData)?;
            headers.push((name.to_owned(), value.trim().to_owned()));
        }
        if status >= 200 {
            return Ok(HttpAnswer { status, headers });
        }
    }
}

fn framing(method: &str, answer: &HttpAnswer) -> io::Result<Framing> {
    let header =
        |wanted| answer.headers.iter().find(|(name, _)| name.eq_ignore_ascii_case(wanted)).map(|(_, value)| value);
    if method == "HEAD" || matches!(answer.status, 204 | 304) {
        return Ok(Framing::Ended);
    }
    match (header("transfer-encoding"), header("content-length")) {
        (Some(coding), None) if coding == "chunked" => Ok(Framing::Chunk(0)),
        (None, Some(length)) => Ok(Framing::Length(length.parse().map_err(io::Error::other)?)),
        (None, None) => Ok(Framing::UntilClosed),
        _ => Err(ErrorKind::InvalidData.into()),
    }
}

impl Body {
    fn part(&mut self, most: usize) -> io::Result<Vec<u8>> {
        if let Framing::Chunk(0) = self.framing {
            let size = u64::from_str_radix(&line(&mut (&mut self.reader).take(100))?, 16).map_err(io::Error::other)?;
            self.framing = if size == 0 { Framing::Ended } else { Framing::Chunk(size) };
        }
        let mut part = vec![0; most];
        let mut within = |left: u64| self.reader.read(&mut part[..left.min(most as u64) as usize]);
        let (read, framing) = match self.framing {
            Framing::Ended | Framing::Length(0) => (0, Framing::Ended),
            Framing::UntilClosed => (within(u64::MAX)?, Framing::UntilClosed),
            Framing::Length(left) => (within(left)?, Framing::Length(left)),
            Framing::Chunk(left) => (within(left)?, Framing::Chunk(left)),
        };
        self.framing = match framing {
            Framing::Length(left) if read > 0 => Framing::Length(left - read as u64),
            Framing::Chunk(left) if read > 0 => Framing::Chunk(left - read as u64),
            Framing::Length(_) | Framing::Chunk(_) => return Err(ErrorKind::UnexpectedEof.into()),
            other => other,
        };
        if let (Framing::Chunk(0), true) = (self.framing, read > 0) {
            line(&mut (&mut self.reader).take(2))?;
        }
        part.truncate(read);
        Ok(part)
    }
}
