//! Whether two forms are parallel.

use super::request::Form;

/// Two forms side by side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parallel {
    /// Whether both take the same number from each competency.
    pub quotas: bool,
    /// Mean difficulty of the second less that of the first, in logits; at most
    /// 0.10 either way.
    pub difficulty: f64,
    /// Information of the second at the cut as a multiple of the first's; within 5 %.
    pub information: f64,
}

impl Parallel {
    /// Whether they are parallel.
    pub fn holds(self) -> bool {
        self.quotas
            && self.difficulty.abs() <= 0.10 + 1e-12
            && (self.information - 1.0).abs() <= 0.05
    }
}

/// Two forms side by side.
pub fn compare(first: &Form, second: &Form) -> Parallel {
    Parallel {
        quotas: first.quotas == second.quotas,
        difficulty: second.difficulty - first.difficulty,
        information: second.information / first.information,
    }
}
