//! The few special functions that measurement needs: normal percentage points,
//! the incomplete beta function, and careful steps between whole and real numbers.

pub mod beta;
pub mod normal;

/// A count as a real number; exact up to 4,294,967,295.
pub fn real(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}

/// The nearest whole number that is not negative, halves to even; what is not a
/// number becomes 0, and what is too large becomes the largest.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast from f64 saturates, which is what the doc promises"
)]
pub fn whole(value: f64) -> u32 {
    value.round_ties_even() as u32
}

/// A hash of an id, frozen (FNV-1a, 64 bits; Fowler, Noll and Vo), so that what
/// follows from it is the same on every device.
pub fn hash(id: &str) -> u64 {
    id.bytes().fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn halves_go_to_the_even_neighbour() {
        let rows = [(0.5, 0), (1.5, 2), (2.5, 2), (-3.0, 0), (f64::NAN, 0)];
        for (value, wanted) in rows {
            assert_eq!(whole(value), wanted, "{value}");
        }
    }

    #[test]
    fn the_hash_is_the_published_one() {
        // Test vectors published with the function by its authors.
        assert_eq!(hash(""), 0xcbf2_9ce4_8422_2325);
        assert_eq!(hash("a"), 0xaf63_dc4c_8601_ec8c);
        assert_eq!(hash("foobar"), 0x8594_4171_f739_67e8);
    }
}
