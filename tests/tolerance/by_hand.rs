//! What single tolerances do, worked out by hand.

use std::f64::consts::{FRAC_PI_4, LN_2};
use std::sync::Arc;

use stringloft::engine::analysis::{Harp, Unknown, analyse};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::figure::Figure;
use stringloft::engine::material::{Material, Sourced, Standing, Strength, Tolerance};
use stringloft::engine::tolerance::{Cause, Spread, spreads, spreads_of_all};
use stringloft::engine::units::{LinearDensity, Stress};

use super::{harp, material, mm, plain, samples};

fn stated<T>(value: T) -> Option<Sourced<T>> {
    Some(Sourced { value, source: "as the test states".to_owned(), standing: Standing::Own })
}

fn made_of(material: Material, diameter_mm: f64) -> MakeUp {
    MakeUp::plain(Arc::new(material), mm(diameter_mm)).expect("the sample can be made")
}

/// The spread of a figure of the only string, and its value.
fn spread(harp: &Harp, figure: Figure) -> (Spread, f64) {
    let value = figure.value(&analyse(harp).strings[0]).expect("the figure is known");
    let spread = spreads(&harp.strings[0], harp).of(figure).expect("the figure has a spread");
    (spread, value)
}

#[track_caller]
fn assert_close(actual: f64, wanted: f64, relative: f64) {
    assert!((actual - wanted).abs() <= relative * wanted.abs(), "got {actual}, wanted {wanted}");
}

/// Worked out: `T = π/4 ρ d² (2 L f)²` of a flexible string. 2 cents are a share of 2 ln 2/1200.
#[test]
fn the_pull_goes_twice_with_gauge_length_and_pitch_and_once_with_density() {
    let mut flexible = (*material("nylon")).clone();
    flexible.modulus = None;
    flexible.diameter_tolerance = stated(Tolerance::Constant(mm(0.008)));
    flexible.density_tolerance_ratio = stated(0.03);
    let harp = harp(made_of(flexible, 0.8), 400.0, 440.0);
    let (by, pull_n) = spread(&harp, Figure::Tension);
    let shares = [2.0 * 0.008 / 0.8, 0.03, 2.0 * 1.0 / 400.0, 2.0 * 2.0 * LN_2 / 1200.0, 0.0, 0.0];
    for (cause, share) in Cause::ALL.into_iter().zip(shares) {
        // The square of a hundredth adds an eighth of a ten-thousandth.
        assert_close(by.by(cause) / pull_n, share, 2e-5);
    }
    let squares: f64 = shares.iter().map(|share| share * share).sum();
    assert_close(by.total / pull_n, squares.sqrt(), 2e-5);
    // The worse side of a square is more by the square of the share: a hundredth squared, and less.
    assert_close(by.worst / pull_n, shares.iter().sum(), 3e-3);
}

/// Source: ASTM A228, the diameter tolerances of its inch table, as reproduced by a wire merchant; the
/// effect on the pull worked out from them as `2 Δd/d` and printed to a tenth of a per cent. The strings are
/// so long that stiffness takes nothing from it.
#[test]
fn the_tolerance_of_music_wire_moves_the_pull_as_worked_out_from_the_standard() {
    for (inch, percent) in [(0.010, 4.0), (0.020, 3.0), (0.040, 2.0), (0.063, 1.3)] {
        let harp = harp(plain("steel", 25.4 * inch), 1500.0, 110.0);
        let (by, pull_n) = spread(&harp, Figure::Tension);
        let got = 100.0 * by.by(Cause::Diameter) / pull_n;
        assert!((got - percent).abs() <= 0.05, "{inch} in: {got} %, worked out {percent} %");
    }
}

/// Worked out: pull and breaking load both go with the square of the diameter.
#[test]
fn a_thicker_string_bears_more_as_it_pulls_more() {
    let mut flexible = (*material("nylon")).clone();
    flexible.modulus = None;
    let harp = harp(made_of(flexible, 0.8), 400.0, 440.0);
    let (by, percent) = spread(&harp, Figure::LoadShare);
    assert!(by.by(Cause::Diameter) < 1e-12 * percent);
    let (by, load_n) = spread(&harp, Figure::BreakingLoad);
    assert_close(by.by(Cause::Diameter) / load_n, 2.0 * 0.005 / 0.8, 1e-5);
}

/// Worked out: `ΔT = E A (α − α_frame) θ`; the frame of the sample takes 4 of the 12 millionths. Stiffness
/// makes the two ways differ by some ten-thousandths.
#[test]
fn five_kelvins_of_warmth_take_what_the_wire_expands() {
    let harp = harp(plain("steel", 0.4), 600.0, 440.0);
    let (by, _) = spread(&harp, Figure::Tension);
    let area_m2 = FRAC_PI_4 * 0.4e-3 * 0.4e-3;
    assert_close(by.by(Cause::Temperature), 206e9 * area_m2 * 8e-6 * 5.0, 1e-3);
    let (by, cents) = spread(&harp, Figure::CentsPerKelvin);
    assert!(by.total > 0.0 && cents < 0.0);
    let (by, hz) = spread(&harp, Figure::Frequency);
    assert_close(by.by(Cause::Temperature) / hz, 5.0 * cents.abs() * LN_2 / 1200.0, 1e-4);
    assert_close(by.by(Cause::Pitch) / hz, 2.0 * LN_2 / 1200.0, 1e-5);
    for figure in [Figure::Stretch, Figure::PinTurns] {
        let (by, _) = spread(&harp, figure);
        assert!(by.by(Cause::Temperature) == 0.0, "{figure:?} is of the day of tuning");
    }
}

#[test]
fn where_no_drift_is_known_it_is_said_and_counts_as_nothing() {
    for (what, harp) in samples() {
        let spreads = spreads(&harp.strings[0], &harp);
        assert_eq!(spreads.without_temperature, ["nylon", "gut"].contains(&what), "{what}");
        let pull = spreads.of(Figure::Tension).expect("known");
        assert_eq!(pull.by(Cause::Temperature) == 0.0, spreads.without_temperature, "{what}");
    }
}

/// Worked out: parts of one material are off together, those of two materials by squares.
#[test]
fn parts_of_one_material_are_off_together() {
    let section = Section::Round { diameter: mm(0.4) };
    let wound = |wrap: &str| {
        let layer = Layer { material: material(wrap), section, packing_ratio: 1.0 };
        let none = (mm(0.0), mm(0.0));
        let make_up = MakeUp::wound(material("steel"), mm(0.8), vec![layer], none);
        harp(make_up.expect("the sample can be made"), 1200.0, 65.0)
    };
    let (by, g_per_m) = spread(&wound("steel"), Figure::LinearDensity);
    assert_close(by.by(Cause::Density) / g_per_m, 0.004, 1e-9);
    let (by, g_per_m) = spread(&wound("bronze"), Figure::LinearDensity);
    let core = 7.85 * FRAC_PI_4 * 0.8 * 0.8;
    // Phosphor bronze states none, so that the usual 1 % counts.
    assert_close(by.by(Cause::Density), (0.004 * core).hypot(0.01 * (g_per_m - core)), 1e-9);
}

#[test]
fn a_plain_string_that_was_weighed_has_one_diameter() {
    let weighed = |gauge_mm: f64| {
        let core = Some((material("steel"), mm(0.65)));
        let mass = LinearDensity::from_g_per_m(2.6);
        let make_up = MakeUp::weighed(mass, core, Some(mm(gauge_mm)), None);
        harp(make_up.expect("the sample can be made"), 1100.0, 110.0)
    };
    let steel_mm = 0.0003 * 25.4;
    let (by, _) = spread(&weighed(0.65), Figure::Gauge);
    assert_close(by.total, steel_mm, 1e-9);
    let (by, _) = spread(&weighed(1.5), Figure::Gauge);
    assert_close(by.total, 0.01, 1e-9);
    let (by, _) = spread(&weighed(1.5), Figure::Core);
    assert_close(by.total, steel_mm, 1e-9);
    let (by, _) = spread(&weighed(1.5), Figure::LinearDensity);
    assert_close(by.total, 0.026, 1e-9);
}

/// Worked out: at the thin end of the table only a thicker wire has a strength.
#[test]
fn at_the_end_of_a_table_the_other_side_counts() {
    let at = |mm_thick: f64, mpa: f64| (mm(mm_thick), Stress::from_mpa(mpa));
    let wire = |rows: Vec<_>| {
        let mut wire = (*material("steel")).clone();
        wire.diameter_tolerance = stated(Tolerance::Constant(mm(0.01)));
        wire.strength = stated(Strength::Table(rows));
        harp(made_of(wire, 0.5), 600.0, 300.0)
    };
    let (by, load_n) = spread(&wire(vec![at(0.5, 2000.0), at(1.0, 2000.0)]), Figure::BreakingLoad);
    assert_close(by.by(Cause::Diameter) / load_n, 1.02 * 1.02 - 1.0, 1e-9);
    let lonely = wire(vec![at(0.5, 2000.0)]);
    let spreads = spreads(&lonely.strings[0], &lonely);
    assert!(analyse(&lonely).strings[0].breaking_load.is_ok());
    assert_eq!(spreads.of(Figure::BreakingLoad), Err(Unknown::OutOfReach));
    assert!(spreads.of(Figure::Tension).is_ok());
}

#[test]
fn what_is_not_known_says_why_it_has_no_spread() {
    let mut harp = harp(plain("gut", 1.0), 600.0, 196.0);
    harp.strings.push(harp.strings[0].clone());
    harp.strings[1].length = Err(Unknown::Length);
    harp.strings.push(harp.strings[0].clone());
    harp.strings[2].make_up = Err(Unknown::MakeUp);
    let analysis = analyse(&harp);
    for (spreads, figures) in spreads_of_all(&harp).iter().zip(&analysis.strings) {
        for figure in Figure::ALL {
            assert_eq!(spreads.of(figure).err(), figure.value(figures).err(), "{figure:?}");
        }
    }
}

#[test]
fn no_tolerance_brings_a_spread_that_is_no_number() {
    for odd in [0.0, -1.0, 1e-300, 0.9, 1.0, 1e9, 1e300, f64::INFINITY, f64::NAN] {
        for (what, mut harp) in samples() {
            let off = &mut harp.conditions.tolerances;
            (off.length, off.diameter) = (mm(odd), mm(odd));
            (off.pitch_cents, off.temperature_k, off.density_ratio) = (odd, odd, odd);
            let spreads = spreads(&harp.strings[0], &harp);
            for figure in Figure::ALL {
                let Ok(spread) = spreads.of(figure) else { continue };
                let numbers = spread.causes.iter().chain([&spread.total, &spread.worst]);
                assert!(numbers.into_iter().all(|n| n.is_finite() && *n >= 0.0), "{what}, {odd}");
            }
        }
    }
}
