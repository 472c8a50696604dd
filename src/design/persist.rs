//! Design to text and back: readable JSON with a version. File, browser storage and link all come
//! in through [`read`].
//!
//! The first field, `stringloft`, holds the version and says what kind of file it is. A text is
//! lifted to today's version, cleaned of characters that nobody types ([`tidy`]) and checked
//! ([`check`]) before it becomes a design.

mod check;
mod layout;

use std::sync::Arc;

use serde_json::{Map, Value};
use thiserror::Error;

pub(crate) use self::check::tidy_text;
pub use self::check::{
    CheckError, MOST_MATERIALS, MOST_STOCK, MOST_VERSION_BYTES, MOST_VERSIONS, check, check_item,
    tidy, tidy_item,
};
pub(crate) use self::layout::readable;
use super::document::Design;
use super::library::{complete, embed};
pub use super::migrate::VERSION;
use super::migrate::lift;
use super::reading::{parse, parse_first, taken};
use super::writing::json_text;
use crate::words::files as say;

/// The longest text that is read, in bytes. A harp of 150 strings takes a hundredth of it.
pub const MOST_BYTES: usize = 4 * 1024 * 1024;
/// How many letters are shown of the title of a design that cannot be read.
const TITLE_SHOWN: usize = 60;
/// The field that holds the version.
const MARK: &str = "stringloft";

/// Why a text is no design that can be used.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum ReadError {
    /// Longer than [`MOST_BYTES`].
    #[error("{}", say::too_large(&got_bytes.div_ceil(1 << 20), &(MOST_BYTES >> 20)))]
    TooLarge { got_bytes: usize },
    /// Nothing but blanks.
    #[error("{}", say::EMPTY)]
    Empty,
    /// The text ends before the document does.
    #[error("{}", say::cut_off(.line))]
    CutOff { line: usize },
    /// No JSON, or a field that holds something else than it should.
    #[error("{}", say::unreadable(.what))]
    Unreadable { what: String },
    /// JSON of another kind.
    #[error("{}", say::OTHER_KIND)]
    OtherKind,
    /// Written by a newer program.
    #[error("{}", say::too_new(.found, &VERSION))]
    TooNew { found: u64 },
    /// Readable, but not valid.
    #[error(transparent)]
    Check(#[from] CheckError),
}

impl ReadError {
    /// What is wrong with a design that this browser kept, as the end of a sentence for its maker.
    pub fn in_short(&self) -> String {
        let words = match self {
            Self::TooLarge { .. } => say::SHORT_TOO_LARGE,
            Self::Empty => say::SHORT_EMPTY,
            Self::CutOff { .. } => say::SHORT_CUT_OFF,
            Self::Unreadable { .. } => say::SHORT_UNREADABLE,
            Self::OtherKind => say::SHORT_OTHER_KIND,
            Self::TooNew { .. } => say::SHORT_TOO_NEW,
            Self::Check(error) => return error.to_string(),
        };
        words.into()
    }
}

/// The title in a text that cannot be read as a design, where one is still there: cut to a line.
pub fn title_of(text: &str) -> Option<String> {
    let (_, rest) = text.split_once("\"title\"")?;
    let rest = rest.trim_start().strip_prefix(':')?;
    let mut title = parse_first(rest)?.as_str()?.to_owned();
    tidy_text(&mut title, false);
    if let Some((end, _)) = title.char_indices().nth(TITLE_SHOWN) {
        title.truncate(end);
        title.push('…');
    }
    (!title.trim().is_empty()).then_some(title)
}

/// The text of a design: JSON for people to read, a line for each string, with the materials that
/// it uses.
pub fn write(design: &Design) -> String {
    readable(&plain(design))
}

/// The text of a design without any space.
pub(super) fn plain(design: &Design) -> String {
    let mut whole = design.clone();
    embed(&mut whole);
    let text = json_text(&whole);
    let fields = text.strip_prefix('{').unwrap_or(&text);
    format!("{{\"{MARK}\":{VERSION},{fields}")
}

/// The design that a text holds, whatever version wrote it.
///
/// # Errors
///
/// When the text is too large, no JSON, of another kind, of a newer version, or breaks one of the
/// limits that [`check`] holds.
pub fn read(text: &str) -> Result<Design, ReadError> {
    if text.len() > MOST_BYTES {
        return Err(ReadError::TooLarge { got_bytes: text.len() });
    }
    let text = text.trim_start_matches('\u{feff}');
    if text.trim().is_empty() {
        return Err(ReadError::Empty);
    }
    let mut document = parse(text).map_err(unreadable)?;
    let Value::Object(fields) = &mut document else {
        return Err(ReadError::OtherKind);
    };
    let found = version(fields)?;
    lift(fields, found);
    let mut design: Design =
        taken(&mut document).map_err(|wrong| ReadError::Unreadable { what: wrong.to_string() })?;
    tidy(&mut design);
    check(&design)?;
    if found < 2 {
        complete(&mut design.materials);
    }
    embed(&mut design);
    design.versions.iter_mut().filter_map(|kept| Arc::get_mut(&mut kept.design)).for_each(embed);
    // Once more, as built-in materials were added: what is opened must also be what can be saved.
    check(&design)?;
    Ok(design)
}

/// The version of a document; from 1 to [`VERSION`].
fn version(document: &Map<String, Value>) -> Result<usize, ReadError> {
    let found = document.get(MARK).and_then(Value::as_u64).filter(|found| *found > 0);
    let found = found.ok_or(ReadError::OtherKind)?;
    match usize::try_from(found) {
        Ok(version) if version <= VERSION => Ok(version),
        _ => Err(ReadError::TooNew { found }),
    }
}

#[expect(clippy::needless_pass_by_value, reason = "for map_err")]
fn unreadable(error: serde_json::Error) -> ReadError {
    if error.is_eof() {
        return ReadError::CutOff { line: error.line() };
    }
    ReadError::Unreadable { what: told(&error) }
}

/// What is wrong with a text that is no JSON, in words of its maker, and where. What the parser would say of it is no
/// help at the bench, and its words are not in the program.
pub(crate) fn told(error: &serde_json::Error) -> String {
    say::misplaced(&error.line(), &error.column())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_that_cannot_be_read_still_gives_its_title() {
        let whole =
            write(&Design { title: "Harp \"Wren\" of the mill".to_owned(), ..Design::default() });
        let half = &whole[..whole.len() / 2];
        assert!(read(half).is_err());
        assert_eq!(title_of(half).as_deref(), Some("Harp \"Wren\" of the mill"));
        assert_eq!(title_of(&whole.replace("\"title\"", "\"name\"")), None);
        for text in ["", "{", "\"title\"", "\"title\": 3", "\"title\": \"cut", "{\"title\": \" \"}"]
        {
            assert_eq!(title_of(text), None, "{text}");
        }
        let long = format!("{{\"title\": \"{}\u{202e}\u{7}", "x".repeat(5_000));
        assert_eq!(title_of(&long), None, "no end");
        let long = format!("{{\"title\": \"\u{202e}{}\"", "x".repeat(5_000));
        assert_eq!(title_of(&long).unwrap(), format!("{}…", "x".repeat(TITLE_SHOWN)));
    }

    /// Each fits behind "cannot be read, as" and names no part of a file's grammar.
    #[test]
    fn what_is_wrong_with_a_kept_design_is_said_in_short() {
        let whole = write(&Design::default());
        let of = |text: &str| read(text).unwrap_err().in_short();
        assert_eq!(of(" "), "nothing is left of it");
        assert_eq!(of(&whole[..whole.len() / 2]), "its text ends in the middle");
        assert_eq!(
            of(&whole.replace("\"title\": \"\"", "\"title\": 3")),
            "part of its text is damaged"
        );
        assert_eq!(of("{}"), "it is not a Stringloft design");
        assert!(of("{\"stringloft\": 999}").starts_with("a newer Stringloft wrote it"));
        assert_eq!(of(&"x".repeat(MOST_BYTES + 1)), "it is larger than a design can be");
        let serial = format!("\"serial\": \"{}\"", "x".repeat(5_000));
        assert!(of(&whole.replace("\"serial\": \"\"", &serial)).starts_with("the serial"));
    }
}
