//! The binomial and F distributions, through the beta distribution.

use study::numeric::beta::{below, quantile};

/// The number below which a share `p` of an F distribution with `d1` and `d2`
/// degrees of freedom lies.
pub fn f_quantile(p: f64, d1: f64, d2: f64) -> f64 {
    let x = quantile(d1 / 2.0, d2 / 2.0, p);
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
    below(least as f64, (trials - least + 1) as f64, p)
}

#[cfg(test)]
mod tests {
    use super::*;
    use study::numeric::beta::ln_gamma;

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
        close(below(2.0, 2.0, 0.5), 0.5);
        close(below(0.5, 0.5, 0.25), 1.0 / 3.0);
        close(at_least(2, 3, 0.5), 0.5);
        close(at_least(0, 3, 0.5), 1.0);
        close(at_least(4, 3, 0.5), 0.0);
        close(quantile(1.0, 1.0, 0.1), 0.1);
    }
}
