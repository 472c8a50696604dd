//! The tuner: large letters and a needle for two metres away, large buttons for dirty hands.

mod bench;
mod ear;
mod noting;

use leptos::prelude::*;
use leptos::task::spawn_local;
use leptos::{ev, html};

use self::bench::{AS_PLANNED, Bench, OFF, ONE, ORDERS, STATES};
use self::ear::{begin, compared_with_chart, end, found};
use self::noting::noting;
use crate::app::browser;
use crate::app::frame::Frame;
use crate::app::rows::heard::told;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::advice::caution;
use crate::design::display;
use crate::design::letters::capital;
use crate::words::{Words, tuner as say};

/// The tuner.
#[component]
pub fn TunerWindow(store: Store) -> impl IntoView {
    Frame::provide(store);
    let bench = Bench::new(store);
    begin(bench);
    Effect::new(move |_| bench.listen_for());
    let keys = window_event_listener(ev::keydown, move |event| bench.on_keys(&event));
    spawn_local(browser::stay_awake());
    on_cleanup(move || {
        keys.remove();
        end();
        browser::may_sleep();
    });
    let is_empty = move || store.count() == 0;
    view! {
        <Window title=say::TITLE.said() wide=true on_close=move || store.window.set(None)>
            <div class="tuner">
                {while_so(is_empty, || view! { <p class="wrong">{capital(say::NO_STRINGS.said())}</p> }.into_any())}
                {begun(bench)}
                <p class:wrong=move || bench.failed.get() == 1 id="tuner-said" role="status">{words(move || bench.said.get())}</p>
                <div id="tuner-shown" inner_html=move || bench.shown.get()></div>
                <p class="out-of-sight" role="status">{words(move || bench.steady.get())}</p>
                <p class="hint" id="tuner-partials">{words(move || {
                    bench.count.track();
                    compared_with_chart(store)
                })}</p>
                {acts(bench)}
                {noting(bench)}
                {while_so(move || !bench.levers.words().is_empty(), move || bench.levers.each("tuner-each"))}
                {every(bench)}
                <p class="hint">{words(move || say::meaning(&display::decimals(bench.room_cents(), 1)))}</p>
                {while_so(move || bench.order.get() == AS_PLANNED, || view! { <p class="hint">{say::PLAN_HINT.said()}</p> }.into_any())}
                <p class="hint" id="tuner-private">{say::PRIVATE.said()}</p>
                <p class="caution">{caution()}</p>
            </div>
        </Window>
    }
}

/// Listening, a recording, the order, and how the levers stand.
fn begun(bench: Bench) -> AnyView {
    let file = NodeRef::<html::Input>::new();
    let choose_file = move || {
        if let Some(input) = file.get_untracked() {
            input.click();
        }
    };
    let chosen = move |_| {
        let Some(input) = file.get_untracked() else { return };
        if let Some(chosen) = input.files().and_then(|files| files.get(0)) {
            bench.hear_file(chosen);
        }
        input.set_value("");
    };
    let is_on = move || bench.state.get() != OFF;
    let state =
        move || STATES.get(bench.state.get()).map(|words| words.to_string()).unwrap_or_default();
    let levers = move || {
        let choices = bench.levers.words();
        let label = if choices.first() == Some(&say::OPEN) { say::LEVER } else { say::DISCS };
        match choices {
            [] => ().into_any(),
            choices => chooser(label, "tuner-levers", bench.levers.all, choices),
        }
    };
    view! {
        <div class="tuner-head">
            <button
                type="button"
                class="tool main"
                id="tuner-listen"
                aria-pressed=move || if is_on() { "true" } else { "false" }
                on:click=move |_| bench.turn()
            >
                {words(move || if is_on() { say::STOP.into() } else { say::LISTEN.into() })}
            </button>
            {button("tool", "tuner-file", "", say::RECORDING.said(), choose_file)}
            <input
                node_ref=file
                id="tuner-input"
                class="out-of-sight"
                type="file"
                tabindex="-1"
                aria-hidden="true"
                accept="audio/*,.wav"
                on:change=chosen
            />
            {chooser(say::ORDER, "tuner-order", bench.order, &ORDERS)}
            {while_so(move || bench.order.get() == AS_PLANNED, move || bench.way.field("tuner-round"))}
            {levers}
            <p id="tuner-state" role="status">{words(state)}</p>
        </div>
    }
    .into_any()
}

/// A choice among a few.
fn chooser(label: Words, id: &'static str, value: RwSignal<usize>, choices: &[Words]) -> AnyView {
    let option = |(place, words): (usize, &Words)| {
        let chosen = place == value.get_untracked();
        view! { <option value=place.to_string() selected=chosen>{words.said()}</option> }.into_any()
    };
    let options: Vec<AnyView> = choices.iter().enumerate().map(option).collect();
    view! {
        <label>
            <span>{label.said()}" "</span>
            // The keyboard begins at the button that listens.
            <select id=id tabindex="0" prop:value=move || value.get().to_string() on:change=move |event| value.set(event_target_value(&event).parse().unwrap_or(0))>
                {options}
            </select>
        </label>
    }
    .into_any()
}

/// Back, the reference tone, next.
fn acts(bench: Bench) -> AnyView {
    let on = move || bench.tone.get() == 1;
    view! {
        <div class="strung-acts">
            {button("tool", "tuner-back", "", say::BACK.said(), move || bench.go(false))}
            <button
                type="button"
                class="tool"
                id="tuner-tone"
                aria-pressed=move || if on() { "true" } else { "false" }
                on:click=move |_| bench.sound(1 - bench.tone.get_untracked())
            >
                {words(move || named(bench))}
            </button>
            {button("tool", "tuner-next", "", say::NEXT.said(), move || bench.go(true))}
        </div>
    }
    .into_any()
}

/// The reference tone with the string whose it is.
fn named(bench: Bench) -> String {
    let analysis = bench.store.analysis.read();
    let figures = analysis.strings.get(bench.row.get());
    say::of_string(&figures.map(display::string_number).unwrap_or_default(), &say::TONE)
}

/// Every string, and how it stood when it was heard last; a press goes to it.
fn every(bench: Bench) -> AnyView {
    let rows = move || {
        bench.count.track();
        let analysis = bench.store.analysis.read();
        let room_cents = bench.room_cents();
        let found = found();
        let row = |(row, figures)| {
            let cents = found.get(row).copied().flatten();
            let text = say::of_string(&told(cents, room_cents), &display::string_number(figures));
            let key = (row, text.clone());
            part(&key, move || {
                let go = move |_| {
                    bench.row.set(row);
                    // Whoever chooses a string is not led to another, but by the plan.
                    bench.order.update(|order| *order = (*order).max(ONE));
                };
                view! { <button type="button" class="quiet" on:click=go>{text}</button> }.into_any()
            })
        };
        analysis.strings.iter().enumerate().map(row).collect()
    };
    view! {
        <details id="tuner-strings">
            <summary>{say::STRINGS.said()}</summary>
            <div class="tuner-strings">{list(rows)}</div>
        </details>
    }
    .into_any()
}
