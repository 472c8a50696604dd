//! What is proposed for the design that is open, for parts of the page that show it beside the design.

use std::cell::RefCell;

use leptos::prelude::*;

use super::store::Store;
use crate::design::document::Design;

thread_local! {
    static PROPOSED: RefCell<Option<Design>> = const { RefCell::new(None) };
}

/// Keeps what would become of the design, or that nothing is proposed any more.
pub fn keep(design: Option<Design>) {
    PROPOSED.set(design);
}

/// What would become of the design that is open, while that is shown over its curves.
pub fn now(store: Store) -> Option<Design> {
    let is_shown = store.ghost.with_untracked(Option::is_some);
    PROPOSED.with_borrow(Clone::clone).filter(|_| is_shown)
}
