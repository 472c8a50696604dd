//! Materials of strings: density, modulus in vibration, strength; each figure with its source and
//! how well it is known.

use super::units::{Density, Length, Stress};

/// How well a figure is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// Read in the source that is named.
    Seen,
    /// As another text quotes the source that is named.
    SecondHand,
    /// Worked out from figures that were read.
    Computed,
    /// From memory; verify before relying on it.
    FromMemory,
    /// Entered by the user.
    Own,
}

/// A figure with its source.
#[derive(Clone, Debug, PartialEq)]
pub struct Sourced<T> {
    /// The figure.
    pub value: T,
    /// Where it comes from.
    pub source: String,
    /// How well it is known.
    pub standing: Standing,
}

/// Modulus of elasticity in vibration: `E = base + per_stress_ratio · σ`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Modulus {
    /// The modulus of the slack string.
    pub base: Stress,
    /// Rise of the modulus with the stress, a pure number.
    pub per_stress_ratio: f64,
}

impl Modulus {
    /// One modulus, whatever the stress.
    pub const fn constant(base: Stress) -> Self {
        Self { base, per_stress_ratio: 0.0 }
    }

    /// The modulus under a stress.
    pub fn at(self, stress: Stress) -> Stress {
        Stress::from_pa(self.base.to_pa() + self.per_stress_ratio * stress.to_pa())
    }
}

/// Least tensile strength.
#[derive(Clone, Debug, PartialEq)]
pub enum Strength {
    /// The same for every diameter.
    Constant(Stress),
    /// Diameters with their strength, thinnest first; straight lines between them, and no figure
    /// outside.
    Table(Vec<(Length, Stress)>),
    /// The greatest diameter of each step with its strength, thinnest first; no figure beyond the
    /// last.
    Steps(Vec<(Length, Stress)>),
}

impl Strength {
    /// The strength at a diameter; `None` where the source gives none.
    pub fn at(&self, diameter: Length) -> Option<Stress> {
        let d = diameter.to_m();
        match self {
            Self::Constant(stress) => Some(*stress),
            Self::Steps(steps) => {
                steps.iter().find(|(most, _)| within(d, most.to_m())).map(|(_, stress)| *stress)
            }
            Self::Table(rows) => {
                let (first, last) = (rows.first()?, rows.last()?);
                if !within(first.0.to_m(), d) || !within(d, last.0.to_m()) {
                    return None;
                }
                let above = rows.partition_point(|(at, _)| at.to_m() < d);
                let (Some(low), Some(high)) = (rows.get(above.saturating_sub(1)), rows.get(above))
                else {
                    return Some(if above == 0 { first.1 } else { last.1 });
                };
                let (x0, x1) = (low.0.to_m(), high.0.to_m());
                let share = if x1 > x0 { ((d - x0) / (x1 - x0)).clamp(0.0, 1.0) } else { 0.0 };
                let (y0, y1) = (low.1.to_pa(), high.1.to_pa());
                Some(Stress::from_pa(y0 + share * (y1 - y0)))
            }
        }
    }
}

/// Whether `value` is at most `most`, with room for the last digits of a unit's conversion.
fn within(value: f64, most: f64) -> bool {
    value <= most * (1.0 + 1e-9)
}

/// What a string or a layer is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct Material {
    /// Short and unique: what a chart's cell shows.
    pub key: String,
    /// The full name.
    pub name: String,
    /// Mass over volume.
    pub density: Sourced<Density>,
    /// Modulus in vibration, where one is known.
    pub modulus: Option<Sourced<Modulus>>,
    /// Least strength, where one is known.
    pub strength: Option<Sourced<Strength>>,
}

/// A row of the built-in table.
struct Entry {
    key: &'static str,
    name: &'static str,
    other_names: &'static [&'static str],
    density: (f64, &'static str, Standing),
    /// Base in GPa, rise with stress, source, standing.
    modulus: (f64, f64, &'static str, Standing),
    strength: (Row, &'static str, Standing),
}

enum Row {
    Mpa(f64),
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

use Standing::{Computed, FromMemory, SecondHand, Seen};

const A228: &str = "ASTM A228/A228M, inch table, as reproduced by a wire merchant";
const B159: &str = "ASTM B159, spring wire (H08), minima, as reproduced by a wire merchant";
const EN_SM: &str = "EN 10270-1, grade SM, as reproduced by a spring maker";
const POLYMER_MODULUS: &str = "J. Woodhouse and N. Lynch-Aird, Choosing strings for plucked musical instruments, \
     Acta Acustica united with Acustica 105 (2019) 516, as quoted in a public source code: 4.5 GPa + 39 times the stress";
const NORTON: &str = "M. Norton and D. Karczub, Fundamentals of Noise and Vibration Analysis, 2nd ed., appendix 4A, as transcribed";
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
        strength: (
            Row::Mpa(310.0),
            "from the breaking lengths of one string in an essay on harp strings and design (2020), taking 1150 kg/m³",
            Computed,
        ),
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
        strength: (
            Row::Mpa(300.0),
            "the least of the measured products of pitch and length, 240 m/s on 0.40 mm gut (a gut string maker's note)",
            Computed,
        ),
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
        strength: (Row::Mpa(400.0), "Source: to be found", FromMemory),
    },
    Entry {
        key: "steel",
        name: "Steel music wire",
        other_names: &["music wire", "piano wire", "spring steel", "carbon steel", "a228"],
        density: (7850.0, EN_SM, Seen),
        modulus: (206.0, 0.0, EN_SM, Seen),
        strength: (Row::TableInchKsi(&MUSIC_WIRE_INCH_KSI), A228, Seen),
    },
    Entry {
        key: "bronze",
        name: "Phosphor bronze C51000",
        other_names: &["phosphor bronze", "phosphor-bronze", "phosphorbronze", "c51000"],
        density: (8860.0, "ASTM B103, alloy sheet for C51000", Seen),
        modulus: (110.0, 0.0, "ASTM B103, alloy sheet for C51000", Seen),
        strength: (
            Row::StepsInchKsi(&[(0.025, 145.0), (0.0625, 135.0), (0.125, 130.0)]),
            B159,
            Seen,
        ),
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
            Row::Mpa(830.0),
            "a copper-alloy wire mill's sheet for C26000 round wire, spring temper",
            Seen,
        ),
    },
    Entry {
        key: "red brass",
        name: "Red brass 85/15, C23000, hard wire",
        other_names: &["brass 85/15", "brass85/15", "brass 85-15", "c23000"],
        density: (8750.0, "Source: to be found", FromMemory),
        modulus: (115.0, 0.0, "Source: to be found", FromMemory),
        strength: (Row::Mpa(600.0), "Source: to be found (600 to 725 MPa)", FromMemory),
    },
    Entry {
        key: "copper",
        name: "Copper, soft wire",
        other_names: &["cu"],
        density: (8920.0, SPECIFIC_STRENGTH, Seen),
        modulus: (122.0, 0.0, NORTON, Seen),
        strength: (Row::Mpa(220.0), SPECIFIC_STRENGTH, Seen),
    },
    Entry {
        key: "silver",
        name: "Sterling silver 92.5/7.5, spring hard wire",
        other_names: &["sterling silver", "sterling", "ag"],
        density: (10_360.0, "a precious-metal supplier's data for sterling silver", Seen),
        modulus: (75.0, 0.0, "Source: to be found (75 to 83 GPa)", FromMemory),
        strength: (
            Row::Mpa(552.0),
            "a precious-metal supplier's data for sterling silver wire, spring hard",
            Seen,
        ),
    },
    Entry {
        key: "iron",
        name: "Iron wire, historical (phosphorus, no carbon)",
        other_names: &["soft iron", "historical iron"],
        density: (7800.0, "Source: to be found (7700 to 7870 kg/m³)", FromMemory),
        modulus: (195.0, 0.0, "Source: to be found (190 to 200 GPa)", FromMemory),
        strength: (
            Row::Mpa(700.0),
            "Source: to be found (700 to 1100 MPa, rising as the gauge falls)",
            FromMemory,
        ),
    },
    Entry {
        key: "silk",
        name: "Silk (Bombyx mori)",
        other_names: &["silk bedding"],
        density: (1340.0, "a silk spinner's data sheet", Seen),
        modulus: (5.0, 0.0, "a silk spinner's data sheet", Seen),
        strength: (Row::Mpa(500.0), "a silk spinner's data sheet (500 to 600 MPa)", Seen),
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
            Row::Mpa(653.0),
            "from Morton and Hearle, table 13.2: 0.47 N/tex, taking 1390 kg/m³",
            Computed,
        ),
    },
];

/// The materials that come with the program, in the order in which a list shows them.
pub fn built_in() -> Vec<Material> {
    ENTRIES.iter().map(material).collect()
}

/// The key of the built-in material that a text means: its key, its name, or a usual other name,
/// whatever the case. `None` when there is none.
pub fn key_of(text: &str) -> Option<&'static str> {
    let wanted = text.trim().to_lowercase();
    let means = |entry: &&Entry| {
        entry.key == wanted
            || entry.name.to_lowercase() == wanted
            || entry.other_names.contains(&wanted.as_str())
    };
    ENTRIES.iter().find(means).map(|entry| entry.key)
}

fn material(entry: &Entry) -> Material {
    fn sourced<T>(value: T, source: &str, standing: Standing) -> Sourced<T> {
        Sourced { value, source: source.to_owned(), standing }
    }
    let pairs = |rows: &[(f64, f64)]| -> Vec<(Length, Stress)> {
        rows.iter().map(|&(inch, ksi)| (Length::from_inch(inch), Stress::from_ksi(ksi))).collect()
    };
    let (density, density_source, density_standing) = entry.density;
    let (base_gpa, per_stress_ratio, modulus_source, modulus_standing) = entry.modulus;
    let (row, strength_source, strength_standing) = &entry.strength;
    let strength = match row {
        Row::Mpa(mpa) => Strength::Constant(Stress::from_mpa(*mpa)),
        Row::TableInchKsi(rows) => Strength::Table(pairs(rows)),
        Row::StepsInchKsi(rows) => Strength::Steps(pairs(rows)),
    };
    let modulus = Modulus { base: Stress::from_gpa(base_gpa), per_stress_ratio };
    Material {
        key: entry.key.to_owned(),
        name: entry.name.to_owned(),
        density: sourced(Density::from_kg_per_m3(density), density_source, density_standing),
        modulus: Some(sourced(modulus, modulus_source, modulus_standing)),
        strength: Some(sourced(strength, strength_source, *strength_standing)),
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
            let facts = [
                (entry.density.1, entry.density.2),
                (entry.modulus.2, entry.modulus.3),
                (entry.strength.1, entry.strength.2),
            ];
            for (source, standing) in facts {
                assert!(source.len() > 10, "{}: \"{source}\"", entry.key);
                let unfound = source.starts_with("Source: to be found");
                assert!(!unfound || standing == FromMemory, "{}: {source}", entry.key);
            }
        }
    }

    #[test]
    fn a_table_gives_its_own_rows_and_straight_lines_between() {
        let at = |mm: f64, mpa: f64| (Length::from_mm(mm), Stress::from_mpa(mpa));
        let table = Strength::Table(vec![at(0.2, 2000.0), at(0.4, 1800.0), at(0.8, 1500.0)]);
        let strength = |mm: f64| table.at(Length::from_mm(mm)).map(Stress::to_mpa);
        for (mm, mpa) in [(0.2, 2000.0), (0.3, 1900.0), (0.4, 1800.0), (0.6, 1650.0), (0.8, 1500.0)]
        {
            assert_close(strength(mm).unwrap(), mpa, 1e-12, format_args!("{mm} mm"));
        }
        assert_eq!(strength(0.19), None);
        assert_eq!(strength(0.81), None);
        assert_eq!(strength(f64::NAN), None);
        assert_eq!(Strength::Table(vec![]).at(Length::from_mm(0.3)), None);
        assert_eq!(
            Strength::Table(vec![at(0.2, 7.0)]).at(Length::from_mm(0.2)),
            Some(Stress::from_mpa(7.0))
        );
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
