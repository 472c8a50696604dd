//! What the signals of the store hold.

use std::sync::Arc;

use leptos::prelude::RwSignal;

use crate::charts::lofting::look::Look;
use crate::design::document::MechanismKind;
use crate::design::table::hand::Columns;
use crate::engine::analysis::Analysis;

/// Where the open design comes from, and so whether this browser keeps it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Origin {
    /// A sample that nobody changed.
    Sample,
    /// Somebody's link: a copy that is not kept here until it is changed or kept on purpose.
    Link,
    /// Kept in this browser under a name.
    Kept(String),
}

/// What stands at the left of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum View {
    /// The string chart.
    #[default]
    Chart,
    /// The harp to scale.
    Drawing,
    /// The parts of the harp, for the saw.
    Parts,
    /// Choosing strings from a stock.
    Choose,
    /// What is to be ordered.
    Order,
    /// Versions of the design, and how they differ.
    Versions,
}

/// Measurements that were pasted, and what was said of them: kept until they are used or thrown away.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Pasted {
    pub text: String,
    /// What its columns are, where somebody has put that right.
    pub columns: Option<Columns>,
    /// The ends, for a list without notes, as typed.
    pub highest: String,
    pub lowest: String,
    /// Which of the open tunings it is.
    pub tuning: usize,
    /// What the strings are made of of which the list does not say it.
    pub material: String,
    /// What raises the strings; `None` for what is usual.
    pub mechanism: Option<MechanismKind>,
}

/// What the curves are compared with.
#[derive(Clone, Debug, PartialEq)]
pub struct Ghost {
    /// What it is, for the legend.
    pub words: String,
    /// Its figures.
    pub analysis: Arc<Analysis>,
}

/// What of the drawing is shown. It stays while the string chart takes its place.
#[derive(Clone, Copy)]
pub struct Paper {
    /// What is in sight; `None` for the whole harp.
    pub look: RwSignal<Option<Look>>,
    /// Width and height in pixels.
    pub size: RwSignal<(f64, f64)>,
    /// The key of what is shown over the drawing.
    pub over: RwSignal<&'static str>,
    /// The key of the group beside the drawing that is open.
    pub group: RwSignal<&'static str>,
    /// Whether that group was asked for, and is to come in sight.
    pub seeks: RwSignal<bool>,
}

/// What is typed into the window of a new harp. It stays until it is used or thrown away.
#[derive(Clone, Copy)]
pub struct NewHarp {
    /// The key of the way to begin.
    pub way: RwSignal<&'static str>,
    /// What instrument it is; empty until the window is opened.
    pub instrument: RwSignal<String>,
    /// What most of its strings are made of.
    pub material: RwSignal<String>,
    pub count: RwSignal<String>,
    pub low: RwSignal<String>,
    pub high: RwSignal<String>,
    /// The place of the tuning in its list.
    pub tuning: RwSignal<String>,
    /// What raises each string, in words.
    pub mechanism: RwSignal<String>,
    /// The highest wound string.
    pub wound_from: RwSignal<String>,
    /// The name under which the harp is kept that was begun last.
    pub begun: RwSignal<String>,
}

impl NewHarp {
    /// Nothing typed yet.
    pub fn empty() -> Self {
        let empty = || RwSignal::new(String::new());
        Self {
            way: RwSignal::new("own"),
            instrument: empty(),
            material: empty(),
            count: empty(),
            low: empty(),
            high: empty(),
            tuning: empty(),
            mechanism: empty(),
            wound_from: empty(),
            begun: empty(),
        }
    }
}

/// A panel that opens over the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Window {
    New,
    Shelf,
    Instrument,
    Materials,
    Stock,
    MakeUp,
    Details,
    Exchange,
    Card,
    OrderSheet,
    TuningSheet,
    Report,
    Missing,
    Link,
    Numbers,
    Columns,
    Keys,
    Help,
    Client,
    Stringing,
    Sound,
    Tuner,
    Settling,
    Curves,
    About,
}

impl Window {
    /// Whether it shows a paper as it will be printed.
    pub const fn is_paper(self) -> bool {
        matches!(self, Self::Card | Self::OrderSheet | Self::TuningSheet | Self::Report)
    }
}

/// A cell that is being typed into.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Typing {
    /// What the field holds when it opens.
    pub text: String,
    /// Opened by a printable key: then the arrow keys leave the field, as in any grid.
    pub quick: bool,
}
