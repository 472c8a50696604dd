//! The check sum of links and cards.

/// CRC-32 as gzip and PNG have it (polynomial 0x04C11DB7, bits reversed). Bit by bit, without a table:
/// a link is short, and a table would weigh more than the link.
///
/// # Example
///
/// The check value that catalogues of CRCs give for the digits 1 to 9:
///
/// ```
/// use stringloft::design::sum::crc_32;
///
/// assert_eq!(crc_32(b"123456789"), 0xcbf4_3926);
/// ```
pub fn crc_32(bytes: &[u8]) -> u32 {
    let sum = bytes.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| {
            let low = sum & 1;
            (sum >> 1) ^ (low * 0xedb8_8320)
        })
    });
    !sum
}
