//! Why a text that was typed cannot be used, in words.

use thiserror::Error;

use crate::engine::pitch::NoteError;
use crate::words::{Words, numeral, typed as say};

/// How much of a typed text a message repeats, in characters.
const REPEATED: usize = 40;

/// Why a typed text cannot be used.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum TypedError {
    /// Nothing there.
    #[error("{}", say::missing(.example, .what))]
    Empty { what: Words, example: Words },
    /// No number, or a unit that is not known.
    #[error("{}", say::unreadable(.example, .got, .what))]
    Unreadable { what: Words, example: Words, got: String },
    /// A number out of reach.
    #[error("{}", out_of_range(*.what, (*.least, *.most), .unit, .got, .hint))]
    Range {
        what: Words,
        least: f64,
        most: f64,
        unit: &'static str,
        got: String,
        /// What may have been meant; empty where that is not known.
        hint: String,
    },
    /// No note.
    #[error(transparent)]
    Note(#[from] NoteError),
    /// A number where a note should be.
    #[error("{}", say::note_number(.got))]
    NoteNumber { got: String },
}

fn out_of_range(
    what: Words,
    (least, most): (f64, f64),
    unit: &str,
    got: &str,
    hint: &str,
) -> String {
    let least = numeral(least);
    let most = format!("{} {unit}", numeral(most));
    let most = most.trim_end();
    if hint.is_empty() {
        say::out_of_range(&got, &least, &most, &what)
    } else {
        say::out_of_range_meant(&got, &least, &hint, &most, &what)
    }
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
