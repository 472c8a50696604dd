//! Curves and drawing as pictures of their own: SVG, or PNG of twice as many pixels as on the page.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::header::file_name;
use crate::app::store::{Format, Picture, Store};
use crate::app::{browser, frame, pixels};
use crate::charts::lofting::{self, over};
use crate::charts::palette::Palette;
use crate::charts::picture::{self, Picture as Drawn};
use crate::charts::series::Curves;
use crate::design::advice::caution;
use crate::engine::figure::Figure;
use crate::engine::geometry::lay_out;
use crate::papers::measure::wrap;
use crate::papers::words::title;
use crate::words::charts as say;

/// Width of a picture, in pixels.
const WIDE: u32 = 960;
/// Height of a curve, and of legend and axis, in pixels.
const CURVE_HIGH: u32 = 170;
const AXIS_HIGH: u32 = 76;
/// The drawing is at most so high, in pixels.
const DRAWING_HIGH: f64 = 1_100.0;
/// Pixels of a PNG for each pixel of the picture.
const FINER: f64 = 2.0;

/// Makes a picture and hands it to the browser.
pub fn save(store: Store, what: Picture, format: Format) {
    let Some(drawn) = untrack(|| draw(store, what)) else {
        store.complain(say::NOTHING_TO_DRAW);
        return;
    };
    let wide = f64::from(WIDE);
    let size = (wide, drawn.height(wide));
    let svg = drawn.svg(size.0, size.1, "");
    let part = match what {
        Picture::Curves => "curves",
        Picture::Drawing => "drawing",
    };
    let ending = match format {
        Format::Svg => "svg",
        Format::Png => "png",
    };
    let title = store.design.with_untracked(|design| design.title.clone());
    let name = file_name(&title, &format!("{part}.{ending}"));
    if format == Format::Svg {
        store.tell_handed(browser::offer_file(&name, "image/svg+xml", &svg));
        return;
    }
    spawn_local(async move {
        match pixels::png(&svg, size, FINER).await {
            Some(blob) => store.tell_handed(browser::offer_blob(&name, &blob)),
            None => {
                store.complain(say::NO_PICTURE);
            }
        }
    });
}

/// The drawing and two curves for whoever only looks, as markup; `None` where there is nothing to draw.
pub fn drawn_for_client(store: Store) -> (Option<String>, Option<String>) {
    let palette = Palette::white();
    let (design, resolved) = (store.design.get(), store.resolved.get());
    let analysis = store.analysis.get();
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let given = over::Given {
        design: &design,
        resolved: &resolved,
        analysis: &analysis,
        band: &band,
        scene: &lofting::scene(&design, &resolved, &analysis, &band),
        bearing: None,
        marked: 0,
    };
    let wide = f64::from(WIDE);
    let drawing = picture::drawing(&given, "none", palette, (wide, DRAWING_HIGH));
    let shown = [Figure::Tension, Figure::PluckStiffness];
    let made = Curves::build(&analysis, &resolved.harp, &design.units, &shown, None, None);
    let curves = picture::curves(&made, palette, (WIDE, CURVE_HIGH * 2 + AXIS_HIGH));
    let any = analysis.strings.iter().any(|figures| figures.tension.is_ok());
    let svg = |drawn: Drawn| drawn.svg(wide, drawn.height(wide), "");
    (drawing.map(svg), any.then(|| svg(curves)))
}

fn draw(store: Store, what: Picture) -> Option<Drawn> {
    let (design, resolved) = (store.design.get(), store.resolved.get());
    let analysis = store.analysis.get();
    let palette = Palette::white();
    let (drawn, caption) = match what {
        Picture::Curves => {
            let (shown, ghost) = (store.curves.get(), store.ghost.get());
            let ghost = ghost.as_ref().map(|ghost| &*ghost.analysis);
            let made = Curves::build(&analysis, &resolved.harp, &design.units, &shown, ghost, None);
            let count = u32::try_from(shown.len()).unwrap_or(1);
            let size = (WIDE, CURVE_HIGH * count + AXIS_HIGH);
            (picture::curves(&made, palette, size), String::new())
        }
        Picture::Drawing => {
            let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
            let borne = frame::now(store);
            let given = over::Given {
                design: &design,
                resolved: &resolved,
                analysis: &analysis,
                band: &band,
                scene: &lofting::scene(&design, &resolved, &analysis, &band),
                bearing: Some(&borne.bearing),
                marked: store.selection.get().cursor.row,
            };
            let over = store.paper.over.get();
            let caption = over::kind(over).2(&given).caption;
            (picture::drawing(&given, over, palette, (f64::from(WIDE), DRAWING_HIGH))?, caption)
        }
    };
    let text = format!("{}. {caption} {}", title(&design), caution());
    // In millimetres and points, as papers measure.
    let lines = wrap(&text, f64::from(WIDE - 20) * 25.4 / 96.0, 8.25, 8);
    Some(drawn.with_words(&lines, palette))
}
