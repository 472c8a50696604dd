//! What a maker stakes a harp on: the same words in the browser as on this machine, how far each figure
//! may be off, where it comes from, and materials of one's own.

use fantoccini::key::Key;
use serde_json::json;
use stringloft::app::rows;
use stringloft::design::explain::Topic;
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// Every word of the chart, row by row, without the number and the octave before them.
const WORDS: &str = "
    return [...document.querySelectorAll('#chart tbody tr')].map((row) =>
      [...row.children].slice(2).map((cell) => cell.textContent));
";

/// What stands in the panel that is open.
const PANEL: &str = "return document.querySelector('dialog[open]').innerText";

async fn type_over(browser: &Browser, row: usize, column: usize, text: &str) {
    browser.click(&format!("#cell-{row}-{column}")).await;
    browser.press(text).await;
    browser.press(&Key::Enter.to_string()).await;
}

async fn close(browser: &Browser) {
    browser.press(&Key::Escape.to_string()).await;
    browser.until("return !document.querySelector('dialog')", "the panel to close").await;
}

async fn panel(browser: &Browser) -> String {
    browser.until("return !!document.querySelector('dialog[open]')", "the window").await;
    browser.ask(PANEL).await.as_str().expect("text").to_owned()
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn every_word_of_every_sample_is_the_same_in_the_browser() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.ask("localStorage.setItem('stringloft/columns', 'all'); return 1").await;
    // Another fragment alone would not begin the page again.
    browser.goto("about:blank").await;
    for sample in &SAMPLES {
        let design = sample.design();
        browser
            .open_app(&format!("{}#{}", site.url(), link::write(&design).expect("a link")))
            .await;
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let native: Vec<Vec<String>> = rows::rows(&design, &resolved, &analysis)
            .iter()
            .map(|row| row.cells.iter().map(|cell| cell.text.clone()).collect())
            .collect();
        let shown = browser.ask(WORDS).await;
        let shown: Vec<Vec<String>> = serde_json::from_value(shown).expect("rows of texts");
        assert_eq!(shown.len(), native.len(), "{}", sample.key);
        for (index, (shown, native)) in shown.iter().zip(&native).enumerate() {
            assert_eq!(shown, native, "{}, string {}", sample.key, index + 1);
        }
    }
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_string_in_full_says_how_far_it_may_be_off() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let curves = "return document.querySelector('#curves').toDataURL()";
    let plain = browser.ask(curves).await;
    assert!(!browser.text("#readout").await.contains('±'));
    browser.click("#tolerances").await;
    browser
        .until("return document.querySelector('#readout').innerText.includes('±')", "plus-minus")
        .await;
    assert_ne!(plain, browser.ask(curves).await, "the ranges are drawn");
    browser.screenshot("tolerances").await;

    // A wound string: its layers, its partials, its lever.
    browser.click("#cell-28-4").await;
    browser.press(&(Key::Alt + &Key::Enter.to_string())).await;
    let wound = panel(&browser).await;
    for words in ["String 29, C3", "± ", "the diameter", "silk", "Partial", "cents", "Lever"] {
        assert!(wound.contains(words), "{words} is not in\n{wound}");
    }
    browser.screenshot("details-wound").await;
    close(&browser).await;
    // A plain one of nylon, for which no drift with warmth is known, and why.
    browser.press(&(Key::Control + &Key::Home.to_string())).await;
    browser.press(&(Key::Alt + &Key::Enter.to_string())).await;
    let plain = panel(&browser).await;
    for words in ["String 1, C7", "o figure for polymers", "± "] {
        assert!(plain.contains(words), "{words} is not in\n{plain}");
    }
    browser.screenshot("details-plain").await;
    // Its neighbour, by the key.
    browser.press(&(Key::Control + &Key::Down.to_string())).await;
    assert!(panel(&browser).await.contains("String 2, "));
    close(&browser).await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn every_figure_has_its_page() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#cell-0-4").await;
    browser.press(&Key::F1.to_string()).await;
    let tension = panel(&browser).await;
    for words in ["T = 4 L² f² μ − π² E I/L²", "eye protection", "tension_n"] {
        assert!(tension.contains(words), "{words} is not in\n{tension}");
    }
    for topic in Topic::ALL {
        let title = json!(topic.title());
        let choose = format!(
            "const list = document.querySelector('#topics');
             const at = [...list.options].find((o) => o.text === {title});
             list.value = at.value;
             list.dispatchEvent(new Event('change', {{ bubbles: true }}));
             return true;"
        );
        browser.ask(&choose).await;
        let there =
            format!("return document.querySelector('#numbers-title').innerText === {title}");
        browser.until(&there, topic.title()).await;
        let page = browser.text("#numbers-page").await;
        assert!(page.len() > 400, "{}: {page}", topic.title());
        assert!(!page.contains("NaN") && !page.contains("inf"), "{page}");
    }
    close(&browser).await;
    // The head of a column leads there too.
    browser.click("#chart thead th:nth-child(9) button").await;
    assert!(panel(&browser).await.contains("The numbers, explained"));
    close(&browser).await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_material_of_ones_own_is_weighed_used_and_sent() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.allow_clipboard(&site.origin()).await;
    browser.open_app(&site.url()).await;
    let before = browser.ask(WORDS).await;

    // The density of this design's nylon, with where it comes from.
    browser.click("#materials").await;
    let fact = ".fact:nth-child(1)";
    browser.fill(&format!("{fact} input"), "heavy").await;
    let told = browser.text(&format!("{fact} .wrong")).await;
    assert!(!told.is_empty(), "nonsense is told");
    browser.fill(&format!("{fact} input"), "1100").await;
    let entered = browser.text(fact).await;
    assert!(entered.contains("entered by"), "{entered}");
    assert_eq!(browser.text(&format!("{fact} .wrong")).await, "");
    close(&browser).await;
    let lighter = browser.ask(WORDS).await;
    assert_ne!(before[0], lighter[0], "a nylon string");
    assert_eq!(before[20], lighter[20], "a string of gut");

    // The link carries it.
    browser.click("#link").await;
    browser
        .until(
            "return document.querySelector('.notice')?.innerText.includes('Link copied') ?? false",
            "the link",
        )
        .await;
    let address = browser.clipboard().await;
    let client = Browser::open(Screen::PHONE).await;
    client.open_app(&address).await;
    assert_eq!(client.ask(WORDS).await, lighter);
    client.check_console().await;

    // Undo takes it back; a made-up material is refused in the chart until there is one.
    browser.click("#undo").await;
    assert_eq!(browser.ask(WORDS).await, before);
    type_over(&browser, 0, 2, "moonsilk").await;
    browser.click("#cell-0-2").await;
    assert!(browser.text(".cell-line.wrong").await.contains("moonsilk"));
    browser.click("#undo").await;
    assert_eq!(browser.ask(WORDS).await, before);
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

/// 12.3 g on 10 m of 1.02 mm are 12.3e-3/(10 π/4 · 1.02²e-6) = 1505 kg/m³.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_new_material_begins_on_the_balance() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#materials").await;
    browser.click(".new-material > summary").await;
    browser.fill(".new-material > fieldset > label:nth-of-type(1) input", "horsehair").await;
    browser.click(".new-material .trial > summary").await;
    let reading =
        |place: usize| format!(".new-material .trial-fields label:nth-child({place}) input");
    for (place, text) in [(1, "10 m"), (2, "12.3"), (3, "1.02 mm")] {
        browser.fill(&reading(place), text).await;
    }
    browser.click(".new-material .trial .window-actions button").await;
    browser.click(".new-material > fieldset > button").await;
    let there = "return document.querySelector('.material-form h3').innerText === 'horsehair'";
    browser.until(there, "the new material").await;
    let density = browser.ask("return document.querySelector('.fact input').value").await;
    let density: f64 = density.as_str().and_then(|text| text.parse().ok()).expect("a density");
    assert!((density - 1505.3).abs() < 0.1, "{density}");
    let source = browser.ask("return document.querySelector('.fact textarea').value").await;
    assert!(source.as_str().is_some_and(|source| source.contains("weighed")), "{source}");
    close(&browser).await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_drawing_follows_the_strings_and_is_saved_at_full_size() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#drawing").await;
    browser.click("#group-loads").await;
    let _ = browser.find(".drawing-loads td").await;
    let picture = "return document.querySelector('#loft svg').innerHTML";
    let before = browser.ask(picture).await;
    let words = browser.text(".drawing-side").await;
    for said in ["ift", "not approval", "eye protection"] {
        assert!(words.contains(said), "{said} is not in\n{words}");
    }
    browser.screenshot("drawing").await;
    let folder = browser.allow_downloads("drawing").await;
    browser.click("#group-files").await;
    browser.click(".drawing-side [title^='For a cutter']").await;
    let name = browser.ask("return document.querySelector('#title').value").await;
    let stem = name.as_str().expect("a title").to_lowercase().replace(' ', "-");
    let saved = browser.downloaded(&folder.join(format!("{stem}.dxf"))).await;
    assert!(saved.starts_with(b"  0") || saved.starts_with(b"0") || saved.starts_with(b"999"));
    browser.click("#chart-view").await;
    type_over(&browser, 20, 1, "540").await;
    browser.click("#drawing").await;
    let _ = browser.find("#loft .string").await;
    browser.until(&format!("{picture} !== {before}"), "the drawing to follow").await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}
