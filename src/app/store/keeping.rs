//! Keeping the design in this browser: right after each change, when the page has shown it. What other tabs do with it
//! is told, and written over by neither.

use std::time::Duration;

use leptos::prelude::*;

use super::super::columns::present;
use super::super::tab::{self, Answer, Heard, Keep, Said, Tab};
use super::super::{browser, clock, shelf};
use super::{Act, Done, Elsewhere, Origin, Outcome, Store};
use crate::design::document::Design;
use crate::design::persist;
use crate::words::{Words, page as say};

/// Told when another tab went on with the same design.
const COPIED: Words = say::COPIED;
/// What the header says until the browser has written the last change.
const KEEPING: Words = say::KEEPING;

impl Store {
    /// Keeps a link's copy in this browser, and tells it when the browser has it. One that takes nothing is told at once,
    /// and the copy stays one that is not kept.
    pub fn keep_copy(self) {
        if let Some(why) = browser::failing() {
            self.tell(Err(why.into()), "");
            return;
        }
        self.origin.set(Origin::Kept(browser::fresh_name()));
        browser::drop_fragment();
        self.unkept.set_value(true);
        self.tells_kept.set_value(true);
        self.keep_and_tell();
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
        self.say_kept(KEEPING.into());
        if self.keeps_soon.get_value() {
            return;
        }
        self.keeps_soon.set_value(true);
        // Not before the change is seen, as it takes time; a page that is out of sight is drawn no more, and keeps
        // when it goes.
        request_animation_frame(move || {
            set_timeout(move || self.keep_and_tell(), Duration::ZERO);
        });
    }

    /// Keeps the next changes together after a while, where there are many in a row.
    pub fn keep_within(self, pause: Duration) {
        if !self.keeps_soon.get_value() {
            self.keeps_soon.set_value(true);
            set_timeout(move || self.keep_and_tell(), pause);
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
    /// When the browser is known not to take it.
    pub fn keep_now(self) -> Outcome {
        self.keeps_soon.set_value(false);
        let Origin::Kept(id) = self.origin.get_untracked() else { return Ok(Done::plain()) };
        match self.tab().keep() {
            Keep::Beside => self.keep_beside(),
            Keep::Here => {
                self.unkept.set_value(false);
                self.say_kept(KEEPING.into());
                let kept = self.history.try_update_untracked(|history| shelf::keep(&id, history));
                Ok(kept.transpose()?.map_or(Done::plain(), Done::from))
            }
            Keep::Nothing => match browser::failing() {
                Some(why) if browser::waits(&shelf::key(&id)) => Err(why.into()),
                _ => Ok(Done::plain()),
            },
        }
    }

    fn tab(self) -> Tab {
        Tab { unkept: self.unkept.get_value(), elsewhere: self.elsewhere.get_untracked() }
    }

    fn say_kept(self, words: String) {
        if *self.kept.read_untracked() != words {
            self.kept.set(words);
        }
    }

    /// Notes whether changes are kept, for the header, and for the line that stands while they are not.
    fn note_kept(self) {
        let why = browser::failing().map(|why| why.to_string());
        let nothing_yet = self.kept.read_untracked().is_empty();
        let words = match tab::said(why.is_some(), nothing_yet, self.unkept.get_value()) {
            Said::NotKept => say::not_kept_here(&why.as_deref().unwrap_or_default()),
            Said::AsBefore => self.kept.get_untracked(),
            Said::Kept => say::kept_at(&clock::time()),
        };
        self.say_kept(words);
        if *self.not_kept.read_untracked() != why {
            self.not_kept.set(why);
        }
    }

    /// Keeps the design as a copy, where another tab has changed it too.
    ///
    /// # Errors
    ///
    /// When the browser is known not to take it.
    pub fn keep_beside(self) -> Outcome {
        let copy = self.history.with_untracked(|history| {
            let title = say::copy_of(&history.present().title);
            Design { title, ..history.present().clone() }
        });
        self.elsewhere.set(None);
        self.origin.set(Origin::Kept(browser::fresh_name()));
        self.history.update(|history| history.record(copy, None));
        self.unkept.set_value(true);
        self.keep_now()?;
        Ok(Done::with(COPIED.said()))
    }

    /// The state one step back, or one forward, where the steps that are here give none: as this browser kept it.
    pub(super) fn kept_next(self, forward: bool) -> Option<Option<Design>> {
        let is_elsewhere = || self.history.with_untracked(|history| history.is_elsewhere(forward));
        if !is_elsewhere() {
            return None;
        }
        self.keep_and_tell();
        let read = |text: String| persist::read(&text).ok();
        is_elsewhere().then(|| browser::next_state(forward).and_then(read))
    }

    /// Listens to the browser: what is kept, other tabs, the address, and the end of the page.
    pub fn listen(self) {
        browser::on_fragment(move || {
            if !browser::fragment().is_empty() {
                self.act(Act::OpenLink);
            }
        });
        browser::on_keeping(move |heard| self.hear(heard));
        if browser::failing().is_some() {
            self.note_kept();
        }
        browser::on_leaving(move |leaving| {
            self.keep_typed(leaving);
            if leaving {
                self.keep_and_tell();
                browser::leave_what_waits();
            }
        });
        browser::ask_before_leaving(move || {
            let _ = self.keep_now();
            !browser::leave_what_waits()
        });
    }

    fn hear(self, heard: Heard) {
        let is_open = |key: &str| {
            let origin = self.origin.read_untracked();
            matches!(&*origin, Origin::Kept(id) if shelf::key(id) == key)
        };
        match (tab::answer(&heard, is_open, shelf::is_key), heard) {
            (Answer::Say, heard) => {
                self.note_kept();
                if heard == Heard::Kept && self.tells_kept.get_value() {
                    self.tells_kept.set_value(false);
                    self.hint(say::KEPT_HERE.said());
                }
            }
            (Answer::TakeSteps, _) => self.history.update(|history| {
                if history.at() == 0 && !history.can_redo() {
                    history.set_elsewhere(browser::steps(false), browser::steps(true));
                }
            }),
            (Answer::Warn, Heard::Elsewhere(key)) => {
                let gone = browser::kept(&key).is_none();
                self.elsewhere.set(Some(if gone { Elsewhere::Gone } else { Elsewhere::Changed }));
            }
            // Nothing of this tab is lost: it goes into a copy.
            (Answer::Copy, _) => {
                let told = self.keep_beside();
                self.tell(told, "");
            }
            (Answer::TellCopy, _) => self.hint(COPIED.said()),
            (Answer::Complain, _) => self.complain(say::LIST_CLASH.said()),
            (Answer::Warn | Answer::Nothing, _) => {}
        }
    }

    /// Opens what another tab made of the design.
    pub fn load_from_elsewhere(self) {
        if self.tab().keep() == Keep::Beside {
            // What was typed here a moment ago is in a copy then, which stays open.
            self.keep_and_tell();
            return;
        }
        let Origin::Kept(id) = self.origin.get_untracked() else { return };
        match shelf::take(&id) {
            Ok(design) => {
                let opened = self.open(design, Origin::Kept(id));
                self.tell(opened, "");
            }
            Err(why) => self.complain(say::design_not_opened(&why)),
        }
    }
}
