//! Gauss-Legendre integration.

use std::sync::OnceLock;

/// The nodes of one panel.
const NODES: usize = 64;

/// How many panels an interval is cut into, so that a narrow hump is met too.
const PANELS: u32 = 4;

/// The integral of a function over an interval.
pub fn integral(f: impl Fn(f64) -> f64, low: f64, high: f64) -> f64 {
    if low >= high {
        return 0.0;
    }
    let width = (high - low) / f64::from(PANELS);
    let panel = |number: u32| {
        let middle = low + (f64::from(number) + 0.5) * width;
        let half = width / 2.0;
        let sum: f64 = nodes().iter().map(|(x, w)| w * f(middle + half * x)).sum();
        sum * half
    };
    (0..PANELS).map(panel).sum()
}

/// The nodes on -1 to 1 with their weights, by Newton's method on the Legendre polynomial.
fn nodes() -> &'static [(f64, f64)] {
    static ALL: OnceLock<Vec<(f64, f64)>> = OnceLock::new();
    ALL.get_or_init(|| (0..NODES).map(node).collect())
}

// Node numbers are small.
#[expect(clippy::cast_precision_loss)]
fn node(number: usize) -> (f64, f64) {
    let n = NODES as f64;
    let mut x = (core::f64::consts::PI * (number as f64 + 0.75) / (n + 0.5)).cos();
    let mut slope = 1.0;
    for _ in 0..20 {
        let (mut value, mut before) = (1.0, 0.0);
        for k in 0..NODES {
            let k = k as f64;
            let next = ((2.0 * k + 1.0) * x * value - k * before) / (k + 1.0);
            (before, value) = (value, next);
        }
        slope = n * (x * value - before) / (x * x - 1.0);
        let step = value / slope;
        x -= step;
        if step.abs() < 1e-16 {
            break;
        }
    }
    (x, 2.0 / ((1.0 - x * x) * slope * slope))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn known_integrals_come_out() {
        let close = |own: f64, exact: f64| assert!((own - exact).abs() < 1e-13, "{own} {exact}");
        close(integral(|_| 1.0, 0.0, 1.0), 1.0);
        close(integral(f64::exp, 0.0, 1.0), core::f64::consts::E - 1.0);
        close(integral(f64::sin, 0.0, core::f64::consts::PI), 2.0);
        close(integral(|x| x.powi(60), -1.0, 1.0), 2.0 / 61.0);
    }
}
