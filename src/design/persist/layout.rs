//! JSON laid out for people: what fits a line stays on one, so that each string is a line.

/// The longest line that is not broken, in bytes.
const WIDTH: usize = 100;

/// Lays out JSON that was written without any space. Text that is no JSON comes back in some
/// layout; nothing fails.
pub(crate) fn readable(compact: &str) -> String {
    let mut out = String::with_capacity(compact.len() * 2);
    broken(compact, 0, &mut out);
    out.push('\n');
    out
}

/// Writes a value at an indent: on one line when it fits.
fn value(text: &str, indent: usize, out: &mut String) {
    let line = spaced(text);
    if !text.starts_with(['{', '[']) || indent + line.len() <= WIDTH {
        out.push_str(&line);
    } else {
        broken(text, indent, out);
    }
}

/// Writes an object or array with each of its parts on a line of its own.
fn broken(text: &str, indent: usize, out: &mut String) {
    let inner = text.get(1..text.len().saturating_sub(1)).unwrap_or_default();
    let (open, close) = if text.starts_with('{') { ('{', '}') } else { ('[', ']') };
    out.push(open);
    let inside = indent + 2;
    for (index, part) in parts(inner, ',').into_iter().enumerate() {
        if index > 0 {
            out.push(',');
        }
        new_line(inside, out);
        match parts(part, ':')[..] {
            [key, held] if open == '{' => {
                out.push_str(key);
                out.push_str(": ");
                value(held, inside, out);
            }
            _ => value(part, inside, out),
        }
    }
    new_line(indent, out);
    out.push(close);
}

fn new_line(indent: usize, out: &mut String) {
    out.push('\n');
    out.extend(std::iter::repeat_n(' ', indent));
}

/// Cuts at every `mark` that is in no text and no inner bracket.
fn parts(text: &str, mark: char) -> Vec<&str> {
    let (mut parts, mut start, mut depth) = (Vec::new(), 0, 0_usize);
    for (at, c) in outside_texts(text) {
        match c {
            '{' | '[' => depth += 1,
            '}' | ']' => depth = depth.saturating_sub(1),
            _ if c == mark && depth == 0 => {
                parts.push(&text[start..at]);
                start = at + mark.len_utf8();
            }
            _ => {}
        }
    }
    parts.push(&text[start..]);
    parts
}

/// The same on one line, with a space after every comma and colon.
fn spaced(text: &str) -> String {
    let mut line = String::with_capacity(text.len() + text.len() / 8);
    let mut done = 0;
    for (at, c) in outside_texts(text) {
        if c == ',' || c == ':' {
            line.push_str(&text[done..=at]);
            line.push(' ');
            done = at + 1;
        }
    }
    line.push_str(&text[done..]);
    line
}

/// The characters that stand in no quoted text, with their places.
fn outside_texts(text: &str) -> impl Iterator<Item = (usize, char)> {
    let (mut inside, mut escaped) = (false, false);
    text.char_indices().filter(move |(_, c)| {
        let quote = *c == '"' && !escaped;
        escaped = inside && *c == '\\' && !escaped;
        let outside = !inside && !quote;
        inside ^= quote;
        outside
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_laid_out_holds_the_same() {
        let long = "x".repeat(120);
        let text = format!(
            r#"{{"a":1,"b":["q,\"]}}: \\",{{"c":null}}],"long":"{long}","rows":[{{"k":"{long}","n":[1.5,-2]}},[]]}}"#
        );
        let laid_out = readable(&text);
        let of = |text: &str| serde_json::from_str::<serde_json::Value>(text).unwrap();
        assert_eq!(of(&laid_out), of(&text));
        assert!(
            laid_out.starts_with("{\n  \"a\": 1,\n  \"b\": [\"q,\\\"]}: \\\\\", {\"c\": null}],\n")
        );
    }

    #[test]
    fn what_is_no_json_is_laid_out_without_a_panic() {
        for text in ["", "{", "]", "\"", "\\", "é", "{é", "[\"é", "}}}}", ",,::"] {
            readable(text);
        }
    }
}
