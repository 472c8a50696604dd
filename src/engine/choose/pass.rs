//! One pass of dynamic programming, from the lowest string up, a layer at a time.

use super::candidate::Candidate;
use super::chain::{Chain, Layer, Step};
use super::envelope::Envelope;

/// Up to so many pairs of items, all are tried.
const FEW: usize = 64;
/// No follower.
const NONE: u16 = u16::MAX;

/// The least sums from each item of each string to the lowest string.
#[derive(Clone, Debug, Default)]
pub(super) struct Pass {
    /// How much the cost counts, 1 or 0.
    cost_ratio: f64,
    /// What a unit of pull costs.
    pub multiplier: f64,
    layers: Vec<Sums>,
    /// Layers that are still to be done.
    left: usize,
}

/// Of one layer, by state and then by candidate.
#[derive(Clone, Debug, Default)]
struct Sums {
    width: usize,
    least: Vec<f64>,
    pulls: Vec<f64>,
    next: Vec<u16>,
}

/// The best follower found so far.
#[derive(Clone, Copy)]
struct Found {
    value: f64,
    pull: f64,
    next: u16,
}

const NOT_FOUND: Found = Found { value: f64::INFINITY, pull: f64::INFINITY, next: NONE };

/// Which followers a sweep looks at.
#[derive(Clone, Copy, PartialEq)]
enum Sweep {
    /// Of the same family, not thinner, and for the strings above whose core is this, with none that is thinner.
    NotThinner(f64),
    /// Of the same family.
    Within,
    /// Of families that come later.
    After,
    /// Of families that come before.
    Before,
}

impl Pass {
    /// Of the cost with a price on the pull.
    pub fn priced(chain: &Chain, multiplier: f64) -> Self {
        Self::new(chain, 1.0, multiplier)
    }

    /// Of the pull alone.
    pub fn of_pull(chain: &Chain) -> Self {
        Self::new(chain, 0.0, 1.0)
    }

    fn new(chain: &Chain, cost_ratio: f64, multiplier: f64) -> Self {
        let left = chain.layers.len();
        Self { cost_ratio, multiplier, layers: vec![Sums::default(); left], left }
    }

    /// The least sum from a candidate down, in a state of the counts.
    pub fn least(&self, layer: usize, state: usize, candidate: usize) -> f64 {
        let sums = &self.layers[layer];
        sums.least[state * sums.width + candidate]
    }

    /// The pull of the strings from a candidate down that have the least sum.
    pub fn pull(&self, layer: usize, state: usize, candidate: usize) -> f64 {
        let sums = &self.layers[layer];
        sums.pulls[state * sums.width + candidate]
    }

    /// The least sum of all, and the candidate of the highest string that has it.
    pub fn best(&self, state: usize) -> (f64, usize) {
        let width = self.layers.first().map_or(0, |sums| sums.width);
        let mut best = (f64::INFINITY, 0);
        for candidate in 0..width {
            let value = self.least(0, state, candidate);
            if value < best.0 {
                best = (value, candidate);
            }
        }
        best
    }

    /// The set that has the least sum from a candidate down.
    pub fn set(&self, chain: &Chain, first: usize, from: usize, state: usize) -> Vec<usize> {
        let mut set = vec![from];
        let (mut candidate, mut state) = (from, state);
        for layer in first..chain.layers.len().saturating_sub(1) {
            let sums = &self.layers[layer];
            let next = usize::from(sums.next[state * sums.width + candidate]);
            let candidates = (&chain.layers[layer].candidates, &chain.layers[layer + 1].candidates);
            let (Some(upper), Some(lower)) = (candidates.0.get(candidate), candidates.1.get(next))
            else {
                break;
            };
            let Some(way) = chain.way(layer, upper, lower, state) else { break };
            (candidate, state) = (next, way.state);
            set.push(next);
        }
        set
    }

    /// Whether all layers are done.
    pub const fn is_done(&self) -> bool {
        self.left == 0
    }

    /// Does one layer; gives the work that it took.
    pub fn advance(&mut self, chain: &Chain) -> usize {
        let Some(at) = self.left.checked_sub(1) else { return 0 };
        self.left = at;
        let layer = &chain.layers[at];
        let (width, states) = (layer.candidates.len(), chain.states());
        let size = width * states;
        let mut sums = Sums { width, ..Sums::default() };
        sums.least.reserve_exact(size);
        sums.pulls.reserve_exact(size);
        sums.next.reserve_exact(size);
        let below = chain.layers.get(at + 1);
        let pairs = width * below.map_or(0, |below| below.candidates.len());
        // No envelope knows of a limited step: then all pairs within it are tried.
        let limited = chain.soft.jump > 0.0;
        let few = pairs <= FEW || limited || below.is_some() && chain.free_of_rules(at);
        let mut found = vec![NOT_FOUND; width];
        let mut tree = Envelope::new();
        let cores = if few || chain.soft.shrinking == 0.0 { Vec::new() } else { cores(layer) };
        for state in 0..states {
            match below {
                None => found.fill(Found { value: 0.0, pull: 0.0, next: NONE }),
                Some(below) => {
                    found.fill(NOT_FOUND);
                    if few {
                        for (upper, best) in layer.candidates.iter().zip(&mut found) {
                            for lower in 0..below.candidates.len() {
                                self.try_way(chain, at, upper, lower, state, best);
                            }
                        }
                    } else {
                        self.stay(chain, at, state, &mut found);
                        self.sweeps(chain, at, state, &cores, (&mut tree, &mut found));
                    }
                }
            }
            for (candidate, found) in layer.candidates.iter().zip(&found) {
                let own = self.cost_ratio * candidate.own + self.multiplier * candidate.pull;
                sums.least.push(own + found.value);
                sums.pulls.push(candidate.pull + found.pull);
                sums.next.push(found.next);
            }
        }
        self.layers[at] = sums;
        let passes = 8 * (1 + cores.len() / 4);
        let swept = passes * (width + below.map_or(0, |below| below.candidates.len()));
        states * if few { pairs } else { swept } + 1
    }

    /// Takes the way to a candidate below if it is better.
    fn try_way(
        &self,
        chain: &Chain,
        at: usize,
        upper: &Candidate,
        next: usize,
        state: usize,
        best: &mut Found,
    ) {
        let lower = &chain.layers[at + 1].candidates[next];
        let Some(way) = chain.way(at, upper, lower, state) else { return };
        let value = self.cost_ratio * way.cost + self.least(at + 1, way.state, next);
        if value < best.value {
            let pull = self.pull(at + 1, way.state, next);
            *best = Found { value, pull, next: u16::try_from(next).unwrap_or(NONE) };
        }
    }

    /// The same item once more.
    fn stay(&self, chain: &Chain, at: usize, state: usize, found: &mut [Found]) {
        let below = &chain.layers[at + 1].candidates;
        let mut next = 0;
        for (upper, best) in chain.layers[at].candidates.iter().zip(found) {
            while below.get(next).is_some_and(|lower| lower.item < upper.item) {
                next += 1;
            }
            if below.get(next).is_some_and(|lower| lower.item == upper.item) {
                self.try_way(chain, at, upper, next, state, best);
            }
        }
    }

    fn sweeps(
        &self,
        chain: &Chain,
        at: usize,
        state: usize,
        cores: &[f64],
        (tree, found): (&mut Envelope, &mut [Found]),
    ) {
        let mut sweep = |kind| self.sweep(chain, at, state, kind, tree, found);
        for core in cores {
            sweep(Sweep::NotThinner(*core));
        }
        if chain.soft.shrinking < f64::INFINITY {
            sweep(Sweep::Within);
        }
        sweep(Sweep::After);
        if chain.soft.order < f64::INFINITY {
            sweep(Sweep::Before);
        }
    }

    /// Goes through the candidates of a string in their order, and puts in those below as they become allowed.
    fn sweep(
        &self,
        chain: &Chain,
        at: usize,
        state: usize,
        kind: Sweep,
        tree: &mut Envelope,
        found: &mut [Found],
    ) {
        let across = matches!(kind, Sweep::After | Sweep::Before);
        let Some(way) = chain.spend(state, across, true) else { return };
        let (upper, lower): (&Layer, &Layer) = (&chain.layers[at], &chain.layers[at + 1]);
        let step: Step = if across { upper.across } else { upper.within };
        let weight = self.cost_ratio * step.weight;
        let (count, most) = (upper.above.len(), lower.below.len());
        // From the bass families and the thick gauges, or the other way round.
        let upward = kind == Sweep::Before;
        let nth = |list: &[u16], nth: usize| {
            usize::from(list[if upward { nth } else { list.len() - 1 - nth }])
        };
        tree.clear(count);
        let (mut family, mut put) = (usize::MAX, 0);
        for visit in 0..count {
            let index = nth(&upper.above, visit);
            let candidate = &upper.candidates[index];
            if matches!(kind, Sweep::NotThinner(core) if core != candidate.core_above_nm()) {
                continue;
            }
            let rank = candidate.rank();
            if !across && rank != family {
                family = rank;
                tree.clear(count);
            }
            while put < most {
                let next = nth(&lower.below, put);
                let follower = &lower.candidates[next];
                let (later, same) = (follower.rank() > rank, follower.rank() == rank);
                let allowed = match kind {
                    Sweep::NotThinner(_) => same && follower.below_nm() >= candidate.above_nm(),
                    Sweep::Within => same,
                    Sweep::After => later,
                    Sweep::Before => !later && !same,
                };
                // What stands in a later family than this is passed over.
                let passed = !across && later;
                if !allowed && !passed {
                    break;
                }
                put += 1;
                let value = self.least(at + 1, way.state, next);
                let thin =
                    matches!(kind, Sweep::NotThinner(core) if core > follower.core_below_nm());
                if allowed && !thin && value < f64::INFINITY {
                    let foot = follower.log_pull - step.shift;
                    let height = value + weight * foot * foot;
                    let of = u16::try_from(next).unwrap_or(NONE);
                    tree.put(&upper.sorted, -2.0 * weight * foot, height, of);
                }
            }
            let rank = usize::from(upper.place[index]);
            if let Some(next) = tree.lowest(&upper.sorted, rank) {
                self.try_way(chain, at, candidate, next, state, &mut found[index]);
            }
        }
    }
}

/// The cores of a string's candidates, each once; few, as of a stock of a few materials.
fn cores(layer: &Layer) -> Vec<f64> {
    let mut cores: Vec<f64> = Vec::new();
    for candidate in &layer.candidates {
        let core = candidate.core_above_nm();
        if !cores.contains(&core) {
            cores.push(core);
        }
    }
    cores
}
