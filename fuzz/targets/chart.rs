//! Any bytes through the door `chart`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::chart(&String::from_utf8_lossy(bytes)));
