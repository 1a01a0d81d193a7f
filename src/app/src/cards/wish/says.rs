//! A wish in words.

use crate::{parts::item_link::name, taught::catalogue};
use catalogue::{
    ids::{ItemId, PlanId, ProcedureId},
    items::Role,
    preference::Wish,
};

/// A wish as a sentence without its full stop.
pub fn says(wish: &Wish) -> String {
    match wish {
        Wish::Exchange {
            instead_of,
            take,
            procedures,
        } => format!(
            "{} instead of {}{}",
            name(take),
            inside(instead_of),
            only_in(procedures)
        ),
        Wish::Add {
            item,
            beside,
            procedures,
        } => format!(
            "{} as well, beside {}{}",
            name(item),
            inside(beside),
            only_in(procedures)
        ),
        Wish::LeaveOut { item, procedures } => {
            format!("No {}{}", inside(item), only_in(procedures))
        }
        Wish::Before { first, then } => format!("{} laid before {}", name(first), inside(then)),
        Wish::HandOver { item, how } => format!(
            "{} handed over so: {}",
            name(item),
            how.trim_end_matches('.')
        ),
        Wish::Dam { always: true } => "A rubber dam wherever it can be placed".into(),
        Wish::Dam { always: false } => "No rubber dam".into(),
        Wish::Prefer { item, role } => format!("{} first as {}", name(item), word(*role)),
        Wish::PreferPlan { plan } => format!("Of the open plans first: {}", plan_name(plan)),
        Wish::Recall { plan, days } => format!(
            "Back {} to {} days after: {}",
            days.from,
            days.to,
            plan_name(plan)
        ),
    }
}

/// The thing that a wish is about, to be drawn beside it.
pub fn thing(wish: &Wish) -> Option<&ItemId> {
    match wish {
        Wish::Exchange { take: item, .. }
        | Wish::Add { item, .. }
        | Wish::LeaveOut { item, .. }
        | Wish::Before { first: item, .. }
        | Wish::HandOver { item, .. }
        | Wish::Prefer { item, .. } => Some(item),
        Wish::Dam { .. } | Wish::Recall { .. } | Wish::PreferPlan { .. } => None,
    }
}

fn plan_name(id: &PlanId) -> &str {
    let found = catalogue().plan(id);
    found.map_or(id.as_str(), |plan| &plan.name)
}

/// A role in words.
pub fn word(role: Role) -> &'static str {
    match role {
        Role::Liner => "a liner",
        Role::Base => "a base",
        Role::Sealer => "a varnish or sealer",
        Role::Temporary => "a temporary filling",
        Role::Permanent => "a permanent filling",
    }
}

/// The name of a thing inside a sentence.
fn inside(id: &ItemId) -> String {
    let name = name(id);
    let mut letters = name.chars();
    match letters.next() {
        // A name that begins like `X-ray` keeps its capital.
        Some(first) if letters.clone().next().is_some_and(char::is_lowercase) => {
            first.to_lowercase().chain(letters).collect()
        }
        _ => name,
    }
}

fn only_in(procedures: &[ProcedureId]) -> String {
    let names: Vec<&str> = procedures
        .iter()
        .filter_map(|id| catalogue().procedure(id))
        .map(|procedure| procedure.short.as_str())
        .collect();
    if names.is_empty() {
        String::new()
    } else {
        format!(", only for: {}", names.join(", "))
    }
}
