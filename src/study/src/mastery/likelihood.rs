//! The log-likelihood of answers at many abilities, without a logarithm and an
//! exponential for every answer.
//!
//! With z = a(theta - b), right and wrong answers to one question weigh
//! r ln P + w ln (1 - P) = -w z - (r + w) ln(1 + e^-z). The first term is a
//! straight line over all questions together. Of the second, e^-z is
//! e^(-a theta) e^(ab), so that one exponential serves all questions of a slope;
//! and logarithms of factors are added as one logarithm of their product.

use super::ability::{Tally, ln_chance};

/// A product is turned into its logarithm beyond this, long before it overflows.
const FULL: f64 = 1e200;

/// No single factor is larger than this; a larger one is worked in logarithms.
const LARGE: f64 = 1e50;

/// Answers made ready.
pub(super) struct Likelihood {
    /// By slope.
    groups: Vec<Group>,
    rise: f64,
    start: f64,
}

struct Group {
    slope: f64,
    tallies: Vec<Ready>,
}

struct Ready {
    difficulty: f64,
    /// e^(ab).
    easiness: f64,
    count: f64,
    /// The count, where it is a small whole number.
    times: Option<i32>,
}

impl Likelihood {
    /// Of these answers, those of one slope together.
    pub(super) fn of<'t>(tallies: impl Iterator<Item = &'t Tally>) -> Self {
        let mut found = Self {
            groups: Vec::new(),
            rise: 0.0,
            start: 0.0,
        };
        for tally in tallies {
            let Tally {
                slope, difficulty, ..
            } = *tally;
            found.rise -= tally.wrong * slope;
            found.start += tally.wrong * slope * difficulty;
            let count = tally.right + tally.wrong;
            let ready = Ready {
                difficulty,
                easiness: (slope * difficulty).exp(),
                count,
                times: (1..=4).find(|&n| f64::from(n).to_bits() == count.to_bits()),
            };
            match found.groups.last_mut() {
                Some(group) if group.slope.to_bits() == slope.to_bits() => {
                    group.tallies.push(ready);
                }
                _ => found.groups.push(Group {
                    slope,
                    tallies: vec![ready],
                }),
            }
        }
        found
    }

    /// At an ability.
    pub(super) fn ln(&self, theta: f64) -> f64 {
        let groups = self.groups.iter().map(|group| group.ln(theta));
        self.start + self.rise * theta + groups.sum::<f64>()
    }
}

impl Group {
    /// Minus the sum of count × ln(1 + e^-z).
    fn ln(&self, theta: f64) -> f64 {
        let scale = (-self.slope * theta).exp();
        let (mut sum, mut product) = (0.0, 1.0);
        for tally in &self.tallies {
            let odds = scale * tally.easiness;
            match tally.times {
                Some(times) if scale > 1.0 / LARGE && odds < LARGE => {
                    let factor = 1.0 + odds;
                    for _ in 0..times {
                        if product > FULL {
                            sum -= product.ln();
                            product = 1.0;
                        }
                        product *= factor;
                    }
                }
                _ => sum += tally.count * ln_chance(self.slope * (theta - tally.difficulty)),
            }
        }
        sum - product.ln()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mastery::ability::chance;
    use proptest::prelude::*;

    fn tally() -> impl Strategy<Value = Tally> {
        let slope = prop_oneof![Just(1.0), Just(0.87), 0.2..3.0_f64];
        let weight = || prop_oneof![Just(0.0), Just(1.0), Just(3.0), Just(40.0), 0.0..2.0_f64];
        (slope, -6.0..6.0_f64, weight(), weight()).prop_map(|(slope, difficulty, right, wrong)| {
            Tally {
                slope,
                difficulty,
                right,
                wrong,
            }
        })
    }

    proptest! {
        #[test]
        fn it_is_the_sum_over_the_answers(
            tallies in proptest::collection::vec(tally(), 0..400),
            theta in prop_oneof![-8.0..8.0_f64, -400.0..400.0_f64],
        ) {
            let one = |t: &Tally| {
                let z = t.slope * (theta - t.difficulty);
                t.right * ln_chance(z) + t.wrong * ln_chance(-z)
            };
            let wanted: f64 = tallies.iter().map(one).sum();
            let found = Likelihood::of(tallies.iter()).ln(theta);
            prop_assert!((found - wanted).abs() <= 1e-11 * (1.0 + wanted.abs()), "{found} {wanted}");
        }
    }

    #[test]
    fn one_answer_has_its_own_chance() {
        let right = Tally {
            slope: 1.0,
            difficulty: 0.5,
            right: 1.0,
            wrong: 0.0,
        };
        let found = Likelihood::of([right].iter()).ln(1.25).exp();
        assert!((found - chance(0.75)).abs() < 1e-15);
    }
}
