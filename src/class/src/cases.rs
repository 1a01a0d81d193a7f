//! Grading cases and trays to be read by asking `clinic`: the case is drawn
//! again from its seed, and the response graded as it was on the student's device.

use crate::task::{Answer, Graded, Grader, Item, Offered, Order, Response, Task, TaskId};
use clinic::{
    Clinic,
    case::{Case, Choice, Decision, Form, Wanted},
    standing::Standing,
};
use std::cell::RefCell;
use std::rc::Rc;

/// How many seeds are tried for one case of a wanted level.
const TRIES: u64 = 60;

/// The case that an order and a seed mean; none where no patient fits it. The
/// same arguments give the same case for ever.
pub fn case(clinic: &Clinic, order: &Order, seed: u64) -> Option<Case> {
    let with = order.with.as_deref().map(Into::into);
    let Some(frame) = &order.frame else {
        let wanted = Wanted {
            booked: order.booked.as_deref().map(Into::into),
            competency: order.competency.as_deref().map(Into::into),
            level: order.level,
            with,
        };
        return clinic.case_to_order(&wanted, seed);
    };
    let frame = clinic
        .catalogue()
        .cases
        .iter()
        .find(|f| f.id.as_str() == frame)?;
    (0..TRIES).find_map(|more| {
        let case = clinic.case_with(frame, seed.wrapping_add(more), with.as_ref())?;
        order
            .level
            .is_none_or(|level| case.level() == level)
            .then_some(case)
    })
}

/// What was taken of a decision, as a hand-in carries it. Ids that the
/// decision does not offer are passed over.
pub fn answer(decision: &Decision, taken: &[String]) -> Answer {
    let place = |id: &String| {
        let place = decision.choices.iter().position(|c| c.id == *id)?;
        u16::try_from(place).ok()
    };
    Answer::Options(taken.iter().filter_map(place).collect())
}

/// Grades cases and trays to be read. The decisions of the case graded last
/// are kept, as responses come case by case.
#[derive(Debug)]
pub struct CaseGrader {
    clinic: Clinic,
    last: RefCell<Option<Drawn>>,
}

#[derive(Debug)]
struct Drawn {
    task: Rc<Task>,
    seed: u64,
    decisions: Vec<(Decision, Rc<Item>)>,
}

impl CaseGrader {
    /// A grader over the catalogue behind `clinic`, with its preference card,
    /// which has to be the one that the assignment names.
    pub fn new(clinic: Clinic) -> Self {
        Self {
            clinic,
            last: RefCell::new(None),
        }
    }

    /// Does something with the decisions of a task; none where there is no such task.
    fn with<T>(
        &self,
        task: &Rc<Task>,
        seed: u64,
        act: impl FnOnce(&[(Decision, Rc<Item>)]) -> Option<T>,
    ) -> Option<T> {
        let mut last = self.last.borrow_mut();
        let fits = |drawn: &Drawn| drawn.seed == seed && drawn.task == *task;
        if !last.as_ref().is_some_and(fits) {
            let decisions = self.draw(task, seed)?;
            *last = Some(Drawn {
                task: task.clone(),
                seed,
                decisions: decisions
                    .into_iter()
                    .map(|decision| {
                        let item = item(&decision);
                        (decision, item)
                    })
                    .collect(),
            });
        }
        act(&last.as_ref()?.decisions)
    }

    fn draw(&self, task: &Task, seed: u64) -> Option<Vec<Decision>> {
        match task {
            Task::Case(order) => Some(case(&self.clinic, order, seed)?.decisions),
            Task::Reading => Some(self.clinic.tray_reading(seed)?.decisions.into()),
            _ => None,
        }
    }
}

impl Grader for CaseGrader {
    fn parts(&self, task: &Rc<Task>, seed: u64) -> Option<u16> {
        self.with(task, seed, |decisions| u16::try_from(decisions.len()).ok())
    }

    fn grade(&self, task: &TaskId, seed: u64, response: &Response) -> Option<Graded> {
        self.with(&task.task, seed, |decisions| {
            let (decision, item) = decisions.get(usize::from(task.part))?;
            let (standing, per_cent) = match &response.answer {
                Answer::Blank => (Standing::Wrong, 0),
                Answer::Options(places) => {
                    let grade = decision.grade(&ids(decision, places)?);
                    (grade.standing, grade.per_cent)
                }
                Answer::Number(_) => return None,
            };
            Some(Graded {
                item: item.clone(),
                standing,
                per_cent,
            })
        })
    }
}

/// The ids at these places; none where one of them is not there or stands twice.
fn ids(decision: &Decision, places: &[u16]) -> Option<Vec<String>> {
    let twice = (1..places.len()).any(|i| places[..i].contains(&places[i]));
    if twice {
        return None;
    }
    places
        .iter()
        .map(|&place| Some(decision.choices.get(usize::from(place))?.id.clone()))
        .collect()
}

fn item(decision: &Decision) -> Rc<Item> {
    Rc::new(Item {
        id: decision.id.as_str().into(),
        name: decision.name.as_str().into(),
        competency: decision.competency.as_str().into(),
        one: decision.form == Form::One,
        offered: decision.choices.iter().map(offered).collect(),
    })
}

fn offered(choice: &Choice) -> Offered {
    let because: Vec<&str> = choice.reasons.iter().map(|r| r.because.as_str()).collect();
    Offered {
        id: choice.id.as_str().into(),
        label: choice.label.as_str().into(),
        standing: choice.standing,
        left_out: choice.left_out,
        because: because.join(" ").into(),
    }
}
