//! Builds prove themselves: one that is damaged is not taken, one that does not start gives way to the last good one,
//! and a program that stops amid work says so and offers what is kept.

use fantoccini::key::Key;
use serde_json::json;
use sha2::{Digest, Sha256};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

use crate::browser::{Browser, PARTS_HAVE_COME, Screen};
use crate::opening::{change, copy_of_build};
use crate::server::Site;

/// Which build the page is of, by the mark that the tests put on it.
const BUILD: &str = "return document.documentElement.dataset.mark ?? 'first'";
/// Asks for a newer worker, and waits until it is in force or has failed.
const UPDATED: &str = "
    return navigator.serviceWorker.getRegistration().then((registration) => registration.update().catch(() => 0))
      .then(() => true);
";
const AT_REST: &str = "
    return navigator.serviceWorker.getRegistration()
      .then((registration) => !registration.installing && !registration.waiting);
";
pub const STANDS: &str =
    "return document.readyState === 'complete' && !!document.querySelector('#chart')";

/// The file of a build whose name begins so, such as `stringloft` and `wasm`.
pub fn file_of(folder: &Path, stem: &str, end: &str) -> PathBuf {
    let files = fs::read_dir(folder).expect("a build").map(|file| file.expect("a file").path());
    let named = |path: &PathBuf| {
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        name.starts_with(&format!("{stem}-")) && name.ends_with(&format!(".{end}"))
    };
    files.into_iter().find(named).unwrap_or_else(|| panic!("no {stem} in the build"))
}

/// Writes into `sw.js` the sum that a file has now.
pub fn sum_again(folder: &Path, name: &str) {
    let bytes = fs::read(folder.join(name)).expect("the build holds it");
    let sum = base64(&Sha256::digest(bytes));
    let worker = folder.join("sw.js");
    let text = fs::read_to_string(&worker).expect("the build holds it");
    let wanted = if name == "index.html" { "" } else { name };
    let mut lists = text.split(['"', ' ']);
    let old = lists.find(|one| one.split_at_checked(44).is_some_and(|(_, name)| name == wanted));
    let old = old.expect("the list names it").to_owned();
    fs::write(&worker, text.replace(&old, &format!("{sum}{wanted}")))
        .expect("a copy may be written");
}

fn base64(bytes: &[u8]) -> String {
    use base64::Engine;
    base64::prelude::BASE64_STANDARD.encode(bytes)
}

/// Makes another build of a copy: with a version and a mark of its own, and right sums.
pub fn mark(folder: &Path, mark: &str) {
    let worker = fs::read_to_string(folder.join("sw.js")).expect("the build holds it");
    let version = worker.split('"').nth(1).expect("it begins with the version").to_owned();
    change(&folder.join("sw.js"), &version, mark);
    change(&folder.join("index.html"), &version, mark);
    change(&folder.join("index.html"), "<html", &format!("<html data-mark=\"{mark}\""));
    sum_again(folder, "index.html");
}

/// Puts a build where another one is served.
pub fn deploy(from: &Path, to: &Path) {
    for file in fs::read_dir(to).expect("it is served") {
        fs::remove_file(file.expect("a file").path()).expect("a copy may be removed");
    }
    for file in fs::read_dir(from).expect("a build") {
        let path = file.expect("a file").path();
        fs::copy(&path, to.join(path.file_name().expect("a name"))).expect("it can be copied");
    }
}

/// Visits the page, sees which build opens, and lets the worker look for a newer one.
pub async fn visit(browser: &Browser, site: &Site) -> String {
    browser.goto("about:blank").await;
    browser.goto(&site.url()).await;
    browser.until(STANDS, "the chart").await;
    let build = browser.ask(BUILD).await.as_str().unwrap_or_default().to_owned();
    // What still comes through a worker breaks off where that worker is stopped below.
    browser.until(PARTS_HAVE_COME, "the parts of the app").await;
    browser.until_kept_offline().await;
    browser.ask(UPDATED).await;
    at_rest(browser).await;
    // The page's word that it stands is on its way.
    browser
        .until(&format!("{NOTED} ; return caches.keys().then(noted)"), "the build noted as good")
        .await;
    build
}

/// Waits until no worker is on its way, in force or failed. It fetches the whole build once more, and it may wait for
/// the worker before it, which the browser ends some minutes after its last work: here at once.
async fn at_rest(browser: &Browser) {
    for _ in 0..300 {
        if browser.ask(AT_REST).await == json!(true) {
            return;
        }
        let waits = "return navigator.serviceWorker.getRegistration().then((kept) => !kept.installing && !!kept.waiting)";
        if browser.ask(waits).await == json!(true) {
            browser.devtools("ServiceWorker.enable", json!({})).await;
            browser.devtools("ServiceWorker.stopAllWorkers", json!({})).await;
        }
        tokio::time::sleep(Duration::from_millis(200)).await;
    }
    panic!("a worker is still on its way");
}

/// Whether a build of the worker's is noted as good.
const NOTED: &str = "
    const noted = async (names) => {
      for (const name of names) if (await (await caches.open(name)).match('./noted/good')) return true;
      return false;
    }";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_damaged_build_is_never_taken() {
    type Damage = fn(&Path);
    let damages: [(&str, Damage); 5] = [
        ("cut-off", |folder| {
            let file = file_of(folder, "stringloft", "wasm");
            let bytes = fs::read(&file).expect("it is there");
            fs::write(&file, &bytes[..bytes.len() / 2]).expect("a copy may be spoilt");
        }),
        ("html-for-wasm", |folder| {
            fs::write(file_of(folder, "stringloft", "wasm"), "<!doctype html><p>Not here.</p>")
                .expect("a copy may be spoilt");
        }),
        ("old-page", |folder| change(&folder.join("index.html"), "<title>", "<title>Old ")),
        ("half-there", |folder| {
            fs::remove_file(file_of(folder, "drawing", "wasm")).expect("a copy may be spoilt");
        }),
        ("other-part", |folder| {
            fs::write(file_of(folder, "papers", "wasm"), b"\0asm\x01\0\0\0")
                .expect("a copy may be spoilt");
        }),
    ];
    let served = copy_of_build("damaged-served");
    let site = Site::of(served.clone(), "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    assert_eq!(visit(&browser, &site).await, "first");
    let next = copy_of_build("damaged-next");
    for (name, damage) in damages {
        deploy(&next, &served);
        mark(&served, name);
        damage(&served);
        for _ in 0..3 {
            assert_eq!(visit(&browser, &site).await, "first", "after {name}");
        }
    }
    deploy(&next, &served);
    mark(&served, "whole");
    visit(&browser, &site).await;
    assert_eq!(visit(&browser, &site).await, "whole", "the mended build was not taken");
    // The way back is a build like any other.
    deploy(&next, &served);
    visit(&browser, &site).await;
    assert_eq!(visit(&browser, &site).await, "first", "the build taken back was not taken");
    site.stop();
    browser.goto("about:blank").await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_build_that_does_not_start_gives_way_to_the_last_good_one() {
    let served = copy_of_build("unstarted-served");
    let whole = copy_of_build("unstarted-whole");
    let site = Site::of(served.clone(), "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    assert_eq!(visit(&browser, &site).await, "first");

    // It says that it failed.
    let js = file_of(&served, "stringloft", "js");
    let name = js.file_name().expect("a name").to_string_lossy().into_owned();
    fs::write(
        &js,
        "export default async () => { throw new WebAssembly.RuntimeError('unreachable'); };",
    )
    .expect("a copy may be spoilt");
    // A file with other bytes has another name, as the builder gives it.
    let renamed = name.replace("stringloft-", "stringloft-0");
    fs::rename(&js, served.join(&renamed)).expect("a copy may be renamed");
    for file in ["sw.js", "index.html"] {
        let text = fs::read_to_string(served.join(file)).expect("the build holds it");
        fs::write(served.join(file), text.replace(&name, &renamed)).expect("a copy may be written");
    }
    sum_again(&served, &renamed);
    mark(&served, "failing");
    assert_eq!(visit(&browser, &site).await, "first", "the new build came under the page");
    browser.goto("about:blank").await;
    browser.goto(&site.url()).await;
    browser
        .until("return document.querySelector('#shell-state')?.role === 'alert'", "a word")
        .await;
    let words = browser.text("#shell").await;
    assert!(words.contains("did not start") && words.contains("Reload"), "it says: {words}");
    for _ in 0..2 {
        assert_eq!(visit(&browser, &site).await, "first", "the good build did not come back");
    }

    // It says nothing at all.
    fs::write(served.join(&renamed), "export default () => new Promise(() => {});")
        .expect("a copy may be spoilt");
    sum_again(&served, &renamed);
    change(&served.join("sw.js"), "failing", "silent");
    change(&served.join("index.html"), "data-build=\"failing\"", "data-build=\"silent\"");
    sum_again(&served, "index.html");
    visit(&browser, &site).await;
    let mut opened = Vec::new();
    for _ in 0..3 {
        browser.goto("about:blank").await;
        browser.goto(&site.url()).await;
        tokio::time::sleep(Duration::from_secs(2)).await;
        opened.push(browser.ask(STANDS).await == json!(true));
    }
    assert_eq!(opened, [false, false, true], "which of three visits stood");

    deploy(&whole, &served);
    mark(&served, "mended");
    visit(&browser, &site).await;
    assert_eq!(visit(&browser, &site).await, "mended");
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_new_build_without_room_leaves_the_old_one() {
    let served = copy_of_build("room-served");
    let site = Site::of(served.clone(), "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    assert_eq!(visit(&browser, &site).await, "first");
    browser
        .devtools(
            "Storage.overrideQuotaForOrigin",
            json!({ "origin": site.origin(), "quotaSize": 4_000_000 }),
        )
        .await;
    mark(&served, "too-large");
    for _ in 0..2 {
        assert_eq!(visit(&browser, &site).await, "first");
    }
    let kept = browser.ask("return caches.keys().then((names) => names.length)").await;
    assert_eq!(kept, json!(1), "half a build was left behind");
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_damaged_file_is_told_on_a_first_visit() {
    let served = copy_of_build("first-damaged");
    let wasm = file_of(&served, "stringloft", "wasm");
    let bytes = fs::read(&wasm).expect("it is there");
    fs::write(&wasm, &bytes[..bytes.len() / 2]).expect("a copy may be spoilt");
    let site = Site::of(served, "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.goto(&site.url()).await;
    browser.until("return document.querySelector('#shell-state').role === 'alert'", "a word").await;
    let words = browser.text("#shell").await;
    assert!(words.contains("damaged") && words.contains("wait a minute"), "it says: {words}");
}

/// Makes the browser refuse what every view does, as a fault of the program would end it. A function of the browser
/// itself refuses: what a test's script throws is kept from the page.
pub const BREAK: &str = "
    const refuse = Node.prototype.appendChild.bind({});
    for (const name of ['setAttribute', 'removeAttribute', 'insertAdjacentHTML']) Element.prototype[name] = refuse;
    for (const name of ['appendChild', 'insertBefore', 'removeChild']) Node.prototype[name] = refuse;
    for (const name of ['append', 'before', 'remove', 'replaceWith']) Element.prototype[name] = refuse;
    return true;
";
/// The dialog is made with the same means, so they come back.
pub const MEND_WHEN_STOPPED: &str = "
    const whole = document.createElement('iframe');
    document.body.append(whole);
    const [theirs, ours] = [whole.contentWindow, window];
    const back = {};
    for (const kind of ['Element', 'Node']) {
      back[kind] = {};
      for (const name of ['setAttribute', 'removeAttribute', 'insertAdjacentHTML', 'append', 'before', 'remove',
        'replaceWith', 'appendChild', 'insertBefore', 'removeChild']) {
        if (Object.hasOwn(ours[kind].prototype, name)) back[kind][name] = ours[kind].prototype[name];
      }
    }
    whole.remove();
    addEventListener('error', (event) => {
      for (const kind of ['Element', 'Node']) Object.assign(ours[kind].prototype, back[kind]);
    }, { capture: true, once: true });
    return true;
";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_program_that_stops_says_so_in_every_part() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    // A change of one's own, so that there is something kept.
    browser.click("#cell-0-1").await;
    browser.press("87").await;
    browser.press(&Key::Enter.to_string()).await;
    browser.until("return !!document.documentElement.dataset.kept", "the design kept").await;
    let opened = [
        ("#chart-view", "#chart"),
        ("#drawing", "#loft"),
        ("#choose-view", "#choose"),
        ("#order-view", "#order"),
        ("#numbers", "dialog[open]"),
        ("#instrument", "dialog[open]"),
        ("#card", ".card-bar"),
    ];
    for (round, (open, there)) in opened.into_iter().enumerate() {
        browser.click(open).await;
        let is_there = format!(
            "return !!document.querySelector('{there}') && !document.querySelector('p.coming')"
        );
        browser.until(&is_there, there).await;
        browser.ask(MEND_WHEN_STOPPED).await;
        browser.ask(BREAK).await;
        // Whatever is open answers to a change of the design or of what is shown.
        browser.ask("document.querySelector('#versions-view').click(); return true").await;
        browser.ask("document.querySelector('#undo').click(); return true").await;
        browser
            .until("return !!document.querySelector('#fault[open]')", "the word that it stopped")
            .await;
        let words = browser.text("#fault").await;
        for part in ["has stopped", "last kept in this browser at", "Open with an empty chart"] {
            assert!(words.contains(part), "after {open} it says: {words}");
        }
        browser.press(&Key::Escape.to_string()).await;
        // A second Escape is not to be refused; then it comes back.
        browser.until("return !!document.querySelector('#fault[open]')", "it still").await;
        if open == "#chart-view" {
            browser.screenshot("stopped").await;
            browser.check_barriers().await;
        }
        browser.click("#fault button.main").await;
        browser.until(STANDS, "the chart again").await;
        assert_eq!(browser.text("#cell-0-1").await, "87", "what was kept is there after {open}");
        // So that the next fault finds a design that was kept in that page.
        browser.click("#cell-1-1").await;
        browser.press(&format!("9{round}.5")).await;
        browser.press(&Key::Enter.to_string()).await;
        browser.until("return !!document.documentElement.dataset.kept", "the design kept").await;
    }
    // What reads a link shows nothing itself; it stops while it opens one.
    browser.ask(MEND_WHEN_STOPPED).await;
    browser.ask(BREAK).await;
    let link = stringloft::design::link::write(&stringloft::design::presets::SAMPLES[1].design());
    let follow = format!("location.hash = {}; return true", json!(link.expect("a link")));
    browser.ask(&follow).await;
    browser.until("return !!document.querySelector('#fault[open]')", "the word").await;
    browser.ask("history.replaceState(null, '', location.pathname); return true").await;
    browser.click("#fault button.main").await;
    browser.until(STANDS, "the chart again").await;
    assert_eq!(browser.text("#cell-0-1").await, "87", "what was kept is there after a link");

    browser.ask(MEND_WHEN_STOPPED).await;
    browser.ask(BREAK).await;
    browser.ask("document.querySelector('#drawing').click(); return true").await;
    browser.until("return !!document.querySelector('#fault[open]')", "the word").await;
    browser.click("#fault button:nth-of-type(4)").await;
    browser.until("return !document.querySelector('#cell-0-1')", "an empty chart").await;
    browser.goto(&site.url()).await;
    browser.until(STANDS, "the chart again").await;
    assert_eq!(browser.text("#cell-0-1").await, "87", "the design is opened the time after");
}
