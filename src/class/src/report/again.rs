//! What to teach again first. Ranked by need: the share of answers that were
//! wrong, in which an answer that could hurt somebody counts twice. Two right
//! answers are added to every count, so that a single slip does not lead the
//! list (common practice, no source).

use super::item::ItemReport;
use crate::task::Way;
use std::rc::Rc;

/// How many items of a competency are named.
const NAMED: usize = 3;

/// The fault that was made most.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CommonFault {
    /// The option.
    pub label: Rc<str>,
    /// Whether it was offered, to be taken or left out; else it is what came of
    /// what was done.
    pub offered: bool,
    /// Whether it was left out rather than taken.
    pub left_out: bool,
    /// How many seats made it.
    pub seats: u32,
    /// Why it is a fault.
    pub because: Rc<str>,
}

/// An item to teach again.
#[derive(Clone, Debug, PartialEq)]
pub struct Again {
    /// Its place among the report's items.
    pub item: usize,
    /// Its need, from 0 to 2.
    pub need: f64,
    /// The fault that was made most; none where no single one is known.
    pub fault: Option<CommonFault>,
}

/// A competency to teach again.
#[derive(Clone, Debug, PartialEq)]
pub struct Topic {
    /// Its id.
    pub competency: Rc<str>,
    /// How many answers were asked for.
    pub asked: u32,
    /// How many were right.
    pub right: u32,
    /// How many could hurt somebody.
    pub harmful: u32,
    /// Its need, from 0 to 2.
    pub need: f64,
    /// The items that need it most.
    pub items: Vec<Again>,
}

impl CommonFault {
    /// The fault in a sentence.
    pub fn words(&self) -> String {
        let verb = match (self.offered, self.left_out, self.seats) {
            (false, ..) => "",
            (true, true, 1) => " leaves out",
            (true, true, _) => " leave out",
            (true, false, 1) => " takes",
            (true, false, _) => " take",
        };
        let seats = match self.seats {
            1 => "1 seat".to_owned(),
            many => format!("{many} seats"),
        };
        // Some labels are sentences, with their own stop, inside quotes as well.
        let said = self.label.trim_end_matches(['”', '’']);
        let stop = if said.ends_with(['.', '?', '!']) {
            ""
        } else {
            "."
        };
        format!("{seats}{verb}: {}{stop} {}", self.label, self.because)
            .trim_end()
            .into()
    }
}

/// The competencies in which something was wrong, those that need it most first.
pub(super) fn topics(competencies: &[Rc<str>], items: &[ItemReport]) -> Vec<Topic> {
    let mut topics: Vec<Topic> = competencies
        .iter()
        .map(|competency| topic(competency, items))
        .filter(|topic| topic.right < topic.asked)
        .collect();
    topics.sort_by(|a, b| b.need.total_cmp(&a.need));
    topics
}

fn topic(competency: &Rc<str>, items: &[ItemReport]) -> Topic {
    let own = || {
        items
            .iter()
            .enumerate()
            .filter(|(_, i)| i.competency == *competency)
    };
    let sum = |count: fn(&ItemReport) -> u32| own().map(|(_, item)| count(item)).sum::<u32>();
    let (asked, right, harmful) = (sum(|i| i.asked), sum(|i| i.right), sum(|i| i.harmful));
    let mut again: Vec<Again> = own()
        .filter(|(_, item)| item.right < item.asked)
        .map(|(place, item)| Again {
            item: place,
            need: need(item.asked, item.right, item.harmful),
            fault: fault(item),
        })
        .collect();
    again.sort_by(|a, b| b.need.total_cmp(&a.need));
    again.truncate(NAMED);
    Topic {
        competency: competency.clone(),
        asked,
        right,
        harmful,
        need: need(asked, right, harmful),
        items: again,
    }
}

fn need(asked: u32, right: u32, harmful: u32) -> f64 {
    f64::from(asked - right + harmful) / f64::from(asked + 2)
}

fn fault(item: &ItemReport) -> Option<CommonFault> {
    let most = item
        .options
        .iter()
        .rev()
        .max_by_key(|option| option.wrongly)
        .filter(|option| option.wrongly > 0)?;
    Some(CommonFault {
        label: most.label.clone(),
        offered: item.way == Way::Options,
        left_out: 2 * most.left_out > most.wrongly,
        seats: most.wrongly,
        because: most.because.clone(),
    })
}
