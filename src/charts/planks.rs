//! How the roughly sawn pieces lie on planks and sheets, as the text of an SVG picture: one below the other, to one scale,
//! each piece with its name.

use std::fmt::Write as _;

use crate::design::display::decimals;
use crate::design::letters::escape;
use crate::design::wood_facts::wood_name;
use crate::engine::parts::cutting::{Blank, Nest};
use crate::words::parts_page as say;

/// How many times smaller than the planks the picture is.
const SCALE: f64 = 10.0;
/// Height of the letters and room between the planks, in mm of the picture.
const LETTER_MM: f64 = 3.4;
const ROOM_MM: f64 = 4.0;
/// Width of a letter as a share of its height, at most.
const LETTER_WIDE: f64 = 0.6;

/// All planks and sheets; `name` gives the name of a piece.
pub fn svg(blanks: &[Blank], nests: &[Nest], name: impl Fn(&Blank) -> String) -> String {
    let wide = nests.iter().map(|nest| nest.size.0.to_mm() / SCALE).fold(60.0, f64::max);
    let mut down = ROOM_MM;
    let mut inside = String::new();
    for nest in nests {
        let (long, across) = (nest.size.0.to_mm() / SCALE, nest.size.1.to_mm() / SCALE);
        for (at, board) in nest.boards.iter().enumerate() {
            let words = say::board_number(
                &nest.boards.len(),
                &(at + 1),
                &decimals(nest.thickness.to_mm(), 1),
                &wood_name(&nest.wood, &[]),
            );
            down += LETTER_MM;
            let _ =
                writeln!(inside, "<text x=\"{ROOM_MM}\" y=\"{down:.2}\">{}</text>", escape(&words));
            down += 0.4 * LETTER_MM;
            rectangle(&mut inside, (0.0, down), (long, across), "none");
            for lies in board {
                let Some(blank) = blanks.get(lies.blank) else { continue };
                let place = (lies.at.0.to_mm() / SCALE, down + lies.at.1.to_mm() / SCALE);
                let size = (lies.size.0.to_mm() / SCALE, lies.size.1.to_mm() / SCALE);
                rectangle(&mut inside, place, size, "#efe2c8");
                piece(&mut inside, place, size, &name(blank));
            }
            down += across + ROOM_MM;
        }
    }
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0:.2}mm\" height=\"{down:.2}mm\" \
         viewBox=\"0 0 {0:.2} {down:.2}\" font-family=\"sans-serif\" font-size=\"{LETTER_MM}\">\n\
         <rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n{inside}</svg>\n",
        wide + 2.0 * ROOM_MM
    )
}

fn rectangle(out: &mut String, at: (f64, f64), size: (f64, f64), fill: &str) {
    let _ = writeln!(
        out,
        "<rect x=\"{:.2}\" y=\"{:.2}\" width=\"{:.2}\" height=\"{:.2}\" fill=\"{fill}\" \
         stroke=\"#444444\" stroke-width=\"0.2\"/>",
        ROOM_MM + at.0,
        at.1,
        size.0,
        size.1
    );
}

/// The name of a piece within it, as large as it fits; too small to be read it is left to the title.
fn piece(out: &mut String, at: (f64, f64), size: (f64, f64), name: &str) {
    let count = name.chars().fold(0.0, |count, _| count + 1.0);
    let high = LETTER_MM.min(0.8 * size.1).min(size.0 / (LETTER_WIDE * count));
    let (x, y) = (ROOM_MM + at.0 + 0.5 * size.0, at.1 + 0.5 * size.1 + 0.35 * high);
    let name = escape(name);
    let text = if high < 0.35 * LETTER_MM { "" } else { &name };
    let _ = writeln!(
        out,
        "<text x=\"{x:.2}\" y=\"{y:.2}\" font-size=\"{high:.2}\" text-anchor=\"middle\">{text}<title>{name}</title></text>"
    );
}
