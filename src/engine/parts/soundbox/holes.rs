//! The sound holes in the back.

use super::super::name::Kind;
use super::super::outline::slot;
use super::super::solid::{Plane, meet};
use super::super::walls::ASIDE;
use super::{BEFORE_END_M, Maker};

/// Wood left between a sound hole and the liners. Common practice, no source.
const HOLE_BESIDE_M: f64 = 0.003;
/// No back has more sound holes.
const MOST_HOLES: usize = 40;

impl Maker<'_> {
    /// The sound holes in the back, each in the middle of a bay between braces, or one that is open all along.
    pub(super) fn sound_holes(&mut self) {
        let walls = self.walls;
        let (count, long, wide) = walls.sizes.holes;
        let count = count.min(MOST_HOLES);
        let mut edges = vec![self.free_m.0];
        edges.extend(&self.braces_m);
        edges.push(self.free_m.1);
        let bays = edges.len() - 1;
        let Some(back) = self.parts.iter_mut().find(|part| part.name.kind == Kind::Back) else {
            return;
        };
        let crown = walls.crown().1;
        let at = |s: f64| -> Option<(f64, f64)> {
            let place = meet(crown, walls.cut(s), Plane::new(ASIDE, 0.0))?;
            Some(back.flat_of(place))
        };
        let (long, wide) = (long.to_m(), wide.to_m());
        let holes: Vec<(f64, f64)> = if walls.sizes.is_slotted {
            let (low, high) = self.free_m;
            vec![(0.5 * (low + high), high - low - 2.0 * BEFORE_END_M)]
        } else {
            let bay_of = |hole: usize| (2 * hole + 1) * bays / (2 * count);
            let place = |hole: usize| {
                let bay = bay_of(hole);
                // Of several in a bay, each has its share of it.
                let mates: Vec<usize> = (0..count).filter(|of| bay_of(*of) == bay).collect();
                let rank = mates.iter().position(|of| *of == hole).unwrap_or(0);
                let share = (rank as f64 + 0.5) / mates.len() as f64;
                edges[bay] + share * (edges[bay + 1] - edges[bay])
            };
            (0..count).map(|hole| (place(hole), long)).collect()
        };
        if wide > 0.0 {
            // Where the liners leave no more room, a hole is narrower.
            let room = |s: f64| {
                let at = meet(walls.back.0, walls.cut(s), walls.liner_in(1.0))?;
                Some(2.0 * (at[2] - HOLE_BESIDE_M))
            };
            let slots = holes.into_iter().filter(|(_, long)| *long > 0.0);
            let cut = slots.filter_map(|(s, long)| {
                let wide = wide.min(room(s + 0.5 * long)?).min(room(s - 0.5 * long)?);
                (wide > 0.0).then_some(slot(at(s)?, long, wide))
            });
            back.openings = cut.collect();
        }
    }
}
