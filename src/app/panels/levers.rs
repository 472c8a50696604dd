//! How the levers or the pedals stand while strings are heard: all alike, and single ones otherwise.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::list::{list, part};
use crate::design::display;
use crate::design::document::MechanismKind;
use crate::engine::keys::reach;
use crate::words::{Words, tuner as say};

const LEVERS: [Words; 2] = [say::OPEN, say::RAISED];
const PEDALS: [Words; 3] = [say::DISCS_FLAT, say::DISCS_NATURAL, say::DISCS_SHARP];

/// By how many semitones the strings are raised.
#[derive(Clone, Copy)]
pub struct Levers {
    store: Store,
    /// All of them.
    pub all: RwSignal<usize>,
    /// Single ones otherwise: their rows.
    own: RwSignal<Vec<(usize, usize)>>,
}

impl Levers {
    /// All open.
    pub fn new(store: Store) -> Self {
        let levers = Self { store, all: RwSignal::new(0), own: RwSignal::new(Vec::new()) };
        Effect::new(move |before: Option<()>| {
            levers.all.track();
            // What is chosen for all goes for all.
            if before.is_some() {
                levers.own.set(Vec::new());
            }
        });
        levers
    }

    /// By how many semitones a string is raised.
    pub fn of(self, row: usize) -> usize {
        let own = self.own.with(|own| own.iter().find(|(of, _)| *of == row).map(|(_, by)| *by));
        own.unwrap_or_else(|| self.all.get())
    }

    /// Has an effect run again when any of them changes.
    pub fn track(self) {
        self.all.track();
        self.own.track();
    }

    /// The words for each way in which they can stand; none where there are no levers.
    pub fn words(self) -> &'static [Words] {
        match self.store.design.with(|design| design.mechanism.kind) {
            MechanismKind::None => &[],
            MechanismKind::Lever => &LEVERS,
            MechanismKind::SingleDisc => &PEDALS[..2],
            MechanismKind::DoubleDisc => &PEDALS,
        }
    }

    /// How far the mechanism of a string can raise it.
    fn reach(self, row: usize) -> usize {
        let resolved = self.store.resolved.read();
        resolved.harp.strings.get(row).map_or(0, |string| usize::from(reach(string.mechanism)))
    }

    /// Raises a string by a semitone more, or opens it again.
    fn turn(self, row: usize) {
        let by = untrack(|| if self.of(row) < self.reach(row) { self.of(row) + 1 } else { 0 });
        self.own.update(|own| {
            own.retain(|(of, _)| *of != row);
            own.push((row, by));
        });
    }

    /// A button for each string that has a lever, which says how it stands.
    pub fn each(self, id: &'static str) -> AnyView {
        let rows = move || {
            let words = self.words();
            let analysis = self.store.analysis.read();
            let row = |(row, figures)| {
                let reach = self.reach(row);
                if reach == 0 {
                    return None;
                }
                let by = self.of(row).min(reach);
                let said = words.get(by).map(|words| words.said()).unwrap_or_default();
                let text = say::of_string(&said, &display::string_number(figures));
                Some(part(&(row, text.clone()), move || {
                    let turn = move |_| self.turn(row);
                    view! { <button type="button" class="quiet" on:click=turn>{text}</button> }
                        .into_any()
                }))
            };
            analysis.strings.iter().enumerate().filter_map(row).collect()
        };
        view! {
            <details id=id class="levers-each">
                <summary>{say::EACH.said()}</summary>
                <div class="tuner-strings">{list(rows)}</div>
            </details>
        }
        .into_any()
    }
}
