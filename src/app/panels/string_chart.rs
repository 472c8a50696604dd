//! The string chart: a grid after the ARIA pattern, typed into like a spreadsheet.

use std::sync::Arc;

use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{ClipboardEvent, Element, KeyboardEvent, MouseEvent};

use super::chart_acts::{act, finish, finish_rows, paste, put_on_clipboard, select};
use super::chart_keys::{Ask, ask};
use super::numbers::topic_of;
use crate::app::browser;
use crate::app::grid::{Cell, SHOWN, Step, shown};
use crate::app::rows::{self, Head, RowWords};
use crate::app::store::{Store, Typing};
use crate::app::widgets::list::{self, list, part, while_so};
use crate::design::edit::Column;
use crate::design::explain::Topic;

/// The string chart.
#[component]
pub fn StringChart(store: Store) -> impl IntoView {
    let rows = Memo::new(move |_| {
        rows::rows(&store.design.read(), &store.resolved.read(), &store.analysis.read())
    });
    let count = Memo::new(move |_| rows.with(Vec::len));
    let columns = Memo::new(move |_| shown(&store.design.read()).len());
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
        format!("cell-{row}-{column}")
    };
    view! {
        <div class="chart-scroll" id="chart-scroll">
            <table
                id="chart"
                class="chart"
                role="grid"
                tabindex="0"
                aria-label="String chart"
                aria-describedby="chart-help"
                aria-multiselectable="true"
                aria-rowcount=move || count.get() + 1
                style=("--columns", move || columns.get().to_string())
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
                <tbody role="rowgroup">
                    {list(move || {
                        let row = |index| part(&index, move || Row(RowProps { store, index, rows }).into_any());
                        (0..count.get()).map(row).collect()
                    })}
                </tbody>
            </table>
            {while_so(
                move || count.get() == 0,
                || view! {
                    <p class="chart-empty">
                        "No strings yet. Paste notes and lengths from a spreadsheet here, or choose New above."
                    </p>
                }.into_any(),
            )}
        </div>
    }
}

#[component]
fn Heads(store: Store) -> impl IntoView {
    let heads = Memo::new(move |_| {
        let design = store.design.read();
        shown(&design).into_iter().map(topic_of).zip(rows::heads(&design)).collect::<Vec<_>>()
    });
    let cells = move || {
        let head = |(topic, Head { word, unit, meaning }): (Option<Topic>, Head)| {
            // Reached by the mouse, and by F1 from the cells below; so no stop of the tab key.
            let word = match topic {
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
                <th scope="col" role="columnheader" title=meaning>
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
                <th scope="col" role="columnheader" title="Number from the top: string 1 is the highest.">"No."</th>
                <th scope="col" role="columnheader" title="The harpist's octave: counted from the top, each from E down to F.">
                    "Oct."
                </th>
                {cells}
            </tr>
        </thead>
    }
}

/// What of the selection touches one row.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
struct RowState {
    selected: Option<(usize, usize)>,
    cursor: Option<usize>,
    typing: Option<Typing>,
}

/// A row is drawn as a whole when its words or its share of the selection change: one effect for a
/// row and not several for a cell, which would all be asked at every edit.
#[component]
fn Row(store: Store, index: usize, rows: Memo<Vec<Arc<RowWords>>>) -> impl IntoView {
    let words = Memo::new(move |_| rows.with(|rows| rows.get(index).cloned()).unwrap_or_default());
    let state = Memo::new(move |_| {
        let selection = store.selection.get();
        let here = selection.cursor.row == index;
        let columns = selection.columns();
        RowState {
            selected: selection.rows().contains(&index).then(|| (*columns.start(), *columns.end())),
            cursor: here.then_some(selection.cursor.column),
            typing: if here { store.typing.get() } else { None },
        }
    });
    let hovered = Memo::new(move |_| store.hover.get() == Some(index));
    let class = move || {
        let words = words.read();
        let note = match words.mark {
            Some("C") => "is-c",
            Some(_) => "is-f",
            None => "",
        };
        let weight = match words.weight {
            Some(0) => "grave",
            Some(1) => "warned",
            _ => "",
        };
        let cursor = if state.read().cursor.is_some() { "has-cursor" } else { "" };
        let hovered = if hovered.get() { "hovered" } else { "" };
        format!("{note} {weight} {cursor} {hovered}")
    };
    let cells = move || {
        let (words, state) = (words.read(), state.read());
        let cell = |column| cell(store, Cell { row: index, column }, &words, &state);
        (0..words.cells.len()).map(cell).collect_view()
    };
    view! {
        <tr role="row" aria-rowindex=index + 2 class=class>
            <th scope="row" role="rowheader">{index + 1}</th>
            <td class="octave" role="rowheader">{list::words(move || words.with(|w| w.octave.clone()))}</td>
            {cells}
        </tr>
    }
}

fn cell(store: Store, place: Cell, words: &RowWords, state: &RowState) -> impl IntoView + use<> {
    let Cell { row, column } = place;
    let typed = SHOWN[column].typed();
    let words = words.cells.get(column).cloned().unwrap_or_default();
    let selected = state.selected.is_some_and(|(a, b)| (a..=b).contains(&column));
    let cursor = state.cursor == Some(column);
    let title = words.title();
    let wrong = words.error.is_some();
    let mut class = String::new();
    for (holds, name) in [
        (typed.is_some(), "typed"),
        (matches!(typed, Some(Column::MakeUp | Column::OrderCode | Column::Note)), "words"),
        (selected, "selected"),
        (cursor, "cursor"),
        (wrong, "wrong"),
        (words.unknown, "unknown"),
    ] {
        if holds {
            class.push_str(name);
            class.push(' ');
        }
    }
    let content = match state.typing.clone().filter(|_| cursor) {
        Some(typing) => view! { <CellField store=store typing=typing column=column/> }.into_any(),
        None => words.text.into_any(),
    };
    view! {
        <td
            id=format!("cell-{row}-{column}")
            role="gridcell"
            class=class
            aria-readonly=if typed.is_some() { "false" } else { "true" }
            aria-selected=if selected { "true" } else { "false" }
            aria-invalid=wrong.then_some("true")
            title=title
        >
            {content}
        </td>
    }
}

/// The field that stands in a cell while it is typed into.
#[component]
fn CellField(store: Store, typing: Typing, column: usize) -> impl IntoView {
    let field = NodeRef::<html::Input>::new();
    let Typing { text, quick } = typing;
    field.on_load(move |input| {
        let _ = input.focus();
        if !quick {
            input.select();
        }
    });
    let commit = move || {
        // A field that is taken away loses the keyboard too: then there is nothing left to do.
        if store.typing.with_untracked(Option::is_some)
            && let Some(input) = field.get_untracked()
        {
            finish(store, column, &input.value());
        }
    };
    let on_keys = move |event: KeyboardEvent| {
        event.stop_propagation();
        let shift = event.shift_key();
        let leave = match event.key().as_str() {
            "Enter" => Some(if shift { Step::Up } else { Step::Down }),
            "ArrowUp" if quick => Some(Step::Up),
            "ArrowDown" if quick => Some(Step::Down),
            _ => None,
        };
        if event.is_composing() {
            return;
        }
        if event.key() == "Enter" && (event.ctrl_key() || event.meta_key()) {
            event.prevent_default();
            if let Some(input) = field.get_untracked() {
                finish_rows(store, column, &input.value());
            }
            browser::focus("chart");
        } else if let Some(step) = leave {
            event.prevent_default();
            commit();
            act(store, &Ask::Move { step, extend: false });
            browser::focus("chart");
        } else if event.key() == "Tab" {
            event.prevent_default();
            commit();
            act(store, &Ask::Tab { forward: !shift });
            browser::focus("chart");
        } else if event.key() == "Escape" {
            event.prevent_default();
            store.typing.set(None);
            browser::focus("chart");
        }
    };
    view! {
        <input
            node_ref=field
            class="cell-field"
            type="text"
            autocomplete="off"
            spellcheck="false"
            aria-label="Cell"
            prop:value=text
            on:keydown=on_keys
            on:blur=move |_| commit()
            on:copy=|event| event.stop_propagation()
            on:cut=|event| event.stop_propagation()
            on:paste=|event| event.stop_propagation()
            on:mousedown=|event| event.stop_propagation()
            on:dblclick=|event: MouseEvent| event.stop_propagation()
        />
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
