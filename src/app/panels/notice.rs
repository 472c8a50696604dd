//! What there is to tell, until it is read.

use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
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

/// Takes a notice away when there was time to read it. What went wrong stays until it is dismissed or until
/// something else is done. Called once.
pub fn let_go(store: Store) {
    let timer = StoredValue::new(None::<TimeoutHandle>);
    Effect::new(move |_| {
        if let Some(timer) = timer.get_value() {
            timer.clear();
        }
        let letters = store.notice.with(|notice| {
            notice.as_ref().filter(|notice| !notice.is_problem()).map(|notice| notice.text().len())
        });
        if let Some(letters) = letters {
            let ms = 5_000 + 60 * u64::try_from(letters).unwrap_or(0);
            go_after(store, timer, ms);
        }
    });
}

fn go_after(store: Store, timer: StoredValue<Option<TimeoutHandle>>, ms: u64) {
    let go = move || {
        // Whoever is at it is not done with it.
        if let Ok(Some(_)) = document().query_selector(".notice:is(:hover, :focus-within)") {
            go_after(store, timer, 2_000);
        } else {
            store.notice.set(None);
        }
    };
    timer.set_value(set_timeout_with_handle(go, Duration::from_millis(ms)).ok());
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
            "A sample. Change it as you like, or start your own with New, under Designs: a new harp, one from measurements, or another sample.",
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
