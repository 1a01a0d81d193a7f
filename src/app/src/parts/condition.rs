//! Conditions over findings, in words for a reader.

use crate::taught::catalogue;
use catalogue::{
    condition::{Expr, Order, When},
    findings::Scale,
    ids::FindingId,
};

/// For whom a condition holds: `Cavity: class II, down between the teeth`.
pub fn words(when: &When) -> String {
    say(when.expr(), false)
}

fn say(expr: &Expr, negated: bool) -> String {
    match expr {
        // A negated group says its parts negated, joined the other way.
        Expr::All(parts) => join(parts, negated, if negated { " or " } else { " and " }),
        Expr::Any(parts) => join(parts, negated, if negated { " and " } else { " or " }),
        Expr::Not(part) => say(part, !negated),
        Expr::Flag(finding) => flag(finding, !negated),
        Expr::Is(finding, values) => {
            let says: Vec<String> = values.iter().map(|value| word(finding, value)).collect();
            let not = if negated { "not " } else { "" };
            format!("{}: {not}{}", name(finding), says.join(", or "))
        }
        Expr::Compare(finding, order, bound, unit) => {
            format!(
                "{} {} {bound} {unit}",
                name(finding),
                order_word(*order, negated)
            )
        }
    }
}

fn join(parts: &[Expr], negated: bool, with: &str) -> String {
    let said: Vec<String> = parts.iter().map(|part| say(part, negated)).collect();
    said.join(with)
}

fn order_word(order: Order, negated: bool) -> &'static str {
    match (order, negated) {
        (Order::Less, false) | (Order::AtLeast, true) => "less than",
        (Order::AtMost, false) | (Order::More, true) => "at most",
        (Order::More, false) | (Order::AtMost, true) => "more than",
        (Order::AtLeast, false) | (Order::Less, true) => "at least",
    }
}

fn name(id: &FindingId) -> &str {
    catalogue()
        .finding(id)
        .map_or_else(|| id.as_str(), |finding| finding.name.as_str())
}

/// What a chart says of a flag that is set or not.
pub fn flag(id: &FindingId, set: bool) -> String {
    match catalogue().finding(id).map(|finding| &finding.scale) {
        Some(Scale::Flag { yes, .. }) if set => yes.clone(),
        Some(Scale::Flag { no, .. }) => no.clone(),
        _ => id.to_string(),
    }
}

/// What a chart says of a word of a scale.
pub fn word(id: &FindingId, value: &str) -> String {
    match catalogue().finding(id).map(|finding| &finding.scale) {
        Some(Scale::Words(words)) => words
            .iter()
            .find(|word| word.id == value)
            .map_or_else(|| value.into(), |word| word.says.clone()),
        _ => value.into(),
    }
}
