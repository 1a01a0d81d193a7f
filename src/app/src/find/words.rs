//! Words as they stand in an address: a space as `+`, all but plain letters
//! and digits as `%` with the number of the byte.

/// The words for an address.
pub fn encoded(words: &str) -> String {
    let mut text = String::new();
    for byte in words.bytes() {
        match byte {
            b' ' => text.push('+'),
            _ if byte.is_ascii_alphanumeric() || byte == b'-' => text.push(char::from(byte)),
            _ => {
                text.push('%');
                for half in [byte >> 4, byte & 15] {
                    text.extend(char::from_digit(u32::from(half), 16));
                }
            }
        }
    }
    text
}

/// The words of an address. What is not well formed is kept as it stands.
pub fn decoded(text: &str) -> String {
    let mut bytes = Vec::new();
    let mut rest = text.as_bytes();
    while let [first, after @ ..] = rest {
        rest = after;
        match (first, after) {
            (b'+', _) => bytes.push(b' '),
            (b'%', [high, low, after @ ..]) => match (half(*high), half(*low)) {
                (Some(high), Some(low)) => {
                    bytes.push(high << 4 | low);
                    rest = after;
                }
                _ => bytes.push(b'%'),
            },
            (byte, _) => bytes.push(*byte),
        }
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

fn half(letter: u8) -> Option<u8> {
    let digit = char::from(letter).to_digit(16)?;
    u8::try_from(digit).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn words_come_back(words in ".*") {
            prop_assert_eq!(decoded(&encoded(&words)), words);
        }

        #[test]
        fn no_address_does_harm(text in ".*") {
            let _ = decoded(&text);
        }
    }

    #[test]
    fn odd_addresses_are_kept() {
        for (text, words) in [
            ("100%", "100%"),
            ("%zz", "%zz"),
            ("a%20b", "a b"),
            ("%ff", "\u{fffd}"),
        ] {
            assert_eq!(decoded(text), words);
        }
    }
}
