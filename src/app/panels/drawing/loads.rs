//! What the strings do to board, neck and pillar, and how far each part is loaded.

use leptos::prelude::*;

use crate::app::asked::Question;
use crate::app::frame::Frame;
use crate::app::panels::asked::asked_in_words;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{counted, either, list, part, words};
use crate::design::advice;
use crate::design::bearing_words::{self, PartWords};
use crate::design::display;
use crate::design::explain::Topic;
use crate::engine::bearing::Borne;
use crate::words::{drawing as say, report};

/// The loads, with the caution that they are estimates.
#[component]
pub fn LoadsTable(store: Store) -> impl IntoView {
    let Frame { band, borne } = Frame::here();
    let verdicts = Memo::new(move |_| {
        let (borne, units) = (borne.read(), store.design.read().units);
        let build = store.resolved.read().build();
        bearing_words::verdicts(&borne.bearing, &band.read(), &store.analysis.read(), &build, units)
    });
    let lines = Memo::new(move |_| lines(store, &borne.read()));
    // The summary says the same at once.
    Effect::new(move |_| store.frame.set(bearing_words::verdict(&borne.read().bearing)));
    let granted = Memo::new(move |_| bearing_words::assumptions(&store.design.read()));
    let row = move |place: usize| {
        let cell = move |of: fn(&(String, String)) -> &String| {
            words(move || lines.with(|all| all.get(place).map(of).cloned().unwrap_or_default()))
        };
        view! { <tr><th scope="row">{cell(|line| &line.0)}</th><td>{cell(|line| &line.1)}</td></tr> }
            .into_any()
    };
    let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
    let why_none = move || {
        borne.with(|borne| match &borne.bearing.frame {
            Err(error) => report::not_judged(error),
            Ok(_) => String::new(),
        })
    };
    let table = move || {
        view! {
            <div class="drawing-loads">
                <p class="hint">{words(why_none)}</p>
                <p class="hint">{words(move || bearing_words::verdict(&borne.read().bearing).full)}</p>
                <p class="hint">{bearing_words::MEANING.said()}</p>
                {asked_in_words(Question::Range)}
                <ul class="uses">{counted(move || verdicts.with(Vec::len), move |place| judged(verdicts, place))}</ul>
                <table class="sources" aria-labelledby="loads-title">
                    <tbody>{counted(move || lines.with(Vec::len), row)}</tbody>
                </table>
                <details>
                    <summary>{say::ASSUMPTIONS.said()}</summary>
                    <ul class="granted">{list(move || granted.get().into_iter().map(line).collect())}</ul>
                    {button("link", "", say::FORMULAS_LOADS.said(), say::HOW_WORKED_OUT.said(), move || store.explain(Topic::Loads))}
                </details>
                <p class="caution">{advice::caution()}</p>
            </div>
        }
        .into_any()
    };
    let none = || view! { <p class="hint">{say::NO_LOADS.said()}</p> }.into_any();
    let pulls = move || borne.with(|borne| !borne.loads.pulls.is_empty());
    view! {
        <section aria-labelledby="loads-title">
            <h3 id="loads-title">{report::LOADS.said()}</h3>
            {either(pulls, table, none)}
        </section>
    }
}

/// A part with its bar.
fn judged(verdicts: Memo<Vec<PartWords>>, place: usize) -> AnyView {
    let told = move |of: fn(&PartWords) -> String| {
        words(move || verdicts.with(|all| all.get(place).map(of).unwrap_or_default()))
    };
    let picture = move || {
        let ratio = verdicts.with(|all| all.get(place).and_then(|told| told.ratio));
        ratio.map(bar).unwrap_or_default()
    };
    view! {
        <li>
            <p class="use-head">
                <strong>{told(|told| told.name.to_string())}</strong>
                <span class="use-share">{told(PartWords::head)}</span>
            </p>
            <div class="use-bar" inner_html=picture></div>
            <p class="hint">{told(|told| told.why.clone())}</p>
            <p class="hint">{told(|told| told.mend.unwrap_or_default().to_string())}</p>
        </li>
    }
    .into_any()
}

/// How far a part is loaded as a picture from 0 to 200 %, with a mark at 100 %. The number stands beside it.
fn bar((least, most): (f64, f64)) -> String {
    let at = |ratio: f64| display::decimals((100.0 * ratio).clamp(0.0, 200.0), 0);
    let over = if most > 1.0 { " over" } else { "" };
    format!(
        "<svg viewBox=\"0 0 200 8\" preserveAspectRatio=\"none\" aria-hidden=\"true\" focusable=\"false\"><rect \
         class=\"use-may{over}\" y=\"2\" height=\"4\" width=\"{}\"/><rect class=\"use-is\" y=\"2\" height=\"4\" \
         width=\"{}\"/><rect class=\"use-all\" x=\"99.5\" width=\"1\" height=\"8\"/></svg>",
        at(most),
        at(least)
    )
}

/// The forces.
fn lines(store: Store, borne: &Borne) -> Vec<(String, String)> {
    let units = store.design.read().units;
    let forces = bearing_words::forces(&borne.bearing, units);
    forces.into_iter().map(|(what, how_much)| (what.to_owned(), how_much)).collect()
}
