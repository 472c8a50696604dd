//! JSON as it is written, by RFC 8259: from a text to a [`Value`]. The reader of `serde_json` is 7 kB of the first
//! screen, packed, as it reads any type and has a table of the powers of ten.

use serde_json::{Map, Number, Value};

use super::decimal::decimal;

/// How deep lists and fields may lie in one another: a hostile text must not use up the stack.
const DEEPEST: u32 = 127;
/// How far below zero a whole number is kept in full.
const MOST_BELOW: u64 = i64::MAX.unsigned_abs();

/// Why a text is no JSON.
#[derive(Debug)]
pub(crate) struct NoJson {
    /// Whether all would be well if the text went on.
    pub cut_off: bool,
    /// The line at which reading ended.
    pub line: usize,
    /// What is wrong, and where.
    pub what: String,
}

/// The JSON that a text is. No part of it has a field twice.
///
/// # Errors
///
/// When it is none, holds a field twice, or is nested too deeply.
pub(crate) fn parse(text: &str) -> Result<Value, NoJson> {
    let mut reader = Reader { text, at: 0, depth: 0 };
    let value = reader.value()?;
    match reader.next() {
        None => Ok(value),
        Some(_) => Err(reader.wrong("nothing may follow the end")),
    }
}

/// The JSON that a text begins with, whatever follows.
pub(crate) fn parse_first(text: &str) -> Option<Value> {
    Reader { text, at: 0, depth: 0 }.value().ok()
}

/// A text, and how far it has been read.
struct Reader<'a> {
    text: &'a str,
    at: usize,
    depth: u32,
}

impl<'a> Reader<'a> {
    /// The byte that comes next.
    fn byte(&self) -> Option<u8> {
        self.text.as_bytes().get(self.at).copied()
    }

    /// The byte that comes next after blanks.
    fn next(&mut self) -> Option<u8> {
        while let Some(b' ' | b'\t' | b'\n' | b'\r') = self.byte() {
            self.at += 1;
        }
        self.byte()
    }

    /// What stands between two places, both beside an ASCII sign.
    fn between(&self, from: usize, to: usize) -> &'a str {
        self.text.get(from..to).unwrap_or_default()
    }

    /// What must hold and does not, at this place.
    fn wrong(&self, what: &str) -> NoJson {
        let before = self.text.as_bytes().get(..self.at).unwrap_or_default();
        let line = before.iter().filter(|&&byte| byte == b'\n').count() + 1;
        let column = before.iter().rev().take_while(|&&byte| byte != b'\n').count() + 1;
        NoJson {
            cut_off: self.at >= self.text.len(),
            line,
            what: format!("{what}, at line {line}, column {column}"),
        }
    }

    fn value(&mut self) -> Result<Value, NoJson> {
        match self.next() {
            Some(b'{') => self.inside(Self::fields),
            Some(b'[') => self.inside(Self::list),
            Some(b'"') => self.string().map(Value::String),
            Some(b'-' | b'0'..=b'9') => self.number(),
            _ => {
                for (word, value) in
                    [("null", Value::Null), ("true", true.into()), ("false", false.into())]
                {
                    let rest = self.text.get(self.at..).unwrap_or_default();
                    if rest.starts_with(word) {
                        self.at += word.len();
                        return Ok(value);
                    }
                    if word.starts_with(rest) {
                        self.at = self.text.len();
                    }
                }
                Err(self.wrong("there must be a value"))
            }
        }
    }

    /// Reads a list or fields, from the bracket that opens it.
    fn inside(&mut self, read: fn(&mut Self) -> Result<Value, NoJson>) -> Result<Value, NoJson> {
        if self.depth == DEEPEST {
            return Err(self.wrong("lists and fields must not be nested so deeply"));
        }
        self.depth += 1;
        self.at += 1;
        let value = read(self)?;
        self.depth -= 1;
        Ok(value)
    }

    /// After a part of a list or a field: whether another follows. Takes the comma or the bracket.
    fn another(&mut self, end: u8) -> Result<bool, NoJson> {
        let found = self.next();
        if found != Some(b',') && found != Some(end) {
            return Err(self.wrong("there must be a comma or a closing bracket"));
        }
        self.at += 1;
        Ok(found == Some(b','))
    }

    fn list(&mut self) -> Result<Value, NoJson> {
        let mut parts = Vec::new();
        if self.next() == Some(b']') {
            self.at += 1;
            return Ok(Value::Array(parts));
        }
        loop {
            parts.push(self.value()?);
            if !self.another(b']')? {
                return Ok(Value::Array(parts));
            }
        }
    }

    fn fields(&mut self) -> Result<Value, NoJson> {
        let mut fields = Map::new();
        if self.next() == Some(b'}') {
            self.at += 1;
            return Ok(Value::Object(fields));
        }
        loop {
            if self.next() != Some(b'"') {
                return Err(self.wrong("there must be the name of a field"));
            }
            let name = self.string()?;
            // A map would take the last of two in silence.
            if fields.contains_key(&name) {
                return Err(self.wrong(&["the field \"", &name, "\" is there twice"].concat()));
            }
            if self.next() != Some(b':') {
                return Err(self.wrong("there must be a colon"));
            }
            self.at += 1;
            let value = self.value()?;
            fields.insert(name, value);
            if !self.another(b'}')? {
                return Ok(Value::Object(fields));
            }
        }
    }

    /// Reads a text, from the quotation mark that opens it.
    fn string(&mut self) -> Result<String, NoJson> {
        let mut out = String::new();
        self.at += 1;
        loop {
            let start = self.at;
            while self.byte().is_some_and(|byte| !matches!(byte, b'"' | b'\\' | 0..0x20)) {
                self.at += 1;
            }
            out.push_str(self.between(start, self.at));
            match self.byte() {
                Some(b'"') => {
                    self.at += 1;
                    return Ok(out);
                }
                Some(b'\\') => {
                    self.at += 1;
                    out.push(self.escaped()?);
                }
                _ => return Err(self.wrong("a text must end, and have no control sign")),
            }
        }
    }

    /// Reads what stands for a sign after a backslash.
    fn escaped(&mut self) -> Result<char, NoJson> {
        let sign = match self.byte() {
            Some(sign @ (b'"' | b'\\' | b'/')) => char::from(sign),
            Some(b'b') => '\u{8}',
            Some(b'f') => '\u{c}',
            Some(b'n') => '\n',
            Some(b'r') => '\r',
            Some(b't') => '\t',
            Some(b'u') => return self.by_number(),
            _ => return Err(self.wrong("a backslash must stand before a sign that it can change")),
        };
        self.at += 1;
        Ok(sign)
    }

    /// Reads a sign that is given by its number, from the `u`. One beyond the first 65,536 is given by two.
    fn by_number(&mut self) -> Result<char, NoJson> {
        let mut code = self.four_digits()?;
        if let 0xd800..0xdc00 = code
            && self.between(self.at, self.at + 2) == "\\u"
        {
            self.at += 1;
            let low = self.four_digits()?;
            if let 0xdc00..0xe000 = low {
                code = 0x1_0000 + ((code - 0xd800) << 10) + (low - 0xdc00);
            }
        }
        char::from_u32(code).ok_or_else(|| self.wrong("the number must be that of a sign"))
    }

    /// Reads four digits of base 16, after the `u` that stands here.
    fn four_digits(&mut self) -> Result<u32, NoJson> {
        let mut code = 0;
        for _ in 0..4 {
            self.at += 1;
            let digit = self.byte().and_then(|byte| char::from(byte).to_digit(16));
            code = code * 16
                + digit.ok_or_else(|| self.wrong("there must be four digits of base 16"))?;
        }
        self.at += 1;
        Ok(code)
    }

    fn number(&mut self) -> Result<Value, NoJson> {
        let start = self.at;
        let negative = self.byte() == Some(b'-');
        self.at += usize::from(negative);
        if self.byte() == Some(b'0') {
            self.at += 1;
            if self.byte().is_some_and(|byte| byte.is_ascii_digit()) {
                return Err(self.wrong("a number must not begin with a nought"));
            }
        } else {
            self.digits()?;
        }
        let mut is_whole = true;
        if self.byte() == Some(b'.') {
            self.at += 1;
            self.digits()?;
            is_whole = false;
        }
        if let Some(b'e' | b'E') = self.byte() {
            self.at += 1;
            self.at += usize::from(matches!(self.byte(), Some(b'+' | b'-')));
            self.digits()?;
            is_whole = false;
        }
        let text = self.between(start, self.at);
        let digits = text.get(usize::from(negative)..).unwrap_or_default();
        match digits.parse::<u64>() {
            Ok(number) if is_whole && !negative => return Ok(number.into()),
            Ok(number @ 1..=MOST_BELOW) if is_whole => {
                return Ok((-i64::try_from(number).unwrap_or_default()).into());
            }
            _ => {}
        }
        let number = decimal(text).and_then(Number::from_f64);
        number.map(Value::Number).ok_or_else(|| {
            self.at = start;
            self.wrong("a number must not be so large")
        })
    }

    /// Passes over digits, of which there must be one.
    fn digits(&mut self) -> Result<(), NoJson> {
        let start = self.at;
        while self.byte().is_some_and(|byte| byte.is_ascii_digit()) {
            self.at += 1;
        }
        if self.at == start { Err(self.wrong("there must be a digit")) } else { Ok(()) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What `serde_json` reads is the measure; it takes the last of two fields of a name.
    #[track_caller]
    fn same(text: &str) {
        let theirs = serde_json::from_str::<Value>(text);
        match (parse(text), &theirs) {
            (Ok(ours), Ok(theirs)) => assert!(alike(&ours, theirs), "{text}: {ours}, {theirs}"),
            (Err(ours), Err(theirs)) => {
                assert_eq!(ours.cut_off, theirs.is_eof(), "{text}: {ours:?}, {theirs}");
            }
            (ours, theirs) => panic!("{text}: {ours:?}, {theirs:?}"),
        }
    }

    /// The same, but for the last place of numbers.
    fn alike(one: &Value, other: &Value) -> bool {
        match (one, other) {
            (Value::Number(one), Value::Number(other)) => {
                let is_same = one.is_f64() == other.is_f64() && one.is_i64() == other.is_i64();
                let (one, other) = (one.as_f64().unwrap(), other.as_f64().unwrap());
                is_same && one == other || ((one - other) / other).abs() < 1e-15
            }
            (Value::Array(one), Value::Array(other)) => {
                one.len() == other.len() && one.iter().zip(other).all(|(a, b)| alike(a, b))
            }
            (Value::Object(one), Value::Object(other)) => {
                one.len() == other.len()
                    && one.iter().zip(other).all(|(a, b)| a.0 == b.0 && alike(a.1, b.1))
            }
            _ => one == other,
        }
    }

    const TEXTS: [&str; 60] = [
        "",
        " \t\r\n7 ",
        "null",
        "nul",
        "nulL",
        "true",
        "false",
        "fals",
        "truer",
        "0",
        "-0",
        "00",
        "01",
        "-",
        "-01",
        "-12",
        "1.",
        ".5",
        "1.5",
        "-1.5e+3",
        "1e5",
        "1e",
        "1e+",
        "1E-2",
        "+1",
        "1e999",
        "18446744073709551615",
        "18446744073709551616",
        "123456789.123456789",
        "[]",
        "[ ]",
        "[1, \"a\", null, [true]]",
        "[1,]",
        "[1 2]",
        "[,]",
        "[1",
        "]",
        "{}",
        "{ }",
        "{\"a\": 1, \"b\": {\"c\": []}}",
        "{\"a\"}",
        "{\"a\": }",
        "{\"a\" 1}",
        "{a: 1}",
        "{\"a\": 1,}",
        "{\"a\": 1",
        "{,}",
        "[}",
        "1 1",
        "\"plain\"",
        "\"Fü\u{10348}r\"",
        "\"\\\"\\\\\\/\\b\\f\\n\\r\\t\"",
        "\"\\u00fC\\u2028\"",
        "\"\\ud800\\udf48\"",
        "\"\\x\"",
        "\"\\u12g4\"",
        "\"a\nb\"",
        "\"open",
        "\"\\",
        "\"\\u12",
    ];

    #[test]
    fn a_text_is_read_as_a_library_reads_it() {
        for text in TEXTS {
            same(text);
        }
        for text in ["\"\\ud800\"", "\"\\ud800x\"", "\"\\ud800\\u0041\"", "\"\\udf48\""] {
            assert!(parse(text).is_err() && serde_json::from_str::<Value>(text).is_err(), "{text}");
        }
    }

    #[test]
    fn any_half_of_a_document_is_cut_off() {
        let whole = r#"{"a": [1, -2.5e3, "t\u00fc"], "b": {"c": null, "d": true}}"#;
        for end in (0..whole.len()).filter(|end| whole.is_char_boundary(*end)) {
            let error = parse(&whole[..end]).unwrap_err();
            assert!(error.cut_off, "{end}: {error:?}");
        }
        same(whole);
    }

    /// Texts with a sign changed, taken out or put in at random: always the same ones.
    #[test]
    fn slips_of_the_hand_are_read_as_a_library_reads_them() {
        let whole = r#"{"a": [1, -2.5e3, "t\u00fc\n"], "b": {"c": null, "d": true, "e": 0.1}}"#;
        let mut seed = 7_u64;
        let mut any = |most: usize| {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            usize::try_from(seed >> 33).unwrap() % most
        };
        let signs: Vec<char> = " \"\\{}[],:0.9eE+-untrlb\n".chars().collect();
        for _ in 0..20_000 {
            let mut text: Vec<char> = whole.chars().collect();
            for _ in 0..=any(2) {
                let (at, sign) = (any(text.len()), signs[any(signs.len())]);
                match any(3) {
                    0 => text[at] = sign,
                    1 => text.insert(at, sign),
                    _ => drop(text.remove(at)),
                }
            }
            let text: String = text.into_iter().collect();
            if parse(&text).is_err_and(|error| error.what.contains("twice")) {
                continue;
            }
            let theirs = serde_json::from_str::<Value>(&text);
            match (parse(&text), &theirs) {
                (Ok(ours), Ok(theirs)) => assert!(alike(&ours, theirs), "{text}"),
                (ours, theirs) => assert!(ours.is_err() && theirs.is_err(), "{text}"),
            }
        }
    }

    #[test]
    fn what_is_wrong_says_where() {
        let error = parse("{\"a\": 1,\n  \"b\": x}").unwrap_err();
        assert_eq!((error.cut_off, error.line), (false, 2));
        assert_eq!(error.what, "there must be a value, at line 2, column 8");
        let error = parse("{\"a\": 1, \"a\": 2}").unwrap_err();
        assert_eq!(error.what, "the field \"a\" is there twice, at line 1, column 13");
    }

    #[test]
    fn what_is_nested_too_deeply_is_not_read() {
        let nested = |deep: usize| "[".repeat(deep) + &"]".repeat(deep);
        same(&nested(127));
        same(&nested(128));
        assert!(parse(&nested(127)).is_ok());
        assert!(parse(&"[".repeat(1_000_000)).is_err_and(|error| !error.cut_off));
    }

    #[test]
    fn what_follows_the_first_value_does_not_matter() {
        assert_eq!(parse_first(" \"a\", 3").unwrap(), "a");
        assert!(parse_first("x").is_none());
    }
}
