//! Order.

use leptos::prelude::*;

use crate::app::store::Store;

/// Order.
#[component]
pub fn Order(store: Store) -> impl IntoView {
    let _ = store;
    view! { <section class="view-panel" aria-label="Order" id="order" tabindex="-1"></section> }
}
