//! Any bytes through the door `table`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::table(&String::from_utf8_lossy(bytes)));
