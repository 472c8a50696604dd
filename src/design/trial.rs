//! What was read off a balance or at a test, as typed, and what it says of a material: a figure in
//! words, and the text and source to use it with.

use super::display::{as_said, decimals};
use super::document::{ForceUnit, GaugeUnit, LengthUnit, Units};
use super::material_facts::Property;
use super::measure::{LENGTHS_MM, MASSES_G, MASSES_G_PER_M, Measure};
use super::typed::{self, TypedError, cut};
use crate::engine::measured::{
    Reading, density_error, density_of_length, density_of_mass_per_metre, modulus_of_stretch,
    strength_of_breaks,
};
use crate::engine::units::{Force, Length, LinearDensity, Mass, Stress};
use crate::words::{Words, trial as say};

/// The most strings of one breaking test.
pub const MOST_BREAKS: usize = 50;

/// How the sources begin of tests, in any language: they hold for the figure that was measured only.
pub const MEASURED: [&str; 9] = [
    "weighed:",
    "breaking test:",
    "stretch test:",
    "gewogen:",
    "Reißprobe:",
    "Dehnprobe:",
    "pesée\u{a0}:",
    "essai de rupture\u{a0}:",
    "essai d’allongement\u{a0}:",
];

/// What a test gives.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// The figure in words, with its doubts.
    pub words: String,
    /// What goes into the field of the property.
    pub text: String,
    /// What goes into its source.
    pub source: String,
    /// How far it may be off in per cent, where the readings say so.
    pub off_percent: Option<String>,
}

/// A test that gives a figure of a material.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trial {
    /// A length is weighed.
    Weighing,
    /// Strings are loaded until they break.
    Breaking,
    /// A string is loaded further and grows longer.
    Stretching,
}

/// A reading that a test asks for: its label and an example.
type Asked = (Words, &'static str);

const LENGTH: Measure = Measure {
    what: say::OF_LENGTH,
    example: Words::plain("10 m"),
    limits: (10.0, 1_000_000.0),
    unit: "mm",
    units: LENGTHS_MM,
    proposed: &["m", "cm"],
};
const STRETCH: Measure = Measure {
    what: say::OF_LENGTHENING,
    example: Words::plain("5 mm"),
    limits: (0.001, 10_000.0),
    ..LENGTH
};
const ERROR: Measure = Measure {
    what: say::OF_ERROR,
    example: Words::plain("0.01"),
    limits: (0.0, 10_000.0),
    ..LENGTH
};
const MASS: Measure = Measure {
    what: say::OF_MASS,
    example: say::OF_MASS_LIKE,
    limits: (0.001, 100_000.0),
    unit: "g",
    units: MASSES_G,
    proposed: &["mg", "kg"],
};
const MASS_ERROR: Measure = Measure {
    limits: (0.0, 10_000.0),
    what: say::OF_MASS_ERROR,
    example: Words::plain("0.1"),
    ..MASS
};
const PER_METRE: Measure = Measure {
    what: say::OF_MASS_PER_METRE,
    example: Words::plain("1.23 g/m"),
    limits: (0.000_1, 10_000.0),
    unit: "g/m",
    units: MASSES_G_PER_M,
    proposed: &["kg/m"],
};

impl Trial {
    /// All, as a form shows them.
    pub const ALL: [Self; 3] = [Self::Weighing, Self::Breaking, Self::Stretching];

    /// The heading.
    pub const fn title(self) -> Words {
        match self {
            Self::Weighing => say::WEIGHING,
            Self::Breaking => say::BREAKING,
            Self::Stretching => say::STRETCHING,
        }
    }

    /// How it is done, and what to mind.
    pub const fn advice(self) -> Words {
        match self {
            Self::Weighing => say::WEIGHING_ADVICE,
            Self::Breaking => say::BREAKING_ADVICE,
            Self::Stretching => say::STRETCHING_ADVICE,
        }
    }

    /// The readings that it asks for; those that begin with ± have a usual value.
    pub const fn asked(self) -> &'static [Asked] {
        match self {
            Self::Weighing => &[
                (say::LENGTH, "10 m"),
                (say::MASS_G, "12.3"),
                (say::DIAMETER, "1.02 mm"),
                (say::LENGTH_ERROR, "1"),
                (say::MASS_ERROR, "0.1"),
                (say::DIAMETER_ERROR, "0.01"),
            ],
            Self::Breaking => &[(say::DIAMETER, "0.70 mm"), (say::LOADS, "118 N; 121 N; 120 N")],
            Self::Stretching => &[
                (say::LOAD_ADDED, "20 N"),
                (say::GROWS_BY, "5 mm"),
                (say::MEASURED_LENGTH, "2 m"),
                (say::DIAMETER, "0.70 mm"),
            ],
        }
    }

    /// The label of a reading with the unit that a bare number of it is in.
    pub fn label(self, place: usize, units: &Units) -> String {
        let label = self.asked().get(place).map_or(Words::NONE, |asked| asked.0);
        let unit = if label == say::DIAMETER {
            if units.gauge == GaugeUnit::Thou { "in" } else { "mm" }
        } else if [say::LENGTH, say::MEASURED_LENGTH, say::GROWS_BY].contains(&label) {
            length_unit(units)
        } else if [say::LOADS, say::LOAD_ADDED].contains(&label) {
            force_unit(units)
        } else {
            ""
        };
        if unit.is_empty() { label.into() } else { format!("{label}, {unit}") }
    }

    /// The properties that it can give.
    pub const fn gives(self) -> &'static [Property] {
        match self {
            Self::Weighing => &[Property::Density],
            Self::Breaking => &[Property::Strength],
            Self::Stretching => &[Property::IntermediateModulus, Property::SlowModulus],
        }
    }

    /// What the readings say; bare numbers are in the units of the page.
    ///
    /// # Errors
    ///
    /// When a reading is missing or cannot be used.
    pub fn outcome(self, readings: &[String], units: &Units) -> Result<Outcome, TypedError> {
        let text = |place: usize| readings.get(place).map_or("", |text| text.trim());
        let size = |place| {
            let text = match units.gauge {
                GaugeUnit::Mm => typed::with_unit(text(place), "mm"),
                GaugeUnit::Thou => typed::gauge_kept(text(place), units.gauge),
            };
            typed::gauge(&text).map(|size| (size, text))
        };
        let length = |measure: &Measure, place| {
            let text = typed::with_unit(text(place), length_unit(units));
            measure.figure(&text).map(|mm| (Length::from_mm(mm), text))
        };
        match self {
            Self::Weighing if PER_METRE.is_unit_of(text(1)) => {
                let mass = LinearDensity::from_g_per_m(PER_METRE.figure(text(1))?);
                let (diameter, size_text) = size(2)?;
                let density = density_of_mass_per_metre(mass, diameter).to_kg_per_m3();
                Ok(Outcome {
                    words: format!("{} kg/m³", decimals(density, 0)),
                    text: format!("{density:.1}"),
                    source: say::weighed_source(&text(1), &size_text),
                    off_percent: None,
                })
            }
            Self::Weighing => {
                let (long, long_text) = length(&LENGTH, 0)?;
                let mass_text = typed::with_unit(text(1), "g");
                let mass = Mass::from_g(MASS.figure(&mass_text)?);
                let (diameter, size_text) = size(2)?;
                let error = |place, measure: &Measure| match text(place) {
                    "" => measure.figure(self.asked()[place].1),
                    text => measure.figure(text),
                };
                let off = density_error(
                    Reading { value: mass, error: Mass::from_g(error(4, &MASS_ERROR)?) },
                    Reading { value: long, error: Length::from_mm(error(3, &ERROR)?) },
                    Reading { value: diameter, error: Length::from_mm(error(5, &ERROR)?) },
                );
                let density = density_of_length(mass, long, diameter).to_kg_per_m3();
                let off = off.to_kg_per_m3();
                let percent = 100.0 * off / density;
                Ok(Outcome {
                    words: say::density_off(
                        &decimals(density, 0),
                        &decimals(off, 0),
                        &decimals(percent, 1),
                    ),
                    text: format!("{density:.1}"),
                    source: say::weighed_length_source(&long_text, &mass_text, &size_text),
                    off_percent: (off > 0.0).then(|| format!("{percent:.1}")),
                })
            }
            Self::Breaking => {
                let (diameter, size_text) = size(0)?;
                let loads = loads(text(1), units)?;
                let forces: Vec<Force> = loads.iter().map(|load| load.0).collect();
                let missing = TypedError::Empty {
                    what: say::OF_LOAD_AT_BREAK,
                    example: Words::plain(self.asked()[1].1),
                };
                let breaks = strength_of_breaks(&forces, diameter).ok_or(missing)?;
                let mpa = |stress: Stress| format!("{:.0}", stress.to_mpa());
                let least = mpa(breaks.least);
                let words = match breaks.deviation {
                    None => say::one_string(&least),
                    Some(deviation) => say::several_strings(
                        &loads.len(),
                        &mpa(deviation),
                        &least,
                        &mpa(breaks.mean),
                    ),
                };
                let least_load = loads.iter().min_by(|a, b| a.0.to_n().total_cmp(&b.0.to_n()));
                let load = least_load.map(|load| load.1.as_str()).unwrap_or_default();
                let count = loads.len();
                let source = say::breaking_source(&count, &load, &size_text);
                Ok(Outcome { words, text: least, source, off_percent: None })
            }
            Self::Stretching => {
                let load_text = typed::with_unit(text(0), force_unit(units));
                let load = typed::load(&load_text)?;
                let (stretch, stretch_text) = length(&STRETCH, 1)?;
                let (long, long_text) = length(&LENGTH, 2)?;
                let (diameter, size_text) = size(3)?;
                let gpa = modulus_of_stretch(load, stretch, long, diameter).to_gpa();
                let text = if gpa < 10.0 { format!("{gpa:.2}") } else { format!("{gpa:.1}") };
                Ok(Outcome {
                    words: format!("{} GPa", as_said(&text)),
                    text,
                    source: say::stretching_source(
                        &long_text,
                        &load_text,
                        &size_text,
                        &stretch_text,
                    ),
                    off_percent: None,
                })
            }
        }
    }
}

const fn length_unit(units: &Units) -> &'static str {
    match units.length {
        LengthUnit::Inch => "in",
        LengthUnit::Mm => "mm",
    }
}

fn force_unit(units: &Units) -> &'static str {
    match units.force {
        ForceUnit::Newton => "N",
        ForceUnit::Kgf => "kgf",
        ForceUnit::Lbf => "lbf",
    }
}

/// The loads between semicolons or on lines, each with its text.
fn loads(text: &str, units: &Units) -> Result<Vec<(Force, String)>, TypedError> {
    let pieces = text.split([';', '\n']).map(str::trim).filter(|piece| !piece.is_empty());
    let read = |piece: &str| {
        let text = typed::with_unit(piece, force_unit(units));
        typed::load(&text).map(|load| (load, text))
    };
    let loads = pieces.map(read).collect::<Result<Vec<_>, _>>()?;
    if loads.len() > MOST_BREAKS {
        let got = cut(&loads.len().to_string());
        let (what, unit, hint) = (say::OF_NUMBER_OF_LOADS, "", String::new());
        let (least, most) = (1.0, 50.0);
        return Err(TypedError::Range { what, least, most, unit, got, hint });
    }
    Ok(loads)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, in_language};

    fn outcome(trial: Trial, readings: &[&str]) -> Outcome {
        let readings: Vec<String> = readings.iter().map(|&text| text.to_owned()).collect();
        trial.outcome(&readings, &Units::default()).unwrap_or_else(|error| panic!("{error}"))
    }

    /// 12.3 g of 10 m are 1.23 g/m; 1.02 mm are 0.8171 mm²; 1.23/0.8171 = 1.505 g/cm³. Errors of
    /// 0.81 %, 0.01 % and 2 · 0.98 % make 2.1 %.
    #[test]
    fn weighing_gives_a_density_with_its_doubt_and_its_source() {
        let got = outcome(Trial::Weighing, &["10 m", "12,3", "1.02"]);
        assert_eq!(got.words, "1505 ± 32 kg/m³ (± 2.1 %)");
        assert_eq!(got.source, "weighed: 12,3 g of 10 m, 1.02 mm");
        assert_eq!(got.text, "1505.3");
        let exact = outcome(Trial::Weighing, &["10 m", "12.3", "1.02", "0", "0", "0"]);
        assert_eq!(exact.words, "1505 ± 0 kg/m³ (± 0.0 %)");
        let known = outcome(Trial::Weighing, &["", "1.23 g/m", "1.02"]);
        assert_eq!((known.text.as_str(), known.words.as_str()), ("1505.3", "1505 kg/m³"));
        assert_eq!(known.source, "weighed: 1.23 g/m, 1.02 mm");
    }

    #[test]
    fn the_sources_are_known_as_measured_in_every_language() {
        for language in Language::ALL {
            let sources = in_language(language, || {
                [
                    outcome(Trial::Weighing, &["10 m", "12.3", "1.02"]),
                    outcome(Trial::Weighing, &["", "1.23 g/m", "1.02"]),
                    outcome(Trial::Breaking, &["0.70", "121 N; 118; 120"]),
                    outcome(Trial::Stretching, &["20 N", "5 mm", "2 m", "0.70"]),
                ]
            });
            for Outcome { source, text, .. } in sources {
                assert!(MEASURED.iter().any(|start| source.starts_with(start)), "{source}");
                assert!(!text.contains(','), "{text}");
            }
        }
    }

    /// 0.70 mm are 0.38485 mm²; 118 N on them 306.6 MPa.
    #[test]
    fn of_several_breaks_the_least_is_used() {
        let got = outcome(Trial::Breaking, &["0.70", "121 N; 118; 120"]);
        assert_eq!(got.text, "307");
        assert_eq!(got.source, "breaking test: lowest of 3 strings, 118 N at 0.70 mm");
        assert!(got.words.starts_with("lowest 307 MPa of 3 strings (mean 311"), "{}", got.words);
        let one = outcome(Trial::Breaking, &["0.70", "12 kgf"]);
        assert!(one.words.contains("break several"), "{}", one.words);
    }

    /// 20 N on 0.38485 mm² are 51.97 MPa; 5 mm of 2 m are 0.25 %; 20.8 GPa.
    #[test]
    fn a_stretch_gives_a_modulus() {
        let got = outcome(Trial::Stretching, &["20", "5", "2 m", "0.70"]);
        assert_eq!(got.text, "20.8");
        assert_eq!(got.source, "stretch test: 20 N more, 5 mm of 2 m, 0.70 mm");
    }

    #[test]
    fn what_is_missing_or_out_of_reach_is_told() {
        let wrong = |trial: Trial, readings: &[&str]| {
            let readings: Vec<String> = readings.iter().map(|&text| text.to_owned()).collect();
            trial.outcome(&readings, &Units::default()).unwrap_err().to_string()
        };
        assert!(wrong(Trial::Weighing, &[]).starts_with("the length is missing"));
        assert!(wrong(Trial::Weighing, &["10 m", "a lot", "1"]).contains("got \"a lot\""));
        assert!(
            wrong(Trial::Breaking, &["0.7", " ; "]).starts_with("the load at break is missing")
        );
        assert!(wrong(Trial::Breaking, &["0.7", &"9;".repeat(60)]).contains("from 1 to 50"));
        assert!(wrong(Trial::Stretching, &["20", "0", "2 m", "0.7"]).contains("lengthening"));
    }
}
