//! What is said, filled and chosen as the catalogues say.

use super::*;

#[test]
fn a_message_is_filled_in_the_language_of_now() {
    assert_eq!(order::csv_of(&"Quillbeck"), "Save as CSV: order of Quillbeck");
    let german = in_language(Language::German, || order::csv_of(&"Quillbeck"));
    assert_eq!(german, "Als CSV speichern: Bestellung, Quillbeck");
    assert_eq!(language(), Language::English, "only while it was asked for");
}

#[test]
fn one_and_many_have_words_of_their_own() {
    let kept = |count: usize| order::codes_kept(&count);
    assert!(kept(1).ends_with("of 1 item."));
    assert!(kept(0).ends_with("of 0 items."));
    in_language(Language::French, || {
        assert!(kept(0).ends_with("de 0 article."), "{}", kept(0));
        assert!(kept(2).ends_with("de 2 articles."));
    });
}

#[test]
fn nothing_says_nothing() {
    for language in Language::ALL {
        assert_eq!(in_language(language, || Words::NONE.said()), "");
    }
}

#[test]
fn a_pack_of_another_build_is_refused() {
    assert!(!bring(Language::German, "0123456789abcdef\nnothing".to_owned()));
    assert!(!bring(Language::German, format!("{MARK}\ntoo short")));
    assert!(
        in_language(Language::German, || order::PRINT.said()) == "Drucken",
        "what was there stays"
    );
}

#[test]
fn a_language_goes_by_its_code() {
    for language in Language::ALL {
        assert_eq!(Language::of_code(language.code()), Some(language));
    }
    assert_eq!(Language::of_code("de-AT"), Some(Language::German));
    assert_eq!(Language::of_code("FR_ca"), Some(Language::French));
    assert_eq!(Language::of_code("eo"), None);
}
