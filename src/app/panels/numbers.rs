//! Where the numbers come from: the formulas, and every material figure with its source.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::document::{Fact, MaterialSpec, ModulusSpec, StandingSpec, StrengthSpec};

/// A quantity, its formula, and what it rests on.
const FORMULAS: [(&str, &str, &str); 9] = [
    (
        "Tension",
        "T = 4 L² f² μ − π² E I / L²",
        "The stiff string pinned at both ends; its first partial is at pitch. Mersenne's law with Fletcher's stiffness (J. Acoust. Soc. Am. 36, 1964).",
    ),
    (
        "Mass per metre",
        "μ = ρ π d² / 4, and for each layer ρ a √((π(D + t))² + p²) / p",
        "Geometry: the core, and the exact helix of each winding with section a, thickness t and pitch p over the diameter D.",
    ),
    ("Stress", "σ = 4 T / (π d²)", "In the core alone: windings carry no pull."),
    (
        "Load share",
        "T / breaking load",
        "The breaking load is the least strength of the core's material at its diameter.",
    ),
    ("Semitones to break", "6 log₂(breaking load / T)", "Mass per metre taken as constant."),
    (
        "Pluck stiffness",
        "T / (L β (1 − β))",
        "Statics of a string pulled aside at the share β of its length, by a little.",
    ),
    (
        "Inharmonicity",
        "B = π² E I / (T L²), and (2π²/3)(1 − r)(a/L)³ for each bare end a",
        "Partials at n f₀ √(1 + B n²). Fletcher 1964; bare ends by a perturbation of the stepped string, r being the core's share of the mass per metre.",
    ),
    ("Partial 8", "600 log₂((1 + 64 B) / (1 + B))", "Cents above eight times the first partial."),
    ("Impedance", "√(T μ)", "Characteristic impedance of the string."),
];

/// The panel.
#[component]
pub fn NumbersWindow(store: Store) -> impl IntoView {
    let formulas = FORMULAS
        .map(|(name, formula, basis)| {
            view! { <tr><th scope="row">{name}</th><td class="formula">{formula}</td><td>{basis}</td></tr> }
        })
        .collect_view();
    let materials = move || {
        store
            .design
            .read()
            .materials
            .iter()
            .map(|m| view! { <Material material=m.clone()/> })
            .collect_view()
    };
    view! {
        <Window title="Where the numbers come from" wide=true on_close=move || store.window.set(None)>
            <table class="sources">
                <thead><tr><th scope="col">"Quantity"</th><th scope="col">"Formula"</th><th scope="col">"Holds for"</th></tr></thead>
                <tbody>{formulas}</tbody>
            </table>
            <h3>"Materials of this design"</h3>
            <table class="sources">
                <thead><tr><th scope="col">"Material"</th><th scope="col">"Figure"</th><th scope="col">"Source"</th><th scope="col">"Known"</th></tr></thead>
                <tbody>{materials}</tbody>
            </table>
            <p class="caution">{advice::caution()}</p>
        </Window>
    }
}

#[component]
fn Material(material: MaterialSpec) -> impl IntoView {
    let MaterialSpec { name, density_kg_per_m3, modulus, strength, .. } = material;
    let density = cells(format!("{} kg/m³", density_kg_per_m3.value), &density_kg_per_m3);
    let modulus = modulus.map(|fact| cells(modulus_words(fact.value), &fact));
    let strength = strength.map(|fact| cells(strength_words(&fact.value), &fact));
    let rows = 1 + usize::from(modulus.is_some()) + usize::from(strength.is_some());
    view! {
        <tr>
            <th scope="rowgroup" rowspan=rows.to_string()>{name}</th>
            {density}
        </tr>
        {modulus.map(|cells| view! { <tr>{cells}</tr> })}
        {strength.map(|cells| view! { <tr>{cells}</tr> })}
    }
}

fn cells<T>(figure: String, fact: &Fact<T>) -> impl IntoView + use<T> {
    view! {
        <td>{figure}</td>
        <td>{fact.source.clone()}</td>
        <td>{standing(fact.standing)}</td>
    }
}

fn modulus_words(modulus: ModulusSpec) -> String {
    match modulus.per_stress {
        0.0 => format!("E = {} GPa", modulus.base_gpa),
        rise => format!("E = {} GPa + {rise} σ", modulus.base_gpa),
    }
}

fn strength_words(strength: &StrengthSpec) -> String {
    match strength {
        StrengthSpec::Mpa(mpa) => format!("breaks at {mpa} MPa"),
        StrengthSpec::TableMmMpa(rows) => match (rows.first(), rows.last()) {
            (Some(thin), Some(thick)) => format!(
                "breaks at {:.0} MPa ({:.2} mm) to {:.0} MPa ({:.2} mm), {} diameters",
                thin.1,
                thin.0,
                thick.1,
                thick.0,
                rows.len()
            ),
            _ => "no strength".to_owned(),
        },
        StrengthSpec::StepsMmMpa(rows) => rows
            .iter()
            .map(|(mm, mpa)| format!("{mpa:.0} MPa up to {mm:.2} mm"))
            .collect::<Vec<_>>()
            .join(", "),
    }
}

const fn standing(standing: StandingSpec) -> &'static str {
    match standing {
        StandingSpec::Seen => "read in the source",
        StandingSpec::SecondHand => "second-hand",
        StandingSpec::Computed => "computed from read figures",
        StandingSpec::FromMemory => "from memory",
        StandingSpec::Own => "entered by you",
    }
}
