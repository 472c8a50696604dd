//! What stands in columns: the data of the materials, and the temperaments.

use super::fill::{number, with};
use super::standing;
use crate::design::display;
use crate::design::document::{
    ClassSpec, Fact, MaterialSpec, ModulusSpec, StandingSpec, StrengthSpec, TemperamentSpec,
    ToleranceSpec,
};
use crate::design::letters::{capital, within};
use crate::design::library::built_in;
use crate::design::resolve::temperament;
use crate::engine::material::{Standing, said};
use crate::engine::pitch::{Letter, naming};
use crate::words::{self, Words, numbers as say};

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
    let table = |caption: Words, materials: Vec<&MaterialSpec>| Table {
        caption: caption.said(),
        heads: heads(say::HEAD_MATERIAL),
        groups: materials.into_iter().map(|m| (said(&m.name).to_owned(), rows(m))).collect(),
    };
    let others = built_in().iter().filter(|material| !of_design.contains(material)).collect();
    let tables =
        [table(say::TABLE_OF_DESIGN, of_design.iter().collect()), table(say::TABLE_OTHERS, others)];
    tables.into_iter().filter(|table| !table.groups.is_empty()).collect()
}

/// The heads of a table of what is known.
pub(super) fn heads(of: Words) -> Vec<String> {
    [of, say::HEAD_FIGURE, say::HEAD_VALUE, say::HEAD_SOURCE, say::HEAD_KNOWN]
        .map(String::from)
        .into()
}

fn rows(material: &MaterialSpec) -> Vec<Vec<String>> {
    let metal = material.class == ClassSpec::Metal;
    let density = &material.density_kg_per_m3;
    let number = |of: &Option<Fact<f64>>, unit: &'static str| {
        of.as_ref().map(|fact| fact_of(fact, with(fact.value, unit)))
    };
    let modulus = |of: &Option<Fact<ModulusSpec>>| {
        of.as_ref().map(|fact| fact_of(fact, modulus_words(fact.value)))
    };
    let thickness = material.diameter_tolerance.as_ref();
    let strength = material.strength.as_ref();
    let facts = [
        (say::FACT_DENSITY, Some(fact_of(density, with(density.value, "kg/m³")))),
        (say::FACT_DENSITY_OFF, number(&material.density_tolerance_percent, "%")),
        (say::FACT_DIAMETER_OFF, thickness.map(|fact| fact_of(fact, tolerance_words(&fact.value)))),
        (say::FACT_MODULUS, modulus(&material.modulus)),
        (say::FACT_MODULUS_MINUTES, modulus(&material.intermediate_modulus)),
        (say::FACT_MODULUS_WEEKS, modulus(&material.slow_modulus)),
        (say::FACT_STRENGTH, strength.map(|fact| fact_of(fact, strength_words(&fact.value)))),
        (say::FACT_EXPANSION, number(&material.expansion_e6_per_k, "10⁻⁶/K")),
        (say::FACT_LOSS, number(&material.loss_factor, "")),
    ];
    let mut rows = Vec::new();
    let mut missing = Vec::new();
    for (what, fact) in facts {
        match fact {
            Some([value, source, known]) => rows.push(vec![what.into(), value, source, known]),
            // A metal has one modulus for every pace.
            None if metal
                && matches!(what, say::FACT_MODULUS_MINUTES | say::FACT_MODULUS_WEEKS) => {}
            None => missing.push(within(what.said())),
        }
    }
    if !missing.is_empty() {
        let none = String::new;
        rows.push(vec![say::FACTS_MISSING.into(), missing.join(", "), none(), none()]);
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
    [value, said(&fact.source).to_owned(), standing(known).to_owned()]
}

fn modulus_words(modulus: ModulusSpec) -> String {
    let base = with(modulus.base_gpa, "GPa");
    if modulus.per_stress == 0.0 {
        base
    } else {
        say::modulus_rising(&base, &number(modulus.per_stress))
    }
}

fn strength_words(strength: &StrengthSpec) -> String {
    match strength {
        StrengthSpec::Mpa(mpa) => with(*mpa, "MPa"),
        StrengthSpec::TableMmMpa(rows) => match (rows.first(), rows.last()) {
            (Some(thin), Some(thick)) => say::strength_table(
                &rows.len(),
                &with(thin.1.round(), "MPa"),
                &with(thin.0, "mm"),
                &with(thick.1.round(), "MPa"),
                &with(thick.0, "mm"),
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

fn steps(rows: &[(f64, f64)], unit: &'static str) -> String {
    let step = |(most, value): &(f64, f64)| {
        let value = if *value > 10.0 { value.round() } else { *value };
        say::step_up_to(&with(*most, "mm"), &with(value, unit))
    };
    rows.iter().map(step).collect::<Vec<_>>().join(", ")
}

/// The keys of an octave as they are spelt where a temperament must choose.
const KEYS: [(Letter, i8); 12] = [
    (Letter::C, 0),
    (Letter::C, 1),
    (Letter::D, 0),
    (Letter::E, -1),
    (Letter::E, 0),
    (Letter::F, 0),
    (Letter::F, 1),
    (Letter::G, 0),
    (Letter::G, 1),
    (Letter::A, 0),
    (Letter::B, -1),
    (Letter::B, 0),
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
        KEYS.map(|(letter, alter)| display::decimals(off(letter, alter) - a, 1)).into()
    };
    let name = |spec| capital(display::temperament(spec));
    Table {
        caption: say::TABLE_TEMPERAMENTS.said(),
        heads: [say::HEAD_TEMPERAMENT.said().to_owned()]
            .into_iter()
            .chain(KEYS.map(|(letter, alter)| naming::name(letter, alter, words::naming())))
            .collect(),
        groups: specs.map(|spec| (name(spec), vec![of(spec)])).into(),
    }
}
