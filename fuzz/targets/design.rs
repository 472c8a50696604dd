//! Any bytes through the door `design`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::design(&String::from_utf8_lossy(
    bytes
)));
