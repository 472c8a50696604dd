//! A robot works in the page for long: nothing goes wrong, nothing is told to the console, memory stays bounded, edits
//! stay as quick as they were, and what is shown is what a fresh load shows. `SOAK=10000` asks for so many actions.

use serde_json::{Value, json};
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;

use crate::browser::{Browser, Screen};
use crate::keeping::IS_KEPT;
use crate::server::Site;

/// What a short run does. Without a number in `SOAK`.
const USUAL_ACTIONS: usize = 300;
/// Actions between two looks at the page.
const ROUND: usize = 50;
/// The most memory that the program may have, in MB. Measured: 8.5 after 300 actions and 21 to 48 after 10,000, of which the
/// undo steps, 500 at most, are the largest part.
const MOST_MB: f64 = 64.0;
/// How many different things the robot does at least in each hundred actions of a short run.
const KINDS: usize = 30;
/// How much slower edits may be after all actions than in a page that was just opened and shows the same.
const SLOWER: f64 = 1.10;
/// How often both pages are measured, in turns, while the worked one looks slower: a page that became slower stays so,
/// a busy machine slows down either.
const TRIES: usize = 6;
/// Edits of a burst, and bursts of which the quickest counts: whatever else the machine does only makes one slower.
const EDITS: usize = 40;
const BURSTS: usize = 4;

/// Keeps hold of the program's memory, to be asked for its size.
const REMEMBER: &str = "
    window.memories = [];
    for (const name of ['instantiate', 'instantiateStreaming']) {
      const made = WebAssembly[name];
      WebAssembly[name] = async (...given) => {
        const found = await made.apply(WebAssembly, given);
        const { exports } = found.instance ?? found;
        memories.push(...Object.values(exports).filter((one) => one instanceof WebAssembly.Memory));
        return found;
      };
    }
";

/// Notes what goes wrong, as an engine without a log of its console tells it to nobody else.
const COUNT_TROUBLE: &str = "
    window.trouble = [];
    addEventListener('error', (event) => trouble.push(`error: ${event.message}`));
    addEventListener('unhandledrejection', (event) => trouble.push(`rejected: ${event.reason}`));
    document.addEventListener('securitypolicyviolation', (event) => trouble.push(`refused: ${event.blockedURI}`));
    for (const name of ['warn', 'error']) {
      const told = console[name];
      console[name] = (...given) => (trouble.push(`${name}: ${given.join(' ')}`), told.apply(console, given));
    }
    return true;
";

/// Every word of the chart and of the summary.
const WORDS: &str = "
    const cells = [...document.querySelectorAll('#chart tbody tr')].map((row) =>
      [...row.children].slice(2).map((cell) => cell.textContent));
    return [cells, document.querySelector('#title').value];
";

/// How long an edit takes in the quickest of several bursts on the same design, in milliseconds.
async fn edits(browser: &Browser, link: &str) -> f64 {
    browser.ask(&format!("location.hash = {}; return true", json!(link))).await;
    browser.until("return !!document.querySelector('#origin')", "the sample").await;
    let mut least = f64::INFINITY;
    for _ in 0..BURSTS {
        let typical = browser.ask(&format!("return robot.edits({EDITS})")).await;
        least = least.min(typical.as_f64().expect("a time"));
    }
    least
}

async fn memory_mb(browser: &Browser) -> f64 {
    browser.ask("return robot.memory()").await.as_f64().expect("a size") / 1e6
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_robot_that_works_for_long_finds_the_page_as_it_was() {
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": REMEMBER })).await;
    soak(&browser, USUAL_ACTIONS).await;
}

/// So many actions, or as many as `SOAK` says, in an engine of any kind.
pub async fn soak(browser: &Browser, usual: usize) {
    let actions = std::env::var("SOAK").ok().and_then(|text| text.parse().ok());
    let actions: usize = actions.unwrap_or(usual);
    let site = Site::of_build("/");
    browser.open_app(&site.url()).await;
    browser.ask(COUNT_TROUBLE).await;
    browser.ask(include_str!("soak.js")).await;
    browser.ask("robot.seed(11); return true").await;
    let link = link::write(&SAMPLES[0].design()).expect("a link");

    let mut times = Vec::<f64>::new();
    // Only Chromium lets the program's memory be remembered before the page runs.
    let begun_mb = memory_mb(browser).await;
    assert!(begun_mb > 1.0 || !browser.is_chromium, "the program's memory was not found");
    while times.len() < actions {
        let round = ROUND.min(actions - times.len());
        let run = format!(
            "return window.robot ? robot.run({round}) : {{ stopped: ['it left the page', sessionStorage.getItem('robot-left')] }}"
        );
        let found = browser.ask(&run).await;
        let stopped = &found["stopped"];
        assert!(stopped.is_null(), "after {} actions it stopped: {stopped:#}", times.len());
        let more: Vec<f64> = serde_json::from_value(found["times"].clone()).expect("times");
        times.extend(more);
        check_for_trouble(browser, times.len()).await;
        let mb = memory_mb(browser).await;
        assert!(mb < MOST_MB, "{mb:.1} MB after {} actions: {}", times.len(), last(browser).await);
    }
    let end_mb = memory_mb(browser).await;
    let kinds = browser.ask("return robot.kinds()").await;
    let kinds = kinds.as_u64().and_then(|count| usize::try_from(count).ok()).unwrap_or(0);
    assert!(kinds > KINDS * actions.min(USUAL_ACTIONS) / 100, "only {kinds} different things");
    close_all(browser).await;
    check_against_a_fresh_load(browser, &site).await;
    if !browser.is_chromium {
        // Another engine gives no frames to a tab that is out of sight, so that two cannot be measured in turns.
        eprintln!("{actions} actions of {kinds} kinds");
        check_for_trouble(browser, actions).await;
        return;
    }
    let (worked, fresh) = edits_here_and_afresh(browser, &site, &link).await;
    check_for_trouble(browser, actions).await;
    eprintln!(
        "{actions} actions of {kinds} kinds; memory {begun_mb:.1} MB, then {end_mb:.1}; an edit takes {worked:.2} ms, {fresh:.2} in a fresh page"
    );
    assert!(
        worked <= fresh * SLOWER,
        "an edit takes {worked:.2} ms, and {fresh:.2} in a fresh page"
    );
}

/// How long an edit takes in the page that was worked in, and in one that was just opened, measured in turns.
async fn edits_here_and_afresh(browser: &Browser, site: &Site, link: &str) -> (f64, f64) {
    let here = browser.client.window().await.expect("a tab");
    let sides = browser.ask("return document.querySelector('#sides').value").await;
    let curves = browser.ask("return robot.curves()").await;
    let other = browser.client.new_window(true).await.expect("a second tab").handle;
    browser.client.switch_to_window(other.clone()).await.expect("the second tab");
    browser.open_app(&site.url()).await;
    browser.ask(include_str!("soak.js")).await;
    // What it shows costs time too. The columns are the same by themselves, as the browser keeps them.
    assert_eq!(browser.ask(&format!("return robot.curves({curves})")).await, curves);
    assert_eq!(browser.ask(&format!("return robot.sides({sides})")).await, sides);
    let (mut worked, mut fresh) = (f64::INFINITY, f64::INFINITY);
    for _ in 0..TRIES {
        fresh = fresh.min(edits(browser, link).await);
        browser.client.switch_to_window(here.clone()).await.expect("the first tab");
        worked = worked.min(edits(browser, link).await);
        if worked <= fresh * SLOWER {
            break;
        }
        browser.client.switch_to_window(other.clone()).await.expect("the second tab");
    }
    browser.client.switch_to_window(other).await.expect("the second tab");
    browser.client.close_window().await.expect("it closes");
    browser.client.switch_to_window(here).await.expect("the first tab");
    (worked, fresh)
}

/// Nothing above a note in the console, no error, nothing that the policy of the page refused.
async fn check_for_trouble(browser: &Browser, actions: usize) {
    browser.check_console().await;
    let trouble = browser.ask("return trouble").await;
    assert_eq!(trouble, json!([]), "after {actions} actions: {}", last(browser).await);
}

/// What the robot left in the chart is what a fresh load of the same design shows, in a tab of its own.
async fn check_against_a_fresh_load(browser: &Browser, site: &Site) {
    // A change, so that it is a design that is kept, whatever it was.
    browser.fill("#title", "Soaked").await;
    browser.until(IS_KEPT, "the design kept").await;
    let shown = browser.ask(WORDS).await;
    let here = browser.client.window().await.expect("a tab");
    let fresh = browser.client.new_window(true).await.expect("a second tab").handle;
    browser.client.switch_to_window(fresh).await.expect("the second tab");
    browser.open_app(&site.url()).await;
    assert_eq!(browser.ask(WORDS).await, shown, "a fresh load shows something else");
    browser.check_console().await;
    browser.client.close_window().await.expect("it closes");
    browser.client.switch_to_window(here).await.expect("the first tab");
}

/// Closes whatever lies over the page and shows the chart.
async fn close_all(browser: &Browser) {
    let close = "
        for (let turns = 0; turns < 5; turns++) {
          document.querySelector('#close-card')?.click();
          document.querySelector('dialog[open] .window-head button')?.click();
        }
        document.querySelector('#chart-view').click();
        return true;
    ";
    browser.ask(close).await;
    browser
        .until(
            "return !document.querySelector('dialog[open]') && !!document.querySelector('#chart')",
            "the chart",
        )
        .await;
}

async fn last(browser: &Browser) -> Value {
    browser.ask("return robot.last()").await
}
