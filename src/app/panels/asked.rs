//! A small button beside what raises a question, and the answer below it. Whoever says that it is clear sees neither
//! again, until the help brings them back. Findings and the line below the chart stand in the first screen, so their
//! questions come with a part and are put there from outside.

use std::any::Any;
use std::cell::OnceCell;
use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::mount::mount_to;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};

use crate::app::asked::{Clear, Question};
use crate::app::browser;
use crate::app::grid::Shown;
use crate::app::rows;
use crate::app::store::{Store, View};
use crate::app::widgets::button::button;
use crate::app::widgets::list::while_so;
use crate::words::hints as say;

/// Where it is kept what is clear.
const CLEAR: &str = "stringloft/clear";
/// What can have the keyboard.
const BESIDE: &str = "button, input, select, textarea, [tabindex]";
/// How long findings wait after a change: nobody asks while typing.
const PAUSE: Duration = Duration::from_millis(400);

thread_local! {
    static NOW: OnceCell<ArcRwSignal<Clear>> = const { OnceCell::new() };
}

/// What is clear to whoever uses this browser.
fn clear() -> ArcRwSignal<Clear> {
    let read = || ArcRwSignal::new(Clear::read(&browser::kept(CLEAR).unwrap_or_default()));
    NOW.with(|now| now.get_or_init(read).clone())
}

/// Whether there is something that the help can bring back.
pub fn some_are_clear() -> bool {
    clear().with(|clear| !clear.is_empty())
}

/// Asks everything again.
pub fn ask_again() {
    let _ = browser::forget(CLEAR);
    clear().set(Clear::default());
}

/// It is clear now. Kept for comfort alone: where the browser keeps nothing it is asked again next time.
fn is_clear(question: Question) {
    // What has the keyboard goes: what stands beside it gets it.
    let here = document().active_element();
    let around =
        here.and_then(|here| here.closest(".asked").ok()?).and_then(|it| it.parent_element());
    request_animation_frame(move || {
        let next = around.and_then(|around| around.query_selector(BESIDE).ok()?);
        if let Some(next) = next.and_then(|next| next.dyn_into::<HtmlElement>().ok()) {
            let _ = next.focus();
        }
    });
    let now = clear();
    now.update(|clear| clear.add(question));
    let _ = browser::keep(CLEAR, &now.with_untracked(Clear::write));
}

/// A small button that asks, beside a figure or a sentence, with the answer below it while it is open.
pub fn asked(question: Question) -> AnyView {
    ask(question, "ask", "?")
}

/// The same with the question in words, for a form.
pub fn asked_in_words(question: Question) -> AnyView {
    ask(question, "ask in-words", question.asked().said())
}

fn ask(question: Question, class: &'static str, words: &'static str) -> AnyView {
    let wanted = move || clear().with(|clear| !clear.has(question));
    while_so(wanted, move || {
        let open = RwSignal::new(false);
        let label = question.asked().said();
        let answer = move || {
            view! {
                <span class="answer" role="note">
                    <strong>{label}</strong>
                    " "
                    {question.answer().said()}
                    " "
                    {button("quiet", "", "", say::CLEAR.said(), move || is_clear(question))}
                </span>
            }
            .into_any()
        };
        view! {
            <span class="asked">
                <button
                    type="button"
                    class=class
                    title=label
                    aria-label=label
                    aria-expanded=move || if open.get() { "true" } else { "false" }
                    on:click=move |_| open.update(|open| *open = !*open)
                >
                    {words}
                </button>
                {while_so(move || open.get(), answer)}
            </span>
        }
        .into_any()
    })
}

/// What was put into the page from outside. It goes when this is dropped.
type Held = Box<dyn Any>;

/// A question beside a finding.
struct Put {
    within: Element,
    question: Question,
    _held: Held,
}

/// Puts the questions beside the findings and below the chart from now on. Called once.
pub fn stand_by(store: Store) {
    let put = StoredValue::new_local(Vec::<Put>::new());
    let timer = StoredValue::new(None::<TimeoutHandle>);
    Effect::new(move |_| {
        store.analysis.track();
        store.frame.track();
        if let Some(timer) = timer.get_value() {
            timer.clear();
        }
        let beside = move || browser::when_idle(move || ask_beside_findings(store, put));
        timer.set_value(set_timeout_with_handle(beside, PAUSE).ok());
    });
    let below = StoredValue::new_local(None::<Held>);
    Effect::new(move |_| {
        if store.view.get() == View::Chart {
            // The chart is there in the next frame.
            request_animation_frame(move || ask_below_chart(store, below));
        }
    });
}

/// The lines of the list of findings get their questions; those that have them keep them.
fn ask_beside_findings(store: Store, put: StoredValue<Vec<Put>, LocalStorage>) {
    let questions = untrack(|| {
        let (frame, analysis) = (store.frame.read(), store.analysis.read());
        let (design, resolved) = (store.design.read(), store.resolved.read());
        let lines = rows::findings(&design, &resolved, &analysis, frame.finding.as_ref());
        Question::of_lines(&lines, &analysis)
    });
    let Some(list) = document().get_element_by_id("findings") else { return };
    let sentences = list.get_elements_by_class_name("sentence");
    let sentences: Vec<Element> =
        (0..sentences.length()).filter_map(|at| sentences.item(at)).collect();
    // Else another change is on its way to the page, and comes here again.
    if sentences.len() != questions.len() {
        return;
    }
    let beside = |within: &Element| sentences.iter().position(|one| one == within);
    put.update_value(|put| {
        put.retain(|one| beside(&one.within).and_then(|at| questions[at]) == Some(one.question));
        for (within, question) in sentences.iter().zip(&questions) {
            let Some(question) = *question else { continue };
            if put.iter().any(|one| one.within == *within) {
                continue;
            }
            let Ok(element) = within.clone().dyn_into::<HtmlElement>() else { continue };
            let held = Box::new(mount_to(element, move || asked(question)));
            put.push(Put { within: within.clone(), question, _held: held });
        }
    });
}

/// The line below the chart gets the question about the figure under the cursor.
fn ask_below_chart(store: Store, below: StoredValue<Option<Held>, LocalStorage>) {
    let Ok(Some(line)) = document().query_selector(".cell-line") else { return };
    let Ok(line) = line.dyn_into::<HtmlElement>() else { return };
    let held = mount_to(line, move || {
        let question = Memo::new(move |_| {
            let column = store.selection.get().cursor.column;
            match store.columns.read().get(column) {
                Some(Shown::Figure(figure)) => Question::of_figure(*figure),
                _ => None,
            }
        });
        (move || question.get().map(asked)).into_any()
    });
    below.set_value(Some(Box::new(held)));
}
