//! Scores on a form, given ability.

use super::ability::chance;

/// The probability of each score from 0 to all, for questions with these chances
/// of a right answer (the recursion of Lord and Wingersky 1984).
pub fn scores(chances: &[f64]) -> Vec<f64> {
    let mut scores = vec![1.0];
    for &p in chances {
        scores.push(0.0);
        for score in (1..scores.len()).rev() {
            scores[score] = scores[score] * (1.0 - p) + scores[score - 1] * p;
        }
        scores[0] *= 1.0 - p;
    }
    scores
}

/// The probability of at least `need` right, at an ability, on a form given by
/// slope and difficulty of each question.
pub fn pass_chance(theta: f64, form: &[(f64, f64)], need: usize) -> f64 {
    // The recursion of `scores` over wrong answers, as far as they may go: a form
    // that is passed leaves fewer of them than of right ones.
    let Some(most) = form.len().checked_sub(need) else {
        return 0.0;
    };
    let mut wrong = vec![0.0; most + 1];
    wrong[0] = 1.0;
    for &(a, b) in form {
        let p = chance(a * (theta - b));
        let mut fewer = 0.0;
        for share in &mut wrong {
            let here = *share;
            *share = here * p + fewer * (1.0 - p);
            fewer = here;
        }
    }
    wrong.iter().sum()
}

/// The information that a form gives at an ability.
pub fn information(theta: f64, form: &[(f64, f64)]) -> f64 {
    form.iter()
        .map(|&(a, b)| {
            let p = chance(a * (theta - b));
            a * a * p * (1.0 - p)
        })
        .sum()
}
