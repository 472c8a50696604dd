//! The materials that come with the program, each figure with its source and how well it is known.

use super::falling::{FLUOROCARBON_FALLS, GUT_FALLS, NYLON_FALLS, falling};
use super::{Class, Material, Modulus, Sourced, Standing, Strength, Tolerance};
use crate::engine::units::{Density, Length, Stress};
use crate::words::{Words, known as say};

/// A row of the built-in table.
struct Entry {
    key: &'static str,
    name: Words,
    other_names: &'static [&'static str],
    density: (f64, Words, Standing),
    /// Base in GPa, rise with stress, source, standing.
    modulus: (f64, f64, Words, Standing),
    strength: (StrengthRow, Words, Standing),
    class: Class,
    /// As the modulus.
    intermediate_modulus: Option<(f64, f64, Words, Standing)>,
    /// As the modulus.
    slow_modulus: Option<(f64, f64, Words, Standing)>,
    /// Millionths per kelvin.
    expansion: Option<(f64, Words, Standing)>,
    loss_factor: Option<(f64, Words, Standing)>,
    diameter_tolerance: Option<(Spread, Words, Standing)>,
    /// Per cent.
    density_tolerance: Option<(f64, Words, Standing)>,
}

enum Spread {
    Mm(f64),
    /// Inches up to which a deviation in inches holds.
    StepsInch(&'static [(f64, f64)]),
}

enum StrengthRow {
    Mpa(f64),
    /// MPa up to a diameter in mm, from where it falls as [`FALLING`].
    Falling(f64, f64),
    /// Inches and ksi, with straight lines between.
    TableInchKsi(&'static [(f64, f64)]),
    /// Inches up to which a strength in ksi holds.
    StepsInchKsi(&'static [(f64, f64)]),
}

/// Least tensile strength of music wire, inches and ksi.
///
/// Source: ASTM A228/A228M, inch table, as a wire merchant reproduces it for tinned music wire.
pub const MUSIC_WIRE_INCH_KSI: [(f64, f64); 36] = [
    (0.004, 439.0),
    (0.005, 426.0),
    (0.006, 415.0),
    (0.007, 407.0),
    (0.008, 399.0),
    (0.009, 393.0),
    (0.010, 387.0),
    (0.011, 382.0),
    (0.012, 377.0),
    (0.013, 373.0),
    (0.014, 369.0),
    (0.015, 365.0),
    (0.016, 362.0),
    (0.018, 356.0),
    (0.020, 350.0),
    (0.022, 345.0),
    (0.024, 341.0),
    (0.026, 337.0),
    (0.028, 333.0),
    (0.030, 330.0),
    (0.032, 327.0),
    (0.034, 324.0),
    (0.036, 321.0),
    (0.038, 318.0),
    (0.040, 315.0),
    (0.042, 313.0),
    (0.045, 309.0),
    (0.048, 306.0),
    (0.051, 303.0),
    (0.055, 300.0),
    (0.059, 296.0),
    (0.063, 293.0),
    (0.067, 290.0),
    (0.072, 287.0),
    (0.080, 282.0),
    (0.100, 271.0),
];

/// How far music wire may be off its diameter: diameters in inches up to which a deviation in inches
/// holds.
///
/// Source: as [`MUSIC_WIRE_INCH_KSI`].
pub const MUSIC_WIRE_TOLERANCE_INCH: [(f64, f64); 5] =
    [(0.010, 0.0002), (0.028, 0.0003), (0.063, 0.0004), (0.080, 0.0005), (0.250, 0.001)];

use Standing::{Computed, FromMemory, SecondHand, Seen};

/// What three sources had besides, up to revision 3 of the list, behind what they cite.
pub(super) const BESIDES: &str = ", as quoted in a public source code";

const A228: Words = say::A228;
const B159: Words = say::B159;
const EN_SM: Words = say::EN_SM;
const POLYMER_MODULUS: Words = say::POLYMER_MODULUS;
const NORTON: Words = say::NORTON;
const AS_FAST: Words = say::AS_FAST;
const GUT_ONE_MODULUS: Words = say::GUT_ONE_MODULUS;
const MICROMETER: Words = say::MICROMETER;
const WOODHOUSE_2004: Words = say::WOODHOUSE_2004;
const SPECIFIC_STRENGTH: Words = say::SPECIFIC_STRENGTH;

const ENTRIES: [Entry; 12] = [
    Entry {
        key: "nylon",
        name: say::NYLON_NAMED,
        other_names: &["polyamide", "pa", "polyamid"],
        density: (
            1140.0,
            Words::plain(
                "nylon 6.6: W. E. Morton and J. W. S. Hearle, Physical Properties of Textile Fibres",
            ),
            FromMemory,
        ),
        modulus: (4.5, 39.0, POLYMER_MODULUS, SecondHand),
        strength: (StrengthRow::Falling(310.0, 1.0), NYLON_FALLS, FromMemory),
        class: Class::Polymer,
        intermediate_modulus: Some((4.5, 39.0, AS_FAST, FromMemory)),
        slow_modulus: Some((2.0, 0.0, say::NYLON_SLOW, FromMemory)),
        expansion: None,
        loss_factor: Some((0.02, WOODHOUSE_2004, SecondHand)),
        diameter_tolerance: Some((Spread::Mm(0.005), MICROMETER, Seen)),
        density_tolerance: Some((3.0, say::SETTLED, Seen)),
    },
    Entry {
        key: "gut",
        name: say::GUT_NAMED,
        other_names: &["catgut", "natural gut", "sheep gut", "darm", "schafdarm", "boyau"],
        density: (1300.0, say::GUT_MAKER, Seen),
        modulus: (6.0, 0.0, say::GUT_MODULUS, SecondHand),
        strength: (StrengthRow::Falling(300.0, 0.7), GUT_FALLS, FromMemory),
        class: Class::Natural,
        intermediate_modulus: Some((6.0, 0.0, GUT_ONE_MODULUS, FromMemory)),
        slow_modulus: Some((6.0, 0.0, GUT_ONE_MODULUS, FromMemory)),
        expansion: None,
        loss_factor: None,
        diameter_tolerance: Some((Spread::Mm(0.005), MICROMETER, Seen)),
        density_tolerance: Some((1.5, say::GUT_SPREAD, Computed)),
    },
    Entry {
        key: "fluorocarbon",
        name: say::FLUOROCARBON_NAMED,
        other_names: &["pvdf", "carbon", "fluoro", "fluorcarbon", "fluorocarbone", "carbone"],
        density: (1780.0, say::PVDF_ARTICLE, Seen),
        modulus: (4.5, 39.0, say::AS_NYLON, SecondHand),
        strength: (StrengthRow::Falling(400.0, 0.75), FLUOROCARBON_FALLS, FromMemory),
        class: Class::Polymer,
        intermediate_modulus: Some((4.5, 39.0, AS_FAST, FromMemory)),
        slow_modulus: Some((3.0, 0.0, say::STIFFER_THAN_NYLON, FromMemory)),
        expansion: None,
        loss_factor: None,
        diameter_tolerance: Some((Spread::Mm(0.005), MICROMETER, Seen)),
        density_tolerance: None,
    },
    Entry {
        key: "steel",
        name: say::STEEL_NAMED,
        other_names: &[
            "music wire",
            "piano wire",
            "spring steel",
            "carbon steel",
            "a228",
            "stahl",
            "klavierdraht",
            "federstahl",
            "acier",
        ],
        density: (7850.0, EN_SM, Seen),
        modulus: (206.0, 0.0, EN_SM, Seen),
        strength: (StrengthRow::TableInchKsi(&MUSIC_WIRE_INCH_KSI), A228, Seen),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((12.0, say::STEEL_DENSITY, Seen)),
        loss_factor: Some((6e-4, say::STEEL_LOSS, Seen)),
        diameter_tolerance: Some((Spread::StepsInch(&MUSIC_WIRE_TOLERANCE_INCH), A228, Seen)),
        density_tolerance: Some((0.4, say::STEEL_SPREAD, Computed)),
    },
    Entry {
        key: "bronze",
        name: say::BRONZE_NAMED,
        other_names: &[
            "phosphor bronze",
            "phosphor-bronze",
            "phosphorbronze",
            "c51000",
            "bronze phosphoreux",
        ],
        density: (8860.0, say::B103, Seen),
        modulus: (110.0, 0.0, say::B103, Seen),
        strength: (
            StrengthRow::StepsInchKsi(&[(0.025, 145.0), (0.0625, 135.0), (0.125, 130.0)]),
            B159,
            Seen,
        ),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((17.8, say::B103, Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "yellow brass",
        name: say::YELLOW_BRASS_NAMED,
        other_names: &[
            "brass",
            "brass 70/30",
            "brass70/30",
            "brass 70-30",
            "c26000",
            "messing",
            "laiton",
            "laiton jaune",
        ],
        density: (8530.0, say::C26000, Seen),
        modulus: (110.0, 0.0, say::C26000_MODULUS, Seen),
        strength: (StrengthRow::Mpa(830.0), say::C26000_STRENGTH, Seen),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((19.9, say::C26000, Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "red brass",
        name: say::RED_BRASS_NAMED,
        other_names: &[
            "brass 85/15",
            "brass85/15",
            "brass 85-15",
            "c23000",
            "tombak",
            "laiton rouge",
        ],
        density: (8750.0, say::TO_BE_FOUND, FromMemory),
        modulus: (115.0, 0.0, say::TO_BE_FOUND, FromMemory),
        strength: (StrengthRow::Mpa(600.0), say::RED_BRASS_STRENGTH, FromMemory),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((18.7, say::C23000, Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "copper",
        name: say::COPPER_NAMED,
        other_names: &["cu", "kupfer", "cuivre"],
        density: (8920.0, SPECIFIC_STRENGTH, Seen),
        modulus: (122.0, 0.0, NORTON, Seen),
        strength: (StrengthRow::Mpa(220.0), SPECIFIC_STRENGTH, Seen),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((
            17.0,
            Words::plain(
                "W. D. Callister, Fundamentals of Materials Science and Engineering, 3rd ed., table B.6",
            ),
            Seen,
        )),
        loss_factor: Some((
            2e-3,
            Words::plain(
                "M. Norton and D. Karczub, Fundamentals of Noise and Vibration Analysis, 2nd ed., table 6.1",
            ),
            Seen,
        )),
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "silver",
        name: say::SILVER_NAMED,
        other_names: &["sterling silver", "sterling", "ag", "silber", "argent"],
        density: (10_360.0, say::STERLING, Seen),
        modulus: (75.0, 0.0, say::SILVER_MODULUS, FromMemory),
        strength: (StrengthRow::Mpa(552.0), say::STERLING_HARD, Seen),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((19.0, say::STERLING, Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "iron",
        name: say::IRON_NAMED,
        other_names: &["soft iron", "historical iron", "eisen", "fer"],
        density: (7800.0, say::IRON_DENSITY, FromMemory),
        modulus: (195.0, 0.0, say::IRON_MODULUS, FromMemory),
        strength: (StrengthRow::Mpa(700.0), say::IRON_STRENGTH, FromMemory),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((12.0, say::IRON_EXPANSION, Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "silk",
        name: say::SILK_NAMED,
        other_names: &["silk bedding", "seide", "soie"],
        density: (1340.0, say::SILK_SHEET, Seen),
        modulus: (5.0, 0.0, say::SILK_SHEET, Seen),
        strength: (StrengthRow::Mpa(500.0), say::SILK_STRENGTH, Seen),
        class: Class::Natural,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: None,
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "polyester",
        name: say::POLYESTER_NAMED,
        other_names: &[
            "pet",
            "polyester fibre",
            "polyester fiber",
            "polyesterfaser",
            "fibre de polyester",
        ],
        density: (
            1380.0,
            Words::plain(
                "A. R. Bunsell (ed.), Handbook of Properties of Textile and Technical Fibres, table 1.1",
            ),
            Seen,
        ),
        modulus: (14.7, 0.0, say::POLYESTER_MODULUS, Computed),
        strength: (StrengthRow::Mpa(653.0), say::POLYESTER_STRENGTH, Computed),
        class: Class::Polymer,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: None,
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
];

/// The materials that come with the program, in the order in which a list shows them.
pub fn built_in() -> Vec<Material> {
    ENTRIES.iter().map(material).collect()
}

/// The key of the built-in material that a text means: its key, its name, or a usual other name,
/// whatever the case. `None` when there is none.
pub fn key_of(text: &str) -> Option<&'static str> {
    let wanted = text.trim().to_ascii_lowercase();
    let means = |entry: &&Entry| {
        entry.key == wanted
            || entry.name.english().eq_ignore_ascii_case(&wanted)
            || entry.name.said().eq_ignore_ascii_case(&wanted)
            || entry.other_names.contains(&wanted.as_str())
    };
    ENTRIES.iter().find(means).map(|entry| entry.key)
}

fn material(entry: &Entry) -> Material {
    fn sourced<T>(value: T, source: Words, standing: Standing) -> Sourced<T> {
        Sourced { value, source: source.english().to_owned(), standing }
    }
    let inches = |rows: &[(f64, f64)], value: fn(f64) -> Stress| -> Vec<(Length, Stress)> {
        rows.iter().map(|&(inch, number)| (Length::from_inch(inch), value(number))).collect()
    };
    let modulus = |(base_gpa, per_stress_ratio, source, standing): (f64, f64, Words, Standing)| {
        sourced(Modulus { base: Stress::from_gpa(base_gpa), per_stress_ratio }, source, standing)
    };
    let (density, density_source, density_standing) = entry.density;
    let (row, strength_source, strength_standing) = &entry.strength;
    let strength = match row {
        StrengthRow::Mpa(mpa) => Strength::Constant(Stress::from_mpa(*mpa)),
        StrengthRow::Falling(mpa, from_mm) => falling(*mpa, *from_mm),
        StrengthRow::TableInchKsi(rows) => Strength::Table(inches(rows, Stress::from_ksi)),
        StrengthRow::StepsInchKsi(rows) => Strength::Steps(inches(rows, Stress::from_ksi)),
    };
    let spread = |spread: &Spread| match spread {
        Spread::Mm(mm) => Tolerance::Constant(Length::from_mm(*mm)),
        Spread::StepsInch(rows) => {
            let step = |&(most, off)| (Length::from_inch(most), Length::from_inch(off));
            Tolerance::Steps(rows.iter().map(step).collect())
        }
    };
    Material {
        key: entry.key.to_owned(),
        name: entry.name.english().to_owned(),
        class: entry.class,
        density: sourced(Density::from_kg_per_m3(density), density_source, density_standing),
        modulus: Some(modulus(entry.modulus)),
        intermediate_modulus: entry.intermediate_modulus.map(modulus),
        slow_modulus: entry.slow_modulus.map(modulus),
        strength: Some(sourced(strength, *strength_source, *strength_standing)),
        expansion_per_k: entry.expansion.map(|(e6, source, s)| sourced(e6 * 1e-6, source, s)),
        loss_factor: entry.loss_factor.map(|(value, source, s)| sourced(value, source, s)),
        diameter_tolerance: entry
            .diameter_tolerance
            .as_ref()
            .map(|(value, source, s)| sourced(spread(value), *source, *s)),
        density_tolerance_ratio: entry
            .density_tolerance
            .map(|(percent, source, s)| sourced(percent / 100.0, source, s)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn every_name_means_one_material() {
        for entry in &ENTRIES {
            let names = [entry.key, entry.name.english()];
            for name in entry.other_names.iter().copied().chain(names) {
                assert_eq!(
                    key_of(&format!(" {} ", name.to_uppercase())),
                    Some(entry.key),
                    "{name}"
                );
            }
        }
        assert_eq!(key_of("mithril"), None);
    }

    #[test]
    fn every_figure_says_where_it_comes_from() {
        for entry in &ENTRIES {
            let moduli = [entry.intermediate_modulus, entry.slow_modulus];
            let numbers = [entry.expansion, entry.loss_factor, entry.density_tolerance];
            let facts = [
                (entry.density.1, entry.density.2),
                (entry.modulus.2, entry.modulus.3),
                (entry.strength.1, entry.strength.2),
            ]
            .into_iter()
            .chain(moduli.iter().flatten().map(|fact| (fact.2, fact.3)))
            .chain(numbers.iter().flatten().map(|fact| (fact.1, fact.2)))
            .chain(entry.diameter_tolerance.iter().map(|fact| (fact.1, fact.2)));
            for (source, standing) in facts {
                let source = source.english();
                assert!(source.len() > 10, "{}: \"{source}\"", entry.key);
                let unfound = source.starts_with("Source: to be found");
                assert!(!unfound || standing == FromMemory, "{}: {source}", entry.key);
            }
        }
    }

    #[test]
    fn a_step_holds_up_to_its_greatest_diameter() {
        let bronze = built_in().into_iter().find(|m| m.key == "bronze").unwrap().strength.unwrap();
        let ksi = |inch: f64| bronze.value.at(Length::from_inch(inch)).map(Stress::to_ksi);
        assert_close(ksi(0.025).unwrap(), 145.0, 1e-12, "on the edge");
        assert_close(ksi(0.0251).unwrap(), 135.0, 1e-12, "past the edge");
        assert_eq!(ksi(0.126), None);
    }
}
