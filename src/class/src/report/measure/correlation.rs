//! Correlation from sums, so that one pass over the numbers is enough.

/// Sums of pairs of numbers. The numbers are whole and small (scores, marks),
/// so that sums of their products are exact.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Sums {
    /// How many pairs.
    pub n: i64,
    /// The sum of the first numbers.
    pub x: i64,
    /// The sum of the second numbers.
    pub y: i64,
    /// The sum of the squares of the first.
    pub xx: i64,
    /// The sum of the squares of the second.
    pub yy: i64,
    /// The sum of the products.
    pub xy: i64,
}

impl Sums {
    /// With one more pair.
    pub fn add(&mut self, x: i64, y: i64) {
        self.n += 1;
        self.x += x;
        self.y += y;
        self.xx += x * x;
        self.yy += y * y;
        self.xy += x * y;
    }

    /// Pearson's correlation; none where one of the two does not vary.
    pub fn r(&self) -> Option<f64> {
        let spread = |s: i64, ss: i64| self.n * ss - s * s;
        let (x, y) = (spread(self.x, self.xx), spread(self.y, self.yy));
        if x <= 0 || y <= 0 {
            return None;
        }
        let together = self.n * self.xy - self.x * self.y;
        // Sums of scores stay far below where a float loses whole numbers.
        #[expect(clippy::cast_precision_loss)]
        Some((together as f64 / ((x as f64).sqrt() * (y as f64).sqrt())).clamp(-1.0, 1.0))
    }
}

/// The interval of a correlation over `n` pairs at 95 per cent, by Fisher's
/// transformation; none below four pairs.
pub fn interval(r: f64, n: usize) -> Option<(f64, f64)> {
    let over = n.checked_sub(3).filter(|&over| over > 0)?;
    // A class is far smaller than where a float loses whole numbers.
    #[expect(clippy::cast_precision_loss)]
    let half = 1.959_963_984_540_054 / (over as f64).sqrt();
    let z = r.atanh();
    Some(((z - half).tanh(), (z + half).tanh()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_correlates_and_a_constant_does_not() {
        let of = |pairs: &[(i64, i64)]| {
            let mut sums = Sums::default();
            for &(x, y) in pairs {
                sums.add(x, y);
            }
            sums.r()
        };
        assert_eq!(of(&[(1, 2), (2, 4), (3, 6)]), Some(1.0));
        assert_eq!(of(&[(1, 6), (2, 4), (3, 2)]), Some(-1.0));
        assert_eq!(of(&[(1, 6), (1, 4)]), None);
        assert_eq!(of(&[]), None);
    }

    #[test]
    fn twenty_six_students_leave_four_tenths_either_way() {
        let (low, high) = interval(0.0, 26).unwrap();
        assert!((high - 0.387).abs() < 0.001 && (low + high).abs() < 1e-12);
        assert_eq!(interval(0.5, 3), None);
    }
}
