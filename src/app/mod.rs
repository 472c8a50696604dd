//! The page: the only layer that knows Leptos and the browser.
//!
//! `asked`, `forms`, `grid`, `rows`, `section`, `settled`, `strung` and `tab` are plain and tested natively; the rest needs the feature `web`.

pub mod asked;
pub mod columns;
pub mod forms;
pub mod grid;
pub mod rows;
pub mod section;
pub mod settled;
pub mod strung;
pub mod tab;

#[cfg(feature = "web")]
mod browser;
#[cfg(feature = "web")]
mod canvas;
#[cfg(feature = "web")]
mod clock;
#[cfg(feature = "web")]
mod earlier;
#[cfg(feature = "web")]
mod frame;
#[cfg(feature = "web")]
mod panels;
#[cfg(feature = "web")]
mod parts;
#[cfg(feature = "web")]
mod pixels;
#[cfg(feature = "web")]
mod proposed;
#[cfg(feature = "web")]
mod shelf;
#[cfg(feature = "web")]
mod stock_shelf;
#[cfg(feature = "web")]
mod store;
#[cfg(feature = "web")]
mod widgets;

#[cfg(feature = "web")]
pub use panels::page::start;
