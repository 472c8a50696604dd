//! A small table of numbers: typed over, walked through by the arrow keys, pasted from a spreadsheet.

use leptos::prelude::*;
use web_sys::{ClipboardEvent, KeyboardEvent};

use super::fields::{Draft, block};
use super::list::{list, part, while_so, words};
use crate::app::browser;
use crate::design::settings::NumberRow;
use crate::words::page as say;
use crate::words::papers::titled;

/// A table. It is `Copy`, so that every part of it can have it.
#[derive(Clone, Copy)]
pub struct NumberTable {
    /// Unique on the page.
    pub id: &'static str,
    /// What it is, for those who do not see it.
    pub title: &'static str,
    /// The head of the column of names.
    pub of: &'static str,
    /// The columns.
    pub columns: &'static [NumberRow],
    /// The rows, each with a number for every column.
    pub rows: Signal<Vec<Vec<f64>>>,
    /// The name of each row.
    pub names: Signal<Vec<String>>,
    /// Takes the rows when they were changed.
    pub set: Callback<Vec<Vec<f64>>>,
    /// The fewest rows and the most, where rows can come and go.
    pub count: Option<(usize, usize)>,
    /// The row with the keyboard.
    pub here: RwSignal<Option<usize>>,
}

impl NumberTable {
    /// The table.
    pub fn view(self) -> AnyView {
        let refused = RwSignal::new(String::new());
        let rows = move || {
            let count = self.rows.with(Vec::len);
            let rows = (0..count).map(|row| part(&(row, count), move || self.row(row, refused)));
            rows.collect()
        };
        let heads: Vec<AnyView> = self
            .columns
            .iter()
            .map(|column| {
                let unit = (!column.unit.is_empty()).then(|| format!(", {}", column.unit));
                view! { <th scope="col">{column.label.said()}{unit}</th> }.into_any()
            })
            .collect();
        let last = self.count.map(|_| view! { <td></td> }.into_any());
        view! {
            <table class="number-table" aria-label=self.title>
                <thead><tr><th scope="col">{self.of}</th>{heads}{last}</tr></thead>
                <tbody>{list(rows)}</tbody>
            </table>
            <p class="wrong" role="alert">{words(move || refused.get())}</p>
        }
        .into_any()
    }

    fn name(self, row: usize) -> String {
        self.names.with(|names| names.get(row).cloned().unwrap_or_default())
    }

    fn row(self, row: usize, refused: RwSignal<String>) -> AnyView {
        let drafts: Vec<Draft> = (0..self.columns.len()).map(|at| self.draft(row, at)).collect();
        let cells: Vec<AnyView> = drafts
            .iter()
            .enumerate()
            .map(|(at, draft)| self.cell((row, at), *draft, refused))
            .collect();
        let width = self.columns.len() + 1 + usize::from(self.count.is_some());
        let said: Vec<AnyView> = drafts.iter().map(|draft| draft.said()).collect();
        let remove = self.count.map(|(fewest, _)| {
            let more = move || self.rows.with(Vec::len) > fewest;
            let button = move || {
                let label = move || say::remove_row(&self.of, &self.name(row));
                view! {
                    <button type="button" class="quiet" aria-label=label on:click=move |_| self.remove(row)>{say::REMOVE.said()}</button>
                }
                .into_any()
            };
            view! { <td>{while_so(more, button)}</td> }.into_any()
        });
        view! {
            <tr><th scope="row">{words(move || self.name(row))}</th>{cells}{remove}</tr>
            <tr class="said"><td colspan=width>{said}</td></tr>
        }
        .into_any()
    }

    fn cell(self, (row, at): (usize, usize), draft: Draft, refused: RwSignal<String>) -> AnyView {
        let label =
            move || titled(&format!("{} {}", self.of, self.name(row)), &self.columns[at].label);
        let keys = move |event: KeyboardEvent| {
            draft.go_back(&event);
            let next = match event.key().as_str() {
                "ArrowUp" => row.checked_sub(1),
                "ArrowDown" => Some(row + 1),
                _ => None,
            };
            if let Some(next) = next {
                event.prevent_default();
                browser::focus(&self.cell_id(next, at));
            }
        };
        let focus = move |_| self.here.set(Some(row));
        let leave = move |_| {
            // A cell that goes from the page loses the keyboard when nothing of its table is left.
            let Some(here) = self.here.try_get_untracked() else { return };
            draft.leave();
            refused.set(String::new());
            if here == Some(row) {
                self.here.set(None);
            }
        };
        view! {
            <td>
                <input
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    id=self.cell_id(row, at)
                    aria-label=label
                    prop:value=move || draft.shown()
                    aria-invalid=move || draft.is_wrong().then_some("true")
                    on:input=move |event| draft.take(event_target_value(&event))
                    on:focus=focus
                    on:blur=leave
                    on:keydown=keys
                    on:paste=move |event| self.paste((row, at), &event, refused)
                />
            </td>
        }
        .into_any()
    }

    fn cell_id(self, row: usize, at: usize) -> String {
        format!("{}-{row}-{at}", self.id)
    }

    fn draft(self, row: usize, at: usize) -> Draft {
        let value =
            move || self.rows.with(|rows| rows.get(row).and_then(|row| row.get(at)).copied());
        let put = move |number: Option<f64>| {
            let mut rows = self.rows.get_untracked();
            let cell = rows.get_mut(row).and_then(|row| row.get_mut(at));
            if let (Some(cell), Some(number)) = (cell, number) {
                *cell = number;
                self.set.run(rows);
            }
        };
        Draft::new(self.columns[at], Signal::derive(value), Callback::new(put))
    }

    fn remove(self, row: usize) {
        let mut rows = self.rows.get_untracked();
        if row < rows.len() {
            rows.remove(row);
            let next = row.min(rows.len().saturating_sub(1));
            self.set.run(rows);
            let id = self.cell_id(next, 0);
            request_animation_frame(move || browser::focus(&id));
        }
    }

    /// Takes several numbers at once; a single one is left to the field.
    fn paste(self, (row, at): (usize, usize), event: &ClipboardEvent, refused: RwSignal<String>) {
        let text = event.clipboard_data().and_then(|data| data.get_data("text/plain").ok());
        let text = text.unwrap_or_default();
        if !text.trim_end().contains(['\n', '\t']) {
            return;
        }
        event.prevent_default();
        let mut rows = self.rows.get_untracked();
        let most = self.count.map_or(0, |(_, most)| most).max(rows.len());
        let lines = text.trim_end().lines().count();
        if row + lines > most {
            let room = most - row;
            refused.set(say::no_room(&lines, &room));
            return;
        }
        match block(&text, &self.columns[at..]) {
            Ok(block) => {
                for (place, line) in block.into_iter().enumerate() {
                    if row + place == rows.len() {
                        rows.extend(rows.last().cloned());
                    }
                    if let Some(cells) = rows.get_mut(row + place) {
                        cells
                            .iter_mut()
                            .skip(at)
                            .zip(line)
                            .for_each(|(cell, number)| *cell = number);
                    }
                }
                refused.set(String::new());
                self.set.run(rows);
            }
            Err((line, got)) => refused.set(say::no_number(&got, &line)),
        }
    }
}
