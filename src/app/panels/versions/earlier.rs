//! Earlier states of the design, which were noted by themselves: look at one, or open it beside the present one.

use std::sync::Arc;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::compared::{pair, row, settings_table, strings_table};
use crate::app::earlier::{self, Earlier};
use crate::app::rows;
use crate::app::store::{Ghost, Origin, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{either, list, part, while_so, words};
use crate::design::compare::{Comparison, StringDiff, compare};
use crate::design::document::Design;
use crate::design::persist;
use crate::design::resolve::resolve;
use crate::engine::analysis::analyse;

/// A state that is looked at.
#[derive(Clone, PartialEq)]
struct Looked {
    /// The day and the time.
    when: String,
    design: Arc<Design>,
}

/// The list, and the state that is looked at.
#[component]
pub fn EarlierStates(store: Store) -> impl IntoView {
    let states = RwSignal::new(Vec::<Earlier>::new());
    let looked = RwSignal::new(None::<Looked>);
    let wrong = RwSignal::new(String::new());
    Effect::new(move |_| {
        looked.set(None);
        let Origin::Kept(id) = store.origin.get() else {
            states.set(Vec::new());
            return;
        };
        spawn_local(async move {
            let found = earlier::of(&id).await;
            // It may be left, or another design open, by now.
            if matches!(store.origin.try_get_untracked(), Some(Origin::Kept(open)) if open == id) {
                let _ = states.try_set(found);
            }
        });
    });
    let look = move |state: &Earlier| match persist::read(&state.text) {
        Ok(design) => {
            wrong.set(String::new());
            let when = format!("{}, {}", state.day, state.time);
            let analysis = Arc::new(analyse(&resolve(&design).harp));
            store.ghost.set(Some(Ghost { words: rows::ghost_words(&when), analysis }));
            looked.set(Some(Looked { when, design: Arc::new(design) }));
        }
        Err(error) => wrong.set(format!("That state cannot be read: {error}.")),
    };
    let line = move |state: Earlier| {
        part(&(state.ms, state.why), move || {
            let Earlier { day, time, why, .. } = state.clone();
            let when = format!("{day}, {time}");
            let label = format!("Look at {when}");
            view! {
                <tr>
                    <td>{when}</td>
                    <td>{why}</td>
                    <td><button type="button" class="tool look" aria-label=label on:click=move |_| look(&state)>"Look"</button></td>
                </tr>
            }
            .into_any()
        })
    };
    let table = move || {
        view! {
            <div class="sheet" role="region" tabindex="0" aria-label="Earlier states">
                <table class="sources kept" id="earlier-states">
                    <thead>
                        <tr>
                            <th scope="col">"Date and time"</th>
                            <th scope="col">"Why it was kept"</th>
                            <th scope="col"><span class="out-of-sight">"What to do"</span></th>
                        </tr>
                    </thead>
                    <tbody>{list(move || states.get().into_iter().map(line).collect())}</tbody>
                </table>
            </div>
        }
        .into_any()
    };
    let none = || view! { <p class="hint">"None yet."</p> }.into_any();
    view! {
        <h3>"Earlier states"</h3>
        <p class="hint">"This browser keeps them on its own: how each session ended, every quarter of an hour while you work, and whenever you print, copy a link, or save an order list or a template. At most 20 stay, the older ones further apart."</p>
        <p class="wrong" role="alert">{words(move || wrong.get())}</p>
        {either(move || !states.with(Vec::is_empty), table, none)}
        {while_so(move || looked.with(Option::is_some), move || shown(store, looked))}
    }
}

/// What differs between the state that is looked at and the design as it is now, and the way to go on from it.
fn shown(store: Store, looked: RwSignal<Option<Looked>>) -> AnyView {
    let found = Memo::new(move |_| {
        let Looked { when, design } = looked.get()?;
        Some((compare(&design, &store.design.read()), when))
    });
    let of = move |words: fn(&Comparison, &str) -> String| {
        move || {
            found.with(|found| {
                found.as_ref().map(|(found, when)| words(found, when)).unwrap_or_default()
            })
        }
    };
    let is = move |holds: fn(&Comparison) -> bool| {
        move || found.with(|found| found.as_ref().is_some_and(|(found, _)| holds(found)))
    };
    let settings = move || {
        let found = found.read();
        found.iter().flat_map(|(found, _)| found.settings.iter().map(pair)).collect()
    };
    let strings = move || {
        let (found, now) = (found.read(), store.analysis.get());
        let Some((found, _)) = found.as_ref() else { return Vec::new() };
        let line = |string: &StringDiff| {
            let name = rows::row_name(string, Some(&found.ghost), Some(&now));
            row(name, string.cells.clone(), (string.before.is_none(), string.after.is_none()))
        };
        found.strings.iter().filter(|string| string.differs()).map(line).collect()
    };
    let open = move || {
        let Some(Looked { when, design }) = looked.get_untracked() else { return };
        let title = format!("{} ({when})", design.title).trim().to_owned();
        let begun = store.begin(Design { title, ..(*design).clone() });
        let words = format!(
            "Opened as it was on {when}, as a new design. The one that was open stays under Designs."
        );
        store.tell(begun, &words);
    };
    let close = move || {
        store.ghost.set(None);
        looked.set(None);
    };
    let some_settings = is(|found| !found.settings.is_empty());
    let some_strings = is(|found| found.strings.iter().any(StringDiff::differs));
    view! {
        <section class="versions" id="earlier-shown" aria-label="The state you look at">
            <h4>{words(of(|_, when| format!("{when}, and now")))}</h4>
            <p role="status">{words(of(|found, _| rows::differing(found)))}</p>
            <p class="tool-group">
                {button("tool main", "open-earlier", "The design that is open now stays as it is", "Open as a new design", open)}
                {button("tool", "", "", "Close", close)}
            </p>
            {while_so(some_settings, move || settings_table("settings-earlier", Box::new(settings)))}
            {while_so(some_strings, move || strings_table(store, "strings-earlier", "Strings, then → now", Box::new(strings)))}
        </section>
    }
    .into_any()
}
