//! What can be done with the selected strings, in words above the chart.

use leptos::prelude::*;

use super::chart_acts::act;
use super::chart_keys::Ask;
use super::numbers::topic_here;
use crate::app::browser;
use crate::app::rows;
use crate::app::store::{Store, Window};
use crate::app::widgets::button::button;
use crate::app::widgets::list;
use crate::app::widgets::menu::{arrow_keys, came_to, one_stop};
use crate::design::explain::Topic;
use crate::words::{Words, chart_page as say};

/// The row of actions above the string chart.
#[component]
pub fn Tools(store: Store) -> impl IntoView {
    let of_chart = move |words: Words, hint: Words, ask: Ask| {
        button("tool stop", "", hint.said(), words.said(), move || {
            act(store, &ask);
            browser::focus("chart");
        })
    };
    one_stop("tools");
    view! {
        <div class="tools" id="tools" role="toolbar" aria-label=say::TOOLS.said() on:keydown=arrow_keys on:focusin=move |event| came_to(event.into())>
            <span class="tool-group">
                {of_chart(say::INSERT, say::INSERT_HINT, Ask::Insert)}
                {of_chart(say::DUPLICATE, say::DUPLICATE_HINT, Ask::Duplicate)}
                {of_chart(say::DELETE, say::DELETE_HINT, Ask::Delete)}
                {of_chart(say::UP, say::UP_HINT, Ask::Shift { up: true })}
                {of_chart(say::DOWN, say::DOWN_HINT, Ask::Shift { up: false })}
            </span>
            <span class="tool-group">
                {of_chart(say::ADD_TREBLE, say::ADD_TREBLE_HINT, Ask::Extend { up: true })}
                {of_chart(say::ADD_BASS, say::ADD_BASS_HINT, Ask::Extend { up: false })}
            </span>
            <span class="tool-group">
                {of_chart(say::FILL_DOWN, say::FILL_DOWN_HINT, Ask::FillDown)}
                {button("tool stop", "make-up", say::MAKE_UP_HINT.said(), say::MAKE_UP.said(), move || store.window.set(Some(Window::MakeUp)))}
                {button("tool stop", "exchange", say::EXCHANGE_HINT.said(), say::EXCHANGE.said(), move || if store.count() > 0 { store.window.set(Some(Window::Exchange)) })}
                {button("tool stop", "", say::DETAILS_HINT.said(), say::DETAILS.said(), move || if store.count() > 0 { store.window.set(Some(Window::Details)) })}
            </span>
        </div>
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
                {button("quiet", "", "F1", say::EXPLAIN.said(), move || store.explain(topic))}
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
