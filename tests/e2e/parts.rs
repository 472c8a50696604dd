//! The parts of the program: none of them is fetched for the first screen, each comes when it is opened, also without
//! a network after the first visit, and one that does not come stops nothing else.

use std::fs;
use std::path::PathBuf;
use std::time::Duration;

use fantoccini::key::Key;
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;

use crate::browser::{Browser, Screen};
use crate::opening::copy_of_build;
use crate::server::Site;

/// The button of each view and window, and what stands there once its part has come.
const OPENED: [(&str, &str); 14] = [
    ("#drawing", "#loft"),
    ("#choose-view", "#choose"),
    ("#order-view", "#order"),
    ("#versions-view", "#versions"),
    ("#chart-view", "#chart"),
    ("#new", "dialog[open]"),
    ("#shelf", "dialog[open]"),
    ("#instrument", "dialog[open]"),
    ("#materials", "dialog[open]"),
    ("#stock", "dialog[open]"),
    ("#numbers", "dialog[open]"),
    ("#keys", "dialog[open]"),
    ("#help-open", "dialog[open]"),
    ("#card", ".card-bar"),
];

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_first_screen_asks_for_no_part_and_each_comes_when_opened() {
    let site = Site::of(without_leisure("first-screen"), "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_first_screen(&site.url()).await;
    browser.until(&is_there("#chart"), "the chart").await;
    tokio::time::sleep(Duration::from_secs(1)).await;
    assert_eq!(modules(&site), ["stringloft"], "the first screen asked for a part");
    browser.click("#drawing").await;
    browser.until(&is_there("#loft"), "the drawing").await;
    let mut asked = modules(&site);
    asked.sort_unstable();
    asked.dedup();
    assert_eq!(asked, ["between", "drawing", "shared", "stringloft"]);
    // What the menus hold comes when one is opened.
    browser.find("#designs").await.click().await.expect("the menu opens");
    browser.until(&is_there("#new"), "the lines of the menu").await;
    for (key, line) in [
        (Key::Down, "new"),
        (Key::Down, "restring"),
        (Key::Up, "new"),
        (Key::Up, "save"),
        (Key::Down, "new"),
        (Key::Escape, "designs"),
    ] {
        browser.press(&char::from(key).to_string()).await;
        assert_eq!(browser.ask("return document.activeElement.id").await, line);
    }
    open_all(&browser).await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn every_part_opens_without_a_network() {
    let site = Site::of_build("/");
    let url = site.url();
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&url).await;
    browser.until_kept_offline().await;
    site.stop();
    browser.goto("about:blank").await;
    browser.open_app(&url).await;
    open_all(&browser).await;
}

/// What reads a link comes after the script that says when there is leisure: the word must not be said to nobody.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn parts_come_too_for_whoever_has_a_link() {
    let folder = copy_of_build("link-leisure");
    // Without a worker to wait for, there is leisure at once.
    fs::remove_file(folder.join("sw.js")).expect("the build holds it");
    let site = Site::of(folder, "/");
    site.hold_parts_back(Duration::from_millis(700));
    let browser = Browser::open(Screen::LAPTOP).await;
    let link = link::write(&SAMPLES[0].design()).expect("a link");
    browser.open_app(&format!("{}#{link}", site.url())).await;
    assert_eq!(browser.count("#chart tbody tr").await, SAMPLES[0].design().strings.len());
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_view_that_is_left_before_it_came_does_no_harm() {
    let browser = Browser::open(Screen::LAPTOP).await;
    let folder = without_leisure("left-early");
    let mut sites = Vec::new(); // at a new address no part has come yet
    for after in [0, 20, 60, 150, 300, 600] {
        let site = Site::of(folder.clone(), "/");
        site.hold_parts_back(Duration::from_millis(250));
        browser.open_first_screen(&site.url()).await;
        sites.push(site);
        for view in ["#drawing", "#choose-view", "#versions-view", "#order-view"] {
            browser.click(view).await;
            tokio::time::sleep(Duration::from_millis(after)).await;
            browser.click("#chart-view").await;
            browser.until(&is_there("#chart"), "the chart again").await;
        }
        tokio::time::sleep(Duration::from_millis(600)).await;
        browser.until(&is_there("#chart"), "the chart, after the parts came").await;
        browser.click("#drawing").await;
        browser.until(&is_there("#loft"), "the drawing").await;
        browser.check_console().await;
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_part_that_does_not_come_says_so_in_its_place() {
    let folder = without_leisure("part-gone");
    let part = file_of(&folder, "drawing");
    let kept = fs::read(&part).expect("it was just seen");
    fs::remove_file(&part).expect("a copy may be spoilt");
    let site = Site::of(folder, "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_first_screen(&site.url()).await;
    browser.click("#drawing").await;
    browser.until(&is_there("#try-again"), "a word that the part did not arrive").await;
    assert!(browser.text(".coming").await.contains("did not arrive"));
    browser.check_barriers().await;
    browser.screenshot("part-gone").await;
    // Everything else goes on.
    browser.click("#versions-view").await;
    browser.until(&is_there("#versions"), "another view").await;
    browser.click("#chart-view").await;
    browser.until(&is_there("#chart"), "the chart").await;
    fs::write(&part, kept).expect("a copy may be mended");
    browser.click("#drawing").await;
    browser.click("#try-again").await;
    browser.until(&is_there("#loft"), "the drawing").await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_window_that_does_not_come_says_so_and_closes() {
    let folder = without_leisure("window-gone");
    let part = file_of(&folder, "numbers");
    let kept = fs::read(&part).expect("it was just seen");
    fs::remove_file(&part).expect("a copy may be spoilt");
    let site = Site::of(folder, "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_first_screen(&site.url()).await;
    browser.click("#help").await;
    browser.click("#numbers").await;
    let focused = "return document.activeElement.id === 'try-again'";
    browser.until(focused, "a word that has the keyboard").await;
    browser.check_barriers().await;
    browser.screenshot("window-gone").await;
    browser.click(".not-here > button").await;
    browser.until("return !document.querySelector('.not-here')", "the page").await;
    fs::write(&part, kept).expect("a copy may be mended");
    browser.click("#numbers").await;
    browser.click("#try-again").await;
    browser.until("return !!document.querySelector('dialog[open] #window-title')", "it").await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_link_whose_reader_does_not_come_is_told() {
    let folder = without_leisure("reader-gone");
    fs::remove_file(file_of(&folder, "files")).expect("a copy may be spoilt");
    let site = Site::of(folder, "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_first_screen(&format!("{}#1.AAAA", site.url())).await;
    browser.until(&is_there(".notice.problem"), "a word about the link").await;
    let words = browser.text(".notice.problem").await;
    assert!(words.contains("not opened") && words.contains("did not arrive"), "it says: {words}");
    // A menu whose lines did not come says so.
    browser.ask("document.querySelector('#designs').click()").await;
    let said = "return document.querySelector('details[open] .hint')?.innerText.includes('did not arrive')";
    browser.until(said, "a word in the menu").await;
}

/// Opens every view and window, and sees that it is there.
async fn open_all(browser: &Browser) {
    for (button, what) in OPENED {
        browser.click(button).await;
        browser.until(&is_there(what), &format!("{what} after {button}")).await;
        if what.starts_with("dialog") {
            browser.click("dialog[open] .window-head .quiet").await;
            browser
                .until("return !document.querySelector('dialog[open]')", "the window gone")
                .await;
        }
    }
}

fn is_there(css: &str) -> String {
    format!("return !!document.querySelector('{css}') && !document.querySelector('p.coming')")
}

/// A copy of the build that fetches nothing when it has leisure.
fn without_leisure(name: &str) -> PathBuf {
    let folder = copy_of_build(name);
    let file = file_of(&folder, "boot");
    let script = fs::read_to_string(&file).expect("the build holds it");
    let (start, _) = script.split_once("const quiet =").expect("the build adds offline.js");
    fs::write(file, start).expect("a copy may be written");
    folder
}

/// The names of the modules that were asked for, in order.
fn modules(site: &Site) -> Vec<String> {
    let asked = site.asked();
    let modules = asked.iter().filter(|path| path.contains(".wasm"));
    modules.map(|path| path[1..].split('-').next().expect("a first").to_owned()).collect()
}

/// The file of a part.
fn file_of(folder: &PathBuf, part: &str) -> PathBuf {
    let files = fs::read_dir(folder).expect("it was just made");
    let mut paths = files.map(|file| file.expect("a folder can be listed").path());
    let begins = format!("{part}-");
    paths
        .find(|path| {
            path.file_name().is_some_and(|name| name.to_string_lossy().starts_with(&begins))
        })
        .expect("the build has the part")
}
