//! Finds English in a source: texts of several words, outside tests, attributes and words for whoever mends the program.

use proc_macro2::{Delimiter, TokenStream, TokenTree};

/// Macros and functions whose words are for whoever mends the program.
const FOR_MENDERS: [&str; 12] = [
    "assert",
    "assert_eq",
    "assert_ne",
    "debug_assert",
    "debug_assert_eq",
    "expect",
    "panic",
    "todo",
    "unimplemented",
    "unreachable",
    "compile_error",
    "include_str",
];
/// What follows these names, and a sign of equality or a colon, is for style sheets and scripts.
const FOR_MACHINES: [&str; 10] =
    ["class", "id", "type", "role", "d", "rel", "style", "name_in_file", "viewBox", "allow"];
/// Files of names, sources and citations, which stand as they were published in every language, and of formats that
/// programs read.
const PUBLISHED: [&str; 6] = [
    "src/design/checks/cited.rs",
    "src/engine/material/built_in.rs",
    "src/engine/structure/cited.rs",
    "src/engine/structure/wood/built_in.rs",
    "src/papers/template/dxf.rs",
    "src/papers/template/schedule.rs",
];

/// The texts of a file that a maker would read, each behind the name of the file.
pub fn found(file: &str, text: &str) -> Vec<String> {
    if PUBLISHED.contains(&file)
        || file.ends_with("/tests.rs")
        || file.contains("/tests/")
        || file.ends_with("testing.rs")
    {
        return Vec::new();
    }
    let stream: TokenStream = text.parse().unwrap_or_else(|why| panic!("{file}: {why}"));
    let mut out = Vec::new();
    walk(stream, &mut out);
    out.into_iter().map(|text| format!("{file}: {text}")).collect()
}

fn walk(stream: TokenStream, out: &mut Vec<String>) {
    let tokens: Vec<TokenTree> = stream.into_iter().collect();
    let mut at = 0;
    let mut is_test = false;
    while at < tokens.len() {
        match &tokens[at] {
            // An attribute; `#[error("…")]` is read by makers, `#[cfg(test)]` takes what follows away.
            TokenTree::Punct(sign) if sign.as_char() == '#' => {
                let inner = matches!(tokens.get(at + 1), Some(TokenTree::Punct(sign)) if sign.as_char() == '!');
                let next = at + 1 + usize::from(inner);
                if let Some(TokenTree::Group(group)) = tokens.get(next)
                    && group.delimiter() == Delimiter::Bracket
                {
                    let words = group.stream().to_string();
                    if words.starts_with("error") {
                        walk(group.stream(), out);
                    }
                    is_test |= words.replace(' ', "") == "cfg(test)";
                    at = next + 1;
                    continue;
                }
            }
            // What stands under the attribute ends with a block or a semicolon.
            TokenTree::Punct(sign) if sign.as_char() == ';' => is_test = false,
            TokenTree::Group(group) => {
                if is_test && group.delimiter() == Delimiter::Brace {
                    is_test = false;
                } else if !is_test && !is_for_menders(&tokens[..at]) {
                    walk(group.stream(), out);
                }
            }
            TokenTree::Literal(literal) if !is_test && !is_for_machines(&tokens[..at]) => {
                let written = literal.to_string();
                if written.starts_with('"') && is_prose(&written) {
                    out.push(written);
                }
            }
            _ => {}
        }
        at += 1;
    }
}

fn is_for_menders(before: &[TokenTree]) -> bool {
    before.iter().rev().take(2).any(
        |token| matches!(token, TokenTree::Ident(name) if FOR_MENDERS.contains(&name.to_string().as_str())),
    )
}

fn is_for_machines(before: &[TokenTree]) -> bool {
    let mut last = before.iter().rev();
    let sign =
        matches!(last.next(), Some(TokenTree::Punct(sign)) if matches!(sign.as_char(), '=' | ':'));
    sign && matches!(last.next(), Some(TokenTree::Ident(name)) if FOR_MACHINES.contains(&name.to_string().as_str()))
}

/// Two words of two letters or more side by side.
fn is_prose(written: &str) -> bool {
    let mut plain = String::new();
    let mut deep = 0;
    for sign in written.trim_matches('"').chars() {
        match sign {
            '{' => deep += 1,
            '}' => deep -= 1,
            _ if deep == 0 => plain.push(sign),
            _ => {}
        }
    }
    if plain.starts_with("tool ") || plain.contains('<') || plain.contains("://") {
        return false;
    }
    let is_word = |word: &str| {
        let word = word.trim_matches(|sign: char| sign.is_ascii_punctuation() || sign == '’');
        word.chars().count() > 1
            && word.chars().all(|sign| sign.is_alphabetic() || "-'’".contains(sign))
    };
    let words: Vec<bool> = plain.split_whitespace().map(is_word).collect();
    words.windows(2).any(|pair| pair[0] && pair[1])
}
