//! The options of an item: who takes them.

use super::measure::correlation::Sums;
use std::rc::Rc;

/// One option.
#[derive(Clone, Debug, PartialEq)]
pub struct OptionReport {
    /// Its id.
    pub id: Rc<str>,
    /// What it says.
    pub label: Rc<str>,
    /// Whether it is right or acceptable for some seat.
    pub fits: bool,
    /// Whether it is wrong or worse for some seat.
    pub fails: bool,
    /// How many seats took it.
    pub count: u32,
    /// Their share of the seats that were asked; a blank is asked too.
    pub share: f64,
    /// The correlation of taking it with the score on the other items; none
    /// where one of the two does not vary.
    pub r: Option<f64>,
    /// The mean score of the seats that took it.
    pub mean_score: Option<f64>,
    /// How many of the low, middle and high third of the class took it.
    pub thirds: [u32; 3],
    /// How many of the lower and upper 27 per cent took it.
    pub ends: [u32; 2],
    /// How many seats took it or left it out though that is wrong or worse.
    pub wrongly: u32,
    /// How many of those left it out.
    pub left_out: u32,
    /// Why it is wrong for the first seat for which it is, else why it is right.
    pub because: Rc<str>,
}

/// What is counted of an option while the seats are gone through.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Tally {
    pub count: u32,
    pub wrongly: u32,
    pub left_out: u32,
    /// The sum of the scores on the other items of those who took it.
    pub rest: i64,
    /// The sum of their scores.
    pub score: i64,
    pub thirds: [u32; 3],
    pub ends: [u32; 2],
}

impl Tally {
    /// The correlation with the scores on the other items, from the sums over
    /// all seats that were asked: only those of the seats that took it have to be added.
    pub fn r(&self, asked: &Sums) -> Option<f64> {
        let count = i64::from(self.count);
        Sums {
            x: count,
            xx: count,
            xy: self.rest,
            ..*asked
        }
        .r()
    }
}
