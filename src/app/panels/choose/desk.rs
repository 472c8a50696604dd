//! The work at choosing: what was asked for, how far it is, and what came of it.
//!
//! What was asked for is asked again whenever the design, the stock or the strings that may change are others, so
//! that what is proposed always belongs to what is on the page.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::browser;
use crate::app::frame::beside;
use crate::app::proposed;
use crate::app::rows::{Choosable, Marks, Proposal, allowed, choosables};
use crate::app::store::{Ghost, Store};
use crate::design::choose::both::Both;
use crate::design::choose::lengths::{Room, Strength, Way, lengths};
use crate::design::choose::{Alternative, Front, Search, Shop, Task};
use crate::design::document::{Design, TargetsSpec};
use crate::design::edit::{Edit, TargetsPart};
use crate::design::stock::StockList;
use crate::words::choose_page as say;

/// How long a slice of the work takes in each frame, in milliseconds.
const SLICE_MS: f64 = 7.0;
/// Work between two looks at the clock, in the units of the search.
const STEP: usize = 20_000;

/// What can be asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ask {
    /// The best set.
    Set,
    /// The best sets of ever fewer different strings, or of ever lower price.
    Front { by_price: bool },
    /// Other lengths.
    Lengths(Way, Room),
    /// Strings and lengths in turn.
    Both(Strength, Room),
}

/// Work in slices.
enum Job {
    /// The task is to be set up: a frame of its own.
    Begin(Ask),
    /// What came of it is to be shown: another.
    Show(Box<Proposal>),
    Set(Box<(Task, Search)>),
    Front(Box<(Task, Front)>, bool),
    Both(Box<Both>),
}

impl Job {
    /// Works for a while; whether it is done.
    fn step(&mut self) -> bool {
        match self {
            Self::Set(work) => work.1.step(STEP).done,
            Self::Front(work, _) => work.1.step(STEP).done,
            Self::Both(both) => both.step(STEP).done,
            Self::Begin(_) | Self::Show(_) => true,
        }
    }
}

/// Alternatives to click through.
pub struct Found {
    pub task: Task,
    pub sets: Vec<Alternative>,
    pub shown: Vec<Choosable>,
    pub marks: Marks,
    pub by_price: bool,
}

/// The desk. It is `Copy`, so that every part of the view can have it.
#[derive(Clone, Copy)]
pub struct Desk {
    pub store: Store,
    /// Only the strings that are selected in the chart may change.
    pub part: RwSignal<bool>,
    /// What is on the harp now counts beside the stock.
    pub own: RwSignal<bool>,
    /// What is being worked at, in words.
    pub busy: RwSignal<Option<String>>,
    /// What is proposed.
    pub proposal: RwSignal<Option<Arc<Proposal>>>,
    /// The strings of it that are not to be taken.
    pub without: RwSignal<Vec<usize>>,
    /// The alternatives.
    pub found: RwSignal<Option<Arc<Found>>>,
    /// Which of them is proposed.
    pub picked: RwSignal<usize>,
    /// The strings that may change.
    pub rows: Memo<Vec<bool>>,
    asked: RwSignal<Option<Ask>>,
    job: StoredValue<Option<(Arc<Design>, Job)>>,
    /// Counts the runs, so that the frames of an old one stop.
    run: StoredValue<u32>,
}

impl Desk {
    /// A desk with nothing on it.
    pub fn new(store: Store) -> Self {
        let part = RwSignal::new(false);
        let rows = Memo::new(move |_| {
            let part = part.get().then(|| {
                let rows = store.selection.get().rows();
                (*rows.start(), *rows.end())
            });
            store.design.with(|design| allowed(design, part))
        });
        let desk = Self {
            store,
            part,
            own: RwSignal::new(true),
            busy: RwSignal::new(None),
            proposal: RwSignal::new(None),
            without: RwSignal::new(Vec::new()),
            found: RwSignal::new(None),
            picked: RwSignal::new(0),
            rows,
            asked: RwSignal::new(None),
            job: StoredValue::new(None),
            run: StoredValue::new(0),
        };
        Effect::new(move |before: Option<()>| {
            store.design.track();
            store.shop.track();
            rows.track();
            desk.own.track();
            if before.is_some()
                && let Some(ask) = desk.asked.get_untracked()
            {
                desk.begin(ask);
            }
        });
        desk
    }

    /// The stock in use.
    pub fn stock(self) -> Arc<StockList> {
        self.store.shop.get()
    }

    /// What is wanted, as it changes.
    pub fn wish<T: Send + Sync + 'static>(
        self,
        take: impl Fn(&TargetsSpec) -> T + Send + Sync + 'static,
    ) -> Signal<T> {
        Signal::derive(move || self.store.design.with(|design| take(&design.targets)))
    }

    /// Changes what is wanted; a run of changes of one part is one step.
    pub fn change(self, part: TargetsPart, change: impl FnOnce(&mut TargetsSpec)) {
        let mut targets = self.store.design.with_untracked(|design| design.targets.clone());
        change(&mut targets);
        self.store.send(&Edit::Targets { targets: Box::new(targets), part });
    }

    /// Asks for something new.
    pub fn ask(self, ask: Ask) {
        self.without.set(Vec::new());
        self.picked.set(usize::MAX);
        self.asked.set(Some(ask));
        self.begin(ask);
    }

    /// Begins the work at what was asked.
    fn begin(self, ask: Ask) {
        if !matches!(ask, Ask::Front { .. }) {
            self.found.set(None);
        }
        self.stop();
        let design = self.store.design.get_untracked();
        self.job.set_value(Some((design, Job::Begin(ask))));
        self.busy.set(Some(say::SEARCHING.into()));
        let run = self.run.get_value();
        request_animation_frame(move || self.work(run, browser::now_ms()));
    }

    /// Sets up the work for what was asked.
    fn set_up(self, design: &Design, ask: Ask) -> Job {
        let store = self.store;
        let resolved = store.resolved.get_untracked();
        let (stock, rows) = (store.shop.get_untracked(), self.rows.get_untracked());
        let own = self.own.get_untracked();
        let shop = Shop { items: &stock.items, materials: &stock.materials, own };
        // What is on the harp has no price, so that prices are compared within the stock.
        let task = |with_own: bool| {
            Task::new(design, &resolved, &Shop { own: own && with_own, ..shop }, &rows)
        };
        match ask {
            Ask::Lengths(way, room) => {
                let analysis = store.analysis.get_untracked();
                let found = lengths(design, &resolved, &analysis, way, &rows, &room);
                Job::Show(Box::new(match found {
                    Ok(lengths) => Proposal::of_lengths(lengths, design.units),
                    Err(why) => Proposal::none(say::NO_LENGTHS.said(), &why, &[]),
                }))
            }
            Ask::Set => {
                let task = task(true);
                let search = task.search();
                Job::Set(Box::new((task, search)))
            }
            Ask::Front { by_price } => {
                let task = task(!by_price);
                let front = if by_price { task.by_price() } else { task.by_items() };
                Job::Front(Box::new((task, front)), by_price)
            }
            Ask::Both(strength, room) => {
                Job::Both(Box::new(Both::new(design, &shop, &rows, strength, room)))
            }
        }
    }

    /// The work of one frame.
    fn work(self, run: u32, begun: f64) {
        // The view may be gone, or something else be asked for.
        if self.run.try_get_value() != Some(run) {
            return;
        }
        let frame = browser::now_ms();
        let mut done = false;
        while !done && browser::now_ms() - frame < SLICE_MS {
            let step =
                |job: &mut Option<(Arc<Design>, Job)>| job.as_mut().is_none_or(|job| job.1.step());
            done = self.job.try_update_value(step).unwrap_or(true);
        }
        if done {
            let Some(Some((design, job))) = self.job.try_update_value(Option::take) else { return };
            let next = match job {
                Job::Begin(ask) => Some(self.set_up(&design, ask)),
                job => self.close(&design, job),
            };
            if let Some(next) = next {
                self.job.set_value(Some((design, next)));
                request_animation_frame(move || self.work(run, begun));
            }
            return;
        }
        let seconds = (browser::now_ms() - begun) / 1_000.0;
        let round = self.job.with_value(|job| match job {
            Some((_, Job::Both(both))) => Some(both.progress().round),
            _ => None,
        });
        if seconds >= 0.5 {
            let seconds = crate::design::display::decimals(seconds, 0);
            self.busy.set(Some(match round {
                Some(round) => say::searching_round(&round, &seconds),
                None => say::searching_so_far(&seconds),
            }));
        }
        request_animation_frame(move || self.work(run, begun));
    }

    /// Makes of the work what can be shown, and then shows it: each in a frame of its own.
    fn close(self, design: &Arc<Design>, job: Job) -> Option<Job> {
        let store = self.store;
        let now = store.design.get_untracked();
        // A design that has just changed begins the work again.
        if !Arc::ptr_eq(&now, design) {
            return None;
        }
        let shown = match job {
            Job::Show(proposal) => {
                self.busy.set(None);
                self.propose(Some(*proposal));
                return None;
            }
            Job::Begin(_) => return None,
            Job::Set(work) => {
                let (task, search) = *work;
                let (resolved, analysis) =
                    (store.resolved.get_untracked(), store.analysis.get_untracked());
                let answer = search.answer()?;
                let outcome = task.outcome(&now, &resolved, &analysis, answer);
                match outcome {
                    Some(outcome) => Proposal::of_set(outcome, &task.left_out, now.units),
                    None => {
                        let why = task.conflicts(&analysis, answer);
                        Proposal::none(say::NO_SET.said(), &why, &task.left_out)
                    }
                }
            }
            Job::Front(work, by_price) => {
                self.busy.set(None);
                let (task, front) = *work;
                let sets = task.alternatives(front.found());
                if sets.is_empty() {
                    // Why there is none is found by the search for one set.
                    self.ask(Ask::Set);
                    return None;
                }
                let (shown, marks) = choosables(&sets, by_price);
                let last = sets.len() - 1;
                self.found.set(Some(Arc::new(Found { task, sets, shown, marks, by_price })));
                self.pick(self.picked.get_untracked().min(last));
                return None;
            }
            Job::Both(both) => Proposal::of_both(*both, now.units),
        };
        Some(Job::Show(Box::new(shown)))
    }

    /// Proposes one of the alternatives.
    pub fn pick(self, place: usize) {
        let Some(found) = self.found.get_untracked() else { return };
        let Some(set) = found.sets.get(place) else { return };
        let store = self.store;
        let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
        let analysis = store.analysis.get_untracked();
        let outcome = found.task.outcome(&design, &resolved, &analysis, &set.answer);
        if let Some(outcome) = outcome {
            self.picked.set(place);
            let proposal = Proposal::of_set(outcome, &found.task.left_out, design.units);
            self.propose(Some(proposal.called(say::set_with(&set.text))));
        }
    }

    /// Puts a proposal on the desk, and over the curves.
    fn propose(self, proposal: Option<Proposal>) {
        let analysis = proposal.as_ref().and_then(|proposal| proposal.analysis.clone());
        let ghost = analysis.map(|analysis| Ghost { words: say::GHOST.into(), analysis });
        self.store.ghost.set(ghost);
        proposed::keep(proposal.as_ref().and_then(|proposal| proposal.preview().cloned()));
        let proposal = proposal.map(Arc::new);
        self.proposal.set(proposal.clone());
        if let Some(proposal) = proposal.filter(|proposal| !proposal.rows.is_empty()) {
            browser::when_idle(move || self.tell_frame(&proposal));
        }
    }

    /// Adds what the frame bears with it: it takes longer than all other figures of a proposal, so that these are
    /// shown first.
    fn tell_frame(self, told: &Arc<Proposal>) {
        let is_told =
            |now: &Option<Arc<Proposal>>| now.as_ref().is_some_and(|now| Arc::ptr_eq(now, told));
        // The view may be gone, or something else be proposed.
        if self.proposal.try_with_untracked(is_told) != Some(true) {
            return;
        }
        let (Some(preview), Some(analysis)) = (told.preview(), &told.analysis) else { return };
        let (before, after) = beside(self.store, preview, analysis);
        let told = (**told).clone().with_frame(before, after);
        self.proposal.set(Some(Arc::new(told)));
    }

    /// Takes what is proposed, but for the strings that are left out.
    pub fn take(self, all: bool) {
        let Some(proposal) = self.proposal.get_untracked() else { return };
        let without = if all { Vec::new() } else { self.without.get_untracked() };
        let Some(edit) = proposal.edit(&without, self.store.count_now()) else { return };
        let count = proposal.rows.iter().filter(|row| !without.contains(&row.row)).count();
        self.clear();
        self.store.close_step();
        let changed = self.store.change(&edit);
        self.store.close_step();
        let words = say::taken(&count);
        self.store.tell(changed, &words);
        browser::focus("find-set");
    }

    /// Stops the work and takes everything off the desk.
    pub fn clear(self) {
        self.stop();
        self.asked.set(None);
        self.found.set(None);
        self.without.set(Vec::new());
        self.propose(None);
    }

    /// Stops the work. What was proposed before is gone, as it was made again.
    pub fn cancel(self) {
        self.clear();
        browser::focus("find-set");
    }

    /// The view is left.
    pub fn leave(self) {
        self.stop();
        self.store.ghost.set(None);
    }

    fn stop(self) {
        self.run.update_value(|run| *run = run.wrapping_add(1));
        self.job.set_value(None);
        self.busy.set(None);
    }
}
