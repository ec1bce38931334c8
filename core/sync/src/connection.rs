//! The places that a shelf can be: a folder, a WebDAV server, an S3 bucket.

use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::time::Duration;

use futures_util::StreamExt;
use futures_util::future::join_all;
use http::StatusCode;
use opendal::services::{Fs, S3, Webdav};
use opendal::{Buffer, EntryMode, ErrorKind, HttpTransporter, OperationContext, Operator};
use tokio::runtime::{Builder, Runtime};
use tokio::time::{sleep, timeout};

use crate::RemoteError;
use crate::address::check;
use crate::http_client::{Carrier, HttpClient, NetworkError};
use crate::remote_store::{DEVICES, Entry, RemoteStore};
use crate::transport::{Guarded, Refusal, time_for};
use crate::webdav::{Child, Folder};

use age::secrecy::ExposeSecret;
/// A password or a key. Its `Debug` shows nothing of it, and it is wiped from memory when it is dropped.
pub use age::secrecy::SecretString as Secret;

/// Where the shelf is.
#[derive(Debug, Clone)]
pub enum RemoteConfig {
    /// A folder of this device's, such as one that another program keeps alike elsewhere, or a stick.
    Folder(PathBuf),
    /// A folder of a WebDAV server.
    WebDav {
        /// Where the folder is, beginning with `https://` (or `http://`, to this device and its own network alone).
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
pub struct RetryPolicy {
    /// How often to try again.
    pub times: usize,
    /// The first wait.
    pub first: Duration,
    /// The longest wait.
    pub longest: Duration,
    /// How long a single answer may take, beside a second for each 8 kB that go either way.
    pub answer: Duration,
}

impl Default for RetryPolicy {
    fn default() -> RetryPolicy {
        RetryPolicy {
            times: 4,
            first: Duration::from_millis(400),
            longest: Duration::from_secs(8),
            answer: Duration::from_secs(20),
        }
    }
}

/// A shelf in a [`RemoteConfig`], with whatever it takes to reach it.
pub struct Connection {
    operator: Operator,
    /// How it is listed.
    tree: Tree,
    /// The folder that all paths begin in, where the operator does not know of it; ends in a slash unless it is empty.
    root: String,
    pages: Arc<AtomicUsize>,
    retry: RetryPolicy,
    runtime: Background,
    stop: Arc<AtomicBool>,
}

/// How it is found out what files there are.
enum Tree {
    /// Folder by folder, by the operator.
    Folders,
    /// Folder by folder, by what the server says of each.
    WebDav(Folder),
    /// All at once: there are no folders.
    Flat,
}

/// A runtime that whoever lets go of it does not wait for: what a network or a folder never answers may still wait there.
struct Background(Option<Runtime>);

impl Drop for Background {
    fn drop(&mut self) {
        if let Some(runtime) = self.0.take() {
            runtime.shutdown_background();
        }
    }
}

/// How often it is looked whether to stop while an answer is waited for.
const LOOK: Duration = Duration::from_millis(50);
/// A server that is there takes a call within a second or two, even over a bad line.
const LONGEST_TO_CONNECT: Duration = Duration::from_secs(10);
/// The most files that a listing may have: a photograph or a segment each, of decades.
const MOST_FILES: usize = 200_000;
/// The most folders within `devices/`; those of laydown's own files have three.
const MOST_DEPTH: usize = 6;
/// Of how many answers the whole of a thing may take the time.
const ANSWERS_TO_GET: u32 = 1;
/// Each folder above it is asked for, and made where it is missing.
const ANSWERS_TO_PUT: u32 = 12;
const ANSWERS_TO_LIST: u32 = 30;

impl Connection {
    /// Makes ready to reach `place`, a server by `client`; nothing is sent yet.
    ///
    /// # Errors
    /// When the address is none, or would have secrets go through the open internet; when there is a server and no client.
    pub fn open(
        place: &RemoteConfig,
        client: Option<Arc<dyn HttpClient>>,
        retry: RetryPolicy,
    ) -> Result<Connection, RemoteError> {
        let pages = Arc::new(AtomicUsize::new(0));
        let through = |operator| match client {
            Some(client) => Ok(through(operator, client, retry, &pages)),
            None => Err(RemoteError::Network(NetworkError::NoNetwork)),
        };
        let mut root = String::new();
        let (operator, tree) = match place {
            RemoteConfig::Folder(folder) => {
                let folder = folder.to_str().ok_or(RemoteError::WrongAddress)?;
                (Operator::new(Fs::default().root(folder))?, Tree::Folders)
            }
            RemoteConfig::WebDav { address, user, password } => {
                check(address)?;
                // OpenDAL puts a slash of its own behind it, and servers refuse two.
                let address = address.trim_end_matches('/');
                let password = password.expose_secret();
                let service = Webdav::default().endpoint(address).username(user).password(password);
                (through(Operator::new(service)?)?, Tree::WebDav(Folder::new(address, user, password)?))
            }
            RemoteConfig::S3 { address, region, bucket, folder, key, secret } => {
                check(address)?;
                // OpenDAL cuts its root off whatever key a server names, and panics where that is shorter.
                root = folder.split('/').filter(|part| !part.is_empty()).map(|part| format!("{part}/")).collect();
                // Only what the potter typed counts, not what lies about on the device.
                let service = S3::default()
                    .endpoint(address)
                    .region(region)
                    .bucket(bucket)
                    .access_key_id(key)
                    .secret_access_key(secret.expose_secret())
                    .disable_config_load()
                    .disable_ec2_metadata();
                (through(Operator::new(service)?)?, Tree::Flat)
            }
        };
        let runtime = Builder::new_current_thread()
            .enable_all()
            .build()
            .map_err(|error| RemoteError::Failed { details: error.kind().to_string() })?;
        let (runtime, stop) = (Background(Some(runtime)), Arc::default());
        Ok(Connection { operator, tree, root, pages, retry, runtime, stop })
    }

    /// The same, and whoever waits for an answer there is let go with [`RemoteError::Stopped`] once `stop` is set.
    #[must_use]
    pub fn until(self, stop: Arc<AtomicBool>) -> Connection {
        Connection { stop, ..self }
    }

    /// Waits for what `work` answers, as long as it is not to stop.
    fn wait<T>(&self, work: impl Future<Output = T>) -> Result<T, RemoteError> {
        let Some(runtime) = &self.runtime.0 else { return Err(RemoteError::Stopped) };
        runtime.block_on(async {
            let mut work = std::pin::pin!(work);
            while !self.stop.load(Ordering::Relaxed) {
                if let Ok(answer) = timeout(LOOK, &mut work).await {
                    return Ok(answer);
                }
            }
            Err(RemoteError::Stopped)
        })
    }

    /// What `attempt` answers, begun anew from its beginning where it failed in a way that may pass. Each has the time of so
    /// many `answers` and of `bytes`.
    async fn with_retries<T>(
        &self,
        answers: u32,
        bytes: u64,
        attempt: impl AsyncFn() -> opendal::Result<T>,
    ) -> opendal::Result<T> {
        let RetryPolicy { times, first, longest, answer } = self.retry;
        let limit = answer * answers + time_for(bytes);
        let mut pause = first;
        for _ in 0..times {
            match timeout(limit, attempt()).await {
                Ok(Err(error)) if error.is_temporary() => {}
                Ok(answered) => return answered,
                Err(_) => return Err(Refusal::TooSlow.into()),
            }
            sleep(pause + first.mul_f64(fastrand::f64())).await;
            pause = (pause * 2).min(longest);
        }
        timeout(limit, attempt()).await.map_err(|_| Refusal::TooSlow)?
    }

    /// A file of at most `most` bytes; `None` where there is none.
    async fn get_with_retries(&self, path: &str, most: u64) -> Result<Option<Vec<u8>>, RemoteError> {
        match self.with_retries(ANSWERS_TO_GET, most, async || self.read(path, most).await).await {
            Ok(bytes) => Ok(Some(bytes)),
            Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error.into()),
        }
    }

    /// A file of at most `most` bytes.
    async fn read(&self, path: &str, most: u64) -> opendal::Result<Vec<u8>> {
        let reader = self.operator.reader(&format!("{}{path}", self.root)).await?;
        let mut stream = reader.into_stream(..).await?;
        let mut bytes = Vec::new();
        while let Some(part) = stream.next().await {
            let part = part?;
            if bytes.len() as u64 + part.len() as u64 > most {
                return Err(Refusal::TooLong.into());
            }
            for part in part {
                bytes.extend_from_slice(&part);
            }
        }
        Ok(bytes)
    }

    /// All files below `devices/` with their lengths: every one, or an error.
    async fn files(&self) -> opendal::Result<BTreeMap<String, u64>> {
        self.pages.store(0, Ordering::Relaxed);
        match &self.tree {
            Tree::Flat => self.files_of_bucket().await,
            Tree::Folders | Tree::WebDav(_) => self.files_of_folders().await,
        }
    }

    async fn files_of_bucket(&self) -> opendal::Result<BTreeMap<String, u64>> {
        let mut files = BTreeMap::new();
        let mut lister = self.operator.lister_with(&format!("{}{DEVICES}", self.root)).recursive(true).await?;
        while let Some(entry) = lister.next().await {
            let entry = entry?;
            let path = entry.path().strip_prefix(&self.root).filter(|path| is_path(path));
            if let (Some(path), EntryMode::FILE) = (path, entry.metadata().mode()) {
                add(&mut files, path.to_owned(), entry.metadata().content_length())?;
            }
        }
        Ok(files)
    }

    async fn files_of_folders(&self) -> opendal::Result<BTreeMap<String, u64>> {
        let mut files = BTreeMap::new();
        let mut folders = vec![DEVICES.to_owned()];
        while let Some(folder) = folders.pop() {
            let Some(children) = self.children(&folder).await? else {
                // Nobody has put anything there yet, or what was named a moment ago is gone.
                return if folder == DEVICES { Ok(files) } else { Err(Refusal::Garbled.into()) };
            };
            for Child { name, size } in children {
                match size {
                    Some(size) => add(&mut files, format!("{folder}{name}"), size)?,
                    // What lies deeper is none of laydown's.
                    None if folder.matches('/').count() > MOST_DEPTH => {}
                    None => folders.push(format!("{folder}{name}/")),
                }
            }
            if folders.len() > MOST_FILES {
                return Err(Refusal::TooMany.into());
            }
        }
        Ok(files)
    }

    /// What is in a folder; `None` where there is none.
    async fn children(&self, folder: &str) -> opendal::Result<Option<Vec<Child>>> {
        match &self.tree {
            Tree::WebDav(server) => self.children_by_webdav(server, folder).await,
            Tree::Folders | Tree::Flat => self.children_by_operator(folder).await,
        }
    }

    async fn children_by_webdav(&self, server: &Folder, folder: &str) -> opendal::Result<Option<Vec<Child>>> {
        let answer = self.operator.context().http_transport().send(server.ask(folder)?).await?;
        match answer.status() {
            StatusCode::MULTI_STATUS | StatusCode::OK => Ok(Some(server.read(folder, &answer.into_body().to_bytes())?)),
            StatusCode::NOT_FOUND => Ok(None),
            status => Err(Refusal::Status(status.as_u16()).into()),
        }
    }

    async fn children_by_operator(&self, folder: &str) -> opendal::Result<Option<Vec<Child>>> {
        let mut lister = self.operator.lister(folder).await?;
        let mut children = None;
        while let Some(entry) = lister.next().await {
            let entry = entry?;
            // The first is the folder itself, where there is one.
            let children = children.get_or_insert_with(Vec::new);
            let name = entry.name().trim_end_matches('/').to_owned();
            match entry.metadata().mode() {
                _ if entry.path() == folder => {}
                EntryMode::FILE => children.push(Child { name, size: Some(entry.metadata().content_length()) }),
                EntryMode::DIR => children.push(Child { name, size: None }),
                EntryMode::Unknown => {}
            }
            if children.len() > MOST_FILES {
                return Err(Refusal::TooMany.into());
            }
        }
        Ok(children)
    }
}

impl RemoteStore for Connection {
    fn get(&self, path: &str, most: u64) -> Result<Option<Vec<u8>>, RemoteError> {
        self.wait(self.get_with_retries(path, most))?
    }

    fn get_many(&self, files: &[(&str, u64)]) -> Result<Vec<Option<Vec<u8>>>, RemoteError> {
        let reading = files.iter().map(|(path, most)| self.get_with_retries(path, *most));
        let read = self.wait(join_all(reading))?;
        read.into_iter().map(|read| if let Err(RemoteError::TooLong) = read { Ok(None) } else { read }).collect()
    }

    fn remove(&self, path: &str) -> Result<bool, RemoteError> {
        let path = format!("{}{path}", self.root);
        match self.wait(self.with_retries(ANSWERS_TO_GET, 0, async || self.operator.delete(&path).await))? {
            Ok(()) => Ok(true),
            // A place that only takes and gives does for syncing: what could go stays there.
            Err(error) => match error.into() {
                RemoteError::WrongAddress | RemoteError::WrongPassword | RemoteError::NotAllowed => Ok(false),
                error => Err(error),
            },
        }
    }

    fn put(&self, path: &str, bytes: Vec<u8>) -> Result<(), RemoteError> {
        let (path, bytes) = (format!("{}{path}", self.root), Buffer::from(bytes));
        let length = bytes.len() as u64;
        self.wait(
            self.with_retries(ANSWERS_TO_PUT, length, async || self.operator.write(&path, bytes.clone()).await),
        )??;
        Ok(())
    }

    fn list(&self) -> Result<Vec<Entry>, RemoteError> {
        let files = self.wait(self.with_retries(ANSWERS_TO_LIST, 0, async || self.files().await))??;
        Ok(files.into_iter().map(|(path, size)| Entry { path, size }).collect())
    }
}

/// Whether it is a path below `devices/` that leads nowhere else.
fn is_path(path: &str) -> bool {
    let odd = |part: &str| matches!(part, "" | "." | "..") || part.contains('\\') || part.contains(char::is_control);
    path.strip_prefix(DEVICES).is_some_and(|rest| !rest.split('/').any(odd))
}

/// Adds a file to a listing. One that is named twice makes it a list that goes round in a circle.
fn add(files: &mut BTreeMap<String, u64>, path: String, size: u64) -> Result<(), Refusal> {
    if files.insert(path, size).is_some() {
        Err(Refusal::Garbled)
    } else if files.len() > MOST_FILES {
        Err(Refusal::TooMany)
    } else {
        Ok(())
    }
}

/// The operator, reaching its server by `client`.
fn through(operator: Operator, client: Arc<dyn HttpClient>, retry: RetryPolicy, pages: &Arc<AtomicUsize>) -> Operator {
    let inner = Carrier { client, connect: retry.answer.min(LONGEST_TO_CONNECT), silence: retry.answer };
    let guarded = Guarded { inner, answer: retry.answer, pages: Arc::clone(pages) };
    operator.with_context(OperationContext::new().with_http_transport(HttpTransporter::new(guarded)))
}
