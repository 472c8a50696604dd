//! What a table in anyone's hand leaves open, and the likely answers.

use super::headings::Columns;
use super::notes::PlainB;
use crate::design::heading::Size;

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
                (PlainB::Natural, "was taken for B natural")
            } else {
                (PlainB::Open, "was left out")
            };
            if let Some(column) = columns.get_mut(place) {
                column.plain_b = Some(plain_b);
            }
            format!(
                "B {words}: it may be B flat, as in German lists, or B natural (write Bb, or H for B natural)"
            )
        }
        Question::Unit { place, said, answers } => {
            let (Some(column), Some(looks)) = (columns.get_mut(place), answers.first()) else {
                return String::new();
            };
            let name = match column.heading.trim() {
                "" => format!("column {}", place + 1),
                heading => format!("column \"{heading}\""),
            };
            let (said, looks_words) = (said.words(), looks.words());
            column.looks_like = None;
            if likely {
                column.unit = *looks;
                return format!("{name} names no unit; its numbers were taken for {looks_words}");
            }
            column.field = None;
            format!(
                "{name} was left out: it names no unit, and its numbers look like {looks_words} rather than {said} (put the unit into its heading)"
            )
        }
    }
}
