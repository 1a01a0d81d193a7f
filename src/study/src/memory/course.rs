//! The questions of a bank on their way through the coming days, played forward
//! with the same rules as Today.

use super::{
    fold::{Memory, Trace},
    grade::Grade,
    outlook::DayLoad,
    schedule::{Reason, Schedule, seconds},
};
use crate::{day::Day, item::Bank, numeric::whole};
use std::{cmp::Ordering, collections::BinaryHeap};

/// How it stands with every question after the days played so far.
#[derive(Clone)]
pub(super) struct Course<'a> {
    bank: &'a Bank,
    schedule: &'a Schedule,
    pace: f64,
    traces: Vec<Option<Trace>>,
    /// When each question that was begun falls due. It changes with a review
    /// alone, so it is not worked out again for every day.
    due: Vec<(Day, Reason)>,
    /// No question takes fewer seconds.
    least: u32,
}

/// A question that is due on a day.
#[derive(Clone, Copy)]
struct Waiting {
    /// Whether it may wait.
    waits: bool,
    /// Days since its last review by its stability: the more, the lower its recall.
    faded: f64,
    place: usize,
}

impl Ord for Waiting {
    /// What is asked first is the greatest: what presses, by lowest recall.
    fn cmp(&self, other: &Self) -> Ordering {
        let pressing = other.waits.cmp(&self.waits);
        let recall = || self.faded.total_cmp(&other.faded);
        pressing
            .then_with(recall)
            .then_with(|| other.place.cmp(&self.place))
    }
}

impl PartialOrd for Waiting {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Waiting {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other).is_eq()
    }
}

impl Eq for Waiting {}

impl<'a> Course<'a> {
    /// As it stands on `today`, before anything is done.
    pub(super) fn new(bank: &'a Bank, memory: &Memory, schedule: &'a Schedule, today: Day) -> Self {
        let mut course = Self {
            bank,
            schedule,
            pace: memory.pace().mean(),
            traces: vec![None; bank.items().len()],
            due: vec![(Day(i32::MAX), Reason::Fading); bank.items().len()],
            least: 0,
        };
        let usual = bank.items().iter().map(|item| item.seconds);
        course.least = usual.min().map_or(0, |least| seconds(least, course.pace));
        for (place, trace) in memory.known() {
            // A trace dated after today counts as of today.
            let last = trace.last.min(today);
            course.set(place, Trace { last, ..*trace });
        }
        course
    }

    fn set(&mut self, place: usize, trace: Trace) {
        self.due[place] = self.schedule.due(self.bank.hash(place), &trace);
        self.traces[place] = Some(trace);
    }

    /// Plays one day: reviews by lowest recall, then new questions, within the
    /// minutes. Without minutes all that is due is done and nothing is begun.
    pub(super) fn play(&mut self, day: Day, minutes: Option<u32>) -> DayLoad {
        let budget = minutes.map_or(u32::MAX, |minutes| minutes.saturating_mul(60));
        let mut load = DayLoad {
            day,
            reviews: 0,
            left: 0,
            new: 0,
            seconds: 0,
        };
        let mut due = self.due_on(day);
        while let Some(Waiting { waits, place, .. }) = due.pop() {
            let Some(trace) = self.traces[place] else {
                continue;
            };
            if load.seconds.saturating_add(self.least) > budget {
                // There is time for none of the others either.
                let others = due.iter().filter(|other| !other.waits).count();
                let others = u32::try_from(others).unwrap_or(u32::MAX);
                load.left += u32::from(!waits) + others;
                break;
            }
            let usual = seconds(self.bank.items()[place].seconds, self.pace);
            let recall = self.schedule.recall(&trace, day);
            let cost = whole(f64::from(usual) * (2.0 - recall));
            if load.seconds.saturating_add(cost) > budget {
                load.left += u32::from(!waits);
                continue;
            }
            let days = day.since(trace.last);
            let state = self.schedule.model.next(trace.state, days, Grade::Recalled);
            let last = day;
            self.set(
                place,
                Trace {
                    state,
                    last,
                    ..trace
                },
            );
            load.seconds += cost;
            load.reviews += 1;
        }
        if minutes.is_some() && load.left == 0 {
            self.begin(budget, &mut load);
        }
        load
    }

    /// What is due on a day; what is asked first comes out first.
    fn due_on(&self, day: Day) -> BinaryHeap<Waiting> {
        let all = self.due.iter().enumerate();
        let due = all.filter(|(_, (when, _))| *when <= day);
        due.filter_map(|(place, (_, reason))| {
            let trace = self.traces[place].as_ref()?;
            // A day of which part is used up already brings nothing back twice.
            (trace.last < day).then(|| Waiting {
                waits: !reason.presses(),
                faded: f64::from(day.since(trace.last)) / trace.state.stability,
                place,
            })
        })
        .collect()
    }

    fn begin(&mut self, budget: u32, load: &mut DayLoad) {
        let state = self.schedule.model.first(Grade::Recalled);
        for (place, item) in self.bank.items().iter().enumerate() {
            if self.traces[place].is_some() {
                continue;
            }
            let cost = seconds(item.seconds, self.pace);
            if load.seconds.saturating_add(cost) > budget {
                break;
            }
            let begun = Trace {
                state,
                first: load.day,
                last: load.day,
                answers: 1,
                misses: 0,
                grade: Grade::Recalled,
            };
            self.set(place, begun);
            load.seconds += cost;
            load.new += 1;
        }
    }

    /// The chance of recall on a day for every question; 0 where it was not begun.
    pub(super) fn recall(&self, day: Day) -> Vec<f64> {
        let recall = |trace: &Option<Trace>| {
            let trace = trace.as_ref();
            trace.map_or(0.0, |trace| self.schedule.recall(trace, day))
        };
        self.traces.iter().map(recall).collect()
    }
}
