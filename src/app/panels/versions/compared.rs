//! Two versions, or one and the design as it is now: curves, totals, strings and settings that differ.

use std::sync::Arc;

use leptos::prelude::*;

use super::Analyses;
use crate::app::rows;
use crate::app::store::{Ghost, Store};
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{Part, list, part, while_so, words};
use crate::design::compare::{Comparison, Pair, columns, compare};
use crate::design::document::{Design, VersionSpec};
use crate::design::letters::capital;
use crate::words::versions as say;

/// A side of the comparison: a version by its place, or the design as it is now.
type Side = Option<usize>;

/// The choice of the two, and what differs.
#[component]
pub fn Compared(
    store: Store,
    versions: Memo<Vec<VersionSpec>>,
    analyses: Analyses,
) -> impl IntoView {
    let asked = RwSignal::new((None::<Side>, None::<Side>));
    let all = RwSignal::new(false);
    // The last version and now, until others are chosen; a version that went is not compared.
    let sides = Memo::new(move |_| {
        let count = versions.with(Vec::len);
        let there = |side: Option<Side>, usual: Side| {
            side.filter(|side| side.is_none_or(|index| index < count)).unwrap_or(usual)
        };
        let (before, after) = asked.get();
        (there(before, count.checked_sub(1)), there(after, None))
    });
    let found = Memo::new(move |_| {
        let design = store.design.read();
        let (before, after) = sides.get();
        let of = |side: Side| -> Arc<Design> {
            match side {
                Some(index) => design.versions.get(index).map(|version| version.design.clone()),
                None => Some(design.clone()),
            }
            .unwrap_or_default()
        };
        Found { comparison: compare(&of(before), &of(after)), sides: sides.get() }
    });
    let ghost = Memo::new(move |_| match sides.get() {
        (Some(index), None) | (None, Some(index)) => {
            let words = versions.with(|all| rows::ghost_words(&rows::side_words(all, Some(index))));
            analyses.with(|all| all.get(index).cloned()).map(|analysis| Ghost { words, analysis })
        }
        _ => None,
    });
    Effect::new(move |_| {
        // Another design that is opened takes the curves away, and gets those of its own.
        store.origin.track();
        store.ghost.set(ghost.get());
        store.compared.set(sides.get());
    });
    on_cleanup(move || store.ghost.set(None));
    let choices = move || {
        let pair = part(&versions.with(|all| names(all)), move || {
            let one = |label: &'static str, first: bool| {
                let value = move || key_of(if first { sides.get().0 } else { sides.get().1 });
                let set = move |key: String| {
                    let side = Some(key.parse::<usize>().ok());
                    asked.update(|asked| *(if first { &mut asked.0 } else { &mut asked.1 }) = side);
                };
                let choices = versions.with_untracked(|all| names(all));
                view! { <Choice label=label choices=choices value=Signal::derive(value) on_change=set/> }
            };
            view! { <div class="keep-line">{one(say::BEFORE.said(), true)}{one(say::AFTER.said(), false)}</div> }
                .into_any()
        });
        vec![pair]
    };
    let any = move || !versions.with(Vec::is_empty);
    let body = move || {
        let figures = move |side: Side| match side {
            Some(index) => analyses.with(|all| all.get(index).cloned()),
            None => Some(store.analysis.get()),
        };
        let strings = move || {
            let found = found.read();
            let (before, after) = (figures(found.sides.0), figures(found.sides.1));
            let shown = found.comparison.strings.iter().filter(|s| all.get() || s.differs());
            let rows = shown.map(|string| {
                let name = rows::row_name(string, before.as_deref(), after.as_deref());
                row(name, string.cells.clone(), (string.before.is_none(), string.after.is_none()))
            });
            rows.collect()
        };
        let settings = move || found.read().comparison.settings.iter().map(pair).collect();
        let totals = move || found.read().comparison.totals.iter().map(pair).collect();
        let some = move || !found.read().comparison.settings.is_empty();
        let shown =
            move || all.get() || found.read().comparison.strings.iter().any(|s| s.differs());
        view! {
            <h3>{say::COMPARE.said()}</h3>
            {list(choices)}
            <p id="differing" role="status">{words(move || rows::differing(&found.read().comparison))}</p>
            {pair_table("totals", say::TOTALS.said(), Box::new(totals))}
            {while_so(some, move || settings_table("settings", Box::new(settings)))}
            <label class="all-strings">
                <input type="checkbox" id="all-strings" prop:checked=all on:change=move |event| all.set(event_target_checked(&event))/>
                {say::EVERY_STRING.said()}
            </label>
            {while_so(shown, move || strings_table(store, "strings-compared", say::STRINGS_BEFORE_AFTER.said(), Box::new(strings)))}
        }
        .into_any()
    };
    while_so(any, body)
}

/// What differs, and between which sides.
#[derive(PartialEq)]
struct Found {
    comparison: Comparison,
    sides: (Side, Side),
}

/// The key of a side in a list of choices.
fn key_of(side: Side) -> String {
    side.map_or("now".to_owned(), |index| index.to_string())
}

/// What can be chosen for a side.
fn names(versions: &[VersionSpec]) -> Vec<(String, String)> {
    let sides = std::iter::once(None).chain((0..versions.len()).map(Some));
    let words = |side: Side| match side {
        Some(_) => rows::side_words(versions, side),
        None => say::NOW.into(),
    };
    sides.map(|side| (key_of(side), words(side))).collect()
}

/// The lines of a table.
type Lines = Box<dyn Fn() -> Vec<Part> + Send + Sync>;

/// The settings that differ, made by [`pair`].
pub(super) fn settings_table(id: &'static str, lines: Lines) -> AnyView {
    pair_table(id, say::SETTINGS.said(), lines)
}

/// A table of what is on either side, which goes sideways by itself where it is wide.
fn pair_table(id: &'static str, caption: &'static str, lines: Lines) -> AnyView {
    view! {
        <div class="sheet" role="region" tabindex="0" aria-label=caption>
            <table class="sources pairs" id=id>
                <caption>{caption}</caption>
                {pair_head()}
                <tbody>{list(lines)}</tbody>
            </table>
        </div>
    }
    .into_any()
}

/// The strings that differ, made by [`row`].
pub(super) fn strings_table(
    store: Store,
    id: &'static str,
    caption: &'static str,
    lines: Lines,
) -> AnyView {
    let heads = move || {
        let head = |text: String| {
            let text = capital(&text);
            part(&text.clone(), move || view! { <th scope="col">{text}</th> }.into_any())
        };
        columns(&store.design.read().units).into_iter().map(head).collect()
    };
    view! {
        <div class="sheet" role="region" tabindex="0" aria-label=caption>
            <table class="sources differ" id=id>
                <caption>{caption}</caption>
                <thead><tr><th scope="col">{say::STRING.said()}</th>{list(heads)}</tr></thead>
                <tbody>{list(lines)}</tbody>
            </table>
        </div>
    }
    .into_any()
}

fn pair_head() -> AnyView {
    view! {
        <thead><tr><th scope="col"><span class="out-of-sight">{say::WHAT.said()}</span></th><th scope="col">{say::BEFORE.said()}</th><th scope="col">{say::AFTER.said()}</th></tr></thead>
    }
    .into_any()
}

/// A line of two texts; those that differ stand out.
pub(super) fn pair(pair: &Pair) -> Part {
    let Pair { name, before, after } = pair.clone();
    let differs = pair.differs();
    part(&(name.clone(), before.clone(), after.clone()), move || {
        view! {
            <tr class:differs=differs><th scope="row">{capital(&name)}</th><td>{before}</td><td>{after}</td></tr>
        }
        .into_any()
    })
}

/// A string: where a figure differs, both of it.
pub(super) fn row(name: String, cells: Vec<Pair>, (came, went): (bool, bool)) -> Part {
    let texts: Vec<(String, bool)> = cells
        .iter()
        .map(|cell| match (cell.differs(), came, went) {
            (false, ..) | (_, _, true) => (cell.before.clone(), false),
            (_, true, _) => (cell.after.clone(), false),
            _ => (format!("{} → {}", cell.before, cell.after), true),
        })
        .collect();
    let name = match (came, went) {
        (true, _) => say::came(&name),
        (_, true) => say::went(&name),
        _ => name,
    };
    part(&(name.clone(), texts.clone()), move || {
        let cells: Vec<AnyView> = texts
            .into_iter()
            .map(|(text, differs)| view! { <td class:differs=differs>{text}</td> }.into_any())
            .collect();
        view! { <tr><th scope="row">{name}</th>{cells}</tr> }.into_any()
    })
}
