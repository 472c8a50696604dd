//! The list of versions: keep one, name it, bring it back, take it out.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use super::Analyses;
use crate::app::rows::{self, VersionWords};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::TextField;
use crate::app::widgets::list::{either, list, part, words};
use crate::app::{browser, clock};
use crate::design::document::VersionSpec;
use crate::design::edit::Edit;
use crate::words::versions as say;

/// What is kept of the design, and a line to keep it as it is now.
#[component]
pub fn Kept(store: Store, versions: Memo<Vec<VersionSpec>>, analyses: Analyses) -> impl IntoView {
    let units = Memo::new(move |_| store.design.with(|design| design.units));
    let told =
        Memo::new(move |_| rows::versions(&versions.read(), &analyses.read(), &units.read()));
    let row = move |index: usize| {
        let count = told.with(Vec::len);
        part(&(index, count), move || line(store, versions, told, index))
    };
    let table = move || {
        view! {
            <div class="sheet" role="region" tabindex="0" aria-label=say::KEPT.said()>
                <table class="sources kept">
                    <thead>
                        <tr>
                            <th scope="col">{say::NAME.said()}</th>
                            <th scope="col">{say::DATE.said()}</th>
                            <th scope="col">{say::STRINGS.said()}</th>
                            <th scope="col">{say::TOTAL.said()}</th>
                            <th scope="col"><span class="out-of-sight">{say::WHAT_TO_DO.said()}</span></th>
                        </tr>
                    </thead>
                    <tbody>{list(move || (0..told.with(Vec::len)).map(row).collect())}</tbody>
                </table>
            </div>
        }
        .into_any()
    };
    let none = || view! { <p class="hint">{say::NONE_KEPT.said()}</p> }.into_any();
    view! {
        <h2>{say::VERSIONS.said()}</h2>
        <KeepLine store=store/>
        {either(move || !told.with(Vec::is_empty), table, none)}
    }
}

/// The fields of a version that is to be kept.
#[component]
fn KeepLine(store: Store) -> impl IntoView {
    let name = RwSignal::new(String::new());
    let date = RwSignal::new(clock::today_said());
    let keep = move || {
        let before = store.design.with_untracked(|design| design.versions.len());
        let given = name.get_untracked();
        let called = match given.trim() {
            "" => say::usual_name(&(before + 1)),
            given => given.to_owned(),
        };
        let edit = Edit::KeepVersion { name: called.clone(), date: date.get_untracked() };
        if store.tell(store.change(&edit), &say::kept_as(&called)) {
            name.set(String::new());
        }
    };
    let on_keys = move |event: KeyboardEvent| {
        if event.key() == "Enter" {
            event.prevent_default();
            keep();
        }
    };
    view! {
        <div class="keep-line">
            <div class="keep-line" on:keydown=on_keys>
                <TextField label=say::VERSION_NAME.said() value=name on_input=move |text| name.set(text) hint=say::VERSION_NAME_HINT.said()/>
                <TextField label=say::DATE.said() value=date on_input=move |text| date.set(text)/>
            </div>
            {button("tool main", "keep-version", say::KEEP_HINT.said(), say::KEEP.said(), keep)}
        </div>
    }
}

/// A version in the list.
fn line(
    store: Store,
    versions: Memo<Vec<VersionSpec>>,
    told: Memo<Vec<VersionWords>>,
    index: usize,
) -> AnyView {
    let of = move |field: fn(&VersionWords) -> &String| {
        move || told.with(|all| all.get(index).map(|line| field(line).clone()).unwrap_or_default())
    };
    let rename = move |new_name: Option<String>, new_date: Option<String>| {
        let now = versions.with_untracked(|all| all.get(index).cloned()).unwrap_or_default();
        let (name, date) = (new_name.unwrap_or(now.name), new_date.unwrap_or(now.date));
        store.send(&Edit::NameVersion { index, name, date });
    };
    let called = move || versions.with_untracked(|all| rows::side_words(all, Some(index)));
    let restore = move || {
        let words = say::restored(&called());
        store.tell(store.change(&Edit::RestoreVersion { index }), &words);
        browser::focus_if_lost("versions");
    };
    let remove = move || {
        let words = say::removed(&called());
        store.tell(store.change(&Edit::RemoveVersion { index }), &words);
        browser::focus_if_lost("versions");
    };
    let number = index + 1;
    view! {
        <tr>
            <td><input type="text" autocomplete="off" aria-label=say::name_of(&number) prop:value=of(|line| &line.name) on:change=move |event| rename(Some(event_target_value(&event)), None)/></td>
            <td><input type="text" autocomplete="off" aria-label=say::date_of(&number) prop:value=of(|line| &line.date) on:change=move |event| rename(None, Some(event_target_value(&event)))/></td>
            <td class="number">{words(of(|line| &line.strings))}</td>
            <td class="number">{words(of(|line| &line.pull))}</td>
            <td>
                <span class="tool-group" role="group" aria-label=say::usual_name(&number)>
                    {button("tool restore", "", say::RESTORE_HINT.said(), say::RESTORE.said(), restore)}
                    {button("tool remove", "", say::REMOVE_HINT.said(), say::REMOVE.said(), remove)}
                </span>
            </td>
        </tr>
    }
    .into_any()
}
