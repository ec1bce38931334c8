//! The editor of the sync location. What is secret is looked at here and never kept here.

use super::builder::{Ask, EditorBuilder, item};
use super::{EditContext, FieldKind, PendingWrite};
use crate::messages::editor_sync_location as say;
use crate::messages::sync::plain_http;
use crate::sync::{SyncConfig, SyncLocation, choose_sync_location, is_locked, sync_config};
use crate::{Note, Result};
use laydown_store::this_device;
use laydown_sync::RemoteError;
use laydown_sync::address::check;

const FOLDER: &str = "folder";
const WEBDAV: &str = "webdav";
const S3: &str = "s3";
/// The fewest letters of a passphrase: whoever has the files can try as many as they like.
const SHORTEST_PASSPHRASE: usize = 8;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let saved = sync_config(context.conn)?;
    builder.title = say::title();
    builder.result(Note::plain(say::fill_in_alike()));
    let kind = saved.as_ref().map(|saved| match saved.at {
        SyncLocation::Folder { .. } => FOLDER,
        SyncLocation::WebDav { .. } => WEBDAV,
        SyncLocation::S3 { .. } => S3,
    });
    let kinds = vec![
        item(FOLDER, say::folder(), say::folder_detail()),
        item(WEBDAV, say::webdav(), say::webdav_detail()),
        item(S3, say::s3(), say::s3_detail()),
    ];
    let kind = builder.choice(Ask::new("kind", say::kind()), kind, FieldKind::Choice, kinds);
    let before = saved.as_ref().map(|saved| &saved.at);
    let at = match kind.as_deref() {
        Some(WEBDAV) => webdav(builder, before),
        Some(S3) => s3(builder, before),
        _ => folder(builder, before),
    };
    let sealed = builder.switch(
        Ask::new("sealed", say::encrypt()).help(say::encrypt_help()),
        saved.as_ref().is_some_and(|saved| saved.sealed),
    );
    let passphrase = !sealed || {
        let given = saved.as_ref().is_some_and(|saved| saved.sealed);
        builder.secret(
            Ask::new("passphrase", say::passphrase()).hint(say::passphrase_hint()),
            given,
            SHORTEST_PASSPHRASE,
        )
    };
    let asks = is_locked(context.conn)? || saved.as_ref().is_some_and(|saved| saved.afresh);
    let afresh = asks
        && builder.switch(
            Ask::new("afresh", say::start_afresh()).help(say::start_afresh_help()),
            saved.as_ref().is_some_and(|saved| saved.afresh),
        );
    let photographs_wait = builder.switch(
        Ask::new("photographs_wait", say::photos_wait()),
        saved.as_ref().is_none_or(|saved| saved.photographs_wait),
    );
    if sealed {
        builder.result(Note::plain(say::not_hidden()));
    } else {
        builder.result(Note::attention(say::not_encrypted()));
    }
    let (Some(at), true) = (at, passphrase) else { return Ok(None) };
    let place = SyncConfig { at, sealed, photographs_wait, afresh };
    Ok(Some(PendingWrite {
        sentence: crate::messages::editor::saved(),
        write: Box::new(move |tx| {
            choose_sync_location(tx, &place)?;
            Ok(this_device(tx.conn())?.0)
        }),
    }))
}

fn folder(builder: &mut EditorBuilder<'_>, before: Option<&SyncLocation>) -> Option<SyncLocation> {
    let saved = match before {
        Some(SyncLocation::Folder { name, handle }) => Some(format!("{name}\n{handle}")),
        _ => None,
    };
    let ask = Ask::new(FOLDER, say::folder_label()).help(say::folder_help());
    let (name, handle) = builder.folder(ask, saved)?;
    Some(SyncLocation::Folder { name, handle })
}

fn webdav(builder: &mut EditorBuilder<'_>, before: Option<&SyncLocation>) -> Option<SyncLocation> {
    let (saved_address, saved_user) = match before {
        Some(SyncLocation::WebDav { address, user }) => (Some(address.as_str()), Some(user.as_str())),
        _ => (None, None),
    };
    let address = address(builder, saved_address, "https://files.example.org/dav/studio");
    let user = builder.exact(Ask::new("user", say::user()), saved_user);
    let at = address.zip(user).map(|(address, user)| SyncLocation::WebDav { address, user });
    // A password is for the one server that it was typed for.
    let given = at.as_ref().is_some_and(|at| before == Some(at));
    let password = builder.secret(Ask::new("password", say::password()), given, 1);
    at.filter(|_| password)
}

fn s3(builder: &mut EditorBuilder<'_>, before: Option<&SyncLocation>) -> Option<SyncLocation> {
    let saved = match before {
        Some(SyncLocation::S3 { address, region, bucket, folder, key }) => Some([address, region, bucket, folder, key]),
        _ => None,
    };
    let [saved_address, saved_region, saved_bucket, saved_folder, saved_key] = match saved {
        Some(saved) => saved.map(|text| Some(text.as_str())),
        None => [None; 5],
    };
    let address = address(builder, saved_address, "https://s3.example.org");
    let region =
        builder.exact(Ask::new("region", say::region()).hint("eu-central-1").help(say::region_help()), saved_region);
    let bucket = builder.exact(Ask::new("bucket", say::bucket()), saved_bucket);
    let folder =
        builder.exact_or_none(Ask::new("prefix", say::bucket_folder()).hint(say::may_stay_empty()), saved_folder);
    let key = builder.exact(Ask::new("key", say::key()), saved_key);
    let same = address.as_deref() == saved_address && key.as_deref() == saved_key && saved.is_some();
    let secret = builder.secret(Ask::new("secret", say::secret()), same, 1);
    let (address, region, bucket, folder, key) = (address?, region?, bucket?, folder?, key?);
    secret.then_some(SyncLocation::S3 { address, region, bucket, folder, key })
}

/// An address of the web, with `https://` before it where nothing is.
fn address(builder: &mut EditorBuilder<'_>, saved: Option<&str>, hint: &'static str) -> Option<String> {
    let typed = builder.exact(Ask::new("address", say::address()).hint(hint), saved)?;
    let address = if typed.contains("://") { typed } else { format!("https://{typed}") };
    let (scheme, rest) = address.split_once("://")?;
    let host = rest.split('/').next().unwrap_or_default();
    let scheme = scheme.to_lowercase();
    let address = format!("{scheme}://{rest}");
    let refusal = if !matches!(scheme.as_str(), "https" | "http") {
        say::address_https()
    } else if host.contains('@') {
        say::address_with_name()
    } else {
        match check(&address) {
            Err(RemoteError::NotEncrypted) => plain_http(),
            Ok(()) if !address.contains(char::is_whitespace) && !address.contains(['?', '#']) => {
                if scheme == "http" {
                    builder.result(Note::warning(say::address_http()));
                }
                return Some(address);
            }
            _ => say::address_no_folder(),
        }
    };
    builder.field_error("address", refusal);
    None
}
