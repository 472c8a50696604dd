//! What stands at the left of the page: one of several views beside the curves.

use leptos::prelude::*;

use super::awaited::shown_by;
use super::string_chart::StringChart;
use super::tools::{CellLine, Tools};
use crate::app::browser;
use crate::app::store::{Part, Progress, Store, View};
use crate::app::widgets::menu::{arrow_keys, came_to, one_stop};
use crate::words::{Words, page as say};

/// A view, the name of its button, and its words. What each is for comes with the menus.
type ViewRow = (View, &'static str, Words);

/// In the order of the buttons.
const VIEWS: [ViewRow; 6] = [
    (View::Chart, "chart-view", say::CHART),
    (View::Drawing, "drawing", say::DRAWING),
    (View::Parts, "parts-view", say::PARTS),
    (View::Choose, "choose-view", say::CHOOSE),
    (View::Order, "order-view", say::ORDER),
    (View::Versions, "versions-view", say::VERSIONS),
];

/// The buttons of the views.
#[component]
pub fn ViewButtons(store: Store) -> impl IntoView {
    let buttons = VIEWS.map(|(view, id, words)| {
        let on = move || store.view.get() == view;
        view! {
            <button
                type="button"
                class="view-button stop"
                id=id
                aria-pressed=move || if on() { "true" } else { "false" }
                on:click=move |_| {
                    store.view.set(view);
                    browser::show(id);
                }
            >
                {words.said()}
            </button>
        }
        .into_any()
    });
    one_stop("views");
    view! {
        <nav class="views" id="views" aria-label=say::VIEWS.said() on:keydown=arrow_keys on:focusin=move |event| came_to(event.into())>
            {Vec::from(buttons)}
        </nav>
    }
}

/// The string chart with what can be done in it.
#[component]
fn Chart(store: Store) -> impl IntoView {
    view! {
        <section class="chart-panel" aria-label=say::STRINGS.said()>
            <StringChart store=store/>
            // Seen above the chart, and after it for the keyboard.
            <Tools store=store/>
            <CellLine store=store/>
            <p id="chart-help" class="out-of-sight">
                {say::CHART_HELP.said()}
            </p>
        </section>
    }
}

/// The view that is chosen.
pub fn shown(store: Store) -> AnyView {
    let view = store.view.get();
    match Part::of_view(view) {
        None => untrack(|| view! { <Chart store=store.here()/> }.into_any()),
        Some(part) => shown_by(store, part, |progress| match progress {
            Progress::Here(brought) => brought.view(view),
            _ => None,
        }),
    }
}
