//! What an action came to. Words of success need a [`Done`], and only the store and the browser's answers make one.

use super::super::browser::{StorageError, Worked};
use crate::words::page as say;

/// The most letters of a notice.
const MOST_LETTERS: usize = 1_500;

/// That something was done.
#[derive(Debug)]
pub struct Done {
    /// What there is to tell beside the words of success, come what may.
    also: Option<Notice>,
}

/// That something was not done.
#[derive(Debug)]
pub enum Not {
    /// The user was asked, and said no.
    Declined,
    /// Why not, and what to do: whole sentences.
    Refused(String),
}

/// Whether something was done. [`Store::tell`](super::Store::tell) tells it.
pub type Outcome = Result<Done, Not>;

/// Something to tell the user. Only the store makes one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    text: String,
    problem: bool,
}

impl Done {
    /// Done, and nothing else to tell.
    pub(super) const fn plain() -> Self {
        Self { also: None }
    }

    /// Done, and this is to be known too.
    pub(super) fn with(text: &str) -> Self {
        Self { also: Some(Notice::new(text, false)) }
    }

    /// The same, and this to be known, unless there is something else already.
    pub(super) fn also(self, text: &str) -> Self {
        Self { also: self.also.or_else(|| Some(Notice::new(text, false))) }
    }

    /// Done, but this went wrong with it.
    pub(super) fn but(text: &str) -> Self {
        Self { also: Some(Notice::new(text, true)) }
    }
}

impl From<Worked> for Done {
    fn from(_: Worked) -> Self {
        Self::plain()
    }
}

impl From<StorageError> for Not {
    fn from(why: StorageError) -> Self {
        Self::Refused(say::change_not_kept(&why))
    }
}

impl Notice {
    /// Long ones are cut: what is told may quote a text of any length.
    pub(super) fn new(text: &str, problem: bool) -> Self {
        let text = match text.char_indices().nth(MOST_LETTERS) {
            Some((end, _)) => format!("{} …", &text[..end]),
            None => text.to_owned(),
        };
        Self { text, problem }
    }

    /// The words for an outcome, where those of success are given; `None` where there is nothing to tell.
    pub(super) fn of(outcome: &Outcome, words: &str) -> Option<Self> {
        match outcome {
            Ok(Done { also: Some(also) }) if words.is_empty() => Some(also.clone()),
            Ok(Done { also: Some(Self { text, problem }) }) => {
                Some(Self::new(&format!("{words} {text}"), *problem))
            }
            Ok(_) if words.is_empty() => None,
            Ok(_) => Some(Self::new(words, false)),
            Err(Not::Declined) => Some(Self::new(say::DECLINED.said(), false)),
            Err(Not::Refused(why)) => Some(Self::new(why, true)),
        }
    }

    /// Whole sentences.
    pub fn text(&self) -> &str {
        &self.text
    }

    /// Whether something went wrong.
    pub const fn is_problem(&self) -> bool {
        self.problem
    }
}
