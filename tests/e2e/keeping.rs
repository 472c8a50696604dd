//! What is not kept is said to be not kept, and nobody leaves it behind unasked.

use fantoccini::key::Key;
use serde_json::json;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// A browser whose storage is full from the start of every page, until it is given room.
const FULL: &str = "
    const puts = Storage.prototype.setItem;
    Storage.prototype.setItem = function (...all) {
      if (!window.room) throw new DOMException('no', 'QuotaExceededError');
      return puts.apply(this, all);
    };
";

/// Whether the page has the user asked before it is left. A driven browser answers the question by itself.
const IS_ASKED: &str = "
    const leaving = document.createEvent('BeforeUnloadEvent');
    leaving.initEvent('beforeunload', false, true);
    dispatchEvent(leaving);
    return leaving.defaultPrevented;
";

async fn type_a_length(browser: &Browser, text: &str) {
    browser.click("#cell-0-1").await;
    browser.press(text).await;
    browser.press(&Key::Enter.to_string()).await;
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
    assert_eq!(browser.ask(IS_ASKED).await, json!(true), "nobody is asked before leaving");

    // Once there is room, the line goes and nobody is asked.
    browser.ask("window.room = true; return true").await;
    type_a_length(&browser, "89").await;
    browser.until("return !document.querySelector('#not-kept')", "the line gone").await;
    assert_eq!(browser.ask(IS_ASKED).await, json!(false), "asked for nothing");
    browser.open_app(&site.url()).await;
    assert_eq!(browser.text("#cell-0-1").await, "89");
    assert_eq!(browser.count("#not-kept").await, 1, "the next page is full again");
}
