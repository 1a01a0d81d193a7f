//! The parts of a visit, and what a whole visit comes to.

use super::{choice::Decision, draw::Case};

/// A part of a visit. Every visit runs through them in this order; a part may
/// have no decision in it, so naming them all gives nothing away.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Part {
    /// The chart is read.
    Chart,
    /// The tray is laid.
    Tray,
    /// What is to be done is settled, and what goes into the tooth.
    Plan,
    /// A material is mixed.
    Mix,
    /// Things are handed over at the chair.
    Chair,
    /// The patient is told what to expect, and comes back.
    Return,
}

impl Part {
    /// All of them, in order.
    pub const ALL: [Self; 6] = [
        Self::Chart,
        Self::Tray,
        Self::Plan,
        Self::Mix,
        Self::Chair,
        Self::Return,
    ];

    /// Its name, short enough to stand beside the others.
    pub fn name(self) -> &'static str {
        match self {
            Self::Chart => "Chart",
            Self::Tray => "Tray",
            Self::Plan => "Plan",
            Self::Mix => "Mix",
            Self::Chair => "Chair",
            Self::Return => "Return",
        }
    }
}

impl Decision {
    /// The part of the visit that it belongs to.
    pub fn part(&self) -> Part {
        match self.id.as_str() {
            "chart" | "tooth" => Part::Chart,
            "tray" | "speak-up" | "cartridges" => Part::Tray,
            "start" | "water" | "proportion" | "mix-order" | "mix-time" | "ready" | "mend" => {
                Part::Mix
            }
            "hand-over" | "next-step" => Part::Chair,
            "tell" | "interval" | "checks" | "sooner" | "return-date" => Part::Return,
            _ => Part::Plan,
        }
    }
}

impl Case {
    /// What the answers to its decisions come to, out of 100, each answer as
    /// [`Decision::grade`] takes it. A decision without an answer counts nothing.
    pub fn marks(&self, answers: &[Vec<String>]) -> u8 {
        let mark = |(at, decision): (usize, &Decision)| {
            let answer = answers.get(at).map_or(&[][..], Vec::as_slice);
            decision.grade(answer).per_cent
        };
        let marks: Vec<u8> = self.decisions.iter().enumerate().map(mark).collect();
        overall(&marks)
    }
}

/// What the marks of all decisions come to, out of 100: their mean, with the
/// fraction given up. Nothing decided is nothing shown.
pub fn overall(per_cents: &[u8]) -> u8 {
    let sum: usize = per_cents.iter().map(|&p| usize::from(p)).sum();
    sum.checked_div(per_cents.len())
        .and_then(|mean| u8::try_from(mean).ok())
        .unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_visit_comes_to_the_mean_of_its_decisions() {
        for (marks, all) in [
            (&[][..], 0),
            (&[100], 100),
            (&[100, 0], 50),
            (&[80, 100, 100], 93),
            (&[100; 300], 100),
        ] {
            assert_eq!(overall(marks), all, "{marks:?}");
        }
    }
}
