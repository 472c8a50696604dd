//! Makes a picture of pixels from an SVG picture, on a canvas that is not on the page.

use js_sys::{Array, Promise};
use leptos::prelude::document;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, CanvasRenderingContext2d, HtmlCanvasElement, HtmlImageElement, Url,
};

/// A PNG of an SVG picture of a size in pixels, `finer` of its own for each; `None` where the browser makes none.
pub async fn png(svg: &str, size: (f64, f64), finer: f64) -> Option<Blob> {
    let options = BlobPropertyBag::new();
    options.set_type("image/svg+xml");
    let parts = Array::of1(&svg.into());
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options).ok()?;
    let url = Url::create_object_url_with_blob(&blob).ok()?;
    let made = painted(&url, size, finer).await;
    let _ = Url::revoke_object_url(&url);
    made
}

async fn painted(url: &str, (wide, high): (f64, f64), finer: f64) -> Option<Blob> {
    let image = HtmlImageElement::new().ok()?;
    image.set_src(url);
    JsFuture::from(image.decode()).await.ok()?;
    let canvas: HtmlCanvasElement = document().create_element("canvas").ok()?.dyn_into().ok()?;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a size in pixels, clamped to what a canvas may have"
    )]
    let pixels = |css: f64| (css * finer).round().clamp(1.0, 8_000.0) as u32;
    canvas.set_width(pixels(wide));
    canvas.set_height(pixels(high));
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    let (wide, high) = (f64::from(canvas.width()), f64::from(canvas.height()));
    context.draw_image_with_html_image_element_and_dw_and_dh(&image, 0.0, 0.0, wide, high).ok()?;
    let made = Promise::new(&mut |resolve, reject| {
        // Type and quality are left to the browser: PNG.
        if canvas.to_blob(&resolve).is_err() {
            let _ = reject.call0(&JsValue::NULL);
        }
    });
    JsFuture::from(made).await.ok()?.dyn_into().ok()
}
