//! Parts of the page that come and go. Each is one type for the whole page: a type of its own for each list
//! made the page some 40 KB larger.

use std::hash::{Hash, Hasher};

use leptos::prelude::*;

/// A part of a list: what it is known by, and how it is made.
pub struct Part {
    key: u64,
    make: Box<dyn FnOnce() -> AnyView + Send>,
}

/// A part that stays as it is for as long as the list has one with the same key.
pub fn part(key: &impl Hash, make: impl FnOnce() -> AnyView + Send + 'static) -> Part {
    let mut sum = Sum(0xcbf2_9ce4_8422_2325);
    key.hash(&mut sum);
    Part { key: sum.0, make: Box::new(make) }
}

/// A list whose parts come, go and move without being made again.
pub fn list(parts: impl Fn() -> Vec<Part> + Send + Sync + 'static) -> AnyView {
    let parts: Box<dyn Fn() -> Vec<Part> + Send + Sync> = Box::new(parts);
    view! { <For each=parts key=|part: &Part| part.key children=|part: Part| (part.make)()/> }
        .into_any()
}

/// A list of so many parts, of which each follows by itself what it shows: none is made again for a figure that changes.
pub fn counted(
    count: impl Fn() -> usize + Send + Sync + 'static,
    make: impl Fn(usize) -> AnyView + Copy + Send + Sync + 'static,
) -> AnyView {
    list(move || (0..count()).map(|place| part(&place, move || make(place))).collect())
}

/// What stands there while a condition holds.
pub fn while_so(
    holds: impl Fn() -> bool + Send + Sync + 'static,
    make: impl Fn() -> AnyView + Send + Sync + 'static,
) -> AnyView {
    either(holds, make, || ().into_any())
}

/// What stands there while a condition holds, and what while it does not. Made again only when that changes.
pub fn either(
    holds: impl Fn() -> bool + Send + Sync + 'static,
    make: impl Fn() -> AnyView + Send + Sync + 'static,
    make_other: impl Fn() -> AnyView + Send + Sync + 'static,
) -> AnyView {
    type Make = Box<dyn Fn() -> AnyView + Send + Sync>;
    fn erased(holds: Box<dyn Fn() -> bool + Send + Sync>, make: Make, make_other: Make) -> AnyView {
        let holds = Memo::new(move |_| holds());
        (move || if holds.get() { make() } else { make_other() }).into_any()
    }
    erased(Box::new(holds), Box::new(make), Box::new(make_other))
}

/// A text that changes.
pub fn words(text: impl Fn() -> String + Send + Sync + 'static) -> AnyView {
    fn erased(text: Box<dyn Fn() -> String + Send + Sync>) -> AnyView {
        (move || text()).into_any()
    }
    erased(Box::new(text))
}

/// The hash FNV-1a with 64 bits: two keys of a page do not meet in it.
struct Sum(u64);

impl Hasher for Sum {
    fn write(&mut self, bytes: &[u8]) {
        for byte in bytes {
            self.0 = (self.0 ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3);
        }
    }

    fn finish(&self) -> u64 {
        self.0
    }
}
