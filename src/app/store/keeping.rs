//! Keeping the design in this browser: soon after each change, when the browser is idle, and at once where it
//! would be lost.

use std::time::Duration;

use leptos::prelude::*;

use super::super::browser::StorageError;
use super::super::columns::present;
use super::super::{browser, shelf};
use super::{Act, Done, Origin, Outcome, Store};
use crate::design::document::Design;

/// How long a change waits before it is kept, so that a run of keys is written once.
const KEEP_AFTER: Duration = Duration::from_millis(300);
/// Told when another tab went on with the same design.
const COPIED: &str = "This design was changed in another tab too. Both are kept: what was changed in this tab is a copy of its own.";

impl Store {
    /// Keeps a link's copy in this browser. It counts as kept only when the browser took it.
    ///
    /// # Errors
    ///
    /// When the browser does not take it.
    pub fn keep_copy(self) -> Outcome {
        let id = browser::fresh_name();
        let kept = self.history.with_untracked(|history| shelf::keep(&id, history.present()))?;
        self.origin.set(Origin::Kept(id));
        browser::drop_fragment();
        Ok(kept.into())
    }

    /// What every change of the design brings with it.
    pub(super) fn changed(self) {
        let (rows, columns) = self.history.with_untracked(|history| {
            let design = history.present();
            (
                design.strings.len(),
                self.chosen.with_untracked(|chosen| present(design, chosen).len()),
            )
        });
        let inside = self.selection.get_untracked().within(rows, columns);
        if inside != self.selection.get_untracked() {
            self.selection.set(inside);
        }
        if !matches!(self.origin.get_untracked(), Origin::Kept(_)) {
            self.origin.set(Origin::Kept(browser::fresh_name()));
            browser::drop_fragment();
        }
        self.unkept.set_value(true);
        self.stop_timer();
        let soon = move || browser::when_idle(move || self.keep_and_tell());
        match set_timeout_with_handle(soon, KEEP_AFTER) {
            Ok(timer) => self.timer.set_value(Some(timer)),
            Err(_) => self.keep_and_tell(),
        }
    }

    fn stop_timer(self) {
        if let Some(timer) = self.timer.get_value() {
            timer.clear();
            self.timer.set_value(None);
        }
    }

    /// Keeps the design now, and tells if that did not work.
    pub fn keep_and_tell(self) {
        self.tell(self.keep_now(), "");
    }

    /// Keeps the design now, if it is one that is kept and was changed since. One that was only
    /// looked at is left alone: another tab may have gone on with it.
    ///
    /// # Errors
    ///
    /// When the browser does not take it.
    pub fn keep_now(self) -> Outcome {
        self.stop_timer();
        let Origin::Kept(id) = self.origin.get_untracked() else { return Ok(Done::plain()) };
        if !self.unkept.get_value() {
            return Ok(Done::plain());
        }
        if self.changed_elsewhere.get_value() {
            return self.keep_beside();
        }
        let kept = self.history.with_untracked(|history| shelf::keep(&id, history.present()));
        self.note_kept(kept.as_ref().err());
        let kept = kept?;
        self.unkept.set_value(false);
        Ok(kept.into())
    }

    /// Notes why changes are not kept, for the line that stands as long as that is so.
    fn note_kept(self, problem: Option<&StorageError>) {
        let why = problem.map(ToString::to_string);
        if *self.not_kept.read_untracked() != why {
            self.not_kept.set(why);
        }
    }

    /// Tries whether this browser keeps anything at all, before anyone relies on it.
    pub fn try_keeping(self) {
        self.note_kept(browser::try_keeping().as_ref().err());
    }

    /// Keeps the design as a copy, where another tab has changed it too.
    fn keep_beside(self) -> Outcome {
        let id = browser::fresh_name();
        let copy = self.history.with_untracked(|history| {
            let title = format!("{} (copy)", history.present().title);
            Design { title, ..history.present().clone() }
        });
        shelf::keep(&id, &copy)?;
        self.unkept.set_value(false);
        self.changed_elsewhere.set_value(false);
        self.origin.set(Origin::Kept(id));
        self.history.update(|history| history.record(copy, None));
        Ok(Done::with(COPIED))
    }

    /// Listens to the browser: other tabs, the address, and the end of the page.
    pub fn listen(self) {
        browser::on_fragment(move || {
            if !browser::fragment().is_empty() {
                self.act(Act::OpenLink);
            }
        });
        browser::on_kept_elsewhere(move |key, _| {
            let Origin::Kept(id) = self.origin.get_untracked() else { return };
            if key == shelf::key(&id) {
                self.changed_elsewhere.set_value(true);
            }
        });
        browser::on_leaving(move || self.keep_and_tell());
        browser::ask_before_leaving(move || self.unkept.get_value() && self.keep_now().is_err());
    }
}
