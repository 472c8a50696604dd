//! Lists of buttons below a word, and rows of buttons that are one stop of the tab key.

use leptos::leptos_dom::helpers::window_event_listener_untyped;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement, KeyboardEvent};

/// A word that shows a list when it is pressed. `opened` is done each time.
pub fn menu(
    id: &'static str,
    words: &'static str,
    list: AnyView,
    opened: impl Fn() + 'static,
) -> AnyView {
    let toggled = move |event: Event| {
        if event_target::<Element>(&event).has_attribute("open") {
            opened();
        }
    };
    view! {
        <details class="menu" on:toggle=toggled>
            <summary class="tool stop" id=id>{words}</summary>
            <div class="menu-list">{list}</div>
        </details>
    }
    .into_any()
}

/// Closes the menu that is open when something else is pressed or gets the keyboard, when one of its buttons was
/// pressed, and by Escape; the arrow keys go through its lines. Called once, for all menus of the page.
pub fn mind_menus() {
    for kind in ["click", "focusin", "keydown"] {
        let _ = window_event_listener_untyped(kind, |event| mind_menu(&event));
    }
}

fn mind_menu(event: &Event) {
    let Ok(Some(menu)) = document().query_selector("details.menu[open]") else { return };
    let target: Option<Element> = event.target().and_then(|target| target.dyn_into().ok());
    let Some(target) = target else { return };
    let inside = menu.contains(Some(&target));
    let close = match event.dyn_ref::<KeyboardEvent>() {
        Some(keys) => match keys.key().as_str() {
            "ArrowDown" if inside => return go_on(&menu, &target, true, keys),
            "ArrowUp" if inside => return go_on(&menu, &target, false, keys),
            key => key == "Escape",
        },
        None if event.type_() == "click" => {
            !inside || matches!(target.closest("button"), Ok(Some(_)))
        }
        None => !inside,
    };
    if close {
        let _ = menu.remove_attribute("open");
        // Its word keeps the keyboard, and gets it back from a window that one of its buttons opens.
        if inside {
            focus(menu.first_element_child());
        }
    }
}

/// Goes on from a line of a menu, or from its word, to the next line.
fn go_on(menu: &Element, from: &Element, down: bool, keys: &KeyboardEvent) {
    let lines = items_of(menu, "menu-item");
    let count = lines.len();
    let here = lines.iter().position(|line| line == from);
    let (first, step) = match (here, down) {
        (Some(here), true) => (here + 1, 1),
        (None, true) => (0, 1),
        (here, false) => (here.unwrap_or(0) + count - 1, count - 1),
    };
    keys.prevent_default();
    focus(next_of(&lines, first, step).cloned());
}

/// The first that can be pressed, from a place on by so many places.
fn next_of(items: &[Element], first: usize, step: usize) -> Option<&Element> {
    let count = items.len();
    let places = (0..count).map(|turn| &items[(first + turn * step) % count]);
    places.into_iter().find(|item| !item.has_attribute("disabled"))
}

/// In a row of buttons of the class `stop` the arrow keys go on to the next, and the tab key out of the row.
pub fn arrow_keys(event: KeyboardEvent) {
    let Some((row, items)) = row_of(&event) else { return };
    let count = items.len();
    let active = document().active_element();
    let Some(here) = items.iter().position(|item| Some(item) == active.as_ref()) else { return };
    let (first, step) = match event.key().as_str() {
        "ArrowRight" => (here + 1, 1),
        "ArrowLeft" => (here + count - 1, count - 1),
        "Home" => (0, 1),
        "End" => (count - 1, count - 1),
        _ => return,
    };
    event.prevent_default();
    if let Some(next) = next_of(&items, first, step) {
        stop_at(&row, Some(next));
        focus(Some(next.clone()));
    }
}

/// The button of a row that the mouse or the arrow keys came to is the one that the tab key comes back to.
pub fn came_to(event: Event) {
    let target: Option<Element> = event.target().and_then(|target| target.dyn_into().ok());
    if let (Some((row, _)), Some(target)) = (row_of(&event), target)
        && target.class_list().contains("stop")
    {
        stop_at(&row, Some(&target));
    }
}

/// Makes a row one stop of the tab key, once it is on the page.
pub fn one_stop(id: &'static str) {
    request_animation_frame(move || {
        if let Some(row) = document().get_element_by_id(id) {
            stop_at(&row, None);
        }
    });
}

/// The tab key stops at one button of a row: at the first where none is named.
fn stop_at(row: &Element, stop: Option<&Element>) {
    for (place, item) in items_of(row, "stop").iter().enumerate() {
        let here = stop.map_or(place == 0, |stop| stop == item);
        let _ = item.set_attribute("tabindex", if here { "0" } else { "-1" });
    }
}

fn row_of(event: &Event) -> Option<(Element, Vec<Element>)> {
    let row: Element = event.current_target()?.dyn_into().ok()?;
    let items = items_of(&row, "stop");
    Some((row, items))
}

fn items_of(row: &Element, class: &str) -> Vec<Element> {
    let all = row.get_elements_by_class_name(class);
    (0..all.length()).filter_map(|place| all.item(place)).collect()
}

fn focus(element: Option<Element>) {
    if let Some(element) = element.and_then(|element| element.dyn_into::<HtmlElement>().ok()) {
        let _ = element.focus();
    }
}
