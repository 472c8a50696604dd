//! The page as a whole: what stands where, and the keys that work everywhere.

use leptos::ev;
use leptos::mount::mount_to_body;
use leptos::prelude::*;
use web_sys::{DragEvent, KeyboardEvent};

use super::awaited::window_of;
use super::card::PRINT_ROOT;
use super::curves::CurvesPanel;
use super::findings::Findings;
use super::header::{self, Header, open_files};
use super::looks::{Divider, Looks, Split};
use super::notice::{Lines, NoticeLine, let_go};
use super::summary::Summary;
use super::views::{self, ViewButtons};
use crate::app::shelf::titled;
use crate::app::store::{Act, NotFetched, Origin, Part, Progress, Store, View, Window};
use crate::app::widgets::menu::mind_menus;
use crate::app::widgets::window::Told;
use crate::app::{browser, parts};
use crate::words::page as say;

/// The parts of the page that F6 goes through.
const PARTS: [&str; 2] = ["findings", "title"];

/// Printed in place of the page where the part that lays papers is not here yet.
fn not_ready() -> String {
    format!("<article class=\"sheet\"><p>{}</p></article>", say::NOT_PRINTED)
}

/// Puts the page into the body and takes the shell away. With a link in the address, what reads it is fetched first,
/// so that nobody sees another design in its place.
pub fn start() {
    browser::speak_first();
    if browser::fragment().is_empty() {
        mount(|_| {});
        return;
    }
    // Leptos has no executor of its own before it mounts something.
    wasm_bindgen_futures::spawn_local(async {
        let files = parts::fetch(Part::Files).await;
        mount(move |store| match files {
            Ok(files) => {
                store.take_in(Part::Files, files);
                store.act(Act::OpenLink);
            }
            Err(NotFetched) => store.complain(say::LINK_MISSED.said()),
        });
    });
}

fn mount(then: impl FnOnce(Store) + 'static) {
    mount_to_body(|| {
        let store = Store::open_first(parts::fetch);
        then(store);
        store.listen();
        browser::on_leisure(move || store.ask_for_all());
        browser::on_newer(move || {
            if store.notice.read_untracked().is_none() {
                store.hint(say::NEWER.said());
            }
        });
        header::first_theme(store);
        store.first_columns();
        store.give_back_typed();
        view! { <Page store=store/> }
    });
    browser::remove_shell();
}

/// The page.
#[component]
fn Page(store: Store) -> impl IntoView {
    let _ = window_event_listener(ev::keydown, move |event| keys(store, &event));
    let on_paper = move || store.window.with_untracked(|open| open.is_some_and(Window::is_paper));
    let _ = window_event_listener(ev::beforeprint, move |_| match store.has(Part::Papers) {
        _ if on_paper() => {}
        true => store.act(Act::LayPaper),
        false => browser::fill(PRINT_ROOT, &not_ready(), ""),
    });
    let _ = window_event_listener(ev::afterprint, move |_| {
        if !on_paper() {
            browser::fill(PRINT_ROOT, "", "");
        }
    });
    Effect::new(move |_| {
        let title = store.design.with(|design| titled(design));
        browser::set_title(&format!("{title} · Stringloft"));
    });
    // A panel that closed itself took the keyboard with it: the chart gets it back.
    Effect::new(move |before: Option<bool>| {
        let open = store.window.read().is_some();
        if before == Some(true) && !open {
            browser::focus_if_lost(store.main_part());
        }
        open
    });
    mind_menus();
    let_go(store);
    // A window lies over the page and what the page tells, so it tells it too.
    provide_context(Told(Callback::new(move |()| view! { <NoticeLine store=store/> }.into_any())));
    let dropping = RwSignal::new(false);
    let over = move |event: DragEvent| {
        event.prevent_default();
        dropping.set(true);
    };
    let dropped = move |event: DragEvent| {
        event.prevent_default();
        dropping.set(false);
        open_files(store, event.data_transfer().and_then(|data| data.files()));
    };
    let aside = move || store.view.get() != View::Chart;
    let split = Split::new(store);
    // Until its part is here the page stays in reach.
    let card_open = Memo::new(move |_| {
        store.window.get().is_some_and(Window::is_paper)
            && matches!(store.parts.progress(Part::Papers), Progress::Here(_))
    });
    view! {
        <div
            id="app"
            class:dropping=move || dropping.get()
            class:from-link=move || store.origin.get() == Origin::Link
            inert=move || card_open.get()
            on:dragover=over
            on:dragleave=move |_| dropping.set(false)
            on:drop=dropped
        >
            <Header store=store/>
            <main class="work">
            <ViewButtons store=store/>
            <div class="lines">
                <Lines store=store/>
            </div>
            <div
                class="bench"
                class:drawn=aside
                class:only-view=move || split.share() == 100
                class:only-curves=move || split.share() == 0
                style=("--split", move || format!("{}%", split.share()))
            >
                {move || views::shown(store)}
                <Divider split=split/>
                <section class="curves-panel" aria-label=say::CURVES.said()>
                    <CurvesPanel store=store/>
                </section>
                <Findings store=store/>
            </div>
            // Seen above, and after the chart for the keyboard, which is to come to the chart soon.
            <Looks store=store split=split/>
            <Summary store=store/>
            </main>
        </div>
        <Windows store=store/>
        <NoticeLine store=store/>
        <div id=PRINT_ROOT></div>
    }
}

/// Whatever lies over the page.
#[component]
fn Windows(store: Store) -> impl IntoView {
    // Before another window takes the place of one, the field in it is left while what listens to it still lives.
    let shown = RwSignal::new(None);
    Effect::new(move |_| {
        let window = store.window.get();
        untrack(browser::leave_window_field);
        shown.set(window);
    });
    move || {
        shown.get().map(|window| {
            window_of(store, Part::of_window(window), |progress| match progress {
                Progress::Here(brought) => brought.window(window),
                _ => None,
            })
        })
    }
}

/// Keys that work wherever the keyboard is.
fn keys(store: Store, event: &KeyboardEvent) {
    let command = event.ctrl_key() || event.meta_key();
    let done = match (event.key().to_ascii_lowercase().as_str(), command) {
        // A field that is being typed into has an undo of its own, and so have the fields of a draft.
        ("z" | "y", true) if store.typing.with_untracked(Option::is_some) || drafts(store) => false,
        ("z", true) if event.shift_key() => {
            store.redo();
            true
        }
        ("z", true) => {
            store.undo();
            true
        }
        ("y", true) => {
            store.redo();
            true
        }
        ("s", true) => {
            header::save(store);
            true
        }
        // Once the papers are here the browser's own print asks for the paper.
        ("p", true) if !store.has(Part::Papers) => {
            store.act(Act::Print);
            true
        }
        ("f6", false) => {
            next_part(store, event.shift_key());
            true
        }
        _ => false,
    };
    if done {
        event.prevent_default();
    }
}

/// Whether a panel is open whose fields are not yet in the design.
fn drafts(store: Store) -> bool {
    matches!(store.window.get_untracked(), Some(Window::MakeUp | Window::New))
}

/// Gives the keyboard to the next part of the page, or the one before.
fn next_part(store: Store, back: bool) {
    let mut parts = vec![store.main_part()];
    if store.view.get_untracked() == View::Drawing {
        parts.push("drawing-side");
    }
    parts.extend(PARTS);
    let here = document().active_element();
    let inside = |part: &str| {
        let part = document().get_element_by_id(part);
        part.is_some_and(|part| here.as_ref().is_some_and(|here| part.contains(Some(here))))
    };
    let count = parts.len();
    let next = match parts.iter().position(|part| inside(part)) {
        Some(place) if back => (place + count - 1) % count,
        Some(place) => (place + 1) % count,
        None => 0,
    };
    browser::focus(parts[next]);
}
