//! Conditions made ready: findings by place, words as a set of bits. What is
//! not known yet makes a condition neither true nor false (Kleene's logic).

use crate::patient::{Patient, Value};
use catalogue::{
    condition::{Expr, Order},
    findings::{Finding, Scale},
    ids::FindingId,
    quantity::Milli,
};
use std::collections::HashMap;

/// A condition made ready.
#[derive(Clone, Debug)]
pub(crate) enum Test {
    All(Vec<Test>),
    Any(Vec<Test>),
    Not(Box<Test>),
    Flag(usize),
    Is(usize, u64),
    Compare(usize, Order, Milli),
    /// A finding that the catalogue does not have: never known.
    Unknown,
}

impl Test {
    pub fn of(expr: &Expr, findings: &[Finding], index: &HashMap<FindingId, usize>) -> Self {
        let inner = |parts: &[Expr]| parts.iter().map(|p| Self::of(p, findings, index)).collect();
        let place = |id: &FindingId| index.get(id).copied();
        match expr {
            Expr::All(parts) => Self::All(inner(parts)),
            Expr::Any(parts) => Self::Any(inner(parts)),
            Expr::Not(part) => Self::Not(Box::new(Self::of(part, findings, index))),
            Expr::Flag(id) => place(id).map_or(Self::Unknown, Self::Flag),
            Expr::Compare(id, order, bound, _) => {
                place(id).map_or(Self::Unknown, |at| Self::Compare(at, *order, *bound))
            }
            Expr::Is(id, words) => {
                place(id).map_or(Self::Unknown, |at| Self::Is(at, bits(&findings[at], words)))
            }
        }
    }

    /// Whether it holds; none where something it needs is not known.
    pub fn holds(&self, patient: &Patient) -> Option<bool> {
        match self {
            Self::All(parts) => fold(parts, patient, false),
            Self::Any(parts) => fold(parts, patient, true),
            Self::Not(part) => part.holds(patient).map(|b| !b),
            Self::Flag(at) => patient.at(*at).map(|v| v == Value::Flag(true)),
            Self::Is(at, bits) => patient.at(*at).map(|v| match v {
                Value::Word(word) => bits >> word & 1 == 1,
                _ => false,
            }),
            Self::Compare(at, order, bound) => patient.at(*at).map(|v| match v {
                Value::Number(number) => order.holds(number, *bound),
                _ => false,
            }),
            Self::Unknown => None,
        }
    }

    /// The places of the findings it asks for.
    pub fn places(&self) -> Vec<usize> {
        match self {
            Self::All(parts) | Self::Any(parts) => parts.iter().flat_map(Self::places).collect(),
            Self::Not(part) => part.places(),
            Self::Flag(at) | Self::Is(at, _) | Self::Compare(at, ..) => vec![*at],
            Self::Unknown => Vec::new(),
        }
    }

    /// The bounds it compares the finding at `place` with.
    pub fn bounds(&self, place: usize) -> Vec<Milli> {
        match self {
            Self::All(parts) | Self::Any(parts) => {
                parts.iter().flat_map(|p| p.bounds(place)).collect()
            }
            Self::Not(part) => part.bounds(place),
            Self::Compare(at, _, bound) if *at == place => vec![*bound],
            _ => Vec::new(),
        }
    }
}

/// 'Any' is settled by one part that holds, 'all' by one that does not.
fn fold(parts: &[Test], patient: &Patient, settles: bool) -> Option<bool> {
    let mut known = true;
    for part in parts {
        match part.holds(patient) {
            Some(truth) if truth == settles => return Some(settles),
            Some(_) => {}
            None => known = false,
        }
    }
    known.then_some(!settles)
}

fn bits(finding: &Finding, wanted: &[String]) -> u64 {
    let Scale::Words(words) = &finding.scale else {
        return 0;
    };
    words
        .iter()
        .take(64)
        .enumerate()
        .filter(|(_, w)| wanted.contains(&w.id))
        .fold(0, |bits, (i, _)| bits | 1 << i)
}
