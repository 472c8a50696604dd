//! What the keys do on the paper.

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use super::{ARROW_PX, Hand, ZOOM, choose};
use crate::app::rows;
use crate::app::store::Window;
use crate::words::drawing as say;

impl Hand {
    /// A key on the paper; whether it did anything.
    pub fn key(self, event: &KeyboardEvent) -> bool {
        let alt = event.alt_key();
        if event.ctrl_key() || event.meta_key() {
            return false;
        }
        let times = if event.shift_key() { 10.0 } else { 1.0 };
        let move_paper = |right: f64, down: f64| {
            let look = self.look.get_untracked().moved((right * ARROW_PX, down * ARROW_PX));
            self.store.paper.look.set(Some(look));
        };
        match (event.key().as_str(), alt) {
            ("ArrowUp", true) => self.step_length(times),
            ("ArrowDown", true) => self.step_length(-times),
            ("ArrowLeft", false) => move_paper(1.0, 0.0),
            ("ArrowRight", false) => move_paper(-1.0, 0.0),
            ("ArrowUp", false) => move_paper(0.0, 1.0),
            ("ArrowDown", false) => move_paper(0.0, -1.0),
            ("+" | "=", false) => self.zoom(ZOOM, None),
            ("-", false) => self.zoom(1.0 / ZOOM, None),
            ("0", false) => self.fit(),
            ("PageUp", false) => self.choose_beside(|row, _| row.saturating_sub(1)),
            ("PageDown", false) => self.choose_beside(|row, last| (row + 1).min(last)),
            ("Home", false) => self.choose_beside(|_, _| 0),
            ("End", false) => self.choose_beside(|_, last| last),
            ("Enter", _) if self.store.count_now() > 0 => {
                self.store.window.set(Some(Window::Details));
            }
            ("Escape", _) => return self.give_up(),
            _ => return false,
        }
        true
    }

    /// Chooses another string and says which.
    fn choose_beside(self, next: fn(usize, usize) -> usize) {
        let last = self.store.count_now().saturating_sub(1);
        let row = next(self.store.selection.get_untracked().cursor.row, last);
        choose(self.store, row);
        self.store.hover.set(None);
        self.say(row);
        let look = self.look.get_untracked();
        let (wide, high) = self.store.paper.size.get_untracked();
        let at = self.scene.with_untracked(|scene| {
            scene.strings.iter().find(|string| string.index == row).map(|string| string.bridge)
        });
        let Some((x, y)) = at.map(|at| look.pixel(at)) else { return };
        // Its pin comes to the middle if it was out of sight.
        if !(0.0..=wide).contains(&x) || !(0.0..=high).contains(&y) {
            self.store.paper.look.set(Some(look.moved((wide / 2.0 - x, high / 2.0 - y))));
        }
    }

    /// Makes the marked string so many steps longer.
    fn step_length(self, steps: f64) {
        if untrack(|| self.curve_drives()) {
            self.said.set(say::CURVE_DRIVES.into());
            return;
        }
        let row = self.store.selection.get_untracked().cursor.row;
        let length = self.store.analysis.with_untracked(|a| a.strings.get(row)?.length.ok());
        let unit = self.store.design.with_untracked(|design| design.units.length);
        let text = length.and_then(|length| rows::stepped(length, steps, unit));
        if let Some(text) = text {
            self.pull(row, text);
            self.say(row);
        }
    }

    fn say(self, row: usize) {
        let units = self.store.design.with_untracked(|design| design.units);
        let words = self.store.analysis.with_untracked(|a| rows::in_short(a, &units, row));
        self.said.set(words);
    }
}
