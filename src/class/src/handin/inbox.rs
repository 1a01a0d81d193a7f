//! Reading many hand-ins: lines of a file, links that were pasted, symbols
//! that were seen, in any order. What cannot be taken is named, and the rest kept.
//!
//! Each call reads one thing, so that whoever calls can show how far it is,
//! let the page breathe, and stop.

use super::{HandIn, Outcome, Received, Table};
use crate::assignment::{Assignment, Seat, Slot};
use crate::qr::Joiner;
use crate::refusal::Refusal;
use crate::task::Grader;
use crate::wire::{check, envelope};
use std::collections::HashMap;

/// The hand-ins to one assignment.
pub struct Inbox<'a, G: Grader + ?Sized> {
    assignment: &'a Assignment,
    id: u32,
    slots: Vec<Slot>,
    grader: &'a G,
    joiner: Joiner,
    table: Table,
    received: Vec<Received>,
    kept: HashMap<(Seat, u8), Kept>,
}

/// Where the hand-in that counts for a seat and try stands.
#[derive(Clone, Copy, Debug)]
struct Kept {
    sum: u32,
    finished: u32,
    row: usize,
    received: usize,
}

impl<'a, G: Grader + ?Sized> Inbox<'a, G> {
    /// An empty one.
    pub fn new(assignment: &'a Assignment, grader: &'a G) -> Self {
        Self {
            assignment,
            id: assignment.id(),
            slots: assignment.slots(),
            grader,
            joiner: Joiner::default(),
            table: Table::default(),
            received: Vec::new(),
            kept: HashMap::new(),
        }
    }

    /// Reads one line, link or symbol.
    pub fn read(&mut self, line: &str) -> Outcome {
        let outcome = if line.trim().is_empty() {
            Outcome::Nothing
        } else {
            self.sort(line).unwrap_or_else(Outcome::Refused)
        };
        self.received.push(Received {
            number: self.received.len() + 1,
            outcome,
        });
        outcome
    }

    /// What became of everything that was read, in the order in which it was
    /// read. What counted once can have become [`Outcome::Older`] since.
    pub fn received(&self) -> &[Received] {
        &self.received
    }

    /// How many there are of each kind, by its word, in the order in which the
    /// kinds first came.
    pub fn tally(&self) -> Vec<(&'static str, usize)> {
        let mut tally: Vec<(&str, usize)> = Vec::new();
        for each in &self.received {
            let word = each.outcome.word();
            match tally.iter_mut().find(|(w, _)| *w == word) {
                Some((_, count)) => *count += 1,
                None => tally.push((word, 1)),
            }
        }
        tally
    }

    /// The hand-ins that count, graded.
    pub fn table(&self) -> &Table {
        &self.table
    }

    /// Ends the reading, and gives the hand-ins that count and what became of
    /// everything that was read.
    pub fn close(self) -> (Table, Vec<Received>) {
        (self.table, self.received)
    }

    fn sort(&mut self, line: &str) -> Result<Outcome, Refusal> {
        let bytes = envelope::bytes(line)?;
        let opened = envelope::open(&bytes)?;
        if opened.kind != envelope::Kind::Part {
            return self.take(&bytes);
        }
        let joined = self.joiner.add(&bytes)?;
        match joined.whole {
            Some(whole) => self.take(&whole),
            None => Ok(Outcome::Part {
                number: joined.number,
                of: joined.of,
                missing: joined.missing,
            }),
        }
    }

    fn take(&mut self, bytes: &[u8]) -> Result<Outcome, Refusal> {
        let hand_in = HandIn::from_bytes(bytes)?;
        let seat = hand_in.seat;
        if hand_in.bank != self.assignment.bank {
            return Err(Refusal::OtherBank);
        }
        if hand_in.assignment != self.id {
            return Ok(Outcome::OtherAssignment(seat));
        }
        let tries = self.assignment.tries;
        if tries > 0 && hand_in.attempt > tries {
            return Ok(Outcome::TooManyTries(seat));
        }
        let sum = check::crc32(bytes);
        let key = (seat, hand_in.attempt);
        let before = self.kept.get(&key).copied();
        if let Some(before) = before {
            if before.sum == sum {
                return Ok(Outcome::Duplicate(seat));
            }
            if hand_in.finished < before.finished {
                return Ok(Outcome::Older(seat));
            }
        }
        if self
            .table
            .add(self.assignment, &self.slots, &hand_in, self.grader)
            .is_none()
        {
            return Ok(Outcome::DoesNotFit(seat));
        }
        let mut row = self.table.rows.len() - 1;
        if let Some(before) = before {
            self.table.replace(before.row);
            row = before.row;
            if let Some(earlier) = self.received.get_mut(before.received) {
                earlier.outcome = Outcome::Older(seat);
            }
        }
        self.kept.insert(
            key,
            Kept {
                sum,
                finished: hand_in.finished,
                row,
                received: self.received.len(),
            },
        );
        Ok(Outcome::Accepted(seat))
    }
}
