//! The square code that a telephone scans, and the short mark that people compare.

use crate::design::sum::crc_32;

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

/// White modules that must surround the code (ISO/IEC 18004, from memory).
pub const QUIET_MODULES: usize = 4;
/// Sides in millimetres, the white edge included, at which a code may be printed.
pub const SIDES_MM: [f64; 3] = [36.0, 42.0, 52.0];
/// The least module that telephones read from paper in workshop light. Common practice, no source.
pub const LEAST_MODULE_MM: f64 = 0.4;
/// Modules this large are read with ease; more error correction is not bought with smaller ones.
/// Common practice, no source.
const EASY_MODULE_MM: f64 = 0.46;
/// The most bytes that the standard's largest code holds (ISO/IEC 18004, from memory).
const MOST_BYTES: usize = 2_953;

/// A square of dark and light modules, without the white edge.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Code {
    /// Modules along a side.
    pub modules: usize,
    /// Row by row from the top left.
    pub dark: Vec<bool>,
    /// Index into [`SIDES_MM`].
    pub side: usize,
}

impl Code {
    /// The code of a text: the smallest side, with the highest error correction, at which the modules
    /// are read with ease, or else that at which they can be read at all. `None` for a text too long
    /// for the largest side.
    pub fn of(text: &str) -> Option<Self> {
        if text.is_empty() || text.len() > MOST_BYTES {
            return None;
        }
        // On the smallest side only what need not give up correction.
        let quartile = [QrCodeEcc::High, QrCodeEcc::Quartile];
        let any = [QrCodeEcc::High, QrCodeEcc::Quartile, QrCodeEcc::Medium, QrCodeEcc::Low];
        let tries: [(usize, &[QrCodeEcc], f64); 5] = [
            (0, &quartile, EASY_MODULE_MM),
            (1, &any, EASY_MODULE_MM),
            (2, &any, EASY_MODULE_MM),
            (1, &any, LEAST_MODULE_MM),
            (2, &any, LEAST_MODULE_MM),
        ];
        tries.iter().find_map(|&(side, corrections, least_mm)| {
            corrections.iter().find_map(|&correction| at(text, correction, side, least_mm))
        })
    }

    /// Whether the module of a column and row is dark.
    pub fn is_dark(&self, column: usize, row: usize) -> bool {
        column < self.modules && self.dark.get(row * self.modules + column) == Some(&true)
    }

    /// The side in millimetres, the white edge included.
    pub fn side_mm(&self) -> f64 {
        SIDES_MM[self.side.min(SIDES_MM.len() - 1)]
    }
}

fn at(text: &str, correction: QrCodeEcc, side: usize, least_mm: f64) -> Option<Code> {
    let segments = QrSegment::make_segments(text);
    let code = QrCode::encode_segments_advanced(
        &segments,
        correction,
        Version::MIN,
        largest_version(SIDES_MM[side], least_mm),
        None,
        true,
    )
    .ok()?;
    let size = code.size();
    let dark = (0..size).flat_map(|y| (0..size).map(move |x| (x, y)));
    let dark = dark.map(|(x, y)| code.get_module(x, y)).collect();
    Some(Code { modules: usize::try_from(size).ok()?, dark, side })
}

/// The largest version whose modules are not too small on a side. Version v has 17 + 4v modules.
fn largest_version(side_mm: f64, least_mm: f64) -> Version {
    let fits = |version: &u8| {
        let modules = 17.0 + 4.0 * f64::from(*version) + 8.0;
        modules * least_mm <= side_mm
    };
    Version::new((1..=40).rev().find(fits).unwrap_or(1))
}

/// A short mark of a design, so that card and file can be compared: CRC-32 of what stands after the
/// `#` of its link, as `3F2A-91C0`. A link without `#` is taken whole.
pub fn design_mark(link: &str) -> String {
    let design = link.split_once('#').map_or(link, |(_, design)| design);
    let sum = crc_32(design.as_bytes());
    format!("{:04X}-{:04X}", sum >> 16, sum & 0xffff)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_module_is_too_small() {
        for length in [1, 100, 400, 900, 1_300] {
            let code = Code::of(&"a".repeat(length)).unwrap();
            let modules = u32::try_from(code.modules + 2 * QUIET_MODULES).unwrap();
            assert!(code.side_mm() / f64::from(modules) >= LEAST_MODULE_MM, "{length}");
        }
    }

    #[test]
    fn a_text_too_long_has_no_code() {
        for length in [0, 1_500, 2_953, 1_000_000] {
            assert_eq!(Code::of(&"a".repeat(length)), None, "{length}");
        }
    }

    #[test]
    fn the_mark_depends_on_the_design_not_on_where_the_page_lies() {
        assert_eq!(design_mark("http://localhost/#d=1"), design_mark("https://example.org/x#d=1"));
        assert_ne!(design_mark("#d=1"), design_mark("#d=2"));
        // The check value of CRC-32 (ISO 3309) over the digits 1 to 9, from memory.
        assert_eq!(design_mark("x#123456789"), "CBF4-3926");
    }
}
