//! The whole harp from the side, from the front and from above, as the text of an SVG picture that stands alone: parts that
//! are seen as full lines, what lies inside the soundbox as dashed ones, and the strings.

mod order;

use std::fmt::Write as _;

use kurbo::BezPath;

use self::order::{Body, farthest_first};
use crate::design::letters::escape;
use crate::engine::geometry::Band;
use crate::engine::parts::grips::Pull;
use crate::engine::parts::{Cell, Kind, Part, Spot, Whole, flat, hull};
use crate::engine::pitch::Letter;
use crate::engine::structure::frame::Point;
use crate::words::{Words, parts as say};

/// How many times smaller than the harp the picture is.
pub const SCALE: f64 = 10.0;
/// White round the views and between them, and height of the letters, on paper.
const ROOM_MM: f64 = 8.0;
const LETTER_MM: f64 = 4.2;
/// The sheet is at least so wide, for its title.
const LEAST_SHEET_MM: f64 = 110.0;
/// The words below a view take about so much for each letter.
const PER_LETTER_MM: f64 = 0.57 * LETTER_MM;
/// Widths of lines on paper.
const SEEN_MM: f64 = 0.25;
const HIDDEN_MM: f64 = 0.13;
const STRING_MM: f64 = 0.13;

/// From where the harp is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// From the strings' side.
    Side,
    /// From the pillar.
    Front,
    /// From above.
    Plan,
}

impl View {
    /// To the right, upward, and towards the eye, in mm on paper.
    fn seen(self, at: Spot) -> (f64, f64, f64) {
        let [x, y, z] = at.map(|m| 1e3 / SCALE * m);
        match self {
            Self::Side => (x, y, z),
            Self::Front => (z, y, -x),
            Self::Plan => (x, -z, y),
        }
    }

    const fn title(self) -> Words {
        match self {
            Self::Side => say::FROM_SIDE,
            Self::Front => say::FROM_FRONT,
            Self::Plan => say::FROM_ABOVE,
        }
    }
}

/// Whether a part lies inside the soundbox.
const fn is_inside(kind: Kind) -> bool {
    matches!(
        kind,
        Kind::Rib
            | Kind::CrossBar
            | Kind::LongBar
            | Kind::FrontLiner
            | Kind::BackLiner
            | Kind::SideBrace
            | Kind::BackBrace
            | Kind::FootBlock
            | Kind::KneeBlock
    )
}

/// What a part covers in a view.
struct Shadow {
    points: Vec<(f64, f64)>,
    is_inside: bool,
    key: &'static str,
}

/// The shadows of all parts: the farthest first, and what lies inside over it all.
fn shadows(whole: &Whole, view: View) -> Vec<Shadow> {
    let (mut seen, mut inside) = (Vec::new(), Vec::new());
    let mut bodies = Vec::new();
    for part in &whole.parts {
        let Some(cell) = part.cells.first() else { continue };
        let corners = part.body().iter().flat_map(Cell::corners).map(|at| view.seen(at));
        let around = hull(corners.map(|at| (at.0, at.1)).collect());
        let (kind, key) = (part.name.kind, part.name.kind.key());
        if is_inside(kind) {
            inside.push(Shadow { points: around, is_inside: true, key });
            continue;
        }
        // Of the curved neck the outline itself is seen from the side; all else has no inward corners.
        let points = if kind == Kind::Neck && view == View::Side {
            cell.near.iter().map(|at| view.seen(*at)).map(|at| (at.0, at.1)).collect()
        } else {
            around.clone()
        };
        let face = |face: Vec<Spot>| face.into_iter().map(|at| view.seen(at)).collect();
        let faces = part.body().iter().flat_map(Cell::faces).map(face).collect();
        bodies.push(Body { around, faces });
        seen.push(Some(Shadow { points, is_inside: false, key }));
    }
    let order = farthest_first(&bodies);
    order.into_iter().filter_map(|at| seen[at].take()).chain(inside).collect()
}

/// The bounds of all parts in a view: left, low, right, high.
fn bounds(whole: &Whole, view: View) -> Bounds {
    let none = (f64::INFINITY, f64::INFINITY, f64::NEG_INFINITY, f64::NEG_INFINITY);
    let corners = whole.parts.iter().flat_map(|part| &part.cells).flat_map(|cell| cell.corners());
    corners
        .map(|at| view.seen(at))
        .fold(none, |all, at| (all.0.min(at.0), all.1.min(at.1), all.2.max(at.0), all.3.max(at.1)))
}

/// The left, low, right and high bounds of a view.
type Bounds = (f64, f64, f64, f64);

/// Where the views lie on their sheet, in mm: the side, the front beside it, and the plan below.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheet {
    /// Width and height.
    pub size_mm: (f64, f64),
    views: [(View, Bounds, (f64, f64)); 3],
}

impl Sheet {
    /// Of a harp.
    pub fn of(whole: &Whole) -> Self {
        let of = [View::Side, View::Front, View::Plan].map(|view| (view, bounds(whole, view)));
        let (side, front, plan) = (of[0].1, of[1].1, of[2].1);
        let wide = |b: Bounds| b.2 - b.0;
        let high = |b: Bounds| b.3 - b.1;
        let head = ROOM_MM + 3.0 * LETTER_MM;
        let line = 4.0 * LETTER_MM;
        #[expect(clippy::cast_precision_loss, reason = "a count of letters")]
        let taken = |b: Bounds| wide(b).max(PER_LETTER_MM * sizes(b).chars().count() as f64);
        let all_wide = 3.0 * ROOM_MM + taken(side) + taken(front);
        let all_high = head + high(side) + line + ROOM_MM + high(plan) + line + ROOM_MM;
        let level = head + high(side);
        let origins = [
            (ROOM_MM - side.0, level + side.1),
            (2.0 * ROOM_MM + taken(side) - front.0, level + front.1),
            (ROOM_MM - plan.0, level + line + ROOM_MM + high(plan) + plan.1),
        ];
        let [one, two, three] = of;
        let views = [
            (one.0, one.1, origins[0]),
            (two.0, two.1, origins[1]),
            (three.0, three.1, origins[2]),
        ];
        Self { size_mm: (all_wide.max(LEAST_SHEET_MM), all_high), views }
    }

    /// Where a place of the harp is seen in a view, from the upper left corner.
    pub fn place(&self, view: View, at: Spot) -> (f64, f64) {
        let (right, down, _) = view.seen(at);
        let own = self.views.iter().find(|own| own.0 == view);
        let origin = own.map(|own| own.2).unwrap_or_default();
        (origin.0 + right, origin.1 - down)
    }
}

/// The view in which a size is pulled.
pub const fn view_of(pull: Pull) -> View {
    match pull {
        Pull::PillarDepth
        | Pull::BoardLow
        | Pull::BoardHigh
        | Pull::HoleWidth
        | Pull::Base
        | Pull::Feet => View::Front,
        Pull::NeckThickness | Pull::BaseBehind => View::Plan,
        _ => View::Side,
    }
}

/// The three views on one sheet.
pub fn svg(whole: &Whole, band: &Band, letters: &[Option<Letter>], title: &str) -> String {
    let sheet = Sheet::of(whole);
    let (all_wide, all_high) = sheet.size_mm;
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0:.2}mm\" height=\"{1:.2}mm\" \
         viewBox=\"0 0 {0:.2} {1:.2}\" font-family=\"sans-serif\" font-size=\"{LETTER_MM}\">\n",
        all_wide, all_high
    );
    let name = escape(title);
    let _ = writeln!(out, "<title>{name}</title>");
    let _ = writeln!(out, "<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>");
    let _ = writeln!(
        out,
        "<text x=\"{ROOM_MM}\" y=\"{:.2}\">{name}; 1:{SCALE:.0}</text>",
        ROOM_MM + LETTER_MM
    );
    for (view, bounds, origin) in sheet.views {
        draw(&mut out, whole, band, letters, (view, bounds), origin);
    }
    out.push_str("</svg>\n");
    out
}

/// A view with its words: what it is, and how wide and high the harp is.
fn draw(
    out: &mut String,
    whole: &Whole,
    band: &Band,
    letters: &[Option<Letter>],
    (view, bounds): (View, Bounds),
    (right, down): (f64, f64),
) {
    let at = |(u, v): (f64, f64)| format!("{:.2},{:.2}", right + u, down - v);
    let path = |points: &[(f64, f64)]| {
        let all: Vec<String> = points.iter().map(|point| at(*point)).collect();
        format!("M{}Z", all.join("L"))
    };
    let shadows = shadows(whole, view);
    out.push_str("<g stroke-linejoin=\"round\">\n");
    for shadow in &shadows {
        let look = if shadow.is_inside {
            format!(
                "fill=\"none\" stroke=\"#666666\" stroke-width=\"{HIDDEN_MM}\" stroke-dasharray=\"1 0.6\""
            )
        } else {
            format!("fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\"{SEEN_MM}\"")
        };
        let _ = writeln!(
            out,
            "<path data-part=\"{}\" {look} d=\"{}\"/>",
            shadow.key,
            path(&shadow.points)
        );
    }
    for part in whole.parts.iter().filter(|part| !part.openings.is_empty()) {
        for opening in &part.openings {
            let _ = writeln!(
                out,
                "<path fill=\"none\" stroke=\"#666666\" stroke-width=\"{HIDDEN_MM}\" d=\"{}\"/>",
                path(&round(part, opening, view))
            );
        }
    }
    let seen = |at: Point| {
        let seen = view.seen([at.x.to_m(), at.y.to_m(), 0.0]);
        (seen.0, seen.1)
    };
    for (string, letter) in band.strings.iter().zip(letters) {
        let Ok(placed) = string else { continue };
        let (colour, wide) = match letter {
            Some(Letter::C) => ("#b00020", 2.0 * STRING_MM),
            Some(Letter::F) => ("#000000", 2.0 * STRING_MM),
            _ => ("#777777", STRING_MM),
        };
        let all = [placed.hole.board, placed.bridge, placed.tuning].map(|point| at(seen(point)));
        let _ = writeln!(
            out,
            "<path fill=\"none\" stroke=\"{colour}\" stroke-width=\"{wide}\" d=\"M{}\"/>",
            all.join("L")
        );
    }
    out.push_str("</g>\n");
    for (line, words) in [(1.6, view.title().said()), (2.9, &sizes(bounds))] {
        let _ = writeln!(
            out,
            "<text x=\"{:.2}\" y=\"{:.2}\">{}</text>",
            right + bounds.0,
            down - bounds.1 + line * LETTER_MM,
            escape(words)
        );
    }
}

/// How wide and how high a view is, in words.
fn sizes(bounds: Bounds) -> String {
    let real = |paper: f64| format!("{:.0}", SCALE * paper);
    say::view(&real(bounds.3 - bounds.1), &real(bounds.2 - bounds.0))
}

/// An opening as it is seen.
fn round(part: &Part, opening: &BezPath, view: View) -> Vec<(f64, f64)> {
    let corners = flat(opening).into_iter().map(|at| view.seen(part.place(at, 0.0)));
    corners.map(|at| (at.0, at.1)).collect()
}
