//! The days of settling: the plan of a harp, a log that stays with the design, a string weighed by ear, and the tuning
//! sheet in print.

use serde_json::json;

use crate::browser::{Browser, Screen};
use crate::server::Site;

const STEPS: &str = "return document.querySelectorAll('#settling-steps tr').length";
const SIDEWAYS: &str = "return Math.max(document.documentElement.scrollWidth - innerWidth,
    ...[...document.querySelectorAll('dialog')].map((one) => one.scrollWidth - one.clientWidth))";

async fn open(browser: &Browser, site: &Site) {
    browser.open_app(&site.url()).await;
    browser.click("#settling").await;
    browser.until("return document.querySelectorAll('#settling-steps tr').length > 0", "it").await;
}

/// Puts a text into the field of a group that is so labelled.
async fn write(browser: &Browser, group: &str, place: usize, text: &str) {
    let script = format!(
        "const field = document.querySelectorAll('{group} input[type=text]')[{place}];
         field.value = {}; field.dispatchEvent(new Event('input', {{ bubbles: true }}));
         return true",
        json!(text)
    );
    browser.ask(&script).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_harp_is_planned_and_its_log_stays_with_it() {
    let site = Site::of_build("/");
    for screen in [Screen::PHONE, Screen::LAPTOP.in_the_dark()] {
        let browser = Browser::open(screen).await;
        open(&browser, &site).await;
        assert_eq!(browser.ask(STEPS).await, 36);
        let told = browser.text("#settling-told").await;
        assert!(told.contains("rounds bring every string to within "), "{told}");
        assert!(told.contains("of its allowable load"), "{told}");
        assert!(browser.ask(SIDEWAYS).await.as_i64() <= Some(0), "{screen:?}");
        browser.check_barriers().await;
        browser.screenshot(&format!("settling-{}", screen.width)).await;
        // The last round lists every string too, by its degrees.
        let last = "const list = document.querySelector('#settling-round');
            list.value = list.options[list.options.length - 1].value;
            list.dispatchEvent(new Event('change', { bubbles: true }));
            return true";
        browser.ask(last).await;
        let degrees = "return document.querySelector('#settling-steps').textContent.includes('°')";
        browser.until(degrees, "degrees").await;

        // A reading by hand: what is no number is told, what is one is noted and stays.
        browser.ask("document.querySelector('#settling-log').open = true; return true").await;
        write(&browser, "#settling-log", 0, "flat").await;
        browser.click("#settling-note").await;
        let wrong = "return document.querySelector('#settling-noted').classList.contains('wrong')";
        browser.until(wrong, "what is wrong").await;
        write(&browser, "#settling-log", 0, "0").await;
        browser.click("#settling-note").await;
        let lines = "return document.querySelectorAll('#settling-lines tr').length === 1";
        browser.until(lines, "the line").await;
        assert!(browser.text("#settling-noted").await.starts_with("Noted:"));
        let kept = "return /^Kept/.test(document.querySelector('#kept').textContent)";
        browser.until(kept, "kept").await;
        open(&browser, &site).await;
        browser.ask("document.querySelector('#settling-log').open = true; return true").await;
        browser.until(lines, "the line again").await;
        browser.check_barriers().await;
        browser.screenshot(&format!("settling-log-{}", screen.width)).await;
        browser.click("#settling-back").await;
        let none = "return document.querySelectorAll('#settling-lines tr').length === 0";
        browser.until(none, "taken back").await;
        // The round to which the harp has come stays with it too.
        let second = "const list = document.querySelector('#settling-round'); list.value = '1';
            list.dispatchEvent(new Event('change', { bubbles: true })); return true";
        browser.ask(second).await;
        open(&browser, &site).await;
        let round = "return document.querySelector('#settling-round').value === '1'";
        browser.until(round, "the round again").await;
        browser.check_console().await;
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_string_is_weighed_by_ear() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    open(&browser, &site).await;
    browser.ask("document.querySelector('#settling-ear').open = true; return true").await;
    for (place, text) in ["500 mm", "40 N", "200"].into_iter().enumerate() {
        write(&browser, "#settling-ear", place, text).await;
    }
    // Waves run at 200 m/s on half a metre that sounds 200 Hz, so 40 N need 1 g/m.
    assert_eq!(browser.text("#settling-weighed").await, "1.000 ± 0.0054 g/m.");
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_tuning_sheet_prints_on_a4_and_letter() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#tuning-sheet").await;
    browser.until("return Boolean(document.querySelector('#print-root .paper'))", "it").await;
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
        let pdf = browser.print(&format!("tuning-{paper}")).await;
        for page in pdf.page_sizes_mm() {
            assert!((page.0 - size.0).abs() < 0.6 && (page.1 - size.1).abs() < 0.6, "{page:?}");
        }
        let text = pdf.text();
        for words in ["TUNING SHEET", "raised to", "round", "440.00", "Take care."] {
            assert!(text.contains(words), "{paper} lacks: {words}\n{text}");
        }
        let _ = pdf.page(1, 70);
    }
    browser.check_console().await;
}
