//! Visits at bad moments: amid an upload, with a clock that goes wrong, and in a browser that has no room.

use serde_json::json;
use std::fs;
use std::path::Path;

use crate::browser::{Browser, Screen};
use crate::builds::{STANDS, deploy, file_of, mark, sum_again, visit};
use crate::keeping::{IS_KEPT, type_a_length};
use crate::opening::copy_of_build;
use crate::server::Site;

/// Gives the first module of a build another name, as other bytes would, and names it in the page and the worker's list.
fn rename_module(folder: &Path) -> String {
    let file = file_of(folder, "stringloft", "wasm");
    let name = file.file_name().expect("a name").to_string_lossy().into_owned();
    let renamed = name.replace("stringloft-", "stringloft-0");
    fs::rename(&file, folder.join(&renamed)).expect("a copy may be renamed");
    for file in ["sw.js", "index.html"] {
        let text = fs::read_to_string(folder.join(file)).expect("the build holds it");
        fs::write(folder.join(file), text.replace(&name, &renamed)).expect("a copy may be written");
    }
    sum_again(folder, "index.html");
    renamed
}

/// Copies one file of a build over what is served.
fn bring(from: &Path, to: &Path, name: &str) {
    fs::copy(from.join(name), to.join(name)).unwrap_or_else(|e| panic!("{name}: {e}"));
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_first_visit_amid_an_upload_stands_or_says_so_and_then_mends_itself() {
    let (old, new) = (copy_of_build("upload-old"), copy_of_build("upload-new"));
    mark(&new, "new");
    let module = rename_module(&new);
    // The page first, then the rest, as an upload by the alphabet may come.
    let served = copy_of_build("upload-page-first");
    bring(&new, &served, "index.html");
    let site = Site::of(served.clone(), "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.goto(&site.url()).await;
    browser
        .until("return document.querySelector('#shell-state')?.role === 'alert'", "a word")
        .await;
    let words = browser.text("#shell").await;
    assert!(words.contains("did not arrive") && words.contains("reload"), "it says: {words}");
    let kept = "return navigator.serviceWorker.getRegistrations().then((all) => all.length)";
    assert_eq!(browser.ask(kept).await, json!(0), "a worker of half a build");
    bring(&new, &served, &module);
    bring(&new, &served, "sw.js");
    assert_eq!(visit(&browser, &site).await, "new");
    drop(browser);
    drop(site);

    // The worker first: it finds the page of the build before, and must not take it for its own.
    deploy(&old, &served);
    bring(&new, &served, "sw.js");
    let site = Site::of(served.clone(), "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    type_a_length(&browser, "87").await;
    browser.until(IS_KEPT, "the design kept").await;
    assert_eq!(browser.ask("return caches.keys().then((names) => names.length)").await, json!(0));
    bring(&new, &served, &module);
    bring(&new, &served, "index.html");
    assert_eq!(visit(&browser, &site).await, "new");
    assert_eq!(browser.text("#cell-0-1").await, "87");
    // It works without the server from then on.
    let url = site.url();
    site.stop();
    browser.goto("about:blank").await;
    browser.goto(&url).await;
    browser.until(STANDS, "the chart").await;
}

/// A clock that went back by a year, as one whose battery is empty does.
const BACK: &str = "
    const now = Date.now.bind(Date);
    const back = () => Number(localStorage.getItem('back-days') ?? 0) * 86_400_000;
    Date.now = () => now() - back();
";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_clock_that_goes_back_loses_nothing() {
    let served = copy_of_build("clock-served");
    let site = Site::of(served.clone(), "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": BACK })).await;
    browser.open_app(&site.url()).await;
    type_a_length(&browser, "81").await;
    type_a_length(&browser, "82").await;
    browser.until(IS_KEPT, "the design kept").await;
    assert_eq!(visit(&browser, &site).await, "first");

    browser.ask("localStorage['back-days'] = '365'; return true").await;
    mark(&served, "later");
    visit(&browser, &site).await;
    assert_eq!(visit(&browser, &site).await, "later", "the newer build was not taken");
    assert_eq!(browser.text("#cell-0-1").await, "82");
    type_a_length(&browser, "83").await;
    browser.until(IS_KEPT, "the design kept").await;
    // The state of before the clock went back, though it is dated later than now.
    browser
        .until(
            "return earlier('list', '').then((all) => JSON.parse(all).texts.some(([, text]) => text.includes('\"82\"')))",
            "the state of before",
        )
        .await;
    browser.open_app(&site.url()).await;
    for length in ["83", "82", "81"] {
        assert_eq!(browser.text("#cell-0-1").await, length);
        browser.click("#undo").await;
    }
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_first_visit_without_room_stands_and_says_what_is_not_kept() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.goto(&format!("{}manifest.webmanifest", site.url())).await;
    let quota = |bytes: u32| json!({ "origin": site.origin(), "quotaSize": bytes });
    browser.devtools("Storage.overrideQuotaForOrigin", quota(1)).await;
    browser.open_app(&site.url()).await;
    browser.until("return !!document.querySelector('#not-kept')", "the word").await;
    type_a_length(&browser, "87").await;
    assert_eq!(browser.text("#cell-0-1").await, "87");
    let words = browser.text("#kept").await;
    assert!(words.starts_with("not kept in this browser"), "the header says: {words}");
    // With room again all is kept, without another change.
    browser.devtools("Storage.overrideQuotaForOrigin", quota(50_000_000)).await;
    browser.until(IS_KEPT, "the design kept").await;
    assert_eq!(browser.count("#not-kept").await, 0);
    browser.open_app(&site.url()).await;
    assert_eq!(browser.text("#cell-0-1").await, "87");
}
