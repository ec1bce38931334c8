//! A hash of all that crosses the boundary: uniffi's checksums do not cover records, so the shells compare this stamp with
//! the one that their generated code was made with.

use std::error::Error;
use std::fs;
use std::path::Path;

use quote::ToTokens;
use sha2::{Digest, Sha256};
use syn::visit_mut::VisitMut;
use syn::{Attribute, ImplItem, Item, ItemEnum, ItemStruct, ItemTrait, Signature};

/// Sixteen hexadecimal digits for what the source files below `folder` send across.
pub fn stamp(folder: &Path) -> Result<String, Box<dyn Error>> {
    let mut crossing = Vec::new();
    collect(folder, &mut crossing)?;
    // In one order, whatever the order of the files.
    crossing.sort();
    let hash = Sha256::digest(crossing.join("\n"));
    Ok(hash.iter().take(8).map(|byte| format!("{byte:02x}")).collect())
}

/// Adds what each source file below `folder` sends across the boundary, without its comments and its code.
fn collect(folder: &Path, crossing: &mut Vec<String>) -> Result<(), Box<dyn Error>> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            collect(&path, crossing)?;
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            for item in syn::parse_file(&fs::read_to_string(&path)?)?.items {
                crosses(item, crossing);
            }
        }
    }
    Ok(())
}

fn crosses(item: Item, crossing: &mut Vec<String>) {
    match &item {
        Item::Fn(item) if is_uniffi(&item.attrs) => crossing.push(signature(&item.sig)),
        Item::Impl(item) if is_uniffi(&item.attrs) => {
            crossing.extend(item.items.iter().filter_map(|item| match item {
                ImplItem::Fn(method) => Some(signature(&method.sig)),
                _ => None,
            }));
        }
        Item::Struct(ItemStruct { attrs, .. })
        | Item::Enum(ItemEnum { attrs, .. })
        | Item::Trait(ItemTrait { attrs, .. })
            if is_uniffi(attrs) =>
        {
            crossing.push(without_docs(item));
        }
        // The lists of `coded!`, and what uniffi's own macros declare.
        Item::Macro(_) => crossing.push(without_docs(item)),
        _ => {}
    }
}

fn is_uniffi(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| attribute.to_token_stream().to_string().contains("uniffi"))
}

fn signature(signature: &Signature) -> String {
    signature.to_token_stream().to_string()
}

/// The item as it is written, but for its comments, which are attributes here.
fn without_docs(mut item: Item) -> String {
    WithoutDocs.visit_item_mut(&mut item);
    item.to_token_stream().to_string()
}

struct WithoutDocs;

impl VisitMut for WithoutDocs {
    fn visit_attributes_mut(&mut self, attributes: &mut Vec<Attribute>) {
        attributes.retain(|attribute| !attribute.path().is_ident("doc"));
    }
}
