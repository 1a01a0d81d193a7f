//! All graders as one: each task goes to the one that knows it.

use crate::assignment::Assignment;
use crate::cases::CaseGrader;
use crate::mixes::MixGrader;
use crate::numbers::NumberGrader;
use crate::questions::{QuestionGrader, Questions};
use crate::task::{Draw, Graded, Grader, Response, Task, TaskId};
use clinic::Clinic;
use std::rc::Rc;

/// Grades every kind of task; questions and forms only where all questions are
/// at hand.
pub struct Graders<'b> {
    cases: CaseGrader,
    mixes: MixGrader,
    numbers: NumberGrader,
    questions: Option<QuestionGrader<'b>>,
}

impl<'b> Graders<'b> {
    /// Graders over the catalogue behind `clinic`, with its preference card,
    /// which has to be the one that the assignment names.
    pub fn new(clinic: &Clinic, questions: Option<Questions<'b>>) -> Self {
        Self {
            cases: CaseGrader::new(clinic.clone()),
            mixes: MixGrader::new(clinic.clone()),
            numbers: NumberGrader::new(clinic.clone()),
            questions: questions.map(QuestionGrader::new),
        }
    }

    fn of(&self, task: &Task) -> Option<&dyn Grader> {
        Some(match task {
            Task::Case(_) | Task::Reading => &self.cases,
            Task::Mix { .. } => &self.mixes,
            Task::Number(_) => &self.numbers,
            Task::Question(_) | Task::Form { .. } => self.questions.as_ref()?,
        })
    }
}

impl Grader for Graders<'_> {
    fn parts(&self, task: &Rc<Task>, draw: Draw) -> Option<u16> {
        self.of(task)?.parts(task, draw)
    }

    fn seconds(&self, task: &Rc<Task>, draw: Draw) -> Option<u32> {
        self.of(task)?.seconds(task, draw)
    }

    fn grade(&self, task: &TaskId, draw: Draw, response: &Response) -> Option<Graded> {
        self.of(&task.task)?.grade(task, draw, response)
    }
}

impl Task {
    /// Whether all questions have to be at hand to play and to grade it.
    pub fn needs_questions(&self) -> bool {
        matches!(self, Self::Question(_) | Self::Form { .. })
    }

    /// Whether there are hints to it that an assignment can allow.
    pub fn has_hints(&self) -> bool {
        matches!(self, Self::Question(_) | Self::Mix { .. })
    }
}

impl Assignment {
    /// Whether all questions have to be at hand to play and to grade it.
    pub fn needs_questions(&self) -> bool {
        self.tasks.iter().any(|set| set.task.needs_questions())
    }
}
