//! Bytes as letters: Crockford's base 32 (value from memory), which has no
//! letter that is taken for a digit, and fits the capitals of a QR symbol.

/// The 32 letters, then the five that only stand as a check symbol.
const LETTERS: &[u8; 37] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ*~$=U";

/// Writes bytes as letters; the last letter is filled with zero bits.
pub fn encode(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() * 8 / 5 + 1);
    let (mut held, mut bits) = (0_u32, 0_u32);
    for &byte in bytes {
        held = held << 8 | u32::from(byte);
        bits += 8;
        while bits >= 5 {
            bits -= 5;
            text.push(letter(held >> bits & 31));
        }
        held &= (1 << bits) - 1;
    }
    if bits > 0 {
        text.push(letter(held << (5 - bits) & 31));
    }
    text
}

/// Reads letters as bytes; none where a letter is none of the 32 or the
/// filling is not zero, so that every byte string has one spelling. Any case
/// is read, `o` as 0 and `i` or `l` as 1; hyphens and blanks are passed over.
pub fn decode(text: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len() * 5 / 8 + 1);
    let (mut held, mut bits) = (0_u32, 0_u32);
    for byte in text.bytes().filter(|b| !passed_over(*b)) {
        held = held << 5 | value(byte)?;
        bits += 5;
        if bits >= 8 {
            bits -= 8;
            bytes.push(u8::try_from(held >> bits & 255).ok()?);
        }
        held &= (1 << bits) - 1;
    }
    (held == 0 && bits < 5).then_some(bytes)
}

/// The check symbol of letters: their value modulo 37, which is coprime to 32,
/// so that every wrong letter and every swap of two neighbours shows. None
/// where a letter is none of the 32.
pub fn symbol(text: &str) -> Option<char> {
    let mut rest = 0;
    for byte in text.bytes().filter(|b| !passed_over(*b)) {
        rest = (rest * 32 + value(byte)?) % 37;
    }
    Some(letter(rest))
}

/// The symbol as it is written, whatever way it was typed.
pub fn tidied(symbol: char) -> Option<char> {
    let upper = symbol.to_ascii_uppercase();
    let plain = match upper {
        'O' => '0',
        'I' | 'L' => '1',
        _ => upper,
    };
    LETTERS
        .iter()
        .any(|l| char::from(*l) == plain)
        .then_some(plain)
}

/// Whether a byte is only there to make a code easier to read.
pub fn passed_over(byte: u8) -> bool {
    byte == b'-' || byte.is_ascii_whitespace()
}

/// What a letter stands for.
pub fn value(byte: u8) -> Option<u32> {
    let value = VALUES[usize::from(byte)];
    (value < 32).then(|| u32::from(value))
}

/// What every byte stands for, as a letter in any case or as one that is taken
/// for a digit; 255 where it is no letter. Thousands of hand-ins are read at once.
const VALUES: [u8; 256] = {
    let mut values = [255; 256];
    let mut place = 0;
    while place < 32 {
        let letter = LETTERS[place as usize];
        values[letter as usize] = place;
        values[letter.to_ascii_lowercase() as usize] = place;
        place += 1;
    }
    values[b'O' as usize] = 0;
    values[b'o' as usize] = 0;
    values[b'I' as usize] = 1;
    values[b'i' as usize] = 1;
    values[b'L' as usize] = 1;
    values[b'l' as usize] = 1;
    values
};

fn letter(value: u32) -> char {
    let place = usize::try_from(value).unwrap_or(0);
    LETTERS.get(place).map_or('0', |b| char::from(*b))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn what_was_written_is_read(bytes: Vec<u8>) {
            let text = encode(&bytes);
            prop_assert_eq!(decode(&text), Some(bytes.clone()));
            prop_assert_eq!(decode(&text.to_lowercase()), Some(bytes));
        }

        #[test]
        fn anything_can_be_tried(text: String) {
            if let Some(bytes) = decode(&text) {
                prop_assert!(bytes.len() <= text.len());
            }
            let _ = symbol(&text);
        }
    }

    #[test]
    fn lookalike_letters_and_hyphens_are_read() {
        assert_eq!(decode("oIlL-0000"), decode("01110000"));
        assert_eq!(decode("8!"), None);
        assert_eq!(decode("U0"), None);
        assert_eq!(
            (tidied('u'), tidied('o'), tidied('!')),
            (Some('U'), Some('0'), None)
        );
    }

    /// Letters and check symbols of a reference in Python (`codes-qr.json`).
    #[test]
    fn letters_and_symbols_agree_with_the_reference() {
        let text = include_str!("../../../../tests/fixtures/codes-qr.json");
        let codes: serde_json::Value = serde_json::from_str(text).unwrap();
        for code in codes["codes"].as_array().unwrap() {
            let hex = code["hex"].as_str().unwrap();
            let bytes: Vec<u8> = (0..hex.len() / 2)
                .map(|i| u8::from_str_radix(&hex[2 * i..2 * i + 2], 16).unwrap())
                .collect();
            let letters = encode(&bytes);
            assert_eq!(letters, code["crockford"].as_str().unwrap());
            let check = symbol(&letters).map(String::from);
            assert_eq!(check.as_deref(), code["crockford_check"].as_str());
            assert_eq!(decode(&letters), Some(bytes.clone()));
            let sum = super::super::check::crc16(&bytes);
            assert_eq!(
                format!("{sum:04x}"),
                code["crc16_ccitt_false"].as_str().unwrap()
            );
        }
    }
}
