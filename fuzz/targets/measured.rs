//! Any bytes through the door `measured`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::measured(&String::from_utf8_lossy(
    bytes
)));
