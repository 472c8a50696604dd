//! Any bytes through the door `stock`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::stock(&String::from_utf8_lossy(bytes)));
