//! The shelf: one file for all small parts of the program.
//!
//! The splitter makes a part of its own for every set of areas that share some
//! code, so an area needs many parts of a kilobyte. Each would cost a place in
//! the browser's queue, and together they compress to a quarter.

use std::ops::Range;

use super::names::Asset;

/// The bytes from which on a part is a file of its own. Larger parts are worth
/// leaving out for the areas that do not need them.
const LARGE: usize = 8 * 1024;

/// The small parts, one after the other.
#[derive(Default)]
pub struct Shelf {
    bytes: Vec<u8>,
}

impl Shelf {
    /// Puts a part on the shelf and tells which bytes are its own, or gives it
    /// back if it is large enough to be a file.
    ///
    /// # Errors
    /// The part itself, where it is large.
    pub fn put(&mut self, part: Vec<u8>) -> Result<Range<usize>, Vec<u8>> {
        if part.len() >= LARGE {
            return Err(part);
        }
        let from = self.bytes.len();
        self.bytes.extend(part);
        Ok(from..self.bytes.len())
    }

    /// The file.
    pub fn file(self) -> Asset {
        Asset::hashed("shelf", "bin", self.bytes)
    }
}

#[cfg(test)]
mod tests {
    use super::{LARGE, Shelf};

    #[test]
    fn small_parts_lie_one_after_the_other() {
        let mut shelf = Shelf::default();
        let small = [vec![1; 3], vec![2; LARGE - 1], vec![3; 5]];
        let places: Vec<_> = small
            .iter()
            .map(|part| shelf.put(part.clone()).unwrap())
            .collect();
        let file = shelf.file();
        for (part, place) in small.iter().zip(places) {
            assert_eq!(&file.bytes[place], part);
        }
        assert_eq!(file.bytes.len(), LARGE + 7);
    }

    #[test]
    fn a_large_part_is_given_back() {
        let mut shelf = Shelf::default();
        let large = vec![7; LARGE];
        assert_eq!(shelf.put(large.clone()), Err(large));
        assert!(shelf.file().bytes.is_empty());
    }
}
