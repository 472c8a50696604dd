//! A row of the form: a figure, its source, and how well it is known. One for all properties.

use leptos::prelude::*;

use super::desk::{Desk, SOURCE};
use crate::app::widgets::list::words;
use crate::design::document::{LONGEST_TEXT, StandingSpec};
use crate::design::material_facts::{Property, STEPS, Second, known};
use crate::words::materials as say;

/// How many letters of a source fit a line on a wide page.
const SOURCE_WIDTH: usize = 68;

/// The row of a property.
pub(super) fn fact_row(desk: Desk, property: Property) -> AnyView {
    let label = property.label().said();
    let wrong = Memo::new(move |_| desk.wrong(property));
    let invalid = move || wrong.with(Option::is_some).then_some("true");
    let id = format!("fact-{property:?}-wrong");
    let described = id.clone();
    let line = move |place: usize, name: String, hint: &'static str| {
        view! {
            <input
                type="text"
                autocomplete="off"
                aria-label=name
                placeholder=hint
                prop:value=move || desk.shown(property, place)
                on:input=move |event| desk.input(property, place, event_target_value(&event))
                on:blur=move |_| desk.leave(property)
            />
        }
    };
    let rows = Memo::new(move |_| desk.shown(property, 0).lines().count().clamp(1, 8));
    let unit = property.unit().said();
    let name = if unit.is_empty() { label.to_owned() } else { say::with_unit(&label, &unit) };
    let first = if property.is_table() {
        view! {
            <textarea
                rows=move || rows.get().to_string()
                aria-label=name
                aria-invalid=invalid
                aria-describedby=described
                placeholder=say::NOT_KNOWN.said()
                prop:value=move || desk.shown(property, 0)
                on:input=move |event| desk.input(property, 0, event_target_value(&event))
                on:blur=move |_| desk.leave(property)
            ></textarea>
        }
        .into_any()
    } else {
        line(0, name, say::NOT_KNOWN.said())
            .attr("aria-invalid", invalid)
            .attr("aria-describedby", described)
            .into_any()
    };
    let second = match property.second() {
        Second::None => ().into_any(),
        Second::Rise => view! {
            <span class="unit">"+"</span>
            {line(1, say::rise_of(&label), "0")}
            <span class="unit">{say::TIMES_THE_STRESS.said()}</span>
        }
        .into_any(),
        Second::Between => {
            let steps = move || desk.shown(property, 1) == STEPS;
            let set = move |event| {
                desk.input(property, 1, event_target_value(&event));
                desk.leave(property);
            };
            view! {
                <select
                    aria-label=say::BETWEEN.said()
                    class:off=move || rows.get() < 2
                    prop:value=move || if steps() { STEPS } else { "" }
                    on:change=set
                >
                    <option value="" selected=move || !steps()>{say::STRAIGHT.said()}</option>
                    <option value=STEPS selected=steps>{say::STEPS.said()}</option>
                </select>
            }
            .into_any()
        }
    };
    let standing = move || {
        let standing = desk.current.with(|spec| property.source(spec).map(|known| known.1));
        let words = standing.map_or(say::NOT_KNOWN, known);
        // A source that was typed before its figure waits for it.
        let waits = standing.is_none() && !desk.shown(property, SOURCE).trim().is_empty();
        if waits { say::SOURCE_ALONE.said() } else { words.said() }
    };
    // As many lines as it takes on a wide page; the field can be drawn larger.
    let source_rows = Memo::new(move |_| {
        let letters = desk.shown(property, SOURCE).chars().count();
        letters.div_ceil(SOURCE_WIDTH).clamp(1, 4)
    });
    let set_source = move |event| {
        // One line to the document, however it was pasted.
        desk.input(property, SOURCE, event_target_value(&event).replace('\n', " "));
    };
    let from_memory = move || {
        desk.current.with(|spec| property.source(spec).map(|known| known.1))
            == Some(StandingSpec::FromMemory)
    };
    view! {
        <div class="fact" role="group" aria-label=label>
            <span class="fact-name">{label}</span>
            <span class="with-unit">{first}<span class="unit">{unit}</span></span>
            <span class="with-unit fact-second">{second}</span>
            <textarea
                rows=move || source_rows.get().to_string()
                maxlength=LONGEST_TEXT.to_string()
                aria-label=say::source_of(&label)
                placeholder=say::SOURCE_ASKED.said()
                prop:value=move || desk.shown(property, SOURCE)
                on:input=set_source
                on:blur=move |_| desk.leave(property)
            ></textarea>
            <span class="hint" class:warned=from_memory>{standing}</span>
            <span class="wrong" role="alert" id=id>{words(move || wrong.get().unwrap_or_default())}</span>
        </div>
    }
    .into_any()
}
