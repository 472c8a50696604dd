//! From JSON into the types of the document.
//!
//! A text becomes a [`Value`] in [`parse`], the only parser in the program; then [`FromJson`] takes what a value holds
//! into what is there already, so that a field that is missing keeps its usual value. A type lists its fields in
//! `fields!` or its words in `words!`, and loops that all types share do the rest: readers that serde derives for each
//! type made the first screen 24 kB larger, packed.

use std::fmt;
use std::sync::Arc;

use serde::de::{Deserialize, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Value};

/// How many letters are shown of a word that is none of those that may stand there.
const WORD_SHOWN: usize = 40;

/// Takes what JSON holds.
pub(crate) trait FromJson {
    /// Takes the value into `self`. Texts are moved, not copied, so that the value is used up.
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong>;
}

/// What a field holds and should not, and where.
#[derive(Debug, Default)]
pub(crate) struct Wrong {
    /// The fields and numbers that lead to it, from the outermost: `strings, 4`.
    place: String,
    /// What must hold: `length must be text, got a number`.
    says: String,
    /// Whether the sentence begins with the name of a field, and not with what must hold.
    is_named: bool,
}

impl Wrong {
    fn new(must: &str, got: &str) -> Self {
        Self { says: ["must be ", must, ", got ", got].concat(), ..Self::default() }
    }

    /// The same, in a field.
    fn in_field(mut self, name: &str) -> Self {
        if self.is_named || !self.place.is_empty() {
            return self.inside(name);
        }
        self.says = [name, " ", &self.says].concat();
        self.is_named = true;
        self
    }

    /// The same, in a part of a list.
    fn in_part(self, index: usize) -> Self {
        self.inside(&(index + 1).to_string())
    }

    fn inside(mut self, place: &str) -> Self {
        let between = if self.place.is_empty() { "" } else { ", " };
        self.place = [place, between, &self.place].concat();
        self
    }
}

impl fmt::Display for Wrong {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let between = match (self.place.is_empty(), self.is_named) {
            (true, _) => "",
            (false, true) => ": ",
            (false, false) => " ",
        };
        f.write_str(&self.place)?;
        f.write_str(between)?;
        f.write_str(&self.says)
    }
}

/// What a value is, in words.
fn kind(json: &Value) -> &'static str {
    match json {
        Value::Null => "nothing",
        Value::Bool(_) => "true or false",
        Value::Number(_) => "a number",
        Value::String(_) => "text",
        Value::Array(_) => "a list",
        Value::Object(_) => "a set of fields",
    }
}

/// Implements [`FromJson`] for a struct from the names of all its fields. Those before a semicolon must be there; any
/// other keeps its usual value when it is missing.
macro_rules! fields {
    ($type:ty { $($needed:ident),* ; $($field:ident),* $(,)? }) => {
        impl $crate::design::reading::FromJson for $type {
            fn take(&mut self, json: &mut serde_json::Value) -> Result<(), $crate::design::reading::Wrong> {
                let Self { $($needed,)* $($field),* } = self;
                let needed: &[&str] = &[$(stringify!($needed)),*];
                let names = &[$(stringify!($needed),)* $(stringify!($field)),*];
                $crate::design::reading::take_fields(json, needed.len(), names, &mut [$($needed,)* $($field),*])
            }
        }
    };
    ($type:ty { $($field:ident),* $(,)? }) => {
        $crate::design::reading::fields!($type { ; $($field),* });
    };
}

/// Implements [`FromJson`] for an enum without fields from the words that stand for its variants.
macro_rules! words {
    ($type:ident { $($word:literal => $variant:ident),* $(,)? }) => {
        impl $crate::design::reading::FromJson for $type {
            fn take(&mut self, json: &mut serde_json::Value) -> Result<(), $crate::design::reading::Wrong> {
                let at = $crate::design::reading::word(json, &[$($word),*])?;
                *self = [$(Self::$variant),*].get(at).copied().unwrap_or_default();
                Ok(())
            }
        }
        // Does not compile while a variant has no word.
        const _: fn($type) = |variant| match variant { $($type::$variant => {})* };
    };
}

pub(crate) use {fields, words};

/// Takes fields by their names, of which the first `needed` must be there. Others are passed over.
pub(crate) fn take_fields(
    json: &mut Value,
    needed: usize,
    names: &[&str],
    fields: &mut [&mut dyn FromJson],
) -> Result<(), Wrong> {
    let Value::Object(given) = json else {
        return Err(Wrong::new("a set of fields", kind(json)));
    };
    for (index, (name, field)) in names.iter().zip(fields).enumerate() {
        match given.get_mut(*name) {
            Some(json) => field.take(json).map_err(|wrong| wrong.in_field(name))?,
            None if index < needed => {
                let missing = Wrong { says: "is missing".to_owned(), ..Wrong::default() };
                return Err(missing.in_field(name));
            }
            None => {}
        }
    }
    Ok(())
}

/// Which of some words a value is.
pub(crate) fn word(json: &Value, words: &[&str]) -> Result<usize, Wrong> {
    let given = json.as_str();
    words.iter().position(|word| given == Some(*word)).ok_or_else(|| none_of(json, words))
}

/// Which of some words a value is, or the only field that it has, with what that field holds.
pub(crate) fn tagged(
    json: &mut Value,
    words: &[&'static str],
) -> Result<(&'static str, Value), Wrong> {
    let is_it = |word: &&&'static str| match json {
        Value::String(given) => given == **word,
        Value::Object(fields) => fields.len() == 1 && fields.contains_key(**word),
        _ => false,
    };
    let Some(word) = words.iter().find(is_it) else { return Err(none_of(json, words)) };
    Ok((word, json.get_mut(*word).map(Value::take).unwrap_or_default()))
}

fn none_of(json: &Value, words: &[&str]) -> Wrong {
    let got = match json {
        Value::String(word) => {
            let shown: String = word.chars().take(WORD_SHOWN).collect();
            ["\"", &shown, "\""].concat()
        }
        other => kind(other).to_owned(),
    };
    let must = match words {
        [others @ .., last] if !others.is_empty() => [&others.join(", "), " or ", last].concat(),
        _ => words.concat(),
    };
    Wrong::new(&must, &got)
}

/// What a value holds, by itself.
pub(crate) fn taken<T: FromJson + Default>(json: &mut Value) -> Result<T, Wrong> {
    let mut one = T::default();
    one.take(json)?;
    Ok(one)
}

/// What the field of a [`tagged`] value holds.
pub(crate) fn held<T: FromJson + Default>(name: &str, json: &mut Value) -> Result<T, Wrong> {
    taken(json).map_err(|wrong| wrong.in_field(name))
}

impl FromJson for String {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        let Value::String(text) = json else { return Err(Wrong::new("text", kind(json))) };
        *self = std::mem::take(text);
        Ok(())
    }
}

impl FromJson for f64 {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = json.as_f64().ok_or_else(|| Wrong::new("a number", kind(json)))?;
        Ok(())
    }
}

impl FromJson for bool {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = json.as_bool().ok_or_else(|| Wrong::new("true or false", kind(json)))?;
        Ok(())
    }
}

impl FromJson for u32 {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = whole(json, Self::MAX)?;
        Ok(())
    }
}

impl FromJson for u16 {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = Self::try_from(whole(json, Self::MAX.into())?).unwrap_or_default();
        Ok(())
    }
}

fn whole(json: &Value, most: u32) -> Result<u32, Wrong> {
    let number = json.as_u64().and_then(|number| u32::try_from(number).ok());
    number.filter(|number| *number <= most).ok_or_else(|| {
        let got = if json.is_number() { json.to_string() } else { kind(json).to_owned() };
        Wrong::new(&["a whole number from 0 to ", &most.to_string()].concat(), &got)
    })
}

impl<T: FromJson + Default> FromJson for Option<T> {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = if json.is_null() { None } else { Some(taken(json)?) };
        Ok(())
    }
}

impl<T: FromJson + Default> FromJson for Arc<T> {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = Self::new(taken(json)?);
        Ok(())
    }
}

impl<T: FromJson + Default> FromJson for Vec<T> {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        self.clear();
        take_list(json, &mut |json| {
            self.push(taken(json)?);
            Ok(())
        })
    }
}

fn take_list(
    json: &mut Value,
    add: &mut dyn FnMut(&mut Value) -> Result<(), Wrong>,
) -> Result<(), Wrong> {
    let Value::Array(parts) = json else { return Err(Wrong::new("a list", kind(json))) };
    let mut parts = parts.iter_mut().enumerate();
    parts.try_for_each(|(index, json)| add(json).map_err(|wrong| wrong.in_part(index)))
}

impl<A: FromJson, B: FromJson> FromJson for (A, B) {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        take_pair(json, &mut self.0, &mut self.1)
    }
}

fn take_pair(json: &mut Value, a: &mut dyn FromJson, b: &mut dyn FromJson) -> Result<(), Wrong> {
    match json.as_array_mut().map(Vec::as_mut_slice) {
        Some([one, two]) => {
            a.take(one).map_err(|wrong| wrong.in_part(0))?;
            b.take(two).map_err(|wrong| wrong.in_part(1))
        }
        Some(parts) => Err(Wrong::new("a list of two", &format!("a list of {}", parts.len()))),
        None => Err(Wrong::new("a list of two", kind(json))),
    }
}

/// The JSON that a text is.
///
/// # Errors
///
/// When it is none, holds a field twice, or is nested too deeply.
pub(crate) fn parse(text: &str) -> Result<Value, serde_json::Error> {
    serde_json::from_str(text).map(|Json(value)| value)
}

/// The JSON that a text begins with, whatever follows.
pub(crate) fn parse_first(text: &str) -> Option<Value> {
    let mut reader = serde_json::Deserializer::from_str(text);
    Json::deserialize(&mut reader).ok().map(|Json(value)| value)
}

/// A value no part of which has a field twice; a [`Value`] would take the last in silence.
struct Json(Value);

impl<'de> Deserialize<'de> for Json {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        from.deserialize_any(Parts).map(Self)
    }
}

struct Parts;

impl<'de> Visitor<'de> for Parts {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E>(self, given: bool) -> Result<Value, E> {
        Ok(given.into())
    }

    fn visit_u64<E>(self, number: u64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_i64<E>(self, number: i64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_f64<E>(self, number: f64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_str<E>(self, text: &str) -> Result<Value, E> {
        Ok(text.into())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut given: A) -> Result<Value, A::Error> {
        let mut parts = Vec::new();
        while let Some(Json(part)) = given.next_element()? {
            parts.push(part);
        }
        Ok(Value::Array(parts))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut given: A) -> Result<Value, A::Error> {
        let mut fields = Map::new();
        while let Some(name) = given.next_key::<String>()? {
            if fields.contains_key(&name) {
                return Err(A::Error::custom(
                    ["the field \"", &name, "\" is there twice"].concat(),
                ));
            }
            let Json(value) = given.next_value()?;
            fields.insert(name, value);
        }
        Ok(Value::Object(fields))
    }
}
