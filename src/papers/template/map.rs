//! The first pages of a tiled template: a map of the sheets, how to join them, what to check, and what
//! is on each.

use crate::papers::measure::{clean, width_mm, wrap};

use super::canvas::{Canvas, View};
use super::model::{Extent, Layer, LayerKind, PointMm, Shape, Template, type_pt};
use super::sheet::{SCALE_NOTE, bars, frame_on_page};
use super::tiling::{Plan, SheetPlace, TilePaper, crosses};

const TITLE_MM: f64 = 4.2;
const HEAD_MM: f64 = 2.6;
const WORDS_MM: f64 = 2.1;
/// From one line of words to the next.
const LINE_MM: f64 = 4.0;
/// The map is at most so high.
const MAP_MM: f64 = 100.0;
/// Lines of notes that are kept.
const MOST_NOTE_LINES: usize = 8;
/// Width of a sheet's name in the list.
const NAME_MM: f64 = 9.0;
/// White between two columns.
const GUTTER_MM: f64 = 8.0;

/// How to join the sheets.
const JOIN: [&str; 5] = [
    "Cut each sheet along its full line: at the left, at the bottom, or both. A sheet without such a \
     line is not cut.",
    "Join each row from left to right: lay the cut edge on the dotted line of the sheet at its left, \
     so that both halves of the numbered diamonds meet.",
    "Then join the rows from the bottom up, each over the one below it, in the same way.",
    "Before the glue sets, lay a straight edge along a long line that crosses the seam: it must not \
     step.",
    "The name of a sheet, as on the map, stands at its lower left.",
];

/// The same for one sheet.
const ALONE: [&str; 1] = ["There is one sheet: nothing is joined."];

/// What to check, and to beware of.
const CHECK: [&str; 5] = [
    "Measure both bars on every sheet with a steel rule before you cut. Each must be 100 mm; if one \
     is off by more than 0.3 mm, set the printer to 100 % and print that sheet again.",
    "Paper grows and shrinks with the damp in the air. Measure from the first to the last pin on the \
     joined sheets and compare with the schedule on the day that you drill.",
    "Try each drill and pin in scrap of the same wood first. Wear eye protection.",
    "A template says where things go, not that the wood will bear the strings: have neck, pillar and \
     soundboard checked for their load.",
    "The cross in a circle marks the origin, x 0, y 0. All lengths on the sheets count from there.",
];

/// The contents of the pages before the sheets, at least one.
pub(super) fn draw(
    template: &Template,
    layers: &[Layer],
    plan: &Plan,
    paper: TilePaper,
    extent: &Extent,
) -> Vec<Vec<u8>> {
    let page_mm = paper.size_mm();
    let frame = frame_on_page(page_mm);
    let mut pages = Vec::new();
    let mut canvas = Canvas::new();
    let mut y_mm = heading(&mut canvas, template, plan, paper, &frame);
    y_mm = map(&mut canvas, layers, plan, extent, &frame, y_mm);
    let half_mm = 0.5 * (frame.width_mm() - GUTTER_MM);
    let join = if plan.count() == 1 { &ALONE[..] } else { &JOIN[..] };
    let left = column(&mut canvas, "How to join the sheets", join, frame.left_mm, half_mm, y_mm);
    let right_mm = frame.left_mm + half_mm + GUTTER_MM;
    let right = column(&mut canvas, "Before you cut", &CHECK, right_mm, half_mm, y_mm);
    y_mm = left.min(right) - 3.0;
    let mut list_head = "What is on each sheet";
    let list_mm = half_mm - NAME_MM;
    let traced = traced(layers);
    let on_sheets = plan.sheets().map(|place| {
        let words = on_sheet(layers, &traced, &plan.own(place));
        (place.label(), wrap(&words, list_mm, type_pt(WORDS_MM), 3))
    });
    let mut on_sheets = on_sheets.peekable();
    while on_sheets.peek().is_some() {
        // A page that has room for the head and some lines.
        if y_mm - frame.bottom_mm > 5.0 * LINE_MM {
            canvas.bold(PointMm::new(frame.left_mm, y_mm), HEAD_MM, list_head);
            for x_mm in [frame.left_mm, right_mm] {
                let mut line_mm = y_mm - 1.3 * LINE_MM;
                let most = |lines: &[String]| lines.iter().skip(1).map(|_| LINE_MM).sum::<f64>();
                while let Some((name, lines)) =
                    on_sheets.next_if(|(_, lines)| line_mm - most(lines) > frame.bottom_mm + 1.0)
                {
                    canvas.bold(PointMm::new(x_mm, line_mm), WORDS_MM, &name);
                    for line in lines {
                        canvas.text(PointMm::new(x_mm + NAME_MM, line_mm), WORDS_MM, &line);
                        line_mm -= LINE_MM;
                    }
                }
            }
            list_head = "What is on each sheet, continued";
        }
        if on_sheets.peek().is_some() {
            bars(&mut canvas, &frame);
            pages.push(std::mem::replace(&mut canvas, Canvas::new()).finish());
            y_mm = frame.top_mm - HEAD_MM;
        }
    }
    bars(&mut canvas, &frame);
    pages.push(canvas.finish());
    pages
}

/// Title, count of sheets and notes. Gives the height below them.
fn heading(
    canvas: &mut Canvas,
    template: &Template,
    plan: &Plan,
    paper: TilePaper,
    frame: &Extent,
) -> f64 {
    let wide_mm = frame.width_mm();
    let mut y_mm = frame.top_mm - TITLE_MM;
    let title = clean(&template.title);
    let title = if title.is_empty() { "Template".to_owned() } else { title };
    for line in wrap(&title, wide_mm, type_pt(TITLE_MM) * 1.08, 2) {
        canvas.bold(PointMm::new(frame.left_mm, y_mm), TITLE_MM, &line);
        y_mm -= TITLE_MM + 2.4;
    }
    let count = plan.count();
    let sheets = if count == 1 { "sheet" } else { "sheets" };
    let side = if plan.is_lying() { "landscape" } else { "portrait" };
    let mut words = vec![format!(
        "Full size on {count} {sheets} of {}, {side}, with {} mm overlap. {SCALE_NOTE}",
        paper.name(),
        plan.overlap_mm
    )];
    if !template.origin.is_empty() {
        words.push(format!("Origin (x 0, y 0): {}", template.origin));
    }
    words.extend(template.notes.iter().cloned());
    let lines = words.iter().flat_map(|text| wrap(text, wide_mm, type_pt(WORDS_MM), 3));
    for line in lines.take(MOST_NOTE_LINES) {
        canvas.text(PointMm::new(frame.left_mm, y_mm), WORDS_MM, &line);
        y_mm -= LINE_MM;
    }
    y_mm
}

/// The whole drawing, small, under the frames of the sheets. Gives the height below it.
fn map(
    canvas: &mut Canvas,
    layers: &[Layer],
    plan: &Plan,
    extent: &Extent,
    frame: &Extent,
    top_mm: f64,
) -> f64 {
    let last = SheetPlace { row: plan.rows - 1, column: plan.columns - 1 };
    let first = plan.frame(SheetPlace { row: 0, column: 0 });
    let end = plan.frame(last);
    let whole = Extent::new(first.left_mm, end.bottom_mm, end.right_mm, first.top_mm);
    let scale = (frame.width_mm() / whole.width_mm()).min(MAP_MM / whole.height_mm());
    let left_mm = frame.left_mm + 0.5 * (frame.width_mm() - scale * whole.width_mm());
    let bottom_mm = top_mm - scale * whole.height_mm();
    let shift = PointMm::new(left_mm - scale * whole.left_mm, bottom_mm - scale * whole.bottom_mm);
    let view = View { scale: scale.min(0.999), shift };
    let own = |place: SheetPlace| {
        let own = plan.own(place);
        let corner = |x_mm: f64, y_mm: f64| view.at(PointMm::new(x_mm, y_mm));
        [
            corner(own.left_mm, own.bottom_mm),
            corner(own.right_mm, own.bottom_mm),
            corner(own.right_mm, own.top_mm),
            corner(own.left_mm, own.top_mm),
        ]
    };
    let empty = || plan.places().filter(|place| !plan.is_printed(*place));
    canvas.shade(0.9);
    empty().for_each(|place| canvas.filled(&own(place)));
    canvas.shade(0.55);
    canvas.pen(0.13, &[]);
    plan.places().for_each(|place| canvas.path(&own(place), true));
    for place in empty() {
        let corners = own(place);
        canvas.line(corners[0], corners[2]);
        canvas.line(corners[1], corners[3]);
    }
    canvas.shade(0.0);
    canvas.layers(layers, view, extent);
    for place in plan.sheets() {
        let [low, right, high, _] = own(place);
        let name = place.label();
        let height_mm = (0.3 * (high.y_mm - low.y_mm)).min(2.8);
        let wide_mm = width_mm(&name, type_pt(height_mm));
        let fit = (0.7 * (right.x_mm - low.x_mm) / wide_mm).min(1.0);
        let (height_mm, wide_mm) = (fit * height_mm, fit * wide_mm);
        let at = |x_mm: f64, y_mm: f64| PointMm::new(low.x_mm + x_mm, low.y_mm + y_mm);
        // White under the name, as the drawing may pass there.
        let (right_mm, top_mm) = (1.15 * wide_mm + 1.4, height_mm + 1.6);
        canvas.shade(1.0);
        canvas.filled(&[at(0.3, 0.3), at(right_mm, 0.3), at(right_mm, top_mm), at(0.3, top_mm)]);
        canvas.shade(0.0);
        canvas.bold(at(1.0, 1.0), height_mm, &name);
    }
    let mut y_mm = bottom_mm - 4.0;
    if empty().next().is_some() {
        let words = "Grey and crossed out: nothing to draw, no sheet is printed.";
        canvas.text(PointMm::new(frame.left_mm, y_mm), WORDS_MM, words);
        y_mm -= LINE_MM;
    }
    y_mm - 3.0
}

/// A head and numbered sentences. Gives the height below them.
fn column(
    canvas: &mut Canvas,
    head: &str,
    sentences: &[&str],
    x_mm: f64,
    wide_mm: f64,
    top_mm: f64,
) -> f64 {
    const INDENT_MM: f64 = 4.5;
    canvas.bold(PointMm::new(x_mm, top_mm), HEAD_MM, head);
    let mut y_mm = top_mm - 1.3 * LINE_MM;
    for (number, sentence) in (1..).zip(sentences) {
        canvas.text(PointMm::new(x_mm, y_mm), WORDS_MM, &format!("{number}."));
        for line in wrap(sentence, wide_mm - INDENT_MM, type_pt(WORDS_MM), 9) {
            canvas.text(PointMm::new(x_mm + INDENT_MM, y_mm), WORDS_MM, &line);
            y_mm -= LINE_MM;
        }
    }
    y_mm
}

/// `outline, strings, pins; labels 1 to 9`: the layers on a sheet, without what its neighbours lie over,
/// and the first and last of its short texts with a figure.
fn on_sheet(layers: &[Layer], traced: &[Vec<Traced>], own: &Extent) -> String {
    let mut names = Vec::new();
    let mut labels: Vec<&str> = Vec::new();
    for (layer, traced) in layers.iter().zip(traced) {
        let reaching = layer.shapes.iter().zip(traced).filter(|(_, traced)| traced.reaches(own));
        let mut inside = reaching.map(|(shape, _)| shape).peekable();
        if inside.peek().is_some() && layer.kind != LayerKind::Text {
            names.push(layer.kind.name());
        }
        if layer.kind == LayerKind::Marks {
            continue;
        }
        for shape in inside {
            if let Shape::Text { text, .. } = shape
                && text.chars().count() <= 8
                && text.bytes().any(|sign| sign.is_ascii_digit())
            {
                labels.push(text);
            }
        }
    }
    let names = if names.is_empty() { LayerKind::Text.name().to_owned() } else { names.join(", ") };
    // Numbers and notes do not go together in one list.
    let is_number = |text: &str| text.bytes().all(|sign| sign.is_ascii_digit());
    if labels.iter().any(|text| is_number(text)) {
        labels.retain(|text| is_number(text));
    }
    match labels[..] {
        [] => names,
        [only] => format!("{names}; label {only}"),
        [first, .., last] => format!("{names}; labels {first} to {last}"),
    }
}

/// A shape as lines, with what holds them all.
struct Traced {
    extent: Option<Extent>,
    lines: Vec<Vec<PointMm>>,
}

impl Traced {
    fn reaches(&self, extent: &Extent) -> bool {
        let mut pieces = self.lines.iter().flat_map(|line| line.windows(2));
        self.extent.is_some_and(|own| own.meets(extent))
            && pieces.any(|ends| crosses(ends[0], ends[1], extent))
    }
}

/// All shapes as lines, once for all sheets.
fn traced(layers: &[Layer]) -> Vec<Vec<Traced>> {
    let trace = |shape: &Shape| {
        let lines = shape.lines();
        Traced { extent: Extent::of(lines.iter().flatten().copied()), lines }
    };
    layers.iter().map(|layer| layer.shapes.iter().map(trace).collect()).collect()
}
