//! A decision answered with a number: what is asked, how an answer stands among
//! the ids of other answers, and how it is graded.

use super::choice::Grade;
use crate::{
    numbers::{
        entry::Refusal,
        exercises::{self, Problem},
        tools::{Entries, Tool},
    },
    standing::Standing,
};

/// What a number among the ids of an answer begins with. No id has a colon.
const TYPED: &str = "typed:";

/// A number to be typed, and the tool of the bench that works it out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sum {
    /// The question, its answer and the way to it.
    pub problem: Problem,
    /// The tool.
    pub tool: Tool,
    /// What is entered there for this patient.
    pub entries: Entries,
    /// Whether more than is right could hurt somebody.
    pub(super) more_harms: bool,
}

impl Sum {
    /// The answer that a typed text is: one id, with the number in it.
    ///
    /// # Errors
    /// A sentence, if it is not understood. That is no wrong answer.
    pub fn answer(&self, typed: &str) -> Result<Vec<String>, Refusal> {
        self.problem.code(typed).map(|code| vec![Self::id(code)])
    }

    /// The answer with this code, as a hand-in carries it.
    pub fn of_code(code: i64) -> Vec<String> {
        vec![Self::id(code)]
    }

    /// The code of an answer; none where it holds no number.
    pub fn code(answer: &[String]) -> Option<i64> {
        let mut numbers = answer.iter().filter_map(|id| id.strip_prefix(TYPED));
        numbers.find_map(|code| code.parse().ok())
    }

    /// Whether an id in an answer is a number that answers it.
    pub fn is_typed(&self, id: &str) -> bool {
        Self::code(&[id.to_owned()]).is_some_and(|code| self.problem.grade(code).is_some())
    }

    /// How an answer was understood and what is to be said of it; none where
    /// it holds no number that can have been typed.
    pub fn judged(&self, answer: &[String]) -> Option<exercises::Grade> {
        self.problem.grade(Self::code(answer)?)
    }

    pub(super) fn best(&self) -> Vec<String> {
        Self::of_code(self.problem.right())
    }

    /// A number is right or wrong; too much of a drug is unsafe.
    pub(super) fn grade(&self, answer: &[String]) -> Grade {
        let right = self.judged(answer).is_some_and(|it| it.right);
        let over = Self::code(answer).is_some_and(|code| self.problem.over(code));
        let standing = match (right, self.more_harms && over) {
            (true, _) => Standing::Right,
            (false, true) => Standing::Unsafe,
            (false, false) => Standing::Wrong,
        };
        Grade {
            standing,
            per_cent: if right { 100 } else { 0 },
            comparison: None,
        }
    }

    fn id(code: i64) -> String {
        format!("{TYPED}{code}")
    }
}
