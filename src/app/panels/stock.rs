//! The stock: lists of strings and wires that can be bought, kept in this browser.

mod desk;
mod import;
mod items;

use leptos::html;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlSelectElement;

use self::desk::Desk;
use super::header::file_name;
use crate::app::browser;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::TextField;
use crate::app::widgets::list::{either, list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::stock::{self, StockList, starting_list, table};
use crate::words::stock_page as say;

/// The panel of the stock.
#[component]
pub fn StockWindow(store: Store) -> impl IntoView {
    let desk = Desk::new(store);
    let close = move || {
        store.window.set(None);
        desk.warn();
    };
    let left_out = move || {
        let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
        desk.left_out.get().into_iter().map(line).collect()
    };
    view! {
        <Window title=say::TITLE.said() wide=true on_close=close>
            <div class="stock">
                {lists(desk)}
                <p class="wrong" role="alert">{words(move || desk.wrong.get())}</p>
                <p class="hint" role="status">{words(move || desk.told())}</p>
                <ul class="stock-bad wrong" id="stock-left-out" aria-label=say::LEFT_OUT.said()>{list(left_out)}</ul>
                {either(move || desk.importing.get(), move || import::view(desk), move || items::view(desk))}
            </div>
        </Window>
    }
}

/// Which list is in use, and what can be done with it.
fn lists(desk: Desk) -> AnyView {
    let options = move || {
        let option = |(id, title): (String, String)| {
            part(&(id.clone(), title.clone()), move || {
                let this = id.clone();
                let is_chosen = move || desk.id.get() == this;
                view! { <option value=id prop:selected=is_chosen>{title}</option> }.into_any()
            })
        };
        let lists = desk.lists.get().into_iter();
        lists.map(|list| option((list.id, list.title))).collect()
    };
    let file = NodeRef::<html::Input>::new();
    let choose_file = move || {
        if let Some(input) = file.get_untracked() {
            input.click();
        }
    };
    let chosen = move |_| {
        let Some(input) = file.get_untracked() else { return };
        let given = input.files().and_then(|files| files.get(0));
        input.set_value("");
        let Some(given) = given else { return };
        spawn_local(async move {
            let name = given.name();
            match browser::read_file(given).await {
                Ok(text) => take_file(desk, &name, &text),
                Err(why) => desk.complain(why),
            }
        });
    };
    let new = move || {
        let name = say::NEW_NAME.into();
        desk.begin(StockList { name, ..StockList::default() });
    };
    let usual = move || desk.begin(starting_list());
    let note = move || desk.list.with(|list| list.remark.clone());
    view! {
        <div class="stock-head">
            <label class="field">
                <span>{say::IN_USE.said()}</span>
                <select
                    id="stock-list"
                    prop:value=move || desk.id.get()
                    on:change=move |event| {
                        desk.choose(event_target_value(&event));
                        // What was not taken is not shown.
                        event_target::<HtmlSelectElement>(&event).set_value(&desk.id.get_untracked());
                    }
                >
                    {list(options)}
                </select>
            </label>
            <TextField label=say::NAME.said() value=Signal::derive(move || desk.list.with(|l| l.name.clone())) on_input=move |text| desk.rename(text)/>
            <TextField label=say::CURRENCY_USUAL.said() value=Signal::derive(move || desk.list.with(|l| l.currency.clone())) on_input=move |text| desk.set_currency(text) hint="EUR"/>
        </div>
        <p class="window-actions">
            {button("tool", "stock-new", say::NEW_LIST_HINT.said(), say::NEW_LIST.said(), new)}
            {button("tool", "stock-usual", say::USUAL_HINT.said(), say::USUAL.said(), usual)}
            {button("tool", "stock-remove", say::REMOVE_LIST_HINT.said(), say::REMOVE_LIST.said(), move || desk.remove_list())}
            {button("tool", "stock-file", say::OPEN_FILE_HINT.said(), say::OPEN_FILE.said(), choose_file)}
            {button("tool", "stock-paste", say::PASTE_TABLE_HINT.said(), say::PASTE_TABLE.said(), move || desk.open_import(String::new()))}
            {button("tool", "stock-csv", say::SAVE_CSV_HINT.said(), say::SAVE_CSV.said(), move || save_csv(desk))}
            {button("tool", "stock-json", say::SAVE_FILE_HINT.said(), say::SAVE_FILE.said(), move || save(desk))}
            <input
                node_ref=file
                id="stock-input"
                class="out-of-sight"
                type="file"
                tabindex="-1"
                aria-hidden="true"
                accept=".json,.csv,.tsv,.txt,application/json,text/csv"
                on:change=chosen
            />
        </p>
        {while_so(move || !note().is_empty(), move || view! { <p class="hint">{words(note)}</p> }.into_any())}
    }
    .into_any()
}

/// Takes a file: one of ours becomes a list beside the others, a table goes through its columns first.
fn take_file(desk: Desk, name: &str, text: &str) {
    if !text.trim_start_matches('\u{feff}').trim_start().starts_with('{') {
        desk.open_import(text.to_owned());
        return;
    }
    match stock::read(text) {
        Ok(list) => desk.begin(list),
        Err(error) => desk.complain(say::file_not_opened(&name, &error)),
    }
}

fn save_csv(desk: Desk) {
    let list = desk.list.get_untracked();
    let items: Vec<_> = list.with_currency().collect();
    offer(desk, &file_name(&list.name, "csv"), "text/csv", &table::export(&items));
}

fn save(desk: Desk) {
    let list = desk.list.get_untracked();
    offer(desk, &file_name(&list.name, "json"), "application/json", &stock::write(&list));
}

fn offer(desk: Desk, name: &str, kind: &str, text: &str) {
    desk.tell_handed(browser::offer_file(name, kind, text));
}
