//! An item: how hard it is, and whether it goes with the others.

use super::flags::Flag;
use super::measure::correlation::{self, Sums};
use super::options::{OptionReport, Tally};
use super::scores::real;
use super::work::{Line, Standing};
use crate::handin::{Cell, Column, Mark};
use crate::task::Way;
use std::rc::Rc;

/// What may be said of an item, by how many seats were asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Gate {
    /// Below 10 seats: counts only.
    Counts,
    /// From 10 seats: difficulty and options; the correlation greyed, with its interval.
    Provisional,
    /// From 30 seats: flags too.
    Full,
}

impl Gate {
    /// The gate for so many seats.
    pub fn of(seats: u32) -> Self {
        match seats {
            0..10 => Self::Counts,
            10..30 => Self::Provisional,
            _ => Self::Full,
        }
    }

    /// What it means, in a sentence.
    pub fn words(self) -> &'static str {
        match self {
            Self::Counts => "Fewer than 10 seats: counts only.",
            Self::Provisional => {
                "Fewer than 30 seats: take the correlation with its interval, not as it stands."
            }
            Self::Full => "30 seats or more: what stands out is marked.",
        }
    }
}

/// An item, over the seats that were asked it.
#[derive(Clone, Debug, PartialEq)]
pub struct ItemReport {
    /// The place of its task in the assignment.
    pub place: u16,
    /// Its id.
    pub id: Rc<str>,
    /// Its name.
    pub name: Rc<str>,
    /// The id of its competency.
    pub competency: Rc<str>,
    /// Whether one option is the whole answer.
    pub one: bool,
    /// How it is answered.
    pub way: Way,
    /// Whether every seat was asked it, so that it counts in the reliability.
    pub common: bool,
    /// What may be said of it.
    pub gate: Gate,
    /// How many seats were asked.
    pub asked: u32,
    /// How many had it right.
    pub right: u32,
    /// How many gave an answer that could hurt somebody.
    pub harmful: u32,
    /// How many left it open.
    pub blank: u32,
    /// Difficulty: the share that had it right.
    pub p: f64,
    /// Its variance, divisor n - 1.
    pub variance: f64,
    /// The correlation with the score on the other common items; none where
    /// one of the two does not vary.
    pub r: Option<f64>,
    /// Its interval at 95 per cent.
    pub r_interval: Option<(f64, f64)>,
    /// The share of the upper 27 per cent of the class that had it right, less
    /// that of the lower; none where nobody of one of them was asked.
    pub d27: Option<f64>,
    /// Alpha of the other common items; none where it cannot be worked out.
    pub alpha_without: Option<f64>,
    /// The mean of the seconds spent on it.
    pub mean_seconds: f64,
    /// What is worth a look; empty below 30 seats.
    pub flags: Vec<Flag>,
    /// The options; none where it is answered by a number.
    pub options: Vec<OptionReport>,
    /// The variance of the score on the other common items.
    pub(super) rest_variance: f64,
}

impl ItemReport {
    /// From the answers to it, each with the place of its row.
    pub(super) fn of(
        column: &Column,
        cells: &[(u32, &Cell)],
        lines: &[Line],
        common: bool,
    ) -> Self {
        let mut sums = Sums::default();
        let mut tallies = vec![Tally::default(); column.options.len()];
        let (mut blank, mut harmful, mut seconds) = (0, 0, 0_u64);
        let mut ends = [(0_u32, 0_u32); 2];
        for (row, cell) in cells {
            let Some(line) = usize::try_from(*row).ok().and_then(|r| lines.get(r)) else {
                continue;
            };
            let right = i64::from(cell.mark.right());
            let score = i64::from(line.score);
            let rest = if common { score - right } else { score };
            sums.add(right, rest);
            blank += u32::from(cell.mark == Mark::Blank);
            harmful += u32::from(cell.mark.harmful());
            seconds += u64::from(cell.seconds);
            if let Some(end) = line.end {
                let (asked, had) = &mut ends[end];
                *asked += 1;
                *had += u32::from(cell.mark.right());
            }
            count(&mut tallies, cell, line, score, rest);
        }
        let asked = u32::try_from(sums.n).unwrap_or(u32::MAX);
        let right = u32::try_from(sums.x).unwrap_or(0);
        let n = f64::from(asked);
        let p = share(right, asked);
        let r = sums.r();
        let end = |(asked, had): (u32, u32)| (asked > 0).then(|| share(had, asked));
        let mut item = Self {
            place: column.place,
            id: column.id.clone(),
            name: column.name.clone(),
            competency: column.competency.clone(),
            one: column.one,
            way: column.way,
            common,
            gate: Gate::of(asked),
            asked,
            right,
            harmful,
            blank,
            p,
            variance: if asked > 1 {
                p * (1.0 - p) * n / (n - 1.0)
            } else {
                0.0
            },
            r,
            r_interval: r.and_then(|r| correlation::interval(r, cells.len())),
            d27: end(ends[1])
                .zip(end(ends[0]))
                .map(|(upper, lower)| upper - lower),
            alpha_without: None,
            mean_seconds: if asked > 0 { real(seconds) / n } else { 0.0 },
            flags: Vec::new(),
            options: options(column, &tallies, &sums),
            rest_variance: variance(&sums),
        };
        if item.gate == Gate::Full {
            item.flags = Flag::of(&item);
        }
        item
    }
}

fn count(tallies: &mut [Tally], cell: &Cell, line: &Line, score: i64, rest: i64) {
    let taken = cell.taken.places();
    for &place in taken {
        let Some(tally) = tallies.get_mut(usize::from(place)) else {
            continue;
        };
        tally.count += 1;
        tally.rest += rest;
        tally.score += score;
        match line.third {
            Standing::Low => tally.thirds[0] += 1,
            Standing::Middle => tally.thirds[1] += 1,
            Standing::High => tally.thirds[2] += 1,
        }
        if let Some(end) = line.end {
            tally.ends[end] += 1;
        }
    }
    for &place in cell.wrongly.places() {
        if let Some(tally) = tallies.get_mut(usize::from(place)) {
            tally.wrongly += 1;
            tally.left_out += u32::from(!taken.contains(&place));
        }
    }
}

fn options(column: &Column, tallies: &[Tally], sums: &Sums) -> Vec<OptionReport> {
    let asked = u32::try_from(sums.n).unwrap_or(u32::MAX);
    let report = |(option, tally): (&crate::handin::Choice, &Tally)| OptionReport {
        id: option.id.clone(),
        label: option.label.clone(),
        fits: option.fits,
        fails: option.fails,
        count: tally.count,
        share: share(tally.count, asked),
        r: tally.r(sums),
        mean_score: (tally.count > 0).then(|| real(tally.score) / f64::from(tally.count)),
        thirds: tally.thirds,
        ends: tally.ends,
        wrongly: tally.wrongly,
        left_out: tally.left_out,
        because: option.because.clone(),
    };
    column.options.iter().zip(tallies).map(report).collect()
}

fn share(part: u32, of: u32) -> f64 {
    if of == 0 {
        0.0
    } else {
        f64::from(part) / f64::from(of)
    }
}

/// The variance of the second numbers, divisor n - 1.
fn variance(sums: &Sums) -> f64 {
    if sums.n < 2 {
        return 0.0;
    }
    let n = real(sums.n);
    // Sums of scores stay far below where a float loses whole numbers.
    #[expect(clippy::cast_precision_loss)]
    let spread = (sums.n * sums.yy - sums.y * sums.y) as f64;
    spread / (n * (n - 1.0))
}
