//! The whole instrument: names for the card, pitch, levers, limits, tolerances, allowances.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::fields::{Choice, NumberField, TextField};
use crate::app::widgets::window::Window;
use crate::design::display;
use crate::design::document::{
    Allowances, Design, LimitsSpec, MechanismKind, MechanismSpec, PitchSpec, TemperamentSpec,
    TolerancesSpec,
};
use crate::design::edit::{Edit, Field};
use crate::design::resolve::{MOST_PARTIAL, PLUCK_MM, PLUCK_PERCENT, PUSH_MM};

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
                <div class="form-stack">
                    <Names store=store/>
                    <Mechanism store=store/>
                </div>
                <div class="form-stack">
                    <Pitch store=store/>
                    <Extra store=store/>
                </div>
                <div class="form-stack">
                    <Limits store=store/>
                    <Tolerances store=store/>
                </div>
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
    let number = move |of: fn(&Design) -> f64| {
        Signal::derive(move || store.design.with(|design| of(design)))
    };
    let set_partial = move |number: f64| {
        let partial = (1..=MOST_PARTIAL).find(|partial| f64::from(*partial) == number.round());
        if let Some(partial) = partial {
            store.send(&Edit::DampingPartial { partial });
        }
    };
    let choices = TEMPERAMENTS.map(|row| (row.1.to_owned(), row.2.to_owned())).to_vec();
    view! {
        <fieldset>
            <legend>"Pitch and pluck"</legend>
            <NumberField label="A4" unit="Hz" value=a4 least=380.0 most=480.0 on_change=move |hz: f64| send(&|pitch| pitch.a4_hz = hz)/>
            <Choice label="Temperament" choices=choices value=temperament on_change=set_temperament/>
            <NumberField
                label="Plucked at"
                unit="% of the length"
                value=number(|design| design.pluck_percent)
                least=PLUCK_PERCENT.0
                most=PLUCK_PERCENT.1
                on_change=move |percent: f64| store.send(&Edit::Pluck { percent })
            />
            <NumberField
                label="Pulled aside by"
                unit="mm"
                value=number(|design| design.pluck_mm)
                least=PLUCK_MM.0
                most=PLUCK_MM.1
                on_change=move |mm: f64| store.send(&Edit::PluckBy { mm })
            />
            <NumberField
                label="Damping at partial"
                unit=""
                value=number(|design| f64::from(design.damping_partial))
                least=1.0
                most=f64::from(MOST_PARTIAL)
                on_change=set_partial
            />
            <p class="hint">"Common practice, no source: harps are plucked near 40 % of the length. A string is pulled aside by no more than 2 % of its length."</p>
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

/// What raises a string by semitones, for a list: each is known by its words.
pub(super) const MECHANISMS: [MechanismKind; 4] = [
    MechanismKind::None,
    MechanismKind::Lever,
    MechanismKind::SingleDisc,
    MechanismKind::DoubleDisc,
];

/// The choices of [`MECHANISMS`].
pub(super) fn mechanisms() -> Vec<(String, String)> {
    let choice = |kind| (display::mechanism(kind).to_owned(), display::mechanism(kind).to_owned());
    MECHANISMS.map(choice).to_vec()
}

/// The mechanism that words of a list mean.
pub(super) fn mechanism_of(words: &str) -> Option<MechanismKind> {
    MECHANISMS.into_iter().find(|kind| display::mechanism(*kind) == words)
}

#[component]
fn Mechanism(store: Store) -> impl IntoView {
    let send = move |change: &dyn Fn(&mut MechanismSpec)| {
        let mut mechanism = store.design.with_untracked(|design| design.mechanism.clone());
        change(&mut mechanism);
        store.send(&Edit::Mechanism(mechanism));
    };
    let kind = Signal::derive(move || {
        store.design.with(|design| display::mechanism(design.mechanism.kind).to_owned())
    });
    let set_kind = move |words: String| {
        if let Some(kind) = mechanism_of(&words) {
            send(&|mechanism| mechanism.kind = kind);
        }
    };
    let push = Signal::derive(move || store.design.with(|design| design.mechanism.push_mm));
    let frame = Signal::derive(move || store.design.with(|design| design.frame_expansion_e6_per_k));
    view! {
        <fieldset>
            <legend>"Levers, discs and frame"</legend>
            <Choice label="Each string has" choices=mechanisms() value=kind on_change=set_kind/>
            <NumberField
                label="Pushed aside by"
                unit="mm"
                value=push
                least=PUSH_MM.0
                most=PUSH_MM.1
                on_change=move |mm: f64| send(&|mechanism| mechanism.push_mm = mm)
            />
            <p class="hint">"A string that differs is set under Details. The push is common practice, no source: measure your own."</p>
            <NumberField
                label="Frame grows along the strings by"
                unit="millionths/K"
                value=frame
                least=0.0
                most=200.0
                on_change=move |e6_per_k: f64| store.send(&Edit::FrameExpansion { e6_per_k })
            />
            <p class="hint">"For drift by warmth. 0: the frame has not yet followed the air. Wood along the grain: 3 to 5 (from memory)."</p>
        </fieldset>
    }
}

#[component]
fn Tolerances(store: Store) -> impl IntoView {
    let field = move |label: &'static str,
                      unit: &'static str,
                      most: f64,
                      of: fn(&TolerancesSpec) -> f64,
                      put: fn(&mut TolerancesSpec, f64)| {
        let value = Signal::derive(move || store.design.with(|design| of(&design.tolerances)));
        let on_change = move |number| {
            let mut tolerances = store.design.with_untracked(|design| design.tolerances.clone());
            put(&mut tolerances, number);
            store.send(&Edit::Tolerances(tolerances));
        };
        view! { <NumberField label=label unit=unit value=value least=0.0 most=most on_change=on_change/> }
    };
    view! {
        <fieldset>
            <legend>"May be off, to either side"</legend>
            {field("Vibrating length", "mm", 50.0, |t| t.length_mm, |t, x| t.length_mm = x)}
            {field("Pitch", "cents", 100.0, |t| t.pitch_cents, |t, x| t.pitch_cents = x)}
            {field("Warmth since tuning", "°C", 60.0, |t| t.temperature_k, |t, x| t.temperature_k = x)}
            {field("Push of lever or disc", "mm", 5.0, |t| t.push_mm, |t, x| t.push_mm = x)}
            {field("Diameter", "mm", 1.0, |t| t.diameter_mm, |t, x| t.diameter_mm = x)}
            {field("Density", "%", 50.0, |t| t.density_percent, |t, x| t.density_percent = x)}
            <p class="hint">"Diameter and density hold where the material states none. Common practice, no source; the pitch after ISO 16."</p>
        </fieldset>
    }
}
