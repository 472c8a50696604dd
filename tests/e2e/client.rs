//! What a client sees who opens a link: the harp first, without the designer's tools.

use serde_json::Value;
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;

use super::browser::{Browser, Screen};
use super::server::Site;

/// Bytes that came over the line for the page so far.
const BYTES: &str = "return performance.getEntriesByType('resource').concat(performance.getEntriesByType('navigation')).reduce((sum, entry) => sum + entry.encodedBodySize, 0)";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_client_sees_the_harp_first_and_fetches_no_tools() {
    let site = Site::of_build("/");
    let design = SAMPLES[0].design();
    let link = link::write(&design).expect("a link");
    for (screen, name) in [(Screen::LAPTOP, "client"), (Screen::PHONE, "client-phone")] {
        let browser = Browser::open(screen).await;
        browser.open_first_screen(&format!("{}#{link}", site.url())).await;
        let _ = browser.find("#client").await;
        assert!(browser.text(".window h2").await.contains(design.title.trim()));
        assert!(browser.count("#client li").await >= 4, "sentences say what it is");
        assert_eq!(browser.count("#client .client-picture svg").await, 2, "drawing and curves");
        browser.check_barriers().await;
        browser.screenshot(name).await;
        // Long enough for parts to be fetched at leisure, were they asked for.
        tokio::time::sleep(std::time::Duration::from_secs(3)).await;
        let asked = browser
            .ask("return performance.getEntriesByType('resource').map((entry) => entry.name)")
            .await;
        let asked: Vec<&str> =
            asked.as_array().expect("a list").iter().filter_map(Value::as_str).collect();
        for part in ["drawing", "choosing", "stock", "windows", "numbers"] {
            assert!(
                !asked.iter().any(|name| name.contains(&format!("/{part}-"))),
                "{part} was fetched"
            );
        }
        eprintln!("{name}: {} bytes", browser.ask(BYTES).await);
        let wide = browser.ask("return document.documentElement.scrollWidth - document.documentElement.clientWidth").await;
        assert!(wide.as_i64() <= Some(0), "nothing is wider than the screen");
        browser.click("#client-open").await;
        let rows = browser.count("#chart tbody tr").await;
        assert_eq!(rows, design.strings.len(), "the designer has the harp");
        browser.check_console().await;
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_maker_with_designs_of_his_own_opens_a_link_in_the_designer() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#cell-0-2").await;
    browser.press("9").await;
    browser.press("0").await;
    browser.press("\u{e007}").await;
    browser.until("return document.querySelector('#keeping')?.textContent.includes('Kept') || document.body.textContent.includes('Kept ')", "kept").await;
    let link = link::write(&SAMPLES[1].design()).expect("a link");
    browser.goto("about:blank").await;
    browser.open_first_screen(&format!("{}#{link}", site.url())).await;
    let title = SAMPLES[1].design().title;
    browser.until(&format!("return document.title.includes({title:?})"), "the harp").await;
    assert_eq!(browser.count("#client").await, 0);
}
