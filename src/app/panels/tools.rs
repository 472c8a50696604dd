//! What can be done with the selected strings, in words above the chart.

use leptos::prelude::*;

use super::chart_acts::{act, go_to, room};
use super::chart_keys::Ask;
use super::numbers::topic_here;
use crate::app::browser;
use crate::app::rows;
use crate::app::store::{Store, Window};
use crate::app::widgets::button::button;
use crate::app::widgets::list;
use crate::app::widgets::menu::{arrow_keys, came_to, one_stop};
use crate::design::edit::Edit;
use crate::design::explain::Topic;

/// The row of actions above the string chart.
#[component]
pub fn Tools(store: Store) -> impl IntoView {
    let of_chart = move |words: &'static str, hint: &'static str, action: fn(Store)| {
        button("tool stop", "", hint, words, move || {
            action(store);
            browser::focus("chart");
        })
    };
    one_stop("tools");
    view! {
        <div class="tools" id="tools" role="toolbar" aria-label="Selected strings" on:keydown=arrow_keys on:focusin=move |event| came_to(event.into())>
            <span class="tool-group">
                {of_chart("Insert", "Put in a string above the cursor (Insert key)", |s| { act(s, &Ask::Insert); })}
                {of_chart("Duplicate", "Repeat the selected strings below", duplicate)}
                {of_chart("Delete", "Take the selected strings out (Ctrl+Delete)", |s| { act(s, &Ask::Delete); })}
                {of_chart("Up", "Move the selected strings up (Ctrl+Shift+Up)", |s| { act(s, &Ask::Shift { up: true }); })}
                {of_chart("Down", "Move the selected strings down (Ctrl+Shift+Down)", |s| { act(s, &Ask::Shift { up: false }); })}
            </span>
            <span class="tool-group">
                {of_chart("Add treble", "Extend the compass by one note above string 1", |s| extend(s, true))}
                {of_chart("Add bass", "Extend the compass by one note below the last string", |s| extend(s, false))}
            </span>
            <span class="tool-group">
                {of_chart("Fill down", "Fill the selection from its first row (Ctrl+D)", |s| { act(s, &Ask::FillDown); })}
                {button("tool stop", "make-up", "Material, gauge and windings of the selected strings (Ctrl+Enter)", "Make-up", move || store.window.set(Some(Window::MakeUp)))}
                {button("tool stop", "exchange", "The selected strings in another material: gut, nylon, fluorocarbon", "Exchange", move || if store.count() > 0 { store.window.set(Some(Window::Exchange)) })}
                {button("tool stop", "", "Every figure of the string, its partials and its levers (Alt+Enter)", "Details", move || if store.count() > 0 { store.window.set(Some(Window::Details)) })}
            </span>
        </div>
    }
}

fn duplicate(store: Store) {
    let rows = store.selection.get_untracked().rows();
    let strings = store.design.with_untracked(|design| {
        let last = (*rows.end() + 1).min(design.strings.len());
        design.strings.get(*rows.start()..last).unwrap_or_default().to_vec()
    });
    if room(store, strings.len()) {
        store.send(&Edit::Insert { row: *rows.end() + 1, strings });
    }
}

fn extend(store: Store, up: bool) {
    if !room(store, 1) {
        return;
    }
    let edit = if up { Edit::ExtendUp { count: 1 } } else { Edit::ExtendDown { count: 1 } };
    if store.tell(store.change(&edit), "") {
        let last = store.count().saturating_sub(1);
        go_to(store, if up { 0 } else { last });
    }
}

/// Says what the cell under the cursor means, or what is wrong with it, and leads on to how a figure is
/// worked out.
#[component]
pub fn CellLine(store: Store) -> impl IntoView {
    let words = move || {
        let cursor = store.selection.get().cursor;
        rows::explained(
            &store.design.read(),
            &store.resolved.read(),
            &store.analysis.read(),
            cursor.row,
            store.columns.read().get(cursor.column).copied(),
        )
    };
    let words = Memo::new(move |_| words());
    let topic = Memo::new(move |_| match topic_here(store, store.selection.get().cursor.column) {
        Some(topic @ Topic::Figure(_)) if store.count() > 0 => Some(topic),
        _ => None,
    });
    let more = move || {
        topic.get().map(|topic| {
            view! {
                {button("quiet", "", "F1", "How it is worked out", move || store.explain(topic))}
            }
        })
    };
    view! {
        <div class="cell-line" class:wrong=move || words.read().1>
            <p aria-live="polite">{list::words(move || words.read().0.clone())}</p>
            {more}
        </div>
    }
}
