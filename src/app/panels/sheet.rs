//! The sheet at the bottom of the page in which fingers type a cell of the chart: the cell's own field, large, with what
//! it is of, what is found there, and buttons as wide as a thumb. It comes with a part; without it, and for a mouse, the
//! field stands in its cell.

use js_sys::Reflect;
use leptos::mount::mount_to;
use leptos::prelude::*;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, Event, EventTarget, HtmlElement, HtmlInputElement, MouseEvent};

use super::chart_acts::{act, finish, go_to};
use super::chart_keys::Ask;
use super::string_chart::body::SHEET;
use crate::app::browser;
use crate::app::grid::Shown;
use crate::app::rows;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{while_so, words};
use crate::design::edit::Column;
use crate::design::{advice, display};
use crate::words::details as say;

/// The name of the sheet in the page.
const WHOLE: &str = "cell-sheet";

/// Makes the sheet for whoever points with fingers. Called once.
pub fn stand_by(store: Store) {
    let main = document().query_selector("main").ok().flatten();
    let Some(main) = main.and_then(|main| main.dyn_into().ok()) else { return };
    let make = move || {
        let fingers = RwSignal::new(browser::points_with_fingers());
        browser::on_fingers(move |now| {
            // The field moves only when the next cell is typed into.
            if fingers.get_untracked() != now && store.typing.with_untracked(Option::is_none) {
                fingers.set(now);
            }
        });
        listen(store, fingers);
        while_so(move || fingers.get(), move || sheet(store))
    };
    mount_to(main, make).forget();
}

/// A tap on a cell that is typed into opens it, and the sheet stays above the keys of the screen.
fn listen(store: Store, fingers: RwSignal<bool>) {
    let tapped = Closure::<dyn Fn(Event)>::new(move |event: Event| {
        let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
        let cell = target.and_then(|target| target.closest("#chart td.typed").ok().flatten());
        if fingers.get_untracked() && cell.is_some() {
            act(store, &Ask::Type);
        }
    });
    hear(&document(), "click", tapped);
    // What is typed is kept before the chart hears of the next cell: else it takes the keyboard, and the page may scroll
    // away under the finger.
    let leaves = Closure::<dyn Fn(Event)>::new(move |event: Event| {
        let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
        let is_in = |css| target.as_ref().is_some_and(|t| matches!(t.closest(css), Ok(Some(_))));
        let in_chart = is_in("#chart") && !is_in(".cell-field");
        if fingers.get_untracked() && in_chart && store.typing.with_untracked(Option::is_some) {
            take(store);
        }
    });
    let heard = leaves.as_ref().unchecked_ref();
    let _ = document().add_event_listener_with_callback_and_bool("mousedown", heard, true);
    leaves.forget();
    let sight = Reflect::get(&window(), &"visualViewport".into());
    if let Some(sight) = sight.ok().filter(|sight| !sight.is_undefined()) {
        let sight: EventTarget = sight.unchecked_into();
        for kind in ["resize", "scroll"] {
            let sight = sight.clone();
            hear(&sight.clone(), kind, Closure::new(move |_| put_above_keys(&sight)));
        }
    }
    // The cell stays in sight above the sheet.
    Effect::new(move |_| {
        if store.typing.read().is_some() && fingers.get_untracked() {
            let cursor = store.selection.get_untracked().cursor;
            request_animation_frame(move || {
                browser::show(&rows::cell_id(cursor.row, cursor.column));
                // What is typed takes the place of what is there, though the finger has just set a mark in it.
                let field = document().query_selector(".cell-field").ok().flatten();
                if let Some(field) = field {
                    field.unchecked_into::<HtmlInputElement>().select();
                }
            });
        }
    });
}

fn hear(target: &EventTarget, kind: &str, act: Closure<dyn Fn(Event)>) {
    let _ = target.add_event_listener_with_callback(kind, act.as_ref().unchecked_ref());
    // As long as the page.
    act.forget();
}

/// Keeps the lower edge of the sheet at that of what is in sight.
fn put_above_keys(sight: &EventTarget) {
    let number = |of: &JsValue, name: &str| Reflect::get(of, &name.into()).ok()?.as_f64();
    let sheet = document().get_element_by_id(WHOLE).and_then(|e| e.dyn_into::<HtmlElement>().ok());
    let all = document().document_element().map(|page| f64::from(page.client_height()));
    if let (Some(sheet), Some(all), Some(top), Some(high)) =
        (sheet, all, number(sight, "offsetTop"), number(sight, "height"))
    {
        let below = (all - top - high).max(0.0);
        let _ = sheet.style().set_property("bottom", &format!("{below:.0}px"));
    }
}

/// The sheet. The style sheet shows it while it holds a field.
fn sheet(store: Store) -> AnyView {
    let column = move || store.columns.read().get(store.selection.get().cursor.column).copied();
    let row = move || store.selection.get().cursor.row;
    let head = move || {
        let analysis = store.analysis.read();
        let name = analysis.strings.get(row()).map(display::string_name).unwrap_or_default();
        let Some(column) = column() else { return name };
        let head = rows::head(column, &store.design.read().units);
        let unit = if head.unit.is_empty() { String::new() } else { format!(" ({})", head.unit) };
        format!("{name} · {}{unit}", head.word)
    };
    let found = Memo::new(move |_| {
        let (design, resolved) = (store.design.read(), store.resolved.read());
        let analysis = store.analysis.read();
        match rows::explained(&design, &resolved, &analysis, row(), column()) {
            (said, true) => said,
            _ => {
                let first = analysis.findings.iter().find(|finding| finding.index == row());
                let said = first.map(|first| advice::sentence(first, &analysis, &design.units));
                said.unwrap_or_default()
            }
        }
    });
    let step = move |down: bool| {
        button("tool", step_id(down), "", step_words(down), move || {
            go_on(store, down);
        })
    };
    view! {
        // The keyboard stays in the field.
        <section
            id=WHOLE
            aria-label=say::SHEET.said()
            on:mousedown=|event: MouseEvent| {
                let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
                if target.is_some_and(|target| !matches!(target.closest(".cell-field"), Ok(Some(_)))) {
                    event.prevent_default();
                }
            }
        >
            <p class="sheet-head">{words(head)}</p>
            <div id=SHEET></div>
            <p class="wrong">{words(move || found.get())}</p>
            <div class="sheet-acts">
                {step(false)}
                {step(true)}
                {button("tool", "sheet-leave", "", say::SHEET_LEAVE.said(), move || leave(store))}
                {button("tool main", "sheet-keep", "", say::SHEET_KEEP.said(), move || keep(store))}
            </div>
        </section>
    }
    .into_any()
}

fn step_id(down: bool) -> &'static str {
    if down { "sheet-below" } else { "sheet-above" }
}

fn step_words(down: bool) -> &'static str {
    if down { say::SHEET_BELOW } else { say::SHEET_ABOVE }.said()
}

/// Takes what stands in the field, and lets the field go.
fn take(store: Store) {
    if let Some(text) = browser::typed().filter(|_| store.typing.with_untracked(Option::is_some)) {
        finish(store, store.selection.get_untracked().cursor.column, &text);
    }
    drop_keys();
}

/// The field gives the keyboard away before it goes, so that nothing is left for it to do.
fn drop_keys() {
    let field = document().active_element().and_then(|field| field.dyn_into::<HtmlElement>().ok());
    if let Some(field) = field {
        let _ = field.blur();
    }
}

fn keep(store: Store) {
    take(store);
}

fn leave(store: Store) {
    store.typing.set(None);
    drop_keys();
}

/// The same column of the next string that is typed into there; the gauge of a wound one is not.
fn go_on(store: Store, down: bool) {
    take(store);
    let cursor = store.selection.get_untracked().cursor;
    let is_gauge = store.column_at(cursor.column) == Some(Shown::Typed(Column::Gauge));
    let next = store.design.with_untracked(|design| {
        let fits = |row: &usize| {
            design.strings.get(*row).is_some_and(|spec| !(is_gauge && spec.make_up.is_wound()))
        };
        let count = design.strings.len();
        if down { (cursor.row + 1..count).find(fits) } else { (0..cursor.row).rev().find(fits) }
    });
    if let Some(row) = next {
        go_to(store, row);
    }
    act(store, &Ask::Type);
}
