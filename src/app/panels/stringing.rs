//! The harp strung one string at a time: large letters for arm's length, large buttons for dirty hands, and ticks that
//! this browser keeps with the design.

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent, MouseEvent};

use super::settling::way::{Held, choose, chosen_last, loads_of, ordered};
use crate::app::frame::Frame;
use crate::app::rows::{stringing, stringing_markup};
use crate::app::settled::Come;
use crate::app::store::{Origin, Store};
use crate::app::strung::{Strung, Tick, make_up};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{either, words};
use crate::app::widgets::window::Window;
use crate::app::{browser, shelf};
use crate::design::bearing_words::{STRINGING, order_name};
use crate::design::settling::easiest;
use crate::design::{advice, display};
use crate::engine::bearing::Order;
use crate::words::{settling, stringing as say};

/// Under which the browser kept one order for all harps, as a digit, before each harp had its own.
const ORDER: &str = "stringloft/stringing-order";

/// The strings on their day, and where the hand is among them. Few kinds of signals, as each takes a kilobyte.
#[derive(Clone, Copy)]
struct Day {
    store: Store,
    /// The ticks, as they are kept.
    ticked: RwSignal<String>,
    /// The place of the order in its list, where one was chosen: here, or for the plan under Settling.
    chosen: RwSignal<Option<usize>>,
    /// What each order does to the frame.
    loads: Memo<Held>,
    /// The row that is shown.
    row: RwSignal<usize>,
}

impl Day {
    fn new(store: Store) -> Self {
        let (ticked, chosen) = (RwSignal::new(kept(store)), RwSignal::new(chosen_order(store)));
        let day = Self { store, ticked, chosen, loads: loads_of(store), row: RwSignal::new(0) };
        let first = untrack(|| day.next_in_order().or_else(|| day.places().first().copied()));
        day.row.set(first.unwrap_or(0));
        day
    }

    /// How each string stands.
    fn ticks(self) -> Vec<Tick> {
        Strung::read(&self.ticked.read()).of(&self.store.design.read())
    }

    /// The rows in the order in which they are put on.
    fn places(self) -> Vec<usize> {
        self.order().places(self.store.count())
    }

    /// The order that was chosen, or the one of the plan under Settling.
    fn order(self) -> Order {
        ordered(self.chosen.get(), self.loads)
    }

    /// Which order is easier on the frame, in a sentence; nothing where none is.
    fn easier(self) -> String {
        let easiest = self.loads.with(|loads| easiest(loads));
        if easiest == self.order() {
            return String::new();
        }
        settling::easier(&order_name(easiest))
    }

    /// The first string in order that is not on.
    fn next_in_order(self) -> Option<usize> {
        let ticks = self.ticks();
        self.places().into_iter().find(|row| ticks.get(*row) != Some(&Tick::On))
    }

    fn up(self) -> usize {
        self.ticks().iter().filter(|tick| **tick == Tick::On).count()
    }

    fn tick(self) -> Tick {
        self.ticks().get(self.row.get()).cloned().unwrap_or(Tick::Off)
    }

    /// To the next string in the order or back; after the last one comes the first, for the next round.
    fn go(self, forward: bool) {
        let (places, row) = untrack(|| (self.places(), self.row.get()));
        let turn = places.iter().position(|place| *place == row).unwrap_or(0);
        let count = places.len().max(1);
        let next = if forward { turn + 1 } else { turn + count - 1 };
        if let Some(row) = places.get(next % count) {
            self.row.set(*row);
        }
    }

    /// Ticks the string that is shown, or takes its tick away, and keeps that.
    fn turn_tick(self) {
        let store = self.store;
        if !matches!(store.origin.get_untracked(), Origin::Kept(_)) {
            let come = chosen_last(store);
            store.keep_copy();
            choose(store, come);
        }
        let key = key(store);
        // Another tab may have ticked meanwhile.
        let text = key.as_ref().and_then(|key| browser::kept(key));
        let text = text.unwrap_or_else(|| self.ticked.get_untracked());
        let mut strung = Strung::read(&text);
        strung.turn(&store.design.get_untracked(), self.row.get_untracked());
        let text = strung.write();
        if let Some(key) = key
            && let Err(why) = browser::keep(&key, &text)
        {
            store.complain(say::not_kept(&why));
        }
        self.ticked.set(text);
    }

    fn on_keys(self, event: &KeyboardEvent) {
        let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
        let is_in =
            |css| target.as_ref().is_some_and(|target| matches!(target.closest(css), Ok(Some(_))));
        if event.ctrl_key() || event.meta_key() || event.alt_key() || is_in("select") {
            return;
        }
        match event.key().as_str() {
            "ArrowRight" | "PageDown" => self.go(true),
            "ArrowLeft" | "PageUp" => self.go(false),
            " " if !is_in("button,summary") => self.turn_tick(),
            _ => return,
        }
        event.prevent_default();
    }
}

/// Where the ticks of the open design are kept; nowhere while it is not kept itself.
fn key(store: Store) -> Option<String> {
    match &*store.origin.read_untracked() {
        Origin::Kept(id) => Some(shelf::strung_key(id)),
        _ => None,
    }
}

fn kept(store: Store) -> String {
    key(store).and_then(|key| browser::kept(&key)).unwrap_or_default()
}

fn chosen_order(store: Store) -> Option<usize> {
    chosen_last(store).order.or_else(|| browser::kept(ORDER)?.parse().ok())
}

/// One string at a time.
#[component]
pub fn StringingWindow(store: Store) -> impl IntoView {
    Frame::provide(store);
    let day = Day::new(store);
    let keys = window_event_listener(ev::keydown, move |event| day.on_keys(&event));
    on_cleanup(move || keys.remove());
    stay_awake();
    let none = move || store.count() == 0;
    view! {
        <Window title=say::TITLE.said() wide=true on_close=move || store.window.set(None)>
            {either(
                none,
                || view! { <p>{say::NO_STRINGS.said()}</p> }.into_any(),
                move || strung(day),
            )}
        </Window>
    }
}

fn strung(day: Day) -> AnyView {
    let advice_lines = STRINGING.map(|line| view! { <li>{line.said()}</li> }.into_any());
    let shown = move || {
        let store = day.store;
        let (design, resolved) = (store.design.read(), store.resolved.read());
        let all = stringing(&design, &resolved, &store.analysis.read());
        all.get(day.row.get()).map(stringing_markup).unwrap_or_default()
    };
    view! {
        <div class="strung" id="strung">
            {progress(day)}
            <div id="strung-shown" aria-live="polite" inner_html=shown></div>
            <p class="wrong" id="strung-other">{words(move || other(day))}</p>
            {acts(day)}
            <details>
                <summary>{say::BEFORE.said()}</summary>
                <ul class="granted">{Vec::from(advice_lines)}</ul>
            </details>
            <p class="caution">{advice::caution()}</p>
        </div>
    }
    .into_any()
}

/// How far the harp has come, the order, and the way to the next string that is not on.
fn progress(day: Day) -> AnyView {
    let count = move || day.store.count();
    let said = move || match (day.up(), count()) {
        (up, count) if up == count => say::all_up(&count),
        (up, count) => say::progress(&count, &up),
    };
    let name = move |row: usize| {
        let analysis = day.store.analysis.read();
        analysis.strings.get(row).map(display::string_name).unwrap_or_default()
    };
    let go = move || {
        let next = day.next_in_order().filter(|row| *row != day.row.get());
        next.map(|row| {
            view! {
                <button type="button" class="tool" id="strung-go" on:click=move |_| day.row.set(row)>
                    {say::next_in_order(&name(row))}
                </button>
            }
        })
    };
    let option = |(place, order): (usize, Order)| {
        let chosen = move || day.order() == order;
        view! { <option value=place.to_string() selected=chosen>{order_name(order)}</option> }
    };
    let options = Order::ALL.into_iter().enumerate().map(option).collect_view();
    let choose = move |event| {
        let order = event_target_value(&event).parse().ok();
        choose(day.store, Come { order, ..chosen_last(day.store) });
        day.chosen.set(order);
        if let Some(row) = untrack(|| day.next_in_order()) {
            day.row.set(row);
        }
    };
    view! {
        <div class="strung-head">
            <p id="strung-progress" role="status">{words(said)}</p>
            <progress
                aria-labelledby="strung-progress"
                max=move || count().to_string()
                value=move || day.up().to_string()
            ></progress>
            {go}
            <label class="strung-order">
                <span>{say::ORDER.said()}" "</span>
                // The keyboard begins at the tick.
                <select tabindex="0" on:change=choose>{options}</select>
            </label>
            <p class="hint" id="strung-easier">{words(move || day.easier())}</p>
        </div>
    }
    .into_any()
}

/// What is to be said of a tick that was for another string.
fn other(day: Day) -> String {
    let Tick::Other(then) = day.tick() else { return String::new() };
    let design = day.store.design.read();
    let now = design.strings.get(day.row.get()).map(make_up).unwrap_or_default();
    say::was_other(&now, &then)
}

/// Back, the tick, next.
fn acts(day: Day) -> AnyView {
    let on = move || day.tick() == Tick::On;
    view! {
        // The keyboard stays at the tick, so that the space bar ticks.
        <div class="strung-acts" on:mousedown=|event: MouseEvent| event.prevent_default()>
            {button("tool", "strung-back", "", say::BACK.said(), move || day.go(false))}
            <button
                type="button"
                class="tool"
                id="strung-tick"
                autofocus=true
                aria-pressed=move || if on() { "true" } else { "false" }
                on:click=move |_| day.turn_tick()
            >
                {say::TICK.said()}
            </button>
            {button("tool", "strung-next", "", say::NEXT.said(), move || day.go(true))}
        </div>
    }
    .into_any()
}

/// The screen stays lit while the window is open, where the browser can do that.
fn stay_awake() {
    spawn_local(browser::stay_awake());
    // A page that goes out of sight lets the screen go dark.
    let seen = window_event_listener(ev::visibilitychange, |_| {
        if !document().hidden() {
            spawn_local(browser::stay_awake());
        }
    });
    on_cleanup(move || {
        seen.remove();
        browser::may_sleep();
    });
}
