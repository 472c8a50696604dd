//! Any bytes through the door `packed`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::packed(&String::from_utf8_lossy(
    bytes
)));
