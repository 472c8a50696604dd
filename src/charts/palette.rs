//! Colours: dark ink on warm paper, one accent, one colour of warning; for light, dark and print.

use plotters::style::RGBColor;

/// The colours of a drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Palette {
    /// The ground.
    pub paper: RGBColor,
    /// Text, marks and whatever must be read first.
    pub ink: RGBColor,
    /// Secondary text: tick labels, string numbers, remarks.
    pub faint: RGBColor,
    /// Hairlines that may be overlooked.
    pub grid: RGBColor,
    /// Fill of the region that the limits allow.
    pub band: RGBColor,
    /// The curve, the edges of the band, the selection.
    pub accent: RGBColor,
    /// Findings and the line at which a string breaks.
    pub warn: RGBColor,
    /// The design compared with.
    pub ghost: RGBColor,
    /// C strings.
    pub c_mark: RGBColor,
    /// F strings.
    pub f_mark: RGBColor,
}

const fn rgb(hex: u32) -> RGBColor {
    let [_, red, green, blue] = hex.to_be_bytes();
    RGBColor(red, green, blue)
}

impl Palette {
    /// Ink on paper.
    pub const fn light() -> Self {
        Self {
            paper: rgb(0xfaf8f3),
            ink: rgb(0x22262a),
            faint: rgb(0x5e6469),
            grid: rgb(0xe1ddd3),
            band: rgb(0xe6efe9),
            accent: rgb(0x0f6b62),
            warn: rgb(0xb3402a),
            ghost: rgb(0x7a7f84),
            c_mark: rgb(0xb0302e),
            f_mark: rgb(0x2a55a4),
        }
    }

    /// Chalk on a dark board.
    pub const fn dark() -> Self {
        Self {
            paper: rgb(0x16191c),
            ink: rgb(0xe7e4dc),
            faint: rgb(0xa0a5a8),
            grid: rgb(0x2d3236),
            band: rgb(0x1a2b2a),
            accent: rgb(0x5fc2b4),
            warn: rgb(0xf0876c),
            ghost: rgb(0x83898d),
            c_mark: rgb(0xf07f78),
            f_mark: rgb(0x86acf0),
        }
    }

    /// Ink on white, for files.
    pub const fn white() -> Self {
        Self { paper: rgb(0xffffff), ..Self::light() }
    }

    /// Greys, for any printer.
    pub const fn print() -> Self {
        Self {
            paper: rgb(0xffffff),
            ink: rgb(0x000000),
            faint: rgb(0x444444),
            grid: rgb(0xd0d0d0),
            band: rgb(0xececec),
            accent: rgb(0x3a3a3a),
            warn: rgb(0x000000),
            ghost: rgb(0x7a7a7a),
            c_mark: rgb(0x000000),
            f_mark: rgb(0x555555),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PALETTES: [Palette; 4] =
        [Palette::light(), Palette::dark(), Palette::white(), Palette::print()];

    /// Contrast ratio of two colours.
    ///
    /// Source: W3C, Web Content Accessibility Guidelines 2.1, definitions of relative luminance and
    /// contrast ratio (from memory).
    fn contrast(one: RGBColor, other: RGBColor) -> f64 {
        let linear = |channel: u8| {
            let c = f64::from(channel) / 255.0;
            if c <= 0.03928 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) }
        };
        let luminance =
            |c: RGBColor| 0.2126 * linear(c.0) + 0.7152 * linear(c.1) + 0.0722 * linear(c.2);
        let (a, b) = (luminance(one), luminance(other));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    #[test]
    fn black_on_white_has_the_greatest_contrast() {
        assert!((contrast(rgb(0x000000), rgb(0xffffff)) - 21.0).abs() < 1e-9);
    }

    #[test]
    fn texts_can_be_read_on_paper_and_on_the_band() {
        for p in PALETTES {
            for text in [p.ink, p.faint, p.warn, p.c_mark, p.f_mark] {
                for ground in [p.paper, p.band] {
                    let ratio = contrast(text, ground);
                    assert!(ratio >= 4.5, "{text:?} on {ground:?}: {ratio:.2}");
                }
            }
        }
    }

    /// The colours as they are under the marked string: `.picked` in style/main.css lies over the picture, a tenth of
    /// the accent.
    fn marked(p: Palette, colour: RGBColor) -> RGBColor {
        let through = |top: u8, below: u8| {
            let mixed = 0.1 * f64::from(top) + 0.9 * f64::from(below);
            #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 255")]
            let mixed = mixed.round() as u8;
            mixed
        };
        let RGBColor(red, green, blue) = colour;
        RGBColor(through(p.accent.0, red), through(p.accent.1, green), through(p.accent.2, blue))
    }

    #[test]
    fn texts_and_lines_stay_plain_where_a_string_is_marked() {
        for p in [Palette::light(), Palette::dark()] {
            let texts = [p.ink, p.faint, p.warn, p.c_mark, p.f_mark].map(|text| (text, 4.5));
            for (colour, least) in
                texts.into_iter().chain([p.accent, p.ghost].map(|line| (line, 3.0)))
            {
                for ground in [p.paper, p.band] {
                    let ratio = contrast(marked(p, colour), marked(p, ground));
                    assert!(ratio >= least, "{colour:?} on {ground:?}: {ratio:.2}");
                }
            }
        }
    }

    #[test]
    fn lines_can_be_seen_on_paper_and_on_the_band() {
        for p in PALETTES {
            for line in [p.accent, p.ghost] {
                for ground in [p.paper, p.band] {
                    let ratio = contrast(line, ground);
                    assert!(ratio >= 3.0, "{line:?} on {ground:?}: {ratio:.2}");
                }
            }
        }
    }
}
