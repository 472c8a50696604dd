//! The whole instrument: units, names for the card, pitch, levers, limits, tolerances, allowances.

use leptos::prelude::*;

use super::form::group;
use super::looks::chosen;
use crate::app::forms::INSTRUMENT;
use crate::app::store::Store;
use crate::app::widgets::window::Window;
use crate::design::document::{ForceUnit, GaugeUnit, LengthUnit, Units};
use crate::design::edit::Edit;

/// The instrument's panel.
#[component]
pub fn InstrumentWindow(store: Store) -> impl IntoView {
    let close = move || {
        store.close_step();
        store.window.set(None);
    };
    let columns: Vec<AnyView> = INSTRUMENT
        .iter()
        .map(|groups| {
            let groups: Vec<AnyView> = groups.iter().map(|each| group(store, each)).collect();
            view! { <div class="form-stack">{groups}</div> }.into_any()
        })
        .collect();
    view! {
        <Window title="Instrument" wide=true on_close=close>
            <div class="window-actions"><UnitChoices store=store/></div>
            <div class="form-columns">{columns}</div>
        </Window>
    }
}

/// The units of the page.
#[component]
fn UnitChoices(store: Store) -> impl IntoView {
    let units = Memo::new(move |_| store.design.with(|design| design.units));
    let set = move |change: fn(&mut Units, &str), key: &str| {
        let mut units = units.get_untracked();
        change(&mut units, key);
        store.send(&Edit::Units(units));
    };
    let metric = move || match (units.get().length, units.get().gauge) {
        (LengthUnit::Mm, GaugeUnit::Mm) => "mm",
        (LengthUnit::Mm, GaugeUnit::Thou) => "mm-thou",
        (LengthUnit::Inch, GaugeUnit::Mm) => "in-mm",
        (LengthUnit::Inch, GaugeUnit::Thou) => "in",
    };
    let set_sizes = |units: &mut Units, key: &str| {
        (units.length, units.gauge) = match key {
            "mm-thou" => (LengthUnit::Mm, GaugeUnit::Thou),
            "in-mm" => (LengthUnit::Inch, GaugeUnit::Mm),
            "in" => (LengthUnit::Inch, GaugeUnit::Thou),
            _ => (LengthUnit::Mm, GaugeUnit::Mm),
        };
    };
    let force = move || match units.get().force {
        ForceUnit::Newton => "N",
        ForceUnit::Kgf => "kgf",
        ForceUnit::Lbf => "lbf",
    };
    let set_force = |units: &mut Units, key: &str| {
        units.force = match key {
            "kgf" => ForceUnit::Kgf,
            "lbf" => ForceUnit::Lbf,
            _ => ForceUnit::Newton,
        };
    };
    let (metric, force) = (Signal::derive(metric), Signal::derive(force));
    let sizes = vec![
        ("mm", "mm"),
        ("in", "inches"),
        ("mm-thou", "mm, gauges in inches"),
        ("in-mm", "inches, gauges in mm"),
    ];
    let forces = vec![("N", "N"), ("kgf", "kgf"), ("lbf", "lbf")];
    view! {
        <span>"Units"</span>
        {chosen("sizes", "Units of lengths and gauges", sizes, metric, Box::new(move |key| set(set_sizes, &key)))}
        {chosen("forces", "Unit of tension", forces, force, Box::new(move |key| set(set_force, &key)))}
    }
}
