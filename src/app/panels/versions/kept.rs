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
            <div class="sheet" role="region" tabindex="0" aria-label="Kept versions">
                <table class="sources kept">
                    <thead>
                        <tr>
                            <th scope="col">"Name"</th>
                            <th scope="col">"Date"</th>
                            <th scope="col">"Strings"</th>
                            <th scope="col">"Total tension"</th>
                            <th scope="col"><span class="out-of-sight">"What to do"</span></th>
                        </tr>
                    </thead>
                    <tbody>{list(move || (0..told.with(Vec::len)).map(row).collect())}</tbody>
                </table>
            </div>
        }
        .into_any()
    };
    let none = || {
        view! { <p class="hint">"No version is kept yet. Keep one before you try something: it can be brought back and compared at any time."</p> }
            .into_any()
    };
    view! {
        <h2>"Versions"</h2>
        <KeepLine store=store/>
        {either(move || !told.with(Vec::is_empty), table, none)}
    }
}

/// The fields of a version that is to be kept.
#[component]
fn KeepLine(store: Store) -> impl IntoView {
    let name = RwSignal::new(String::new());
    let (day, month, year) = clock::today();
    let date = RwSignal::new(rows::day_words(day, month, year));
    let keep = move || {
        let before = store.design.with_untracked(|design| design.versions.len());
        let given = name.get_untracked();
        let called = match given.trim() {
            "" => format!("Version {}", before + 1),
            given => given.to_owned(),
        };
        let edit = Edit::KeepVersion { name: called.clone(), date: date.get_untracked() };
        if store.tell(store.change(&edit), &format!("Kept as \"{called}\", in this design.")) {
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
                <TextField label="Name of the version" value=name on_input=move |text| name.set(text) hint="such as: gut, spring"/>
                <TextField label="Date" value=date on_input=move |text| date.set(text)/>
            </div>
            {button("tool main", "keep-version", "Keep the design as it is now", "Keep", keep)}
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
        let words =
            format!("The design is again as it was in \"{}\". Undo takes that back.", called());
        store.tell(store.change(&Edit::RestoreVersion { index }), &words);
        browser::focus_if_lost("versions");
    };
    let remove = move || {
        let words = format!("\"{}\" was removed. Undo brings it back.", called());
        store.tell(store.change(&Edit::RemoveVersion { index }), &words);
        browser::focus_if_lost("versions");
    };
    let number = index + 1;
    view! {
        <tr>
            <td><input type="text" autocomplete="off" aria-label=format!("Name of version {number}") prop:value=of(|line| &line.name) on:change=move |event| rename(Some(event_target_value(&event)), None)/></td>
            <td><input type="text" autocomplete="off" aria-label=format!("Date of version {number}") prop:value=of(|line| &line.date) on:change=move |event| rename(None, Some(event_target_value(&event)))/></td>
            <td class="number">{words(of(|line| &line.strings))}</td>
            <td class="number">{words(of(|line| &line.pull))}</td>
            <td>
                <span class="tool-group" role="group" aria-label=format!("Version {number}")>
                    {button("tool restore", "", "The design becomes what it was in this version", "Restore", restore)}
                    {button("tool remove", "", "Take this version out of the list", "Remove", remove)}
                </span>
            </td>
        </tr>
    }
    .into_any()
}
