//! The whole instrument: names for the card, pitch, levers, limits, tolerances, allowances.

use leptos::prelude::*;

use super::form::group;
use crate::app::forms::INSTRUMENT;
use crate::app::store::Store;
use crate::app::widgets::window::Window;

/// The instrument's panel.
#[component]
pub fn InstrumentWindow(store: Store) -> impl IntoView {
    let close = move || {
        store.close_step();
        store.window.set(None);
    };
    let columns: Vec<AnyView> = INSTRUMENT
        .iter()
        .map(|groups| {
            let groups: Vec<AnyView> = groups.iter().map(|each| group(store, each)).collect();
            view! { <div class="form-stack">{groups}</div> }.into_any()
        })
        .collect();
    view! {
        <Window title="Instrument" wide=true on_close=close>
            <div class="form-columns">{columns}</div>
        </Window>
    }
}
