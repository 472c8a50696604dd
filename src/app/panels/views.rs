//! What stands at the left of the page: one of several views beside the curves.

use leptos::prelude::*;

use super::choose::Choose;
use super::drawing::Drawing;
use super::order::Order;
use super::page::Chart;
use super::versions::Versions;
use crate::app::store::{Store, View};

/// A view, the name of its button, its words, what it is for, and its panel.
type Row = (View, &'static str, &'static str, &'static str, fn(Store) -> AnyView);

/// In the order of the buttons.
const VIEWS: [Row; 5] = [
    (
        View::Chart,
        "chart-view",
        "String chart",
        "Every string: type, and see what follows",
        |store| view! { <Chart store=store/> }.into_any(),
    ),
    (
        View::Drawing,
        "drawing",
        "Drawing",
        "The harp to scale: shape, woods, loads, files for printer and cutter",
        |store| view! { <Drawing store=store/> }.into_any(),
    ),
    (
        View::Choose,
        "choose-view",
        "Choose strings",
        "The best set of strings from a stock, and better lengths",
        |store| view! { <Choose store=store/> }.into_any(),
    ),
    (View::Order, "order-view", "Order", "What is to be ordered, and what it costs", |store| {
        view! { <Order store=store/> }.into_any()
    }),
    (
        View::Versions,
        "versions-view",
        "Versions",
        "Keep versions of the design, and compare them",
        |store| view! { <Versions store=store/> }.into_any(),
    ),
];

/// The buttons of the views.
#[component]
pub fn ViewButtons(store: Store) -> impl IntoView {
    let buttons = VIEWS.map(|(view, id, words, title, _)| {
        let on = move || store.view.get() == view;
        view! {
            <button
                type="button"
                class="view-button"
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
    view! { <nav class="views" aria-label="Views">{Vec::from(buttons)}</nav> }
}

/// The view that is chosen.
pub fn shown(store: Store) -> AnyView {
    let view = store.view.get();
    let row = VIEWS.iter().find(|row| row.0 == view).unwrap_or(&VIEWS[0]);
    (row.4)(store)
}
