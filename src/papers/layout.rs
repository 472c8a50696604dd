//! The measures of the card: sizes of type, widths of columns, heights of its parts.
//!
//! Worked out here and not by the browser, so that every browser gives the same pages. The style
//! sheet `style/print.css` sets type, lines and gaps to the same measures.

use crate::design::document::LengthUnit;

use super::code::Code;
use super::measure::wrap;
use super::rows::MAKE_UP;
use super::sheet::{Closing, Fact, Heading, Paper, TableKind, TableRow};

/// Size of all type but the title.
pub const TYPE_PT: f64 = 8.0;
/// Size of the title and height of its line; then those of a title too long for one line.
pub const TITLES_PT_MM: [(f64, f64); 2] = [(15.0, 6.4), (11.0, 4.8)];
/// A 96th of an inch. Browsers move lines of type to whole ones, so row heights are multiples of it.
pub const PX_MM: f64 = 25.4 / 96.0;
/// Height of a line.
pub const LINE_MM: f64 = 12.0 * PX_MM;
/// What a row adds to its lines, the most generous first. [`Table::spacing`] points here.
pub const SPACINGS_MM: [f64; 7] =
    [8.0 * PX_MM, 6.0 * PX_MM, 5.0 * PX_MM, 4.0 * PX_MM, 3.0 * PX_MM, 2.0 * PX_MM, PX_MM];
/// Widths of the column of order codes. [`Table::last_width`] points here.
pub const CODE_WIDTHS_MM: [f64; 5] = [14.0, 18.0, 22.0, 28.0, 36.0];
/// White at each side of a cell.
pub const CELL_PAD_MM: f64 = 0.8;
/// White before the last column, which stands beside figures.
pub const LAST_PAD_MM: f64 = 2.4;
/// What the head of the table takes: two lines and the white round them.
pub const TABLE_HEAD_MM: f64 = 2.0 * LINE_MM + 1.6;
/// White below each part of a page.
pub const GAP_MM: f64 = 1.5;
/// What the foot takes.
pub const FOOT_MM: f64 = 4.4;
/// What the heading of a later page takes.
pub(super) const RUNNING_MM: f64 = 5.0 + GAP_MM;
/// White between the texts and the code.
pub const CODE_GAP_MM: f64 = 5.0;
/// White between the two columns of steps.
pub const STEPS_GAP_MM: f64 = 5.0;
/// What the numbers of the steps take.
pub const STEP_INDENT_MM: f64 = 4.5;
/// White below each step.
pub const STEP_GAP_MM: f64 = 0.4;
/// Left free on every page for what browsers round up.
pub(super) const RESERVE_MM: f64 = 1.0;

/// How high a row stands.
pub fn row_mm(row: &TableRow, spacing: usize) -> f64 {
    lines_mm(row.lines()) + SPACINGS_MM[spacing.min(SPACINGS_MM.len() - 1)]
}

pub(super) fn lines_mm(lines: usize) -> f64 {
    LINE_MM * f64::from(u32::try_from(lines).unwrap_or(u32::MAX))
}

pub(super) fn paragraph_mm(lines: usize) -> f64 {
    if lines == 0 { 0.0 } else { lines_mm(lines) + GAP_MM }
}

/// White after each fact.
pub const FACT_GAP_MM: f64 = 3.0;

/// White below each row of facts.
pub const FACT_GAP_BELOW_MM: f64 = 0.7;

/// Widths of the facts that stand beside each other.
pub fn fact_widths(paper: Paper) -> Vec<f64> {
    let shares: &[f64] = match paper {
        Paper::A4 | Paper::Letter => &[0.3, 0.2, 0.3, 0.2],
        Paper::A5 => &[0.36, 0.28, 0.36],
    };
    shares.iter().map(|share| share * paper.inside_mm().0).collect()
}

pub(super) fn heading_mm(heading: &Heading) -> f64 {
    let title_line = TITLES_PT_MM[usize::from(heading.long_title)].1;
    let title = f64::from(u32::try_from(heading.title.len()).unwrap_or(1)) * title_line;
    let rows = heading.facts.chunks(heading.in_a_row.max(1));
    let height = |row: &[Fact]| {
        lines_mm(1 + row.iter().map(|fact| fact.lines.len()).max().unwrap_or(1)) + FACT_GAP_BELOW_MM
    };
    title + 1.0 + rows.map(height).sum::<f64>() + GAP_MM
}

/// Width of the texts beside the code.
pub(super) fn text_width_mm(code: &Result<Code, String>, paper: Paper) -> f64 {
    let side = code.as_ref().map_or(WORDS_FOR_CODE_MM, Code::side_mm);
    paper.inside_mm().0 - side - CODE_GAP_MM
}

/// Width of the words that stand where there is no code.
pub const WORDS_FOR_CODE_MM: f64 = 36.0;

pub(super) fn steps_mm(steps: &[String], width: f64) -> f64 {
    let lines = |step: &String| wrap(step, width - STEP_INDENT_MM, TYPE_PT, usize::MAX).len();
    steps.iter().map(|step| lines_mm(lines(step)) + STEP_GAP_MM).sum()
}

/// How high the closing part stands: the texts or the code with its caption, whichever is higher.
pub(super) fn closing_mm(closing: &Closing, paper: Paper) -> f64 {
    let width = text_width_mm(&closing.code, paper);
    let columns = closing.steps.len().max(1);
    let count = f64::from(u32::try_from(columns).unwrap_or(1));
    let column = (width - STEPS_GAP_MM * (count - 1.0)) / count;
    let steps = closing.steps.iter().map(|steps| steps_mm(steps, column)).fold(0.0, f64::max);
    let cautions = format!("{} {}", closing.cautions_title, closing.cautions);
    let cautions = lines_mm(wrap(&cautions, width, TYPE_PT, usize::MAX).len());
    let texts = 1.5 + LINE_MM + 1.0 + steps + 1.0 + cautions;
    let code = match &closing.code {
        Ok(code) => {
            let caption = wrap(closing.caption, code.side_mm(), TYPE_PT, usize::MAX).len();
            1.5 + code.side_mm() + lines_mm(caption)
        }
        Err(words) => 1.5 + lines_mm(wrap(words, WORDS_FOR_CODE_MM, TYPE_PT, usize::MAX).len()),
    };
    texts.max(code)
}

/// What a heading within a sheet takes.
pub const TITLE_MM: f64 = LINE_MM + 1.0;

/// Place of the make-up among the columns of an order list.
pub const ORDER_MAKE_UP: usize = 1;

/// Widths of the columns of an order list from left to right; the make-up takes what the others leave.
pub fn order_widths(paper: Paper) -> Vec<f64> {
    let mut widths = match paper {
        Paper::A4 | Paper::Letter => vec![24.0, 0.0, 34.0, 20.0, 12.0, 13.0, 12.0, 20.0],
        Paper::A5 => vec![17.0, 0.0, 24.0, 15.0, 10.0, 11.0, 10.0, 15.0],
    };
    widths[ORDER_MAKE_UP] = paper.inside_mm().0 - widths.iter().sum::<f64>();
    widths
}

/// Widths of the columns from left to right; the make-up takes what the others leave.
pub fn widths(paper: Paper, unit: LengthUnit, code_mm: f64) -> Vec<f64> {
    let inch = unit == LengthUnit::Inch;
    let mut widths = match paper {
        Paper::A4 | Paper::Letter => vec![7.5, 12.5, 12.0, 0.0, 10.5, 10.5, 14.5],
        Paper::A5 => vec![7.0, 11.5, 11.0, 0.0, 9.5, 9.5, 13.0],
    };
    let cut = if paper == Paper::A5 { 10.5 } else { 12.0 };
    widths.extend(inch.then_some(13.5));
    widths.extend([cut, code_mm]);
    widths[MAKE_UP] = paper.inside_mm().0 - widths.iter().sum::<f64>();
    widths
}

/// Widths of the columns of a table of a report; the one of nought takes what the others leave.
pub const fn report_columns(kind: TableKind) -> &'static [f64] {
    match kind {
        TableKind::Figures => &[7.5, 12.5, 12.0, 0.0, 14.5, 12.5, 14.5, 13.5, 17.0, 16.0, 15.0],
        TableKind::Compared => &[18.0, 16.0, 0.0, 24.0, 22.0, 22.0, 26.0, 20.0],
        TableKind::Loads => &[34.0, 36.0, 0.0],
        TableKind::Forces => &[0.0, 70.0],
        TableKind::Tuning => {
            &[7.5, 13.0, 15.0, 13.0, 0.0, 15.0, 13.0, 18.0, 18.0, 18.0, 18.0, 18.0]
        }
        TableKind::Keys => &[0.0, 18.0, 18.0, 18.0, 18.0, 18.0, 18.0, 18.0],
        _ => &[0.0, 56.0, 56.0],
    }
}

/// The same on a paper.
pub fn report_widths(kind: TableKind, paper: Paper) -> Vec<f64> {
    let mut widths = report_columns(kind).to_vec();
    let rest = paper.inside_mm().0 - widths.iter().sum::<f64>();
    if let Some(free) = widths.iter_mut().find(|width| **width == 0.0) {
        *free = rest;
    }
    widths
}
