//! What stands at the left of the page: one of several views beside the curves.

use leptos::prelude::*;

use super::awaited::shown_by;
use super::string_chart::StringChart;
use super::tools::{CellLine, Tools};
use crate::app::store::{Part, Progress, Store, View};
use crate::app::widgets::menu::{arrow_keys, came_to, one_stop};

/// A view, the name of its button, its words, and what it is for.
type ViewRow = (View, &'static str, &'static str, &'static str);

/// In the order of the buttons.
const VIEWS: [ViewRow; 5] = [
    (View::Chart, "chart-view", "String chart", "Every string: type, and see what follows"),
    (
        View::Drawing,
        "drawing",
        "Drawing",
        "The harp to scale: shape, woods, loads, files for printer and cutter",
    ),
    (
        View::Choose,
        "choose-view",
        "Choose strings",
        "The best set of strings from a stock, and better lengths",
    ),
    (View::Order, "order-view", "Order", "What is to be ordered, and what it costs"),
    (View::Versions, "versions-view", "Versions", "Keep versions of the design, and compare them"),
];

/// The buttons of the views.
#[component]
pub fn ViewButtons(store: Store) -> impl IntoView {
    let buttons = VIEWS.map(|(view, id, words, title)| {
        let on = move || store.view.get() == view;
        view! {
            <button
                type="button"
                class="view-button stop"
                id=id
                title=title
                aria-pressed=move || if on() { "true" } else { "false" }
                on:click=move |_| store.view.set(view)
            >
                {words}
            </button>
        }
        .into_any()
    });
    one_stop("views");
    view! {
        <nav class="views" id="views" aria-label="Views" on:keydown=arrow_keys on:focusin=move |event| came_to(event.into())>
            {Vec::from(buttons)}
        </nav>
    }
}

/// The string chart with what can be done in it.
#[component]
fn Chart(store: Store) -> impl IntoView {
    view! {
        <section class="chart-panel" aria-label="Strings">
            <StringChart store=store/>
            // Seen above the chart, and after it for the keyboard.
            <Tools store=store/>
            <CellLine store=store/>
            <p id="chart-help" class="out-of-sight">
                "Arrow keys move, Enter types, Escape then Tab leaves the chart, F6 goes to the findings."
            </p>
        </section>
    }
}

/// The view that is chosen.
pub fn shown(store: Store) -> AnyView {
    let view = store.view.get();
    match Part::of_view(view) {
        None => untrack(|| view! { <Chart store=store/> }.into_any()),
        Some(part) => shown_by(store, part, |progress| match progress {
            Progress::Here(brought) => brought.view(view),
            _ => None,
        }),
    }
}
