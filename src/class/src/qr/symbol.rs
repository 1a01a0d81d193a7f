//! One symbol.

use core::fmt::Write;
use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

/// The largest version that is made: phones read larger ones unreliably from a screen.
const LARGEST: u8 = 10;

/// Light modules on each side, as the standard asks.
const QUIET: i32 = 4;

/// A symbol of version 10 at most, at level M.
#[derive(Clone, PartialEq, Eq)]
pub struct Symbol(QrCode);

impl Symbol {
    /// The symbol of a link; none where it does not fit one.
    pub fn of(prefix: &str, letters: &str) -> Option<Self> {
        let mut segments = Vec::new();
        if !prefix.is_empty() {
            segments.push(QrSegment::make_bytes(prefix.as_bytes()));
        }
        if QrSegment::is_alphanumeric(letters) {
            segments.push(QrSegment::make_alphanumeric(letters));
        } else {
            segments.push(QrSegment::make_bytes(letters.as_bytes()));
        }
        QrCode::encode_segments_advanced(
            &segments,
            QrCodeEcc::Medium,
            Version::MIN,
            Version::new(LARGEST),
            None,
            false,
        )
        .ok()
        .map(Self)
    }

    /// Its version, from 1 to 10.
    pub fn version(&self) -> u8 {
        self.0.version().value()
    }

    /// The modules of a side, with the quiet zone: the view box of the drawing is a square of it.
    pub fn side(&self) -> u32 {
        u32::try_from(self.0.size() + 2 * QUIET).unwrap_or(0)
    }

    /// Whether the module in a column and a row is dark; the quiet zone counts.
    pub fn dark(&self, column: u32, row: u32) -> bool {
        let within = |place: u32| i32::try_from(place).map_or(-1, |p| p - QUIET);
        self.0.get_module(within(column), within(row))
    }

    /// The dark modules as the path of a drawing, a unit a module. Neighbours
    /// in a row are one rectangle.
    pub fn path(&self) -> String {
        let mut path = String::new();
        for row in 0..self.side() {
            let mut column = 0;
            while column < self.side() {
                let start = column;
                while self.dark(column, row) {
                    column += 1;
                }
                if column > start {
                    let width = column - start;
                    // Writing to a String cannot fail.
                    let _ = write!(path, "M{start} {row}h{width}v1h-{width}z");
                }
                column += 1;
            }
        }
        path
    }
}

impl core::fmt::Debug for Symbol {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "Symbol(version {})", self.version())
    }
}
