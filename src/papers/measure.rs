//! How wide a text will be in print, and how it breaks into lines.
//!
//! The browser is not asked, so that every browser gives the same pages. The widths are those of the
//! usual sans-serif (Arial, Helvetica, Liberation Sans) with some room added.

/// Millimetres in a point.
pub const POINT_MM: f64 = 25.4 / 72.0;
/// Room for fonts a little wider than the table. Common practice, no source.
const ROOM: f64 = 1.08;
/// No text is read further than this; a hostile one costs no time.
const MOST_CHARS: usize = 8_000;

/// Width of a text set at `size_pt`, a little too great rather than too small.
pub fn width_mm(text: &str, size_pt: f64) -> f64 {
    text.chars().map(width_em).sum::<f64>() * size_pt * POINT_MM * ROOM
}

/// The text in lines of at most `width_mm`, at least one line and at most `most_lines` (0 counts as
/// one); what does not fit ends in an ellipsis. Breaks at blanks, and inside a word that is too wide.
pub fn wrap(text: &str, width_mm: f64, size_pt: f64, most_lines: usize) -> Vec<String> {
    let clean = clean(text);
    let mut lines = vec![String::new()];
    // A no-break space does not part words.
    for word in clean.split(' ').filter(|word| !word.is_empty()) {
        if lines.len() > most_lines.max(1) {
            break;
        }
        push_word(&mut lines, word, width_mm, size_pt);
    }
    shorten(&mut lines, width_mm, size_pt, most_lines.max(1));
    lines
}

/// Adds a word to the last line, or begins lines for it.
fn push_word(lines: &mut Vec<String>, word: &str, width_mm: f64, size_pt: f64) {
    let fits = |text: &str| self::width_mm(text, size_pt) <= width_mm;
    let last = lines.last().map_or("", String::as_str);
    let joined = if last.is_empty() { word.to_owned() } else { format!("{last} {word}") };
    if fits(&joined) {
        if let Some(last) = lines.last_mut() {
            *last = joined;
        }
        return;
    }
    if !last.is_empty() {
        lines.push(String::new());
    }
    let (mut line, mut so_far_mm) = (String::new(), 0.0);
    for sign in word.chars() {
        let sign_mm = width_em(sign) * size_pt * POINT_MM * ROOM;
        if so_far_mm + sign_mm > width_mm && !line.is_empty() {
            if let Some(last) = lines.last_mut() {
                *last = std::mem::take(&mut line);
            }
            lines.push(String::new());
            so_far_mm = 0.0;
        }
        line.push(sign);
        so_far_mm += sign_mm;
    }
    if let Some(last) = lines.last_mut() {
        *last = line;
    }
}

/// Cuts to `most_lines`, the last of which then ends in an ellipsis.
fn shorten(lines: &mut Vec<String>, width_mm: f64, size_pt: f64, most_lines: usize) {
    if lines.len() <= most_lines {
        return;
    }
    lines.truncate(most_lines);
    if let Some(last) = lines.last_mut() {
        while !last.is_empty() && self::width_mm(&format!("{last}…"), size_pt) > width_mm {
            last.pop();
        }
        last.truncate(last.trim_end().len());
        last.push('…');
    }
}

/// The text without signs that print nothing or turn the direction of writing.
pub fn clean(text: &str) -> String {
    let kept = text.chars().take(MOST_CHARS).filter_map(|sign| match sign {
        '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{206f}' => None,
        '\u{feff}' | '\u{61c}' => None,
        '\u{a0}' | '\u{202f}' => Some('\u{a0}'),
        _ if sign.is_control() || sign.is_whitespace() => Some(' '),
        _ => Some(sign),
    });
    kept.collect::<String>().trim().to_owned()
}

/// Width of a sign over the size of the type. Widths of Helvetica, from memory; other scripts are
/// taken as wide as they come.
fn width_em(sign: char) -> f64 {
    match sign {
        'i' | 'j' | 'l' | '\'' | '’' | '‘' => 0.222,
        ' ' | '\u{a0}' | 'î' | 'ï' | 'í' | '.' | ',' | ':' | ';' | '/' | 'I' | 'f' | 't' | '!'
        | '|' | '·' | '\\' => 0.278,
        '(' | ')' | '-' | 'r' | '[' | ']' | '`' | '"' | '{' | '}' | '°' | '„' | '“' | '”' => {
            0.36
        }
        'c' | 'ç' | 'k' | 's' | 'v' | 'x' | 'y' | 'z' | 'J' => 0.5,
        'a'..='z' if !matches!(sign, 'm' | 'w') => 0.556,
        'à' | 'á' | 'â' | 'ä' | 'è'..='ë' | 'ó' | 'ô' | 'ö' | 'ù'..='ü' | '«' | '»' => {
            0.556
        }
        '0'..='9' | 'L' | '#' | '$' | '?' | '_' | '–' => 0.556,
        '+' | '=' | '<' | '>' | '×' | '−' | '~' => 0.584,
        'F' | 'T' | 'Z' => 0.611,
        'A' | 'B' | 'E' | 'K' | 'P' | 'S' | 'V' | 'X' | 'Y' | '&' | 'Ä' | 'À' | 'É' => 0.667,
        'C' | 'D' | 'H' | 'N' | 'R' | 'U' | 'w' => 0.722,
        'G' | 'O' | 'Q' => 0.778,
        'M' | 'm' => 0.833,
        'W' | '%' => 0.944,
        '\u{a1}'..='\u{2af}' => 0.722,
        '\u{2b0}'..='\u{36f}' => 0.333,
        '\u{370}'..='\u{52f}' => 0.778,
        _ => 1.1,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_line_is_wider_than_asked() {
        let texts = [
            "steel music wire and a wrap of bronze",
            "Wwwwwwwwwwwwwwwwwwwwwwwwwwwwww",
            "琴弦琴弦琴弦琴弦",
        ];
        for text in texts {
            for width in [12.0, 20.0, 45.0] {
                for line in wrap(text, width, 8.0, 99) {
                    assert!(width_mm(&line, 8.0) <= width, "{line} in {width} mm");
                }
            }
        }
    }

    #[test]
    fn lines_together_are_the_text() {
        let text = "Let the old string down slowly and keep hold of the coil";
        assert_eq!(wrap(text, 30.0, 8.0, 99).join(" "), text);
        assert_eq!(wrap("", 30.0, 8.0, 3), [""]);
    }

    #[test]
    fn what_does_not_fit_ends_in_an_ellipsis() {
        let lines = wrap(&"string ".repeat(50_000), 30.0, 8.0, 2);
        assert_eq!(lines.len(), 2);
        assert!(lines[1].ends_with('…') && width_mm(&lines[1], 8.0) <= 30.0, "{lines:?}");
    }

    #[test]
    fn signs_that_turn_or_hide_text_are_dropped() {
        assert_eq!(clean("a\u{202e}b\u{200b}c\u{7}\nd "), "abc  d");
    }
}
