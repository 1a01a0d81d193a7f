//! The beta distribution, and through it the binomial and F distributions.

/// Where a continued fraction counts as settled.
const SETTLED: f64 = 1e-15;

/// How many steps a continued fraction takes at most: its need grows with the
/// square root of the larger parameter, which stays below a million here.
const STEPS: u32 = 20_000;

/// The logarithm of the gamma function for positive numbers (Lanczos 1964,
/// with the nine coefficients of Godfrey; value from memory), within 1e-14.
pub fn ln_gamma(x: f64) -> f64 {
    const G: f64 = 7.0;
    const C: [f64; 9] = [
        0.999_999_999_999_809_9,
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
        // Reflection.
        let pi = core::f64::consts::PI;
        return (pi / (pi * x).sin()).ln() - ln_gamma(1.0 - x);
    }
    let x = x - 1.0;
    let mut sum = C[0];
    let mut under = x;
    for c in &C[1..] {
        under += 1.0;
        sum += c / under;
    }
    let t = x + G + 0.5;
    0.5 * (2.0 * core::f64::consts::PI).ln() + (x + 0.5) * t.ln() - t + sum.ln()
}

/// The logarithm of the beta function of positive numbers.
pub fn ln_beta(a: f64, b: f64) -> f64 {
    ln_gamma(a) + ln_gamma(b) - ln_gamma(a + b)
}

/// The share of a beta distribution with parameters `a` and `b`, both
/// positive, that lies below `x`: the regularised incomplete beta function, by
/// the continued fraction of Lentz's method (value from memory).
pub fn below(x: f64, a: f64, b: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    let front = (a * x.ln() + b * (-x).ln_1p() - ln_beta(a, b)).exp();
    if x < (a + 1.0) / (a + b + 2.0) {
        front * fraction(x, a, b) / a
    } else {
        1.0 - front * fraction(1.0 - x, b, a) / b
    }
}

fn fraction(x: f64, a: f64, b: f64) -> f64 {
    let nonzero = |v: f64| if v.abs() < 1e-300 { 1e-300 } else { v };
    let mut over = 1.0;
    let mut under = 1.0 / nonzero(1.0 - (a + b) * x / (a + 1.0));
    let mut value = under;
    for step in 1..STEPS {
        let m = f64::from(step);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        under = 1.0 / nonzero(1.0 + even * under);
        over = nonzero(1.0 + even / over);
        value *= under * over;
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        under = 1.0 / nonzero(1.0 + odd * under);
        over = nonzero(1.0 + odd / over);
        value *= under * over;
        if (under * over - 1.0).abs() < SETTLED {
            break;
        }
    }
    value
}

/// The number below which a share `p` of a beta distribution lies, by halving.
pub fn quantile(p: f64, a: f64, b: f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..80 {
        let middle = f64::midpoint(low, high);
        if below(middle, a, b) < p {
            low = middle;
        } else {
            high = middle;
        }
    }
    f64::midpoint(low, high)
}

/// The number below which a share `p` of an F distribution with `d1` and `d2`
/// degrees of freedom lies.
pub fn f_quantile(p: f64, d1: f64, d2: f64) -> f64 {
    let x = quantile(p, d1 / 2.0, d2 / 2.0);
    d2 * x / (d1 * (1.0 - x))
}

/// The chance of at least `least` successes in `trials`, each with chance `p`.
pub fn at_least(least: i64, trials: i64, p: f64) -> f64 {
    if least <= 0 {
        return 1.0;
    }
    if least > trials {
        return 0.0;
    }
    // Counts of items stay far below where a float loses whole numbers.
    #[expect(clippy::cast_precision_loss)]
    below(p, least as f64, (trials - least + 1) as f64)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Values of scipy 1.17.1: `special.betainc`, `special.gammaln`, `stats.f.ppf`, `stats.binom.sf`.
    #[test]
    fn the_distributions_agree_with_scipy() {
        let close = |own: f64, theirs: f64| {
            assert!(
                (own - theirs).abs() <= 1e-10 * theirs.abs().max(1.0),
                "{own} {theirs}"
            );
        };
        close(ln_gamma(0.5), 0.572_364_942_924_700_1);
        close(ln_gamma(100.0), 359.134_205_369_575_4);
        close(below(0.5, 2.0, 2.0), 0.5);
        close(below(0.25, 0.5, 0.5), 1.0 / 3.0);
        close(at_least(2, 3, 0.5), 0.5);
        close(at_least(0, 3, 0.5), 1.0);
        close(at_least(4, 3, 0.5), 0.0);
        close(quantile(0.1, 1.0, 1.0), 0.1);
    }
}
