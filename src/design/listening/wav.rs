//! Recordings in the form of WAV files.
//!
//! # Source
//!
//! Multimedia Programming Interface and Data Specifications 1.0, 1991, and its extension for more bits: the chunks
//! `fmt ` and `data` within `RIFF` and `WAVE`, all numbers with their lowest byte first (from memory).

use crate::engine::listen::RATES_HZ;
use crate::words::{numeral, tuner as say};

/// Whole numbers and floating-point numbers; with the mark for more bits, either stands further on.
const WHOLE: u16 = 1;
const FLOATING: u16 = 3;
const EXTENDED: u16 = 0xFFFE;
/// Where the extended form says which of both it is.
const EXTENDED_AT: usize = 24;

/// A recording of one channel.
#[derive(Clone, Debug, PartialEq)]
pub struct Recording {
    /// Samples in a second.
    pub rate_hz: f64,
    /// From −1 to 1; where there were several channels, their mean.
    pub samples: Vec<f32>,
}

/// How samples are written.
#[derive(Clone, Copy)]
struct Form {
    is_floating: bool,
    channels: usize,
    rate_hz: f64,
    bits: u16,
}

/// Reads a WAV file. What is cut off at its end is left out.
///
/// # Errors
///
/// A sentence: it is no such file, or its samples are written in a way or at a rate that is not read.
pub fn read(bytes: &[u8]) -> Result<Recording, String> {
    let is_wav = bytes.get(..4) == Some(b"RIFF") && bytes.get(8..12) == Some(b"WAVE");
    if !is_wav {
        return Err(say::NO_WAV.into());
    }
    let mut rest = bytes.get(12..).unwrap_or_default();
    let mut form = None;
    while rest.len() >= 8 {
        let (head, body) = rest.split_at(8);
        let length = usize::try_from(whole(&head[4..])).unwrap_or(usize::MAX).min(body.len());
        let (chunk, after) = body.split_at(length);
        match &head[..4] {
            b"fmt " => form = Some(form_of(chunk)?),
            b"data" => {
                let form: Form = form.ok_or(say::NO_WAV)?;
                return Ok(Recording { rate_hz: form.rate_hz, samples: form.samples(chunk) });
            }
            _ => {}
        }
        // A chunk of odd length is followed by a byte that means nothing.
        rest = after.get(length % 2..).unwrap_or_default();
    }
    Err(say::NO_WAV.into())
}

fn form_of(chunk: &[u8]) -> Result<Form, String> {
    if chunk.len() < 16 {
        return Err(say::NO_WAV.into());
    }
    let two = |at: usize| u16::from_le_bytes([chunk[at], chunk[at + 1]]);
    let extended =
        || chunk.get(EXTENDED_AT..EXTENDED_AT + 2).map(|two| u16::from_le_bytes([two[0], two[1]]));
    let written = if two(0) == EXTENDED { extended().unwrap_or(EXTENDED) } else { two(0) };
    let (channels, bits) = (usize::from(two(2)), two(14));
    let rate_hz = whole(&chunk[4..8]) as f64;
    let is_floating = match (written, bits) {
        (WHOLE, 8 | 16 | 24 | 32) => false,
        (FLOATING, 32 | 64) => true,
        _ => return Err(say::wav_form(&bits)),
    };
    if channels == 0 {
        return Err(say::NO_WAV.into());
    }
    if !(RATES_HZ.0..=RATES_HZ.1).contains(&rate_hz) {
        return Err(say::rate(&numeral(rate_hz), &numeral(RATES_HZ.0), &numeral(RATES_HZ.1)));
    }
    Ok(Form { is_floating, channels, rate_hz, bits })
}

impl Form {
    fn samples(self, data: &[u8]) -> Vec<f32> {
        let width = usize::from(self.bits / 8);
        let mean = |frame: &[u8]| {
            let sum: f64 = frame.chunks_exact(width).map(|sample| self.sample(sample)).sum();
            #[expect(clippy::cast_possible_truncation, reason = "no recording is as fine as this")]
            let mean = (sum / self.channels as f64) as f32;
            mean
        };
        data.chunks_exact(width * self.channels).map(mean).collect()
    }

    fn sample(self, bytes: &[u8]) -> f64 {
        match (self.is_floating, bytes) {
            (true, &[a, b, c, d]) => f32::from_le_bytes([a, b, c, d]).into(),
            (true, &[a, b, c, d, e, f, g, h]) => f64::from_le_bytes([a, b, c, d, e, f, g, h]),
            // Eight bits have no sign: silence is 128.
            (false, &[a]) => (f64::from(a) - 128.0) / 128.0,
            (false, &[a, b]) => f64::from(i16::from_le_bytes([a, b])) / 32_768.0,
            (false, &[a, b, c]) => f64::from(i32::from_le_bytes([0, a, b, c])) / 2_147_483_648.0,
            (false, &[a, b, c, d]) => f64::from(i32::from_le_bytes([a, b, c, d])) / 2_147_483_648.0,
            _ => 0.0,
        }
    }
}

/// A whole number of up to four bytes, the lowest first.
fn whole(bytes: &[u8]) -> u64 {
    bytes.iter().take(4).rev().fold(0, |number, byte| number << 8 | u64::from(*byte))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A file by hand: `written` is 1 for whole and 3 for floating-point numbers.
    fn file(written: u16, channels: u16, rate: u32, bits: u16, data: &[u8]) -> Vec<u8> {
        let mut file = b"RIFF\0\0\0\0WAVEodd \x03\0\0\0abc\0fmt \x10\0\0\0".to_vec();
        file.extend([written.to_le_bytes(), channels.to_le_bytes()].concat());
        file.extend([rate.to_le_bytes(), [0; 4]].concat());
        file.extend([[0; 2], bits.to_le_bytes()].concat());
        file.extend(b"data");
        file.extend(u32::try_from(data.len()).unwrap().to_le_bytes());
        file.extend(data);
        file
    }

    fn samples(written: u16, channels: u16, bits: u16, data: &[u8]) -> Vec<f32> {
        let read = read(&file(written, channels, 44_100, bits, data)).unwrap();
        assert!((read.rate_hz - 44_100.0).abs() < 1e-9);
        read.samples
    }

    #[test]
    fn samples_of_every_width_are_read() {
        assert_eq!(samples(1, 1, 8, &[128, 192, 0]), [0.0, 0.5, -1.0]);
        assert_eq!(samples(1, 1, 16, &[0, 0x40, 0, 0x80, 7]), [0.5, -1.0]);
        assert_eq!(samples(1, 1, 24, &[0, 0, 0x40, 0, 0, 0xE0]), [0.5, -0.25]);
        assert_eq!(samples(1, 1, 32, &[0, 0, 0, 0x40]), [0.5]);
        assert_eq!(samples(3, 1, 32, &0.3_f32.to_le_bytes()), [0.3]);
        assert_eq!(samples(3, 1, 64, &0.25_f64.to_le_bytes()), [0.25]);
        assert_eq!(samples(1, 2, 16, &[0, 0x40, 0, 0x20]), [0.375], "the mean of two channels");
    }

    #[test]
    fn what_is_no_recording_says_why() {
        let told = |bytes: &[u8]| read(bytes).unwrap_err();
        for bytes in [&b""[..], b"RIFF", b"RIFF\0\0\0\0WAVE", b"{\"version\": 2}"] {
            assert_eq!(told(bytes), say::NO_WAV.said());
        }
        assert!(told(&file(2, 1, 44_100, 4, &[])).contains("4 bits"));
        assert!(
            told(&file(1, 1, 4_000, 16, &[])).contains("4000"),
            "{}",
            told(&file(1, 1, 4_000, 16, &[]))
        );
        assert_eq!(told(&file(1, 0, 44_100, 16, &[])), say::NO_WAV.said());
    }
}
