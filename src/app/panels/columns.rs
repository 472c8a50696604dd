//! Which columns the string chart shows, and in what order.

use leptos::prelude::*;

use crate::app::browser;
use crate::app::columns::{ALL, SETS, set_of};
use crate::app::grid::Shown;
use crate::app::rows;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part};
use crate::app::widgets::window::Window;
use crate::design::letters::small;

/// The window of the columns. What is chosen shows at once and is kept with the browser.
#[component]
pub fn ColumnsWindow(store: Store) -> impl IntoView {
    let sets = SETS.map(|(key, name, columns)| {
        let on = move || set_of(&store.chosen.read()) == Some(key);
        view! {
            <button
                type="button"
                class="tool"
                aria-pressed=move || if on() { "true" } else { "false" }
                on:click=move |_| store.show_columns(columns.to_vec())
            >
                {name}
            </button>
        }
        .into_any()
    });
    let lines = move || {
        let chosen = store.chosen.get();
        let hidden = ALL.iter().filter(|shown| !chosen.contains(shown));
        let all =
            chosen.iter().map(|shown| (*shown, true)).chain(hidden.map(|shown| (*shown, false)));
        let line = |(shown, on): (Shown, bool)| part(&(shown, on), move || line(store, shown, on));
        all.map(line).collect()
    };
    view! {
        <Window title="Columns of the chart" on_close=move || store.window.set(None)>
            <p class="window-actions" role="group" aria-label="Sets of columns">{Vec::from(sets)}</p>
            <p class="hint">
                "Number and note always show. Tick a column to show it, and move it up to have it farther to the left. What you put together here is kept in this browser as My columns."
            </p>
            <ol class="column-list">{list(lines)}</ol>
        </Window>
    }
}

fn line(store: Store, shown: Shown, on: bool) -> AnyView {
    let head = rows::head(shown, &store.design.get_untracked().units);
    let id = format!("show-{}", small(&head.word.replace([' ', '.'], "-")));
    let back = id.clone();
    let turn = move |_| {
        let mut chosen = store.chosen.get_untracked();
        if on {
            chosen.retain(|one| *one != shown);
        } else {
            chosen.push(shown);
        }
        store.show_own_columns(chosen);
        // The line was made again, elsewhere in the list.
        let back = back.clone();
        request_animation_frame(move || browser::focus(&back));
    };
    let step = move |down: bool| {
        let mut chosen = store.chosen.get_untracked();
        let place = chosen.iter().position(|one| *one == shown);
        if let Some(place) = place
            && let Some(next) = if down { Some(place + 1) } else { place.checked_sub(1) }
            && next < chosen.len()
        {
            chosen.swap(place, next);
            store.show_own_columns(chosen);
        }
    };
    let steps = on.then(|| {
        view! {
            <span class="tool-group">
                {button("tool", "", "Farther to the left", "Up", move || step(false))}
                {button("tool", "", "Farther to the right", "Down", move || step(true))}
            </span>
        }
    });
    view! {
        <li>
            <label title=head.meaning>
                <input type="checkbox" id=id prop:checked=on on:change=turn/>
                {head.word} " " <span class="unit">{head.unit}</span>
            </label>
            {steps}
        </li>
    }
    .into_any()
}
