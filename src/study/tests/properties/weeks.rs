//! The coming weeks, played forward.

use super::*;
use study::{
    memory::{DayLoad, Feasibility, Grade, Outlook, Trace},
    numeric::whole,
};

#[test]
fn the_coming_weeks_keep_within_the_minutes() {
    let bank = bank(200, 7);
    let (record, today) = record(&bank, &mut Chance::new(1), 150);
    let memory = Memory::of(&bank, &record);
    let schedule = Schedule::new(today, None, 1.0);
    let outlook = Outlook::of(&bank, &memory, &schedule, today, 28, Some(5));
    assert_eq!((outlook.days.len(), outlook.weeks().len()), (28, 4));
    assert!(outlook.days.iter().all(|day| day.seconds <= 300));
    let free = Outlook::of(&bank, &memory, &schedule, today, 28, None);
    assert!(free.days.iter().all(|day| day.new == 0 && day.left == 0));
    let examination = Examination(today.plus(30));
    let few = Feasibility::of(&bank, &memory, examination, 1.0, today, 1);
    let many = Feasibility::of(&bank, &memory, examination, 1.0, today, 180);
    assert!(
        !few.feasible && many.feasible,
        "{} / {}",
        few.words,
        many.words
    );
    assert!(few.begun < many.begun && few.recalled < many.recalled);
    let needed = many.minutes_for_all.unwrap();
    assert!(Feasibility::of(&bank, &memory, examination, 1.0, today, needed).feasible);
    let past = Feasibility::of(&bank, &memory, Examination(today.minus(1)), 1.0, today, 10);
    assert!(past.words.contains("has passed"), "{}", past.words);
}

/// The same days played as they are defined: every day each question is dated
/// anew, and all that is due is put in order by its recall.
struct Plainly<'a> {
    bank: &'a Bank,
    schedule: &'a Schedule,
    pace: f64,
    traces: Vec<Option<Trace>>,
}

impl Plainly<'_> {
    fn seconds(&self, place: usize) -> u32 {
        let usual = f64::from(self.bank.items()[place].seconds);
        whole(usual * self.pace.clamp(0.5, 2.0)).max(1)
    }

    fn day(&mut self, day: Day, minutes: Option<u32>) -> DayLoad {
        let budget = minutes.map_or(u32::MAX, |minutes| minutes * 60);
        let (mut reviews, mut left, mut new, mut seconds) = (0, 0, 0, 0);
        let mut due = Vec::new();
        for (place, trace) in self.traces.iter().enumerate() {
            let Some(trace) = trace else { continue };
            let (when, reason) = self.schedule.due(self.bank.hash(place), trace);
            if when <= day && trace.last < day {
                due.push((!reason.presses(), self.schedule.recall(trace, day), place));
            }
        }
        due.sort_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
        for (waits, recall, place) in due {
            let cost = whole(f64::from(self.seconds(place)) * (2.0 - recall));
            if seconds + cost > budget {
                left += u32::from(!waits);
                continue;
            }
            let model = &self.schedule.model;
            if let Some(trace) = &mut self.traces[place] {
                trace.state = model.next(trace.state, day.since(trace.last), Grade::Recalled);
                trace.last = day;
            }
            seconds += cost;
            reviews += 1;
        }
        for place in 0..self.bank.items().len() {
            if minutes.is_none() || left > 0 {
                break;
            }
            if self.traces[place].is_some() {
                continue;
            }
            let cost = self.seconds(place);
            if seconds + cost > budget {
                break;
            }
            self.traces[place] = Some(Trace {
                state: self.schedule.model.first(Grade::Recalled),
                first: day,
                last: day,
                answers: 1,
                misses: 0,
                grade: Grade::Recalled,
            });
            seconds += cost;
            new += 1;
        }
        DayLoad {
            day,
            reviews,
            left,
            new,
            seconds,
        }
    }
}

#[test]
fn the_coming_weeks_come_as_they_are_defined() {
    for seed in 0..300 {
        let mut chance = Chance::new(seed);
        let bank = bank(40 + chance.below(120), seed);
        let answers = chance.below(400);
        let (record, today) = record(&bank, &mut chance, answers);
        let memory = Memory::of(&bank, &record);
        let schedule = schedule(&mut chance, today);
        let days = 1 + u32::try_from(chance.below(40)).unwrap();
        let minutes = match chance.below(4) {
            0 => None,
            _ => Some(1 + u32::try_from(chance.below(20)).unwrap()),
        };
        let mut plainly = Plainly {
            bank: &bank,
            schedule: &schedule,
            pace: memory.pace().mean(),
            traces: vec![None; bank.items().len()],
        };
        for (place, trace) in memory.known() {
            let last = trace.last.min(today);
            plainly.traces[place] = Some(Trace { last, ..*trace });
        }
        let wanted: Vec<DayLoad> = (0..days)
            .map(|ahead| plainly.day(today.plus(ahead), minutes))
            .collect();
        let found = Outlook::of(&bank, &memory, &schedule, today, days, minutes);
        assert_eq!(found.days, wanted, "seed {seed}");
        let end = today.plus(days);
        for (recall, trace) in found.recall.iter().zip(&plainly.traces) {
            let wanted = trace.as_ref().map_or(0.0, |t| schedule.recall(t, end));
            assert_eq!(recall.to_bits(), wanted.to_bits(), "seed {seed}");
        }
    }
}
