//! Earlier states are noted by themselves, looked at, opened beside the present one, and part of a backup.

use fantoccini::key::Key;
use serde_json::{Value, json};
use std::time::Duration;

use crate::browser::{Browser, Screen};
use crate::keeping::{IS_KEPT, type_a_length};
use crate::server::Site;

/// A clock that the test sets ahead.
const CLOCK: &str = "
    const now = Date.now.bind(Date);
    Date.now = () => now() + Number(localStorage.getItem('ahead-min') ?? 0) * 60_000;
";

/// Sets the clock of the page ahead of the real one.
async fn set_ahead(browser: &Browser, minutes: u32) {
    browser.ask(&format!("localStorage['ahead-min'] = '{minutes}'; return true")).await;
}

/// Types a length, and waits until it is kept.
async fn keep_a_length(browser: &Browser, text: &str) {
    type_a_length(browser, text).await;
    browser.until(IS_KEPT, "the design kept").await;
}

/// Waits until so many states are noted, of all designs.
async fn noted(browser: &Browser, count: usize) {
    let script = format!(
        "return earlier('list', '').then((all) => JSON.parse(all).texts.length === {count})"
    );
    browser.until(&script, &format!("{count} states")).await;
}

/// Why each state in the list was noted, the last one first.
const WHYS: &str = "return [...document.querySelectorAll('#earlier-states tbody tr')].map((row) => row.cells[1].innerText)";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn earlier_states_are_kept_and_opened_beside_the_present_one() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": CLOCK })).await;
    browser.allow_clipboard(&site.origin()).await;
    browser.open_app(&site.url()).await;
    browser.click("#versions-view").await;
    assert!(browser.text("#versions").await.contains("None yet."), "a state of a sample");
    browser.click("#chart-view").await;

    keep_a_length(&browser, "81").await;
    set_ahead(&browser, 16).await;
    keep_a_length(&browser, "82").await;
    noted(&browser, 1).await;
    // Too soon for another by the clock; the link notes one in any case.
    set_ahead(&browser, 20).await;
    keep_a_length(&browser, "83").await;
    browser.click("#link").await;
    noted(&browser, 2).await;
    browser.click("#link").await;
    // The next day: the session ended in the state that was given away.
    set_ahead(&browser, 1_440).await;
    browser.open_app(&site.url()).await;
    keep_a_length(&browser, "84").await;
    // And the day after that: in one that was not.
    set_ahead(&browser, 2_880).await;
    browser.open_app(&site.url()).await;
    keep_a_length(&browser, "85").await;
    noted(&browser, 3).await;

    browser.click("#versions-view").await;
    browser.until("return !!document.querySelector('#earlier-states')", "the list").await;
    let whys = json!(["End of a session", "Link copied", "While you worked"]);
    assert_eq!(browser.ask(WHYS).await, whys);
    browser.click("#earlier-states tbody tr:nth-child(3) .look").await;
    browser.until("return !!document.querySelector('#earlier-shown')", "the state").await;
    let words = browser.text("#earlier-shown").await;
    assert!(words.contains("1 string differs.") && words.contains("81 → 85"), "it says: {words}");
    assert!(browser.text("#ghost").await.starts_with("Grey: "), "no grey curve");
    browser.check_barriers().await;
    browser.screenshot("earlier-state").await;
    for (name, screen) in [("dark", Screen::LAPTOP.in_the_dark()), ("phone", Screen::PHONE)] {
        browser.look_with(screen).await;
        browser.ask("document.querySelector('#earlier-shown').scrollIntoView({ block: 'center' }); return true").await;
        browser.screenshot(&format!("earlier-state-{name}")).await;
    }
    browser.check_barriers().await;
    browser.look_with(Screen::LAPTOP).await;

    browser.click("#open-earlier").await;
    browser.click("#chart-view").await;
    assert_eq!(browser.text("#cell-0-1").await, "81");
    let lengths = "return keeping.keys('stringloft/design/').map((key) => JSON.parse(keeping.get(key)).strings[0].length).sort()";
    assert_eq!(browser.ask(lengths).await, json!(["81", "85"]), "the present one was replaced");
    browser.click("#versions-view").await;
    assert!(browser.text("#versions").await.contains("None yet."), "states of another design");
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn earlier_states_go_into_a_backup_and_come_out_of_it() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.allow_clipboard(&site.origin()).await;
    browser.open_app(&site.url()).await;
    keep_a_length(&browser, "81").await;
    browser.click("#link").await;
    noted(&browser, 1).await;
    keep_a_length(&browser, "82").await;
    // What the browser says before and after it prints; and an order list.
    let print = "for (const when of ['before', 'after']) dispatchEvent(new Event(`${when}print`)); return true";
    browser.ask(print).await;
    noted(&browser, 2).await;
    let folder = browser.allow_downloads("backup-of-states").await;
    browser.click("#order-view").await;
    browser.click("#order-csv").await;
    noted(&browser, 3).await;
    browser.click("#chart-view").await;
    browser.click("#shelf").await;
    browser.click("#backup").await;
    browser.until("return [...document.querySelectorAll('[role=status]')].some((line) => line.innerText.includes('stringloft-backup-'))", "the backup").await;
    let backup = loop {
        let files = std::fs::read_dir(&folder).expect("a folder").flatten();
        let mut files = files.map(|file| file.path());
        if let Some(file) = files.find(|file| file.extension().is_some_and(|end| end == "json")) {
            break browser.downloaded(&file).await;
        }
        tokio::time::sleep(Duration::from_millis(50)).await;
    };
    let backup = String::from_utf8(backup).expect("text");

    let other = Browser::open(Screen::LAPTOP).await;
    other.open_app(&site.url()).await;
    other.click("#shelf").await;
    // Twice: what is here already is no other state.
    for _ in 0..2 {
        other.give_file("#backup-file", "backup.json", &backup).await;
        other
            .until("return document.querySelector('.window-body').innerText.includes('Loaded from the backup')", "the words")
            .await;
        noted(&other, 3).await;
    }
    other.click(".shelf button.link").await;
    other.until("return !document.querySelector('dialog[open]')", "the design").await;
    assert_eq!(other.text("#cell-0-1").await, "82");
    other.click("#versions-view").await;
    other.until("return !!document.querySelector('#earlier-states')", "the list").await;
    let whys = json!(["Order list saved", "Printed", "Link copied"]);
    assert_eq!(other.ask(WHYS).await, whys);
    other.check_console().await;

    // From the list of designs, beside the one that is there.
    other.click("#shelf").await;
    other.ask("[...document.querySelectorAll('.shelf button')].find((one) => one.innerText === 'Earlier states').click(); return true").await;
    other
        .until("return document.querySelectorAll('.shelf-states li').length === 3", "its states")
        .await;
    other.screenshot("earlier-states-of-a-row").await;
    other.check_barriers().await;
    other.click(".shelf-states li:last-child button").await;
    other.until("return !document.querySelector('dialog[open]')", "the state").await;
    other.click("#chart-view").await;
    assert_eq!(other.text("#cell-0-1").await, "81");
    let lengths = "return keeping.keys('stringloft/design/').map((key) => JSON.parse(keeping.get(key)).strings[0].length).sort()";
    assert_eq!(other.ask(lengths).await, json!(["81", "82"]), "the one that was there is another");
    other.check_console().await;

    // A design that is deleted for good takes its states along.
    browser.press(&Key::Escape.to_string()).await;
    browser.click("#versions-view").await;
    browser.click("#earlier-states .look").await;
    browser.click("#open-earlier").await;
    browser.until(IS_KEPT, "the state kept as a design").await;
    browser.click("#shelf").await;
    let button = |words: &str| {
        format!(
            "[...document.querySelectorAll('.shelf button')].find((one) => one.innerText === '{words}').click(); return true;"
        )
    };
    browser.ask(&button("Delete")).await;
    browser.until("return !!document.querySelector('#bin')", "the bin").await;
    noted(&browser, 3).await;
    browser
        .ask(&format!("setTimeout(() => {{ {} }}); return true", button("Delete for good")))
        .await;
    // The question comes in its own time.
    for _ in 0..50 {
        if browser.client.accept_alert().await.is_ok() {
            break;
        }
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    noted(&browser, 0).await;
}

/// A year of work, a state each quarter of an hour of it and one in ten given away.
const A_YEAR: &str = "
    return import(document.querySelector('[data-more]').dataset.more).then(({ surplus }) => {
      const quarter = 900_000, begun = 1e12;
      let kept = [], most = 0, lost = 0;
      let now = begun;
      for (let day = 0; day < 365; day += 1 + (day % 5)) {
        for (let turn = 0; turn < 12; turn++) {
          now = begun + day * 96 * quarter + turn * quarter;
          kept.push(['harp', now, (day + turn) % 10 ? 'time' : 'print', 15_000]);
          const gone = new Set(surplus(kept, now));
          const last = kept.at(-1);
          kept = kept.filter((state) => !gone.has(state));
          most = Math.max(most, kept.length);
          lost += kept[0][1] !== begun || kept.at(-1) !== last;
        }
      }
      const gaps = kept.slice(1).map((state, at) => state[1] - kept[at][1]);
      const large = [1, 2, 3, 4].map((at) => ['harp', at, 'time', 400_000]);
      return {
        most, lost,
        older: gaps[0] / gaps.at(-1),
        recent: kept.filter((state) => now - state[1] < 8 * 96 * quarter).length,
        given: kept.filter((state) => state[2] === 'print').length,
        large: surplus(large, 5).length,
        one: surplus([['harp', 1, 'time', 9_000_000]], 5).length,
      };
    });
";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn of_many_states_the_oldest_stand_furthest_apart() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let found = browser.ask(A_YEAR).await;
    let number = |name: &str| found[name].as_f64().unwrap_or(f64::NAN);
    assert_eq!(found["most"], json!(20), "{found}");
    assert_eq!(found["lost"], json!(0), "the first or the last went: {found}");
    assert!(number("older") > 10.0, "the oldest stand no further apart: {found}");
    assert!((4.0..=12.0).contains(&number("recent")), "of the last week: {found}");
    assert!(number("given") >= 4.0, "of those that were given away: {found}");
    assert_eq!((&found["large"], &found["one"]), (&Value::from(2), &Value::from(0)), "{found}");
}
