//! What is made of the catalogues: Rust of the English one, a pack of any other.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use crate::{Area, differences};

/// The letter before the first message, and how many there are for all (Unicode, private use area).
const FIRST: u32 = 0xE000;
const MOST: u32 = 6_400;
/// Words of Rust that no message may be called.
const TAKEN: [&str; 20] = [
    "as", "box", "break", "const", "do", "else", "fn", "for", "if", "in", "let", "loop", "match",
    "mod", "move", "ref", "return", "type", "use", "where",
];

/// The Rust of the English catalogue: a module for each area, a constant for each message that is filled with nothing,
/// a function for each of the others, whose parameters stand in the order of the alphabet.
///
/// # Errors
///
/// When a name cannot be one in Rust.
pub fn rust(english: &[Area]) -> Result<String, String> {
    let mut out = String::new();
    let mut id = 0_u16;
    for area in english {
        writeln!(
            out,
            "/// Messages of `{}.ftl`.\n#[allow(clippy::doc_markdown, reason = \"what is said is no markdown\")]\npub mod {} {{",
            area.name,
            area.name.replace('-', "_")
        )
        .map_err(|why| why.to_string())?;
        writeln!(out, "    #[allow(unused_imports, reason = \"an area may fill nothing\")]\n    use super::{{Words, fill}};\n    #[allow(unused_imports, reason = \"as above\")]\n    use std::fmt::Display;")
            .map_err(|why| why.to_string())?;
        for message in &area.messages {
            let name = message.name.replace('-', "_").to_lowercase();
            if TAKEN.contains(&name.as_str()) {
                return Err(format!(
                    "{}.ftl, {}: a word of Rust (call it otherwise)",
                    area.name, message.name
                ));
            }
            let shown = message.text.text.replace(|sign: char| sign.is_control(), "·");
            let shown: String = shown.chars().take(90).collect();
            let number = u32::from(id);
            let number = char::from_u32(FIRST + number).filter(|_| number < MOST);
            let number = number.ok_or("more messages than letters for private use")?;
            let numbered = format!("{number}{}", message.text.text);
            if message.text.arguments.is_empty() {
                writeln!(out, "    #[doc = {shown:?}]\n    pub const {}: Words = Words({numbered:?});", name.to_uppercase())
            } else {
                let names: Vec<String> = message.text.arguments.iter().map(|name| name.replace('-', "_")).collect();
                let takes: Vec<String> = names.iter().map(|name| format!("{name}: &dyn Display")).collect();
                writeln!(
                    out,
                    "    #[doc = {shown:?}]\n    pub fn {name}({}) -> String {{\n        fill(Words({numbered:?}), &[{}])\n    }}",
                    takes.join(", "),
                    names.join(", ")
                )
            }
            .map_err(|why| why.to_string())?;
            id = id.checked_add(1).ok_or("more messages than 65,536")?;
        }
        out.push_str("}\n");
    }
    writeln!(out, "/// How many messages there are.\npub const COUNT: u16 = {id};")
        .map_err(|why| why.to_string())?;
    writeln!(out, "/// The sum of their names and of what they are filled with: a pack for others is refused.\npub const MARK: &str = {:?};", mark(english))
        .map_err(|why| why.to_string())?;
    Ok(out)
}

/// The texts of another language in the order of the English messages, a line for each, after a first line with the
/// mark of the messages it is for. A message that it lacks is an empty line.
///
/// # Errors
///
/// A line for each message that is not in English or filled otherwise; where `whole`, also for each missing one.
pub fn pack(english: &[Area], other: &[Area], whole: bool) -> Result<String, String> {
    let wrong: Vec<String> = differences(english, other)
        .into_iter()
        .filter(|line| whole || !line.ends_with(": missing"))
        .collect();
    if !wrong.is_empty() {
        return Err(wrong.join("\n"));
    }
    let mut theirs: BTreeMap<(&str, &str), &str> = BTreeMap::new();
    for area in other {
        for message in &area.messages {
            theirs.insert((&area.name, &message.name), &message.text.text);
        }
    }
    let mut out = mark(english);
    for area in english {
        for message in &area.messages {
            out.push('\n');
            out.push_str(
                theirs
                    .get(&(area.name.as_str(), message.name.as_str()))
                    .copied()
                    .unwrap_or_default(),
            );
        }
    }
    Ok(out)
}

/// The sum (FNV-1a, 64 bits) of the names of all messages and of what they are filled with.
fn mark(english: &[Area]) -> String {
    let mut sum = 0xcbf2_9ce4_8422_2325_u64;
    let mut take = |text: &str| {
        for byte in text.bytes().chain([b'\n']) {
            sum = (sum ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
        }
    };
    for area in english {
        for message in &area.messages {
            take(&area.name);
            take(&message.name);
            message.text.arguments.iter().for_each(|name| take(name));
        }
    }
    format!("{sum:016x}")
}
