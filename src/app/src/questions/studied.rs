//! What the record says of a student, over all questions, on the day of study:
//! what was shown, and what follows from it. It is kept as long as neither the
//! record nor the day changes, so that no screen works out again what another
//! has worked out.

use super::{
    Questions, days,
    following::Following,
    plan::Plan,
    shown::{Folding, Shown},
};
use crate::{
    browser::{breath::Sliced, clock},
    log::{OpenLog, log},
};
use record::{Event, Moment};
use std::{cell::RefCell, rc::Rc};
use study::{
    day::Day,
    memory::{Schedule, multiplier},
};

/// How a student stands.
pub struct Studied {
    /// What was shown and is remembered.
    pub shown: Rc<Shown>,
    /// By what reviews are dated.
    pub schedule: Schedule,
    /// What is set.
    pub plan: Plan,
    /// The day of study.
    pub today: Day,
    /// What is unusual, in sentences: the clock, questions that have gone, an
    /// examination day that has passed.
    pub remarks: Vec<String>,
    /// What follows, as far as it was asked for.
    pub following: Following,
}

impl Studied {
    fn of(shown: Rc<Shown>, events: &[Event], now: Moment) -> Self {
        let (plan, today) = (Plan::of(events), days::day(now));
        let usual = Schedule::new(today, None, 1.0);
        let multiplier = multiplier(&usual.model, shown.memory.reviews());
        let schedule = Schedule::new(today, plan.examination(), multiplier);
        let mut remarks = shown.memory.remarks();
        let last = events.last().map(|event| days::moment(event.at));
        remarks.extend(last.and_then(|last| days::moment(now).unusual_after(last)));
        let passed = plan
            .examination()
            .filter(|examination| examination.0 < today);
        remarks.extend(passed.map(|examination| examination.words(today)));
        Self {
            shown,
            schedule,
            plan,
            today,
            remarks,
            following: Following::default(),
        }
    }

    /// How many seconds were studied today.
    pub fn seconds_today(&self) -> u32 {
        let today = self.shown.answers.iter().rev();
        today
            .take_while(|answer| answer.day >= self.today)
            .fold(0, |sum, answer| sum.saturating_add(answer.seconds))
    }
}

/// The fold of this page's record, and how the student stands by it.
#[derive(Default)]
struct Latest {
    folding: Folding,
    studied: Option<(Until, Rc<Studied>)>,
}

/// How many events there are, and the last of them.
type Until = (usize, Option<record::Id>);

fn until(events: &[Event]) -> Until {
    (events.len(), events.last().map(|event| event.id))
}

impl Latest {
    fn studied(&mut self, events: &[Event], questions: Questions) -> Rc<Studied> {
        if let Some(studied) = self.known(events) {
            return studied;
        }
        self.go_on(events, questions, usize::MAX);
        let studied = Rc::new(Studied::of(self.folding.shown(), events, clock::now()));
        self.studied = Some((until(events), Rc::clone(&studied)));
        studied
    }

    fn known(&self, events: &[Event]) -> Option<Rc<Studied>> {
        let (of, studied) = self.studied.as_ref()?;
        let same = *of == until(events) && studied.today == days::day(clock::now());
        same.then(|| Rc::clone(studied))
    }

    fn go_on(&mut self, events: &[Event], questions: Questions, most: usize) -> bool {
        if self
            .studied
            .as_ref()
            .is_some_and(|(of, _)| *of != until(events))
        {
            // What nobody holds is not copied to be gone on with.
            self.studied = None;
        }
        self.folding.go_on(events, questions.items(), most)
    }
}

thread_local! {
    static LATEST: RefCell<Latest> = RefCell::default();
}

/// How many events are folded between two looks at the clock.
const AT_ONCE: usize = 100;

/// Folds the record as it is, in slices.
pub(super) async fn fold(log: OpenLog, questions: Questions, work: &mut Sliced) {
    let further = || {
        log.look(|events| LATEST.with_borrow_mut(|latest| latest.go_on(events, questions, AT_ONCE)))
    };
    while !further() {
        work.rest().await;
    }
}

/// How this page's student stands now.
pub fn studied(questions: Questions) -> Rc<Studied> {
    studied_by(log(), questions)
}

/// The same, by the record of the page.
pub(super) fn studied_by(log: OpenLog, questions: Questions) -> Rc<Studied> {
    log.look(|events| LATEST.with_borrow_mut(|latest| latest.studied(events, questions)))
}

/// The same, if it was asked for before and nothing has changed since.
pub(super) fn known(log: OpenLog) -> Option<Rc<Studied>> {
    log.look(|events| LATEST.with_borrow(|latest| latest.known(events)))
}
