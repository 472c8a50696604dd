//! Fields that may be empty, and fields of notes and gauges.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use crate::app::widgets::list::words;
use crate::design::decimal::decimal;
use crate::engine::pitch::Note;

/// A number that may be left out.
#[derive(Clone, Copy)]
pub struct Optional {
    /// What it is.
    pub label: &'static str,
    /// Of the number.
    pub unit: &'static str,
    /// The least and the most.
    pub range: (f64, f64),
    /// Without decimals.
    pub whole: bool,
}

/// A field of a number that may be empty; `usual` stands in it while it is.
pub fn optional(
    spec: Optional,
    value: Signal<Option<f64>>,
    usual: Signal<String>,
    put: Callback<Option<f64>>,
) -> AnyView {
    let typed = RwSignal::new(None::<String>);
    let read = move |text: &str| -> Result<Option<f64>, ()> {
        let text = text.trim().replace(',', ".");
        if text.is_empty() {
            return Ok(None);
        }
        let number = decimal(&text).filter(|number| {
            (spec.range.0..=spec.range.1).contains(number)
                && (!spec.whole || *number == number.round())
        });
        number.map(Some).ok_or(())
    };
    let shown = move || {
        let now = value.get();
        let text = typed
            .get()
            .filter(|text| read(text).is_ok_and(|number| number == now) || read(text).is_err());
        text.unwrap_or_else(|| now.map_or_else(String::new, |number| number.to_string()))
    };
    let wrong = move || typed.with(|typed| typed.as_ref().is_some_and(|text| read(text).is_err()));
    let take = move |text: String| {
        if let Ok(number) = read(&text) {
            put.run(number);
        }
        typed.set(Some(text));
    };
    let leave = move |_| {
        if !untrack(wrong) {
            typed.set(None);
        }
    };
    let said = move || {
        let (least, most) = spec.range;
        let kind = if spec.whole { "whole number" } else { "number" };
        if wrong() {
            format!("Write a {kind} from {least} to {most}, or leave it empty.")
        } else {
            String::new()
        }
    };
    view! {
        <label class="field number">
            <span>{spec.label}</span>
            <span class="with-unit">
                <input
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    placeholder=move || usual.get()
                    prop:value=shown
                    aria-invalid=move || wrong().then_some("true")
                    on:input=move |event| take(event_target_value(&event))
                    on:blur=leave
                />
                <span class="unit">{spec.unit}</span>
            </span>
            <span class="wrong" role="alert">{words(said)}</span>
        </label>
    }
    .into_any()
}

/// A field of a note, taken when it is left or with the return key. What is no note stays, marked as wrong.
pub fn note_field(
    label: String,
    value: Signal<String>,
    put: Callback<String>,
    may_be_empty: bool,
) -> AnyView {
    let lawful =
        move |text: &str| text.parse::<Note>().is_ok() || (may_be_empty && text.trim().is_empty());
    let wrong = "A note has a letter and the number of its octave: C4, F#5, Bb2.";
    text_field(label, value, put, lawful, wrong)
}

/// A field of a text that must be lawful.
pub fn text_field(
    label: String,
    value: Signal<String>,
    put: Callback<String>,
    lawful: impl Fn(&str) -> bool + Send + Sync + 'static,
    wrong: &'static str,
) -> AnyView {
    let bad = RwSignal::new(None::<String>);
    let lawful = StoredValue::new(Box::new(lawful) as Box<dyn Fn(&str) -> bool + Send + Sync>);
    let take = move |text: String| {
        if lawful.with_value(|lawful| lawful(&text)) {
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
    let said = move || if bad.with(Option::is_some) { wrong.to_owned() } else { String::new() };
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
