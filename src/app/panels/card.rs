//! The papers on the screen, as they will be printed: the stringing card, the order list and the design report.

use std::time::Duration;

use leptos::ev;
use leptos::html;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlElement;

use super::curves::watch_size;
use super::{order, papers};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::words;
use crate::app::{browser, earlier, frame};
use crate::design::resolve::resolve;
use crate::engine::analysis::analyse;
use crate::papers::card::{card, card_with};
use crate::papers::html::html as markup;
use crate::papers::sheet::{Paper, Sheet};
use crate::papers::words::open_findings;
use crate::words::{
    Language, Words, has, in_language, language, order as order_say, page, papers as say,
    settling as settling_say,
};

/// Under which the browser keeps the paper that was chosen last.
const CHOSEN: &str = "stringloft/paper";
/// Under which the browser keeps the language that was chosen last for papers.
const SPOKEN: &str = "stringloft/paper-language";
/// The papers of a card or an order.
const PAPERS: &[Paper] = &Paper::ALL;
/// The papers of a report, which has more columns.
const LARGE: &[Paper] = &[Paper::A4, Paper::Letter];
/// Where the pages stand: beside the app, so that printing can leave the app out.
pub const PRINT_ROOT: &str = "print-root";

/// What is printed: its title, the button that opens it, and how it is made; again where it speaks another language
/// than the page.
struct Printed {
    title: Words,
    button: &'static str,
    papers: &'static [Paper],
    sheet: fn(Store, Paper, bool) -> Sheet,
}

/// The stringing card.
const CARD: Printed = Printed {
    title: say::CARD,
    button: "card",
    papers: PAPERS,
    sheet: |store, paper, anew| {
        let link = store.address().unwrap_or_default();
        if anew {
            let design = store.design.read();
            return card(&design, &analyse(&resolve(&design).harp), &link, paper);
        }
        let borne = frame::now(store);
        card_with(&store.design.read(), &store.analysis.read(), &borne, &link, paper)
    },
};
/// The order list.
const ORDER: Printed = Printed {
    title: say::ORDER_LIST,
    button: "order-print",
    papers: PAPERS,
    sheet: |store, paper, _| order::sheet(store, paper),
};
/// The design report.
const REPORT: Printed =
    Printed { title: say::REPORT, button: "report", papers: LARGE, sheet: papers::report_sheet };

/// The tuning sheet.
const TUNING: Printed = Printed {
    title: settling_say::SHEET,
    button: "tuning-sheet",
    papers: LARGE,
    sheet: papers::tuning_sheet,
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

/// The bar above the tuning sheet.
#[component]
pub fn TuningBar(store: Store) -> impl IntoView {
    bar(store, &TUNING)
}

/// The bar above the pages. The pages themselves are put into [`PRINT_ROOT`].
fn bar(store: Store, printed: &'static Printed) -> AnyView {
    let paper = RwSignal::new(chosen(printed.papers));
    let own = language();
    let spoken = RwSignal::new(chosen_language());
    let sheet = Memo::new(move |_| {
        let (language, paper) = (spoken.get(), paper.get());
        markup(&in_language(language, || (printed.sheet)(store, paper, language != own)))
    });
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
    browser::name_paper(PRINT_ROOT, Some(printed.title.said()));
    on_cleanup(|| {
        browser::fill(PRINT_ROOT, "", "");
        browser::name_paper(PRINT_ROOT, None);
    });
    let line = NodeRef::<html::Div>::new();
    line.on_load(|element| {
        let bar: HtmlElement = (*element).clone();
        watch_size(&element, move || browser::stand_below(PRINT_ROOT, bar.offset_height()));
    });
    let close = move || {
        store.window.set(None);
        browser::focus(printed.button);
    };
    let wrong = RwSignal::new(Words::NONE);
    let print = move || {
        let printed = browser::print();
        wrong.set(if printed.is_some() { Words::NONE } else { say::NOT_PRINTED });
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
        <section aria-label=say::BAR.said()>
        <div node_ref=line class="card-bar" role="toolbar" aria-label=printed.title.said()>
            <h2>{printed.title.said()}</h2>
            <label>
                {say::PAPER.said()} " "
                <select id="paper" on:change=choose>
                    {papers}
                </select>
            </label>
            {language_choice(spoken, wrong)}
            <p class="hint">
                {say::PRINT_FULL_SIZE.said()}
                {(is_card && browser::is_local()).then(|| view! { " " {say::CODE_LOCAL.said()} })}
            </p>
            {button("tool main", "print", "", order_say::PRINT.said(), print)}
            {button("tool", "close-card", "", page::CLOSE.said(), close)}
            <p class="wrong" id="card-findings">{words(found)}</p>
            <p class="wrong" role="alert">{words(move || wrong.get().into())}</p>
        </div>
        </section>
    }
    .into_any()
}

/// The language that was chosen last for papers, if its words are here; else the page's.
pub fn chosen_language() -> Language {
    let kept = Language::of_code(&browser::kept(SPOKEN).unwrap_or_default());
    kept.filter(|language| has(*language)).unwrap_or_else(language)
}

/// The choice of the language of a paper; nothing where the page has but one. Its words are fetched when it is chosen:
/// until then, and where they do not come, the paper stays as it is.
pub fn language_choice(spoken: RwSignal<Language>, wrong: RwSignal<Words>) -> AnyView {
    let all = browser::languages();
    if all.len() < 2 {
        return ().into_any();
    }
    let speak = move |wanted: Language| {
        spawn_local(async move {
            let came = browser::fetch_language(wanted).await;
            let _ = wrong.try_set(if came { Words::NONE } else { say::LANGUAGE_MISSING });
            if came {
                let _ = spoken.try_set(wanted);
            }
        });
    };
    // What was chosen in another visit is fetched now.
    let kept = Language::of_code(&browser::kept(SPOKEN).unwrap_or_default());
    if let Some(kept) = kept.filter(|kept| all.contains(kept) && *kept != spoken.get_untracked()) {
        speak(kept);
    }
    let choose = move |event| {
        let code = event_target_value(&event);
        // Where the browser does not keep it, it is the page's again the next time.
        let _ = browser::keep(SPOKEN, &code);
        speak(Language::of_code(&code).unwrap_or_else(language));
    };
    let option = |one: Language| {
        view! { <option value=one.code() lang=one.code() selected=move || spoken.get() == one>{one.own_name()}</option> }
    };
    let options = all.into_iter().map(option).collect_view();
    view! {
        <label>
            {say::LANGUAGE.said()} " "
            <select class="paper-language" on:change=choose>{options}</select>
        </label>
    }
    .into_any()
}
