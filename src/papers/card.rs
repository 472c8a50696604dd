//! The stringing card: what the owner needs to order and fit the right string years later.
//!
//! Its pages break here, by the measures of [`layout`](super::layout), and not in the browser.

use crate::design::document::Design;
use crate::engine::analysis::Analysis;

use super::code::{Code, design_mark};
use super::layout::{
    CELL_PAD_MM, CODE_WIDTHS_MM, FACT_GAP_MM, FOOT_MM, GAP_MM, LAST_PAD_MM, RESERVE_MM, RUNNING_MM,
    SPACINGS_MM, STEPS_GAP_MM, TABLE_HEAD_MM, TITLES_PT_MM, TYPE_PT, closing_mm, fact_widths,
    heading_mm, paragraph_mm, row_mm, steps_mm, text_width_mm, widths,
};
use super::measure::{clean, width_mm, wrap};
use super::rows::{StringWords, Strings, columns, strings};
use super::sheet::{Block, Closing, Fact, Heading, Page, Paper, Row, Sheet, Table};
use super::words::{
    CAPTION, CAUTIONS, CAUTIONS_TITLE, DASH, DASH_NOTE, STEPS, STEPS_TITLE, facts, no_code, title,
};

/// Lines that a cell may have; only a hostile text needs more.
const MOST_CELL_LINES: usize = 12;
/// Lines that the legend may have; only a hostile text needs more.
const MOST_LEGEND_LINES: usize = 5;
/// Lines of remarks, the most first, that are tried.
const REMARK_LINES: [usize; 7] = [16, 8, 4, 3, 2, 1, 0];

/// The stringing card of a design. `link` opens the design in a browser; it is printed as a code.
pub fn card(design: &Design, analysis: &Analysis, link: &str, paper: Paper) -> Sheet {
    let mark = design_mark(link);
    let title = title(design);
    let columns = columns(design.units.length);
    let strings = strings(design, analysis);
    let last_width = last_width(&strings.rows);
    let widths = widths(paper, design.units.length, CODE_WIDTHS_MM[last_width]);
    let heading = heading(design, analysis, &title, &mark, paper);
    let draft = Draft {
        paper,
        legend: legend(&strings, &heading, paper),
        heading,
        running: running(design, &title, &mark, paper),
        table: Table {
            columns,
            rows: rows(strings.rows, &widths),
            marks: true,
            spacing: 0,
            last_width,
        },
        remarks: remarks(design, paper),
        closing: closing(link, &mark, paper),
    };
    Sheet { paper, title: format!("Stringing card: {title}"), pages: draft.pages() }
}

/// The parts of a card, before they are laid on pages.
struct Draft {
    paper: Paper,
    legend: Vec<String>,
    heading: Heading,
    running: String,
    table: Table,
    remarks: Vec<String>,
    closing: Closing,
}

/// Where the pages break: the rows of each page. The last one also holds the closing part.
type Breaks = Vec<std::ops::Range<usize>>;

impl Draft {
    /// The fewest pages; among these the most remarks; among these the widest spacing.
    fn pages(self) -> Vec<Page> {
        let tightest = SPACINGS_MM.len() - 1;
        let fewest = self.breaks(tightest, 0).len();
        let tries = REMARK_LINES.iter().flat_map(|&most| {
            let lines = self.remarks.len().min(most);
            (0..SPACINGS_MM.len()).map(move |spacing| (lines, spacing))
        });
        let (lines, spacing) = tries
            .into_iter()
            .find(|&(lines, spacing)| self.breaks(spacing, lines).len() == fewest)
            .unwrap_or((0, tightest));
        let breaks = self.breaks(spacing, lines);
        self.fill(&breaks, spacing, lines)
    }

    /// Lays rows on pages until all stand and the closing part has room.
    fn breaks(&self, spacing: usize, remark_lines: usize) -> Breaks {
        let whole = self.paper.inside_mm().1 - RESERVE_MM;
        // A page alone bears no number and so no foot.
        let alone = self.breaks_within(whole, spacing, remark_lines);
        if alone.len() == 1 {
            return alone;
        }
        self.breaks_within(whole - FOOT_MM, spacing, remark_lines)
    }

    fn breaks_within(&self, whole: f64, spacing: usize, remark_lines: usize) -> Breaks {
        let end = closing_mm(&self.closing, self.paper) + paragraph_mm(remark_lines);
        let (mut breaks, mut start) = (Breaks::new(), 0);
        loop {
            let top = if breaks.is_empty() { heading_mm(&self.heading) } else { RUNNING_MM };
            let mut room =
                whole - top - if start < self.table.rows.len() { self.frame_mm() } else { 0.0 };
            let mut stop = start;
            while let Some(row) = self.table.rows.get(stop) {
                room -= row_mm(row, spacing);
                // A page takes at least one row, so that this comes to an end.
                if room < 0.0 && stop > start {
                    room += row_mm(row, spacing);
                    break;
                }
                stop += 1;
            }
            breaks.push(start..stop);
            let done = stop == self.table.rows.len();
            if done && (room >= end || start == stop && breaks.len() > 1) {
                return breaks;
            }
            start = stop;
        }
    }

    /// What a table takes besides its rows: head, white and legend.
    fn frame_mm(&self) -> f64 {
        TABLE_HEAD_MM + GAP_MM + paragraph_mm(self.legend.len())
    }

    fn fill(self, breaks: &Breaks, spacing: usize, remark_lines: usize) -> Vec<Page> {
        let count = breaks.len();
        let mut pages: Vec<Page> = Vec::with_capacity(count);
        for (index, rows) in breaks.iter().enumerate() {
            let opens = if index == 0 {
                Block::Heading(self.heading.clone())
            } else {
                Block::Running(self.running.clone())
            };
            let mut page = Page { blocks: vec![opens], ..Page::default() };
            let rows = self.table.rows[rows.clone()].to_vec();
            if !rows.is_empty() {
                let table = Table { rows, columns: self.table.columns.clone(), ..self.table };
                page.blocks.push(Block::Table(Table { spacing, ..table }));
                if !self.legend.is_empty() {
                    page.blocks.push(Block::Legend(self.legend.clone()));
                }
            }
            if count > 1 {
                page.page_number = format!("page {} of {count}", index + 1);
            }
            pages.push(page);
        }
        if let Some(last) = pages.last_mut() {
            if remark_lines > 0 {
                last.blocks.push(Block::Remarks(shortened(self.remarks, remark_lines)));
            }
            last.blocks.push(Block::Closing(self.closing));
        }
        pages
    }
}

fn heading(design: &Design, analysis: &Analysis, title: &str, mark: &str, paper: Paper) -> Heading {
    let widths = fact_widths(paper);
    let facts = facts(design, analysis, mark.to_owned());
    let fact = |((label, words), width): ((_, String), &f64)| {
        // Bold type is a little wider.
        let lines = wrap(&words, (width - FACT_GAP_MM) * 0.94, TYPE_PT, 3);
        Fact { label, lines }
    };
    // The kind of sheet stands at the right of the title.
    let room = paper.inside_mm().0 - 35.0;
    let set = |(size, _): (f64, f64)| wrap(title, room, size, 2);
    let long_title = set(TITLES_PT_MM[0]).len() > 1;
    Heading {
        kind: "Stringing card",
        title: set(TITLES_PT_MM[usize::from(long_title)]),
        long_title,
        facts: facts.into_iter().zip(widths.iter().cycle()).map(fact).collect(),
        in_a_row: widths.len(),
    }
}

fn running(design: &Design, title: &str, mark: &str, paper: Paper) -> String {
    let serial = clean(&design.serial);
    let serial = if serial.is_empty() { String::new() } else { format!(", {serial}") };
    let room = paper.inside_mm().0 - width_mm(&format!(" — design mark {mark}"), TYPE_PT);
    let name = wrap(&format!("{title}{serial}"), room, TYPE_PT, 1).concat();
    format!("{name} — design mark {mark}")
}

/// What the words and signs of the card mean, in lines over the whole width.
fn legend(strings: &Strings, heading: &Heading, paper: Paper) -> Vec<String> {
    let is_dash = |text: &String| text == DASH;
    let in_rows = strings.rows.iter().any(|row| row.cells.iter().any(is_dash));
    let in_heading = heading.facts.iter().any(|fact| fact.lines.iter().any(is_dash));
    let dash = if in_rows || in_heading { DASH_NOTE } else { "" };
    let words = format!("{} {dash}", strings.legend);
    if words.trim().is_empty() {
        return Vec::new();
    }
    wrap(&words, paper.inside_mm().0, TYPE_PT, MOST_LEGEND_LINES)
}

/// The maker's remarks in lines over the whole width.
fn remarks(design: &Design, paper: Paper) -> Vec<String> {
    if clean(&design.remarks).is_empty() {
        return Vec::new();
    }
    let text = format!("Remarks: {}", design.remarks);
    wrap(&text, paper.inside_mm().0, TYPE_PT, usize::MAX)
}

/// The first lines; the last of them ends in an ellipsis if there were more.
fn shortened(mut lines: Vec<String>, most: usize) -> Vec<String> {
    if lines.len() > most {
        lines.truncate(most);
        if let Some(last) = lines.last_mut() {
            // Room for the ellipsis.
            last.pop();
            last.pop();
            last.push('…');
        }
    }
    lines
}

fn closing(link: &str, mark: &str, paper: Paper) -> Closing {
    let code = Code::of(link).ok_or_else(|| no_code(link, mark));
    let width = text_width_mm(&code, paper);
    let steps = match paper {
        Paper::A5 => vec![STEPS.to_vec()],
        Paper::A4 | Paper::Letter => {
            let column = (width - STEPS_GAP_MM) / 2.0;
            let taller = |split: &usize| {
                let (left, right) = STEPS.split_at(*split);
                steps_mm(left, column).max(steps_mm(right, column))
            };
            let best = (1..STEPS.len()).min_by(|a, b| taller(a).total_cmp(&taller(b)));
            let (left, right) = STEPS.split_at(best.unwrap_or(STEPS.len() / 2));
            vec![left.to_vec(), right.to_vec()]
        }
    };
    Closing {
        steps_title: STEPS_TITLE,
        steps,
        cautions_title: CAUTIONS_TITLE,
        cautions: CAUTIONS,
        code,
        caption: CAPTION,
    }
}

/// The narrowest width that takes every order code on one line, or else the widest.
fn last_width(strings: &[StringWords]) -> usize {
    let widest = strings
        .iter()
        .filter_map(|string| string.cells.last())
        .map(|code| width_mm(code, TYPE_PT) + CELL_PAD_MM + LAST_PAD_MM)
        .fold(0.0, f64::max);
    let last = CODE_WIDTHS_MM.len() - 1;
    CODE_WIDTHS_MM.iter().position(|&width| width >= widest).unwrap_or(last)
}

fn rows(strings: Vec<StringWords>, widths: &[f64]) -> Vec<Row> {
    let mut above = None;
    let last = widths.len() - 1;
    let row = |string: StringWords| {
        let opens_octave = above.is_some() && above != Some(string.harp_octave);
        above = Some(string.harp_octave);
        let cell = |(index, words): (usize, &String)| {
            let before = if index == last { LAST_PAD_MM } else { CELL_PAD_MM };
            wrap(words, widths[index] - before - CELL_PAD_MM, TYPE_PT, MOST_CELL_LINES)
        };
        let cells = string.cells.iter().enumerate().take(widths.len()).map(cell).collect();
        Row { mark: string.mark, opens_octave, cells }
    };
    strings.into_iter().map(row).collect()
}
