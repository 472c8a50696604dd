//! What the years do: how far wood creeps under the strings, and what the seasons move.

use leptos::prelude::*;

use crate::app::frame::{self, Frame};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part};
use crate::design::advice;
use crate::design::explain::Topic;
use crate::design::years::{self, HEADS, MEANING, years_of};
use crate::words::{drawing as say, report};

/// What becomes of the frame, the board and the tuning.
#[component]
pub fn YearsTable(store: Store) -> impl IntoView {
    let Frame { band, borne } = Frame::here();
    let told = Memo::new(move |_| {
        let (band, borne) = (band.read(), borne.read());
        let (design, resolved) = (store.design.read(), store.resolved.read());
        let analysis = store.analysis.read();
        let nearer = frame::nearer((&band, &borne), &analysis, &resolved);
        let years = years_of(&design, &resolved, &analysis, (&band, &borne), nearer.as_ref());
        years::told(years.as_ref(), &design, &analysis)
    });
    let row = |[what, one, ten]: [String; 3]| {
        part(&(what.clone(), one.clone(), ten.clone()), move || {
            view! { <tr><th scope="row">{what}</th><td>{one}</td><td>{ten}</td></tr> }.into_any()
        })
    };
    let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
    let heads = HEADS.map(|head| view! { <th scope="col">{head.said()}</th> });
    view! {
        <section class="drawing-loads" aria-labelledby="years-title">
            <h3 id="years-title">{report::YEARS.said()}</h3>
            <table class="sources stages" aria-labelledby="years-title" hidden=move || told.read().rows.is_empty()>
                <thead><tr>{heads.collect_view()}</tr></thead>
                <tbody>{list(move || told.get().rows.into_iter().map(row).collect())}</tbody>
            </table>
            <ul class="granted">{list(move || told.get().sentences.into_iter().map(line).collect())}</ul>
            <p>{button("link", "", say::FORMULAS_YEARS.said(), say::HOW_WORKED_OUT.said(), move || store.explain(Topic::Years))}</p>
            <p class="hint">{MEANING.said()}</p>
            <p class="caution">{advice::caution()}</p>
        </section>
    }
}
