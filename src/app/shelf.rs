//! The designs that this browser keeps: each under its own name, none ever written over by another.

use super::browser;
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

/// Keeps a design, and remembers it as the one that is open; whether the browser took it.
pub fn keep(id: &str, design: &Design) -> bool {
    set_open(id);
    browser::keep(&key(id), &persist::write(design))
}

/// Remembers which design is open: in this tab, and for the next one that is opened.
pub fn set_open(id: &str) {
    browser::keep_in_tab(OPEN, id);
    browser::keep(OPEN, id);
}

/// A design of the shelf.
///
/// # Errors
///
/// A sentence, when it is gone or cannot be read.
pub fn take(id: &str) -> Result<Design, String> {
    let text = browser::kept(&key(id)).ok_or("that design is no longer kept in this browser")?;
    persist::read(&text).map_err(|error| error.to_string())
}

/// The design that was open last, with its name.
pub fn last_open() -> Option<(String, Design)> {
    let id = browser::kept_in_tab(OPEN).or_else(|| browser::kept(OPEN))?;
    Some((id.clone(), take(&id).ok()?))
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
        Err(why) => Shelved {
            id: id.to_owned(),
            strings: String::new(),
            title: format!("Unreadable: {why}"),
        },
    })
    .collect()
}

/// Takes a design off the shelf for good.
pub fn remove(id: &str) {
    browser::forget(&key(id));
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
