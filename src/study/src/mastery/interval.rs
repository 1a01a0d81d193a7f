//! Intervals for a share: so many right out of so many.

use crate::numeric::{beta, normal, real};

/// From where to where a share may lie; both between 0 and 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Interval {
    /// The lower end.
    pub low: f64,
    /// The upper end.
    pub high: f64,
}

/// Nothing is known.
const ALL: Interval = Interval {
    low: 0.0,
    high: 1.0,
};

fn within(low: f64, high: f64) -> Interval {
    Interval {
        low: low.clamp(0.0, 1.0),
        high: high.clamp(0.0, 1.0),
    }
}

/// Wilson's interval (1927): honest at any number, and the one shown. `level` is
/// its coverage, between 0 and 1; nothing out of nothing gives 0 to 1.
pub fn wilson(right: usize, of: usize, level: f64) -> Interval {
    if of == 0 {
        return ALL;
    }
    let (n, z) = (real(of), normal::half_width(level));
    let p = real(right) / n;
    let centre = p + z * z / (2.0 * n);
    let half = z * (p * (1.0 - p) / n + z * z / (4.0 * n * n)).sqrt();
    let scale = 1.0 + z * z / n;
    within((centre - half) / scale, (centre + half) / scale)
}

/// Wilson's interval with the correction for continuity: wider, for comparison.
pub fn wilson_corrected(right: usize, of: usize, level: f64) -> Interval {
    if of == 0 {
        return ALL;
    }
    let (n, z) = (real(of), normal::half_width(level));
    let p = real(right) / n;
    let q = 1.0 - p;
    let scale = 2.0 * (n + z * z);
    let centre = 2.0 * n * p + z * z;
    let down = 1.0
        + z * (z * z - 2.0 - 1.0 / n + 4.0 * p * (n * q + 1.0))
            .max(0.0)
            .sqrt();
    let up = 1.0
        + z * (z * z + 2.0 - 1.0 / n + 4.0 * p * (n * q - 1.0))
            .max(0.0)
            .sqrt();
    let low = if right == 0 {
        0.0
    } else {
        (centre - down) / scale
    };
    let high = if right == of {
        1.0
    } else {
        (centre + up) / scale
    };
    within(low, high)
}

/// The exact interval of Clopper and Pearson (1934), which covers at least `level`.
pub fn clopper_pearson(right: usize, of: usize, level: f64) -> Interval {
    if of == 0 {
        return ALL;
    }
    let tail = (1.0 - level) / 2.0;
    let (x, wrong) = (real(right), real(of.saturating_sub(right)));
    let low = if right == 0 {
        0.0
    } else {
        beta::quantile(x, wrong + 1.0, tail)
    };
    let high = if right >= of {
        1.0
    } else {
        beta::quantile(x + 1.0, wrong, 1.0 - tail)
    };
    within(low, high)
}

/// The equal-tailed interval under Jeffreys's prior, without the fix at 0 and all.
pub fn jeffreys(right: usize, of: usize, level: f64) -> Interval {
    let tail = (1.0 - level) / 2.0;
    let (a, b) = (real(right) + 0.5, real(of.saturating_sub(right)) + 0.5);
    within(beta::quantile(a, b, tail), beta::quantile(a, b, 1.0 - tail))
}

/// The interval of Agresti and Coull (1998).
pub fn agresti_coull(right: usize, of: usize, level: f64) -> Interval {
    if of == 0 {
        return ALL;
    }
    let z = normal::half_width(level);
    let n = real(of) + z * z;
    let p = (real(right) + z * z / 2.0) / n;
    let half = z * (p * (1.0 - p) / n).sqrt();
    within(p - half, p + half)
}
