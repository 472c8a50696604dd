//! Strings in another material: which gauge of it does the same, and what that does to the harp.

use std::ops::Range;
use std::sync::Arc;

use leptos::prelude::*;

use super::make_up::materials;
use crate::app::browser;
use crate::app::frame::beside;
use crate::app::rows::{self, Exchanged};
use crate::app::store::{Ghost, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{Part, list, part, while_so};
use crate::app::widgets::window::Window;
use crate::design::letters::capital;
use crate::design::restring::{Conversion, Equal, convert, summary};
use crate::design::{advice, library};
use crate::words::details as say;

/// What the window begins with, if no string says better.
const FIRST: [&str; 2] = ["gut", "nylon"];

/// The window in which strings get another material.
#[component]
pub fn ExchangeWindow(store: Store) -> impl IntoView {
    let design = store.design.get_untracked();
    let picked = picked(store);
    let now = design.strings.get(picked.start).map(|string| string.make_up.material.clone());
    let now = now.and_then(|text| library::find(&design.materials, &text).map(|m| m.key.clone()));
    let first = if now.as_deref() == Some(FIRST[0]) { FIRST[1] } else { FIRST[0] };
    let material = RwSignal::new(first.to_owned());
    let equal = RwSignal::new(Equal::default());
    let which = RwSignal::new(if picked.len() > 1 { "picked" } else { "all" });
    let gauges = RwSignal::new("list");
    let known = materials(&design);
    let names = StoredValue::new(known.clone());
    let range = picked.clone();
    let preview = Memo::new(move |_| {
        let design = store.design.read();
        let rows = if which.get() == "all" { 0..design.strings.len() } else { range.clone() };
        let shop = store.shop.read();
        let stock = if gauges.get() == "list" { shop.items.as_slice() } else { &[] };
        let (material, equal) = (&*material.read(), equal.get());
        let materials = &shop.materials;
        Arc::new(convert(&design, &Conversion { rows, material, equal, stock, materials }))
    });
    let count = move || preview.read().changes.iter().filter(|c| c.gauge.is_some()).count();
    let name = move || {
        let key = material.get();
        names
            .with_value(|all| all.iter().find(|(own, _)| *own == key).map(|(_, name)| name.clone()))
            .unwrap_or(key)
    };
    Effect::new(move |_| {
        let words = say::grey(&name());
        let analysis = Arc::new(preview.read().after.clone());
        store.ghost.set((count() > 0).then_some(Ghost { words, analysis }));
    });
    on_cleanup(move || store.ghost.set(None));
    // What the frame bears takes longer than the strings, and follows when the browser is idle.
    let frame = RwSignal::new(None::<String>);
    Effect::new(move |_| {
        let now = preview.get();
        frame.set(None);
        if now.changes.iter().all(|change| change.gauge.is_none()) {
            return;
        }
        browser::when_idle(move || {
            // The window may be closed, or another exchange be shown.
            let is_shown = preview.try_with_untracked(|later| Arc::ptr_eq(later, &now));
            if is_shown == Some(true) {
                let (before, after) = beside(store, &now.design, &now.after);
                let said = !before.is_empty() || !after.is_empty();
                frame.set(said.then(|| say::frame_now(&after, &before)));
            }
        });
    });
    let units = design.units;
    let told = move || {
        let preview = preview.read();
        let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
        if count() == 0 {
            return vec![line(say::NONE_EXCHANGED.into())];
        }
        summary(&preview, &units).into_iter().chain(frame.get()).map(line).collect()
    };
    let take = move || {
        let (count, name) = untrack(|| (count(), name()));
        let edit = preview.with_untracked(|preview| preview.edit.clone());
        store.window.set(None);
        let words = say::exchanged(&count, &name);
        store.tell(store.change(&edit), &words);
    };
    let heads = rows::exchange_heads(&units).into_iter();
    let heads: Vec<AnyView> =
        heads.map(|head| view! { <th scope="col">{head}</th> }.into_any()).collect();
    let (first_string, last_string) = (picked.start + 1, picked.end);
    let these = if picked.len() > 1 {
        say::these(&first_string, &last_string)
    } else {
        say::this(&first_string)
    };
    let strings = vec![("all".to_owned(), say::ALL_STRINGS.into()), ("picked".to_owned(), these)];
    let equals = Equal::ALL.map(|equal| (equal.name().to_owned(), capital(equal.name()))).to_vec();
    let set_equal = move |name: String| {
        if let Some(found) = Equal::ALL.into_iter().find(|equal| equal.name() == name) {
            equal.set(found);
        }
    };
    let list_name = store.shop.with_untracked(|shop| shop.name.clone());
    let from = vec![
        ("list".to_owned(), say::nearest_of(&list_name)),
        ("any".to_owned(), say::ANY_GAUGE.into()),
    ];
    let of = |signal: RwSignal<&'static str>| Signal::derive(move || signal.get().to_owned());
    let set = |signal: RwSignal<&'static str>, both: [&'static str; 2]| {
        move |key: String| signal.set(if key == both[0] { both[0] } else { both[1] })
    };
    view! {
        <Window title=say::EXCHANGE_TITLE.said() wide=true on_close=move || store.window.set(None)>
            <div class="exchange">
                <Choice label=say::STRINGS.said() choices=strings value=of(which) on_change=set(which, ["all", "picked"])/>
                <Choice label=say::NEW_MATERIAL.said() choices=known value=material on_change=move |key| material.set(key)/>
                <Choice label=say::WHAT_STAYS.said() choices=equals value=Signal::derive(move || equal.get().name().to_owned()) on_change=set_equal/>
                <Choice label=say::GAUGES.said() choices=from value=of(gauges) on_change=set(gauges, ["list", "any"])/>
            </div>
            <ul class="granted" id="exchange-told" aria-live="polite">{list(told)}</ul>
            <p class="caution">{advice::caution()}</p>
            <div class="sheet exchange-rows" role="region" tabindex="0" aria-label=say::BEFORE_AFTER.said()>
                <table class="sources differ" id="exchange-table">
                    <thead><tr><th scope="col">{say::STRING.said()}</th>{heads}<th scope="col">{say::EXACT_GAUGE.said()}</th><th scope="col">{say::REMARK.said()}</th></tr></thead>
                    <tbody>{list(move || rows::exchanged(&preview.read(), &units).into_iter().map(row).collect())}</tbody>
                </table>
            </div>
            {while_so(move || count() > 0, move || view! {
                <p class="window-actions at-hand">
                    {button("tool main", "take-exchange", "", say::EXCHANGE.said(), take)}
                    <span class="hint">{say::EXCHANGE_HINT.said()}</span>
                </p>
            }.into_any())}
        </Window>
    }
}

/// The selected rows.
fn picked(store: Store) -> Range<usize> {
    let rows = store.selection.get_untracked().rows();
    let count = store.count_now();
    let start = (*rows.start()).min(count.saturating_sub(1));
    start..(*rows.end() + 1).min(count).max(start)
}

fn row(told: Exchanged) -> Part {
    part(&told.clone(), move || {
        let Exchanged { name, wanted, cells, remark } = told;
        let cells: Vec<AnyView> = cells
            .into_iter()
            .map(|(before, after)| {
                let differs = before != after;
                let text = if differs { format!("{before} → {after}") } else { before };
                view! { <td class:differs=differs>{text}</td> }.into_any()
            })
            .collect();
        view! { <tr><th scope="row">{name}</th>{cells}<td>{wanted}</td><td class="words">{remark}</td></tr> }.into_any()
    })
}
