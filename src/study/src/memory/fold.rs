//! What a student remembers: a fold over answers.

use super::{
    calibration::Prediction,
    grade::{Grade, Pace},
    model::{Model, State},
};
use crate::{answer::Answer, day::Day, item::Bank};

/// What is known of one question.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trace {
    /// What is remembered.
    pub state: State,
    /// The day of the first answer.
    pub first: Day,
    /// The day of the last answer.
    pub last: Day,
    /// How many answers there were.
    pub answers: u32,
    /// How many of them were wrong.
    pub misses: u32,
    /// How the last answer was graded.
    pub grade: Grade,
}

/// What a student remembers of each question of a bank.
#[derive(Clone, Debug, Default)]
pub struct Memory {
    model: Model,
    traces: Vec<Option<Trace>>,
    pace: Pace,
    reviews: Vec<Prediction>,
    vanished: usize,
    turned_back: usize,
}

impl Memory {
    /// What is remembered after these answers, in the order of the record.
    pub fn of<'a>(bank: &Bank, answers: impl IntoIterator<Item = &'a Answer>) -> Self {
        let mut memory = Self::default();
        for answer in answers {
            memory.take(bank, answer);
        }
        memory
    }

    /// Takes in one more answer and says how it was graded; nothing for a
    /// question that has left the catalogue, which is counted apart.
    pub fn take(&mut self, bank: &Bank, answer: &Answer) -> Option<Grade> {
        let Some(place) = bank.place(&answer.question) else {
            self.vanished += 1;
            return None;
        };
        let item = &bank.items()[place];
        let grade = Grade::of(answer, self.pace.is_slow(answer.seconds, item.seconds));
        if answer.right {
            self.pace.take(answer.seconds, item.seconds);
        }
        if self.traces.len() <= place {
            self.traces.resize(bank.items().len().max(place + 1), None);
        }
        let before = self.traces[place];
        if let Some(trace) = before {
            self.note(trace, answer, item.guess);
        }
        self.traces[place] = Some(self.trace_after(before, answer, grade));
        Some(grade)
    }

    /// Keeps what was predicted beside what happened. A review with a hint says
    /// nothing of recall, and one on the same day little.
    fn note(&mut self, before: Trace, answer: &Answer, guess: f64) {
        self.turned_back += usize::from(answer.day < before.last);
        let days = answer.day.since(before.last);
        if days == 0 || answer.hint {
            return;
        }
        let stability = before.state.stability;
        self.reviews.push(Prediction {
            recall: self.model.recall(stability, f64::from(days)),
            guess,
            right: answer.right,
            days,
            stability,
        });
    }

    fn trace_after(&self, before: Option<Trace>, answer: &Answer, grade: Grade) -> Trace {
        let state = match before {
            None => self.model.first(grade),
            Some(trace) => {
                let days = answer.day.since(trace.last);
                self.model.next(trace.state, days, grade)
            }
        };
        Trace {
            state,
            first: before.map_or(answer.day, |trace| trace.first),
            last: answer.day,
            answers: before.map_or(0, |trace| trace.answers) + 1,
            misses: before.map_or(0, |trace| trace.misses) + u32::from(!answer.right),
            grade,
        }
    }

    /// What is known of the question at a place of the bank; nothing if it was
    /// never answered.
    pub fn trace(&self, place: usize) -> Option<&Trace> {
        self.traces.get(place)?.as_ref()
    }

    /// The questions that were ever answered, by place, with what is known of them.
    pub fn known(&self) -> impl Iterator<Item = (usize, &Trace)> {
        self.traces
            .iter()
            .enumerate()
            .filter_map(|(place, trace)| Some((place, trace.as_ref()?)))
    }

    /// The reviews a day or more after the last, for calibration and personal fit.
    pub fn reviews(&self) -> &[Prediction] {
        &self.reviews
    }

    /// The student's pace.
    pub fn pace(&self) -> &Pace {
        &self.pace
    }

    /// What was unusual in the record, in sentences for the student: questions
    /// that have left the catalogue, a clock that was moved back.
    pub fn remarks(&self) -> Vec<String> {
        let mut remarks = Vec::new();
        if self.vanished > 0 {
            remarks.push(format!(
                "{} in your record {} to questions that the catalogue no longer has. {} kept, but \
                 counted nowhere and not asked again.",
                count(self.vanished, "answer"),
                if self.vanished == 1 {
                    "belongs"
                } else {
                    "belong"
                },
                if self.vanished == 1 {
                    "It is"
                } else {
                    "They are"
                },
            ));
        }
        if self.turned_back > 0 {
            remarks.push(format!(
                "{} dated before the answer that came before, by a clock that was moved. No time \
                 counts as passed there; nothing is lost.",
                if self.turned_back == 1 {
                    "1 answer is".to_string()
                } else {
                    format!("{} answers are", self.turned_back)
                },
            ));
        }
        remarks
    }
}

fn count(number: usize, thing: &str) -> String {
    let ending = if number == 1 { "" } else { "s" };
    format!("{number} {thing}{ending}")
}
