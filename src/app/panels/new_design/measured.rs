//! A harp that is there already: its measured lengths typed or pasted, and what of it is missing.

use leptos::prelude::*;

use crate::app::browser;
use crate::app::grid::{Cell, SHOWN};
use crate::app::panels::chart_acts::{go_to, select};
use crate::app::rows::{gap_words, measured};
use crate::app::store::{Store, View, Window as Open};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::{either, list, part, words};
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::document::{Design, LengthUnit};
use crate::design::edit::Column;
use crate::design::presets::OPEN_TUNINGS;
use crate::design::restring::{Reading, gaps};
use crate::engine::pitch::Note;

/// From measurements.
#[component]
pub fn FromMeasurements(store: Store) -> impl IntoView {
    let units = store.design.with_untracked(|design| design.units);
    let text = RwSignal::new(String::new());
    let high = RwSignal::new(String::new());
    let low = RwSignal::new(String::new());
    let tuning = RwSignal::new("0".to_owned());
    let unit = RwSignal::new(if units.length == LengthUnit::Inch { "in" } else { "mm" }.to_owned());
    let wrong = RwSignal::new(String::new());
    let end = |text: RwSignal<String>| -> Result<Option<Note>, String> {
        let text = text.get_untracked();
        if text.trim().is_empty() {
            return Ok(None);
        }
        text.trim()
            .parse()
            .map(Some)
            .map_err(|error: crate::engine::pitch::NoteError| error.to_string())
    };
    let make = move || -> Result<(Design, bool), String> {
        let told = |why: String| format!("Not started: {why}.");
        let place: usize = tuning.with_untracked(|key| key.parse().unwrap_or(0));
        let reading = Reading {
            highest: end(high).map_err(told)?,
            lowest: end(low).map_err(told)?,
            open: OPEN_TUNINGS.get(place).unwrap_or(&OPEN_TUNINGS[0]),
            unit: if unit.with_untracked(|unit| unit == "in") {
                LengthUnit::Inch
            } else {
                LengthUnit::Mm
            },
        };
        let open_tuning = reading.open.name.to_owned();
        let base = Design { units, open_tuning, ..Design::default() };
        text.with_untracked(|text| measured(text, &reading, &base))
    };
    let start = move || match make() {
        Ok((design, turned)) => {
            let whole = gaps(&design).is_empty();
            let words = if turned {
                "The list began with the longest string, so it was turned round: string 1 is the shortest."
            } else {
                ""
            };
            if store.tell(store.begin(design), words) {
                store.view.set(View::Chart);
                store.window.set((!whole).then_some(Open::Missing));
            }
        }
        Err(why) => wrong.set(why),
    };
    let tunings = OPEN_TUNINGS
        .iter()
        .enumerate()
        .map(|(place, open)| (place.to_string(), open.name.to_owned()))
        .collect();
    let unit_choices =
        vec![("mm".to_owned(), "millimetres".to_owned()), ("in".to_owned(), "inches".to_owned())];
    view! {
        <fieldset>
            <legend>"From measurements, to restring a harp"</legend>
            <label class="field">
                <span>"A line for each string, highest first: the length alone, or note, length, and if known the old string and its gauge. A question mark is a length that was not measured. Or a table with headings."</span>
                <textarea
                    id="measurements"
                    rows="7"
                    spellcheck="false"
                    placeholder="C6, 176, nylon, 0.64\nB5, 188, nylon, 0.64\nA5, ?"
                    prop:value=move || text.get()
                    on:input=move |event| text.set(event_target_value(&event))
                ></textarea>
            </label>
            <Choice label="Numbers without a unit are" choices=unit_choices value=unit on_change=move |key| unit.set(key)/>
            <p class="hint">"For a list without notes:"</p>
            <TextField label="Highest string of the list" value=high on_input=move |text| high.set(text) hint="C6"/>
            <TextField label="Lowest string of the list" value=low on_input=move |text| low.set(text) hint="C2"/>
            <Choice label="Open strings of the list" choices=tunings value=tuning on_change=move |key| tuning.set(key)/>
            <p class="wrong" id="measurements-wrong" role="alert">{words(move || wrong.get())}</p>
            <p>{button("tool main", "start-measurements", "", "Start", start)}</p>
        </fieldset>
    }
}

/// What is missing of the harp, each with the way to its cell.
#[component]
pub fn MissingWindow(store: Store) -> impl IntoView {
    let found = Memo::new(move |_| {
        let design = store.design.read();
        gap_words(&design, &gaps(&design))
    });
    let go = move |row: usize, column: Column| {
        store.view.set(View::Chart);
        store.window.set(None);
        if let Some(column) = SHOWN.iter().position(|shown| shown.typed() == Some(column)) {
            select(store, Cell { row, column }, false);
        }
        go_to(store, row);
        request_animation_frame(|| browser::focus("chart"));
    };
    let line = move |(text, row, column): (String, usize, Column)| {
        part(&(text.clone(), row), move || {
            let label = format!("Go there: {text}");
            view! {
                <li>
                    <span>{text}</span>
                    " "
                    <button type="button" class="cure" aria-label=label on:click=move |_| go(row, column)>"Go there"</button>
                </li>
            }
            .into_any()
        })
    };
    view! {
        <Window title="First step: what is missing of this harp" wide=true on_close=move || store.window.set(None)>
            {either(
                move || found.with(Vec::is_empty),
                || view! { <p>"Nothing is missing: every string has its note, its length and what it is made of."</p> }.into_any(),
                || view! { <p>"Nothing was guessed. What was not measured, or cannot be read, is listed here; what can be worked out without it stands in the chart already. This list is kept under What is missing, beside the findings."</p> }.into_any(),
            )}
            <ol class="missing-list" id="missing-list">{list(move || found.get().into_iter().map(line).collect())}</ol>
            <p class="caution">{advice::caution()}</p>
        </Window>
    }
}
