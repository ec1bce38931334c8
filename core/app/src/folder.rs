//! What a sync of the studio's phones needs of the shell: a folder that only the shell can reach, an eye on how far it is,
//! and a way to stop it.

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

use laydown_sync::{Connection, Entry, RemoteError, RemoteStore, RetryPolicy};

use crate::http_client::{ForeignClient, HttpClient};
use crate::sync_now::{SyncProgress, SyncRequest};
use crate::{Now, Result as StudioResult, Studio, Value, sync_now};

/// A file in a folder.
#[derive(uniffi::Record)]
pub struct FolderEntry {
    /// Its path from the folder on, with `/` between the parts.
    pub path: String,
    /// Its length, bytes.
    pub size: u64,
}

/// Why a folder did not do what was asked of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error, uniffi::Error)]
pub enum FolderError {
    /// There is no such folder any more, or whoever keeps it does not answer.
    #[error("there is no such folder")]
    Gone,
    /// It may not be read or written.
    #[error("it may not be read or written")]
    NotAllowed,
    /// There is no room left.
    #[error("there is no room left")]
    Full,
    /// Something else.
    #[error("it failed")]
    Failed,
}

impl From<uniffi::UnexpectedUniFFICallbackError> for FolderError {
    /// Nothing of the shell's own text is kept: it may hold names of the potter's.
    fn from(_: uniffi::UnexpectedUniFFICallbackError) -> FolderError {
        FolderError::Failed
    }
}

impl From<FolderError> for RemoteError {
    fn from(error: FolderError) -> RemoteError {
        match error {
            FolderError::Gone => RemoteError::NoFolder,
            FolderError::NotAllowed => RemoteError::NotAllowed,
            FolderError::Full => RemoteError::Full,
            FolderError::Failed => RemoteError::Failed { details: "the folder failed".to_owned() },
        }
    }
}

impl From<RemoteError> for FolderError {
    fn from(error: RemoteError) -> FolderError {
        match error {
            RemoteError::WrongAddress => FolderError::Gone,
            RemoteError::NotAllowed => FolderError::NotAllowed,
            RemoteError::Full => FolderError::Full,
            _ => FolderError::Failed,
        }
    }
}

/// A folder where phones meet. A shell brings its own where the platform's folders have no paths; else [`folder_at`] makes one.
#[uniffi::export(with_foreign)]
pub trait Folder: Send + Sync {
    /// The whole of a file; `None` where there is none.
    fn get(&self, path: String) -> Result<Option<Vec<u8>>, FolderError>;

    /// Puts a whole file there, with the folders that it lies in, in the place of one that is there already.
    fn put(&self, path: String, bytes: Vec<u8>) -> Result<(), FolderError>;

    /// Removes a file; whether whoever keeps the folder can do that. One that is not there is removed.
    fn remove(&self, path: String) -> Result<bool, FolderError>;

    /// All files whose path begins with `devices/`.
    fn list(&self) -> Result<Vec<FolderEntry>, FolderError>;
}

/// The folder at a path of this device's.
#[uniffi::export]
pub fn folder_at(path: &str) -> Result<Arc<dyn Folder>, FolderError> {
    let place = laydown_sync::RemoteConfig::Folder(PathBuf::from(path));
    Ok(Arc::new(AtPath(Connection::open(&place, None, RetryPolicy::default())?)))
}

struct AtPath(Connection);

impl Folder for AtPath {
    fn get(&self, path: String) -> Result<Option<Vec<u8>>, FolderError> {
        Ok(self.0.get(&path, u64::MAX)?)
    }

    fn put(&self, path: String, bytes: Vec<u8>) -> Result<(), FolderError> {
        Ok(self.0.put(&path, bytes)?)
    }

    fn remove(&self, path: String) -> Result<bool, FolderError> {
        Ok(self.0.remove(&path)?)
    }

    fn list(&self) -> Result<Vec<FolderEntry>, FolderError> {
        Ok(self.0.list()?.into_iter().map(|Entry { path, size }| FolderEntry { path, size }).collect())
    }
}

/// A [`Folder`] as the sync asks it.
pub(crate) struct ForeignFolder(pub(crate) Arc<dyn Folder>);

impl RemoteStore for ForeignFolder {
    fn get(&self, path: &str, most: u64) -> Result<Option<Vec<u8>>, RemoteError> {
        let file = self.0.get(path.to_owned())?;
        if file.as_ref().is_some_and(|file| file.len() as u64 > most) { Err(RemoteError::TooLong) } else { Ok(file) }
    }

    fn put(&self, path: &str, bytes: Vec<u8>) -> Result<(), RemoteError> {
        Ok(self.0.put(path.to_owned(), bytes)?)
    }

    fn remove(&self, path: &str) -> Result<bool, RemoteError> {
        Ok(self.0.remove(path.to_owned())?)
    }

    fn list(&self) -> Result<Vec<Entry>, RemoteError> {
        Ok(self.0.list()?.into_iter().map(|FolderEntry { path, size }| Entry { path, size }).collect())
    }
}

/// Told how far a sync is, on the thread that it was called on.
#[uniffi::export(with_foreign)]
pub trait ProgressListener: Send + Sync {
    /// It is so far.
    fn progress(&self, progress: SyncProgress);
}

/// Stops a sync.
#[derive(Default, uniffi::Object)]
pub struct Stop(pub(crate) Arc<AtomicBool>);

#[uniffi::export]
impl Stop {
    /// One for a single meeting.
    #[uniffi::constructor]
    pub fn new() -> Arc<Stop> {
        Arc::default()
    }

    /// Has the sync end soon. What is done stays done.
    pub fn stop(&self) {
        self.0.store(true, Ordering::Relaxed);
    }
}

#[uniffi::export]
impl Studio {
    /// Saves this studio alike with what lies the sync location, once; answers with what came and what went. Takes as long
    /// as it takes: call it on a thread that nobody waits for. `secrets` is all that the shell keeps secret, by the fields'
    /// keys; `metered` says that every byte costs here, `check` has all that this phone put there read again; `folder` is the
    /// folder where the place is one, and `client` the way to the server where it is one. What came of it stands in the view
    /// of the phones, also where this answers with an error.
    #[allow(
        clippy::too_many_arguments,
        reason = "a record would hold secrets, and show them wherever records are shown"
    )]
    pub fn sync_now(
        &self,
        now: Now,
        secrets: Vec<Value>,
        metered: bool,
        check: bool,
        folder: Option<Arc<dyn Folder>>,
        client: Option<Arc<dyn HttpClient>>,
        listener: Arc<dyn ProgressListener>,
        stop: Arc<Stop>,
    ) -> StudioResult<String> {
        let folder = folder.map(ForeignFolder);
        let folder = folder.as_ref().map(|folder| folder as &dyn RemoteStore);
        let client =
            client.map(|client| -> Arc<dyn laydown_sync::http_client::HttpClient> { Arc::new(ForeignClient(client)) });
        let how = SyncRequest { secrets: &secrets, metered, check, folder, client, stop: Arc::clone(&stop.0) };
        sync_now(self, now, &how, &mut |progress| listener.progress(progress))
    }
}
