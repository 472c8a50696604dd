//! The text of a document packed for a link: deflated, with what most designs hold known beforehand to both sides.
//!
//! Deflate replaces what stood before in a text by where it stood. A design is short and says most things once, so it
//! is packed as if [`KNOWN`] stood before it: links are 45 % shorter for it (the samples and new harps of three sizes
//! of each kind), and the printed code has fewer and larger squares.

use miniz_oxide::deflate::core::{
    CompressorOxide, TDEFLFlush, compress_to_output, create_comp_flags_from_zip_params,
};
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};

/// Higher levels of deflate take longer and gain nothing on texts this short.
const LEVEL: i32 = 10;
/// Deflate without a frame around it, and the largest distance: what miniz and zlib call window bits.
const BARE: i32 = -15;
/// Room for a text to begin with.
const ROOM_BYTES: usize = 16_384;

/// What most designs hold, with `|` between the cells of a column; what is nearest to the end costs least. Never change
/// it: links are out in the world. A better one is a new form of the link.
const KNOWN: &str = concat!(
    r#""k":"Lengths measured .","b":[],"W":"h":"none|||"u":{"length":"inch","gauge":"thou"},"p":{"a4_hz":415.0,"#,
    r#""e":"meantone","e":"pythagorean","equal"},"A":"G major","F major","D major","O":""a":{"after_length_mm":"#,
    r#"60.0,"knot_mm":110.0,"pin_mm":5.0},"l":{"least_stiffness_n_per_mm":0.8,"most_stiffness_n_per_mm":2.3,"pa"#,
    r#"rtial_8_cents":35.0}red brass|red brass|phosphor bronze|iron|yellow brass|yellow brass|fluorocarbon|fluo"#,
    r#"rocarbon|"2":"3":"6":"~":"12.0,"13.0,"yellow-poplar","walnut","cherry","sitka-spruce","8":"hard-maple",""#,
    r#"white-oak"G6|F#6|E6|D6|C6|B5|A5|G5|F#5|E5|D5|C5|B4|A4|G4|F#4|E4|D4|C4|B3|A3|G3|F#3|E3|D3|C3Gb7|Fb7|Eb7|D"#,
    r#"b7|Cb7|Bb6|Ab6|Gb6|Fb6|Eb6|Db6|Cb6|Bb5|Ab5|Gb5|Fb5|Eb5|Db5|Cb5|Bb4|Ab4|Gb4|Fb4|Eb4|Db4|Cb4|Bb3|Ab3|Gb3|F"#,
    r#"b3|Eb3|Db3|Cb3|Bb2|Ab2|Gb2|Fb2|Eb2|Db2|Cb2|Bb1|Ab1|Gb1|Fb1|Eb1|Db1|Cb1C7|Bb6|Ab6|G6|F6|Eb6|D6|C6|Bb5|Ab5"#,
    r#"|G5|F5|Eb5|D5|C5|Bb4|Ab4|G4|F4|Eb4|D4|C4|Bb3|Ab3|G3|F3|Eb3|D3|C3|Bb2|Ab2|G2|F2|Eb2|D2|C2C7|B6|A6|G6|F6|E"#,
    r#"6|D6|C6|B5|A5|G5|F5|E5|D5|C5|B4|A4|G4|F4|E4|D4|C4|B3|A3|G3|F3|E3|D3|C3|B2|A2|G2|F2|E2|D2|C2"L":"66|73|80"#,
    r#"|86|94|103|112|122|134|146|160|175|192|210|231|253|277|303|331|362|396|432|470|512|556|603|653|706|760|8"#,
    r#"15|870|925|978|1030|1080|1128|1177|1225|1275|1320|1365|1410|1450|1485|1515"D":"0.33|0.35|0.38|0.40|0.43|"#,
    r#"0.45|0.48|0.50|0.53|0.56|0.60|0.65|0.70|0.72|0.80|0.85|0.88|0.90|0.92|0.95|1.00|1.08|1.10|1.16|1.20|1.24"#,
    r#"|1.25|1.30|1.36|1.40|1.44|1.48|1.50|1.56|1.60|1.68|1.72|1.80|1.84|1.90|1.96|2.00|2.08|2.12|2.20|2.28|2.4"#,
    r#"0|2.44|2.48|2.640.51|0.51|0.56|0.56|0.57|0.62|0.66|0.66|0.71|0.71|0.74|0.76|0.76|0.78|0.81|0.81|0.91|0.9"#,
    r#"1|0.91|1.02|1.02|1.09|1.14|1.14|1.17|1.28|1.40{"i":"silk","z":"0.15"},{"i":"bronze","z":"0.10"}],[{"i":""#,
    r#"silk","z":"0.10"},{"i":"bronze","z":"0.14"}],[{"i":"nylon","z":"0.20"}],[{"i":"nylon","z":"0.35"}],[{"i""#,
    r#":"nylon","z":"0.25"}],[{"i":"nylon","z":"0.25"}]","i":"gut|gut|gut|steel|steel|steel|nylon|nylon|nylon","#,
    r#""n":"]},"c":"","d":"1 May 2026","h":{"j":"lever"},"h":{"j":"double_disc"},"k":"Strung ","m":"","o":"E fl"#,
    r#"at major, levers down","o":"C flat major, all pedals up","o":"C major","r":3,"s":"","t":"Harp","v":2}{"H"#,
    r#"":{"!":3.0,"$":32.0,"0":35.0,"Jo":{"Fo":{"Td":45.0,"Te":16.0},"He":{"Fh":100.0,"Fw":68.0,"Td":55.0,"Te":"#,
    r#"18.0},"Sh":{"+":70.0,"Ac":26.0,"Ap":40.0,"Co":4,"Di":10.0,"Fa":"bolts"}},"Q":{"4":{"5":[[1,16.0],[35,13."#,
    r#"0]]}},"Sb":{"Ba":4.0,"Bd":180.0,"Br":180.0,"Bw":"birch-plywood","Dt":80.0,"Hl":110.0,"Ho":4,"Hw":60.0,"L"#,
    r#"h":16.0,"Lw":14.0,"Si":7.0,"Sw":"sugar-maple"},"U":{"%":18.0,"&":38.0,"(":48.0},"X":{")":35.0,"*":40.0,""#,
    r#"+":36.0},"Y":{",":80.0,"-":45.0,".":260.0,"/":120.0,"8":"yellow-poplar",":":10.0,";":3.5,"rib_height_mm""#,
    r#":12.0,"rib_width_mm":32.0,"strip_height_mm":3.0,"strip_width_mm":20.0}},"M":["yellow brass","red brass"]"#,
    r#","M":["fluorocarbon"],"M":["nylon","gut","steel","bronze","silk"],"S":{"D":""#,
);

/// Why a packed text cannot be had.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Broken {
    /// It is not what [`packed`] made.
    Altered,
    /// It is longer than it may be.
    TooLarge,
}

fn known() -> Vec<u8> {
    KNOWN.bytes().map(|byte| if byte == b'|' { 0x7f } else { byte }).collect()
}

/// The packed text.
pub(super) fn packed(text: &str) -> Vec<u8> {
    let flags = create_comp_flags_from_zip_params(LEVEL, BARE, 0);
    let mut compressor = CompressorOxide::new(flags);
    let mut out = Vec::new();
    let mut press = |bytes: &[u8], flush| {
        out.clear();
        compress_to_output(&mut compressor, bytes, flush, |part| {
            out.extend_from_slice(part);
            true
        });
    };
    // What is known goes first and its bytes are thrown away: flushed, they end where a byte ends.
    press(&known(), TDEFLFlush::Sync);
    press(text.as_bytes(), TDEFLFlush::Finish);
    out
}

/// The text that was packed, in bytes.
///
/// # Errors
///
/// When it is no packed text, or longer than `most` bytes.
pub(super) fn unpacked(packed: &[u8], most: usize) -> Result<Vec<u8>, Broken> {
    let mut out = known();
    let start = out.len();
    let mut state = DecompressorOxide::new();
    let (mut read, mut written) = (0, start);
    loop {
        let room = (out.len() - start).max(ROOM_BYTES / 2) * 2;
        out.resize(start + room.min(most), 0);
        let flags = TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
        let (status, taken, given) =
            decompress(&mut state, &packed[read..], &mut out, written, flags);
        (read, written) = (read + taken, written + given);
        match status {
            TINFLStatus::Done => return Ok(out[start..written].to_vec()),
            TINFLStatus::HasMoreOutput if room < most => {}
            TINFLStatus::HasMoreOutput => return Err(Broken::TooLarge),
            _ => return Err(Broken::Altered),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const MOST: usize = 1 << 20;

    #[test]
    fn any_text_comes_back() {
        let long = "C7\u{7f}B6 ♯ ".repeat(20_000);
        for text in ["", "v", KNOWN, &KNOWN.replace('|', "\u{7f}"), &long] {
            assert_eq!(unpacked(&packed(text), MOST).as_deref(), Ok(text.as_bytes()));
        }
    }

    #[test]
    fn what_is_known_costs_little() {
        let text = &KNOWN[KNOWN.len() - 400..].replace('|', "\u{7f}");
        assert!(packed(text).len() < 20, "{}", packed(text).len());
    }

    #[test]
    fn what_is_too_long_cut_off_or_no_packed_text_is_told() {
        let bomb = packed(&"a".repeat(MOST + 1));
        assert!(bomb.len() < 2_000);
        assert_eq!(unpacked(&bomb, MOST), Err(Broken::TooLarge));
        assert_eq!(unpacked(&packed(&"a".repeat(MOST)), MOST).map(|text| text.len()), Ok(MOST));
        let whole = packed("{\"t\":\"Harp\"}");
        assert_eq!(unpacked(&whole[..whole.len() - 1], MOST), Err(Broken::Altered));
        assert_eq!(unpacked(b"\xff\xff", MOST), Err(Broken::Altered));
        assert_eq!(unpacked(b"", MOST), Err(Broken::Altered));
    }

    /// Made once by this program; it must open for ever.
    #[test]
    fn a_text_that_was_packed_before_comes_back() {
        let text = r#"{"L":"97|104","n":"C6|B5","t":"Kept","v":2}"#.replace('|', "\u{7f}");
        let kept = [
            171, 6, 215, 108, 150, 192, 114, 202, 192, 4, 154, 51, 193, 53, 40, 52, 165, 123, 167,
            22, 148, 192, 82, 58, 0,
        ];
        assert_eq!(unpacked(&kept, MOST).as_deref(), Ok(text.as_bytes()));
    }
}
