//! The stringing card on the screen, as it will be printed.

use leptos::ev;
use leptos::prelude::*;

use crate::app::browser;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::papers::card::card;
use crate::papers::html::html;
use crate::papers::sheet::Paper;

/// The papers, with the words of a list.
const PAPERS: [(&str, &str, Paper); 3] =
    [("a4", "A4", Paper::A4), ("a5", "A5", Paper::A5), ("letter", "Letter", Paper::Letter)];
/// Where the pages stand: beside the app, so that printing can leave the app out.
pub const PRINT_ROOT: &str = "print-root";

/// The bar above the pages. The pages themselves are put into [`PRINT_ROOT`].
#[component]
pub fn CardBar(store: Store) -> impl IntoView {
    let paper = RwSignal::new("a4".to_owned());
    let sheet = Memo::new(move |_| {
        let chosen = paper.get();
        let row = PAPERS.iter().find(|row| row.0 == chosen).unwrap_or(&PAPERS[0]);
        let link = store.address().unwrap_or_default();
        html(&card(&store.design.read(), &store.analysis.read(), &link, row.2))
    });
    Effect::new(move |_| browser::fill(PRINT_ROOT, &sheet.read(), "preview-open"));
    on_cleanup(|| browser::fill(PRINT_ROOT, "", ""));
    let close = move || {
        store.window.set(None);
        browser::focus("card");
    };
    let escape = window_event_listener(ev::keydown, move |event| {
        if event.key() == "Escape" {
            close();
        }
    });
    on_cleanup(move || escape.remove());
    let papers =
        PAPERS.map(|(key, words, _)| view! { <option value=key>{words}</option> }).collect_view();
    Effect::new(move |_| browser::focus("print"));
    view! {
        <div class="card-bar" role="toolbar" aria-label="Stringing card">
            <h2>"Stringing card"</h2>
            <label>
                "Paper "
                <select id="paper" on:change=move |event| paper.set(event_target_value(&event))>
                    {papers}
                </select>
            </label>
            <p class="hint">
                "Print at 100 %, with no margins added."
                {browser::is_local().then_some(" The code leads to this computer alone: before you print cards for others, open Stringloft at its address on the web.")}
            </p>
            {button("tool main", "print", "", "Print", browser::print)}
            {button("tool", "close-card", "", "Close", close)}
        </div>
    }
}
