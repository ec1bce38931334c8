//! Sealing files before they leave the phone, with age.
//!
//! A passphrase is stretched for about a second, which cannot be done for every file. So it opens one small file, `key.age`,
//! which holds an identity, and that opens the others. A device that comes new takes over the key that it finds; where two
//! came at once each has its own, and everyone opens both with the same passphrase.

use std::io::{Read, Write};

use age::secrecy::ExposeSecret;
use age::{DecryptError, Decryptor, Encryptor, scrypt, x25519};
use sha2::{Digest, Sha256};

use crate::{RemoteError, Secret};

/// What the name of a sealed file ends in.
pub(crate) const SEALED: &str = ".age";
/// scrypt's work: 2 to this, which takes 64 MB and about half a second on a phone.
const WORK: u8 = 16;
/// More than this is not tried, whatever a key's file asks for: 256 MB.
const MOST_WORK: u8 = 18;
/// The most bytes of a file that holds a key.
pub(crate) const MOST_KEY: u64 = 4_096;

/// An identity that opens sealed files, and the file it lies in.
pub(crate) struct Key {
    identity: x25519::Identity,
    /// As it lies on the shelf.
    pub(crate) file: Vec<u8>,
}

impl Key {
    /// A new key, sealed with `passphrase`.
    pub(crate) fn new(passphrase: &Secret) -> Result<Key, RemoteError> {
        let identity = x25519::Identity::generate();
        let mut recipient = scrypt::Recipient::new(passphrase.clone());
        recipient.set_work_factor(WORK);
        let file = encrypt(&recipient, identity.to_string().expose_secret().as_bytes())?;
        Ok(Key { identity, file })
    }

    /// The key in a file; `None` where it is none or damaged.
    ///
    /// # Errors
    /// Where `passphrase` does not open it.
    pub(crate) fn open(file: Vec<u8>, passphrase: &Secret) -> Result<Option<Key>, RemoteError> {
        let mut opens = scrypt::Identity::new(passphrase.clone());
        opens.set_max_work_factor(MOST_WORK);
        let text = match decrypt(&opens, &file) {
            Ok(text) => text,
            Err(DecryptError::DecryptionFailed | DecryptError::KeyDecryptionFailed | DecryptError::NoMatchingKeys) => {
                return Err(RemoteError::WrongPassphrase);
            }
            Err(_) => return Ok(None),
        };
        let identity = std::str::from_utf8(&text).ok().and_then(|text| text.parse().ok());
        Ok(identity.map(|identity| Key { identity, file }))
    }

    pub(crate) fn seal(&self, bytes: &[u8]) -> Result<Vec<u8>, RemoteError> {
        encrypt(&self.identity.to_public(), bytes)
    }

    /// What was sealed; `None` where it was sealed with another key, or is damaged.
    pub(crate) fn unseal(&self, sealed: &[u8]) -> Option<Vec<u8>> {
        decrypt(&self.identity, sealed).ok()
    }

    /// What a photograph is called among sealed files: its own name would tell whoever has the same picture that it is here.
    pub(crate) fn name_of(&self, sha256: &str) -> String {
        let secret = self.identity.to_string();
        let sum = Sha256::new().chain_update(secret.expose_secret()).chain_update(sha256).finalize();
        sum.iter().map(|byte| format!("{byte:02x}")).collect()
    }
}

/// The fewest bytes that sealing `plain` bytes gives: age's shortest head, then 16 bytes for each 64 KiB begun.
pub(crate) fn least_sealed(plain: u64) -> u64 {
    const HEAD: u64 = 184;
    HEAD + plain + 16 * plain.div_ceil(64 << 10).max(1)
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
    use super::*;

    fn secret(text: &str) -> Secret {
        Secret::from(text.to_owned())
    }

    #[test]
    fn a_key_opens_with_its_passphrase_alone() {
        let key = Key::new(&secret("slip and sieve")).unwrap();
        let again = Key::open(key.file.clone(), &secret("slip and sieve")).unwrap().unwrap();
        let sealed = key.seal(b"a coat").unwrap();
        assert_eq!(again.unseal(&sealed).unwrap(), b"a coat");
        assert_eq!(again.name_of("ab"), key.name_of("ab"));
        assert_ne!(key.name_of("ab"), key.name_of("cd"));
        assert!(matches!(Key::open(key.file.clone(), &secret("slip and Sieve")), Err(RemoteError::WrongPassphrase)));
        assert!(Key::open(key.file[..40].to_vec(), &secret("slip and sieve")).unwrap().is_none());
        assert!(Key::open(b"nothing".to_vec(), &secret("slip and sieve")).unwrap().is_none());
    }

    #[test]
    fn what_is_sealed_is_at_least_so_long_and_no_cut_or_flip_passes() {
        let identity = x25519::Identity::generate();
        let key = Key { identity, file: Vec::new() };
        for length in [0, 1, 65_535, 65_536, 65_537, 200_000] {
            let sealed = key.seal(&vec![7; length]).unwrap();
            assert!(sealed.len() as u64 >= least_sealed(length as u64), "{length}");
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
}
