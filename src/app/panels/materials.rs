//! The materials: the design's own copies of the built-in ones, and those of the user; every figure
//! with its source, to be typed or taken from a weighing or a test.

mod desk;
mod facts;
mod naming;
mod tests_of;

use leptos::prelude::*;

use self::desk::{Desk, ListedMaterial};
use self::facts::fact_row;
use self::naming::{Naming, NewMaterial};
use self::tests_of::{trial_form, uses as uses_of};
use super::asked::asked_in_words;
use crate::app::asked::Question;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::edit::Edit;
use crate::design::library::built_in;
use crate::design::material_edit::{is_built_in, uses};
use crate::design::material_facts::Property;
use crate::design::trial::Trial;
use crate::engine::material::said;
use crate::words::{materials as say, semicolon};

/// The panel of the materials.
#[component]
pub fn MaterialsWindow(store: Store) -> impl IntoView {
    let desk = Desk::new(store);
    let close = move || {
        store.close_step();
        store.window.set(None);
        let left = desk.unfinished();
        if !left.is_empty() {
            store.complain(say::left_out(&left.join(semicolon())));
        }
    };
    let problem = move || {
        let told = store.notice.read();
        told.as_ref().filter(|told| told.is_problem()).map(|told| told.text().to_owned())
    };
    view! {
        <Window title=say::PANEL.said() wide=true on_close=close>
            <div class="materials">
                <div class="materials-list">
                    <ul aria-label=say::PANEL.said()>
                        {list(move || {
                            let line = |line: ListedMaterial| part(&line.clone(), move || list_line(desk, line).into_any());
                            desk.lines.get().into_iter().map(line).collect()
                        })}
                    </ul>
                    <NewMaterial desk=desk/>
                </div>
                <div class="material-form">
                    <h3>{words(move || desk.current.with(|spec| said(&spec.name).to_owned()))}</h3>
                    <Standing desk=desk/>
                    <p class="wrong" role="alert">{problem}</p>
                    <p role="status">{words(move || desk.told())}</p>
                    <Naming desk=desk/>
                    <div class="facts">
                        {Property::ALL.map(|property| fact_row(desk, property)).collect_view()}
                    </div>
                    <p class="hint">{say::EMPTY_HINT.said()}</p>
                    {asked_in_words(Question::Standing)}
                    {Trial::ALL.map(|trial| trial_form(store, trial, uses_of(desk, trial))).collect_view()}
                </div>
            </div>
        </Window>
    }
}

fn list_line(desk: Desk, line: ListedMaterial) -> impl IntoView {
    let ListedMaterial { key, name, words } = line;
    let choose = {
        let key = key.clone();
        move |_| desk.choose(key.clone())
    };
    let this = key.clone();
    let unfinished = move || desk.is_unfinished(&key).then(|| say::LISTED_UNFINISHED.said());
    view! {
        <li>
            <button
                type="button"
                class="material-line"
                aria-current=move || desk.current.with(|spec| spec.key == this).then_some("true")
                on:click=choose
            >
                {name}
                <span class="hint">{words}{unfinished}</span>
            </button>
        </li>
    }
}

/// Whose figures these are, and what can be done with the whole.
#[component]
fn Standing(desk: Desk) -> impl IntoView {
    let store = desk.store;
    let state = Memo::new(move |_| {
        let key = desk.current.with(|spec| spec.key.clone());
        let changed = desk.current.with(|spec| built_in().iter().all(|other| other != spec));
        (store.design.with(|design| uses(design, &key)), is_built_in(&key), changed)
    });
    let words = move || match state.get() {
        (_, true, false) => say::BUILT_IN.said(),
        (_, true, true) => say::BUILT_IN_CHANGED.said(),
        (0, false, _) => say::OWN_UNUSED.said(),
        (_, false, _) => say::OWN_USED.said(),
    };
    let back = move || {
        let key = desk.key();
        if let Some(first) = built_in().iter().find(|material| material.key == key) {
            desk.forget(&key);
            desk.tell(store.change(&Edit::Material(first.clone())), say::BACK_DONE.said());
        }
    };
    let remove = move || {
        let key = desk.key();
        desk.forget(&key);
        let words = say::removed(&key);
        desk.tell(store.change(&Edit::RemoveMaterial { key }), &words);
    };
    view! {
        <p class="hint">{words}</p>
        <p class="window-actions">
            {while_so(
                move || matches!(state.get(), (_, true, true)),
                move || button("tool", "", "", say::BACK.said(), back),
            )}
            {while_so(
                move || matches!(state.get(), (0, false, _)),
                move || button("tool", "", "", say::REMOVE.said(), remove),
            )}
        </p>
    }
}
