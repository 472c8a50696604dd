//! Every number and every finding of a harp. [`analyse`] never fails: what cannot be computed
//! says why, in place of the number.

use super::construction::MakeUp;
use super::findings::{Finding, core_of, find};
use super::mechanics::{
    bare_end_inharmonicity, impedance, inharmonicity, partial_cents, pluck_stiffness,
    semitones_to_break, stress, tension,
};
use super::pitch::Note;
use super::units::{Force, Frequency, Impedance, Length, LinearDensity, Stiffness, Stress};

/// The least and the greatest vibrating length in metres that can be computed with: far beyond any
/// string, and near enough that no figure of it overflows.
pub const LENGTH_M: (f64, f64) = (1e-4, 1e3);
/// The least and the greatest pitch in hertz that can be computed with.
pub const FREQUENCY_HZ: (f64, f64) = (1e-2, 1e6);

/// The least and the greatest breaking load in newtons that can be computed with.
pub const BREAKING_LOAD_N: (f64, f64) = (1e-6, 1e9);

/// A number, or the reason that there is none. A number is always finite.
pub type Known<T> = Result<T, Unknown>;

/// Why a figure of a string is missing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum Unknown {
    /// The note cell is empty or does not read as a note.
    /// Or the pitch is outside [`FREQUENCY_HZ`].
    #[error("no pitch: the note is missing or cannot be read")]
    Pitch,
    /// The length cell is empty or does not read as a length.
    /// Or the length is outside [`LENGTH_M`].
    #[error("no vibrating length: it is missing or cannot be read")]
    Length,
    /// The make-up cannot be used as written.
    #[error("no make-up: the material or the gauge is missing or cannot be used")]
    MakeUp,
    /// The bare ends leave nothing that is wound.
    #[error("the bare core ends are longer than the string (shorten them)")]
    BareEnds,
    /// So stiff that it sounds above the pitch with no tension at all.
    #[error(
        "this string is so stiff for its length that it would sound too high with no pull at all"
    )]
    TooStiff,
    /// The material has no strength, or none for this diameter.
    #[error("no breaking load is known for this material at this diameter")]
    Strength,
    /// The material has no modulus of elasticity.
    #[error("no modulus of elasticity is known for this string")]
    Modulus,
    /// A weighed string whose core was not measured.
    #[error("the core diameter of this weighed string was not given")]
    Core,
    /// A weighed string whose overall diameter was not measured.
    #[error("the overall diameter of this weighed string was not given")]
    Gauge,
    /// The pluck point does not lie between the ends, or a value is so far out of reach that the
    /// figure would be no number.
    #[error("a value behind this figure is too large or too small to compute with (check it)")]
    OutOfReach,
}

/// One string as the engine takes it: what is not known says why.
#[derive(Clone, Debug, PartialEq)]
pub struct HarpString {
    /// The note, when there is one; a string may be given by frequency alone.
    pub note: Option<Note>,
    /// The pitch.
    pub frequency: Known<Frequency>,
    /// Soundboard (or string bar) to bridge pin.
    pub length: Known<Length>,
    /// What the string is made of.
    pub make_up: Known<MakeUp>,
}

/// What the maker allows.
#[derive(Clone, Debug, PartialEq)]
pub struct Limits {
    /// Highest load share that a string should work at, in per cent.
    pub working_share_percent: f64,
    /// Lowest load share, below which a string is called slack, in per cent.
    pub slack_share_percent: f64,
    /// Lowest tension that still holds a string steady.
    pub least_tension: Force,
    /// Lowest and highest pluck stiffness: the band drawn behind the curve.
    pub stiffness_band: (Stiffness, Stiffness),
    /// How sharp partial 8 may be before it is a finding, in cents.
    pub partial_8_cents: f64,
    /// Greatest step of pluck stiffness to the neighbour where the make-up changes, in per cent.
    pub jump_percent: f64,
}

/// A harp as the engine takes it; string 1 (the highest) first.
#[derive(Clone, Debug, PartialEq)]
pub struct Harp {
    /// From the highest string down.
    pub strings: Vec<HarpString>,
    /// Where the finger plucks, as a share of the vibrating length, above 0 and below 1.
    pub pluck_ratio: f64,
    /// What counts as a finding.
    pub limits: Limits,
}

/// Everything that follows for one string.
#[derive(Clone, Debug, PartialEq)]
pub struct StringFigures {
    /// The number from the top, beginning with 1.
    pub number: usize,
    /// The note, when there is one.
    pub note: Option<Note>,
    /// The pitch.
    pub frequency: Known<Frequency>,
    /// Vibrating length.
    pub length: Known<Length>,
    /// Diameter of a plain string, overall diameter of a wound one.
    pub gauge: Known<Length>,
    /// Diameter of what carries the pull: the core of a wound string, the whole of a plain one.
    pub core: Known<Length>,
    /// Mass per metre.
    pub linear_density: Known<LinearDensity>,
    /// Tension at which the first partial is at pitch.
    pub tension: Known<Force>,
    /// Stress in the core.
    pub stress: Known<Stress>,
    /// Least load that breaks the core.
    pub breaking_load: Known<Force>,
    /// Tension over breaking load, in per cent.
    pub load_share_percent: Known<f64>,
    /// How far the pitch could rise before the string breaks.
    pub semitones_to_break: Known<f64>,
    /// Force per displacement at the pluck point.
    pub pluck_stiffness: Known<Stiffness>,
    /// Inharmonicity coefficient, bare core ends included.
    pub inharmonicity_b: Known<f64>,
    /// How sharp partial 8 is against eight times the first partial, in cents.
    pub partial_8_cents: Known<f64>,
    /// Characteristic impedance.
    pub impedance: Known<Impedance>,
}

/// Everything that follows for a harp.
#[derive(Clone, Debug, PartialEq)]
pub struct Analysis {
    /// One for each string, in the harp's order.
    pub strings: Vec<StringFigures>,
    /// Sum of the known tensions.
    pub total_tension: Force,
    /// How many strings have no tension, so that the total lacks them.
    pub without_tension: usize,
    /// Index of the string with the highest load share.
    pub tightest: Option<usize>,
    /// What is worth saying, the weightiest first; of one weight, from string 1 down.
    pub findings: Vec<Finding>,
}

/// Computes every figure of every string, the totals and the findings.
///
/// A figure that cannot be computed says why in its place; nothing fails.
pub fn analyse(harp: &Harp) -> Analysis {
    let strings: Vec<StringFigures> = harp
        .strings
        .iter()
        .enumerate()
        .map(|(index, string)| figures(index + 1, string, harp.pluck_ratio))
        .collect();
    let known = |figures: &StringFigures| figures.tension.ok();
    let total_n: f64 = strings.iter().filter_map(known).map(Force::to_n).sum();
    let shares =
        strings.iter().enumerate().filter_map(|(i, s)| Some((i, s.load_share_percent.ok()?)));
    // Of two equally tight, the higher string.
    let tightest = shares.rev().max_by(|a, b| a.1.total_cmp(&b.1)).map(|(index, _)| index);
    let findings = find(harp, &strings);
    let without_tension = strings.iter().filter(|figures| figures.tension.is_err()).count();
    Analysis { strings, total_tension: Force::from_n(total_n), without_tension, tightest, findings }
}

fn figures(number: usize, string: &HarpString, pluck_ratio: f64) -> StringFigures {
    let frequency = within(string.frequency, Frequency::to_hz, FREQUENCY_HZ, Unknown::Pitch);
    let length = within(string.length, Length::to_m, LENGTH_M, Unknown::Length);
    let make_up = string.make_up.as_ref().map_err(|why| *why);
    let linear_density = finite(make_up.map(MakeUp::linear_density), LinearDensity::to_kg_per_m);
    let tension = make_up.and_then(|make_up| tension_of(make_up, frequency?, length?));
    let core = make_up.and_then(|m| m.core().map(|(_, d)| d).ok_or(Unknown::Core));
    let breaking_load = make_up.and_then(|m| m.breaking_load().ok_or(Unknown::Strength));
    let breaking_load = within(breaking_load, Force::to_n, BREAKING_LOAD_N, Unknown::OutOfReach);
    let load = both(tension, breaking_load);
    let inharmonicity_b = make_up.and_then(|m| inharmonicity_of(m, length?, tension?));
    let inharmonicity_b = finite(inharmonicity_b, |b| b);
    StringFigures {
        number,
        note: string.note,
        frequency,
        length,
        gauge: make_up.and_then(|make_up| make_up.gauge().ok_or(Unknown::Gauge)),
        core,
        linear_density,
        tension,
        stress: finite(both(tension, core).map(|(pull, d)| stress(pull, d)), Stress::to_pa),
        breaking_load,
        load_share_percent: finite(load.map(|(t, most)| 100.0 * t.to_n() / most.to_n()), |x| x),
        semitones_to_break: finite(load.map(|(t, most)| semitones_to_break(t, most)), |x| x),
        pluck_stiffness: both(tension, length)
            .and_then(|(pull, length)| pluck_stiffness_of(pull, length, pluck_ratio)),
        inharmonicity_b,
        partial_8_cents: finite(inharmonicity_b.map(|b| partial_cents(b, 8)), |x| x),
        impedance: finite(
            both(tension, linear_density).map(|(pull, density)| impedance(pull, density)),
            Impedance::to_kg_per_s,
        ),
    }
}

fn tension_of(make_up: &MakeUp, frequency: Frequency, length: Length) -> Known<Force> {
    let bare = make_up.bare_ends();
    if bare.0.to_m() + bare.1.to_m() >= length.to_m() {
        return Err(Unknown::BareEnds);
    }
    let pull = tension(make_up.linear_density(), length, frequency, core_of(make_up));
    if pull.to_n() <= 0.0 { Err(Unknown::TooStiff) } else { finite(Ok(pull), Force::to_n) }
}

fn inharmonicity_of(make_up: &MakeUp, length: Length, tension: Force) -> Known<f64> {
    let core = core_of(make_up).ok_or(Unknown::Modulus)?;
    Ok(inharmonicity(core, length, tension) + of_bare_ends(make_up, length))
}

fn pluck_stiffness_of(tension: Force, length: Length, pluck_ratio: f64) -> Known<Stiffness> {
    if !(pluck_ratio > 0.0 && pluck_ratio < 1.0) {
        return Err(Unknown::OutOfReach);
    }
    finite(Ok(pluck_stiffness(tension, length, pluck_ratio)), Stiffness::to_n_per_m)
}

/// What the two bare ends of a wound string add to its inharmonicity.
fn of_bare_ends(make_up: &MakeUp, length: Length) -> f64 {
    let Some(core) = make_up.core_linear_density() else { return 0.0 };
    let mass_ratio = core.to_kg_per_m() / make_up.linear_density().to_kg_per_m();
    let ends = make_up.bare_ends();
    [ends.0, ends.1].iter().map(|end| bare_end_inharmonicity(*end, length, mass_ratio)).sum()
}

fn both<A, B>(one: Known<A>, other: Known<B>) -> Known<(A, B)> {
    Ok((one?, other?))
}

/// The value if its number is one that can be computed with; otherwise `why`.
fn within<T: Copy>(
    value: Known<T>,
    number: impl Fn(T) -> f64,
    (least, most): (f64, f64),
    why: Unknown,
) -> Known<T> {
    value.and_then(|v| if (least..=most).contains(&number(v)) { Ok(v) } else { Err(why) })
}

/// The value if its number is finite.
fn finite<T: Copy>(value: Known<T>, number: impl Fn(T) -> f64) -> Known<T> {
    value.and_then(|v| if number(v).is_finite() { Ok(v) } else { Err(Unknown::OutOfReach) })
}
