//! The harp strung one string at a time: large figures, buttons and keys, and ticks that stay with the design.

use fantoccini::key::Key;
use serde_json::json;

use crate::browser::{Browser, Screen, keep};
use crate::server::Site;
use crate::touch::TABLET;

const SIDEWAYS: &str = "return Math.max(document.documentElement.scrollWidth - innerWidth,
    ...[...document.querySelectorAll('dialog')].map((one) => one.scrollWidth - one.clientWidth))";
const NUMBER: &str = "return document.querySelector('.strung-number').textContent";
const PRESSED: &str = "return document.querySelector('#strung-tick').ariaPressed";

async fn open(browser: &Browser) {
    browser.click("#string-harp").await;
    let _ = browser.find("#strung .strung-string").await;
}

async fn shows_row(browser: &Browser, number: usize) {
    browser.until(&format!("{NUMBER} === '{number}'"), "the string").await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn strings_are_ticked_one_by_one_and_the_ticks_stay() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::PHONE).await;
    browser.open_app(&site.url()).await;
    open(&browser).await;
    // In the order of the plan under Settling, which takes bass and treble in turns on this frame.
    assert_eq!(browser.ask(NUMBER).await, "36");
    assert_eq!(browser.text("#strung-progress").await, "0 of 36 strings on and tuned up");
    assert_eq!(browser.ask("return document.activeElement.id").await, "strung-tick");
    browser.press(" ").await;
    browser.until(&format!("{PRESSED} === 'true'"), "the space bar ticks").await;
    browser.press(&Key::Right.to_string()).await;
    shows_row(&browser, 1).await;
    assert_eq!(browser.ask(PRESSED).await, "false");
    browser.click("#strung-tick").await;
    browser.click("#strung-next").await;
    shows_row(&browser, 35).await;
    browser.click("#strung-back").await;
    shows_row(&browser, 1).await;
    assert_eq!(browser.text("#strung-progress").await, "2 of 36 strings on and tuned up");
    // A tick that went wrong is taken back.
    browser.click("#strung-next").await;
    browser.click("#strung-tick").await;
    browser.click("#strung-tick").await;
    assert_eq!(browser.ask(PRESSED).await, "false");
    browser.check_console().await;

    // The sample became a design of this browser, and the ticks are there again.
    let kept = "return /^Kept/.test(document.querySelector('#kept').textContent)";
    browser.until(kept, "kept").await;
    browser.open_app(&site.url()).await;
    open(&browser).await;
    shows_row(&browser, 35).await;
    assert_eq!(browser.text("#strung-progress").await, "2 of 36 strings on and tuned up");
    browser.press(&Key::Left.to_string()).await;
    shows_row(&browser, 1).await;
    assert_eq!(browser.ask(PRESSED).await, "true");
    browser.click(".window-head button").await;

    // Another gauge: the tick was for another string, and says for which.
    open(&browser).await;
    assert_eq!(browser.text("#strung-easier").await, "");
    browser.ask("const order = document.querySelector('.strung-order select'); order.value = '1'; order.dispatchEvent(new Event('change'))").await;
    shows_row(&browser, 2).await;
    let easier = "This order is easier on the frame: Bass and treble in turns.";
    assert_eq!(browser.text("#strung-easier").await, easier);
    browser.click("#strung-tick").await;
    browser.click(".window-head button").await;

    // One harp has one order: what was chosen here is that of the plan, and the other way round.
    const PLANNED: &str = "return document.querySelector('#settling-plan select').value";
    browser.click("#settling").await;
    let _ = browser.find("#settling-steps tr").await;
    assert_eq!(browser.ask(PLANNED).await, "1");
    browser.click(".window-head button").await;
    browser.click("#cell-1-3").await;
    browser.press("0.77").await;
    browser.press(&Key::Enter.to_string()).await;
    open(&browser).await;
    shows_row(&browser, 2).await;
    let said = browser.text("#strung-other").await;
    assert!(said.starts_with("Ticked for another string: ") && said.contains("0.77"), "{said}");
    assert_eq!(browser.ask(PRESSED).await, "false");
    assert_eq!(browser.text("#strung-progress").await, "2 of 36 strings on and tuned up");
    browser.check_barriers().await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_string_in_large_letters_fits_every_screen() {
    let browser = Browser::open(Screen::PHONE).await;
    let mut sites = Vec::new(); // a new address is a page that knows nothing yet
    for screen in [Screen::PHONE, TABLET, Screen::LAPTOP] {
        for screen in [screen, screen.in_the_dark()] {
            let site = Site::of_build("/");
            browser.look_with(screen).await;
            browser.open_app(&site.url()).await;
            sites.push(site);
            open(&browser).await;
            browser.click("#strung-tick").await;
            browser.check_barriers().await;
            assert!(browser.ask(SIDEWAYS).await.as_i64() <= Some(0), "{screen:?}");
            // All that the hand needs is in sight at once.
            let hidden = "return ['.strung-name', '.strung-main', '#strung-tick', '#strung-next'].filter((css) => {
                const { top, bottom } = document.querySelector(css).getBoundingClientRect();
                return top < 0 || bottom > innerHeight;
            })";
            assert_eq!(browser.ask(hidden).await, json!([]), "{screen:?}");
            let picture = browser.client.screenshot().await.unwrap();
            let light = if screen.dark { "dark" } else { "light" };
            keep(&format!("e2e/stringing-{}-{light}.png", screen.width), &picture);
        }
    }
}
