//! Labelled fields. What was typed stays in its field; what is wrong with it stands under it.

use super::list::words;
use crate::design::decimal::decimal;
use crate::design::settings::NumberRow;
use crate::words::page as say;

use leptos::prelude::*;
use web_sys::{HtmlSelectElement, KeyboardEvent};

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

/// A field of a number, with its label and its unit. `empty` is what an empty field stands for, where it may be
/// empty.
pub fn number_field(
    row: NumberRow,
    value: Signal<Option<f64>>,
    empty: Option<Signal<String>>,
    put: Callback<Option<f64>>,
) -> AnyView {
    let draft = Draft::new(row, value, put);
    view! {
        <label class="field number">
            <span>{row.label.said()}</span>
            <span class="with-unit">
                <input
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    placeholder=empty.map(|words| move || words.get())
                    prop:value=move || draft.shown()
                    aria-invalid=move || draft.is_wrong().then_some("true")
                    on:input=move |event| draft.take(event_target_value(&event))
                    on:blur=move |_| draft.leave()
                    on:keydown=move |event| draft.go_back(&event)
                />
                <span class="unit">{row.unit.said()}</span>
            </span>
            {draft.said()}
        </label>
    }
    .into_any()
}

/// What is being typed into a field of a number. What is no number of the field stays there with a sentence; the
/// escape key then brings the last good number back, and says so.
#[derive(Clone, Copy)]
pub struct Draft {
    typed: RwSignal<Option<String>>,
    went_back: RwSignal<bool>,
    row: NumberRow,
    value: Signal<Option<f64>>,
    put: Callback<Option<f64>>,
}

impl Draft {
    /// For a field that shows a value, and puts what is typed where it comes from.
    pub fn new(row: NumberRow, value: Signal<Option<f64>>, put: Callback<Option<f64>>) -> Self {
        Self { typed: RwSignal::new(None), went_back: RwSignal::new(false), row, value, put }
    }

    /// What the field holds. A number that is not the value any more, as after an undo, gives way to it.
    pub fn shown(self) -> String {
        let value = self.value.get();
        let typed = self.typed.get();
        typed
            .filter(|text| read(text, &self.row).is_none_or(|number| number == value))
            .unwrap_or_else(|| in_words(value))
    }

    /// Whether what was typed is no number of the field.
    pub fn is_wrong(self) -> bool {
        self.typed.with(|typed| typed.as_ref().is_some_and(|text| read(text, &self.row).is_none()))
    }

    /// Takes what was typed.
    pub fn take(self, text: String) {
        if let Some(number) = read(&text, &self.row) {
            self.put.run(number);
        }
        self.went_back.set(false);
        self.typed.set(Some(text));
    }

    /// The field is left: only what is wrong stays.
    pub fn leave(self) {
        // A field that goes with the keyboard in it is left when it is gone.
        if self.typed.try_get_untracked().is_none() {
            return;
        }
        if !untrack(|| self.is_wrong()) {
            self.typed.set(None);
        }
        self.went_back.set(false);
    }

    /// The escape key brings the last good number back, instead of closing what the field stands in.
    pub fn go_back(self, event: &KeyboardEvent) {
        if event.key() == "Escape" && untrack(|| self.is_wrong()) {
            event.prevent_default();
            event.stop_propagation();
            self.typed.set(None);
            self.went_back.set(true);
        }
    }

    /// What there is to say under the field.
    pub fn said(self) -> AnyView {
        let wrong = move || {
            if !self.is_wrong() {
                return String::new();
            }
            let asked = self.row.asked();
            match self.value.get() {
                _ if self.row.optional => say::write_or_empty(&asked),
                Some(value) => say::write_such(&asked, &value),
                None => say::write(&asked),
            }
        };
        let back = move || match self.value.get() {
            _ if !self.went_back.get() => String::new(),
            Some(value) => say::back_to(&value),
            None => say::BACK_EMPTY.into(),
        };
        view! {
            <span class="wrong" role="alert">{words(wrong)}</span>
            <span class="hint" role="status">{words(back)}</span>
        }
        .into_any()
    }
}

fn in_words(value: Option<f64>) -> String {
    value.map_or_else(String::new, |number| number.to_string())
}

/// The number that a text is, if it is one of the field; no number where the field may be empty and is.
fn read(text: &str, row: &NumberRow) -> Option<Option<f64>> {
    let text = text.trim();
    if text.is_empty() && row.optional {
        return Some(None);
    }
    number(text, row).map(Some)
}

fn number(text: &str, row: &NumberRow) -> Option<f64> {
    let number = decimal(&text.trim().replace(',', ".").replace('−', "-"))?;
    row.takes(number).then_some(number)
}

/// The numbers of a block that was copied from a spreadsheet, line by line.
///
/// # Errors
///
/// The first text that is no number of its column, and its line from 1.
pub(super) fn block(text: &str, rows: &[NumberRow]) -> Result<Vec<Vec<f64>>, (usize, String)> {
    let read = |(place, line): (usize, &str)| {
        let cells = line.split('\t').zip(rows);
        let cell = |(text, row): (&str, &NumberRow)| {
            number(text, row).ok_or_else(|| (place + 1, text.chars().take(40).collect()))
        };
        cells.map(cell).collect()
    };
    text.trim_end().lines().enumerate().map(read).collect()
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
    let on_change = move |event| {
        on_change.run(event_target_value(&event));
        // What was not taken is not shown.
        event_target::<HtmlSelectElement>(&event).set_value(&value.get_untracked());
    };
    view! {
        <label class="field">
            <span>{label}</span>
            <select
                prop:value=move || value.get()
                on:change=on_change
            >
                {options}
            </select>
        </label>
    }
}
