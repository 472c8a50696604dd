//! Labelled fields. What was typed stays in its field; what is wrong with it stands under it.

use super::list::words;
use crate::design::decimal::decimal;

use leptos::prelude::*;

/// A line of text.
#[component]
pub fn TextField(
    #[prop(into)] label: String,
    #[prop(into)] value: Signal<String>,
    #[prop(into)] on_input: Callback<String>,
    #[prop(into, optional)] hint: String,
) -> impl IntoView {
    view! {
        <label class="field">
            <span>{label}</span>
            <input
                type="text"
                autocomplete="off"
                placeholder=hint
                prop:value=move || value.get()
                on:input=move |event| on_input.run(event_target_value(&event))
            />
        </label>
    }
}

/// A number with its unit, kept between two limits.
#[component]
pub fn NumberField(
    #[prop(into)] label: String,
    #[prop(into)] unit: String,
    #[prop(into)] value: Signal<f64>,
    least: f64,
    most: f64,
    #[prop(into)] on_change: Callback<f64>,
) -> impl IntoView {
    let typed = RwSignal::new(None::<String>);
    let shown = move || typed.get().unwrap_or_else(|| value.get().to_string());
    let range = format!("{least} to {most} {unit}").trim_end().to_owned();
    let wrong = Memo::new(move |_| {
        let typed = typed.get()?;
        number(&typed, least, most)
            .err()
            .map(|()| format!("Write a number from {range}, such as {}.", value.get()))
    });
    let on_input = move |event| {
        let text = event_target_value(&event);
        if let Ok(number) = number(&text, least, most) {
            on_change.run(number);
        }
        typed.set(Some(text));
    };
    let leave = move |_| {
        if wrong.with_untracked(Option::is_none) {
            typed.set(None);
        }
    };
    view! {
        <label class="field number">
            <span>{label}</span>
            <span class="with-unit">
                <input
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    prop:value=shown
                    aria-invalid=move || wrong.with(Option::is_some).then_some("true")
                    on:input=on_input
                    on:blur=leave
                />
                <span class="unit">{unit}</span>
            </span>
            <span class="wrong" role="alert">{words(move || wrong.get().unwrap_or_default())}</span>
        </label>
    }
}

fn number(text: &str, least: f64, most: f64) -> Result<f64, ()> {
    let number = decimal(&text.trim().replace(',', ".")).ok_or(())?;
    if (least..=most).contains(&number) { Ok(number) } else { Err(()) }
}

/// One of several choices, each a value and its words.
#[component]
pub fn Choice(
    #[prop(into)] label: String,
    choices: Vec<(String, String)>,
    #[prop(into)] value: Signal<String>,
    #[prop(into)] on_change: Callback<String>,
) -> impl IntoView {
    let options = choices
        .into_iter()
        .map(|(key, words)| {
            let chosen = key.clone();
            view! { <option value=key selected=move || value.get() == chosen>{words}</option> }
        })
        .collect_view();
    view! {
        <label class="field">
            <span>{label}</span>
            <select
                prop:value=move || value.get()
                on:change=move |event| on_change.run(event_target_value(&event))
            >
                {options}
            </select>
        </label>
    }
}
