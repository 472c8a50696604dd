//! Reads what was printed: the words and the size of a PDF, the picture of a page, the QR codes in a picture.

use image::GrayImage;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A printed document.
pub struct Pdf {
    pub path: PathBuf,
}

impl Pdf {
    pub const fn at(path: PathBuf) -> Self {
        Self { path }
    }

    /// All its words, as they lie on the page; a form feed ends each page.
    pub fn text(&self) -> String {
        run(Command::new("pdftotext").args(["-layout", "-enc", "UTF-8"]).arg(&self.path).arg("-"))
    }

    /// Width and height of every page, in millimetres.
    pub fn page_sizes_mm(&self) -> Vec<(f64, f64)> {
        let info = run(Command::new("pdfinfo").args(["-l", "9999"]).arg(&self.path));
        let sizes =
            info.lines().filter(|line| line.starts_with("Page ") && line.contains(" size:"));
        sizes
            .map(|line| {
                let points = line.split_whitespace().filter_map(|word| word.parse::<f64>().ok());
                // The first number is the page's own.
                let mm: Vec<f64> = points.skip(1).map(|points| points * 25.4 / 72.0).collect();
                (mm[0], mm[1])
            })
            .collect()
    }

    /// The picture of a page, the first being 1, kept beside the document as a PNG.
    pub fn page(&self, number: usize, dots_per_inch: u32) -> GrayImage {
        let stem = self.path.with_extension(format!("{number}"));
        let (number, dots) = (number.to_string(), dots_per_inch.to_string());
        run(Command::new("pdftoppm")
            .args(["-png", "-singlefile", "-f", &number, "-l", &number, "-r", &dots])
            .arg(&self.path)
            .arg(&stem));
        picture(&PathBuf::from(format!("{}.png", stem.display())))
    }
}

/// A PNG in shades of grey.
pub fn picture(path: &Path) -> GrayImage {
    image::open(path).unwrap_or_else(|e| panic!("{}: {e}", path.display())).to_luma8()
}

/// What the QR codes in a picture say.
pub fn qr_codes(picture: GrayImage) -> Vec<String> {
    let mut picture = rqrr::PreparedImage::prepare(picture);
    let found = picture.detect_grids();
    found
        .iter()
        .map(|code| code.decode().unwrap_or_else(|e| panic!("a QR code cannot be read: {e}")).1)
        .collect()
}

fn run(command: &mut Command) -> String {
    let output =
        command.output().unwrap_or_else(|e| panic!("{command:?}: {e}; scripts/test installs it"));
    assert!(output.status.success(), "{command:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8_lossy(&output.stdout).into_owned()
}

/// What the one QR code on a printed page says. Scanned at several resolutions, as a phone does
/// by moving.
pub fn qr_in_page(pdf: &Pdf, number: usize) -> String {
    for dots_per_inch in [300, 400, 350, 250, 600] {
        let mut picture = rqrr::PreparedImage::prepare(pdf.page(number, dots_per_inch));
        let read = picture.detect_grids().iter().find_map(|code| code.decode().ok());
        if let Some((_, text)) = read {
            return text;
        }
    }
    panic!("no QR code can be read on page {number} of {}", pdf.path.display());
}
