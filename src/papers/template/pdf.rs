//! Writes a template as PDF at full size: spread over small sheets with a map before them, or on one
//! sheet as large as the drawing.

use miniz_oxide::deflate::compress_to_vec_zlib;
use pdf_writer::{Filter, Finish, Name, Pdf, Rect, Ref, TextStr};

use crate::papers::measure::{POINT_MM, clean};

use super::canvas::{FONTS, pdf};
use super::model::{Template, TemplateError};
use super::sheet::Naming;
use super::tiling::{Plan, SheetPlace, Tiling};
use super::{map, sheet};

/// How hard the contents are packed, of 10: harder takes several times as long.
const LEVEL: u8 = 1;

struct Page {
    size_mm: (f64, f64),
    content: Vec<u8>,
}

/// The template over sheets of A4 or Letter; the first pages are a map of the sheets.
///
/// # Errors
///
/// When the template cannot be drawn, or takes too many sheets.
pub fn tiled(template: &Template, tiling: Tiling) -> Result<Vec<u8>, TemplateError> {
    let plan = Plan::of(template, tiling)?;
    let extent = template.extent()?;
    let layers = template.drawn();
    let size_mm = tiling.paper.size_mm();
    let contents = map::draw(template, &layers, &plan, tiling.paper, &extent);
    let mut pages: Vec<Page> =
        contents.into_iter().map(|content| Page { size_mm, content }).collect();
    let marks = plan.marks();
    let count = plan.count();
    for (index, place) in plan.sheets().enumerate() {
        let naming = Naming::Tile { index, count };
        let content = sheet::draw(template, &layers, &plan, place, &naming, &marks);
        pages.push(Page { size_mm: plan.page_mm, content });
    }
    Ok(document(&template.title, &pages))
}

/// The template on one sheet as large as it, for a plotter.
///
/// # Errors
///
/// When the template cannot be drawn, or is too large for one sheet.
pub fn single(template: &Template) -> Result<Vec<u8>, TemplateError> {
    let plan = Plan::single(template)?;
    let place = SheetPlace { row: 0, column: 0 };
    let content = sheet::draw(template, &template.drawn(), &plan, place, &Naming::Whole, &[]);
    Ok(document(&template.title, &[Page { size_mm: plan.page_mm, content }]))
}

/// The pages as a file. It asks the reader's print window for no scaling.
fn document(title: &str, pages: &[Page]) -> Vec<u8> {
    let mut next = 0;
    let mut fresh = || {
        next += 1;
        Ref::new(next)
    };
    let (catalog, tree, about) = (fresh(), fresh(), fresh());
    let fonts = [fresh(), fresh()];
    let ids: Vec<(Ref, Ref)> = pages.iter().map(|_| (fresh(), fresh())).collect();
    let mut file = Pdf::new();
    let mut root = file.catalog(catalog);
    root.pages(tree);
    root.lang(TextStr("en"));
    root.viewer_preferences().display_doc_title(true).pair(Name(b"PrintScaling"), Name(b"None"));
    root.finish();
    file.document_info(about).title(TextStr(&clean(title)));
    let count = i32::try_from(pages.len()).unwrap_or(i32::MAX);
    file.pages(tree).kids(ids.iter().map(|(page, _)| *page)).count(count);
    for (id, (_, name)) in fonts.into_iter().zip(FONTS) {
        file.type1_font(id).base_font(name).encoding_predefined(Name(b"WinAnsiEncoding"));
    }
    for (page, (id, content)) in pages.iter().zip(ids) {
        let (wide, high) = (pdf(page.size_mm.0 / POINT_MM), pdf(page.size_mm.1 / POINT_MM));
        let mut written = file.page(id);
        written.parent(tree).media_box(Rect::new(0.0, 0.0, wide, high)).contents(content);
        let mut resources = written.resources();
        let mut named = resources.fonts();
        for (font, (name, _)) in fonts.into_iter().zip(FONTS) {
            named.pair(name, font);
        }
        named.finish();
        resources.finish();
        written.finish();
        let packed = compress_to_vec_zlib(&page.content, LEVEL);
        file.stream(content, &packed).filter(Filter::FlateDecode);
    }
    file.finish()
}
