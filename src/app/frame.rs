//! Where the strings and the frame stand, and what the strings do to them. It is worked out only while something
//! shows it: an edit of the chart need not wait for it.

use std::cell::RefCell;
use std::sync::Arc;

use leptos::prelude::*;

use super::store::Store;
use crate::design::bearing_words::verdict;
use crate::design::document::Design;
use crate::design::resolve::{Resolved, resolve};
use crate::design::years::nearer_of;
use crate::engine::analysis::Analysis;
use crate::engine::bearing::{Borne, Kept, Nearer, borne_again};
use crate::engine::geometry::{Band, lay_out};

/// The frame of the design that is open. It is `Copy`, so that every part of a view can have it.
#[derive(Clone, Copy)]
pub struct Frame {
    /// Where its strings and its frame stand.
    pub band: Memo<Arc<Band>>,
    /// What the strings do to it.
    pub borne: Memo<Arc<Borne>>,
}

impl Frame {
    /// The frame, for the view that is being made and all its parts.
    pub fn provide(store: Store) {
        let band = Memo::new(move |_| {
            let resolved = store.resolved.read();
            Arc::new(lay_out(&resolved.harp, &store.analysis.read(), &resolved.geometry))
        });
        let borne = Memo::new(move |_| {
            shared(store.resolved.get(), || {
                borne_by(&band.read(), &store.resolved.read(), &store.analysis.read())
            })
        });
        provide_context(Self { band, borne });
    }

    /// The frame of the view that is being made.
    pub fn here() -> Self {
        expect_context()
    }
}

thread_local! {
    /// What was worked out last, and for what: the drawing, the summary and the card ask for the same.
    static LAST: RefCell<Option<(Arc<Resolved>, Arc<Borne>)>> = const { RefCell::new(None) };
    /// What rests of it for the next one.
    static KEPT: RefCell<Kept> = RefCell::default();
}

/// What the strings do to the frame of the design that is open.
pub fn now(store: Store) -> Arc<Borne> {
    shared(store.resolved.get(), || {
        let (resolved, analysis) = (store.resolved.read(), store.analysis.read());
        borne_by(&lay_out(&resolved.harp, &analysis, &resolved.geometry), &resolved, &analysis)
    })
}

/// What was worked out for the same design, or else is worked out now.
fn shared(resolved: Arc<Resolved>, work_out: impl FnOnce() -> Borne) -> Arc<Borne> {
    let last = LAST.with_borrow(|last| last.clone());
    match last {
        Some((of, borne)) if Arc::ptr_eq(&of, &resolved) => borne,
        _ => {
            let borne = Arc::new(work_out());
            LAST.set(Some((resolved, Arc::clone(&borne))));
            borne
        }
    }
}

/// What the header says of the frame of the open design, and what it would say of another state of it.
pub fn beside(store: Store, preview: &Design, analysis: &Analysis) -> (String, String) {
    let resolved = resolve(preview);
    let band = lay_out(&resolved.harp, analysis, &resolved.geometry);
    let said = |borne: &Borne| verdict(&borne.bearing).lead;
    (untrack(|| said(&now(store))), said(&borne_by(&band, &resolved, analysis)))
}

/// How much nearer the ends of each string come under all of them.
pub fn nearer(
    (band, borne): (&Band, &Borne),
    analysis: &Analysis,
    resolved: &Resolved,
) -> Option<Nearer> {
    KEPT.with_borrow_mut(|kept| nearer_of(kept, (band, &borne.loads), analysis, resolved))
}

fn borne_by(band: &Band, resolved: &Resolved, analysis: &Analysis) -> Borne {
    let (harp, geometry) = (&resolved.harp, &resolved.geometry);
    KEPT.with_borrow_mut(|kept| {
        borne_again(kept, band, harp, analysis, geometry, &resolved.build())
    })
}
