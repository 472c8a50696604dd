//! What each part of the program brings. With the feature `parts` the build puts every part, and what only it
//! needs, into a module of its own; without it all of them are in one module and here from the start.
//!
//! What is named here from outside a part would be pulled into the first screen, so each table of panels is named
//! by the part's entry alone.

#![cfg_attr(
    feature = "parts",
    allow(
        unsafe_code,
        clippy::allow_attributes_without_reason,
        reason = "the entries of the parts are functions of other modules, which the macro declares"
    )
)]

use leptos::prelude::*;

use super::panels::about::AboutWindow;
use super::panels::card::{CardBar, OrderBar, ReportBar, TuningBar};
use super::panels::choose::Choose;
use super::panels::client::ClientWindow;
use super::panels::columns::ColumnsWindow;
use super::panels::details::DetailsWindow;
use super::panels::drawing::Drawing;
use super::panels::exchange::ExchangeWindow;
use super::panels::help::HelpWindow;
use super::panels::instrument::{self, InstrumentWindow};
use super::panels::keys::KeysWindow;
use super::panels::link::{LinkWindow, copy_link};
use super::panels::make_up::MakeUpWindow;
use super::panels::materials::MaterialsWindow;
use super::panels::new_design::{MissingWindow, NewWindow};
use super::panels::numbers::NumbersWindow;
use super::panels::order::Order;
use super::panels::parts::{Parts, lay_parts};
use super::panels::settling::SettlingWindow;
use super::panels::shelf::{ShelfWindow, watch_room};
use super::panels::sound::SoundWindow;
use super::panels::spoken::{self, CurvesWindow};
use super::panels::stock::StockWindow;
use super::panels::stringing::StringingWindow;
use super::panels::tuner::TunerWindow;
use super::panels::versions::Versions;
use super::panels::{
    asked, chart_edits, menus, offers, papers, pasting, pictures, sheet, summary, templates,
};
use super::stock_shelf;
use super::store::{Act, Brought, Fetching, NotFetched, Part, View, Window};
use crate::engine::tolerance::spreads_of_all;

/// Fetches a part, or finds it here.
pub fn fetch(part: Part) -> Fetching {
    match part {
        Part::Drawing => Box::pin(drawing()),
        Part::Choosing => Box::pin(choosing()),
        Part::Stock => Box::pin(stock()),
        Part::Numbers => Box::pin(numbers()),
        Part::Windows => Box::pin(windows()),
        Part::Papers => Box::pin(papers()),
        Part::Files => Box::pin(files()),
        Part::Help => Box::pin(help()),
        Part::Wood => Box::pin(wood()),
        Part::Hearing => Box::pin(hearing()),
    }
}

#[cfg(feature = "parts")]
impl From<wasm_split_helpers::SplitLoaderError> for NotFetched {
    fn from(_: wasm_split_helpers::SplitLoaderError) -> Self {
        Self
    }
}

/// Declares the entry of a part: a function that gives what the part brings.
macro_rules! entry {
    ($part:ident => $brought:ident) => {
        #[cfg(feature = "parts")]
        #[wasm_split_helpers::wasm_split($part, fallible)]
        fn $part() -> Result<&'static Brought, NotFetched> {
            Ok(&$brought)
        }

        #[cfg(not(feature = "parts"))]
        async fn $part() -> Result<&'static Brought, NotFetched> {
            Ok(&$brought)
        }
    };
}

entry!(drawing => DRAWING);
entry!(choosing => CHOOSING);
entry!(stock => STOCK);
entry!(numbers => NUMBERS);
entry!(windows => WINDOWS);
entry!(papers => PAPERS);
entry!(files => FILES);
entry!(help => HELP);
entry!(wood => WOOD);
entry!(hearing => HEARING);

/// What a part does that has nothing of a kind to do.
const NOTHING: Brought = Brought {
    views: &[],
    windows: &[],
    menu: |_, _| ().into_any(),
    arrive: |_| {},
    act: |_, _| {},
    spreads: None,
};

static DRAWING: Brought = Brought {
    views: &[(View::Drawing, |store| view! { <Drawing store=store/> }.into_any())],
    arrive: summary::tell_frame,
    act: |store, _| summary::tell_frame(store),
    ..NOTHING
};

static CHOOSING: Brought = Brought {
    views: &[(View::Choose, |store| view! { <Choose store=store/> }.into_any())],
    arrive: stock_shelf::follow,
    ..NOTHING
};

static STOCK: Brought = Brought {
    views: &[
        (View::Order, |store| view! { <Order store=store/> }.into_any()),
        (View::Versions, |store| view! { <Versions store=store/> }.into_any()),
    ],
    windows: &[
        (Window::Stock, |store| view! { <StockWindow store=store/> }.into_any()),
        (Window::Exchange, |store| view! { <ExchangeWindow store=store/> }.into_any()),
    ],
    arrive: stock_shelf::follow,
    ..NOTHING
};

static NUMBERS: Brought = Brought {
    windows: &[
        (Window::Numbers, |store| view! { <NumbersWindow store=store/> }.into_any()),
        (Window::Materials, |store| view! { <MaterialsWindow store=store/> }.into_any()),
        (Window::Details, |store| view! { <DetailsWindow store=store/> }.into_any()),
    ],
    ..NOTHING
};

static WINDOWS: Brought = Brought {
    windows: &[
        (Window::New, |store| view! { <NewWindow store=store/> }.into_any()),
        (Window::Shelf, |store| view! { <ShelfWindow store=store/> }.into_any()),
        (Window::Instrument, |store| view! { <InstrumentWindow store=store/> }.into_any()),
        (Window::MakeUp, |store| view! { <MakeUpWindow store=store/> }.into_any()),
        (Window::Missing, |store| view! { <MissingWindow store=store/> }.into_any()),
        (Window::Curves, |store| view! { <CurvesWindow store=store/> }.into_any()),
    ],
    arrive: |store| {
        offers::stand_by(store);
        sheet::stand_by(store);
        spoken::stand_by(store);
        instrument::show_units(store);
        watch_room(store);
    },
    act: |store, act| {
        if let Act::OpenFile(name, text) = act {
            store.open_text(&name, &text);
        }
    },
    spreads: Some(spreads_of_all),
    ..NOTHING
};

static PAPERS: Brought = Brought {
    windows: &[
        (Window::Card, |store| view! { <CardBar store=store/> }.into_any()),
        (Window::OrderSheet, |store| view! { <OrderBar store=store/> }.into_any()),
        (Window::TuningSheet, |store| view! { <TuningBar store=store/> }.into_any()),
        (Window::Report, |store| view! { <ReportBar store=store/> }.into_any()),
        (Window::Link, |store| view! { <LinkWindow store=store/> }.into_any()),
        (Window::Client, |store| view! { <ClientWindow store=store/> }.into_any()),
        (Window::Stringing, |store| view! { <StringingWindow store=store/> }.into_any()),
    ],
    act: |store, act| match act {
        Act::SaveTemplate(template) => templates::save(store, template),
        Act::SavePicture(picture, format) => pictures::save(store, picture, format),
        Act::LayPaper => papers::lay(store),
        Act::CopyLink => copy_link(store),
        _ => papers::print(store),
    },
    ..NOTHING
};

static WOOD: Brought = Brought {
    views: &[(View::Parts, |store| view! { <Parts store=store/> }.into_any())],
    act: |store, _| lay_parts(store),
    ..NOTHING
};

static HEARING: Brought = Brought {
    windows: &[
        (Window::Sound, |store| view! { <SoundWindow store=store/> }.into_any()),
        (Window::Tuner, |store| view! { <TunerWindow store=store/> }.into_any()),
        (Window::Settling, |store| view! { <SettlingWindow store=store/> }.into_any()),
    ],
    ..NOTHING
};

static HELP: Brought = Brought {
    windows: &[
        (Window::Help, |store| view! { <HelpWindow store=store/> }.into_any()),
        (Window::About, |store| view! { <AboutWindow store=store/> }.into_any()),
    ],
    arrive: asked::stand_by,
    ..NOTHING
};

static FILES: Brought = Brought {
    windows: &[
        (Window::Columns, |store| view! { <ColumnsWindow store=store/> }.into_any()),
        (Window::Keys, |store| view! { <KeysWindow store=store/> }.into_any()),
    ],
    menu: menus::list,
    arrive: |_| menus::hint_at_views(),
    act: |store, act| match act {
        Act::SaveTable => menus::save_table(store),
        Act::Paste(text) => pasting::paste(store, &text),
        Act::Chart(ask) => chart_edits::change(store, &ask),
        Act::Keep(typed) => pasting::keep(store, &typed),
        _ => store.open_link_and_tell(),
    },
    ..NOTHING
};
