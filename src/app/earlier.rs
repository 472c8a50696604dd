//! Earlier states of a design, which the browser notes by itself: at the end of each session, each quarter of an hour of
//! work, and whenever the design is given away. They are looked at, and opened beside what is there.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::store::{Origin, Store};
use super::{browser, clock, rows};
use crate::design::backup;
use crate::engine::order::sort;

/// Under which the states stand in a backup: the design, the milliseconds since 1970, and why it was noted.
pub const EARLIER: &str = "stringloft/earlier/";

/// An earlier state.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Earlier {
    /// When the design was so, in milliseconds since the year 1970.
    pub ms: u64,
    /// The day, as `27 November 2026`.
    pub day: String,
    /// The time of that day, as the browser writes it.
    pub time: String,
    /// Why it was noted, in words.
    pub why: &'static str,
    /// The design.
    pub text: String,
}

/// Notes the open design as it is now, where this browser keeps it.
pub fn note(store: Store, why: &'static str) {
    if let Origin::Kept(id) = store.origin.get_untracked() {
        store.keep_and_tell();
        spawn_local(async move { browser::note_state(&id, why).await });
    }
}

/// The earlier states of a design, the last one first.
pub async fn of(id: &str) -> Vec<Earlier> {
    let found = browser::states(id).await.unwrap_or_default();
    let pairs = backup::read(&found).unwrap_or_default();
    let mut states: Vec<Earlier> = pairs.into_iter().filter_map(state).collect();
    sort(&mut states, |one, other| one.ms < other.ms);
    states
}

fn state((key, text): (String, String)) -> Option<Earlier> {
    let mut parts = key.strip_prefix(EARLIER)?.split('/').skip(1);
    let ms = parts.next()?.parse().ok()?;
    let why = rows::noted_words(parts.next()?);
    Some(Earlier { ms, day: clock::day_at(ms), time: clock::time_at(ms), why, text })
}
