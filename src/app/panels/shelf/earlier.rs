//! The earlier states of a design in the list, each to be opened as a new design.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::Desk;
use crate::app::earlier::{self, Earlier};
use crate::app::widgets::list::{Part, list, part, while_so};
use crate::design::document::Design;
use crate::design::persist;
use crate::words::designs as say;

/// Shows the states of a design, or no longer.
pub fn show(desk: Desk, id: &str) {
    let is_shown = desk.states.with_untracked(|states| is_of(states.as_ref(), id));
    desk.states.set(None);
    if is_shown {
        return;
    }
    let id = id.to_owned();
    spawn_local(async move {
        let found = earlier::of(&id).await;
        // The window may be closed by now.
        let _ = desk.states.try_set(Some((id, found)));
    });
}

fn is_of(states: Option<&(String, Vec<Earlier>)>, id: &str) -> bool {
    states.is_some_and(|(of, _)| of == id)
}

/// What stands below a design while its states are shown.
pub fn of(desk: Desk, id: String) -> AnyView {
    let lines = move || {
        let states = desk.states.get();
        states.into_iter().flat_map(|(_, states)| states).map(|state| line(desk, state)).collect()
    };
    let none =
        move || desk.states.with(|states| states.as_ref().is_none_or(|(_, all)| all.is_empty()));
    while_so(
        move || desk.states.with(|states| is_of(states.as_ref(), &id)),
        move || {
            view! {
                <li class="shelf-states">
                    <ul class="shelf" aria-label=say::STATES.said()>{list(lines)}</ul>
                    {while_so(none, || {
                        view! { <p class="hint">{say::NO_STATES.said()}</p> }.into_any()
                    })}
                </li>
            }
            .into_any()
        },
    )
}

fn line(desk: Desk, state: Earlier) -> Part {
    part(&(state.ms, state.why), move || {
        let when = format!("{}, {}", state.day, state.time);
        let (label, why) = (say::open_new_of(&when), state.why);
        let shown = when.clone();
        let open = move |_| open(desk, &state.text, &when);
        view! {
            <li>
                <span class="shelf-words">
                    <span>{shown}</span>
                    <span class="unit">{why}</span>
                </span>
                <span class="shelf-acts">
                    <button type="button" class="quiet" aria-label=label on:click=open>{say::OPEN_NEW.said()}</button>
                </span>
            </li>
        }
        .into_any()
    })
}

fn open(desk: Desk, text: &str, when: &str) {
    match persist::read(text) {
        Ok(design) => {
            let title = format!("{} ({when})", design.title).trim().to_owned();
            let design = Design { title, ..design };
            let begun = desk.store.in_its_place(|| desk.store.begin(design));
            let words = say::opened(&when);
            if desk.store.tell(begun, &words) {
                desk.store.window.set(None);
            }
        }
        Err(error) => desk.wrong.set(say::unread(&error)),
    }
}
