//! The harp in one line: strings, compass, pull, the tightest string.

use leptos::prelude::*;

use super::chart_acts::go_to;
use crate::app::rows;
use crate::app::store::Store;

/// The summary, always in sight.
#[component]
pub fn Summary(store: Store) -> impl IntoView {
    let words = Memo::new(move |_| rows::summary(&store.design.read(), &store.analysis.read()));
    let tightest = move || {
        words.with(|w| w.tightest.clone()).map(|(row, text)| {
            view! {
                <button type="button" class="link" on:click=move |_| go_to(store, row)>{text}</button>
            }
        })
    };
    view! {
        <section class="summary" aria-label="Summary">
            <dl>
            <div><dt>"Strings"</dt><dd id="sum-strings">{move || words.with(|w| w.strings.clone())}</dd></div>
            <div><dt>"Compass"</dt><dd id="sum-compass">{move || words.with(|w| w.compass.clone())}</dd></div>
            <div class="total">
                <dt>"Total tension"</dt>
                <dd id="sum-total">
                    <strong>{move || words.with(|w| w.newtons.clone())}</strong>
                    <span>{move || words.with(|w| w.other_units.clone())}</span>
                </dd>
            </div>
            <div><dt>"Tightest"</dt><dd id="sum-tightest">{tightest}</dd></div>
            </dl>
            <p class="facts">{move || words.with(|w| w.facts.clone())}</p>
            <p class="missing">{move || words.with(|w| w.missing.clone())}</p>
        </section>
    }
}
