//! A new harp in its window: few actions, by the keyboard alone, and nothing typed is lost.

use fantoccini::key::Key;

use crate::browser::{Browser, Screen, keep};
use crate::server::Site;

const ROWS: &str = "return document.querySelectorAll('#chart tbody tr').length";
const NO_WINDOW: &str = "return !document.querySelector('dialog[open]')";
const FIELDS: &str = "return [...document.querySelectorAll('.new-harp .field :is(input, select)')].map(f => f.value)";
const FACTS: &str = "return document.querySelector('#new-facts').innerText";

const COUNT: &str = ".new-harp fieldset:first-of-type > label:nth-of-type(3) input";

async fn fields(browser: &Browser) -> Vec<String> {
    let all = browser.ask(FIELDS).await;
    let all = all.as_array().expect("a list of fields");
    all.iter().map(|value| value.as_str().expect("a text").to_owned()).collect()
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn four_actions_lead_to_a_strung_harp_of_30_strings() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    // New, lever harp of nylon (which is chosen already), 30 strings, Start.
    browser.click("#new").await;
    assert_eq!(fields(&browser).await[..2], ["Lever harp", "Nylon"]);
    browser.fill(COUNT, "30").await;
    assert_eq!(fields(&browser).await[3..5], ["G2", "A6"], "the ends follow");
    assert_eq!(browser.text("#new-findings").await, "No findings on the strings.");
    browser.screenshot("new-harp").await;
    browser.check_barriers().await;
    browser.click("#start-harp").await;
    browser.until(&format!("{ROWS} === 30"), "30 strings").await;
    assert_eq!(browser.count(".finding").await, 0);
    let title = "return document.querySelector('#title').value";
    assert_eq!(browser.ask(title).await, "Lever harp, 30 strings");

    // Once it was worked on, the next one of the same name gets a number.
    browser.click("#cell-0-1").await;
    browser.press("105").await;
    browser.press(&Key::Enter.to_string()).await;
    browser.click("#new").await;
    browser.fill(COUNT, "30").await;
    browser.click("#start-harp").await;
    browser.until(&format!("{title} === 'Lever harp, 30 strings, no. 2'"), "a number").await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_window_works_by_keyboard_and_keeps_what_was_typed() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#new").await;
    browser
        .until("return document.activeElement.name === 'way'", "the keyboard in the window")
        .await;
    // Kind, material, number: the three fields after the way to begin.
    let tab = Key::Tab.to_string();
    browser.press(&tab).await;
    browser.press("W").await;
    assert_eq!(fields(&browser).await[0], "Wire-strung harp");
    browser.press(&tab).await;
    browser.press(&tab).await;
    browser.press(&(Key::Control + "a")).await;
    browser.press("26").await;
    let before = fields(&browser).await;
    assert_eq!(
        before[..5],
        ["Wire-strung harp", "Yellow brass", "26", "C3", "G6"].map(str::to_owned)
    );
    // The other end follows the ends: a string fewer at the top.
    browser.press(&(tab.clone() + &tab)).await;
    browser.press(&(Key::Control + "a")).await;
    browser.press("F6").await;
    let typed = fields(&browser).await;
    assert_eq!(typed[2], "25");
    // What cannot be used is said, and Start does nothing.
    browser.press("x").await;
    assert!(browser.text("#new-wrong").await.starts_with("Highest string: "));
    browser.press(&Key::Enter.to_string()).await;
    assert_eq!(browser.count("dialog[open]").await, 1);
    browser.press(&Key::Backspace.to_string()).await;
    // Escape closes; what was typed is there again.
    browser.press(&Key::Escape.to_string()).await;
    browser.until(NO_WINDOW, "a closed window").await;
    browser.click("#new").await;
    assert_eq!(fields(&browser).await, typed);
    assert!(browser.ask(FACTS).await.as_str().expect("a text").contains("C3 to F♯6, 25 strings"));
    // The return key in a field starts.
    browser.fill(COUNT, "22").await;
    browser.press(&Key::Enter.to_string()).await;
    browser.until(&format!("{ROWS} === 22"), "22 strings").await;
    assert_eq!(browser.count(".finding").await, 0);
    // Used, so the window begins afresh.
    browser.click("#new").await;
    assert_eq!(fields(&browser).await[0], "Lever harp");
    browser.check_console().await;
}

/// It was called kept; so it is not gone when something else is opened.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_new_harp_that_is_left_unchanged_waits_in_the_bin() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#new").await;
    browser.fill(COUNT, "22").await;
    browser.click("#start-harp").await;
    browser.until(&format!("{ROWS} === 22"), "22 strings").await;
    browser
        .until("return document.querySelector('#kept').innerText.startsWith('Kept ')", "kept")
        .await;
    browser.click("#new").await;
    browser.click("#ways input[value=sample]").await;
    browser.click(".samples li button").await;
    browser.until(NO_WINDOW, "a closed window").await;
    let told = "return document.querySelector('.notice')?.innerText.includes('is now in the bin')";
    browser.until(told, "where it is").await;
    browser.click("#shelf").await;
    browser.until("return !!document.querySelector('#bin')", "the bin").await;
    assert!(browser.text("#bin").await.contains("Lever harp, 22 strings"));
    browser.click("#bin button").await;
    browser.until("return !document.querySelector('#bin')", "an empty bin").await;
    assert!(browser.text("dialog[open] .shelf").await.contains("Lever harp, 22 strings"));
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn pictures_of_a_new_harp() {
    if std::env::var_os("SHOTS").is_none() {
        return;
    }
    let site = Site::of_build("/");
    for screen in [Screen::LAPTOP, Screen::DESKTOP.in_the_dark(), Screen::PHONE.in_the_dark()] {
        let browser = Browser::open(screen).await;
        browser.open_app(&site.url()).await;
        browser.click("#new").await;
        browser.fill(COUNT, "30").await;
        for way in ["own", "measured", "sample"] {
            browser.click(&format!("#ways input[value={way}]")).await;
            let picture = browser.client.screenshot().await.unwrap();
            keep(&format!("shots/new-{way}-{}.png", screen.width), &picture);
        }
    }
}
