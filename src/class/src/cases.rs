//! Grading cases and trays to be read by asking `clinic`: the case is drawn
//! again from its seed, and the response graded as it was on the student's device.

use crate::task::{
    Answer, Draw, Graded, Grader, Item, Made, Offered, Order, Places, Response, Task, TaskId, Way,
};
use clinic::{
    Clinic,
    case::{ByHand, Case, Choice, Decision, Form, Sum, Wanted},
    standing::Standing,
};
use std::cell::RefCell;
use std::collections::HashMap;
use std::rc::Rc;

/// The most cases that are kept drawn: an assignment that is the same for every
/// seat is then drawn once for a whole class.
const DRAWN: usize = 64;

/// The most answers to one decision whose grades are kept.
const GRADED: usize = 1024;

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

/// How long an unhurried student takes for a decision, in seconds: our own
/// estimate (common practice, no source).
const A_DECISION: u32 = 40;

/// What was taken of a decision, as a hand-in carries it. Ids that the
/// decision does not offer are passed over; a number goes as its code, and is
/// blank where there is none, and a mix as it was made.
pub fn answer(decision: &Decision, taken: &[String]) -> Answer {
    if matches!(decision.form, Form::Number(_)) {
        return Sum::code(taken).map_or(Answer::Blank, Answer::Number);
    }
    if let Some(replay) = ByHand::replay(taken)
        && decision.by_hand.is_some()
        && let Ok(replay) = serde_json::from_str(replay)
    {
        return Answer::Mixed(Made::of(replay));
    }
    let place = |id: &String| {
        let place = decision.choices.iter().position(|c| c.id == *id)?;
        u16::try_from(place).ok()
    };
    Answer::Options(taken.iter().filter_map(place).collect())
}

/// Grades cases and trays to be read. The decisions of the cases graded last
/// are kept, with the grades of what was answered: a class gives the same
/// answers again and again.
#[derive(Debug)]
pub struct CaseGrader {
    clinic: Clinic,
    /// The one graded last stands first.
    drawn: RefCell<Vec<Drawn>>,
}

#[derive(Debug)]
struct Drawn {
    task: Rc<Task>,
    seed: u64,
    asked: Vec<Asked>,
}

/// A decision, and what is known of answers to it.
#[derive(Debug)]
struct Asked {
    decision: Decision,
    item: Rc<Item>,
    /// What came of what was answered; none for what cannot have been.
    grades: HashMap<Answer, Option<Graded>>,
}

impl Asked {
    fn new(decision: Decision) -> Self {
        Self {
            item: item(&decision),
            decision,
            grades: HashMap::new(),
        }
    }

    /// The grade of an answer; none where it cannot have been given.
    fn grade(&mut self, answer: &Answer) -> Option<Graded> {
        if *answer == Answer::Blank {
            return Some(Graded {
                item: self.item.clone(),
                standing: Standing::Wrong,
                per_cent: 0,
                taken: Rc::default(),
                said: None,
            });
        }
        if let Some(known) = self.grades.get(answer) {
            return known.clone();
        }
        let grade = taken(&self.decision, answer).map(|taken| {
            let grade = self.decision.grade(&taken);
            Graded {
                item: self.item.clone(),
                standing: grade.standing,
                per_cent: grade.per_cent,
                taken: self.taken(answer),
                said: self.said(answer),
            }
        });
        // Hardly two mixes are alike, and each takes much room.
        if self.grades.len() < GRADED && !matches!(answer, Answer::Mixed(_)) {
            self.grades.insert(answer.clone(), grade.clone());
        }
        grade
    }

    /// A number as it was understood, for those who cannot read its code.
    fn said(&self, answer: &Answer) -> Option<Rc<str>> {
        let Form::Number(sum) = &self.decision.form else {
            return None;
        };
        let typed = taken(&self.decision, answer)?;
        Some(sum.judged(&typed)?.understood.into())
    }

    /// What of the options an answer took, by their places.
    fn taken(&self, answer: &Answer) -> Rc<[u16]> {
        if let Answer::Options(places) = answer {
            return places.as_slice().into();
        }
        let ids = taken(&self.decision, answer).unwrap_or_default();
        let place = |id: &String| {
            let mut choices = self.decision.choices.iter();
            u16::try_from(choices.position(|it| it.id == *id)?).ok()
        };
        ids.iter().filter_map(place).collect()
    }
}

impl CaseGrader {
    /// A grader over the catalogue behind `clinic`, with its preference card,
    /// which has to be the one that the assignment names.
    pub fn new(clinic: Clinic) -> Self {
        Self {
            clinic,
            drawn: RefCell::new(Vec::new()),
        }
    }

    /// Does something with the decisions of a task; none where there is no such task.
    fn with<T>(
        &self,
        task: &Rc<Task>,
        seed: u64,
        act: impl FnOnce(&mut [Asked]) -> Option<T>,
    ) -> Option<T> {
        let mut drawn = self.drawn.borrow_mut();
        let fits = |drawn: &Drawn| {
            drawn.seed == seed && (Rc::ptr_eq(&drawn.task, task) || drawn.task == *task)
        };
        if let Some(place) = drawn.iter().position(fits) {
            drawn.swap(0, place);
        } else {
            let decisions = self.draw(task, seed)?;
            drawn.truncate(DRAWN - 1);
            drawn.push(Drawn {
                task: task.clone(),
                seed,
                asked: decisions.into_iter().map(Asked::new).collect(),
            });
            let last = drawn.len() - 1;
            drawn.swap(0, last);
        }
        act(&mut drawn.first_mut()?.asked)
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
    fn parts(&self, task: &Rc<Task>, draw: Draw) -> Option<u16> {
        self.with(task, draw.seed, |asked| u16::try_from(asked.len()).ok())
    }

    fn seconds(&self, task: &Rc<Task>, draw: Draw) -> Option<u32> {
        Some(u32::from(self.parts(task, draw)?) * A_DECISION)
    }

    fn grade(&self, task: &TaskId, draw: Draw, response: &Response) -> Option<Graded> {
        self.with(&task.task, draw.seed, |asked| {
            let asked = asked.get_mut(usize::from(task.part))?;
            asked.grade(&response.answer)
        })
    }
}

/// What a response takes of a decision: the other way round from [`answer`].
/// None where it is blank or cannot have been given: a place is not there or
/// stands twice, a number is asked for and no option, or the other way about,
/// or a mix is none of what is mixed here.
pub fn taken(decision: &Decision, answer: &Answer) -> Option<Vec<String>> {
    match (answer, &decision.form) {
        (Answer::Number(code), Form::Number(sum)) => {
            let typed = Sum::of_code(*code);
            sum.judged(&typed).map(|_| typed)
        }
        (Answer::Mixed(made), _) => {
            let by_hand = decision.by_hand.as_ref()?;
            let replay = made.replay(by_hand.material().as_str(), by_hand.usage());
            let replay = serde_json::to_string(&replay).ok()?;
            Some(by_hand.answer(&replay, &decision.choices)).filter(|ids| !ids.is_empty())
        }
        (Answer::Options(_), Form::Number(_))
        | (Answer::Blank | Answer::Number(_) | Answer::Typed(_), _) => None,
        (Answer::Options(places), _) => {
            let twice = (1..places.len()).any(|i| places[..i].contains(&places[i]));
            let id = |&place: &u16| Some(decision.choices.get(usize::from(place))?.id.clone());
            if twice {
                return None;
            }
            places.iter().map(id).collect()
        }
    }
}

fn item(decision: &Decision) -> Rc<Item> {
    Rc::new(Item {
        id: decision.id.as_str().into(),
        name: decision.name.as_str().into(),
        competency: decision.competency.as_str().into(),
        one: matches!(decision.form, Form::One | Form::Number(_)),
        way: match decision.form {
            Form::Number(_) => Way::Typed,
            _ => Way::Options,
        },
        places: match decision.form {
            Form::Order(_) => Places::Ordered,
            _ => Places::Chosen,
        },
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
