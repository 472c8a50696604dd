//! Someone else's harp: from measured lengths to strings, what of them is missing, and the same harp in
//! another material ([`convert`]).
//!
//! Nothing is guessed: a length or a gauge that was not measured stays empty and is told.

mod convert;

use thiserror::Error;

pub use self::convert::{Change, Conversion, Equal, Preview, convert, summary};
use super::cells::TableError;
use super::document::{Design, LengthUnit, MOST_STRINGS, MaterialSpec, StringSpec};
use super::edit::Column;
use super::letters::small;
use super::make_up_text;
use super::number::{plain, take_number};
use super::presets::OpenTuning;
use super::resolve::resolve;
use super::table;
use super::typed::{self, Pitch, cut};
use crate::engine::pitch::Note;

/// The longest list that is read, in bytes.
pub const MOST_BYTES: usize = 1 << 20;
/// The most words that one length may have: `2 ft 3 1/4 in`.
const LENGTH_WORDS: usize = 6;
/// What stands for a length that was not measured.
const NOT_MEASURED: [&str; 6] = ["-", "–", "—", "?", "x", "missing"];

/// How a list of measured lengths is to be read.
#[derive(Clone, Copy, Debug)]
pub struct Reading<'a> {
    /// The highest string, where the list names no notes.
    pub highest: Option<Note>,
    /// The lowest string, where the list names no notes.
    pub lowest: Option<Note>,
    /// How the open strings are tuned, for notes that the list does not name.
    pub open: &'a OpenTuning,
    /// The unit of bare numbers.
    pub unit: LengthUnit,
}

/// What a list holds.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Measured {
    /// From the highest string down.
    pub strings: Vec<StringSpec>,
    /// Materials of its own that a table brings along.
    pub materials: Vec<MaterialSpec>,
    /// Whether the list went from the lowest string up and was turned round.
    pub turned: bool,
}

impl Measured {
    /// The design with these strings in place of its own.
    pub fn into_design(self, design: &Design) -> Design {
        let Self { strings, materials, .. } = self;
        table::TableRead { strings, materials, ..table::TableRead::default() }.into_design(design)
    }
}

/// Why there are no strings.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum MeasuredError {
    /// Longer than [`MOST_BYTES`].
    #[error("a list of lengths must be at most {} MB (paste fewer lines)", MOST_BYTES >> 20)]
    TooLarge,
    /// Nothing but blanks.
    #[error("the list is empty (write a length on each line, from the highest string down)")]
    Empty,
    /// More lines than a design may have strings.
    #[error(
        "a list of lengths must have at most {MOST_STRINGS} lines, got {got} (paste fewer lines)"
    )]
    TooMany { got: usize },
    /// The two ends and the number of lines disagree.
    #[error(
        "from {highest} down to {lowest} are {wanted} strings, but the list has {got} lines (change a note, or add the missing lines)"
    )]
    Count { highest: Note, lowest: Note, wanted: i32, got: usize },
    /// A table that cannot be read.
    #[error("{}", .0.first().map(ToString::to_string).unwrap_or_default())]
    Table(Vec<TableError>),
}

/// Reads a list of measured lengths: a table with headings, as [`table::read`] takes it, or plain lines.
///
/// A plain line is a length, perhaps with the note before it and what the string is made of behind it:
/// `612`, `A4 612`, `A4 24 1/8 in gut 0.90`; a dash or a question mark is a length that was not measured.
/// Lines go from the highest string down; a list without notes whose lengths grow shorter goes the other
/// way and is turned round. What cannot be read is kept in the cell of the length, to be mended there.
///
/// # Errors
///
/// When there are no lines or too many, their number does not fit the two ends, or a table is wrong.
pub fn read_measured(text: &str, reading: &Reading<'_>) -> Result<Measured, MeasuredError> {
    if text.len() > MOST_BYTES {
        return Err(MeasuredError::TooLarge);
    }
    let text = text.trim_start_matches('\u{feff}');
    let mut lines: Vec<&str> =
        text.lines().map(str::trim).filter(|line| !line.is_empty()).collect();
    let Some(first) = lines.first() else { return Err(MeasuredError::Empty) };
    if is_heading(first) {
        if names_pitch(first) {
            let read = table::read(text).map_err(MeasuredError::Table)?;
            let table::TableRead { strings, materials, .. } = read;
            return Ok(Measured { strings, materials, turned: false });
        }
        lines.remove(0);
    }
    if lines.is_empty() {
        return Err(MeasuredError::Empty);
    }
    if lines.len() > MOST_STRINGS {
        return Err(MeasuredError::TooMany { got: lines.len() });
    }
    let mut strings: Vec<StringSpec> = lines.iter().map(|line| plain_line(line, reading)).collect();
    let turned = goes_up(&strings);
    if turned {
        strings.reverse();
    }
    name(&mut strings, reading)?;
    Ok(Measured { strings, materials: Vec::new(), turned })
}

/// Whether a line holds words alone, or a word with a unit, as headings do.
fn is_heading(line: &str) -> bool {
    let headings = ["note", "frequency_hz", "length", "length_mm", "material", "gauge", "string"];
    let between = |c: char| matches!(c, ',' | ';' | '\t');
    let is_known = |cell: &str| {
        let words = cell.split(|c: char| c.is_whitespace() || c == '_').filter(|w| !w.is_empty());
        let name = small(&words.collect::<Vec<_>>().join("_"));
        headings.contains(&name.as_str())
    };
    line.split(between).any(is_known)
        || !line.contains(|c: char| c.is_ascii_digit() || "-–—?".contains(c))
}

fn names_pitch(line: &str) -> bool {
    let line = small(line);
    line.split(|c: char| !c.is_alphanumeric()).any(|word| matches!(word, "note" | "frequency"))
}

/// `A4 24 1/8 in gut 0.90`
fn plain_line(line: &str, reading: &Reading<'_>) -> StringSpec {
    let spaced = line.replace(['\t', ';'], " ").replace(", ", " ");
    let mut words: Vec<&str> = spaced.split_whitespace().collect();
    // The number of the line, as in `12.` or `12)`.
    let is_number = |word: &&str| {
        let digits = word.trim_end_matches(['.', ')', ':']);
        digits.len() < word.len()
            && !digits.is_empty()
            && digits.bytes().all(|b| b.is_ascii_digit())
    };
    if words.len() > 1 && words.first().is_some_and(is_number) {
        words.remove(0);
    }
    let mut string = StringSpec::default();
    if words.len() > 1 && small(words[1]) == "hz" {
        let pitch = words[..2].join(" ");
        if typed::pitch(&pitch).is_ok() {
            string.note = pitch;
            words.drain(..2);
        }
    } else if let Some(word) = words.first()
        && matches!(typed::pitch(word), Ok(Pitch::Note(_) | Pitch::Frequency(_)))
    {
        string.note = words.remove(0).to_owned();
    }
    if words.first().is_some_and(|word| NOT_MEASURED.contains(&&*small(word))) {
        words.remove(0);
    } else {
        let unit = if reading.unit == LengthUnit::Inch { "in" } else { "mm" };
        let with_unit = |count: usize| {
            let text = words[..count].join(" ");
            if unit == "mm" { text } else { typed::with_unit(&text, unit) }
        };
        let counts = (1..=words.len().min(LENGTH_WORDS)).rev();
        let taken = counts.clone().find(|count| typed::length(&with_unit(*count)).is_ok());
        match taken {
            Some(count) => {
                string.length = with_unit(count);
                words.drain(..count);
            }
            // Kept where the sentence about it will stand.
            None if words.first().is_some_and(|word| take_number(&plain(word)).is_some()) => {
                string.length = words.remove(0).to_owned();
            }
            None => {}
        }
    }
    let rest = words.join(" ");
    match make_up_text::read(&rest) {
        Ok(make_up) => string.make_up = make_up,
        Err(_) => string.make_up.material = rest.chars().take(200).collect(),
    }
    string
}

/// Whether a list without notes goes from the lowest string up: its first length is the longer one.
fn goes_up(strings: &[StringSpec]) -> bool {
    if strings.iter().any(|string| !string.note.is_empty()) {
        return false;
    }
    let known = || strings.iter().filter_map(|string| typed::length(&string.length).ok());
    let (first, last) = (known().next(), known().next_back());
    first.zip(last).is_some_and(|(first, last)| first > last)
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
        let missing =
            |text: &str, sentence: &str| text.trim().is_empty().then(|| sentence.to_owned());
        add(
            Column::Note,
            wrong.note.or_else(|| missing(&string.note, "the note is missing (write it like A4)")),
        );
        let length =
            "the vibrating length was not measured (measure from the soundboard to the bridge pin)";
        add(Column::Length, wrong.length.or_else(|| missing(&string.length, length)));
        let make_up = &string.make_up;
        if wrong.make_up.is_some() || wrong.gauge.is_some() {
            add(Column::MakeUp, wrong.make_up);
            add(Column::Gauge, wrong.gauge);
        } else if make_up.is_plain() {
            let material = "what the string is made of is not known (look, or weigh a piece)";
            add(Column::MakeUp, missing(&make_up.material, material));
            let gauge = "the gauge was not measured (measure at several places)";
            add(Column::Gauge, missing(&make_up.diameter, gauge));
        }
    }
    gaps
}

/// How a material is called in a sentence: as typed, cut short.
fn shown(material: &str) -> String {
    cut(material)
}

#[cfg(test)]
mod tests;
