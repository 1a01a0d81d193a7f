//! Conditions: every finding exists, every value is on its scale, every unit
//! is the finding's own, and the whole can hold at all.

use super::{At, Checker};
use crate::{
    condition::{Expr, Order, When},
    findings::{Finding, Scale},
    quantity::Milli,
};
use std::collections::BTreeMap;

impl Checker<'_, '_> {
    pub(super) fn condition(&mut self, at: &At, when: &When) {
        let mut sound = true;
        for atom in when.expr().atoms() {
            let Some(id) = atom.finding() else { continue };
            self.wants(at, "finding", id.as_str(), |k| &k.finding_ids);
            let Some(finding) = self.known.findings.get(id).cloned() else {
                sound = false;
                continue;
            };
            if let Err(message) = fits(atom, &finding) {
                self.report(at, message);
                sound = false;
            }
        }
        if sound && never_holds(when.expr()) {
            self.report(
                at,
                format!(
                    "'{}' can never hold; its parts exclude one another",
                    when.text()
                ),
            );
        }
    }

    pub(super) fn maybe_condition(&mut self, at: &At, when: Option<&When>) {
        if let Some(when) = when {
            self.condition(&at.field("when"), when);
        }
    }
}

fn fits(atom: &Expr, finding: &Finding) -> Result<(), String> {
    let id = &finding.id;
    match (atom, &finding.scale) {
        (Expr::Flag(_), Scale::Flag { .. }) => Ok(()),
        (Expr::Is(_, values), Scale::Words(words)) => {
            for value in values {
                if !words.iter().any(|w| w.id == *value) {
                    let known: Vec<&str> = words.iter().map(|w| w.id.as_str()).collect();
                    return Err(format!(
                        "'{id}' is never '{value}'; it is one of {}",
                        known.join(", ")
                    ));
                }
            }
            Ok(())
        }
        (
            Expr::Compare(_, _, bound, unit),
            Scale::Number {
                unit: own,
                least,
                most,
                ..
            },
        ) => {
            if unit != own {
                Err(format!("'{id}' is measured in {own}, not in {unit}"))
            } else if bound < least || bound > most {
                Err(format!(
                    "'{id}' runs from {least} to {most} {own}; {bound} is outside"
                ))
            } else {
                Ok(())
            }
        }
        (_, Scale::Flag { .. }) => Err(format!(
            "'{id}' is set or not set; write '{id}' or 'not {id}'"
        )),
        (_, Scale::Words(_)) => Err(format!("'{id}' takes words; write '{id} = …'")),
        (_, Scale::Number { unit, .. }) => {
            Err(format!("'{id}' is a number; write '{id} <= 1 {unit}'"))
        }
    }
}

/// Whether a conjunction excludes itself: two different words of one finding,
/// a flag set and not set, or a number in no range. Branches of an 'or' are
/// tried each; deeper contradictions are found by running every patient.
fn never_holds(expr: &Expr) -> bool {
    match expr {
        Expr::Any(parts) => parts.iter().all(never_holds),
        Expr::All(parts) => parts.iter().any(never_holds) || clashes(parts),
        _ => false,
    }
}

fn clashes(parts: &[Expr]) -> bool {
    let mut words: BTreeMap<&str, Vec<&String>> = BTreeMap::new();
    let mut flags: BTreeMap<&str, bool> = BTreeMap::new();
    let mut ranges: BTreeMap<&str, (i64, i64)> = BTreeMap::new();
    for part in parts {
        match part {
            Expr::Is(id, values) => {
                let allowed = words
                    .entry(id.as_str())
                    .or_insert_with(|| values.iter().collect());
                allowed.retain(|v| values.contains(v));
                if allowed.is_empty() {
                    return true;
                }
            }
            Expr::Flag(id) if flags.insert(id.as_str(), true) == Some(false) => return true,
            Expr::Not(inner) => {
                if let Expr::Flag(id) = &**inner
                    && flags.insert(id.as_str(), false) == Some(true)
                {
                    return true;
                }
            }
            Expr::Compare(id, order, bound, _) => {
                let range = ranges.entry(id.as_str()).or_insert((i64::MIN, i64::MAX));
                narrow(range, *order, *bound);
                if range.0 > range.1 {
                    return true;
                }
            }
            _ => {}
        }
    }
    false
}

fn narrow(range: &mut (i64, i64), order: Order, Milli(bound): Milli) {
    let bound = i64::from(bound);
    match order {
        Order::Less => range.1 = range.1.min(bound - 1),
        Order::AtMost => range.1 = range.1.min(bound),
        Order::More => range.0 = range.0.max(bound + 1),
        Order::AtLeast => range.0 = range.0.max(bound),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn contradictions_are_seen() {
        for text in [
            "a = x and a = y",
            "a and not a",
            "n < 1 mm and n > 2 mm",
            "a in (x, y) and a = z",
            "(a = x and a = y) or (b and not b)",
        ] {
            assert!(never_holds(When::parse(text).unwrap().expr()), "{text}");
        }
        for text in [
            "a = x or a = y",
            "a and not b",
            "n <= 1 mm and n >= 1 mm",
            "a in (x, y) and a = y",
        ] {
            assert!(!never_holds(When::parse(text).unwrap().expr()), "{text}");
        }
    }
}
