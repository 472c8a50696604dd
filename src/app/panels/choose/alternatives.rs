//! The best sets to click through: how far off what is wanted, against the number of gauges or the price.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use super::desk::Desk;
use crate::app::browser;
use crate::app::widgets::list::{list, part, while_so, words};

/// The chart of the alternatives, while there are some.
pub fn alternatives(desk: Desk) -> AnyView {
    while_so(move || desk.found.with(Option::is_some), move || chart(desk))
}

fn chart(desk: Desk) -> AnyView {
    let count = move || desk.found.with(|found| found.as_ref().map_or(0, |f| f.sets.len()));
    let across = move || {
        let price = desk.found.with(|found| found.as_ref().is_some_and(|f| f.by_price));
        let across = if price { "a higher price" } else { "more different strings" };
        format!("To the right: {across}. Upward: farther off what is wanted.")
    };
    let points = move || {
        desk.found.with(|found| {
            let Some(found) = found else { return Vec::new() };
            let point = |(place, shown): (usize, &crate::app::rows::Choosable)| {
                let (at, text) = (shown.at, shown.text.clone());
                let key = (place, text.clone(), at.0.to_bits(), at.1.to_bits());
                part(&key, move || point(desk, place, at, text))
            };
            found.shown.iter().enumerate().map(point).collect()
        })
    };
    let now = move || {
        let place = desk.picked.get();
        desk.found.with(|found| {
            let text = found.as_ref().and_then(|f| Some(f.shown.get(place)?.text.clone()));
            text.map_or_else(String::new, |text| {
                format!("Set {} of {}: {text}.", place + 1, count())
            })
        })
    };
    let on_keys = move |event: KeyboardEvent| {
        let here = desk.picked.get_untracked();
        let last = untrack(count).saturating_sub(1);
        let next = match event.key().as_str() {
            "ArrowRight" | "ArrowDown" => (here + 1).min(last),
            "ArrowLeft" | "ArrowUp" => here.saturating_sub(1),
            "Home" => 0,
            "End" => last,
            _ => return,
        };
        event.prevent_default();
        desk.pick(next);
        browser::focus(&format!("set-{next}"));
    };
    view! {
        <section class="choose-front" aria-label="Alternatives">
            <p class="hint">{words(across)}</p>
            <div class="front" id="front" role="group" aria-label="Sets to choose from; the arrow keys go from one to the next" on:keydown=on_keys>
                {list(points)}
            </div>
            <p id="front-said">{words(now)}</p>
        </section>
    }
    .into_any()
}

fn point(desk: Desk, place: usize, at: (f64, f64), text: String) -> AnyView {
    let on = move || desk.picked.get() == place;
    view! {
        <button
            type="button"
            class="front-point"
            id=format!("set-{place}")
            title=text.clone()
            aria-label=text
            aria-pressed=move || if on() { "true" } else { "false" }
            tabindex=move || if on() { "0" } else { "-1" }
            style:left=format!("{:.1}%", 4.0 + 92.0 * at.0)
            style:top=format!("{:.1}%", 10.0 + 80.0 * at.1)
            on:click=move |_| desk.pick(place)
        ></button>
    }
    .into_any()
}
