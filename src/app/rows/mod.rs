//! From the design and its analysis to the words on the page. Pure, so that it is tested natively.

mod cells;
mod chart;
mod details;
mod measured;
mod pulled;
mod whole;

pub use cells::{as_stored, nudged, pasted, spread};
pub use chart::{CellWords, Head, RowWords, explained, heads, rows, sentence};
pub use details::{Block, MOST_PARTIALS, details, details_title};
pub use measured::measured;
pub use pulled::{in_short, number_and_length, pulled, stepped};
pub use whole::{
    FindingWords, SummaryWords, TriedWords, findings, readout, summary, tolerance_words, tried,
};
