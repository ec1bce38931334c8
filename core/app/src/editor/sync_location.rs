//! The editor of the place the sync location. What is secret is looked at here and never kept here.

use super::builder::{Ask, EditorBuilder, item};
use super::{EditContext, FieldKind, PendingWrite};
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
    builder.title = "Sync location".to_owned();
    builder.result(Note::plain("Fill this in the same way on each phone of the studio, then choose “Sync now” there."));
    let kind = saved.as_ref().map(|saved| match saved.at {
        SyncLocation::Folder { .. } => FOLDER,
        SyncLocation::WebDav { .. } => WEBDAV,
        SyncLocation::S3 { .. } => S3,
    });
    let kinds = vec![
        item(FOLDER, "A folder", "One that this phone opens and that others see too"),
        item(WEBDAV, "A WebDAV server", "A storage box, or a school's or a friend's server"),
        item(S3, "An S3 bucket", "Storage that is rented by the gigabyte"),
    ];
    let kind = builder.choice(Ask::new("kind", "Kind of location"), kind, FieldKind::Choice, kinds);
    let before = saved.as_ref().map(|saved| &saved.at);
    let at = match kind.as_deref() {
        Some(WEBDAV) => webdav(builder, before),
        Some(S3) => s3(builder, before),
        _ => folder(builder, before),
    };
    let sealed = builder.switch(
        Ask::new("sealed", "Encrypt with a passphrase").help(
            "Only someone who knows the passphrase can read the files. A lost passphrase cannot be recovered: write it down.",
        ),
        saved.as_ref().is_some_and(|saved| saved.sealed),
    );
    let passphrase = !sealed || {
        let given = saved.as_ref().is_some_and(|saved| saved.sealed);
        builder.secret(Ask::new("passphrase", "Passphrase").hint("A few words"), given, SHORTEST_PASSPHRASE)
    };
    let asks = is_locked(context.conn)? || saved.as_ref().is_some_and(|saved| saved.afresh);
    let afresh = asks
        && builder.switch(
            Ask::new("afresh", "Start afresh there").help(
                "Files there that your passphrase does not open stay, and are not read. Switch this on if they are not yours, or their passphrase is lost.",
            ),
            saved.as_ref().is_some_and(|saved| saved.afresh),
        );
    let photographs_wait = builder.switch(
        Ask::new("photographs_wait", "Photos only on networks that cost nothing"),
        saved.as_ref().is_none_or(|saved| saved.photographs_wait),
    );
    if sealed {
        builder.result(Note::plain(
            "Encryption does not hide how many files there are, how large they are, when they change, or how many phones you have.",
        ));
    } else {
        builder.result(Note::attention("Not encrypted: anyone who can open that location can read everything."));
    }
    let (Some(at), true) = (at, passphrase) else { return Ok(None) };
    let place = SyncConfig { at, sealed, photographs_wait, afresh };
    Ok(Some(PendingWrite {
        sentence: "Saved.".to_owned(),
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
    let ask =
        Ask::new(FOLDER, "Folder").help("A card, a stick, or a folder that another app keeps alike on several phones.");
    let (name, handle) = builder.folder(ask, saved)?;
    Some(SyncLocation::Folder { name, handle })
}

fn webdav(builder: &mut EditorBuilder<'_>, before: Option<&SyncLocation>) -> Option<SyncLocation> {
    let (saved_address, saved_user) = match before {
        Some(SyncLocation::WebDav { address, user }) => (Some(address.as_str()), Some(user.as_str())),
        _ => (None, None),
    };
    let address = address(builder, saved_address, "https://files.example.org/dav/studio");
    let user = builder.exact(Ask::new("user", "Name on the server"), saved_user);
    let at = address.zip(user).map(|(address, user)| SyncLocation::WebDav { address, user });
    // A password is for the one server that it was typed for.
    let given = at.as_ref().is_some_and(|at| before == Some(at));
    let password = builder.secret(Ask::new("password", "Password"), given, 1);
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
        builder.exact(Ask::new("region", "Region").hint("eu-central-1").help("As the server names it."), saved_region);
    let bucket = builder.exact(Ask::new("bucket", "Bucket"), saved_bucket);
    let folder = builder.exact_or_none(Ask::new("prefix", "Folder in it").hint("May stay empty"), saved_folder);
    let key = builder.exact(Ask::new("key", "Key"), saved_key);
    let same = address.as_deref() == saved_address && key.as_deref() == saved_key && saved.is_some();
    let secret = builder.secret(Ask::new("secret", "Secret of the key"), same, 1);
    let (address, region, bucket, folder, key) = (address?, region?, bucket?, folder?, key?);
    secret.then_some(SyncLocation::S3 { address, region, bucket, folder, key })
}

/// An address of the web, with `https://` before it where nothing is.
fn address(builder: &mut EditorBuilder<'_>, saved: Option<&str>, hint: &'static str) -> Option<String> {
    let typed = builder.exact(Ask::new("address", "Address").hint(hint), saved)?;
    let address = if typed.contains("://") { typed } else { format!("https://{typed}") };
    let (scheme, rest) = address.split_once("://")?;
    let host = rest.split('/').next().unwrap_or_default();
    let scheme = scheme.to_lowercase();
    let address = format!("{scheme}://{rest}");
    let refusal = if !matches!(scheme.as_str(), "https" | "http") {
        "The address begins with https://.".to_owned()
    } else if host.contains('@') {
        "The name and the password have fields of their own: leave them out here.".to_owned()
    } else {
        match check(&address) {
            Err(refused @ RemoteError::NotEncrypted) => refused.to_string(),
            Ok(()) if !address.contains(char::is_whitespace) && !address.contains(['?', '#']) => {
                if scheme == "http" {
                    builder.result(Note::warning(
                        "With http:// anyone on this network can read the password and the files. Use https:// wherever the server has it.",
                    ));
                }
                return Some(address);
            }
            _ => "This is no address of a folder. Copy it from where the server tells it.".to_owned(),
        }
    };
    builder.field_error("address", refusal);
    None
}
