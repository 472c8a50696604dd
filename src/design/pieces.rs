//! The words, signs and brackets of a make-up's line.

/// What may follow a comma.
pub(super) const CLAUSES: [&str; 4] = ["core", "gauge", "breaks", "bare"];

/// What a line is made of.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Piece {
    /// Letters without a blank.
    Word(String),
    /// What stands in brackets.
    Held(String),
    /// Between layers.
    Plus,
    /// Before one of the clauses.
    Comma,
}

impl Piece {
    /// Whether it is this word, whatever the case.
    pub(super) fn is(&self, word: &str) -> bool {
        matches!(self, Self::Word(own) if own.eq_ignore_ascii_case(word))
    }

    /// Its letters, without the brackets.
    pub(super) fn text(&self) -> &str {
        match self {
            Self::Word(text) | Self::Held(text) => text,
            Self::Plus => "+",
            Self::Comma => ",",
        }
    }
}

/// The pieces of a line.
///
/// # Errors
///
/// With the text behind a bracket that does not close.
pub(super) fn pieces(text: &str) -> Result<Vec<Piece>, &str> {
    let mut pieces = Vec::new();
    let mut rest = text.trim_start();
    while let Some(first) = rest.chars().next() {
        let after = &rest[first.len_utf8()..];
        rest = match first {
            '[' => {
                let (held, after) = take_held(after)?;
                pieces.push(Piece::Held(held));
                after
            }
            '+' => {
                pieces.push(Piece::Plus);
                after
            }
            ',' if opens_clause(after) => {
                pieces.push(Piece::Comma);
                after
            }
            '×' => {
                pieces.push(Piece::Word("x".to_owned()));
                after
            }
            _ => {
                let (word, after) = rest.split_at(end_of_word(rest));
                pieces.push(Piece::Word(word.to_owned()));
                after
            }
        }
        .trim_start();
    }
    Ok(pieces)
}

/// What stands up to the closing bracket, and what follows it.
fn take_held(text: &str) -> Result<(String, &str), &str> {
    let mut held = String::new();
    let mut rest = text;
    loop {
        let end = rest.find(']').ok_or(text)?;
        held.push_str(&rest[..end]);
        rest = &rest[end + 1..];
        match rest.strip_prefix(']') {
            Some(after) => {
                held.push(']');
                rest = after;
            }
            None => return Ok((held, rest)),
        }
    }
}

/// Whether one of the words that may follow a comma stands here.
fn opens_clause(text: &str) -> bool {
    let word = text.trim_start();
    let word = &word[..word.find(|c: char| !c.is_alphanumeric()).unwrap_or(word.len())];
    CLAUSES.iter().any(|clause| word.eq_ignore_ascii_case(clause))
}

/// Where the word at the beginning ends: at a blank, a sign, or between the two sizes of a ribbon
/// (`0.15x0.60`).
fn end_of_word(text: &str) -> usize {
    let mut before = None;
    for (place, letter) in text.char_indices() {
        let after = &text[place + letter.len_utf8()..];
        let number = |c: char| c.is_ascii_digit() || matches!(c, '.' | '"');
        let ends = match letter {
            '[' | '+' | '×' => true,
            ',' => opens_clause(after),
            'x' | 'X' => before.is_some_and(number) && after.starts_with(number),
            _ => letter.is_whitespace(),
        };
        if ends && place > 0 {
            return place;
        }
        // A lone x before the width of a ribbon is a word of its own.
        if place == 0 && letter.eq_ignore_ascii_case(&'x') && after.starts_with(number) {
            return letter.len_utf8();
        }
        before = Some(letter);
    }
    text.len()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_falls_into_words_signs_and_brackets() {
        let shown = |text: &str| {
            let pieces = pieces(text).unwrap();
            let show = |piece: &Piece| match piece {
                Piece::Word(word) => word.clone(),
                Piece::Held(held) => format!("<{held}>"),
                Piece::Plus | Piece::Comma => piece.text().to_owned(),
            };
            pieces.iter().map(show).collect::<Vec<_>>().join("|")
        };
        assert_eq!(shown(" a b+c "), "a|b|+|c");
        assert_eq!(shown("a, b,bare 1, BARE"), "a,|b|,|bare|1|,|BARE");
        assert_eq!(shown("a, barely"), "a,|barely");
        assert_eq!(shown("[a]] b][c]d"), "<a] b>|<c>|d");
        assert_eq!(
            shown("0.1x0.2 x.3 .1\"X2 1×2 fox x2b"),
            "0.1|x|0.2|x|.3|.1\"|X|2|1|x|2|fox|x|2b"
        );
        assert_eq!(shown("é,½ 𝄫"), "é,½|𝄫");
        assert_eq!(shown(""), "");
        assert_eq!(pieces("a [b"), Err("b"));
    }
}
