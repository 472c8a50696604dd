//! What a new harp will be, in words and curves, while its fields are filled in.

use leptos::html;
use leptos::prelude::*;
use plotters::drawing::IntoDrawingArea;
use web_sys::HtmlCanvasElement;

use crate::app::browser;
use crate::app::canvas::paint;
use crate::app::panels::curves::watch_size;
use crate::app::rows::Begun;
use crate::app::store::Store;
use crate::app::widgets::list::{list, part, words};
use crate::charts::draw;
use crate::charts::palette::Palette;
use crate::charts::pen::{Medium, Style};
use crate::charts::recorded::{Recorded, Recorder};
use crate::words::new_harp as say;

/// What will be made, or what is wrong with the fields.
#[component]
pub fn Preview(store: Store, made: Memo<Result<Begun, String>>) -> impl IntoView {
    let frame = NodeRef::<html::Div>::new();
    let canvas = NodeRef::<html::Canvas>::new();
    let size = RwSignal::new((0.0, 0.0));
    frame.on_load(move |element| {
        watch_size(&element, move || {
            if let Some(canvas) = canvas.get_untracked() {
                size.set(css_size(&canvas));
            }
        });
    });
    Effect::new(move |before: Option<Recorded>| {
        let Some(canvas) = canvas.get() else { return Recorded::default() };
        let scale = browser::pixel_ratio();
        let (width, height) = size.get();
        let mut drawing = Recorded::new((pixels(width, scale), pixels(height, scale)));
        let palette = if store.dark.get() { Palette::dark() } else { Palette::light() };
        let style = Style::new(palette, scale, Medium::Canvas);
        if let Ok(made) = &*made.read() {
            let area = Recorder(&mut drawing).into_drawing_area();
            // A recorder never fails.
            let _ = draw::draw(&area, &made.curves, &style);
        }
        paint(&canvas, &drawing, before.as_ref());
        drawing
    });
    let wrong = move || made.with(|made| made.as_ref().err().cloned().unwrap_or_default());
    let findings = move || {
        made.with(|made| made.as_ref().map(|made| made.findings.clone()).unwrap_or_default())
    };
    let facts = move || {
        let made = made.read();
        let facts = made.as_ref().map(|made| made.facts.clone()).unwrap_or_default();
        let line = |(name, fact): (&'static str, String)| {
            part(&(name, fact.clone()), move || {
                view! { <tr><th scope="row">{name}</th><td>{fact}</td></tr> }.into_any()
            })
        };
        facts.into_iter().map(line).collect()
    };
    let is_wrong = move || made.with(Result::is_err);
    view! {
        <fieldset class="new-preview">
            <legend>{say::WILL_BE.said()}</legend>
            <p class="wrong" id="new-wrong" role="alert">{words(wrong)}</p>
            <table class="pairs" id="new-facts"><tbody>{list(facts)}</tbody></table>
            <p id="new-findings" role="status">{words(findings)}</p>
            <div node_ref=frame class="new-curves" class:off=is_wrong>
                <canvas
                    node_ref=canvas
                    role="img"
                    aria-label=say::PREVIEW_LABEL.said()
                ></canvas>
            </div>
            <p class="hint">{say::PREVIEW_SOURCES.said()}</p>
        </fieldset>
    }
}

fn css_size(canvas: &HtmlCanvasElement) -> (f64, f64) {
    (f64::from(canvas.client_width()), f64::from(canvas.client_height()))
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a size on the screen, clamped to what a canvas may have"
)]
fn pixels(css: f64, scale: f64) -> u32 {
    (css * scale).round().clamp(0.0, 8_000.0) as u32
}
