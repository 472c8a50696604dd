//! The program in one tab.

use std::collections::BTreeSet;

use stringloft::app::tab::{Said, Tab};
use stringloft::design::document::Design;
use stringloft::design::history::History;
use stringloft::design::persist;

/// Under which a design is kept, before its name.
pub const DESIGN: &str = "stringloft/design/";
pub const BIN: &str = "stringloft/bin/";

/// What it knows.
pub struct Page {
    /// The name of its design; `None` for the sample of a first visit.
    pub id: Option<String>,
    pub history: History<Design, u8>,
    pub tab: Tab,
    pub says: Option<Said>,
    pub keeps_soon: bool,
    pub is_ready: bool,
    /// Changes came so fast that several are one step when they are kept.
    pub is_hasty: bool,
    /// Words that were typed here and not called kept yet.
    pub risked: BTreeSet<String>,
}

impl Page {
    pub fn new() -> Self {
        Self {
            id: None,
            history: History::new(Design::default()),
            tab: Tab::default(),
            says: None,
            keeps_soon: false,
            is_ready: false,
            is_hasty: false,
            risked: BTreeSet::new(),
        }
    }

    pub fn key(&self) -> Option<String> {
        self.id.as_ref().map(|id| format!("{DESIGN}{id}"))
    }

    pub fn words(&self) -> BTreeSet<String> {
        words(&self.history.present().remarks)
    }
}

fn words(text: &str) -> BTreeSet<String> {
    text.split_whitespace().map(str::to_owned).collect()
}

pub fn written(text: &str) -> BTreeSet<String> {
    persist::read(text).map(|design| words(&design.remarks)).unwrap_or_default()
}
