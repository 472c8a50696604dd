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

/// A number, or the reason that there is none.
pub type Known<T> = Result<T, Unknown>;

/// Why a figure of a string is missing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum Unknown {
    /// The note cell is empty or does not read as a note.
    #[error("no pitch: the note is missing or cannot be read")]
    Pitch,
    /// The length cell is empty or does not read as a length.
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
    let (frequency, length) = (string.frequency, string.length);
    let make_up = string.make_up.as_ref().map_err(|why| *why);
    let core = make_up.ok().and_then(core_of);
    let linear_density = make_up.map(MakeUp::linear_density);
    let tension = make_up.and_then(|make_up| {
        let (frequency, length) = (frequency?, length?);
        let bare = make_up.bare_ends();
        if bare.0.to_m() + bare.1.to_m() >= length.to_m() {
            return Err(Unknown::BareEnds);
        }
        let pull = tension(make_up.linear_density(), length, frequency, core);
        if pull.to_n() > 0.0 { Ok(pull) } else { Err(Unknown::TooStiff) }
    });
    let core_diameter = make_up.and_then(|m| m.core().map(|(_, d)| d).ok_or(Unknown::Core));
    let breaking_load = make_up.and_then(|m| m.breaking_load().ok_or(Unknown::Strength));
    let inharmonicity_b = make_up.and_then(|make_up| {
        let (pull, length) = (tension?, length?);
        let uniform = inharmonicity(core.ok_or(Unknown::Modulus)?, length, pull);
        Ok(uniform + of_bare_ends(make_up, length))
    });
    StringFigures {
        number,
        note: string.note,
        frequency,
        length,
        gauge: make_up.and_then(|make_up| make_up.gauge().ok_or(Unknown::Gauge)),
        core: core_diameter,
        linear_density,
        tension,
        stress: both(tension, core_diameter).map(|(pull, diameter)| stress(pull, diameter)),
        breaking_load,
        load_share_percent: both(tension, breaking_load)
            .map(|(pull, load)| 100.0 * pull.to_n() / load.to_n()),
        semitones_to_break: both(tension, breaking_load)
            .map(|(pull, load)| semitones_to_break(pull, load)),
        pluck_stiffness: both(tension, length)
            .map(|(pull, length)| pluck_stiffness(pull, length, pluck_ratio)),
        inharmonicity_b,
        partial_8_cents: inharmonicity_b.map(|b| partial_cents(b, 8)),
        impedance: both(tension, linear_density).map(|(pull, density)| impedance(pull, density)),
    }
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
