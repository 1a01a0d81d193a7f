//! This schedule against fixed-interval study at equal minutes.

use super::{bank::bank, student::Student};
use crate::{
    answer::Answer,
    day::Day,
    item::Bank,
    memory::{Examination, Memory, Schedule, multiplier},
    numeric::real,
    sitting::{Length, Wanted, compose},
};
use std::{collections::HashSet, fmt};

/// A way to study.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// Sittings as Today composes them.
    Scheduled,
    /// Every question again after a fixed number of days, the longest waiting first.
    Fixed(u32),
}

/// What is simulated.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Setting {
    /// Questions in the bank.
    pub questions: usize,
    /// Days until the examination.
    pub days: u32,
    /// Time each day.
    pub daily: Length,
    /// Students.
    pub students: u64,
    /// The seed of it all.
    pub seed: u64,
}

impl Default for Setting {
    fn default() -> Self {
        Self {
            questions: 300,
            days: 60,
            daily: Length::Ten,
            students: 20,
            seed: 1,
        }
    }
}

/// How one way of study turned out, as means over the students.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outcome {
    /// Which way.
    pub way: Way,
    /// The true chance of recall on the examination day over all questions, 0
    /// for those never begun.
    pub retention: f64,
    /// The share of questions begun.
    pub begun: f64,
    /// Minutes spent a day.
    pub minutes: f64,
}

/// All ways side by side.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison {
    /// What was simulated.
    pub setting: Setting,
    /// How each way turned out.
    pub outcomes: Vec<Outcome>,
}

/// Simulates the schedule and fixed intervals of 3, 7 and 14 days, all with the
/// same students and the same minutes.
pub fn compare(setting: Setting) -> Comparison {
    let bank = bank(setting.questions, setting.seed);
    let ways = [Way::Scheduled, Way::Fixed(3), Way::Fixed(7), Way::Fixed(14)];
    let outcomes = ways.map(|way| outcome(&bank, setting, way)).to_vec();
    Comparison { setting, outcomes }
}

fn outcome(bank: &Bank, setting: Setting, way: Way) -> Outcome {
    let mut sums = (0.0, 0.0, 0.0);
    for n in 0..setting.students {
        let student = Student::new(bank.items().len(), setting.seed ^ (n << 20));
        let mut course = Course {
            bank,
            student,
            memory: Memory::default(),
            last: vec![None; bank.items().len()],
            used: 0,
        };
        let examination = Day(0).plus(setting.days);
        for ahead in 0..setting.days {
            let today = Day(0).plus(ahead);
            course.study(way, today, examination, setting.daily);
        }
        let places = 0..bank.items().len();
        sums.0 += places
            .map(|place| course.student.recall(place, examination))
            .sum::<f64>();
        sums.1 += real(course.last.iter().flatten().count());
        sums.2 += f64::from(course.used) / 60.0;
    }
    let students = f64::from(u32::try_from(setting.students.max(1)).unwrap_or(u32::MAX));
    let each = students * real(bank.items().len().max(1));
    Outcome {
        way,
        retention: sums.0 / each,
        begun: sums.1 / each,
        minutes: sums.2 / students / f64::from(setting.days.max(1)),
    }
}

/// One student's course of study.
struct Course<'a> {
    bank: &'a Bank,
    student: Student,
    memory: Memory,
    last: Vec<Option<Day>>,
    /// Seconds in all.
    used: u32,
}

impl Course<'_> {
    fn study(&mut self, way: Way, today: Day, examination: Day, daily: Length) {
        let time = daily.minutes() * 60;
        let asks = match way {
            Way::Scheduled => self.scheduled(today, examination, daily),
            Way::Fixed(days) => self.fixed(today, days),
        };
        let mut spent = 0;
        let mut missed = Vec::new();
        for place in asks {
            let cost = self.bank.items()[place].seconds;
            if spent + cost > time {
                break;
            }
            spent += cost;
            if !self.ask(place, today).right {
                missed.push(place);
            }
        }
        // What was missed comes once more on the same day, as far as time allows.
        for place in missed {
            let cost = self.bank.items()[place].seconds;
            if spent + cost <= time {
                spent += cost;
                self.ask(place, today);
            }
        }
        self.used += spent;
    }

    fn ask(&mut self, place: usize, today: Day) -> Answer {
        let answer = self.student.answer(self.bank, place, today);
        self.memory.take(self.bank, &answer);
        self.last[place] = Some(today);
        answer
    }

    fn scheduled(&self, today: Day, examination: Day, daily: Length) -> Vec<usize> {
        let mut schedule = Schedule::new(today, Some(Examination(examination)), 1.0);
        schedule.multiplier = multiplier(&schedule.model, self.memory.reviews());
        let wanted = Wanted {
            length: daily,
            budget: daily.minutes() * 60,
            learning: &[],
            without: &HashSet::new(),
            today,
        };
        let sitting = compose(self.bank, &self.memory, &schedule, &wanted);
        sitting.asks.iter().map(|ask| ask.place).collect()
    }

    fn fixed(&self, today: Day, days: u32) -> Vec<usize> {
        let mut due: Vec<(Day, usize)> = Vec::new();
        let mut new = Vec::new();
        for (place, last) in self.last.iter().enumerate() {
            match last {
                None => new.push(place),
                Some(last) if today.since(*last) >= days => due.push((*last, place)),
                Some(_) => {}
            }
        }
        due.sort_unstable();
        due.into_iter().map(|(_, place)| place).chain(new).collect()
    }
}

impl fmt::Display for Comparison {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Setting {
            questions,
            days,
            daily,
            students,
            seed,
        } = self.setting;
        writeln!(
            f,
            "{students} simulated students (seed {seed}), {questions} questions, {days} days at \
             {} minutes; means on the examination day:",
            daily.minutes()
        )?;
        for outcome in &self.outcomes {
            let way = match outcome.way {
                Way::Scheduled => "this schedule".to_string(),
                Way::Fixed(days) => format!("every {days} days"),
            };
            writeln!(
                f,
                "  {way:<14} recalled {:>5.1} %, begun {:>5.1} %, {:.1} minutes a day",
                100.0 * outcome.retention,
                100.0 * outcome.begun,
                outcome.minutes
            )?;
        }
        Ok(())
    }
}
