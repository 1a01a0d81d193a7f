//! Putting parts together again: of several things, in any order, some read twice.

use super::MOST_PARTS;
use crate::refusal::{Check, Refusal};
use crate::wire::{
    bytes::Reader,
    check,
    envelope::{self, Kind},
};
use std::collections::{BTreeMap, HashMap};

/// Parts read so far, by their whole and their numbers. Only parts that came
/// take room: what a part says of the others is not to be relied on.
#[derive(Debug, Default)]
pub struct Joiner(HashMap<(u32, u8), Parts>);

/// What came of one whole, by number.
type Parts = BTreeMap<u8, Box<[u8]>>;

/// What a part brought.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Joined {
    /// Which part it was, from 1.
    pub number: u8,
    /// Of how many.
    pub of: u8,
    /// How many are still missing.
    pub missing: u8,
    /// The whole, once nothing is missing.
    pub whole: Option<Vec<u8>>,
}

impl Joiner {
    /// Adds a part that was sealed.
    ///
    /// # Errors
    /// What is wrong with the part, or with the whole that it completes.
    pub fn add(&mut self, sealed: &[u8]) -> Result<Joined, Refusal> {
        let opened = envelope::open(sealed)?;
        if opened.kind != Kind::Part {
            return Err(Refusal::Foreign);
        }
        let mut reader = Reader(opened.body);
        let mut head = || Some((reader.byte()?, reader.byte()?, reader.four()?));
        let (number, of, sum) = head()
            .filter(|&(number, of, _)| (1..=of).contains(&number) && usize::from(of) <= MOST_PARTS)
            .ok_or(Refusal::Damaged(Check::Sense))?;
        let parts = self.0.entry((sum, of)).or_default();
        parts.insert(number, reader.0.into());
        // There are at most as many as `of`, which is a byte.
        let missing = of - u8::try_from(parts.len()).unwrap_or(of);
        let whole: Option<Vec<u8>> =
            (missing == 0).then(|| parts.values().flatten().copied().collect());
        if let Some(whole) = &whole
            && check::crc32(whole) != sum
        {
            self.0.remove(&(sum, of));
            return Err(Refusal::Damaged(Check::Checksum));
        }
        Ok(Joined {
            number,
            of,
            missing,
            whole,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::super::split;
    use super::*;
    use crate::bank::Version;
    use proptest::prelude::*;

    const PREFIX: &str = "https://practice.example.org/#/hand-in/";

    proptest! {
        // Each case makes many symbols, which takes a while.
        #![proptest_config(ProptestConfig::with_cases(24))]
        #[test]
        fn parts_come_together_in_any_order(bytes in prop::collection::vec(any::<u8>(), 300..2000), turn: prop::sample::Index) {
            let sealed = envelope::seal(Kind::HandIn, Version(9), &bytes);
            let mut parts = split(PREFIX, &sealed).unwrap();
            prop_assert!(parts.len() > 1);
            let turn = turn.index(parts.len());
            parts.rotate_left(turn);
            parts.insert(1, parts[0].clone());
            let mut joiner = Joiner::default();
            let mut last = None;
            for part in &parts {
                last = joiner.add(&envelope::bytes(part).unwrap()).unwrap().whole;
            }
            prop_assert_eq!(last, Some(sealed));
        }

        #[test]
        fn anything_can_be_added(bytes: Vec<u8>) {
            let mut joiner = Joiner::default();
            let _ = joiner.add(&bytes);
            let _ = joiner.add(&envelope::seal(Kind::Part, Version(0), &bytes));
        }
    }
}
