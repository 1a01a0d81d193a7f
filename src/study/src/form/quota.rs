//! How many questions each competency gets.

use crate::{
    item::Blueprint,
    numeric::{real, whole},
};

/// So many of `size` for each weight, by the largest remainder (Hamilton); ties
/// go to the earlier one. All are 0 where no weight is above 0.
pub fn quotas(weights: &[f64], size: usize) -> Vec<usize> {
    let positive = |w: f64| if w > 0.0 { w } else { 0.0 };
    let sum: f64 = weights.iter().map(|&w| positive(w)).sum();
    if !(sum > 0.0 && sum.is_finite()) {
        return vec![0; weights.len()];
    }
    let shares: Vec<f64> = weights
        .iter()
        .map(|&w| positive(w) / sum * real(size))
        .collect();
    // A share that is whole but for rounding counts as whole.
    let mut quotas: Vec<usize> = shares
        .iter()
        .map(|share| whole((share + 1e-9).floor()) as usize)
        .collect();
    let remainder = |at: usize| ((shares[at] - real(quotas[at])) * 1e9).round();
    let mut order: Vec<usize> = (0..weights.len()).collect();
    order.sort_by(|&x, &y| remainder(y).total_cmp(&remainder(x)).then(x.cmp(&y)));
    let left = size.saturating_sub(quotas.iter().sum());
    for at in order.into_iter().take(left) {
        quotas[at] += 1;
    }
    quotas
}

/// How the weights were rounded to whole questions, in a sentence.
pub fn rounding(blueprint: &Blueprint, size: usize) -> String {
    let sum: f64 = blueprint.0.iter().map(|share| share.weight).sum();
    let parts: Vec<String> = blueprint
        .0
        .iter()
        .zip(quotas(&blueprint.weights(), size))
        .map(|(share, quota)| {
            let exact = share.weight / sum * real(size);
            format!("{} {quota} (exactly {exact:.2})", share.name)
        })
        .collect();
    format!(
        "Of {size} questions: {}. Whole questions go by the largest remainder.",
        parts.join(", ")
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn odd_weights_are_borne() {
        let rows: [(&[f64], usize, &[usize]); 5] = [
            (&[], 10, &[]),
            (&[0.0, 0.0], 10, &[0, 0]),
            (&[1.0, -1.0], 3, &[3, 0]),
            (&[1.0, 1.0], 0, &[0, 0]),
            (&[f64::NAN, 1.0], 4, &[0, 4]),
        ];
        for (weights, size, wanted) in rows {
            assert_eq!(quotas(weights, size), wanted, "{weights:?} {size}");
        }
    }
}
