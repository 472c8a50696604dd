//! Vibrating lengths for given strings: what the target asks, along a smooth curve, within bounds; and a whole
//! harp scaled, a range stretched or faired.
//!
//! # What is least
//!
//! With the logarithm `x` of each length, [`propose`] makes this sum as small as the bounds let it:
//!
//! `Σ w (ln(F/F*)/s)² + λ Σ (Δ³x)²`
//!
//! `F` is the pull of a string, or the force by which a finger draws it aside, and `F*` its target. A pull goes
//! with the square of the length and `s` is 2; the pluck stiffness goes with the length and `s` is 1. So both
//! count by the length that they ask for, and `w` is the maker's weight. The stiffness of the string bends these
//! laws a little; it is in the figures themselves, which are those of [`mechanics`](super::mechanics).
//!
//! `Δ³x` is the third difference over the strings by their number, as this is how the pins stand; a curve that is
//! smooth over the pitch would have a step at each half-tone. Third differences let every curve pass whose logarithm
//! is a line or a parabola, and a harp is nearly one: its lengths grow by a ratio from string to string that falls
//! slowly towards the bass. Second differences would pull the bass straight, and so make it too long.
//!
//! `λ` is given by the waves that it lets pass: of a wave in the curve that is `P` strings long, half is left if
//! `λ = (2 sin(π/P))⁻⁶`; of a wave of half that length about a sixtieth, and of one of twice that length all but
//! about a sixtieth. See [`Strength`].
//!
//! # What is where no pull is known
//!
//! A string without pitch, make-up or target has no pull to meet. The curve runs through its place and gives it its
//! length. Where fewer than three strings have a target or are locked, second or first differences take the place
//! of the third; where none has, every string keeps its length, moved within its bounds. Beyond the last string
//! with a target the curve runs on as a parabola, which is not to be trusted far.
//!
//! # Source
//!
//! The sum is the graduation of E. T. Whittaker (On a new method of graduation, Proc. Edinburgh Math. Soc. 41 (1923)
//! 63) and R. Henderson, with bounds added (from memory). What it leaves of a wave follows from the difference of a
//! sine wave, `(2 sin(π/P))³` for the third.

mod bounds;
mod least;
mod shape;
mod target;

use std::f64::consts::PI;

pub use self::bounds::{Bound, Conflict};
use self::bounds::{Edges, known_m};
use self::least::Problem;
pub use self::shape::{Faired, Strength, Unevenness, fair, scale, stretch, to_longest, unevenness};
use self::target::Target;
use super::analysis::{Harp, HarpString, Known};
use super::units::{Force, Length, Stiffness};

/// By how much the waves grow from one try to the next, where a greatest kink is asked.
const LONGER_WAVES: f64 = 1.25;

/// What a string should be like.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Aim {
    /// Its pull.
    Tension(Force),
    /// What a finger meets at the pluck point of the harp.
    Stiffness(Stiffness),
}

/// What is asked of one string. Bounds that are no numbers count as none.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Asked {
    /// The target; `None` leaves the string to the curve.
    pub aim: Option<Aim>,
    /// How much the target counts, usually 1; at 0 or below it does not count.
    pub weight: f64,
    /// The length stays as it is, whatever the bounds. A string without a length cannot be locked.
    pub is_locked: bool,
    /// The least length.
    pub least: Option<Length>,
    /// The greatest length, as neck and board leave it.
    pub most: Option<Length>,
    /// The least load share, in per cent.
    pub least_share_percent: Option<f64>,
    /// The greatest load share, in per cent.
    pub most_share_percent: Option<f64>,
}

impl Default for Asked {
    /// Nothing is asked; a target that is set counts once.
    fn default() -> Self {
        Self {
            aim: None,
            weight: 1.0,
            is_locked: false,
            least: None,
            most: None,
            least_share_percent: None,
            most_share_percent: None,
        }
    }
}

/// What holds the length of a string where it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Held {
    /// It is locked.
    Locked,
    /// It lies at the least length, by this bound.
    Least(Bound),
    /// It lies at the greatest length, by this bound.
    Most(Bound),
}

/// How smooth the curve is to be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Smoothing {
    /// A wave of so many strings is halved; above 2, see [`Strength::waves`].
    pub waves: f64,
    /// How far a bridge pin may stand off its neighbours, see [`Unevenness::kink`]. Where it is farther, the waves
    /// are made a quarter longer until it is not, or until the curve is as smooth as the bounds let it be.
    pub greatest_kink: Option<Length>,
    /// By how much each string is to be longer than the one above it at least. Where one is not, the waves are made
    /// longer in the same way; at the end the bounds may still leave some that are not.
    pub least_rise: Option<Length>,
}

impl Smoothing {
    /// So smooth, whatever kinks are left.
    pub fn of(strength: Strength, strings: usize) -> Self {
        Self { waves: strength.waves(strings), greatest_kink: None, least_rise: None }
    }
}

/// Lengths that are proposed, and what follows from them. Lists have one entry for each string.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// The lengths. A locked string, and one that keeps its length for want of any target, has the length it had,
    /// or the reason that it had none.
    pub lengths: Vec<Known<Length>>,
    /// `ln(F/F*)` at the lengths before; `None` where there is no target or no figure.
    pub off_before: Vec<Option<f64>>,
    /// `ln(F/F*)` at the lengths proposed.
    pub off_after: Vec<Option<f64>>,
    /// What holds a string where it is.
    pub held: Vec<Option<Held>>,
    /// The sum at the lengths before; `None` if not all of them are known, or one is no length for its string.
    pub sum_before: Option<f64>,
    /// The sum at the lengths proposed.
    pub sum_after: f64,
    /// How uneven the lengths were.
    pub uneven_before: Unevenness,
    /// How uneven the lengths proposed are.
    pub uneven_after: Unevenness,
    /// Strings that a load share was asked of, but whose breaking load or pull is not known: these were not held
    /// to it.
    pub without_share: Vec<usize>,
    /// The waves that were halved: longer than asked where a kink was too great.
    pub waves: f64,
    /// Proof of the least sum: the share of its length by which any string would still move, if it alone moved to
    /// its best place within its bounds.
    pub off_best: f64,
    /// Steps of Gauss and Newton.
    pub steps: usize,
}

/// Lengths for given make-ups and pitches that meet the targets along a smooth curve, within bounds.
///
/// `asked` has one entry for each string of the harp; where one is missing, nothing is asked. What is least, and
/// what becomes of strings without a pull, stands at the head of this module. To propose for a range alone, lock the
/// strings outside it. The sum is least for the figures of the engine, stiffness included, as far as
/// [`Proposal::off_best`] tells.
///
/// # Errors
///
/// When the bounds of a string that is not locked leave it no length: all such strings, and their bounds.
///
/// # Example
///
/// Of strings of 1 g/m at 200 Hz with 40 N each, every one is half a metre long, and the curve is a line.
///
/// ```
/// # use stringloft::engine::analysis::{Conditions, Harp, HarpString, Limits, Mechanism, Unknown};
/// # use stringloft::engine::construction::MakeUp;
/// # use stringloft::engine::units::{Force, Frequency, Length, LinearDensity, Stiffness};
/// use stringloft::engine::lengths::{Aim, Asked, Smoothing, Strength, propose};
///
/// # let make_up = MakeUp::weighed(LinearDensity::from_g_per_m(1.0), None, None, None)?;
/// # let string = HarpString {
/// #     note: None,
/// #     frequency: Ok(Frequency::from_hz(200.0)),
/// #     length: Err(Unknown::Length),
/// #     make_up: Ok(make_up),
/// #     mechanism: Mechanism::None,
/// # };
/// # let limits = Limits {
/// #     working_share_percent: 75.0,
/// #     soft_share_percent: 75.0,
/// #     slack_share_percent: 20.0,
/// #     least_tension: Force::from_n(1.0),
/// #     stiffness_band: (Stiffness::from_n_per_m(1.0), Stiffness::from_n_per_m(1e4)),
/// #     partial_8_cents: 10.0,
/// #     jump_percent: 50.0,
/// #     least_raise: Length::from_mm(0.0),
/// # };
/// # let conditions = Conditions::default();
/// # let harp = Harp { strings: vec![string; 5], pluck_ratio: 0.5, conditions, limits };
/// let aim = Some(Aim::Tension(Force::from_n(40.0)));
/// let asked = [Asked { aim, ..Asked::default() }; 5];
/// let smoothing = Smoothing::of(Strength::Well, 5);
/// let proposal = propose(&harp, &asked, smoothing).expect("the bounds leave room");
/// for length in &proposal.lengths {
///     assert!((length.as_ref().expect("a length").to_mm() - 500.0).abs() < 1e-6);
/// }
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn propose(
    harp: &Harp,
    asked: &[Asked],
    smoothing: Smoothing,
) -> Result<Proposal, Vec<Conflict>> {
    let cases = cases(harp, asked);
    let conflicts: Vec<Conflict> = (cases.iter().enumerate())
        .filter_map(|(index, case)| if case.is_kept { None } else { case.edges.conflict(index) })
        .collect();
    if !conflicts.is_empty() {
        return Err(conflicts);
    }
    let smoothest = Strength::Fully.waves(cases.len());
    let (mut waves, kink) = usable(smoothing, smoothest);
    let pull = |index: usize, log: f64| {
        let case: &Case = cases.get(index)?;
        if case.fixed_m.is_some() { None } else { case.target.as_ref()?.pull(log) }
    };
    let anchors = cases.iter().filter(|case| case.is_anchor()).count();
    let mut problem = Problem {
        least: cases.iter().map(|case| case.edges.least.0.ln()).collect(),
        most: cases.iter().map(|case| case.edges.most.0.ln()).collect(),
        order: anchors.min(3),
        stiff: 0.0,
        pull: &pull,
    };
    let mut logs: Vec<f64> = cases.iter().map(|case| case.start().unwrap_or(0.0)).collect();
    let (mut off_best, mut steps) = (0.0, 0);
    let lengths = loop {
        problem.stiff = stiff(waves, problem.order);
        if anchors > 0 {
            let found = problem.minimise(&logs);
            (logs, off_best, steps) = (found.logs, found.off, steps + found.steps);
        }
        let length = |(case, log): (&Case, &f64)| case.length(*log, anchors > 0);
        let lengths: Vec<Known<Length>> = cases.iter().zip(&logs).map(length).collect();
        let standing_out = unevenness(&lengths).kink.map_or(0.0, |(_, kink)| kink.to_m().abs());
        let rises = smoothing.least_rise.is_none_or(|least| rise(&lengths, least));
        if anchors == 0 || standing_out <= kink && rises || waves >= smoothest {
            break lengths;
        }
        waves = (waves * LONGER_WAVES).min(smoothest);
    };
    let before: Vec<Known<Length>> = cases.iter().map(|case| case.before).collect();
    let off = |lengths: &[Known<Length>]| -> Vec<Option<f64>> {
        let at =
            |(case, length): (&Case, &Known<Length>)| case.target.as_ref()?.off((*length).ok()?);
        cases.iter().zip(lengths).map(at).collect()
    };
    let logs_before: Option<Vec<f64>> =
        before.iter().map(|length| known_m(*length).map(f64::ln)).collect();
    let off_before = off(&before);
    let is_told = cases
        .iter()
        .zip(&off_before)
        .all(|(case, off)| case.fixed_m.is_some() || case.target.is_none() || off.is_some());
    let without_share = (cases.iter().enumerate())
        .filter_map(|(index, case)| (case.edges.lacks_share && !case.is_kept).then_some(index));
    Ok(Proposal {
        held: cases.iter().zip(&lengths).map(|(case, length)| case.held(*length)).collect(),
        sum_before: logs_before.filter(|_| is_told).map(|logs| problem.sum(&logs)),
        sum_after: problem.sum(&logs),
        uneven_before: unevenness(&before),
        uneven_after: unevenness(&lengths),
        off_after: off(&lengths),
        lengths,
        off_before,
        without_share: without_share.collect(),
        waves,
        off_best,
        steps,
    })
}

/// Whether each length that is known is longer than the one above it, by so much at least.
pub fn rise(lengths: &[Known<Length>], least: Length) -> bool {
    let known: Vec<f64> = lengths.iter().filter_map(|length| known_m(*length)).collect();
    known.windows(2).all(|pair| pair[1] - pair[0] >= least.to_m())
}

/// Waves and greatest kink in metres, as numbers that can be computed with.
fn usable(smoothing: Smoothing, smoothest: f64) -> (f64, f64) {
    let waves = if smoothing.waves.is_nan() { smoothest } else { smoothing.waves };
    let kink = smoothing.greatest_kink.map_or(f64::INFINITY, Length::to_m);
    (waves.min(smoothest).max(2.0), if kink.is_nan() { f64::INFINITY } else { kink })
}

/// `√λ` for differences of an order: a wave of `waves` strings is halved.
fn stiff(waves: f64, order: usize) -> f64 {
    let bend = 1.0 / (2.0 * (PI / waves).sin());
    (0..order).map(|_| bend).product()
}

/// What is known of a string before lengths are proposed.
struct Case {
    before: Known<Length>,
    target: Option<Target>,
    edges: Edges,
    /// Its length stays.
    is_kept: bool,
    /// The length of one that stays, if it can be computed with.
    fixed_m: Option<f64>,
}

fn cases(harp: &Harp, asked: &[Asked]) -> Vec<Case> {
    let nothing = Asked::default();
    let case = |(index, string): (usize, &HarpString)| {
        let asked = asked.get(index).unwrap_or(&nothing);
        let mut edges = Edges::of(string, asked);
        let is_kept = asked.is_locked && string.length.is_ok();
        let fixed_m = known_m(string.length).filter(|_| is_kept);
        if let Some(length) = fixed_m {
            (edges.least, edges.most) = ((length, Bound::Asked), (length, Bound::Asked));
        }
        let target = Target::of(string, asked, harp.pluck_ratio);
        Case { before: string.length, target, edges, is_kept, fixed_m }
    };
    harp.strings.iter().enumerate().map(case).collect()
}

impl Case {
    /// It holds the curve.
    const fn is_anchor(&self) -> bool {
        self.fixed_m.is_some() || self.target.is_some()
    }

    /// The logarithm of a length to begin with.
    fn start(&self) -> Option<f64> {
        let near = self.target.as_ref().map(|target| target.near().to_m());
        let length = self.fixed_m.or(near).or_else(|| known_m(self.before))?;
        Some(length.ln()).filter(|log| log.is_finite())
    }

    /// The length to propose.
    fn length(&self, log: f64, has_anchors: bool) -> Known<Length> {
        if self.is_kept || !has_anchors && known_m(self.before).is_none() {
            return self.before;
        }
        Ok(Length::from_m(log.exp().max(self.edges.least.0).min(self.edges.most.0)))
    }

    fn held(&self, length: Known<Length>) -> Option<Held> {
        let (length, Edges { least, most, .. }) = (length.ok()?.to_m(), self.edges);
        if self.is_kept {
            Some(Held::Locked)
        } else if length <= least.0 * (1.0 + 1e-12) {
            Some(Held::Least(least.1))
        } else if length >= most.0 * (1.0 - 1e-12) {
            Some(Held::Most(most.1))
        } else {
            None
        }
    }
}
