//! The tuning sheet: what each string is tuned to, what its pin turns for that, and room to write in how it stood in five
//! rounds; the keys that the harp plays, with their levers or pedals.
//!
//! Its pages are laid by [`pager`].

use super::code::design_mark;
use super::layout::{FOOT_MM, RESERVE_MM, TYPE_PT, report_widths};
use super::measure::wrap;
use super::pager::{self, Pager, cell};
use super::rows::{StringWords, strings};
use super::sheet::{Block, Column, Page, Paper, Sheet, Table, TableKind, TableRow};
use super::words::{DASH, facts, title};
use crate::design::advice::caution;
use crate::design::display::{cents, decimals, frequency};
use crate::design::document::{Design, LengthUnit};
use crate::design::keys::{KeyRow, key_rows, letters};
use crate::design::resolve::resolve;
use crate::engine::analysis::{Analysis, StringFigures, analyse};
use crate::engine::keys::reach;
use crate::engine::pitch::naming::letter_name;
use crate::engine::pitch::{Letter, Temperament, Tuning, cents as cents_of, ratio};
use crate::engine::units::{Frequency, Length};
use crate::words::{Words, card, drawing, language, naming, papers as say_paper, settling as say};

/// The widest and the tightest spacing of the rows: indices into the layout's list. Hands write in them.
const SPACINGS: std::ops::Range<usize> = 0..4;
/// How many rounds can be written in.
const ROUNDS: [&str; 5] = ["1", "2", "3", "4", "5"];
/// Cells of a string before those that are written in.
const FILLED: usize = 7;
/// The semitones of a lever or of one disc, in cents.
const SEMITONE_CENTS: f64 = 100.0;

/// The tuning sheet of a design.
pub fn tuning(design: &Design, paper: Paper) -> Sheet {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let title = title(design);
    let facts = facts(design, &analysis, design_mark(design));
    let heading = pager::heading(say::SHEET.said(), &title, facts, paper);
    let wide = paper.inside_mm().0;
    let running = wrap(&say::running(&title), wide, TYPE_PT, 1).concat();
    let reaches: Vec<u8> =
        resolved.harp.strings.iter().map(|string| reach(string.mechanism)).collect();
    let mut table = Table {
        kind: TableKind::Tuning,
        columns: columns(design.units.length),
        rows: rows(design, &analysis, &reaches, paper),
        spacing: SPACINGS.start,
        last_width: 0,
    };
    let keys = key_rows(&resolved.harp.strings);
    let heads = letters(&resolved.harp.strings);
    let legend = legend(&reaches, paper);
    let laid = |table: &Table| -> Vec<Page> {
        let high = paper.inside_mm().1 - RESERVE_MM - FOOT_MM;
        let mut pager = Pager::new(high, heading.clone(), running.clone());
        pager.table("", table, &[]);
        pager.lines(&legend, Block::Legend);
        if !keys.is_empty() {
            let below = if keys.iter().all(|row| row.is_played) {
                Vec::new()
            } else {
                wrap(say::KEYS_SOME.said(), wide, TYPE_PT, usize::MAX)
            };
            pager.table(say::KEYS.said(), &key_table(&keys, heads, paper), &below);
        }
        // Bold type is wider.
        let care = format!("{} {}", card::CARE, caution());
        pager.lines(&wrap(&care, 0.93 * wide, TYPE_PT, usize::MAX), Block::Caution);
        pager.finish()
    };
    // The fewest pages with the strings in the fewest parts, and among these the most room to write in.
    table.spacing = SPACINGS.end - 1;
    let mut pages = laid(&table);
    let parts = |pages: &[Page]| {
        let is_strings = |block: &&Block| matches!(block, Block::Table(table) if table.kind == TableKind::Tuning);
        pages.iter().flat_map(|page| &page.blocks).filter(is_strings).count()
    };
    for spacing in SPACINGS.rev().skip(1) {
        table.spacing = spacing;
        let wider = laid(&table);
        if wider.len() > pages.len() || parts(&wider) > parts(&pages) {
            break;
        }
        pages = wider;
    }
    Sheet { paper, language: language(), title: say_paper::titled(&say::SHEET, &title), pages }
}

fn columns(unit: LengthUnit) -> Vec<Column> {
    let figures = |top: Words, bottom| Column { head: [top.said(), bottom], figures: true };
    let length = match unit {
        LengthUnit::Mm => "mm",
        LengthUnit::Inch => "in",
    };
    let mut columns = vec![
        figures(say_paper::HEAD_NUMBER, ""),
        Column { head: [say_paper::HEAD_NOTE.said(), ""], figures: false },
        figures(say::HEAD_PITCH, "Hz"),
        figures(say::HEAD_CENTS, ""),
        figures(say::HEAD_RAISED, "Hz"),
        figures(say::HEAD_STRETCH, length),
        figures(say::HEAD_PIN, say::HEAD_TURNS.said()),
    ];
    columns.extend(
        ROUNDS.map(|round| Column { head: [say::HEAD_ROUND.said(), round], figures: false }),
    );
    columns
}

fn rows(design: &Design, analysis: &Analysis, reaches: &[u8], paper: Paper) -> Vec<TableRow> {
    let widths = report_widths(TableKind::Tuning, paper);
    let a4 = Frequency::from_hz(design.pitch.a4_hz);
    let equal = Tuning::new(a4, Temperament::Equal).ok();
    let all = strings(design, analysis).rows.into_iter().zip(&analysis.strings).zip(reaches);
    let mut above = None;
    let row = |((words, figures), reach): ((StringWords, &StringFigures), &u8)| {
        let opens_octave = above.is_some() && above != Some(words.harp_octave);
        above = Some(words.harp_octave);
        let cells = cells(&words, figures, *reach, equal, design.units.length);
        let cells = cells.iter().map(String::as_str).chain(ROUNDS.map(|_| ""));
        let cells = cells.enumerate().map(|(at, words)| cell(words, &widths, at)).collect();
        TableRow { mark: words.mark, opens_octave, cells }
    };
    all.map(row).collect()
}

/// What a string says of itself.
fn cells(
    words: &StringWords,
    figures: &StringFigures,
    reach: u8,
    equal: Option<Tuning>,
    unit: LengthUnit,
) -> [String; FILLED] {
    let dash = || DASH.to_owned();
    let pitch = figures.frequency.ok();
    let off = pitch.zip(figures.note).zip(equal).map(|((pitch, note), equal)| {
        cents(cents_of(pitch.to_hz() / equal.frequency(note).to_hz()))
    });
    let raised = |semitones: u8| {
        pitch.map(|pitch| {
            let up = ratio(SEMITONE_CENTS * f64::from(semitones));
            frequency(Frequency::from_hz(pitch.to_hz() * up))
        })
    };
    let raised: Vec<String> = (1..=reach).filter_map(raised).collect();
    let stretch = figures.stretch.ok().map(|stretch| match unit {
        LengthUnit::Mm => decimals(stretch.to_mm(), 1),
        LengthUnit::Inch => decimals(Length::to_inch(stretch), 2),
    });
    let name = words.cells.get(super::rows::NOTE).cloned();
    [
        figures.number.to_string(),
        name.unwrap_or_default(),
        pitch.map_or_else(dash, frequency),
        off.unwrap_or_else(dash),
        if raised.is_empty() { dash() } else { raised.join(" / ") },
        stretch.unwrap_or_else(dash),
        figures.pin_turns.map_or_else(|_| dash(), |turns| decimals(turns, 1)),
    ]
}

/// What the columns mean, in lines over the whole width.
fn legend(reaches: &[u8], paper: Paper) -> Vec<String> {
    let raised =
        if reaches.iter().any(|reach| *reach > 0) { say::SHEET_RAISED } else { Words::NONE };
    let all = [say::SHEET_CENTS, raised, say::SHEET_TURNS, say::SHEET_ROUNDS];
    let said = all.into_iter().filter(|words| !words.is_empty());
    said.flat_map(|words| wrap(words.said(), paper.inside_mm().0, TYPE_PT, usize::MAX)).collect()
}

/// Signed with a star where not every string can sound its note.
fn key_table(keys: &[KeyRow], heads: [Letter; 7], paper: Paper) -> Table {
    let widths = report_widths(TableKind::Keys, paper);
    let row = |row: &KeyRow| {
        let star = if row.is_played { "" } else { " *" };
        let name = format!("{}{star}", row.name);
        let cells = std::iter::once(name.as_str()).chain(row.notes.iter().map(String::as_str));
        let cells = cells.enumerate().map(|(at, words)| cell(words, &widths, at)).collect();
        TableRow { mark: None, opens_octave: false, cells }
    };
    let head = |words: &'static str| Column { head: [words, ""], figures: false };
    let letters = heads.map(|letter| head(letter_name(letter, naming())));
    Table {
        kind: TableKind::Keys,
        columns: std::iter::once(head(drawing::KEY.said())).chain(letters).collect(),
        rows: keys.iter().map(row).collect(),
        spacing: SPACINGS.end - 1,
        last_width: 0,
    }
}
