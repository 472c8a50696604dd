//! The whole instrument: names for the card, pitch, limits, allowances.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::fields::{Choice, NumberField, TextField};
use crate::app::widgets::window::Window;
use crate::design::document::{Allowances, Design, LimitsSpec, PitchSpec, TemperamentSpec};
use crate::design::edit::{Edit, Field};

/// The instrument's panel.
#[component]
pub fn InstrumentWindow(store: Store) -> impl IntoView {
    let close = move || {
        store.close_step();
        store.window.set(None);
    };
    view! {
        <Window title="Instrument" wide=true on_close=close>
            <div class="form-columns">
                <Names store=store/>
                <div class="form-stack">
                    <Pitch store=store/>
                    <Extra store=store/>
                </div>
                <Limits store=store/>
            </div>
        </Window>
    }
}

#[component]
fn Names(store: Store) -> impl IntoView {
    let text =
        move |label: &'static str, field: Field, of: fn(&Design) -> &String, hint: &'static str| {
            let value = Signal::derive(move || store.design.with(|design| of(design).clone()));
            let on_input = move |text| store.send(&Edit::Text { field, text });
            view! { <TextField label=label value=value on_input=on_input hint=hint/> }
        };
    view! {
        <fieldset>
            <legend>"On the card"</legend>
            {text("Instrument", Field::Title, |d| &d.title, "")}
            {text("Maker", Field::Maker, |d| &d.maker, "")}
            {text("Client", Field::Client, |d| &d.client, "")}
            {text("Serial", Field::Serial, |d| &d.serial, "")}
            {text("Date", Field::Date, |d| &d.date, "2026-11-25")}
            {text("Open tuning", Field::OpenTuning, |d| &d.open_tuning, "E flat major, levers down")}
            {text("Remarks", Field::Remarks, |d| &d.remarks, "")}
        </fieldset>
    }
}

/// The temperaments, with the words of a list.
const TEMPERAMENTS: [(TemperamentSpec, &str, &str); 7] = [
    (TemperamentSpec::Equal, "equal", "Equal"),
    (TemperamentSpec::Pythagorean, "pythagorean", "Pythagorean"),
    (TemperamentSpec::QuarterCommaMeantone, "meantone", "Quarter-comma meantone"),
    (TemperamentSpec::WerckmeisterThree, "werckmeister", "Werckmeister III"),
    (TemperamentSpec::Vallotti, "vallotti", "Vallotti"),
    (TemperamentSpec::YoungTwo, "young", "Young II"),
    (TemperamentSpec::JustOnC, "just", "Just on C"),
];

#[component]
fn Pitch(store: Store) -> impl IntoView {
    let a4 = Signal::derive(move || store.design.with(|design| design.pitch.a4_hz));
    let temperament = Signal::derive(move || {
        let now = store.design.with(|design| design.pitch.temperament);
        let row = TEMPERAMENTS.iter().find(|row| row.0 == now);
        row.map_or("equal", |row| row.1).to_owned()
    });
    let send = move |change: &dyn Fn(&mut PitchSpec)| {
        let mut pitch = store.design.with_untracked(|design| design.pitch.clone());
        change(&mut pitch);
        store.send(&Edit::Pitch(pitch));
    };
    let set_temperament = move |key: String| {
        if let Some(row) = TEMPERAMENTS.iter().find(|row| row.1 == key) {
            send(&|pitch| pitch.temperament = row.0);
        }
    };
    let pluck = Signal::derive(move || store.design.with(|design| design.pluck_percent));
    let choices = TEMPERAMENTS.map(|row| (row.1.to_owned(), row.2.to_owned())).to_vec();
    view! {
        <fieldset>
            <legend>"Pitch and pluck"</legend>
            <NumberField label="A4" unit="Hz" value=a4 least=380.0 most=480.0 on_change=move |hz: f64| send(&|pitch| pitch.a4_hz = hz)/>
            <Choice label="Temperament" choices=choices value=temperament on_change=set_temperament/>
            <NumberField
                label="Plucked at"
                unit="% of the length"
                value=pluck
                least=5.0
                most=95.0
                on_change=move |percent: f64| store.send(&Edit::Pluck { percent })
            />
            <p class="hint">"Common practice, no source: harps are plucked near 40 % of the length."</p>
        </fieldset>
    }
}

#[component]
fn Limits(store: Store) -> impl IntoView {
    let field = move |label: &'static str,
                      unit: &'static str,
                      range: (f64, f64),
                      of: fn(&LimitsSpec) -> f64,
                      put: fn(&mut LimitsSpec, f64)| {
        let value = Signal::derive(move || store.design.with(|design| of(&design.limits)));
        let on_change = move |number| {
            let mut limits = store.design.with_untracked(|design| design.limits.clone());
            put(&mut limits, number);
            store.send(&Edit::Limits(limits));
        };
        view! { <NumberField label=label unit=unit value=value least=range.0 most=range.1 on_change=on_change/> }
    };
    view! {
        <fieldset>
            <legend>"Findings and bands"</legend>
            {field("Highest load share", "%", (5.0, 100.0), |l| l.working_share_percent, |l, x| l.working_share_percent = x)}
            {field("Lowest load share", "%", (0.0, 90.0), |l| l.slack_share_percent, |l, x| l.slack_share_percent = x)}
            {field("Least tension", "N", (0.0, 1000.0), |l| l.least_tension_n, |l, x| l.least_tension_n = x)}
            {field("Pluck stiffness from", "N/mm", (0.0, 20.0), |l| l.least_stiffness_n_per_mm, |l, x| l.least_stiffness_n_per_mm = x)}
            {field("Pluck stiffness to", "N/mm", (0.0, 50.0), |l| l.most_stiffness_n_per_mm, |l, x| l.most_stiffness_n_per_mm = x)}
            {field("Partial 8 sharp by", "cents", (1.0, 1200.0), |l| l.partial_8_cents, |l, x| l.partial_8_cents = x)}
            {field("Jump at a change of make-up", "%", (1.0, 500.0), |l| l.jump_percent, |l, x| l.jump_percent = x)}
        </fieldset>
    }
}

#[component]
fn Extra(store: Store) -> impl IntoView {
    let field = move |label: &'static str,
                      unit: &'static str,
                      most: f64,
                      of: fn(&Allowances) -> f64,
                      put: fn(&mut Allowances, f64)| {
        let value = Signal::derive(move || store.design.with(|design| of(&design.allowances)));
        let on_change = move |number| {
            let mut allowances = store.design.with_untracked(|design| design.allowances.clone());
            put(&mut allowances, number);
            store.send(&Edit::Allowances(allowances));
        };
        view! { <NumberField label=label unit=unit value=value least=0.0 most=most on_change=on_change/> }
    };
    view! {
        <fieldset>
            <legend>"Cut length"</legend>
            {field("Bridge pin to tuning pin", "mm", 1000.0, |a| a.after_length_mm, |a, x| a.after_length_mm = x)}
            {field("Turns on the pin", "turns", 20.0, |a| a.turns, |a, x| a.turns = x)}
            {field("Tuning pin", "mm", 30.0, |a| a.pin_mm, |a, x| a.pin_mm = x)}
            {field("Board and knot", "mm", 1000.0, |a| a.knot_mm, |a, x| a.knot_mm = x)}
            {field("To pull by", "mm", 1000.0, |a| a.tail_mm, |a, x| a.tail_mm = x)}
            <p class="hint">"Common practice, no source. Measure your own instrument."</p>
        </fieldset>
    }
}
