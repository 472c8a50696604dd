//! The nodes of the harmonic curve as handles over the drawing, for pointer and keys.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use super::hand::Hand;
use crate::app::widgets::list::{list, part};
use crate::design::display;
use crate::engine::units::Length;
use crate::words::drawing as say;

/// The handles, while the curve gives the lengths.
#[component]
pub fn Nodes(hand: Hand) -> impl IntoView {
    let store = hand.store;
    let nodes = Memo::new(move |_| {
        if hand.curve_drives() {
            store.design.with(|design| design.geometry.nodes_mm.clone())
        } else {
            Vec::new()
        }
    });
    let count = Memo::new(move |_| nodes.with(Vec::len));
    let handle = move |place: usize| {
        part(&place, move || {
            let node = move || nodes.with(|nodes| nodes.get(place).copied()).unwrap_or_default();
            let at = move || {
                hand.frame.band.track();
                hand.look.get().pixel(hand.node_place(node()))
            };
            let name = move || {
                let unit = store.design.with(|design| design.units.length);
                let said = |mm: f64| display::length_with_unit(Length::from_mm(mm), unit);
                let (across, along) = node();
                say::node(&said(across), &said(along), &count.get(), &(place + 1))
            };
            let on_keys = move |event: KeyboardEvent| {
                let by = match (event.shift_key(), event.alt_key()) {
                    (true, _) => 10.0,
                    (false, true) => 0.1,
                    (false, false) => 1.0,
                };
                let (across, along) = untrack(node);
                let to = match event.key().as_str() {
                    "ArrowLeft" => (across - by, along),
                    "ArrowRight" => (across + by, along),
                    "ArrowUp" => (across, along + by),
                    "ArrowDown" => (across, along - by),
                    _ => return,
                };
                event.prevent_default();
                hand.set_node(place, to);
                hand.said.set(untrack(name));
            };
            view! {
                <button
                    type="button"
                    class="node"
                    aria-label=name
                    title=say::NODE_HINT.said()
                    style:left=move || format!("{:.1}px", at().0)
                    style:top=move || format!("{:.1}px", at().1)
                    on:keydown=on_keys
                ></button>
            }
            .into_any()
        })
    };
    list(move || (0..count.get()).map(handle).collect())
}
