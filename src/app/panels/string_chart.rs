//! The string chart: a grid after the ARIA pattern, typed into like a spreadsheet.

pub(super) mod body;
mod field;

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{ClipboardEvent, Element, KeyboardEvent, MouseEvent};

use self::body::keep_rows;
use super::chart_acts::{act, paste, put_on_clipboard, select};
use super::chart_keys::{Ask, ask};
use super::numbers::topic_of;
use crate::app::browser;
use crate::app::columns::widths;
use crate::app::grid::{Cell, Shown};
use crate::app::rows::{self, ChartWords, Head, cell_id};
use crate::app::store::Store;
use crate::app::widgets::list::while_so;
use crate::design::edit::Column;
use crate::words::chart_page as say;

/// The string chart.
#[component]
pub fn StringChart(store: Store) -> impl IntoView {
    let words = Memo::new(move |before: Option<&ChartWords>| {
        ChartWords::after(
            before,
            store.design.get(),
            store.resolved.get(),
            store.analysis.get(),
            store.columns.get(),
        )
    });
    let count = Memo::new(move |_| words.with(|words| words.rows.len()));
    let table = NodeRef::new();
    keep_rows(store, words, table);
    let widths = Memo::new(move |_| widths(&store.design.read(), &store.columns.read()));
    // After Escape the tab key leaves the chart, so that no one is caught in it.
    let leaving = StoredValue::new(false);
    let on_keys = move |event: KeyboardEvent| {
        if store.typing.with_untracked(Option::is_some) {
            return;
        }
        let Some(asked) = ask(&event) else { return };
        if matches!(asked, Ask::Tab { .. }) && leaving.get_value() {
            return;
        }
        leaving.set_value(asked == Ask::Drop);
        if act(store, &asked) {
            event.prevent_default();
        }
    };
    let dragging = StoredValue::new(false);
    let on_down = move |event: MouseEvent| {
        if let Some(cell) = cell_of(&event)
            && event.button() == 0
        {
            // What is being typed goes into its own cell, before the cursor leaves that.
            if store.typing.with_untracked(Option::is_some) {
                browser::focus("chart");
            }
            dragging.set_value(true);
            select(store, cell, event.shift_key());
        }
    };
    let on_move = move |event: MouseEvent| {
        let cell = cell_of(&event);
        if let (Some(cell), true, 1) = (cell, dragging.get_value(), event.buttons()) {
            select(store, cell, true);
        }
        store.hover.set(cell.map(|cell| cell.row));
    };
    let active = move || {
        let Cell { row, column } = store.selection.get().cursor;
        cell_id(row, column)
    };
    view! {
        <div class="chart-scroll" id="chart-scroll">
            <table
                node_ref=table
                id="chart"
                class="chart"
                role="grid"
                tabindex="0"
                aria-label=say::CHART.said()
                aria-describedby="chart-help"
                aria-multiselectable="true"
                aria-rowcount=move || count.get() + 1
                style=("--columns", move || widths.read().0.clone())
                style=("--wide", move || format!("{:.1}em", widths.read().1))
                aria-activedescendant=active
                on:keydown=on_keys
                on:mousedown=on_down
                on:mousemove=on_move
                on:mouseleave=move |_| store.hover.set(None)
                on:mouseup=move |_| dragging.set_value(false)
                on:dblclick=move |event| {
                    if cell_of(&event).is_some() {
                        act(store, &Ask::Type);
                    }
                }
                on:copy=move |event: ClipboardEvent| put_on_clipboard(store, &event)
                on:cut=move |event: ClipboardEvent| {
                    put_on_clipboard(store, &event);
                    if store.typing.with_untracked(Option::is_none) {
                        act(store, &Ask::Clear);
                    }
                }
                on:paste=move |event: ClipboardEvent| paste(store, &event)
            >
                <Heads store=store/>
            </table>
            {while_so(
                move || count.get() == 0,
                || view! {
                    <p class="chart-empty">
                        {say::EMPTY.said()}
                    </p>
                }.into_any(),
            )}
        </div>
    }
}

#[component]
fn Heads(store: Store) -> impl IntoView {
    let heads = Memo::new(move |_| {
        let units = store.design.read().units;
        let head = |shown: &Shown| (*shown, rows::head(*shown, &units));
        store.columns.read().iter().map(head).collect::<Vec<_>>()
    });
    let cells = move || {
        let head = |(shown, Head { word, unit, meaning }): (Shown, Head)| {
            let words =
                matches!(shown, Shown::Typed(Column::Note | Column::MakeUp | Column::OrderCode));
            // Reached by the mouse, and by F1 from the cells below; so no stop of the tab key.
            let word = match topic_of(shown) {
                Some(topic) => view! {
                    <button
                        type="button"
                        class="head-link"
                        tabindex="-1"
                        on:mousedown=|event| event.prevent_default()
                        on:click=move |_| store.explain(topic)
                    >
                        {word}
                    </button>
                }
                .into_any(),
                None => word.into_any(),
            };
            view! {
                <th scope="col" role="columnheader" class:words=words title=meaning>
                    {word}
                    <span class="unit">{unit}</span>
                </th>
            }
        };
        heads.get().into_iter().map(head).collect_view()
    };
    view! {
        <thead role="rowgroup">
            <tr role="row">
                <th scope="col" role="columnheader" title=say::NUMBER_HINT.said()>{say::NUMBER.said()}</th>
                <th scope="col" role="columnheader" title=say::OCTAVE_HINT.said()>
                    {say::OCTAVE.said()}
                </th>
                {cells}
            </tr>
        </thead>
    }
}

/// The cell under the mouse.
fn cell_of(event: &MouseEvent) -> Option<Cell> {
    let target: Element = event.target()?.dyn_into().ok()?;
    let cell = target.closest("td[role=gridcell]").ok()??;
    let (row, column) =
        cell.id().strip_prefix("cell-")?.split_once('-').map(|(a, b)| (a.parse(), b.parse()))?;
    Some(Cell { row: row.ok()?, column: column.ok()? })
}
