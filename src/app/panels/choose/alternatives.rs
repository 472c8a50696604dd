//! The best sets to click through: how far off what is wanted, against the number of gauges or the price.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use super::desk::Desk;
use crate::app::browser;
use crate::app::widgets::list::{Part, list, part, while_so, words};
use crate::words::choose_page as say;

/// The chart of the alternatives, while there are some.
pub fn alternatives(desk: Desk) -> AnyView {
    while_so(move || desk.found.with(Option::is_some), move || chart(desk))
}

fn chart(desk: Desk) -> AnyView {
    let count = move || desk.found.with(|found| found.as_ref().map_or(0, |f| f.sets.len()));
    let across = move || {
        desk.found.with(|found| match found {
            Some(found) if found.by_price => say::front_across_price(&found.task.currency),
            _ => say::FRONT_ACROSS.into(),
        })
    };
    let marks = move |upright: bool| {
        desk.found.with(|found| {
            let Some(found) = found else { return Vec::new() };
            let marks = if upright { &found.marks.up } else { &found.marks.across };
            marks.iter().map(|mark| self::mark(upright, mark)).collect()
        })
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
            text.map_or_else(String::new, |text| say::front_said(&count(), &(place + 1), &text))
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
        <section class="choose-front" aria-label=say::ALTERNATIVES.said()>
            <p class="hint">{say::FRONT_UP.said()}</p>
            <div class="front" id="front" role="group" aria-label=say::FRONT_HINT.said() on:keydown=on_keys>
                {list(move || marks(true))}
                {list(move || marks(false))}
                {list(points)}
            </div>
            <p class="hint front-across">{words(across)}</p>
            <p id="front-said">{words(now)}</p>
        </section>
    }
    .into_any()
}

/// Where a place along the plot stands, and one from above, in per cent of its box: the numbers stand beside it.
fn at_left(share: f64) -> String {
    format!("{:.1}%", 9.0 + 88.0 * share)
}

fn at_top(share: f64) -> String {
    format!("{:.1}%", 7.0 + 74.0 * share)
}

/// A line of a scale with its number.
fn mark(upright: bool, (share, text): &(f64, String)) -> Part {
    let (share, text) = (*share, text.clone());
    part(&(upright, text.clone(), share.to_bits()), move || {
        if upright {
            view! { <span class="front-mark up" aria-hidden="true" style:top=at_top(share)>{text}</span> }
                .into_any()
        } else {
            view! { <span class="front-mark" aria-hidden="true" style:left=at_left(share)>{text}</span> }
                .into_any()
        }
    })
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
            style:left=at_left(at.0)
            style:top=at_top(at.1)
            on:click=move |_| desk.pick(place)
        ></button>
    }
    .into_any()
}
