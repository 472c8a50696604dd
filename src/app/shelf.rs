//! The designs that this browser keeps: each under its own name, none ever written over by another.

use std::fmt::Write as _;

use thiserror::Error;

use super::browser::{self, StorageError, Worked};
use super::{clock, rows};
use crate::design::document::Design;
use crate::design::persist;
use crate::design::resolve::resolve;
use crate::engine::order::sort;
use crate::engine::units::Length;

const DESIGNS: &str = "stringloft/design/";
const OPEN: &str = "stringloft/open";
/// Under which it is kept when a design was changed last.
const CHANGED: &str = "stringloft/changed/";
/// Hexadecimal digits of the part of a name that is left to chance; those before are the time it was made at.
const CHANCE_DIGITS: usize = 5;
/// Height of the picture of a design.
const PICTURE: f64 = 40.0;

/// A design on the shelf.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shelved {
    /// The name under which it is kept.
    pub id: String,
    /// What the instrument is called, and its client.
    pub title: String,
    /// Its strings, in words.
    pub strings: String,
    /// The day on which it was changed last; empty where that is not known.
    pub changed: String,
    /// Its strings side by side, as SVG; empty for one that cannot be opened.
    pub picture: String,
}

/// Where a design is kept.
pub fn key(id: &str) -> String {
    format!("{DESIGNS}{id}")
}

/// Why a design of the shelf cannot be opened. It stays there as it is.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum Unread {
    /// It is not there.
    #[error("it is no longer kept in this browser")]
    Gone,
    /// It is there, and is no design that can be used.
    #[error("{name} cannot be read, as {why}; it stays as it is under Designs")]
    Spoilt { name: String, why: String },
}

/// Keeps a design, and remembers it as the one that is open.
///
/// # Errors
///
/// When the browser does not take it.
pub fn keep(id: &str, design: &Design) -> Result<Worked, StorageError> {
    let kept = put(id, design)?;
    browser::note_kept();
    set_open(id);
    Ok(kept)
}

/// Keeps a design without opening it.
///
/// # Errors
///
/// When the browser does not take it.
pub fn put(id: &str, design: &Design) -> Result<Worked, StorageError> {
    let kept = browser::keep(&key(id), &persist::write(design))?;
    // Where the browser does not take the date, the list goes by the day on which the design was begun.
    let _ = browser::keep(&format!("{CHANGED}{id}"), &clock::now());
    Ok(kept)
}

/// When a design was changed last, or else begun.
fn changed_ms(id: &str) -> Option<u64> {
    let noted = browser::kept(&format!("{CHANGED}{id}")).and_then(|ms| ms.parse().ok());
    let begun = || u64::from_str_radix(id.get(..id.len().checked_sub(CHANCE_DIGITS)?)?, 16).ok();
    noted.or_else(begun)
}

/// Remembers which design is open: in this tab, and for the next one that is opened.
pub fn set_open(id: &str) {
    // Where the browser does not take it, the page opens with another design; this one is on the shelf.
    let _ = browser::keep_in_tab(OPEN, id);
    let _ = browser::keep(OPEN, id);
}

/// A design of the shelf.
///
/// # Errors
///
/// When it is gone or cannot be read.
pub fn take(id: &str) -> Result<Design, Unread> {
    let text = browser::kept(&key(id)).ok_or(Unread::Gone)?;
    persist::read(&text).map_err(|error| Unread::Spoilt {
        name: persist::title_of(&text).map_or_else(
            || "a design whose name is lost".to_owned(),
            |title| format!("\"{title}\""),
        ),
        why: error.in_short(),
    })
}

/// Whether a design is kept just as it is here, and no other tab went on with it.
pub fn is_kept_as(id: &str, design: &Design) -> bool {
    browser::kept(&key(id)).is_some_and(|text| text == persist::write(design))
}

/// The design that was open last, with its name; `None` on a first visit.
///
/// # Errors
///
/// When it is gone or cannot be read.
pub fn last_open() -> Result<Option<(String, Design)>, Unread> {
    match browser::kept_in_tab(OPEN).or_else(|| browser::kept(OPEN)) {
        Some(id) => take(&id).map(|design| Some((id, design))),
        None => Ok(None),
    }
}

/// Everything on the shelf, the one that was changed last first.
pub fn all() -> Vec<Shelved> {
    let keys = browser::kept_keys(DESIGNS);
    let ids = keys.iter().filter_map(|key| key.strip_prefix(DESIGNS));
    let mut ids: Vec<(Option<u64>, &str)> = ids.map(|id| (changed_ms(id), id)).collect();
    sort(&mut ids, |one, other| one < other);
    ids.into_iter().map(|(ms, id)| shelved(id, ms)).collect()
}

fn shelved(id: &str, ms: Option<u64>) -> Shelved {
    let (title, strings, picture) = match take(id) {
        Ok(design) => (titled(&design), strings(&design), picture(&design)),
        Err(Unread::Spoilt { name, why }) => {
            (name, format!("cannot be opened: {why}"), String::new())
        }
        Err(gone) => (gone.to_string(), String::new(), String::new()),
    };
    let changed = ms.map(|ms| {
        let (day, month, year) = clock::day_at(ms);
        rows::day_words(day, month, year)
    });
    Shelved { id: id.to_owned(), title, strings, changed: changed.unwrap_or_default(), picture }
}

/// The lengths of the strings as bars, the lowest at the left: some ten bytes for each.
fn picture(design: &Design) -> String {
    let harp = resolve(design).harp;
    let lengths: Vec<f64> =
        harp.strings.iter().rev().map(|string| string.length.map_or(0.0, Length::to_mm)).collect();
    let most = lengths.iter().copied().fold(0.0, f64::max);
    if most <= 0.0 {
        return String::new();
    }
    let count = lengths.len();
    let mut text = format!(
        "<svg viewBox=\"0 0 {} {PICTURE}\" preserveAspectRatio=\"none\" aria-hidden=\"true\" focusable=\"false\"><path d=\"",
        3 * count
    );
    for (place, mm) in lengths.iter().enumerate() {
        let _ = write!(text, "M{} {PICTURE}v-{:.0}", 3 * place + 1, PICTURE * mm / most);
    }
    text.push_str("\"/></svg>");
    text
}

/// Takes a design off the shelf for good.
///
/// # Errors
///
/// When the browser does not.
pub fn remove(id: &str) -> Result<Worked, StorageError> {
    let gone = browser::forget(&key(id))?;
    // A date without its design is never read.
    let _ = browser::forget(&format!("{CHANGED}{id}"));
    Ok(gone)
}

/// What a design is called in a list.
pub fn titled(design: &Design) -> String {
    match (design.title.trim(), design.client.trim()) {
        ("", _) => untitled(design),
        (title, "") => title.to_owned(),
        (title, client) => format!("{title}, for {client}"),
    }
}

/// A design without a name goes by its strings.
fn untitled(design: &Design) -> String {
    match design.strings.len() {
        0 => "Empty chart".to_owned(),
        _ => format!("Harp of {}", strings(design)),
    }
}

/// How many strings, and from where to where.
fn strings(design: &Design) -> String {
    let count = match design.strings.len() {
        1 => "1 string".to_owned(),
        count => format!("{count} strings"),
    };
    match (design.strings.last(), design.strings.first()) {
        (Some(low), Some(high)) if !low.note.is_empty() && !high.note.is_empty() => {
            format!("{count}, {} to {}", low.note, high.note)
        }
        _ => count,
    }
}
