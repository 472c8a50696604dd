//! A panel over the page: a modal dialog that gives the keyboard back when it closes.

use leptos::html;
use leptos::prelude::*;

/// A modal dialog with a title. `on_close` is called however it is closed.
#[component]
pub fn Window(
    /// What stands at the top.
    #[prop(into)]
    title: String,
    /// Wide, for tables.
    #[prop(optional)]
    wide: bool,
    /// Called when it closes, by its button, the escape key or the page.
    #[prop(into)]
    on_close: Callback<()>,
    children: Children,
) -> impl IntoView {
    let dialog = NodeRef::<html::Dialog>::new();
    dialog.on_load(|element| {
        // It may not be in the page yet when it is made; then the next frame has it.
        request_animation_frame(move || {
            let _ = element.show_modal();
        });
    });
    let close = move |_| {
        if let Some(element) = dialog.get_untracked() {
            element.close();
        }
    };
    view! {
        <dialog
            node_ref=dialog
            class="window"
            class:wide=wide
            aria-labelledby="window-title"
            on:close=move |_| on_close.run(())
        >
            <div class="window-head">
                <h2 id="window-title">{title}</h2>
                <button type="button" class="quiet" on:click=close>"Close"</button>
            </div>
            <div class="window-body">{children()}</div>
        </dialog>
    }
}
