//! What holes are drilled with.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::fields::NumberField;
use crate::design::document::DrillsSpec;
use crate::design::edit::Edit;
use crate::design::resolve::{CLEARANCE_MM, DRILL_MM};

/// The drills for the schedule of pins and the templates.
#[component]
pub fn Drills(store: Store) -> impl IntoView {
    let field = move |label: &'static str,
                      range: (f64, f64),
                      of: fn(&DrillsSpec) -> f64,
                      put: fn(&mut DrillsSpec, f64)| {
        let value = Signal::derive(move || store.design.with(|design| of(&design.geometry.drills)));
        let on_change = move |mm: f64| {
            let mut geometry = store.design.with_untracked(|design| design.geometry.clone());
            put(&mut geometry.drills, mm);
            store.send(&Edit::Geometry(Box::new(geometry)));
        };
        view! { <NumberField label=label unit="mm" value=value least=range.0 most=range.1 on_change=on_change/> }
            .into_any()
    };
    view! {
        <div class="form-stack">
            {field("Bridge pin", DRILL_MM, |d| d.bridge_pin_mm, |d, x| d.bridge_pin_mm = x)}
            {field("String hole wider than its string by", CLEARANCE_MM, |d| d.string_clearance_mm, |d, x| d.string_clearance_mm = x)}
            {field("Eyelet, outside", DRILL_MM, |d| d.eyelet_mm, |d, x| d.eyelet_mm = x)}
            {field("Screw of a lever, axle of a disc", DRILL_MM, |d| d.mechanism_mm, |d, x| d.mechanism_mm = x)}
            <p class="hint">"0 for what is not drilled or not known. With an eyelet, every string hole is as wide as it. Tuning pins have their diameter under Instrument: a tapered pin is drilled at its small end and reamed. Common practice, from memory; a hole is often 0.3 to 0.5 mm wider than its string."</p>
        </div>
    }
}
