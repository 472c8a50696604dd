//! What there is to tell, until it is read.

use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

use super::header::save;
use crate::app::store::{Elsewhere, Notice, Origin, Store, View};
use crate::app::widgets::button::button;
use crate::words::page as say;

/// The line that tells what was done, or what went wrong and what to do.
#[component]
pub fn NoticeLine(store: Store) -> impl IntoView {
    let shown = move || {
        store.notice.get().map(|notice: Notice| {
            let (text, problem) = (notice.text().to_owned(), notice.is_problem());
            view! {
                <div class="notice" class:problem=problem role=if problem { "alert" } else { "status" }>
                    <p>{text}</p>
                    {button("quiet", "", "", say::DISMISS.said(), move || store.notice.set(None))}
                </div>
            }
        })
    };
    view! { <div class="notices" aria-live="polite">{shown}</div> }
}

/// The lines that stand for as long as something is so: that this browser keeps nothing, that another tab went on with
/// the design, that the design is a sample or somebody's.
#[component]
pub fn Lines(store: Store) -> impl IntoView {
    let lines: [fn(Store) -> Option<AnyView>; 3] = [not_kept, elsewhere, origin];
    lines.map(|line| (move || line(store)).into_any()).into_iter().collect_view()
}

fn line(id: &'static str, role: &'static str, text: String, buttons: Vec<AnyView>) -> AnyView {
    view! {
        <div class="origin" id=id role=role>
            <p>{text}</p>
            <span class="tool-group">{buttons}</span>
        </div>
    }
    .into_any()
}

fn not_kept(store: Store) -> Option<AnyView> {
    let why = store.not_kept.get()?;
    let text = say::not_kept(&why);
    let save = button("tool main", "", "", say::SAVE.said(), move || save(store));
    Some(line("not-kept", "alert", text, vec![save]))
}

fn elsewhere(store: Store) -> Option<AnyView> {
    let keep = move || {
        let kept = store.keep_beside();
        store.tell(kept, "");
    };
    let keep = button("tool", "", "", say::KEEP_MINE.said(), keep);
    let (text, buttons) = match store.elsewhere.get()? {
        Elsewhere::Changed => {
            let load = button("tool main", "", "", say::LOAD_IT.said(), move || {
                store.load_from_elsewhere();
            });
            (say::ELSEWHERE_CHANGED.said(), vec![load, keep])
        }
        Elsewhere::Gone => (say::ELSEWHERE_GONE.said(), vec![keep]),
    };
    Some(line("elsewhere", "alert", text.to_owned(), buttons))
}

fn origin(store: Store) -> Option<AnyView> {
    let (text, buttons) = match store.origin.get() {
        Origin::Kept(_) => return None,
        Origin::Link => (
            say::FROM_LINK.said(),
            vec![button("tool main", "", "", say::KEEP_COPY.said(), move || store.keep_copy())],
        ),
        // It would go with the first change, and the paper would jump under the hand.
        Origin::Sample if store.view.get() == View::Drawing => return None,
        Origin::Sample => (say::A_SAMPLE.said(), vec![]),
    };
    Some(line("origin", "status", text.to_owned(), buttons))
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
