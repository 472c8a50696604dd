//! The files of the drawing: full-size templates and the schedule of pins.

use leptos::prelude::*;

use crate::app::store::{Act, Format, Picture, Store, Template};
use crate::app::widgets::button::button;

const PICTURE: &str = "The drawing with what lies over it, not at full size, for a document";

/// The buttons of the files.
#[component]
pub fn Files(store: Store) -> impl IntoView {
    let file = move |title: &'static str, words: &'static str, file: Template| {
        button("tool", "", title, words, move || store.act(Act::SaveTemplate(file)))
    };
    let picture = move |id: &'static str, words: &'static str, format: Format| {
        button("tool", id, PICTURE, words, move || {
            store.act(Act::SavePicture(Picture::Drawing, format));
        })
    };
    view! {
        <div class="window-actions">
            {file("For a cutter or a drawing program, in millimetres", "DXF", Template::Dxf)}
            {file("For a drawing program, at full size", "SVG", Template::Svg)}
            {file("Over many sheets, to print at full size and glue", "PDF on A4", Template::SheetsOfA4)}
            {file("Over many sheets, to print at full size and glue", "PDF on Letter", Template::SheetsOfLetter)}
            {file("As large as the harp, for a plotter", "PDF on one sheet", Template::OneSheet)}
            {file("A table of all pins, holes, levers and discs with their places", "Pin schedule", Template::PinSchedule)}
            {picture("drawing-svg", "Picture, SVG", Format::Svg)}
            {picture("drawing-png", "Picture, PNG", Format::Png)}
        </div>
    }
}
