//! QR symbols, read again by `rqrr`, a reader that other people wrote; and the
//! public capacities of the standard (`codes-qr.json`).

use crate::made::{assignment, hand_in};
use class::handin::HandIn;
use class::qr::{Symbol, split};

const PREFIX: &str = "https://practice.example.org/#/hand-in/";

/// What the reader makes of a symbol drawn at eight dots a module.
fn read(symbol: &Symbol) -> String {
    const DOTS: usize = 8;
    let side = usize::try_from(symbol.side()).unwrap() * DOTS;
    let dot = |x: usize| u32::try_from(x / DOTS).unwrap();
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, |x, y| {
        if symbol.dark(dot(x), dot(y)) { 0 } else { 255 }
    });
    let grids = image.detect_grids();
    assert_eq!(grids.len(), 1);
    grids[0].decode().expect("it can be read").1
}

#[test]
fn symbols_of_every_size_are_read_by_another_reader() {
    let mut versions = Vec::new();
    for letters in (10..240).step_by(5) {
        let text: String = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
            .chars()
            .cycle()
            .skip(letters)
            .take(letters)
            .collect();
        let symbol = Symbol::of(PREFIX, &text).expect("it fits");
        assert!(symbol.version() <= 10);
        assert_eq!(read(&symbol), format!("{PREFIX}{text}"));
        versions.push(symbol.version());
    }
    assert!(versions.is_sorted());
    assert_eq!(versions.last(), Some(&10));
}

#[test]
fn every_part_of_a_long_hand_in_is_a_symbol_that_is_read() {
    let set = assignment(300);
    let sent = hand_in(&set, 12, &"ABCD".repeat(75));
    let parts = split(PREFIX, &sent.bytes()).unwrap();
    assert!(parts.len() > 1);
    for part in &parts {
        assert_eq!(
            read(&Symbol::of(PREFIX, part).unwrap()),
            format!("{PREFIX}{part}")
        );
    }
    let short = hand_in(&set, 12, "ABCD");
    let one = split(PREFIX, &short.bytes()).unwrap();
    assert_eq!(one.len(), 1);
    assert_eq!(
        HandIn::read(&read(&Symbol::of(PREFIX, &one[0]).unwrap())),
        Ok(short)
    );
}

/// Symbols that another program made, of every level and with its own masks,
/// are read by the reader that the page takes where the browser has none.
#[test]
fn symbols_of_another_program_are_read() {
    let codes = crate::codes::codes();
    let symbols = codes["symbols"].as_array().unwrap();
    assert_eq!(symbols.len(), 10);
    for symbol in symbols {
        const DOTS: usize = 6;
        const QUIET: usize = 4;
        let rows: Vec<&str> = symbol["rows"]
            .as_array()
            .unwrap()
            .iter()
            .map(|row| row.as_str().unwrap())
            .collect();
        let side = (rows.len() + 2 * QUIET) * DOTS;
        let module = |at: usize| (at / DOTS).checked_sub(QUIET);
        let dark = |x: usize, y: usize| {
            let row = rows.get(module(y)?)?.as_bytes();
            row.get(module(x)?).map(|module| *module == b'1')
        };
        let light = |x, y| if dark(x, y) == Some(true) { 0 } else { 255 };
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, light);
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1);
        let mut payload = Vec::new();
        let meta = grids[0].decode_to(&mut payload).expect("it can be read");
        assert_eq!(
            payload,
            crate::codes::hex(symbol["payload_hex"].as_str().unwrap())
        );
        assert_eq!(meta.version.0 as u64, symbol["version"].as_u64().unwrap());
        assert_eq!(u64::from(meta.mask), symbol["mask"].as_u64().unwrap());
    }
}

/// Capitals alone fill a symbol of version 10 at level M as the standard has it.
#[test]
fn capacities_are_those_of_the_standard() {
    let codes = crate::codes::codes();
    for version in 1..=10_u8 {
        let most = codes["capacity"][version.to_string()]["M"][1]
            .as_u64()
            .unwrap();
        let most = usize::try_from(most).unwrap();
        let of = |letters| Symbol::of("", &"A".repeat(letters)).map(|s| s.version());
        assert_eq!(of(most), Some(version));
        assert!(of(most + 1).is_none_or(|v| v > version), "{version}");
    }
}

#[test]
fn the_drawing_has_every_dark_module_and_no_other() {
    let symbol = Symbol::of(PREFIX, "ABC").unwrap();
    let side = symbol.side();
    let mut drawn = vec![false; usize::try_from(side * side).unwrap()];
    for piece in symbol.path().split('M').skip(1) {
        let (start, rest) = piece.split_once('h').unwrap();
        let (column, row) = start.split_once(' ').unwrap();
        let width: u32 = rest.split_once('v').unwrap().0.parse().unwrap();
        let (column, row): (u32, u32) = (column.parse().unwrap(), row.parse().unwrap());
        for place in column..column + width {
            drawn[usize::try_from(row * side + place).unwrap()] = true;
        }
    }
    for row in 0..side {
        for column in 0..side {
            let at = usize::try_from(row * side + column).unwrap();
            assert_eq!(drawn[at], symbol.dark(column, row));
        }
    }
}
