//! The files of the drawing: full-size templates and the schedule of pins, made and handed to the browser.

use leptos::prelude::*;

use super::drawing::why;
use super::header::file_name;
use crate::app::store::{Store, Template};
use crate::app::{browser, earlier};
use crate::papers::template::tiling::{TilePaper, Tiling};
use crate::papers::template::{dxf, harp, pdf, schedule, svg};

/// Makes a file and hands it to the browser. The harp is drawn at once, and the file is written when the browser is
/// idle: both together would hold the page up for a tenth of a second.
pub fn save(store: Store, file: Template) {
    let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
    let analysis = store.analysis.get_untracked();
    let template = harp::template(&design, &resolved, &analysis);
    browser::when_idle(move || {
        let text = |text: String| text.into_bytes();
        let tiled = |paper| pdf::tiled(&template, Tiling { paper, ..Tiling::default() });
        let (ending, media_type, made) = match file {
            Template::Dxf => ("dxf", "image/vnd.dxf", dxf::write(&template).map(text)),
            Template::Svg => ("svg", "image/svg+xml", svg::write(&template).map(text)),
            Template::SheetsOfA4 => ("a4.pdf", "application/pdf", tiled(TilePaper::A4)),
            Template::SheetsOfLetter => ("letter.pdf", "application/pdf", tiled(TilePaper::Letter)),
            Template::OneSheet => ("sheet.pdf", "application/pdf", pdf::single(&template)),
            Template::PinSchedule => {
                // An empty table says nothing: the drawing tells why.
                let table = schedule::write(&harp::schedule(&design, &resolved, &analysis));
                ("pins.csv", "text/csv", template.extent().map(|_| text(table)))
            }
        };
        match made {
            Ok(bytes) => {
                earlier::note(store, "template");
                let name = file_name(&design.title, ending);
                store.tell_handed(browser::offer_bytes(&name, media_type, &bytes));
            }
            Err(error) => store.complain(why(&error)),
        }
    });
}
