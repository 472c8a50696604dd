//! The drawing: a pin is pulled and everything follows in the same frame, by pointer and by keys.

use fantoccini::actions::{InputSource, MOUSE_BUTTON_LEFT, MouseActions, PointerAction};
use fantoccini::key::Key;
use serde_json::Value;
use std::time::Duration;
use stringloft::design::document::DrivesSpec;
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// Everything that follows from a length, as it is on the page now.
const SEEN: &str = "
    const text = (css) => document.querySelector(css).textContent;
    const seen = () => ({
      length: text('#loft-readout'),
      readout: text('#readout'),
      total: text('#sum-total'),
      curves: document.querySelector('#curves').toDataURL(),
      band: document.querySelector('#band').toDataURL(),
      frame: text('#sum-frame'),
      loads: text('.drawing-loads tbody'),
      strings: document.querySelector('#loft svg g').innerHTML,
    });
";
/// The middle of the ring about the marked string's bridge pin, on the page.
const RING: &str = "
    const ring = document.querySelector('#loft .ring').getBoundingClientRect();
    return [ring.x + ring.width / 2, ring.y + ring.height / 2];
";
const VIEW: &str = "return document.querySelector('#loft svg').getAttribute('viewBox')";

async fn open(screen: Screen) -> (Site, Browser) {
    let site = Site::of_build("/");
    let browser = Browser::open(screen).await;
    browser.open_app(&site.url()).await;
    browser.click("#drawing").await;
    let _ = browser.find("#loft .string").await;
    (site, browser)
}

/// Marks a string: the keyboard goes to the paper.
async fn mark(browser: &Browser, number: usize) {
    browser.ask("document.querySelector('#loft').focus()").await;
    browser.press(&Key::Home.to_string()).await;
    for _ in 1..number {
        browser.press(&Key::PageDown.to_string()).await;
    }
    let words = format!("String {number},");
    browser
        .until(
            &format!(
                "return document.querySelector('#loft-readout').textContent.startsWith('{words}')"
            ),
            &words,
        )
        .await;
}

async fn pin(browser: &Browser) -> (f64, f64) {
    let at: (f64, f64) = serde_json::from_value(browser.ask(RING).await).expect("a ring");
    at
}

fn to((x, y): (f64, f64)) -> PointerAction {
    PointerAction::MoveTo { duration: Some(Duration::from_millis(0)), x: x.round(), y: y.round() }
}

async fn point(browser: &Browser, acts: Vec<PointerAction>) {
    let mouse = acts.into_iter().fold(MouseActions::new("mouse".to_owned()), |m, act| m.then(act));
    browser.client.perform_actions(mouse).await.expect("the pointer");
}

async fn seen(browser: &Browser) -> Value {
    browser.ask(&format!("{SEEN} return seen()")).await
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_pin_that_is_dragged_takes_everything_along_in_the_same_frame() {
    let (site, browser) = open(Screen::LAPTOP).await;
    browser.click("#group-loads").await;
    let _ = browser.find(".drawing-loads td").await;
    mark(&browser, 20).await;
    let before = seen(&browser).await;
    let (x, y) = pin(&browser).await;
    let down = PointerAction::Down { button: MOUSE_BUTTON_LEFT };
    point(&browser, vec![to((x, y)), down, to((x, y - 15.0))]).await;
    // Looks at the beginning of the frame after the one that belongs to the move.
    let look = format!(
        "{SEEN} window.addEventListener('pointermove', () => requestAnimationFrame(() =>
           requestAnimationFrame(() => {{ window.seenInFrame = seen(); }})), {{ once: true, capture: true }});
         return seen()"
    );
    let between = browser.ask(&look).await;
    point(&browser, vec![to((x, y - 45.0))]).await;
    browser.until("return Boolean(window.seenInFrame)", "a frame").await;
    let after = browser.ask("return window.seenInFrame").await;
    for key in ["length", "readout", "total", "curves", "band", "frame", "loads", "strings"] {
        assert_ne!(after[key], between[key], "{key} did not follow in the frame");
        assert_ne!(between[key], before[key], "{key} did not follow");
    }
    browser.screenshot("lofting-drag").await;
    point(&browser, vec![PointerAction::Up { button: MOUSE_BUTTON_LEFT }]).await;
    browser.press(&(Key::Control + "z")).await;
    let back = seen(&browser).await;
    for key in ["length", "readout", "total", "frame", "loads", "strings"] {
        assert_eq!(back[key], before[key], "{key} did not come back with one undo");
    }
    assert_eq!(browser.ask("return document.querySelector('#undo').disabled").await, true);

    // Escape in the middle of a drag puts it back, and leaves no step.
    let down = PointerAction::Down { button: MOUSE_BUTTON_LEFT };
    point(&browser, vec![to((x, y)), down, to((x, y - 9.0))]).await;
    browser
        .until(
            &format!(
                "return document.querySelector('#sum-total').textContent !== {}",
                before["total"]
            ),
            "the pull",
        )
        .await;
    browser.press(&Key::Escape.to_string()).await;
    point(&browser, vec![PointerAction::Up { button: MOUSE_BUTTON_LEFT }]).await;
    assert_eq!(seen(&browser).await["total"], before["total"]);
    assert_eq!(browser.ask("return document.querySelector('#undo').disabled").await, true);
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_keys_do_what_the_pointer_does() {
    let (_site, browser) = open(Screen::LAPTOP).await;
    mark(&browser, 8).await;
    let length =
        "return document.querySelector('#loft-readout').textContent.match(/: ([0-9.]+) mm/)[1]";
    let mm =
        async || browser.ask(length).await.as_str().expect("a length").parse::<f64>().expect("mm");
    let before = mm().await;
    browser.press(&(Key::Alt + &Key::Up.to_string())).await;
    assert_eq!(mm().await, before + 0.5);
    let said =
        browser.ask("return document.querySelector('.loft [role=status]').textContent").await;
    assert!(said.as_str().is_some_and(|said| said.starts_with("String 8,")), "{said}");
    browser.press(&(Key::Alt + &(Key::Shift + &Key::Down.to_string()))).await;
    assert_eq!(mm().await, before - 4.5);
    browser.press(&(Key::Control + "z")).await;
    assert_eq!(mm().await, before);

    let whole = browser.ask(VIEW).await;
    browser.press("+").await;
    let near = browser.ask(VIEW).await;
    browser.press(&Key::Left.to_string()).await;
    let aside = browser.ask(VIEW).await;
    assert!(near != whole && aside != near);
    browser.press("0").await;
    assert_eq!(browser.ask(VIEW).await, whole);
    browser.click("#loft-larger").await;
    assert_eq!(browser.ask(VIEW).await, near);
    browser.click("#loft-fit").await;
    assert_eq!(browser.ask(VIEW).await, whole);

    // The details of the string, and back.
    browser.ask("document.querySelector('#loft').focus()").await;
    browser.press(&Key::Enter.to_string()).await;
    browser
        .until(
            "return document.querySelector('dialog[open] h2')?.textContent.includes('8')",
            "details",
        )
        .await;
    browser.press(&Key::Escape.to_string()).await;
    browser.until("return document.activeElement.id === 'loft'", "the keyboard on the paper").await;
    // F6 goes on to the groups, the findings, the head and back.
    let mut parts = Vec::new();
    for _ in 0..4 {
        browser.press(&Key::F6.to_string()).await;
        parts.push(browser.ask("return document.activeElement.id").await);
    }
    assert_eq!(parts, ["drawing-side", "findings", "title", "loft"]);
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_pointer_looks_around_and_shares_its_string_with_the_curves() {
    let (_site, browser) = open(Screen::DESKTOP).await;
    mark(&browser, 20).await;
    let (x, y) = pin(&browser).await;
    let cross = "return document.querySelector('.cross').style.left";
    let before = browser.ask(cross).await;
    point(&browser, vec![to((x - 60.0, y + 60.0))]).await;
    browser
        .until(
            &format!("return document.querySelector('.cross').style.left !== {before}"),
            "the cross-hair",
        )
        .await;
    assert_eq!(browser.count("#loft .pointed").await, 1);

    let whole = browser.ask(VIEW).await;
    let wheel = format!(
        "const paper = document.querySelector('#loft');
         const turn = new WheelEvent('wheel', {{ deltaY: -240, clientX: {x}, clientY: {y}, bubbles: true, cancelable: true }});
         paper.dispatchEvent(turn);
         return turn.defaultPrevented"
    );
    assert_eq!(browser.ask(&wheel).await, true, "the page would scroll");
    let near = browser.ask(VIEW).await;
    assert_ne!(near, whole);
    let (after_x, after_y) = pin(&browser).await;
    assert!(
        (after_x - x).abs() < 1.5 && (after_y - y).abs() < 1.5,
        "the pin stays under the pointer"
    );

    // Empty paper, dragged.
    let corner = browser.ask("const r = document.querySelector('#loft').getBoundingClientRect(); return [r.x + 20, r.y + 20]").await;
    let (x, y): (f64, f64) = serde_json::from_value(corner).expect("a corner");
    let (down, up) = (
        PointerAction::Down { button: MOUSE_BUTTON_LEFT },
        PointerAction::Up { button: MOUSE_BUTTON_LEFT },
    );
    point(&browser, vec![to((x, y)), down, to((x + 40.0, y + 30.0)), up]).await;
    browser.until(&format!("{VIEW} !== {near}"), "the paper to move").await;
    assert_eq!(browser.ask("return document.querySelector('#undo').disabled").await, true);
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_nodes_of_a_drawn_curve_are_moved_by_keys_and_give_the_lengths() {
    let site = Site::of_build("/");
    let mut design =
        SAMPLES.iter().find(|sample| sample.key == "floor-36").expect("a sample").design();
    design.geometry.drives = DrivesSpec::NeckCurve;
    design.geometry.nodes_mm =
        vec![(0.0, 1_330.0), (180.0, 1_230.0), (350.0, 1_000.0), (520.0, 900.0)];
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&format!("{}#{}", site.url(), link::write(&design).expect("a link"))).await;
    browser.click("#drawing").await;
    let _ = browser.find(".node").await;
    assert_eq!(browser.count(".node").await, 4);
    let hint = browser.text("#loft-hint").await;
    assert!(hint.contains("move its nodes"), "{hint}");
    let total = browser.text("#sum-total").await;
    browser.ask("document.querySelectorAll('.node')[1].focus()").await;
    browser.press(&(Key::Shift + &Key::Up.to_string())).await;
    assert_ne!(browser.text("#sum-total").await, total);
    browser.press(&(Key::Control + "z")).await;
    assert_eq!(browser.text("#sum-total").await, total);
    browser.check_barriers().await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_neck_is_glued_up_and_plated_and_a_wood_is_measured() {
    for (name, screen) in [
        ("laptop", Screen::LAPTOP),
        ("dark", Screen::LAPTOP.in_the_dark()),
        ("phone", Screen::PHONE),
    ] {
        let (_site, browser) = open(screen).await;
        browser.ask("document.querySelector('#group-woods').click()").await;
        // A bar of 450 kg/m³ and 12.3 GPa, as worked out by hand in the tests of its words.
        browser.click("#add-wood").await;
        for (id, texts) in
            [("own-wood", &["600", "40", "20", "216.1"][..]), ("own-test", &["500", "10", "0.778"])]
        {
            for (at, text) in texts.iter().enumerate() {
                browser.fill(&format!("#{id}-0-{at}"), text).await;
            }
        }
        let told = "return document.body.textContent.includes('Density 450 kg/m³, modulus in bending 12.3 GPa. Its strengths are not known')";
        browser.until(told, "what the bar tells").await;
        // It can be chosen where woods are chosen, and for a layer.
        let listed = "return [...document.querySelectorAll('select option')].filter((one) => one.value === 'own-1').length";
        let before = browser.ask(listed).await.as_u64().unwrap_or_default();
        assert!(before >= 6, "{before}");
        for _ in 0..3 {
            // The head of the group may lie over it, as it stays in sight.
            browser.ask("document.querySelector('#add-layer').click()").await;
        }
        let more = format!("{listed} === {}", before + 3);
        browser.until(&more, "the wood is in the list of each layer").await;
        browser.fill("#layer-1-1", "90").await;
        browser.fill("#neck-metal-0-0", "2").await;
        browser.fill("#neck-metal-0-1", "50").await;
        browser
            .ask("document.querySelector('#layer-1-1').scrollIntoView({ block: 'center' })")
            .await;
        browser.screenshot(&format!("neck-layers-{name}")).await;
        browser
            .ask("document.querySelector('#own-wood-0-0').scrollIntoView({ block: 'center' })")
            .await;
        browser.screenshot(&format!("own-wood-{name}")).await;
        browser.check_barriers().await;
        browser.ask("document.querySelector('#group-loads').click()").await;
        let granted = "return document.body.textContent.includes('The neck is laminated from 8.0 mm sugar maple, 8.0 mm sugar maple at 90°')";
        browser.until(granted, "what is taken for granted").await;
        browser.check_console().await;
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_drawing_has_no_barriers() {
    for screen in [Screen::LAPTOP, Screen::LAPTOP.in_the_dark(), Screen::PHONE] {
        let (_site, browser) = open(screen).await;
        browser.check_barriers().await;
        browser.ask("document.querySelector('#over').value = 'measures'; document.querySelector('#over').dispatchEvent(new Event('change', { bubbles: true }))").await;
        let _ = browser.find("#loft .over text").await;
        // What the years do stands under the loads, and how the harp gives under the stringing.
        for (group, title, least) in [("loads", "years", 4), ("stringing", "giving", 20)] {
            browser.ask(&format!("document.querySelector('#group-{group}').click()")).await;
            let rows = format!(
                "return document.querySelectorAll('section[aria-labelledby={title}-title] tbody tr').length >= {least}"
            );
            browser.until(&rows, title).await;
            browser.check_barriers().await;
        }
        browser.check_console().await;
    }
}
