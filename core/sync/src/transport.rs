//! What every request to a server and every answer goes through, whoever carries it.
//!
//! A server's word is not taken for anything here: answers are counted while they come, have so much time, and lead nowhere
//! but to the server that was asked.

use std::pin::Pin;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::task::{Context, Poll, ready};
use std::time::Duration;

use futures_core::Stream;
use http::{Method, Request, Response, StatusCode, header};
use opendal::raw::Operation;
use opendal::{Buffer, Error, ErrorKind, HttpBody, HttpTransport, Result};
use tokio::time::{Instant, Sleep, sleep_until, timeout_at};
use url::Url;

/// The most bytes of an answer that is held in memory as a whole: any but the content of a file. A list of 40,000 files has
/// about as many.
const MOST_BUFFERED: u64 = 16 << 20;
/// What a part of an answer counts as at least: it takes memory of its own, however short it is.
const PART_COST: u64 = 64;
/// The most requests that one listing may take: a folder of a WebDAV server each, or 1,000 files of an S3 bucket.
const MOST_PAGES: usize = 5_000;
/// The most redirects that one request follows.
const MOST_REDIRECTS: usize = 5;
/// The slowest that an answer may come in and a file go out, bytes a second.
const SLOWEST: u64 = 8 << 10;

/// Why an answer was not taken. The [`Error`] that says so has it as its source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub(crate) enum Refusal {
    #[error("an answer is longer than any may be")]
    TooLong,
    #[error("a listing has more files or folders than any may have")]
    TooMany,
    #[error("an answer came too slowly")]
    TooSlow,
    #[error("the server sends on to another server, or in a circle")]
    Redirected,
    #[error("a listing is not well-formed, contradicts itself, or is about something else")]
    Garbled,
    #[error("status {0}")]
    Status(u16),
}

impl From<Refusal> for Error {
    /// What may be better next time is worth another try.
    fn from(refusal: Refusal) -> Error {
        let error = Error::new(ErrorKind::Unexpected, refusal.to_string()).set_source(refusal);
        match refusal {
            Refusal::TooSlow | Refusal::Garbled | Refusal::Status(423 | 429 | 500..) => error.set_temporary(),
            Refusal::TooLong | Refusal::TooMany | Refusal::Redirected | Refusal::Status(_) => error,
        }
    }
}

/// The time that so many bytes may take.
pub(crate) fn time_for(bytes: u64) -> Duration {
    Duration::from_millis(bytes.saturating_mul(1_000) / SLOWEST)
}

/// Carries requests by `inner`, which need not follow redirects, and holds what comes to its limits.
pub(crate) struct Guarded<T> {
    pub(crate) inner: T,
    /// How long an answer may take, beside the time for its bytes.
    pub(crate) answer: Duration,
    /// How many requests the listing that is going on has made.
    pub(crate) pages: Arc<AtomicUsize>,
}

impl<T: HttpTransport> HttpTransport for Guarded<T> {
    async fn fetch(&self, request: Request<Buffer>) -> Result<Response<HttpBody>> {
        let (mut parts, body) = request.into_parts();
        let operation = parts.extensions.get::<Operation>().copied();
        if operation == Some(Operation::List) && self.pages.fetch_add(1, Ordering::Relaxed) >= MOST_PAGES {
            return Err(Refusal::TooMany.into());
        }
        let deadline = Instant::now() + self.answer + time_for(body.len() as u64);
        for _ in 0..=MOST_REDIRECTS {
            let request = Request::from_parts(parts.clone(), body.clone());
            let response = timeout_at(deadline, self.inner.fetch(request)).await.map_err(|_| Refusal::TooSlow)??;
            let Some(location) = location(&response) else {
                let (left, over) = match operation {
                    // Whoever reads a file counts its bytes.
                    Some(Operation::Read) if response.status().is_success() => (u64::MAX, Refusal::TooLong),
                    Some(Operation::List) => (MOST_BUFFERED, Refusal::TooMany),
                    _ => (MOST_BUFFERED, Refusal::TooLong),
                };
                let deadline = Box::pin(sleep_until(deadline));
                let limited = |stream| -> Parts { Box::new(Limited { stream, left, over, deadline }) };
                return Ok(response.map(|body| body.map_inner(limited)));
            };
            let next = redirected(&parts.method, response.status(), &parts.uri.to_string(), location);
            parts.uri = next.and_then(|url| url.as_str().parse().ok()).ok_or(Refusal::Redirected)?;
        }
        Err(Refusal::Redirected.into())
    }
}

/// Where a redirect leads.
fn location<B>(response: &Response<B>) -> Option<&str> {
    let redirects = matches!(response.status().as_u16(), 301 | 302 | 303 | 307 | 308);
    let location = response.headers().get(header::LOCATION).filter(|_| redirects)?;
    // What is no text is no address, and is refused as such.
    Some(location.to_str().unwrap_or_default())
}

/// The address that a request is to be sent to again; `None` where it leads away from the server that was asked, or to where
/// others on the way can read along.
fn redirected(method: &Method, status: StatusCode, from: &str, location: &str) -> Option<Url> {
    let from = Url::parse(from).ok()?;
    let to = from.join(location).ok()?;
    // "See other" asks for another request than this one.
    let same_request = status != StatusCode::SEE_OTHER || method == Method::GET;
    let same_host = to.host() == from.host() && to.username().is_empty() && to.password().is_none();
    // No port stands for the scheme's own.
    let same_port = to.port() == from.port();
    let as_safe = to.scheme() == from.scheme() || to.scheme() == "https";
    (!location.is_empty() && same_request && same_host && same_port && as_safe).then_some(to)
}

type Parts = Box<dyn Stream<Item = Result<Buffer>> + Send + Sync + Unpin>;

/// A body that ends in an error once it is too long or too slow. Each part that comes gives it the time for as much more.
struct Limited {
    stream: Parts,
    /// How many more bytes may come, and what it is called if there are more.
    left: u64,
    over: Refusal,
    deadline: Pin<Box<Sleep>>,
}

impl Stream for Limited {
    type Item = Result<Buffer>;

    fn poll_next(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Option<Result<Buffer>>> {
        match Pin::new(&mut self.stream).poll_next(context) {
            Poll::Ready(Some(Ok(part))) => {
                let length = part.len() as u64;
                let Some(left) = self.left.checked_sub(length.max(PART_COST)) else {
                    return Poll::Ready(Some(Err(self.over.into())));
                };
                self.left = left;
                let later = self.deadline.deadline() + time_for(length);
                self.deadline.as_mut().reset(later);
                Poll::Ready(Some(Ok(part)))
            }
            Poll::Pending => {
                ready!(self.deadline.as_mut().poll(context));
                Poll::Ready(Some(Err(Refusal::TooSlow.into())))
            }
            ended => ended,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_redirect_stays_with_the_server_that_was_asked() {
        let from = "http://pots.example/dav/devices";
        let leads = |location: &str| {
            redirected(&Method::PUT, StatusCode::PERMANENT_REDIRECT, from, location).map(|url| url.to_string())
        };
        assert_eq!(leads("/dav/devices/").as_deref(), Some("http://pots.example/dav/devices/"));
        assert_eq!(leads("devices/").as_deref(), Some("http://pots.example/dav/devices/"));
        assert_eq!(leads("http://POTS.example:80/x").as_deref(), Some("http://pots.example/x"));
        assert_eq!(leads("https://pots.example/x").as_deref(), Some("https://pots.example/x"));
        for away in [
            "http://kiln.example/dav/",
            "//kiln.example/dav/",
            "http://pots.example.kiln.example/",
            "http://pots.example:8080/",
            "https://pots.example:444/",
            "http://potter@pots.example/",
            "ftp://pots.example/",
            "file:///etc/passwd",
            "http://[",
            "",
        ] {
            assert_eq!(leads(away), None, "{away}");
        }
        let safe = "https://pots.example/dav";
        assert_eq!(redirected(&Method::GET, StatusCode::FOUND, safe, "http://pots.example/dav"), None);
        assert_eq!(redirected(&Method::PUT, StatusCode::SEE_OTHER, safe, "/x"), None);
        assert!(redirected(&Method::GET, StatusCode::SEE_OTHER, safe, "/x").is_some());
    }
}
