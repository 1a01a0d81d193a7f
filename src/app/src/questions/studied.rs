//! What the record says of a student, over all questions: a fold, made anew
//! whenever it is needed.

use super::{Questions, days, plan::Plan};
use crate::{browser::clock, log::log};
use record::{Event, Id, Moment, Verdict, folds};
use std::{cell::RefCell, collections::HashMap, rc::Rc};
use study::{
    answer::Answer,
    day::Day,
    mastery::FirstTries,
    memory::{Memory, Schedule, multiplier},
};

/// What a student has shown and remembers.
pub struct Studied {
    /// Every answer that is evidence, in the order of the record.
    pub answers: Vec<Answer>,
    /// What is remembered.
    pub memory: Memory,
    /// The first answers.
    pub tries: FirstTries,
    /// By what reviews are dated.
    pub schedule: Schedule,
    /// What is set.
    pub plan: Plan,
    /// The day of study.
    pub today: Day,
    /// What is unusual, in sentences: the clock, questions that have gone, an
    /// examination day that has passed.
    pub remarks: Vec<String>,
}

/// A neither seen nor answered question for so many days is met afresh.
const FRESH_AFTER: u32 = 14;

impl Studied {
    /// What these events say at this moment.
    pub fn of(events: &[Event], questions: Questions, now: Moment) -> Self {
        let bank = questions.items();
        let answers = answers(events);
        let memory = Memory::of(bank, &answers);
        let tries = FirstTries::of(bank, &answers);
        let (plan, today) = (Plan::of(events), days::day(now));
        let usual = Schedule::new(today, None, 1.0);
        let multiplier = multiplier(&usual.model, memory.reviews());
        let schedule = Schedule::new(today, plan.examination(), multiplier);
        let mut remarks = memory.remarks();
        let last = events.last().map(|event| days::moment(event.at));
        remarks.extend(last.and_then(|last| days::moment(now).unusual_after(last)));
        let passed = plan
            .examination()
            .filter(|examination| examination.0 < today);
        remarks.extend(passed.map(|examination| examination.words(today)));
        Self {
            answers,
            memory,
            tries,
            schedule,
            plan,
            today,
            remarks,
        }
    }

    /// How many seconds were studied today.
    pub fn seconds_today(&self) -> u32 {
        let today = self.answers.iter().rev();
        today
            .take_while(|answer| answer.day >= self.today)
            .fold(0, |sum, answer| sum.saturating_add(answer.seconds))
    }
}

/// The evidence of the record as study takes it.
pub fn answers(events: &[Event]) -> Vec<Answer> {
    let mut seen: HashMap<&str, Day> = HashMap::new();
    let evidence = folds::evidence(events);
    let taken = evidence.iter().map(|folds::Answered { at, answer }| {
        let day = days::day(*at);
        let before = seen.insert(answer.question.as_str(), day);
        Answer {
            question: answer.question.clone(),
            competency: answer.competency.clone(),
            right: answer.verdict == Verdict::Right,
            hint: answer.hint,
            unsure: answer.unsure,
            seconds: answer.seconds,
            first_try: before.is_none_or(|before| day.since(before) >= FRESH_AFTER),
            day,
        }
    });
    taken.collect()
}

/// When something was folded: how many events there were, the last of them,
/// and the day.
type Folded = (usize, Option<Id>, Day);

thread_local! {
    static LATEST: RefCell<Option<(Folded, Rc<Studied>)>> = const { RefCell::new(None) };
}

/// What this page's record says now. It is folded anew only when the record or
/// the day has changed: a record of years takes a while.
pub fn studied(questions: Questions) -> Rc<Studied> {
    let now = clock::now();
    log().look(|events| {
        let key = (
            events.len(),
            events.last().map(|event| event.id),
            days::day(now),
        );
        let known = LATEST.with_borrow(|latest| {
            let latest = latest.as_ref().filter(|(folded, _)| *folded == key);
            latest.map(|(_, studied)| Rc::clone(studied))
        });
        known.unwrap_or_else(|| {
            let studied = Rc::new(Studied::of(events, questions, now));
            LATEST.set(Some((key, Rc::clone(&studied))));
            studied
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use record::{
        FormBegun, FormFinished, Given, Log, MemoryStore, PerCent, QuestionAnswered, SittingId,
        What, Writer,
    };

    fn answered(sitting: u64, question: &str, verdict: Verdict) -> What {
        What::QuestionAnswered(QuestionAnswered {
            sitting: SittingId(sitting),
            question: question.into(),
            wording: 1,
            competency: "c".into(),
            answer: Given::One("a".into()),
            verdict,
            per_cent: PerCent::of(0),
            hint: false,
            unsure: false,
            seconds: 10,
        })
    }

    fn record(whats: &[(i64, What)]) -> Vec<Event> {
        let mut log = Log::open(MemoryStore::new(), Writer(1));
        for (day, what) in whats {
            let at = Moment {
                utc_ms: (20_000 + day) * 86_400_000 + 43_200_000,
                offset_min: 0,
            };
            log.append(at, what.clone());
        }
        log.events().to_vec()
    }

    #[test]
    fn a_first_try_is_one_that_was_not_seen_for_two_weeks() {
        let right = Verdict::Right;
        let events = record(&[
            (0, answered(1, "q", right)),
            (0, answered(1, "q", right)),
            (13, answered(2, "q", right)),
            (27, answered(3, "q", Verdict::Unsafe)),
        ]);
        let answers = answers(&events);
        let tries: Vec<bool> = answers.iter().map(|answer| answer.first_try).collect();
        assert_eq!(tries, [true, false, false, true]);
        assert!(!answers[3].right);
    }

    #[test]
    fn of_a_form_only_the_last_answers_count_and_only_once_it_is_handed_in() {
        let form = SittingId(9);
        let begun = What::FormBegun(FormBegun {
            form,
            questions: vec!["q".into()],
            code: None,
            minutes: None,
            pass: PerCent::of(75),
        });
        let mut whats = vec![
            (0, begun),
            (0, answered(9, "q", Verdict::Wrong)),
            (0, answered(9, "q", Verdict::Right)),
        ];
        assert!(answers(&record(&whats)).is_empty());
        whats.push((0, What::FormFinished(FormFinished { form })));
        let answers = answers(&record(&whats));
        assert_eq!(answers.len(), 1);
        assert!(answers[0].right);
    }
}
