//! The designs that this browser keeps: each under its own name, none ever written over by another.

use thiserror::Error;

use super::browser::{self, StorageError, Worked};
use crate::design::document::Design;
use crate::design::persist;
use crate::engine::order::sort;

const DESIGNS: &str = "stringloft/design/";
const OPEN: &str = "stringloft/open";

/// A design on the shelf.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shelved {
    /// The name under which it is kept.
    pub id: String,
    /// What the instrument is called, and its client.
    pub title: String,
    /// Its strings, in words.
    pub strings: String,
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
    let kept = browser::keep(&key(id), &persist::write(design))?;
    browser::note_kept();
    set_open(id);
    Ok(kept)
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

/// Everything on the shelf, the newest first.
pub fn all() -> Vec<Shelved> {
    let mut ids: Vec<String> = browser::kept_keys(DESIGNS);
    sort(&mut ids, |one, other| one < other);
    let ids = ids.iter().filter_map(|key| key.strip_prefix(DESIGNS));
    ids.map(|id| match take(id) {
        Ok(design) => {
            Shelved { id: id.to_owned(), strings: strings(&design), title: titled(&design) }
        }
        Err(Unread::Spoilt { name, why }) => {
            Shelved { id: id.to_owned(), strings: format!("cannot be opened: {why}"), title: name }
        }
        Err(gone) => Shelved { id: id.to_owned(), strings: String::new(), title: gone.to_string() },
    })
    .collect()
}

/// Takes a design off the shelf for good.
///
/// # Errors
///
/// When the browser does not.
pub fn remove(id: &str) -> Result<Worked, StorageError> {
    browser::forget(&key(id))
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
