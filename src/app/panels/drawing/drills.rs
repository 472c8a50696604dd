//! What holes are drilled with.

use leptos::prelude::*;

use crate::app::forms::DRILLS;
use crate::app::panels::form::entries;
use crate::app::store::Store;

/// The drills for the schedule of pins and the templates.
#[component]
pub fn Drills(store: Store) -> impl IntoView {
    view! { <div class="form-stack">{entries(store, &DRILLS)}</div> }
}
