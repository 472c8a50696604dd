//! The days of settling: the plan by which the harp is brought up, the log of its strings and what it says, and strings
//! weighed by ear.

mod ear;
pub(super) mod log;

use leptos::prelude::*;

use self::ear::Ear;
use self::log::Log;
use crate::app::frame::Frame;
use crate::app::store::{Store, Window as Shown};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{either, list, part};
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::bearing_words::order_name;
use crate::design::giving::gives_of;
use crate::design::settling::{
    BEGINS, HEADS, easiest, load_of, load_told, plan_of, round_name, row, told,
};
use crate::engine::bearing::Order;
use crate::words::{settling as say, stringing};

/// The days of settling: how the harp is brought up, and when it will hold.
#[component]
pub fn SettlingWindow(store: Store) -> impl IntoView {
    Frame::provide(store);
    view! {
        <Window title=say::TITLE.said() wide=true on_close=move || store.window.set(None)>
            <p class="hint">{say::HINT.said()}</p>
            {either(
                move || store.count() == 0,
                || view! { <p>{stringing::NO_STRINGS.said()}</p> }.into_any(),
                move || view! {
                    <div class="settling" id="settling-days">
                        <Bringing store=store/>
                        <Log store=store/>
                        <Ear store=store/>
                        <p class="caution">{advice::caution()}</p>
                    </div>
                }
                .into_any(),
            )}
        </Window>
    }
}

/// The plan, a round at a time.
#[component]
fn Bringing(store: Store) -> impl IntoView {
    let Frame { band, borne } = Frame::here();
    let gives = Memo::new(move |_| {
        let (borne, resolved) = (borne.read(), store.resolved.read());
        gives_of(&band.read(), &borne.loads, &store.analysis.read(), &resolved)
    });
    let loads = Memo::new(move |_| {
        let (borne, resolved, analysis) =
            (borne.read(), store.resolved.read(), store.analysis.read());
        let band = band.read();
        Order::ALL.map(|order| load_of((&band, &borne.loads), &resolved, &analysis, order))
    });
    // What is easiest on the frame, until another order is chosen.
    let chosen = RwSignal::new(None::<usize>);
    let order = move || match chosen.get() {
        Some(at) => Order::ALL.get(at).copied().unwrap_or_default(),
        None => loads.with(|loads| easiest(loads)),
    };
    let begins = RwSignal::new(0_usize);
    let round = RwSignal::new(0_usize);
    let plan = Memo::new(move |_| {
        let (gives, resolved) = (gives.read(), store.resolved.read());
        plan_of(gives.as_ref(), &resolved, &store.analysis.read(), order(), begins.get())
    });
    let here = move || round.get().min(plan.with(|plan| plan.passes.len()).saturating_sub(1));
    let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
    let said = move || {
        let order = order();
        let mut all = plan.with(|plan| told(plan, &store.analysis.read()));
        let at = Order::ALL.iter().position(|other| *other == order);
        let load = loads.with(|loads| at.and_then(|at| loads[at]));
        all.extend(load_told(load, order, loads.with(|loads| easiest(loads))));
        all.into_iter().map(line).collect()
    };
    let rows = move || {
        let (resolved, analysis) = (store.resolved.read(), store.analysis.read());
        let units = store.design.with(|design| design.units);
        let number = here();
        plan.with(|plan| {
            let steps = plan.passes.get(number).map_or(&[][..], |pass| &pass.steps);
            steps
                .iter()
                .map(|step| row(step, number == 0, &analysis, &resolved.harp, &units))
                .map(|[name, cells @ ..]| {
                    part(&(name.clone(), cells.clone()), move || {
                        let cells = cells.map(|text| view! { <td>{text}</td> });
                        view! { <tr><th scope="row">{name}</th>{cells.collect_view()}</tr> }
                            .into_any()
                    })
                })
                .collect()
        })
    };
    let digits = |count: usize, name: &dyn Fn(usize) -> String| -> Vec<(String, String)> {
        (0..count).map(|at| (at.to_string(), name(at))).collect()
    };
    let orders = digits(Order::ALL.len(), &|at| order_name(Order::ALL[at]).to_owned());
    let ways = digits(BEGINS.len(), &|at| BEGINS[at].1.said().to_owned());
    let at_order = move || {
        let order = order();
        Order::ALL.iter().position(|other| *other == order).unwrap_or(0).to_string()
    };
    let rounds = move || {
        let option = |at: usize, name: String| {
            part(&(at, name.clone()), move || {
                view! { <option value=at.to_string() selected=move || here() == at>{name}</option> }
                    .into_any()
            })
        };
        plan.with(|plan| {
            let all = plan.passes.iter().enumerate();
            all.map(|(at, pass)| option(at, round_name(pass, at + 1))).collect()
        })
    };
    let heads = HEADS.map(|head| view! { <th scope="col">{head.said()}</th> });
    view! {
        <details open id="settling-plan">
            <summary>{say::PLAN.said()}</summary>
            <div class="trial-fields">
                <Choice
                    label=say::ORDER.said()
                    choices=orders
                    value=Signal::derive(at_order)
                    on_change=move |digit: String| chosen.set(digit.parse().ok())
                />
                <Choice
                    label=say::BEGIN.said()
                    choices=ways
                    value=Signal::derive(move || begins.get().to_string())
                    on_change=move |digit: String| begins.set(digit.parse().unwrap_or(0))
                />
                <label class="field">
                    <span>{say::ROUND.said()}</span>
                    <select
                        id="settling-round"
                        on:change=move |event| round.set(event_target_value(&event).parse().unwrap_or(0))
                    >
                        {list(rounds)}
                    </select>
                </label>
            </div>
            <ul class="granted" id="settling-told">{list(said)}</ul>
            <div class="sheet" role="region" tabindex="0" aria-label=say::TABLE.said()>
                <table class="sources stages">
                    <thead><tr>{heads.collect_view()}</tr></thead>
                    <tbody id="settling-steps">{list(rows)}</tbody>
                </table>
            </div>
            <p class="hint">{say::HOW.said()}</p>
            <p class="hint">{say::HOW_FAR.said()}</p>
            <p>{button("tool", "settling-sheet", "", say::SHEET.said(), move || store.window.set(Some(Shown::TuningSheet)))}</p>
        </details>
    }
}
