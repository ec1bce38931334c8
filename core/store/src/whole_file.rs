//! Files that are there whole or not at all, and stay there when the power goes.

use std::fs::{self, File};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

/// What the name of a file ends in while it is being written.
pub(crate) const PARTIAL: &str = ".partial";

/// Writes `bytes` into the file at `path`, in the place of one that is there.
///
/// # Errors
/// When it cannot be written; what was there before is then still there.
pub fn whole_file(path: &Path, bytes: &[u8]) -> io::Result<()> {
    write_whole_file(path, |mut file| file.write_all(bytes).and_then(|()| file.sync_all()))
}

/// As [`whole_file`], with what `write` writes and synchronises.
///
/// # Errors
/// As [`whole_file`], and what `write` answers.
pub(crate) fn write_whole_file<T, E: From<io::Error>>(
    path: &Path,
    write: impl FnOnce(File) -> Result<T, E>,
) -> Result<T, E> {
    let mut partial = path.as_os_str().to_owned();
    partial.push(PARTIAL);
    let partial = PathBuf::from(partial);
    let written = File::create(&partial).map_err(E::from).and_then(write);
    let written = written.and_then(|value| Ok(fs::rename(&partial, path).map(|()| value)?));
    if written.is_err() {
        // What could not be finished is not left behind; that it stays is no worse than the first error.
        let _ = fs::remove_file(&partial);
        return written;
    }
    if let Some(folder) = path.parent().filter(|folder| !folder.as_os_str().is_empty()) {
        File::open(folder)?.sync_all()?;
    }
    written
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_that_could_not_be_finished_leaves_the_old_one_and_nothing_else() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("mark");
        whole_file(&path, b"old").unwrap();
        let failed = write_whole_file(&path, |mut file| {
            file.write_all(b"half")?;
            Err::<(), io::Error>(io::Error::other("no room"))
        });
        assert!(failed.is_err());
        assert_eq!(fs::read(&path).unwrap(), b"old");
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
        whole_file(&path, b"new").unwrap();
        assert_eq!(fs::read(&path).unwrap(), b"new");
        assert!(whole_file(&folder.path().join("gone/mark"), b"").is_err());
    }
}
