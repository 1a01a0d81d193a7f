//! Questions as the search sees them: whole numbers only.

use crate::{
    item::{Bank, Item},
    mastery::slope,
    numeric::real,
};
use std::collections::HashMap;

/// A question that may go into a form.
#[derive(Clone, Debug)]
pub(super) struct Candidate {
    /// Its place in the bank.
    pub place: usize,
    /// The place of its competency in the blueprint.
    pub domain: usize,
    /// Information at the cut, in millionths.
    pub information: i64,
    /// Difficulty, in thousandths of a logit.
    pub difficulty: i64,
    /// Seconds.
    pub seconds: i64,
    /// The numbers of its enemy groups.
    pub enemies: Vec<usize>,
    /// The number of its family within its competency.
    pub family: usize,
    /// The number of its difficulty within its competency.
    pub level: usize,
    /// What it is worth, in millionths.
    pub value: i64,
}

/// How many different groups, families and levels there are.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Sizes {
    pub enemies: usize,
    pub families: usize,
    pub levels: usize,
}

/// All questions of a bank in the order of their ids, so that the order in which
/// a bank was read does not matter; their value is still 0.
pub(super) fn candidates(bank: &Bank, cut: f64) -> (Vec<Candidate>, Sizes) {
    let mut order: Vec<usize> = (0..bank.items().len()).collect();
    order.sort_by(|&x, &y| bank.items()[x].id.cmp(&bank.items()[y].id));
    let mut enemies = HashMap::new();
    let mut families = HashMap::new();
    let mut levels = HashMap::new();
    let list = order
        .into_iter()
        .map(|place| {
            let item = &bank.items()[place];
            let domain = bank.competency(place);
            let difficulty = thousandths(item);
            Candidate {
                place,
                domain,
                information: information(item, cut),
                difficulty,
                seconds: i64::from(item.seconds),
                enemies: groups(item, &mut enemies),
                family: number(&mut families, (domain, item.family.as_str())),
                level: number(&mut levels, (domain, difficulty)),
                value: 0,
            }
        })
        .collect();
    let sizes = Sizes {
        enemies: enemies.len(),
        families: families.len(),
        levels: levels.len(),
    };
    (list, sizes)
}

fn groups<'a>(item: &'a Item, known: &mut HashMap<&'a str, usize>) -> Vec<usize> {
    let mut groups: Vec<usize> = item
        .enemies
        .iter()
        .map(|e| number(known, e.as_str()))
        .collect();
    groups.sort_unstable();
    groups.dedup();
    groups
}

/// The number of a name, given in order of first sight.
fn number<K: std::hash::Hash + Eq>(known: &mut HashMap<K, usize>, name: K) -> usize {
    let next = known.len();
    *known.entry(name).or_insert(next)
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "information is below 1 and difficulty a few logits; a cast from f64 saturates"
)]
fn whole(value: f64) -> i64 {
    value.round_ties_even() as i64
}

fn thousandths(item: &Item) -> i64 {
    whole(item.difficulty.mean * 1000.0)
}

/// Information at the cut in millionths, at least 1.
fn information(item: &Item, cut: f64) -> i64 {
    let a = slope(item.difficulty);
    let p = 1.0 / (1.0 + (-a * (cut - item.difficulty.mean)).exp());
    whole(a * a * p * (1.0 - p) * 1e6).max(1)
}

/// What the expected form of a blueprint adds up to: difficulty in thousandths
/// and information in millionths, for these quotas from these pools.
pub(super) fn expected(list: &[Candidate], quotas: &[usize]) -> (i64, i64) {
    let mut sums = vec![(0_i64, 0_i64, 0_usize); quotas.len()];
    for candidate in list {
        let (difficulty, information, count) = &mut sums[candidate.domain];
        *difficulty += candidate.difficulty;
        *information += candidate.information;
        *count += 1;
    }
    let mut target = (0.0, 0.0);
    for (&(difficulty, information, count), &quota) in sums.iter().zip(quotas) {
        if count > 0 {
            // Sums and ratios of whole numbers round alike on every device.
            let part = real(quota) / real(count);
            target.0 += exact(difficulty) * part;
            target.1 += exact(information) * part;
        }
    }
    (whole(target.0), whole(target.1))
}

#[expect(
    clippy::cast_precision_loss,
    reason = "sums of a bank stay far below 2^53"
)]
pub(super) fn exact(value: i64) -> f64 {
    value as f64
}
