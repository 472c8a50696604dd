//! Sizes that the frame does not say, what the parts are sawn from, and what woods cost.

use leptos::prelude::*;

use super::Bench;
use crate::app::forms::{PARTS, PRICES};
use crate::app::panels::form::fieldset;
use crate::app::widgets::fields::number_field;
use crate::app::widgets::list::{list, part, words};
use crate::design::document::PLYWOOD;
use crate::design::parts::sizes::{PRICE_RANGE, PartSize, price, price_edit};
use crate::design::settings::NumberRow;
use crate::design::wood_facts::wood_name;
use crate::engine::order::sort;
use crate::words::Words;

/// The fields of all sizes, and a price for each wood of the harp.
pub fn form(bench: Bench) -> AnyView {
    let groups = PARTS.iter().map(|group| {
        let fields = group.sizes.iter().map(|size| field(bench, *size));
        let hint = view! { <p class="hint">{group.hint.said()}</p> }.into_any();
        fieldset(group.legend.said(), fields.chain([hint]).collect())
    });
    let groups: Vec<AnyView> = groups.collect();
    let wrong = move || bench.with(|made| made.wrong.join(" "));
    view! {
        <div class="form-stack" on:focusout=move |_| bench.store.close_step()>
            <p class="wrong">{words(wrong)}</p>
            {groups}
            {fieldset(PRICES.0.said(), vec![list(move || prices(bench))])}
        </div>
    }
    .into_any()
}

fn field(bench: Bench, size: PartSize) -> AnyView {
    let store = bench.store;
    let value = Signal::derive(move || Some(store.design.with(|design| size.of(design))));
    let put = move |number| {
        let edit = store.design.with_untracked(|design| size.edit(design, number));
        store.send(&edit);
    };
    number_field(size.row(), value, None, Callback::new(put))
}

/// A field for the price of each wood that the parts are of.
fn prices(bench: Bench) -> Vec<crate::app::widgets::list::Part> {
    let mut woods: Vec<String> =
        bench.with(|made| made.nests.iter().map(|nest| nest.wood.clone()).collect());
    sort(&mut woods, |one, other| one > other);
    woods.dedup();
    let own = bench.store.design.with(|design| design.geometry.woods.clone());
    let one = |key: String| {
        let name = wood_name(&key, &own);
        part(&(key.clone(), name.clone()), move || price_field(bench, key, name))
    };
    woods.into_iter().map(one).collect()
}

fn price_field(bench: Bench, key: String, name: String) -> AnyView {
    let store = bench.store;
    let of = PRICES.1[usize::from(key == PLYWOOD)];
    let row = NumberRow::new(of, Words::NONE, PRICE_RANGE);
    let read = key.clone();
    let value = Signal::derive(move || store.design.with(|design| price(&design.geometry, &read)));
    let put = move |number| {
        let edit = store.design.with_untracked(|design| price_edit(design, &key, number));
        store.send(&edit);
    };
    view! {
        <p>{name}</p>
        {number_field(row, value, None, Callback::new(put))}
    }
    .into_any()
}
