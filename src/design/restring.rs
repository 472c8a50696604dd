//! Someone else's harp: from measured lengths to strings, what of them is missing, and the same harp in
//! another material ([`convert`]).
//!
//! Nothing is guessed: a length or a gauge that was not measured stays empty and is told.

mod convert;

use thiserror::Error;

pub use self::convert::{Change, Conversion, Equal, Preview, convert, summary};
use super::cells::TableError;
use super::document::{Design, MechanismKind, StringSpec};
use super::edit::Column;
use super::presets::{OPEN_TUNINGS, OpenTuning, usual_mechanism, without_discs};
use super::resolve::resolve;
use super::table::hand::{self, Columns, Hand, HandError};
use super::table::{self, TableRead};
use super::typed::cut;
use crate::design::make_up_said;
use crate::engine::material::key_of;
use crate::engine::pitch::Note;
use crate::words::{Words, restring as say};

/// The longest list that is read, in bytes.
pub const MOST_BYTES: usize = 1 << 20;
/// How a list of measured lengths is to be read.
#[derive(Clone, Copy, Debug)]
pub struct Reading<'a> {
    /// What the columns are, where somebody has looked at what was proposed.
    pub columns: Option<&'a Columns>,
    /// The highest string, where the list names no notes.
    pub highest: Option<Note>,
    /// The lowest string, where the list names no notes.
    pub lowest: Option<Note>,
    /// How the open strings are tuned, for notes that the list does not name.
    pub open: &'a OpenTuning,
    /// What the strings are made of of which the list does not say it; empty where that is not known.
    pub material: &'a str,
    /// What raises the strings; `None` for what is usual.
    pub mechanism: Option<MechanismKind>,
}

/// What a list holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// The strings, from the highest down, and what else the table tells of the harp.
    pub table: TableRead,
    /// What its columns were taken for; empty for a table of this program.
    pub hand: Hand,
    /// What raises the strings.
    pub mechanism: MechanismKind,
}

impl Measured {
    /// The design with these strings in place of its own.
    pub fn into_design(self, design: &Design) -> Design {
        let mechanism = Some(self.mechanism);
        TableRead { mechanism, ..self.table }.into_design(design)
    }
}

/// Why there are no strings.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum MeasuredError {
    /// Longer than [`MOST_BYTES`].
    #[error("{}", say::too_large(&(MOST_BYTES >> 20)))]
    TooLarge,
    /// Nothing but blanks.
    #[error("{}", say::EMPTY)]
    Empty,
    /// The two ends and the number of lines disagree.
    #[error("{}", say::count(.got, .highest, .lowest, .wanted))]
    Count { highest: Note, lowest: Note, wanted: i32, got: usize },
    /// No string, or too many.
    #[error(transparent)]
    Hand(#[from] HandError),
    /// A table that cannot be read.
    #[error("{}", .0.first().map(ToString::to_string).unwrap_or_default())]
    Table(Vec<TableError>),
}

/// Reads a list of measured lengths: a table of this program, as [`table::read`] takes it, or one in anyone's
/// hand, as [`hand::read`] does, plain lines such as `A4 24 1/8 in gut 0.90` among them.
///
/// A list from the lowest string up is turned round. What cannot be read is kept in its cell, to be mended there.
///
/// # Errors
///
/// When there are no lines or too many, their number does not fit the two ends, or a table of this program is wrong.
pub fn read_measured(text: &str, reading: &Reading<'_>) -> Result<Measured, MeasuredError> {
    if text.len() > MOST_BYTES {
        return Err(MeasuredError::TooLarge);
    }
    if text.trim_matches(|c: char| c.is_whitespace() || c == '\u{feff}').is_empty() {
        return Err(MeasuredError::Empty);
    }
    let (mut table, hand) = if table::is_ours(text) {
        (table::read(text).map_err(MeasuredError::Table)?, Hand::default())
    } else {
        let hand = hand::read(text, reading.columns)?;
        let (strings, lines) = (hand.strings.clone(), hand.lines.clone());
        let (remarks, pitch) = (hand.remarks_of_all(), hand.pitch.clone());
        (TableRead { strings, lines, remarks, pitch, ..TableRead::default() }, hand)
    };
    name(&mut table.strings, reading)?;
    for string in &mut table.strings {
        let make_up = &mut string.make_up;
        if make_up.material.is_empty() && make_up.weighed.is_none() {
            reading.material.clone_into(&mut make_up.material);
        }
    }
    let usual = table.mechanism.unwrap_or_else(|| usual(&table.strings));
    let mechanism = reading.mechanism.unwrap_or(usual);
    if table.mechanism.is_none() {
        let bare = without_discs(table.strings.len(), mechanism);
        for string in table.strings.iter_mut().rev().take(bare) {
            string.mechanism = Some(MechanismKind::None);
        }
    }
    Ok(Measured { table, hand, mechanism })
}

/// What usually raises the strings of such a harp: nothing where they are all of metal or every semitone has its
/// own, discs on a large one in flats, else levers. Common practice, no source.
fn usual(strings: &[StringSpec]) -> MechanismKind {
    let notes: Vec<Note> = strings.iter().filter_map(|string| string.note.parse().ok()).collect();
    let is_metal = |string: &StringSpec| {
        let metals = ["steel", "bronze", "yellow brass", "red brass", "silver", "iron", "copper"];
        let key = key_of(&string.make_up.material);
        string.make_up.is_plain() && key.is_some_and(|key| metals.contains(&key))
    };
    let all_metal = !strings.is_empty() && strings.iter().all(is_metal);
    let chromatic =
        notes.windows(2).filter(|pair| (pair[0].key_number() - pair[1].key_number()).abs() == 1);
    if all_metal || 2 * chromatic.count() > notes.len() {
        return MechanismKind::None;
    }
    let flat = notes.iter().filter(|note| note.alter() == -1).count();
    let open = if flat * 10 > notes.len() * 9 { &OPEN_TUNINGS[7] } else { &OPEN_TUNINGS[0] };
    match (notes.last(), notes.first()) {
        (Some(low), Some(high)) => usual_mechanism(*low, *high, open),
        _ => MechanismKind::Lever,
    }
}

/// Gives the strings without a note the one of their place.
fn name(strings: &mut [StringSpec], reading: &Reading<'_>) -> Result<(), MeasuredError> {
    let got = strings.len();
    let sign = |letter| reading.open.sign(letter);
    if strings.iter().all(|string| string.note.is_empty())
        && let (Some(highest), Some(lowest)) = (reading.highest, reading.lowest)
    {
        let wanted = highest.step() - lowest.step() + 1;
        if usize::try_from(wanted).ok() != Some(got) {
            return Err(MeasuredError::Count { highest, lowest, wanted, got });
        }
    }
    for (index, string) in strings.iter_mut().enumerate() {
        if !string.note.is_empty() {
            continue;
        }
        let below = |count: usize| i32::try_from(count).unwrap_or(i32::MAX);
        let note = match (reading.highest, reading.lowest) {
            (Some(highest), _) => highest.moved(-below(index), sign),
            (None, Some(lowest)) => lowest.moved(below(got - 1 - index), sign),
            (None, None) => None,
        };
        string.note = note.map(|note| note.to_string()).unwrap_or_default();
    }
    Ok(())
}

/// What is missing of a string, or cannot be used, and the cell to mend it in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Gap {
    /// Index of the string.
    pub row: usize,
    pub column: Column,
    /// What is missing or wrong, and what to do; without a full stop.
    pub sentence: String,
}

/// Everything that is missing of the strings of a design, from string 1 down.
pub fn gaps(design: &Design) -> Vec<Gap> {
    let resolved = resolve(design);
    let mut gaps = Vec::new();
    for (row, (string, wrong)) in design.strings.iter().zip(resolved.cells).enumerate() {
        let mut add = |column, sentence: Option<String>| {
            gaps.extend(sentence.map(|sentence| Gap { row, column, sentence }));
        };
        let missing = |text: &str, sentence: Words| text.trim().is_empty().then(|| sentence.into());
        add(Column::Note, wrong.note.or_else(|| missing(&string.note, say::NOTE_MISSING)));
        add(Column::Length, wrong.length.or_else(|| missing(&string.length, say::LENGTH_MISSING)));
        let make_up = &string.make_up;
        if wrong.make_up.is_some() || wrong.gauge.is_some() {
            add(Column::MakeUp, wrong.make_up);
            add(Column::Gauge, wrong.gauge);
        } else if make_up.is_plain() {
            add(Column::MakeUp, missing(&make_up.material, say::MATERIAL_MISSING));
            add(Column::Gauge, missing(&make_up.diameter, say::GAUGE_MISSING));
        }
    }
    gaps
}

/// How a material is called in a sentence, cut short.
fn shown(material: &str) -> String {
    cut(&make_up_said::material(material))
}

#[cfg(test)]
mod tests;
