//! Whole rows of figures that were worked out by hand from the formulas, apart from this code, on inputs
//! chosen for it: no publication, and no real harp.
//!
//! Their tensions are those of the flexible string, `T = 4 L² f² μ`. The engine tunes the stiff one, whose
//! pull is less by the factor `1 + B`: the tests hold it to both.

use std::f64::consts::LN_2;

use stringloft::engine::analysis::{
    Conditions, Harp, HarpString, Limits, Mechanism, StringFigures, Unknown, analyse,
};
use stringloft::engine::construction::MakeUp;
use stringloft::engine::material::Modulus;
use stringloft::engine::mechanics::{
    Core, bare_end_inharmonicity, impedance, inharmonicity, partial_cents, pluck_stiffness,
    semitones_to_break, stress, tension,
};
use stringloft::engine::pitch::Tuning;
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity, Stiffness, Stress};

use super::windings::usual_sum;
use super::{assert_prints, assert_same, assert_within, material_of, plain};

/// A note in equal temperament, with what is given and what was worked out.
type Flexible = (&'static str, [f64; 3], [f64; 4]);

/// Length in m, diameter in mm, density in kg/m³; then mass in g/m, tension in N, stress in `MPa`, and tension
/// over length in N/m.
const FLEXIBLE: [Flexible; 6] = [
    ("A4", [0.450, 0.70, 1150.0], [0.44257, 69.402, 180.34, 154.2]),
    ("C4", [0.360, 0.81, 1150.0], [0.59259, 21.027, 40.81, 58.4]),
    ("C4", [0.620, 1.00, 1150.0], [0.90321, 95.059, 121.03, 153.3]),
    ("C3", [1.018, 2.20, 1300.0], [4.94173, 350.538, 92.21, 344.3]),
    ("G2", [0.800, 1.20, 8530.0], [9.64720, 237.183, 209.72, 296.5]),
    ("F6", [0.110, 0.64, 1150.0], [0.36995, 34.941, 108.61, 317.6]),
];

pub fn flexible_strings_pull_what_was_worked_out() {
    for (name, [metres, d_mm, kg_per_m3], [g_per_m, pull_n, mpa, n_per_m]) in FLEXIBLE {
        let (length, diameter) = (Length::from_m(metres), Length::from_mm(d_mm));
        let density = plain(&material_of(kg_per_m3, 1.0, 300.0), diameter).linear_density();
        let note = name.parse().expect("the table names a note");
        let pull = tension(density, length, Tuning::default().frequency(note), None);
        let what = format!("{name} on {metres} m");
        assert_prints(density.to_g_per_m(), g_per_m, 1e-5, &what);
        assert_prints(pull.to_n(), pull_n, 1e-3, &what);
        assert_prints(stress(pull, diameter).to_mpa(), mpa, 0.01, &what);
        // In the middle the finger meets four times tension over length.
        let middle = pluck_stiffness(pull, length, 0.5).to_n_per_m();
        assert_prints(middle / 4.0, n_per_m, 0.1, &what);
    }
}

/// A row that was worked out for a stiff plain string.
struct Row {
    what: &'static str,
    kg_per_m3: f64,
    gpa: f64,
    d_mm: f64,
    metres: f64,
    hz: f64,
    g_per_m: f64,
    flexible_n: f64,
    mpa: f64,
    /// B and the worth of its last digit.
    b: (f64, f64),
    partial_10_cents: f64,
    kg_per_s: f64,
    /// Four times tension over length.
    middle_n_per_m: f64,
}

const STIFF: [Row; 4] = [
    Row {
        what: "steel",
        kg_per_m3: 7850.0,
        gpa: 207.0,
        d_mm: 0.3048,
        metres: 0.200,
        hz: 1046.502,
        g_per_m: 0.57278,
        flexible_n: 100.367,
        mpa: 1375.53,
        b: (2.1560e-4, 1e-8),
        partial_10_cents: 18.28,
        kg_per_s: 0.23977,
        middle_n_per_m: 2007.3,
    },
    Row {
        what: "nylon",
        kg_per_m3: 1140.0,
        gpa: 11.41,
        d_mm: 1.000,
        metres: 0.448,
        hz: 440.0,
        g_per_m: 0.89535,
        flexible_n: 139.161,
        mpa: 177.18,
        b: (1.9792e-4, 1e-8),
        partial_10_cents: 16.79,
        kg_per_s: 0.35298,
        middle_n_per_m: 1242.5,
    },
    Row {
        what: "gut",
        kg_per_m3: 1300.0,
        gpa: 6.0,
        d_mm: 1.500,
        metres: 0.700,
        hz: 220.0,
        g_per_m: 2.29729,
        flexible_n: 217.930,
        mpa: 123.32,
        b: (1.3781e-4, 1e-8),
        partial_10_cents: 11.73,
        kg_per_s: 0.70757,
        middle_n_per_m: 1245.3,
    },
    Row {
        what: "bronze",
        kg_per_m3: 8860.0,
        gpa: 110.0,
        d_mm: 0.700,
        metres: 0.900,
        hz: 130.813,
        g_per_m: 3.40973,
        flexible_n: 189.046,
        mpa: 491.23,
        b: (8.3561e-5, 1e-9),
        partial_10_cents: 7.13,
        kg_per_s: 0.80287,
        middle_n_per_m: 840.2,
    },
];

pub fn every_figure_of_a_row_is_the_one_worked_out() {
    for row in &STIFF {
        let (length, diameter) = (Length::from_m(row.metres), Length::from_mm(row.d_mm));
        let density = plain(&material_of(row.kg_per_m3, row.gpa, 300.0), diameter).linear_density();
        assert_prints(density.to_g_per_m(), row.g_per_m, 1e-5, row.what);
        let pull = tension(density, length, Frequency::from_hz(row.hz), None);
        assert_prints(pull.to_n(), row.flexible_n, 1e-3, row.what);
        assert_prints(stress(pull, diameter).to_mpa(), row.mpa, 0.01, row.what);
        let modulus = Modulus::constant(Stress::from_gpa(row.gpa));
        let b = inharmonicity(Core { diameter, modulus }, length, pull);
        assert_prints(b, row.b.0, row.b.1, row.what);
        assert_prints(partial_cents(b, 10), row.partial_10_cents, 0.01, row.what);
        assert_prints(impedance(pull, density).to_kg_per_s(), row.kg_per_s, 1e-5, row.what);
        let middle = pluck_stiffness(pull, length, 0.5).to_n_per_m();
        assert_prints(middle, row.middle_n_per_m, 0.1, row.what);
    }
}

/// The same strings through the whole analysis: the pull is the printed one over `1 + B`, where B is that
/// of the stiff string; all else follows from that pull.
pub fn the_analysis_tunes_the_stiff_string() {
    for row in &STIFF {
        let make_up = plain(&material_of(row.kg_per_m3, row.gpa, 300.0), Length::from_mm(row.d_mm));
        let figures = figures_of(make_up, row.metres, row.hz);
        let pull = figures.tension.expect("a tension").to_n();
        let b = figures.inharmonicity_b.expect("a modulus is given");
        assert_prints(pull * (1.0 + b), row.flexible_n, 1e-3, row.what);
        // B goes as 1/T, so it is greater than the printed one by the same share.
        assert_prints(b / (1.0 + b), row.b.0, row.b.1, row.what);
        let middle = figures.pluck_stiffness.expect("a pluck point is given").to_n_per_m();
        assert_prints(middle * (1.0 + b), row.middle_n_per_m, 0.1, row.what);
        assert_within(pull, 0.0..=row.flexible_n, row.what);
        assert_within(b, row.b.0..=1.0, row.what);
    }
}

/// Worked out: steel of 207 `GPa`, 0.500 mm, 0.500 m, 440 Hz: 298.404 N flexible, B = 8.4019e-5, the tenth
/// partial 7.24 cents sharp of ten times the flexible string's pitch (7.26 by the first order).
pub fn the_tenth_partial_of_half_a_metre_of_steel() {
    let (length, diameter) = (Length::from_m(0.5), Length::from_mm(0.5));
    let density = plain(&material_of(7850.0, 207.0, 2000.0), diameter).linear_density();
    let pull = tension(density, length, Frequency::from_hz(440.0), None);
    assert_prints(pull.to_n(), 298.404, 1e-3, "N");
    let modulus = Modulus::constant(Stress::from_gpa(207.0));
    let b = inharmonicity(Core { diameter, modulus }, length, pull);
    assert_prints(b, 8.4019e-5, 1e-9, "B");
    let of_the_first = 600.0 * (1.0 + b).log2();
    assert_prints(partial_cents(b, 10) + of_the_first, 7.24, 0.01, "tenth partial");
    assert_prints(1200.0 * (50.0 * b).ln_1p() / LN_2, 7.26, 0.01, "by the first order");
}

/// Worked out: 0.60 mm steel core of 207 `GPa` with 0.25 mm copper over it, 1.200 m at 65.406 Hz. The mass,
/// 6.90174 g/m, is that of the usual sum for close turns (the helix gives more, see `windings.rs`), so it goes
/// in, unrounded, as a weighed string. 170.065 N flexible, 601.48 `MPa` in the core, B of the core 5.3072e-5; each bare end
/// of 10 mm adds 2.583e-6, of 30 mm 6.975e-5.
pub fn a_wound_string_pulls_on_its_core_alone() {
    let (length, core_diameter) = (Length::from_m(1.2), Length::from_mm(0.6));
    let density = LinearDensity::from_g_per_m(usual_sum(0.60, 8930.0, 0.25));
    assert_prints(density.to_g_per_m(), 6.90174, 1e-5, "g/m");
    let pull = tension(density, length, Frequency::from_hz(65.406), None);
    assert_prints(pull.to_n(), 170.065, 1e-3, "N");
    assert_prints(stress(pull, core_diameter).to_mpa(), 601.48, 0.01, "MPa");
    let modulus = Modulus::constant(Stress::from_gpa(207.0));
    let b = inharmonicity(Core { diameter: core_diameter, modulus }, length, pull);
    assert_prints(b, 5.3072e-5, 1e-9, "B of the core");

    let steel = material_of(7850.0, 207.0, 2000.0);
    let core = plain(&steel, core_diameter).linear_density();
    let ratio = core.to_g_per_m() / density.to_g_per_m();
    let end = |mm: f64| bare_end_inharmonicity(Length::from_mm(mm), length, ratio);
    assert_prints(end(10.0), 2.583e-6, 1e-9, "bare end of 10 mm");
    assert_prints(end(30.0), 6.975e-5, 1e-8, "bare end of 30 mm");

    let gauge = Some(Length::from_mm(1.1));
    let weighed = MakeUp::weighed(density, Some((steel, core_diameter)), gauge, None)
        .expect("the test's string");
    let figures = figures_of(weighed, 1.2, 65.406);
    let stiff = 1.0 + figures.inharmonicity_b.expect("a modulus is given");
    let mpa = figures.stress.expect("the core is given").to_mpa();
    assert_prints(mpa * stiff, 601.48, 0.01, "MPa, stiff");
}

/// A string known by its mass alone has a pull, and says why it has nothing else.
pub fn a_weighed_string_without_a_core_has_a_pull_and_no_more() {
    let density = LinearDensity::from_g_per_m(2.29729);
    let weighed = MakeUp::weighed(density, None, None, None).expect("the test's string");
    let figures = figures_of(weighed, 0.700, 220.0);
    assert_prints(figures.tension.expect("a tension").to_n(), 217.930, 1e-3, "N");
    assert_same(figures.stress, Err(Unknown::Core), "stress");
    assert_same(figures.inharmonicity_b, Err(Unknown::Modulus), "B");
    assert_same(figures.load_share_percent, Err(Unknown::Strength), "load share");
    assert_same(figures.gauge, Err(Unknown::Gauge), "gauge");
}

/// The figures of one string, plucked in the middle.
fn figures_of(make_up: MakeUp, metres: f64, hz: f64) -> StringFigures {
    let string = HarpString {
        note: None,
        frequency: Ok(Frequency::from_hz(hz)),
        length: Ok(Length::from_m(metres)),
        make_up: Ok(make_up),
        mechanism: Mechanism::Lever,
    };
    let limits = Limits {
        working_share_percent: 75.0,
        soft_share_percent: 75.0,
        slack_share_percent: 20.0,
        least_tension: Force::from_n(5.0),
        stiffness_band: (Stiffness::from_n_per_m(100.0), Stiffness::from_n_per_m(2000.0)),
        partial_8_cents: 30.0,
        jump_percent: 50.0,
        least_raise: Length::from_mm(0.0),
    };
    let harp =
        Harp { strings: vec![string], pluck_ratio: 0.5, conditions: Conditions::default(), limits };
    analyse(&harp).strings.remove(0)
}

/// Worked out: the share of the breaking load so many semitones below breaking, `2^(−s/6)`, printed to three
/// digits.
pub fn semitones_below_breaking_are_shares_of_the_load() {
    let load = Force::from_n(1000.0);
    for (semitones, share) in [(1.0, 0.891), (2.0, 0.794), (3.0, 0.707), (4.0, 0.630), (6.0, 0.500)]
    {
        let of = |share: f64| semitones_to_break(Force::from_n(share * load.to_n()), load);
        // Half of the last digit of the share either way.
        assert_within(semitones, of(share + 0.5e-3)..=of(share - 0.5e-3), format_args!("{share}"));
    }
}

/// Worked out: bare ends of a fiftieth of the length at both ends, core of 0.3 of the mass: by the law of the
/// cube partials 1, 6 and 12 rise by the shares 3.685e-5, 1.326e-3 and 5.306e-3.
pub fn the_law_of_bare_ends_is_the_one_worked_out() {
    let end = bare_end_inharmonicity(Length::from_mm(20.0), Length::from_mm(1000.0), 0.3);
    for (n, printed, digit) in
        [(1.0, 3.685e-5, 1e-8), (6.0, 1.326e-3, 1e-6), (12.0, 5.306e-3, 1e-6)]
    {
        // First order: half of the coefficient, once for each end.
        assert_prints(end * n * n, printed, digit, format_args!("partial {n}"));
    }
}
