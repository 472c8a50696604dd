//! The papers on the screen, as they will be printed: the stringing card, the order list and the design report.

use std::time::Duration;

use leptos::ev;
use leptos::prelude::*;

use super::{order, papers};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::words;
use crate::app::{browser, earlier, frame};
use crate::papers::card::card_with;
use crate::papers::html::html;
use crate::papers::sheet::{Paper, Sheet};
use crate::papers::words::open_findings;

/// Under which the browser keeps the paper that was chosen last.
const CHOSEN: &str = "stringloft/paper";
/// The papers of a card or an order.
const PAPERS: &[Paper] = &Paper::ALL;
/// The papers of a report, which has more columns.
const LARGE: &[Paper] = &[Paper::A4, Paper::Letter];
/// Where the pages stand: beside the app, so that printing can leave the app out.
pub const PRINT_ROOT: &str = "print-root";

/// Told where the browser opens no print dialog.
pub const NOT_PRINTED: &str =
    "This browser did not open its print dialog. Print from the browser's own menu instead.";

/// What is printed: its title, the button that opens it, and how it is made.
struct Printed {
    title: &'static str,
    button: &'static str,
    papers: &'static [Paper],
    sheet: fn(Store, Paper) -> Sheet,
}

/// The stringing card.
const CARD: Printed = Printed {
    title: "Stringing card",
    button: "card",
    papers: PAPERS,
    sheet: |store, paper| {
        let link = store.address().unwrap_or_default();
        let borne = frame::now(store);
        card_with(&store.design.read(), &store.analysis.read(), &borne, &link, paper)
    },
};
/// The order list.
const ORDER: Printed =
    Printed { title: "Order list", button: "order-print", papers: PAPERS, sheet: order::sheet };
/// The design report.
const REPORT: Printed = Printed {
    title: "Design report",
    button: "report",
    papers: LARGE,
    sheet: papers::report_sheet,
};

/// The paper that was chosen last, if it is one of these; else A4.
fn chosen(papers: &[Paper]) -> Paper {
    named(papers, &browser::kept(CHOSEN).unwrap_or_default())
}

fn named(papers: &[Paper], name: &str) -> Paper {
    papers.iter().copied().find(|paper| paper.name() == name).unwrap_or_default()
}

/// The paper for what is printed without a window.
pub fn usual_paper() -> Paper {
    chosen(LARGE)
}

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

/// The bar above the design report.
#[component]
pub fn ReportBar(store: Store) -> impl IntoView {
    bar(store, &REPORT)
}

/// The bar above the pages. The pages themselves are put into [`PRINT_ROOT`].
fn bar(store: Store, printed: &'static Printed) -> AnyView {
    let paper = RwSignal::new(chosen(printed.papers));
    let sheet = Memo::new(move |_| html(&(printed.sheet)(store, paper.get())));
    let choose = move |event| {
        let name = event_target_value(&event);
        // Where the browser does not keep it, it is A4 again the next time.
        let _ = browser::keep(CHOSEN, &name);
        paper.set(named(printed.papers, &name));
    };
    let is_card = printed.button == CARD.button;
    let found = move || {
        let words = open_findings(&store.design.read(), &store.analysis.read());
        words.filter(|_| is_card).unwrap_or_default()
    };
    // Made when the bar is seen, and laid out in the frame after that, as each takes long enough.
    let fill = move || {
        if let Some(pages) = sheet.try_read_untracked() {
            browser::fill(PRINT_ROOT, &pages, "preview-open");
        }
    };
    let make = move || {
        if sheet.try_with_untracked(|_| ()).is_some() {
            request_animation_frame(fill);
        }
    };
    Effect::new(move |_| {
        sheet.track();
        request_animation_frame(move || set_timeout(make, Duration::ZERO));
    });
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
    let printing = window_event_listener(ev::beforeprint, move |_| earlier::note(store, "print"));
    on_cleanup(move || printing.remove());
    let option = |one: &Paper| {
        let (name, is_chosen) = (one.name(), *one == paper.get_untracked());
        view! { <option value=name selected=is_chosen>{name}</option> }
    };
    let papers = printed.papers.iter().map(option).collect_view();
    Effect::new(move |_| browser::focus("print"));
    view! {
        <div class="card-bar" role="toolbar" aria-label=printed.title>
            <h2>{printed.title}</h2>
            <label>
                "Paper "
                <select id="paper" on:change=choose>
                    {papers}
                </select>
            </label>
            <p class="hint">
                "Print at 100 %, with no margins added."
                {(is_card && browser::is_local()).then_some(" The code leads to this computer alone: before you print cards for others, open Stringloft at its address on the web.")}
            </p>
            {button("tool main", "print", "", "Print", print)}
            {button("tool", "close-card", "", "Close", close)}
            <p class="wrong" id="card-findings">{words(found)}</p>
            <p class="wrong" role="alert">{words(move || wrong.get().to_owned())}</p>
        </div>
    }
    .into_any()
}
