//! What the years do: how far wood creeps under the strings, and what the seasons move.

use leptos::prelude::*;

use crate::app::frame::Frame;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part};
use crate::design::advice;
use crate::design::explain::Topic;
use crate::design::giving::gives_of;
use crate::design::years::{self, HEADS, MEANING, years_of};

/// What becomes of the frame, the board and the tuning.
#[component]
pub fn YearsTable(store: Store) -> impl IntoView {
    let Frame { band, borne } = Frame::here();
    let told = Memo::new(move |_| {
        let (band, borne) = (band.read(), borne.read());
        let (design, resolved) = (store.design.read(), store.resolved.read());
        let analysis = store.analysis.read();
        let gives = gives_of(&band, &borne.loads, &analysis, &resolved);
        let years = years_of(&design, &resolved, &analysis, (&band, &borne), gives.as_ref());
        years::told(years.as_ref(), &design, &analysis)
    });
    let row = |[what, one, ten]: [String; 3]| {
        part(&(what.clone(), one.clone(), ten.clone()), move || {
            view! { <tr><th scope="row">{what}</th><td>{one}</td><td>{ten}</td></tr> }.into_any()
        })
    };
    let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
    let heads = HEADS.map(|head| view! { <th scope="col">{head}</th> });
    view! {
        <section class="drawing-loads" aria-labelledby="years-title">
            <h3 id="years-title">"What the years do, estimated"</h3>
            <table class="sources stages" aria-labelledby="years-title" hidden=move || told.read().rows.is_empty()>
                <thead><tr>{heads.collect_view()}</tr></thead>
                <tbody>{list(move || told.get().rows.into_iter().map(row).collect())}</tbody>
            </table>
            <ul class="granted">{list(move || told.get().sentences.into_iter().map(line).collect())}</ul>
            <p>{button("link", "", "The formulas of the years", "How it is worked out", move || store.explain(Topic::Years))}</p>
            <p class="hint">{MEANING}</p>
            <p class="caution">{advice::caution()}</p>
        </section>
    }
}
