//! The parts of the harp: in space, from three sides, as templates and on planks, at every size and in both themes; turned
//! with keys and pointer, chosen in the list, and handed over as files.

use std::time::Instant;

use fantoccini::key::Key;
use serde_json::json;
use stringloft::design::document::SoundboxSpec;
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;

use crate::browser::{Browser, Screen, keep};
use crate::server::Site;

/// Whether the harp in space is painted, and what the picture is.
const PAINTED: &str = "
    const canvas = document.querySelector('#space');
    const blank = Object.assign(document.createElement('canvas'), { width: canvas.width, height: canvas.height });
    return canvas.width > 10 && canvas.toDataURL() !== blank.toDataURL();
";
const PICTURE: &str = "return document.querySelector('#space').toDataURL()";

async fn open(screen: Screen, sample: usize) -> (Site, Browser) {
    let site = Site::of_build("/");
    let browser = Browser::open(screen).await;
    let fragment = link::write(&SAMPLES[sample].design()).expect("a link");
    browser.open_app(&format!("{}#{fragment}", site.url())).await;
    browser.ask("document.querySelector('#parts-view').click(); return true").await;
    let _ = browser.find("#space").await;
    browser.until(PAINTED, "the harp in space").await;
    (site, browser)
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_harp_turns_in_space_by_keys_and_shows_the_part_that_is_chosen() {
    let (_site, browser) = open(Screen::LAPTOP, 1).await;
    let first = browser.ask(PICTURE).await;
    browser.ask("document.querySelector('#space').focus(); return true").await;
    browser.press(&Key::Right.to_string()).await;
    let changed = |than: &serde_json::Value| {
        format!("return document.querySelector('#space').toDataURL() !== {than}")
    };
    browser.until(&changed(&first), "the harp turned").await;
    browser.press(&Key::Left.to_string()).await;
    browser.until(&format!("return !(() => {{ {} }})()", changed(&first)), "turned back").await;
    browser.press("+").await;
    browser.until(&changed(&first), "a larger harp").await;
    browser.press("0").await;
    browser.until(&format!("return !(() => {{ {} }})()", changed(&first)), "the whole harp").await;
    browser.click(".parts-table tbody tr:nth-child(2) button").await;
    browser.until(&changed(&first), "the part that is chosen").await;
    browser.check_barriers().await;
    browser.click("#parts-template").await;
    let name = browser.text(".parts-table tbody tr:nth-child(2) button").await;
    browser
        .until(
            &format!(
                "return document.querySelector('#parts-paper').textContent.toLowerCase().includes({}.toLowerCase())",
                json!(name)
            ),
            "the template of the part",
        )
        .await;
    browser.check_barriers().await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_harp_without_a_soundbox_says_why_there_are_no_parts() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    let mut design = SAMPLES[0].design();
    design.strings.truncate(2);
    let fragment = link::write(&design).expect("a link");
    browser.open_app(&format!("{}#{fragment}", site.url())).await;
    browser.click("#parts-view").await;
    let words = browser.text("#parts .chart-empty").await;
    assert!(words.contains("three strings"), "{words}");
    browser.click("#parts-to-sizes").await;
    let _ = browser.find("#chart").await;

    // Strings enough, and a soundbox without sizes: the way to them, or the usual ones.
    let mut design = SAMPLES[0].design();
    design.geometry.soundbox = SoundboxSpec::default();
    let fragment = link::write(&design).expect("a link");
    let site = Site::of_build("/");
    browser.open_app(&format!("{}#{fragment}", site.url())).await;
    browser.click("#parts-view").await;
    browser.click("#parts-to-sizes").await;
    let open = "return document.querySelector('#group-woods')?.ariaExpanded === 'true'";
    browser.until(open, "the sizes").await;
    browser.click("#parts-view").await;
    browser.check_barriers().await;
    browser.click("#parts-usual").await;
    let _ = browser.find("#space").await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_parts_of_every_sample_are_shown_at_every_size() {
    for (at, sample) in SAMPLES.iter().enumerate() {
        let screens = [Screen::LAPTOP, Screen::DESKTOP, Screen::PHONE];
        let screen = if at % 2 == 0 { screens[at % 3] } else { screens[at % 3].in_the_dark() };
        let all = std::env::var_os("SHOTS").is_some();
        let screens: Vec<Screen> = if all {
            screens.into_iter().flat_map(|one| [one, one.in_the_dark()]).collect()
        } else {
            vec![screen]
        };
        for screen in screens {
            let (_site, browser) = open(screen, at).await;
            for (view, wait) in [
                ("parts-space", "#space"),
                ("parts-sides", "#parts-paper svg"),
                ("parts-planks", "#parts-paper svg"),
            ] {
                browser
                    .ask(&format!("document.querySelector('#{view}').click(); return true"))
                    .await;
                let _ = browser.find(wait).await;
                if view == "parts-space" {
                    browser.until(PAINTED, "the harp in space").await;
                }
                let wide =
                    browser.ask("return document.documentElement.scrollWidth <= innerWidth").await;
                assert_eq!(wide, true, "{}: {view} goes sideways", sample.key);
                let picture = browser.client.screenshot().await.expect("a picture");
                let light = if screen.dark { "dark" } else { "light" };
                keep(
                    &format!("shots/{}-{view}-{}-{light}.png", sample.key, screen.width),
                    &picture,
                );
            }
            for group in ["parts-worth", "parts-files"] {
                browser
                    .ask(&format!("document.querySelector('#{group}').click(); return true"))
                    .await;
                let picture = browser.client.screenshot().await.expect("a picture");
                let light = if screen.dark { "dark" } else { "light" };
                keep(
                    &format!("shots/{}-{group}-{}-{light}.png", sample.key, screen.width),
                    &picture,
                );
            }
            browser.check_console().await;
        }
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_cutting_list_and_the_order_of_building_print_whole() {
    let (_site, browser) = open(Screen::LAPTOP, 1).await;
    let printed = browser.print("parts").await;
    let words = printed.text();
    for wanted in ["Cutting list", "Order of building", "knee block", "Take care."] {
        assert!(words.contains(wanted), "{wanted} is not on paper: {words:.2000}");
    }
    for (place, size) in printed.page_sizes_mm().into_iter().enumerate() {
        assert!((size.0 - 210.0).abs() < 0.6 && (size.1 - 297.0).abs() < 0.6, "{size:?}");
        let page = printed.page(place + 1, 60);
        assert!(page.pixels().any(|pixel| pixel.0[0] < 160), "page {} is blank", place + 1);
    }
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn turning_the_harp_in_space_stays_within_a_frame() {
    let (_site, browser) = open(Screen::LAPTOP, SAMPLES.len() - 1).await;
    let turn = "
        const canvas = document.querySelector('#space');
        const times = [];
        for (let step = 0; step < 30; step++) {
          canvas.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true }));
          // Painted in the next frame: what the frame's work takes is what is measured.
          await new Promise((then) => requestAnimationFrame(() => {
            const begun = performance.now();
            queueMicrotask(() => {});
            const channel = new MessageChannel();
            channel.port1.onmessage = () => (times.push(performance.now() - begun), then());
            channel.port2.postMessage(0);
          }));
        }
        return times.sort((one, other) => one - other)[15];
    ";
    let begun = Instant::now();
    let typical = browser.ask(&format!("return (async () => {{ {turn} }})()")).await;
    let typical = typical.as_f64().expect("a time");
    eprintln!("a turn of the harp takes {typical:.1} ms; all of it {:?}", begun.elapsed());
    // A busy machine takes longer; a page that lost its order of painting takes far longer.
    assert!(typical < 100.0, "a turn takes {typical:.1} ms");
}
