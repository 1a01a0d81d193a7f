//! The gamma and the incomplete beta function.

use super::real;

/// How many steps a continued fraction takes at most: its need grows with the
/// square root of the larger parameter, which stays below a million here.
const STEPS: u32 = 20_000;

/// The logarithm of the gamma function, for positive `x` (Lanczos's series with
/// nine terms, good to fourteen figures).
pub fn ln_gamma(x: f64) -> f64 {
    const SERIES: [f64; 8] = [
        676.520_368_121_885_1,
        -1_259.139_216_722_402_8,
        771.323_428_777_653_1,
        -176.615_029_162_140_6,
        12.507_343_278_686_905,
        -0.138_571_095_265_720_12,
        9.984_369_578_019_572e-6,
        1.505_632_735_149_311_6e-7,
    ];
    if x < 0.5 {
        // Euler's reflection.
        let pi = std::f64::consts::PI;
        return (pi / (pi * x).sin()).ln() - ln_gamma(1.0 - x);
    }
    let x = x - 1.0;
    let sum = SERIES
        .iter()
        .enumerate()
        .fold(0.999_999_999_999_809_9, |sum, (i, c)| {
            sum + c / (x + real(i) + 1.0)
        });
    let t = x + 7.5;
    0.5 * (2.0 * std::f64::consts::PI).ln() + (x + 0.5) * t.ln() - t + sum.ln()
}

/// The logarithm of the beta function.
pub fn ln_beta(a: f64, b: f64) -> f64 {
    ln_gamma(a) + ln_gamma(b) - ln_gamma(a + b)
}

/// The probability that a Beta(a, b) variable is at most `x`.
pub fn below(a: f64, b: f64, x: f64) -> f64 {
    if x <= 0.0 {
        0.0
    } else if x >= 1.0 {
        1.0
    } else if x < (a + 1.0) / (a + b + 2.0) {
        lower(a, b, x)
    } else {
        1.0 - lower(b, a, 1.0 - x)
    }
}

/// The probability that a Beta(a, b) variable is above `x`; keeps its figures
/// where it is small.
pub fn above(a: f64, b: f64, x: f64) -> f64 {
    below(b, a, 1.0 - x)
}

/// The value that a Beta(a, b) variable stays below with probability `p`.
pub fn quantile(a: f64, b: f64, p: f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    // Each round halves the bracket; 60 rounds leave less than one part in 10^18.
    for _ in 0..60 {
        let middle = f64::midpoint(low, high);
        if below(a, b, middle) < p {
            low = middle;
        } else {
            high = middle;
        }
    }
    f64::midpoint(low, high)
}

/// The density of Beta(a, b) at `x`, strictly between 0 and 1.
pub fn density(a: f64, b: f64, x: f64) -> f64 {
    ((a - 1.0) * x.ln() + (b - 1.0) * (1.0 - x).ln() - ln_beta(a, b)).exp()
}

/// The lower tail by its continued fraction, which converges quickly where `x`
/// lies below the mean.
fn lower(a: f64, b: f64, x: f64) -> f64 {
    let front = (a * x.ln() + b * (-x).ln_1p() - ln_beta(a, b)).exp() / a;
    front * fraction(a, b, x)
}

/// The continued fraction, by Lentz's method.
fn fraction(a: f64, b: f64, x: f64) -> f64 {
    const TINY: f64 = 1e-300;
    let away_from_zero = |v: f64| if v.abs() < TINY { TINY } else { v };
    let mut upper = 1.0;
    let mut lower = 1.0 / away_from_zero(1.0 - (a + b) * x / (a + 1.0));
    let mut value = lower;
    for step in 1..STEPS {
        let m = f64::from(step);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        let mut change = 1.0;
        for term in [even, odd] {
            lower = 1.0 / away_from_zero(1.0 + term * lower);
            upper = away_from_zero(1.0 + term / upper);
            change = lower * upper;
            value *= change;
        }
        if (change - 1.0).abs() < 1e-16 {
            break;
        }
    }
    value
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_gamma_function_meets_the_factorials() {
        let mut factorial = 1.0_f64;
        for n in 1..30_u32 {
            assert!((ln_gamma(f64::from(n)) - factorial.ln()).abs() < 1e-12 * f64::from(n));
            factorial *= f64::from(n);
        }
        let half = 0.5 * std::f64::consts::PI.ln();
        assert!((ln_gamma(0.5) - half).abs() < 1e-13);
    }

    #[test]
    fn tails_and_percentage_points_undo_each_other() {
        for (a, b) in [(0.5, 0.5), (2.0, 1.0), (13.4, 200.0), (400.5, 0.5)] {
            for p in [0.001, 0.05, 0.5, 0.9, 0.999] {
                let x = quantile(a, b, p);
                assert!((below(a, b, x) - p).abs() < 1e-9, "{a} {b} {p}");
                assert!((below(a, b, x) + above(a, b, x) - 1.0).abs() < 1e-12);
            }
        }
    }
}
