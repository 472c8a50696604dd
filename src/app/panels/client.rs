//! The page for a client: what the harp is, drawn and in plain sentences, before the designer's own tools.

use leptos::prelude::*;

use super::pictures::drawn_for_client;
use crate::app::rows::client;
use crate::app::store::{Store, Window as Open};
use crate::app::widgets::button::button;
use crate::app::widgets::window::Window;
use crate::design::advice::caution;
use crate::words::client as say;

/// The client's page.
#[component]
pub fn ClientWindow(store: Store) -> impl IntoView {
    let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
    let words = client(&design, &resolved, &store.analysis.get_untracked());
    let (drawing, curves) = untrack(|| drawn_for_client(store));
    let close = move || store.leave_client();
    let sentences: Vec<AnyView> =
        words.sentences.into_iter().map(|text| view! { <li>{text}</li> }.into_any()).collect();
    let picture = |svg: Option<String>, label: &'static str| {
        svg.map(|svg| {
            view! {
                <figure>
                    <figcaption>{label}</figcaption>
                    <div class="client-picture" role="img" aria-label=label inner_html=svg></div>
                </figure>
            }
            .into_any()
        })
    };
    let remarks = (!words.remarks.is_empty()).then(|| {
        view! { <section><h3>{say::REMARKS.said()}</h3><p>{words.remarks}</p></section> }.into_any()
    });
    let by =
        (!words.by.is_empty()).then(|| view! { <p class="client-by">{words.by}</p> }.into_any());
    view! {
        <Window title=words.title wide=true on_close=close>
            <div class="client" id="client">
                {by}
                <p class="hint">{say::LOOKING.said()}</p>
                <div class="client-two">
                    {picture(drawing, say::DRAWING.said())}
                    <div>
                        <section><h3>{say::WHAT.said()}</h3><ul>{sentences}</ul></section>
                        {remarks}
                        <div class="window-actions">
                            {button("tool", "client-card", say::CARD_HINT.said(), say::CARD.said(), move || store.window.set(Some(Open::Card)))}
                            {button("tool main", "client-open", say::OPEN_HINT.said(), say::OPEN.said(), close)}
                        </div>
                    </div>
                </div>
                {picture(curves, say::CURVES.said())}
                <p class="caution">{caution()}</p>
            </div>
        </Window>
    }
}
