//! One string in full: every figure, its partials, its pluck, its levers or discs.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use super::chart_acts::go_to;
use super::form::{mechanism_of, options};
use crate::app::rows::{self, Block, MOST_PARTIALS};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, number_field};
use crate::app::widgets::window::Window;
use crate::design::edit::Edit;
use crate::design::settings::{NumberRow, OneOf};
use crate::design::{advice, display};

/// What a string is called whose mechanism is that of the harp.
const AS_THE_HARP: &str = "As the harp";

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
        ..NumberRow::new("Partials", "", (1.0, f64::from(MOST_PARTIALS)))
    };
    let shown = Signal::derive(move || Some(f64::from(partials.get())));
    view! {
        <Window title=title wide=true on_close=move || store.window.set(None)>
            <div class="details" on:keydown=on_keys>
                <div class="details-head">
                    <span class="tool-group">
                        {button("tool", "", "The string above (Ctrl+Up)", "Previous string", move || step(false))}
                        {button("tool", "", "The string below (Ctrl+Down)", "Next string", move || step(true))}
                    </span>
                    {number_field(row, shown, None, Callback::new(set_partials))}
                    <Raised store=store/>
                </div>
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
    choices.insert(0, (AS_THE_HARP.to_owned(), AS_THE_HARP.to_owned()));
    let value = Signal::derive(move || {
        let row = store.selection.get().cursor.row;
        let own = store.design.with(|design| design.strings.get(row)?.mechanism);
        own.map_or(AS_THE_HARP, display::mechanism).to_owned()
    });
    let set = move |words: String| {
        let rows = store.selection.get_untracked().rows();
        let rows = *rows.start()..*rows.end() + 1;
        store.send(&Edit::StringMechanism { rows, kind: mechanism_of(&words) });
    };
    let label = move || {
        let rows = store.selection.get().rows();
        match (rows.start() + 1, rows.end() + 1) {
            (first, last) if first == last => format!("Lever or disc of string {first}"),
            (first, last) => format!("Levers or discs of strings {first} to {last}"),
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
    let rows = block.rows.into_iter().map(|row| {
        let mut cells = row.into_iter();
        let name = cells.next();
        let cells = cells.map(|cell| view! { <td>{cell}</td> }).collect_view();
        view! { <tr><th scope="row">{name}</th>{cells}</tr> }
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
