//! The bars of the board: along it from block to block, and across it in pieces between these.

use super::super::PartsError;
use super::super::name::{Kind, Name};
use super::super::solid::{Plane, Spot, meet, minus, size};
use super::super::walls::{ASIDE, Walls, spot};
use super::{HANDS, Maker};

impl Maker<'_> {
    /// Bars along the board from block to block, and between these, the rib and the liners those across.
    pub(super) fn bars(&mut self) -> Result<(), PartsError> {
        let (making, walls) = (self.making, self.walls);
        let board = &making.build.board;
        let bars = &board.bars;
        let inner = walls.board.1;
        let (wide, high) = (0.5 * bars.pair_size.0.to_m(), bars.pair_size.1.to_m());
        let mut shares = Vec::new();
        if wide > 0.0 && high > 0.0 {
            let (first, last) = bars.pair_shares;
            let step = |at: usize| at as f64 / (bars.pairs.max(2) - 1) as f64;
            shares.extend((0..bars.pairs).map(|at| first + (last - first) * step(at)));
        }
        for (at, share) in shares.iter().enumerate() {
            for hand in HANDS {
                let share = hand.sign() * share;
                let ring = self.round_bar(hand.sign(), share, wide);
                let name = Name { kind: Kind::LongBar, hand: Some(hand), number: at + 1 };
                let faces = (inner, inner.moved(high));
                self.add(name, &making.woods.bars, faces, &ring, walls.along)?;
            }
        }
        let (half, tall) = (0.5 * bars.cross_size.0.to_m(), bars.cross_size.1.to_m());
        if bars.cross == 0 || half <= 0.0 || tall <= 0.0 {
            return Ok(());
        }
        let rib =
            if board.rib.inside.1.to_m() > 0.0 { 0.5 * board.rib.inside.0.to_m() } else { 0.0 };
        let length = size(minus(spot(making.band.board.1), spot(making.band.board.0)));
        let mut number = 0;
        for at in 0..bars.cross {
            let s = length
                * match board.cross_shares {
                    Some((first, last)) => {
                        first + (last - first) * at as f64 / (bars.cross.max(2) - 1) as f64
                    }
                    None => (at + 1) as f64 / (bars.cross + 1) as f64,
                };
            // Where the blocks are, these hold the board.
            if s - half < self.free_m.0.min(walls.along_m(self.block_top()?))
                || s + half > self.free_m.1
            {
                continue;
            }
            for hand in HANDS {
                let sign = hand.sign();
                let edges = self.bar_edges(sign, rib, (&shares, wide), (s - half, s + half));
                for pair in edges.chunks_exact(2) {
                    number += 1;
                    let name = Name { kind: Kind::CrossBar, hand: Some(hand), number };
                    let ring = [walls.cut(s - half), pair[1], walls.cut(s + half), pair[0]];
                    let faces = (inner, inner.moved(tall));
                    self.add(name, &making.woods.bars, faces, &ring, ASIDE)?;
                }
            }
        }
        Ok(())
    }

    /// How far off the middle two planes lie on the inside of the board, so far along it.
    fn aside_m(&self, plane: Plane, s: f64) -> f64 {
        meet(self.walls.board.1, self.walls.cut(s), plane).map_or(f64::NAN, |at| at[2].abs())
    }

    /// The planes round a bar along the board, which ends at the liner where it comes to it before the knee block.
    fn round_bar(&self, sign: f64, share: f64, wide: f64) -> Vec<Plane> {
        let walls = self.walls;
        let (outer, inner) = (walls.fanned(share, sign * wide), walls.fanned(share, -sign * wide));
        let liner = walls.liner_in(sign);
        let meets = |plane| {
            let at =
                |bound| meet(walls.board.1, self.shoulder, bound).map_or(0.0, |at| at[2].abs());
            at(plane) > at(liner)
        };
        let ends = match (meets(outer), meets(inner)) {
            (false, _) => vec![outer, self.shoulder],
            (true, false) => vec![outer, liner, self.shoulder],
            (true, true) => vec![outer, liner],
        };
        std::iter::once(self.block).chain(ends).chain([inner]).collect()
    }

    /// What the pieces of a bar across lie between, in pairs: the rib, the bars along, the liner.
    fn bar_edges(
        &self,
        sign: f64,
        rib: f64,
        (shares, wide): (&[f64], f64),
        (low, high): (f64, f64),
    ) -> Vec<Plane> {
        let walls = self.walls;
        let liner = walls.liner_in(sign);
        let mut edges = vec![Plane::new(ASIDE, sign * rib)];
        for share in shares.iter().map(|share| sign * share) {
            let (inner, outer) =
                (walls.fanned(share, -sign * wide), walls.fanned(share, sign * wide));
            if self.aside_m(outer, high) <= self.aside_m(liner, high) {
                edges.extend([inner, outer]);
            } else if self.aside_m(inner, low) < self.aside_m(liner, low) {
                // The bar runs out beside it: nothing fits between that and the liner.
                edges.push(inner);
                return edges;
            }
        }
        edges.push(liner);
        edges
    }

    fn block_top(&self) -> Result<Spot, PartsError> {
        let crossed = PartsError::Crossed(Kind::FootBlock);
        Walls::corner(self.block, self.walls.board.1).ok_or(crossed)
    }
}
