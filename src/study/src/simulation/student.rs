//! A student whose memory is known.

use super::chance::Chance;
use crate::{
    answer::Answer,
    day::Day,
    item::Bank,
    memory::{Grade, Model, Parameters, State},
};

/// A simulated student.
#[derive(Clone, Debug)]
pub struct Student {
    truth: Model,
    /// How many times as long as the model says this student remembers.
    pub holds: f64,
    states: Vec<Option<(State, Day)>>,
    chance: Chance,
}

impl Student {
    /// A student of a bank with so many questions. Parameters differ from the
    /// published ones by up to a tenth, and memory as a whole by the spread
    /// that is thought to lie between people (a logarithm with sd 0.3).
    pub fn new(questions: usize, seed: u64) -> Self {
        let mut chance = Chance::new(seed);
        let mut parameters = Parameters::default();
        // The shape of the curve and the draw to easy are left: they are alike for all.
        for w in &mut parameters.0[..20] {
            *w *= 0.9 + 0.2 * chance.part();
        }
        let holds = chance.normal(0.0, 0.3).exp();
        Self {
            truth: Model::new(parameters),
            holds,
            states: vec![None; questions],
            chance,
        }
    }

    /// The true chance that the question at a place is recalled on a day.
    pub fn recall(&self, place: usize, day: Day) -> f64 {
        self.states[place].map_or(0.0, |(state, last)| {
            self.truth
                .recall(state.stability * self.holds, f64::from(day.since(last)))
        })
    }

    /// Puts a question to the student, who then reads the explanation.
    pub fn answer(&mut self, bank: &Bank, place: usize, day: Day) -> Answer {
        let item = &bank.items()[place];
        let new = self.states[place].is_none();
        let recalled = {
            let recall = if new { 0.5 } else { self.recall(place, day) };
            self.chance.happens(recall)
        };
        let grade = if recalled {
            Grade::Recalled
        } else {
            Grade::Missed
        };
        let state = match self.states[place] {
            None => self.truth.first(grade),
            Some((state, last)) => self.truth.next(state, day.since(last), grade),
        };
        self.states[place] = Some((state, day));
        Answer {
            question: item.id.clone(),
            competency: item.competency.clone(),
            right: recalled || self.chance.happens(item.guess),
            hint: false,
            unsure: false,
            seconds: item.seconds,
            first_try: new,
            day,
        }
    }
}
