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
use crate::words::chart_page as say;

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
                {name.said()}
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
        <Window title=say::COLUMNS_WINDOW.said() on_close=move || store.window.set(None)>
            <p class="window-actions" role="group" aria-label=say::COLUMN_SETS.said()>{Vec::from(sets)}</p>
            <p class="hint">
                {say::COLUMNS_HINT.said()}
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
                {button("tool", "", say::FARTHER_LEFT.said(), say::UP.said(), move || step(false))}
                {button("tool", "", say::FARTHER_RIGHT.said(), say::DOWN.said(), move || step(true))}
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
