//! A seat: what it can do, by competency.

use super::reliability::conditional_error;
use crate::assignment::{Assignment, Seat};
use crate::handin::{Column, Mark, Row};
use std::rc::Rc;

/// A part of what a seat was asked.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Part {
    /// How many items.
    pub asked: u32,
    /// How many it had right.
    pub right: u32,
    /// How many of its answers could hurt somebody.
    pub harmful: u32,
    /// How many it left open.
    pub blank: u32,
}

impl Part {
    fn add(&mut self, mark: Mark) {
        self.asked += 1;
        self.right += u32::from(mark.right());
        self.harmful += u32::from(mark.harmful());
        self.blank += u32::from(mark == Mark::Blank);
    }
}

/// A seat.
#[derive(Clone, Debug, PartialEq)]
pub struct SeatReport {
    /// The seat.
    pub seat: Seat,
    /// Which try this is.
    pub attempt: u8,
    /// Whether it was handed in after the day on which it was due.
    pub late: bool,
    /// The seconds that it took.
    pub seconds: u64,
    /// All items.
    pub all: Part,
    /// The mean of the marks, out of 100.
    pub marks: f64,
    /// Whether enough items are right to pass.
    pub passed: bool,
    /// The error of measurement at this score, in items; none for fewer than two items.
    pub error: Option<f64>,
    /// The items of each competency, in the order of the report's competencies.
    pub parts: Vec<Part>,
}

impl SeatReport {
    /// From a graded hand-in, and the competency of each column by its place.
    pub(super) fn of(
        assignment: &Assignment,
        row: &Row,
        places: &[usize],
        competencies: usize,
    ) -> Self {
        let mut all = Part::default();
        let mut parts = vec![Part::default(); competencies];
        let mut marks = 0_u32;
        for cell in &row.cells {
            all.add(cell.mark);
            marks += u32::from(cell.per_cent);
            let place = usize::try_from(cell.column)
                .ok()
                .and_then(|c| places.get(c));
            if let Some(part) = place.and_then(|&p| parts.get_mut(p)) {
                part.add(cell.mark);
            }
        }
        let count = |n: u32| usize::try_from(n).unwrap_or(usize::MAX);
        Self {
            seat: row.seat,
            attempt: row.attempt,
            late: row.late,
            seconds: row.seconds,
            marks: if all.asked == 0 {
                0.0
            } else {
                f64::from(marks) / f64::from(all.asked)
            },
            passed: all.asked > 0 && count(all.right) >= assignment.cut(count(all.asked)),
            error: conditional_error(all.right, count(all.asked)),
            all,
            parts,
        }
    }
}

/// The competencies of columns, each once, in the order in which they first
/// come; and the place of each column's.
pub(super) fn competencies(columns: &[Column]) -> (Vec<Rc<str>>, Vec<usize>) {
    let mut all: Vec<Rc<str>> = Vec::new();
    let places = columns.iter().map(|column| {
        all.iter()
            .position(|c| *c == column.competency)
            .unwrap_or_else(|| {
                all.push(column.competency.clone());
                all.len() - 1
            })
    });
    let places = places.collect();
    (all, places)
}
