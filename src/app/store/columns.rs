//! The columns of the string chart: chosen by the maker and kept with the browser.

use leptos::prelude::*;

use super::super::browser::{self, StorageError, Worked};
use super::super::columns::{read, write};
use super::super::grid::{Cell, Selection, Shown};
use super::Store;
use crate::words::page as say;

/// Where the columns in use are kept, and the last ones that were put together by hand.
const IN_USE: &str = "stringloft/columns";
const OWN: &str = "stringloft/own-columns";

impl Store {
    /// Shows the columns that were chosen in this browser before.
    pub fn first_columns(self) {
        if let Some(text) = browser::kept(IN_USE) {
            self.chosen.set(read(&text));
        }
    }

    /// The columns that were put together by hand, if any were.
    pub fn own_columns(self) -> Option<Vec<Shown>> {
        browser::kept(OWN).map(|text| read(&text))
    }

    /// Shows these columns. The cursor stays on its column where that is still shown.
    pub fn show_columns(self, chosen: Vec<Shown>) {
        let cursor = self.selection.get_untracked().cursor;
        let here = self.column_at(cursor.column);
        let kept = browser::keep(IN_USE, &write(&chosen));
        self.chosen.set(chosen);
        let columns = self.columns.get_untracked();
        let place = columns.iter().position(|shown| Some(*shown) == here);
        self.typing.set(None);
        self.selection.set(Selection::at(cursor.row, place.unwrap_or(0)));
        self.told_kept(kept);
    }

    /// Shows columns that were put together by hand.
    pub fn show_own_columns(self, chosen: Vec<Shown>) {
        let kept = browser::keep(OWN, &write(&chosen));
        self.show_columns(chosen);
        self.told_kept(kept);
    }

    fn told_kept(self, kept: Result<Worked, StorageError>) {
        if let Err(why) = kept {
            self.complain(say::columns_forgotten(&why));
        }
    }

    /// The column at a place of the chart.
    pub fn column_at(self, place: usize) -> Option<Shown> {
        self.columns.with_untracked(|columns| columns.get(place).copied())
    }

    /// The cell of a column in a row. A column that is hidden is shown, as the last one.
    pub fn cell_in(self, row: usize, shown: Shown) -> Cell {
        let find = || self.columns.with_untracked(|all| all.iter().position(|one| *one == shown));
        let column = find().unwrap_or_else(|| {
            let mut chosen = self.chosen.get_untracked();
            chosen.push(shown);
            self.show_columns(chosen);
            find().unwrap_or(0)
        });
        Cell { row, column }
    }
}
