//! One string in full: every figure, its partials, its pluck, its levers or discs.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use super::asked::{asked, asked_in_words};
use super::chart_acts::go_to;
use super::form::{mechanism_key, mechanism_of, options};
use crate::app::asked::Question;
use crate::app::rows::{self, Block, MOST_PARTIALS};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, number_field};
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::edit::Edit;
use crate::design::settings::{NumberRow, OneOf};
use crate::words::{Words, details as say};

/// What a string is called whose mechanism is that of the harp.
const AS_THE_HARP: Words = say::AS_THE_HARP;

/// The string under the cursor, in full.
#[component]
pub fn DetailsWindow(store: Store) -> impl IntoView {
    let row = move || store.selection.get().cursor.row;
    let partials = RwSignal::new(12_u32);
    let title = Signal::derive(move || rows::details_title(&store.analysis.read(), row()));
    let blocks = Memo::new(move |_| {
        let (design, resolved) = (store.design.read(), store.resolved.read());
        rows::details(&design, &resolved, &store.analysis.read(), row(), partials.get())
    });
    let step = move |down: bool| {
        let row = store.selection.get_untracked().cursor.row;
        let next = if down { row + 1 } else { row.saturating_sub(1) };
        if next != row && next < store.count_now() {
            go_to(store, next);
        }
    };
    let on_keys = move |event: KeyboardEvent| {
        let key = event.key();
        if (event.ctrl_key() || event.meta_key()) && matches!(&*key, "ArrowUp" | "ArrowDown") {
            event.prevent_default();
            step(key == "ArrowDown");
        }
    };
    let set_partials = move |number: Option<f64>| {
        let whole = (1..=MOST_PARTIALS).find(|count| Some(f64::from(*count)) == number);
        if let Some(count) = whole {
            partials.set(count);
        }
    };
    let row = NumberRow {
        whole: true,
        ..NumberRow::new(say::PARTIALS_COUNT, Words::NONE, (1.0, f64::from(MOST_PARTIALS)))
    };
    let shown = Signal::derive(move || Some(f64::from(partials.get())));
    view! {
        <Window title=title wide=true on_close=move || store.window.set(None)>
            <div class="details" on:keydown=on_keys>
                <div class="details-head">
                    <span class="tool-group">
                        {button("tool", "", say::ABOVE_HINT.said(), say::ABOVE.said(), move || step(false))}
                        {button("tool", "", say::BELOW_HINT.said(), say::BELOW.said(), move || step(true))}
                    </span>
                    {number_field(row, shown, None, Callback::new(set_partials))}
                    <Raised store=store/>
                </div>
                {asked_in_words(Question::Tolerance)}
                {move || blocks.get().into_iter().map(table).collect_view()}
                <p class="caution">{advice::caution()}</p>
            </div>
        </Window>
    }
}

/// What raises the selected strings by semitones.
#[component]
fn Raised(store: Store) -> impl IntoView {
    let mut choices = options(OneOf::Mechanism);
    choices.insert(0, (String::new(), AS_THE_HARP.into()));
    let value = Signal::derive(move || {
        let row = store.selection.get().cursor.row;
        let own = store.design.with(|design| design.strings.get(row)?.mechanism);
        own.map(mechanism_key).unwrap_or_default()
    });
    let set = move |key: String| {
        let rows = store.selection.get_untracked().rows();
        let rows = *rows.start()..*rows.end() + 1;
        store.send(&Edit::StringMechanism { rows, kind: mechanism_of(&key) });
    };
    let label = move || {
        let rows = store.selection.get().rows();
        match (rows.start() + 1, rows.end() + 1) {
            (first, last) if first == last => say::raised_one(&first),
            (first, last) => say::raised(&first, &last),
        }
    };
    // The label names the strings, so it is made again with the selection, and the choice with it.
    let label = Memo::new(move |_| label());
    move || {
        let (choices, label) = (choices.clone(), label.get());
        view! { <Choice label=label choices=choices value=value on_change=set/> }
    }
}

/// A table with its notes.
fn table(block: Block) -> impl IntoView {
    let heads = block.heads.into_iter().map(|head| view! { <th scope="col">{head}</th> });
    let questions = block.asked.into_iter().chain(std::iter::repeat(None));
    let rows = block.rows.into_iter().zip(questions).map(|(row, question)| {
        let mut cells = row.into_iter();
        let name = cells.next();
        let question = question.map(asked);
        let cells = cells.map(|cell| view! { <td>{cell}</td> }).collect_view();
        view! { <tr><th scope="row">{name} {question}</th>{cells}</tr> }
    });
    let notes = block.notes.into_iter().map(|note| view! { <p class="hint">{note}</p> });
    view! {
        <div class="details-block" role="region" tabindex="0" aria-label=block.title>
            <table class="sources" class:worded=block.worded>
                <caption>{block.title}</caption>
                <thead><tr>{heads.collect_view()}</tr></thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
            {notes.collect_view()}
        </div>
    }
}
