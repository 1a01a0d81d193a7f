//! Names for seats. They stay on the instructor's device: no code, link or
//! hand-in carries them, and no report leaves with them unless asked for.

mod file;

pub use file::{RosterError, read, write};

use crate::assignment::Seat;
use std::collections::BTreeMap;

/// The most letters of a label.
pub const MOST_LETTERS: usize = 60;

/// Labels for seats.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Roster(BTreeMap<Seat, String>);

impl Roster {
    /// Labels a seat. An empty label takes it off the roster; control letters
    /// become blanks, and what is too long is cut.
    pub fn set(&mut self, seat: Seat, label: &str) {
        let plain: String = label
            .chars()
            .map(|c| if c.is_control() { ' ' } else { c })
            .take(MOST_LETTERS)
            .collect();
        match plain.trim() {
            "" => self.0.remove(&seat),
            label => self.0.insert(seat, label.to_owned()),
        };
    }

    /// The label of a seat: its number where it has no other.
    pub fn label(&self, seat: Seat) -> String {
        self.0
            .get(&seat)
            .cloned()
            .unwrap_or_else(|| format!("Seat {}", seat.0))
    }

    /// The seats with a label, by their numbers.
    pub fn seats(&self) -> Vec<Seat> {
        self.0.keys().copied().collect()
    }

    /// The first seat from 1 without a label; none where all are taken.
    pub fn free(&self) -> Option<Seat> {
        (1..=u16::MAX)
            .map(Seat)
            .find(|seat| !self.0.contains_key(seat))
    }

    fn lines(&self) -> impl Iterator<Item = (Seat, &str)> {
        self.0.iter().map(|(seat, label)| (*seat, label.as_str()))
    }
}
