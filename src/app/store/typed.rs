//! What is being typed into a cell when the page is left: kept with its cell, and given back in the cell's own field.

use leptos::prelude::*;

use super::super::browser;
use super::super::columns::write;
use super::super::grid::{Cell, Selection};
use super::{Origin, Store, Typing};
use crate::words::{Words, page as say};

/// Told when a text is given back.
const GIVEN_BACK: Words = say::GIVEN_BACK;

impl Store {
    /// Keeps what is being typed while the page is left. A page that is seen again needs it no more.
    pub(super) fn keep_typed(self, leaving: bool) {
        let key = self.typed_key();
        let typed = browser::typed().filter(|_| leaving && self.typing.read_untracked().is_some());
        // Where the browser takes nothing, that is told already.
        match typed {
            Some(text) => {
                let Cell { row, column } = self.selection.read_untracked().cursor;
                let columns = write(&self.chosen.read_untracked());
                let _ = browser::keep(&key, &format!("{row} {column} {columns}\n{text}"));
            }
            None if browser::kept(&key).is_some() => {
                let _ = browser::forget(&key);
            }
            None => {}
        }
    }

    /// Puts the cursor where something was being typed when the page was left, and the text into the cell's field.
    pub fn give_back_typed(self) {
        let key = self.typed_key();
        let Some(kept) = browser::kept(&key) else { return };
        let _ = browser::forget(&key);
        if let Some((cell, text)) = self.typed_cell(&kept) {
            self.selection.set(Selection::at(cell.row, cell.column));
            self.typing.set(Some(Typing { text, quick: true }));
            // What went wrong before comes first.
            let wrong = self.notice.with_untracked(|notice| {
                notice.as_ref().filter(|notice| notice.is_problem()).map(|n| n.text().to_owned())
            });
            match wrong {
                Some(wrong) => self.complain(format!("{wrong} {GIVEN_BACK}")),
                None => self.hint(GIVEN_BACK.said()),
            }
        }
    }

    /// The cell of a kept text, where the chart still has it.
    fn typed_cell(self, kept: &str) -> Option<(Cell, String)> {
        let (place, text) = kept.split_once('\n')?;
        let mut words = place.splitn(3, ' ');
        let (row, column) = (words.next()?.parse().ok()?, words.next()?.parse().ok()?);
        let same = words.next()? == write(&self.chosen.read_untracked());
        (same && row < self.count_now()).then(|| (Cell { row, column }, text.to_owned()))
    }

    /// Where what is typed into this design is kept. One that is not kept itself goes by its name.
    fn typed_key(self) -> String {
        let name = match &*self.origin.read_untracked() {
            Origin::Kept(id) => id.clone(),
            _ => self.history.with_untracked(|history| history.present().title.clone()),
        };
        format!("stringloft/typed/{name}")
    }
}
