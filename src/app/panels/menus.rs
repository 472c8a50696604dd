//! What the menus hold: the lines of those at the top of the page, and the choice of curves.

use leptos::html;
use leptos::prelude::*;

use super::header::{THEME, file_name, open_files, save};
use crate::app::browser;
use crate::app::store::{Act, Format, Picture, Store, Window};
use crate::app::widgets::button::button;
use crate::design::figures::{WITH_CURVE, row};
use crate::design::table;
use crate::words::{
    Language, Words, client, curves, help, language, page as say, settling, sound, stringing, tuner,
};

/// The most curves at once: more would be too low to read.
const MOST_CURVES: usize = 5;

/// What the views are for, by the names of their buttons.
const VIEW_HINTS: [(&str, Words); 6] = [
    ("chart-view", say::CHART_HINT),
    ("drawing", say::DRAWING_HINT),
    ("parts-view", say::PARTS_HINT),
    ("choose-view", say::CHOOSE_HINT),
    ("order-view", say::ORDER_HINT),
    ("versions-view", say::VERSIONS_HINT),
];

/// Says beside the buttons of the views what each is for.
pub fn hint_at_views() {
    for (id, hint) in VIEW_HINTS {
        if let Some(button) = document().get_element_by_id(id) {
            drop(button.set_attribute("title", hint.said()));
        }
    }
}

/// What the menu of this id holds.
pub fn list(store: Store, id: &str) -> AnyView {
    match id {
        "designs" => designs(store),
        "harp" => instrument(store),
        "share" => share(store),
        "help" => helps(store),
        _ => choice_of_curves(store),
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
    item(id, title, words, move || {
        // What was told is done with: the window says what there is to say of itself.
        store.forget_done();
        store.window.set(Some(window));
    })
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
    let lines = vec![
        item("new", "", say::NEW.said(), move || begin("own")),
        item("restring", say::RESTRING_HINT.said(), say::RESTRING.said(), move || {
            begin("measured");
        }),
        item("open", say::OPEN_HINT.said(), say::OPEN.said(), choose),
        opener(store, "shelf", "", say::SHELF.said(), Window::Shelf),
        item("save", say::SAVE_HINT.said(), say::SAVE.said(), move || save(store)),
    ];
    view! {
        {lines}
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
        opener(store, "instrument", say::SETUP_HINT.said(), say::SETUP.said(), Window::Instrument),
        opener(
            store,
            "materials",
            say::MATERIALS_HINT.said(),
            say::MATERIALS.said(),
            Window::Materials,
        ),
        opener(store, "stock", say::STOCK_HINT.said(), say::STOCK.said(), Window::Stock),
        opener(store, "sound", sound::HINT.said(), sound::TITLE.said(), Window::Sound),
        opener(store, "tuner", tuner::HINT.said(), tuner::TITLE.said(), Window::Tuner),
        opener(store, "settling", settling::HINT.said(), settling::TITLE.said(), Window::Settling),
    ]
    .into_any()
}

fn share(store: Store) -> AnyView {
    let templates = move || store.show_group("files");
    vec![
        opener(store, "card", "", say::CARD.said(), Window::Card),
        opener(store, "string-harp", "", stringing::TITLE.said(), Window::Stringing),
        opener(store, "tuning-sheet", "", settling::SHEET.said(), Window::TuningSheet),
        opener(store, "report", say::REPORT_HINT.said(), say::REPORT.said(), Window::Report),
        item("templates", say::TEMPLATES_HINT.said(), say::TEMPLATES.said(), templates),
        item("table", say::TABLE_HINT.said(), say::TABLE.said(), move || store.act(Act::SaveTable)),
        item("link", "", say::LINK.said(), move || {
            store.act(Act::CopyLink);
        }),
        opener(store, "as-client", "", client::TITLE.said(), Window::Client),
    ]
    .into_any()
}

fn helps(store: Store) -> AnyView {
    let theme = view! {
        <button type="button" class="menu-item" id="theme" on:click=move |_| turn_theme(store)>
            {move || if store.dark.get() { say::LIGHT.said() } else { say::DARK.said() }}
        </button>
    };
    let mut all = vec![
        opener(store, "help-open", "", help::TITLE.said(), Window::Help),
        opener(store, "numbers", "", say::NUMBERS.said(), Window::Numbers),
        opener(store, "keys", "", say::SHORTCUTS.said(), Window::Keys),
        opener(store, "about", "", say::ABOUT.said(), Window::About),
        theme.into_any(),
    ];
    let others = browser::languages().into_iter().filter(|one| *one != language());
    all.extend(others.map(|other| language_item(store, other)));
    all.into_any()
}

/// The page in another language.
fn language_item(store: Store, other: Language) -> AnyView {
    let speak = move |_| {
        if let Err(why) = browser::speak_always(other) {
            store.complain(say::language_not_kept(&why));
        }
    };
    view! {
        <button type="button" class="menu-item" lang=other.code() on:click=speak>{other.own_name()}</button>
    }
    .into_any()
}

/// Which curves are shown, and their pictures.
fn choice_of_curves(store: Store) -> AnyView {
    let boxes = WITH_CURVE
        .map(|figure| {
            let shown = move || store.curves.with(|shown| shown.contains(&figure));
            let full = move || !shown() && store.curves.with(|shown| shown.len() >= MOST_CURVES);
            let turn = move |_| {
                store.curves.update(|curves| {
                    if let Some(place) = curves.iter().position(|one| *one == figure) {
                        curves.remove(place);
                    } else {
                        curves.push(figure);
                    }
                });
            };
            view! {
                <label>
                    <input type="checkbox" class="menu-item" prop:checked=shown disabled=full on:change=turn/>
                    {row(figure).name().said()}
                </label>
            }
        })
        .collect_view();
    let saved = |id: &'static str, words: &'static str, format: Format| {
        button("menu-item", id, "", words, move || {
            store.act(Act::SavePicture(Picture::Curves, format));
        })
    };
    view! {
        {boxes}
        <p class="hint">{curves::AT_MOST_FIVE.said()}</p>
        {opener(store, "curves-told", "", curves::TOLD_OPEN.said(), Window::Curves)}
        {saved("curves-svg", curves::SAVE_SVG.said(), Format::Svg)}
        {saved("curves-png", curves::SAVE_PNG.said(), Format::Png)}
    }
    .into_any()
}

/// Hands the table of all figures to the browser.
pub fn save_table(store: Store) {
    let design = store.design.get_untracked();
    let text = store.analysis.with_untracked(|analysis| table::write(&design, analysis));
    let name = file_name(&design.title, "csv");
    store.tell_handed(browser::offer_file(&name, "text/csv", &text));
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
        store.complain(say::colours_forgotten(&why));
    }
}
