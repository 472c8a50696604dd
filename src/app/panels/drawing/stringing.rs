//! The loads while only part of the strings is up.

use leptos::prelude::*;

use super::giving::Giving;
use crate::app::frame::Frame;
use crate::app::panels::settling::way::{chosen_last, loads_of, ordered};
use crate::app::store::Store;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{list, part, words};
use crate::design::bearing_words::{self, STRINGING, order_name};
use crate::design::{advice, display};
use crate::engine::bearing::{Order, Stage, some_stages};
use crate::words::{Language, Words, drawing as say, language};

/// How many stages the table shows besides the first.
const SHOWN: usize = 6;

/// What a stage tells, in the order of [`bearing_words::stage`].
const TOLD: [Words; 5] =
    [say::TENSION, say::PILLAR_PUSH, say::BENDING, say::TORQUE, say::SHARE_AND_WHERE];

/// The order of stringing, a slider from no string to all, and some stages side by side.
#[component]
pub fn Stringing(store: Store) -> impl IntoView {
    // As the harp is strung, until another order is looked at.
    let order = RwSignal::new(untrack(|| ordered(chosen_last(store).order, loads_of(store))));
    let chosen = RwSignal::new(None::<usize>);
    let count = move || store.count();
    let up = move || chosen.get().unwrap_or(usize::MAX).min(count());
    let Frame { band, borne } = Frame::here();
    let stages = Memo::new(move |_| {
        let (all, up) = (count(), up());
        let mut counts: Vec<usize> = (0..=SHOWN).map(|step| all * step / SHOWN).collect();
        counts.push(up);
        crate::engine::order::sort(&mut counts, |one, next| one > next);
        counts.dedup();
        let (borne, resolved) = (borne.read(), store.resolved.read());
        let (shape, build) = (&resolved.geometry, &resolved.build());
        let which = (order.get(), counts.as_slice());
        some_stages(&band.read(), &borne.loads, &store.analysis.read(), shape, build, which)
    });
    let told = move |stage: &Stage| bearing_words::stage(stage, store.design.read().units);
    let row = move |stage: Stage| {
        let (texts, here) = (told(&stage), stage.up == up());
        part(&(stage.up, texts.clone(), here), move || {
            // The heads have the units.
            let units = untrack(|| bearing_words::stage_units(store.design.read().units));
            let cells = texts.into_iter().zip(units).map(|(text, unit)| {
                let bare = text.strip_suffix(unit).unwrap_or(&text).trim_end();
                view! { <td>{display::unbroken(bare)}</td> }
            });
            view! {
                <tr aria-current=here.then_some("true")>
                    <th scope="row">{stage.up.to_string()}</th>
                    {cells.collect_view()}
                </tr>
            }
            .into_any()
        })
    };
    let now = move || {
        let stage = stages.with(|all| all.iter().find(|stage| stage.up == up()).copied());
        let Some(stage) = stage else {
            return say::NO_FRAME.into();
        };
        let last = stage.last.and_then(|place| {
            store.analysis.with(|analysis| analysis.strings.get(place).map(display::string_name))
        });
        let [pull, pillar, moment, torque, used] = told(&stage);
        let strings = match last {
            None => say::some_up(&count(), &stage.up),
            Some(name) => say::some_up_last(&count(), &within(&name), &stage.up),
        };
        match stage.used_ratio {
            None => say::stage_unjudged(&moment, &pillar, &strings, &pull, &torque),
            Some(_) => say::stage(&moment, &pillar, &strings, &pull, &torque, &used),
        }
    };
    let orders =
        Order::ALL.map(|order| (order_name(order).to_owned(), order_name(order).to_owned()));
    let set_order = move |name: String| {
        if let Some(found) = Order::ALL.into_iter().find(|order| order_name(*order) == name) {
            order.set(found);
        }
    };
    let heads = TOLD.into_iter().enumerate().map(|(at, head)| {
        let told = move || {
            let unit = bearing_words::stage_units(store.design.read().units)[at];
            if unit.is_empty() { head.into() } else { format!("{head}, {unit}") }
        };
        view! { <th scope="col">{words(told)}</th> }
    });
    let advice_lines = STRINGING.map(|line| view! { <li>{line.said()}</li> });
    view! {
        <div class="drawing-loads stringing">
            <Choice
                label=say::ORDER.said()
                choices=orders.to_vec()
                value=Signal::derive(move || order_name(order.get()).to_owned())
                on_change=set_order
            />
            <label class="field">
                <span>{say::STRINGS_UP.said()}</span>
                <input
                    type="range"
                    min="0"
                    step="1"
                    max=move || count().to_string()
                    prop:value=move || up().to_string()
                    aria-valuetext=move || say::up_of(&count(), &up())
                    on:input=move |event| chosen.set(event_target_value(&event).parse::<usize>().ok())
                />
            </label>
            <p role="status">{words(now)}</p>
            <div class="sheet" role="region" tabindex="0" aria-label=say::STAGES.said()>
                <table class="sources stages">
                    <thead><tr><th scope="col">{say::UP.said()}</th>{heads.collect_view()}</tr></thead>
                    <tbody>{list(move || stages.get().into_iter().map(row).collect())}</tbody>
                </table>
            </div>
            <p class="hint">{say::STAGES_HINT.said()}</p>
            <ul class="granted">{advice_lines.collect_view()}</ul>
            <Giving store=store order=order/>
            <p class="caution">{advice::caution()}</p>
        </div>
    }
}

/// The name of a string within a sentence: small, but in German.
fn within(name: &str) -> String {
    if language() == Language::German { name.to_owned() } else { uncapitalised(name) }
}

fn uncapitalised(name: &str) -> String {
    let first = name.chars().next().map_or(0, char::len_utf8);
    name[..first].to_ascii_lowercase() + &name[first..]
}
