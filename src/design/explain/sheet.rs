//! What stands in columns: the data of the materials, and the temperaments.

use super::fill::{number, with};
use super::standing;
use crate::design::display;
use crate::design::document::{
    ClassSpec, Fact, MaterialSpec, ModulusSpec, StandingSpec, StrengthSpec, TemperamentSpec,
    ToleranceSpec,
};
use crate::design::letters::{capital, small};
use crate::design::library::built_in;
use crate::design::resolve::temperament;
use crate::engine::material::Standing;
use crate::engine::pitch::Letter;

/// A table. Each group of rows has a name, which stands before its first row.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Table {
    /// What it shows.
    pub caption: &'static str,
    /// The heads of the columns, the one of the names first.
    pub heads: Vec<String>,
    /// The names and their rows.
    pub groups: Vec<(String, Vec<Vec<String>>)>,
}

/// Every figure of the materials of a design, and of those that come with the program and are not among
/// them: its source and how well it is known.
pub fn materials(of_design: &[MaterialSpec]) -> Vec<Table> {
    let table = |caption, materials: Vec<&MaterialSpec>| Table {
        caption,
        heads: ["Material", "Figure", "Value", "Source", "How well known"]
            .map(str::to_owned)
            .into(),
        groups: materials.into_iter().map(|m| (m.name.clone(), rows(m))).collect(),
    };
    let others = built_in().iter().filter(|material| !of_design.contains(material)).collect();
    let tables = [
        table("Materials of this design", of_design.iter().collect()),
        table("The other materials that come with the program", others),
    ];
    tables.into_iter().filter(|table| !table.groups.is_empty()).collect()
}

fn rows(material: &MaterialSpec) -> Vec<Vec<String>> {
    let metal = material.class == ClassSpec::Metal;
    let density = &material.density_kg_per_m3;
    let number = |of: &Option<Fact<f64>>, unit: &str| {
        of.as_ref().map(|fact| fact_of(fact, with(fact.value, unit)))
    };
    let modulus = |of: &Option<Fact<ModulusSpec>>| {
        of.as_ref().map(|fact| fact_of(fact, modulus_words(fact.value)))
    };
    let thickness = material.diameter_tolerance.as_ref();
    let strength = material.strength.as_ref();
    let facts = [
        ("Density", Some(fact_of(density, with(density.value, "kg/m³")))),
        ("Density off by", number(&material.density_tolerance_percent, "%")),
        ("Diameter off by", thickness.map(|fact| fact_of(fact, tolerance_words(&fact.value)))),
        ("Modulus in vibration", modulus(&material.modulus)),
        ("Modulus over minutes", modulus(&material.intermediate_modulus)),
        ("Modulus over weeks", modulus(&material.slow_modulus)),
        ("Strength", strength.map(|fact| fact_of(fact, strength_words(&fact.value)))),
        ("Expansion", number(&material.expansion_e6_per_k, "millionths per kelvin")),
        ("Loss factor", number(&material.loss_factor, "")),
    ];
    let mut rows = Vec::new();
    let mut missing = Vec::new();
    for (what, fact) in facts {
        match fact {
            Some([value, source, known]) => rows.push(vec![what.to_owned(), value, source, known]),
            // A metal has one modulus for every pace.
            None if metal && what.starts_with("Modulus over") => {}
            None => missing.push(small(what)),
        }
    }
    if !missing.is_empty() {
        let none = String::new;
        rows.push(vec!["Not known".to_owned(), missing.join(", "), none(), none()]);
    }
    rows
}

/// A value with its source and how well it is known.
fn fact_of<T>(fact: &Fact<T>, value: String) -> [String; 3] {
    let known = match fact.standing {
        StandingSpec::Seen => Standing::Seen,
        StandingSpec::SecondHand => Standing::SecondHand,
        StandingSpec::Computed => Standing::Computed,
        StandingSpec::FromMemory => Standing::FromMemory,
        StandingSpec::Own => Standing::Own,
    };
    [value, fact.source.clone(), standing(known).to_owned()]
}

fn modulus_words(modulus: ModulusSpec) -> String {
    let base = with(modulus.base_gpa, "GPa");
    if modulus.per_stress == 0.0 {
        base
    } else {
        format!("{base} + {} times the stress", number(modulus.per_stress))
    }
}

fn strength_words(strength: &StrengthSpec) -> String {
    match strength {
        StrengthSpec::Mpa(mpa) => with(*mpa, "MPa"),
        StrengthSpec::TableMmMpa(rows) => match (rows.first(), rows.last()) {
            (Some(thin), Some(thick)) => format!(
                "{} at {} to {} at {}, {} diameters",
                with(thin.1.round(), "MPa"),
                with(thin.0, "mm"),
                with(thick.1.round(), "MPa"),
                with(thick.0, "mm"),
                rows.len()
            ),
            _ => display::NONE.to_owned(),
        },
        StrengthSpec::StepsMmMpa(rows) => steps(rows, "MPa"),
    }
}

fn tolerance_words(tolerance: &ToleranceSpec) -> String {
    match tolerance {
        ToleranceSpec::Mm(mm) => with(*mm, "mm"),
        ToleranceSpec::Percent(percent) => with(*percent, "%"),
        ToleranceSpec::StepsMm(rows) => steps(rows, "mm"),
    }
}

fn steps(rows: &[(f64, f64)], unit: &str) -> String {
    let step = |(most, value): &(f64, f64)| {
        let value = if *value > 10.0 { value.round() } else { *value };
        format!("{} up to {}", with(value, unit), with(*most, "mm"))
    };
    rows.iter().map(step).collect::<Vec<_>>().join(", ")
}

/// The keys of an octave as they are spelt where a temperament must choose.
const KEYS: [(Letter, i8, &str); 12] = [
    (Letter::C, 0, "C"),
    (Letter::C, 1, "C♯"),
    (Letter::D, 0, "D"),
    (Letter::E, -1, "E♭"),
    (Letter::E, 0, "E"),
    (Letter::F, 0, "F"),
    (Letter::F, 1, "F♯"),
    (Letter::G, 0, "G"),
    (Letter::G, 1, "G♯"),
    (Letter::A, 0, "A"),
    (Letter::B, -1, "B♭"),
    (Letter::B, 0, "B"),
];

/// How far each key of each temperament lies from equal temperament, A being the same.
pub(super) fn temperaments() -> Table {
    let specs = [
        TemperamentSpec::Equal,
        TemperamentSpec::Pythagorean,
        TemperamentSpec::QuarterCommaMeantone,
        TemperamentSpec::WerckmeisterThree,
        TemperamentSpec::Vallotti,
        TemperamentSpec::YoungTwo,
        TemperamentSpec::JustOnC,
    ];
    let of = |spec| {
        let above_c = |letter, alter| temperament(spec).cents_above_c(letter, alter);
        let equal =
            |letter, alter| temperament(TemperamentSpec::Equal).cents_above_c(letter, alter);
        let off = |letter, alter| above_c(letter, alter) - equal(letter, alter);
        let a = off(Letter::A, 0);
        KEYS.map(|(letter, alter, _)| display::decimals(off(letter, alter) - a, 1)).into()
    };
    let name = |spec| capital(display::temperament(spec));
    Table {
        caption: "Cents from equal temperament, A being the same",
        heads: ["Temperament"]
            .into_iter()
            .chain(KEYS.map(|key| key.2))
            .map(str::to_owned)
            .collect(),
        groups: specs.map(|spec| (name(spec), vec![of(spec)])).into(),
    }
}
