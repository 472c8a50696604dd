//! Undo and redo of whole documents, which are small; a drag or a run of typing is one step.
//!
//! Steps older than the ones that are here may be kept elsewhere: then they are counted, and given back one by one.

use std::collections::VecDeque;
use std::mem;

/// The most steps that can be undone; the oldest are forgotten beyond it.
pub const MOST_STEPS: usize = 500;

/// A document with its past and its future. `K` says which changes belong together: a run of
/// changes under one key is one step.
#[derive(Clone, Debug)]
pub struct History<T, K> {
    past: VecDeque<T>,
    present: T,
    future: Vec<T>,
    /// The key under which the last step can still grow.
    open: Option<K>,
    /// How many steps there are before those of `past`.
    older: usize,
    /// How many steps there are beyond those of `future`.
    newer: usize,
    /// The last state that is as it was when [`kept`](Self::kept) was called, as the number of its step.
    steady: usize,
}

impl<T: PartialEq, K: PartialEq> History<T, K> {
    /// A history that begins with `present`.
    pub const fn new(present: T) -> Self {
        Self {
            past: VecDeque::new(),
            present,
            future: Vec::new(),
            open: None,
            older: 0,
            newer: 0,
            steady: 0,
        }
    }

    /// The document as it is now.
    pub const fn present(&self) -> &T {
        &self.present
    }

    /// The document before the last step that still stands, where there is one.
    pub fn before(&self) -> Option<&T> {
        self.past.back()
    }

    /// Takes `next` as the present. A run of changes under one `key`, as from a slider that is
    /// dragged, is one step; a change that changes nothing is none, and so is a run that ends where
    /// it began.
    pub fn record(&mut self, next: T, key: Option<K>) {
        if next == self.present {
            return;
        }
        let joins = key.is_some() && key == self.open;
        let before = mem::replace(&mut self.present, next);
        self.future.clear();
        self.newer = 0;
        self.open = key;
        if !joins {
            self.past.push_back(before);
            if self.past.len() > MOST_STEPS {
                self.past.pop_front();
                self.older += 1;
            }
        } else if self.past.back() == Some(&self.present) {
            self.past.pop_back();
            self.open = None;
        }
        let unchanged = if joins { self.at().saturating_sub(1) } else { self.at() - 1 };
        self.steady = self.steady.min(unchanged);
    }

    /// The number of the step that led to the present, of all that can be undone.
    pub fn at(&self) -> usize {
        self.older + self.past.len()
    }

    /// The last step up to which nothing has changed since [`kept`](Self::kept) was called.
    pub const fn steady(&self) -> usize {
        self.steady
    }

    /// Notes that all steps are kept elsewhere as they are now.
    pub fn kept(&mut self) {
        self.steady = self.at();
    }

    /// Says how many steps are kept elsewhere before the first one here, and after the last one. Only for a history
    /// without any.
    pub fn set_elsewhere(&mut self, older: usize, newer: usize) {
        (self.older, self.newer) = (older, newer);
        self.steady = self.at();
    }

    /// Whether the next step back, or forward, is one that is kept elsewhere.
    pub fn is_elsewhere(&self, forward: bool) -> bool {
        if forward {
            self.future.is_empty() && self.newer > 0
        } else {
            self.past.is_empty() && self.older > 0
        }
    }

    /// Goes one step back, or forward again; false when there is none. For a step that is kept elsewhere its state is
    /// given, or that there is none after all.
    pub fn walk(&mut self, forward: bool, elsewhere: Option<Option<T>>) -> bool {
        match (elsewhere, forward) {
            (Some(Some(state)), false) => {
                self.past.push_back(state);
                self.older = self.older.saturating_sub(1);
            }
            (Some(Some(state)), true) => {
                self.future.push(state);
                self.newer = self.newer.saturating_sub(1);
            }
            (Some(None), false) => (self.older, self.steady) = (0, 0),
            (Some(None), true) => self.newer = 0,
            (None, _) => {}
        }
        if forward { self.redo() } else { self.undo() }
    }

    /// Goes one step back; false when there is none.
    pub fn undo(&mut self) -> bool {
        let Some(before) = self.past.pop_back() else { return false };
        self.future.push(mem::replace(&mut self.present, before));
        self.open = None;
        self.steady = self.steady.min(self.at());
        true
    }

    /// Goes one step forward again; false when there is none.
    pub fn redo(&mut self) -> bool {
        let Some(after) = self.future.pop() else { return false };
        self.past.push_back(mem::replace(&mut self.present, after));
        self.open = None;
        self.steady = self.steady.min(self.at() - 1);
        true
    }

    /// Whether there is a step back.
    pub fn can_undo(&self) -> bool {
        self.at() > 0
    }

    /// Whether there is a step forward.
    pub const fn can_redo(&self) -> bool {
        !self.future.is_empty() || self.newer > 0
    }

    /// Ends the open step, so that the next change begins its own, whatever its key: when the
    /// pointer is let go or a field is left.
    pub fn close_step(&mut self) {
        self.open = None;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    type Numbers = History<u32, &'static str>;

    fn history(changes: &[(u32, Option<&'static str>)]) -> Numbers {
        let mut history = History::new(0);
        for (next, key) in changes {
            history.record(*next, *key);
        }
        history
    }

    fn undone(mut history: Numbers) -> Vec<u32> {
        let mut seen = vec![*history.present()];
        while history.undo() {
            seen.push(*history.present());
        }
        seen
    }

    #[test]
    fn undo_and_redo_walk_the_same_road() {
        let mut history = history(&[(1, None), (2, None), (3, None)]);
        assert!(history.undo() && history.undo() && history.undo() && !history.undo());
        assert_eq!((*history.present(), history.can_undo()), (0, false));
        assert!(history.redo() && history.redo() && history.redo() && !history.redo());
        assert_eq!((*history.present(), history.can_redo()), (3, false));
    }

    #[test]
    fn a_run_under_one_key_is_one_step() {
        let changes =
            [(1, Some("a")), (2, Some("a")), (3, Some("b")), (4, Some("b")), (5, None), (6, None)];
        assert_eq!(undone(history(&changes)), [6, 5, 4, 2, 0]);
    }

    #[test]
    fn a_closed_step_does_not_grow() {
        let mut history = history(&[(1, Some("a"))]);
        history.close_step();
        history.record(2, Some("a"));
        assert_eq!(undone(history), [2, 1, 0]);
    }

    #[test]
    fn undo_closes_the_step() {
        let mut history = history(&[(1, Some("a")), (2, Some("b"))]);
        history.undo();
        history.record(3, Some("a"));
        assert_eq!(undone(history), [3, 1, 0]);
    }

    #[test]
    fn what_changes_nothing_is_no_step_and_keeps_the_future() {
        let mut unchanged = history(&[(1, None), (2, None)]);
        unchanged.undo();
        unchanged.record(1, None);
        assert!(unchanged.can_redo());
        let there_and_back = history(&[(1, Some("a")), (2, Some("a")), (0, Some("a"))]);
        assert!(!there_and_back.can_undo());
        assert_eq!(undone(history(&[(1, Some("a")), (0, Some("a")), (2, Some("a"))])), [2, 0]);
    }

    #[test]
    fn a_new_change_forgets_the_future() {
        let mut history = history(&[(1, None), (2, None)]);
        history.undo();
        history.record(7, None);
        assert!(!history.can_redo());
        assert_eq!(undone(history), [7, 1, 0]);
    }

    /// Steps kept elsewhere as `keep-more.js` keeps them: from the last steady one on they are written again, and those
    /// that were left on the way back lie ahead until another way is taken.
    #[test]
    fn what_is_kept_elsewhere_follows_every_walk() {
        let mut turn = 1_u64;
        let mut draw = |below: u64| {
            turn = turn
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            (turn >> 33) % below
        };
        let mut with_future = 0;
        for _ in 0..300 {
            let mut history: History<u64, u64> = History::new(0);
            let (mut kept, mut ahead) = (vec![0], Vec::new());
            for round in 0..60 {
                match draw(6) {
                    0 => drop(history.undo()),
                    1 => drop(history.redo()),
                    2 => history.close_step(),
                    // Small numbers come back, so that a run may end where it began.
                    _ => history.record(draw(4) + 10 * (round / 20), Some(draw(2))),
                }
                if draw(3) == 0 || round == 59 {
                    let (at, steady) = (history.at(), history.steady());
                    assert!(steady <= at && steady < kept.len(), "{steady} of {at}");
                    ahead.extend(kept.drain(steady + 1..).rev());
                    let from = ahead.len().saturating_sub(at - steady);
                    let again: Vec<u64> = ahead.drain(from..).rev().collect();
                    let last = again.last().or(kept.last()).copied();
                    let prior = again.iter().rev().nth(1).or(kept.last());
                    let is_known = at == steady || prior == history.before();
                    if again.len() == at - steady && last == Some(history.present) && is_known {
                        kept.extend(again);
                    } else {
                        ahead.clear();
                        let anew = history.past.iter().skip(steady + 1);
                        kept.extend(anew.chain((at > steady).then_some(&history.present)));
                    }
                    history.kept();
                    assert_eq!(kept.len(), at + 1);
                }
            }
            let states: Vec<u64> = history.past.iter().chain([&history.present]).copied().collect();
            assert_eq!(kept.len(), states.len());
            // Three steps in one go that end as a redo would are taken for it: what they left on the way is not told.
            assert!(
                kept.iter().rev().zip(states.iter().rev()).take(2).all(|(one, other)| one == other)
            );
            with_future += usize::from(!ahead.is_empty());
            // A page that opens again walks back the same way, and forward again.
            let mut anew: History<u64, u64> = History::new(kept[kept.len() - 1]);
            anew.set_elsewhere(kept.len() - 1, ahead.len());
            let road: Vec<u64> = kept.iter().copied().chain(ahead.iter().rev().copied()).collect();
            for to in (0..kept.len() - 1).rev().chain(1..road.len()) {
                let forward = anew.at() < to;
                let elsewhere = anew.is_elsewhere(forward).then_some(Some(road[to]));
                assert!(if forward { anew.can_redo() } else { anew.can_undo() });
                assert!(anew.walk(forward, elsewhere));
                assert_eq!((*anew.present(), anew.at()), (road[to], to));
            }
            assert!(!anew.can_redo());
        }
        assert!(with_future > 50, "only {with_future} of 300 had something to redo");
    }

    #[test]
    fn steps_that_are_gone_after_all_are_no_steps() {
        let mut history: Numbers = History::new(3);
        history.set_elsewhere(2, 0);
        history.record(4, None);
        assert_eq!((history.at(), history.steady()), (3, 2));
        assert!(history.undo() && history.can_undo() && history.is_elsewhere(false));
        assert!(!history.walk(false, Some(None)));
        assert!(!history.can_undo() && history.can_redo());
        let mut history: Numbers = History::new(3);
        history.set_elsewhere(0, 2);
        assert!(history.can_redo() && !history.redo() && history.is_elsewhere(true));
        assert!(!history.walk(true, Some(None)) && !history.can_redo());
    }

    #[test]
    fn a_new_change_forgets_what_lies_ahead_elsewhere() {
        let mut history: Numbers = History::new(3);
        history.set_elsewhere(0, 2);
        assert!(history.walk(true, Some(Some(4))) && history.can_redo());
        history.record(9, None);
        assert!(!history.can_redo());
        assert_eq!(undone(history), [9, 4, 3]);
    }

    #[test]
    fn the_oldest_steps_are_forgotten() {
        let mut history: Numbers = History::new(0);
        for next in 1..=700 {
            history.record(next, None);
        }
        let seen = undone(history);
        assert_eq!((seen.len(), seen.last()), (MOST_STEPS + 1, Some(&200)));
    }
}
