//! The stock lists that this browser keeps, and which of them is in use for choosing and ordering.
//!
//! Until a list is kept there is the one to start from, under the name [`USUAL`].

use std::sync::Arc;

use super::browser::{self, StorageError, Worked};
use super::store::Store;
use super::tab::Heard;
use crate::design::stock::{self, StockList, starting_list};
use crate::engine::order::sort;
use crate::words::stock_page as say;
use leptos::prelude::*;

const LISTS: &str = "stringloft/stock/";
const IN_USE: &str = "stringloft/stock-in-use";
/// The name of the list to start from.
const USUAL: &str = "usual";

/// A list on the shelf.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shelved {
    /// The name under which it is kept.
    pub id: String,
    /// What its maker calls it.
    pub title: String,
}

/// Where a list is kept.
fn key(id: &str) -> String {
    format!("{LISTS}{id}")
}

/// Keeps a list.
///
/// # Errors
///
/// When the browser does not take it.
pub fn keep(id: &str, list: &StockList) -> Result<Worked, StorageError> {
    browser::keep(&key(id), &stock::write(list))
}

/// Whether a list was changed and is not on the disk yet.
pub fn waits(id: &str) -> bool {
    browser::waits(&key(id))
}

/// A list of the shelf.
///
/// # Errors
///
/// A sentence, when it is gone or cannot be read.
pub fn take(id: &str) -> Result<StockList, String> {
    match browser::kept(&key(id)) {
        Some(text) => stock::read(&text).map_err(|error| error.to_string()),
        None if id == USUAL => Ok(starting_list()),
        None => Err(say::LIST_GONE.into()),
    }
}

/// Everything on the shelf, the oldest first; the list to start from when nothing is kept.
pub fn all() -> Vec<Shelved> {
    let mut ids: Vec<String> = browser::kept_keys(LISTS);
    sort(&mut ids, |one, other| one > other);
    if ids.is_empty() {
        ids.push(key(USUAL));
    }
    let ids = ids.iter().filter_map(|key| key.strip_prefix(LISTS));
    let shelved = |id: &str| {
        let title = match take(id) {
            Ok(list) if list.name.trim().is_empty() => say::UNNAMED.into(),
            Ok(list) => list.name,
            Err(why) => say::unreadable(&why),
        };
        Shelved { id: id.to_owned(), title }
    };
    ids.map(shelved).collect()
}

/// Takes a list off the shelf for good.
///
/// # Errors
///
/// When the browser does not.
pub fn remove(id: &str) -> Result<Worked, StorageError> {
    browser::forget(&key(id))
}

/// Remembers which list is in use.
pub fn set_in_use(id: &str) {
    // Where the browser does not take it, the next start uses another list; this one is on the shelf.
    let _ = browser::keep(IN_USE, id);
}

/// The name of the list in use: the one chosen last, or the first one that there is.
pub fn in_use() -> String {
    let lists = all();
    let chosen = browser::kept(IN_USE).filter(|id| lists.iter().any(|list| list.id == *id));
    let first = || lists.into_iter().next().map(|list| list.id);
    chosen.or_else(first).unwrap_or_else(|| USUAL.to_owned())
}

/// Puts the list in use into the store, and keeps it up with other tabs from then on. Asked again, it does nothing.
pub fn follow(store: Store) {
    if store.follows_stock.get_value() {
        return;
    }
    store.follows_stock.set_value(true);
    take_in_use(store);
    browser::on_keeping(move |heard| {
        if let Heard::Elsewhere(key) = heard
            && is_ours(&key)
        {
            take_in_use(store);
        }
    });
}

fn take_in_use(store: Store) {
    match shop() {
        Ok(shop) => store.shop.set(shop),
        Err(why) => store.complain(say::in_use_not_opened(&why)),
    }
}

/// The list in use as one chooses and orders from it: every price with its currency.
///
/// # Errors
///
/// A sentence, when it cannot be read.
pub fn shop() -> Result<Arc<StockList>, String> {
    take(&in_use()).map(|list| filled(&list))
}

/// A list with the currency in every item that has a price.
pub fn filled(list: &StockList) -> Arc<StockList> {
    Arc::new(StockList { items: list.with_currency().collect(), ..list.clone() })
}

/// Whether a key of the browser's storage has to do with the stock.
fn is_ours(key: &str) -> bool {
    key.starts_with(LISTS) || key == IN_USE
}

/// Keeps a new list and gives its name. The list to start from stays beside it, if that was all there is.
pub fn begin(list: &StockList) -> (String, Result<Worked, StorageError>) {
    let id = browser::fresh_name();
    let is_first = browser::kept_keys(LISTS).is_empty();
    let kept = if is_first {
        keep(USUAL, &starting_list()).and_then(|_| keep(&id, list))
    } else {
        keep(&id, list)
    };
    (id, kept)
}
