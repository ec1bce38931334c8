//! Sealing files before they leave the phone, with age.
//!
//! A passphrase is stretched for about a second, which cannot be done for every file. So it opens one small file, `key.age`,
//! which holds an identity, and that opens the others. A device that comes new takes over the key that it finds; where two
//! came at once each has its own, and everyone opens both with the same passphrase.
//!
//! Whom a file is sealed for stands in no file but `key.age`, so only who knows the passphrase can seal one that opens. The name
//! of a sealed segment carries a tag besides, which shows the same before it is fetched.

use std::io::{Read, Write};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{RecvTimeoutError, channel};
use std::thread;
use std::time::Duration;

use age::secrecy::ExposeSecret;
use age::{DecryptError, Decryptor, Encryptor, scrypt, x25519};
use sha2::{Digest, Sha256};

use crate::{RemoteError, Secret};

/// What the name of a sealed file ends in.
pub(crate) const SEALED: &str = ".age";
/// scrypt's work: 2 to this, which takes 64 MB and about half a second on a phone.
const WORK: u8 = 16;
/// More than laydown itself asks for is not tried, whatever a key's file says.
const MOST_WORK: u8 = WORK;
/// The most bytes of a file that holds a key.
pub(crate) const MOST_KEY: u64 = 4_096;
/// The hexadecimal digits of a tag.
pub(crate) const TAG: usize = 32;
/// The most bytes of a sealed file's head, and the most stanzas in it: laydown writes one, and age adds one that means nothing.
const MOST_HEAD: usize = 4_096;
const MOST_STANZAS: usize = 4;
const MAGIC: &[u8] = b"age-encryption.org/v1\n";
/// How often it is looked whether to stop while a passphrase is stretched.
const LOOK: Duration = Duration::from_millis(50);

/// An identity that opens sealed files, and the file it lies in.
pub(crate) struct Key {
    identity: x25519::Identity,
    /// As it lies on the shelf.
    pub(crate) file: Vec<u8>,
}

impl Key {
    /// A new key, sealed with `passphrase`.
    pub(crate) fn new(passphrase: &Secret, stop: &AtomicBool) -> Result<Key, RemoteError> {
        let passphrase = passphrase.clone();
        let_go(stop, move || {
            let identity = x25519::Identity::generate();
            let mut recipient = scrypt::Recipient::new(passphrase);
            recipient.set_work_factor(WORK);
            let file = encrypt(&recipient, identity.to_string().expose_secret().as_bytes())?;
            Ok(Key { identity, file })
        })?
    }

    /// The key in a file; `None` where it is none, is damaged, or `passphrase` does not open it.
    ///
    /// # Errors
    /// [`RemoteError::Stopped`] soon after `stop` is set.
    pub(crate) fn open(file: Vec<u8>, passphrase: &Secret, stop: &AtomicBool) -> Result<Option<Key>, RemoteError> {
        if !Key::is_one(&file) {
            return Ok(None);
        }
        let passphrase = passphrase.clone();
        let_go(stop, move || {
            let mut opens = scrypt::Identity::new(passphrase);
            opens.set_max_work_factor(MOST_WORK);
            let text = decrypt(&opens, &file).ok()?;
            let identity = std::str::from_utf8(&text).ok()?.parse().ok()?;
            Some(Key { identity, file })
        })
    }

    /// Whether a file is worth stretching a passphrase for: short, for one passphrase, and asking for no more than [`MOST_WORK`].
    pub(crate) fn is_one(file: &[u8]) -> bool {
        let work = || {
            let stanzas = stanzas_of(file)?;
            let [stanza] = &stanzas[..] else { return None };
            let mut strings = stanza.split(' ');
            let (Some("scrypt"), Some(_), Some(work), None) =
                (strings.next(), strings.next(), strings.next(), strings.next())
            else {
                return None;
            };
            work.parse::<u8>().ok()
        };
        file.len() as u64 <= MOST_KEY && work().is_some_and(|work| work <= MOST_WORK)
    }

    /// What the name of a sealed segment carries: only who has the key can tell, and can make one for another path.
    pub(crate) fn tag(&self, path: &str) -> String {
        let mut tag = self.keyed("name of a segment", path);
        tag.truncate(TAG);
        tag
    }

    pub(crate) fn seal(&self, bytes: &[u8]) -> Result<Vec<u8>, RemoteError> {
        encrypt(&self.identity.to_public(), bytes)
    }

    /// What was sealed; `None` where it was sealed with another key, or is damaged.
    pub(crate) fn unseal(&self, sealed: &[u8]) -> Option<Vec<u8>> {
        stanzas_of(sealed)?;
        decrypt(&self.identity, sealed).ok()
    }

    /// What a photograph is called among sealed files: its own name would tell whoever has the same picture that it is here.
    pub(crate) fn name_of(&self, sha256: &str) -> String {
        self.keyed("", sha256)
    }

    fn keyed(&self, what: &str, text: &str) -> String {
        let secret = self.identity.to_string();
        let parts = [secret.expose_secret(), what, text];
        let sum = parts.into_iter().fold(Sha256::new(), |sum, part| sum.chain_update(part)).finalize();
        sum.iter().map(|byte| format!("{byte:02x}")).collect()
    }
}

/// The stanzas of an age file, each its first line without the arrow; `None` where its head is longer than laydown's can be.
fn stanzas_of(sealed: &[u8]) -> Option<Vec<&str>> {
    let head = sealed.strip_prefix(MAGIC)?;
    let head = &head[..head.len().min(MOST_HEAD)];
    let end = head.windows(4).position(|four| four == b"\n---")?;
    let head = std::str::from_utf8(&head[..end]).ok()?;
    let stanzas: Vec<&str> = head.lines().filter_map(|line| line.strip_prefix("-> ")).collect();
    (stanzas.len() <= MOST_STANZAS).then_some(stanzas)
}

/// What `work` answers. Where `stop` is set meanwhile it is let go at once: it ends by itself, and nobody waits for it.
fn let_go<T: Send + 'static>(stop: &AtomicBool, work: impl FnOnce() -> T + Send + 'static) -> Result<T, RemoteError> {
    let (done, answer) = channel();
    thread::spawn(move || {
        // Whoever asked may have stopped waiting.
        let _ = done.send(work());
    });
    while !stop.load(Ordering::Relaxed) {
        match answer.recv_timeout(LOOK) {
            Ok(answer) => return Ok(answer),
            Err(RecvTimeoutError::Timeout) => {}
            Err(RecvTimeoutError::Disconnected) => {
                return Err(RemoteError::Failed { details: "a key could not be opened".to_owned() });
            }
        }
    }
    Err(RemoteError::Stopped)
}

fn encrypt(recipient: &dyn age::Recipient, bytes: &[u8]) -> Result<Vec<u8>, RemoteError> {
    let failed = |_| RemoteError::Failed { details: "a file could not be sealed".to_owned() };
    let encryptor =
        Encryptor::with_recipients(std::iter::once(recipient)).map_err(|_| failed(std::io::Error::other("")))?;
    let mut sealed = Vec::with_capacity(bytes.len() + 512);
    let mut writer = encryptor.wrap_output(&mut sealed).map_err(failed)?;
    writer.write_all(bytes).map_err(failed)?;
    writer.finish().map_err(failed)?;
    Ok(sealed)
}

fn decrypt(identity: &dyn age::Identity, sealed: &[u8]) -> Result<Vec<u8>, DecryptError> {
    let mut reader = Decryptor::new_buffered(sealed)?.decrypt(std::iter::once(identity))?;
    let mut bytes = Vec::with_capacity(sealed.len());
    reader.read_to_end(&mut bytes)?;
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;
    use std::time::Instant;

    use super::*;

    static GO: AtomicBool = AtomicBool::new(false);

    fn secret(text: &str) -> Secret {
        Secret::from(text.to_owned())
    }

    #[test]
    fn a_key_opens_with_its_passphrase_alone() {
        let key = Key::new(&secret("slip and sieve"), &GO).unwrap();
        let opened = |file: &[u8], passphrase| Key::open(file.to_vec(), &secret(passphrase), &GO).unwrap();
        let again = opened(&key.file, "slip and sieve").unwrap();
        let sealed = key.seal(b"a coat").unwrap();
        assert_eq!(again.unseal(&sealed).unwrap(), b"a coat");
        assert_eq!((again.name_of("ab"), again.tag("ab")), (key.name_of("ab"), key.tag("ab")));
        assert_ne!(key.name_of("ab"), key.name_of("cd"));
        assert_ne!(key.tag("ab"), key.tag("cd"));
        assert_eq!(key.tag("ab").len(), TAG);
        assert!(opened(&key.file, "slip and Sieve").is_none());
        assert!(opened(&key.file[..40], "slip and sieve").is_none());
        assert!(opened(b"nothing", "slip and sieve").is_none());
    }

    #[test]
    fn no_cut_or_flip_of_what_is_sealed_passes() {
        let identity = x25519::Identity::generate();
        let key = Key { identity, file: Vec::new() };
        for length in [0, 1, 65_535, 65_536, 65_537, 200_000] {
            let sealed = key.seal(&vec![7; length]).unwrap();
            assert_eq!(key.unseal(&sealed).unwrap().len(), length);
            assert!(key.unseal(&sealed[..sealed.len() - 1]).is_none());
        }
        let sealed = key.seal(b"a coat").unwrap();
        for at in 0..sealed.len() {
            let mut flipped = sealed.clone();
            flipped[at] ^= 1;
            assert!(key.unseal(&flipped).is_none(), "{at}");
        }
    }

    #[test]
    fn a_key_that_asks_for_much_is_never_stretched_for() {
        let head = |stanzas: &str| [MAGIC, stanzas.as_bytes(), b"\n--- mac\n"].concat();
        let stanza = |work: &str| format!("-> scrypt c2FsdHNhbHRzYWx0c2FsdA {work}\nAAAA");
        assert!(Key::is_one(&head(&stanza("16"))));
        for work in ["17", "18", "30", "63", "256", "99999999999999999999", "-1", "", "16 16"] {
            assert!(!Key::is_one(&head(&stanza(work))), "{work}");
        }
        assert!(!Key::is_one(&head(&[stanza("1"), stanza("1")].join("\n"))));
        assert!(!Key::is_one(&head(&"-> X25519 AAAA\nAAAA\n".repeat(2))));
        assert!(!Key::is_one(&[head(&stanza("16")), vec![0; MOST_KEY as usize]].concat()));
    }

    #[test]
    fn a_head_of_many_recipients_is_not_tried() {
        let key = Key { identity: x25519::Identity::generate(), file: Vec::new() };
        let recipients: Vec<_> = (0..40).map(|_| key.identity.to_public()).collect();
        let all = recipients.iter().map(|recipient| recipient as &dyn age::Recipient);
        let mut sealed = Vec::new();
        let mut writer = Encryptor::with_recipients(all).unwrap().wrap_output(&mut sealed).unwrap();
        writer.write_all(b"a coat").unwrap();
        writer.finish().unwrap();
        assert!(decrypt(&key.identity, &sealed).is_ok(), "age itself would go through them all");
        assert!(key.unseal(&sealed).is_none());
    }

    #[test]
    fn whoever_waits_for_a_key_is_let_go() {
        let stop = Arc::new(AtomicBool::new(false));
        let setter = Arc::clone(&stop);
        thread::spawn(move || {
            thread::sleep(Duration::from_millis(100));
            setter.store(true, Ordering::Relaxed);
        });
        let begun = Instant::now();
        let stopped = let_go(&stop, || thread::sleep(Duration::from_secs(60)));
        assert!(matches!(stopped, Err(RemoteError::Stopped)));
        assert!(begun.elapsed() < Duration::from_secs(30), "{:?}", begun.elapsed());
    }
}
