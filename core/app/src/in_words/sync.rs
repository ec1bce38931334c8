//! Why phones could not sync, or left something out, in words.

use super::Sentence;
use crate::messages::devices::another_phone;
use crate::messages::sync as say;
use laydown_sync::RemoteError;
use laydown_sync::http_client::NetworkError;

/// What is said of an error; `phone` is what the phone is called whose entries are missing, where it is about that.
pub(crate) fn remote_error(error: &RemoteError, phone: &str) -> String {
    match error {
        RemoteError::Network(network) => network.sentence(),
        RemoteError::NotEncrypted => say::plain_http(),
        RemoteError::WrongPassword => say::wrong_password(),
        RemoteError::WrongAddress => say::wrong_address(),
        RemoteError::NoFolder => say::no_folder(),
        RemoteError::Full => say::full(),
        RemoteError::NotAllowed => say::not_allowed(),
        RemoteError::WrongPassphrase { keys } => say::wrong_passphrase(*keys),
        RemoteError::NoPassphrase => say::no_passphrase(),
        RemoteError::StrangeFiles { files } => say::strange_files(*files),
        RemoteError::SealedFiles { files } => say::encrypted_files(*files),
        RemoteError::OlderThanLastTime => say::older_than_last_time(),
        RemoteError::LeftUnsealed { files } => say::left_open(*files),
        RemoteError::DamagedSegment(segment) => say::damaged_file(segment.sentence()),
        RemoteError::Newer => say::newer(),
        RemoteError::DamagedPhotograph { file } => say::damaged_photo(file),
        RemoteError::Missing { first, last, .. } if first == last => say::entry_missing(first, phone),
        RemoteError::Missing { first, last, .. } => say::entries_missing(first, last, phone),
        RemoteError::TooLong => say::file_too_long(),
        RemoteError::Redirected => say::redirected(),
        RemoteError::TooMany => say::too_many_files(),
        RemoteError::TooSlow => say::too_slow(),
        RemoteError::Refused(entries) => entries.sentence(),
        RemoteError::Stopped => say::stopped(),
        RemoteError::Store(error) => error.sentence(),
        RemoteError::Failed { .. } => say::failed(),
    }
}

impl Sentence for RemoteError {
    fn sentence(&self) -> String {
        remote_error(self, &another_phone())
    }
}

impl Sentence for NetworkError {
    fn sentence(&self) -> String {
        match self {
            NetworkError::NoNetwork => say::no_network(),
            NetworkError::UnknownHost => say::unknown_host(),
            NetworkError::Refused => say::no_answer(),
            NetworkError::TimedOut => say::timed_out(),
            NetworkError::CertificateDate => say::certificate_date(),
            NetworkError::CertificateHost => say::certificate_host(),
            NetworkError::Certificate => say::certificate(),
            NetworkError::Broken { .. } => say::broken(),
            NetworkError::Stopped => say::stopped(),
        }
    }
}
