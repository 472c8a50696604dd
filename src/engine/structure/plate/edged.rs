//! What of a board rests as long as its edges hold it in the same way, whatever lifts it and pushes it: worked out once.

use std::cell::OnceCell;
use std::rc::Rc;

use super::patch::{Grid, Pulled};
use super::{Banded, Edges, Stiffness, Support};
use crate::engine::structure::banded::Split;

/// Of so many ways to hold it a board is kept.
const MOST_KEPT: usize = 4;

/// A board whose edges hold it against turning.
pub(super) struct Edged {
    pub(super) edges: Edges,
    /// Before anything is held at 0.
    pub(super) between: Banded,
    /// With both halves alike.
    pub(super) held: Banded,
    even: OnceCell<Option<Split>>,
    odd: OnceCell<Option<Split>>,
}

impl Edged {
    /// Ready for loads with which both halves go the same way; `None` where it holds nothing.
    pub(super) fn even(&self) -> Option<&Split> {
        self.even.get_or_init(|| self.held.clone().split()).as_ref()
    }

    /// Ready for loads with which they go opposite ways.
    pub(super) fn odd(&self) -> Option<&Split> {
        let split = || {
            let mut matrix = self.between.clone();
            Grid::held_odd().for_each(|freedom| matrix.hold(freedom));
            matrix.split()
        };
        self.odd.get_or_init(split).as_ref()
    }
}

/// A board whose edges hold it in its plane.
pub(super) struct Flat {
    by: (Pulled, f64, Pulled),
    /// The unknowns of the stress function that are 0.
    pub(super) unpulled: Vec<usize>,
    /// What a stress function costs, split; `None` where the board does not hold in its plane.
    pub(super) stretched: Option<Split>,
}

impl Stiffness {
    /// The board whose edges hold it so against turning.
    pub(super) fn edged(&self, edges: Edges) -> Rc<Edged> {
        let mut all = self.edged.borrow_mut();
        if let Some(known) = all.iter().find(|known| known.edges == edges) {
            return Rc::clone(known);
        }
        let between = self.between(edges);
        let mut held = between.clone();
        Grid::held().for_each(|freedom| held.hold(freedom));
        let (even, odd) = (OnceCell::new(), OnceCell::new());
        let edged = Rc::new(Edged { edges, between, held, even, odd });
        keep(&mut all, &edged);
        edged
    }

    /// The board whose edges hold it so in its plane.
    pub(super) fn flat(&self, support: Support) -> Rc<Flat> {
        let by = (support.sides, support.sides_pa, support.ends);
        let mut all = self.flat.borrow_mut();
        if let Some(known) = all.iter().find(|known| known.by == by) {
            return Rc::clone(known);
        }
        let unpulled: Vec<usize> = Grid::unpulled(support.sides, support.ends).collect();
        let stretched = self.stretched(support, &unpulled);
        let flat = Rc::new(Flat { by, unpulled, stretched });
        keep(&mut all, &flat);
        flat
    }
}

/// Keeps one more; the others go where they are many.
fn keep<T>(all: &mut Vec<Rc<T>>, one: &Rc<T>) {
    if all.len() >= MOST_KEPT {
        all.clear();
    }
    all.push(Rc::clone(one));
}
