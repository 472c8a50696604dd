//! What the page calls kept is on the disk; what is not kept is said to be not kept, and nobody leaves it behind unasked.

use fantoccini::key::Key;
use serde_json::json;
use std::time::Duration;

use crate::browser::{Browser, Screen, target};
use crate::server::Site;

/// A browser whose storage is full from the start of every page, until it is given room.
const FULL: &str = "
    for (const [kind, name] of [[IDBObjectStore, 'put'], [Storage, 'setItem']]) {
      const puts = kind.prototype[name];
      kind.prototype[name] = function (...all) {
        if (!window.room) throw new DOMException('no', 'QuotaExceededError');
        return puts.apply(this, all);
      };
    }
";

/// Whether the page has the user asked before it is left. A driven browser answers the question by itself.
const IS_ASKED: &str = "
    const leaving = document.createEvent('BeforeUnloadEvent');
    leaving.initEvent('beforeunload', false, true);
    dispatchEvent(leaving);
    return leaving.defaultPrevented;
";

/// Whether the header says that the last change is kept.
pub const IS_KEPT: &str = "return document.querySelector('#kept').textContent.startsWith('Kept ')";

/// Tells the test's server each state of the header, and what stands in a cell at that moment.
const TELL: &str = "
    new MutationObserver(() => {
      const [state, cell] = ['#kept', '#cell-0-1'].map((css) => document.querySelector(css).textContent);
      navigator.sendBeacon(`told?${state.startsWith('Kept ') ? 'kept' : 'waits'}=${cell}`);
    }).observe(document.querySelector('#kept'), { subtree: true, childList: true, characterData: true });
    return true;
";

pub async fn type_a_length(browser: &Browser, text: &str) {
    browser.click("#cell-0-1").await;
    browser.press(text).await;
    browser.press(&Key::Enter.to_string()).await;
}

/// Types lengths one after the other into the same cell, quicker than a driver.
async fn type_lengths(browser: &Browser, lengths: std::ops::Range<usize>) {
    let lengths: Vec<String> = lengths.map(|length| length.to_string()).collect();
    let script = include_str!("lengths.js");
    browser.ask(&format!("const lengths = {};{script}", json!(lengths))).await;
}

/// Presses a button so often, each time when what came before is shown.
async fn press(browser: &Browser, button: &str, times: usize) {
    let script = format!(
        "for (let turn = 0; turn < {times}; turn++) {{
          document.querySelector('{button}').click();
          await new Promise((then) => requestAnimationFrame(then));
        }}
        return true;"
    );
    browser.ask(&script).await;
}

async fn undo(browser: &Browser, steps: usize) {
    press(browser, "#undo", steps).await;
}

async fn redo(browser: &Browser, steps: usize) {
    press(browser, "#redo", steps).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn what_is_not_kept_is_said_and_asked_about() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": FULL })).await;
    browser.open_app(&site.url()).await;
    // It is said before anything is lost.
    let words = browser.text("#not-kept").await;
    assert!(words.contains("Not kept") && words.contains("full"), "it says: {words}");
    browser.check_barriers().await;

    type_a_length(&browser, "88").await;
    browser.until("return !!document.querySelector('.notice.problem')", "a word").await;
    let words = browser.text("#kept").await;
    assert!(words.starts_with("not kept in this browser"), "the header says: {words}");
    assert_eq!(browser.ask(IS_ASKED).await, json!(true), "nobody is asked before leaving");

    // Once there is room, the line goes and nobody is asked.
    browser.ask("window.room = true; return true").await;
    type_a_length(&browser, "89").await;
    browser.until("return !document.querySelector('#not-kept')", "the line gone").await;
    browser.until(IS_KEPT, "the design kept").await;
    assert_eq!(browser.ask(IS_ASKED).await, json!(false), "asked for nothing");
    browser.open_app(&site.url()).await;
    assert_eq!(browser.text("#cell-0-1").await, "89");
    assert_eq!(browser.count("#not-kept").await, 1, "the next page is full again");
}

/// A browser that allows a thousand million bytes, of which nearly all are taken.
const SHORT: &str = "
    navigator.storage.estimate = async () => ({ usage: window.taken ?? 9e8, quota: 1e9 });
";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn that_room_runs_out_is_told_once() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": SHORT })).await;
    browser.open_app(&site.url()).await;
    browser.until("return !!document.querySelector('.notice.problem')", "a word").await;
    let words = browser.text(".notice").await;
    assert!(words.contains("save a backup") && words.contains("empty the bin"), "it says: {words}");
    browser.click(".notice button").await;
    // Not again, however much is kept.
    for _ in 0..9 {
        type_lengths(&browser, 80..85).await;
        browser.until(IS_KEPT, "the design kept").await;
    }
    assert_eq!(browser.count(".notice").await, 0, "told again");
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn undo_and_what_is_being_typed_survive_a_reload() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let first = browser.text("#cell-0-1").await;
    type_lengths(&browser, 80..180).await;
    for length in 180..190 {
        type_a_length(&browser, &length.to_string()).await;
    }
    browser.until(IS_KEPT, "the design kept").await;
    browser.click("#cell-1-1").await;
    browser.press("12.3").await;
    browser.open_app(&site.url()).await;
    let typed = "return document.querySelector('#cell-1-1 .cell-field')?.value";
    assert_eq!(browser.ask(typed).await, json!("12.3"), "what was typed is gone");
    let words = browser.text(".notice").await;
    assert!(words.contains("back in its cell"), "it says: {words}");
    browser.screenshot("typed-again").await;
    browser.press(&Key::Escape.to_string()).await;
    assert_eq!(browser.text("#cell-0-1").await, "189");
    undo(&browser, 50).await;
    assert_eq!(browser.text("#cell-0-1").await, "139");
    browser.until(IS_KEPT, "the design kept").await;
    // What was undone comes again after a reload, and is there to be undone.
    browser.open_app(&site.url()).await;
    assert_eq!(browser.text("#cell-0-1").await, "139");
    undo(&browser, 2).await;
    redo(&browser, 10).await;
    assert_eq!(browser.text("#cell-0-1").await, "147");
    browser.until(IS_KEPT, "the design kept").await;
    browser.open_app(&site.url()).await;
    redo(&browser, 5).await;
    assert_eq!(browser.text("#cell-0-1").await, "152");
    undo(&browser, 13).await;
    assert_eq!(browser.text("#cell-0-1").await, "139");
    // Another way on from there, and a reload amid it.
    type_a_length(&browser, "77").await;
    browser.open_app(&site.url()).await;
    assert_eq!(browser.count(".cell-field").await, 0, "given back twice");
    assert_eq!(browser.text("#cell-0-1").await, "77");
    assert_eq!(browser.count("#redo:disabled").await, 1, "what was undone before another change");
    undo(&browser, 1).await;
    assert_eq!(browser.text("#cell-0-1").await, "139");
    browser.click("#redo").await;
    assert_eq!(browser.text("#cell-0-1").await, "77");
    undo(&browser, 61).await;
    assert_eq!(browser.text("#cell-0-1").await, first);
    assert_eq!(browser.count("#undo:disabled").await, 1);
}

/// What programs before `IndexedDB` kept, in the forms of both versions of the document.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn what_older_programs_kept_is_taken_over_once() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_first_screen(&site.url()).await;
    let root = target().join("../tests/designs");
    let read = |name: &str| {
        std::fs::read_to_string(root.join(name)).unwrap_or_else(|e| panic!("{name}: {e}"))
    };
    let older = json!({
        "stringloft/design/18f00000000aaaaa": read("v1.json"),
        "stringloft/design/18f00000001bbbbb": read("v2.json"),
        "stringloft/design/18f00000002ccccc": "{\"stringloft\": 2, \"title\": \"Cut off\"",
        "stringloft/changed/18f00000001bbbbb": "1714000000000",
        "stringloft/open": "18f00000001bbbbb",
        "stringloft/columns": "length,tension_n",
        "stringloft/own-columns": "length",
        "stringloft/theme": "dark",
        "stringloft/split": "50,50",
        "stringloft/paper": "letter",
        "stringloft/stock/usual": "{}",
        "stringloft/stock-in-use": "usual",
        "other/program": "not ours",
    });
    // As a new page of an old program's browser: nothing is in the new storage yet.
    browser.goto("about:blank").await;
    browser.goto(&format!("{}manifest.webmanifest", site.url())).await;
    let fill = format!(
        "return new Promise((done) => {{
           const gone = indexedDB.deleteDatabase('stringloft');
           gone.onsuccess = gone.onblocked = () => {{
             localStorage.clear();
             sessionStorage.clear();
             Object.assign(localStorage, {older});
             done(true);
           }};
         }})"
    );
    browser.ask(&fill).await;
    browser.open_app(&site.url()).await;
    let same = format!(
        "const older = {older};
         return Object.entries(older).filter(([key, text]) => key.startsWith('stringloft/') && keeping.get(key) !== text)
           .map(([key]) => key)"
    );
    assert_eq!(browser.ask(&same).await, json!([]), "not taken over");
    let kept = "return localStorage['stringloft/theme'] + keeping.keys('stringloft/design/').length + document.documentElement.dataset.theme";
    assert_eq!(browser.ask(kept).await, json!("dark3dark"));
    // A change here stays, though the old text is still in local storage.
    let title = "return document.querySelector('#title').value";
    browser.fill("#title", "Gone on with here").await;
    browser.until(IS_KEPT, "the design kept").await;
    browser.open_app(&site.url()).await;
    assert_eq!(browser.ask(title).await, json!("Gone on with here"));
    // The older program goes on with its own: that comes beside what is here.
    browser
        .ask(
            "const key = 'stringloft/design/18f00000001bbbbb';
             localStorage[key] = localStorage[key].replace('Every field', 'Gone on with there');
             return true",
        )
        .await;
    browser.open_app(&site.url()).await;
    assert_eq!(browser.ask(title).await, json!("Gone on with here"));
    let titles = "return keeping.keys('stringloft/design/').filter((key) => keeping.get(key).includes('Gone on with there')).length";
    assert_eq!(browser.ask(titles).await, json!(1));
    browser.open_app(&site.url()).await;
    assert_eq!(browser.ask(titles).await, json!(1), "taken over twice");
}

/// Where the browser refuses `IndexedDB`, local storage is read and written as before.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn local_storage_stands_in_for_a_storage_that_is_refused() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    let refused =
        "IDBFactory.prototype.open = () => { throw new DOMException('no', 'SecurityError'); };";
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": refused })).await;
    browser.open_app(&site.url()).await;
    assert_eq!(browser.count("#not-kept").await, 0);
    type_a_length(&browser, "72").await;
    type_a_length(&browser, "73").await;
    browser.until(IS_KEPT, "the design kept").await;
    browser.open_app(&site.url()).await;
    assert_eq!(browser.text("#cell-0-1").await, "73");
    undo(&browser, 1).await;
    assert_eq!(browser.text("#cell-0-1").await, "72");
}

/// A tab changes the design that another one shows: that is told at once, and nothing of either is lost.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn two_tabs_lose_nothing_of_each_other() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    type_a_length(&browser, "81").await;
    browser.until(IS_KEPT, "the design kept").await;
    let first = browser.client.window().await.expect("a tab");
    let second = browser.client.new_window(true).await.expect("a second tab").handle;
    browser.client.switch_to_window(second.clone()).await.expect("the second tab");
    browser.open_app(&site.url()).await;
    assert_eq!(browser.text("#cell-0-1").await, "81");
    type_a_length(&browser, "82").await;
    browser.until(IS_KEPT, "the design kept").await;

    browser.client.switch_to_window(first.clone()).await.expect("the first tab");
    browser.until("return !!document.querySelector('#elsewhere')", "a word of the other tab").await;
    browser.check_barriers().await;
    browser.screenshot("changed-elsewhere").await;
    browser.click("#elsewhere button").await;
    browser.until("return document.querySelector('#cell-0-1').textContent === '82'", "82").await;
    assert_eq!(browser.count("#elsewhere").await, 0);
    // Each goes on in its own way.
    type_a_length(&browser, "83").await;
    browser.until(IS_KEPT, "the design kept").await;
    browser.client.switch_to_window(second).await.expect("the second tab");
    browser.until("return !!document.querySelector('#elsewhere')", "a word of the other tab").await;
    type_a_length(&browser, "84").await;
    browser.until(IS_KEPT, "the copy kept").await;
    let lengths = "return keeping.keys('stringloft/design/').map((key) => JSON.parse(keeping.get(key)).strings[0].length).sort()";
    assert_eq!(browser.ask(lengths).await, json!(["83", "84"]));
    assert!(browser.text(".notice").await.contains("Both are kept"));
}

/// Clicks on the button with these words in the line of a design.
async fn act_on(browser: &Browser, title: &str, words: &str) {
    let press = format!(
        "const line = [...document.querySelectorAll('.shelf li')].find((li) => li.innerText.includes({}));
         [...line.querySelectorAll('button')].find((button) => button.innerText === {}).click();
         return true;",
        json!(title),
        json!(words)
    );
    browser.ask(&press).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_deleted_design_is_put_back_and_a_backup_brings_everything_back() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.fill("#title", "Rowan harp").await;
    browser.until(IS_KEPT, "the design kept").await;
    browser
        .ask("keeping.put('stringloft/design/spoilt', '{\"title\": \"Cut off\"'); return true")
        .await;
    browser.click("#shelf").await;
    act_on(&browser, "Rowan harp", "Duplicate").await;
    act_on(&browser, "Rowan harp (copy)", "Delete").await;
    browser.until("return !!document.querySelector('#bin')", "the bin").await;
    assert!(browser.text("#bin").await.contains("Rowan harp (copy)"));
    browser
        .until(
            "return document.querySelector('#room').textContent.includes(' MB of the ')",
            "the room",
        )
        .await;
    browser.check_barriers().await;
    browser.screenshot("bin-and-backup").await;

    let folder = browser.allow_downloads("backup").await;
    act_on(&browser, "Cut off", "Save as it is").await;
    let spoilt = browser.downloaded(&folder.join("design-spoilt.json")).await;
    assert_eq!(String::from_utf8_lossy(&spoilt), "{\"title\": \"Cut off\"");
    browser.click("#backup").await;
    browser.until("return [...document.querySelectorAll('[role=status]')].some((line) => line.innerText.includes('stringloft-backup-'))", "the backup").await;
    let named = || {
        let files = std::fs::read_dir(&folder).expect("a folder").flatten();
        let mut names = files.map(|file| file.file_name().to_string_lossy().into_owned());
        names.find(|name| name.starts_with("stringloft-backup-") && name.ends_with(".json"))
    };
    // The file may come a moment after the words.
    for _ in 0..200 {
        if named().is_some() {
            break;
        }
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    let backup = browser.downloaded(&folder.join(named().expect("a backup"))).await;
    let backup = String::from_utf8(backup).expect("text");

    act_on(&browser, "Rowan harp (copy)", "Put back").await;
    browser.until("return !document.querySelector('#bin')", "an empty bin").await;
    act_on(&browser, "Rowan harp (copy)", "Rename").await;
    browser.fill(".shelf input", "Elder harp").await;
    act_on(&browser, "New name", "Rename").await;
    // What is here stays as it is, and what differs comes beside it: the spoilt one and the harp are here already.
    let told = |words: &str| {
        format!("return document.querySelector('.window-body').innerText.includes({words:?})")
    };
    browser.give_file("#backup-file", "backup.json", &backup).await;
    browser
        .until(&told("Loaded from the backup: 0 designs. 2 were here already."), "the words")
        .await;
    let titles = "return keeping.keys('stringloft/design/').map((key) => keeping.get(key).match(/\"title\": \"([^\"]*)/)[1]).sort()";
    assert_eq!(browser.ask(titles).await, json!(["Cut off", "Elder harp", "Rowan harp"]));
    // A browser that has nothing gets all of it.
    let other = Browser::open(Screen::LAPTOP).await;
    other.open_app(&site.url()).await;
    other.click("#shelf").await;
    other.give_file("#backup-file", "backup.json", &backup).await;
    other
        .until(&told("Loaded from the backup: 2 designs. 0 were here already."), "the words")
        .await;
    assert_eq!(other.ask(titles).await, json!(["Cut off", "Rowan harp"]));
    assert!(other.text("#bin").await.contains("Rowan harp (copy)"));
    other.check_console().await;
}

/// The browser is killed at drawn moments from 100 ms after the last key on: whatever the page had called kept is there.
/// `KILLS=200` asks for more than the usual number of moments.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_browser_that_is_killed_loses_nothing_that_was_called_kept() {
    let kills: u32 = std::env::var("KILLS").ok().and_then(|text| text.parse().ok()).unwrap_or(12);
    let profile = target().join("e2e/killed-profile");
    let _ = std::fs::remove_dir_all(&profile);
    let site = Site::of_build("/");
    let (mut turn, mut late, mut lost) = (7_u64, 0, Vec::new());
    let mut before = String::new();
    for kill in 0..kills {
        let browser = Browser::open_at(Screen::LAPTOP, &profile).await;
        browser.open_first_screen(&site.url()).await;
        if kill > 0 {
            let there = browser.text("#cell-0-1").await;
            let called = site
                .asked()
                .iter()
                .filter_map(|path| path.split_once("told?kept=").map(|(_, cell)| cell.to_owned()))
                .next_back()
                .unwrap_or_default();
            // What was typed last is there, or at least what was called kept last.
            if there != before && called == before {
                lost.push(format!(
                    "kill {kill}: {there} in place of {before}, which was called kept"
                ));
            }
            late += u32::from(called != before);
        }
        browser.ask(TELL).await;
        before = format!("{}", 100 + kill);
        turn = turn.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        // Half of them in the first moments, the rest up to the time after which browsers flush by themselves.
        let after = 100 + (turn >> 33) % if kill % 2 == 0 { 60 } else { 5_000 };
        type_a_length(&browser, &before).await;
        tokio::time::sleep(Duration::from_millis(after)).await;
        browser.kill();
    }
    // Shown where a test prints what it says.
    eprintln!(
        "{kills} kills; at {late} of them the last change was not called kept yet; lost: {}",
        lost.len()
    );
    assert!(lost.is_empty(), "{lost:#?}");
    // Half of them are killed within 160 ms: if keeping took longer than that, all of these would be late. A busy machine is
    // late at some.
    assert!(late * 3 <= kills, "{late} of {kills} were not kept 100 ms after the last key");
}
