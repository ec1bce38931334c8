//! Pages that a shell painted, bound into one PDF (ISO 32000-1): the platforms write such a file each in their own way, and
//! only some can be tested; so the core writes it, the same on all.

use std::io::Cursor;
use std::path::{Path, PathBuf};

use image::{ColorType, ImageDecoder, ImageFormat, ImageReader};
use pdf_writer::{Content, Filter, Finish, Name, Pdf, Rect, Ref, TextStr};

use crate::messages::contact_sheet as say;
use crate::{Result, Studio, StudioError};
use laydown_store::{StoreError, whole_file};

/// A4 in points of 1/72 inch: 210 by 297 mm (ISO 216).
const A4: Rect = Rect { x1: 0.0, y1: 0.0, x2: 595.276, y2: 841.89 };
const PICTURE: Name<'static> = Name(b"page");

#[uniffi::export]
impl Studio {
    /// Writes `pages`, JPEG files of A4's shape, into one PDF at `into`, which is there whole or not at all.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when a page is no JPEG in colour; [`StudioError::Full`] or [`StudioError::Unreadable`] when
    /// a file cannot be read or written.
    pub fn write_pdf(&self, title: &str, pages: &[PathBuf], into: &Path) -> Result<()> {
        let pages = pages.iter().map(|page| Page::read(page)).collect::<Result<Vec<_>>>()?;
        whole_file(into, &bound(title, &pages)).map_err(StoreError::from)?;
        Ok(())
    }
}

/// A page as it was painted.
struct Page {
    jpeg: Vec<u8>,
    width: i32,
    height: i32,
}

impl Page {
    fn read(file: &Path) -> Result<Page> {
        let unusable = || StudioError::refused("page", say::page_not_painted());
        let jpeg = std::fs::read(file).map_err(StoreError::from)?;
        let decoder = ImageReader::with_format(Cursor::new(&jpeg), ImageFormat::Jpeg).into_decoder();
        let decoder = decoder.map_err(|_| unusable())?;
        if decoder.color_type() != ColorType::Rgb8 {
            return Err(unusable());
        }
        let (width, height) = decoder.dimensions();
        let size = |pixels: u32| i32::try_from(pixels).map_err(|_| unusable());
        let (width, height) = (size(width)?, size(height)?);
        drop(decoder);
        Ok(Page { jpeg, width, height })
    }
}

fn bound(title: &str, pages: &[Page]) -> Vec<u8> {
    let (catalog, tree, info) = (Ref::new(1), Ref::new(2), Ref::new(3));
    // A page's three parts have numbers in a row.
    let ids: Vec<[Ref; 3]> =
        (1..).take(pages.len()).map(|page| [0, 1, 2].map(|part| Ref::new(page * 3 + 1 + part))).collect();

    let mut pdf = Pdf::new();
    pdf.catalog(catalog).pages(tree);
    pdf.document_info(info).title(TextStr(title));
    pdf.pages(tree).kids(ids.iter().map(|[page, ..]| *page)).count(i32::try_from(pages.len()).unwrap_or(i32::MAX));
    for (painted, [page, content, picture]) in pages.iter().zip(&ids) {
        let mut editor = pdf.page(*page);
        editor.media_box(A4).parent(tree).contents(*content);
        editor.resources().x_objects().pair(PICTURE, *picture);
        editor.finish();

        let mut drawn = Content::new();
        // The unit square of the picture, drawn out over the whole page.
        drawn.transform([A4.x2, 0.0, 0.0, A4.y2, 0.0, 0.0]).x_object(PICTURE);
        pdf.stream(*content, &drawn.finish());

        let mut image = pdf.image_xobject(*picture, &painted.jpeg);
        image.filter(Filter::DctDecode);
        image.width(painted.width).height(painted.height).bits_per_component(8);
        image.color_space().device_rgb();
    }
    pdf.finish()
}
