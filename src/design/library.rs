//! Materials of a document and of the engine: one into the other, finding one by what was typed, and
//! keeping in a design what its strings use.

use std::sync::OnceLock;

use thiserror::Error;

use super::document::{
    ClassSpec, Design, Fact, MaterialSpec, ModulusSpec, StandingSpec, StrengthSpec, ToleranceSpec,
};
use super::letters::small;
use super::settings::short;
use super::typed::cut;
use crate::engine::material::{
    self, Class, Material, Modulus, Sourced, Standing, Strength, Tolerance, key_of,
};
use crate::engine::units::{Density, Length, Stress};
use crate::words::{Words, materials as say};

/// The longest key of a material, in characters.
pub const LONGEST_KEY: usize = 40;
/// The most rows of a table of strength.
pub const MOST_ROWS: usize = 200;
/// The least and the greatest density, in kg/m³.
pub const DENSITY_KG_PER_M3: (f64, f64) = (100.0, 25_000.0);
/// The least and the greatest modulus of elasticity, in gigapascals.
pub const MODULUS_GPA: (f64, f64) = (0.01, 2_000.0);
/// The least and the greatest rise of the modulus with the stress.
pub const PER_STRESS: (f64, f64) = (0.0, 200.0);
/// The least and the greatest strength, in megapascals.
pub const STRENGTH_MPA: (f64, f64) = (1.0, 10_000.0);
/// The least and the greatest expansion, in millionths per kelvin.
pub const EXPANSION_E6_PER_K: (f64, f64) = (0.0, 500.0);
/// The least and the greatest loss factor.
pub const LOSS_FACTOR: (f64, f64) = (0.0, 1.0);
/// The least and the greatest deviation of a density or a diameter, in per cent.
pub const DEVIATION_PERCENT: (f64, f64) = (0.0, 50.0);
/// The least and the greatest deviation of a diameter, in millimetres.
pub const DEVIATION_MM: (f64, f64) = (0.0, 1.0);
/// The least and the greatest diameter in a table of strength, in millimetres.
pub const ROW_MM: (f64, f64) = (0.001, 100.0);

/// Why a material cannot be used.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum MaterialError {
    /// No key, or one that is too long.
    #[error("{}", say::wrong_key(.got, &LONGEST_KEY))]
    Key { got: String },
    /// A figure that is no number or out of reach.
    #[error("{}", say::wrong_figure(&short(*got), .key, &short(*least), &short(*most), .unit, .what))]
    Figure { key: String, what: Words, least: f64, most: f64, unit: Words, got: f64 },
    /// A table without rows or with too many.
    #[error("{}", say::wrong_rows(.got, .key, &MOST_ROWS))]
    Rows { key: String, got: usize },
    /// A table whose diameters do not rise.
    #[error("{}", say::wrong_order(&short(*after_mm), &short(*got_mm), .key))]
    Order { key: String, got_mm: f64, after_mm: f64 },
}

/// The materials that come with the program, in the order in which a list shows them.
pub fn built_in() -> &'static [MaterialSpec] {
    static BUILT_IN: OnceLock<Vec<MaterialSpec>> = OnceLock::new();
    BUILT_IN.get_or_init(|| material::built_in().iter().map(spec_of).collect())
}

/// The same before three sources were named more plainly.
pub fn with_sources_before() -> &'static [MaterialSpec] {
    static BEFORE: OnceLock<Vec<MaterialSpec>> = OnceLock::new();
    BEFORE.get_or_init(|| material::built_in().into_iter().map(cited_before).collect())
}

/// The same before the strengths of gut and plastics fell with the diameter.
pub fn with_flat_strengths() -> &'static [MaterialSpec] {
    static FLAT: OnceLock<Vec<MaterialSpec>> = OnceLock::new();
    FLAT.get_or_init(|| {
        let flat = |mut material: Material| {
            let before = material::flat_strength(&material.key);
            material.strength = before.or(material.strength);
            cited_before(material)
        };
        material::built_in().into_iter().map(flat).collect()
    })
}

/// A material with its sources as they were named up to revision 3; only moduli in vibration and loss factors had others.
fn cited_before(mut material: Material) -> MaterialSpec {
    if let Some(sourced) = &mut material.modulus {
        sourced.source = material::source_before(&sourced.source);
    }
    if let Some(sourced) = &mut material.loss_factor {
        sourced.source = material::source_before(&sourced.source);
    }
    spec_of(&material)
}

/// A material of the engine as a document keeps it: to a kilopascal and a millionth of a
/// millimetre, so that figures given in inches and ksi do not carry the digits of the conversion.
pub fn spec_of(material: &Material) -> MaterialSpec {
    let rows = |rows: &[(Length, Stress)]| -> Vec<(f64, f64)> {
        rows.iter()
            .map(|(at, strength)| (tidy(at.to_mm(), 1e6), tidy(strength.to_mpa(), 1e3)))
            .collect()
    };
    let strength = |strength: &Strength| match strength {
        Strength::Constant(stress) => StrengthSpec::Mpa(tidy(stress.to_mpa(), 1e3)),
        Strength::Table(table) => StrengthSpec::TableMmMpa(rows(table)),
        Strength::Steps(steps) => StrengthSpec::StepsMmMpa(rows(steps)),
    };
    let modulus = |modulus: &Modulus| ModulusSpec {
        base_gpa: tidy(modulus.base.to_gpa(), 1e6),
        per_stress: modulus.per_stress_ratio,
    };
    let tolerance = |tolerance: &Tolerance| match tolerance {
        Tolerance::Constant(off) => ToleranceSpec::Mm(tidy(off.to_mm(), 1e6)),
        Tolerance::Ratio(ratio) => ToleranceSpec::Percent(tidy(100.0 * ratio, 1e6)),
        Tolerance::Steps(steps) => {
            let step =
                |(most, off): &(Length, Length)| (tidy(most.to_mm(), 1e6), tidy(off.to_mm(), 1e6));
            ToleranceSpec::StepsMm(steps.iter().map(step).collect())
        }
    };
    let moduli = |of: &Option<Sourced<Modulus>>| of.as_ref().map(|sourced| fact(sourced, modulus));
    let number = |of: &Option<Sourced<f64>>, times: f64| {
        of.as_ref().map(|sourced| fact(sourced, |value| tidy(times * value, 1e6)))
    };
    MaterialSpec {
        key: material.key.clone(),
        name: material.name.clone(),
        class: match material.class {
            Class::Metal => ClassSpec::Metal,
            Class::Polymer => ClassSpec::Polymer,
            Class::Natural => ClassSpec::Natural,
        },
        density_kg_per_m3: fact(&material.density, |density| tidy(density.to_kg_per_m3(), 1e3)),
        density_tolerance_percent: number(&material.density_tolerance_ratio, 100.0),
        diameter_tolerance: material.diameter_tolerance.as_ref().map(|s| fact(s, tolerance)),
        modulus: moduli(&material.modulus),
        intermediate_modulus: moduli(&material.intermediate_modulus),
        slow_modulus: moduli(&material.slow_modulus),
        strength: material.strength.as_ref().map(|sourced| fact(sourced, strength)),
        expansion_e6_per_k: number(&material.expansion_per_k, 1e6),
        loss_factor: number(&material.loss_factor, 1.0),
    }
}

/// A material of a document as the engine takes it.
///
/// # Errors
///
/// When the key is missing or too long, a figure out of reach or no number, or a table has no rows,
/// too many, or diameters that do not rise.
pub fn material_of(spec: &MaterialSpec) -> Result<Material, MaterialError> {
    let key = spec.key.trim();
    if key.is_empty() || key.chars().count() > LONGEST_KEY {
        return Err(MaterialError::Key { got: cut(key) });
    }
    let check = |what, limits, unit, got| check(key, what, limits, unit, got);
    let density = &spec.density_kg_per_m3;
    check(say::OF_DENSITY, DENSITY_KG_PER_M3, Words::plain("kg/m³"), density.value)?;
    for fact in [&spec.modulus, &spec.intermediate_modulus, &spec.slow_modulus] {
        let Some(Fact { value, .. }) = fact else { continue };
        check(say::OF_MODULUS, MODULUS_GPA, Words::plain("GPa"), value.base_gpa)?;
        let rise = say::OF_RISE_OF_MODULUS;
        check(rise, PER_STRESS, say::TIMES_THE_STRESS, value.per_stress)?;
    }
    let numbers = [
        (say::OF_EXPANSION, EXPANSION_E6_PER_K, say::UNIT_MILLIONTHS, &spec.expansion_e6_per_k),
        (say::OF_LOSS_FACTOR, LOSS_FACTOR, say::PURE_NUMBER, &spec.loss_factor),
        (
            say::OF_DENSITY_DEVIATION,
            DEVIATION_PERCENT,
            Words::plain("%"),
            &spec.density_tolerance_percent,
        ),
    ];
    for (what, limits, unit, fact) in numbers {
        if let Some(fact) = fact {
            check(what, limits, unit, fact.value)?;
        }
    }
    check_tolerance(key, spec.diameter_tolerance.as_ref().map(|fact| &fact.value))?;
    match spec.strength.as_ref().map(|fact| &fact.value) {
        None => {}
        Some(StrengthSpec::Mpa(mpa)) => {
            check(say::OF_STRENGTH, STRENGTH_MPA, Words::plain("MPa"), *mpa)?;
        }
        Some(StrengthSpec::TableMmMpa(rows) | StrengthSpec::StepsMmMpa(rows)) => {
            check_rows(key, rows)?;
        }
    }
    let modulus = |spec: &ModulusSpec| Modulus {
        base: Stress::from_gpa(spec.base_gpa),
        per_stress_ratio: spec.per_stress,
    };
    let moduli = |of: &Option<Fact<ModulusSpec>>| of.as_ref().map(|fact| sourced(fact, modulus));
    let number = |of: &Option<Fact<f64>>, times: f64| {
        of.as_ref().map(|fact| sourced(fact, |value| times * value))
    };
    Ok(Material {
        key: key.to_owned(),
        name: spec.name.clone(),
        class: match spec.class {
            ClassSpec::Metal => Class::Metal,
            ClassSpec::Polymer => Class::Polymer,
            ClassSpec::Natural => Class::Natural,
        },
        density: sourced(density, |value| Density::from_kg_per_m3(*value)),
        modulus: moduli(&spec.modulus),
        intermediate_modulus: moduli(&spec.intermediate_modulus),
        slow_modulus: moduli(&spec.slow_modulus),
        strength: spec.strength.as_ref().map(|fact| sourced(fact, strength_of)),
        expansion_per_k: number(&spec.expansion_e6_per_k, 1e-6),
        loss_factor: number(&spec.loss_factor, 1.0),
        diameter_tolerance: spec.diameter_tolerance.as_ref().map(|f| sourced(f, tolerance_of)),
        density_tolerance_ratio: number(&spec.density_tolerance_percent, 0.01),
    })
}

/// The material that a text means: of the given ones by key or name, whatever the case; then, by a
/// usual other name, of the given ones and of those that come with the program.
pub fn find<'a>(materials: &'a [MaterialSpec], text: &str) -> Option<&'a MaterialSpec> {
    let wanted = small(text.trim());
    if wanted.is_empty() {
        return None;
    }
    let is = |text: &str, wanted: &str| match text.trim() {
        text if text.is_ascii() => text.eq_ignore_ascii_case(wanted),
        text => small(text) == wanted,
    };
    let by_key = |wanted: &str| materials.iter().find(|material| is(&material.key, wanted));
    by_key(&wanted)
        .or_else(|| materials.iter().find(|material| is(&material.name, &wanted)))
        .or_else(|| {
            let key = key_of(&wanted)?;
            by_key(key).or_else(|| built_in().iter().find(|material| material.key == key))
        })
}

/// Makes the materials of a design those that its strings use, and the user's own, used or not.
///
/// What the design has already stays as it is and in its order; behind it come those that come with
/// the program, in their order.
pub fn embed(design: &mut Design) {
    let mut texts: Vec<&str> = Vec::new();
    for string in &design.strings {
        let layers = string.make_up.layers.iter().map(|layer| layer.material.as_str());
        for text in [string.make_up.material.as_str()].into_iter().chain(layers) {
            if !texts.contains(&text) {
                texts.push(text);
            }
        }
    }
    let used: Vec<&MaterialSpec> =
        texts.iter().filter_map(|text| find(&design.materials, text)).collect();
    let is_used = |material: &&MaterialSpec| used.iter().any(|used| std::ptr::eq(*used, *material));
    // One under a key of the user's is the user's, even where all its figures are copied.
    let is_built_in = |key: &str| built_in().iter().any(|material| material.key == key);
    let kept = design
        .materials
        .iter()
        .filter(|material| is_own(material) || is_used(material) || !is_built_in(&material.key));
    let materials = kept.chain(built_in().iter().filter(is_used)).cloned().collect();
    design.materials = materials;
}

/// Whether the user entered any figure of a material.
pub fn is_own(material: &MaterialSpec) -> bool {
    standings(material).contains(&Some(StandingSpec::Own))
}

/// How well each figure of a material is known; `None` for one that it lacks.
fn standings(material: &MaterialSpec) -> [Option<StandingSpec>; 9] {
    fn of<T>(fact: &Option<Fact<T>>) -> Option<StandingSpec> {
        fact.as_ref().map(|fact| fact.standing)
    }
    [
        Some(material.density_kg_per_m3.standing),
        of(&material.density_tolerance_percent),
        of(&material.diameter_tolerance),
        of(&material.modulus),
        of(&material.intermediate_modulus),
        of(&material.slow_modulus),
        of(&material.strength),
        of(&material.expansion_e6_per_k),
        of(&material.loss_factor),
    ]
}

/// Every source that a material names.
pub fn sources_of(material: &MaterialSpec) -> Vec<&String> {
    fn of<T>(fact: &Option<Fact<T>>) -> Option<&String> {
        fact.as_ref().map(|fact| &fact.source)
    }
    let rest = [
        of(&material.density_tolerance_percent),
        of(&material.diameter_tolerance),
        of(&material.modulus),
        of(&material.intermediate_modulus),
        of(&material.slow_modulus),
        of(&material.strength),
        of(&material.expansion_e6_per_k),
        of(&material.loss_factor),
    ];
    [Some(&material.density_kg_per_m3.source)].into_iter().chain(rest).flatten().collect()
}

/// Every source that a material names, to be mended.
pub fn sources_mut(material: &mut MaterialSpec) -> Vec<&mut String> {
    fn of<T>(fact: &mut Option<Fact<T>>) -> Option<&mut String> {
        fact.as_mut().map(|fact| &mut fact.source)
    }
    let mut sources = vec![&mut material.density_kg_per_m3.source];
    sources.extend(of(&mut material.density_tolerance_percent));
    sources.extend(of(&mut material.diameter_tolerance));
    sources.extend(of(&mut material.modulus));
    sources.extend(of(&mut material.intermediate_modulus));
    sources.extend(of(&mut material.slow_modulus));
    sources.extend(of(&mut material.strength));
    sources.extend(of(&mut material.expansion_e6_per_k));
    sources.extend(of(&mut material.loss_factor));
    sources
}

/// Gives the built-in materials of an older document the figures that came later. A material whose
/// older figures differ from the built-in ones stays as it is.
pub fn complete(materials: &mut [MaterialSpec]) {
    for material in materials {
        let value = |m: &MaterialSpec| m.modulus.as_ref().map(|fact| fact.value);
        let strength = |m: &MaterialSpec| m.strength.as_ref().map(|fact| fact.value.clone());
        let same = |newest: &&MaterialSpec| {
            newest.key == material.key
                && material.density_kg_per_m3.value == newest.density_kg_per_m3.value
                && value(material) == value(newest)
                && strength(material) == strength(newest)
        };
        let newest = built_in().iter().chain(with_flat_strengths()).find(same);
        if let Some(newest) = newest.filter(|_| !is_own(material)) {
            *material = newest.clone();
        }
    }
}

fn tidy(number: f64, parts: f64) -> f64 {
    (number * parts).round() / parts
}

fn check(
    key: &str,
    what: Words,
    (least, most): (f64, f64),
    unit: Words,
    got: f64,
) -> Result<(), MaterialError> {
    if (least..=most).contains(&got) {
        return Ok(());
    }
    Err(MaterialError::Figure { key: key.to_owned(), what, least, most, unit, got })
}

fn check_rows(key: &str, rows: &[(f64, f64)]) -> Result<(), MaterialError> {
    if !(1..=MOST_ROWS).contains(&rows.len()) {
        return Err(MaterialError::Rows { key: key.to_owned(), got: rows.len() });
    }
    for (mm, mpa) in rows {
        check(key, say::OF_TABLE_STRENGTH, ROW_MM, Words::plain("mm"), *mm)?;
        check(key, say::OF_STRENGTH, STRENGTH_MPA, Words::plain("MPa"), *mpa)?;
    }
    rising(key, rows)
}

fn rising(key: &str, rows: &[(f64, f64)]) -> Result<(), MaterialError> {
    match rows.windows(2).find(|pair| pair[1].0 <= pair[0].0) {
        None => Ok(()),
        Some(pair) => {
            let (after_mm, got_mm) = (pair[0].0, pair[1].0);
            Err(MaterialError::Order { key: key.to_owned(), got_mm, after_mm })
        }
    }
}

fn check_tolerance(key: &str, spec: Option<&ToleranceSpec>) -> Result<(), MaterialError> {
    let what = say::OF_DEVIATION;
    match spec {
        None => Ok(()),
        Some(ToleranceSpec::Mm(mm)) => check(key, what, DEVIATION_MM, Words::plain("mm"), *mm),
        Some(ToleranceSpec::Percent(percent)) => {
            check(key, what, DEVIATION_PERCENT, Words::plain("%"), *percent)
        }
        Some(ToleranceSpec::StepsMm(steps)) => {
            if !(1..=MOST_ROWS).contains(&steps.len()) {
                return Err(MaterialError::Rows { key: key.to_owned(), got: steps.len() });
            }
            for (most, off) in steps {
                check(key, say::OF_TABLE_DEVIATION, ROW_MM, Words::plain("mm"), *most)?;
                check(key, what, DEVIATION_MM, Words::plain("mm"), *off)?;
            }
            rising(key, steps)
        }
    }
}

fn tolerance_of(spec: &ToleranceSpec) -> Tolerance {
    match spec {
        ToleranceSpec::Mm(mm) => Tolerance::Constant(Length::from_mm(*mm)),
        ToleranceSpec::Percent(percent) => Tolerance::Ratio(percent / 100.0),
        ToleranceSpec::StepsMm(steps) => {
            let step = |&(most, off): &(f64, f64)| (Length::from_mm(most), Length::from_mm(off));
            Tolerance::Steps(steps.iter().map(step).collect())
        }
    }
}

fn strength_of(spec: &StrengthSpec) -> Strength {
    let rows = |rows: &[(f64, f64)]| -> Vec<(Length, Stress)> {
        rows.iter().map(|(mm, mpa)| (Length::from_mm(*mm), Stress::from_mpa(*mpa))).collect()
    };
    match spec {
        StrengthSpec::Mpa(mpa) => Strength::Constant(Stress::from_mpa(*mpa)),
        StrengthSpec::TableMmMpa(table) => Strength::Table(rows(table)),
        StrengthSpec::StepsMmMpa(steps) => Strength::Steps(rows(steps)),
    }
}

fn fact<T, U>(sourced: &Sourced<T>, value: impl Fn(&T) -> U) -> Fact<U> {
    let standing = match sourced.standing {
        Standing::Seen => StandingSpec::Seen,
        Standing::SecondHand => StandingSpec::SecondHand,
        Standing::Computed => StandingSpec::Computed,
        Standing::FromMemory => StandingSpec::FromMemory,
        Standing::Own => StandingSpec::Own,
    };
    Fact { value: value(&sourced.value), source: sourced.source.clone(), standing }
}

fn sourced<T, U>(fact: &Fact<T>, value: impl Fn(&T) -> U) -> Sourced<U> {
    let standing = match fact.standing {
        StandingSpec::Seen => Standing::Seen,
        StandingSpec::SecondHand => Standing::SecondHand,
        StandingSpec::Computed => Standing::Computed,
        StandingSpec::FromMemory => Standing::FromMemory,
        StandingSpec::Own => Standing::Own,
    };
    Sourced { value: value(&fact.value), source: fact.source.clone(), standing }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{LayerSpec, MakeUpSpec, StringSpec};
    use crate::testing::assert_close;

    fn spec(key: &str) -> MaterialSpec {
        built_in().iter().find(|material| material.key == key).unwrap().clone()
    }

    fn own(key: &str, name: &str) -> MaterialSpec {
        let density = Fact { value: 1200.0, source: "weighed".into(), standing: StandingSpec::Own };
        let (key, name) = (key.to_owned(), name.to_owned());
        MaterialSpec { key, name, density_kg_per_m3: density, ..MaterialSpec::default() }
    }

    fn string(material: &str, layer: &str) -> StringSpec {
        let mut make_up = MakeUpSpec { material: material.to_owned(), ..MakeUpSpec::default() };
        if !layer.is_empty() {
            let (material, size) = (layer.to_owned(), "0.2".to_owned());
            make_up.layers =
                vec![LayerSpec { material, size, width: String::new(), packing_percent: 100.0 }];
        }
        StringSpec { make_up, ..StringSpec::default() }
    }

    fn keys(design: &Design) -> Vec<&str> {
        design.materials.iter().map(|material| material.key.as_str()).collect()
    }

    #[test]
    fn a_built_in_material_goes_into_a_document_and_back() {
        for (spec, engine) in built_in().iter().zip(material::built_in()) {
            let back = material_of(spec).unwrap();
            assert_eq!(spec_of(&back), *spec);
            assert_eq!((&back.key, &back.name), (&engine.key, &engine.name));
            assert_eq!((&back.density, &back.modulus), (&engine.density, &engine.modulus));
            let (back, engine) = (back.strength.unwrap(), engine.strength.unwrap());
            assert_eq!((&back.source, back.standing), (&engine.source, engine.standing));
            for mm in [0.102, 0.3, 0.635, 1.0, 1.5875, 2.54] {
                let at = |strength: &Strength| strength.at(Length::from_mm(mm)).map(Stress::to_mpa);
                match (at(&back.value), at(&engine.value)) {
                    (Some(one), Some(other)) => {
                        assert_close(one, other, 1e-6, format_args!("{} {mm}", spec.key));
                    }
                    (one, other) => assert_eq!(one, other, "{} {mm}", spec.key),
                }
            }
        }
    }

    #[test]
    fn a_document_keeps_no_digits_of_a_conversion() {
        let text = serde_json::to_string(&spec("steel")).unwrap();
        assert!(text.contains("[0.1016,3026.798]"), "{text}");
        assert!(!text.contains("0000000"), "{text}");
    }

    #[test]
    fn a_material_that_cannot_be_used_says_why() {
        let wrong = |change: &dyn Fn(&mut MaterialSpec)| {
            let mut spec = spec("nylon");
            change(&mut spec);
            material_of(&spec).unwrap_err()
        };
        for key in ["", "  ", &"k".repeat(41)] {
            assert!(
                matches!(wrong(&|m| m.key = key.to_owned()), MaterialError::Key { .. }),
                "{key}"
            );
        }
        for got in [99.0, 25_001.0, -1140.0, f64::NAN, f64::INFINITY] {
            let error = wrong(&|m| m.density_kg_per_m3.value = got);
            assert!(
                matches!(error, MaterialError::Figure { what: say::OF_DENSITY, .. }),
                "{error}"
            );
        }
        for got in [0.0, 2001.0, f64::NAN] {
            let error = wrong(&|m| m.modulus.as_mut().unwrap().value.base_gpa = got);
            assert!(
                matches!(error, MaterialError::Figure { what: say::OF_MODULUS, .. }),
                "{error}"
            );
        }
        for got in [-0.1, 201.0, f64::NAN] {
            let error = wrong(&|m| m.modulus.as_mut().unwrap().value.per_stress = got);
            assert!(matches!(error, MaterialError::Figure { .. }), "{error}");
        }
        let strength =
            |value: StrengthSpec| wrong(&|m| m.strength.as_mut().unwrap().value = value.clone());
        for got in [0.9, 10_001.0, f64::NAN] {
            assert!(matches!(strength(StrengthSpec::Mpa(got)), MaterialError::Figure { .. }));
            let rows = vec![(0.5, got)];
            assert!(matches!(
                strength(StrengthSpec::TableMmMpa(rows)),
                MaterialError::Figure { .. }
            ));
        }
        for count in [0, 201] {
            let rows = vec![(0.5, 100.0); count];
            let error = strength(StrengthSpec::StepsMmMpa(rows));
            assert!(matches!(error, MaterialError::Rows { .. }), "{error}");
        }
        let error = strength(StrengthSpec::TableMmMpa(vec![(0.5, 100.0), (0.5, 90.0)]));
        assert!(matches!(error, MaterialError::Order { .. }), "{error}");
        let error = strength(StrengthSpec::TableMmMpa(vec![(f64::NAN, 100.0)]));
        assert!(matches!(error, MaterialError::Figure { .. }), "{error}");
    }

    #[test]
    fn the_designs_own_material_comes_before_the_built_in_one() {
        let found =
            |materials: &[MaterialSpec], text: &str| find(materials, text).map(|m| m.name.clone());
        assert_eq!(found(&[], " NYLON ").as_deref(), Some("Nylon monofilament"));
        assert_eq!(found(&[], "brass").as_deref(), Some("Yellow brass 70/30, C26000, spring wire"));
        let mine = [own("nylon", "My nylon"), own("wax", "Brass"), own("Gut", "Gut of old")];
        assert_eq!(found(&mine, "Nylon").as_deref(), Some("My nylon"), "by key");
        assert_eq!(found(&mine, "MY NYLON").as_deref(), Some("My nylon"), "by name");
        assert_eq!(
            found(&mine, "brass").as_deref(),
            Some("Brass"),
            "a name before another's other name"
        );
        assert_eq!(found(&mine, "catgut").as_deref(), Some("Gut of old"), "by a usual other name");
        for text in ["", "  ", "mithril"] {
            assert_eq!(found(&mine, text), None, "{text}");
        }
        assert_eq!(find(&[own("", "")], ""), None);
    }

    #[test]
    fn a_design_keeps_what_its_strings_use_and_the_users_own() {
        let mut design = Design {
            strings: vec![
                string("brass", ""),
                string("music wire", "silk"),
                string("mithril", ""),
                string("", ""),
            ],
            ..Design::default()
        };
        embed(&mut design);
        assert_eq!(keys(&design), ["steel", "yellow brass", "silk"]);
        let once = design.clone();
        embed(&mut design);
        assert_eq!(design, once, "a second time changes nothing");

        design.materials.push(own("wax", "Wax"));
        let mut changed = spec("gut");
        changed.name = "Gut as it was".to_owned();
        design.materials.insert(0, changed.clone());
        design.strings = vec![string("nylon", ""), string("gut", "")];
        embed(&mut design);
        assert_eq!(keys(&design), ["gut", "wax", "nylon"]);
        assert_eq!(design.materials[0], changed, "kept as it was");
        design.strings.clear();
        embed(&mut design);
        assert_eq!(keys(&design), ["wax"]);
    }
}
