//! The way to servers, which only the shell has: the platform's own network, with the certificates that it trusts.

use std::sync::Arc;
use std::time::Duration;

use laydown_sync::http_client as sync;

/// Sends one HTTP request and hands back its answer. Follows no redirect, keeps no cookie and no cache, and adds no name or
/// password: the core decides what is sent where. Called on threads of the core's own, several at once.
#[uniffi::export(with_foreign)]
pub trait HttpClient: Send + Sync {
    /// Begins a request, without waiting for anything.
    fn begin(&self, request: HttpRequest) -> Result<Arc<dyn HttpCall>, NetworkError>;
}

/// A request and its answer.
#[uniffi::export(with_foreign)]
pub trait HttpCall: Send + Sync {
    /// Sends the request and waits for the head of its answer. Called once.
    fn answer(&self) -> Result<HttpAnswer, NetworkError>;

    /// Waits for the next bytes of the answer's body, at most so many; none at its end. A body that breaks off before its end
    /// is an error.
    fn read(&self, most: u32) -> Result<Vec<u8>, NetworkError>;

    /// Ends it from another thread: closes its connection, so that the other calls return. Called at any time, and perhaps more
    /// than once.
    fn cancel(&self);
}

/// What is sent. Holds a password or a signature: never show or log it.
#[derive(uniffi::Record)]
pub struct HttpRequest {
    /// The method, in capitals; WebDAV has some of its own.
    pub method: String,
    /// The whole address, `http` or `https`.
    pub url: String,
    /// All headers but `Host` and `Content-Length`, which are the client's to add.
    pub headers: Vec<HttpHeader>,
    /// The body; empty where there is none.
    pub body: Vec<u8>,
    /// How long reaching the server may take, ms.
    pub connect_ms: u32,
    /// How long the server may say nothing, ms.
    pub silence_ms: u32,
}

/// A header of a request or an answer.
#[derive(uniffi::Record)]
pub struct HttpHeader {
    /// Its name; capitals do not matter.
    pub name: String,
    /// Its value.
    pub value: String,
}

/// The head of an answer.
#[derive(uniffi::Record)]
pub struct HttpAnswer {
    /// The status, such as 207.
    pub status: u16,
    /// The headers, in their order.
    pub headers: Vec<HttpHeader>,
}

/// Why there is no answer, or not all of it.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error, uniffi::Error)]
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
        /// What is known of it, for a report. No address, and nothing that a server said.
        details: String,
    },
    /// It was cancelled.
    #[error("cancelled")]
    Stopped,
}

impl From<uniffi::UnexpectedUniFFICallbackError> for NetworkError {
    /// Nothing of the shell's own text is kept: it may hold addresses.
    fn from(_: uniffi::UnexpectedUniFFICallbackError) -> NetworkError {
        NetworkError::Broken { details: "the shell failed".to_owned() }
    }
}

impl From<NetworkError> for sync::NetworkError {
    fn from(error: NetworkError) -> sync::NetworkError {
        match error {
            NetworkError::NoNetwork => sync::NetworkError::NoNetwork,
            NetworkError::UnknownHost => sync::NetworkError::UnknownHost,
            NetworkError::Refused => sync::NetworkError::Refused,
            NetworkError::TimedOut => sync::NetworkError::TimedOut,
            NetworkError::CertificateDate => sync::NetworkError::CertificateDate,
            NetworkError::CertificateHost => sync::NetworkError::CertificateHost,
            NetworkError::Certificate => sync::NetworkError::Certificate,
            NetworkError::Broken { details } => sync::NetworkError::Broken { details },
            NetworkError::Stopped => sync::NetworkError::Stopped,
        }
    }
}

/// The shell's client as the sync asks it.
pub(crate) struct ForeignClient(pub(crate) Arc<dyn HttpClient>);

impl sync::HttpClient for ForeignClient {
    fn begin(&self, request: sync::HttpRequest) -> Result<Arc<dyn sync::HttpCall>, sync::NetworkError> {
        let sync::HttpRequest { method, url, headers, body, connect, silence } = request;
        let headers = headers.into_iter().map(|(name, value)| HttpHeader { name, value }).collect();
        let (connect_ms, silence_ms) = (millis(connect), millis(silence));
        let call = self.0.begin(HttpRequest { method, url, headers, body, connect_ms, silence_ms })?;
        Ok(Arc::new(ForeignCall(call)))
    }
}

fn millis(duration: Duration) -> u32 {
    u32::try_from(duration.as_millis()).unwrap_or(u32::MAX)
}

struct ForeignCall(Arc<dyn HttpCall>);

impl sync::HttpCall for ForeignCall {
    fn answer(&self) -> Result<sync::HttpAnswer, sync::NetworkError> {
        let HttpAnswer { status, headers } = self.0.answer()?;
        Ok(sync::HttpAnswer {
            status,
            headers: headers.into_iter().map(|header| (header.name, header.value)).collect(),
        })
    }

    fn read(&self, most: usize) -> Result<Vec<u8>, sync::NetworkError> {
        Ok(self.0.read(u32::try_from(most).unwrap_or(u32::MAX))?)
    }

    fn cancel(&self) {
        self.0.cancel();
    }
}
