//! In which order and in how many passes a harp is brought up to pitch, and how far each string is tuned sharp meanwhile,
//! so that it comes down to its pitch by itself while the others follow.
//!
//! All is linear and elastic, as in [`giving`](super::super::giving): what wood, glue, knots and strings creep comes on
//! top, and makes more passes in the days that follow.

mod standing;

use self::standing::{Elastic, Standing};
use crate::engine::analysis::{Analysis, Harp, Known, Limits, StringFigures, is_soft};
use crate::engine::bearing::{Gives, Order};
use crate::engine::construction::MakeUp;
use crate::engine::giving::{Strung, cents, known};
use crate::engine::pitch::ratio;
use crate::engine::units::{Force, Frequency};

/// How far below pitch the passes before the first one at pitch end, in cents. Common practice, no source.
pub const BEFORE_PITCH_CENTS: [f64; 2] = [500.0, 100.0];
/// How near to pitch every string must be when a plan is done, in cents. Common practice, no source.
pub const WITHIN_CENTS: f64 = 5.0;
/// No string is tuned sharper than that, in cents, whatever it bears. Common practice, no source.
pub const MOST_SHARP_CENTS: f64 = 50.0;
/// No plan has more passes.
pub const MOST_PASSES: usize = 12;

/// What is asked of a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// The order within each pass.
    pub order: Order,
    /// How far below pitch each of the first passes ends, in cents; the later ones end at pitch.
    pub before_cents: Vec<f64>,
    /// How near to pitch every string must be at the end, in cents.
    pub within_cents: f64,
}

impl Default for Asked {
    fn default() -> Self {
        Self {
            order: Order::InTurns,
            before_cents: BEFORE_PITCH_CENTS.to_vec(),
            within_cents: WITHIN_CENTS,
        }
    }
}

/// Whether a string is tuned as sharp as it would need to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reach {
    /// It is.
    Whole,
    /// It would need more than it may take.
    Limited,
    /// It is at its highest load share already, so that it is not tuned sharp at all.
    NoRoom,
    /// It is not known what it bears, so that it is not tuned sharp at all.
    NoStrength,
}

/// What is done with one string in a pass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// Its place in the harp.
    pub place: usize,
    /// The pitch it is tuned to at its turn.
    pub tune_to: Frequency,
    /// How far that is above what the pass ends at, in cents.
    pub sharp_cents: f64,
    /// Whether that is all it needs.
    pub reach: Reach,
    /// How far its pin turns, in turns: in the first pass from slack.
    pub pin_turns: Known<f64>,
    /// How far it is off when the pass is done, in cents, least and most; below 0 it is flat. `None` where that cannot be
    /// foretold.
    pub left_cents: Option<(f64, f64)>,
}

/// Once through all strings.
#[derive(Clone, Debug, PartialEq)]
pub struct Pass {
    /// How far below pitch it ends, in cents.
    pub below_cents: f64,
    /// In the order of the work.
    pub steps: Vec<Step>,
}

impl Pass {
    /// How far the string is off that is furthest off when the pass is done, in cents; `None` where that cannot be
    /// foretold.
    pub fn worst_cents(&self) -> Option<f64> {
        let sizes = self.steps.iter().map(|step| {
            let (least, most) = step.left_cents?;
            Some(least.abs().max(most.abs()))
        });
        sizes.reduce(|one, other| Some(one?.max(other?))).flatten()
    }
}

/// How a harp is brought up.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// From the first to the last.
    pub passes: Vec<Pass>,
    /// Whether it is known how the harp gives, so that falls are foretold. If not, the plan has one pass at pitch and says
    /// nothing of what is left.
    pub is_foretold: bool,
    /// Whether all strings are near enough after the last pass.
    pub is_enough: bool,
    /// How many passes it would take with every string tuned to its pitch and none sharp; `None` where these are more than
    /// [`MOST_PASSES`], or cannot be foretold.
    pub without_sharp: Option<usize>,
    /// Places of strings that are left out, as they have no tension, no place or no modulus.
    pub left_out: Vec<usize>,
}

/// The highest tension to which a string may be brought for a while, in newtons, and why not more.
///
/// Half of what is left to breaking, counted in pitch, within the share of its breaking load that the maker allows, and
/// at most [`MOST_SHARP_CENTS`] above pitch. A string that is at that share already, or of which no breaking load is
/// known, is never tuned sharp.
///
/// # Source
///
/// Common practice, no source.
///
/// # Example
///
/// ```
/// use stringloft::engine::settling::plan::{Reach, most_tension_n};
///
/// assert_eq!(most_tension_n(100.0, Some((100.5, 80.0))), (100.0, Reach::NoRoom));
/// assert_eq!(most_tension_n(100.0, None), (100.0, Reach::NoStrength));
/// let (most, _) = most_tension_n(100.0, Some((102.01, 100.0)));
/// assert!((most - 101.0).abs() < 1e-9);
/// ```
pub fn most_tension_n(tension_n: f64, bears: Option<(f64, f64)>) -> (f64, Reach) {
    let Some((breaking_n, share_percent)) = bears else { return (tension_n, Reach::NoStrength) };
    let allowed = 0.01 * share_percent * breaking_n;
    if allowed <= tension_n {
        return (tension_n, Reach::NoRoom);
    }
    let half_way = (tension_n * breaking_n).sqrt();
    let sharpest = tension_n * ratio(MOST_SHARP_CENTS) * ratio(MOST_SHARP_CENTS);
    (allowed.min(half_way).min(sharpest), Reach::Limited)
}

/// A plan by which a harp is brought up to pitch.
///
/// Each string is brought at its turn to the tension that it has when its own pin and those before it are wound as far as
/// all will be at the end of the pass, and those after it as far as they are now: so that it lands when they follow. That is
/// reckoned with a harp midway between those that give least and most; what is left is reckoned with each of these. In
/// the passes that end below pitch no string goes above its pitch, at pitch none beyond [`most_tension_n`]; the next pass
/// makes up for what is lacking.
///
/// # Source
///
/// Hooke's law and the sum of small movements; worked out for this project.
pub fn plan(gives: Option<&Gives>, harp: &Harp, analysis: &Analysis, asked: &Asked) -> Plan {
    let order = asked.order.places(analysis.strings.len());
    let strings = Strings::of(gives, harp, analysis, &order);
    let foretold = gives.and_then(|gives| foretold(gives, &strings, asked));
    let left_out = |strings: &Strings<'_>| {
        let places = 0..analysis.strings.len();
        places.filter(|place| strings.all.iter().all(|one| one.place != *place)).collect()
    };
    foretold.map_or_else(
        || {
            let strings = Strings::of(None, harp, analysis, &order);
            Plan { left_out: left_out(&strings), ..not_foretold(&strings, asked) }
        },
        |plan| Plan { left_out: left_out(&strings), ..plan },
    )
}

/// A string with what the plan needs of it.
struct One<'a> {
    place: usize,
    /// The row of the matrix; 0 where there is none.
    row: usize,
    tension_n: f64,
    frequency: Frequency,
    /// Over weeks and over minutes; without stiffness where there is no matrix to go with it.
    strung: [Strung; 2],
    most: (f64, Reach),
    figures: &'a StringFigures,
}

impl One<'_> {
    fn step(&self, (below_cents, target_n): (f64, f64), before_n: f64, reach: Reach) -> Step {
        let aim_n = self.tension_n * lower(below_cents);
        let sharp_cents = cents(target_n, aim_n);
        let hertz = self.frequency.to_hz() * ratio(sharp_cents - below_cents);
        let pin_turns = if before_n > 0.0 {
            let of_a_degree = self.figures.cents_per_pin_degree;
            of_a_degree.map(|degree| cents(target_n, before_n) / (360.0 * degree))
        } else {
            self.figures.pin_turns.map(|turns| turns * target_n / self.tension_n)
        };
        let tune_to = Frequency::from_hz(hertz);
        let place = self.place;
        Step { place, tune_to, sharp_cents, reach, pin_turns, left_cents: None }
    }
}

/// The share of the tension that is left so many cents below pitch.
fn lower(below_cents: f64) -> f64 {
    ratio(-below_cents) * ratio(-below_cents)
}

/// The strings in the order of the work.
struct Strings<'a> {
    all: Vec<One<'a>>,
}

impl<'a> Strings<'a> {
    fn of(gives: Option<&Gives>, harp: &Harp, analysis: &'a Analysis, order: &[usize]) -> Self {
        let one = |place: &usize| {
            let figures = analysis.strings.get(*place)?;
            let (frequency, tension) = (figures.frequency.ok()?, figures.tension.ok()?);
            let (row, strung) = match gives {
                Some(gives) => {
                    let row = gives.places.iter().position(|known| known == place)?;
                    (row, known(harp, figures, *place)?.2)
                }
                None => (0, [Strung { tension, stiffness_n_per_m: 0.0 }; 2]),
            };
            let tension_n = tension.to_n();
            let bears = figures.breaking_load.ok().map(Force::to_n);
            let make_up = harp.strings.get(*place)?.make_up.as_ref().ok()?;
            let bears = bears.map(|breaking| (breaking, share_of(&harp.limits, make_up)));
            let most = most_tension_n(tension_n, bears);
            Some(One { place: *place, row, tension_n, frequency, strung, most, figures })
        };
        Self { all: order.iter().filter_map(one).collect() }
    }

    /// The part of a matrix that these strings have, in their order.
    fn picked(&self, matrix: &[Vec<f64>]) -> Vec<Vec<f64>> {
        let row = |one: &One<'_>| self.all.iter().map(|other| matrix[one.row][other.row]).collect();
        self.all.iter().map(row).collect()
    }

    /// The harps that give least and most, each with strings over weeks and over minutes.
    fn harps(&self, gives: &Gives) -> Vec<Elastic> {
        let mut harps = Vec::new();
        for end in gives.ends() {
            let gives = self.picked(&end);
            for pace in 0..2 {
                let strings = self.all.iter().map(|one| one.strung[pace]).collect();
                harps.push(Elastic { gives: gives.clone(), strings });
            }
        }
        harps
    }
}

fn share_of(limits: &Limits, make_up: &MakeUp) -> f64 {
    limits.most_share_percent(is_soft(make_up))
}

/// The next pass: what ends it, and how every string stands before its turn.
fn next_pass(standing: &mut Standing<'_>, strings: &Strings<'_>, below_cents: f64) -> Option<Pass> {
    let aims: Vec<f64> = strings.all.iter().map(|one| one.tension_n * lower(below_cents)).collect();
    let wound_m = standing.harp.wound_m(&aims);
    let at_pitch = below_cents <= 0.0;
    let mut steps = Vec::new();
    for (turn, one) in strings.all.iter().enumerate() {
        let before = standing.tensions_n()[turn];
        let (most_n, why) = if at_pitch { one.most } else { (one.tension_n, Reach::Limited) };
        let (target, is_most) = standing.wind(turn, wound_m[turn], most_n)?;
        let reach = if is_most { why } else { Reach::Whole };
        steps.push(one.step((below_cents, target), before, reach));
    }
    Some(Pass { below_cents, steps })
}

/// Goes through the strings of a harp once; how far each is off then, in cents.
fn go_through(
    standing: &mut Standing<'_>,
    strings: &Strings<'_>,
    below_cents: f64,
    sharp_cents: impl Fn(usize) -> f64,
) -> Option<Vec<f64>> {
    for (turn, one) in strings.all.iter().enumerate() {
        standing.bring(turn, one.tension_n * lower(below_cents - sharp_cents(turn)))?;
    }
    let tensions = standing.tensions_n();
    let off = strings.all.iter().zip(&tensions).map(|(one, tension)| {
        // A string that has gone slack has fallen by more than can be said.
        cents(tension.max(0.0), one.tension_n * lower(below_cents))
    });
    Some(off.collect())
}

fn worst(off: &[f64]) -> f64 {
    off.iter().fold(0.0, |worst, off| worst.max(off.abs()))
}

/// How far below pitch a pass ends.
fn ends_below(asked: &Asked, pass: usize) -> f64 {
    asked.before_cents.get(pass).copied().unwrap_or(0.0)
}

fn foretold(gives: &Gives, strings: &Strings<'_>, asked: &Asked) -> Option<Plan> {
    let harps = strings.harps(gives);
    let midway = Elastic::midway(&harps)?;
    let mut foreseen = Standing::slack(&midway);
    let mut all: Vec<Standing<'_>> = harps.iter().map(Standing::slack).collect();
    let (mut passes, mut is_enough) = (Vec::new(), false);
    while !is_enough && passes.len() < MOST_PASSES && !strings.all.is_empty() {
        let below = ends_below(asked, passes.len());
        let mut pass = next_pass(&mut foreseen, strings, below)?;
        let mut ranges = vec![(f64::INFINITY, f64::NEG_INFINITY); pass.steps.len()];
        for standing in &mut all {
            let off = go_through(standing, strings, below, |turn| pass.steps[turn].sharp_cents)?;
            for ((least, most), off) in ranges.iter_mut().zip(off) {
                (*least, *most) = (least.min(off), most.max(off));
            }
        }
        for (step, range) in pass.steps.iter_mut().zip(ranges) {
            step.left_cents = Some(range);
        }
        is_enough = passes.len() >= asked.before_cents.len()
            && pass.worst_cents().is_some_and(|worst| worst <= asked.within_cents);
        passes.push(pass);
    }
    let without_sharp = without(&harps, strings, asked);
    Some(Plan { passes, is_foretold: true, is_enough, without_sharp, left_out: Vec::new() })
}

/// How many passes it takes with no string tuned sharp.
fn without(harps: &[Elastic], strings: &Strings<'_>, asked: &Asked) -> Option<usize> {
    let mut all: Vec<Standing<'_>> = harps.iter().map(Standing::slack).collect();
    for pass in 0..MOST_PASSES {
        let below = ends_below(asked, pass);
        let mut off = 0.0_f64;
        for standing in &mut all {
            off = off.max(worst(&go_through(standing, strings, below, |_| 0.0)?));
        }
        if pass >= asked.before_cents.len() && off <= asked.within_cents {
            return Some(pass + 1);
        }
    }
    None
}

/// The passes where nothing can be said of how the harp gives.
fn not_foretold(strings: &Strings<'_>, asked: &Asked) -> Plan {
    let all = asked.before_cents.iter().copied().chain([0.0]);
    let mut above = None;
    let mut passes = Vec::new();
    for below_cents in all {
        let step = |one: &One<'_>| {
            let aim = one.tension_n * lower(below_cents);
            let before = above.map_or(0.0, |above| one.tension_n * lower(above));
            one.step((below_cents, aim), before, Reach::Whole)
        };
        passes.push(Pass { below_cents, steps: strings.all.iter().map(step).collect() });
        above = Some(below_cents);
    }
    let without_sharp = None;
    Plan { passes, is_foretold: false, is_enough: false, without_sharp, left_out: Vec::new() }
}

#[cfg(test)]
mod tests;
