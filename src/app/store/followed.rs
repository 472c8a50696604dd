//! What follows from the design, as a view reads it.
//!
//! A memo or an effect that goes leaves its name with every source it read, and a source that stays asks each of these
//! names at every change: a page that is worked in for hours would become slow. So a view reads a memo of its own, which
//! takes its name back when the view goes.

use std::ops::Deref;
use std::sync::Arc;

use leptos::prelude::*;
use leptos::reactive::computed::ArcMemo;
use leptos::reactive::graph::{Subscriber, ToAnySubscriber};
use leptos::reactive::traits::IsDisposed;

/// A memo that stays, read through one that goes with a view.
pub struct Followed<T: Send + Sync + 'static> {
    stays: Memo<Arc<T>>,
    goes: Memo<Arc<T>>,
    /// Goes with it.
    here: StoredValue<bool>,
}

impl<T: Send + Sync> Clone for Followed<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T: Send + Sync> Copy for Followed<T> {}

/// What is worked out, boxed so that all memos of a type are made by one function.
type Worked<T> = Box<dyn Fn() -> Arc<T> + Send + Sync>;
type Differs<T> = fn(Option<&Arc<T>>, Option<&Arc<T>>) -> bool;

fn memo<T: Send + Sync + 'static>(worked: Worked<T>, differs: Differs<T>) -> ArcMemo<Arc<T>> {
    ArcMemo::new_with_compare(move |_| worked(), differs)
}

impl<T: Send + Sync> Followed<T> {
    /// What stays, read directly.
    pub fn new(worked: impl Fn() -> Arc<T> + Send + Sync + 'static) -> Self
    where
        T: PartialEq,
    {
        let stays = memo(Box::new(worked), |one, other| one != other).into();
        Self { stays, goes: stays, here: StoredValue::new(true) }
    }

    /// The same for the view whose owner this is called under, as long as `here` is.
    pub fn here(&mut self, here: StoredValue<bool>) {
        let stays = self.stays;
        let is_other = |one: Option<&Arc<T>>, other: Option<&Arc<T>>| {
            one.map(Arc::as_ptr) != other.map(Arc::as_ptr)
        };
        let goes = memo(Box::new(move || stays.get()), is_other);
        take_back_later(&goes);
        (self.goes, self.here) = (goes.into(), here);
    }
}

/// Takes the name of a memo back from all it read when its owner goes, which is before the memo does.
fn take_back_later(memo: &impl ToAnySubscriber) {
    let name = memo.to_any_subscriber();
    on_cleanup(move || name.clear_sources(&name));
}

#[inline(never)]
fn is_gone(here: StoredValue<bool>) -> bool {
    here.is_disposed()
}

impl<T: Send + Sync> Deref for Followed<T> {
    type Target = Memo<Arc<T>>;

    /// What was begun in a view may end after it. One function for all who ask, as many do.
    #[inline(never)]
    fn deref(&self) -> &Self::Target {
        if is_gone(self.here) { &self.stays } else { &self.goes }
    }
}
