//! The drawing of the harp at full size: a picture, the measures of its shape, the loads, and the files.

mod drills;
mod files;
mod key_table;
mod loads;
mod picture;
mod shape;
mod stringing;
mod woods;

use leptos::prelude::*;

use self::drills::Drills;
use self::files::Files;
use self::key_table::Keys;
use self::loads::LoadsTable;
use self::picture::Picture;
use self::shape::Shape;
use self::stringing::Stringing;
use self::woods::Woods;
use crate::app::store::Store;
use crate::app::widgets::list::words;
use crate::app::widgets::window::Window;
use crate::papers::template::model::TemplateError;

/// The panel of the drawing.
#[component]
pub fn DrawingWindow(store: Store) -> impl IntoView {
    let close = move || {
        store.close_step();
        store.window.set(None);
    };
    let told = move || store.notice.with(|told| told.as_ref().map(|told| told.text.clone()));
    view! {
        <Window title="Drawing" wide=true on_close=close>
            <div class="drawing">
                <div class="form-stack">
                    <Picture store=store/>
                    <Files store=store/>
                    <p role="status">{words(move || told().unwrap_or_default())}</p>
                    <LoadsTable store=store/>
                    <Stringing store=store/>
                </div>
                <div class="form-stack">
                    <Shape store=store/>
                    <Woods store=store/>
                    <Drills store=store/>
                    <Keys store=store/>
                </div>
            </div>
        </Window>
    }
}

/// Why there is no drawing, for a maker.
fn why(error: &TemplateError) -> String {
    match error {
        TemplateError::Empty => {
            "There is nothing to draw yet. Give the strings their lengths first.".to_owned()
        }
        error => format!("This cannot be drawn: {error}."),
    }
}
