//! Choosing by an index: each choice takes one digit of it, so that every
//! index is another exercise and none is left out.

/// An index being used up, and how many there are.
pub(super) struct Draw {
    left: u64,
    size: u64,
}

impl Draw {
    pub fn new(index: u64) -> Self {
        Self {
            left: index,
            size: 1,
        }
    }

    /// A number below `count`. How many there are must not depend on what was drawn before.
    pub fn below(&mut self, count: usize) -> usize {
        let count = count.max(1) as u64;
        let digit = self.left % count;
        self.left /= count;
        self.size = self.size.saturating_mul(count);
        usize::try_from(digit).unwrap_or(0)
    }

    /// One of these; none where there is none.
    pub fn pick<'a, T>(&mut self, from: &'a [T]) -> Option<&'a T> {
        from.get(self.below(from.len()))
    }

    /// A number from a range, both ends included, in steps.
    pub fn span(&mut self, from: u32, to: u32, step: u32) -> u32 {
        let count = (to - from) / step + 1;
        from + step * u32::try_from(self.below(count as usize)).unwrap_or(0)
    }

    /// How many exercises the choices so far make.
    pub fn size(&self) -> u64 {
        self.size
    }
}
