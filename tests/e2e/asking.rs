//! The questions beside findings, figures and fields: reached by keyboard and finger, asked once, gone when they are clear.

use fantoccini::key::Key;
use serde_json::json;

use crate::browser::{Browser, Screen};
use crate::screens::{Step, take};
use crate::server::Site;

const ASKED: &str =
    "return [...document.querySelectorAll('.finding .ask')].map((one) => one.title)";

/// Makes one length far too long, which is a finding, and waits for its question.
async fn mistyped(browser: &Browser) -> String {
    for step in [Step::Cell(4, 1), Step::Keys("900"), Step::Keys("\u{e007}")] {
        take(browser, step).await.expect("a length");
    }
    let _ = browser.find(".finding .ask").await;
    browser
        .ask("return document.querySelector('.finding .ask').title")
        .await
        .as_str()
        .expect("a question")
        .to_owned()
}

/// The titles of the questions beside the findings.
async fn titles(browser: &Browser) -> Vec<String> {
    let all = browser.ask(ASKED).await;
    all.as_array()
        .expect("a list")
        .iter()
        .filter_map(|one| one.as_str())
        .map(str::to_owned)
        .collect()
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_question_is_answered_where_it_arises_and_gone_when_it_is_clear() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let question = mistyped(&browser).await;
    let all = titles(&browser).await;
    let mut once = all.clone();
    once.sort();
    once.dedup();
    assert_eq!(once.len(), all.len(), "each beside one finding: {all:?}");
    // By the keyboard alone.
    browser.ask("document.querySelector('.finding .ask').focus(); return 1").await;
    browser.press(&Key::Enter.to_string()).await;
    let answer = browser.text(".finding .answer").await;
    assert!(answer.starts_with(&question), "{answer}");
    let open = "return document.querySelector('.finding .ask').ariaExpanded";
    assert_eq!(browser.ask(open).await, "true");
    browser.press(&Key::Enter.to_string()).await;
    assert_eq!(browser.count(".finding .answer").await, 0);
    browser.press(&Key::Enter.to_string()).await;
    browser.press(&Key::Tab.to_string()).await;
    browser.press(&Key::Enter.to_string()).await;
    let gone = format!("{ASKED}.every((title) => title !== {})", json!(question));
    browser.until(&gone, "the question to go").await;
    let within = "return Boolean(document.activeElement.closest('.finding'))";
    browser.until(within, "the keyboard beside what was asked").await;
    // It stays away after the page was opened again, and comes back from the help.
    browser.ask("return new Promise((done) => setTimeout(() => done(1), 300))").await;
    browser.open_app(&site.url()).await;
    let again = mistyped(&browser).await;
    assert_ne!(again, question);
    browser.click("#help-open").await;
    browser.click("#hints-again").await;
    let back = format!("{ASKED}.includes({})", json!(question));
    browser.until(&back, "the question to come back").await;
    browser
        .until("return !document.querySelector('#hints-again')", "nothing more to bring back")
        .await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn figures_fields_and_loads_have_their_questions_under_fingers_too() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::PHONE).await;
    browser.open_app(&site.url()).await;
    take(&browser, Step::Cell(2, 5)).await.expect("a figure");
    let _ = browser.find(".cell-line .ask").await;
    let small = "return [...document.querySelectorAll('.ask')].map((one) => one.getBoundingClientRect()).filter((box) => box.width && (box.width < 44 || box.height < 44)).length";
    assert_eq!(browser.ask(small).await, 0, "beside the chart");
    // A column that nobody asks about has none.
    take(&browser, Step::Cell(2, 1)).await.expect("a length");
    browser.until("return !document.querySelector('.cell-line .ask')", "no question").await;
    for (open, question) in
        [("#instrument", "What is load share?"), ("#materials", "What does \"from memory\" mean?")]
    {
        browser.click(open).await;
        let css = format!("dialog[open] .ask[title='{question}']");
        browser.click(&css).await;
        let _ = browser.find("dialog[open] .answer").await;
        assert_eq!(browser.ask(small).await, 0, "{open}");
        browser.ask("document.querySelector('dialog[open]').close(); return 1").await;
        browser.until("return !document.querySelector('dialog')", "the page").await;
    }
    browser.check_console().await;
}
