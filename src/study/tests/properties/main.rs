//! Laws of the scheduler and of forms, over a thousand seeds each.

mod forms;
mod standing;
mod weeks;

use std::collections::{BTreeMap, BTreeSet, HashSet};
use study::{
    answer::Answer,
    day::Day,
    form::{Form, Mode, Request, SharedForm, Stale, Unfit, assemble, compare, quotas},
    item::Bank,
    mastery::{Band, FirstTries, Mastery, Readiness, Target},
    memory::{Examination, Memory, Queue, Reason, Schedule},
    simulation::{Chance, bank},
    sitting::{Length, Summary, Wanted, Why, compose},
};

const SEEDS: u64 = 1000;

fn answer(bank: &Bank, place: usize, right: bool, day: Day) -> Answer {
    let item = &bank.items()[place];
    Answer {
        question: item.id.clone(),
        competency: item.competency.clone(),
        right,
        hint: false,
        unsure: false,
        seconds: item.seconds,
        first_try: true,
        day,
    }
}

/// A record by chance: over some months, with a clock that is moved now and then
/// and questions that no longer exist.
fn record(bank: &Bank, chance: &mut Chance, answers: usize) -> (Vec<Answer>, Day) {
    let mut today = 20_000;
    let list = (0..answers)
        .map(|_| {
            if chance.happens(0.1) {
                today += i32::try_from(chance.below(6)).unwrap();
            }
            let moved = match chance.below(60) {
                0 => -400,
                1 => 400,
                _ => 0,
            };
            let place = chance.below(bank.items().len());
            let mut answer = answer(bank, place, chance.happens(0.8), Day(today + moved));
            answer.hint = chance.happens(0.1);
            answer.unsure = chance.happens(0.1);
            answer.seconds = u32::try_from(chance.below(90)).unwrap();
            if chance.happens(0.02) {
                answer.question = "vanished".into();
            }
            answer
        })
        .collect();
    (list, Day(today))
}

fn schedule(chance: &mut Chance, today: Day) -> Schedule {
    let examination = match chance.below(4) {
        0 => None,
        // In the past, today, or ahead.
        _ => Some(Examination(Day(
            today.0 - 5 + i32::try_from(chance.below(90)).unwrap()
        ))),
    };
    Schedule::new(today, examination, 0.6 + chance.part())
}

#[test]
fn the_scheduler_loses_nothing_and_never_looks_back() {
    for seed in 0..SEEDS {
        let mut chance = Chance::new(seed);
        let bank = bank(40 + chance.below(40), seed);
        let (record, today) = record(&bank, &mut chance, 120);
        let memory = Memory::of(&bank, &record);
        let schedule = schedule(&mut chance, today);
        let queue = Queue::of(&bank, &memory, &schedule, today);
        let due: BTreeSet<usize> = queue.due.iter().map(|due| due.place).collect();
        assert_eq!(due.len(), queue.due.len(), "seed {seed}: asked twice");
        for (place, trace) in memory.known() {
            let (day, reason) = schedule.due(bank.hash(place), trace);
            assert!(
                day > trace.last,
                "seed {seed}: due on the day of the review or before"
            );
            assert!(trace.state.stability.is_finite() && trace.state.stability > 0.0);
            if trace.last > today {
                assert!(due.contains(&place), "seed {seed}: hidden by a clock");
            } else {
                assert_eq!(due.contains(&place), day <= today, "seed {seed}");
                let later = Queue::of(&bank, &memory, &schedule, day);
                assert!(
                    later.due.iter().any(|d| d.place == place),
                    "seed {seed}: lost"
                );
            }
            if let Some(examination) = schedule.examination
                && trace.last < examination.0
            {
                let left = examination.0.since(trace.last);
                assert!(
                    day.since(trace.last) <= left.div_ceil(5).max(1),
                    "seed {seed}"
                );
                assert!(
                    day <= examination.0 || reason == Reason::Fading,
                    "seed {seed}"
                );
            }
        }
    }
}

#[test]
fn a_sitting_obeys_its_time_and_leaves_nothing_out() {
    for seed in 0..SEEDS {
        let mut chance = Chance::new(seed);
        let bank = bank(60, seed);
        let answers = 60 + chance.below(60);
        let (record, today) = record(&bank, &mut chance, answers);
        let memory = Memory::of(&bank, &record);
        let schedule = schedule(&mut chance, today);
        let learning = ["procedure-3".to_string(), "procedure-1".to_string()];
        let without: HashSet<usize> = [chance.below(60)].into();
        let wanted = Wanted {
            length: Length::ALL[chance.below(3)],
            budget: u32::try_from(chance.below(1500)).unwrap(),
            learning: &learning,
            without: &without,
            today,
        };
        let sitting = compose(&bank, &memory, &schedule, &wanted);
        let taken: u32 = sitting.asks.iter().map(|ask| ask.seconds).sum();
        assert_eq!(taken, sitting.seconds, "seed {seed}");
        assert!(
            taken <= wanted.budget && taken <= wanted.length.minutes() * 60,
            "seed {seed}"
        );
        let asked: BTreeSet<usize> = sitting.asks.iter().map(|ask| ask.place).collect();
        assert_eq!(asked.len(), sitting.asks.len(), "seed {seed}: asked twice");
        assert!(
            asked.is_disjoint(&without.iter().copied().collect()),
            "seed {seed}"
        );
        let (queue, _) = Queue::within(&bank, &memory, &schedule, today, wanted.budget);
        let due: BTreeSet<usize> = queue
            .due
            .iter()
            .map(|due| due.place)
            .filter(|place| !without.contains(place))
            .collect();
        let reviews = sitting.asks.iter().filter(|ask| ask.why != Why::New);
        let kept: BTreeSet<usize> = reviews
            .map(|ask| ask.place)
            .chain(sitting.left.iter().map(|due| due.place))
            .collect();
        assert_eq!(kept, due, "seed {seed}: a review was lost");
        let new: Vec<usize> = sitting
            .asks
            .iter()
            .filter(|a| a.why == Why::New)
            .map(|a| a.place)
            .collect();
        assert!(
            new.iter().all(|&place| memory.trace(place).is_none()),
            "seed {seed}"
        );
        if sitting.left.iter().any(|due| due.reason.presses()) {
            assert!(
                new.is_empty(),
                "seed {seed}: new matter while reviews press"
            );
        }
        // Reviews stand before new matter.
        let first_new = sitting.asks.iter().position(|ask| ask.why == Why::New);
        let from = first_new.unwrap_or(sitting.asks.len());
        assert!(
            sitting.asks[from..].iter().all(|ask| ask.why == Why::New),
            "seed {seed}"
        );
        assert_eq!(
            sitting,
            compose(&bank, &memory, &schedule, &wanted),
            "seed {seed}"
        );
    }
}

#[test]
fn new_matter_follows_the_procedures_being_learnt() {
    let bank = bank(80, 4);
    let memory = Memory::default();
    let learning = ["procedure-3".to_string(), "procedure-1".to_string()];
    let without = HashSet::new();
    let wanted = Wanted {
        length: Length::Twenty,
        budget: 1200,
        learning: &learning,
        without: &without,
        today: Day(0),
    };
    let sitting = compose(&bank, &memory, &Schedule::new(Day(0), None, 1.0), &wanted);
    let ranks: BTreeMap<&str, usize> = [("procedure-3", 0), ("procedure-1", 1)].into();
    let rank = |place: usize| {
        *ranks
            .get(bank.items()[place].procedures[0].as_str())
            .unwrap_or(&2)
    };
    let seen: Vec<usize> = sitting.asks.iter().map(|ask| rank(ask.place)).collect();
    assert!(seen.contains(&0) && seen.contains(&1) && seen.contains(&2));
    // Interleaving may move a question by a few places, no more.
    for (at, &rank) in seen.iter().enumerate() {
        let before = seen[..at.saturating_sub(4)].iter();
        assert!(before.copied().all(|earlier| earlier <= rank), "{seen:?}");
    }
}

#[test]
fn a_record_replays_to_the_same_at_any_time() {
    let bank = bank(500, 6);
    let (record, _) = record(&bank, &mut Chance::new(6), 10_000);
    let start = std::time::Instant::now();
    let memory = Memory::of(&bank, &record);
    let tries = FirstTries::of(&bank, &record);
    println!("10,000 answers folded in {:?}", start.elapsed());
    let mut again = Memory::of(&bank, &record[..4000]);
    let mut tries_again = FirstTries::of(&bank, &record[..4000]);
    for answer in &record[4000..] {
        again.take(&bank, answer);
        tries_again.take(&bank, answer);
    }
    assert!(memory.known().eq(again.known()));
    assert_eq!(memory.reviews(), again.reviews());
    assert_eq!(Mastery::of(&bank, &tries), Mastery::of(&bank, &tries_again));
    let remarks = memory.remarks().join(" ");
    assert!(
        remarks.contains("no longer has") && remarks.contains("clock"),
        "{remarks}"
    );
}

#[test]
fn only_first_answers_without_hint_are_evidence() {
    let bank = bank(30, 8);
    let first = answer(&bank, 0, true, Day(1));
    let mut hinted = answer(&bank, 1, true, Day(1));
    hinted.hint = true;
    let mut seen = answer(&bank, 2, true, Day(1));
    seen.first_try = false;
    let again = [
        answer(&bank, 0, false, Day(40)),
        answer(&bank, 1, true, Day(40)),
    ];
    let mut record = vec![first, hinted, seen];
    record.extend(again);
    let mastery = Mastery::of(&bank, &FirstTries::of(&bank, &record));
    assert_eq!(mastery.count, 1);
    assert_eq!(mastery.last, Some(Day(1)));
    let place = bank.competency(0);
    let standing = &mastery.standings[place];
    assert_eq!(
        (standing.count, standing.right, standing.percent),
        (1, 1, None)
    );
    let thin = format!("Your evidence in competency {place} is thin: 1 answer.");
    assert_eq!(standing.words, thin);
}

#[test]
fn a_summary_says_what_comes_back_and_never_before_tomorrow() {
    for seed in 0..100 {
        let mut chance = Chance::new(seed);
        let bank = bank(50, seed);
        let (mut record, today) = record(&bank, &mut chance, 80);
        let sitting: Vec<Answer> = (0..12)
            .map(|_| answer(&bank, chance.below(50), chance.happens(0.7), today))
            .collect();
        record.extend(sitting.clone());
        let memory = Memory::of(&bank, &record);
        let schedule = schedule(&mut chance, today);
        let summary = Summary::of(&bank, &memory, &schedule, &sitting, today);
        let asked: BTreeSet<&str> = sitting.iter().map(|a| a.question.as_str()).collect();
        let all = summary.learnt.iter().chain(&summary.shaky);
        assert_eq!(all.clone().count(), asked.len());
        assert!(all.clone().all(|then| then.day > today), "seed {seed}");
        assert_eq!(summary.words.len(), 3, "{:?}", summary.words);
    }
}
