//! The end of a sitting: what was learnt and what is next.

use super::compose::Length;
use crate::{
    answer::Answer,
    day::Day,
    item::Bank,
    memory::{Grade, Memory, Queue, Schedule},
};
use std::collections::BTreeMap;

/// When something comes back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Then {
    /// The question, by place in the bank.
    pub place: usize,
    /// How it went at the last answer.
    pub grade: Grade,
    /// The day on which it is asked again; never before tomorrow.
    pub day: Day,
}

/// The end of a sitting.
#[derive(Clone, Debug, PartialEq)]
pub struct Summary {
    /// Recalled, or new and right, in this sitting.
    pub learnt: Vec<Then>,
    /// Missed or recalled with strain at the last answer.
    pub shaky: Vec<Then>,
    /// How many answers were given, repeats included.
    pub answers: usize,
    /// How many seconds they took.
    pub seconds: u32,
    /// The number of right and of all questions by competency, with its name.
    pub by_competency: Vec<(String, usize, usize)>,
    /// How many reviews are still due today.
    pub due_today: usize,
    /// How many fall due tomorrow.
    pub due_tomorrow: usize,
    /// What was learnt and what is next, in sentences.
    pub words: Vec<String>,
}

impl Summary {
    /// The end of a sitting on `today` with these answers; `memory` has taken them in.
    pub fn of(
        bank: &Bank,
        memory: &Memory,
        schedule: &Schedule,
        sitting: &[Answer],
        today: Day,
    ) -> Self {
        let mut last: BTreeMap<usize, bool> = BTreeMap::new();
        for answer in sitting {
            if let Some(place) = bank.place(&answer.question) {
                last.insert(place, answer.right);
            }
        }
        let then: Vec<Then> = last
            .keys()
            .filter_map(|&place| {
                let trace = memory.trace(place)?;
                let (day, _) = schedule.due(bank.hash(place), trace);
                Some(Then {
                    place,
                    grade: trace.grade,
                    day: day.max(today.plus(1)),
                })
            })
            .collect();
        let (learnt, shaky): (Vec<Then>, Vec<Then>) = then
            .into_iter()
            .partition(|then| then.grade >= Grade::Recalled);
        let due = |day: Day| Queue::of(bank, memory, schedule, day).due.len();
        let due_today = due(today);
        let due_tomorrow = due(today.plus(1)).saturating_sub(due_today);
        let words = words(today, &learnt, &shaky, due_today, due_tomorrow);
        Self {
            by_competency: by_competency(bank, &last),
            learnt,
            shaky,
            answers: sitting.len(),
            seconds: sitting
                .iter()
                .fold(0, |sum, a| sum.saturating_add(a.seconds)),
            due_today,
            due_tomorrow,
            words,
        }
    }
}

fn by_competency(bank: &Bank, last: &BTreeMap<usize, bool>) -> Vec<(String, usize, usize)> {
    let count = |at: usize| {
        last.iter()
            .filter(|&(&place, _)| bank.competency(place) == at)
            .fold((0, 0), |(right, all), (_, &was)| {
                (right + usize::from(was), all + 1)
            })
    };
    bank.blueprint()
        .0
        .iter()
        .enumerate()
        .map(|(at, share)| (share.name.clone(), count(at)))
        .filter(|(_, (_, all))| *all > 0)
        .map(|(name, (right, all))| (name, right, all))
        .collect()
}

fn words(day: Day, learnt: &[Then], shaky: &[Then], today: usize, tomorrow: usize) -> Vec<String> {
    let mut words = vec![match (learnt.len(), shaky.len()) {
        (0, 0) => "Nothing was answered in this sitting.".to_string(),
        (n, 0) => format!("You knew all {n} of the questions asked."),
        (0, n) => format!("{n} asked, and none is firm yet; they come back soon."),
        (n, m) => format!("{n} known; {m} not firm yet, and those come back sooner."),
    }];
    if let Some(next) = shaky.iter().chain(learnt).map(|then| then.day).min() {
        let back = shaky
            .iter()
            .chain(learnt)
            .filter(|then| then.day == next)
            .count();
        words.push(match next.since(day) {
            0 | 1 => format!("Tomorrow {back} of them come back."),
            days => format!("The first of them come back in {days} days: {back}."),
        });
    }
    words.push(match (today, tomorrow) {
        (0, 0) => "Nothing more is due today, and nothing tomorrow.".into(),
        (0, n) => format!("Nothing more is due today. Tomorrow: {n}."),
        (n, _) => format!(
            "Still due today: {n}. {} minutes would be a good next sitting.",
            if n > 12 { Length::Ten } else { Length::Five }.minutes()
        ),
    });
    words
}
