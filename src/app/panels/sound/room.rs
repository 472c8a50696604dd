//! What is to be heard: the strings, how they are plucked, what they are compared with, and the way to the player.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::panels::header::file_name;
use crate::app::panels::levers::Levers;
use crate::app::rows;
use crate::app::store::Store;
use crate::app::{browser, proposed};
use crate::design::letters::capital;
use crate::design::resolve::resolve;
use crate::design::settings::{NumberRow, Setting};
use crate::design::sound::no_sound;
use crate::engine::analysis::Harp;
use crate::engine::sound::pattern::Pattern;
use crate::engine::sound::{Ask, thickest, voice};
use crate::engine::units::{Length, Mobility};
use crate::words::{Words, sound as say};

/// What can be played, in the order of its list.
pub const PATTERNS: [(Pattern, Words); 4] = [
    (Pattern::One, say::ONE),
    (Pattern::Scale, say::SCALE),
    (Pattern::Chord, say::CHORD),
    (Pattern::Glide, say::GLIDE),
];

/// Where the finger plucks in per cent, how far it pulls and how broad it is in millimetres, and how readily the
/// soundboard gives in mm/s for each newton.
pub const FIELDS: [NumberRow; 4] = [
    NumberRow::new(say::AT, say::AT_UNIT, (2.0, 98.0)),
    NumberRow::new(say::ASIDE, Words::plain("mm"), (0.1, 20.0)),
    NumberRow::new(say::FINGER, Words::plain("mm"), (0.0, 40.0)),
    NumberRow::new(say::BOARD, say::BOARD_UNIT, (0.0, 100.0)),
];

/// What stands for it in a list of choices.
const THICKEST: &str = "thickest";
const PROPOSED: &str = "proposed";

/// What the harp is compared with.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Against {
    #[default]
    Nothing,
    /// Strings as thick as their tolerance allows.
    Thickest,
    /// What is proposed for the design.
    Proposed,
    /// A version of the design, by its place.
    Version(usize),
}

impl Against {
    /// What stands for it in a list of choices.
    pub fn key(self) -> String {
        match self {
            Self::Nothing => String::new(),
            Self::Thickest => THICKEST.into(),
            Self::Proposed => PROPOSED.into(),
            Self::Version(place) => place.to_string(),
        }
    }

    /// The one of a key.
    pub fn of_key(key: &str) -> Self {
        match key.parse() {
            Ok(place) => Self::Version(place),
            Err(_) if key == THICKEST => Self::Thickest,
            Err(_) if key == PROPOSED => Self::Proposed,
            Err(_) => Self::Nothing,
        }
    }
}

/// The window.
#[derive(Clone, Copy)]
pub struct Room {
    pub store: Store,
    /// The string that is chosen, the highest being 0.
    pub string: RwSignal<usize>,
    /// The place of what is played in [`PATTERNS`].
    pub pattern: RwSignal<usize>,
    /// Semitones by which the strings are raised.
    pub levers: Levers,
    pub against: RwSignal<Against>,
    /// Whether the other sound is the one that is heard.
    pub is_other: RwSignal<bool>,
    /// As in [`FIELDS`].
    pub numbers: RwSignal<[f64; 4]>,
    pub told: RwSignal<String>,
    /// Whether what plays is here.
    is_here: RwSignal<bool>,
    /// Counts the runs in which strings are rendered ahead.
    run: StoredValue<usize>,
    /// What it is compared with, worked out once.
    harp: Memo<Option<Harp>>,
}

impl Room {
    /// As the design is plucked.
    pub fn new(store: Store) -> Self {
        let against = RwSignal::new(Against::default());
        let harp = Memo::new(move |_| match against.get() {
            Against::Nothing => None,
            Against::Thickest => Some(thickest(&store.resolved.read().harp)),
            Against::Proposed => proposed::now(store).map(|design| resolve(&design).harp),
            Against::Version(place) => store
                .design
                .with(|design| design.versions.get(place).map(|one| resolve(&one.design).harp)),
        });
        let (usual, percent) = untrack(|| {
            let ask = Ask::of(&store.resolved.read().harp);
            (ask, store.design.with(|design| Setting::Pluck.number(design)))
        });
        let numbers =
            [percent, usual.pluck.to_mm(), usual.finger.to_mm(), usual.board.to_mm_per_s_per_n()];
        let middle = untrack(|| store.count()) / 2;
        Self {
            store,
            string: RwSignal::new(middle),
            pattern: RwSignal::new(0),
            levers: Levers::new(store),
            against,
            is_other: RwSignal::new(false),
            numbers: RwSignal::new(numbers),
            told: RwSignal::new(String::new()),
            is_here: RwSignal::new(false),
            run: StoredValue::new(0),
            harp,
        }
    }

    /// Fetches what plays, so that the first key need not wait for it; then the beginning of every string is rendered,
    /// and again whenever it is plucked otherwise.
    pub fn bring(self) {
        spawn_local(async move {
            if browser::bring_sound().await {
                self.is_here.try_set(true);
            } else {
                self.told.try_set(say::NOT_HERE.into());
            }
        });
        Effect::new(move |run: Option<usize>| {
            self.is_here.track();
            self.levers.track();
            self.numbers.track();
            self.harp.track();
            let run = run.unwrap_or_default() + 1;
            self.run.set_value(run);
            if self.is_here.get_untracked() {
                spawn_local(self.render_ahead(run));
            }
            run
        });
    }

    /// Renders the beginnings of the strings while nothing else is to do, those near the chosen one first, until that is
    /// asked for anew or the window is closed.
    async fn render_ahead(self, run: usize) {
        // The window may be closed by now.
        let Some(middle) = self.string.try_get_untracked() else { return };
        let count = self.store.count_now();
        let mut rows: Vec<usize> = (0..count).collect();
        rows.sort_unstable_by_key(|row| row.abs_diff(middle));
        for row in rows {
            browser::idle().await;
            if self.run.try_get_value() != Some(run) {
                return;
            }
            let voices = untrack(|| {
                let resolved = self.store.resolved.read();
                let here = &resolved.harp;
                let ask = self.ask(here, row);
                let other = self.harp.get();
                let other = other.iter().map(|other| voice(other, same(here, other, row), &ask));
                [voice(here, row, &ask)].into_iter().chain(other).collect::<Vec<_>>()
            });
            for voice in voices.into_iter().flatten() {
                if !browser::render_ahead(&voice.numbers()).await {
                    return;
                }
            }
        }
    }

    /// Whether there are two sounds.
    pub fn compares(self) -> bool {
        self.against.get() != Against::Nothing
    }

    /// What the other sound is.
    pub fn other_words(self) -> String {
        match self.against.get() {
            Against::Nothing => String::new(),
            Against::Thickest => say::THICKEST.into(),
            Against::Proposed => say::PROPOSED.into(),
            Against::Version(place) => {
                self.store.design.with(|design| rows::side_words(&design.versions, Some(place)))
            }
        }
    }

    /// Chooses what is compared with.
    pub fn compare(self, against: Against) {
        self.against.set(against);
        if against == Against::Nothing {
            self.is_other.set(false);
        }
    }

    /// Goes over to the other of the two sounds, in the middle of it.
    pub fn other(self) {
        self.hear(!self.is_other.get_untracked());
    }

    /// Goes over to one of the two sounds; it begins anew where nothing plays.
    pub fn hear(self, is_other: bool) {
        self.is_other.set(is_other);
        self.play(true);
    }

    /// Plays. `goes_on` where the sound is to go on where another one is now.
    pub fn play(self, goes_on: bool) {
        let Some(request) = self.request(goes_on) else { return };
        spawn_local(async move {
            // It may have been opened without a network.
            if browser::play_sound(&request).await.is_none()
                && !(browser::bring_sound().await && browser::play_sound(&request).await.is_some())
            {
                self.told.try_set(say::NOT_HERE.into());
            }
        });
    }

    /// Hands the sound to the browser as a file.
    pub fn save(self) {
        let Some(request) = self.request(false) else { return };
        let store = self.store;
        let title = store.design.with_untracked(|design| design.title.clone());
        let name = file_name(&title, "sound.wav");
        spawn_local(async move {
            let Some(blob) = browser::sound_file(&request).await else {
                self.told.try_set(say::NOT_HERE.into());
                return;
            };
            store.tell_handed(browser::offer_blob(&name, &blob));
        });
    }

    /// The numbers that ask for it, as `hearing.js` describes them; tells of strings without a sound.
    fn request(self, goes_on: bool) -> Option<Vec<f64>> {
        untrack(|| {
            let resolved = self.store.resolved.read();
            let here = &resolved.harp;
            let pattern = PATTERNS.get(self.pattern.get()).map_or(Pattern::One, |row| row.0);
            let strings = pattern.strings(self.string.get(), here.strings.len());
            let strings: Vec<(usize, f64, Ask)> = strings
                .into_iter()
                .map(|(index, start_s)| (index, start_s, self.ask(here, index)))
                .collect();
            let other = self.harp.get();
            let count = if other.is_some() { 2.0 } else { 1.0 };
            let flag = |is: bool| if is { 1.0 } else { 0.0 };
            let mut list = vec![flag(self.is_other.get()), flag(goes_on), count];
            let told = heard(here, &strings, &mut list);
            if let Some(other) = &other {
                let strings: Vec<(usize, f64, Ask)> = strings
                    .iter()
                    .map(|(index, start_s, ask)| (same(here, other, *index), *start_s, *ask))
                    .collect();
                let _ = heard(other, &strings, &mut list);
            }
            // Lists of voices alone are no sound.
            let silent = told.len() == strings.len();
            self.told.set(told.join(" "));
            (!silent).then_some(list)
        })
    }

    fn ask(self, harp: &Harp, row: usize) -> Ask {
        let [percent, aside, finger, board] = self.numbers.get();
        Ask {
            raised: u32::try_from(self.levers.of(row)).unwrap_or(0),
            pluck_ratio: percent / 100.0,
            pluck: Length::from_mm(aside),
            finger: Length::from_mm(finger),
            board: Mobility::from_mm_per_s_per_n(board),
            ..Ask::of(harp)
        }
    }
}

/// Adds the strings of a harp to a request; a sentence for each that has no sound.
fn heard(harp: &Harp, strings: &[(usize, f64, Ask)], list: &mut Vec<f64>) -> Vec<String> {
    let (mut told, mut sets) = (Vec::new(), Vec::new());
    for (index, start_s, ask) in strings {
        match voice(harp, *index, ask) {
            Ok(voice) => sets.push((voice.numbers(), *start_s)),
            Err(why) => told.push(format!("{}.", capital(&no_sound(*index, why)))),
        }
    }
    list.push(whole(sets.len()));
    for (numbers, start_s) in sets {
        list.extend([start_s, whole(numbers.len())]);
        list.extend(numbers);
    }
    told
}

/// A small count as a number.
#[allow(clippy::cast_precision_loss, reason = "a small number")]
fn whole(count: usize) -> f64 {
    count as f64
}

/// The string of the other harp with the same note, else in the same place.
fn same(here: &Harp, other: &Harp, index: usize) -> usize {
    let note = here.strings.get(index).and_then(|string| string.note);
    let place = note.and_then(|note| other.strings.iter().position(|one| one.note == Some(note)));
    place.unwrap_or(index)
}
