//! The square code that a telephone scans, and the short mark that people compare.

use crate::design::document::Design;
use crate::design::link::check_sum;

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

/// A short mark of a design, so that card and file can be compared: its check sum, as `3F2A-91C0`. Every design
/// has one, also one that is too large for a link.
pub fn design_mark(design: &Design) -> String {
    let sum = check_sum(design);
    format!("{:04X}-{:04X}", sum >> 16, sum & 0xffff)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::edit::{Edit, Field};
    use crate::design::link::{self, LinkError};
    use crate::design::persist;
    use crate::design::presets::SAMPLES;

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
    fn every_design_has_a_mark_of_its_own() {
        let small = SAMPLES[0].design();
        let mut large = small.clone();
        // Letters in no order do not pack, so that this design is too large for a link.
        let mut state = 7_u32;
        let letters = (0..90_000).map(|_| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            char::from(b'!' + state.to_be_bytes()[0] % 90)
        });
        large.remarks = letters.collect();
        assert_eq!(link::write(&large), Err(LinkError::TooLarge));
        let mut other = large.clone();
        other.remarks.replace_range(5..6, " ");
        let marks = [&small, &SAMPLES[1].design(), &large, &other].map(design_mark);
        for (index, mark) in marks.iter().enumerate() {
            let (high, low) = mark.split_once('-').unwrap();
            assert!([high, low].iter().all(|half| half.len() == 4), "{mark}");
            assert_ne!(mark, "0000-0000");
            assert!(!marks[..index].contains(mark), "{mark} twice");
        }
    }

    #[test]
    fn the_mark_is_that_of_the_design_as_it_is_now() {
        let design = SAMPLES[0].design();
        let mark = design_mark(&design);
        let read = persist::read(&persist::write(&design)).unwrap();
        assert_eq!(design_mark(&read), mark, "opened from its file");
        let linked = link::read(&link::write(&design).unwrap()).unwrap();
        assert_eq!(design_mark(&linked), mark, "opened from its link");
        let kept = Edit::KeepVersion { name: "one".to_owned(), date: String::new() }.apply(&design);
        assert_eq!(design_mark(&kept), mark, "with a version beside it");
        let title = Edit::Text { field: Field::Title, text: "Another".to_owned() };
        assert_ne!(design_mark(&title.apply(&design)), mark, "under another name");
    }
}
