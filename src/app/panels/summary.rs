//! The harp in one line: strings, compass, pull, the tightest string.

use leptos::prelude::*;

use super::chart_acts::go_to;
use crate::app::rows;
use crate::app::store::Store;
use crate::app::widgets::list::words;

/// The summary, always in sight.
#[component]
pub fn Summary(store: Store) -> impl IntoView {
    let told = Memo::new(move |_| rows::summary(&store.design.read(), &store.analysis.read()));
    let tightest = move || {
        told.with(|w| w.tightest.clone()).map(|(row, text)| {
            view! {
                <button type="button" class="link" on:click=move |_| go_to(store, row)>{text}</button>
            }
        })
    };
    view! {
        <section class="summary" aria-label="Summary">
            <dl>
            <div><dt>"Strings"</dt><dd id="sum-strings">{words(move || told.with(|w| w.strings.clone()))}</dd></div>
            <div><dt>"Compass"</dt><dd id="sum-compass">{words(move || told.with(|w| w.compass.clone()))}</dd></div>
            <div class="total">
                <dt>"Total tension"</dt>
                <dd id="sum-total">
                    <strong>{words(move || told.with(|w| w.newtons.clone()))}</strong>
                    <span>{words(move || told.with(|w| w.other_units.clone()))}</span>
                </dd>
            </div>
            <div><dt>"Tightest"</dt><dd id="sum-tightest">{tightest}</dd></div>
            </dl>
            <p class="facts">{words(move || told.with(|w| w.facts.clone()))}</p>
            <p class="missing">{words(move || told.with(|w| w.missing.clone()))}</p>
        </section>
    }
}
