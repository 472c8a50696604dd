//! How far what is allowed lies from breaking, or from whatever else ends a part.

use super::duration::YEAR_S;
use super::wood::Margin;

/// For how long the later figure holds.
const LATER_S: f64 = 10.0 * YEAR_S;

/// Yield of metal over what is allowed of it. A choice of this program.
pub const METAL: f64 = 1.5;

/// What ends a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Ending {
    /// It breaks.
    Breaks,
    /// It buckles.
    Buckles,
    /// Its metal bends for good.
    Yields,
    /// Its wood is crushed across the grain, which breaks nothing.
    Crushed,
}

/// How many times what is allowed a part bears, at once and over ten years.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reserve {
    /// What ends it.
    pub ending: Ending,
    /// In a test of some minutes.
    pub now: Margin,
    /// Over ten years.
    pub later: Margin,
}

impl Reserve {
    /// Of wood, which tires as the Madison curve says; see [`madison_ratio`](super::duration::madison_ratio).
    pub fn of_wood(now: Margin) -> Option<Self> {
        Some(Self { ending: Ending::Breaks, now, later: now.after(LATER_S)? })
    }

    /// Of wood that buckles: as that which breaks, which is the careful way.
    pub fn of_slender_wood(now: Margin) -> Option<Self> {
        Some(Self { ending: Ending::Buckles, ..Self::of_wood(now)? })
    }

    /// Of a board that buckles, against a limit that has its creep over ten years: at once it has `crept` times as much.
    pub fn of_board(later: Margin, crept: f64) -> Self {
        let now = Margin { mean: later.mean.map(|of| crept * of), weak: crept * later.weak };
        Self { ending: Ending::Buckles, now, later }
    }

    /// Of wood that is crushed across its grain, whatever the time.
    ///
    /// # Source
    ///
    /// ASTM D245, which knows no duration of such a load (from memory).
    pub const fn of_crushed(now: Margin) -> Self {
        Self { ending: Ending::Crushed, now, later: now }
    }

    /// Of metal up to its yield, which does not fall under a load that rests.
    pub const fn of_metal() -> Self {
        let now = Margin { mean: None, weak: METAL };
        Self { ending: Ending::Yields, now, later: now }
    }

    /// Of two that may end first the nearer to it; where these end in different ways, it is said to break.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        let ending = if self.ending == other.ending { self.ending } else { Ending::Breaks };
        Self { ending, now: self.now.or(other.now), later: self.later.or(other.later) }
    }

    /// Under how many times its load the weakest of twenty ends over ten years that is loaded so far.
    pub fn least(&self, used: f64) -> f64 {
        self.later.weak / used
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    const WEAK: Margin = Margin { mean: None, weak: 2.0 };

    #[test]
    fn wood_tires_and_metal_does_not() {
        let wood = Reserve::of_wood(WEAK).unwrap();
        assert_close(wood.later.weak / wood.now.weak, 0.62, 5e-3, "Madison's ten years");
        let metal = Reserve::of_metal();
        assert_eq!(metal.now, metal.later);
        let both = metal.or(wood);
        assert_eq!((both.ending, both.now.weak), (Ending::Breaks, 1.5));
        assert_close(both.later.weak, wood.later.weak, 1e-15, "the wood is nearer in the end");
        assert_close(both.least(0.5), 2.0 * wood.later.weak, 1e-15, "half of its load");
    }

    /// A board that gives 1.43 times as much in ten years bows at 1.43 times as much at once.
    #[test]
    fn what_has_crept_buckles_sooner() {
        let board = Reserve::of_board(Margin { mean: Some(2.5), weak: 1.6 }, 1.43);
        assert_close(board.now.mean.unwrap(), 3.575, 1e-12, "mean");
        assert_close(board.now.weak / board.later.weak, 1.43, 1e-12, "weakest");
        assert_eq!(board.ending, Ending::Buckles);
    }
}
