//! The step of the soundboard: its planing, its bars and its string holes.

use super::{Check, Model, Step, check, mm, step};
use crate::design::display::decimals;
use crate::engine::parts::{HoleKind, Kind, Spot};
use crate::words::{building as say, semicolon};

impl Model<'_> {
    pub(super) fn soundboard(&self) -> Step {
        let [bass, treble] = self.part(Kind::Board).map_or([0.0; 2], |part| {
            // The near face ends at the lower end of the board, where it is thickest as a rule.
            let cell = part.cells.first();
            let deep = |at: usize| {
                cell.and_then(|cell| cell.far.get(at)).map_or(0.0, |at| part.face.own(*at)[2])
            };
            [deep(0), deep(1)]
        });
        let mut does = vec![say::soundboard_plane(&mm(bass), &mm(treble))];
        let bars = self.count(Kind::CrossBar) + self.count(Kind::LongBar);
        if bars > 0 {
            does.push(say::soundboard_bars(&bars));
        }
        if self.count(Kind::Rib) > 0 {
            does.push(say::SOUNDBOARD_RIB.into());
        }
        let holes = self.parts.counts.string_holes;
        if holes > 0 {
            let angle = decimals(self.design.geometry.board_angle_deg, 1);
            does.push(say::soundboard_drill(&angle, &holes, &self.widths()));
        }
        let mut checks: Vec<Check> =
            self.below_lowest().map(|m| check(say::CHECK_LOWEST_HOLE, m)).into_iter().collect();
        let across = self.across_holes(Kind::Board, HoleKind::String);
        checks.extend(across.map(|m| check(say::CHECK_HOLES, m)));
        step(say::SOUNDBOARD, does, checks)
    }

    /// How wide the string holes are, to a tenth of a millimetre, run by run of strings.
    fn widths(&self) -> String {
        let own = self.part(Kind::Board).into_iter().flat_map(|board| &board.holes);
        let mut runs: Vec<(usize, usize, String)> = Vec::new();
        for hole in own {
            let wide = mm(hole.diameter.to_m());
            match runs.last_mut() {
                Some(run) if run.2 == wide && run.1 + 1 == hole.string => run.1 = hole.string,
                _ => runs.push((hole.string, hole.string, wide)),
            }
        }
        let said = |(first, last, wide): (usize, usize, String)| {
            if first == last {
                format!("{first}: {wide}")
            } else {
                format!("{first}–{last}: {wide}")
            }
        };
        runs.into_iter().map(said).collect::<Vec<_>>().join(semicolon())
    }

    /// From the lower edge of the outside of the soundboard to the middle of the lowest string hole, along it.
    fn below_lowest(&self) -> Option<f64> {
        let board = self.part(Kind::Board)?;
        let lowest = board.holes.iter().max_by_key(|hole| hole.string)?;
        let along = |at: Spot| board.face.own(at)[1];
        let corners = self.corners(Kind::Board)?.map(|at| (along(at) - along(lowest.at)).abs());
        corners.into_iter().reduce(f64::min)
    }
}
