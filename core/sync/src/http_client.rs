//! HTTP as OpenDAL asks for it, carried by the network of whoever runs this: the phone's own, with its certificates and proxies.
//!
//! Calls into that network block, and may hang for ever. Each request therefore has a thread of its own, which nobody waits
//! for: an answer that is no longer wanted is cancelled, and whatever its thread still does is left to it.

use std::pin::Pin;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, OnceLock};
use std::task::{Context, Poll, ready};
use std::thread;
use std::time::Duration;

use futures_core::Stream;
use http::{HeaderName, HeaderValue, Method, Request, Response, StatusCode, header};
use opendal::raw::{parse_content_encoding, parse_content_length};
use opendal::{Buffer, Error, ErrorKind, HttpBody, HttpTransport, Result};
use tokio::sync::{mpsc, oneshot};

use crate::transport::Refusal;

/// The most bytes of an answer that are handed over at once.
pub const MOST_AT_ONCE: usize = 64 << 10;
/// The most header lines of an answer.
const MOST_HEADERS: usize = 1_000;

/// The way to servers: sends one HTTP request and hands back its answer. Follows no redirect, keeps no cookie and no cache, and
/// adds no name or password.
pub trait HttpClient: Send + Sync {
    /// Begins a request, without waiting for anything.
    ///
    /// # Errors
    /// When it cannot be sent by this network at all.
    fn begin(&self, request: HttpRequest) -> std::result::Result<Arc<dyn HttpCall>, NetworkError>;
}

/// A request and its answer.
pub trait HttpCall: Send + Sync {
    /// Sends the request and waits for the head of its answer. Called once.
    ///
    /// # Errors
    /// When there is no answer.
    fn answer(&self) -> std::result::Result<HttpAnswer, NetworkError>;

    /// Waits for the next bytes of the answer, at most so many; none at its end.
    ///
    /// # Errors
    /// When the answer breaks off before its end.
    fn read(&self, most: usize) -> std::result::Result<Vec<u8>, NetworkError>;

    /// Ends it from another thread: closes its connection, so that the other calls return. May be called at any time, and
    /// more than once.
    fn cancel(&self);
}

/// What is sent. No `Debug`: it holds a password or a signature.
pub struct HttpRequest {
    /// The method, in capitals; WebDAV has some of its own.
    pub method: String,
    /// The whole address, `http` or `https`.
    pub url: String,
    /// All headers but `Host` and `Content-Length`, which are the network's to add.
    pub headers: Vec<(String, String)>,
    /// The body; empty where there is none. Whole, for it is one file that is in memory anyway, and may have to be sent again.
    pub body: Vec<u8>,
    /// How long reaching the server may take.
    pub connect: Duration,
    /// How long the server may say nothing.
    pub silence: Duration,
}

/// The head of an answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HttpAnswer {
    /// The status, such as 207.
    pub status: u16,
    /// The headers, in their order.
    pub headers: Vec<(String, String)>,
}

/// Why there is no answer, or not all of it.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NetworkError {
    /// The phone is on no network.
    #[error("no network")]
    NoNetwork,
    /// No server has this name.
    #[error("unknown host")]
    UnknownHost,
    /// The host does not take the call.
    #[error("connection refused")]
    Refused,
    /// Nothing came in time.
    #[error("timed out")]
    TimedOut,
    /// The certificate is not valid at the phone's date.
    #[error("certificate not valid at this date")]
    CertificateDate,
    /// The certificate is another host's.
    #[error("certificate of another host")]
    CertificateHost,
    /// The phone does not trust the certificate, or it does not say why it refuses it.
    #[error("certificate not trusted")]
    Certificate,
    /// The connection broke, or what came over it is no HTTP.
    #[error("connection broken: {details}")]
    Broken {
        /// What is known of it, for a report. Holds no address and nothing that a server said.
        details: String,
    },
    /// It was cancelled.
    #[error("cancelled")]
    Stopped,
}

impl NetworkError {
    /// Whether it may be better in a moment.
    fn may_pass(&self) -> bool {
        use NetworkError::{Broken, NoNetwork, Refused, TimedOut, UnknownHost};
        matches!(self, NoNetwork | UnknownHost | Refused | TimedOut | Broken { .. })
    }
}

impl From<NetworkError> for Error {
    fn from(error: NetworkError) -> Error {
        Error::new(ErrorKind::Unexpected, "the network failed").with_temporary(error.may_pass()).set_source(error)
    }
}

/// OpenDAL's HTTP by an [`HttpClient`].
pub(crate) struct Carrier {
    pub(crate) client: Arc<dyn HttpClient>,
    /// How long reaching a server may take.
    pub(crate) connect: Duration,
    /// How long a server may say nothing.
    pub(crate) silence: Duration,
}

impl HttpTransport for Carrier {
    async fn fetch(&self, request: Request<Buffer>) -> Result<Response<HttpBody>> {
        let (parts, body) = request.into_parts();
        let is_head = parts.method == Method::HEAD;
        let (mut incoming, answered) = begin(Arc::clone(&self.client), self.sent(&parts, body));
        let HttpAnswer { status, headers } = answered.await.unwrap_or_else(|_| Err(died()))?;
        let mut response = Response::builder().status(StatusCode::from_u16(status).map_err(|_| Refusal::Garbled)?);
        if headers.len() > MOST_HEADERS {
            return Err(Refusal::TooLong.into());
        }
        for (name, value) in headers {
            response = response.header(
                HeaderName::from_bytes(name.as_bytes()).map_err(|_| Refusal::Garbled)?,
                HeaderValue::from_bytes(value.as_bytes()).map_err(|_| Refusal::Garbled)?,
            );
        }
        // OpenDAL looks for the address here.
        let mut response = response.extension(parts.uri).body(()).map_err(|_| Refusal::Garbled)?;
        let whole = !is_head && parse_content_encoding(response.headers())?.is_none();
        let length = if whole { parse_content_length(response.headers())? } else { None };
        incoming.length = length;
        response.headers_mut().remove(header::TRANSFER_ENCODING);
        Ok(response.map(|()| HttpBody::new(incoming, length)))
    }
}

impl Carrier {
    fn sent(&self, parts: &http::request::Parts, body: Buffer) -> HttpRequest {
        let by_network = [header::HOST, header::CONTENT_LENGTH];
        let headers = parts.headers.iter().filter(|(name, _)| !by_network.contains(name));
        let mut headers: Vec<(String, String)> = headers
            .map(|(name, value)| (name.to_string(), String::from_utf8_lossy(value.as_bytes()).into_owned()))
            .collect();
        // Lengths are counted as they are sent, and nothing unpacks to more than was announced.
        headers.push((header::ACCEPT_ENCODING.to_string(), "identity".to_owned()));
        HttpRequest {
            method: parts.method.to_string(),
            url: parts.uri.to_string(),
            headers,
            body: body.to_vec(),
            connect: self.connect,
            silence: self.silence,
        }
    }
}

/// Why an answer never comes whose thread is gone: it could not be started, or the foreign code in it broke.
fn died() -> NetworkError {
    NetworkError::Broken { details: "the network gave no answer".to_owned() }
}

type Answered = std::result::Result<HttpAnswer, NetworkError>;
type Part = std::result::Result<Vec<u8>, NetworkError>;

/// A request under way. Dropped before the end of its answer, it is cancelled.
struct Incoming {
    parts: mpsc::Receiver<Part>,
    line: Arc<Line>,
    /// How many bytes are still to come, where the server said so.
    length: Option<u64>,
    ended: bool,
}

/// The call that a request's thread began, so that another thread can cancel it.
#[derive(Default)]
struct Line {
    call: OnceLock<Arc<dyn HttpCall>>,
    given_up: AtomicBool,
}

/// Sends a request on a thread of its own.
fn begin(client: Arc<dyn HttpClient>, request: HttpRequest) -> (Incoming, oneshot::Receiver<Answered>) {
    let (answered, answer) = oneshot::channel();
    // One part on its way while another is taken: what is not taken is not read either.
    let (sender, parts) = mpsc::channel(1);
    let line = Arc::new(Line::default());
    let carried = Arc::clone(&line);
    // Without a thread `answered` is dropped, which says that no answer comes.
    drop(in_background(move || carry(&*client, request, &carried, answered, &sender)));
    (Incoming { parts, line, length: None, ended: false }, answer)
}

fn in_background(work: impl FnOnce() + Send + 'static) -> std::io::Result<thread::JoinHandle<()>> {
    thread::Builder::new().name("network".to_owned()).spawn(work)
}

/// What a request's thread does.
fn carry(
    client: &dyn HttpClient,
    request: HttpRequest,
    line: &Line,
    answered: oneshot::Sender<Answered>,
    parts: &mpsc::Sender<Part>,
) {
    let call = match client.begin(request) {
        Ok(call) => call,
        Err(error) => return drop(answered.send(Err(error))),
    };
    let call = line.call.get_or_init(|| call);
    if line.given_up.load(Ordering::SeqCst) {
        return call.cancel();
    }
    let answer = call.answer();
    let mut goes_on = answer.is_ok();
    // A receiver that is gone has cancelled.
    goes_on &= answered.send(answer).is_ok();
    while goes_on {
        let part = call.read(MOST_AT_ONCE).and_then(fits);
        goes_on = part.as_ref().is_ok_and(|part| !part.is_empty());
        if parts.blocking_send(part).is_err() && goes_on {
            return call.cancel();
        }
    }
}

/// A part that keeps no more memory than it has bytes.
fn fits(mut part: Vec<u8>) -> Part {
    if part.len() > MOST_AT_ONCE {
        return Err(NetworkError::Broken { details: "too much at once".to_owned() });
    }
    part.shrink_to_fit();
    Ok(part)
}

impl Stream for Incoming {
    type Item = Result<Buffer>;

    fn poll_next(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Option<Result<Buffer>>> {
        if self.ended {
            return Poll::Ready(None);
        }
        let part = ready!(self.parts.poll_recv(context)).unwrap_or_else(|| Err(died()));
        match part {
            Ok(part) if part.is_empty() => {
                self.ended = true;
                Poll::Ready(None)
            }
            Ok(part) => {
                self.length = self.length.map(|left| left.saturating_sub(part.len() as u64));
                Poll::Ready(Some(Ok(Buffer::from(part))))
            }
            Err(error) => {
                self.ended = true;
                Poll::Ready(Some(Err(error.into())))
            }
        }
    }
}

impl Drop for Incoming {
    fn drop(&mut self) {
        // Whoever reads a file stops at its announced length, and its thread is at the end of the answer then.
        if self.ended || self.length == Some(0) {
            return;
        }
        self.line.given_up.store(true, Ordering::SeqCst);
        let line = Arc::clone(&self.line);
        // Closing a connection may hang as well. Without a thread for it the network's own time-outs end it.
        drop(in_background(move || line.call.get().into_iter().for_each(|call| call.cancel())));
    }
}
