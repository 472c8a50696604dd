//! The papers on the screen, as they will be printed: the stringing card and the order list.

use leptos::ev;
use leptos::prelude::*;

use super::order;
use crate::app::browser;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::words;
use crate::papers::card::card;
use crate::papers::html::html;
use crate::papers::sheet::{Paper, Sheet};

/// The papers, with the words of a list.
const PAPERS: [(&str, &str, Paper); 3] =
    [("a4", "A4", Paper::A4), ("a5", "A5", Paper::A5), ("letter", "Letter", Paper::Letter)];
/// Where the pages stand: beside the app, so that printing can leave the app out.
pub const PRINT_ROOT: &str = "print-root";

/// Told where the browser opens no print dialog.
const NOT_PRINTED: &str =
    "This browser did not open its print dialog. Print from the browser's own menu instead.";

/// What is printed: its title, the button that opens it, and how it is made.
struct Printed {
    title: &'static str,
    button: &'static str,
    sheet: fn(Store, Paper) -> Sheet,
}

/// The stringing card.
const CARD: Printed = Printed {
    title: "Stringing card",
    button: "card",
    sheet: |store, paper| {
        let link = store.address().unwrap_or_default();
        card(&store.design.read(), &store.analysis.read(), &link, paper)
    },
};
/// The order list.
const ORDER: Printed = Printed { title: "Order list", button: "order-print", sheet: order::sheet };

/// The bar above the stringing card.
#[component]
pub fn CardBar(store: Store) -> impl IntoView {
    bar(store, &CARD)
}

/// The bar above the order list.
#[component]
pub fn OrderBar(store: Store) -> impl IntoView {
    bar(store, &ORDER)
}

/// The bar above the pages. The pages themselves are put into [`PRINT_ROOT`].
fn bar(store: Store, printed: &'static Printed) -> AnyView {
    let paper = RwSignal::new("a4".to_owned());
    let sheet = Memo::new(move |_| {
        let chosen = paper.get();
        let row = PAPERS.iter().find(|row| row.0 == chosen).unwrap_or(&PAPERS[0]);
        html(&(printed.sheet)(store, row.2))
    });
    let is_card = printed.button == CARD.button;
    Effect::new(move |_| browser::fill(PRINT_ROOT, &sheet.read(), "preview-open"));
    on_cleanup(|| browser::fill(PRINT_ROOT, "", ""));
    let close = move || {
        store.window.set(None);
        browser::focus(printed.button);
    };
    let wrong = RwSignal::new("");
    let print = move || {
        let printed = browser::print();
        wrong.set(if printed.is_some() { "" } else { NOT_PRINTED });
    };
    let escape = window_event_listener(ev::keydown, move |event| {
        if event.key() == "Escape" {
            close();
        }
    });
    on_cleanup(move || escape.remove());
    let papers =
        PAPERS.map(|(key, name, _)| view! { <option value=key>{name}</option> }).collect_view();
    Effect::new(move |_| browser::focus("print"));
    view! {
        <div class="card-bar" role="toolbar" aria-label=printed.title>
            <h2>{printed.title}</h2>
            <label>
                "Paper "
                <select id="paper" on:change=move |event| paper.set(event_target_value(&event))>
                    {papers}
                </select>
            </label>
            <p class="hint">
                "Print at 100 %, with no margins added."
                {(is_card && browser::is_local()).then_some(" The code leads to this computer alone: before you print cards for others, open Stringloft at its address on the web.")}
            </p>
            {button("tool main", "print", "", "Print", print)}
            {button("tool", "close-card", "", "Close", close)}
            <p class="wrong" role="alert">{words(move || wrong.get().to_owned())}</p>
        </div>
    }
    .into_any()
}
