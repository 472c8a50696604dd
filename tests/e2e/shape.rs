//! The shape of the harp by keyboard alone: spacing by zones, wrong numbers, undo, and what drives.

use fantoccini::key::Key;
use serde_json::{Value, json};

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// The picture of the harp.
const PICTURE: &str = "return document.querySelector('#loft svg').innerHTML";

/// The picture of the harp once it is another than `before` and stays so for a third of a second: it is drawn in steps,
/// and fits itself to its room anew where the fields beside it or what the frame bears made that another.
async fn drawn_anew(browser: &Browser, before: &Value) -> Value {
    let script = format!(
        "return new Promise((then) => {{
          let [last, same] = [null, 0];
          const look = () => {{
            const now = document.querySelector('#loft svg').innerHTML;
            same = now === last ? same + 1 : 0;
            last = now;
            const isOld = document.querySelector('.summary .of-before');
            if (now !== {before} && same >= 10 && !isOld) then(now);
            else setTimeout(look, 33);
          }};
          look();
        }})"
    );
    browser.ask(&script).await
}

/// What is said in the fieldset with the keyboard.
const SAID: &str = "return document.activeElement.closest('fieldset').innerText";

/// What was told last, wherever the page tells it.
const TOLD: &str = "return [...document.querySelectorAll('[role=status]')].map((told) => told.innerText).join('\\n')";

/// Opens the drawing with the fields of the shape.
async fn open_shape(browser: &Browser) {
    browser.ask("document.querySelector('#drawing').focus(); return true").await;
    browser.press(&Key::Enter.to_string()).await;
    let _ = browser.find(".spacing select").await;
}

/// Goes to a field with the tab key.
async fn tab_to(browser: &Browser, what: &str) {
    for _ in 0..200 {
        let here = browser
            .ask(&format!("return Boolean(document.activeElement.matches({}))", json!(what)))
            .await;
        if here == json!(true) {
            return;
        }
        browser.press(&Key::Tab.to_string()).await;
    }
    panic!("the tab key does not come to {what}");
}

/// Types over what the field with the keyboard holds.
async fn type_over(browser: &Browser, text: &str) {
    browser.press(&(Key::Control + "a")).await;
    browser.press(text).await;
}

async fn held(browser: &Browser) -> String {
    browser.ask("return document.activeElement.value").await.as_str().unwrap_or_default().to_owned()
}

async fn said(browser: &Browser, script: &str) -> String {
    browser.ask(script).await.as_str().unwrap_or_default().to_owned()
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_spacing_is_changed_and_undone_by_keyboard() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    open_shape(&browser).await;
    // Of one size, as the drawing fits itself to the room that the words around it leave.
    let size = "document.querySelector('.loft-paper').style = 'flex: none; width: 500px; height: 400px'; return true";
    browser.ask(size).await;
    // The sample has zones. All alike: the drawing follows.
    let sample = drawn_anew(&browser, &Value::Null).await;
    tab_to(&browser, ".spacing select").await;
    browser.press("A").await;
    browser.until("return !document.querySelector('#zone-0-1')", "the uniform spacing").await;
    let uniform = drawn_anew(&browser, &sample).await;

    // By zones: nothing moves, and it is told. An arrow, as letters typed in a row make a word.
    browser.press(&Key::Down.to_string()).await;
    let _ = browser.find("#zone-0-1").await;
    assert!(
        said(&browser, TOLD).await.contains("stay where they were"),
        "{}",
        said(&browser, TOLD).await
    );
    browser.until(&format!("{PICTURE} === {uniform}"), "the drawing as it was").await;

    // A wider gap in the bass: the drawing follows.
    tab_to(&browser, "#zone-0-1").await;
    type_over(&browser, "18").await;
    let graded = drawn_anew(&browser, &uniform).await;

    // What is no number of the field stays typed, with a sentence, and changes nothing.
    for wrong in ["abc", "0", "5000"] {
        type_over(&browser, wrong).await;
        assert_eq!(held(&browser).await, wrong);
        let said = said(&browser, SAID).await;
        assert!(said.contains("Write a number from 1 to 200 mm"), "{wrong}: {said}");
        assert_eq!(browser.ask("return document.activeElement.ariaInvalid").await, json!("true"));
        if wrong == "5000" {
            browser.press(&Key::Tab.to_string()).await;
            let left = browser.ask("return document.querySelector('#zone-0-1').value").await;
            assert_eq!(left, json!("5000"), "it stays when the field is left");
            browser.press(&(Key::Shift + &Key::Tab.to_string())).await;
        }
    }
    browser.check_barriers().await;
    // The last good number: a number that changed the drawing on the way to 5000 is one too.
    browser.press(&Key::Escape.to_string()).await;
    let back = held(&browser).await;
    assert!(back.parse::<f64>().is_ok_and(|mm| (1.0..=200.0).contains(&mm)), "{back}");
    assert!(said(&browser, SAID).await.contains(&format!("Back to {back}.")));
    assert_eq!(browser.count("#zone-0-1").await, 1, "the panel stays open");

    // The arrow keys walk through the column.
    browser.press(&Key::Down.to_string()).await;
    assert_eq!(browser.ask("return document.activeElement.id").await, json!("zone-1-1"));
    browser.press(&Key::Up.to_string()).await;
    type_over(&browser, "18").await;
    browser.until(&format!("{PICTURE} === {graded}"), "the drawing as it was").await;

    // Undo brings back the widths, then the kind.
    let undo = Key::Control + "z";
    for _ in 0..6 {
        if browser.count("#zone-0-1").await == 0 {
            break;
        }
        browser.press(&undo).await;
    }
    assert_eq!(browser.count("#zone-0-1").await, 0);
    browser.until(&format!("{PICTURE} === {uniform}"), "the uniform spacing").await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_column_is_pasted_and_the_curve_takes_over_and_gives_back() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let cells = "return [...document.querySelectorAll('#chart tbody tr')].map((row) => row.children[3].innerText)";
    let _ = browser.find("#chart tbody tr").await;
    let before = browser.ask(cells).await;
    open_shape(&browser).await;
    tab_to(&browser, ".spacing select").await;
    browser.press("S").await;
    tab_to(&browser, "#gap-0-0").await;
    let paste = |text: &str| {
        format!(
            "const data = new DataTransfer();
             data.setData('text/plain', {});
             document.activeElement.dispatchEvent(
               new ClipboardEvent('paste', {{ clipboardData: data, bubbles: true, cancelable: true }}));
             return true;",
            json!(text)
        )
    };
    let values =
        "return [0, 1, 2].map((gap) => document.querySelector(`#gap-${gap}-0`).value).join()";
    browser.ask(&paste("20\n19,5\n19\n")).await;
    assert_eq!(browser.ask(values).await, json!("20,19.5,19"));
    browser.ask(&paste("21\nwide\n")).await;
    assert!(said(&browser, SAID).await.contains("Nothing was pasted: \"wide\" in row 2"));
    assert_eq!(browser.ask(values).await, json!("20,19.5,19"));

    tab_to(&browser, "fieldset.drives select").await;
    browser.press(&Key::Down.to_string()).await;
    let _ = browser.find("#node-0-0").await;
    let told = said(&browser, TOLD).await;
    assert!(told.contains("now sets the lengths") && told.contains("change of a length"), "{told}");
    tab_to(&browser, "fieldset.drives select").await;
    browser.press(&Key::Up.to_string()).await;
    browser.until("return !document.querySelector('#node-0-0')", "the lengths to drive").await;
    assert!(said(&browser, TOLD).await.contains("to 0.1 mm"));
    browser.check_barriers().await;
    browser.click("#chart-view").await;
    let _ = browser.find("#chart tbody tr").await;
    let after = browser.ask(cells).await;
    assert_eq!(after.as_array().map(Vec::len), before.as_array().map(Vec::len));
    assert_ne!(after, before, "the lengths of the curve stand in the chart");
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn escape_brings_the_last_good_number_back_before_it_closes() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#instrument").await;
    let field = "dialog .field.number input";
    tab_to(&browser, field).await;
    let good = held(&browser).await;
    type_over(&browser, "x").await;
    assert!(said(&browser, SAID).await.contains("Write a number from"));
    browser.press(&Key::Escape.to_string()).await;
    assert_eq!(held(&browser).await, good);
    assert!(said(&browser, SAID).await.contains(&format!("Back to {good}.")));
    assert_eq!(browser.count("dialog[open]").await, 1);
    browser.press(&Key::Escape.to_string()).await;
    browser.until("return !document.querySelector('dialog[open]')", "the panel to close").await;
    browser.check_console().await;
}
