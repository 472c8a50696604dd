//! The files of the drawing: full-size templates and the schedule of pins.

use leptos::prelude::*;

use super::why;
use crate::app::browser;
use crate::app::panels::header::file_name;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::papers::template::tiling::{TilePaper, Tiling};
use crate::papers::template::{dxf, harp, pdf, schedule, svg};

/// A file of the drawing.
#[derive(Clone, Copy)]
enum File {
    Dxf,
    Svg,
    Sheets(TilePaper),
    Sheet,
    Schedule,
}

/// The buttons of the files.
#[component]
pub fn Files(store: Store) -> impl IntoView {
    let file = move |title: &'static str, words: &'static str, file: File| {
        button("tool", "", title, words, move || offer(store, file))
    };
    view! {
        <div class="window-actions">
            {file("For a cutter or a drawing program, in millimetres", "DXF", File::Dxf)}
            {file("For a drawing program, at full size", "SVG", File::Svg)}
            {file("Over many sheets, to print at full size and glue", "PDF on A4", File::Sheets(TilePaper::A4))}
            {file("Over many sheets, to print at full size and glue", "PDF on Letter", File::Sheets(TilePaper::Letter))}
            {file("As large as the harp, for a plotter", "PDF on one sheet", File::Sheet)}
            {file("A table of all pins, holes, levers and discs with their places", "Pin schedule", File::Schedule)}
        </div>
    }
}

/// Makes a file and offers it.
fn offer(store: Store, file: File) {
    let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
    let analysis = store.analysis.get_untracked();
    let template = harp::template(&design, &resolved, &analysis);
    let text = |text: String| text.into_bytes();
    let (ending, media_type, made) = match file {
        File::Dxf => ("dxf", "image/vnd.dxf", dxf::write(&template).map(text)),
        File::Svg => ("svg", "image/svg+xml", svg::write(&template).map(text)),
        File::Sheets(paper) => {
            let made = pdf::tiled(&template, Tiling { paper, ..Tiling::default() });
            let ending = match paper {
                TilePaper::A4 => "a4.pdf",
                TilePaper::Letter => "letter.pdf",
            };
            (ending, "application/pdf", made)
        }
        File::Sheet => ("sheet.pdf", "application/pdf", pdf::single(&template)),
        File::Schedule => {
            // An empty table says nothing: the drawing tells why.
            let table = schedule::write(&harp::schedule(&design, &resolved, &analysis));
            ("pins.csv", "text/csv", template.extent().map(|_| text(table)))
        }
    };
    match made {
        Ok(bytes) => {
            let name = file_name(&design.title, ending);
            store.tell_handed(browser::offer_bytes(&name, media_type, &bytes));
        }
        Err(error) => store.complain(why(&error)),
    }
}
