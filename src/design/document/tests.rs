//! What is written of a word or a kind is read as the same.

use std::fmt::Debug;

use serde::Serialize;
use serde_json::Value;

use super::*;
use crate::design::reading::Json;

/// Each comes back, whatever was there before, and none is read from the same with a letter more.
fn come_back<T: Serialize + Json + Clone + PartialEq + Debug, const N: usize>(all: [T; N]) {
    for (one, before) in all.iter().flat_map(|one| all.iter().map(move |before| (one, before))) {
        let mut json = serde_json::to_value(one).unwrap();
        let changed = json.to_string().replacen("\":", "s\":", 1);
        let mut changed: Value = serde_json::from_str(&changed).unwrap();
        if let Value::String(word) = &mut changed {
            word.push('s');
        }
        let mut read = before.clone();
        read.take(&mut json).unwrap();
        assert_eq!(&read, one);
        assert!(read.take(&mut changed).is_err(), "{changed}");
    }
}

#[test]
fn every_word_comes_back() {
    use TemperamentSpec::*;
    come_back([
        Equal,
        Pythagorean,
        QuarterCommaMeantone,
        WerckmeisterThree,
        Vallotti,
        YoungTwo,
        JustOnC,
    ]);
    come_back([LengthUnit::Mm, LengthUnit::Inch]);
    come_back([GaugeUnit::Mm, GaugeUnit::Thou]);
    come_back([ForceUnit::Newton, ForceUnit::Kgf, ForceUnit::Lbf]);
    come_back([
        MechanismKind::None,
        MechanismKind::Lever,
        MechanismKind::SingleDisc,
        MechanismKind::DoubleDisc,
    ]);
    come_back([ServiceSpec::Heated, ServiceSpec::Covered, ServiceSpec::Outdoors]);
    come_back([SizesSpec::Own, SizesSpec::Proposed]);
    come_back([MeasuredSpec::Square, MeasuredSpec::AlongBoard]);
    come_back([DrivesSpec::Lengths, DrivesSpec::NeckCurve]);
    come_back([ClassSpec::Metal, ClassSpec::Polymer, ClassSpec::Natural]);
    come_back([WantsSpec::Stiffness, WantsSpec::Tension]);
    use StandingSpec::*;
    come_back([Seen, SecondHand, Computed, FromMemory, Own]);
}

#[test]
fn every_kind_comes_back_with_what_it_holds() {
    come_back([
        GapsSpec::UniformMm(13.5),
        GapsSpec::ZonesMm(vec![(1, 28.0), (4, 26.5)]),
        GapsSpec::EachMm(vec![14.0, 15.25]),
    ]);
    let steps = || vec![(0.4, 0.01), (1.0, 0.02)];
    come_back([
        ToleranceSpec::Mm(0.01),
        ToleranceSpec::Percent(2.5),
        ToleranceSpec::StepsMm(steps()),
    ]);
    come_back([
        StrengthSpec::Mpa(900.0),
        StrengthSpec::TableMmMpa(steps()),
        StrengthSpec::StepsMmMpa(steps()),
    ]);
    come_back([
        SparesSpec::None,
        SparesSpec::OneOfEachItem,
        SparesSpec::OneOfEachString,
        SparesSpec::Percent(12.5),
    ]);
}
