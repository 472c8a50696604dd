//! The one place where the page's state changes. Panels read the memos and send edits.

mod begun;
mod columns;
mod files;
mod followed;
mod keeping;
mod kinds;
mod opening;
mod outcome;
mod parts;
mod typed;

use std::sync::Arc;

use leptos::prelude::*;

pub use self::followed::Followed;
pub use self::kinds::{Ghost, NewHarp, Origin, Paper, Pasted, Typing, View, Window};
pub use self::outcome::{Done, Not, Notice, Outcome};
pub use self::parts::{
    Act, Brought, Fetching, Format, NotFetched, Part, Parts, Picture, Progress, Show, Template,
    Typed,
};
use super::browser::{Handed, NotHanded};
use super::columns::{SETS, present};
use super::grid::{Selection, Shown};
pub use super::tab::Elsewhere;
use crate::design::advice::changed_row;
use crate::design::bearing_words::FrameVerdict;
use crate::design::document::Design;
use crate::design::edit::{Edit, EditKey};
use crate::design::explain::Topic;
use crate::design::history::History;
use crate::design::letters::capital;
use crate::design::persist;
use crate::design::resolve::{Resolved, resolve};
use crate::design::stock::StockList;
use crate::engine::analysis::{Analysis, analyse_changed};
use crate::engine::figure::Figure;
use crate::words::page as say;

/// The signals of the page.
#[derive(Clone, Copy)]
pub struct Store {
    history: RwSignal<History<Design, EditKey>>,
    /// The design as typed.
    pub design: Followed<Design>,
    /// What it means.
    pub resolved: Followed<Resolved>,
    /// What follows.
    pub analysis: Followed<Analysis>,
    /// Where the design comes from.
    pub origin: RwSignal<Origin>,
    /// The columns of the chart that were chosen, after the note.
    pub chosen: RwSignal<Vec<Shown>>,
    /// The columns of the chart, from left to right.
    pub columns: Memo<Arc<Vec<Shown>>>,
    /// Cursor and selection of the chart.
    pub selection: RwSignal<Selection>,
    /// The cell under the cursor is being typed into.
    pub typing: RwSignal<Option<Typing>>,
    /// The string under the mouse, wherever it points at one.
    pub hover: RwSignal<Option<usize>>,
    /// The curves that are shown.
    pub curves: RwSignal<Vec<Figure>>,
    /// What there is to tell.
    pub notice: RwSignal<Option<Notice>>,
    /// The panel that lies over the page.
    pub window: RwSignal<Option<Window>>,
    /// What the page of the numbers is about.
    pub topic: RwSignal<Topic>,
    /// What stands at the left.
    pub view: RwSignal<View>,
    /// What of the drawing is shown.
    pub paper: Paper,
    /// What is typed into the window of a new harp.
    pub new_harp: NewHarp,
    /// What the curves are compared with.
    pub ghost: RwSignal<Option<Ghost>>,
    /// Measurements on their way into a design.
    pub pasted: RwSignal<Pasted>,
    /// The two versions that are compared, each by its place; `None` is the design as it is now.
    pub compared: RwSignal<(Option<usize>, Option<usize>)>,
    /// The stock list in use, every price with its currency.
    pub shop: RwSignal<Arc<StockList>>,
    /// The state of the frame.
    pub frame: RwSignal<FrameVerdict>,
    /// Whether the colours are dark.
    pub dark: RwSignal<bool>,
    /// The parts of the program that come after the first screen.
    pub parts: Parts,
    /// Whether the design is to be kept as soon as the page has shown it.
    keeps_soon: StoredValue<bool>,
    /// Whether there is a change that the browser was not given yet.
    unkept: StoredValue<bool>,
    /// Whether it is to be told when all is kept.
    tells_kept: StoredValue<bool>,
    /// Whether and when the browser kept the last change, in words.
    pub kept: RwSignal<String>,
    /// Why the browser keeps nothing, while that is so.
    pub not_kept: RwSignal<Option<String>>,
    /// What another tab did with the design since it was opened here.
    pub elsewhere: RwSignal<Option<Elsewhere>>,
    /// Whether `shop` is kept up with the shelf.
    pub follows_stock: StoredValue<bool>,
}

impl Store {
    /// A store with a design open. Nothing of the browser is asked here.
    pub fn new(design: Design, origin: Origin, fetch: fn(Part) -> Fetching) -> Self {
        let history = RwSignal::new(History::new(design));
        let design = Followed::new(move || Arc::new(history.with(|h| h.present().clone())));
        let resolved = Followed::new(move || Arc::new(resolve(&design.read())));
        let analysis = Followed::new(move || {
            let changed =
                history.with(|h| h.before().and_then(|before| changed_row(before, h.present())));
            Arc::new(analyse_changed(&resolved.read().harp, changed))
        });
        let chosen = RwSignal::new(SETS[0].2.to_vec());
        let columns = Memo::new(move |_| Arc::new(present(&design.read(), &chosen.read())));
        Self {
            history,
            design,
            resolved,
            analysis,
            chosen,
            columns,
            origin: RwSignal::new(origin),
            selection: RwSignal::new(Selection::default()),
            typing: RwSignal::new(None),
            hover: RwSignal::new(None),
            curves: RwSignal::new(vec![Figure::Tension, Figure::PluckStiffness, Figure::LoadShare]),
            notice: RwSignal::new(None),
            window: RwSignal::new(None),
            topic: RwSignal::new(Topic::Figure(Figure::Tension)),
            view: RwSignal::new(View::Chart),
            paper: Paper {
                look: RwSignal::new(None),
                size: RwSignal::new((0.0, 0.0)),
                over: RwSignal::new("none"),
                group: RwSignal::new("shape"),
                seeks: RwSignal::new(false),
            },
            new_harp: NewHarp::empty(),
            ghost: RwSignal::new(None),
            pasted: RwSignal::new(Pasted::default()),
            compared: RwSignal::new((None, None)),
            shop: RwSignal::new(Arc::default()),
            frame: RwSignal::new(no_verdict()),
            dark: RwSignal::new(false),
            parts: Parts::new(fetch),
            keeps_soon: StoredValue::new(false),
            unkept: StoredValue::new(false),
            tells_kept: StoredValue::new(false),
            kept: RwSignal::new(String::new()),
            not_kept: RwSignal::new(None),
            elsewhere: RwSignal::new(None),
            follows_stock: StoredValue::new(false),
        }
    }

    /// The same for a view that will go.
    pub fn here(mut self) -> Self {
        let here = StoredValue::new(true);
        self.design.here(here);
        self.resolved.here(here);
        self.analysis.here(here);
        self
    }

    /// Sends an edit after which there is nothing to do or to say: a refusal is told.
    pub fn send(self, edit: &Edit) {
        self.tell(self.change(edit), "");
    }

    /// Changes the design.
    ///
    /// # Errors
    ///
    /// When the outcome could not be opened again: then the design stays as it is.
    pub fn change(self, edit: &Edit) -> Outcome {
        self.notice.set(None);
        let key = edit.key();
        let next = self.history.with_untracked(|history| edit.apply(history.present()));
        if let Err(error) = persist::check(&next) {
            return Err(Not::Refused(say::refused(&error)));
        }
        self.history.update(|history| history.record(next, key));
        self.changed();
        Ok(Done::plain())
    }

    /// Ends the run of edits that one undo takes back.
    pub fn close_step(self) {
        self.history.update_untracked(History::close_step);
    }

    /// Takes the last step back.
    pub fn undo(self) {
        self.walk(false);
    }

    /// Takes the last undo back.
    pub fn redo(self) {
        self.walk(true);
    }

    fn walk(self, forward: bool) {
        let kept = self.kept_next(forward);
        if self.history.try_update(|history| history.walk(forward, kept)) == Some(true) {
            self.notice.set(None);
            self.changed();
        }
    }

    /// Whether there is a step to take back.
    pub fn can_undo(self) -> bool {
        self.history.with(History::can_undo)
    }

    /// Whether there is an undo to take back.
    pub fn can_redo(self) -> bool {
        self.history.with(History::can_redo)
    }

    /// How many strings the design has, for what does not follow it.
    pub fn count_now(self) -> usize {
        self.history.with_untracked(|history| history.present().strings.len())
    }

    /// How many strings the design has.
    pub fn count(self) -> usize {
        self.design.with(|design| design.strings.len())
    }

    /// The part of the page that has the keyboard while nothing else asks for it.
    pub fn main_part(self) -> &'static str {
        match self.view.get_untracked() {
            View::Chart => "chart",
            View::Drawing => "loft",
            View::Parts => "parts",
            View::Choose => "choose",
            View::Order => "order",
            View::Versions => "versions",
        }
    }

    /// Tells an outcome: what was not done with its reason, what was done in `words`. Without words only what
    /// else there is to tell. Whether it was done.
    pub fn tell(self, outcome: Outcome, words: &str) -> bool {
        if let Some(notice) = Notice::of(&outcome, words) {
            self.notice.set(Some(notice));
        }
        outcome.is_ok()
    }

    /// Tells whether the browser took a file.
    pub fn tell_handed(self, handed: Result<Handed, NotHanded>) {
        match handed {
            Ok(handed) => self.hint(&handed.words()),
            Err(error) => self.complain(format!("{}.", capital(&error.to_string()))),
        }
    }

    /// Says why there is nothing to do.
    pub fn hint(self, text: &str) {
        self.notice.set(Some(Notice::new(text, false)));
    }

    /// Takes away what was told of something that was done; what went wrong stays.
    pub fn forget_done(self) {
        if self.notice.with_untracked(|notice| notice.as_ref().is_some_and(|n| !n.is_problem())) {
            self.notice.set(None);
        }
    }

    /// Tells what went wrong and what to do.
    pub fn complain(self, text: impl Into<String>) {
        self.notice.set(Some(Notice::new(&text.into(), true)));
    }

    /// Opens the drawing with a group beside it.
    pub fn show_group(self, group: &'static str) {
        self.paper.group.set(group);
        self.paper.seeks.set(true);
        self.view.set(View::Drawing);
    }

    /// Opens the page about a topic.
    pub fn explain(self, topic: Topic) {
        self.topic.set(topic);
        self.window.set(Some(Window::Numbers));
    }
}

/// What is said of the frame until it is worked out.
fn no_verdict() -> FrameVerdict {
    FrameVerdict {
        short: say::FRAME_NOT_YET.into(),
        full: say::FRAME_LATER.into(),
        ..FrameVerdict::default()
    }
}
