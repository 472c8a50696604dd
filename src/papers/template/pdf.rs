//! Writes a template as PDF at full size: spread over small sheets with a map before them, or on one
//! sheet as large as the drawing.

use miniz_oxide::deflate::compress_to_vec_zlib;
use pdf_writer::{Filter, Finish, Name, Pdf, Rect, Ref, TextStr};

use crate::papers::measure::{POINT_MM, clean};
use crate::words::{Language, in_language, language};

use super::canvas::{FONTS, pdf};
use super::model::{Extent, Layer, Template, TemplateError};
use super::sheet::Naming;
use super::tiling::{JoinMark, Plan, SheetPlace, TilePaper, Tiling};
use super::{map, sheet};

/// How hard the contents are packed, of 10: harder takes several times as long.
const LEVEL: u8 = 1;

struct Page {
    size_mm: (f64, f64),
    /// Packed.
    content: Vec<u8>,
}

impl Page {
    fn packed(size_mm: (f64, f64), content: &[u8]) -> Self {
        Self { size_mm, content: compress_to_vec_zlib(content, LEVEL) }
    }
}

/// The template over sheets of A4 or Letter; the first pages are a map of the sheets.
///
/// # Errors
///
/// When the template cannot be drawn, or takes too many sheets.
pub fn tiled(template: &Template, tiling: Tiling) -> Result<Vec<u8>, TemplateError> {
    let mut sheets = Sheets::of(template.clone(), tiling)?;
    while !sheets.step() {}
    Ok(sheets.file())
}

/// A template over sheets that is drawn page by page, so that whoever shows a page meanwhile need not wait for all.
pub struct Sheets {
    template: Template,
    layers: Vec<Layer>,
    plan: Plan,
    marks: Vec<JoinMark>,
    /// The sheets that are to be drawn, the last first.
    left: Vec<SheetPlace>,
    /// The map, until it is drawn: its paper, and the extent of the template.
    map: Option<(TilePaper, Extent)>,
    pages: Vec<Page>,
    /// What its words are in.
    language: Language,
}

impl Sheets {
    /// Plans the sheets, and draws nothing yet.
    ///
    /// # Errors
    ///
    /// When the template cannot be drawn, or takes too many sheets.
    pub fn of(template: Template, tiling: Tiling) -> Result<Self, TemplateError> {
        let plan = Plan::of(&template, tiling)?;
        let layers = template.drawn();
        let mut left: Vec<SheetPlace> = plan.sheets().collect();
        left.reverse();
        let marks = plan.marks();
        let map = Some((tiling.paper, template.extent()?));
        let (pages, language) = (Vec::new(), language());
        Ok(Self { template, layers, plan, marks, left, map, pages, language })
    }

    /// Draws the map, or the next sheet; whether that was the last.
    pub fn step(&mut self) -> bool {
        in_language(self.language, || self.drawn())
    }

    fn drawn(&mut self) -> bool {
        let Self { template, layers, plan, .. } = self;
        if let Some((paper, extent)) = self.map.take() {
            let contents = map::draw(template, layers, plan, paper, &extent);
            let page = |content: Vec<u8>| Page::packed(paper.size_mm(), &content);
            self.pages.extend(contents.into_iter().map(page));
        } else if let Some(place) = self.left.pop() {
            let count = plan.count();
            let naming = Naming::Tile { index: count - 1 - self.left.len(), count };
            let content = sheet::draw(template, layers, plan, place, &naming, &self.marks);
            self.pages.push(Page::packed(plan.page_mm, &content));
        }
        self.left.is_empty()
    }

    /// The pages that are drawn as a file.
    pub fn file(&self) -> Vec<u8> {
        document(&self.template.title, &self.pages, self.language)
    }
}

/// A page that shows all, then each template over its own sheets: one file for the printer.
///
/// # Errors
///
/// When one of them cannot be drawn, or takes too many sheets.
pub fn together(
    first: &Template,
    others: &[Template],
    tiling: Tiling,
) -> Result<Vec<u8>, TemplateError> {
    let mut pages = vec![whole(first)?];
    for template in others {
        let mut sheets = Sheets::of(template.clone(), tiling)?;
        while !sheets.step() {}
        pages.append(&mut sheets.pages);
    }
    Ok(document(&first.title, &pages, language()))
}

/// The template on one sheet as large as it, for a plotter.
///
/// # Errors
///
/// When the template cannot be drawn, or is too large for one sheet.
pub fn single(template: &Template) -> Result<Vec<u8>, TemplateError> {
    Ok(document(&template.title, &[whole(template)?], language()))
}

fn whole(template: &Template) -> Result<Page, TemplateError> {
    let plan = Plan::single(template)?;
    let place = SheetPlace { row: 0, column: 0 };
    let content = sheet::draw(template, &template.drawn(), &plan, place, &Naming::Whole, &[]);
    Ok(Page::packed(plan.page_mm, &content))
}

/// The pages as a file. It asks the reader's print window for no scaling.
fn document(title: &str, pages: &[Page], language: Language) -> Vec<u8> {
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
    root.lang(TextStr(language.code()));
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
        file.stream(content, &page.content).filter(Filter::FlateDecode);
    }
    file.finish()
}
