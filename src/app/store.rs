//! The one place where the page's state changes. Panels read the memos and send edits.

mod kinds;
mod parts;

use std::sync::Arc;
use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

pub use self::kinds::{Ghost, Notice, Origin, Paper, Typing, View, Window};
pub use self::parts::{Brought, Fetching, NotFetched, Part, Parts, Progress, Show};
use super::grid::{Selection, shown};
use super::{browser, shelf, stock_shelf};
use crate::charts::quantity::Quantity;
use crate::design::document::Design;
use crate::design::edit::{Edit, EditKey};
use crate::design::explain::Topic;
use crate::design::history::History;
use crate::design::presets::SAMPLES;
use crate::design::resolve::{Resolved, resolve};
use crate::design::stock::StockList;
use crate::design::{link, persist, table};
use crate::engine::analysis::{Analysis, analyse};
use crate::engine::bearing::{Borne, borne};
use crate::engine::figure::Figure;
use crate::engine::geometry::{Band, lay_out};

/// Asked before a design is let go that the browser does not keep.
const NOT_KEPT: &str = "This browser does not keep the design that is open, so it will be gone. Open the other one all the same?";
/// How long a change waits before it is kept, so that a run of keys is written once.
const KEEP_AFTER: Duration = Duration::from_millis(300);

/// The signals of the page.
#[derive(Clone, Copy)]
pub struct Store {
    history: RwSignal<History<Design, EditKey>>,
    /// The design as typed.
    pub design: Memo<Arc<Design>>,
    /// What it means.
    pub resolved: Memo<Arc<Resolved>>,
    /// What follows.
    pub analysis: Memo<Arc<Analysis>>,
    /// Where its strings and its frame stand.
    pub band: Memo<Arc<Band>>,
    /// What the strings do to it.
    pub borne: Memo<Arc<Borne>>,
    /// Where the design comes from.
    pub origin: RwSignal<Origin>,
    /// Cursor and selection of the chart.
    pub selection: RwSignal<Selection>,
    /// The cell under the cursor is being typed into.
    pub typing: RwSignal<Option<Typing>>,
    /// The string under the mouse, wherever it points at one.
    pub hover: RwSignal<Option<usize>>,
    /// The curves that are shown.
    pub curves: RwSignal<Vec<Quantity>>,
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
    /// What the curves are compared with.
    pub ghost: RwSignal<Option<Ghost>>,
    /// The stock list in use, every price with its currency.
    pub shop: RwSignal<Arc<StockList>>,
    /// Whether the colours are dark.
    pub dark: RwSignal<bool>,
    /// The parts of the program that come after the first screen.
    pub parts: Parts,
    timer: StoredValue<Option<TimeoutHandle>>,
    /// Whether there is a change that the browser does not keep yet.
    unkept: StoredValue<bool>,
    changed_elsewhere: StoredValue<bool>,
}

impl Store {
    /// A store with a design open. Nothing of the browser is asked here.
    pub fn new(design: Design, origin: Origin, fetch: fn(Part) -> Fetching) -> Self {
        let history = RwSignal::new(History::new(design));
        let design = Memo::new(move |_| Arc::new(history.with(|h| h.present().clone())));
        let resolved = Memo::new(move |_| Arc::new(resolve(&design.read())));
        let analysis = Memo::new(move |_| Arc::new(analyse(&resolved.read().harp)));
        let band = Memo::new(move |_| {
            let resolved = resolved.read();
            Arc::new(lay_out(&resolved.harp, &analysis.read(), &resolved.geometry))
        });
        let borne = Memo::new(move |_| {
            let (resolved, analysis, band) = (resolved.read(), analysis.read(), band.read());
            let (geometry, build) = (&resolved.geometry, &resolved.build);
            Arc::new(borne(&band, &resolved.harp, &analysis, geometry, build))
        });
        Self {
            history,
            design,
            resolved,
            analysis,
            band,
            borne,
            origin: RwSignal::new(origin),
            selection: RwSignal::new(Selection::default()),
            typing: RwSignal::new(None),
            hover: RwSignal::new(None),
            curves: RwSignal::new(vec![
                Quantity::Tension,
                Quantity::PluckStiffness,
                Quantity::LoadShare,
            ]),
            notice: RwSignal::new(None),
            window: RwSignal::new(None),
            topic: RwSignal::new(Topic::Figure(Figure::Tension)),
            view: RwSignal::new(View::Chart),
            paper: Paper {
                look: RwSignal::new(None),
                size: RwSignal::new((0.0, 0.0)),
                over: RwSignal::new("none"),
                group: RwSignal::new("shape"),
            },
            ghost: RwSignal::new(None),
            shop: RwSignal::new(Arc::default()),
            dark: RwSignal::new(false),
            parts: Parts::new(fetch),
            timer: StoredValue::new(None),
            unkept: StoredValue::new(false),
            changed_elsewhere: StoredValue::new(false),
        }
    }

    /// Opens what the address, this browser's shelf or, on a first visit, a sample brings.
    pub fn open_first(fetch: fn(Part) -> Fetching) -> Self {
        let (design, origin) = match shelf::last_open() {
            Some((id, design)) => (design, Origin::Kept(id)),
            None => (first_sample(), Origin::Sample),
        };
        let store = Self::new(design, origin, fetch);
        store.shop.set(stock_shelf::shop());
        store.open_link();
        store
    }

    /// Changes the design. An edit whose outcome could not be opened again is told and left out.
    pub fn send(self, edit: &Edit) {
        self.notice.set(None);
        let key = edit.key();
        let next = self.history.with_untracked(|history| edit.apply(history.present()));
        match persist::check(&next) {
            Ok(()) => {
                self.history.update(|history| history.record(next, key));
                self.changed();
            }
            Err(error) => self.complain(format!("That was not taken: {error}.")),
        }
    }

    /// Ends the run of edits that one undo takes back.
    pub fn close_step(self) {
        self.history.update_untracked(History::close_step);
    }

    /// Takes the last step back.
    pub fn undo(self) {
        if self.history.try_update(History::undo) == Some(true) {
            self.changed();
        }
    }

    /// Takes the last undo back.
    pub fn redo(self) {
        if self.history.try_update(History::redo) == Some(true) {
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
            View::Choose => "choose",
            View::Order => "order",
            View::Versions => "versions",
        }
    }

    /// Tells that something was done.
    pub fn tell(self, text: impl Into<String>) {
        self.notice.set(Some(Notice { text: text.into(), problem: false }));
    }

    /// Tells what went wrong and what to do.
    pub fn complain(self, text: impl Into<String>) {
        self.notice.set(Some(Notice { text: text.into(), problem: true }));
    }

    /// Opens the page about a topic.
    pub fn explain(self, topic: Topic) {
        self.topic.set(topic);
        self.window.set(Some(Window::Numbers));
    }

    /// Opens a design in place of the one that is open, which stays on the shelf if it was kept. One
    /// that the browser does not keep is not let go.
    pub fn open(self, design: Design, origin: Origin) {
        self.keep_now();
        if self.unkept.get_value() && !browser::confirmed(NOT_KEPT) {
            return;
        }
        self.unkept.set_value(false);
        self.changed_elsewhere.set_value(false);
        if let Origin::Kept(id) = &origin {
            shelf::set_open(id);
        }
        if origin != Origin::Link {
            browser::drop_fragment();
        }
        self.typing.set(None);
        self.hover.set(None);
        self.paper.look.set(None);
        self.ghost.set(None);
        self.selection.set(Selection::default());
        self.notice.set(None);
        self.origin.set(origin);
        self.history.set(History::new(design));
        browser::to_top("chart-scroll");
    }

    /// Opens a design that begins here: it is kept at once.
    pub fn begin(self, design: Design) {
        self.open(design, Origin::Kept(browser::fresh_name()));
        self.unkept.set_value(true);
        self.keep_now();
    }

    /// Opens the design that the address carries, if it carries one. A link that cannot be read is
    /// told, and leaves what is open as it is.
    pub fn open_link(self) {
        let fragment = browser::fragment();
        if fragment.is_empty() {
            return;
        }
        match link::read(&fragment) {
            Ok(design) => {
                self.open(design, Origin::Link);
                self.notice.set(None);
            }
            Err(error) => {
                browser::drop_fragment();
                self.complain(format!("This link was not opened: {error}."));
            }
        }
    }

    /// Opens a file of ours: a design, or a table of strings.
    pub fn open_text(self, name: &str, text: &str) {
        if text.trim_start().starts_with('{') {
            match persist::read(text) {
                Ok(design) => {
                    self.begin(design);
                    self.tell(format!("Opened {name}."));
                }
                Err(error) => self.complain(format!("{name} was not opened: {error}.")),
            }
            return;
        }
        match table::read(text) {
            Ok(read) => {
                let ignored = match read.ignored.as_slice() {
                    [] => String::new(),
                    columns => format!(" Columns left out: {}.", columns.join(", ")),
                };
                let stem = name.rsplit_once('.').map_or(name, |(stem, _)| stem);
                let design =
                    read.into_design(&Design { title: stem.to_owned(), ..Design::default() });
                let count = design.strings.len();
                self.begin(design);
                self.tell(format!("Read {count} strings from {name}.{ignored}"));
            }
            Err(errors) => {
                let first: Vec<String> =
                    errors.iter().take(3).map(|error| format!("{error}.")).collect();
                let more = match errors.len().saturating_sub(3) {
                    0 => String::new(),
                    more => format!(" And {more} more."),
                };
                self.complain(format!("{name} was not read: {}{more}", first.join(" ")));
            }
        }
    }

    /// The address that opens this very design.
    ///
    /// # Errors
    ///
    /// A sentence, when the design does not fit a link.
    pub fn address(self) -> Result<String, String> {
        self.address_with(None)
    }

    /// The address that opens this very design and one of its versions beside it.
    ///
    /// # Errors
    ///
    /// A sentence, when they do not fit a link.
    pub fn address_with(self, version: Option<usize>) -> Result<String, String> {
        let fragment = self.design.with(|design| match version {
            Some(version) => link::write_with_version(design, version),
            None => link::write(design),
        });
        let fragment = fragment.map_err(|error| error.to_string())?;
        Ok(format!("{}#{fragment}", browser::address()))
    }

    /// Keeps a sample or a link's copy in this browser.
    pub fn keep_copy(self) {
        self.changed();
        self.keep_now();
        self.tell("Kept in this browser.");
    }

    /// What every change of the design brings with it.
    fn changed(self) {
        let (rows, columns) = self.history.with_untracked(|history| {
            let design = history.present();
            (design.strings.len(), shown(design).len())
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
        if let Some(timer) = self.timer.get_value() {
            timer.clear();
        }
        self.timer.set_value(set_timeout_with_handle(move || self.keep_now(), KEEP_AFTER).ok());
    }

    /// Keeps the design now, if it is one that is kept and was changed since. One that was only
    /// looked at is left alone: another tab may have gone on with it.
    pub fn keep_now(self) {
        if let Some(timer) = self.timer.get_value() {
            timer.clear();
            self.timer.set_value(None);
        }
        let Origin::Kept(id) = self.origin.get_untracked() else { return };
        if !self.unkept.get_value() {
            return;
        }
        let id = if self.changed_elsewhere.get_value() {
            self.changed_elsewhere.set_value(false);
            let id = browser::fresh_name();
            self.origin.set(Origin::Kept(id.clone()));
            self.history.update(|history| {
                let title = format!("{} (copy)", history.present().title);
                history.record(Design { title, ..history.present().clone() }, None);
            });
            self.tell(
                "This design was changed in another tab too. Both are kept: this tab goes on with a copy of its own.",
            );
            id
        } else {
            id
        };
        let kept = self.history.with_untracked(|history| shelf::keep(&id, history.present()));
        self.unkept.set_value(!kept);
        if !kept {
            self.complain(
                "This browser did not keep the last change (its storage is full or switched off). Save the design as a file.",
            );
        }
    }

    /// Listens to the browser: other tabs, the address, the theme, and the end of the page.
    pub fn listen(self) {
        browser::on_fragment(move || self.open_link());
        browser::on_kept_elsewhere(move |key, _| {
            if stock_shelf::is_ours(&key) {
                self.shop.set(stock_shelf::shop());
            }
            let Origin::Kept(id) = self.origin.get_untracked() else { return };
            if key == shelf::key(&id) {
                self.changed_elsewhere.set_value(true);
            }
        });
        let _ = window_event_listener(leptos::ev::pagehide, move |_| self.keep_now());
    }
}

/// What a first visit opens: the 36-string floor harp.
fn first_sample() -> Design {
    let chosen = SAMPLES.iter().find(|sample| sample.key == "floor-36").unwrap_or(&SAMPLES[0]);
    chosen.design()
}
