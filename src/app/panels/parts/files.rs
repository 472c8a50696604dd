//! The files of the parts: the table of all, the picture of the three sides, and the template of the part that is chosen.

use leptos::prelude::*;

use super::{Bench, of_part, sides};
use crate::app::panels::header::file_name;
use crate::app::store::Act;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{while_so, words};
use crate::app::{browser, earlier};
use crate::design::document::Design;
use crate::design::parts::{Parts as Made, csv};
use crate::papers::template::bent::template_of;
use crate::papers::template::jig::jig;
use crate::papers::template::model::{Template, TemplateError};
use crate::papers::template::overview::overview;
use crate::papers::template::part::{named, worth};
use crate::papers::template::tiling::{TilePaper, Tiling};
use crate::papers::template::{dxf, pdf, svg};
use crate::words::drawing::not_drawn;
use crate::words::parts_page as say;

const PDF: &str = "application/pdf";

/// A file of a template: its ending, its media type, and how it is written.
type Written = fn(Template) -> Result<Vec<u8>, TemplateError>;

fn tiled(template: Template, paper: TilePaper) -> Result<Vec<u8>, TemplateError> {
    let mut sheets = pdf::Sheets::of(template, Tiling { paper, ..Tiling::default() })?;
    while !sheets.step() {}
    Ok(sheets.file())
}

/// The templates of all parts, the overview first, each on sheets of its own.
fn all(design: &Design, made: &Made, paper: TilePaper) -> Result<Vec<u8>, TemplateError> {
    let harp = &*design.title;
    let of_parts: Vec<Template> =
        worth(&made.whole.parts).map(|part| template_of(design, made, part)).collect();
    let first = overview(&made.whole.parts, harp)?;
    pdf::together(&first, &of_parts, Tiling { paper, ..Tiling::default() })
}

/// The buttons of the files.
pub fn files(bench: Bench) -> AnyView {
    let hand = move |ending: &str, media_type: &str, bytes: &[u8]| {
        earlier::note(bench.store, "template");
        let title = bench.store.design.with_untracked(|design| design.title.clone());
        let part = untrack(|| bench.with_chosen(|part| named(part.name)));
        let name =
            if ending == "csv" || part.is_empty() { title } else { format!("{title} {part}") };
        bench.store.tell_handed(browser::offer_bytes(&file_name(&name, ending), media_type, bytes));
    };
    let one = move |id: &'static str,
                    words: &'static str,
                    ending: &'static str,
                    media: &'static str,
                    write: Written| {
        button("tool", id, "", words, move || {
            let template = untrack(|| bench.with_chosen(|part| Some(of_part(bench, part))));
            match template.map(write) {
                Some(Ok(bytes)) => hand(ending, media, &bytes),
                Some(Err(why)) => bench.store.complain(not_drawn(&why)),
                None => {}
            }
        })
    };
    let table = move || match bench.store.design.with_untracked(|design| csv(design)) {
        Ok(text) => hand("csv", "text/csv", text.as_bytes()),
        Err(why) => bench.store.complain(say::nothing(&why)),
    };
    let picture = move || {
        let title = bench.store.design.with_untracked(|design| design.title.clone());
        let name = file_name(&title, "sides.svg");
        let text = untrack(|| sides(bench));
        bench.store.tell_handed(browser::offer_file(&name, "image/svg+xml", &text));
    };
    let all_on = move |paper: TilePaper| {
        let design = bench.store.design.get_untracked();
        let made = untrack(|| bench.with(|made| Some(all(&design, made, paper))));
        match made {
            Some(Ok(bytes)) => hand("parts.pdf", PDF, &bytes),
            Some(Err(why)) => bench.store.complain(not_drawn(&why)),
            None => {}
        }
    };
    let guides = move || {
        let harp = bench.store.design.with_untracked(|design| design.title.clone());
        let made = untrack(|| bench.with_chosen(|part| jig(part, &harp)));
        match made.map(|template| pdf::single(&template)) {
            Some(Ok(bytes)) => hand("guides.pdf", PDF, &bytes),
            Some(Err(why)) => bench.store.complain(not_drawn(&why)),
            None => bench.store.hint(say::NO_GUIDES.said()),
        }
    };
    let chosen = move || bench.with_chosen(|part| named(part.name));
    view! {
        <div>
        <div class="parts-files">
            {button("tool", "parts-print", say::PRINT_HINT.said(), say::PRINT.said(), move || bench.store.act(Act::Print))}
            {button("tool", "parts-csv", say::TABLE_HINT.said(), say::TABLE.said(), table)}
            {button("tool", "parts-all-a4", say::ALL_HINT.said(), say::ALL_A4.said(), move || all_on(TilePaper::A4))}
            {button("tool", "parts-all-letter", say::ALL_HINT.said(), say::ALL_LETTER.said(), move || all_on(TilePaper::Letter))}
            {button("tool", "parts-sides-svg", "", say::SAVE_SIDES.said(), picture)}
        </div>
        {while_so(move || !chosen().is_empty(), move || view! {
            <h3>{words(move || say::files_of(&chosen()))}</h3>
            <div class="parts-files">
                {one("part-dxf", say::DXF.said(), "dxf", "image/vnd.dxf", |template| dxf::write(&template).map(String::into_bytes))}
                {one("part-svg", say::SVG.said(), "svg", "image/svg+xml", |template| svg::write(&template).map(String::into_bytes))}
                {one("part-a4", say::A4.said(), "a4.pdf", PDF, |template| tiled(template, TilePaper::A4))}
                {one("part-letter", say::LETTER.said(), "letter.pdf", PDF, |template| tiled(template, TilePaper::Letter))}
                {button("tool", "part-guides", say::GUIDES_HINT.said(), say::GUIDES.said(), guides)}
                {one("part-sheet", say::ONE_SHEET.said(), "sheet.pdf", PDF, |template| pdf::single(&template))}
            </div>
        }.into_any())}
        {while_so(move || chosen().is_empty(), || view! { <p class="hint">{say::NOTHING_CHOSEN.said()}</p> }.into_any())}
        </div>
    }
    .into_any()
}
