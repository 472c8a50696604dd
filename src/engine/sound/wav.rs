//! A sound as a WAV file: one channel of 16 bits, which every program plays.

/// Bytes before the samples.
const HEAD: u32 = 44;
/// Bytes of a sample.
const WIDE: u32 = 2;

/// The file of a sound whose samples lie between −1 and 1; what lies outside is cut.
///
/// # Source
///
/// The layout of RIFF and of its chunks `fmt ` and `data`: Multimedia Programming Interface and Data Specifications
/// 1.0, IBM and Microsoft, 1991 (from memory); read back by Python's `wave` in `tests/sound`.
pub fn wav(sound: &[f32], rate_hz: u32) -> Vec<u8> {
    let bytes = u32::try_from(sound.len()).unwrap_or(0).saturating_mul(WIDE);
    let mut file = Vec::with_capacity(sound.len() * 2 + 44);
    file.extend(b"RIFF");
    file.extend((bytes + HEAD - 8).to_le_bytes());
    file.extend(b"WAVEfmt ");
    file.extend(16_u32.to_le_bytes());
    file.extend(1_u16.to_le_bytes()); // plain samples
    file.extend(1_u16.to_le_bytes()); // one channel
    file.extend(rate_hz.to_le_bytes());
    file.extend((rate_hz * WIDE).to_le_bytes());
    file.extend(2_u16.to_le_bytes());
    file.extend(16_u16.to_le_bytes());
    file.extend(b"data");
    file.extend(bytes.to_le_bytes());
    for sample in sound {
        file.extend(whole(*sample).to_le_bytes());
    }
    file
}

/// A sample in whole steps.
#[allow(clippy::cast_possible_truncation, reason = "it is cut to what fits")]
fn whole(sample: f32) -> i16 {
    (sample.clamp(-1.0, 1.0) * f32::from(i16::MAX)).round() as i16
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_head_says_how_long_the_file_is() {
        let file = wav(&[0.0, 1.0, -1.0, 2.0, f32::NAN], 48_000);
        assert_eq!(file.len(), 54);
        assert_eq!(&file[..4], b"RIFF");
        assert_eq!(file[4..8], 46_u32.to_le_bytes());
        assert_eq!(file[24..28], 48_000_u32.to_le_bytes());
        assert_eq!(file[40..44], 10_u32.to_le_bytes());
        assert_eq!(file[44..], [0, 0, 0xff, 0x7f, 0x01, 0x80, 0xff, 0x7f, 0, 0]);
    }
}
