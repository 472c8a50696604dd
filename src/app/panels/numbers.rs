//! The numbers, explained: a list of topics, and the page about the one that is chosen.

use std::fmt::Display;

use leptos::prelude::*;

use crate::app::browser;
use crate::app::grid::Shown;
use crate::app::store::Store;
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::edit::Column;
use crate::design::explain::{self, Page, Table, Topic};
use crate::design::figures::Group;
use crate::design::letters::capital;
use crate::engine::figure::Figure;
use crate::words::numbers as say;

/// The element that holds the page.
const PAGE: &str = "numbers-page";

/// The topic of a column of the chart, if there is a page about it.
pub const fn topic_of(shown: Shown) -> Option<Topic> {
    Some(match shown {
        Shown::Figure(figure) => Topic::Figure(figure),
        Shown::Typed(Column::Note) => Topic::Pitch,
        Shown::Typed(Column::Length) => Topic::Figure(Figure::Length),
        Shown::Typed(Column::MakeUp) => Topic::Materials,
        Shown::Typed(Column::Gauge) => Topic::Figure(Figure::Gauge),
        Shown::Typed(Column::OrderCode) => return None,
    })
}

/// The topic of the column under the cursor.
pub fn topic_here(store: Store, column: usize) -> Option<Topic> {
    store.columns.read().get(column).copied().and_then(topic_of)
}

/// The panel.
#[component]
pub fn NumbersWindow(store: Store) -> impl IntoView {
    let choose = move |event| {
        let chosen = event_target_value(&event).parse::<usize>().ok();
        if let Some(topic) = chosen.and_then(|place| Topic::ALL.get(place)) {
            store.topic.set(*topic);
            browser::to_top(PAGE);
        }
    };
    let groups = Group::ALL.map(|group| {
        let topics = Topic::ALL.into_iter().enumerate().filter(|(_, topic)| topic.group() == group);
        let options = topics.map(|(place, topic)| {
            view! {
                <option value=place prop:selected=move || store.topic.get() == topic>{topic.title()}</option>
            }
        });
        view! { <optgroup label=group.title().said()>{options.collect_view()}</optgroup> }
    });
    let tables = move |topic: Topic, page: &mut Page| {
        let mut tables = std::mem::take(&mut page.tables);
        if topic == Topic::Materials {
            tables.extend(explain::materials(&store.design.read().materials));
        }
        tables
    };
    let page = move || {
        let topic = store.topic.get();
        let mut page = explain::page(topic);
        let tables = tables(topic, &mut page);
        article(page, tables, topic.of_loads())
    };
    view! {
        <Window title=say::WINDOW.said() wide=true on_close=move || store.window.set(None)>
            <div class="numbers">
                <select id="topics" size="41" aria-label=say::TOPICS.said() aria-controls=PAGE on:change=choose>
                    {groups.collect_view()}
                </select>
                <article id=PAGE tabindex="0" aria-labelledby="numbers-title">{page}</article>
            </div>
        </Window>
    }
}

/// A page, from its data.
fn article(page: Page, tables: Vec<Table>, caution: bool) -> impl IntoView {
    let Page { title, heading, unit, lead, formula, symbols, example, .. } = page;
    let column = match (heading, unit) {
        ("", _) => String::new(),
        (heading, "") => say::column_pure(&heading),
        (heading, unit) => say::column_in(&heading, &unit),
    };
    let formula = formula.into_iter().map(|(what, text)| {
        view! {
            <p>
                {(!what.is_empty()).then(|| view! { <span class="hint">{say::formula_for(&what)} " "</span> })}
                <span class="formula">{text}</span>
            </p>
        }
    });
    let worked = example.given.iter().any(|given| !given.is_empty());
    let letters = symbols.into_iter().zip(example.given).map(|((sign, meaning), given)| {
        view! {
            <tr>
                <th scope="row" class="formula">{sign}</th>
                <td>{meaning}</td>
                {worked.then(|| view! { <td class="given">{given}</td> })}
            </tr>
        }
    });
    let result = (!example.result.is_empty()).then(|| {
        view! {
            <p>{say::example(&example.string)} " " <strong>{example.result}</strong></p>
        }
    });
    let known = |what: &dyn Display, standing| format!("{what} ({})", explain::standing(standing));
    let checks = page.checks.iter().map(|check| {
        let what = capital(check.what.said());
        known(&say::check(&check.source, &what), check.standing)
    });
    let sources = page.sources.iter().map(|(source, standing)| known(source, *standing));
    let lists = [
        (say::ASSUMPTIONS, page.assumptions),
        (say::RANGE, page.range),
        (say::MISSING, page.missing),
        (say::SOURCES, sources.collect()),
        (say::CHECKS, checks.collect()),
    ];
    let lists = lists.into_iter().filter(|(_, lines)| !lines.is_empty()).map(|(title, lines)| {
        let lines = lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
        view! { <h4>{title.said()}</h4><ul>{lines}</ul> }
    });
    view! {
        <h3 id="numbers-title">{title}</h3>
        <p>{lead}</p>
        {caution.then(|| view! { <p class="caution">{advice::caution()}</p> })}
        {tables.into_iter().map(sheet).collect_view()}
        <div class="formulas">{formula.collect_view()}</div>
        <p class="hint">{column} " " {say::UNITS.said()}</p>
        <table class="sources">
            <thead>
                <tr>
                    <th scope="col">{say::HEAD_LETTER.said()}</th>
                    <th scope="col">{say::HEAD_MEANING.said()}</th>
                    {worked.then(|| view! { <th scope="col" class="given">{say::HEAD_EXAMPLE.said()}</th> })}
                </tr>
            </thead>
            <tbody>{letters.collect_view()}</tbody>
        </table>
        {result}
        {lists.collect_view()}
    }
}

/// A table with named groups of rows.
fn sheet(table: Table) -> impl IntoView {
    let Table { caption, heads, groups } = table;
    // On a phone the few wide columns of a data sheet stand below each other.
    let stacked = heads.len() < 8;
    let heads = heads.into_iter().map(|head| view! { <th scope="col">{head}</th> }).collect_view();
    let groups = groups.into_iter().map(|(name, rows)| {
        let count = rows.len().to_string();
        let mut name = Some(name);
        let rows = rows.into_iter().map(|cells| {
            let name = name.take().map(|name| {
                view! { <th scope="rowgroup" rowspan=count.clone()>{name}</th> }
            });
            let cells = cells.into_iter().map(|cell| view! { <td>{cell}</td> }).collect_view();
            view! { <tr>{name}{cells}</tr> }
        });
        let rows = rows.collect_view();
        view! { <tbody>{rows}</tbody> }
    });
    view! {
        <h4>{caption}</h4>
        <div class="sheet" class:stacked=stacked role="region" tabindex="0" aria-label=caption>
            <table class="sources">
                <thead><tr>{heads}</tr></thead>
                {groups.collect_view()}
            </table>
        </div>
    }
}
