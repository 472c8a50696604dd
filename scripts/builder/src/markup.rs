//! `index.html` as trunk reads it too: what it asks for in links with the mark `data-trunk`.

use crate::Failure;

/// A link with the mark `data-trunk`.
#[derive(Debug, PartialEq)]
pub struct Link<'a> {
    /// The whole tag, to be put something else in its place.
    pub tag: &'a str,
    /// What kind of file it asks for: `rust`, `css`, `icon` or `copy-file`.
    pub kind: &'a str,
    /// The file, from where `index.html` stands; empty for `rust`.
    pub file: &'a str,
}

/// The links of a page, in its order.
///
/// # Errors
///
/// When a link says no kind, or no file.
pub fn links(html: &str) -> Result<Vec<Link<'_>>, Failure> {
    let mut found = Vec::new();
    for (start, _) in html.match_indices("<link data-trunk") {
        let end = html[start..].find('>').ok_or("a link in index.html does not end")?;
        let tag = &html[start..=start + end];
        let kind = attribute(tag, "rel").ok_or_else(|| format!("no rel in {tag}"))?;
        let file = attribute(tag, "href").unwrap_or_default();
        if file.is_empty() && kind != "rust" {
            return Err(format!("no href in {tag}").into());
        }
        found.push(Link { tag, kind, file });
    }
    Ok(found)
}

fn attribute<'a>(tag: &'a str, name: &str) -> Option<&'a str> {
    let (_, rest) = tag.split_once(&format!(" {name}=\""))?;
    rest.split('"').next()
}

/// A script without the comments and indents that wasm-bindgen writes, and that carry nothing.
pub fn lean_script(script: &str) -> String {
    let mut out = String::new();
    let mut in_comment = false;
    for line in script.lines().map(str::trim_start) {
        in_comment |= line.starts_with("/**") || line.starts_with("/* ");
        if !in_comment && !line.starts_with("//") && !line.is_empty() {
            out.push_str(line);
            out.push('\n');
        }
        in_comment &= !line.contains("*/");
    }
    out
}

/// A style sheet without comments and without the blanks that mean nothing.
pub fn lean_style(style: &str) -> String {
    let mut out = String::new();
    let mut rest = style;
    while let Some((before, after)) = rest.split_once("/*") {
        out.push_str(before);
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    out.push_str(rest);
    // Every other piece is a text in quotes, which stays as it is.
    let pieces = out.split('"').enumerate();
    let lean = |(place, piece): (usize, &str)| match place % 2 {
        0 => close_up(piece),
        _ => format!("\"{piece}\""),
    };
    pieces.map(lean).collect::<String>().trim().to_owned()
}

/// A piece of a style sheet without the blanks that mean nothing.
fn close_up(piece: &str) -> String {
    let mut out = String::new();
    for letter in piece.chars() {
        let blank = letter.is_whitespace();
        if blank && out.ends_with([' ', '{', '}', ';', ',', ':']) {
            continue;
        }
        if matches!(letter, '{' | '}' | ';' | ',') && out.ends_with(' ') {
            out.pop();
        }
        if letter == '}' && out.ends_with(';') {
            out.pop();
        }
        out.push(if blank { ' ' } else { letter });
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn links_are_found_with_kind_and_file() {
        let html = "<link data-trunk rel=\"rust\" data-bin=\"x\"\n data-y>\n<link data-trunk rel=\"css\" href=\"a.css\"><link rel=\"icon\" href=\"b\">";
        let found = links(html).unwrap();
        let pairs: Vec<_> = found.iter().map(|link| (link.kind, link.file)).collect();
        assert_eq!(pairs, [("rust", ""), ("css", "a.css")]);
        assert_eq!(found[1].tag, "<link data-trunk rel=\"css\" href=\"a.css\">");
        assert!(links("<link data-trunk rel=\"css\">").is_err());
        assert!(links("<link data-trunk rel=\"css\"").is_err());
    }

    #[test]
    fn what_carries_nothing_goes() {
        assert_eq!(
            lean_script("/** a\n * b */\n  x();\n\n// c\n/* d */\ny(); // e\n"),
            "x();\ny(); // e\n"
        );
        assert_eq!(lean_style("/* a */\na {\n  b: c; /* d */\n}\n"), "a{b:c}");
        assert_eq!(
            lean_style("a :is(b, c) { d: \", x\" 1px; }\n@media (e: 2px) { f { g: h(1 + 2); } }"),
            "a :is(b,c){d:\", x\" 1px}@media (e:2px){f{g:h(1 + 2)}}"
        );
    }
}
