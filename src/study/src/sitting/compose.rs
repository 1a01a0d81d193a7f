//! Composing a sitting.

use crate::{
    day::Day,
    item::Bank,
    memory::{Due, Memory, Queue, Reason, Schedule, by_weight},
    numeric::whole,
};
use std::collections::HashSet;

/// How long a sitting is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Length {
    /// Five minutes.
    Five,
    /// Ten minutes.
    Ten,
    /// Twenty minutes.
    Twenty,
}

impl Length {
    /// All of them, the shortest first.
    pub const ALL: [Self; 3] = [Self::Five, Self::Ten, Self::Twenty];

    /// In minutes.
    pub fn minutes(self) -> u32 {
        match self {
            Self::Five => 5,
            Self::Ten => 10,
            Self::Twenty => 20,
        }
    }
}

/// What a sitting is composed for.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted<'a> {
    /// How long it is.
    pub length: Length,
    /// What is left of the student's daily time, in seconds.
    pub budget: u32,
    /// The procedures being learnt, by id, in order.
    pub learning: &'a [String],
    /// Questions set aside by an instructor, or asked already in this sitting, by place.
    pub without: &'a HashSet<usize>,
    /// The day.
    pub today: Day,
}

/// Why a question is in a sitting.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// A review.
    Review(Reason),
    /// New.
    New,
}

impl Why {
    /// The reason in words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Review(reason) => reason.words(),
            Self::New => "This is new.",
        }
    }
}

/// A question to be asked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ask {
    /// Its place in the bank.
    pub place: usize,
    /// Why it is asked.
    pub why: Why,
    /// How long it should take this student, in seconds.
    pub seconds: u32,
}

/// A sitting.
#[derive(Clone, Debug, PartialEq)]
pub struct Sitting {
    /// What is asked, in order.
    pub asks: Vec<Ask>,
    /// How long all of it should take, in seconds.
    pub seconds: u32,
    /// Reviews that are due and did not fit; they stay due.
    pub left: Vec<Due>,
    /// What it is made of, in a sentence.
    pub words: String,
}

/// Composes a sitting: what is due, the most nearly forgotten first within the
/// blueprint's weights, then new matter if all that presses fits into the day's
/// time. Neighbours differ in family where they can.
pub fn compose(bank: &Bank, memory: &Memory, schedule: &Schedule, wanted: &Wanted<'_>) -> Sitting {
    let time = (wanted.length.minutes() * 60).min(wanted.budget);
    let (mut queue, _) = Queue::within(bank, memory, schedule, wanted.today, wanted.budget);
    queue.due.retain(|due| !wanted.without.contains(&due.place));
    let room_for_new = !queue.overflows(wanted.budget);
    let mut seconds = 0;
    let mut reviews = Vec::new();
    let mut waiting = Vec::new();
    let mut left = Vec::new();
    for due in queue.due {
        if !due.reason.presses() {
            waiting.push(due);
        } else if seconds + due.seconds <= time {
            seconds += due.seconds;
            reviews.push(review(&due));
        } else {
            left.push(due);
        }
    }
    // New matter before what only the examination's nearness brings round.
    let mut new = Vec::new();
    if room_for_new && left.is_empty() {
        let pace = memory.pace().mean().clamp(0.5, 2.0);
        for place in unseen(bank, memory, wanted) {
            let usual = bank.items()[place].seconds;
            let cost = whole(f64::from(usual) * pace).max(1);
            if seconds + cost > time {
                break;
            }
            seconds += cost;
            new.push(Ask {
                place,
                why: Why::New,
                seconds: cost,
            });
        }
    }
    for due in waiting {
        if seconds + due.seconds <= time {
            seconds += due.seconds;
            reviews.push(review(&due));
        } else {
            left.push(due);
        }
    }
    let words = words(reviews.len(), new.len(), left.len(), seconds, time);
    let mut asks = interleaved(bank, reviews, None);
    let last = asks.last().map(|ask| ask.place);
    asks.extend(interleaved(bank, new, last));
    Sitting {
        asks,
        seconds,
        left,
        words,
    }
}

fn review(due: &Due) -> Ask {
    Ask {
        place: due.place,
        why: Why::Review(due.reason),
        seconds: due.seconds,
    }
}

/// What was never asked, in the order in which it is learnt: by procedure, the
/// easier first, competencies by weight; what belongs to no procedure being
/// learnt comes last.
fn unseen(bank: &Bank, memory: &Memory, wanted: &Wanted<'_>) -> Vec<usize> {
    let rank = |place: usize| {
        let procedures = &bank.items()[place].procedures;
        wanted
            .learning
            .iter()
            .position(|id| procedures.contains(id))
            .unwrap_or(wanted.learning.len())
    };
    let difficulty = |place: usize| bank.items()[place].difficulty.mean;
    let mut places: Vec<(usize, usize)> = (0..bank.items().len())
        .filter(|&place| memory.trace(place).is_none() && !wanted.without.contains(&place))
        .map(|place| (rank(place), place))
        .collect();
    places.sort_by(|&(r, x), &(s, y)| {
        r.cmp(&s)
            .then(difficulty(x).total_cmp(&difficulty(y)))
            .then(x.cmp(&y))
    });
    let weights = bank.blueprint().weights();
    places
        .chunk_by(|x, y| x.0 == y.0)
        .flat_map(|group| {
            let group: Vec<usize> = group.iter().map(|&(_, place)| place).collect();
            by_weight(group, &weights, |&place| bank.competency(place))
        })
        .collect()
}

/// Puts another family between two of one where one of the next few allows it,
/// so that the order of urgency is kept but for a step or two.
fn interleaved(bank: &Bank, asks: Vec<Ask>, before: Option<usize>) -> Vec<Ask> {
    const AHEAD: usize = 4;
    let family = |place: usize| bank.items()[place].family.as_str();
    let mut rest: std::collections::VecDeque<Ask> = asks.into();
    let mut ordered = Vec::with_capacity(rest.len());
    let mut last = before;
    while !rest.is_empty() {
        let other = |ask: &Ask| last.is_none_or(|last| family(last) != family(ask.place));
        let at = rest.iter().take(AHEAD).position(other).unwrap_or(0);
        if let Some(ask) = rest.remove(at) {
            last = Some(ask.place);
            ordered.push(ask);
        }
    }
    ordered
}

fn words(reviews: usize, new: usize, left: usize, seconds: u32, time: u32) -> String {
    if time == 0 {
        return "Today's time is used up. What is due stays due.".into();
    }
    let number =
        |count: usize, thing: &str| format!("{count} {thing}{}", if count == 1 { "" } else { "s" });
    let made = match (reviews, new) {
        (0, 0) if left == 0 => "Nothing is due, and nothing new is left.".to_string(),
        (0, 0) => "No question fits into this time.".to_string(),
        (0, n) => format!(
            "{}, about {} min.",
            number(n, "new question"),
            seconds.div_ceil(60)
        ),
        (r, 0) => format!(
            "{}, about {} min.",
            number(r, "review"),
            seconds.div_ceil(60)
        ),
        (r, n) => format!(
            "{} and {}, about {} min.",
            number(r, "review"),
            number(n, "new question"),
            seconds.div_ceil(60)
        ),
    };
    match left {
        0 => made,
        left => format!(
            "{made} {} more can wait for another sitting.",
            number(left, "review")
        ),
    }
}
