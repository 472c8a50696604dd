//! Printing: the design report, what is open when the browser is asked to print, and pictures of curves and drawing.

use serde_json::json;

use crate::browser::{Browser, Screen};
use crate::paper::Pdf;
use crate::server::Site;

/// Begins every caution.
const CAUTION: &str = "Take care.";

async fn open(screen: Screen) -> (Site, Browser) {
    let site = Site::of_build("/");
    let browser = Browser::open(screen).await;
    browser.open_app(&site.url()).await;
    // A design of one's own, with a name and a date.
    browser.fill("#title", "Bench harp").await;
    (site, browser)
}

/// The share of a page's picture that is not white, in thousandths.
fn ink(pdf: &Pdf, page: usize) -> usize {
    let picture = pdf.page(page, 60);
    let dark = picture.pixels().filter(|pixel| pixel.0[0] < 160).count();
    1_000 * dark / (picture.len().max(1))
}

/// Every page has words or lines on it, and is of one size.
fn check_pages(pdf: &Pdf, what: &str, size_mm: (f64, f64)) -> usize {
    let sizes = pdf.page_sizes_mm();
    for (index, size) in sizes.iter().enumerate() {
        assert!((size.0 - size_mm.0).abs() < 0.6, "{what}: {sizes:?}");
        assert!((size.1 - size_mm.1).abs() < 0.6, "{what}: {sizes:?}");
        assert!(ink(pdf, index + 1) > 0, "{what}: page {} is blank", index + 1);
    }
    sizes.len()
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_design_report_prints_whole_on_a4_and_letter() {
    let (site, browser) = open(Screen::LAPTOP.in_the_dark()).await;
    browser.click("#report").await;
    browser.until("return Boolean(document.querySelector('#print-root .paper'))", "it").await;
    browser.screenshot("report-on-screen").await;
    for (paper, size) in [("A4", (210.0, 297.0)), ("Letter", (215.9, 279.4))] {
        let choose = format!(
            "const list = document.querySelector('#paper');
             list.value = {};
             list.dispatchEvent(new Event('change', {{ bubbles: true }}));
             return true",
            json!(paper)
        );
        browser.ask(&choose).await;
        let class =
            format!("return Boolean(document.querySelector('.paper--{}'))", paper.to_lowercase());
        browser.until(&class, paper).await;
        // Nothing is cut: neither a line at its right end, nor a part at the foot of its page.
        let cut = browser
            .ask(
                "return [...document.querySelectorAll('#print-root .line')]
                   .filter((line) => line.scrollWidth > line.clientWidth + 1)
                   .map((line) => line.textContent)",
            )
            .await;
        assert_eq!(cut, json!([]), "{paper}: cut lines");
        let over = browser
            .ask(
                "return [...document.querySelectorAll('#print-root .paper')].flatMap((page) => {
                   const foot = page.querySelector('.card-foot');
                   const low = (foot ?? page).getBoundingClientRect()[foot ? 'top' : 'bottom'];
                   return [...page.children].filter((part) => part !== foot
                     && part.getBoundingClientRect().bottom > low + 1).map((part) => part.className);
                 })",
            )
            .await;
        assert_eq!(over, json!([]), "{paper}: parts beyond the foot of their page");
        let pages = browser.ask("return document.querySelectorAll('.paper').length").await;
        let pdf = browser.print(&format!("report-{paper}")).await;
        assert_eq!(json!(check_pages(&pdf, paper, size)), pages, "{paper}");
        let text = pdf.text();
        for words in [
            "Bench harp",
            "DESIGN REPORT", // set in capitals
            "Total tension",
            "String chart",
            "Curves, bass at the left",
            "Load share",
            "Drawing from the side",
            "Loads, estimated",
            "Assumptions",
            "Findings",
            "Sources of the numbers",
            "Printed on",
            CAUTION,
            "local rules and qualified practice come first",
        ] {
            assert!(text.contains(words), "{paper} lacks: {words}\n{text}");
        }
        let last = format!("page {pages} of {pages}");
        assert!(text.contains(&last), "{last}");
    }
    browser.click("#close-card").await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn every_view_prints_as_a_paper() {
    let (site, browser) = open(Screen::LAPTOP).await;
    browser.click("#versions-view").await;
    browser.fill("#versions input", "First draft").await;
    browser.click("#keep-version").await;
    let _ = browser.find("#totals").await;
    browser.click("#chart-view").await;
    browser.click("#cell-4-1").await;
    browser.press("222").await;
    browser.press("\u{e007}").await;
    for (button, name, own) in [
        ("#chart-view", "chart", "String chart"),
        ("#drawing", "drawing", "Drawing from the side"),
        ("#choose-view", "choose", "String chart"),
        ("#order-view", "order", "ORDER LIST"),
        ("#versions-view", "versions", "First draft"),
    ] {
        browser.click(button).await;
        browser.until("return !document.querySelector('.coming')", "the view").await;
        // The parts come by themselves; the paper is laid when the browser is about to print.
        browser
            .until(
                "dispatchEvent(new Event('beforeprint'));
                 return Boolean(document.querySelector('#print-root .paper'))",
                "the papers",
            )
            .await;
        browser.ask("dispatchEvent(new Event('afterprint')); return 1").await;
        assert_eq!(browser.count("#print-root *").await, 0, "nothing stays behind");
        let pdf = browser.print(&format!("view-{name}")).await;
        assert!(check_pages(&pdf, name, (210.0, 297.0)) > 0);
        let text = pdf.text();
        assert!(text.contains("Bench harp") && text.contains(own), "{name}:\n{text}");
        if name != "order" {
            assert!(text.contains("Printed on") && text.contains(CAUTION), "{name}:\n{text}");
        }
    }
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn curves_and_drawing_are_saved_as_pictures() {
    let (site, browser) = open(Screen::LAPTOP).await;
    let folder = browser.allow_downloads("pictures").await;
    browser.click(".choose summary").await;
    browser.click("#curves-svg").await;
    let svg = browser.downloaded(&folder.join("bench-harp.curves.svg")).await;
    let svg = String::from_utf8(svg).expect("SVG is text");
    for words in ["<svg xmlns=", "Tension", "Bench harp.", "Strings and frames under load"] {
        assert!(svg.contains(words), "{words}: {svg}");
    }
    browser.click("#curves-png").await;
    let png = browser.downloaded(&folder.join("bench-harp.curves.png")).await;
    let picture = image::load_from_memory(&png).expect("a PNG").to_luma8();
    assert_eq!(picture.width(), 1_920, "twice the picture's width");
    assert!(picture.pixels().any(|pixel| pixel.0[0] < 80), "something is drawn");
    browser.click("#drawing").await;
    browser.click("#group-files").await;
    browser.click("#drawing-svg").await;
    let svg = browser.downloaded(&folder.join("bench-harp.drawing.svg")).await;
    assert!(String::from_utf8(svg).expect("SVG is text").contains("<path"));
    browser.click("#drawing-png").await;
    let png = browser.downloaded(&folder.join("bench-harp.drawing.png")).await;
    let picture = image::load_from_memory(&png).expect("a PNG").to_luma8();
    assert!(picture.pixels().filter(|pixel| pixel.0[0] < 80).count() > 1_000);
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}
