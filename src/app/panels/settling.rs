//! The days of settling: the plan by which the harp is brought up, the log of its strings and what it says, and strings
//! weighed by ear.

mod ear;
pub(super) mod log;
pub(super) mod way;

use leptos::prelude::*;

use self::ear::Ear;
use self::log::Log;
use self::way::Way;
use crate::app::frame::Frame;
use crate::app::store::{Store, Window as Shown};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{either, list, part};
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::bearing_words::order_name;
use crate::design::display::unbroken;
use crate::design::settling::{BEGINS, HEADS, easiest, load_told, row, told};
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
    let way = Way::new(store);
    let Way { chosen, begins, loads, plan, .. } = way;
    let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
    let said = move || {
        let order = way.order();
        let mut all = plan.with(|plan| told(plan, &store.analysis.read()));
        let at = Order::ALL.iter().position(|other| *other == order);
        let load = loads.with(|loads| at.and_then(|at| loads[at]));
        all.extend(load_told(load, order, loads.with(|loads| easiest(loads))));
        all.into_iter().map(line).collect()
    };
    let rows = move || {
        let (resolved, analysis) = (store.resolved.read(), store.analysis.read());
        let units = store.design.with(|design| design.units);
        let number = way.here();
        plan.with(|plan| {
            let steps = plan.passes.get(number).map_or(&[][..], |pass| &pass.steps);
            steps
                .iter()
                .map(|step| row(step, number == 0, &analysis, &resolved.harp, &units))
                .map(|[name, cells @ ..]| {
                    part(&(name.clone(), cells.clone()), move || {
                        let cells = cells.map(|text| view! { <td>{unbroken(&text)}</td> });
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
        let order = way.order();
        Order::ALL.iter().position(|other| *other == order).unwrap_or(0).to_string()
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
                {way.field("settling-round")}
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
