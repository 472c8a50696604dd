//! The top of the page: name, title, files, sharing, undo, units.

use leptos::html;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::FileList;

use crate::app::browser;
use crate::app::store::{Act, Store, Window};
use crate::app::widgets::button::button;
use crate::design::document::{ForceUnit, GaugeUnit, LengthUnit, Units};
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
    view! {
        <header class="top">
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
            <nav class="actions" aria-label="Design">
                <Opens store=store/>
                <span class="tool-group">
                    {button("tool", "save", "Save the design as a file (Ctrl+S)", "Save", move || save(store))}
                    {button("tool", "table", "Save the table of all figures as CSV, for a spreadsheet", "Table", move || store.act(Act::SaveTable))}
                    {button("tool main", "link", "Copy a link that opens this very design", "Link", move || store.act(Act::CopyLink))}
                    {button("tool main", "card", "The stringing card, to print", "Card", move || store.window.set(Some(Window::Card)))}
                    {button("tool", "report", "The design report for your file, to print: strings, curves, drawing, loads, findings, sources", "Report", move || store.window.set(Some(Window::Report)))}
                </span>
                <span class="tool-group">
                    <button type="button" class="tool" id="undo" title="Undo (Ctrl+Z)" disabled=move || !store.can_undo() on:click=move |_| store.undo()>"Undo"</button>
                    <button type="button" class="tool" id="redo" title="Redo (Ctrl+Y)" disabled=move || !store.can_redo() on:click=move |_| store.redo()>"Redo"</button>
                </span>
                <span class="tool-group">
                    <UnitChoices store=store/>
                    {button("tool", "instrument", "Pitch, client, limits, allowances", "Instrument", move || store.window.set(Some(Window::Instrument)))}
                    {button("tool", "materials", "Figures of the materials, materials of your own, weighing and breaking tests", "Materials", move || store.window.set(Some(Window::Materials)))}
                    {button("tool", "stock", "The strings and wires that you can buy: gauges, order codes, prices", "Stock", move || store.window.set(Some(Window::Stock)))}
                    {button("tool", "numbers", "Where the numbers come from", "Numbers", move || store.window.set(Some(Window::Numbers)))}
                    {button("tool", "keys", "Keys of the chart", "Keys", move || store.window.set(Some(Window::Keys)))}
                    <button type="button" class="tool" id="theme" title="Light or dark" on:click=move |_| turn_theme(store)>
                        {move || if store.dark.get() { "Light" } else { "Dark" }}
                    </button>
                </span>
            </nav>
        </header>
    }
}

#[component]
fn Opens(store: Store) -> impl IntoView {
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
    view! {
        <span class="tool-group">
            {button("tool", "new", "Start a harp of your own", "New", move || store.window.set(Some(Window::New)))}
            {button("tool", "open", "Open a design file or a CSV table; you can also drag it onto the page", "Open", choose)}
            {button("tool", "shelf", "Designs kept in this browser", "Designs", move || store.window.set(Some(Window::Shelf)))}
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
        </span>
    }
}

/// Opens the first of the files that were chosen or dropped.
pub fn open_files(store: Store, files: Option<FileList>) {
    let Some(file) = files.and_then(|files| files.get(0)) else { return };
    spawn_local(async move {
        let name = file.name();
        match browser::read_file(file).await {
            Ok(text) => store.open_text(name, text),
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

#[component]
fn UnitChoices(store: Store) -> impl IntoView {
    let units = Memo::new(move |_| store.design.with(|design| design.units));
    let set = move |change: fn(&mut Units, &str), key: &str| {
        let mut units = units.get_untracked();
        change(&mut units, key);
        store.send(&Edit::Units(units));
    };
    let metric = move || match (units.get().length, units.get().gauge) {
        (LengthUnit::Mm, GaugeUnit::Mm) => "mm",
        (LengthUnit::Mm, GaugeUnit::Thou) => "mm-thou",
        (LengthUnit::Inch, GaugeUnit::Mm) => "in-mm",
        (LengthUnit::Inch, GaugeUnit::Thou) => "in",
    };
    let set_sizes = |units: &mut Units, key: &str| {
        (units.length, units.gauge) = match key {
            "mm-thou" => (LengthUnit::Mm, GaugeUnit::Thou),
            "in-mm" => (LengthUnit::Inch, GaugeUnit::Mm),
            "in" => (LengthUnit::Inch, GaugeUnit::Thou),
            _ => (LengthUnit::Mm, GaugeUnit::Mm),
        };
    };
    let force = move || match units.get().force {
        ForceUnit::Newton => "N",
        ForceUnit::Kgf => "kgf",
        ForceUnit::Lbf => "lbf",
    };
    let set_force = |units: &mut Units, key: &str| {
        units.force = match key {
            "kgf" => ForceUnit::Kgf,
            "lbf" => ForceUnit::Lbf,
            _ => ForceUnit::Newton,
        };
    };
    let option = |value: &'static str, words: &'static str, now: Signal<&'static str>| {
        view! { <option value=value selected=move || now.get() == value>{words}</option> }
    };
    let (metric, force) = (Signal::derive(metric), Signal::derive(force));
    view! {
        <select id="sizes" aria-label="Units of lengths and gauges" title="Units of lengths and gauges" on:change=move |event| set(set_sizes, &event_target_value(&event))>
            {option("mm", "mm", metric)}
            {option("in", "inch, thou", metric)}
            {option("mm-thou", "mm, thou", metric)}
            {option("in-mm", "inch, mm", metric)}
        </select>
        <select id="forces" aria-label="Unit of pulls" title="Unit of pulls" on:change=move |event| set(set_force, &event_target_value(&event))>
            {option("N", "N", force)}
            {option("kgf", "kgf", force)}
            {option("lbf", "lbf", force)}
        </select>
    }
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
