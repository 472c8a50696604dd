//! Undo and redo of whole documents, which are small; a drag or a run of typing is one step.

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
}

impl<T: PartialEq, K: PartialEq> History<T, K> {
    /// A history that begins with `present`.
    pub const fn new(present: T) -> Self {
        Self { past: VecDeque::new(), present, future: Vec::new(), open: None }
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
        self.open = key;
        if !joins {
            self.past.push_back(before);
            if self.past.len() > MOST_STEPS {
                self.past.pop_front();
            }
        } else if self.past.back() == Some(&self.present) {
            self.past.pop_back();
            self.open = None;
        }
    }

    /// Goes one step back; false when there is none.
    pub fn undo(&mut self) -> bool {
        let Some(before) = self.past.pop_back() else { return false };
        self.future.push(mem::replace(&mut self.present, before));
        self.open = None;
        true
    }

    /// Goes one step forward again; false when there is none.
    pub fn redo(&mut self) -> bool {
        let Some(after) = self.future.pop() else { return false };
        self.past.push_back(mem::replace(&mut self.present, after));
        self.open = None;
        true
    }

    /// Whether there is a step back.
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is a step forward.
    pub const fn can_redo(&self) -> bool {
        !self.future.is_empty()
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
