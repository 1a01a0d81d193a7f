//! Putting a form together.

use super::{
    candidate::{Candidate, Sizes, candidates, exact, expected},
    draft::{Draft, Limits, Rank, Wanted},
    quota::{quotas, rounding},
    request::{Form, Mode, Request, Unfit},
};
use crate::{
    item::Bank,
    numeric::real,
    slices::{at_once, never},
};
use clinic::case::Seed;
use std::collections::HashSet;

/// From how many drawn starts it is searched.
const STARTS: u64 = 8;

/// Puts a form together: quotas exactly, no two of one enemy group, within the
/// time. The same bank, blueprint and request give the same form.
///
/// # Errors
/// When the bank has too few questions, or every form found breaks a hard rule.
pub fn assemble(bank: &Bank, request: &Request) -> Result<Form, Unfit> {
    at_once(assemble_in_slices(bank, request, &mut never))
}

/// The same in slices, with a pause between them: the search of a long form
/// takes longer than a page may keep a touch waiting.
///
/// # Errors
/// As [`assemble`].
pub async fn assemble_in_slices(
    bank: &Bank,
    request: &Request,
    pause: &mut impl AsyncFnMut(),
) -> Result<Form, Unfit> {
    let quotas = quotas(&bank.blueprint().weights(), request.size);
    if request.size == 0 || quotas.iter().sum::<usize>() != request.size {
        return Err(Unfit::Empty);
    }
    let (mut list, sizes) = candidates(bank, request.cut);
    pause().await;
    let pools = pools(bank, &list, &quotas)?;
    let limits = limits(&list, &quotas, request);
    let mut seed = Seed::new(request.seed);
    value(&mut list, &request.mode, &mut seed);
    let search = Search {
        list: &list,
        sizes,
        limits,
        quotas: &quotas,
    };
    let mut remarks = Vec::new();
    let kept = without_recent(&list, &pools, &quotas, &request.mode, &mut remarks);
    pause().await;
    let mut best = search.best(&kept, &mut seed, pause).await;
    if best.rank().rules < 0 && kept != pools {
        remarks = vec![REPEATS.into()];
        best = search.best(&pools, &mut seed, pause).await;
    }
    if best.has_clash() {
        return Err(Unfit::Clash);
    }
    let rank = best.rank();
    if rank.rules < 0 {
        return Err(Unfit::TooLong {
            takes: seconds(best.seconds()),
            limit: request.seconds.unwrap_or(0),
        });
    }
    Ok(finish(bank, request, &search, &best, remarks, &mut seed))
}

const REPEATS: &str = "Some questions of your last two forms come again: there are too few others.";

struct Search<'a> {
    list: &'a [Candidate],
    sizes: Sizes,
    limits: Limits,
    quotas: &'a [usize],
}

impl<'a> Search<'a> {
    /// The best of several starts; wider ones only where the narrow ones break a rule.
    async fn best(
        &self,
        pools: &[Vec<usize>],
        seed: &mut Seed,
        pause: &mut impl AsyncFnMut(),
    ) -> Draft<'a> {
        let mut best = self.start(pools, seed, 4, pause).await;
        for _ in 1..STARTS {
            let draft = self.start(pools, seed, 4, pause).await;
            if draft.rank() > best.rank() {
                best = draft;
            }
        }
        for _ in 0..STARTS {
            let Rank { rules, alike, .. } = best.rank();
            if rules == 0 && alike == 0 {
                break;
            }
            let draft = self.start(pools, seed, 1_000_000, pause).await;
            if draft.rank() > best.rank() {
                best = draft;
            }
        }
        best
    }

    /// One start: the top of each competency by value with a little noise,
    /// ignoring enemies and time, then swaps.
    async fn start(
        &self,
        pools: &[Vec<usize>],
        seed: &mut Seed,
        width: usize,
        pause: &mut impl AsyncFnMut(),
    ) -> Draft<'a> {
        let noise: Vec<i64> = self.list.iter().map(|_| below(seed, 30_000)).collect();
        let mut chosen = Vec::new();
        let mut short = Vec::with_capacity(pools.len());
        for (pool, &quota) in pools.iter().zip(self.quotas) {
            let mut order = pool.clone();
            order.sort_by_key(|&at| (-(self.list[at].value + noise[at]), at));
            chosen.extend_from_slice(&order[..quota]);
            order.truncate(width.saturating_mul(quota).saturating_add(24));
            short.push(order);
        }
        let mut draft = Draft::new(self.list, self.sizes, self.limits, chosen);
        pause().await;
        draft.improve(&short, pause).await;
        draft
    }
}

/// A whole number from 0 to below `most`.
fn below(seed: &mut Seed, most: u32) -> i64 {
    // The count is far below what an i64 holds.
    i64::try_from(seed.below(most as usize)).unwrap_or(0)
}

/// The candidates of each competency.
fn pools(bank: &Bank, list: &[Candidate], quotas: &[usize]) -> Result<Vec<Vec<usize>>, Unfit> {
    let mut pools = vec![Vec::new(); quotas.len()];
    for (at, candidate) in list.iter().enumerate() {
        pools[candidate.domain].push(at);
    }
    let shares = &bank.blueprint().0;
    for ((pool, &needs), share) in pools.iter().zip(quotas).zip(shares) {
        if pool.len() < needs {
            return Err(Unfit::TooFew {
                competency: share.name.clone(),
                has: pool.len(),
                needs,
            });
        }
    }
    Ok(pools)
}

fn without_recent(
    list: &[Candidate],
    pools: &[Vec<usize>],
    quotas: &[usize],
    mode: &Mode,
    remarks: &mut Vec<String>,
) -> Vec<Vec<usize>> {
    let Mode::Personal { recent, .. } = mode else {
        return pools.to_vec();
    };
    let recent: HashSet<usize> = recent.iter().copied().collect();
    let mut scarce = false;
    let kept = pools
        .iter()
        .zip(quotas)
        .map(|(pool, &quota)| {
            let other = |at: &usize| !recent.contains(&list[*at].place);
            let others: Vec<usize> = pool.iter().copied().filter(other).collect();
            if others.len() >= quota {
                others
            } else {
                scarce = true;
                pool.clone()
            }
        })
        .collect();
    if scarce {
        remarks.push(REPEATS.into());
    }
    kept
}

/// Gives each candidate its value: information, past showings and chance, as the
/// mode asks.
fn value(list: &mut [Candidate], mode: &Mode, seed: &mut Seed) {
    let most = list.iter().map(|c| c.information).max().unwrap_or(1);
    let shown = |showings: &[u32], place: usize| {
        i64::from(showings.get(place).copied().unwrap_or(0).min(1_000_000)) * 1_000_000
    };
    for c in list {
        let sharp = 500_000 * c.information / most;
        c.value = match mode {
            Mode::Shared => below(seed, 250_000),
            Mode::Personal { showings, .. } => below(seed, 250_000) - shown(showings, c.place),
            Mode::Sharpest => sharp,
            Mode::Freshest { showings } => sharp - shown(showings, c.place),
        };
    }
}

fn limits(list: &[Candidate], quotas: &[usize], request: &Request) -> Limits {
    let alike = matches!(request.mode, Mode::Shared | Mode::Personal { .. });
    let (difficulty, information) = expected(list, quotas);
    let size = i64::try_from(request.size).unwrap_or(i64::MAX / 1000);
    Limits {
        seconds: request.seconds.map_or(i64::MAX / 4, i64::from),
        spread: alike,
        wanted: alike.then_some(Wanted {
            difficulty,
            // Half of the 0.10 logits that may lie between two forms ...
            difficulty_off: 50 * size,
            information,
            // ... and less than half of the 5 %.
            information_off: information * 24 / 1000,
        }),
    }
}

fn seconds(value: i64) -> u32 {
    u32::try_from(value).unwrap_or(u32::MAX)
}

fn finish(
    bank: &Bank,
    request: &Request,
    search: &Search<'_>,
    best: &Draft<'_>,
    mut remarks: Vec<String>,
    seed: &mut Seed,
) -> Form {
    let chosen = || best.chosen.iter().map(|&at| &search.list[at]);
    let mut places: Vec<usize> = chosen().map(|c| c.place).collect();
    seed.shuffle(&mut places);
    let alike = search.limits.wanted.is_some() && best.rank().alike == 0;
    if search.limits.wanted.is_some() && !alike {
        remarks.push(
            "This form may be somewhat harder or easier than another: there are too few questions \
             to even that out."
                .into(),
        );
    }
    Form {
        places,
        quotas: search.quotas.to_vec(),
        rounding: rounding(bank.blueprint(), request.size),
        seconds: seconds(best.seconds()),
        difficulty: exact(chosen().map(|c| c.difficulty).sum()) / 1000.0 / real(request.size),
        information: exact(chosen().map(|c| c.information).sum()) / 1e6,
        alike,
        remarks,
    }
}
