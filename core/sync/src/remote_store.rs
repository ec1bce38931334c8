//! All that is asked of a place that holds files.

use crate::RemoteError;

/// A place that holds files by their paths, whose parts are divided by `/`.
pub trait RemoteStore {
    /// The whole of a file; `None` where there is none.
    ///
    /// # Errors
    /// [`RemoteError::TooLong`] where it has more than `most` bytes, of which no more are read; or when the place does not
    /// answer or refuses.
    fn get(&self, path: &str, most: u64) -> Result<Option<Vec<u8>>, RemoteError>;

    /// Puts a whole file there, in the place of one that is there already. When it is cut off, anything may lie there.
    ///
    /// # Errors
    /// As [`RemoteStore::get`], or when there is no room.
    fn put(&self, path: &str, bytes: Vec<u8>) -> Result<(), RemoteError>;

    /// Removes a file; whether the place can do that.
    ///
    /// # Errors
    /// As [`RemoteStore::get`].
    fn remove(&self, _path: &str) -> Result<bool, RemoteError> {
        Ok(false)
    }

    /// Several files, in their order, each with the most bytes it may have: as many at once as the place likes.
    ///
    /// # Errors
    /// As [`RemoteStore::get`], and for the first that fails; one that is too long counts as none.
    fn get_many(&self, files: &[(&str, u64)]) -> Result<Vec<Option<Vec<u8>>>, RemoteError> {
        files
            .iter()
            .map(|(path, most)| match self.get(path, *most) {
                Err(RemoteError::TooLong) => Ok(None),
                other => other,
            })
            .collect()
    }

    /// All files below `devices/`, at any depth.
    ///
    /// # Errors
    /// As [`RemoteStore::get`].
    fn list(&self) -> Result<Vec<Entry>, RemoteError>;
}

/// A file on a shelf.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// Its path.
    pub path: String,
    /// Its length, bytes.
    pub size: u64,
}

/// The folder that everything lies in.
pub(crate) const DEVICES: &str = "devices/";
