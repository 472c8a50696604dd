//! The grips in the three sides of the harp: a size is pulled by mouse, by a finger and by keys, undo takes it back in one
//! step, and a drag stays within its frame.

use std::time::Duration;

use fantoccini::actions::{InputSource, MOUSE_BUTTON_LEFT, MouseActions, PointerAction};
use fantoccini::key::Key;
use serde_json::{Value, json};
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;

use crate::browser::{Browser, Screen};
use crate::server::Site;
use crate::touch::{drag, middle};

const UNDO: &str = "return document.querySelector('#undo').disabled";

async fn open(screen: Screen, sample: usize) -> (Site, Browser) {
    let site = Site::of_build("/");
    let browser = Browser::open(screen).await;
    let fragment = link::write(&SAMPLES[sample].design()).expect("a link");
    browser.open_app(&format!("{}#{fragment}", site.url())).await;
    browser.ask("document.querySelector('#parts-view').click(); return true").await;
    let _ = browser.find("#parts-sides").await;
    browser.ask("document.querySelector('#parts-sides').click(); return true").await;
    let _ = browser.find("[data-pull=PillarWidth]").await;
    (site, browser)
}

fn knob(pull: &str) -> String {
    format!("[data-pull={pull}]")
}

/// What a grip says its size is.
async fn size(browser: &Browser, pull: &str) -> f64 {
    let script = format!("return document.querySelector('{}').ariaValueNow", knob(pull));
    let said = browser.ask(&script).await;
    said.as_str().and_then(|text| text.parse().ok()).expect("a number")
}

async fn until_size(browser: &Browser, pull: &str, is: &str) {
    let script = format!("return document.querySelector('{}').ariaValueNow {is}", knob(pull));
    browser.until(&script, &format!("{pull} {is}")).await;
}

fn to((x, y): (f64, f64)) -> PointerAction {
    PointerAction::MoveTo { duration: Some(Duration::from_millis(0)), x: x.round(), y: y.round() }
}

async fn point(browser: &Browser, acts: Vec<PointerAction>) {
    let mouse = acts.into_iter().fold(MouseActions::new("mouse".to_owned()), |m, act| m.then(act));
    browser.client.perform_actions(mouse).await.expect("the pointer");
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_size_is_pulled_by_mouse_in_one_step_and_given_up_with_escape() {
    let (_site, browser) = open(Screen::LAPTOP, 2).await;
    let before = size(&browser, "DepthLow").await;
    let list = "return document.querySelector('.parts-table tbody').textContent";
    let listed = browser.ask(list).await;
    let (x, y) = middle(&browser, &knob("DepthLow")).await;
    let down = || PointerAction::Down { button: MOUSE_BUTTON_LEFT };
    let up = || PointerAction::Up { button: MOUSE_BUTTON_LEFT };
    point(&browser, vec![to((x, y)), down(), to((x + 12.0, y + 6.0))]).await;
    until_size(&browser, "DepthLow", &format!("> {before}")).await;
    point(&browser, vec![to((x + 24.0, y + 12.0))]).await;
    until_size(&browser, "DepthLow", &format!("> {}", before + 20.0)).await;
    // The list waits until it is let go.
    assert_eq!(browser.ask(list).await, listed);
    browser.screenshot("pulling").await;
    point(&browser, vec![up()]).await;
    browser.until(&format!("{list} !== {listed}"), "the list").await;
    let after = size(&browser, "DepthLow").await;
    let at = middle(&browser, &knob("DepthLow")).await;
    // It stays under the pointer, but for the way across its own.
    assert!((at.0 - x).hypot(at.1 - y) > 10.0 && after > before + 20.0, "{at:?} {after}");
    browser.press(&(Key::Control + "z")).await;
    until_size(&browser, "DepthLow", &format!("== {before}")).await;
    assert_eq!(browser.ask(UNDO).await, true, "one step");

    let (x, y) = middle(&browser, &knob("BoardLow")).await;
    let before = size(&browser, "BoardLow").await;
    point(&browser, vec![to((x, y)), down(), to((x + 9.0, y))]).await;
    until_size(&browser, "BoardLow", &format!("> {before}")).await;
    browser.press(&Key::Escape.to_string()).await;
    point(&browser, vec![up()]).await;
    until_size(&browser, "BoardLow", &format!("== {before}")).await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn keys_pull_along_the_way_of_a_grip_and_a_reader_hears_its_name_and_size() {
    let (_site, browser) = open(Screen::LAPTOP, 1).await;
    let before = size(&browser, "PillarWidth").await;
    browser
        .ask(&format!("document.querySelector('{}').focus(); return true", knob("PillarWidth")))
        .await;
    // The grip is on the front of the pillar, which is at the left.
    browser.press(&Key::Left.to_string()).await;
    until_size(&browser, "PillarWidth", &format!("== {}", before + 1.0)).await;
    browser.press(&(Key::Shift + &Key::Right.to_string())).await;
    until_size(&browser, "PillarWidth", &format!("== {}", before - 9.0)).await;
    let said = browser
        .ask(&format!("const own = document.querySelector('{}'); return [own.role, own.ariaLabel, own.ariaValueText]", knob("PillarWidth")))
        .await;
    let said: Vec<String> = serde_json::from_value(said).expect("words");
    assert_eq!(said[0], "slider");
    assert!(said[1].contains("pillar") && said[2].ends_with(" mm"), "{said:?}");
    browser.check_barriers().await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_finger_pulls_the_nearest_grip_on_a_phone() {
    let (_site, browser) = open(Screen::PHONE, 2).await;
    browser.ask("document.querySelector('#parts-paper').scrollIntoView({ block: 'center' }); return true").await;
    let before = size(&browser, "DepthHigh").await;
    let (x, y) = middle(&browser, &knob("DepthHigh")).await;
    // A finger comes down beside it.
    drag(&browser, &[(x + 6.0, y + 4.0)], &[(x + 22.0, y + 12.0)]).await;
    until_size(&browser, "DepthHigh", &format!("> {before}")).await;
    let wide: Value = browser
        .ask(&format!("const box = document.querySelector('{}').getBoundingClientRect(); return Math.min(box.width, box.height)", knob("DepthHigh")))
        .await;
    assert!(wide.as_f64().expect("a size") >= 44.0, "{wide}");
    browser.screenshot("pulling-phone").await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_drag_of_a_grip_stays_within_its_frame() {
    let (_site, browser) = open(Screen::LAPTOP, SAMPLES.len() - 1).await;
    let mut told = String::new();
    for pull in ["PillarWidth", "DepthLow", "BoardLow", "BackRise"] {
        let script = format!(
            "const knob = document.querySelector({});
             const paper = document.querySelector('.sides-paper');
             const box = knob.getBoundingClientRect();
             const at = [box.x + box.width / 2, box.y + box.height / 2];
             const send = (type, step) => paper.dispatchEvent(new PointerEvent(type, {{ pointerId: 1, isPrimary: true,
               pointerType: 'mouse', button: 0, clientX: at[0] + step, clientY: at[1] + step, bubbles: true, cancelable: true }}));
             paper.setPointerCapture = () => {{}};
             send('pointerdown', 0);
             const times = [];
             for (let step = 1; step <= 24; step++) {{
               send('pointermove', step % 12);
               await new Promise((then) => requestAnimationFrame(() => {{
                 const begun = performance.now();
                 const channel = new MessageChannel();
                 channel.port1.onmessage = () => (times.push(performance.now() - begun), then());
                 channel.port2.postMessage(0);
               }}));
             }}
             const rest = performance.now();
             send('pointerup', 0);
             await new Promise((then) => requestAnimationFrame(() => requestAnimationFrame(then)));
             return [times.sort((one, other) => one - other)[12], performance.now() - rest];",
            json!(knob(pull))
        );
        let times = browser.ask(&format!("return (async () => {{ {script} }})()")).await;
        let (typical, rest): (f64, f64) = serde_json::from_value(times).expect("two times");
        told += &format!("{pull}: {typical:.1} ms a step, {rest:.0} ms when let go; ");
        // A busy machine takes longer; a page that lays all pieces on planks at each step takes far longer.
        assert!(typical < 100.0, "{told}");
    }
    eprintln!("{told}");
}
