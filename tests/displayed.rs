//! What the chart shows of the samples, held to what is kept. `tests/web.rs` holds the page in the
//! browser to the same texts.
//!
//! After a change that is meant: `RENEW=1 cargo test --test displayed`, and look at what git shows.

#[path = "displayed/words.rs"]
mod words;

#[test]
fn the_samples_show_the_words_that_are_kept() {
    for (key, kept) in words::KEPT {
        let now = words::displayed(key);
        if std::env::var_os("RENEW").is_some() {
            let path = format!("{}/tests/displayed/{key}.txt", env!("CARGO_MANIFEST_DIR"));
            std::fs::write(path, &now).expect("the file can be written");
        } else {
            assert!(now == kept, "{key} shows other words:\n{now}");
        }
    }
}
