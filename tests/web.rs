//! The page inside a real browser, in one module: `scripts/test web`.
#![cfg(all(target_arch = "wasm32", feature = "web"))]

#[path = "web/outcomes.rs"]
mod outcomes;
#[path = "web/tabs.rs"]
mod tabs;
#[path = "displayed/words.rs"]
mod words;

use js_sys::Promise;
use leptos::prelude::{document, window};
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};
use web_sys::Element;
use words::Chart;

wasm_bindgen_test_configure!(run_in_browser);

/// One page for all that is looked at, since a page is never taken out of its document again.
#[wasm_bindgen_test]
async fn the_page_mounts_and_shows_the_words_that_are_kept() {
    let body = document().body().expect("a page has a body");
    let before = body.child_element_count();
    // The kept words are those of every column.
    js_sys::eval("localStorage.setItem('stringloft/columns', 'all')").expect("it keeps a word");
    outcomes::open_keeping().await;
    stringloft::app::start();
    // With a link in the address, which another test may have left there, its reader is fetched first.
    for _ in 0..200 {
        if body.child_element_count() > before {
            break;
        }
        pause(25).await;
    }
    assert!(body.child_element_count() > before, "nothing was added to the page");
    for (key, kept) in words::KEPT {
        let kept = chart_of(kept);
        open(key);
        let mut now = String::new();
        for _ in 0..200 {
            pause(25).await;
            now = chart().written();
            if now == kept {
                break;
            }
        }
        let found = words::differences(kept, &now);
        assert!(found.is_empty(), "{key} shows other words:\n{found}");
    }
}

/// Opens a sample as a link that is followed.
fn open(key: &str) {
    let sample = SAMPLES.iter().find(|sample| sample.key == key).expect("a sample");
    let link = link::write(&sample.design()).expect("a sample fits a link");
    window().location().set_hash(&link).expect("an address takes a fragment");
}

/// Lets the browser work for some milliseconds.
async fn pause(ms: i32) {
    let wait = Promise::new(&mut |done, _| {
        window().set_timeout_with_callback_and_timeout_and_arguments_0(&done, ms).expect("a timer");
    });
    JsFuture::from(wait).await.expect("a timer rings");
}

/// What stands in the chart on the page, read from its cells. Number and octave stand before the columns.
fn chart() -> Chart {
    let find = |what: &str| document().query_selector(what).ok().flatten();
    let (Some(heads), Some(table)) = (find("#chart thead tr"), find("#chart")) else {
        return Chart::default();
    };
    let text = |element: &Element| element.text_content().unwrap_or_default();
    let head = |head: Element| {
        let unit = head.query_selector(".unit").ok().flatten().map(|unit| text(&unit));
        let unit = unit.unwrap_or_default();
        let word = text(&head).strip_suffix(&unit).map(str::to_owned);
        [word.expect("the unit stands last"), unit]
    };
    let cell = |cell: Element| {
        let why = cell.get_attribute("title").filter(|_| cell.matches(".unknown") == Ok(true));
        [text(&cell), why.unwrap_or_default()]
    };
    let row = |row: Element| {
        let mut cells = children(&row).skip(1);
        let octave = cells.next().map(|octave| text(&octave)).unwrap_or_default();
        (octave, cells.map(cell).collect())
    };
    Chart {
        heads: children(&heads).skip(2).map(head).collect(),
        // The rows stand in blocks.
        rows: children(&table)
            .filter(|block| block.matches("tbody") == Ok(true))
            .flat_map(|block| children(&block))
            .map(row)
            .collect(),
    }
}

fn children(of: &Element) -> impl Iterator<Item = Element> + use<> {
    std::iter::successors(of.first_element_child(), Element::next_element_sibling)
}

/// The kept words of the chart, which an empty line ends; findings follow it.
fn chart_of(kept: &str) -> &str {
    kept.find("\n\n").map_or(kept, |end| &kept[..end + 2])
}
