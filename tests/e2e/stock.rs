//! Stock, order and restringing: a table with a bad line, an order on paper, a pasted list of lengths.

use serde_json::json;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// A price list in which one line is bad and one column has a heading that says nothing.
const TABLE: &str = "material,gauge,Zzz,supplier,pack,price\n\
    nylon,0.81,NY-81,Reedmarsh,single,2.50 EUR\n\
    nylon,wide,NY-91,Reedmarsh,single,2.60 EUR\n\
    gut,0.90,G-90,Alder,single,7.00 EUR\n";

/// Gives the stock a file, as the browser's dialog would.
async fn give_file(browser: &Browser, name: &str, text: &str) {
    let script = format!(
        "const data = new DataTransfer();
         data.items.add(new File([{}], {}));
         const input = document.querySelector('#stock-input');
         input.files = data.files;
         input.dispatchEvent(new Event('change', {{ bubbles: true }}));
         return true;",
        json!(text),
        json!(name)
    );
    browser.ask(&script).await;
}

/// Chooses an option of a list.
async fn choose(browser: &Browser, css: &str, value: &str) {
    let script = format!(
        "const list = document.querySelector({});
         list.value = {};
         list.dispatchEvent(new Event('change', {{ bubbles: true }}));
         return true;",
        json!(css),
        json!(value)
    );
    browser.ask(&script).await;
}

/// A new list with the good lines of the table.
async fn import(browser: &Browser) {
    browser.click("#stock").await;
    browser.click("#stock-new").await;
    give_file(browser, "prices.csv", TABLE).await;
    let bad = browser.text("#stock-bad").await;
    assert!(bad.contains("Line 3, column gauge"), "{bad}");
    choose(browser, "#stock-column-2", "order code").await;
    assert_eq!(browser.text("#stock-summary").await, "2 good lines, 1 bad line left out.");
    browser.check_barriers().await;
    browser.click("#stock-take").await;
    let left_out = browser.text("#stock-left-out").await;
    assert!(left_out.contains("Line 3"), "{left_out}");
}

/// What the cells of the first columns hold.
const CELLS: &str = "return [0, 1].map((row) => [0, 1, 2, 4].map((at) =>
    document.querySelector(`#stock-${row}-${at}`)?.value).join('|')).join('; ')";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_table_becomes_stock_and_a_reload_keeps_it() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    import(&browser).await;
    let held = json!("nylon 0.81|NY-81|Reedmarsh|2.5; gut 0.90|G-90|Alder|7");
    let _ = browser.find("#stock-1-0").await;
    assert_eq!(browser.ask(CELLS).await, held);

    // What is no price stays as it was typed, with a sentence.
    browser.fill("#stock-0-4", "1,234").await;
    let said = browser.text("#stock-said-0").await;
    assert!(said.contains("Not kept yet: a price must be a number"), "{said}");
    assert_eq!(browser.ask("return document.querySelector('#stock-0-4').value").await, "1,234");
    browser.check_barriers().await;

    browser.open_app(&site.url()).await;
    browser.click("#stock").await;
    let _ = browser.find("#stock-1-0").await;
    assert_eq!(browser.ask(CELLS).await, held);
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_pasted_list_is_restrung_and_ordered() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    import(&browser).await;
    browser.click("dialog[open] .window-head button").await;

    browser.click("#new").await;
    let list = "C5 302 nylon 0.81\nB4 ? nylon 0.81\nA4 400 gut 0.90\nG4 450 steel 0.40";
    let typed = format!(
        "const area = document.querySelector('#measurements');
         area.value = {};
         area.dispatchEvent(new Event('input', {{ bubbles: true }}));
         return true;",
        json!(list)
    );
    browser.ask(&typed).await;
    browser.click("#start-measurements").await;
    let missing = browser.text("#missing-list").await;
    assert!(missing.contains("String 2, B4: the vibrating length was not measured"), "{missing}");
    browser.check_barriers().await;
    browser.click("#missing-list button").await;
    browser.until("return !document.querySelector('dialog')", "the list to close").await;
    browser.press("350").await;
    browser.press("\u{e007}").await;
    assert_eq!(browser.text("#cell-1-1").await, "350");
    assert_eq!(browser.count("#missing").await, 0, "nothing is missing any more");

    browser.click("#order-view").await;
    assert_eq!(browser.text("#order-totals").await, "All together: 12.00 EUR.");
    assert!(browser.text("#order-unmatched").await.contains("String 4"));
    browser.click("#order-embed").await;
    browser.until("return !document.querySelector('#order-embed')", "the prices to be there").await;
    browser.check_barriers().await;
    browser.screenshot("order").await;
    let folder = browser.allow_downloads("order").await;
    browser.click("#order-csv").await;
    let saved = browser.downloaded(&folder.join("order.csv")).await;
    let saved = String::from_utf8(saved).expect("CSV is text");
    assert!(saved.contains("Reedmarsh,NY-81,nylon 0.81"), "{saved}");

    browser.click("#order-print").await;
    browser
        .until("return Boolean(document.querySelector('#print-root .paper'))", "the sheet")
        .await;
    let text = browser.print("order").await.text();
    for word in ["ORDER LIST", "Reedmarsh", "NY-81", "Alder", "G-90", "5.00 EUR"] {
        assert!(text.contains(word), "{word} in\n{text}");
    }
    browser.click("#close-card").await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}
