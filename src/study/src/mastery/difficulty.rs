//! How hard questions are while few answers have been counted, and what a class
//! report adds.

use crate::{item::Difficulty, numeric::real};

/// The slope of a question whose difficulty is uncertain: the flatter, the less
/// surely it is known; 1 where it is known exactly.
pub fn slope(difficulty: Difficulty) -> f64 {
    1.0 / (1.0 + std::f64::consts::PI * difficulty.sd * difficulty.sd / 8.0).sqrt()
}

/// The difficulty after `right` of `of` students of a class were right: the mean
/// of what was thought and what was seen, each weighed by how surely it is known.
pub fn recalibrated(before: Difficulty, right: usize, of: usize) -> Difficulty {
    if of == 0 {
        return before;
    }
    let p = (real(right) + 1.0) / (real(of) + 2.0);
    // 1.16 undoes the flattening by a class that itself varies.
    let seen = -1.16 * (p / (1.0 - p)).ln();
    let variance = 1.35 / (real(of) * p * (1.0 - p));
    let (old, new) = (1.0 / (before.sd * before.sd), 1.0 / variance);
    Difficulty {
        mean: (before.mean * old + seen * new) / (old + new),
        sd: (1.0 / (old + new)).sqrt(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::Level;

    #[test]
    fn an_uncertain_difficulty_flattens_the_slope() {
        assert!((slope(Level::Core.difficulty()) - 0.916).abs() < 5e-4);
        let exact = Difficulty { mean: 0.0, sd: 0.0 };
        assert!((slope(exact) - 1.0).abs() < 1e-15);
    }

    #[test]
    fn a_class_moves_the_difficulty_and_makes_it_surer() {
        let before = Level::Core.difficulty();
        assert_eq!(recalibrated(before, 0, 0), before);
        let hard = recalibrated(before, 5, 40);
        let easy = recalibrated(before, 38, 40);
        assert!(hard.mean > 0.5 && easy.mean < -0.5, "{hard:?} {easy:?}");
        assert!(hard.sd < before.sd && easy.sd < before.sd);
    }
}
