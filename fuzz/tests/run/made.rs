//! How an input is made.

use fastrand::Rng;

/// The longest input that is made, in bytes.
const MOST_BYTES: usize = 40_000;

/// Words and signs that mean something to one door or another.
pub const TOKENS: [&str; 60] = [
    "nylon",
    "gut",
    "steel",
    "silk",
    "bronze",
    "weighed",
    "core",
    "gauge",
    "breaks",
    "bare",
    "board",
    "pin",
    "at",
    "x",
    "+",
    "-",
    "−",
    ".",
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    "\"",
    "'",
    "″",
    "′",
    "[",
    "]",
    "{",
    "}",
    ":",
    "0",
    "1",
    "9",
    "1e308",
    "-0",
    "NaN",
    "inf",
    "1/8",
    "⅛",
    "½",
    "mm",
    "in",
    "thou",
    "ft",
    "Hz",
    "g/m",
    "kgf",
    "lbf",
    "C4",
    "E♭3",
    "F##9",
    "\u{0}",
    "\u{feff}",
    "\u{202e}",
    "99999999999999999999",
    "null",
    "true",
    "#",
];

/// What inputs begin with: short ones for most, as they go through quickly, and whole ones.
pub struct Begun {
    pub short: Vec<Vec<u8>>,
    pub whole: Vec<Vec<u8>>,
}

impl Begun {
    fn one(&self, rng: &mut Rng) -> &[u8] {
        let some = if rng.u8(..16) == 0 { &self.whole } else { &self.short };
        if some.is_empty() { &[] } else { &some[rng.usize(..some.len())] }
    }
}

/// One input: a good one with some changes, two that are joined, or one out of nothing.
pub fn made(rng: &mut Rng, begun: &Begun, out: &mut Vec<u8>) {
    out.clear();
    match rng.u8(..20) {
        0 => out.extend((0..rng.usize(..40)).map(|_| rng.u8(..))),
        1 | 2 => {
            for _ in 0..rng.usize(1..12) {
                out.extend_from_slice(TOKENS[rng.usize(..TOKENS.len())].as_bytes());
                if rng.bool() {
                    out.push(b' ');
                }
            }
        }
        3 => {
            let (first, second) = (begun.one(rng), begun.one(rng));
            out.extend_from_slice(&first[..rng.usize(..=first.len())]);
            out.extend_from_slice(&second[rng.usize(..=second.len())..]);
        }
        _ => out.extend_from_slice(begun.one(rng)),
    }
    for _ in 0..1 << rng.u32(..4) {
        change(rng, out);
    }
    out.truncate(MOST_BYTES);
}

fn change(rng: &mut Rng, out: &mut Vec<u8>) {
    let at = rng.usize(..=out.len());
    let end = (at + rng.usize(..24)).min(out.len());
    match rng.u8(..8) {
        0 if at < out.len() => out[at] ^= 1 << rng.u8(..8),
        1 if at < out.len() => out[at] = rng.u8(32..127),
        2 => drop(out.drain(at..end)),
        3 => {
            // A piece stands a second time, elsewhere.
            let to = rng.usize(..=out.len());
            out.extend_from_within(at..end);
            out[to..].rotate_right(end - at);
        }
        4 => {
            // A number becomes another one.
            let digits = |byte: &u8| byte.is_ascii_digit() || *byte == b'.';
            if let Some(start) = out[at..].iter().position(u8::is_ascii_digit) {
                let start = at + start;
                let length = out[start..].iter().take_while(|byte| digits(byte)).count();
                let other = match rng.u8(..6) {
                    0 => "0".to_owned(),
                    1 => format!("{}", f64::from_bits(rng.u64(..))),
                    2 => format!("{:e}", f64::from_bits(rng.u64(..))),
                    3 => format!("{}", rng.u64(..)),
                    4 => format!("{:.3}", 1000.0 * rng.f64()),
                    _ => format!("-{}", rng.u8(..)),
                };
                drop(out.splice(start..start + length, other.into_bytes()));
            }
        }
        5 => {
            // The line that stands there comes again at the end.
            let start = out[..at].iter().rposition(|byte| *byte == b'\n').map_or(0, |end| end + 1);
            let length = out[start..].iter().position(|byte| *byte == b'\n');
            let line = start..length.map_or(out.len(), |length| start + length);
            for _ in 0..rng.usize(1..4) {
                out.push(b'\n');
                out.extend_from_within(line.clone());
            }
        }
        _ => drop(out.splice(at..at, TOKENS[rng.usize(..TOKENS.len())].bytes())),
    }
}
