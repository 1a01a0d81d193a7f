//! Ability from right and wrong answers to questions of known difficulty.
//!
//! P(right) = 1 / (1 + e^-(a(theta - b))); with a = 1 the Rasch model. The mean of
//! the posterior (EAP) is what screens show, because it is finite for every record.

use super::likelihood::Likelihood;
use std::collections::BTreeMap;

/// A normal distribution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Normal {
    /// Its mean.
    pub mean: f64,
    /// Its standard deviation; positive.
    pub sd: f64,
}

impl Normal {
    /// Mean 0, standard deviation 1.
    pub const STANDARD: Self = Self { mean: 0.0, sd: 1.0 };
}

/// The logistic function.
pub(super) fn chance(z: f64) -> f64 {
    1.0 / (1.0 + (-z).exp())
}

/// The logarithm of the logistic function, without overflow.
pub(super) fn ln_chance(z: f64) -> f64 {
    if z > 0.0 {
        -(-z).exp().ln_1p()
    } else {
        z - z.exp().ln_1p()
    }
}

/// Answers counted by slope and difficulty: right and wrong, each weighed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Responses(BTreeMap<(u64, u64), Tally>);

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Tally {
    pub(super) slope: f64,
    pub(super) difficulty: f64,
    pub(super) right: f64,
    pub(super) wrong: f64,
}

/// An estimate by one point, with its standard error.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// The ability.
    pub theta: f64,
    /// Its standard error.
    pub error: f64,
}

impl Responses {
    /// Adds an answer; a `weight` of 1 counts it once.
    pub fn add(&mut self, slope: f64, difficulty: f64, right: bool, weight: f64) {
        let key = (slope.to_bits(), difficulty.to_bits());
        let tally = self.0.entry(key).or_insert(Tally {
            slope,
            difficulty,
            right: 0.0,
            wrong: 0.0,
        });
        if right {
            tally.right += weight;
        } else {
            tally.wrong += weight;
        }
    }

    /// Adds all of another's.
    pub fn extend(&mut self, other: &Self) {
        for (key, tally) in &other.0 {
            let mine = self.0.entry(*key).or_insert(Tally {
                right: 0.0,
                wrong: 0.0,
                ..*tally
            });
            mine.right += tally.right;
            mine.wrong += tally.wrong;
        }
    }

    fn tallies(&self) -> impl Iterator<Item = &Tally> {
        self.0.values()
    }

    /// Slope and information of the log-likelihood at an ability, and Warm's J.
    fn derivatives(&self, theta: f64) -> (f64, f64, f64) {
        self.tallies().fold((0.0, 0.0, 0.0), |(slope, info, j), t| {
            let p = chance(t.slope * (theta - t.difficulty));
            let (count, pq) = (t.right + t.wrong, p * (1.0 - p));
            (
                slope + t.slope * (t.right - count * p),
                info + t.slope.powi(2) * count * pq,
                j + t.slope.powi(3) * count * pq * (1.0 - 2.0 * p),
            )
        })
    }

    /// The posterior of ability under a normal prior.
    pub fn posterior(&self, prior: Normal) -> Posterior {
        // 161 nodes over 16 logits hold EAP and SD to 2e-10. Where the posterior is
        // so narrow that it falls between nodes, or so far out that it runs off
        // the end, the grid is drawn anew around it.
        let mut centre = prior.mean.clamp(-4.0, 4.0);
        let mut posterior = self.on_grid(prior, centre, 8.0);
        for _ in 0..4 {
            let inside =
                (posterior.mean - centre).abs() + 6.0 * posterior.sd <= 80.0 * posterior.step;
            if inside && posterior.sd >= 1.5 * posterior.step {
                break;
            }
            centre = posterior.mean;
            let half = (10.0 * posterior.sd).max(8.0 * posterior.step);
            posterior = self.on_grid(prior, centre, half);
        }
        posterior
    }

    fn on_grid(&self, prior: Normal, centre: f64, half: f64) -> Posterior {
        let (low, step) = (centre - half, half / 80.0);
        let mass = self.masses(prior, low, step, 161);
        let node = |k: usize| low + step * crate::numeric::real(k);
        let mean: f64 = mass.iter().enumerate().map(|(k, p)| node(k) * p).sum();
        let variance: f64 = mass
            .iter()
            .enumerate()
            .map(|(k, p)| (node(k) - mean).powi(2) * p)
            .sum();
        Posterior {
            mean,
            sd: variance.sqrt(),
            low,
            step,
            mass,
        }
    }

    /// The posterior at equally spaced nodes, adding up to 1; worked in logarithms.
    fn masses(&self, prior: Normal, low: f64, step: f64, nodes: usize) -> Vec<f64> {
        let likelihood = Likelihood::of(self.tallies());
        let ln: Vec<f64> = (0..nodes)
            .map(|k| {
                let theta = low + step * crate::numeric::real(k);
                likelihood.ln(theta) - 0.5 * ((theta - prior.mean) / prior.sd).powi(2)
            })
            .collect();
        let most = ln.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let raw: Vec<f64> = ln.iter().map(|l| (l - most).exp()).collect();
        let sum: f64 = raw.iter().sum();
        raw.iter().map(|r| r / sum).collect()
    }

    /// The probability that ability is at or above `cut`. The cut is put on a
    /// node, which is given half its weight and a correction by the slope there.
    pub fn at_least(&self, prior: Normal, cut: f64) -> f64 {
        let posterior = self.posterior(prior);
        let half = (posterior.step * 80.0).max((cut - posterior.mean).abs().min(16.0));
        let step = half / 160.0;
        // Nodes on either side of the cut, over the whole of the posterior.
        let reach = |end: f64| crate::numeric::whole((end / step).max(2.0)) as usize;
        let below = reach(cut - (posterior.mean - half));
        let above = reach(posterior.mean + half - cut);
        let mass = self.masses(
            prior,
            cut - step * crate::numeric::real(below),
            step,
            below + above + 1,
        );
        let over: f64 = mass[below + 1..].iter().sum();
        let bend = (mass[below + 1] - mass[below - 1]) / 24.0;
        (mass[below] / 2.0 + over + bend).clamp(0.0, 1.0)
    }

    /// The ability that is likeliest under the prior (MAP).
    pub fn likeliest(&self, prior: Normal) -> Point {
        let precision = prior.sd.powi(-2);
        let theta = root(|theta| self.derivatives(theta).0 - (theta - prior.mean) * precision);
        Point {
            theta,
            error: 1.0 / (self.derivatives(theta).1 + precision).sqrt(),
        }
    }

    /// The ability under which the answers are likeliest (ML); nothing where all
    /// are right or all wrong, or there are none.
    pub fn maximum_likelihood(&self) -> Option<Point> {
        let right: f64 = self.tallies().map(|t| t.right).sum();
        let wrong: f64 = self.tallies().map(|t| t.wrong).sum();
        if right <= 0.0 || wrong <= 0.0 {
            return None;
        }
        let theta = root(|theta| self.derivatives(theta).0);
        Some(Point {
            theta,
            error: 1.0 / self.derivatives(theta).1.sqrt(),
        })
    }

    /// Warm's weighted likelihood estimate (1989); nothing without answers.
    pub fn weighted_likelihood(&self) -> Option<Point> {
        if self.0.is_empty() {
            return None;
        }
        let theta = root(|theta| {
            let (slope, info, j) = self.derivatives(theta);
            slope + j / (2.0 * info)
        });
        Some(Point {
            theta,
            error: 1.0 / self.derivatives(theta).1.sqrt(),
        })
    }
}

/// Where a falling function is zero between -40 and 40, by halving.
fn root(falling: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (-40.0, 40.0);
    for _ in 0..70 {
        let middle = f64::midpoint(low, high);
        if falling(middle) > 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    f64::midpoint(low, high)
}

/// What is known of an ability.
#[derive(Clone, Debug, PartialEq)]
pub struct Posterior {
    /// Its mean (EAP).
    pub mean: f64,
    /// Its standard deviation.
    pub sd: f64,
    low: f64,
    step: f64,
    mass: Vec<f64>,
}

impl Posterior {
    /// The nodes with their probabilities, which add up to 1.
    pub fn nodes(&self) -> impl Iterator<Item = (f64, f64)> {
        let at = |k: usize| self.low + self.step * crate::numeric::real(k);
        self.mass.iter().enumerate().map(move |(k, p)| (at(k), *p))
    }

    /// The ability that is stayed below with probability `p`.
    pub fn quantile(&self, p: f64) -> f64 {
        let (mut before, mut sum) = (0.0, 0.0);
        for (theta, mass) in self.nodes() {
            // A node's own mass lies half on either side of it.
            let here = sum + mass / 2.0;
            if here >= p && here > before {
                return theta - self.step * (here - p) / (here - before);
            }
            before = here;
            sum += mass;
        }
        self.low + self.step * crate::numeric::real(self.mass.len())
    }
}
