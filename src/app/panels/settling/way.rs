//! How the harp is brought up: the order, the first rounds and the round that were chosen, and the plan that follows.
//! Settling shows it; the tuner leads by it.

use std::cell::Cell;

use leptos::prelude::*;

use super::log::{come, keep_come};
use crate::app::frame::Frame;
use crate::app::settled::Come;
use crate::app::store::{Origin, Store};
use crate::app::widgets::list::{list, part};
use crate::design::giving::gives_of;
use crate::design::settling::{easiest, load_of, plan_of, round_name};
use crate::engine::bearing::Order;
use crate::engine::settling::plan::Plan;
use crate::words::settling as say;

thread_local! {
    /// What was chosen last of a design that the browser does not keep, as long as the page is open.
    static CHOSEN: Cell<Come> = const { Cell::new(Come { order: None, begins: 0, round: 0 }) };
}

/// The highest share of its limit that the frame comes to in each order, and with all strings up.
pub type Held = [Option<(f64, f64)>; Order::ALL.len()];

/// What was chosen, and what follows. Nothing is worked out before it is read.
#[derive(Clone, Copy)]
pub struct Way {
    /// The place of the order among all; what is easiest on the frame, until one is chosen.
    pub chosen: RwSignal<Option<usize>>,
    /// The place of the first rounds among those that can be chosen.
    pub begins: RwSignal<usize>,
    round: RwSignal<usize>,
    /// What each order does to the frame.
    pub loads: Memo<Held>,
    /// The plan.
    pub plan: Memo<Plan>,
}

impl Way {
    /// As it was chosen last; the frame of the window must have been provided.
    pub fn new(store: Store) -> Self {
        let Frame { band, borne } = Frame::here();
        let Come { order, begins, round } = chosen_last(store);
        let (chosen, begins, round) =
            (RwSignal::new(order), RwSignal::new(begins), RwSignal::new(round));
        let gives = Memo::new(move |_| {
            let (borne, resolved) = (borne.read(), store.resolved.read());
            gives_of(&band.read(), &borne.loads, &store.analysis.read(), &resolved)
        });
        let loads = loads_of(store);
        let plan = Memo::new(move |_| {
            let (gives, resolved) = (gives.read(), store.resolved.read());
            let order = ordered(chosen.get(), loads);
            plan_of(gives.as_ref(), &resolved, &store.analysis.read(), order, begins.get())
        });
        Effect::new(move |before: Option<(Come, bool)>| {
            let come = Come { order: chosen.get(), begins: begins.get(), round: round.get() };
            // With the first reading the design itself is kept.
            let now = (come, store.origin.with(|origin| matches!(origin, Origin::Kept(_))));
            if before.is_some_and(|before| before != now) {
                choose(store, come);
            }
            now
        });
        Self { chosen, begins, round, loads, plan }
    }

    /// The order of the plan.
    pub fn order(self) -> Order {
        ordered(self.chosen.get(), self.loads)
    }

    /// The place of the round that is shown or gone through.
    pub fn here(self) -> usize {
        self.round.get().min(self.plan.with(|plan| plan.passes.len()).saturating_sub(1))
    }

    /// The list in which a round is chosen.
    pub fn field(self, id: &'static str) -> AnyView {
        let rounds = move || {
            let option = |at: usize, name: String| {
                part(&(at, name.clone()), move || {
                    let chosen = move || self.here() == at;
                    view! { <option value=at.to_string() selected=chosen>{name}</option> }
                        .into_any()
                })
            };
            self.plan.with(|plan| {
                let all = plan.passes.iter().enumerate();
                all.map(|(at, pass)| option(at, round_name(pass, at + 1))).collect()
            })
        };
        let choose = move |event| self.round.set(event_target_value(&event).parse().unwrap_or(0));
        view! {
            <label class="field">
                <span>{say::ROUND.said()}</span>
                <select id=id on:change=choose>{list(rounds)}</select>
            </label>
        }
        .into_any()
    }
}

/// How the open design is brought up, as it was chosen last.
pub fn chosen_last(store: Store) -> Come {
    come(store).unwrap_or_else(|| CHOSEN.get())
}

/// Chooses how the open design is brought up.
pub fn choose(store: Store, come: Come) {
    CHOSEN.set(come);
    keep_come(store, come);
}

/// What each order does to the frame; the frame of the window must have been provided.
pub fn loads_of(store: Store) -> Memo<Held> {
    let Frame { band, borne } = Frame::here();
    Memo::new(move |_| {
        let (borne, resolved, analysis) =
            (borne.read(), store.resolved.read(), store.analysis.read());
        let band = band.read();
        Order::ALL.map(|order| load_of((&band, &borne.loads), &resolved, &analysis, order))
    })
}

/// The order that was chosen, or the one that is easiest on the frame.
pub fn ordered(chosen: Option<usize>, loads: Memo<Held>) -> Order {
    match chosen {
        Some(at) => Order::ALL.get(at).copied().unwrap_or_default(),
        None => loads.with(|loads| easiest(loads)),
    }
}
