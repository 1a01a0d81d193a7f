//! The checksum that guards every stored line: CRC-32 as used by Ethernet and
//! ZIP (IEEE 802.3). It finds accidents, not forgers.

use crc::{CRC_32_ISO_HDLC, Crc, Table};

/// One 1 kB table: wider tables read faster, but cost the page more bytes.
static CRC_32: Crc<u32, Table<1>> = Crc::<u32, Table<1>>::new(&CRC_32_ISO_HDLC);

/// The CRC-32 (IEEE) of `bytes`.
pub fn of(bytes: &[u8]) -> u32 {
    CRC_32.checksum(bytes)
}

/// Reads a checksum as it is written: eight lower-case hexadecimal digits.
pub fn parse(text: &str) -> Option<u32> {
    if text.len() != 8 || !is_lower_hex(text) {
        return None;
    }
    u32::from_str_radix(text, 16).ok()
}

/// Whether `text` holds only the digits `0-9a-f`.
///
/// Capital letters are refused so that every value has exactly one spelling,
/// and a changed letter case is noticed like any other change.
pub fn is_lower_hex(text: &str) -> bool {
    text.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC
    /// algorithms (reveng): the CRC of "123456789" is cbf43926.
    #[test]
    fn agrees_with_the_published_check_value() {
        assert_eq!(of(b"123456789"), 0xcbf4_3926);
    }

    #[test]
    fn has_one_spelling() {
        assert_eq!(parse("cbf43926"), Some(0xcbf4_3926));
        for wrong in [
            "CBF43926",
            "cbf4392",
            "cbf439260",
            "+bf43926",
            "",
            "ébf4392",
        ] {
            assert_eq!(parse(wrong), None, "{wrong}");
        }
    }
}
