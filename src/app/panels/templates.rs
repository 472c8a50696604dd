//! The files of the drawing: full-size templates and the schedule of pins, made and handed to the browser.

use leptos::prelude::*;

use super::card::chosen_language;
use super::drawing::why;
use super::header::file_name;
use crate::app::store::{Store, Template};
use crate::app::{browser, earlier};
use crate::papers::template::model::TemplateError;
use crate::papers::template::tiling::{TilePaper, Tiling};
use crate::papers::template::{dxf, harp, pdf, schedule, svg};
use crate::words::in_language;

const PDF: &str = "application/pdf";
/// How long a slice of the work takes, in milliseconds.
const SLICE_MS: f64 = 12.0;

/// A file that is made, or sheets that are drawn one by one, with its ending and media type.
enum Made {
    Whole(&'static str, &'static str, Vec<u8>),
    Sheets(&'static str, Box<pdf::Sheets>),
}

/// Makes a file and hands it to the browser. The harp is drawn at once, and the file is written when the browser is
/// idle, sheet by sheet: all together would hold the page up for a tenth of a second. The file speaks the language that
/// was chosen last for papers, and what is told of it that of the page.
pub fn save(store: Store, file: Template) {
    let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
    let analysis = store.analysis.get_untracked();
    let spoken = chosen_language();
    let template = in_language(spoken, || harp::template(&design, &resolved, &analysis));
    let write = move || {
        let text = |text: String| text.into_bytes();
        let sheets = |ending, template, paper| {
            let sheets = pdf::Sheets::of(template, Tiling { paper, ..Tiling::default() });
            sheets.map(|sheets| Made::Sheets(ending, Box::new(sheets)))
        };
        let whole = |ending, kind, made: Result<Vec<u8>, TemplateError>| {
            made.map(|bytes| Made::Whole(ending, kind, bytes))
        };
        let made = match file {
            Template::Dxf => whole("dxf", "image/vnd.dxf", dxf::write(&template).map(text)),
            Template::Svg => whole("svg", "image/svg+xml", svg::write(&template).map(text)),
            Template::SheetsOfA4 => sheets("a4.pdf", template, TilePaper::A4),
            Template::SheetsOfLetter => sheets("letter.pdf", template, TilePaper::Letter),
            Template::OneSheet => whole("sheet.pdf", PDF, pdf::single(&template)),
            Template::PinSchedule => {
                // An empty table says nothing: the drawing tells why.
                let table = schedule::write(&harp::schedule(&design, &resolved, &analysis));
                whole("pins.csv", "text/csv", template.extent().map(|_| text(table)))
            }
        };
        (design.title.clone(), made)
    };
    browser::when_idle(move || {
        let (title, made) = in_language(spoken, write);
        let hand = move |ending: &str, media_type: &str, bytes: &[u8]| {
            earlier::note(store, "template");
            let name = file_name(&title, ending);
            store.tell_handed(browser::offer_bytes(&name, media_type, bytes));
        };
        match made {
            Ok(Made::Whole(ending, media_type, bytes)) => hand(ending, media_type, &bytes),
            Ok(Made::Sheets(ending, sheets)) => {
                draw(*sheets, move |bytes| hand(ending, PDF, bytes));
            }
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
