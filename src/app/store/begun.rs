//! A harp that was begun here and left as it was: it gives way to the next one, into the bin. Parts alone name this.

use leptos::prelude::*;

use super::super::shelf;
use super::{Origin, Outcome, Store};
use crate::words::designs as say;

impl Store {
    /// The name of the open design, if it was begun here and nothing was done with it since, in another tab neither.
    pub fn untouched(self) -> Option<String> {
        let Origin::Kept(id) = self.origin.get_untracked() else { return None };
        let is_new = *self.new_harp.begun.read_untracked() == id;
        let changed = untrack(|| self.can_undo() || self.can_redo());
        let kept = || shelf::is_kept_as(&id, &self.design.get_untracked());
        (is_new && !changed && kept()).then_some(id)
    }

    /// Notes that the open design was just begun.
    pub fn note_begun(self) {
        if let Origin::Kept(id) = self.origin.get_untracked() {
            self.new_harp.begun.set(id);
        }
    }

    /// Opens another design. One that was begun and left untouched goes from the shelf into the bin, and that is told.
    ///
    /// # Errors
    ///
    /// What `open` says.
    pub fn in_its_place(self, open: impl FnOnce() -> Outcome) -> Outcome {
        let trial = self.untouched();
        let done = open()?;
        if let Some(id) = trial
            && self.origin.get_untracked() != Origin::Kept(id.clone())
        {
            // If the browser does not move it, it stays in the list.
            if shelf::bin(&id).is_ok() {
                return Ok(done.also(say::LEFT_UNCHANGED.said()));
            }
        }
        Ok(done)
    }
}
