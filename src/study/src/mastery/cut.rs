//! Where a form is passed: an instructor's judges (modified Angoff), or else the
//! programme's stated per cent, labelled as such.

use crate::numeric::real;

/// A cut from judges.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Angoff {
    /// The score at which the form is passed.
    pub cut: f64,
    /// Its standard error; nothing with fewer than five judges.
    pub error: Option<f64>,
}

/// The cut from what each judge holds for each question: the probability that a
/// student who is just good enough answers it. A judge is a row; nothing without
/// judges, or where rows differ in length.
pub fn angoff(judges: &[Vec<f64>]) -> Option<Angoff> {
    let items = judges.first()?.len();
    if judges.iter().any(|judge| judge.len() != items) {
        return None;
    }
    let sums: Vec<f64> = judges.iter().map(|judge| judge.iter().sum()).collect();
    let count = real(sums.len());
    let cut = sums.iter().sum::<f64>() / count;
    let error = (sums.len() >= 5).then(|| {
        let square: f64 = sums.iter().map(|sum| (sum - cut).powi(2)).sum();
        (square / (count - 1.0)).sqrt() / count.sqrt()
    });
    Some(Angoff { cut, error })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cut_is_the_mean_of_the_judges_sums() {
        assert_eq!(angoff(&[]), None);
        assert_eq!(angoff(&[vec![0.5], vec![]]), None);
        let four = vec![vec![0.5, 0.7]; 4];
        assert_eq!(angoff(&four).unwrap().error, None);
        let five: Vec<Vec<f64>> = (1..=5).map(|n| vec![f64::from(n) / 10.0, 0.5]).collect();
        let found = angoff(&five).unwrap();
        assert!((found.cut - 0.8).abs() < 1e-12);
        // Sums .6 to 1.0 in steps of .1: sd 0.158114, over the root of five.
        assert!((found.error.unwrap() - 0.070_710_678_118_654_76).abs() < 1e-12);
    }
}
