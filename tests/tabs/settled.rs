//! What must hold when all is still.

use std::collections::BTreeSet;

use serde_json::json;
use stringloft::app::tab::{Elsewhere, Said};
use stringloft::design::persist;

use super::page::{BIN, DESIGN, Page, written};
use super::played::{Holds, Played};

/// More steps than ever wait.
const MOST_STEPS: usize = 20_000;

impl Played<'_> {
    /// All that waits in the browser is done, while nobody does anything.
    pub fn pause(&mut self) -> Holds {
        for _ in 0..MOST_STEPS {
            if self.ask(json!({ "do": "step", "which": 0, "fails": false }))? != json!(true) {
                return Ok(());
            }
        }
        Err("there is always something that waits".to_owned())
    }

    /// A tab that says that its design was changed elsewhere, where there is one; else some tab.
    pub fn warned(&self, which: usize) -> usize {
        let warns = |tab: &usize| self.pages[*tab].tab.elsewhere == Some(Elsewhere::Changed);
        let all: Vec<usize> = (0..self.pages.len()).filter(warns).collect();
        *all.get(which % all.len().max(1)).unwrap_or(&which)
    }

    /// All that waits is done, then the pages keep what they have not kept, and so on until nothing is left to do.
    pub fn rest(&mut self) -> Holds {
        for _ in 0..MOST_STEPS {
            self.pause()?;
            let soon = |page: &Page| page.is_ready && page.tab.unkept;
            let Some(tab) = self.pages.iter().position(soon) else { return Ok(()) };
            self.keep_now(tab)?;
        }
        Err("it never comes to rest".to_owned())
    }

    /// What holds when all is still, and after one tab was opened again.
    pub fn settle(&mut self) -> Holds {
        self.rest()?;
        for tab in 0..self.pages.len() {
            let page = &self.pages[tab];
            if !page.is_ready || matches!(page.says, Some(Said::AsBefore | Said::NotKept)) {
                return Err(format!("tab {tab} says {:?} when all is still", page.says));
            }
            let (Some(key), None) = (page.key(), page.tab.elsewhere) else { continue };
            let shown = persist::write(page.history.present());
            if self.get(tab, &key)?.as_ref() != Some(&shown) {
                return Err(format!("tab {tab} shows something else than {key} has"));
            }
        }
        // What pages left comes in with the next one.
        let (key, was) = (self.pages[0].key(), persist::write(self.pages[0].history.present()));
        let before = self.pages[0].history.before().filter(|_| !self.pages[0].is_hasty);
        let before = before.map(persist::write);
        // The steps of a design that several tabs changed are those of the last one.
        let alone = self.pages[0].id.as_ref().is_some_and(|id| self.is_only_by(id, 0));
        let is_own = self.pages[0].tab.elsewhere.is_none() && key.is_some();
        self.leave(0)?;
        self.again(0, true)?;
        self.rest()?;
        if is_own && persist::write(self.pages[0].history.present()) != was {
            return Err("another design, or another state, is open after a reload".to_owned());
        }
        if let (true, Some(before)) = (is_own && alone, before) {
            let back = self.text(json!({ "do": "next", "tab": 0, "forward": false }))?;
            if back.as_ref() != Some(&before) {
                return Err("the step before is another one after a reload".to_owned());
            }
        }
        let all = self.ask(json!({ "do": "all" }))?;
        let all: Vec<(String, String)> =
            serde_json::from_value(all).map_err(|why| why.to_string())?;
        let stands: BTreeSet<String> = all
            .iter()
            .filter(|(key, _)| key.starts_with(DESIGN) || key.starts_with(BIN))
            .flat_map(|(_, text)| written(text))
            .collect();
        let lost = |word: &&String| {
            !stands.contains(*word) && !self.undone.contains(*word) && !self.killed.contains(*word)
        };
        let lost: Vec<&String> = self.typed.iter().filter(lost).collect();
        if lost.is_empty() { Ok(()) } else { Err(format!("{lost:?} stand nowhere any more")) }
    }
}
