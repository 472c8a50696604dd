//! The parts of the program that are fetched when they are first opened, and how far each has come.

use std::future::Future;
use std::pin::Pin;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::super::browser;
use super::{Store, View, Window};
use crate::app::panels::chart_keys::Ask;
use crate::design::edit::Column;
use crate::engine::analysis::Harp;
use crate::engine::tolerance::Spreads;
use crate::words::{Words, page as say};

/// A part of the program that comes after the first screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The drawing, and what the frame bears.
    Drawing,
    /// The parts of the harp, for the saw.
    Wood,
    /// Choosing strings.
    Choosing,
    /// Stock, order, versions, and strings in another material.
    Stock,
    /// The numbers and where they come from, the details of a string, and the materials.
    Numbers,
    /// Windows that are opened now and then, and files that are opened.
    Windows,
    /// The stringing card, the order sheet, links that are given away, and the templates.
    Papers,
    /// The menus, what is pasted, links that are opened, the table of figures, and two small windows.
    Files,
    /// The sound of the strings, the tuner, and the days of settling.
    Hearing,
    /// The help.
    Help,
}

/// Something that a part does for the first screen or for another part.
#[derive(Clone, Debug)]
pub enum Act {
    /// Says in the summary what the frame bears.
    TellFrame,
    /// Opens the design that the address carries.
    OpenLink,
    /// Opens a file, a design or a table of strings: its name and its text.
    OpenFile(String, String),
    /// Changes the string chart.
    Chart(Ask),
    /// Keeps what was typed in the words of another language.
    Keep(Typed),
    /// Puts a block from the clipboard into the string chart.
    Paste(String),
    /// Hands the table of all figures to the browser.
    SaveTable,
    /// Copies a link to the design.
    CopyLink,
    /// Hands a file of the drawing to the browser.
    SaveTemplate(Template),
    /// Hands a picture of the curves or the drawing to the browser.
    SavePicture(Picture, Format),
    /// Puts what is open on paper, for the browser to print.
    LayPaper,
    /// Puts the cutting list and the order of building on paper, for the browser to print.
    LayParts,
    /// Prints what is open.
    Print,
}

/// What was typed into a cell, or into so many rows of its column.
#[derive(Clone, Debug)]
pub struct Typed {
    pub text: String,
    pub column: Column,
    pub row: usize,
    pub rows: Option<usize>,
}

impl Act {
    /// The part that does it.
    pub const fn part(&self) -> Part {
        match self {
            Self::TellFrame => Part::Drawing,
            Self::OpenLink | Self::SaveTable | Self::Paste(_) | Self::Keep(_) | Self::Chart(_) => {
                Part::Files
            }
            Self::OpenFile(..) => Part::Windows,
            Self::LayParts => Part::Wood,
            Self::CopyLink
            | Self::SaveTemplate(_)
            | Self::SavePicture(..)
            | Self::LayPaper
            | Self::Print => Part::Papers,
        }
    }
}

/// What a picture shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Picture {
    Curves,
    Drawing,
}

/// How a picture is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Format {
    Svg,
    Png,
}

/// A file of the drawing.
#[derive(Clone, Copy, Debug)]
pub enum Template {
    Dxf,
    Svg,
    SheetsOfA4,
    SheetsOfLetter,
    OneSheet,
    PinSchedule,
}

impl Part {
    /// All of them, in the order in which they are fetched when nothing else is to do; the last [`Self::WHEN_OPENED`] only
    /// when they are opened.
    pub const ALL: [Self; 10] = [
        Self::Files,
        Self::Drawing,
        Self::Windows,
        Self::Choosing,
        Self::Stock,
        Self::Papers,
        Self::Numbers,
        Self::Help,
        Self::Wood,
        Self::Hearing,
    ];
    const WHEN_OPENED: usize = 2;

    /// The part that shows a view; the chart is there from the start.
    pub const fn of_view(view: View) -> Option<Self> {
        match view {
            View::Chart => None,
            View::Drawing => Some(Self::Drawing),
            View::Parts => Some(Self::Wood),
            View::Choose => Some(Self::Choosing),
            View::Order | View::Versions => Some(Self::Stock),
        }
    }

    /// The part that shows a window.
    pub const fn of_window(window: Window) -> Self {
        match window {
            Window::Stock | Window::Exchange => Self::Stock,
            Window::Materials | Window::Numbers | Window::Details => Self::Numbers,
            Window::Card
            | Window::OrderSheet
            | Window::TuningSheet
            | Window::Report
            | Window::Link
            | Window::Client
            | Window::Stringing => Self::Papers,
            Window::New
            | Window::Shelf
            | Window::Instrument
            | Window::MakeUp
            | Window::Missing
            | Window::Curves => Self::Windows,
            Window::Columns | Window::Keys => Self::Files,
            Window::Sound | Window::Tuner | Window::Settling => Self::Hearing,
            Window::Help | Window::About => Self::Help,
        }
    }
}

/// Shows something of the store.
pub type Show = fn(Store) -> AnyView;

/// What a part brings.
pub struct Brought {
    pub views: &'static [(View, Show)],
    pub windows: &'static [(Window, Show)],
    /// What a menu of the first screen holds, by its id, where this part brings that.
    pub menu: fn(Store, &'static str) -> AnyView,
    /// What it does once, when it comes.
    pub arrive: fn(Store),
    /// What it does for others. It is asked only for what [`Act::part`] says is its own.
    pub act: fn(Store, Act),
    /// How far off the figures of all strings can be, where this part works that out.
    pub spreads: Option<fn(&Harp) -> Vec<Spreads>>,
}

impl Brought {
    /// How a view is shown, if this part brings it.
    pub fn view(&self, view: View) -> Option<Show> {
        self.views.iter().find(|row| row.0 == view).map(|row| row.1)
    }

    /// How a window is shown, if this part brings it.
    pub fn window(&self, window: Window) -> Option<Show> {
        self.windows.iter().find(|row| row.0 == window).map(|row| row.1)
    }
}

/// A part could not be fetched: there is no network, or the server no longer has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotFetched;

/// Told when something cannot be done because its part did not come.
const MISSED: Words = say::NOT_DONE;

/// What comes of fetching a part.
pub type Fetching = Pin<Box<dyn Future<Output = Result<&'static Brought, NotFetched>>>>;

/// How far a part has come.
#[derive(Clone, Copy)]
pub enum Progress {
    /// Nobody asked for it yet.
    Away,
    /// It is on its way.
    Coming,
    /// It is here.
    Here(&'static Brought),
    /// It could not be fetched.
    Missed,
}

/// How far each part has come.
#[derive(Clone, Copy)]
pub struct Parts {
    fetch: fn(Part) -> Fetching,
    progress: [RwSignal<Progress>; Part::ALL.len()],
    /// There was leisure while a client looked on.
    postponed: StoredValue<bool>,
}

impl Parts {
    /// Nothing has come yet; `fetch` brings a part.
    pub fn new(fetch: fn(Part) -> Fetching) -> Self {
        Self {
            fetch,
            progress: Part::ALL.map(|_| RwSignal::new(Progress::Away)),
            postponed: StoredValue::new(false),
        }
    }

    const fn signal(self, part: Part) -> RwSignal<Progress> {
        self.progress[part as usize]
    }

    /// How far a part has come; follows it.
    pub fn progress(self, part: Part) -> Progress {
        self.signal(part).get()
    }
}

impl Store {
    /// Asks for a part unless it is here or on its way. What it brings is used once its progress says that it is
    /// here, so that nothing is built for a view that was left meanwhile.
    pub fn ask(self, part: Part) {
        if matches!(self.parts.signal(part).get_untracked(), Progress::Away | Progress::Missed) {
            spawn_local(async move {
                let _ = self.bring(part).await;
            });
        }
    }

    /// Whether a part is here.
    pub fn has(self, part: Part) -> bool {
        matches!(self.parts.signal(part).get_untracked(), Progress::Here(_))
    }

    /// Asks for all parts, one after another, as the browser has nothing else to do.
    pub fn ask_for_all(self) {
        spawn_local(async move {
            for &part in &Part::ALL[..Part::ALL.len() - Part::WHEN_OPENED] {
                // Whoever looks at a harp that was sent needs none of them.
                if self.window.get_untracked() == Some(Window::Client) {
                    self.parts.postponed.set_value(true);
                    return;
                }
                let mut is_again = false;
                while self.bring(part).await.is_err() {
                    // Nobody waited for it; who opens it later asks again.
                    self.parts.signal(part).set(Progress::Away);
                    // A worker that takes over just now may have cut it off.
                    if is_again {
                        return;
                    }
                    is_again = true;
                    browser::idle().await;
                }
                browser::idle().await;
            }
        });
    }

    /// The client goes on to the designer: asks for what was left alone meanwhile.
    pub fn leave_client(self) {
        self.window.set(None);
        if self.parts.postponed.get_value() {
            self.ask_for_all();
        }
    }

    /// Asks for a part that is waited for. If it does not come, that is told.
    pub fn need(self, part: Part) {
        spawn_local(async move {
            if self.bring(part).await.is_err() {
                self.complain(MISSED.said());
            }
        });
    }

    /// A part that was fetched before there was a store.
    pub fn take_in(self, part: Part, brought: &'static Brought) {
        (brought.arrive)(self);
        self.parts.signal(part).set(Progress::Here(brought));
    }

    /// Does something that a part does: at once where the part is here, else when it has come. If it does not come,
    /// that is told.
    pub fn act(self, act: Act) {
        let part = act.part();
        if let Progress::Here(brought) = self.parts.signal(part).get_untracked() {
            (brought.act)(self, act);
            return;
        }
        spawn_local(async move {
            match (self.bring(part).await, act) {
                (Ok(brought), act) => (brought.act)(self, act),
                // What was typed is not lost.
                (_, Act::Keep(typed)) => {
                    self.complain([MISSED.said(), " ", &typed.text].concat());
                }
                _ => self.complain(MISSED.said()),
            }
        });
    }

    /// Brings a part.
    ///
    /// # Errors
    ///
    /// When it does not come.
    pub async fn bring(self, part: Part) -> Result<&'static Brought, NotFetched> {
        let signal = self.parts.signal(part);
        if let Progress::Here(brought) = signal.get_untracked() {
            return Ok(brought);
        }
        signal.set(Progress::Coming);
        let fetched = (self.parts.fetch)(part).await;
        // Another who asked may have been told first.
        if let (Ok(brought), Progress::Coming | Progress::Missed) =
            (fetched, signal.get_untracked())
        {
            self.take_in(part, brought);
        }
        if fetched.is_err() {
            signal.set(Progress::Missed);
        }
        fetched
    }
}
