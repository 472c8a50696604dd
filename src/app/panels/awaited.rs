//! What stands in the place of a part of the program that is not here yet.

use leptos::prelude::*;

use crate::app::browser;
use crate::app::store::{Part, Progress, Show, Store};
use crate::app::widgets::button::button;

/// What a part shows, or what stands in its place until it is here. Follows the part.
pub fn shown_by(store: Store, part: Part, show: impl Fn(Progress) -> Option<Show>) -> AnyView {
    let progress = store.parts.progress(part);
    if let Some(show) = show(progress) {
        return untrack(|| show(store));
    }
    if matches!(progress, Progress::Away) {
        store.ask(part);
    }
    match progress {
        Progress::Missed => missed(store, part),
        _ => view! { <p class="coming" role="status">"Opening…"</p> }.into_any(),
    }
}

/// The same in a window. What says that the part did not come is no dialog of the program's own kind, which would be in
/// the first screen for that alone.
pub fn window_of(store: Store, part: Part, show: impl Fn(Progress) -> Option<Show>) -> AnyView {
    let progress = store.parts.progress(part);
    match (show(progress), progress) {
        (None, Progress::Missed) => {
            request_animation_frame(|| browser::focus("try-again"));
            view! {
                <div class="window not-here" role="alertdialog" aria-label="Not here yet">
                    {missed(store, part)}
                    {button("tool", "", "", "Close", move || store.window.set(None))}
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
            <p>"This part of Stringloft did not arrive. Check the connection, then try again. Everything else goes on working."</p>
            {button("tool main", "try-again", "", "Try again", move || store.ask(part))}
        </div>
    }
    .into_any()
}
