//! One printed sheet: its part of the drawing at full size, and round it what is needed to check the
//! print and to join the sheets.

use crate::papers::measure::{clean, width_mm, wrap};
use crate::words::{signed, templates as say};

use super::canvas::{Canvas, View};
use super::model::{Anchor, Extent, Layer, PointMm, Template, type_pt};
use super::tiling::{FOOT_MM, JoinMark, MARGIN_MM, Plan, SIDE_MM, SheetPlace};

/// Length of both check bars.
pub const BAR_MM: f64 = 100.0;
/// Height of the capitals of small print.
pub(super) const SMALL_MM: f64 = 1.7;
/// Height of the letters of a sheet's name.
const NAME_MM: f64 = 5.0;
/// Width of lines that are not the drawing's.
const FINE_MM: f64 = 0.13;

/// Where the frame lies on the page.
pub(super) const fn frame_on_page(page_mm: (f64, f64)) -> Extent {
    Extent::new(
        MARGIN_MM + SIDE_MM,
        MARGIN_MM + FOOT_MM,
        page_mm.0 - MARGIN_MM,
        page_mm.1 - MARGIN_MM,
    )
}

/// What a sheet is called: by its place, or not at all if it is the only one.
pub(super) enum Naming {
    Whole,
    Tile { index: usize, count: usize },
}

/// The content of the sheet at `place`.
pub(super) fn draw(
    template: &Template,
    layers: &[Layer],
    plan: &Plan,
    place: SheetPlace,
    naming: &Naming,
    marks: &[JoinMark],
) -> Vec<u8> {
    let mut canvas = Canvas::new();
    let shown = plan.frame(place);
    let frame = frame_on_page(plan.page_mm);
    let shift = PointMm::new(frame.left_mm - shown.left_mm, frame.bottom_mm - shown.bottom_mm);
    let view = View { scale: 1.0, shift };
    canvas.clip(&frame);
    canvas.layers(layers, view, &shown);
    canvas.unclip();
    seams(&mut canvas, plan, place, &frame);
    for mark in marks.iter().filter(|mark| mark.sheets.0 == place || mark.sheets.1 == place) {
        diamond(&mut canvas, mark, view.at(mark.at), mark.sheets.0 == place, plan.overlap_mm);
    }
    corners(&mut canvas, &frame);
    bars(&mut canvas, &frame);
    let (x, y) = (tenths(shown.left_mm), tenths(shown.bottom_mm));
    let mut words_left_mm = frame.left_mm;
    let sheet = match naming {
        Naming::Whole => say::whole(&x, &y),
        Naming::Tile { index, count } => {
            let name = place.label();
            canvas.bold(PointMm::new(frame.left_mm, MARGIN_MM + 2.4), NAME_MM, &name);
            canvas.bold(PointMm::new(frame.left_mm + 2.0, frame.bottom_mm + 2.0), 2.5, &name);
            words_left_mm += 6.0 + 4.5 * f64::from(u8::try_from(name.len()).unwrap_or(6));
            say::sheet(count, &(index + 1), &x, &y)
        }
    };
    let room_mm = frame.right_mm - BAR_MM - 4.0 - words_left_mm;
    let title = wrap(&clean(&template.title), room_mm, type_pt(SMALL_MM), 1);
    let mut lines = title;
    lines.extend([sheet, say::SCALE.into(), say::BARS.into()]);
    let mut height_mm = MARGIN_MM + 8.8;
    for line in lines {
        // A line too long for its place, in whatever language, is set smaller.
        let fit = (room_mm / width_mm(&line, type_pt(SMALL_MM))).min(1.0);
        canvas.text(PointMm::new(words_left_mm, height_mm), fit * SMALL_MM, &line);
        height_mm -= 2.8;
    }
    canvas.finish()
}

fn tenths(mm: f64) -> String {
    signed(&format!("{mm:.1}"))
}

/// Both check bars with a tick at each ten millimetres: one under the frame, one at its left.
pub(super) fn bars(canvas: &mut Canvas, frame: &Extent) {
    let (left_mm, level_mm) = (frame.right_mm - BAR_MM - 1.0, MARGIN_MM + 4.8);
    let (upright_mm, bottom_mm) = (MARGIN_MM + 2.5, frame.bottom_mm + 3.0);
    canvas.shade(0.0);
    canvas.pen(FINE_MM, &[]);
    let at = PointMm::new;
    canvas.line(at(left_mm, level_mm), at(left_mm + BAR_MM, level_mm));
    canvas.line(at(upright_mm, bottom_mm), at(upright_mm, bottom_mm + BAR_MM));
    for tick in 0..=10 {
        let along_mm = 10.0 * f64::from(tick);
        let long_mm = match tick {
            0 | 10 => 4.0,
            5 => 2.5,
            _ => 1.5,
        };
        let up_mm = (level_mm, level_mm + long_mm);
        let x_mm = left_mm + along_mm;
        canvas.line(at(x_mm, up_mm.0), at(x_mm, up_mm.1));
        let y_mm = bottom_mm + along_mm;
        canvas.line(at(upright_mm, y_mm), at(upright_mm - 0.6 * long_mm, y_mm));
    }
    let words = say::BAR.said();
    let middle_mm = left_mm + 0.5 * BAR_MM;
    canvas.turned(at(middle_mm, level_mm - 2.8), SMALL_MM, words, 0.0, Anchor::Middle);
    let middle_mm = bottom_mm + 0.5 * BAR_MM;
    canvas.turned(at(upright_mm + 2.4, middle_mm), SMALL_MM, words, 90.0, Anchor::Middle);
}

/// Lines to cut along, lines to lay the neighbour on, and a word at each.
fn seams(canvas: &mut Canvas, plan: &Plan, place: SheetPlace, frame: &Extent) {
    let at = PointMm::new;
    let cut = |canvas: &mut Canvas| canvas.pen(FINE_MM, &[]);
    let lay = |canvas: &mut Canvas| canvas.pen(2.0 * FINE_MM, &[0.3, 1.2]);
    canvas.shade(0.0);
    if plan.left_of(place).is_some() {
        cut(canvas);
        let x_mm = frame.left_mm;
        canvas.line(at(x_mm, frame.bottom_mm), at(x_mm, frame.top_mm));
        canvas.turned(
            at(x_mm - 0.8, frame.top_mm - 4.0),
            SMALL_MM,
            say::CUT.said(),
            90.0,
            Anchor::End,
        );
    }
    if plan.below(place).is_some() {
        cut(canvas);
        let y_mm = frame.bottom_mm;
        canvas.line(at(frame.left_mm, y_mm), at(frame.right_mm, y_mm));
        canvas.turned(
            at(frame.right_mm - 4.0, y_mm - 2.6),
            SMALL_MM,
            say::CUT.said(),
            0.0,
            Anchor::End,
        );
    }
    if let Some(upper) = plan.right_of(place) {
        lay(canvas);
        let x_mm = frame.right_mm - plan.overlap_mm;
        canvas.line(at(x_mm, frame.bottom_mm), at(x_mm, frame.top_mm));
        let words = say::edge(&upper.label());
        let middle_mm = 0.5 * (frame.bottom_mm + frame.top_mm);
        // Outside the frame, where nothing is drawn; it will be covered.
        let base_mm = frame.right_mm + 2.6;
        canvas.turned(at(base_mm, middle_mm), SMALL_MM, &words, 90.0, Anchor::Middle);
    }
    if let Some(upper) = plan.above(place) {
        lay(canvas);
        let y_mm = frame.top_mm - plan.overlap_mm;
        canvas.line(at(frame.left_mm, y_mm), at(frame.right_mm, y_mm));
        let words = say::edge(&upper.label());
        let middle_mm = 0.5 * (frame.left_mm + frame.right_mm);
        let base_mm = frame.top_mm + 0.9;
        canvas.turned(at(middle_mm, base_mm), SMALL_MM, &words, 0.0, Anchor::Middle);
    }
}

/// A diamond with a cross in it, on both sheets at the same place of the drawing. Cut in half on the
/// upper sheet, it is made whole again on the lower. Its number stands on the side that stays visible.
fn diamond(canvas: &mut Canvas, mark: &JoinMark, centre: PointMm, is_upper: bool, overlap_mm: f64) {
    let half_mm = (0.4 * overlap_mm).min(3.0);
    let at = |x: f64, y: f64| PointMm::new(centre.x_mm + x, centre.y_mm + y);
    canvas.shade(0.0);
    canvas.pen(FINE_MM, &[]);
    let around = [at(-half_mm, 0.0), at(0.0, -half_mm), at(half_mm, 0.0), at(0.0, half_mm)];
    canvas.path(&around, true);
    canvas.line(around[0], around[2]);
    canvas.line(around[1], around[3]);
    let number = mark.number.to_string();
    let gap_mm = half_mm + 0.8;
    let half_letter_mm = 0.5 * SMALL_MM;
    let (place, anchor) = match (mark.upright, is_upper) {
        (true, true) => (at(gap_mm, -half_letter_mm), Anchor::Start),
        (true, false) => (at(-gap_mm, -half_letter_mm), Anchor::End),
        (false, true) => (at(0.0, gap_mm), Anchor::Middle),
        (false, false) => (at(0.0, -gap_mm - SMALL_MM), Anchor::Middle),
    };
    canvas.turned(place, SMALL_MM, &number, 0.0, anchor);
}

/// Short lines that point at the corners of the frame from outside.
fn corners(canvas: &mut Canvas, frame: &Extent) {
    canvas.shade(0.0);
    canvas.pen(FINE_MM, &[]);
    let at = PointMm::new;
    for (x_mm, out_x) in [(frame.left_mm, -1.0), (frame.right_mm, 1.0)] {
        for (y_mm, out_y) in [(frame.bottom_mm, -1.0), (frame.top_mm, 1.0)] {
            canvas.line(at(x_mm + out_x, y_mm), at(x_mm + 4.0 * out_x, y_mm));
            canvas.line(at(x_mm, y_mm + out_y), at(x_mm, y_mm + 4.0 * out_y));
        }
    }
}
