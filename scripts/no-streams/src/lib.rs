//! Stands where Leptos asks for the crate `wasm-streams`, for functions that run on a server. Stringloft has no
//! server; yet what that crate offers to scripts stays in the program, used or not: 3 kB, packed.
//!
//! `Cargo.toml` of the workspace puts this crate in its place. Taking that line out brings the other back.

use std::convert::Infallible;
use std::pin::Pin;
use std::task::{Context, Poll};

use futures_core::Stream;
use wasm_bindgen::JsValue;

/// A stream between program and server: there is none.
pub struct ReadableStream(Infallible);

impl ReadableStream {
    /// # Panics
    ///
    /// Always.
    pub fn from_stream<S>(_: S) -> Self {
        unreachable!("the page talks to no server")
    }

    /// # Panics
    ///
    /// Always.
    pub fn from_raw(_: web_sys::ReadableStream) -> Self {
        unreachable!("the page talks to no server")
    }

    /// The stream of the browser.
    pub fn into_raw(self) -> web_sys::ReadableStream {
        match self.0 {}
    }

    /// The stream of the program.
    pub fn into_stream(self) -> Self {
        self
    }
}

impl Stream for ReadableStream {
    type Item = Result<JsValue, JsValue>;

    fn poll_next(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        match self.0 {}
    }
}
