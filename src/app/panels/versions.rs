//! Versions: the design kept under a name, brought back, and any two compared, in a table and as curves.

mod compared;
mod earlier;
mod kept;

use std::sync::Arc;

use leptos::prelude::*;

use self::compared::Compared;
use self::earlier::EarlierStates;
use self::kept::Kept;
use crate::app::store::Store;
use crate::design::document::Design;
use crate::design::resolve::resolve;
use crate::engine::analysis::{Analysis, analyse};
use crate::words::versions as say;

/// The figures of each version.
type Analyses = Memo<Vec<Arc<Analysis>>>;

/// Versions.
#[component]
pub fn Versions(store: Store) -> impl IntoView {
    let versions = Memo::new(move |_| store.design.with(|design| design.versions.clone()));
    let analyses: Analyses = Memo::new(move |_| {
        let of = |design: &Design| Arc::new(analyse(&resolve(design).harp));
        versions.with(|all| all.iter().map(|version| of(&version.design)).collect())
    });
    view! {
        <section class="view-panel versions" aria-label=say::VERSIONS.said() id="versions" tabindex="-1">
            <Kept store=store versions=versions analyses=analyses/>
            <Compared store=store versions=versions analyses=analyses/>
            <EarlierStates store=store/>
        </section>
    }
}
