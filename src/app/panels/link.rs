//! The design as a link: copied in one click, shown when the clipboard is out of reach.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::browser;
use crate::app::store::{Store, Window as Which};
use crate::app::widgets::window::Window;

/// Copies the link of the open design.
pub fn copy_link(store: Store) {
    let address = match store.address() {
        Ok(address) => address,
        Err(why) => return store.complain(format!("This design has no link: {why}.")),
    };
    let length = address.chars().count();
    spawn_local(async move {
        if browser::copy(address).await {
            store.tell(format!(
                "Link copied ({length} characters). Whoever opens it sees this very design; nothing is sent to a server."
            ));
        } else {
            store.window.set(Some(Which::Link));
        }
    });
}

/// The link, to be copied by hand.
#[component]
pub fn LinkWindow(store: Store) -> impl IntoView {
    let address = store.address().unwrap_or_else(|why| why);
    view! {
        <Window title="Link to this design" on_close=move || store.window.set(None)>
            <p>"The browser did not let the page reach the clipboard. Select the link and copy it."</p>
            <textarea class="link-text" readonly=true rows="8" aria-label="Link" prop:value=address></textarea>
        </Window>
    }
}
