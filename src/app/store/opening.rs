//! Opening designs: the first one, one of the shelf, one that begins here, a link.

use super::super::{browser, shelf};
use super::{Done, Fetching, Not, Origin, Outcome, Part, Selection, Store, no_verdict};
use crate::design::document::Design;
use crate::design::history::History;
use crate::design::presets::FLOOR_36;
use crate::words::{Words, page as say};
use leptos::prelude::*;

/// Asked before a design is let go that the browser does not keep.
const NOT_KEPT: Words = say::LET_GO;

impl Store {
    /// Opens what the address, this browser's shelf or, on a first visit, a sample brings, and tells what of
    /// these could not be opened. In place of a last design that cannot be read there is the sample too; it is
    /// not remembered as the last one until it is changed.
    pub fn open_first(fetch: fn(Part) -> Fetching) -> Self {
        if browser::opens_with_nothing() {
            return Self::new(Design::default(), Origin::Kept(browser::fresh_name()), fetch);
        }
        let last = shelf::last_open();
        let mut problems = Vec::new();
        let (design, origin) = match last {
            Ok(Some((id, design))) => {
                // This tab opens with it again, whatever others open meanwhile.
                browser::note_open(&id);
                (design, Origin::Kept(id))
            }
            Ok(None) => (first_sample(), Origin::Sample),
            Err(why) => {
                problems.push(say::last_not_opened(&why));
                (first_sample(), Origin::Sample)
            }
        };
        let kept = matches!(origin, Origin::Kept(_));
        let store = Self::new(design, origin, fetch);
        if kept {
            store.history.update(|history| {
                history.set_elsewhere(browser::steps(false), browser::steps(true));
            });
        }
        if !problems.is_empty() {
            store.complain(problems.join(" "));
        }
        store
    }

    /// Opens a design in place of the one that is open, which stays on the shelf if it was kept. One
    /// that the browser does not keep is let go only if the user says so.
    ///
    /// # Errors
    ///
    /// When the user does not want it.
    pub fn open(self, design: Design, origin: Origin) -> Outcome {
        let done = self.replace(design, origin.clone())?;
        if let Origin::Kept(id) = &origin {
            browser::note_open(id);
        }
        Ok(done)
    }

    /// Opens a design that begins here: it is kept at once.
    ///
    /// # Errors
    ///
    /// When the user does not want it. That the browser does not keep it is told beside the words of success.
    pub fn begin(self, design: Design) -> Outcome {
        let done = self.replace(design, Origin::Kept(browser::fresh_name()))?;
        self.unkept.set_value(true);
        match self.keep_now() {
            Err(Not::Refused(why)) => Ok(Done::but(&why)),
            _ => Ok(done),
        }
    }

    fn replace(self, design: Design, origin: Origin) -> Outcome {
        let kept = self.keep_now();
        let done = match kept {
            Ok(done) => done,
            Err(_) if browser::confirmed(NOT_KEPT.said()) => Done::plain(),
            Err(_) => return Err(Not::Declined),
        };
        self.unkept.set_value(false);
        self.elsewhere.set(None);
        self.kept.set(String::new());
        if origin != Origin::Link {
            browser::drop_fragment();
        }
        self.typing.set(None);
        self.hover.set(None);
        self.paper.look.set(None);
        self.ghost.set(None);
        // The verdict is of the other harp.
        self.frame.set(no_verdict());
        self.selection.set(Selection::default());
        self.notice.set(None);
        self.origin.set(origin);
        self.history.set(History::new(design));
        browser::to_top("chart-scroll");
        self.give_back_typed();
        Ok(done)
    }
}

/// What a first visit opens: the 36-string floor harp.
fn first_sample() -> Design {
    FLOOR_36.design()
}
