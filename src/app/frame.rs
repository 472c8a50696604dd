//! Where the strings and the frame stand, and what the strings do to them. It is worked out only while something
//! shows it: an edit of the chart need not wait for it.

use std::sync::Arc;

use leptos::prelude::*;

use super::store::Store;
use crate::design::resolve::Resolved;
use crate::engine::analysis::Analysis;
use crate::engine::bearing::{Borne, borne};
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
            Arc::new(borne_by(&band.read(), &store.resolved.read(), &store.analysis.read()))
        });
        provide_context(Self { band, borne });
    }

    /// The frame of the view that is being made.
    pub fn here() -> Self {
        expect_context()
    }
}

/// What the strings do to a frame, once and for all.
pub fn once(resolved: &Resolved, analysis: &Analysis) -> Borne {
    let band = lay_out(&resolved.harp, analysis, &resolved.geometry);
    borne_by(&band, resolved, analysis)
}

fn borne_by(band: &Band, resolved: &Resolved, analysis: &Analysis) -> Borne {
    borne(band, &resolved.harp, analysis, &resolved.geometry, &resolved.build())
}
