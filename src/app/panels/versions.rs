//! Versions.

use leptos::prelude::*;

use crate::app::store::Store;

/// Versions.
#[component]
pub fn Versions(store: Store) -> impl IntoView {
    let _ = store;
    view! { <section class="view-panel" aria-label="Versions" id="versions" tabindex="-1"></section> }
}
