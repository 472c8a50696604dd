//! Choosing strings: the gauges in the drawer and a frame of lengths become a set, with its proof, a preview and
//! alternatives; limits that conflict are told; and all of it by keyboard.

use fantoccini::actions::{InputSource, MOUSE_BUTTON_LEFT, MouseActions, PointerAction};
use fantoccini::key::Key;
use serde_json::json;
use std::time::Duration;
use stringloft::design::presets::SAMPLES;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// What stands on the strings, as the list of the order of the page has it.
const TOTAL: &str = "return document.querySelector('#sum-total').textContent";
const UNDO: &str = "return document.querySelector('#undo').disabled";

async fn text(browser: &Browser, script: &str) -> String {
    browser.ask(script).await.as_str().unwrap_or_default().to_owned()
}

/// Opens a frame: notes and lengths of a sample as a table in a file, and nothing on its strings.
async fn open_frame(browser: &Browser) {
    let mut table = String::from("note,length_mm\n");
    for string in &SAMPLES[1].design().strings {
        table.push_str(&format!("{},{}\n", string.note, string.length));
    }
    browser.give_file("#file", "frame.csv", &table).await;
    browser
        .until("return document.querySelectorAll('#chart tbody tr').length === 26", "26 strings")
        .await;
}

async fn open_choose(browser: &Browser) {
    browser.click("#choose-view").await;
    let _ = browser.find("#find-set").await;
}

async fn answered(browser: &Browser, title: &str) {
    let script = format!(
        "const title = document.querySelector('#choose-title'); return Boolean(title) && title.textContent.startsWith({})",
        json!(title)
    );
    browser.until(&script, title).await;
}

/// Goes to something with the tab key.
async fn tab_to(browser: &Browser, css: &str) {
    for _ in 0..200 {
        let here =
            browser.ask(&format!("return document.activeElement.matches({})", json!(css))).await;
        if here == json!(true) {
            return;
        }
        browser.press(&Key::Tab.to_string()).await;
    }
    panic!("the tab key does not come to {css}");
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn gauges_at_hand_string_a_frame() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    open_frame(&browser).await;
    let bare = text(&browser, TOTAL).await;
    open_choose(&browser).await;
    browser.check_barriers().await;
    browser.click("#find-set").await;
    answered(&browser, "The best set").await;
    assert!(browser.text(".choose-says").await.contains("proved to be the best"));
    assert_eq!(browser.count("#choose-rows tbody tr").await, 26);
    assert!(browser.text("#ghost").await.contains("what is proposed"));
    assert_eq!(text(&browser, TOTAL).await, bare, "a preview changes nothing");
    browser.check_barriers().await;
    browser.screenshot("choose-preview").await;

    // Some of it: all but the first row.
    browser.click("#choose-rows tbody tr:first-child input").await;
    browser.click("#take-some").await;
    browser.until("return !document.querySelector('#choose-title')", "the taking").await;
    assert_eq!(browser.text("#ghost").await, "");
    let taken = text(&browser, TOTAL).await;
    assert_ne!(taken, bare);
    browser.click("#undo").await;
    assert_eq!(text(&browser, TOTAL).await, bare);
    assert_eq!(browser.ask(UNDO).await, true, "one step");
    browser.click("#redo").await;
    assert_eq!(text(&browser, TOTAL).await, taken);

    // What was left out comes with the next search, which stays with what is there otherwise.
    browser.click("#find-set").await;
    answered(&browser, "The best set").await;
    assert_eq!(browser.count("#choose-rows tbody tr").await, 1);
    browser.click("#take-all").await;
    browser.click("#find-set").await;
    answered(&browser, "The best set").await;
    let says = browser.text(".choose-says").await;
    assert!(says.contains("already has this set"), "{says}");

    // Leaving the view takes the ghost away.
    browser.click("#chart-view").await;
    assert_eq!(browser.text("#ghost").await, "");
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn limits_that_conflict_are_told_and_fewer_gauges_clicked_through() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    open_frame(&browser).await;
    open_choose(&browser).await;
    browser.click("#find-fronts").await;
    let _ = browser.find("#front .front-point").await;
    let sets = browser.count("#front .front-point").await;
    assert!(sets > 3, "{sets} sets");
    browser.screenshot("choose-alternatives").await;
    browser.click("#set-0").await;
    answered(&browser, "The set with").await;
    let few = browser.text("#choose-title").await;
    browser.press(&Key::Right.to_string()).await;
    browser.until("return document.activeElement.id === 'set-1'", "the next set").await;
    assert_ne!(browser.text("#choose-title").await, few);
    assert_eq!(browser.count(".front-point[aria-pressed=true]").await, 1);
    browser.check_barriers().await;

    // No set has less than 100 N in all.
    browser.click("#choose-limits").await;
    browser.fill(".drawing-group.open .field:nth-of-type(1) input", "100").await;
    browser.click("#find-set").await;
    answered(&browser, "The nearest set").await;
    let says = browser.text(".choose-says .wrong").await;
    assert!(says.contains("total tension"), "{says}");
    assert!(!browser.text("#choose-broken").await.is_empty());
    browser.screenshot("choose-conflict").await;
    browser.click("#leave-it").await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_wanted_curve_is_drawn_and_a_set_taken_by_keyboard() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.ask("document.querySelector('#choose-view').focus(); return true").await;
    browser.press(&Key::Enter.to_string()).await;
    let _ = browser.find("#wish-0").await;
    tab_to(&browser, "#wish-0").await;
    let name = "return document.querySelector('#wish-0').getAttribute('aria-label')";
    let before = text(&browser, name).await;
    for _ in 0..5 {
        browser.press(&Key::Up.to_string()).await;
    }
    assert_ne!(text(&browser, name).await, before);
    tab_to(&browser, "#find-set").await;
    browser.press(&Key::Enter.to_string()).await;
    answered(&browser, "The best set").await;
    tab_to(&browser, "#take-all").await;
    browser.press(&Key::Enter.to_string()).await;
    browser.until("return !document.querySelector('#choose-title')", "the taking").await;
    assert_eq!(
        text(&browser, "return document.activeElement.id").await,
        "find-set",
        "the keyboard is not lost"
    );
    browser.press(&(Key::Control + "z")).await;
    browser.press(&(Key::Control + "z")).await;
    assert_eq!(text(&browser, name).await, before);
    assert_eq!(browser.ask(UNDO).await, true, "five keys are one step");

    // The pointer does the same in one step.
    let at = "const box = document.querySelector('#wish-0').getBoundingClientRect();
              return [box.x + box.width / 2, box.y + box.height / 2]";
    let (x, y): (f64, f64) = serde_json::from_value(browser.ask(at).await).expect("a place");
    let to = |y: f64| PointerAction::MoveTo {
        duration: Some(Duration::from_millis(40)),
        x: x.round(),
        y: y.round(),
    };
    let drag = MouseActions::new("mouse".to_owned())
        .then(to(y))
        .then(PointerAction::Down { button: MOUSE_BUTTON_LEFT })
        .then(to(y - 15.0))
        .then(to(y - 30.0))
        .then(PointerAction::Up { button: MOUSE_BUTTON_LEFT });
    browser.client.perform_actions(drag).await.expect("the pointer");
    browser
        .until(
            &format!(
                "return document.querySelector('#wish-0').getAttribute('aria-label') !== {}",
                json!(before)
            ),
            "the point",
        )
        .await;
    browser.click("#undo").await;
    assert_eq!(text(&browser, name).await, before);
    assert_eq!(browser.ask(UNDO).await, true, "a drag is one step");
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn other_lengths_are_previewed_and_taken() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let total = text(&browser, TOTAL).await;
    open_choose(&browser).await;
    browser.click("#choose-reshape").await;
    browser.click("#find-lengths").await;
    answered(&browser, "Other lengths").await;
    assert!(browser.count("#choose-rows tbody tr").await > 10);
    browser.check_barriers().await;
    browser.screenshot("choose-lengths").await;
    browser.click("#take-all").await;
    browser.until(&format!("{TOTAL} !== {}", json!(total)), "other lengths").await;
    browser.click("#undo").await;
    assert_eq!(text(&browser, TOTAL).await, total);
    browser.check_console().await;
}

/// With nothing changed in the view, the first answer is one to take: nothing is found wrong with it.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_first_set_of_a_sample_is_taken_without_a_finding() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    open_choose(&browser).await;
    browser.screenshot("choose-family").await;
    browser.click("#find-set").await;
    answered(&browser, "The best set").await;
    let totals = browser.text(".choose-totals").await;
    for line in
        ["Tension of all strings", "Feel, lowest to highest", "Load share, lowest to highest"]
    {
        assert!(totals.contains(line), "{totals}");
    }
    let frame = "const totals = document.querySelector('.choose-totals');
                 return Boolean(totals) && totals.textContent.includes('Frame')";
    browser.until(frame, "what the frame carries, now and then").await;
    browser.check_barriers().await;
    browser.screenshot("choose-frame").await;
    browser.click("#take-all").await;
    browser.until("return !document.querySelector('#choose-title')", "the taking").await;
    browser.click("#chart-view").await;
    // Of the strings; the frame of the sample has its finding before and after.
    let strings = browser.count(".finding:not(.of-frame)").await;
    assert_eq!(strings, 0, "{}", browser.text("#findings").await);
    // The curve stays that of the harp as it was, so that the same search gives the same set.
    open_choose(&browser).await;
    browser.click("#find-set").await;
    answered(&browser, "The best set").await;
    let says = browser.text(".choose-says").await;
    assert!(says.contains("already has this set"), "{says}");
    browser.check_console().await;
}
