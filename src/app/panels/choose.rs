//! Choose strings.

use leptos::prelude::*;

use crate::app::store::Store;

/// Choose strings.
#[component]
pub fn Choose(store: Store) -> impl IntoView {
    let _ = store;
    view! { <section class="view-panel" aria-label="Choose strings" id="choose" tabindex="-1"></section> }
}
