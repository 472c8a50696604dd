//! The files of the drawing: full-size templates and the schedule of pins.

use leptos::prelude::*;

use crate::app::panels::card::{chosen_language, language_choice};
use crate::app::store::{Act, Format, Picture, Store, Template};
use crate::app::widgets::button::button;
use crate::app::widgets::list::words;
use crate::words::{Words, drawing as say};

/// The buttons of the files.
#[component]
pub fn Files(store: Store) -> impl IntoView {
    let file = move |title: Words, words: &'static str, file: Template| {
        button("tool", "", title.said(), words, move || store.act(Act::SaveTemplate(file)))
    };
    let picture = move |id: &'static str, words: Words, format: Format| {
        button("tool", id, say::PICTURE_HINT.said(), words.said(), move || {
            store.act(Act::SavePicture(Picture::Drawing, format));
        })
    };
    let (spoken, wrong) = (RwSignal::new(chosen_language()), RwSignal::new(Words::NONE));
    view! {
        {language_choice(spoken, wrong)}
        <p class="wrong" role="alert">{words(move || wrong.get().into())}</p>
        <div class="window-actions">
            {file(say::DXF_HINT, "DXF", Template::Dxf)}
            {file(say::SVG_HINT, "SVG", Template::Svg)}
            {file(say::TILED_HINT, say::PDF_A4.said(), Template::SheetsOfA4)}
            {file(say::TILED_HINT, say::PDF_LETTER.said(), Template::SheetsOfLetter)}
            {file(say::SHEET_HINT, say::PDF_SHEET.said(), Template::OneSheet)}
            {file(say::SCHEDULE_HINT, say::SCHEDULE.said(), Template::PinSchedule)}
            {picture("drawing-svg", say::PICTURE_SVG, Format::Svg)}
            {picture("drawing-png", say::PICTURE_PNG, Format::Png)}
        </div>
    }
}
