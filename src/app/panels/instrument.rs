//! The whole instrument: units, names for the card, pitch, levers, limits, tolerances, allowances.

use leptos::mount::mount_to;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use super::form::group;
use super::looks::chosen;
use crate::app::browser;
use crate::app::forms::INSTRUMENT;
use crate::app::store::Store;
use crate::app::widgets::window::Window;
use crate::design::document::{ForceUnit, GaugeUnit, LengthUnit};
use crate::design::edit::Edit;
use crate::words::{Naming, chosen_naming, forms as say};

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
        <Window title=say::INSTRUMENT.said() wide=true on_close=close>
            <div class="window-actions"><UnitChoices store=store/>{note_names(store)}</div>
            <p class="hint">{say::NOTE_NAMES_HINT.said()}</p>
            <div class="form-columns">{columns}</div>
        </Window>
    }
}

/// Puts the units beside the choice of columns. Called once, when this part comes.
pub fn show_units(store: Store) {
    let looks = document().query_selector(".looks").ok().flatten();
    if let Some(looks) = looks.and_then(|looks| looks.dyn_into::<HtmlElement>().ok()) {
        mount_to(looks, move || sizes(store, "units")).forget();
    }
}

/// The units of the page.
#[component]
fn UnitChoices(store: Store) -> impl IntoView {
    let force = move || match store.design.read().units.force {
        ForceUnit::Newton => "N",
        ForceUnit::Kgf => "kgf",
        ForceUnit::Lbf => "lbf",
    };
    let set = move |key: String| {
        let mut units = store.design.with_untracked(|design| design.units);
        units.force = match key.as_str() {
            "kgf" => ForceUnit::Kgf,
            "lbf" => ForceUnit::Lbf,
            _ => ForceUnit::Newton,
        };
        store.send(&Edit::Units(units));
    };
    let forces = vec![("N", "N"), ("kgf", "kgf"), ("lbf", "lbf")];
    view! {
        <span>{say::UNITS.said()}</span>
        {sizes(store, "sizes")}
        {chosen("forces", say::UNIT_OF_TENSION.said(), forces, Signal::derive(force), Box::new(set))}
    }
}

/// How notes are named on this page, whatever the design.
fn note_names(store: Store) -> AnyView {
    let now = || chosen_naming().map_or("", Naming::key);
    let set = move |key: String| {
        if let Err(why) = browser::name_notes_always(Naming::of_key(&key)) {
            store.complain(say::note_names_not_kept(&why));
        }
    };
    let choices = vec![
        ("", say::NOTE_NAMES_USUAL.said()),
        (Naming::English.key(), say::NOTE_NAMES_ENGLISH.said()),
        (Naming::German.key(), say::NOTE_NAMES_GERMAN.said()),
        (Naming::Syllables.key(), say::NOTE_NAMES_SYLLABLES.said()),
    ];
    let label = say::NOTE_NAMES.said();
    view! {
        <span>{label}</span>
        {chosen("note-names", label, choices, Signal::derive(now), Box::new(set))}
    }
    .into_any()
}

/// The units of lengths and gauges.
fn sizes(store: Store, id: &'static str) -> AnyView {
    let now = move || {
        let units = store.design.read().units;
        match (units.length, units.gauge) {
            (LengthUnit::Mm, GaugeUnit::Mm) => "mm",
            (LengthUnit::Mm, GaugeUnit::Thou) => "mm-thou",
            (LengthUnit::Inch, GaugeUnit::Mm) => "in-mm",
            (LengthUnit::Inch, GaugeUnit::Thou) => "in",
        }
    };
    let set = move |key: String| {
        let mut units = store.design.with_untracked(|design| design.units);
        (units.length, units.gauge) = match key.as_str() {
            "mm-thou" => (LengthUnit::Mm, GaugeUnit::Thou),
            "in-mm" => (LengthUnit::Inch, GaugeUnit::Mm),
            "in" => (LengthUnit::Inch, GaugeUnit::Thou),
            _ => (LengthUnit::Mm, GaugeUnit::Mm),
        };
        store.send(&Edit::Units(units));
    };
    let choices = vec![
        ("mm", "mm"),
        ("in", say::UNIT_INCHES.said()),
        ("mm-thou", say::UNIT_MM_INCHES.said()),
        ("in-mm", say::UNIT_INCHES_MM.said()),
    ];
    chosen(id, say::UNITS_OF_LENGTHS.said(), choices, Signal::derive(now), Box::new(set))
}
