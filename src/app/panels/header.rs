//! The top of the page: name, title, the menus, undo.

use leptos::html;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::FileList;

use crate::app::browser;
use crate::app::rows::facts;
use crate::app::store::{Act, Store, View, Window};
use crate::app::widgets::button::button;
use crate::app::widgets::list::words;
use crate::app::widgets::menu::{arrow_keys, came_to, menu, one_stop};
use crate::design::edit::{Edit, Field};
use crate::design::letters::small;
use crate::design::{persist, table};

/// The top of the page.
#[component]
pub fn Header(store: Store) -> impl IntoView {
    let title = move || store.design.with(|design| design.title.clone());
    let on_title = move |event| {
        let text = event_target_value(&event);
        store.send(&Edit::Text { field: Field::Title, text });
    };
    let undo = view! {
        <span class="tool-group">
            <button type="button" class="tool stop" id="undo" title="Undo (Ctrl+Z)" disabled=move || !store.can_undo() on:click=move |_| store.undo()>"Undo"</button>
            <button type="button" class="tool stop" id="redo" title="Redo (Ctrl+Y)" disabled=move || !store.can_redo() on:click=move |_| store.redo()>"Redo"</button>
        </span>
    };
    one_stop("actions");
    view! {
        <header class="top">
            {button("tool main skip", "skip", "", "Skip to the work", move || browser::focus(store.main_part()))}
            <h1 class="word-mark">"Stringloft"</h1>
            <input
                class="title"
                id="title"
                type="text"
                aria-label="Name of the instrument"
                placeholder="Name of the instrument"
                autocomplete="off"
                prop:value=title
                on:input=on_title
                on:blur=move |_| store.close_step()
            />
            <p class="facts">{words(move || facts(&store.design.read()))}</p>
            <div class="actions" id="actions" role="toolbar" aria-label="What can be done with the design" on:keydown=arrow_keys on:focusin=move |event| came_to(event.into())>
                {designs(store)}
                {menu("harp", "Instrument", instrument(store))}
                {menu("share", "Print and share", share(store))}
                {menu("help", "Help", help(store))}
                {undo.into_any()}
            </div>
            // Not spoken, as a word at every change would be in the way; what is not kept is an alert of its own.
            <span id="kept" class="hint">{words(move || store.kept.get())}</span>
        </header>
    }
}

/// A line of a menu.
fn item(
    id: &'static str,
    title: &'static str,
    words: &'static str,
    act: impl Fn() + 'static,
) -> AnyView {
    button("menu-item", id, title, words, act)
}

/// A line of a menu that opens a window.
fn opener(
    store: Store,
    id: &'static str,
    title: &'static str,
    words: &'static str,
    window: Window,
) -> AnyView {
    item(id, title, words, move || store.window.set(Some(window)))
}

fn designs(store: Store) -> AnyView {
    let file = NodeRef::<html::Input>::new();
    let choose = move || {
        if let Some(input) = file.get_untracked() {
            input.click();
        }
    };
    let chosen = move |_| {
        if let Some(input) = file.get_untracked() {
            open_files(store, input.files());
            input.set_value("");
        }
    };
    let begin = move |way: &'static str| {
        store.new_harp.way.set(way);
        store.window.set(Some(Window::New));
    };
    let list = vec![
        item("new", "", "New", move || begin("own")),
        item("restring", "From its measurements, typed or pasted", "Restring a harp", move || {
            begin("measured");
        }),
        item(
            "open",
            "Open a design file or a table; you can also drag it onto the page",
            "Open a file",
            choose,
        ),
        opener(store, "shelf", "", "Designs in this browser", Window::Shelf),
        item("save", "Save the design as a file (Ctrl+S)", "Save as a file", move || save(store)),
    ];
    view! {
        {menu("designs", "Designs", list.into_any())}
        <input
            node_ref=file
            id="file"
            class="out-of-sight"
            type="file"
            tabindex="-1"
            aria-hidden="true"
            accept=".json,.csv,.tsv,.txt,application/json,text/csv"
            on:change=chosen
        />
    }
    .into_any()
}

fn instrument(store: Store) -> AnyView {
    vec![
        opener(
            store,
            "instrument",
            "Pitch, client, limits, allowances",
            "Pitch, units, limits",
            Window::Instrument,
        ),
        opener(
            store,
            "materials",
            "Figures of the materials, materials of your own, weighing and breaking tests",
            "Materials",
            Window::Materials,
        ),
        opener(
            store,
            "stock",
            "The strings and wires that you can buy: gauges, order codes, prices",
            "Stock",
            Window::Stock,
        ),
    ]
    .into_any()
}

fn share(store: Store) -> AnyView {
    let templates = move || {
        store.paper.group.set("files");
        store.view.set(View::Drawing);
    };
    vec![
        opener(store, "card", "", "Stringing card", Window::Card),
        opener(
            store,
            "report",
            "For your file, to print: strings, curves, drawing, loads, findings, sources",
            "Design report",
            Window::Report,
        ),
        item(
            "templates",
            "Templates at full size: DXF, SVG, PDF, and the schedule of pins",
            "Templates",
            templates,
        ),
        item(
            "table",
            "Save the table of all figures as CSV, for a spreadsheet",
            "Table of figures",
            move || store.act(Act::SaveTable),
        ),
        item("link", "", "Link to this design", move || {
            store.act(Act::CopyLink);
        }),
    ]
    .into_any()
}

fn help(store: Store) -> AnyView {
    let theme = view! {
        <button type="button" class="menu-item" id="theme" on:click=move |_| turn_theme(store)>
            {move || if store.dark.get() { "Light colours" } else { "Dark colours" }}
        </button>
    };
    vec![
        opener(store, "numbers", "", "The numbers, explained", Window::Numbers),
        opener(store, "keys", "", "Shortcuts", Window::Keys),
        theme.into_any(),
    ]
    .into_any()
}

/// Opens the first of the files that were chosen or dropped.
pub fn open_files(store: Store, files: Option<FileList>) {
    let Some(file) = files.and_then(|files| files.get(0)) else { return };
    spawn_local(async move {
        let name = file.name();
        match browser::read_file(file).await {
            Ok(text) => store.act(Act::OpenFile(name, text)),
            Err(why) => store.complain(why),
        }
    });
}

/// Hands the design to the browser as a file.
pub fn save(store: Store) {
    let design = store.design.get_untracked();
    let name = file_name(&design.title, "json");
    let text = persist::write(&design);
    store.tell_handed(browser::offer_file(&name, "application/json", &text));
}

/// Hands the table of all figures to the browser.
pub fn save_table(store: Store) {
    let design = store.design.get_untracked();
    let text = store.analysis.with_untracked(|analysis| table::write(&design, analysis));
    let name = file_name(&design.title, "csv");
    store.tell_handed(browser::offer_file(&name, "text/csv", &text));
}

/// A name for a file: the title, with what file systems dislike taken out.
pub(super) fn file_name(title: &str, ending: &str) -> String {
    let kept = |c: char| if c.is_alphanumeric() || c == '-' { c } else { ' ' };
    let words: String = title.chars().map(kept).collect();
    let stem = small(&words.split_whitespace().collect::<Vec<_>>().join("-"));
    let stem = if stem.is_empty() { "harp".to_owned() } else { stem };
    format!("{stem}.{ending}")
}

const THEME: &str = "stringloft/theme";

/// Takes the theme that was chosen here before, or the system's.
pub fn first_theme(store: Store) {
    let chosen = browser::kept(THEME);
    browser::set_theme(chosen.as_deref());
    store.dark.set(match chosen.as_deref() {
        Some("dark") => true,
        Some("light") => false,
        _ => browser::prefers_dark(),
    });
    browser::on_scheme(move |dark| {
        if browser::kept(THEME).is_none() {
            store.dark.set(dark);
        }
    });
}

/// Changes between light and dark; back at what the system asks for, the choice is forgotten.
fn turn_theme(store: Store) {
    let dark = !store.dark.get_untracked();
    let name = if dark { "dark" } else { "light" };
    store.dark.set(dark);
    let kept = if dark == browser::prefers_dark() {
        browser::set_theme(None);
        browser::forget(THEME)
    } else {
        browser::set_theme(Some(name));
        browser::keep(THEME, name)
    };
    if let Err(why) = kept {
        store.complain(format!("This browser does not remember the colours: {why}."));
    }
}
