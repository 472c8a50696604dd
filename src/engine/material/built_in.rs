//! The materials that come with the program, each figure with its source and how well it is known.

use super::falling::{FLUOROCARBON_FALLS, GUT_FALLS, NYLON_FALLS, falling};
use super::{Class, Material, Modulus, Sourced, Standing, Strength, Tolerance};
use crate::engine::units::{Density, Length, Stress};

/// A row of the built-in table.
struct Entry {
    key: &'static str,
    name: &'static str,
    other_names: &'static [&'static str],
    density: (f64, &'static str, Standing),
    /// Base in GPa, rise with stress, source, standing.
    modulus: (f64, f64, &'static str, Standing),
    strength: (StrengthRow, &'static str, Standing),
    class: Class,
    /// As the modulus.
    intermediate_modulus: Option<(f64, f64, &'static str, Standing)>,
    /// As the modulus.
    slow_modulus: Option<(f64, f64, &'static str, Standing)>,
    /// Millionths per kelvin.
    expansion: Option<(f64, &'static str, Standing)>,
    loss_factor: Option<(f64, &'static str, Standing)>,
    diameter_tolerance: Option<(Spread, &'static str, Standing)>,
    /// Per cent.
    density_tolerance: Option<(f64, &'static str, Standing)>,
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

const A228: &str = "ASTM A228/A228M, inch table, as reproduced by a wire merchant";
const B159: &str = "ASTM B159, spring wire (H08), minima, as reproduced by a wire merchant";
const EN_SM: &str = "EN 10270-1, grade SM, as reproduced by a spring maker";
const POLYMER_MODULUS: &str = "J. Woodhouse and N. Lynch-Aird, Choosing strings for plucked musical instruments, \
     Acta Acustica united with Acustica 105 (2019) 516, as quoted in a public source code: 4.5 GPa + 39 times the stress";
const NORTON: &str = "M. Norton and D. Karczub, Fundamentals of Noise and Vibration Analysis, 2nd ed., appendix 4A, as transcribed";
const AS_FAST: &str = "taken as the modulus in vibration; over minutes it is somewhat lower, so that what follows from it \
     is an upper estimate. Source: to be found";
const GUT_ONE_MODULUS: &str = "taken as the modulus in vibration: N. Lynch-Aird and J. Woodhouse, Materials 11 (2018) 2160, abstract, find \
     all three independent of stress. Source of the number: to be found";
const MICROMETER: &str = "a reading of a micrometer of 0.01 mm, as N. Lynch-Aird and J. Woodhouse take it (Materials 10 (2017) 497)";
const WOODHOUSE_2004: &str = "J. Woodhouse, Plucked guitar transients, Acta Acustica united with Acustica 90 (2004) 945, table I, as quoted in a \
     public source code: 0.020 and 0.024 for two plain nylon strings";
const SPECIFIC_STRENGTH: &str = "an encyclopaedia's table of specific strength, copper";

const ENTRIES: [Entry; 12] = [
    Entry {
        key: "nylon",
        name: "Nylon monofilament",
        other_names: &["polyamide", "pa"],
        density: (
            1140.0,
            "nylon 6.6: W. E. Morton and J. W. S. Hearle, Physical Properties of Textile Fibres",
            FromMemory,
        ),
        modulus: (4.5, 39.0, POLYMER_MODULUS, SecondHand),
        strength: (StrengthRow::Falling(310.0, 1.0), NYLON_FALLS, FromMemory),
        class: Class::Polymer,
        intermediate_modulus: Some((4.5, 39.0, AS_FAST, FromMemory)),
        slow_modulus: Some((
            2.0,
            0.0,
            "Source: to be found (2 to 3 GPa over weeks, creep included)",
            FromMemory,
        )),
        expansion: None,
        loss_factor: Some((0.02, WOODHOUSE_2004, SecondHand)),
        diameter_tolerance: Some((Spread::Mm(0.005), MICROMETER, Seen)),
        density_tolerance: Some((
            3.0,
            "settled density is about 97 % of the unstretched one (N. Lynch-Aird and J. Woodhouse, Materials 10 (2017) 497)",
            Seen,
        )),
    },
    Entry {
        key: "gut",
        name: "Gut",
        other_names: &["catgut", "natural gut", "sheep gut"],
        density: (1300.0, "a gut string maker's note on the product of pitch and length", Seen),
        modulus: (
            6.0,
            0.0,
            "J. Woodhouse and N. Lynch-Aird, Acta Acustica united with Acustica 105 (2019) 516, as quoted in a public source code",
            SecondHand,
        ),
        strength: (StrengthRow::Falling(300.0, 0.7), GUT_FALLS, FromMemory),
        class: Class::Natural,
        intermediate_modulus: Some((6.0, 0.0, GUT_ONE_MODULUS, FromMemory)),
        slow_modulus: Some((6.0, 0.0, GUT_ONE_MODULUS, FromMemory)),
        expansion: None,
        loss_factor: None,
        diameter_tolerance: Some((Spread::Mm(0.005), MICROMETER, Seen)),
        density_tolerance: Some((1.5, "1300 to 1320 kg/m³ in the sources at hand", Computed)),
    },
    Entry {
        key: "fluorocarbon",
        name: "Fluorocarbon (PVDF)",
        other_names: &["pvdf", "carbon", "fluoro"],
        density: (1780.0, "an encyclopaedia's article on polyvinylidene fluoride", Seen),
        modulus: (
            4.5,
            39.0,
            "taken as for nylon: fast moduli of the two are almost identical against stress (N. Lynch-Aird and J. Woodhouse, \
             Materials 11 (2018) 2160, abstract); nylon's law is second-hand",
            SecondHand,
        ),
        strength: (StrengthRow::Falling(400.0, 0.75), FLUOROCARBON_FALLS, FromMemory),
        class: Class::Polymer,
        intermediate_modulus: Some((4.5, 39.0, AS_FAST, FromMemory)),
        slow_modulus: Some((
            3.0,
            0.0,
            "Source: to be found (stiffer than nylon throughout, Materials 11 (2018) 2160)",
            FromMemory,
        )),
        expansion: None,
        loss_factor: None,
        diameter_tolerance: Some((Spread::Mm(0.005), MICROMETER, Seen)),
        density_tolerance: None,
    },
    Entry {
        key: "steel",
        name: "Steel music wire",
        other_names: &["music wire", "piano wire", "spring steel", "carbon steel", "a228"],
        density: (7850.0, EN_SM, Seen),
        modulus: (206.0, 0.0, EN_SM, Seen),
        strength: (StrengthRow::TableInchKsi(&MUSIC_WIRE_INCH_KSI), A228, Seen),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((
            12.0,
            "a database of materials, ASTM A228; T. Rossing (ed.), The Science of String Instruments, 2010, p. 379 has the same",
            Seen,
        )),
        loss_factor: Some((
            6e-4,
            "M. Norton and D. Karczub, Fundamentals of Noise and Vibration Analysis, 2nd ed., table 6.1: 1 to 6e-4 for structural steel; the upper end taken",
            Seen,
        )),
        diameter_tolerance: Some((Spread::StepsInch(&MUSIC_WIRE_TOLERANCE_INCH), A228, Seen)),
        density_tolerance: Some((0.4, "7800 to 7850 kg/m³ in the sources at hand", Computed)),
    },
    Entry {
        key: "bronze",
        name: "Phosphor bronze C51000",
        other_names: &["phosphor bronze", "phosphor-bronze", "phosphorbronze", "c51000"],
        density: (8860.0, "ASTM B103, alloy sheet for C51000", Seen),
        modulus: (110.0, 0.0, "ASTM B103, alloy sheet for C51000", Seen),
        strength: (
            StrengthRow::StepsInchKsi(&[(0.025, 145.0), (0.0625, 135.0), (0.125, 130.0)]),
            B159,
            Seen,
        ),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((17.8, "ASTM B103, alloy sheet for C51000", Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "yellow brass",
        name: "Yellow brass 70/30, C26000, spring wire",
        other_names: &["brass", "brass 70/30", "brass70/30", "brass 70-30", "c26000"],
        density: (8530.0, "a copper-alloy wire mill's sheet for C26000 round wire", Seen),
        modulus: (
            110.0,
            0.0,
            "a copper-alloy wire mill's sheet for C26000 round wire (110 to 112 GPa)",
            Seen,
        ),
        strength: (
            StrengthRow::Mpa(830.0),
            "a copper-alloy wire mill's sheet for C26000 round wire, spring temper",
            Seen,
        ),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((19.9, "a copper-alloy wire mill's sheet for C26000 round wire", Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "red brass",
        name: "Red brass 85/15, C23000, hard wire",
        other_names: &["brass 85/15", "brass85/15", "brass 85-15", "c23000"],
        density: (8750.0, "Source: to be found", FromMemory),
        modulus: (115.0, 0.0, "Source: to be found", FromMemory),
        strength: (
            StrengthRow::Mpa(600.0),
            "Source: to be found (600 to 725 MPa; a supplier's sheet after ASTM B134 has 455 to 530 MPa for half-hard wire of 1.5 to 6 mm)",
            FromMemory,
        ),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((18.7, "a supplier's sheet for C23000, 20 to 300 °C", Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "copper",
        name: "Copper, soft wire",
        other_names: &["cu"],
        density: (8920.0, SPECIFIC_STRENGTH, Seen),
        modulus: (122.0, 0.0, NORTON, Seen),
        strength: (StrengthRow::Mpa(220.0), SPECIFIC_STRENGTH, Seen),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((
            17.0,
            "W. D. Callister, Fundamentals of Materials Science and Engineering, 3rd ed., table B.6",
            Seen,
        )),
        loss_factor: Some((
            2e-3,
            "M. Norton and D. Karczub, Fundamentals of Noise and Vibration Analysis, 2nd ed., table 6.1",
            Seen,
        )),
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "silver",
        name: "Sterling silver 92.5/7.5, spring hard wire",
        other_names: &["sterling silver", "sterling", "ag"],
        density: (10_360.0, "a precious-metal supplier's data for sterling silver", Seen),
        modulus: (75.0, 0.0, "Source: to be found (75 to 83 GPa)", FromMemory),
        strength: (
            StrengthRow::Mpa(552.0),
            "a precious-metal supplier's data for sterling silver wire, spring hard",
            Seen,
        ),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((19.0, "a precious-metal supplier's data for sterling silver", Seen)),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "iron",
        name: "Iron wire, historical (phosphorus, no carbon)",
        other_names: &["soft iron", "historical iron"],
        density: (7800.0, "Source: to be found (7700 to 7870 kg/m³)", FromMemory),
        modulus: (195.0, 0.0, "Source: to be found (190 to 200 GPa)", FromMemory),
        strength: (
            StrengthRow::Mpa(700.0),
            "Source: to be found (700 to 1100 MPa, rising as the gauge falls)",
            FromMemory,
        ),
        class: Class::Metal,
        intermediate_modulus: None,
        slow_modulus: None,
        expansion: Some((
            12.0,
            "a table of coefficients of expansion, pure iron, 0 to 100 °C",
            Seen,
        )),
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance: None,
    },
    Entry {
        key: "silk",
        name: "Silk (Bombyx mori)",
        other_names: &["silk bedding"],
        density: (1340.0, "a silk spinner's data sheet", Seen),
        modulus: (5.0, 0.0, "a silk spinner's data sheet", Seen),
        strength: (StrengthRow::Mpa(500.0), "a silk spinner's data sheet (500 to 600 MPa)", Seen),
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
        name: "Polyester fibre (PET)",
        other_names: &["pet", "polyester fibre", "polyester fiber"],
        density: (
            1380.0,
            "A. R. Bunsell (ed.), Handbook of Properties of Textile and Technical Fibres, table 1.1",
            Seen,
        ),
        modulus: (
            14.7,
            0.0,
            "from Morton and Hearle, table 13.2: 10.6 N/tex, taking 1390 kg/m³",
            Computed,
        ),
        strength: (
            StrengthRow::Mpa(653.0),
            "from Morton and Hearle, table 13.2: 0.47 N/tex, taking 1390 kg/m³",
            Computed,
        ),
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
            || entry.name.eq_ignore_ascii_case(&wanted)
            || entry.other_names.contains(&wanted.as_str())
    };
    ENTRIES.iter().find(means).map(|entry| entry.key)
}

fn material(entry: &Entry) -> Material {
    fn sourced<T>(value: T, source: &str, standing: Standing) -> Sourced<T> {
        Sourced { value, source: source.to_owned(), standing }
    }
    let inches = |rows: &[(f64, f64)], value: fn(f64) -> Stress| -> Vec<(Length, Stress)> {
        rows.iter().map(|&(inch, number)| (Length::from_inch(inch), value(number))).collect()
    };
    let modulus = |(base_gpa, per_stress_ratio, source, standing): (f64, f64, &str, Standing)| {
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
        name: entry.name.to_owned(),
        class: entry.class,
        density: sourced(Density::from_kg_per_m3(density), density_source, density_standing),
        modulus: Some(modulus(entry.modulus)),
        intermediate_modulus: entry.intermediate_modulus.map(modulus),
        slow_modulus: entry.slow_modulus.map(modulus),
        strength: Some(sourced(strength, strength_source, *strength_standing)),
        expansion_per_k: entry.expansion.map(|(e6, source, s)| sourced(e6 * 1e-6, source, s)),
        loss_factor: entry.loss_factor.map(|(value, source, s)| sourced(value, source, s)),
        diameter_tolerance: entry
            .diameter_tolerance
            .as_ref()
            .map(|(value, source, s)| sourced(spread(value), source, *s)),
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
            for name in entry.other_names.iter().chain([&entry.key, &entry.name]) {
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
