//! The coming weeks: how many reviews fall on each day, and what an examination
//! day and so many minutes a day allow.
//!
//! Days are played forward with the same rules as Today. Every review is taken as
//! recalled; the time of the repeats after a miss is added by the chance of one.

use super::{course::Course, examination::Examination, fold::Memory, schedule::Schedule};
use crate::{
    day::Day,
    item::Bank,
    numeric::real,
    slices::{at_once, never},
};

/// What one day is expected to bring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayLoad {
    /// The day.
    pub day: Day,
    /// Reviews done.
    pub reviews: u32,
    /// Reviews left for another day because the time was used up.
    pub left: u32,
    /// Questions asked for the first time.
    pub new: u32,
    /// Time taken, in seconds.
    pub seconds: u32,
}

/// Seven days together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Week {
    /// Its first day.
    pub from: Day,
    /// Reviews in the week.
    pub reviews: u32,
    /// New questions in the week.
    pub new: u32,
    /// Minutes in the week, rounded up.
    pub minutes: u32,
}

/// The coming days.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Outlook {
    /// Day by day, from today.
    pub days: Vec<DayLoad>,
    /// The chance of recall at the end for every question of the bank; 0 where
    /// it was not begun.
    pub recall: Vec<f64>,
}

/// What an examination day and so many minutes a day allow.
#[derive(Clone, Debug, PartialEq)]
pub struct Feasibility {
    /// Questions that can be begun by the day, those already begun included.
    pub begun: usize,
    /// Questions in all.
    pub all: usize,
    /// About how many of them would be recalled on the day.
    pub recalled: u32,
    /// The least whole minutes a day that let every question be begun and nothing
    /// pressing be left; nothing where even three hours do not do.
    pub minutes_for_all: Option<u32>,
    /// Whether the minutes given do.
    pub feasible: bool,
    /// All this in sentences.
    pub words: String,
}

/// The most minutes a day that are thought of.
const MOST_MINUTES: u32 = 180;

impl Outlook {
    /// The `days` days from `today`. With `minutes`, each day stops there and new
    /// questions fill what the reviews leave; without, every review is done and
    /// nothing new is begun.
    pub fn of(
        bank: &Bank,
        memory: &Memory,
        schedule: &Schedule,
        today: Day,
        days: u32,
        minutes: Option<u32>,
    ) -> Self {
        at_once(Self::in_slices(
            bank, memory, schedule, today, days, minutes, &mut never,
        ))
    }

    /// The same in slices, with a pause after each day.
    pub async fn in_slices(
        bank: &Bank,
        memory: &Memory,
        schedule: &Schedule,
        today: Day,
        days: u32,
        minutes: Option<u32>,
        pause: &mut impl AsyncFnMut(),
    ) -> Self {
        let start = Course::new(bank, memory, schedule, today);
        Self::played(start, today, days, minutes, pause).await
    }

    async fn played(
        mut course: Course<'_>,
        today: Day,
        days: u32,
        minutes: Option<u32>,
        pause: &mut impl AsyncFnMut(),
    ) -> Self {
        let mut outlook = Self::default();
        for ahead in 0..days {
            outlook.days.push(course.play(today.plus(ahead), minutes));
            pause().await;
        }
        outlook.recall = course.recall(today.plus(days));
        outlook
    }

    /// The days by weeks, from today.
    pub fn weeks(&self) -> Vec<Week> {
        self.days
            .chunks(7)
            .map(|days| Week {
                from: days[0].day,
                reviews: days.iter().map(|d| d.reviews).sum(),
                new: days.iter().map(|d| d.new).sum(),
                minutes: days.iter().map(|d| d.seconds).sum::<u32>().div_ceil(60),
            })
            .collect()
    }

    /// How many questions are begun by the end.
    fn begun(&self) -> usize {
        self.recall.iter().filter(|&&recall| recall > 0.0).count()
    }

    /// Whether everything is begun, and no pressing review waits on the last day.
    fn does_all(&self) -> bool {
        self.begun() == self.recall.len() && self.days.last().is_none_or(|day| day.left == 0)
    }
}

impl Feasibility {
    /// What is feasible with `minutes` a day until the examination.
    pub fn of(
        bank: &Bank,
        memory: &Memory,
        examination: Examination,
        multiplier: f64,
        today: Day,
        minutes: u32,
    ) -> Self {
        at_once(Self::in_slices(
            bank,
            memory,
            examination,
            multiplier,
            today,
            minutes,
            &mut never,
        ))
    }

    /// The same in slices, with a pause after each day that is played.
    pub async fn in_slices(
        bank: &Bank,
        memory: &Memory,
        examination: Examination,
        multiplier: f64,
        today: Day,
        minutes: u32,
        pause: &mut impl AsyncFnMut(),
    ) -> Self {
        let schedule = Schedule::new(today, Some(examination), multiplier);
        let days = examination.0.since(today);
        let start = Course::new(bank, memory, &schedule, today);
        let mut play = async |minutes: u32| {
            Outlook::played(start.clone(), today, days, Some(minutes), pause).await
        };
        let given = play(minutes).await;
        let minutes_for_all = least(async |minutes| play(minutes).await.does_all()).await;
        let (recalled, all) = Examination::expected(&given.recall);
        let feasible = given.does_all();
        let begun = given.begun();
        let words = if examination.0 < today {
            examination.words(today)
        } else {
            words(
                days,
                minutes,
                begun,
                all,
                recalled,
                feasible,
                minutes_for_all,
            )
        };
        Self {
            begun,
            all,
            recalled,
            minutes_for_all,
            feasible,
            words,
        }
    }
}

fn words(
    days: u32,
    minutes: u32,
    begun: usize,
    all: usize,
    recalled: u32,
    feasible: bool,
    for_all: Option<u32>,
) -> String {
    let start = format!(
        "{days} days at {minutes} minutes a day: about {begun} of {all} questions can be begun, and \
         about {recalled} would be recalled on the day if reviews go as usual."
    );
    let end = match for_all {
        _ if feasible => " That is time for all of them.".into(),
        Some(needed) => format!(" For all of them, about {needed} minutes a day are needed."),
        None => {
            " There is no time for all of them by that day; what weighs most comes first.".into()
        }
    };
    start + &end
}

/// The least number of minutes that will do, by halving; more minutes never do less.
async fn least(mut does: impl AsyncFnMut(u32) -> bool) -> Option<u32> {
    if !does(MOST_MINUTES).await {
        return None;
    }
    let (mut low, mut high) = (0, MOST_MINUTES);
    while high - low > 1 {
        let middle = u32::midpoint(low, high);
        if does(middle).await {
            high = middle;
        } else {
            low = middle;
        }
    }
    Some(high)
}

impl Outlook {
    /// The mean number of minutes a day over the outlook.
    pub fn mean_minutes(&self) -> f64 {
        if self.days.is_empty() {
            return 0.0;
        }
        let seconds: f64 = self.days.iter().map(|day| f64::from(day.seconds)).sum();
        seconds / 60.0 / real(self.days.len())
    }
}
