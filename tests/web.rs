//! The page inside a real browser, without a build of trunk: `scripts/test web`.
#![cfg(all(target_arch = "wasm32", feature = "web"))]

#[path = "displayed/words.rs"]
mod words;

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn the_app_mounts() {
    let body = leptos::prelude::document().body().expect("a page has a body");
    let before = body.child_element_count();
    stringloft::app::start();
    assert!(body.child_element_count() > before, "nothing was added to the page");
}

/// The same figures in the browser as on the machine that wrote the texts.
#[wasm_bindgen_test]
fn the_samples_show_the_words_that_are_kept() {
    for (key, kept) in words::KEPT {
        let now = words::displayed(key);
        let first = now.lines().zip(kept.lines()).find(|(now, kept)| now != kept);
        assert!(now == kept, "{key} shows other words: {first:?}");
    }
}
