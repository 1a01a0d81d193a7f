//! What is due, in the order in which it is asked: lowest recall first, within
//! the weights of the blueprint.

use super::{
    fold::Memory,
    schedule::{Reason, Schedule, seconds},
};
use crate::{day::Day, item::Bank};

/// A question that is due.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Due {
    /// Its place in the bank.
    pub place: usize,
    /// The chance that it would be recalled now.
    pub recall: f64,
    /// The day on which it fell due; not after today.
    pub day: Day,
    /// Why it is asked again.
    pub reason: Reason,
    /// How long it should take this student, in seconds.
    pub seconds: u32,
}

/// All that is due on a day.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Queue {
    /// What is due, in the order in which it is asked.
    pub due: Vec<Due>,
}

impl Queue {
    /// What is due on `today`. A question whose last answer is dated after
    /// today is due at once, so that no clock can hide it.
    pub fn of(bank: &Bank, memory: &Memory, schedule: &Schedule, today: Day) -> Self {
        let pace = memory.pace().mean();
        let due = memory.known().filter_map(|(place, trace)| {
            let item = bank.items().get(place)?;
            let (day, reason) = if trace.last > today {
                (today, Reason::DatedAhead)
            } else {
                schedule.due(bank.hash(place), trace)
            };
            (day <= today).then(|| Due {
                place,
                recall: schedule.recall(trace, today),
                day,
                reason,
                seconds: seconds(item.seconds, pace),
            })
        });
        let mut due: Vec<Due> = due.collect();
        due.sort_by(|a, b| a.recall.total_cmp(&b.recall).then(a.place.cmp(&b.place)));
        // What presses comes first; what only the examination's nearness asks for, after.
        let (pressing, waiting): (Vec<Due>, Vec<Due>) =
            due.into_iter().partition(|due| due.reason.presses());
        let weights = bank.blueprint().weights();
        let competency = |due: &Due| bank.competency(due.place);
        let mut due = by_weight(pressing, &weights, competency);
        due.extend(by_weight(waiting, &weights, competency));
        Self { due }
    }

    /// How long all that presses would take, in seconds.
    pub fn pressing_seconds(&self) -> u32 {
        self.due
            .iter()
            .filter(|due| due.reason.presses())
            .fold(0, |sum, due| sum.saturating_add(due.seconds))
    }

    /// What is due on `today` and the schedule it goes by: the usual one, or the
    /// eased one where more presses than fits into `budget` seconds.
    pub fn within(
        bank: &Bank,
        memory: &Memory,
        schedule: &Schedule,
        today: Day,
        budget: u32,
    ) -> (Self, Schedule) {
        let usual = Self::of(bank, memory, schedule, today);
        if usual.overflows(budget) && schedule.retention() > Schedule::EASED {
            let eased = schedule.eased();
            (Self::of(bank, memory, &eased, today), eased)
        } else {
            (usual, *schedule)
        }
    }

    /// Whether more presses than fits into `budget` seconds.
    pub fn overflows(&self, budget: u32) -> bool {
        self.pressing_seconds() > budget
    }
}

/// Puts what is already in order within each competency into one order in which
/// every competency comes up in proportion to its weight, as early as it can.
/// Nothing is added or dropped.
pub fn by_weight<T>(list: Vec<T>, weights: &[f64], competency: impl Fn(&T) -> usize) -> Vec<T> {
    let mut lanes: Vec<std::collections::VecDeque<T>> = weights
        .iter()
        .map(|_| std::collections::VecDeque::new())
        .collect();
    let total = list.len();
    let mut rest = Vec::new();
    for thing in list {
        match lanes.get_mut(competency(&thing)) {
            Some(lane) => lane.push_back(thing),
            None => rest.push(thing),
        }
    }
    let mut ordered = Vec::with_capacity(total);
    let mut credit = vec![0.0; weights.len()];
    loop {
        // Smooth weighted turns: each competency that still has something earns
        // its weight, the richest goes and pays the sum of what was earned.
        let mut earned = 0.0;
        let mut richest: Option<usize> = None;
        for (lane, queue) in lanes.iter().enumerate() {
            if queue.is_empty() {
                continue;
            }
            // A competency without weight still has its turn, last of all.
            let weight = weights[lane].max(1e-6);
            earned += weight;
            credit[lane] += weight;
            if richest.is_none_or(|best| credit[lane] > credit[best]) {
                richest = Some(lane);
            }
        }
        let Some(lane) = richest else { break };
        credit[lane] -= earned;
        ordered.extend(lanes[lane].pop_front());
    }
    ordered.extend(rest);
    ordered
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn competencies_come_up_in_proportion_to_their_weight() {
        let list: Vec<(usize, u32)> = (0..3)
            .flat_map(|lane| (0..20).map(move |n| (lane, n)))
            .collect();
        let ordered = by_weight(list, &[50.0, 30.0, 20.0], |&(lane, _)| lane);
        let of = |lane: usize| ordered[..20].iter().filter(|t| t.0 == lane).count();
        assert_eq!((of(0), of(1), of(2)), (10, 6, 4));
        assert_eq!(ordered.len(), 60);
        for lane in 0..3 {
            let inner: Vec<u32> = ordered
                .iter()
                .filter(|t| t.0 == lane)
                .map(|t| t.1)
                .collect();
            assert!(inner.is_sorted(), "lowest recall first within a competency");
        }
    }
}
