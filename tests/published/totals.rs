//! Whole harps against totals that were published.

use stringloft::design::document::{Design, MechanismKind, Units};
use stringloft::design::presets::{KINDS, OPEN_TUNINGS, SAMPLES, Wish};
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::{Analysis, analyse};
use stringloft::engine::units::Force;

use super::{assert_near, assert_prints, assert_within};

fn analysed(design: &Design) -> Analysis {
    analyse(&resolve(design).harp)
}

fn sample(key: &str) -> Analysis {
    let sample = SAMPLES.into_iter().find(|sample| sample.key == key);
    analysed(&sample.expect("a sample of the tests").design())
}

/// Source: R. Kemper, Structural Analysis of Folk Harps, 2005: about 900 lbf on a 36-string folk harp
/// at medium tension, single strings from 15 to 60 lbf. The room of 5 % is half of the last digit
/// that is printed, 900 lbf.
pub fn the_lever_harp_pulls_as_a_folk_harp_of_36_strings() {
    let total_lbf = sample("floor-36").total_tension.to_lbf();
    assert_near(total_lbf, 900.0, 0.05, "lbf");
    assert_prints(total_lbf / 36.0, 25.0, 5.0, "mean, lbf");
}

/// Sources: C. Waltham, Harp design and construction, Acoustics Today, Fall 2005, p. 45: 12 kN on the
/// soundboard of a concert harp of 47 strings; an encyclopaedia's article on the pedal harp: about a
/// ton-force, 10 kN.
pub fn the_pedal_harp_pulls_between_ten_and_twelve_kilonewtons() {
    assert_within(sample("pedal-47").total_tension.to_n(), 10_000.0..=12_000.0, "N");
}

/// Common practice, no source: a nylon lever harp of 34 strings pulls about 360 kgf in all.
pub fn a_suggested_harp_of_34_strings_pulls_as_nylon_harps_do() {
    let (low, high) = KINDS[0].compass(34).expect("a lever harp of 34 strings");
    let wish = Wish {
        kind: &KINDS[0],
        low,
        high,
        tuning: &OPEN_TUNINGS[0],
        mechanism: MechanismKind::Lever,
        wound_from: None,
        units: Units::default(),
    };
    let design = wish.strung().expect("a compass of 34 strings");
    assert_eq!(design.strings.len(), 34);
    let total = analysed(&design).total_tension;
    assert_near(total.to_n(), Force::from_kgf(360.0).to_n(), 0.15, "N");
}

/// Common practice, no source: strings work at a quarter to three quarters of their breaking load.
pub fn every_string_of_the_samples_works_at_a_quarter_to_three_quarters_of_its_load() {
    for sample in SAMPLES {
        for string in &analysed(&sample.design()).strings {
            let share = string.load_share_percent.expect("a complete sample");
            let what = format!("{} {}, %", sample.key, string.number);
            assert_within(share, 25.0..=75.0, what);
        }
    }
}
