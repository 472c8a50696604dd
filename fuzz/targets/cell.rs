//! Any bytes through the door `cell`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::cell(&String::from_utf8_lossy(bytes)));
