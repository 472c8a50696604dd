//! The field in a cell of the string chart.

use leptos::html;
use leptos::prelude::*;
use web_sys::{KeyboardEvent, MouseEvent};

use crate::app::browser;
use crate::app::grid::{Shown, Step};
use crate::app::panels::chart_acts::{act, finish, finish_rows};
use crate::app::panels::chart_keys::Ask;
use crate::app::store::{Part, Store, Typing};
use crate::design::edit::Column;
use crate::words::chart_page as say;

/// The field that stands in a cell while it is typed into.
#[component]
pub fn CellField(store: Store, typing: Typing, column: usize) -> impl IntoView {
    let field = NodeRef::<html::Input>::new();
    let Typing { text, quick } = typing;
    // A finger gets the keys of numbers, but for a size with a unit of its own.
    let of_numbers =
        matches!(store.column_at(column), Some(Shown::Typed(Column::Length | Column::Gauge)));
    let digits = of_numbers && !text.contains(|sign: char| sign.is_ascii_alphabetic());
    field.on_load(move |input| {
        // It brings the list of what a string could be.
        store.ask(Part::Windows);
        let _ = input.focus();
        if !quick {
            input.select();
        }
    });
    let commit = move || {
        // A field that is taken away loses the keyboard too: then there is nothing left to do.
        if store.typing.with_untracked(Option::is_some)
            && let Some(Some(input)) = field.try_get_untracked()
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
            inputmode=digits.then_some("decimal")
            aria-label=say::CELL.said()
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
