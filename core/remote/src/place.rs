//! The places that a shelf can be: a folder, a WebDAV server, an S3 bucket.

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;

use opendal::layers::{RetryLayer, TimeoutLayer};
use opendal::services::{Fs, S3, Webdav};
use opendal::{ErrorKind, HttpTransporter, OperationContext, Operator};
use opendal_http_transport_reqwest::ReqwestTransport;
use rustls::pki_types::CertificateDer;
use rustls::pki_types::pem::PemObject;
use rustls::{ClientConfig, RootCertStore};
use tokio::runtime::{Builder, Runtime};
use tokio::task::JoinSet;

use crate::RemoteError;
use crate::shelf::{DEVICES, Entry, Shelf, within};

use age::secrecy::ExposeSecret;
/// A password or a key. Its `Debug` shows nothing of it, and it is wiped from memory when it is dropped.
pub use age::secrecy::SecretString as Secret;

/// Where the shelf is.
#[derive(Debug, Clone)]
pub enum Place {
    /// A folder of this device's, such as one that another program keeps alike elsewhere, or a stick.
    Folder(PathBuf),
    /// A folder of a WebDAV server.
    WebDav {
        /// Where the folder is, beginning with `https://` (or `http://`, where anyone on the way can read along).
        address: String,
        /// Who the server is to take this for.
        user: String,
        /// The password.
        password: Secret,
    },
    /// A bucket of an S3-compatible server.
    S3 {
        /// Where the server is.
        address: String,
        /// Its region, as the server names it.
        region: String,
        /// The bucket.
        bucket: String,
        /// The folder in it; may be empty.
        folder: String,
        /// The key's id.
        key: String,
        /// The key's secret.
        secret: Secret,
    },
}

/// How long to try again before giving up. Waits double from the first to the longest, each a little longer by chance, so
/// that forty phones that lost the same server do not all come back at once.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Patience {
    /// How often to try again.
    pub times: usize,
    /// The first wait.
    pub first: Duration,
    /// The longest wait.
    pub longest: Duration,
    /// How long a single answer may take.
    pub answer: Duration,
}

impl Default for Patience {
    fn default() -> Patience {
        Patience {
            times: 4,
            first: Duration::from_millis(400),
            longest: Duration::from_secs(8),
            answer: Duration::from_secs(20),
        }
    }
}

/// A shelf in a [`Place`], with whatever it takes to reach it.
pub struct Connection {
    operator: Operator,
    runtime: Runtime,
    stop: Arc<AtomicBool>,
}

/// How often it is looked whether to stop while an answer is waited for.
const LOOK: Duration = Duration::from_millis(50);

impl Connection {
    /// Makes ready to reach `place`; nothing is sent yet. Servers must have a certificate of one of the usual authorities,
    /// or of `authority` (PEM), such as that of a storage box in the studio: the phone's own list is not asked.
    ///
    /// # Errors
    /// When the address is none, or `authority` holds no certificate.
    pub fn open(place: &Place, authority: Option<&[u8]>, patience: Patience) -> Result<Connection, RemoteError> {
        let operator = match place {
            Place::Folder(folder) => {
                Operator::new(Fs::default().root(folder.to_str().ok_or(RemoteError::WrongAddress)?))?
            }
            Place::WebDav { address, user, password } => {
                check(address)?;
                // OpenDAL puts a slash of its own behind it, and servers refuse two.
                let address = address.trim_end_matches('/');
                let service = Webdav::default().endpoint(address).username(user).password(password.expose_secret());
                through(Operator::new(service)?, authority)?
            }
            Place::S3 { address, region, bucket, folder, key, secret } => {
                check(address)?;
                // Only what the potter typed counts, not what lies about on the device.
                let service = S3::default()
                    .endpoint(address)
                    .region(region)
                    .bucket(bucket)
                    .root(folder)
                    .access_key_id(key)
                    .secret_access_key(secret.expose_secret())
                    .disable_config_load()
                    .disable_ec2_metadata();
                through(Operator::new(service)?, authority)?
            }
        };
        let retry = RetryLayer::new()
            .with_max_times(patience.times)
            .with_min_delay(patience.first)
            .with_max_delay(patience.longest)
            .with_jitter();
        let timeout = TimeoutLayer::new().with_timeout(patience.answer).with_io_timeout(patience.answer);
        let operator = operator.layer(timeout).layer(retry);
        let runtime = Builder::new_current_thread()
            .enable_all()
            .build()
            .map_err(|error| RemoteError::Failed { details: error.kind().to_string() })?;
        Ok(Connection { operator, runtime, stop: Arc::default() })
    }

    /// The same, and whoever waits for an answer there is let go with [`RemoteError::Stopped`] once `stop` is set.
    #[must_use]
    pub fn until(self, stop: Arc<AtomicBool>) -> Connection {
        Connection { stop, ..self }
    }

    /// Waits for what `work` answers, as long as it is not to stop.
    fn wait<T>(&self, work: impl Future<Output = opendal::Result<T>>) -> Result<opendal::Result<T>, RemoteError> {
        self.runtime.block_on(async {
            let mut work = std::pin::pin!(work);
            while !self.stop.load(Ordering::Relaxed) {
                if let Ok(answer) = tokio::time::timeout(LOOK, &mut work).await {
                    return Ok(answer);
                }
            }
            Err(RemoteError::Stopped)
        })
    }
}

impl Shelf for Connection {
    fn get(&self, path: &str, most: u64) -> Result<Option<Vec<u8>>, RemoteError> {
        file_of(self.wait(async { self.operator.read(path).await })?, most)
    }

    fn get_many(&self, files: &[(&str, u64)]) -> Result<Vec<Option<Vec<u8>>>, RemoteError> {
        let read = self.wait(async {
            let mut reading = JoinSet::new();
            for (at, (path, _)) in files.iter().enumerate() {
                let (operator, path) = (self.operator.clone(), (*path).to_owned());
                reading.spawn(async move { (at, operator.read(&path).await) });
            }
            Ok(reading.join_all().await)
        })??;
        let mut found = vec![None; files.len()];
        for (at, read) in read {
            found[at] = match file_of(read, files[at].1) {
                Err(RemoteError::TooLong) => None,
                other => other?,
            };
        }
        Ok(found)
    }

    fn remove(&self, path: &str) -> Result<bool, RemoteError> {
        self.wait(async { self.operator.delete(path).await })??;
        Ok(true)
    }

    fn put(&self, path: &str, bytes: Vec<u8>) -> Result<(), RemoteError> {
        self.wait(async { self.operator.write(path, bytes).await })??;
        Ok(())
    }

    fn list(&self) -> Result<Vec<Entry>, RemoteError> {
        let listed = self.wait(async { self.operator.list_with(DEVICES).recursive(true).await })?;
        match listed {
            Ok(entries) => Ok(entries
                .into_iter()
                .filter(|entry| entry.metadata().is_file())
                .map(|entry| Entry { path: entry.path().to_owned(), size: entry.metadata().content_length() })
                .collect()),
            // Nobody has put anything there yet.
            Err(error) if error.kind() == ErrorKind::NotFound => Ok(Vec::new()),
            Err(error) => Err(error.into()),
        }
    }
}

/// What was read of a file that may have `most` bytes.
fn file_of(read: opendal::Result<opendal::Buffer>, most: u64) -> Result<Option<Vec<u8>>, RemoteError> {
    match read {
        Ok(bytes) => Ok(Some(within(most, bytes.to_vec())?)),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
        Err(error) => Err(error.into()),
    }
}

/// Refuses what is no address, and one with a password in it, which would show up wherever addresses do.
fn check(address: &str) -> Result<(), RemoteError> {
    let url = reqwest::Url::parse(address).map_err(|_| RemoteError::WrongAddress)?;
    let plain = url.username().is_empty() && url.password().is_none() && url.has_host();
    let known = matches!(url.scheme(), "http" | "https");
    if plain && known { Ok(()) } else { Err(RemoteError::WrongAddress) }
}

/// The operator, reaching its server through a client that trusts the usual authorities and `authority`.
fn through(operator: Operator, authority: Option<&[u8]>) -> Result<Operator, RemoteError> {
    let mut roots = RootCertStore { roots: webpki_roots::TLS_SERVER_ROOTS.to_vec() };
    if let Some(pem) = authority {
        let mut found = false;
        for certificate in CertificateDer::pem_slice_iter(pem) {
            let added = certificate.ok().and_then(|certificate| roots.add(certificate).ok());
            found = added.is_some();
            if !found {
                break;
            }
        }
        if !found {
            return Err(RemoteError::Certificate);
        }
    }
    let failed = |details: String| RemoteError::Failed { details };
    let tls = ClientConfig::builder_with_provider(Arc::new(rustls::crypto::ring::default_provider()))
        .with_safe_default_protocol_versions()
        .map_err(|error| failed(error.to_string()))?
        .with_root_certificates(roots)
        .with_no_client_auth();
    let client = reqwest::Client::builder()
        .tls_backend_preconfigured(tls)
        .connect_timeout(Duration::from_secs(10))
        .build()
        .map_err(|error| failed(error.without_url().to_string()))?;
    let transport = HttpTransporter::new(ReqwestTransport::new(client));
    Ok(operator.with_context(OperationContext::new().with_http_transport(transport)))
}
