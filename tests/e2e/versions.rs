//! Versions of a design: kept, compared, brought back, sent along; and strings in another material.

use fantoccini::key::Key;
use serde_json::json;
use stringloft::design::edit::Edit;
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// Gauges of the chart, row by row.
const GAUGES: &str = "return [...document.querySelectorAll('#chart tbody tr')].map((row) => row.innerText).join('\\n')";

/// Rows that the browser has not laid out yet have no text that is seen.
const SHOWS_ROWS: &str =
    "return Boolean(document.querySelector('#chart tbody tr')?.innerText.trim())";

async fn told(browser: &Browser, what: &str) {
    let script = format!(
        "return (document.querySelector('.notice')?.innerText ?? '').includes({})",
        json!(what)
    );
    browser.until(&script, what).await;
}

async fn keep(browser: &Browser, name: &str) {
    browser.fill("#versions input", name).await;
    browser.click("#keep-version").await;
    told(browser, &format!("Kept as \"{name}\"")).await;
}

/// Chooses an option of a list by the words of its label and its own.
async fn choose(browser: &Browser, label: &str, option: &str) {
    let script = format!(
        "const field = [...document.querySelectorAll('label.field')].find((l) => l.innerText.startsWith({}));
         const list = field.querySelector('select');
         const option = [...list.options].find((o) => o.text.toLowerCase().startsWith({}));
         list.value = option.value;
         list.dispatchEvent(new Event('change', {{ bubbles: true }}));
         return true",
        json!(label),
        json!(option.to_lowercase())
    );
    browser.ask(&script).await;
}

/// Types a gauge over the one of a string, in the chart.
async fn set_gauge(browser: &Browser, row: usize, text: &str) {
    browser.click("#chart-view").await;
    browser.click(&format!("#cell-{row}-3")).await;
    browser.press(text).await;
    browser.press(&Key::Enter.to_string()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_version_is_kept_compared_and_brought_back() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let first = browser.ask(GAUGES).await;
    browser.click("#versions-view").await;
    assert!(browser.text("#versions").await.contains("No version is kept yet"));
    keep(&browser, "spring").await;
    assert!(browser.text("#differing").await.contains("Nothing differs."));
    assert_eq!(browser.count("#strings-compared").await, 0);
    set_gauge(&browser, 2, "0.99").await;
    let changed = browser.ask(GAUGES).await;
    assert_ne!(first, changed);
    assert_eq!(browser.text("#ghost").await, "", "no grey curve beside the chart");

    browser.click("#versions-view").await;
    browser
        .until(
            "return document.querySelector('#ghost').innerText.startsWith('Grey: spring')",
            "the grey curve",
        )
        .await;
    assert_eq!(browser.text("#differing").await, "1 string and 1 setting differ.");
    assert_eq!(browser.count("#strings-compared tbody tr").await, 1);
    let row = browser.text("#strings-compared tbody").await;
    assert!(row.contains("→ 0.99") && row.starts_with("String 3"), "{row}");
    assert!(browser.count("#totals tr.differs").await > 0);
    browser.click("#all-strings").await;
    browser
        .until(
            "return document.querySelectorAll('#strings-compared tbody tr').length === 36",
            "all strings",
        )
        .await;
    browser.check_barriers().await;
    browser.screenshot("versions").await;

    // Two versions: the table alone. The other way round: the grey curve is still the version.
    keep(&browser, "autumn").await;
    choose(&browser, "Before", "Spring").await;
    choose(&browser, "After", "Autumn").await;
    browser
        .until("return document.querySelector('#ghost').innerText === ''", "no grey curve")
        .await;
    assert_eq!(browser.text("#differing").await, "1 string and 1 setting differ.");
    choose(&browser, "Before", "Now").await;
    choose(&browser, "After", "Spring").await;
    browser
        .until(
            "return document.querySelector('#ghost').innerText.startsWith('Grey: spring')",
            "the grey curve",
        )
        .await;

    // Brought back, and that taken back; taken out, and that taken back.
    browser.click(".kept tbody tr:first-child .restore").await;
    told(&browser, "again as it was in \"spring").await;
    browser
        .until(
            "return document.querySelector('#differing').innerText === 'Nothing differs.'",
            "the old gauge",
        )
        .await;
    browser.click("#undo").await;
    browser
        .until(
            "return document.querySelector('#differing').innerText === '1 string and 1 setting differ.'",
            "the undo",
        )
        .await;
    browser.click(".kept tbody tr:last-child .remove").await;
    told(&browser, "was removed").await;
    browser
        .until("return document.querySelectorAll('.kept tbody tr').length === 1", "one version")
        .await;
    browser.click("#undo").await;
    browser
        .until("return document.querySelectorAll('.kept tbody tr').length === 2", "two versions")
        .await;
    browser.fill(".kept tbody tr:first-child input", "first try").await;
    browser
        .until(
            "return document.querySelector('#ghost').innerText.startsWith('Grey: first try')",
            "the new name",
        )
        .await;
    browser.click("#chart-view").await;
    browser.until(SHOWS_ROWS, "the rows of the chart").await;
    assert_eq!(browser.ask(GAUGES).await, changed);
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_link_carries_one_version_along() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.allow_clipboard(&site.origin()).await;
    browser.click("#versions-view").await;
    keep(&browser, "spring").await;
    keep(&browser, "autumn").await;
    set_gauge(&browser, 2, "0.99").await;
    browser.click("#link").await;
    let _ = browser.find("#copy-link").await;
    let length = "return document.querySelector('.link-text').value.length";
    let alone = browser.ask(length).await.as_u64();
    choose(&browser, "Version to send along", "spring").await;
    browser.until(&format!("return ({{ of: () => document.querySelector('.link-text').value.length }}).of() > {}", alone.unwrap_or(0)), "a longer link").await;
    browser.check_barriers().await;
    browser.click("#copy-link").await;
    told(&browser, "Link copied").await;
    let address = browser.clipboard().await;
    let design = link::read(&address).expect("the link opens");
    assert_eq!((design.versions.len(), &*design.versions[0].name), (1, "spring"));

    let client = Browser::open(Screen::PHONE).await;
    client.open_app(&address).await;
    client.ask("document.querySelector('#versions-view').click(); return true").await;
    let _ = client.find(".kept tbody tr").await;
    assert_eq!(client.count(".kept tbody tr").await, 1);
    assert_eq!(client.text("#differing").await, "1 string and 1 setting differ.");
    client.check_barriers().await;
    client.check_console().await;
    client.check_requests(&site.origin()).await;
    client.screenshot("versions-client").await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn strings_are_exchanged_in_one_step() {
    let design = SAMPLES[1].design();
    let design =
        Edit::Text { field: stringloft::design::edit::Field::Title, text: "Exchanged".into() }
            .apply(&design);
    let site = Site::of_build("/");
    let address = format!("{}#{}", site.url(), link::write(&design).expect("a link"));
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&address).await;
    let before = browser.ask(GAUGES).await;
    browser.click("#cell-2-3").await;
    for _ in 0..3 {
        browser.press(&(Key::Shift + &Key::Down.to_string())).await;
    }
    browser.click("#exchange").await;
    let _ = browser.find("#exchange-table tbody tr").await;
    choose(&browser, "New material", "Gut").await;
    assert_eq!(browser.count("#exchange-table tbody tr").await, 4);
    let words = browser.text("#exchange-told").await;
    assert!(words.contains("Total tension: "), "{words}");
    browser
        .until("return document.querySelector('#ghost').textContent.startsWith('Grey: the strings in')", "the grey curve")
        .await;
    choose(&browser, "What stays the same", "Same mass").await;
    browser.check_barriers().await;
    browser.screenshot("exchange").await;
    browser.click("#take-exchange").await;
    told(&browser, "4 strings are now of").await;
    browser
        .until("return document.querySelector('#ghost').innerText === ''", "no grey curve")
        .await;
    let after = browser.ask(GAUGES).await;
    let of_gut =
        |rows: &serde_json::Value| rows.as_str().map_or(0, |text| text.matches("gut").count());
    assert_eq!(of_gut(&after), of_gut(&before) + 4, "{after}");
    browser.click("#undo").await;
    assert_eq!(browser.ask(GAUGES).await, before);

    // The frame in the summary leads to its loads.
    browser.click("#sum-frame button").await;
    let _ = browser.find("#loads-title").await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}
