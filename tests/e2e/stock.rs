//! Stock, order and restringing: a table with a bad line, an order on paper, a pasted list of lengths, and a frame that
//! is strung from a drawer.

use serde_json::json;
use stringloft::design::presets::SAMPLES;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// A price list in which one line is bad and one column has a heading that says nothing.
const TABLE: &str = "material,gauge,Zzz,supplier,pack,price\n\
    nylon,0.81,NY-81,Reedmarsh,single,2.50 EUR\n\
    nylon,wide,NY-91,Reedmarsh,single,2.60 EUR\n\
    gut,0.90,G-90,Alder,single,7.00 EUR\n";

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
    browser.give_file("#stock-input", "prices.csv", TABLE).await;
    let bad = browser.text("#stock-bad").await;
    assert!(bad.contains("Line 3, column gauge"), "{bad}");
    choose(browser, "#stock-column-2", "order code").await;
    assert_eq!(browser.text("#stock-summary").await, "2 good lines, 1 bad line left out.");
    browser.check_barriers().await;
    browser.click("#stock-take").await;
    let left_out = browser.text("#stock-left-out").await;
    assert!(left_out.contains("Line 3"), "{left_out}");
}

/// Begins a design from measurements that are pasted.
async fn measured(browser: &Browser, list: &str) {
    browser.click("#new").await;
    browser.click("#ways input[value=measured]").await;
    let typed = format!(
        "const area = document.querySelector('#measurements');
         area.value = {};
         area.dispatchEvent(new Event('input', {{ bubbles: true }}));
         return true;",
        json!(list)
    );
    browser.ask(&typed).await;
    browser.click("#start-measurements").await;
}

/// What the cells of the first columns hold.
const CELLS: &str = "return [0, 1].map((row) => [0, 1, 2, 4].map((at) =>
    document.querySelector(`#stock-${row}-${at}`)?.value).join('|')).join('; ')";

/// A window may take the place of another without a press on it, as when the address changes.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn what_is_typed_in_a_row_stays_when_another_window_comes() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#stock").await;
    browser.click("#stock-new").await;
    browser.click("#stock-add").await;
    browser.until("return document.activeElement.id === 'stock-0-0'", "the new row").await;
    browser.press("nylon 0.81").await;
    for other in ["materials", "numbers", "sound", "keys"] {
        browser.ask(&format!("document.getElementById('{other}').click(); return true")).await;
        browser.until("return !document.querySelector('.stock-table')", "the stock gone").await;
        assert_eq!(browser.count("#fault").await, 0, "stopped by {other}");
        browser.ask("document.getElementById('stock').click(); return true").await;
        browser.until("return !!document.querySelector('#stock-0-1')", "the stock").await;
        let held = browser.ask("return document.querySelector('#stock-0-0').value").await;
        assert_eq!(held, "nylon 0.81", "after {other}");
        browser.ask("document.querySelector('#stock-0-1').focus(); return true").await;
    }
    browser.check_console().await;
}

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

    let list = "C5 302 nylon 0.81\nB4 ? nylon 0.81\nA4 400 gut 0.90\nG4 450 steel 0.40";
    measured(&browser, list).await;
    let missing = browser.text("#missing-list").await;
    assert!(missing.contains("String 2, B4: the vibrating length was not measured"), "{missing}");
    browser.check_barriers().await;
    browser.click("#missing-list button").await;
    let in_chart =
        "return !document.querySelector('dialog') && !!document.activeElement.closest('#chart')";
    browser.until(in_chart, "the list to close").await;
    browser.press("350").await;
    browser.press("\u{e007}").await;
    let is_set = "return document.querySelector('#cell-1-1').innerText.trim() === '350'";
    browser.until(is_set, "the length").await;
    assert_eq!(browser.count("#missing").await, 0, "nothing is missing any more");

    browser.click("#order-view").await;
    let totals = browser.text("#order-totals").await;
    assert_eq!(totals, "3 lines, 1 without a price: at least 12.00 EUR.");
    let outside = browser.text(".order-group:last-of-type").await;
    assert!(outside.starts_with("Not in the stock list") && outside.contains("4: "), "{outside}");
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
    for word in ["ORDER LIST", "Reedmarsh", "NY-81", "Alder", "G-90", "5.00 EUR", "cut to", "Sum:"]
    {
        assert!(text.contains(word), "{word} in\n{text}");
    }
    browser.click("#close-card").await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

/// What lies in the drawer: nylon and gut in a dozen gauges each, and a few wound strings, with prices.
fn drawer() -> String {
    let mut table = String::from("make-up,code,supplier,pack,price\n");
    let mut add = |make_up: String, code: String, price: f64| {
        table.push_str(&format!("{make_up},{code},Reedmarsh,single,{price:.2} EUR\n"));
    };
    for step in 0..12_u32 {
        let (thin, thick) = (f64::from(45 + 6 * step) / 100.0, f64::from(70 + 10 * step) / 100.0);
        add(format!("nylon {thin}"), format!("N{step}"), 2.0 + 0.1 * f64::from(step));
        add(format!("gut {thick}"), format!("G{step}"), 4.0 + 0.5 * f64::from(step));
    }
    for step in 0..6_u32 {
        let wrap = f64::from(15 + 5 * step) / 100.0;
        add(format!("steel 0.4 + bronze {wrap}"), format!("W{step}"), 9.0 + f64::from(step));
    }
    table
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_gauges_in_the_drawer_string_a_frame() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;

    // The drawer.
    browser.click("#stock").await;
    browser.click("#stock-new").await;
    browser.give_file("#stock-input", "drawer.csv", &drawer()).await;
    assert_eq!(browser.text("#stock-summary").await, "30 good lines.");
    browser.click("#stock-take").await;
    let _ = browser.find("#stock-29-0").await;
    browser.click("dialog[open] .window-head button").await;

    // The frame: nothing but notes and lengths.
    let frame = &SAMPLES[1].design().strings;
    let lines: Vec<String> =
        frame.iter().map(|string| format!("{} {}", string.note, string.length)).collect();
    measured(&browser, &lines.join("\n")).await;
    let _ = browser.find("#missing-list").await;
    browser.click("dialog[open] .window-head button").await;

    // The best set.
    browser.click("#choose-view").await;
    assert!(browser.text("#choose-stock").await.contains("30 items"));
    browser.click("#find-set").await;
    browser.until("return Boolean(document.querySelector('#choose-title'))", "an answer").await;
    // A drawer has not what a shop has: what is usual cannot be kept with it, and the view says which limits are in the way.
    let says = browser.text(".choose-says").await;
    assert!(says.contains("The largest jump in feel") && says.contains("load share"), "{says}");
    for (label, text) in [("Largest jump in feel", "100"), ("Lowest load share", "5")] {
        let set = format!(
            "const field = [...document.querySelectorAll('#choose-side .field')]
               .find((field) => field.textContent.includes('{label}')).querySelector('input');
             field.value = '{text}';
             for (const kind of ['input', 'change', 'blur']) field.dispatchEvent(new Event(kind, {{ bubbles: true }}));
             return true;"
        );
        browser.ask(&set).await;
    }
    browser.click("#find-set").await;
    browser.until("return document.querySelector('.choose-says')?.textContent.includes('proved to be the best')", "a set").await;
    assert_eq!(browser.count("#choose-rows tbody tr").await, frame.len());
    browser.screenshot("drawer").await;
    browser.click("#take-all").await;

    // It hangs on the frame, from the drawer alone, and sounds without a finding that it breaks.
    browser.click("#chart-view").await;
    let strings = "return [...document.querySelectorAll('#chart tbody tr')].map((row) => row.innerText).join('\\n')";
    let chart = browser.ask(strings).await.as_str().unwrap_or_default().to_owned();
    // A harp without strings is taken for one of nylon until another family is asked for.
    assert!(chart.contains("nylon") && !chart.contains("gut"), "{chart}");
    let findings = browser.text("#findings").await;
    assert!(!findings.contains("breaking load"), "{findings}");

    // And it can be ordered.
    browser.click("#order-view").await;
    let totals = browser.text("#order-totals").await;
    assert!(totals.contains(" lines: ") && totals.contains("EUR"), "{totals}");
    assert_eq!(browser.count("#order-stock").await, 0, "the stock has them all");
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

/// A table as a maker sends it: numbers first, inches in fractions, and a column whose heading says nothing.
const SENT: &str = "Harp from the school\nNo.\tZzz\tLength (in)\tGauge (in)\n\
    1\tC5\t12 1/8\t.025\n2\tB4\t13 3/8\t.028\n3\tA4\t14 ½\t.032\n";

/// The rows of the preview.
const PREVIEW: &str = "return [...document.querySelectorAll('#measured-preview tbody tr')]
    .map((row) => [...row.cells].map((cell) => cell.innerText.trim()).join('|')).join('; ')";

async fn close_window(browser: &Browser) {
    browser.click("dialog[open] .window-head button").await;
    browser.until("return !document.querySelector('dialog')", "the window to close").await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_table_in_inches_is_looked_at_put_right_and_kept_until_it_is_used() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#restring").await;
    let fill = |text: &str| {
        format!(
            "const area = document.querySelector('#measurements');
             area.value = {};
             area.dispatchEvent(new Event('input', {{ bubbles: true }}));
             return true;",
            json!(text)
        )
    };
    let _ = browser.find("#measurements").await;
    // A column that nothing is known of holds the notes all the same: what was taken wrongly is put right by hand.
    browser.ask(&fill(&SENT.replace("Zzz", "Remark"))).await;
    let read = json!("1|C5|12 1/8 in|.025 in||; 2|B4|13 3/8 in|.028 in||; 3|A4|14 ½ in|.032 in||");
    browser.until(&format!("{PREVIEW} === {read}"), "the preview").await;
    browser.check_barriers().await;
    choose(&browser, "#measured-column-1", "remark").await;
    let wrong = json!("1||12 1/8 in|.025 in||C5; 2||13 3/8 in|.028 in||B4; 3||14 ½ in|.032 in||A4");
    browser.until(&format!("{PREVIEW} === {wrong}"), "notes as remarks").await;
    choose(&browser, "#measured-column-1", "note").await;
    browser.until(&format!("{PREVIEW} === {read}"), "notes again").await;
    choose(&browser, "#measured-unit-3", "thou").await;
    let thou =
        json!("1|C5|12 1/8 in|.025 thou||; 2|B4|13 3/8 in|.028 thou||; 3|A4|14 ½ in|.032 thou||");
    browser.until(&format!("{PREVIEW} === {thou}"), "another unit").await;

    // It is still there after Escape, with what was put right.
    browser.press("\u{e00c}").await;
    browser.until("return !document.querySelector('dialog')", "the window to close").await;
    browser.click("#restring").await;
    browser.until(&format!("{PREVIEW} === {thou}"), "the text and the units").await;
    choose(&browser, "#measured-unit-3", "in").await;
    browser.screenshot("measured").await;
    close_window(&browser).await;
    browser.click("#restring").await;
    browser.until(&format!("{PREVIEW} === {read}"), "the text again").await;

    browser.click("#start-measurements").await;
    let missing = browser.text("#missing-list").await;
    assert!(
        missing.contains("Strings 1 to 3: what the string is made of is not known"),
        "{missing}"
    );
    close_window(&browser).await;
    browser.click("#restring").await;
    let _ = browser.find("#measurements").await;
    assert_eq!(
        browser.ask("return document.querySelector('#measurements').value").await,
        "",
        "used"
    );

    // Numbers that look like inches are asked about, and nothing begins before the answer.
    browser.ask(&fill("note,length\nC5,12.5\nB4,13.75\nA4,15\n")).await;
    let question = browser.text("#measured-questions").await;
    assert!(question.contains("look like inches rather than millimetres"), "{question}");
    browser.check_barriers().await;
    browser.screenshot("measured-question").await;
    browser.click("#start-measurements").await;
    let said = browser.text("#measurements-wrong").await;
    assert!(said.contains("answer the question beside the list first"), "{said}");
    browser.click("#measured-questions button").await;
    let answered = json!("1|C5|12.5 in|||; 2|B4|13.75 in|||; 3|A4|15 in|||");
    browser.until(&format!("{PREVIEW} === {answered}"), "inches").await;
    browser.click("#drop-measurements").await;
    browser
        .until("return document.querySelector('#measurements').value === ''", "the text to go")
        .await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}
