//! Any bytes through the door `whole`.

#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| stringloft_fuzz::whole(&String::from_utf8_lossy(bytes)));
