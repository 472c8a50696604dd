//! What differs between two texts of a picture of the same elements, so that a page need change only that: a pin that
//! is pulled moves some of two hundred elements, and to read all of them again takes a browser longer than to work them
//! out.

/// A place where the later text differs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Change<'a> {
    /// The element, counted from the first in the order in which they open.
    pub element: usize,
    /// The attribute, or nothing where it is what stands in the element.
    pub attribute: Option<&'a str>,
    /// What is there now, as markup has it.
    pub now: &'a str,
}

/// The differences of two texts that [`svg`](super::svg) wrote; `None` where they are not of the same elements with the
/// same attributes, one by one.
pub fn changes<'a>(before: &str, now: &'a str) -> Option<Vec<Change<'a>>> {
    let (mut befores, mut nows) = (before.split('<'), now.split('<'));
    let (mut found, mut opened) = (Vec::new(), 0);
    loop {
        let (old, new) = match (befores.next(), nows.next()) {
            (None, None) => return Some(found),
            (old, new) => (old?, new?),
        };
        if old != new {
            compare(old, new, opened, &mut found)?;
        }
        // What stands before the first element is nothing, and one that closes was counted when it opened.
        opened += usize::from(!new.is_empty() && !new.starts_with('/'));
    }
}

/// Compares two elements, each from its name to the next element.
fn compare<'a>(old: &str, new: &'a str, element: usize, found: &mut Vec<Change<'a>>) -> Option<()> {
    let ((old, old_inside), (new, inside)) = (old.split_once('>')?, new.split_once('>')?);
    // Names are at even places, values between quotes at odd ones.
    let (mut befores, mut nows) = (old.split('"'), new.split('"'));
    let mut name = "";
    for place in 0.. {
        let (before, now) = match (befores.next(), nows.next()) {
            (None, None) => break,
            (before, now) => (before?, now?),
        };
        if place % 2 == 0 {
            if before != now {
                return None;
            }
            name = now.trim_end_matches('=').rsplit(' ').next().unwrap_or(now);
        } else if before != now {
            found.push(Change { element, attribute: Some(name), now });
        }
    }
    if old_inside != inside {
        // A closing element has nothing inside: what follows it would be its parent's.
        if new.starts_with('/') {
            return None;
        }
        found.push(Change { element, attribute: None, now: inside });
    }
    Some(())
}

#[cfg(test)]
mod tests {
    use super::super::svg::{letters_text, marks_text, scene_text};
    use super::super::tests::{laid, length, sample};
    use super::*;

    /// Makes the changes in a text, element by element.
    fn mended(before: &str, changes: &[Change<'_>]) -> String {
        let mut pieces: Vec<String> = before.split('<').map(str::to_owned).collect();
        let opens: Vec<usize> = (0..pieces.len())
            .filter(|at| !pieces[*at].is_empty() && !pieces[*at].starts_with('/'))
            .collect();
        for change in changes {
            let piece = &mut pieces[opens[change.element]];
            let (head, inside) = piece.split_once('>').unwrap();
            *piece = match change.attribute {
                None => format!("{head}>{}", change.now),
                Some(name) => {
                    let from = head.find(&format!(" {name}=\"")).unwrap() + name.len() + 3;
                    let to = from + head[from..].find('"').unwrap();
                    format!("{}{}{}>{inside}", &head[..from], change.now, &head[to..])
                }
            };
        }
        pieces.join("<")
    }

    #[test]
    fn a_picture_with_the_changes_made_is_the_later_one() {
        let cases = [
            ("", "", Some(0)),
            ("<path d=\"M0 0\"/>", "<path d=\"M0 1\"/>", Some(1)),
            (
                "<path class=\"a\" d=\"M0\"/><path d=\"L\"/>",
                "<path class=\"b\" d=\"M\"/><path d=\"L\"/>",
                Some(2),
            ),
            (
                "<g x=\"1\"><text x=\"2\">a</text></g>",
                "<g x=\"3\"><text x=\"2\">b&lt;</text></g>",
                Some(2),
            ),
            ("<g x=\"1\"></g><path d=\"1\"/>", "<g x=\"1\"></g><path d=\"2\"/>", Some(1)),
            // Other elements, other attributes, another nesting, more or fewer of them.
            ("<path d=\"1\"/>", "<g d=\"1\"/>", None),
            ("<path d=\"1\"/>", "<path x=\"1\"/>", None),
            ("<path d=\"1\"/>", "<path d=\"1\" x=\"1\"/>", None),
            ("<g></g><text></text>", "<g><text></g></text>", None),
            ("<path d=\"1\"/>", "", None),
            ("", "<path d=\"1\"/>", None),
        ];
        for (before, now, count) in cases {
            let found = changes(before, now);
            assert_eq!(found.as_ref().map(Vec::len), count, "{before} to {now}");
            if let Some(found) = found {
                assert_eq!(mended(before, &found), now);
            }
        }
    }

    #[test]
    fn a_pulled_pin_changes_few_elements_of_a_drawing() {
        let before = sample("pedal-47");
        let after = laid(length(20, "400").apply(&before.design));
        let px = 0.35;
        let texts = |scene| {
            [
                scene_text(scene, px),
                marks_text(scene, px, Some(20), None, "a"),
                letters_text(scene, px),
            ]
        };
        for (was, is) in texts(&before.scene).iter().zip(&texts(&after.scene)) {
            let found = changes(was, is).unwrap();
            assert_eq!(mended(was, &found), *is);
            let of_all = is.matches("<path").count();
            assert!(found.len() <= 12, "{} changes in {of_all} elements", found.len());
        }
        assert!(!changes(&texts(&before.scene)[0], &texts(&after.scene)[0]).unwrap().is_empty());
    }
}
