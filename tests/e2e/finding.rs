//! Where things are found: everyday tasks from the first screen, the chart by the keyboard, windows and notices.

use fantoccini::key::Key;
use serde_json::json;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// What a maker does every day, the places pressed for it one after another (two at most), and what is then there.
const TASKS: [(&str, &[&str], &str); 14] = [
    ("start a harp", &["#designs", "#new"], "dialog[open] #start-harp"),
    ("restring a harp", &["#designs", "#restring"], "dialog[open] #measurements"),
    ("put in a material", &["#harp", "#materials"], "dialog[open] .materials"),
    ("see what the frame carries", &["#sum-frame button"], "#loads-title"),
    ("compare with what was", &["#versions-view"], "#versions"),
    (
        "open another design",
        &["#designs", "#shelf"],
        "dialog[open] .shelf, dialog[open] #window-title",
    ),
    ("set pitch and names", &["#harp", "#instrument"], "dialog[open] .form-columns"),
    ("say what can be bought", &["#harp", "#stock"], "dialog[open] .stock"),
    ("change a make-up", &["#make-up"], "dialog[open] .make-up"),
    ("choose strings from the stock", &["#choose-view"], ".choose-panel"),
    ("see the harp to scale", &["#drawing"], ".drawing-panel #loft svg"),
    ("see what to order", &["#order-view"], ".order"),
    ("print the card", &["#share", "#card"], "#print-root .paper"),
    ("have templates", &["#share", "#templates"], ".drawing-group.open .window-actions button"),
];

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn everyday_tasks_take_two_actions_at_most() {
    let site = Site::of_build("/");
    for screen in [Screen::LAPTOP, Screen::PHONE] {
        let browser = Browser::open(screen).await;
        for (task, presses, there) in TASKS {
            assert!(presses.len() <= 2, "{task}");
            browser.open_app(&site.url()).await;
            for place in presses {
                // The button itself, and not what opens its menu.
                let button = browser.find(place).await;
                button.click().await.unwrap_or_else(|e| panic!("{task}, {place}: {e}"));
            }
            let script = format!("return Boolean(document.querySelector({}))", json!(there));
            browser.until(&script, task).await;
        }
        browser.check_console().await;
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_keyboard_comes_to_the_chart_soon() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let tab = Key::Tab.to_string();
    let here = "return document.activeElement.id || document.activeElement.textContent";
    browser.press(&tab).await;
    assert_eq!(browser.ask(here).await, "skip");
    browser.press(&Key::Enter.to_string()).await;
    assert_eq!(browser.ask(here).await, "chart");
    browser.open_app(&site.url()).await;
    let mut stops = Vec::new();
    for _ in 0..6 {
        browser.press(&tab).await;
        stops.push(browser.ask(here).await);
        if stops.last() == Some(&json!("chart")) {
            return;
        }
    }
    panic!("the chart is not among the first stops: {stops:?}");
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn columns_are_chosen_and_stay() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let heads = "return [...document.querySelectorAll('#chart thead th')].map((head) => head.firstElementChild?.textContent || head.textContent)";
    let full = "const cells = [...document.querySelectorAll('#chart td.words')];
        return cells.length > 0 && cells.every((cell) => cell.scrollWidth <= cell.clientWidth)";
    assert_eq!(browser.ask(full).await, true, "a make-up is cut");
    let usual = browser.ask(heads).await;
    browser.click("#columns option[value=tuning]").await;
    let tuning = browser.ask(heads).await;
    assert_ne!(usual, tuning);
    browser.click("#cell-3-1").await;
    browser.press("444").await;
    browser.press(&Key::Enter.to_string()).await;
    assert_eq!(browser.text("#cell-3-1").await, "444");
    browser.click("#columns option[value=choose]").await;
    browser.click(".column-list li:nth-child(2) button:first-child").await;
    browser.press(&Key::Escape.to_string()).await;
    browser.until("return !document.querySelector('dialog')", "the window to close").await;
    let own = browser.ask(heads).await;
    assert_eq!((&own[3], &own[4]), (&tuning[4], &tuning[3]));
    // A border that is moved and columns that were chosen are there the next time.
    browser.ask("document.querySelector('#divider').focus(); return 1").await;
    browser.press(&Key::Right.to_string()).await;
    let share = browser.ask("return document.querySelector('#divider').ariaValueNow").await;
    browser.open_app(&site.url()).await;
    assert_eq!(browser.ask(heads).await, own);
    assert_eq!(browser.ask("return document.querySelector('#divider').ariaValueNow").await, share);
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_small_page_keeps_header_and_summary_low() {
    let site = Site::of_build("/");
    let zoomed = Screen { width: 683, height: 384, scale: 2.0, ..Screen::LAPTOP };
    // On a phone the summary is read before the chart, and the header has two rows as high as a finger and a line.
    for (screen, parts, most) in
        [(zoomed, "['.top', '.summary']", 96), (Screen::PHONE, "['.top']", 112)]
    {
        let browser = Browser::open(screen).await;
        browser.open_app(&site.url()).await;
        let low = format!(
            "const end = (part) => document.querySelector(part).getBoundingClientRect().bottom;
             return Math.max(...{parts}.map(end)) <= Math.min({most}, 0.25 * innerHeight)"
        );
        browser.until(&low, "a low header").await;
        assert_eq!(
            browser.ask("return document.documentElement.scrollWidth <= innerWidth").await,
            true,
            "the page is wider than the screen"
        );
    }
}
