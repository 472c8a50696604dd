//! Sources of the figures of woods in the language of now.

use crate::words::{Words, woods as say};

const ALL: [Words; 7] = [
    say::FROM_COPIES,
    say::FROM_BOUND,
    say::FROM_COPY,
    say::FROM_CLASS,
    say::FROM_OWN_BAR,
    say::FROM_SHARES,
    say::FROM_QUOTED,
];

/// A source as the language of now says it; a citation as it was published.
pub fn said(source: &str) -> &str {
    ALL.iter().find(|words| words.english() == source).map_or(source, |words| words.said())
}
