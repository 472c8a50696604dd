//! Stiff strings: Young's law for piano wire, Feynman's first order, and measured strings of guitar and
//! piano.

use std::f64::consts::PI;

use stringloft::engine::material::Modulus;
use stringloft::engine::mechanics::{
    Core, audible_inharmonicity, inharmonicity, partial_cents, pitch,
};
use stringloft::engine::pitch::{Note, Tuning, cents};
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity, Stress};

use super::{
    assert_cents, assert_near, assert_prints, assert_within, built_in_material, material_of, plain,
};

/// A round core of one millimetre with the bending stiffness of a source, in N·m².
fn core_of_rigidity(rigidity_n_m2: f64) -> Core {
    let modulus = Stress::from_pa(rigidity_n_m2 * 64.0 / (PI * 1e-12));
    Core { diameter: Length::from_mm(1.0), modulus: Modulus::constant(modulus) }
}

/// Source: R. W. Young, Inharmonicity of plain wire piano strings, J. Acoust. Soc. Am. 24 (1952), abstract;
/// read. In cents, `3.4e13 n² d²/(ν² l⁴)` for steel with `E/ρ` = 25.5e10 (cm/s)², `d` and `l` in cm, sharp
/// against `n` times the pitch of the flexible string. The coefficient has two digits.
///
/// His two statements about a piano (1.2 cents for the second mode of middle C, doubling every 8 semitones)
/// are about its own strings and cannot be checked without their dimensions.
pub fn piano_wire_follows_youngs_law() {
    let steel_gpa = 25.5e6 * 7850.0 / 1e9;
    let material = material_of(7850.0, steel_gpa, 2000.0);
    for (d_mm, l_mm, hz) in [(0.8, 400.0, 440.0), (1.0, 620.0, 261.626), (0.9, 100.0, 2093.0)] {
        let (diameter, length) = (Length::from_mm(d_mm), Length::from_mm(l_mm));
        let density = plain(&material, diameter).linear_density().to_kg_per_m();
        let flexible = Force::from_n(density * (2.0 * length.to_m() * hz).powi(2));
        let modulus = Modulus::constant(Stress::from_gpa(steel_gpa));
        let b = inharmonicity(Core { diameter, modulus }, length, flexible);
        // His law is the first order in B; so B goes down a millionfold before it is read off.
        let small = b * 1e-6;
        let sharp_cents = 1e6 * (partial_cents(small, 2) + 600.0 * (1.0 + small).log2());
        let (d_cm, l_cm) = (diameter.to_cm(), length.to_cm());
        let coefficient = sharp_cents * hz.powi(2) * l_cm.powi(4) / (4.0 * d_cm.powi(2));
        assert_prints(coefficient, 3.4e13, 0.1e13, format_args!("{d_mm} mm"));
        // `π² 25.5e10/64 · 1200/(2 ln 2)`, worked out.
        assert_prints(coefficient, 3.404e13, 0.001e13, format_args!("{d_mm} mm, worked out"));
    }
}

/// Source: R. P. Feynman, letter to a piano tuner (1961), Physics Today 62, no. 12 (2009) 46; read in a text
/// with damaged signs, the coefficient derived again. First order in B: the pitch is raised by the share
/// `(π/2) E A² μ f²/T²`, `A` the area of the section. What is left out is of the order of `B²`.
pub fn stiffness_raises_the_pitch_as_feynman_wrote() {
    for (d_mm, l_m, pull_n, gpa) in
        [(0.5, 0.5, 298.4, 207.0), (0.9, 0.62, 670.0, 200.0), (1.0, 0.448, 139.2, 11.4)]
    {
        let (diameter, length) = (Length::from_mm(d_mm), Length::from_m(l_m));
        let (density, pull) = (LinearDensity::from_g_per_m(1.5), Force::from_n(pull_n));
        let core = Core { diameter, modulus: Modulus::constant(Stress::from_gpa(gpa)) };
        let flexible_hz = pitch(density, length, pull, None).to_hz();
        let raised = pitch(density, length, pull, Some(core)).to_hz() / flexible_hz - 1.0;
        let area = PI / 4.0 * (d_mm * 1e-3).powi(2);
        let mu = density.to_kg_per_m();
        let his = PI / 2.0 * gpa * 1e9 * area.powi(2) * mu * flexible_hz.powi(2) / pull_n.powi(2);
        let b = inharmonicity(core, length, pull);
        assert_within((raised - his).abs(), 0.0..=b * b, format_args!("{d_mm} mm"));
    }
}

/// Note, tension in N, `E I` in 1e-6 N·m², mass per metre in g/m of the six strings of a classical guitar of
/// 650 mm; then pitch and B.
///
/// Source: J. Woodhouse, Acta Acustica united with Acustica 90 (2004) 928 and 945: tension and bending
/// stiffness second-hand, mass from memory. Pitch of the flexible string
/// and B are worked out from them.
const GUITAR: [(&str, f64, f64, f64, f64, f64); 6] = [
    ("E4", 70.3, 130.0, 0.38, 330.86, 4.320e-5),
    ("B3", 53.4, 160.0, 0.52, 246.50, 6.999e-5),
    ("G3", 58.3, 310.0, 0.90, 195.78, 1.2421e-4),
    ("D3", 71.2, 51.0, 1.95, 146.99, 1.673e-5),
    ("A2", 73.9, 40.0, 3.61, 110.06, 1.264e-5),
    ("E2", 71.6, 57.0, 6.24, 82.40, 1.860e-5),
];

pub fn the_strings_of_a_guitar_sound_their_notes() {
    let length = Length::from_mm(650.0);
    for (name, pull_n, rigidity, g_per_m, printed_hz, _) in GUITAR {
        let (density, pull) = (LinearDensity::from_g_per_m(g_per_m), Force::from_n(pull_n));
        assert_prints(pitch(density, length, pull, None).to_hz(), printed_hz, 0.01, name);
        let core = core_of_rigidity(rigidity * 1e-6);
        let sounding = pitch(density, length, pull, Some(core));
        let note: Note = name.parse().expect("a note");
        let off = cents(sounding.to_hz() / Tuning::default().frequency(note).to_hz());
        // Half of the last digit of mass and of tension, in cents of pitch.
        let room = 600.0 / 2.0_f64.ln() * (0.005 / g_per_m + 0.05 / pull_n);
        assert_cents(off, room, name);
    }
}

pub fn the_strings_of_a_guitar_have_their_inharmonicity() {
    for (name, pull_n, rigidity, _, _, printed) in GUITAR {
        let core = core_of_rigidity(rigidity * 1e-6);
        let b = inharmonicity(core, Length::from_mm(650.0), Force::from_n(pull_n));
        assert_prints(b, printed, 1e-8, name);
    }
}

/// Source: A. Chaigne and A. Askenfelt, J. Acoust. Soc. Am. 95 (1994) 1112, their string C4: 0.62 m, 3.93 g,
/// 670 N, stiffness parameter `E I/(T L²)` = 3.82e-5; about 262 Hz. All from memory. B = 3.770e-4 is π² times
/// the parameter, worked out.
pub fn middle_c_of_a_piano_sounds_and_is_stiff() {
    let (length, pull) = (Length::from_m(0.62), Force::from_n(670.0));
    let density = LinearDensity::from_kg_per_m(3.93e-3 / 0.62);
    let core = core_of_rigidity(3.82e-5 * 670.0 * 0.62 * 0.62);
    assert_prints(pitch(density, length, pull, Some(core)).to_hz(), 262.0, 1.0, "Hz");
    assert_prints(pitch(density, length, pull, None).to_hz(), 262.19, 0.01, "flexible, Hz");
    assert_prints(inharmonicity(core, length, pull), 3.770e-4, 1e-7, "B");
}

/// Diameter of a plain nylon string of 1070 kg/m³ from its mass, stress in `MPa`, modulus measured in bending and
/// modulus by the law, in `GPa`.
///
/// Source: the three plain strings of [`GUITAR`]: diameter, stress and modulus worked out from second-hand tension
/// and bending stiffness and from mass from memory. The law, 4.5 `GPa` and 39 times the stress, is second-hand
/// (J. Woodhouse and N. Lynch-Aird, Acta Acustica united with Acustica 105 (2019) 516).
const NYLON_MODULUS: [(usize, f64, f64, f64); 3] =
    [(0, 198.0, 12.95, 12.2), (1, 110.0, 8.51, 8.8), (2, 69.0, 5.51, 7.2)];

/// The law has the trend of the measured strings; it is within a third of them.
pub fn the_modulus_of_nylon_rises_as_it_was_measured() {
    let nylon = built_in_material("nylon").modulus.expect("built in").value;
    for (row, mpa, measured_gpa, law_gpa) in NYLON_MODULUS {
        let (name, pull_n, rigidity, g_per_m, ..) = GUITAR[row];
        let area = g_per_m * 1e-3 / 1070.0;
        let stress = Stress::from_pa(pull_n / area);
        assert_prints(stress.to_mpa(), mpa, 1.0, format_args!("{name}, MPa"));
        // For a circle the second moment is the square of the area over 4 π.
        let measured = Stress::from_pa(rigidity * 1e-6 * 4.0 * PI / (area * area));
        assert_prints(measured.to_gpa(), measured_gpa, 0.01, format_args!("{name}, measured"));
        assert_prints(nylon.at(stress).to_gpa(), law_gpa, 0.1, format_args!("{name}, law"));
        assert_near(nylon.at(stress).to_gpa(), measured.to_gpa(), 1.0 / 3.0, name);
    }
}

/// Source: H. Järveläinen, V. Välimäki and M. Karjalainen, Acoustics Research Letters Online 2 (2001) 79, from
/// memory; the values at pitches an octave apart are worked out, printed to two digits.
pub fn inharmonicity_is_heard_from_where_listeners_heard_it() {
    for (hz, printed, digit) in [
        (55.0, 9.2e-8, 1e-9),
        (110.0, 5.5e-7, 1e-8),
        (220.0, 3.2e-6, 1e-7),
        (440.0, 1.9e-5, 1e-6),
        (880.0, 1.1e-4, 1e-5),
        (1760.0, 6.8e-4, 1e-5),
    ] {
        let b = audible_inharmonicity(Frequency::from_hz(hz));
        assert_prints(b, printed, digit, format_args!("{hz} Hz"));
    }
}
