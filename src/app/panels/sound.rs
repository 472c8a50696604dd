//! The sound of the strings, as they would ring on their own: chosen, plucked, compared and saved. Nothing plays until
//! it is asked for.

mod room;

use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent};

use self::room::{Against, FIELDS, PATTERNS, Room};
use crate::app::rows;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, number_field};
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::widgets::menu::{arrow_keys, came_to, one_stop};
use crate::app::widgets::window::Window;
use crate::app::{browser, proposed};
use crate::design::display;
use crate::words::sound as say;

/// The row of the strings.
const STRINGS: &str = "sound-strings";

/// The sound of the strings, as they would ring on their own.
#[component]
pub fn SoundWindow(store: Store) -> impl IntoView {
    let room = Room::new(store);
    let keys = window_event_listener(ev::keydown, move |event| on_keys(room, &event));
    on_cleanup(move || {
        keys.remove();
        browser::rest_sound();
    });
    room.bring();
    view! {
        <Window title=say::TITLE.said() wide=true on_close=move || store.window.set(None)>
            <div class="sound" id="sound-window">
                <p>{say::ABOUT.said()}</p>
                {strings(room)}
                <p id="sound-told" role="status">{words(move || room.told.get())}</p>
                {acts(room)}
                <div class="sound-fields">
                    {choices(room)}
                    {plucked(room)}
                </div>
                {while_so(move || !room.levers.words().is_empty(), move || room.levers.each("sound-each"))}
                <p class="hint">{say::STAND_INS.said()}</p>
            </div>
        </Window>
    }
}

/// The space bar plays and X goes over to the other sound, unless something is being typed or chosen.
fn on_keys(room: Room, event: &KeyboardEvent) {
    let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    let is_in =
        |css| target.as_ref().is_some_and(|target| matches!(target.closest(css), Ok(Some(_))));
    if event.ctrl_key() || event.meta_key() || event.alt_key() || is_in("select,input") {
        return;
    }
    match event.key().as_str() {
        " " if !is_in("button,summary") => room.play(false),
        "x" | "X" if room.compares() => room.other(),
        _ => return,
    }
    event.prevent_default();
}

/// A button for each string; it chooses the string and plays.
fn strings(room: Room) -> AnyView {
    one_stop(STRINGS);
    let row = move |index: usize| {
        let name = move || {
            let analysis = room.store.analysis.read();
            analysis.strings.get(index).map(display::string_number).unwrap_or_default()
        };
        let chosen = move || room.string.get() == index;
        let press = move |_| {
            room.string.set(index);
            room.play(false);
        };
        view! {
            <button
                type="button"
                class="tool stop"
                aria-pressed=move || if chosen() { "true" } else { "false" }
                on:click=press
            >
                {words(name)}
            </button>
        }
        .into_any()
    };
    let all =
        move || (0..room.store.count()).map(|index| part(&index, move || row(index))).collect();
    view! {
        <div
            id=STRINGS
            class="sound-strings"
            role="group"
            aria-label=say::STRINGS.said()
            on:keydown=arrow_keys
            on:focusin=move |event| came_to(event.into())
        >
            {list(all)}
        </div>
    }
    .into_any()
}

/// Play, stop, save, and the two sounds that are compared.
fn acts(room: Room) -> AnyView {
    let side = move |is_other: bool| {
        let label = move || if is_other { say::b(&room.other_words()) } else { say::A.into() };
        let on = move || room.is_other.get() == is_other;
        view! {
            <button
                type="button"
                class="tool"
                id=if is_other { "sound-b" } else { "sound-a" }
                aria-pressed=move || if on() { "true" } else { "false" }
                on:click=move |_| room.hear(is_other)
            >
                {words(label)}
            </button>
        }
        .into_any()
    };
    let sides = move || {
        let hint = view! { <span class="hint">{say::SWITCH_HINT.said()}</span> }.into_any();
        vec![side(false), side(true), hint].into_any()
    };
    view! {
        <div class="sound-acts">
            {button("tool main", "sound-play", "", say::PLAY.said(), move || room.play(false))}
            {button("tool", "sound-stop", "", say::STOP.said(), browser::stop_sound)}
            {button("tool", "sound-save", "", say::SAVE.said(), move || room.save())}
        </div>
        <div class="sound-acts">{while_so(move || room.compares(), sides)}</div>
    }
    .into_any()
}

/// What is played, open or raised, and what it is compared with.
fn choices(room: Room) -> AnyView {
    let place = |place: usize| place.to_string();
    let patterns =
        PATTERNS.iter().enumerate().map(|(at, (_, said))| (place(at), said.said().into()));
    let raised = [say::OPEN, say::RAISED, say::RAISED_TWICE];
    let raised = raised.iter().enumerate().map(|(at, said)| (place(at), said.said().into()));
    let mut against = vec![
        (Against::Nothing.key(), say::NOTHING.said().into()),
        (Against::Thickest.key(), say::THICKEST.said().into()),
    ];
    if proposed::now(room.store).is_some() {
        against.push((Against::Proposed.key(), say::PROPOSED.said().into()));
    }
    let versions = untrack(|| room.store.design.with(|design| design.versions.clone()));
    for at in 0..versions.len() {
        against.push((Against::Version(at).key(), rows::side_words(&versions, Some(at))));
    }
    let number = |text: String| text.parse().unwrap_or(0);
    view! {
        <fieldset>
            <legend>{say::PLAYED.said()}</legend>
            <Choice
                label=say::PATTERN.said()
                choices=patterns.collect()
                value=Signal::derive(move || room.pattern.get().to_string())
                on_change=move |key: String| room.pattern.set(number(key))
            />
            <Choice
                label=say::LEVERS.said()
                choices=raised.collect()
                value=Signal::derive(move || room.levers.all.get().to_string())
                on_change=move |key: String| room.levers.all.set(number(key))
            />
            <Choice
                label=say::COMPARE.said()
                choices=against
                value=Signal::derive(move || room.against.get().key())
                on_change=move |key: String| room.compare(Against::of_key(&key))
            />
        </fieldset>
    }
    .into_any()
}

/// How the strings are plucked, and what takes their sound.
fn plucked(room: Room) -> AnyView {
    let fields = FIELDS.iter().enumerate().map(|(place, row)| {
        let value = Signal::derive(move || Some(room.numbers.get()[place]));
        let put = Callback::new(move |number: Option<f64>| {
            room.numbers.update(|all| all[place] = number.unwrap_or_default());
        });
        number_field(*row, value, None, put)
    });
    view! {
        <fieldset>
            <legend>{say::PLUCKED.said()}</legend>
            {fields.collect_view()}
        </fieldset>
    }
    .into_any()
}
