//! What a table in anyone's hand leaves open, and the likely answers.

use super::headings::Columns;
use super::notes::PlainB;
use crate::design::heading::Size;
use crate::words::tables as say;

/// What a table leaves open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Question {
    /// The unit of a column: its place, what it was taken for, and the answers, the likeliest first.
    Unit { place: usize, said: Size, answers: Vec<Size> },
    /// What a B without a sign is; the place of the notes.
    PlainB { place: usize },
}

impl Question {
    /// The place of the column that it is about.
    pub const fn place(&self) -> usize {
        match self {
            Self::Unit { place, .. } | Self::PlainB { place } => *place,
        }
    }
}

/// Answers a question by what is likely, or leaves out what it is about; what was done, without a full stop.
pub(super) fn answer(columns: &mut Columns, question: Question, likely: bool) -> String {
    match question {
        Question::PlainB { place } => {
            let (plain_b, words) = if likely {
                (PlainB::Natural, say::PLAIN_B_NATURAL)
            } else {
                (PlainB::Open, say::PLAIN_B_LEFT)
            };
            if let Some(column) = columns.get_mut(place) {
                column.plain_b = Some(plain_b);
            }
            words.into()
        }
        Question::Unit { place, said, answers } => {
            let empty = columns.iter().take(place).filter(|column| column.example.is_empty());
            let number = place - empty.count();
            let (Some(column), Some(looks)) = (columns.get_mut(place), answers.first()) else {
                return String::new();
            };
            let name = column_name(number, &column.heading);
            let (said, looks_words) = (said.words(), looks.words());
            column.looks_like = None;
            if likely {
                column.unit = *looks;
                return say::unit_taken(&name, &looks_words);
            }
            column.field = None;
            say::unit_left(&name, &looks_words, &said)
        }
    }
}

/// A column by its heading, or by its number where it has none; `place` counts from 0.
pub(super) fn column_name(place: usize, heading: &str) -> String {
    match heading.trim() {
        "" => say::column_number(&(place + 1)),
        heading => say::column_named(&heading),
    }
}
