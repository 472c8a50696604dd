//! The parts of the program that are fetched when they are first opened, and how far each has come.

use std::future::Future;
use std::pin::Pin;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::{Store, View, Window};

/// A part of the program that comes after the first screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The drawing, the loads of the frame, and the templates.
    Drawing,
    /// Choosing strings, stock, order and versions.
    Choosing,
    /// The numbers and where they come from, and the materials.
    Numbers,
    /// Windows that are opened now and then.
    Windows,
    /// The stringing card and the order sheet.
    Papers,
}

impl Part {
    /// All of them, in the order in which they are fetched when nothing else is to do.
    pub const ALL: [Self; 5] =
        [Self::Windows, Self::Drawing, Self::Choosing, Self::Papers, Self::Numbers];

    /// The part that shows a view; the chart is there from the start.
    pub const fn of_view(view: View) -> Option<Self> {
        match view {
            View::Chart => None,
            View::Drawing => Some(Self::Drawing),
            View::Choose | View::Order | View::Versions => Some(Self::Choosing),
        }
    }

    /// The part that shows a window.
    pub const fn of_window(window: Window) -> Self {
        match window {
            Window::Stock | Window::Exchange => Self::Choosing,
            Window::Materials | Window::Numbers => Self::Numbers,
            Window::Card | Window::OrderSheet => Self::Papers,
            Window::New
            | Window::Shelf
            | Window::Instrument
            | Window::MakeUp
            | Window::Details
            | Window::Missing
            | Window::Link
            | Window::Keys => Self::Windows,
        }
    }
}

/// Shows something of the store.
pub type Show = fn(Store) -> AnyView;

/// What a part brings.
pub struct Brought {
    pub views: &'static [(View, Show)],
    pub windows: &'static [(Window, Show)],
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
}

impl Parts {
    /// Nothing has come yet; `fetch` brings a part.
    pub fn new(fetch: fn(Part) -> Fetching) -> Self {
        Self { fetch, progress: Part::ALL.map(|_| RwSignal::new(Progress::Away)) }
    }

    const fn signal(self, part: Part) -> RwSignal<Progress> {
        self.progress[part as usize]
    }

    /// How far a part has come; follows it.
    pub fn progress(self, part: Part) -> Progress {
        self.signal(part).get()
    }

    /// Asks for a part unless it is here or on its way. What it brings is used once its progress says that it is
    /// here, so that nothing is built for a view that was left meanwhile.
    pub fn ask(self, part: Part) {
        let signal = self.signal(part);
        if matches!(signal.get_untracked(), Progress::Coming | Progress::Here(_)) {
            return;
        }
        signal.set(Progress::Coming);
        spawn_local(async move {
            signal.set(match (self.fetch)(part).await {
                Ok(brought) => Progress::Here(brought),
                Err(NotFetched) => Progress::Missed,
            });
        });
    }
}
