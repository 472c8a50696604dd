//! How far the strings fall while the others are brought up, as the harp gives.

use leptos::prelude::*;

use crate::app::asked::Question;
use crate::app::frame::Frame;
use crate::app::panels::asked::asked_in_words;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part, words};
use crate::design::explain::Topic;
use crate::design::giving::{self, HEADS, gives_of, in_order};
use crate::engine::bearing::Order;
use crate::words::drawing as say;

/// What the strings lose in an order of stringing: in sentences, and string by string.
#[component]
pub fn Giving(store: Store, order: RwSignal<Order>) -> impl IntoView {
    let Frame { band, borne } = Frame::here();
    let gives = Memo::new(move |_| {
        let (borne, resolved) = (borne.read(), store.resolved.read());
        gives_of(&band.read(), &borne.loads, &store.analysis.read(), &resolved)
    });
    let falls = Memo::new(move |_| {
        let (gives, resolved) = (gives.read(), store.resolved.read());
        in_order(gives.as_ref(), &resolved, &store.analysis.read(), order.get())
    });
    let told = move || giving::told(&falls.read(), &store.analysis.read(), order.get());
    let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
    let rows = move || {
        let (falls, analysis) = (falls.read(), store.analysis.read());
        falls.iter().map(|fall| giving::row(fall, &analysis)).collect::<Vec<_>>()
    };
    let row = |[name, cells @ ..]: [String; 6]| {
        part(&(name.clone(), cells.clone()), move || {
            let cells = cells.map(|text| view! { <td>{text}</td> });
            view! { <tr><th scope="row">{name}</th>{cells.collect_view()}</tr> }.into_any()
        })
    };
    let heads = HEADS.map(|head| view! { <th scope="col">{head.said()}</th> });
    view! {
        <section aria-labelledby="giving-title">
            <h3 id="giving-title">{say::GIVING_TITLE.said()}</h3>
            {asked_in_words(Question::Falls)}
            <ul class="granted">{list(move || told().into_iter().map(line).collect())}</ul>
            <div class="sheet" role="region" tabindex="0" aria-label=say::FALLS_TABLE.said()>
                <table class="sources stages">
                    <thead><tr>{heads.collect_view()}</tr></thead>
                    <tbody>{list(move || rows().into_iter().map(row).collect())}</tbody>
                </table>
            </div>
            <p>{button("link", "", say::FORMULAS_GIVING.said(), say::HOW_WORKED_OUT.said(), move || store.explain(Topic::Giving))}</p>
            <p class="hint">{words(move || giving::meaning(gives.read().as_ref()))}</p>
        </section>
    }
}
