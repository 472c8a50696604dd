//! A panel over the page: a modal dialog that gives the keyboard back when it closes.

use super::list::words;
use crate::app::browser;
use crate::words::page as say;
use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, HtmlInputElement, KeyboardEvent};

/// What there is to tell, which every window shows below its title. The page gives it as a context.
#[derive(Clone, Copy)]
pub struct Told(pub Callback<(), AnyView>);

/// A modal dialog with a title. `on_close` is called however it is closed.
#[component]
pub fn Window(
    /// What stands at the top.
    #[prop(into)]
    title: Signal<String>,
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
            let first = ".window-body :is(input, select, textarea):not(:disabled, [tabindex])";
            if let Ok(Some(field)) = element.query_selector(first)
                && let Ok(field) = field.dyn_into::<HtmlElement>()
            {
                let _ = field.focus();
            }
        });
    });
    // The return key in a field does what the main button beside it, or below it, does.
    let on_keys = move |event: KeyboardEvent| {
        let target = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
        let (Some(field), "Enter") = (target, event.key().as_str()) else { return };
        let near =
            [field.closest("fieldset").ok().flatten(), dialog.get_untracked().map(Into::into)];
        let button = near
            .into_iter()
            .flatten()
            .find_map(|part: Element| part.query_selector("button.main").ok().flatten());
        if let Some(button) = button.and_then(|button| button.dyn_into::<HtmlElement>().ok()) {
            event.prevent_default();
            button.click();
        }
    };
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
            on:close=move |_| {
                // The field is left while what listens to it still lives.
                browser::leave_window_field();
                on_close.run(());
            }
            on:keydown=on_keys
        >
            <div class="window-head">
                <h2 id="window-title">{words(move || title.get())}</h2>
                <button type="button" class="quiet" on:click=close>{say::CLOSE.said()}</button>
            </div>
            {use_context::<Told>().map(|told| told.0.run(()))}
            <div class="window-body">{children()}</div>
        </dialog>
    }
}
