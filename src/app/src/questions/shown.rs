//! What a student has shown and remembers, kept up with a record that grows:
//! each answer is folded once, in pieces as large as the page allows.

use super::days;
use record::{Event, Verdict, folds::Evidence};
use std::{collections::HashMap, rc::Rc};
use study::{answer::Answer, day::Day, item::Bank, mastery::FirstTries, memory::Memory};

/// What a student has shown and remembers.
#[derive(Clone, Default)]
pub struct Shown {
    /// Every answer that is evidence, in the order of the record.
    pub answers: Vec<Answer>,
    /// What is remembered.
    pub memory: Memory,
    /// The first answers.
    pub tries: FirstTries,
}

/// A neither seen nor answered question for so many days is met afresh.
const FRESH_AFTER: u32 = 14;

/// The fold, and how far it has come.
#[derive(Default)]
pub struct Folding {
    shown: Rc<Shown>,
    /// The day each question was last met on.
    met: HashMap<String, Day>,
    evidence: Evidence,
    /// How many events `evidence` knows, and the last of them.
    known: usize,
    last: Option<Event>,
    /// How many of them are folded.
    folded: usize,
}

impl Folding {
    /// Folds up to `most` events more of this record, and gives whether it has
    /// come to its end. A record that has grown elsewhere than at its end, by
    /// what another tab or device wrote, is folded from its beginning.
    pub fn go_on(&mut self, events: &[Event], bank: &Bank, most: usize) -> bool {
        if !self.keeps_up(events) {
            *self = Self {
                evidence: Evidence::of(events),
                known: events.len(),
                last: events.last().cloned(),
                ..Self::default()
            };
        }
        let end = events.len().min(self.folded.saturating_add(most));
        if end > self.folded {
            let shown = Rc::make_mut(&mut self.shown);
            for (place, event) in events.iter().enumerate().take(end).skip(self.folded) {
                if let Some(it) = self.evidence.at(place, event) {
                    let answer = answer(&mut self.met, days::day(it.at), it.answer);
                    shown.memory.take(bank, &answer);
                    shown.tries.take(bank, &answer);
                    shown.answers.push(answer);
                }
            }
            self.folded = end;
        }
        self.folded == events.len()
    }

    /// Whether what was folded still stands in a record, at its beginning.
    fn keeps_up(&mut self, events: &[Event]) -> bool {
        // Events stand in one order, so that one that came in between moves the last.
        let there = self.known.checked_sub(1).and_then(|at| events.get(at));
        if there.is_none() || there != self.last.as_ref() {
            return false;
        }
        let (before, new) = events.split_at(self.known);
        if let Some(last) = new.last() {
            self.last = Some(last.clone());
            self.known = events.len();
        }
        self.evidence.go_on(before, new)
    }

    /// What the events say that were folded.
    pub fn shown(&self) -> Rc<Shown> {
        Rc::clone(&self.shown)
    }
}

/// An answer as study takes it.
fn answer(met: &mut HashMap<String, Day>, day: Day, given: &record::QuestionAnswered) -> Answer {
    let before = met.get_mut(&given.question);
    let before = before.map(|met| std::mem::replace(met, day));
    if before.is_none() {
        met.insert(given.question.clone(), day);
    }
    Answer {
        question: given.question.clone(),
        competency: given.competency.clone(),
        right: given.verdict == Verdict::Right,
        hint: given.hint,
        unsure: given.unsure,
        seconds: given.seconds,
        first_try: before.is_none_or(|before| day.since(before) >= FRESH_AFTER),
        day,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use record::{
        FormBegun, FormFinished, Given, Log, MemoryStore, Moment, PerCent, QuestionAnswered,
        SittingId, What, Writer,
    };
    use study::item::{Blueprint, Item, Level, Share};

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

    /// A bank of the questions `q` and `r`.
    fn bank() -> Bank {
        let item = |id: &str| Item {
            id: id.into(),
            competency: "c".into(),
            family: "f".into(),
            difficulty: Level::Core.difficulty(),
            seconds: 10,
            guess: 0.25,
            procedures: Vec::new(),
            enemies: Vec::new(),
        };
        let share = Share {
            id: "c".into(),
            name: "C".into(),
            weight: 1.0,
        };
        Bank::new(Blueprint(vec![share]), [item("q"), item("r")]).0
    }

    fn answers(events: &[Event]) -> Vec<Answer> {
        let mut folding = Folding::default();
        assert!(folding.go_on(events, &bank(), usize::MAX));
        folding.shown().answers.clone()
    }

    fn form_begun(form: u64) -> What {
        What::FormBegun(FormBegun {
            form: SittingId(form),
            questions: vec!["q".into()],
            code: None,
            minutes: None,
            pass: PerCent::of(75),
        })
    }

    /// Answers in two sittings, one of which may be a form, in any order.
    fn anything() -> impl Strategy<Value = Vec<(i64, What)>> {
        let question = prop_oneof![Just("q"), Just("r"), Just("gone")];
        let verdict = prop_oneof![Just(Verdict::Right), Just(Verdict::Wrong)];
        let what = prop_oneof![
            6 => (1..3_u64, question, verdict).prop_map(|(id, it, how)| answered(id, it, how)),
            1 => Just(form_begun(2)),
            1 => Just(What::FormFinished(FormFinished { form: SittingId(2) })),
        ];
        proptest::collection::vec((0..40_i64, what), 1..20)
    }

    proptest! {
        #[test]
        fn going_on_comes_to_the_same_as_beginning_anew(
            whats in anything(),
            // Events known at each look, and how many are folded then.
            looks in proptest::collection::vec((any::<proptest::sample::Index>(), 0..9_usize), 0..6),
            missing in any::<proptest::sample::Index>(),
            from in 0..6_usize,
        ) {
            let (events, bank) = (record(&whats), bank());
            let mut folding = Folding::default();
            for (at, (upto, most)) in looks.iter().enumerate() {
                let mut known = events[..upto.index(events.len() + 1)].to_vec();
                // What another device wrote comes in between later.
                if at < from && !known.is_empty() {
                    known.remove(missing.index(known.len()));
                }
                folding.go_on(&known, &bank, *most);
            }
            prop_assert!(folding.go_on(&events, &bank, usize::MAX));
            let mut anew = Folding::default();
            anew.go_on(&events, &bank, usize::MAX);
            let (found, wanted) = (folding.shown(), anew.shown());
            prop_assert_eq!(&found.answers, &wanted.answers);
            prop_assert_eq!(found.memory.reviews(), wanted.memory.reviews());
            prop_assert!(found.memory.known().eq(wanted.memory.known()));
            prop_assert_eq!(found.memory.remarks(), wanted.memory.remarks());
            prop_assert_eq!(found.tries.count(), wanted.tries.count());
        }
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
        let (form, begun) = (SittingId(9), form_begun(9));
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
