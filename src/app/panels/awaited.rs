//! What stands in the place of a part of the program that is not here yet.

use leptos::prelude::*;

use crate::app::browser;
use crate::app::store::{Part, Progress, Show, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::menu::menu;
use crate::words::{Words, page as say};

/// What a part shows, or what stands in its place until it is here. Follows the part.
pub fn shown_by(store: Store, part: Part, show: impl Fn(Progress) -> Option<Show>) -> AnyView {
    let progress = store.parts.progress(part);
    if let Some(show) = show(progress) {
        return untrack(|| show(store.here()));
    }
    if matches!(progress, Progress::Away) {
        store.ask(part);
    }
    match progress {
        Progress::Missed => missed(store, part),
        _ => opening(),
    }
}

fn opening() -> AnyView {
    view! { <p class="coming" role="status">{say::OPENING.said()}</p> }.into_any()
}

/// A menu whose lines come with a part, which is asked for when the menu is opened before it is here.
pub fn lazy_menu(store: Store, id: &'static str, words: Words) -> AnyView {
    let list = move || match store.parts.progress(Part::Files) {
        Progress::Here(brought) => untrack(|| (brought.menu)(store.here(), id)),
        Progress::Away => ().into_any(),
        Progress::Coming => opening(),
        Progress::Missed => view! { <p class="hint">{say::MISSED.said()}</p> }.into_any(),
    };
    menu(id, words.said(), list.into_any(), move || store.need(Part::Files))
}

/// The same in a window. What says that the part did not come is no dialog of the program's own kind, which would be in
/// the first screen for that alone.
pub fn window_of(store: Store, part: Part, show: impl Fn(Progress) -> Option<Show>) -> AnyView {
    let progress = store.parts.progress(part);
    match (show(progress), progress) {
        (None, Progress::Missed) => {
            request_animation_frame(|| browser::focus("try-again"));
            view! {
                <div class="window not-here" role="alertdialog" aria-label=say::NOT_HERE.said()>
                    {missed(store, part)}
                    {button("tool", "", "", say::CLOSE.said(), move || store.window.set(None))}
                </div>
            }
            .into_any()
        }
        _ => shown_by(store, part, show),
    }
}

/// Says that a part did not arrive, and what to do.
fn missed(store: Store, part: Part) -> AnyView {
    view! {
        <div class="coming" role="alert">
            <p>{say::MISSED.said()}</p>
            {button("tool main", "try-again", "", say::TRY_AGAIN.said(), move || store.ask(part))}
        </div>
    }
    .into_any()
}
