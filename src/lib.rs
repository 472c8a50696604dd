//! Stringloft designs the strings of a harp: it reads a string chart as its maker typed it, computes
//! what follows, and shows it on a page and on paper.
//!
//! Five layers, each using only those before it, upon what is said:
//!
//! - [`words`]: every sentence, in the languages of page and paper.
//! - [`engine`]: the physics. Pure; knows nobody.
//! - [`design`]: the document as typed, its edits, its versions, and the words for numbers.
//! - [`charts`]: curves and strings to scale, on any drawing backend.
//! - [`papers`]: what is printed.
//! - [`app`]: the page. The only one that knows the browser.
//!
//! # Example
//!
//! ```
//! use stringloft::design::{persist, resolve::resolve};
//! use stringloft::engine::analysis::analyse;
//!
//! let text = r#"{ "stringloft": 1, "strings": [
//!     { "note": "A4", "length": "45 cm", "material": "nylon", "diameter": "0.70" } ] }"#;
//! let design = persist::read(text)?;
//! let analysis = analyse(&resolve(&design).harp);
//! let pull = analysis.strings[0].tension.expect("note, length and make-up are given");
//! assert_eq!(format!("{:.0} N", pull.to_n()), "69 N");
//! # Ok::<(), stringloft::design::persist::ReadError>(())
//! ```

pub mod app;
pub mod charts;
pub mod design;
pub mod engine;
pub mod papers;
pub mod words;

#[cfg(test)]
mod testing;
