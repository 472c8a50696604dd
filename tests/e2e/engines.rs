//! The main path in the other engines: Firefox by geckodriver, `WebKit` by `WebKitWebDriver`. `scripts/test` runs each where
//! it can be installed (`FIREFOX_DRIVER`, `WEBKIT_DRIVER` and `WEBKIT_BROWSER` name what they take).

use serde_json::{Value, json};
use std::io::{Write, stderr};
use std::path::Path;
use std::time::Duration;
use stringloft::app::rows;
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;

use crate::browser::{Browser, target};
use crate::driver::Driver;
use crate::keeping::{IS_KEPT, type_a_length};
use crate::server::Site;
use crate::soak::soak;

/// Actions of the robot in each, unless `SOAK` says.
const SOAKED: usize = 100;

fn named(name: &str) -> String {
    std::env::var(name).unwrap_or_else(|_| panic!("{name}, which scripts/test sets, is missing"))
}

async fn firefox(profile: Option<&Path>) -> Browser {
    let driver = Driver::naming_its_port(&named("FIREFOX_DRIVER"), "Listening on 127.0.0.1:");
    let mut args = vec!["-headless".to_owned()];
    args.extend(
        profile.into_iter().flat_map(|path| ["-profile".to_owned(), path.display().to_string()]),
    );
    let options = json!({ "moz:firefoxOptions": { "args": args } });
    let browser = Browser::connect(driver, &options).await;
    browser.client.set_window_size(1366, 768).await.expect("a window takes a size");
    browser
}

async fn webkit() -> Browser {
    let driver = Driver::at_a_port(&named("WEBKIT_DRIVER"));
    let options = json!({ "webkitgtk:browserOptions": {
        "binary": named("WEBKIT_BROWSER"), "args": ["--automation"],
    }});
    let browser = Browser::connect(driver, &options).await;
    browser.client.set_window_size(1366, 768).await.expect("a window takes a size");
    browser
}

/// Every word of the chart, row by row, without the number and the octave before them.
const WORDS: &str = "
    return [...document.querySelectorAll('#chart tbody tr')].map((row) =>
      [...row.children].slice(2).map((cell) => cell.textContent));
";
/// Counts the errors that reach the page.
const COUNT_ERRORS: &str = "
    window.errors = [];
    addEventListener('error', (event) => errors.push(String(event.message)));
    addEventListener('unhandledrejection', (event) => errors.push(String(event.reason)));
    return true;
";
/// Whether a canvas has been drawn on: anything on it is not clear.
const IS_DRAWN: &str = "
    const canvas = document.querySelector('#curves');
    const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
    return data.some((byte, at) => at % 4 === 3 && byte > 0);
";

/// Opens what was kept. In one run on another machine the program stopped in `WebKit` while its parts came, and in two more
/// they never came; why is not known, and some 400 openings elsewhere did not show it. So it may stop here once, is gone on
/// from as a maker would, by what the page then offers, and its report is printed.
async fn open_again(browser: &Browser, url: &str) {
    let Some(report) = browser.open_or_stop(url).await else { return };
    // Past what keeps the words of tests that pass.
    let _ = writeln!(stderr(), "\nthe program stopped, and what was kept is opened: {report}");
    assert!(!browser.is_chromium && report.contains("WebKit"), "it stopped: {report}");
    browser.click("#fault button.main").await;
    browser.until("return !document.querySelector('#fault')", "the page anew").await;
    browser.open_app(url).await;
}

/// Open, edit, undo, drawing, card, keep and reload.
async fn walk(browser: &Browser) {
    let site = Site::of_build("/");
    browser.open_app(&site.url()).await;
    browser.ask(COUNT_ERRORS).await;
    let first = browser.text("#cell-0-1").await;
    browser.until(IS_DRAWN, "the curves").await;

    type_a_length(browser, "87").await;
    browser.until("return document.querySelector('#cell-0-1').textContent === '87'", "87").await;
    type_a_length(browser, "nonsense").await;
    browser
        .until("return !!document.querySelector('#cell-0-1[aria-invalid=true]')", "the slip told")
        .await;
    browser.click("#undo").await;
    assert_eq!(browser.text("#cell-0-1").await, "87");
    browser.click("#undo").await;
    assert_eq!(browser.text("#cell-0-1").await, first);
    browser.click("#redo").await;
    assert_eq!(browser.text("#cell-0-1").await, "87");

    browser.click("#drawing").await;
    browser
        .until(
            "return document.querySelectorAll('#loft path, #loft line').length > 30",
            "the drawing",
        )
        .await;
    browser.click("#choose-view").await;
    browser.until("return !!document.querySelector('#choose')", "the choice of strings").await;
    browser.click("#chart-view").await;
    browser.click("#card").await;
    browser
        .until("return document.querySelector('#print-root')?.innerText.includes('C7')", "the card")
        .await;
    browser.click("#close-card").await;

    browser.until(IS_KEPT, "the design kept").await;
    assert_eq!(browser.ask("return errors").await, json!([]), "errors on the page");
    open_again(browser, &site.url()).await;
    browser.ask(COUNT_ERRORS).await;
    assert_eq!(browser.text("#cell-0-1").await, "87", "what was kept");
    // Steps of before the reload, back and forward.
    browser.click("#undo").await;
    browser.until(&shows(&first), &first).await;
    // The word beside the buttons moves them when it comes.
    browser.until(IS_KEPT, "the design kept").await;
    browser.click("#redo").await;
    browser.until(&shows("87"), "87").await;
    browser.click("#versions-view").await;
    browser.until("return !!document.querySelector('#versions')", "the versions").await;
    assert_eq!(browser.ask("return errors").await, json!([]), "errors on the page");

    same_words(browser, &site).await;

    // Without the server: the worker has it all.
    open_again(browser, &site.url()).await;
    browser.until_kept_offline().await;
    let url = site.url();
    site.stop();
    open_again(browser, &url).await;
    assert_eq!(browser.text("#cell-0-1").await, "87", "offline");
}

fn shows(text: &str) -> String {
    format!("return document.querySelector('#cell-0-1').textContent === {}", json!(text))
}

/// Every figure of a sample is as on this machine.
async fn same_words(browser: &Browser, site: &Site) {
    browser.ask("keeping.put('stringloft/columns', 'all'); return 1").await;
    tokio::time::sleep(Duration::from_millis(500)).await;
    browser.goto("about:blank").await;
    for sample in SAMPLES.iter().take(2) {
        let design = sample.design();
        let link = link::write(&design).expect("a link");
        browser.open_app(&format!("{}#{link}", site.url())).await;
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let native: Vec<Vec<String>> = rows::rows(&design, &resolved, &analysis)
            .iter()
            .map(|row| row.cells.iter().map(|cell| cell.text.clone()).collect())
            .collect();
        let shown: Vec<Vec<String>> =
            serde_json::from_value(browser.ask(WORDS).await).expect("rows of texts");
        assert!(!shown.is_empty(), "{} shows nothing", sample.key);
        assert_eq!(shown, native, "{}", sample.key);
        browser.goto("about:blank").await;
    }
}

#[tokio::test]
#[ignore = "needs a release build and Firefox: scripts/test firefox"]
async fn the_main_path_works_in_firefox() {
    walk(&firefox(None).await).await;
}

#[tokio::test]
#[ignore = "needs a release build and WebKit: scripts/test webkit"]
async fn the_main_path_works_in_webkit() {
    walk(&webkit().await).await;
}

#[tokio::test]
#[ignore = "needs a release build and Firefox: scripts/test firefox"]
async fn a_robot_that_works_for_long_finds_the_page_as_it_was_in_firefox() {
    soak(&firefox(None).await, SOAKED).await;
}

#[tokio::test]
#[ignore = "needs a release build and WebKit: scripts/test webkit"]
async fn a_robot_that_works_for_long_finds_the_page_as_it_was_in_webkit() {
    soak(&webkit().await, SOAKED).await;
}

/// As `keeping.rs` does with Chromium: what the page called kept is there after a kill, whenever it came.
#[tokio::test]
#[ignore = "needs a release build and Firefox: scripts/test firefox"]
async fn a_firefox_that_is_killed_loses_nothing_that_was_called_kept() {
    let profile = target().join("e2e/killed-firefox");
    let _ = std::fs::remove_dir_all(&profile);
    std::fs::create_dir_all(&profile).expect("a folder for the profile");
    let site = Site::of_build("/");
    let mut before = Value::Null;
    for kill in 0..5_u64 {
        let browser = firefox(Some(&profile)).await;
        browser.open_first_screen(&site.url()).await;
        if kill > 0 {
            assert_eq!(json!(browser.text("#cell-0-1").await), before, "after kill {kill}");
        }
        let text = format!("{}", 100 + kill);
        type_a_length(&browser, &text).await;
        browser.until(IS_KEPT, "the design kept").await;
        tokio::time::sleep(Duration::from_millis(kill * kill * 40)).await;
        browser.kill();
        before = json!(text);
    }
}
