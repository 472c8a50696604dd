//! Every number and every finding of a harp. [`analyse`] never fails: what cannot be computed
//! says why, in place of the number.

mod blame;
mod find;
mod harp;
mod pull;
mod slips;
mod string;

pub use self::blame::on_line;
pub use self::harp::{
    Conditions, Harp, HarpString, Limits, MOST_PLUCK_RATIO, Mechanism, Tolerances,
};
pub use self::pull::is_soft;
pub(super) use self::pull::{Made, stiffness_of, usable_length, usable_pitch};
pub(super) use self::string::figures;
pub(super) use self::string::rigidity_n;
pub use self::string::{partial_of, partial_parts, stopped};
use super::findings::Finding;
use super::lever::ContactPlace;
use super::pitch::Note;
use super::units::{Force, Frequency, Impedance, Length, LinearDensity, Stiffness, Stress};
use crate::words::engine as say;

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
    #[error("{}", say::NO_PITCH)]
    Pitch,
    /// The length cell is empty or does not read as a length.
    /// Or the length is outside [`LENGTH_M`].
    #[error("{}", say::NO_LENGTH)]
    Length,
    /// The pins follow a drawn curve, and here it leaves no length.
    #[error("{}", say::OFF_CURVE)]
    OffCurve,
    /// The make-up cannot be used as written.
    #[error("{}", say::NO_MAKE_UP)]
    MakeUp,
    /// The bare ends leave nothing that is wound.
    #[error("{}", say::BARE_ENDS_TOO_LONG)]
    BareEnds,
    /// So stiff that it sounds above the pitch with no tension at all.
    #[error("{}", say::TOO_STIFF)]
    TooStiff,
    /// The material has no strength, or none for this diameter.
    #[error("{}", say::NO_STRENGTH)]
    Strength,
    /// The material has no modulus of elasticity.
    #[error("{}", say::NO_MODULUS)]
    Modulus,
    /// The material has no modulus over minutes.
    #[error("{}", say::NO_INTERMEDIATE_MODULUS)]
    IntermediateModulus,
    /// The material has no modulus over weeks.
    #[error("{}", say::NO_SLOW_MODULUS)]
    SlowModulus,
    /// The material has no loss factor.
    #[error("{}", say::NO_LOSS_FACTOR)]
    LossFactor,
    /// Friction within a winding outweighs what bending loses.
    #[error("{}", say::WOUND_DAMPING)]
    WoundDamping,
    /// The material has no coefficient of expansion.
    #[error("{}", say::NO_EXPANSION)]
    Expansion,
    /// Expansion does not give the drift of a polymer.
    #[error("{}", say::POLYMER_DRIFT)]
    PolymerDrift,
    /// Expansion does not give the drift of gut or silk.
    #[error("{}", say::NATURAL_DRIFT)]
    NaturalDrift,
    /// No lever is fitted to this string.
    #[error("{}", say::NO_LEVER)]
    NoLever,
    /// No disc, or none for this semitone, is fitted to this string.
    #[error("{}", say::NO_DISC)]
    NoDisc,
    /// The sideways push alone raises the string too far.
    #[error("{}", say::TOO_MUCH_PUSH)]
    TooMuchPush,
    /// A weighed string whose core was not measured.
    #[error("{}", say::NO_CORE)]
    Core,
    /// A weighed string whose overall diameter was not measured.
    #[error("{}", say::NO_GAUGE)]
    Gauge,
    /// The pluck point does not lie between the ends, or a value is so far out of reach that the
    /// figure would be no number.
    #[error("{}", say::OUT_OF_REACH)]
    OutOfReach,
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
    /// Loss factor of bending at the partial asked for.
    pub damping_eta: Known<f64>,
    /// Stretch from slack to pitch, over all string between its fixings.
    pub stretch: Known<Length>,
    /// Turns of the tuning pin for the stretch.
    pub pin_turns: Known<f64>,
    /// How far a degree of the tuning pin moves the pitch.
    pub cents_per_pin_degree: Known<f64>,
    /// How far a kelvin of warming moves the pitch.
    pub cents_per_kelvin: Known<f64>,
    /// Where a lever touches, from the bridge pin.
    pub lever: Known<ContactPlace>,
    /// Where the disc of the first semitone touches, from the bridge pin.
    pub disc_natural: Known<ContactPlace>,
    /// Where the disc of the second semitone touches, from the bridge pin, the first still pressing.
    pub disc_sharp: Known<ContactPlace>,
    /// Pull square to the soundboard.
    pub lift: Known<Force>,
    /// Pull along the soundboard, towards its treble end.
    pub along_board: Known<Force>,
    /// The length to cut.
    pub cut_length: Known<Length>,
    /// Force of a finger at the design's displacement, the stretching of the string included.
    pub pluck_force: Known<Force>,
    /// How sharp the string begins after such a pluck.
    pub glide_cents: Known<f64>,
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
    analyse_changed(harp, None)
}

/// The same for a harp of which one string was just changed: of two neighbours that do not go together, that one is
/// to blame.
pub fn analyse_changed(harp: &Harp, changed: Option<usize>) -> Analysis {
    let strings: Vec<StringFigures> = harp
        .strings
        .iter()
        .enumerate()
        .map(|(index, string)| figures(index + 1, string, harp))
        .collect();
    let known = |figures: &StringFigures| figures.tension.ok();
    let total_n: f64 = strings.iter().filter_map(known).map(Force::to_n).sum();
    let shares =
        strings.iter().enumerate().filter_map(|(i, s)| Some((i, s.load_share_percent.ok()?)));
    // Of two equally tight, the higher string.
    let tightest = shares.rev().max_by(|a, b| a.1.total_cmp(&b.1)).map(|(index, _)| index);
    let findings = find::findings(harp, &strings, changed);
    let without_tension = strings.iter().filter(|figures| figures.tension.is_err()).count();
    Analysis { strings, total_tension: Force::from_n(total_n), without_tension, tightest, findings }
}
