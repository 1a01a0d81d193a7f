//! How well an ordered set-up was laid: what was taken and forgotten, and
//! whether the order between stages is right. Inside a stage any order is right.
//!
//! Score = 100 × F1 × C, where F1 = 2 tp / (|answer| + |target|) and C is the
//! share of concordant pairs among those whose stages differ; 1 if there is no
//! such pair. A pair that has to stand in a given order for safety or success
//! and does not caps the score at 60. A repeated item counts once, at its first
//! place.

/// The score that a violated must-before pair leaves at the most.
pub const CAP: f64 = 60.0;

/// A target: stages of items, and pairs that have to stand in order.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Target<T> {
    /// The stages in order; an item stands in one of them.
    pub stages: Vec<Vec<T>>,
    /// First and then.
    pub must_before: Vec<(T, T)>,
}

/// How an answer compares with its target.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison<T> {
    /// Items of the answer that belong.
    pub taken: Vec<T>,
    /// Items of the answer that do not belong.
    pub extra: Vec<T>,
    /// Items of the target that are missing.
    pub forgotten: Vec<T>,
    /// Pairs in different stages that stand in the right order.
    pub concordant: usize,
    /// Pairs in different stages that stand the wrong way round.
    pub discordant: usize,
    /// The items to move: those outside a longest run that is already in order.
    pub moved: Vec<T>,
    /// The must-before pairs that are violated.
    pub violated: Vec<(T, T)>,
    /// The score, from 0 to 100.
    pub score: f64,
}

/// Compares an answer with its target. Items in `neutral` count neither way.
pub fn compare<T: Clone + PartialEq>(
    answer: &[T],
    target: &Target<T>,
    neutral: &[T],
) -> Comparison<T> {
    let answer = first_places(answer, neutral, target);
    let rank = |item: &T| target.stages.iter().position(|s| s.contains(item));
    let (taken, extra): (Vec<T>, Vec<T>) = answer.iter().cloned().partition(|i| rank(i).is_some());
    let wanted: Vec<&T> = target.stages.iter().flatten().collect();
    let forgotten = wanted
        .iter()
        .filter(|i| !taken.contains(i))
        .map(|i| (*i).clone())
        .collect();
    let ranks: Vec<usize> = taken.iter().filter_map(rank).collect();
    let (concordant, discordant) = pairs(&ranks);
    let violated: Vec<(T, T)> = target
        .must_before
        .iter()
        .filter(|(first, then)| {
            let place = |item: &T| taken.iter().position(|i| i == item);
            matches!((place(first), place(then)), (Some(a), Some(b)) if a > b)
        })
        .cloned()
        .collect();
    let score = score(
        taken.len(),
        answer.len(),
        wanted.len(),
        (concordant, discordant),
    );
    let score = if violated.is_empty() {
        score
    } else {
        score.min(CAP)
    };
    let keep = longest_run(&ranks);
    let moved = (0..taken.len())
        .filter(|i| !keep.contains(i))
        .map(|i| taken[i].clone())
        .collect();
    Comparison {
        taken,
        extra,
        forgotten,
        concordant,
        discordant,
        moved,
        violated,
        score,
    }
}

fn first_places<T: Clone + PartialEq>(answer: &[T], neutral: &[T], target: &Target<T>) -> Vec<T> {
    let mut kept: Vec<T> = Vec::new();
    for item in answer {
        let wanted = target.stages.iter().any(|s| s.contains(item));
        if !kept.contains(item) && (wanted || !neutral.contains(item)) {
            kept.push(item.clone());
        }
    }
    kept
}

fn pairs(ranks: &[usize]) -> (usize, usize) {
    let (mut concordant, mut discordant) = (0, 0);
    for (i, a) in ranks.iter().enumerate() {
        for b in &ranks[i + 1..] {
            concordant += usize::from(a < b);
            discordant += usize::from(a > b);
        }
    }
    (concordant, discordant)
}

// Counts of items on a tray are far below the range where f64 is exact.
#[expect(clippy::cast_precision_loss)]
fn score(
    taken: usize,
    answered: usize,
    wanted: usize,
    (concordant, discordant): (usize, usize),
) -> f64 {
    let both = answered + wanted;
    let f1 = if both == 0 {
        1.0
    } else {
        2.0 * taken as f64 / both as f64
    };
    let ordered = concordant + discordant;
    let order = if ordered == 0 {
        1.0
    } else {
        concordant as f64 / ordered as f64
    };
    100.0 * f1 * order
}

/// The places of a longest run whose ranks never fall.
fn longest_run(ranks: &[usize]) -> Vec<usize> {
    // `ends[k]` is the place of the smallest rank that ends a run of k + 1.
    let mut ends: Vec<usize> = Vec::new();
    let mut before: Vec<Option<usize>> = vec![None; ranks.len()];
    for (i, rank) in ranks.iter().enumerate() {
        let k = ends.partition_point(|&e| ranks[e] <= *rank);
        before[i] = k.checked_sub(1).map(|p| ends[p]);
        if k == ends.len() {
            ends.push(i);
        } else {
            ends[k] = i;
        }
    }
    let mut run = Vec::with_capacity(ends.len());
    let mut at = ends.last().copied();
    while let Some(i) = at {
        run.push(i);
        at = before[i];
    }
    run.reverse();
    run
}
