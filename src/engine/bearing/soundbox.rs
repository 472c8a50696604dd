//! The soundbox of a design: its section from place to place, and how far its walls are loaded.

use super::{Judged, Stiff};
use crate::engine::structure::frame::Point;
use crate::engine::structure::liner::Liner;
use crate::engine::structure::soundbox::{Back, Section, Wall};
use crate::engine::structure::verdict::{Use, Verdict};
use crate::engine::units::{Length, Stress};

/// What a soundbox is made of. Its width is that of the board; depth and the board's thickness go evenly from the lowest
/// string to the highest.
#[derive(Clone, Debug, PartialEq)]
pub struct BoxParts {
    /// At the lowest and at the highest string.
    pub depth: (Length, Length),
    /// The board.
    pub board: Wall,
    /// Each side.
    pub side: (Length, Wall),
    /// Modulus of a side as it bends from board to back.
    pub side_bends: Stress,
    /// The back.
    pub back: (Length, Wall),
    /// Width and height of each of four liners.
    pub liner: (Length, Length),
    /// From brace to brace, where that is given.
    pub braces: Option<Length>,
    /// Sound holes: how many, how long and how wide.
    pub holes: (usize, Length, Length),
    /// Whether the back is open all along, as wide as a hole.
    pub is_slotted: bool,
}

impl BoxParts {
    /// The liner under the edge of the board where the strings are so far up, 0 at the lowest and 1 at the highest.
    pub(super) fn liner_at(&self, up: f64) -> Liner {
        let depth = self.depth.0.to_m() + up * (self.depth.1.to_m() - self.depth.0.to_m());
        let wall = self.side.1;
        Liner {
            size: self.liner,
            side: self.side.0,
            depth: Length::from_m(depth),
            bends: self.side_bends,
            pressed: wall.across,
            along: wall.along,
            twisted: wall.shear,
            braces: self.braces,
        }
    }

    /// Its section where the strings are so far up, 0 at the lowest and 1 at the highest.
    pub(super) fn section(
        &self,
        up: f64,
        (width, thickness): (f64, f64),
        length_m: f64,
    ) -> Section {
        let even = |(low, high): (Length, Length)| low.to_m() + up * (high.to_m() - low.to_m());
        let (count, length, hole) = self.holes;
        // A hole is never wider than the back.
        let hole = Length::from_m(hole.to_m().min(0.9 * width));
        let opening = if self.is_slotted {
            Back::Slotted(hole)
        } else if count == 0 {
            Back::Closed
        } else {
            let pitch = Length::from_m(length_m / count as f64);
            Back::Holes(crate::engine::structure::soundbox::Holes { pitch, length, width: hole })
        };
        Section {
            width: Length::from_m(width),
            depth: Length::from_m(even(self.depth)),
            board: (Length::from_m(thickness), self.board),
            side: self.side,
            back: self.back,
            liner: self.liner,
            opening,
            braces: self.braces,
        }
    }
}

/// A cut through the soundbox.
#[derive(Clone, Debug, PartialEq)]
pub struct BoxCut {
    /// Where it is, on the line of the board.
    pub at: Point,
    /// How far it is loaded.
    pub verdict: Verdict,
    /// By how much of its length the board is stretched there, below 0 where it is shortened.
    pub board_strain: f64,
}

/// The soundbox under the pull of strings.
#[derive(Clone, Debug, PartialEq)]
pub struct BoxBearing {
    /// From the foot to the shoulder if no joint gives, then with joints that give as their sizes say, where these are
    /// known.
    pub cases: Vec<Vec<BoxCut>>,
}

impl BoxBearing {
    pub(super) fn new(cases: &[&Stiff], sections: &[Section], board_left: bool) -> Self {
        let case = |stiff: &&Stiff| {
            let cut = |(at, (place, cut)): (usize, &(Point, _))| BoxCut {
                at: *place,
                verdict: sections[at / 2].judge(*cut, board_left),
                board_strain: sections[at / 2].board_strain(*cut, board_left),
            };
            stiff.soundbox.iter().enumerate().take(2 * sections.len()).map(cut).collect()
        };
        Self { cases: cases.iter().map(case).collect() }
    }

    /// The cut of a case that is loaded most.
    fn worst_of(case: &[BoxCut]) -> Option<(&BoxCut, &Use)> {
        let mut known = case.iter().filter_map(|cut| Some((cut, cut.verdict.governing()?)));
        let first = known.next()?;
        Some(known.fold(first, |most, next| if next.1.ratio > most.1.ratio { next } else { most }))
    }

    /// The cut that is loaded most, and by what.
    pub fn worst(&self) -> Option<(&BoxCut, &Use)> {
        let mut known = self.cases.iter().filter_map(|case| Self::worst_of(case));
        let first = known.next()?;
        Some(known.fold(first, |most, next| if next.1.ratio > most.1.ratio { next } else { most }))
    }

    /// How far it is loaded, least and most.
    pub fn used(&self) -> Option<(f64, f64)> {
        let worst = |case: &Vec<BoxCut>| Some(Self::worst_of(case)?.0.verdict.clone());
        Judged { ends: self.cases.iter().filter_map(worst).collect() }.used()
    }

    /// What has no limit that is known.
    pub fn unjudged(&self) -> impl Iterator<Item = &Use> {
        let cuts = self.cases.iter().flatten();
        let uses = cuts.flat_map(|cut| &cut.verdict.uses);
        uses.filter(|used| used.ratio.is_none() && used.stress.to_pa() > 0.0)
    }
}
