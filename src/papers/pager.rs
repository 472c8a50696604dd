//! Lays the parts of a sheet on pages, by the measures of [`layout`](super::layout), and not in the browser: the card
//! and the order list break their pages here.

use super::layout::{
    CELL_PAD_MM, FACT_GAP_MM, GAP_MM, LAST_PAD_MM, RUNNING_MM, TABLE_HEAD_MM, TITLE_MM,
    TITLES_PT_MM, TYPE_PT, fact_widths, heading_mm, lines_mm, paragraph_mm, row_mm,
};
use super::measure::{POINT_MM, wrap};
use super::sheet::{Block, Fact, Heading, Page, Paper, Table};
use crate::words::papers as say;

/// Width of a spaced capital over the size of the type, on the average of a few words. Helvetica, from memory.
const CAPITAL_EM: f64 = 0.8;
/// The title leaves at least so much for the kind of the sheet.
const LEAST_KIND_MM: f64 = 35.0;
/// Lines that a cell may have; only a hostile text needs more.
pub(super) const MOST_CELL_LINES: usize = 12;

/// Pages that are being filled, from the top down.
pub(super) struct Pager {
    running: String,
    /// The height of a page.
    whole: f64,
    /// What is left of the last page.
    room: f64,
    /// Whether the last page holds anything besides the words that every later page opens with.
    begun: bool,
    pages: Vec<Page>,
}

impl Pager {
    /// Pages of a height, the first of which opens with a heading and the others with the running words.
    pub(super) fn new(whole: f64, heading: Heading, running: String) -> Self {
        let room = whole - heading_mm(&heading);
        let page = Page { blocks: vec![Block::Heading(heading)], ..Page::default() };
        Self { running, whole, room, begun: true, pages: vec![page] }
    }

    /// Turns the page where there is no room for what has this height; an empty page is not turned.
    pub(super) fn keep(&mut self, height: f64) {
        if self.room >= height || !self.begun {
            return;
        }
        let blocks = vec![Block::Running(self.running.clone())];
        self.pages.push(Page { blocks, ..Page::default() });
        self.room = self.whole - RUNNING_MM;
        self.begun = false;
    }

    /// Puts a part on the last page.
    pub(super) fn put(&mut self, block: Block, height: f64) {
        self.room -= height;
        self.begun = true;
        if let Some(page) = self.pages.last_mut() {
            page.blocks.push(block);
        }
    }

    /// A heading within the sheet, on a page where what follows it has room too.
    pub(super) fn title(&mut self, words: &str, next: f64) {
        self.keep(TITLE_MM + next);
        self.put(Block::Title(words.to_owned()), TITLE_MM);
    }

    /// A table over as many pages as it needs, with a title over each part of it, if it has one, and a legend below.
    pub(super) fn table(&mut self, title: &str, table: &Table, legend: &[String]) {
        let (mut words, mut rest) = (title.to_owned(), &table.rows[..]);
        let below = paragraph_mm(legend.len());
        let frame = TABLE_HEAD_MM + GAP_MM + below;
        while let Some(first) = rest.first() {
            let mut height = frame + row_mm(first, table.spacing);
            if words.is_empty() {
                self.keep(height);
            } else {
                self.title(&words, height);
                words = say::continued(&title);
            }
            // A page takes at least one row, so that this comes to an end.
            let mut count = 1;
            while let Some(next) = rest.get(count) {
                let taller = height + row_mm(next, table.spacing);
                if taller > self.room {
                    break;
                }
                (height, count) = (taller, count + 1);
            }
            let (here, later) = rest.split_at(count);
            let part = Table { rows: here.to_vec(), columns: table.columns.clone(), ..*table };
            self.put(Block::Table(part), height - below);
            if !legend.is_empty() {
                self.put(Block::Legend(legend.to_vec()), below);
            }
            rest = later;
        }
    }

    /// Lines of text, over several pages where they need them.
    pub(super) fn lines(&mut self, lines: &[String], block: fn(Vec<String>) -> Block) {
        let mut rest = lines;
        while !rest.is_empty() {
            self.keep(paragraph_mm(1));
            let fits = |count: &usize| lines_mm(*count) + GAP_MM <= self.room;
            let count = (1..=rest.len()).take_while(fits).last().unwrap_or(1);
            let (here, later) = rest.split_at(count);
            self.put(block(here.to_vec()), paragraph_mm(count));
            rest = later;
        }
    }

    /// The pages, numbered where there is more than one.
    pub(super) fn finish(mut self) -> Vec<Page> {
        let count = self.pages.len();
        if count > 1 {
            for (index, page) in self.pages.iter_mut().enumerate() {
                page.page_number = say::page(&(index + 1), &count);
            }
        }
        self.pages
    }
}

/// What opens a sheet: what kind of sheet it is, the instrument and facts about it.
pub(super) fn heading(
    kind: &'static str,
    title: &str,
    facts: impl IntoIterator<Item = (&'static str, String)>,
    paper: Paper,
) -> Heading {
    let widths = fact_widths(paper);
    let fact = |((label, words), width): ((_, String), &f64)| {
        // Bold type is a little wider.
        Fact { label, lines: wrap(&words, (width - FACT_GAP_MM) * 0.94, TYPE_PT, 3) }
    };
    // The kind of sheet stands at the right of the title.
    let room = paper.inside_mm().0 - kind_mm(kind);
    let set = |(size, _): (f64, f64)| wrap(title, room, size, 2);
    let long_title = set(TITLES_PT_MM[0]).len() > 1;
    Heading {
        kind,
        title: set(TITLES_PT_MM[usize::from(long_title)]),
        long_title,
        facts: facts.into_iter().zip(widths.iter().cycle()).map(fact).collect(),
        in_a_row: widths.len(),
    }
}

/// What the kind of a sheet takes beside its title: it is set in spaced capitals.
fn kind_mm(kind: &str) -> f64 {
    let signs = f64::from(u32::try_from(kind.chars().count()).unwrap_or(u32::MAX));
    (CAPITAL_EM * signs * TYPE_PT * POINT_MM + FACT_GAP_MM).max(LEAST_KIND_MM)
}

/// The words of a cell in lines, given the widths of the columns and the place of its own.
pub(super) fn cell(words: &str, widths: &[f64], index: usize) -> Vec<String> {
    let before = if index + 1 == widths.len() { LAST_PAD_MM } else { CELL_PAD_MM };
    wrap(words, widths[index] - before - CELL_PAD_MM, TYPE_PT, MOST_CELL_LINES)
}
