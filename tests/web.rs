//! The page inside a real browser, without a build of trunk: `scripts/test web`.
#![cfg(all(target_arch = "wasm32", feature = "web"))]

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn the_app_mounts() {
    let body = leptos::prelude::document().body().expect("a page has a body");
    let before = body.child_element_count();
    stringloft::app::start();
    assert!(body.child_element_count() > before, "nothing was added to the page");
}
