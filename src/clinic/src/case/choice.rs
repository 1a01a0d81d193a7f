//! A decision, its options, and how an answer is graded.

use super::{by_hand::ByHand, part::Part, seed::Seed, sum::Sum};
use crate::{
    Reason,
    engine::Proof,
    sequence::{self, Comparison, Target},
    standing::Standing,
};
use catalogue::ids::{CompetencyId, ItemId};

/// How a decision is answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Form {
    /// One option.
    One,
    /// Every option that fits.
    All,
    /// All options, in order; the target order is that in which they were written.
    Order(Vec<String>),
    /// Things laid in order: the ids of options.
    Tray {
        /// The stages of the tray, and the pairs that have to stand in order.
        target: Target<String>,
        /// The titles of the stages.
        titles: Vec<String>,
        /// Things that count neither way.
        neutral: Vec<String>,
        /// Why each pair has to stand in order.
        orders: Vec<(String, String, String)>,
    },
    /// A number, typed; there are no options.
    Number(Box<Sum>),
}

/// One option.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// Its id, unique in the decision and stable for the same facts.
    pub id: String,
    /// What it says.
    pub label: String,
    /// The items it shows: one, or those of a set.
    pub shows: Vec<ItemId>,
    /// How good it is to take it.
    pub standing: Standing,
    /// How bad it is to leave it out, where several are to be taken.
    pub left_out: Standing,
    /// Why.
    pub reasons: Vec<Reason>,
}

/// One decision of a case.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Decision {
    /// What kind of decision it is, unique in the case.
    pub id: String,
    /// A short name for a list: `Lay the tray`.
    pub name: String,
    /// What has happened just before, if anything is told.
    pub lead: String,
    /// The question.
    pub question: String,
    /// How it is answered.
    pub form: Form,
    /// The options.
    pub choices: Vec<Choice>,
    /// The competency it shows.
    pub competency: CompetencyId,
    /// Why, for the decision as a whole; beside the reasons of the options.
    pub reasons: Vec<Reason>,
    /// The argument behind the right answer, where rules lead to it.
    pub proof: Option<Proof>,
    /// What happens next, once it is answered: how the dentist goes on.
    pub then: String,
    /// What can be mixed by hand in answer, beside the options.
    pub by_hand: Option<ByHand>,
}

/// How an answer was graded.
#[derive(Clone, Debug, PartialEq)]
pub struct Grade {
    /// The verdict on the whole answer.
    pub standing: Standing,
    /// Out of 100.
    pub per_cent: u8,
    /// For a tray or an order, how it compares with the target.
    pub comparison: Option<Comparison<String>>,
}

impl Choice {
    /// An option with its standing; leaving it out is wrong if taking it is right.
    pub fn new(id: impl Into<String>, label: impl Into<String>, standing: Standing) -> Self {
        let left_out = if standing == Standing::Right {
            Standing::Wrong
        } else {
            Standing::Right
        };
        Self {
            id: id.into(),
            label: label.into(),
            shows: Vec::new(),
            standing,
            left_out,
            reasons: Vec::new(),
        }
    }

    /// With its reasons.
    #[must_use]
    pub fn because(mut self, reasons: Vec<Reason>) -> Self {
        self.reasons = reasons;
        self
    }

    /// Showing an item.
    #[must_use]
    pub fn showing(mut self, item: &ItemId) -> Self {
        self.shows.push(item.clone());
        self
    }
}

impl Decision {
    /// A decision with nothing told before it or after it.
    pub(super) fn new(
        id: &str,
        name: &str,
        question: impl Into<String>,
        form: Form,
        choices: Vec<Choice>,
        competency: &str,
    ) -> Self {
        Self {
            id: id.into(),
            name: name.into(),
            lead: String::new(),
            question: question.into(),
            form,
            choices,
            competency: CompetencyId::from(competency),
            reasons: Vec::new(),
            proof: None,
            then: String::new(),
            by_hand: None,
        }
    }

    /// Puts the options into an order by chance, so that the place of an option
    /// says nothing. A chart keeps its own order, which says nothing either.
    pub(super) fn arrange(&mut self, chance: &mut Seed) {
        if self.part() != Part::Chart {
            chance.shuffle(&mut self.choices);
        }
    }

    /// The option with this id.
    pub fn choice(&self, id: &str) -> Option<&Choice> {
        self.choices.iter().find(|c| c.id == id)
    }

    /// An answer that scores full marks.
    pub fn best_answer(&self) -> Vec<String> {
        let ids = |best: Standing| {
            self.choices
                .iter()
                .filter(move |c| c.standing == best)
                .map(|c| c.id.clone())
        };
        match &self.form {
            Form::One => {
                let best = self
                    .choices
                    .iter()
                    .map(|c| c.standing)
                    .min()
                    .unwrap_or(Standing::Right);
                ids(best).take(1).collect()
            }
            Form::All => ids(Standing::Right).collect(),
            Form::Order(order) => order.clone(),
            Form::Tray { target, .. } => target.stages.iter().flatten().cloned().collect(),
            Form::Number(sum) => sum.best(),
        }
    }

    /// Grades an answer: the ids of the options taken, in order; where it can be
    /// answered by mixing and was, the mix; where a number is asked for, the number.
    pub fn grade(&self, answer: &[String]) -> Grade {
        let by_hand = self.by_hand.as_ref();
        if let Some(graded) = by_hand.and_then(|it| it.grade(answer)) {
            return graded;
        }
        match &self.form {
            Form::One => self.grade_one(answer),
            Form::All => self.grade_all(answer),
            Form::Order(order) => {
                let stages = order.iter().map(|id| vec![id.clone()]).collect();
                let target = Target {
                    stages,
                    must_before: Vec::new(),
                };
                Grade::of(sequence::compare(answer, &target, &[]), Standing::Right)
            }
            Form::Tray {
                target, neutral, ..
            } => self.grade_tray(answer, target, neutral),
            Form::Number(sum) => sum.grade(answer),
        }
    }

    /// Where no option is right, the best one there is counts in full.
    fn grade_one(&self, answer: &[String]) -> Grade {
        let best = self.choices.iter().map(|c| c.standing).min();
        let taken = answer.first().and_then(|id| self.choice(id));
        let standing = match taken.map(|c| c.standing) {
            Some(own) if Some(own) == best => Standing::Right,
            Some(own) => own,
            None => Standing::Wrong,
        };
        Grade {
            standing,
            per_cent: standing.per_cent(),
            comparison: None,
        }
    }

    fn grade_all(&self, answer: &[String]) -> Grade {
        let taken = |c: &&Choice| answer.contains(&c.id);
        let right = self
            .choices
            .iter()
            .filter(|c| c.standing == Standing::Right)
            .count();
        let hits = self
            .choices
            .iter()
            .filter(taken)
            .filter(|c| c.standing == Standing::Right)
            .count();
        let misses = self
            .choices
            .iter()
            .filter(taken)
            .filter(|c| c.standing >= Standing::Wrong)
            .count();
        let harm = self.choices.iter().any(|c| {
            let own = if answer.contains(&c.id) {
                c.standing
            } else {
                c.left_out
            };
            own == Standing::Unsafe
        });
        let both = hits + misses + right;
        let per_cent = (200 * hits)
            .checked_div(both)
            .map_or(100, |p| u8::try_from(p).unwrap_or(100));
        Grade {
            standing: graded(per_cent, harm),
            per_cent,
            comparison: None,
        }
    }

    fn grade_tray(&self, answer: &[String], target: &Target<String>, neutral: &[String]) -> Grade {
        let worst = answer
            .iter()
            .filter_map(|id| self.choice(id))
            .map(|c| c.standing)
            .fold(Standing::Right, Ord::max);
        Grade::of(sequence::compare(answer, target, neutral), worst)
    }
}

impl Grade {
    fn of(comparison: Comparison<String>, worst: Standing) -> Self {
        // A score runs from 0 to 100; only its fraction is given up.
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let per_cent = comparison.score.clamp(0.0, 100.0) as u8;
        let standing = graded(per_cent, worst == Standing::Unsafe);
        Self {
            standing,
            per_cent,
            comparison: Some(comparison),
        }
    }
}

/// The verdict on a score: full marks are right, four fifths acceptable.
fn graded(per_cent: u8, harm: bool) -> Standing {
    match per_cent {
        _ if harm => Standing::Unsafe,
        100 => Standing::Right,
        80.. => Standing::Acceptable,
        _ => Standing::Wrong,
    }
}
