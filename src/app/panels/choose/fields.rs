//! Fields of notes and gauges.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use crate::app::widgets::list::words;
use crate::engine::pitch::Note;
use crate::engine::pitch::naming::{kept, shown};
use crate::words::{Words, choose_page as say, naming};

/// A field of a note, taken when it is left or with the return key. What is no note stays, marked as wrong.
pub fn note_field(
    label: String,
    value: Signal<String>,
    put: Callback<String>,
    may_be_empty: bool,
) -> AnyView {
    let valid = move |text: &str| {
        Note::read(text, naming()).is_ok() || (may_be_empty && text.trim().is_empty())
    };
    let value = Signal::derive(move || shown(&value.get()));
    let put = Callback::new(move |text: String| put.run(kept(&text, naming())));
    text_field(label, value, put, valid, say::NOTE_WRONG)
}

/// A field of a text that must be valid.
pub fn text_field(
    label: String,
    value: Signal<String>,
    put: Callback<String>,
    valid: impl Fn(&str) -> bool + Send + Sync + 'static,
    wrong: Words,
) -> AnyView {
    let bad = RwSignal::new(None::<String>);
    let valid = StoredValue::new(Box::new(valid) as Box<dyn Fn(&str) -> bool + Send + Sync>);
    let take = move |text: String| {
        if valid.with_value(|valid| valid(&text)) {
            bad.set(None);
            if text.trim() != value.get_untracked() {
                put.run(text.trim().to_owned());
            }
        } else {
            bad.set(Some(text));
        }
    };
    let shown = move || bad.get().unwrap_or_else(|| value.get());
    let keys = move |event: KeyboardEvent| {
        if event.key() == "Escape" && bad.with_untracked(Option::is_some) {
            event.prevent_default();
            event.stop_propagation();
            bad.set(None);
        }
    };
    let said = move || if bad.with(Option::is_some) { wrong.into() } else { String::new() };
    view! {
        <input
            type="text"
            autocomplete="off"
            aria-label=label
            prop:value=shown
            aria-invalid=move || bad.with(Option::is_some).then_some("true")
            on:change=move |event| take(event_target_value(&event))
            on:keydown=keys
        />
        <span class="wrong" role="alert">{words(said)}</span>
    }
    .into_any()
}
