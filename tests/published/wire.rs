//! Wire: least strength, breaking load and greatest product of length and pitch against the
//! standards; and how the table lies to other published laws.

use std::sync::Arc;

use stringloft::engine::construction::{MakeUp, pull_of};
use stringloft::engine::mechanics::{pitch, tension};
use stringloft::engine::units::{Force, Frequency, Length, Stress};

use super::{assert_prints, assert_same, assert_within, built_in_material, material_of, plain};

/// Diameter in inches, least strength in ksi and in `MPa`, least breaking load in N, and the greatest
/// product of length and pitch in m/s.
///
/// Source: the ksi are those of ASTM A228/A228M, inch table, as a wire merchant reproduces it for
/// tinned music wire; read. The other three are worked out from them and from 7850 kg/m³, apart from
/// this code: 1 ksi = 6.894757 `MPa`, and `½ √(strength/density)`.
const MUSIC_WIRE: [(f64, f64, f64, f64, f64); 28] = [
    (0.008, 399.0, 2751.0, 89.2, 296.0),
    (0.009, 393.0, 2710.0, 111.2, 293.8),
    (0.010, 387.0, 2668.0, 135.2, 291.5),
    (0.011, 382.0, 2634.0, 161.5, 289.6),
    (0.012, 377.0, 2599.0, 189.7, 287.7),
    (0.013, 373.0, 2572.0, 220.2, 286.2),
    (0.014, 369.0, 2544.0, 252.7, 284.6),
    (0.015, 365.0, 2517.0, 286.9, 283.1),
    (0.016, 362.0, 2496.0, 323.8, 281.9),
    (0.018, 356.0, 2455.0, 403.0, 279.6),
    (0.020, 350.0, 2413.0, 489.1, 277.2),
    (0.022, 345.0, 2379.0, 583.4, 275.2),
    (0.024, 341.0, 2351.0, 686.2, 273.6),
    (0.026, 337.0, 2324.0, 795.9, 272.0),
    (0.028, 333.0, 2296.0, 912.1, 270.4),
    (0.030, 330.0, 2275.0, 1037.6, 269.2),
    (0.032, 327.0, 2255.0, 1169.8, 268.0),
    (0.034, 324.0, 2234.0, 1308.5, 266.7),
    (0.036, 321.0, 2213.0, 1453.4, 265.5),
    (0.038, 318.0, 2193.0, 1604.2, 264.2),
    (0.040, 315.0, 2172.0, 1760.8, 263.0),
    (0.042, 313.0, 2158.0, 1928.9, 262.2),
    (0.045, 309.0, 2130.0, 2186.0, 260.5),
    (0.048, 306.0, 2110.0, 2463.1, 259.2),
    (0.051, 303.0, 2089.0, 2753.3, 257.9),
    (0.055, 300.0, 2068.0, 3170.5, 256.7),
    (0.059, 296.0, 2041.0, 3599.7, 254.9),
    (0.063, 293.0, 2020.0, 4062.8, 253.6),
];

/// The ends of the same table, inches and ksi; read as above.
const MUSIC_WIRE_ENDS: [(f64, f64); 8] = [
    (0.004, 439.0),
    (0.005, 426.0),
    (0.006, 415.0),
    (0.007, 407.0),
    (0.067, 290.0),
    (0.072, 287.0),
    (0.080, 282.0),
    (0.100, 271.0),
];

/// The least strength of a built-in material at a diameter.
fn strength(name: &str, diameter: Length) -> Stress {
    let strength = built_in_material(name).strength.expect("wire has a strength").value;
    strength.at(diameter).expect("the test's diameter is in the table")
}

fn steel_mpa(inch: f64) -> f64 {
    strength("steel", Length::from_inch(inch)).to_mpa()
}

pub fn music_wire_is_as_strong_as_the_standard_says() {
    for (inch, ksi, mpa, _, _) in MUSIC_WIRE {
        let ours = strength("steel", Length::from_inch(inch));
        assert_prints(ours.to_ksi(), ksi, 1.0, format_args!("{inch} in, ksi"));
        assert_prints(ours.to_mpa(), mpa, 1.0, format_args!("{inch} in, MPa"));
    }
    for (inch, ksi) in MUSIC_WIRE_ENDS {
        let ours = strength("steel", Length::from_inch(inch));
        assert_prints(ours.to_ksi(), ksi, 1.0, format_args!("{inch} in, ksi"));
    }
}

pub fn music_wire_breaks_at_the_load_of_the_table() {
    let steel = Arc::new(built_in_material("steel"));
    for (inch, _, _, newtons, product) in MUSIC_WIRE {
        let string = plain(&steel, Length::from_inch(inch));
        let load = string.breaking_load().expect("steel has a strength");
        assert_prints(load.to_n(), newtons, 0.1, format_args!("{inch} in, N"));
        // On one metre the pitch in hertz is the product in m/s.
        let most = pitch(string.linear_density(), Length::from_m(1.0), load, None);
        assert_prints(most.to_hz(), product, 0.1, format_args!("{inch} in, m/s"));
    }
}

/// Source: the handbook's law 201 ksi·in^0.145 (R. Budynas and K. Nisbett, *Shigley's Mechanical
/// Engineering Design*, solutions 10-1 and 10-3; read) and 2060 `MPa`·mm^0.163 (an engineering examination
/// site, problem 141; read). Set against the standard's minima by hand, the first lies 1.1 to 2.4 % above
/// them and the second 2.9 to 5.7 % below, printed to 0.1 %.
///
/// This is why the engine has the table: neither law gives a safe margin and a true one. The site's own
/// example (7.25 mm) and the handbook's (0.105 in) are thicker than the table, where the engine gives no
/// strength.
pub fn the_handbooks_laws_lie_about_the_table_as_found() {
    let misses = |law: &dyn Fn(f64) -> f64| {
        let gap = |row: &(f64, f64, f64, f64, f64)| 100.0 * (law(row.0) / steel_mpa(row.0) - 1.0);
        let all: Vec<f64> = MUSIC_WIRE.iter().map(gap).collect();
        (all.iter().copied().fold(f64::MAX, f64::min), all.iter().copied().fold(f64::MIN, f64::max))
    };
    let (least, most) = misses(&|inch: f64| Stress::from_ksi(201.0 / inch.powf(0.145)).to_mpa());
    assert_prints(least, 1.1, 0.1, "201/0.145, least");
    assert_prints(most, 2.4, 0.1, "201/0.145, most");
    let (least, most) = misses(&|inch: f64| 2060.0 / (25.4 * inch).powf(0.163));
    assert_prints(least, -5.7, 0.1, "2060/0.163, least");
    assert_prints(most, -2.9, 0.1, "2060/0.163, most");

    let steel = Arc::new(built_in_material("steel"));
    assert_same(plain(&steel, Length::from_mm(7.25)).breaking_load(), None, "7.25 mm");
    assert_same(plain(&steel, Length::from_inch(0.105)).breaking_load(), None, "0.105 in");
}

/// Source: EN 10270-1, grade SM, least strength in N/mm², as a spring maker reproduces it; read. Loads
/// worked out.
///
/// An ordinary spring grade: a plausibility check from below, about 9 % under music wire, with the bound
/// 8 to 10 % from 0.3 to 1.0 mm.
pub fn music_wire_is_about_a_tenth_stronger_than_spring_wire() {
    let spring_wire = [
        (0.3, 2370.0),
        (0.4, 2270.0),
        (0.5, 2200.0),
        (0.6, 2140.0),
        (0.7, 2090.0),
        (0.8, 2050.0),
        (0.9, 2010.0),
        (1.0, 1980.0),
    ];
    for (mm, mpa) in spring_wire {
        let ours = strength("steel", Length::from_mm(mm)).to_mpa();
        let below_percent = 100.0 * (1.0 - mpa / ours);
        assert_within(below_percent, 8.0..=10.0, format_args!("{mm} mm, % under"));
    }
    // Thicker, no bound was found, but that it is weaker.
    for (mm, mpa) in [
        (1.1, 1950.0),
        (1.2, 1920.0),
        (1.3, 1900.0),
        (1.4, 1870.0),
        (1.5, 1850.0),
        (1.6, 1830.0),
        (2.0, 1760.0),
    ] {
        let ours = strength("steel", Length::from_mm(mm)).to_mpa();
        assert_within(mpa, 0.0..=ours, format_args!("{mm} mm"));
    }
    for (mm, mpa, newtons, digit) in
        [(0.3, 2370.0, 167.5, 0.1), (0.5, 2200.0, 432.0, 0.1), (1.0, 1980.0, 1555.0, 1.0)]
    {
        let load = pull_of(Stress::from_mpa(mpa), Length::from_mm(mm)).to_n();
        assert_prints(load, newtons, digit, format_args!("{mm} mm"));
    }
}

/// Source: ASTM B159, spring wire (H08), least strength in ksi and `MPa` up to each diameter in inches, as
/// a wire merchant reproduces it; read.
pub fn phosphor_bronze_has_the_steps_of_the_standard() {
    let steps = [
        (&[0.010, 0.020, 0.025], 145.0, 1000.0),
        (&[0.026, 0.040, 0.0625], 135.0, 931.0),
        (&[0.063, 0.100, 0.125], 130.0, 896.0),
    ];
    for (diameters, ksi, mpa) in steps {
        for inch in diameters {
            let ours = strength("phosphor bronze", Length::from_inch(*inch));
            assert_prints(ours.to_ksi(), ksi, 1.0, format_args!("{inch} in"));
            assert_prints(ours.to_mpa(), mpa, 1.0, format_args!("{inch} in"));
        }
    }
}

/// Source: a gut string maker's note: gut of 0.40 mm broke at products of length and pitch from 240 to
/// 280 m/s; read. The built-in strength was taken from the least of them, so the least must come back.
pub fn gut_breaks_at_the_least_product_that_was_measured() {
    let string = plain(&Arc::new(built_in_material("gut")), Length::from_mm(0.40));
    let load = string.breaking_load().expect("gut has a strength");
    let product = pitch(string.linear_density(), Length::from_m(1.0), load, None).to_hz();
    assert_prints(product, 240.0, 10.0, "m/s");
}

/// Source: an encyclopaedia's table of specific strength; read. Strength in `MPa`, density in g/cm³, then
/// kN·m/kg and the breaking length in km.
///
/// The kilometres are not rounded to the last digit with any one value of g (25.93 should be 25.94 with
/// 9.81 m/s²), so they have the whole of it as room, with g = 9.81 m/s².
pub fn breaking_loads_give_the_printed_specific_strengths() {
    let rows = [
        (2000.0, 7.86, 254.0, 1.0, 25.93),
        (600.0, 2.70, 222.0, 1.0, 22.65),
        (580.0, 8.55, 67.8, 0.1, 6.91),
        (78.0, 1.13, 69.0, 0.1, 7.04),
    ];
    for (mpa, g_per_cm3, printed, digit, km) in rows {
        let string = plain(&material_of(1000.0 * g_per_cm3, 1.0, mpa), Length::from_mm(0.8));
        let specific = per_mass(&string);
        assert_prints(specific / 1e3, printed, digit, format_args!("{mpa} MPa"));
        assert_prints(specific / 9.81 / 1e3, km, 0.02, format_args!("{mpa} MPa, km"));
    }
}

/// Breaking load over mass per metre.
fn per_mass(string: &MakeUp) -> f64 {
    let load: Force = string.breaking_load().expect("the test's material has a strength");
    load.to_n() / string.linear_density().to_kg_per_m()
}

/// Source: a power law fitted to the table's minima from 0.008 to 0.063 in, 194.57 ksi·in^0.14978 or 2177.8
/// `MPa`·mm^0.14978, which misses none of them by more than 0.5 %; worked out apart from this code.
pub fn one_power_law_comes_within_half_a_percent_of_the_table() {
    let miss_percent = |law: &dyn Fn(f64) -> f64| {
        let misses =
            MUSIC_WIRE.iter().map(|row| 100.0 * (law(row.0) / steel_mpa(row.0) - 1.0).abs());
        misses.fold(0.0, f64::max)
    };
    let in_inches = |inch: f64| Stress::from_ksi(194.57 / inch.powf(0.149_78)).to_mpa();
    assert_prints(miss_percent(&in_inches), 0.5, 0.1, "inches, %");
    assert_prints(miss_percent(&|inch| 2177.8 / (25.4 * inch).powf(0.149_78)), 0.5, 0.1, "mm, %");
    // The handbook's 201 ksi·in^0.145 in the other units: 2215.2 MPa·mm^0.145, worked out likewise.
    let ours = Stress::from_ksi(201.0 * 25.4_f64.powf(0.145)).to_mpa();
    assert_prints(ours, 2215.2, 0.1, "201/0.145");
}

/// Least and greatest diameter of a range with its tolerance in inches, and the tolerance in mm.
///
/// Source: ASTM A228/A228M as a wire merchant reproduces it, read; the millimetres are worked out.
const TOLERANCES: [(f64, f64, f64, f64); 5] = [
    (0.004, 0.010, 0.0002, 0.0051),
    (0.0101, 0.028, 0.0003, 0.0076),
    (0.0281, 0.063, 0.0004, 0.0102),
    (0.0631, 0.080, 0.0005, 0.0127),
    (0.0801, 0.250, 0.001, 0.0254),
];

/// Diameter in inches, and by how much its tolerance moves the pull at a pitch, in per cent. Worked out.
const SPREADS: [(f64, f64); 4] = [(0.010, 4.0), (0.020, 3.0), (0.040, 2.0), (0.063, 1.3)];

pub fn the_tolerance_of_wire_shows_in_the_pull() {
    let steel = Arc::new(built_in_material("steel"));
    let tolerance = steel.diameter_tolerance.as_ref().expect("the standard gives one");
    for (thin, thick, inch, mm) in TOLERANCES {
        for diameter in [thin, thick] {
            let ours = tolerance.value.at(Length::from_inch(diameter));
            assert_prints(ours.to_inch(), inch, 1e-4, format_args!("{diameter} in, in"));
            assert_prints(ours.to_mm(), mm, 1e-4, format_args!("{diameter} in, mm"));
        }
    }
    for (inch, percent) in SPREADS {
        let pull = |diameter_m: f64| {
            let density = plain(&steel, Length::from_m(diameter_m)).linear_density();
            tension(density, Length::from_m(0.5), Frequency::from_hz(440.0), None).to_n()
        };
        let diameter = Length::from_inch(inch);
        let (at, off) = (diameter.to_m(), tolerance.value.at(diameter).to_m());
        let spread = (pull(at + off) - pull(at - off)) / (2.0 * pull(at));
        assert_prints(100.0 * spread, percent, 0.1, format_args!("{inch} in, %"));
    }
}
