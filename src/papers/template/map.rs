//! The first pages of a tiled template: a map of the sheets, how to join them, what to check, and what
//! is on each.

use crate::papers::measure::{clean, width_mm, wrap};
use crate::words::{Words, templates as say};

use super::canvas::{Canvas, View};
use super::model::{Extent, Layer, LayerKind, PointMm, Shape, Template, type_pt};
use super::sheet::{bars, frame_on_page};
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
/// What the numbers of sentences take.
const INDENT_MM: f64 = 4.5;
/// Lines of a sentence that are kept.
const MOST_SENTENCE_LINES: usize = 9;
/// White below the map, and the line that may stand there.
const BELOW_MAP_MM: f64 = 7.0 + LINE_MM;
/// White between two columns.
const GUTTER_MM: f64 = 8.0;

/// How to join the sheets.
const JOIN: [Words; 5] =
    [say::JOIN_CUT, say::JOIN_ROW, say::JOIN_ROWS, say::JOIN_STRAIGHT, say::JOIN_NAME];

/// The same for one sheet.
const ALONE: [Words; 1] = [say::ALONE];

/// What to check, and to beware of.
const CHECK: [Words; 5] =
    [say::CHECK_BARS, say::CHECK_DAMP, say::CHECK_SCRAP, say::CHECK_LOAD, say::CHECK_ORIGIN];

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
    let half_mm = 0.5 * (frame.width_mm() - GUTTER_MM);
    let join = if plan.count() == 1 { &ALONE[..] } else { &JOIN[..] };
    // The map leaves what the sentences below it take.
    let sentences_mm = column_mm(join, half_mm).max(column_mm(&CHECK, half_mm));
    let most_mm = (y_mm - frame.bottom_mm - sentences_mm - BELOW_MAP_MM).min(MAP_MM);
    y_mm = map(&mut canvas, layers, plan, extent, &frame, (y_mm, most_mm));
    let left = column(&mut canvas, say::JOIN, join, frame.left_mm, half_mm, y_mm);
    let right_mm = frame.left_mm + half_mm + GUTTER_MM;
    let right = column(&mut canvas, say::BEFORE_CUT, &CHECK, right_mm, half_mm, y_mm);
    y_mm = left.min(right) - 3.0;
    let mut list_head = say::ON_SHEETS;
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
            canvas.bold(PointMm::new(frame.left_mm, y_mm), HEAD_MM, list_head.said());
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
            list_head = say::ON_SHEETS_CONTINUED;
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
    let title = if title.is_empty() { say::TEMPLATE.into() } else { title };
    for line in wrap(&title, wide_mm, type_pt(TITLE_MM) * 1.08, 2) {
        canvas.bold(PointMm::new(frame.left_mm, y_mm), TITLE_MM, &line);
        y_mm -= TITLE_MM + 2.4;
    }
    let count = plan.count();
    let side = if plan.is_lying() { "landscape" } else { "portrait" };
    let mut words = vec![say::full_size(&count, &plan.overlap_mm, &paper.name(), &side)];
    if !template.origin.is_empty() {
        words.push(say::origin_at(&template.origin));
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
    (top_mm, most_mm): (f64, f64),
) -> f64 {
    let last = SheetPlace { row: plan.rows - 1, column: plan.columns - 1 };
    let first = plan.frame(SheetPlace { row: 0, column: 0 });
    let end = plan.frame(last);
    let whole = Extent::new(first.left_mm, end.bottom_mm, end.right_mm, first.top_mm);
    let scale = (frame.width_mm() / whole.width_mm()).min(most_mm / whole.height_mm());
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
        canvas.text(PointMm::new(frame.left_mm, y_mm), WORDS_MM, say::GREY.said());
        y_mm -= LINE_MM;
    }
    y_mm - 3.0
}

/// How high a head and numbered sentences stand.
fn column_mm(sentences: &[Words], wide_mm: f64) -> f64 {
    let lines = |words: &Words| {
        wrap(words.said(), wide_mm - INDENT_MM, type_pt(WORDS_MM), MOST_SENTENCE_LINES)
    };
    let lines = sentences.iter().map(|words| lines(words).len()).sum::<usize>();
    LINE_MM * (1.3 + f64::from(u32::try_from(lines).unwrap_or(u32::MAX)))
}

/// A head and numbered sentences. Gives the height below them.
fn column(
    canvas: &mut Canvas,
    head: Words,
    sentences: &[Words],
    x_mm: f64,
    wide_mm: f64,
    top_mm: f64,
) -> f64 {
    canvas.bold(PointMm::new(x_mm, top_mm), HEAD_MM, head.said());
    let mut y_mm = top_mm - 1.3 * LINE_MM;
    for (number, sentence) in (1..).zip(sentences) {
        canvas.text(PointMm::new(x_mm, y_mm), WORDS_MM, &format!("{number}."));
        for line in
            wrap(sentence.said(), wide_mm - INDENT_MM, type_pt(WORDS_MM), MOST_SENTENCE_LINES)
        {
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
            names.push(layer.kind.said().said());
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
    let names = if names.is_empty() { LayerKind::Text.said().into() } else { names.join(", ") };
    // Numbers and notes do not go together in one list.
    let is_number = |text: &str| text.bytes().all(|sign| sign.is_ascii_digit());
    if labels.iter().any(|text| is_number(text)) {
        labels.retain(|text| is_number(text));
    }
    match labels[..] {
        [] => names,
        [only] => say::one_label(&only, &names),
        [first, .., last] => say::labels(&first, &last, &names),
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, in_language};

    #[test]
    fn a_map_has_room_above_its_sentences_in_every_language() {
        for language in Language::ALL {
            in_language(language, || {
                for paper in [TilePaper::A4, TilePaper::Letter] {
                    let frame = frame_on_page(paper.size_mm());
                    let half_mm = 0.5 * (frame.width_mm() - GUTTER_MM);
                    let below_mm = column_mm(&JOIN, half_mm).max(column_mm(&CHECK, half_mm));
                    // A title of two lines, and as many notes as are kept.
                    let head_mm = 3.0 * TITLE_MM
                        + 4.8
                        + LINE_MM * f64::from(u8::try_from(MOST_NOTE_LINES).unwrap());
                    let map_mm = frame.height_mm() - head_mm - below_mm - BELOW_MAP_MM;
                    assert!(map_mm > 60.0, "{language:?}, {}: {map_mm} mm", paper.name());
                    for (words, mm) in [
                        (say::GREY, frame.width_mm()),
                        (say::JOIN, half_mm),
                        (say::BEFORE_CUT, half_mm),
                        (say::ON_SHEETS_CONTINUED, half_mm),
                    ] {
                        let wide = width_mm(words.said(), type_pt(HEAD_MM));
                        assert!(wide < mm, "{words}: {wide} of {mm} mm");
                    }
                    for words in JOIN.iter().chain(&CHECK) {
                        let lines = wrap(
                            words.said(),
                            half_mm - INDENT_MM,
                            type_pt(WORDS_MM),
                            MOST_SENTENCE_LINES,
                        );
                        assert!(!lines.concat().ends_with('…'), "{words}");
                    }
                }
            });
        }
    }
}
