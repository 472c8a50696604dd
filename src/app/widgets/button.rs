//! Buttons with words. One for the whole page, as each made for itself takes a kilobyte.

use leptos::prelude::*;

/// A button. Id and title are left out where they are empty.
pub fn button(
    class: &'static str,
    id: &'static str,
    title: &'static str,
    words: &'static str,
    act: impl Fn() + 'static,
) -> AnyView {
    fn erased(names: [&'static str; 4], act: Box<dyn Fn()>) -> AnyView {
        let [class, id, title, words] = names;
        let given = |text: &'static str| (!text.is_empty()).then_some(text);
        view! {
            <button type="button" class=class id=given(id) title=given(title) on:click=move |_| act()>
                {words}
            </button>
        }
        .into_any()
    }
    erased([class, id, title, words], Box::new(act))
}
