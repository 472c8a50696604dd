//! Findings in the order of their weight, each leading to its string, with its cure beside it.

use leptos::prelude::*;
use web_sys::MouseEvent;

use super::chart_acts::go_to;
use crate::app::browser;
use crate::app::rows::{self, FindingWords};
use crate::app::store::{Store, Window};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::design::advice;
use crate::words::chart_page as say;

/// The list of findings.
#[component]
pub fn Findings(store: Store) -> impl IntoView {
    let found = Memo::new(move |_| {
        let frame = store.frame.read();
        let (design, resolved) = (store.design.read(), store.resolved.read());
        rows::findings(&design, &resolved, &store.analysis.read(), frame.finding.as_ref())
    });
    let headline = move || match found.with(Vec::len) {
        // The frame has a line of its own where a part is over; else the summary says what is not judged.
        0 => say::NO_FINDINGS.into(),
        count => say::findings_count(&count),
    };
    view! {
        <section class="findings" aria-label=say::FINDINGS.said() id="findings" tabindex="-1">
            <h2>{words(headline)}</h2>
            {while_so(
                move || store.design.with(|design| rows::has_blanks(design)),
                move || view! {
                    <p>{button("quiet", "missing", say::MISSING_HINT.said(), say::MISSING.said(), move || store.window.set(Some(Window::Missing)))}</p>
                }.into_any(),
            )}
            <ul>
                {list(move || {
                    let line = |finding: FindingWords| {
                        let key = finding.clone();
                        part(&key, move || Line(LineProps { store, finding }).into_any())
                    };
                    found.get().into_iter().map(line).collect()
                })}
            </ul>
            <p class="caution">{advice::caution()}</p>
        </section>
    }
}

#[component]
fn Line(store: Store, finding: FindingWords) -> impl IntoView {
    let FindingWords { row, frame, weight, sign, sentence, cure } = finding;
    let cure = cure.map(|(label, edit)| {
        let mend = move |press: MouseEvent| {
            // The second press of a double click would mend what has come to stand here since.
            if press.detail() > 1 {
                return;
            }
            // Its own step, also after typing into the same cell.
            store.close_step();
            let whole = untrack(|| {
                advice::with_code(&edit, &store.design.read(), &store.shop.read().items)
            });
            store.send(&whole);
            store.close_step();
            // To the string, also where the cure was refused.
            go_to(store, row.unwrap_or(0));
            browser::focus(store.main_part());
        };
        view! { <button type="button" class="cure" on:click=mend>{label}</button> }
    });
    let words = match row {
        Some(row) => {
            let go = move |_| {
                go_to(store, row);
                browser::focus(store.main_part());
            };
            view! { <button type="button" class="link" on:click=go>{sentence}</button> }.into_any()
        }
        None if frame => {
            let go = move |_| store.show_group("loads");
            view! { <button type="button" class="link" on:click=go>{sentence}</button> }.into_any()
        }
        None => view! { <span>{sentence}</span> }.into_any(),
    };
    view! {
        <li class=format!("finding weight-{weight}") class:of-frame=frame>
            <span class="sign" aria-hidden="true">{sign}</span>
            <span class="sentence">{words} " " {cure}</span>
        </li>
    }
}
