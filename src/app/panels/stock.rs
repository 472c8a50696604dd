//! The stock.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::window::Window;

/// The panel of the stock.
#[component]
pub fn StockWindow(store: Store) -> impl IntoView {
    view! { <Window title="Stock" wide=true on_close=move || store.window.set(None)><p></p></Window> }
}
