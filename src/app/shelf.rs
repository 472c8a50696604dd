//! The designs that this browser keeps: each under its own name, none ever written over by another.

use std::fmt::Write as _;

use leptos::task::spawn_local;
use thiserror::Error;

use super::browser::{self, StorageError, Worked};
use super::earlier::EARLIER;
use super::{clock, tab};
use crate::design::backup;
use crate::design::document::Design;
use crate::design::history::History;
use crate::design::persist;
use crate::design::resolve::resolve;
use crate::engine::order::sort;
use crate::engine::pitch::naming::shown;
use crate::engine::units::Length;
use crate::words::designs as say;

const DESIGNS: &str = "stringloft/design/";
/// Under which it is kept when a design was changed last.
const CHANGED: &str = "stringloft/changed/";
/// Under which its undo steps are kept, by `keep.js`.
const STEPS: &str = "stringloft/steps/";
/// Which of its strings are on, as it is ticked while it is strung.
const STRUNG: &str = "stringloft/strung/";
/// Where a design stands that was taken off the shelf, and when that was.
const BIN: &str = "stringloft/bin/";
const BINNED: &str = "stringloft/binned/";
/// How long a design stays in the bin.
pub const BIN_DAYS: u64 = 30;
/// The stock lists, for a backup.
const STOCK: &str = "stringloft/stock/";
/// What a backup holds: the keys that begin so.
const BACKED_UP: [&str; 6] = [DESIGNS, CHANGED, STRUNG, BIN, BINNED, STOCK];
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
    /// The day and the time at which it was changed last; empty where that is not known.
    pub changed: String,
    /// Its strings side by side, as SVG; empty for one that cannot be opened.
    pub picture: String,
    /// It is there, but cannot be opened.
    pub is_spoilt: bool,
}

/// Where a design is kept.
pub fn key(id: &str) -> String {
    format!("{DESIGNS}{id}")
}

/// Where its ticks are kept.
pub fn strung_key(id: &str) -> String {
    format!("{STRUNG}{id}")
}

/// Where the log of its settling is kept: with the ticks in a backup.
pub fn settled_key(id: &str) -> String {
    format!("{STRUNG}{id}/log")
}

/// Whether a key is that of a design.
pub fn is_key(key: &str) -> bool {
    key.starts_with(DESIGNS)
}

/// Why a design of the shelf cannot be opened. It stays there as it is.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum Unread {
    /// It is not there.
    #[error("{}", say::GONE)]
    Gone,
    /// It is there, and is no design that can be used.
    #[error("{}", say::spoilt(.name, .why))]
    Spoilt { name: String, why: String },
}

/// Keeps the open design with its undo steps, and remembers it as the one that is open.
///
/// # Errors
///
/// When the browser is known to take nothing.
pub fn keep<K: PartialEq>(
    id: &str,
    history: &mut History<Design, K>,
) -> Result<Worked, StorageError> {
    let (steps, before) = tab::steps(history);
    let kept = browser::keep_design(id, &persist::write(history.present()), steps, before);
    browser::note_open(id);
    kept
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

/// A design of the shelf.
///
/// # Errors
///
/// When it is gone or cannot be read.
pub fn take(id: &str) -> Result<Design, Unread> {
    taken(&key(id))
}

/// The text of a design of the shelf, whether it can be read or not.
pub fn text(id: &str) -> Option<String> {
    browser::kept(&key(id))
}

fn taken(key: &str) -> Result<Design, Unread> {
    let text = browser::kept(key).ok_or(Unread::Gone)?;
    persist::read(&text).map_err(|error| Unread::Spoilt {
        name: persist::title_of(&text)
            .map_or_else(|| say::NAME_LOST.into(), |title| say::quoted(&title)),
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
    match browser::last_open() {
        Some(id) => take(&id).map(|design| Some((id, design))),
        None => Ok(None),
    }
}

/// Whether no design was ever kept here.
pub fn is_empty() -> bool {
    browser::kept_keys(DESIGNS).is_empty() && browser::kept_keys(BIN).is_empty()
}

/// Everything on the shelf, the one that was changed last first.
pub fn all() -> Vec<Shelved> {
    listed(DESIGNS, changed_ms)
}

/// Everything in the bin, the one that was put there last first.
pub fn binned() -> Vec<Shelved> {
    listed(BIN, binned_ms)
}

/// What stands under keys that begin so, the one with the latest date first.
fn listed(prefix: &str, dated: fn(&str) -> Option<u64>) -> Vec<Shelved> {
    let keys = browser::kept_keys(prefix);
    let ids = keys.iter().filter_map(|key| key.strip_prefix(prefix));
    let mut ids: Vec<(Option<u64>, &str)> = ids.map(|id| (dated(id), id)).collect();
    sort(&mut ids, |one, other| one < other);
    ids.into_iter().map(|(ms, id)| shelved(prefix, id, ms)).collect()
}

fn shelved(prefix: &str, id: &str, ms: Option<u64>) -> Shelved {
    let mut is_spoilt = false;
    let (title, strings, picture) = match taken(&format!("{prefix}{id}")) {
        Ok(design) => (titled(&design), strings(&design), picture(&design)),
        Err(Unread::Spoilt { name, why }) => {
            is_spoilt = true;
            (name, say::unopened(&why), String::new())
        }
        Err(gone) => (gone.to_string(), String::new(), String::new()),
    };
    let day = ms.map(|ms| say::day_and_time(&clock::day_at(ms), &clock::time_at(ms)));
    let (id, changed) = (id.to_owned(), day.unwrap_or_default());
    Shelved { id, title, strings, changed, picture, is_spoilt }
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

/// Takes a design off the shelf and puts it into the bin.
///
/// # Errors
///
/// When the browser does not.
pub fn bin(id: &str) -> Result<Worked, StorageError> {
    let text = text(id).unwrap_or_default();
    browser::keep(&format!("{BIN}{id}"), &text)?;
    browser::keep(&format!("{BINNED}{id}"), &clock::now())?;
    // Its steps and its date wait with it.
    browser::forget(&key(id))
}

/// Puts a design of the bin back on the shelf; beside one of the same name that came there meanwhile.
///
/// # Errors
///
/// When the browser does not.
pub fn put_back(id: &str) -> Result<Worked, StorageError> {
    let text = browser::kept(&format!("{BIN}{id}")).unwrap_or_default();
    let is_free = self::text(id).is_none_or(|there| there == text);
    let to = if is_free { id.to_owned() } else { browser::fresh_name() };
    browser::keep(&key(&to), &text)?;
    take_out(id)
}

/// Takes a design out of the bin for good.
///
/// # Errors
///
/// When the browser does not.
pub fn throw_away(id: &str) -> Result<Worked, StorageError> {
    let _ = browser::forget(&format!("{CHANGED}{id}"));
    let _ = browser::forget(&format!("{STEPS}{id}"));
    let _ = browser::forget(&strung_key(id));
    let _ = browser::forget(&settled_key(id));
    let gone = id.to_owned();
    spawn_local(async move { browser::forget_states(&gone).await });
    take_out(id)
}

fn take_out(id: &str) -> Result<Worked, StorageError> {
    // A date without its design is never read.
    let _ = browser::forget(&format!("{BINNED}{id}"));
    browser::forget(&format!("{BIN}{id}"))
}

fn binned_ms(id: &str) -> Option<u64> {
    browser::kept(&format!("{BINNED}{id}"))?.parse().ok()
}

/// Throws away what has been in the bin for [`BIN_DAYS`].
pub fn empty_bin() {
    let now: u64 = clock::now().parse().unwrap_or(0);
    for key in browser::kept_keys(BIN) {
        let Some(id) = key.strip_prefix(BIN) else { continue };
        if binned_ms(id).is_some_and(|ms| ms + BIN_DAYS * 86_400_000 < now) {
            // What the browser does not take is tried again next time.
            let _ = throw_away(id);
        }
    }
}

/// A backup of all designs with their earlier states, the bin and the stock lists.
pub async fn backup() -> String {
    // Where the browser keeps no states there are none to lose.
    let states = browser::states("").await.unwrap_or_default();
    let mut texts = backup::read(&states).unwrap_or_default();
    for prefix in BACKED_UP {
        for key in browser::kept_keys(prefix) {
            texts.extend(browser::kept(&key).map(|text| (key, text)));
        }
    }
    backup::write(&texts)
}

/// Takes in a backup. What is here is never written over: another design or list under the same name is put beside it.
/// How many designs came in, and how many were here already.
///
/// # Errors
///
/// Why not, as the end of a sentence.
pub async fn merge(backup: &str) -> Result<(usize, usize), String> {
    let (states, texts): (Vec<_>, Vec<_>) =
        backup::read(backup)?.into_iter().partition(|(key, _)| key.starts_with(EARLIER));
    if !states.is_empty() && browser::take_states(&backup::write(&states)).await.is_none() {
        return Err(say::STATES_REFUSED.into());
    }
    let (mut new, mut known) = (0, 0);
    for (key, content) in &texts {
        let binned = key.strip_prefix(BIN).or_else(|| key.strip_prefix(BINNED));
        if binned.is_some_and(|id| text(id).is_some()) {
            // It was put back here, or never thrown away.
            continue;
        }
        let Some(prefix) = BACKED_UP.iter().find(|prefix| key.starts_with(*prefix)) else {
            continue;
        };
        let here = browser::kept(key);
        let is_design = *prefix == DESIGNS;
        // It may be here under a name of its own, from an earlier time.
        let same = |other: &String| browser::kept(other).as_ref() == Some(content);
        if is_design && browser::kept_keys(prefix).iter().any(same)
            || here.as_ref() == Some(content)
        {
            known += usize::from(is_design);
            continue;
        }
        new += usize::from(is_design);
        match here {
            None => {
                browser::keep(key, content).map_err(|why| why.to_string())?;
            }
            Some(_) if is_design || *prefix == STOCK => {
                let beside = format!("{prefix}{}", browser::fresh_name());
                browser::keep(&beside, content).map_err(|why| why.to_string())?;
            }
            // A date stays as it is.
            Some(_) => {}
        }
    }
    Ok((new, known))
}

/// What a design is called in a list.
pub fn titled(design: &Design) -> String {
    match (design.title.trim(), design.client.trim()) {
        ("", _) => untitled(design),
        (title, "") => title.to_owned(),
        (title, client) => say::for_client(&client, &title),
    }
}

/// A design without a name goes by its strings.
fn untitled(design: &Design) -> String {
    match design.strings.len() {
        0 => say::EMPTY_CHART.into(),
        _ => say::harp_of(&strings(design)),
    }
}

/// How many strings, and from where to where.
fn strings(design: &Design) -> String {
    let count = say::strings(&design.strings.len());
    match (design.strings.last(), design.strings.first()) {
        (Some(low), Some(high)) if !low.note.is_empty() && !high.note.is_empty() => {
            say::strings_between(&shown(&high.note), &shown(&low.note), &count)
        }
        _ => count,
    }
}
