//! Everyday work: what a String cell offers, the list of designs, what is told and goes again, small screens, and how
//! many actions lead to a harp and to an order.

use fantoccini::key::Key;
use serde_json::{Value, json};
use stringloft::design::document::Design;
use stringloft::design::presets::{FLOOR_36, SAMPLES};
use stringloft::design::{link, persist};

use crate::browser::{Browser, Screen};
use crate::server::Site;

const OFFERED: &str = "return [...document.querySelectorAll('#offers:not([hidden]) .offer')].map((offer) => offer.innerText)";
const IN_CELL: &str = "return document.activeElement.className === 'cell-field'";

async fn offered(browser: &Browser) -> Vec<String> {
    let all = browser.ask(OFFERED).await;
    let all = all.as_array().expect("a list");
    all.iter().map(|line| line.as_str().expect("a text").to_owned()).collect()
}

/// The figure of a row that the chart shows as its tension.
async fn tension(browser: &Browser, row: usize) -> String {
    browser.text(&format!("#cell-{row}-4")).await
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_string_cell_offers_materials_and_stock() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    // Letters bring what they begin; the keys go through it, and what it gives is what the chart then shows.
    browser.click("#cell-3-2").await;
    browser.press("fluo").await;
    let lines = offered(&browser).await;
    assert!(
        lines[0].starts_with("fluorocarbon") && lines[0].contains(" N, load share "),
        "{lines:?}"
    );
    browser.check_barriers().await;
    browser.press(&Key::Down.to_string()).await;
    let active = "return document.activeElement.getAttribute('aria-activedescendant')";
    assert_eq!(browser.ask(active).await, "offer-0");
    browser.screenshot("offers").await;
    browser.press(&Key::Enter.to_string()).await;
    assert_eq!(browser.text("#cell-3-2").await, "fluorocarbon");
    assert!(lines[0].contains(&format!("{} N,", tension(&browser, 3).await)), "{lines:?}");
    assert!(offered(&browser).await.is_empty(), "closed");

    // An item of the stock, taken with the mouse.
    browser.press("nylon 0.9").await;
    let lines = offered(&browser).await;
    let place = lines.iter().position(|line| line.starts_with("nylon 0.9")).expect("an item");
    browser.click(&format!("#offer-{place}")).await;
    let taken = browser.text("#cell-4-3").await;
    assert!(lines[place].starts_with(&format!("nylon {taken}")), "{lines:?}: {taken}");
    assert!(lines[place].contains(&format!("{} N", tension(&browser, 4).await)), "{lines:?}");

    // Escape closes the list, then leaves the cell as it was; what is typed needs no list.
    let before = browser.text("#cell-6-2").await;
    browser.click("#cell-6-2").await;
    browser.press("gut").await;
    assert!(!offered(&browser).await.is_empty());
    browser.press(&Key::Escape.to_string()).await;
    assert!(offered(&browser).await.is_empty());
    assert_eq!(browser.ask(IN_CELL).await, json!(true), "the field stays");
    browser.press(&Key::Escape.to_string()).await;
    assert_eq!(browser.text("#cell-6-2").await, before);
    browser.press("gut 0.88").await;
    browser.press(&Key::Enter.to_string()).await;
    assert_eq!(browser.text("#cell-6-2").await, "gut");
    assert_eq!(browser.text("#cell-6-3").await, "0.88");
    // Opened on what is there, the arrow brings all; no other column has a list.
    browser.click("#cell-7-2").await;
    browser.press(&Key::Enter.to_string()).await;
    assert!(offered(&browser).await.is_empty());
    browser.press(&Key::Down.to_string()).await;
    assert!(offered(&browser).await.len() > 12, "materials and stock");
    browser.press(&(Key::Escape.to_string() + &Key::Escape.to_string())).await;
    browser.click("#cell-7-1").await;
    browser.press("5").await;
    assert!(offered(&browser).await.is_empty());
    browser.check_console().await;
}

const TITLES: &str =
    "return [...document.querySelectorAll('.shelf .link')].map((link) => link.innerText)";
const NO_WINDOW: &str = "return !document.querySelector('dialog[open]')";

/// Starts the harp that the window proposes.
async fn new_harp(browser: &Browser) {
    browser.click("#new").await;
    browser.click("#start-harp").await;
    browser.until(NO_WINDOW, "the harp").await;
}

async fn act_on(browser: &Browser, title: &str, words: &str) {
    let press = format!(
        "const line = [...document.querySelectorAll('.shelf li')].find((li) => li.innerText.includes({}));
         [...line.querySelectorAll('button')].find((button) => button.innerText === {}).click();
         return true;",
        json!(title),
        json!(words)
    );
    browser.ask(&press).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_list_of_designs_finds_renames_and_copies_what_was_worked_on() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    // Trials that nobody touched go into the bin.
    new_harp(&browser).await;
    new_harp(&browser).await;
    browser.fill("#title", "Linden harp").await;
    browser.click("#shelf").await;
    assert_eq!(browser.ask(TITLES).await, json!(["Linden harp"]));
    let line = browser.text(".shelf li").await;
    let today = "return new Date().getFullYear().toString()";
    let year = browser.ask(today).await;
    assert!(line.contains("34 strings, ") && line.contains("changed on "), "{line}");
    assert!(line.contains(year.as_str().expect("a year")), "{line}");
    assert_eq!(browser.count(".shelf:not(#bin) .shelf-picture svg path").await, 1);
    browser.check_barriers().await;

    act_on(&browser, "Linden harp", "Duplicate").await;
    browser
        .until("return document.querySelectorAll('.shelf:not(#bin) li').length === 2", "a copy")
        .await;
    act_on(&browser, "Linden harp (copy)", "Rename").await;
    browser.fill(".shelf input", "Cherry harp").await;
    act_on(&browser, "New name", "Rename").await;
    let _ = browser.find(".shelf li").await;
    assert_eq!(browser.ask(TITLES).await, json!(["Cherry harp", "Linden harp"]));
    // With five there is a field to find one by its name.
    for _ in 0..3 {
        act_on(&browser, "Cherry harp", "Duplicate").await;
    }
    browser.fill(".window-body > label input", "linden").await;
    assert_eq!(browser.ask(TITLES).await, json!(["Linden harp"]));
    browser.fill(".window-body > label input", " ").await;
    let first = "return document.querySelector('.shelf .link').innerText";
    let latest = browser.ask(first).await;
    assert!(latest.as_str().is_some_and(|title| title.contains("(copy)")), "{latest}");
    let by_name = "const list = document.querySelector('.window-body > label select');
        list.value = 'name';
        list.dispatchEvent(new Event('change', { bubbles: true }));
        return true";
    browser.ask(by_name).await;
    browser
        .until(
            "return document.querySelector('.shelf .link').innerText === 'Cherry harp'",
            "by name",
        )
        .await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_harp_that_nobody_touched_gives_way_to_a_file_and_to_a_link() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let [first, other] = [0, 1].map(|sample: usize| SAMPLES[sample].design());
    let opened =
        |title: &str| format!("return document.querySelector('#title').value === {}", json!(title));
    new_harp(&browser).await;
    let design = Design { title: "From a file".to_owned(), ..first };
    browser.give_file("#file", "harp.json", &persist::write(&design)).await;
    browser.until(&opened(&design.title), "the file").await;
    new_harp(&browser).await;
    let link = link::write(&other).expect("a link");
    browser.ask(&format!("location.hash = {}; return 1", json!(link))).await;
    browser.until(&opened(&other.title), "the link").await;
    browser.click("#shelf").await;
    assert_eq!(browser.ask(TITLES).await, json!(["From a file"]));
    let focus = "return document.activeElement.matches('.out-of-sight')";
    assert_eq!(browser.ask(focus).await, json!(false), "the keyboard is where it can be seen");
    // A file that is refused leaves it where it is.
    browser.press(&Key::Escape.to_string()).await;
    new_harp(&browser).await;
    browser.give_file("#file", "odd.json", "{}").await;
    browser.until("return !!document.querySelector('.notice')", "the refusal").await;
    browser.click("#shelf").await;
    let kept = "return document.querySelectorAll('.shelf:not(#bin) li').length";
    assert_eq!(browser.ask(kept).await, json!(2));
    let binned = browser.ask("return document.querySelectorAll('#bin li').length").await;
    assert_eq!(binned, json!(2), "those that gave way wait in the bin");
    browser.check_console().await;
}

/// Whether what is told lies over a caution, the line below the chart or the help of a field.
const COVERS: &str = "
    const told = document.querySelector('.notice').getBoundingClientRect();
    return [...document.querySelectorAll('.caution, .cell-line, .hint')].filter((line) => {
      const at = line.getBoundingClientRect();
      return line.innerText.trim() && at.left < told.right && told.left < at.right && at.top < told.bottom && told.top < at.bottom;
    }).map((line) => line.innerText);
";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_notice_goes_by_itself_and_covers_no_caution() {
    let site = Site::of_build("/");
    for screen in [Screen::LAPTOP, Screen::PHONE] {
        let browser = Browser::open(screen).await;
        browser.open_app(&site.url()).await;
        // A hint: this column is computed.
        browser.click("#cell-1-4").await;
        browser.press("5").await;
        let _ = browser.find(".notice").await;
        assert_eq!(browser.ask(COVERS).await, json!([]));
        browser.until("return !document.querySelector('.notice')", "the hint to go").await;
        // What went wrong stays until it is read.
        browser.give_file("#file", "odd.json", "{}").await;
        let _ = browser.find(".notice.problem").await;
        assert_eq!(browser.ask(COVERS).await, json!([]));
        tokio::time::sleep(std::time::Duration::from_secs(13)).await;
        assert_eq!(browser.count(".notice.problem").await, 1);
        browser.click(".notice button").await;
        assert_eq!(browser.count(".notice").await, 0);
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_small_screen_begins_with_the_work() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::PHONE).await;
    browser.open_app(&site.url()).await;
    let top = "return document.querySelector('#cell-0-0').getBoundingClientRect().top";
    let first = browser.ask(top).await.as_f64().expect("a place");
    // The heads have 44 px for a finger beside their units.
    assert!(first <= 330.0, "the first row stands at {first} px");
    let sideways = "return document.documentElement.scrollWidth <= 390";
    assert_eq!(browser.ask(sideways).await, json!(true), "the page itself does not go sideways");
    browser.check_barriers().await;
    browser.screenshot("phone").await;
    // A laptop at twice the size.
    let zoomed = Screen { width: 683, height: 384, scale: 2.0, ..Screen::LAPTOP };
    browser.look_with(zoomed).await;
    let head = "return document.querySelector('.summary').getBoundingClientRect().bottom";
    let head = browser.ask(head).await.as_f64().expect("a height");
    assert!(head <= 384.0 / 4.0, "header and summary take {head} px");
    browser.screenshot("zoomed").await;
}

/// Clicks and pastes, counted as a person does them: to open a menu is one.
struct Counted<'a>(&'a Browser, usize);

impl Counted<'_> {
    async fn click(&mut self, css: &str) {
        let in_menu = format!(
            "return Boolean(document.querySelector({})?.closest('.menu-list'))",
            json!(css)
        );
        self.1 += 1 + usize::from(self.0.ask(&in_menu).await == Value::Bool(true));
        self.0.click(css).await;
    }

    async fn fill(&mut self, css: &str, text: &str) {
        self.1 += 1;
        self.0.fill(css, text).await;
    }

    async fn paste(&mut self, css: &str, text: &str) {
        self.1 += 1;
        let paste = format!(
            "const area = document.querySelector({});
             area.value = {};
             area.dispatchEvent(new Event('input', {{ bubbles: true }}));
             return true;",
            json!(css),
            json!(text)
        );
        let _ = self.0.find(css).await;
        self.0.ask(&paste).await;
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn few_actions_lead_to_a_harp_and_to_an_order() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    // Designs, New, 30 strings, Start: a lever harp of nylon is proposed.
    let mut to_harp = Counted(&browser, 0);
    to_harp.click("#new").await;
    to_harp.fill(".new-harp fieldset:first-of-type > label:nth-of-type(3) input", "30").await;
    to_harp.click("#start-harp").await;
    browser
        .until("return document.querySelectorAll('#chart tbody tr').length === 30", "30 strings")
        .await;
    let filled = "return [...Array(30).keys()].every((row) => Number(document.querySelector(`#cell-${row}-4`).innerText) > 0)";
    assert_eq!(browser.ask(filled).await, json!(true), "every string has its tension");
    assert_eq!(to_harp.1, 4);

    // Designs, Restring a harp, the table, Start, Order, Print.
    let plain =
        FLOOR_36.design().strings.into_iter().filter(|string| string.make_up.material == "nylon");
    let lines: Vec<String> = plain
        .map(|string| {
            let made = string.make_up;
            format!("{}\t{}\t{}\t{}", string.note, string.length, made.material, made.diameter)
        })
        .collect();
    let table = format!("Note\tLength (mm)\tMaterial\tGauge (mm)\n{}", lines.join("\n"));
    let mut to_order = Counted(&browser, 0);
    to_order.click("#restring").await;
    to_order.paste("#measurements", &table).await;
    to_order.click("#start-measurements").await;
    browser.until(NO_WINDOW, "the strings").await;
    to_order.click("#order-view").await;
    to_order.click("#order-print").await;
    let _ = browser.find("#print-root .paper").await;
    let text = browser.print("everyday-order").await.text();
    assert!(text.contains("ORDER LIST") && text.contains("nylon"), "{text}");
    assert_eq!(browser.count("#order-unknown").await, 0, "every string is in the order");
    assert_eq!(to_order.1, 6);
    // The units of the whole design: open the list, choose.
    browser.click("#close-card").await;
    browser.click("#chart-view").await;
    let mut units = Counted(&browser, 0);
    units.click("#units").await;
    units.click("#units option[value=in]").await;
    browser
        .until(
            "return document.querySelector('#chart thead').innerText.includes('Length\\nin')",
            "inches",
        )
        .await;
    assert_eq!(units.1, 2);
    browser.check_console().await;
}
