//! The files of the drawing: full-size templates and the schedule of pins, made and handed to the browser.

use leptos::prelude::*;

use super::drawing::why;
use super::header::file_name;
use crate::app::store::{Store, Template};
use crate::app::{browser, earlier};
use crate::papers::template::tiling::{TilePaper, Tiling};
use crate::papers::template::{dxf, harp, pdf, schedule, svg};

const PDF: &str = "application/pdf";
/// How long a slice of the work takes, in milliseconds.
const SLICE_MS: f64 = 12.0;

/// Makes a file and hands it to the browser. The harp is drawn at once, and the file is written when the browser is
/// idle, sheet by sheet: all together would hold the page up for a tenth of a second.
pub fn save(store: Store, file: Template) {
    let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
    let analysis = store.analysis.get_untracked();
    let template = harp::template(&design, &resolved, &analysis);
    browser::when_idle(move || {
        let hand = {
            let title = design.title.clone();
            move |ending: &str, media_type: &str, bytes: &[u8]| {
                earlier::note(store, "template");
                store.tell_handed(browser::offer_bytes(
                    &file_name(&title, ending),
                    media_type,
                    bytes,
                ));
            }
        };
        let text = |text: String| text.into_bytes();
        let (ending, media_type, made) = match file {
            Template::Dxf => ("dxf", "image/vnd.dxf", dxf::write(&template).map(text)),
            Template::Svg => ("svg", "image/svg+xml", svg::write(&template).map(text)),
            Template::SheetsOfA4 | Template::SheetsOfLetter => {
                let (paper, ending) = match file {
                    Template::SheetsOfA4 => (TilePaper::A4, "a4.pdf"),
                    _ => (TilePaper::Letter, "letter.pdf"),
                };
                match pdf::Sheets::of(template, Tiling { paper, ..Tiling::default() }) {
                    Ok(sheets) => draw(sheets, move |bytes| hand(ending, PDF, bytes)),
                    Err(error) => store.complain(why(&error)),
                }
                return;
            }
            Template::OneSheet => ("sheet.pdf", PDF, pdf::single(&template)),
            Template::PinSchedule => {
                // An empty table says nothing: the drawing tells why.
                let table = schedule::write(&harp::schedule(&design, &resolved, &analysis));
                ("pins.csv", "text/csv", template.extent().map(|_| text(table)))
            }
        };
        match made {
            Ok(bytes) => hand(ending, media_type, &bytes),
            Err(error) => store.complain(why(&error)),
        }
    });
}

/// Draws sheets, a slice whenever the browser is idle, and then does something with the file.
fn draw(mut sheets: pdf::Sheets, then: impl FnOnce(&[u8]) + 'static) {
    browser::when_idle(move || {
        let begun = browser::now_ms();
        while browser::now_ms() - begun < SLICE_MS {
            if sheets.step() {
                then(&sheets.file());
                return;
            }
        }
        draw(sheets, then);
    });
}
