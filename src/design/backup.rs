//! One file with everything that a browser keeps: texts under their keys, as they are.

use serde_json::Value;

use super::reading::parse;
use super::writing::{give_list, give_text};
use crate::words::{Words, files as say};

/// The field that says what kind of file it is, with the version of its form.
const MARK: &str = "stringloft_backup";
const VERSION: u64 = 1;
/// The longest backup that is read, in bytes.
pub const MOST_BYTES: usize = 64 * 1024 * 1024;

/// The text of a backup of these texts, each with its key.
pub fn write(texts: &[(String, String)]) -> String {
    let mut out = format!("{{\"{MARK}\":{VERSION},\"texts\":");
    let pair = |index: usize, out: &mut String| {
        let (key, text) = &texts[index];
        out.push('[');
        give_text(key, out);
        out.push(',');
        give_text(text, out);
        out.push_str("]\n");
    };
    give_list(texts.len(), &pair, &mut out);
    out.push('}');
    out
}

/// The texts of a backup, each with its key.
///
/// # Errors
///
/// Why it cannot be read, as the end of a sentence.
pub fn read(text: &str) -> Result<Vec<(String, String)>, Words> {
    if text.len() > MOST_BYTES {
        return Err(say::BACKUP_TOO_LARGE);
    }
    let Ok(Value::Object(fields)) = parse(text.trim_start_matches('\u{feff}')) else {
        return Err(say::BACKUP_NONE);
    };
    match fields.get(MARK).and_then(Value::as_u64) {
        Some(VERSION) => {}
        Some(_) => return Err(say::BACKUP_TOO_NEW),
        None => {
            return Err(say::BACKUP_OTHER_KIND);
        }
    }
    let Some(Value::Array(pairs)) = fields.get("texts") else {
        return Err(say::BACKUP_DAMAGED);
    };
    let text = |pair: &Value, place: usize| pair.get(place)?.as_str().map(str::to_owned);
    let pairs: Option<Vec<_>> =
        pairs.iter().map(|pair| Some((text(pair, 0)?, text(pair, 1)?))).collect();
    pairs.ok_or(say::BACKUP_DAMAGED)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_again() {
        let pair = |key: &str, text: &str| (key.to_owned(), text.to_owned());
        for texts in [
            vec![],
            vec![pair("stringloft/design/a", "{\"title\": \"Wren \\ \u{1}\n\"}"), pair("b", "")],
        ] {
            let text = write(&texts);
            assert_eq!(read(&text), Ok(texts));
            for end in 1..text.len() {
                assert!(!text.is_char_boundary(end) || read(&text[..end]).is_err());
            }
        }
    }

    #[test]
    fn other_files_are_refused_with_a_reason() {
        for (text, why) in [
            ("", "no backup"),
            ("[]", "no backup"),
            ("{\"stringloft\": 2}", "Open a file"),
            ("{\"stringloft_backup\": 2, \"texts\": []}", "newer"),
            ("{\"stringloft_backup\": 1}", "damaged"),
            ("{\"stringloft_backup\": 1, \"texts\": [[\"a\"]]}", "damaged"),
            ("{\"stringloft_backup\": 1, \"texts\": [[\"a\", 3]]}", "damaged"),
        ] {
            assert!(read(text).unwrap_err().said().contains(why), "{text}");
        }
    }
}
