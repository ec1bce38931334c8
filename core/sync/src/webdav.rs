//! What a WebDAV server says that is in a folder (RFC 4918, PROPFIND).

use http::{Request, header};
use opendal::raw::{Operation, format_authorization_by_basic, percent_decode_path, percent_encode_path};
use opendal::{Buffer, Result};
use quick_xml::Reader;
use quick_xml::events::Event;
use url::Url;

use crate::transport::Refusal;

/// Asks for no more than is read.
const ASKED: &str = concat!(
    r#"<?xml version="1.0" encoding="utf-8"?><D:propfind xmlns:D="DAV:"><D:prop>"#,
    "<D:getcontentlength/><D:resourcetype/></D:prop></D:propfind>"
);
/// Elements within elements; an honest answer has seven.
const MOST_DEPTH: usize = 64;

/// A file or folder in a folder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Child {
    /// Its name, without slashes.
    pub(crate) name: String,
    /// The length of a file, bytes; `None` for a folder.
    pub(crate) size: Option<u64>,
}

/// A WebDAV server's folder that all paths begin in.
#[derive(Debug)]
pub(crate) struct Folder {
    /// Its address, without a slash at the end.
    pub(crate) address: String,
    /// The header that says who asks.
    pub(crate) authorization: Option<String>,
}

impl Folder {
    pub(crate) fn new(address: &str, user: &str, password: &str) -> Result<Folder> {
        let authorization = if user.is_empty() { None } else { Some(format_authorization_by_basic(user, password)?) };
        Ok(Folder { address: address.to_owned(), authorization })
    }

    fn address_of(&self, folder: &str) -> String {
        format!("{}/{}", self.address, percent_encode_path(folder))
    }

    /// Asks what is in `folder`, a path that ends in a slash.
    pub(crate) fn ask(&self, folder: &str) -> Result<Request<Buffer>> {
        let mut request = Request::builder().method("PROPFIND").uri(self.address_of(folder));
        request = request.header("Depth", "1").header(header::CONTENT_TYPE, "application/xml");
        if let Some(authorization) = &self.authorization {
            request = request.header(header::AUTHORIZATION, authorization);
        }
        // No request of another kind comes of what was typed, so it is none of the server's doing.
        let request = request.extension(Operation::List).body(Buffer::from(ASKED));
        request.map_err(|_| Refusal::Garbled.into())
    }

    /// What the answer says is in `folder`. What it says of other places is left out.
    ///
    /// # Errors
    /// When it is not well-formed, or is not about `folder`.
    pub(crate) fn read(&self, folder: &str, answer: &[u8]) -> Result<Vec<Child>, Refusal> {
        let here = Url::parse(&self.address_of(folder)).map_err(|_| Refusal::Garbled)?;
        let mut about_it = false;
        let mut children = Vec::new();
        for Said { address, size, folder } in read(answer).ok_or(Refusal::Garbled)? {
            let Some(name) = name_in(&here, &address) else { continue };
            if name.is_empty() {
                about_it = true;
            } else if folder {
                children.push(Child { name, size: None });
            } else {
                children.push(Child { name, size: Some(size.ok_or(Refusal::Garbled)?) });
            }
        }
        if about_it { Ok(children) } else { Err(Refusal::Garbled) }
    }
}

/// The name of what lies directly in the folder `here`, empty for that itself; `None` for what lies elsewhere.
fn name_in(here: &Url, address: &str) -> Option<String> {
    let url = here.join(address).ok().filter(|_| !address.is_empty())?;
    // Behind a proxy a server may not know by which scheme and port it is reached. Nothing is sent to this address.
    if url.host() != here.host() || !url.username().is_empty() || url.password().is_some() {
        return None;
    }
    let (path, folder) = (percent_decode_path(url.path()), percent_decode_path(here.path()));
    let name = match path.strip_prefix(&folder) {
        Some(name) => name.strip_suffix('/').unwrap_or(name),
        // The folder itself, without the slash at its end.
        None => return (folder.strip_suffix('/') == Some(&path)).then(String::new),
    };
    let is_name = !name.contains(['/', '\\', char::REPLACEMENT_CHARACTER]) && !name.contains(char::is_control);
    (is_name && name != "." && name != ".." && (!name.is_empty() || path == folder)).then(|| name.to_owned())
}

/// What an answer says of one address.
#[derive(Debug, Default, PartialEq, Eq)]
struct Said {
    address: String,
    size: Option<u64>,
    folder: bool,
}

/// All that an answer says; `None` where it is not well-formed. Entities are not expanded but for XML's own five.
fn read(answer: &[u8]) -> Option<Vec<Said>> {
    let text = std::str::from_utf8(answer).ok()?;
    let mut reader = Reader::from_str(text.trim_start_matches('\u{feff}'));
    let mut open: Vec<String> = Vec::new();
    let mut all = Vec::new();
    let (mut response, mut properties) = (Said::default(), Said::default());
    let mut good = true;
    let mut text = String::new();
    loop {
        match reader.read_event().ok()? {
            Event::Start(tag) => {
                let name = tag.local_name().as_ref().to_owned();
                match name.as_str() {
                    "response" => response = Said::default(),
                    "propstat" => (properties, good) = (Said::default(), true),
                    "collection" => properties.folder = true,
                    _ => {}
                }
                text.clear();
                open.push(name);
                if open.len() > MOST_DEPTH || open[0] != "multistatus" {
                    return None;
                }
            }
            Event::Empty(tag) => properties.folder |= tag.local_name().as_ref() == "collection",
            Event::Text(part) => text.push_str(&part),
            Event::CData(part) => text.push_str(&part),
            Event::GeneralRef(named) => text.push(match named.resolve_char_ref().ok()? {
                Some(char) => char,
                None => entity(&named)?,
            }),
            // The reader holds it against the tag it ends.
            Event::End(_) => {
                let name = open.pop()?;
                match (open.last().map(String::as_str), name.as_str()) {
                    (Some("response"), "href") => response.address = text.trim().to_owned(),
                    (Some("prop"), "getcontentlength") => properties.size = text.trim().parse().ok(),
                    // "HTTP/1.1 200 OK"
                    (Some("propstat"), "status") => good = text.split_whitespace().nth(1)?.starts_with('2'),
                    (Some("response"), "propstat") if good => {
                        response.size = properties.size.or(response.size);
                        response.folder |= properties.folder;
                    }
                    (Some("multistatus"), "response") => all.push(std::mem::take(&mut response)),
                    (None, _) => break,
                    _ => {}
                }
            }
            Event::Decl(_) | Event::Comment(_) | Event::PI(_) | Event::DocType(_) => {}
            Event::Eof => return None,
        }
    }
    Some(all)
}

fn entity(name: &str) -> Option<char> {
    Some(match name {
        "lt" => '<',
        "gt" => '>',
        "amp" => '&',
        "quot" => '"',
        "apos" => '\'',
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const FOLDER: &str = "<d:response><d:href>/dav/a%20b/</d:href><d:propstat><d:prop><d:resourcetype><d:collection/>\
        </d:resourcetype></d:prop><d:status>HTTP/1.1 200 OK</d:status></d:propstat></d:response>";

    fn answer(rest: &str) -> String {
        format!("<?xml version=\"1.0\"?>\n<d:multistatus xmlns:d=\"DAV:\">{FOLDER}{rest}</d:multistatus>\n")
    }

    fn read_there(answer: &str) -> Result<Vec<Child>, Refusal> {
        Folder::new("https://pots.example/dav", "", "").unwrap().read("a b/", answer.as_bytes())
    }

    #[test]
    fn files_and_folders_are_told_as_servers_tell_them() {
        let file = |address: &str| {
            format!(
                "<d:response><d:href>{address}</d:href><d:propstat><d:prop><d:quota/></d:prop><d:status>HTTP/1.1 404 No\
                 </d:status></d:propstat><d:propstat><d:prop><d:getcontentlength> 7 </d:getcontentlength><d:resourcetype/>\
                 </d:prop><d:status>HTTP/1.1 200 OK</d:status></d:propstat></d:response>"
            )
        };
        let child = |name: &str, size| Child { name: name.to_owned(), size };
        for (address, name) in [
            ("/dav/a%20b/c", "c"),
            ("https://pots.example/dav/a%20b/c", "c"),
            ("http://pots.example:8080/dav/a%20b/c", "c"),
            ("/dav/a%20b/%63", "c"),
            ("/dav/a%20b/c&amp;d&#x65;", "c&de"),
            ("<![CDATA[/dav/a%20b/c]]>", "c"),
            ("\n /dav/a%20b/gr%C3%BCn\n", "grün"),
        ] {
            assert_eq!(read_there(&answer(&file(address))), Ok(vec![child(name, Some(7))]), "{address}");
        }
        let inner = FOLDER.replace("a%20b/", "a%20b/c/");
        assert_eq!(read_there(&answer(&inner)), Ok(vec![child("c", None)]));
        // Some put no slash behind a folder.
        assert_eq!(read_there(&answer("").replace("a%20b/", "a%20b")), Ok(Vec::new()));
    }

    #[test]
    fn what_is_not_whole_is_no_answer() {
        let whole = answer("");
        for end in (0..whole.trim_end().len()).filter(|end| whole.is_char_boundary(*end)) {
            assert_eq!(read_there(&whole[..end]), Err(Refusal::Garbled), "{end}");
        }
        let wrong = [
            "<a/>".to_owned(),
            answer("").replace("/dav/", "/other/"),
            answer("&lol;"),
            answer("<d:response></d:propstat>"),
            answer(&"<a>".repeat(100_000)),
            answer("<d:response><d:href>/dav/a%20b/c</d:href></d:response>"),
        ];
        for wrong in wrong {
            assert_eq!(read_there(&wrong), Err(Refusal::Garbled), "{:.200}", wrong);
        }
    }
}
