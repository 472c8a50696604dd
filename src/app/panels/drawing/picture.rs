//! The picture of the harp from the side.

use leptos::prelude::*;

use super::why;
use crate::app::store::Store;
use crate::app::widgets::list::{either, words};
use crate::papers::template::{harp, svg};

/// The picture, or why there is none.
#[component]
pub fn Picture(store: Store) -> impl IntoView {
    let large = RwSignal::new(false);
    let drawn = Memo::new(move |_| {
        let template =
            harp::template(&store.design.read(), &store.resolved.read(), &store.analysis.read());
        let notes = template.notes.join(" ");
        svg::write(&template).map(|text| (picture(&text), notes)).map_err(|error| why(&error))
    });
    let of = move |take: fn(&(String, String)) -> &String| {
        drawn.with(|drawn| drawn.as_ref().map(take).cloned().unwrap_or_default())
    };
    let paper = move || {
        view! {
            <div
                class="drawing-paper"
                class:large=move || large.get()
                tabindex="0"
                role="region"
                aria-label="Drawing of the harp from the side"
                inner_html=move || of(|drawn| &drawn.0)
            ></div>
            <div class="window-actions">
                <button type="button" class="tool" on:click=move |_| large.update(|large| *large = !*large)>
                    {words(move || if large.get() { "Whole" } else { "Larger" }.to_owned())}
                </button>
                <p class="hint">{words(move || of(|drawn| &drawn.1))}</p>
            </div>
        }
        .into_any()
    };
    let none = move || {
        let text = move || drawn.with(|drawn| drawn.as_ref().err().cloned().unwrap_or_default());
        view! { <p class="wrong">{words(text)}</p> }.into_any()
    };
    either(move || drawn.with(Result::is_ok), paper, none)
}

/// The text of an SVG file as a part of the page: without its first line, and with no names that the page has too.
fn picture(text: &str) -> String {
    let start = text.find("<svg").unwrap_or(0);
    text[start..].replace("<g id=", "<g data-layer=").replacen("<svg", "<svg role=\"img\"", 1)
}
