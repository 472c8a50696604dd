//! The figures of a material as texts that are typed, and back: one list for the panel and the
//! edits.

use thiserror::Error;

use super::document::{
    ClassSpec, Fact, MaterialSpec, ModulusSpec, StandingSpec, StrengthSpec, ToleranceSpec,
};
use super::letters::small;
use super::library::{
    DENSITY_KG_PER_M3, DEVIATION_MM, DEVIATION_PERCENT, EXPANSION_E6_PER_K, LOSS_FACTOR,
    MODULUS_GPA, MaterialError, PER_STRESS, ROW_MM, STRENGTH_MPA, built_in, material_of,
};
use super::measure::{
    DENSITIES, LENGTHS_MM, Measure, NO_UNITS, PER_KELVIN, PERCENT, STRESSES_GPA, STRESSES_MPA,
    without_tail,
};
use super::number::{plain, take_number};
use super::trial::MEASURED;
use super::typed::{TypedError, cut};
use crate::words::{Language, Words, language, materials as say, typed};

/// The source of a figure for which none was written.
pub const BY_HAND: Words = crate::words::known::BY_HAND;
/// The second text of a strength by steps.
pub const STEPS: &str = "steps";

/// A property of a material that has a figure and a source.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Property {
    Density,
    DensitySpread,
    DiameterSpread,
    Modulus,
    IntermediateModulus,
    SlowModulus,
    Strength,
    Expansion,
    LossFactor,
}

/// What stands in the second field of a property.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Second {
    /// There is none.
    None,
    /// The rise of a modulus with the stress.
    Rise,
    /// What holds between the rows of a table.
    Between,
}

/// Why a typed figure cannot be used.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum FactError {
    /// A number that cannot be read or is out of reach.
    #[error(transparent)]
    Typed(#[from] TypedError),
    /// A row of a table.
    #[error("{}", say::wrong_row(.error, .number))]
    Row { number: usize, error: TypedError },
    /// A row of a table without its second number.
    #[error("{}", say::wrong_pair(.example, .got, .number, .what))]
    Pair { number: usize, what: Words, example: &'static str, got: String },
    /// A table that cannot be used.
    #[error(transparent)]
    Material(#[from] MaterialError),
}

const RISE: Measure = Measure {
    what: typed::RISE,
    example: Words::plain("39"),
    limits: PER_STRESS,
    unit: "times the stress",
    units: &[],
    proposed: &[],
};

const ROW: Measure = Measure {
    what: typed::ROW_DIAMETER,
    example: Words::plain("0.50"),
    limits: ROW_MM,
    unit: "mm",
    units: LENGTHS_MM,
    proposed: &["thou"],
};

const DEVIATION: Measure = Measure {
    what: typed::DIAMETER_DEVIATION,
    example: typed::DIAMETER_DEVIATION_LIKE,
    limits: DEVIATION_MM,
    unit: "mm",
    units: LENGTHS_MM,
    proposed: &["thou"],
};

impl Property {
    /// In the order in which a form shows them.
    pub const ALL: [Self; 9] = [
        Self::Density,
        Self::Strength,
        Self::Modulus,
        Self::IntermediateModulus,
        Self::SlowModulus,
        Self::DiameterSpread,
        Self::DensitySpread,
        Self::Expansion,
        Self::LossFactor,
    ];

    /// As a form calls it.
    pub const fn label(self) -> Words {
        match self {
            Self::Density => say::DENSITY,
            Self::DensitySpread => say::DENSITY_SPREAD,
            Self::DiameterSpread => say::DIAMETER_SPREAD,
            Self::Modulus => say::MODULUS,
            Self::IntermediateModulus => say::INTERMEDIATE_MODULUS,
            Self::SlowModulus => say::SLOW_MODULUS,
            Self::Strength => say::STRENGTH,
            Self::Expansion => say::EXPANSION,
            Self::LossFactor => say::LOSS_FACTOR,
        }
    }

    /// The unit of a bare number.
    pub const fn unit(self) -> Words {
        match self {
            Self::Density => Words::plain("kg/m³"),
            Self::DensitySpread => Words::plain("%"),
            Self::DiameterSpread => say::UNIT_MM_OR_PERCENT,
            Self::Modulus | Self::IntermediateModulus | Self::SlowModulus => Words::plain("GPa"),
            Self::Strength => Words::plain("MPa"),
            Self::Expansion => say::UNIT_MILLIONTHS,
            Self::LossFactor => Words::NONE,
        }
    }

    /// What the second field holds.
    pub const fn second(self) -> Second {
        match self {
            Self::Modulus | Self::IntermediateModulus | Self::SlowModulus => Second::Rise,
            Self::Strength => Second::Between,
            _ => Second::None,
        }
    }

    /// Whether the first field may hold a table of several lines.
    pub const fn is_table(self) -> bool {
        matches!(self, Self::Strength | Self::DiameterSpread)
    }

    fn measure(self) -> Measure {
        let like = Words::plain;
        let (what, example, limits, units) = match self {
            Self::Density => (typed::DENSITY, typed::DENSITY_LIKE, DENSITY_KG_PER_M3, DENSITIES),
            Self::DensitySpread => {
                (typed::DENSITY_DEVIATION, like("2"), DEVIATION_PERCENT, PERCENT)
            }
            Self::DiameterSpread => {
                (typed::DIAMETER_DEVIATION, like("2 %"), DEVIATION_PERCENT, PERCENT)
            }
            Self::Modulus | Self::IntermediateModulus | Self::SlowModulus => {
                (typed::MODULUS, like("4.5"), MODULUS_GPA, STRESSES_GPA)
            }
            Self::Strength => (typed::STRENGTH, typed::STRENGTH_LIKE, STRENGTH_MPA, STRESSES_MPA),
            Self::Expansion => (typed::EXPANSION, like("11.5"), EXPANSION_E6_PER_K, PER_KELVIN),
            Self::LossFactor => (typed::LOSS_FACTOR, like("0.02"), LOSS_FACTOR, NO_UNITS),
        };
        let unit = if self == Self::DiameterSpread { like("%") } else { self.unit() };
        let proposed: &[&str] = match self {
            Self::Density => &["g/cm³"],
            Self::Modulus | Self::IntermediateModulus | Self::SlowModulus => &["MPa", "ksi"],
            Self::Strength => &["GPa", "ksi"],
            _ => &[],
        };
        Measure { what, example, limits, unit: unit.said(), units, proposed }
    }

    /// The two texts that stand in its fields; empty where nothing is known.
    pub fn texts(self, spec: &MaterialSpec) -> [String; 2] {
        let number = |fact: &Option<Fact<f64>>| {
            [fact.as_ref().map(|fact| fact.value.to_string()).unwrap_or_default(), String::new()]
        };
        let modulus = |fact: &Option<Fact<ModulusSpec>>| match fact {
            None => Default::default(),
            Some(Fact { value, .. }) => [
                value.base_gpa.to_string(),
                if value.per_stress == 0.0 { String::new() } else { value.per_stress.to_string() },
            ],
        };
        match self {
            Self::Density => [spec.density_kg_per_m3.value.to_string(), String::new()],
            Self::DensitySpread => number(&spec.density_tolerance_percent),
            Self::Expansion => number(&spec.expansion_e6_per_k),
            Self::LossFactor => number(&spec.loss_factor),
            Self::Modulus => modulus(&spec.modulus),
            Self::IntermediateModulus => modulus(&spec.intermediate_modulus),
            Self::SlowModulus => modulus(&spec.slow_modulus),
            Self::DiameterSpread => {
                let text = match spec.diameter_tolerance.as_ref().map(|fact| &fact.value) {
                    None => String::new(),
                    Some(ToleranceSpec::Mm(mm)) => format!("{mm} mm"),
                    Some(ToleranceSpec::Percent(percent)) => format!("{percent} %"),
                    Some(ToleranceSpec::StepsMm(steps)) => lines(steps),
                };
                [text, String::new()]
            }
            Self::Strength => match spec.strength.as_ref().map(|fact| &fact.value) {
                None => Default::default(),
                Some(StrengthSpec::Mpa(mpa)) => [mpa.to_string(), String::new()],
                Some(StrengthSpec::TableMmMpa(rows)) => [lines(rows), String::new()],
                Some(StrengthSpec::StepsMmMpa(rows)) => [lines(rows), STEPS.to_owned()],
            },
        }
    }

    /// Its source, and how well it is known; `None` where nothing is known.
    pub fn source(self, spec: &MaterialSpec) -> Option<(&str, StandingSpec)> {
        fn of<T>(fact: &Option<Fact<T>>) -> Option<(&str, StandingSpec)> {
            fact.as_ref().map(|fact| (fact.source.as_str(), fact.standing))
        }
        match self {
            Self::Density => {
                Some((&spec.density_kg_per_m3.source, spec.density_kg_per_m3.standing))
            }
            Self::DensitySpread => of(&spec.density_tolerance_percent),
            Self::DiameterSpread => of(&spec.diameter_tolerance),
            Self::Modulus => of(&spec.modulus),
            Self::IntermediateModulus => of(&spec.intermediate_modulus),
            Self::SlowModulus => of(&spec.slow_modulus),
            Self::Strength => of(&spec.strength),
            Self::Expansion => of(&spec.expansion_e6_per_k),
            Self::LossFactor => of(&spec.loss_factor),
        }
    }

    /// The material with the figure that the texts say, by hand of the user. An empty first text makes
    /// the figure unknown. `source` is what the user wrote for it; `None` where that field was left
    /// alone: then a figure that is as it was keeps its source, and one typed back to the built-in
    /// figure gets the built-in source back.
    ///
    /// # Errors
    ///
    /// When the texts cannot be read, are out of reach, or the density is left out.
    pub fn typed(
        self,
        spec: &MaterialSpec,
        texts: [&str; 2],
        source: Option<&str>,
    ) -> Result<MaterialSpec, FactError> {
        let mut next = spec.clone();
        let first = built_in().iter().find(|other| other.key == spec.key);
        let given = !texts[0].trim().is_empty();
        let number = || given.then(|| self.measure().figure(texts[0])).transpose();
        let modulus = || given.then(|| self.modulus(texts)).transpose();
        match self {
            Self::Density => {
                let value = self.measure().figure(texts[0])?;
                let mut slot = Some(next.density_kg_per_m3);
                put(&mut slot, Some(value), source, first.map(|m| &m.density_kg_per_m3));
                next.density_kg_per_m3 = slot.unwrap_or_default();
            }
            Self::DensitySpread => put(
                &mut next.density_tolerance_percent,
                number()?,
                source,
                first.and_then(|m| m.density_tolerance_percent.as_ref()),
            ),
            Self::Expansion => put(
                &mut next.expansion_e6_per_k,
                number()?,
                source,
                first.and_then(|m| m.expansion_e6_per_k.as_ref()),
            ),
            Self::LossFactor => put(
                &mut next.loss_factor,
                number()?,
                source,
                first.and_then(|m| m.loss_factor.as_ref()),
            ),
            Self::Modulus => {
                let before = first.and_then(|m| m.modulus.as_ref());
                put(&mut next.modulus, modulus()?, source, before);
            }
            Self::IntermediateModulus => {
                let before = first.and_then(|m| m.intermediate_modulus.as_ref());
                put(&mut next.intermediate_modulus, modulus()?, source, before);
            }
            Self::SlowModulus => {
                let before = first.and_then(|m| m.slow_modulus.as_ref());
                put(&mut next.slow_modulus, modulus()?, source, before);
            }
            Self::DiameterSpread => {
                let value = given.then(|| self.spread(texts[0])).transpose()?;
                let before = first.and_then(|m| m.diameter_tolerance.as_ref());
                put(&mut next.diameter_tolerance, value, source, before);
            }
            Self::Strength => {
                let value = given.then(|| self.strength(texts)).transpose()?;
                let before = first.and_then(|m| m.strength.as_ref());
                put(&mut next.strength, value, source, before);
            }
        }
        material_of(&next)?;
        Ok(next)
    }

    fn modulus(self, texts: [&str; 2]) -> Result<ModulusSpec, FactError> {
        let base_gpa = self.measure().figure(texts[0])?;
        let rise = texts[1].trim();
        let per_stress = if rise.is_empty() { 0.0 } else { RISE.figure(rise)? };
        Ok(ModulusSpec { base_gpa, per_stress })
    }

    fn strength(self, texts: [&str; 2]) -> Result<StrengthSpec, FactError> {
        let measure = self.measure();
        let all = rows(texts[0]);
        if let [line] = all.as_slice()
            && split(line).is_none_or(|(_, rest)| rest.is_empty())
        {
            return Ok(StrengthSpec::Mpa(measure.figure(line)?));
        }
        let pairs = pairs(&all, &measure, say::A_STRENGTH, "0.50 310")?;
        Ok(if texts[1] == STEPS {
            StrengthSpec::StepsMmMpa(pairs)
        } else {
            StrengthSpec::TableMmMpa(pairs)
        })
    }

    fn spread(self, text: &str) -> Result<ToleranceSpec, FactError> {
        let measure = self.measure();
        let all = rows(text);
        match all.as_slice() {
            [line] if measure.is_unit_of(line) => Ok(ToleranceSpec::Percent(measure.figure(line)?)),
            [line] if split(line).is_none_or(|(_, rest)| rest.is_empty()) => {
                Ok(ToleranceSpec::Mm(DEVIATION.figure(line)?))
            }
            _ => {
                Ok(ToleranceSpec::StepsMm(pairs(&all, &DEVIATION, say::A_DEVIATION, "0.50 0.01")?))
            }
        }
    }
}

/// A label inside a sentence: German nouns keep their capital.
pub fn inside(label: Words) -> String {
    match language() {
        Language::German => label.into(),
        _ => small(label.said()),
    }
}

/// The words for how well a figure is known.
pub const fn known(standing: StandingSpec) -> Words {
    match standing {
        StandingSpec::Seen => say::SEEN,
        StandingSpec::SecondHand => say::SECOND_HAND,
        StandingSpec::Computed => say::COMPUTED,
        StandingSpec::FromMemory => say::FROM_MEMORY,
        StandingSpec::Own => say::ENTERED,
    }
}

/// The kinds of material, each with its short name and its words.
pub const CLASSES: [(ClassSpec, &str, Words); 3] = [
    (ClassSpec::Metal, "metal", say::METAL),
    (ClassSpec::Polymer, "polymer", say::POLYMER),
    (ClassSpec::Natural, "natural", say::NATURAL),
];

fn put<T: PartialEq + Clone>(
    slot: &mut Option<Fact<T>>,
    value: Option<T>,
    source: Option<&str>,
    first: Option<&Fact<T>>,
) {
    let Some(value) = value else {
        *slot = None;
        return;
    };
    let written = match source.map(str::trim) {
        Some("") => Some(BY_HAND.english()),
        other => other,
    };
    let same = slot.as_ref().is_some_and(|fact| fact.value == value);
    let source = match (written, slot.as_ref(), first) {
        (None, Some(_), _) if same => return,
        (Some(written), Some(fact), _) if same && fact.source == written => return,
        (None, _, Some(first)) if first.value == value => {
            *slot = Some(first.clone());
            return;
        }
        (None, Some(fact), _)
            if fact.standing == StandingSpec::Own
                && !MEASURED.iter().any(|start| fact.source.starts_with(start)) =>
        {
            fact.source.clone()
        }
        (written, ..) => written.unwrap_or(BY_HAND.english()).to_owned(),
    };
    *slot = Some(Fact { value, source, standing: StandingSpec::Own });
}

fn lines(rows: &[(f64, f64)]) -> String {
    let lines: Vec<String> = rows.iter().map(|(mm, value)| format!("{mm} {value}")).collect();
    lines.join("\n")
}

/// The rows of a table: lines, or what stands between semicolons.
fn rows(text: &str) -> Vec<&str> {
    text.split(['\n', ';']).map(str::trim).filter(|line| !line.is_empty()).collect()
}

/// The number of a row's diameter in millimetres, and the rest; `None` when there is no number.
fn split(line: &str) -> Option<(f64, String)> {
    let typed = plain(line);
    let (number, rest) = take_number(&typed)?;
    let end = rest.find(|c: char| c.is_ascii_digit() || c == '.' || c == '-').unwrap_or(rest.len());
    let (unit, rest) = rest.split_at(end);
    let unit = unit.trim_matches(|c: char| c.is_whitespace() || matches!(c, ':' | '=' | ','));
    match ROW.in_unit(number, unit) {
        Some(mm) => Some((mm, rest.to_owned())),
        None => Some((f64::NAN, String::new())),
    }
}

fn pairs(
    lines: &[&str],
    second: &Measure,
    what: Words,
    example: &'static str,
) -> Result<Vec<(f64, f64)>, FactError> {
    let mut pairs = Vec::new();
    for (index, line) in lines.iter().enumerate() {
        let number = index + 1;
        let wrong = || FactError::Pair { number, what, example, got: cut(line) };
        let (mm, rest) = split(line).filter(|pair| !pair.1.is_empty()).ok_or_else(wrong)?;
        let row = |error| FactError::Row { number, error };
        let mm = ROW.figure(&without_tail(mm).to_string()).map_err(row)?;
        pairs.push((mm, second.figure(&rest).map_err(row)?));
    }
    Ok(pairs)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn built(key: &str) -> MaterialSpec {
        built_in().iter().find(|material| material.key == key).unwrap().clone()
    }

    fn typed(property: Property, first: &str, second: &str) -> Result<MaterialSpec, String> {
        property.typed(&built("nylon"), [first, second], None).map_err(|error| error.to_string())
    }

    #[test]
    fn every_built_in_figure_is_read_back_from_its_own_text() {
        for material in built_in() {
            for property in Property::ALL {
                let texts = property.texts(material);
                let back = property.typed(material, [&texts[0], &texts[1]], None).unwrap();
                assert_eq!(back, *material, "{} {property:?}", material.key);
            }
        }
    }

    #[test]
    fn figures_are_read_with_their_units() {
        let density = |text| typed(Property::Density, text, "").unwrap().density_kg_per_m3.value;
        for text in ["1150", "1,15 g/cm³", "1.15 g/cm3", "1150 kg/m^3", "1.15 kg/l"] {
            assert_eq!(density(text), 1150.0, "{text}");
        }
        let modulus =
            |a, b| typed(Property::SlowModulus, a, b).unwrap().slow_modulus.unwrap().value;
        assert_eq!(modulus("2500 MPa", ""), ModulusSpec { base_gpa: 2.5, per_stress: 0.0 });
        assert_eq!(modulus("2.5", "40"), ModulusSpec { base_gpa: 2.5, per_stress: 40.0 });
        let strength = |a, b| typed(Property::Strength, a, b).unwrap().strength.unwrap().value;
        assert_eq!(strength("300 N/mm²", ""), StrengthSpec::Mpa(300.0));
        let rows = vec![(0.5, 310.0), (1.0, 290.0)];
        for text in ["0.5 310\n1.0 290", "0,5: 310; 1: 290", "0.5 mm\t310 MPa\n1 mm = 0.29 GPa\n"] {
            assert_eq!(strength(text, ""), StrengthSpec::TableMmMpa(rows.clone()), "{text}");
            assert_eq!(strength(text, STEPS), StrengthSpec::StepsMmMpa(rows.clone()), "{text}");
        }
        let spread = |text| {
            typed(Property::DiameterSpread, text, "").unwrap().diameter_tolerance.unwrap().value
        };
        assert_eq!(spread("0.01"), ToleranceSpec::Mm(0.01));
        assert_eq!(spread("1 thou"), ToleranceSpec::Mm(0.0254));
        assert_eq!(spread("2 %"), ToleranceSpec::Percent(2.0));
        assert_eq!(
            spread("0.5 0.005; 1 0.01"),
            ToleranceSpec::StepsMm(vec![(0.5, 0.005), (1.0, 0.01)])
        );
    }

    #[test]
    fn what_cannot_be_used_says_what_is_wrong_and_what_to_do() {
        for (property, first, second, expected) in [
            (Property::Density, "", "", "the density is missing (write it like"),
            (Property::Density, "1.14", "", "(did you mean 1.14 g/cm³?)"),
            (Property::Density, "heavy", "", "must be a number with a unit or none, got \"heavy\""),
            (Property::Density, "NaN", "", "got \"NaN\""),
            (Property::Strength, "1e9", "", "got \"1e9\""),
            (Property::Strength, "0.5 310; 1.0", "", "row 2 must hold a diameter and a strength"),
            (Property::Strength, "0.5 310; 0.4 300", "", "must rise"),
            (Property::Strength, "0.5 310; 0.6 99999", "", "row 2: the strength must be from"),
            (Property::Modulus, "4.5", "-1", "rise with the stress"),
            (Property::LossFactor, "2", "", "from 0 to 1"),
            (Property::DiameterSpread, "60 %", "", "from 0 to 50 %"),
        ] {
            let error = typed(property, first, second).unwrap_err();
            assert!(error.contains(expected), "{property:?} {first:?}: {error}");
        }
        let many = "0.5 310\n".repeat(201);
        assert!(typed(Property::Strength, &many, "").unwrap_err().contains("1 to 200 rows"));
    }

    #[test]
    fn a_change_is_the_users_own_and_has_a_source() {
        let nylon = built("nylon");
        let own = typed(Property::Density, "1150", "").unwrap();
        assert_eq!(Property::Density.source(&own), Some((BY_HAND.english(), StandingSpec::Own)));
        let back = Property::Density.typed(&own, ["1140", ""], None).unwrap();
        assert_eq!(back, nylon, "the built-in figure brings its source back");
        let noted = Property::Density.typed(&nylon, ["1140", ""], Some(" my scales ")).unwrap();
        assert_eq!(Property::Density.source(&noted), Some(("my scales", StandingSpec::Own)));
        let next = Property::Density.typed(&noted, ["1145", ""], None).unwrap();
        assert_eq!(Property::Density.source(&next), Some(("my scales", StandingSpec::Own)));
        let empty = Property::Density.typed(&noted, ["1140", ""], Some("")).unwrap();
        assert_eq!(Property::Density.source(&empty), Some((BY_HAND.english(), StandingSpec::Own)));
        let weighed = Some("weighed: 12.3 g of 10 m, 1.02 mm");
        let weighed = Property::Density.typed(&nylon, ["1505.3", ""], weighed).unwrap();
        let by_hand = Property::Density.typed(&weighed, ["1500", ""], None).unwrap();
        assert_eq!(
            Property::Density.source(&by_hand),
            Some((BY_HAND.english(), StandingSpec::Own))
        );
        let unknown = typed(Property::Strength, " ", "").unwrap();
        assert_eq!((unknown.strength.clone(), Property::Strength.source(&unknown)), (None, None));
    }
}
