//! Letters, check symbols and checksums against the Python standard library
//! and a reference of the check symbol (`codes-qr.json`), through what is public.

use class::assignment::Assignment;
use class::bank::{Bank, Version};
use serde_json::Value;

/// The checksum of a bank is the CRC-32 of its bytes.
#[test]
fn checksums_agree() {
    let codes = codes();
    for code in codes["codes"].as_array().unwrap() {
        let bytes = hex(code["hex"].as_str().unwrap());
        let sum = u32::from_str_radix(code["crc32"].as_str().unwrap(), 16).unwrap();
        assert_eq!(Version::of(&bytes), Version(sum));
    }
}

/// A typed code is what the reference makes of the same bytes: fifteen bytes
/// of which the last two are their CRC-16, as 24 letters and the check symbol.
#[test]
fn a_typed_code_agrees_with_the_reference_form() {
    let mut set = crate::made::assignment(60);
    set.due = None;
    let bank = Bank {
        version: set.bank,
        blueprints: vec!["all".into()],
        ..Bank::default()
    };
    let code = set.typed(&bank).unwrap();
    // Worked out with Python: binascii.crc_hqx(bytes, 0xffff), base 32 and modulo 37 by int.
    assert_eq!(code, "20WJC-01W00-000AG-002GG-EXDVF");
    assert_eq!(Assignment::read_typed(&code, &bank), Ok(set));
}

pub fn codes() -> Value {
    let text = include_str!("../../../../tests/fixtures/codes-qr.json");
    serde_json::from_str(text).expect("the fixture is JSON")
}

pub fn hex(text: &str) -> Vec<u8> {
    let pairs = text.as_bytes().chunks(2);
    pairs
        .map(|pair| u8::from_str_radix(std::str::from_utf8(pair).unwrap(), 16).unwrap())
        .collect()
}
