//! Questions: which one a seat draws, how its answer travels, and grading it.
//!
//! - `given`: an answer, between the question and a hand-in
//! - `outcome`: what came of it, by options or by kinds of outcome
//! - here: drawing, and the grader of questions and of practice forms

mod given;
mod outcome;

pub use given::{answer, given};

use crate::forms;
use crate::task::{Answer, Draw, Graded, Grader, Response, Task, TaskId};
use clinic::{case::Seed, standing::Standing};
use outcome::{Named, graded};
use std::cell::RefCell;
use std::collections::HashMap;
use std::rc::Rc;
use study::{
    families, item,
    question::{Bank, Question},
};

/// All questions: as they are written, and as measurement sees them.
#[derive(Clone, Copy)]
pub struct Questions<'b> {
    /// As they are written.
    pub written: &'b Bank,
    /// As measurement sees them.
    pub items: &'b item::Bank,
}

/// The question that a family and a draw mean, in the wording of the draw; none
/// where the family has no question.
pub fn drawn(written: &Bank, family: &str, draw: Draw) -> Option<Question> {
    let mut ids: Vec<_> = written.of_family(family).iter().collect();
    Seed::new(draw.of_set).shuffle(&mut ids);
    let write = |id: &&study::question::QuestionId| written.write(id, draw.seed);
    let nth = usize::from(draw.nth);
    if let Some(question) = ids.iter().filter_map(write).nth(nth) {
        return Some(question);
    }
    // More are asked for than there are: they come round again.
    let all: Vec<Question> = ids.iter().filter_map(write).collect();
    all.get(nth.checked_rem(all.len())?).cloned()
}

/// Grades questions and practice forms. The questions of the task graded last
/// are kept, as responses come task by task, and the blueprints that were met.
pub struct QuestionGrader<'b> {
    questions: Questions<'b>,
    last: RefCell<Option<Drawn>>,
    banks: RefCell<HashMap<String, Rc<item::Bank>>>,
}

struct Drawn {
    task: Rc<Task>,
    draw: Draw,
    questions: Rc<[Question]>,
}

impl<'b> QuestionGrader<'b> {
    /// A grader.
    pub fn new(questions: Questions<'b>) -> Self {
        Self {
            questions,
            last: RefCell::new(None),
            banks: RefCell::new(HashMap::new()),
        }
    }

    fn questions(&self, task: &Rc<Task>, draw: Draw) -> Option<Rc<[Question]>> {
        if let Some(last) = &*self.last.borrow()
            && last.draw == draw
            && last.task == *task
        {
            return Some(last.questions.clone());
        }
        let questions: Rc<[Question]> = match &**task {
            Task::Question(family) => Rc::from([drawn(self.questions.written, family, draw)?]),
            Task::Form {
                blueprint,
                questions,
            } => {
                let ids = forms::drawn(&*self.bank(blueprint)?, *questions, draw.seed).ok()?;
                let code = forms::code(draw.seed);
                let write = |id: &String| forms::write(self.questions.written, &code, id);
                ids.iter().map(write).collect::<Option<_>>()?
            }
            _ => return None,
        };
        *self.last.borrow_mut() = Some(Drawn {
            task: task.clone(),
            draw,
            questions: questions.clone(),
        });
        Some(questions)
    }

    fn bank(&self, blueprint: &str) -> Option<Rc<item::Bank>> {
        if let Some(known) = self.banks.borrow().get(blueprint) {
            return Some(known.clone());
        }
        let bank = Rc::new(forms::bank(self.questions.items, blueprint)?);
        let mut banks = self.banks.borrow_mut();
        banks.insert(blueprint.to_owned(), bank.clone());
        Some(bank)
    }
}

impl Grader for QuestionGrader<'_> {
    fn parts(&self, task: &Rc<Task>, draw: Draw) -> Option<u16> {
        u16::try_from(self.questions(task, draw)?.len()).ok()
    }

    fn seconds(&self, task: &Rc<Task>, draw: Draw) -> Option<u32> {
        let questions = self.questions(task, draw)?;
        Some(questions.iter().map(|it| it.seconds).sum())
    }

    fn grade(&self, task: &TaskId, draw: Draw, response: &Response) -> Option<Graded> {
        let questions = self.questions(&task.task, draw)?;
        let at = usize::from(task.part);
        let question = questions.get(at)?;
        let named = if draw.alike {
            Named::question(question)
        } else {
            let before = questions[..at].iter();
            let before = before.filter(|it| it.family == question.family).count();
            let family = families::ALL.iter().find(|it| it.id == question.family);
            Named::family(question.family, family.map_or("", |it| it.name), before)
        };
        let answer = match &response.answer {
            Answer::Blank => None,
            answer => Some(given(question, answer)?),
        };
        let mut graded = graded(question, named, draw.alike, answer.as_ref());
        if answer.is_none() {
            graded.standing = Standing::Wrong;
        }
        Some(graded)
    }
}
