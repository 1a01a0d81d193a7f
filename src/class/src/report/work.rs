//! Working a report out, in steps.

use super::again::{self, Topic};
use super::consistency::Consistency;
use super::crosscheck::{CrossChecks, dependability};
use super::item::ItemReport;
use super::reliability::Reliability;
use super::scores::{Scores, real};
use super::seat::{self, SeatReport};
use super::talk::{self, Talk};
use super::told::Told;
use crate::assignment::{Assignment, Seat};
use crate::handin::{Cell, Row, Table};
use std::collections::BTreeMap;
use std::rc::Rc;

/// Which try of a seat counts.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Tries {
    /// The first: what a seat could do without having seen the items. Only
    /// these say how hard an item is.
    #[default]
    First,
    /// The last: what a seat can do now.
    Last,
}

/// A class report.
#[derive(Clone, Debug, PartialEq)]
pub struct Report {
    /// What the assignment is called.
    pub name: String,
    /// Which try of each seat counts.
    pub tries: Tries,
    /// The share of right answers that passes, in per cent.
    pub pass_mark: u8,
    /// The ids of the competencies, in the order of the seats' parts.
    pub competencies: Vec<Rc<str>>,
    /// The seats, by their numbers.
    pub seats: Vec<SeatReport>,
    /// The items, by their places in the assignment.
    pub items: Vec<ItemReport>,
    /// The scores on the items that every seat was asked.
    pub scores: Scores,
    /// The share of those items that passes, in whole items.
    pub cut: usize,
    /// Reliability.
    pub reliability: Told<Reliability>,
    /// Decision consistency.
    pub consistency: Told<Consistency>,
    /// The same by other methods, where the first could be worked out.
    pub cross_checks: Option<CrossChecks>,
    /// Dependability about the cut, Phi(lambda).
    pub dependability: Told<f64>,
    /// What to teach again first.
    pub topics: Vec<Topic>,
    /// Who needs a talk.
    pub talks: Vec<Talk>,
}

/// How far a piece of work is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// How many steps are done.
    pub done: usize,
    /// Of how many.
    pub of: usize,
}

/// In which third of the class a seat is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Standing {
    /// The lower third.
    Low,
    /// The middle.
    Middle,
    /// The upper third.
    High,
}

/// A seat among the others.
#[derive(Clone, Copy, Debug)]
pub(super) struct Line {
    /// How many common items it had right.
    pub score: u32,
    /// Its third.
    pub third: Standing,
    /// 0 in the lower 27 per cent, 1 in the upper.
    pub end: Option<usize>,
}

/// A report being worked out, an item a step. Dropping it ends the work.
pub struct Work<'t> {
    assignment: &'t Assignment,
    table: &'t Table,
    tries: Tries,
    rows: Vec<&'t Row>,
    cells: Vec<Vec<(u32, &'t Cell)>>,
    lines: Vec<Line>,
    common: Vec<bool>,
    items: Vec<ItemReport>,
}

impl Report {
    /// The report of a table at once. `expected` are the seats that should have
    /// handed in, as far as they are known.
    pub fn of(assignment: &Assignment, table: &Table, tries: Tries, expected: &[Seat]) -> Self {
        let mut work = Work::new(assignment, table, tries);
        while work.step() {}
        work.finish(expected)
    }
}

impl<'t> Work<'t> {
    /// Begins.
    pub fn new(assignment: &'t Assignment, table: &'t Table, tries: Tries) -> Self {
        let rows = counted(&table.rows, tries);
        let mut cells: Vec<Vec<(u32, &Cell)>> = vec![Vec::new(); table.columns.len()];
        for (row, number) in rows.iter().zip(0..) {
            for cell in &row.cells {
                if let Some(column) = usize::try_from(cell.column)
                    .ok()
                    .and_then(|c| cells.get_mut(c))
                {
                    column.push((number, cell));
                }
            }
        }
        let common: Vec<bool> = cells.iter().map(|c| c.len() == rows.len()).collect();
        let lines = lines(&rows, &common);
        Self {
            assignment,
            table,
            tries,
            rows,
            cells,
            lines,
            common,
            items: Vec::new(),
        }
    }

    /// Works out the next item; false once all are.
    pub fn step(&mut self) -> bool {
        let next = self.items.len();
        let (Some(column), Some(cells)) = (self.table.columns.get(next), self.cells.get(next))
        else {
            return false;
        };
        self.items.push(ItemReport::of(
            column,
            cells,
            &self.lines,
            self.common[next],
        ));
        true
    }

    /// How far it is.
    pub fn progress(&self) -> Progress {
        Progress {
            done: self.items.len(),
            of: self.cells.len(),
        }
    }

    /// Works out what is left, and puts the report together.
    pub fn finish(mut self, expected: &[Seat]) -> Report {
        while self.step() {}
        let assignment = self.assignment;
        let common = self.common.iter().filter(|c| **c).count();
        let scores = Scores::of(common, self.lines.iter().map(|l| l.score).collect());
        let cut = assignment.cut(common);
        let own = |item: &&ItemReport| item.common;
        let variances: Vec<f64> = self.items.iter().filter(own).map(|i| i.variance).collect();
        let reliability = Reliability::of(&scores, &variances);
        let consistency = reliability.and_then(|r| Consistency::of(&scores, r.alpha, cut));
        let cross_checks = match (&reliability, &consistency) {
            (Ok(r), Ok(_)) => Some(CrossChecks::of(&scores, r.alpha, r.kr21, cut)),
            _ => None,
        };
        let (competencies, places) = seat::competencies(&self.table.columns);
        let mut seats: Vec<SeatReport> = self
            .rows
            .iter()
            .map(|row| SeatReport::of(assignment, row, &places, competencies.len()))
            .collect();
        seats.sort_by_key(|seat| seat.seat);
        let mut items = self.items;
        with_alpha_without(&mut items, &variances);
        items.retain(|item| item.asked > 0);
        items.sort_by_key(|item| item.place);
        Report {
            name: assignment.name(),
            tries: self.tries,
            pass_mark: assignment.pass_mark,
            dependability: scores.enough().and_then(|()| {
                let lambda = real(cut) / real(common);
                dependability(&scores, lambda).ok_or(super::Missing::NoSpread)
            }),
            topics: again::topics(&competencies, &items),
            talks: talk::talks(&seats, expected),
            competencies,
            seats,
            items,
            scores,
            cut,
            reliability,
            consistency,
            cross_checks,
        }
    }
}

/// The row of each seat that counts, in the order in which they were read.
fn counted(rows: &[Row], tries: Tries) -> Vec<&Row> {
    let mut best: BTreeMap<Seat, usize> = BTreeMap::new();
    for (place, row) in rows.iter().enumerate() {
        let at = best.entry(row.seat).or_insert(place);
        let before = rows[*at].attempt;
        let better = match tries {
            Tries::First => row.attempt < before,
            Tries::Last => row.attempt > before,
        };
        if better {
            *at = place;
        }
    }
    let mut places: Vec<usize> = best.into_values().collect();
    places.sort_unstable();
    places.into_iter().map(|place| &rows[place]).collect()
}

/// Where each seat stands: thirds and ends by score, ties by the order of rows.
fn lines(rows: &[&Row], common: &[bool]) -> Vec<Line> {
    let counts = |cell: &&Cell| {
        let column = usize::try_from(cell.column).ok();
        column.and_then(|c| common.get(c)) == Some(&true) && cell.mark.right()
    };
    let score = |row: &&Row| u32::try_from(row.cells.iter().filter(counts).count()).unwrap_or(0);
    let scores: Vec<u32> = rows.iter().map(score).collect();
    let mut order: Vec<usize> = (0..rows.len()).collect();
    order.sort_by_key(|&place| (scores[place], place));
    let (n, third) = (rows.len(), rows.len() / 3);
    // 27 per cent, rounded up.
    let end = (27 * n).div_ceil(100);
    let mut lines: Vec<Line> = scores
        .iter()
        .map(|&score| Line {
            score,
            third: Standing::Middle,
            end: None,
        })
        .collect();
    for (rank, &place) in order.iter().enumerate() {
        lines[place].third = match rank {
            low if low < third => Standing::Low,
            high if high >= n - third => Standing::High,
            _ => Standing::Middle,
        };
        lines[place].end = match rank {
            // In a class so small that the ends meet, nobody is in both.
            low if low < end && low < n - end => Some(0),
            high if high >= n - end && high >= end => Some(1),
            _ => None,
        };
    }
    lines
}

/// Alpha of the common items but one, for each.
fn with_alpha_without(items: &mut [ItemReport], variances: &[f64]) {
    let (all, k) = (variances.iter().sum::<f64>(), real(variances.len()));
    if variances.len() < 3 {
        return;
    }
    for item in items
        .iter_mut()
        .filter(|i| i.common && i.rest_variance > 0.0)
    {
        let left = (all - item.variance) / item.rest_variance;
        item.alpha_without = Some((k - 1.0) / (k - 2.0) * (1.0 - left));
    }
}
