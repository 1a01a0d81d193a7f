//! Reading symbols in pictures, for browsers that do not read them by
//! themselves. A module of its own, which is fetched when a camera is switched
//! on.

#![expect(
    clippy::unnecessary_wraps,
    reason = "a part that cannot be fetched is told by the same result"
)]

use wasm_split_helpers::{SplitLoaderError, wasm_split};

/// A picture in greys, row by row.
#[derive(Clone, Debug)]
pub struct Greys {
    /// How many there are in a row.
    pub width: usize,
    /// From 0, black, to 255, white.
    pub levels: Vec<u8>,
}

/// Finds the texts of the symbols in a picture.
pub type Find = fn(&Greys) -> Vec<String>;

/// What finds symbols.
///
/// # Errors
/// Where it cannot be fetched.
pub async fn finder() -> Result<Find, String> {
    let fetched: Result<Find, NotFetched> = symbols().await;
    fetched.map_err(|_| {
        "The part of the page that reads symbols could not be fetched. Check the connection, or read the hand-ins by link or file.".to_owned()
    })
}

/// The module is not to be had.
#[derive(Clone, Copy, Debug)]
struct NotFetched;

impl From<SplitLoaderError> for NotFetched {
    fn from(_: SplitLoaderError) -> Self {
        Self
    }
}

#[wasm_split(symbols, fallible)]
fn symbols() -> Result<Find, NotFetched> {
    Ok(find)
}

fn find(greys: &Greys) -> Vec<String> {
    let Some(height) = greys.levels.len().checked_div(greys.width) else {
        return Vec::new();
    };
    let level = |x: usize, y: usize| {
        greys
            .levels
            .get(y * greys.width + x)
            .copied()
            .unwrap_or(255)
    };
    let mut picture = rqrr::PreparedImage::prepare_from_greyscale(greys.width, height, level);
    let found = picture.detect_grids().into_iter();
    found
        .filter_map(|grid| Some(grid.decode().ok()?.1))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::{Greys, find};
    use class::qr::Symbol;
    use proptest::prelude::*;

    const PREFIX: &str = "https://practice.example.org/#/hand-in/";

    /// Symbols side by side, four dots a module, on white.
    fn picture(letters: &[&str]) -> Greys {
        const DOTS: usize = 4;
        let symbols: Vec<Symbol> = letters
            .iter()
            .map(|it| Symbol::of(PREFIX, it).expect("it fits"))
            .collect();
        let side = |it: &Symbol| usize::try_from(it.side()).expect("small") * DOTS;
        let (width, height) = (
            symbols.iter().map(side).sum(),
            symbols.iter().map(side).max().unwrap_or(0),
        );
        let mut levels = vec![255; width * height];
        let mut left = 0;
        for symbol in &symbols {
            for y in 0..side(symbol) {
                for x in 0..side(symbol) {
                    let module = |at: usize| u32::try_from(at / DOTS).expect("small");
                    if symbol.dark(module(x), module(y)) {
                        levels[y * width + left + x] = 0;
                    }
                }
            }
            left += side(symbol);
        }
        Greys { width, levels }
    }

    #[test]
    fn symbols_in_a_picture_are_found() {
        let long = "2ABCDEF0".repeat(20);
        let mut found = find(&picture(&["24WS3", &long]));
        found.sort();
        assert_eq!(found, [format!("{PREFIX}24WS3"), format!("{PREFIX}{long}")]);
        assert!(find(&picture(&[])).is_empty());
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        /// Whatever a camera sees, or half of a row of it.
        #[test]
        fn any_picture_can_be_looked_at(width in 0_usize..120, levels in prop::collection::vec(any::<u8>(), 0..8000)) {
            let _ = find(&Greys { width, levels });
        }

        /// Symbols with some of their dots put wrong.
        #[test]
        fn a_spoilt_symbol_is_read_or_passed_over(spots in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 0..400)) {
            let mut picture = picture(&["24WS30123456789"]);
            for (at, level) in spots {
                let at = at.index(picture.levels.len());
                picture.levels[at] = level;
            }
            for text in find(&picture) {
                prop_assert_eq!(text, format!("{PREFIX}24WS30123456789"));
            }
        }
    }
}
