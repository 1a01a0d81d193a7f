//! Values as bytes: small numbers in few of them. Reading never takes more
//! memory than there are bytes, whatever the bytes say.

/// Writes values one after another.
#[derive(Debug, Default)]
pub struct Writer(pub Vec<u8>);

impl Writer {
    /// One byte.
    pub fn byte(&mut self, value: u8) -> &mut Self {
        self.0.push(value);
        self
    }

    /// Two bytes, the high one first.
    pub fn two(&mut self, value: u16) -> &mut Self {
        self.raw(&value.to_be_bytes())
    }

    /// Four bytes, the highest first.
    pub fn four(&mut self, value: u32) -> &mut Self {
        self.raw(&value.to_be_bytes())
    }

    /// Bytes as they are.
    pub fn raw(&mut self, bytes: &[u8]) -> &mut Self {
        self.0.extend_from_slice(bytes);
        self
    }

    /// A number, seven bits a byte, the lowest first.
    pub fn number(&mut self, mut value: u64) -> &mut Self {
        loop {
            // Masked to seven bits, it always fits a byte.
            let low = u8::try_from(value & 127).unwrap_or(0);
            value >>= 7;
            if value == 0 {
                return self.byte(low);
            }
            self.byte(low | 128);
        }
    }

    /// A count.
    pub fn count(&mut self, value: usize) -> &mut Self {
        self.number(value as u64)
    }

    /// A number that can be negative: the sign goes into the lowest bit.
    pub fn signed(&mut self, value: i64) -> &mut Self {
        self.number((value << 1 ^ value >> 63).cast_unsigned())
    }

    /// A text, its length first.
    pub fn text(&mut self, text: &str) -> &mut Self {
        self.count(text.len()).raw(text.as_bytes())
    }

    /// A text that can be absent, which is the empty one.
    pub fn maybe(&mut self, text: Option<&str>) -> &mut Self {
        self.text(text.unwrap_or_default())
    }
}

/// Reads values one after another; none where the bytes end too early or do
/// not stand for such a value.
#[derive(Debug, Clone, Copy)]
pub struct Reader<'b>(pub &'b [u8]);

impl<'b> Reader<'b> {
    /// One byte.
    pub fn byte(&mut self) -> Option<u8> {
        self.raw(1)?.first().copied()
    }

    /// Two bytes, the high one first.
    pub fn two(&mut self) -> Option<u16> {
        Some(u16::from_be_bytes(self.raw(2)?.try_into().ok()?))
    }

    /// Four bytes, the highest first.
    pub fn four(&mut self) -> Option<u32> {
        Some(u32::from_be_bytes(self.raw(4)?.try_into().ok()?))
    }

    /// As many bytes.
    pub fn raw(&mut self, count: usize) -> Option<&'b [u8]> {
        let (taken, rest) = self.0.split_at_checked(count)?;
        self.0 = rest;
        Some(taken)
    }

    /// A number.
    pub fn number(&mut self) -> Option<u64> {
        let mut value = 0_u64;
        for shift in (0..64).step_by(7) {
            let byte = self.byte()?;
            let part = u64::from(byte & 127);
            // The tenth byte has room for one bit only.
            if shift == 63 && part > 1 {
                return None;
            }
            value |= part << shift;
            if byte < 128 {
                return Some(value);
            }
        }
        None
    }

    /// A number of a narrower type.
    pub fn narrow<T: TryFrom<u64>>(&mut self) -> Option<T> {
        T::try_from(self.number()?).ok()
    }

    /// A count of things of which each takes at least one byte.
    pub fn count(&mut self) -> Option<usize> {
        self.narrow().filter(|&count: &usize| count <= self.0.len())
    }

    /// A number that can be negative.
    pub fn signed(&mut self) -> Option<i64> {
        let value = self.number()?;
        Some((value >> 1).cast_signed() ^ -(value & 1).cast_signed())
    }

    /// A text.
    pub fn text(&mut self) -> Option<&'b str> {
        let count = self.count()?;
        core::str::from_utf8(self.raw(count)?).ok()
    }

    /// Says that nothing is left.
    pub fn end(self) -> Option<()> {
        self.0.is_empty().then_some(())
    }
}

/// A text that was written as one that can be absent.
pub fn present(text: &str) -> Option<String> {
    (!text.is_empty()).then(|| text.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn numbers_and_texts_come_back(a: u64, b: i64, text: String) {
            let mut writer = Writer::default();
            writer.number(a).signed(b).text(&text);
            let mut reader = Reader(&writer.0);
            prop_assert_eq!(reader.number(), Some(a));
            prop_assert_eq!(reader.signed(), Some(b));
            prop_assert_eq!(reader.text(), Some(text.as_str()));
            prop_assert_eq!(reader.end(), Some(()));
        }
    }

    #[test]
    fn a_count_beyond_the_bytes_is_none() {
        let mut writer = Writer::default();
        writer.number(u64::MAX);
        assert_eq!(Reader(&writer.0).text(), None);
        assert_eq!(Reader(&[255; 20]).number(), None);
    }
}
