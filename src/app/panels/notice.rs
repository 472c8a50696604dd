//! What there is to tell, until it is read.

use leptos::prelude::*;

use super::header::save;
use crate::app::store::{Notice, Origin, Store, View};
use crate::app::widgets::button::button;
use crate::app::widgets::list::while_so;

/// The line that tells what was done, or what went wrong and what to do.
#[component]
pub fn NoticeLine(store: Store) -> impl IntoView {
    let shown = move || {
        store.notice.get().map(|notice: Notice| {
            let (text, problem) = (notice.text().to_owned(), notice.is_problem());
            view! {
                <div class="notice" class:problem=problem role=if problem { "alert" } else { "status" }>
                    <p>{text}</p>
                    {button("quiet", "", "", "Dismiss", move || store.notice.set(None))}
                </div>
            }
        })
    };
    view! { <div class="notices" aria-live="polite">{shown}</div> }
}

/// Says, for as long as it is so, that this browser keeps nothing.
#[component]
pub fn NotKeptLine(store: Store) -> impl IntoView {
    let line = move || {
        let why = store.not_kept.get().unwrap_or_default();
        let text = format!(
            "Not kept: this browser takes nothing, as {why}. Save the design as a file before you leave the page."
        );
        view! {
            <div class="origin" id="not-kept" role="alert">
                <p>{text}</p>
                {button("tool main", "", "", "Save as a file", move || save(store))}
            </div>
        }
        .into_any()
    };
    while_so(move || store.not_kept.read().is_some(), line)
}

/// Says when the open design is not kept in this browser, and how to keep it.
#[component]
pub fn OriginLine(store: Store) -> impl IntoView {
    let words = move || match store.origin.get() {
        Origin::Kept(_) => None,
        Origin::Link => Some((
            "A copy from a link, not yet saved here. Changing it saves your own copy.",
            "Save a copy here",
        )),
        // It would go with the first change, and the paper would jump under the hand.
        Origin::Sample if store.view.get() == View::Drawing => None,
        Origin::Sample => Some((
            "A sample. Change it as you like, or start your own with New: a new harp, one from measurements, or another sample.",
            "",
        )),
    };
    move || {
        words().map(|(text, action)| {
            view! {
                <div class="origin" role="status">
                    <p>{text}</p>
                    {(!action.is_empty()).then(|| view! {
                        <button type="button" class="tool main" on:click=move |_| { store.tell(store.keep_copy(), "Kept in this browser."); }>{action}</button>
                    })}
                </div>
            }
        })
    }
}
