//! The top of the page: name, title, the menus, undo.

use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::FileList;

use super::awaited::lazy_menu;
use crate::app::browser;
use crate::app::rows::facts;
use crate::app::store::{Act, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::list::words;
use crate::app::widgets::menu::{arrow_keys, came_to, one_stop};
use crate::design::edit::{Edit, Field};
use crate::design::letters::small;
use crate::design::persist;
use crate::words::page as say;

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
            <button type="button" class="tool stop" id="undo" title=say::UNDO_HINT.said() disabled=move || !store.can_undo() on:click=move |_| store.undo()>{say::UNDO.said()}</button>
            <button type="button" class="tool stop" id="redo" title=say::REDO_HINT.said() disabled=move || !store.can_redo() on:click=move |_| store.redo()>{say::REDO.said()}</button>
        </span>
    };
    one_stop("actions");
    view! {
        <header class="top">
            {button("tool main skip", "skip", "", say::SKIP.said(), move || browser::focus(store.main_part()))}
            <h1 class="word-mark">"Stringloft"</h1>
            <input
                class="title"
                id="title"
                type="text"
                aria-label=say::TITLE.said()
                placeholder=say::TITLE.said()
                autocomplete="off"
                prop:value=title
                on:input=on_title
                on:blur=move |_| store.close_step()
            />
            <p class="facts">{words(move || facts(&store.design.read()))}</p>
            <div class="actions" id="actions" role="toolbar" aria-label=say::ACTS.said() on:keydown=arrow_keys on:focusin=move |event| came_to(event.into())>
                {lazy_menu(store, "designs", say::DESIGNS)}
                {lazy_menu(store, "harp", say::INSTRUMENT)}
                {lazy_menu(store, "share", say::SHARE)}
                {lazy_menu(store, "help", say::HELP)}
                {undo.into_any()}
            </div>
            // Not spoken, as a word at every change would be in the way; what is not kept is an alert of its own.
            <span id="kept" class="hint">{words(move || store.kept.get())}</span>
        </header>
    }
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

/// A name for a file: the title, with what file systems dislike taken out.
pub(super) fn file_name(title: &str, ending: &str) -> String {
    let kept = |c: char| if c.is_alphanumeric() || c == '-' { c } else { ' ' };
    let words: String = title.chars().map(kept).collect();
    let stem = small(&words.split_whitespace().collect::<Vec<_>>().join("-"));
    let stem = if stem.is_empty() { "harp".to_owned() } else { stem };
    format!("{stem}.{ending}")
}

pub(super) const THEME: &str = "stringloft/theme";

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
