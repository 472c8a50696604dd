//! A message as the program keeps it: its text with signs where something is filled in or chosen.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement, VariantKey};

/// Arguments go by letters in the compiled text.
pub const LAST_ARGUMENT: u8 = b'z';
/// Before an argument's letter.
pub(crate) const ARGUMENT: char = '\u{1}';
/// Before the letter of what is chosen by; then variants, each a key, [`KEY_ENDS`], a text and [`VARIANT_ENDS`].
pub(crate) const CHOICE: char = '\u{2}';
pub(crate) const KEY_ENDS: char = '\u{3}';
pub(crate) const VARIANT_ENDS: char = '\u{4}';
pub(crate) const CHOICE_ENDS: char = '\u{5}';
/// Beyond this, messages or terms name each other in a circle.
const DEEPEST: usize = 8;

/// A text with signs for what is filled in, and the names of that in the order of the alphabet.
///
/// The signs: `1` and a letter for an argument; `2`, a letter, then for each variant its key, `3`, its text and `4`,
/// the usual one last with the key `*`, then `5`. The digits stand for control characters.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Compiled {
    pub text: String,
    pub arguments: Vec<String>,
}

type Known<'a> = BTreeMap<&'a str, &'a Pattern<&'a str>>;

impl Compiled {
    /// Compiles a pattern; terms and other messages are put in place.
    ///
    /// # Errors
    ///
    /// What is not understood, in words.
    pub fn new(
        pattern: &Pattern<&str>,
        terms: &Known<'_>,
        own: &Known<'_>,
    ) -> Result<Self, String> {
        let mut arguments = BTreeSet::new();
        collect(pattern, terms, own, &mut arguments, 0)?;
        let arguments: Vec<String> = arguments.into_iter().collect();
        if arguments.len() > usize::from(LAST_ARGUMENT - b'a') + 1 {
            return Err("more arguments than letters".to_owned());
        }
        let mut text = String::new();
        Writer { terms, own, arguments: &arguments }.pattern(pattern, &mut text)?;
        Ok(Self { text, arguments })
    }
}

/// Notes the names of all arguments.
fn collect(
    pattern: &Pattern<&str>,
    terms: &Known<'_>,
    own: &Known<'_>,
    names: &mut BTreeSet<String>,
    depth: usize,
) -> Result<(), String> {
    if depth > DEEPEST {
        return Err("messages name each other in a circle".to_owned());
    }
    for element in &pattern.elements {
        let PatternElement::Placeable { expression } = element else { continue };
        let inline = match expression {
            Expression::Inline(inline) => inline,
            Expression::Select { selector, variants } => {
                for variant in variants {
                    collect(&variant.value, terms, own, names, depth + 1)?;
                }
                selector
            }
        };
        match inline {
            InlineExpression::VariableReference { id } => {
                names.insert(id.name.to_owned());
            }
            InlineExpression::TermReference { id, .. } => {
                collect(named(terms, id.name, "-")?, terms, own, names, depth + 1)?;
            }
            InlineExpression::MessageReference { id, .. } => {
                collect(named(own, id.name, "")?, terms, own, names, depth + 1)?;
            }
            _ => {}
        }
    }
    Ok(())
}

fn named<'a>(known: &Known<'a>, name: &str, sign: &str) -> Result<&'a Pattern<&'a str>, String> {
    known.get(name).copied().ok_or_else(|| format!("{sign}{name} stands nowhere"))
}

struct Writer<'a> {
    terms: &'a Known<'a>,
    own: &'a Known<'a>,
    arguments: &'a [String],
}

impl Writer<'_> {
    fn pattern(&self, pattern: &Pattern<&str>, text: &mut String) -> Result<(), String> {
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => plain(value, text)?,
                PatternElement::Placeable { expression: Expression::Inline(inline) } => {
                    self.inline(inline, text)?;
                }
                PatternElement::Placeable {
                    expression: Expression::Select { selector, variants },
                } => {
                    let InlineExpression::VariableReference { id } = selector else {
                        return Err("only an argument can be chosen by".to_owned());
                    };
                    text.push(CHOICE);
                    text.push(self.letter(id.name));
                    let usual = variants.iter().filter(|variant| variant.default);
                    for variant in variants.iter().filter(|variant| !variant.default).chain(usual) {
                        let (VariantKey::Identifier { name: key }
                        | VariantKey::NumberLiteral { value: key }) = variant.key;
                        text.push_str(if variant.default { "*" } else { key });
                        text.push(KEY_ENDS);
                        self.pattern(&variant.value, text)?;
                        text.push(VARIANT_ENDS);
                    }
                    text.push(CHOICE_ENDS);
                }
            }
        }
        Ok(())
    }

    fn inline(&self, inline: &InlineExpression<&str>, text: &mut String) -> Result<(), String> {
        match inline {
            InlineExpression::StringLiteral { value } => plain(value, text),
            InlineExpression::NumberLiteral { value } => plain(value, text),
            InlineExpression::VariableReference { id } => {
                text.push(ARGUMENT);
                text.push(self.letter(id.name));
                Ok(())
            }
            InlineExpression::TermReference { id, attribute: None, arguments: None } => {
                self.pattern(named(self.terms, id.name, "-")?, text)
            }
            InlineExpression::MessageReference { id, attribute: None } => {
                self.pattern(named(self.own, id.name, "")?, text)
            }
            _ => {
                Err("functions, attributes and terms with arguments are not understood".to_owned())
            }
        }
    }

    fn letter(&self, name: &str) -> char {
        let place = self.arguments.iter().position(|known| known == name).unwrap_or_default();
        (b'a' + u8::try_from(place).unwrap_or_default()) as char
    }
}

fn plain(value: &str, text: &mut String) -> Result<(), String> {
    if value.contains(|sign: char| sign.is_control()) {
        return Err("a message stands on one line".to_owned());
    }
    text.push_str(value);
    Ok(())
}
