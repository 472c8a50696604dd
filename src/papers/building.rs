//! The order of building as a sheet: the steps of the work, what to check at each with room for what was found, and what to
//! beware of.
//!
//! Its pages are laid by [`pager`].

use super::layout::{FOOT_MM, RESERVE_MM, TYPE_PT, report_widths};
use super::measure::{clean, wrap};
use super::pager::{self, Pager, cell};
use super::sheet::{Block, Column, Paper, Sheet, Table, TableKind, TableRow};
use super::words::{DASH, title};
use crate::design::advice::caution;
use crate::design::display::decimals;
use crate::design::document::Design;
use crate::design::parts::Parts;
use crate::design::parts::building::{Check, steps};
use crate::words::{
    Words, building as say, card, language, papers as say_paper, parts as say_parts,
};

/// The spacing of the rows: index into the layout's list.
const SPACING: usize = 3;
/// What a title is kept together with.
const AFTER_TITLE_MM: f64 = 12.0;

/// The order of building of a design.
pub fn building(design: &Design, parts: &Parts, paper: Paper) -> Sheet {
    let title = title(design);
    let given = |text: &str| {
        let text = clean(text);
        if text.is_empty() { DASH.to_owned() } else { text }
    };
    let steps = steps(design, parts);
    let facts = [
        (say_paper::MAKER.said(), given(&design.maker)),
        (say_paper::DATE.said(), given(&design.date)),
        (say_paper::SERIAL.said(), given(&design.serial)),
        (say::STEPS.said(), steps.len().to_string()),
    ];
    let heading = pager::heading(say::BUILDING.said(), &title, facts, paper);
    let wide = paper.inside_mm().0;
    let running = wrap(&say::running(&title), wide, TYPE_PT, 1).concat();
    let mut pager = Pager::new(paper.inside_mm().1 - RESERVE_MM - FOOT_MM, heading, running);
    let text = |words: &str| wrap(words, wide, TYPE_PT, usize::MAX);
    // Bold type is wider.
    let bold = |words: &str| wrap(words, 0.93 * wide, TYPE_PT, usize::MAX);
    for words in [say::PRACTICE, say::HOW_TO_CHECK] {
        pager.lines(&text(words.said()), Block::Legend);
    }
    for (at, step) in steps.iter().enumerate() {
        pager.title(&say::step(&(at + 1), &step.title), AFTER_TITLE_MM);
        let lines: Vec<String> = step.does.iter().flat_map(|does| text(&clean(does))).collect();
        pager.lines(&lines, Block::Legend);
        for words in &step.cautions {
            pager.lines(&bold(words.said()), Block::Caution);
        }
        if !step.checks.is_empty() {
            pager.table("", &laid(&step.checks, paper), &[]);
        }
    }
    let told = crate::design::parts::words::told(parts);
    let lines: Vec<String> =
        told.iter().flat_map(|line| text(&format!("– {}", clean(line)))).collect();
    pager.title(say_parts::WORTH_SAYING.said(), AFTER_TITLE_MM);
    pager.lines(&lines, Block::Legend);
    pager.lines(&bold(&format!("{} {}", card::CARE, caution())), Block::Caution);
    Sheet {
        paper,
        language: language(),
        title: say_paper::titled(&say::BUILDING, &title),
        pages: pager.finish(),
    }
}

/// What to check, what it should be, and an empty column for what was found.
fn laid(checks: &[Check], paper: Paper) -> Table {
    let widths = report_widths(TableKind::Pairs, paper);
    let row = |check: &Check| {
        let words = [check.what.clone(), decimals(check.size.to_mm(), 1), String::new()];
        let cells = words.iter().enumerate().map(|(at, words)| cell(words, &widths, at));
        TableRow { mark: None, opens_octave: false, cells: cells.collect() }
    };
    let heads: [Words; 3] = [say::HEAD_CHECK, say::HEAD_SHOULD_BE, say::HEAD_FOUND];
    Table {
        kind: TableKind::Pairs,
        columns: heads.map(|head| Column { head: [head.said(), ""], figures: false }).to_vec(),
        rows: checks.iter().map(row).collect(),
        spacing: SPACING,
        last_width: 0,
    }
}
