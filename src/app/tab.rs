//! What a tab does about keeping its design, where other tabs may go on with the same one: pure decisions, which
//! `store/keeping.rs` carries out.

use crate::design::document::Design;
use crate::design::history::History;
use crate::design::persist;

/// What another tab did with the open design.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Elsewhere {
    Changed,
    /// Taken off the shelf.
    Gone,
}

/// What there is to hear of what is kept.
#[derive(Debug, PartialEq, Eq)]
pub enum Heard {
    /// All that was put is on the disk.
    Kept,
    /// What waits could not be written; it is tried again.
    Failed,
    /// The undo steps of the open design have been read.
    Steps,
    /// Another page has changed or forgotten what stands under this key.
    Elsewhere(String),
    /// What was put under this key was not written, as another page had changed it before.
    Clash(String),
    /// The same for a design that is no longer open: what was put is in a copy.
    Beside,
}

impl Heard {
    /// From the words of `src/shell/keep.js`.
    pub fn of(what: &str, key: String) -> Self {
        match what {
            "kept" => Self::Kept,
            "failed" => Self::Failed,
            "steps" => Self::Steps,
            "clash" => Self::Clash(key),
            "beside" => Self::Beside,
            _ => Self::Elsewhere(key),
        }
    }
}

/// What a tab knows of the keeping of its design.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Tab {
    /// There is a change that the browser was not given yet.
    pub unkept: bool,
    /// What another tab did with the design since it was opened here.
    pub elsewhere: Option<Elsewhere>,
}

/// How a design is to be kept now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keep {
    /// Not at all: nothing was changed, and another tab may have gone on with it.
    Nothing,
    /// Under its name.
    Here,
    /// As a copy, as another tab went on with it.
    Beside,
}

impl Tab {
    /// How its design is to be kept now.
    pub const fn keep(self) -> Keep {
        match (self.unkept, self.elsewhere) {
            (false, _) => Keep::Nothing,
            (true, None) => Keep::Here,
            (true, Some(_)) => Keep::Beside,
        }
    }
}

/// What a tab does about what it hears.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Answer {
    Nothing,
    /// It says whether its design is kept.
    Say,
    /// It takes the undo steps of before.
    TakeSteps,
    /// It warns of what another tab did.
    Warn,
    /// Its design goes into a copy.
    Copy,
    /// It says that there is a copy.
    TellCopy,
    /// It says that a change in the list of designs was not taken.
    Complain,
}

/// What a tab does about what it hears; `is_open` says whether a key is that of its design, `is_design` of any.
pub fn answer(
    heard: &Heard,
    is_open: impl Fn(&str) -> bool,
    is_design: impl Fn(&str) -> bool,
) -> Answer {
    match heard {
        Heard::Kept | Heard::Failed => Answer::Say,
        Heard::Steps => Answer::TakeSteps,
        Heard::Beside => Answer::TellCopy,
        Heard::Elsewhere(key) if is_open(key) => Answer::Warn,
        Heard::Clash(key) if is_open(key) => Answer::Copy,
        Heard::Clash(key) if is_design(key) => Answer::Complain,
        Heard::Elsewhere(_) | Heard::Clash(_) => Answer::Nothing,
    }
}

/// What a tab says of its design.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// What it said before: nothing was changed yet, or something was since.
    AsBefore,
    Kept,
    NotKept,
}

/// What a tab says when the browser has written all that it was given, or could not.
pub const fn said(fails: bool, said_nothing_yet: bool, unkept: bool) -> Said {
    if fails {
        Said::NotKept
    } else if said_nothing_yet || unkept {
        Said::AsBefore
    } else {
        Said::Kept
    }
}

/// The steps of a design that is kept now: at which it stands, up to which nothing has changed since it was kept last,
/// and the state before this one, where there is one that is to be kept.
pub fn steps<K: PartialEq>(history: &mut History<Design, K>) -> ((usize, usize), Option<String>) {
    let (at, steady) = (history.at(), history.steady());
    let before = history.before().filter(|_| steady < at).map(persist::write);
    history.kept();
    ((at, steady), before)
}
