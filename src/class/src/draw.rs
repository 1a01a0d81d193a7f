//! Drawing one of many, so that what is set several times does not come twice.

use crate::task::Draw;
use clinic::case::Seed;
use std::collections::HashSet;

impl Draw {
    /// A number below `count`: another one for each of the times that a task is
    /// set, as long as there are enough. None where there is nothing to draw from.
    pub fn distinct(self, count: u64) -> Option<u64> {
        let nth = u64::from(self.nth).checked_rem(count)?;
        let size = usize::try_from(count).ok()?;
        let mut chance = Seed::new(self.of_set);
        let mut seen = HashSet::new();
        loop {
            let drawn = chance.below(size) as u64;
            if seen.insert(drawn) && seen.len() as u64 == nth + 1 {
                return Some(drawn);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_comes_twice_until_all_have_come() {
        for count in [1, 2, 7, 1_000_000_007] {
            let drawn = |nth| {
                let draw = Draw {
                    nth,
                    ..Draw::once(42)
                };
                draw.distinct(count).unwrap()
            };
            let all: Vec<u64> = (0..7).map(drawn).collect();
            let different: HashSet<&u64> = all.iter().collect();
            assert_eq!(different.len() as u64, count.min(7), "{all:?}");
            assert!(all.iter().all(|it| *it < count));
        }
        assert_eq!(Draw::once(1).distinct(0), None);
    }
}
