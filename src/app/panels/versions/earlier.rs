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
use crate::words::versions as say;

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
        Err(error) => wrong.set(say::state_unread(&error)),
    };
    let line = move |state: Earlier| {
        part(&(state.ms, state.why), move || {
            let Earlier { day, time, why, .. } = state.clone();
            let when = format!("{day}, {time}");
            let label = say::look_at(&when);
            view! {
                <tr>
                    <td>{when}</td>
                    <td>{why}</td>
                    <td><button type="button" class="tool look" aria-label=label on:click=move |_| look(&state)>{say::LOOK.said()}</button></td>
                </tr>
            }
            .into_any()
        })
    };
    let table = move || {
        view! {
            <div class="sheet" role="region" tabindex="0" aria-label=say::EARLIER.said()>
                <table class="sources kept" id="earlier-states">
                    <thead>
                        <tr>
                            <th scope="col">{say::DATE_AND_TIME.said()}</th>
                            <th scope="col">{say::WHY_KEPT.said()}</th>
                            <th scope="col"><span class="out-of-sight">{say::WHAT_TO_DO.said()}</span></th>
                        </tr>
                    </thead>
                    <tbody>{list(move || states.get().into_iter().map(line).collect())}</tbody>
                </table>
            </div>
        }
        .into_any()
    };
    let none = || view! { <p class="hint">{say::NONE_YET.said()}</p> }.into_any();
    view! {
        <h3>{say::EARLIER.said()}</h3>
        <p class="hint">{say::EARLIER_HINT.said()}</p>
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
        let title = say::titled_when(&design.title, &when).trim().to_owned();
        let begun = store.begin(Design { title, ..(*design).clone() });
        let words = say::opened_when(&when);
        store.tell(begun, &words);
    };
    let close = move || {
        store.ghost.set(None);
        looked.set(None);
    };
    let some_settings = is(|found| !found.settings.is_empty());
    let some_strings = is(|found| found.strings.iter().any(StringDiff::differs));
    view! {
        <section class="versions" id="earlier-shown" aria-label=say::STATE_SHOWN.said()>
            <h4>{words(of(|_, when| say::and_now(&when)))}</h4>
            <p role="status">{words(of(|found, _| rows::differing(found)))}</p>
            <p class="tool-group">
                {button("tool main", "open-earlier", say::OPEN_EARLIER_HINT.said(), say::OPEN_EARLIER.said(), open)}
                {button("tool", "", "", say::CLOSE.said(), close)}
            </p>
            {while_so(some_settings, move || settings_table("settings-earlier", Box::new(settings)))}
            {while_so(some_strings, move || strings_table(store, "strings-earlier", say::STRINGS_THEN_NOW.said(), Box::new(strings)))}
        </section>
    }
    .into_any()
}
