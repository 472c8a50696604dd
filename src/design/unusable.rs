//! Why a text that was typed cannot be used, in words.

use thiserror::Error;

use crate::engine::pitch::NoteError;

/// How much of a typed text a message repeats, in characters.
const REPEATED: usize = 40;

/// Why a typed text cannot be used.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum TypedError {
    /// Nothing there.
    #[error("the {what} is missing (write it like {example})")]
    Empty { what: &'static str, example: &'static str },
    /// No number, or a unit that is not known.
    #[error(
        "the {what} must be a number with a unit or none, got \"{got}\" (write it like {example})"
    )]
    Unreadable { what: &'static str, example: &'static str, got: String },
    /// A number out of reach.
    #[error("the {what} must be from {least} to {most}{}{unit}, got \"{got}\"{hint}", gap(.unit))]
    Range {
        what: &'static str,
        least: f64,
        most: f64,
        unit: &'static str,
        got: String,
        /// Empty, or in brackets what may have been meant.
        hint: String,
    },
    /// No note.
    #[error(transparent)]
    Note(#[from] NoteError),
    /// A number where a note should be.
    #[error("a note begins with a letter from A to G, got \"{got}\" (for a pitch write {got} Hz)")]
    NoteNumber { got: String },
}

/// The beginning of a text, as a message repeats it.
pub fn cut(text: &str) -> String {
    let mut letters = text.trim().chars();
    let mut start: String =
        letters.by_ref().take(REPEATED).map(|c| if c.is_control() { ' ' } else { c }).collect();
    if letters.next().is_some() {
        start.push('…');
    }
    start
}

/// The blank before a unit, where there is one.
fn gap(unit: &str) -> &'static str {
    if unit.is_empty() { "" } else { " " }
}
