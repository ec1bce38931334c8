//! The sheet of the place where the phones meet. What is secret is looked at here and never kept here.

use super::draft::{Ask, Draft, item};
use super::{Desk, FieldKind, Keeping};
use crate::meeting::{MeetingAt, MeetingPlace, choose_meeting_place, is_locked, meeting_place};
use crate::{Note, Result};
use laydown_store::this_device;

const FOLDER: &str = "folder";
const WEBDAV: &str = "webdav";
const S3: &str = "s3";
/// The fewest letters of a passphrase: whoever has the files can try as many as they like.
const SHORTEST_PASSPHRASE: usize = 8;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let kept = meeting_place(desk.conn)?;
    draft.title = "Where the phones meet".to_owned();
    draft.result(Note::plain("Fill this in alike on each phone of the studio, and then choose “Agree now” there."));
    let kind = kept.as_ref().map(|kept| match kept.at {
        MeetingAt::Folder { .. } => FOLDER,
        MeetingAt::WebDav { .. } => WEBDAV,
        MeetingAt::S3 { .. } => S3,
    });
    let kinds = vec![
        item(FOLDER, "A folder", "One that this phone opens and that others see too"),
        item(WEBDAV, "A WebDAV server", "A storage box, or a school's or a friend's server"),
        item(S3, "An S3 bucket", "Storage that is rented by the gigabyte"),
    ];
    let kind = draft.choice(Ask::new("kind", "What kind of place"), kind, FieldKind::Choice, kinds);
    let before = kept.as_ref().map(|kept| &kept.at);
    let at = match kind.as_deref() {
        Some(WEBDAV) => webdav(draft, before),
        Some(S3) => s3(draft, before),
        _ => folder(draft, before),
    };
    let sealed = draft.switch(
        Ask::new("sealed", "Seal everything with a passphrase").help(
            "Then only who knows the passphrase can read what lies there. Nobody can bring it back: write it down.",
        ),
        kept.as_ref().is_some_and(|kept| kept.sealed),
    );
    let passphrase = !sealed || {
        let given = kept.as_ref().is_some_and(|kept| kept.sealed);
        draft.secret(Ask::new("passphrase", "Passphrase").hint("A few words"), given, SHORTEST_PASSPHRASE)
    };
    let asks = is_locked(desk.conn)? || kept.as_ref().is_some_and(|kept| kept.afresh);
    let afresh = asks
        && draft.switch(
            Ask::new("afresh", "Start afresh there").help(
                "Files there that your passphrase does not open stay, and are not read. Switch this on if they are not yours, or their passphrase is lost.",
            ),
            kept.as_ref().is_some_and(|kept| kept.afresh),
        );
    let photographs_wait = draft.switch(
        Ask::new("photographs_wait", "Photographs only where the network costs nothing"),
        kept.as_ref().is_none_or(|kept| kept.photographs_wait),
    );
    if sealed {
        draft.result(Note::plain(
            "Encryption does not hide how many files there are, how large they are, when they change, or how many phones you have.",
        ));
    } else {
        draft.result(Note::attention("Not sealed: whoever can look into that place can read everything."));
    }
    let (Some(at), true) = (at, passphrase) else { return Ok(None) };
    let place = MeetingPlace { at, sealed, photographs_wait, afresh };
    Ok(Some(Keeping {
        sentence: "Kept.".to_owned(),
        write: Box::new(move |tx| {
            choose_meeting_place(tx, &place)?;
            Ok(this_device(tx.conn())?.0)
        }),
    }))
}

fn folder(draft: &mut Draft<'_>, before: Option<&MeetingAt>) -> Option<MeetingAt> {
    let kept = match before {
        Some(MeetingAt::Folder { name, handle }) => Some(format!("{name}\n{handle}")),
        _ => None,
    };
    let ask =
        Ask::new(FOLDER, "Folder").help("A card, a stick, or a folder that another app keeps alike on several phones.");
    let (name, handle) = draft.folder(ask, kept)?;
    Some(MeetingAt::Folder { name, handle })
}

fn webdav(draft: &mut Draft<'_>, before: Option<&MeetingAt>) -> Option<MeetingAt> {
    let (kept_address, kept_user) = match before {
        Some(MeetingAt::WebDav { address, user }) => (Some(address.as_str()), Some(user.as_str())),
        _ => (None, None),
    };
    let address = address(draft, kept_address, "https://files.example.org/dav/studio");
    let user = draft.exact(Ask::new("user", "Name on the server"), kept_user);
    let at = address.zip(user).map(|(address, user)| MeetingAt::WebDav { address, user });
    // A password is for the one server that it was typed for.
    let given = at.as_ref().is_some_and(|at| before == Some(at));
    let password = draft.secret(Ask::new("password", "Password"), given, 1);
    at.filter(|_| password)
}

fn s3(draft: &mut Draft<'_>, before: Option<&MeetingAt>) -> Option<MeetingAt> {
    let kept = match before {
        Some(MeetingAt::S3 { address, region, bucket, folder, key }) => Some([address, region, bucket, folder, key]),
        _ => None,
    };
    let [kept_address, kept_region, kept_bucket, kept_folder, kept_key] = match kept {
        Some(kept) => kept.map(|text| Some(text.as_str())),
        None => [None; 5],
    };
    let address = address(draft, kept_address, "https://s3.example.org");
    let region =
        draft.exact(Ask::new("region", "Region").hint("eu-central-1").help("As the server names it."), kept_region);
    let bucket = draft.exact(Ask::new("bucket", "Bucket"), kept_bucket);
    let folder = draft.exact_or_none(Ask::new("prefix", "Folder in it").hint("May stay empty"), kept_folder);
    let key = draft.exact(Ask::new("key", "Key"), kept_key);
    let same = address.as_deref() == kept_address && key.as_deref() == kept_key && kept.is_some();
    let secret = draft.secret(Ask::new("secret", "Secret of the key"), same, 1);
    let (address, region, bucket, folder, key) = (address?, region?, bucket?, folder?, key?);
    secret.then_some(MeetingAt::S3 { address, region, bucket, folder, key })
}

/// An address of the web, with `https://` before it where nothing is.
fn address(draft: &mut Draft<'_>, kept: Option<&str>, hint: &'static str) -> Option<String> {
    let typed = draft.exact(Ask::new("address", "Address").hint(hint), kept)?;
    let address = if typed.contains("://") { typed } else { format!("https://{typed}") };
    let (scheme, rest) = address.split_once("://")?;
    let host = rest.split('/').next().unwrap_or_default();
    let scheme = scheme.to_lowercase();
    let refusal = if !matches!(scheme.as_str(), "https" | "http") {
        "The address begins with https://."
    } else if host.contains('@') {
        "The name and the password have fields of their own: leave them out here."
    } else if host.is_empty() || address.contains(char::is_whitespace) || address.contains(['?', '#']) {
        "This is no address of a folder. Copy it from where the server tells it."
    } else {
        if scheme == "http" {
            draft.result(Note::warning(
                "With http:// anyone on the way can read the password. Use https:// wherever the server has it.",
            ));
        }
        return Some(format!("{scheme}://{rest}"));
    };
    draft.refuse("address", refusal);
    None
}
