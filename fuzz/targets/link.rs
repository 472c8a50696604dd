//! Any bytes through the door `link`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::link(&String::from_utf8_lossy(bytes)));
