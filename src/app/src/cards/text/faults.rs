//! What is wrong with a card: what the catalogue does not have, and what is
//! empty, too long or without sense.

use super::{LONGEST_NAME, LONGEST_RECALL, LONGEST_TEXT, MOST_WISHES};
use catalogue::{
    Catalogue,
    preference::{Card, Wish},
};

/// What is wrong with a card, in sentences: what the catalogue does not have,
/// and what is empty, too long or without sense.
pub fn faults(card: &Card, catalogue: &Catalogue) -> Vec<String> {
    let mut faults = Vec::new();
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
    let id = card.id.as_str();
    if id.is_empty() || id.len() > LONGEST_NAME || !id.chars().all(plain) {
        faults.push("Its id is not of small letters, digits and hyphens.".into());
    }
    if card.name.trim().is_empty() {
        faults.push("It has no name.".into());
    }
    if card.name.chars().count() > LONGEST_NAME || card.about.chars().count() > LONGEST_TEXT {
        faults.push("Its name or what it is about is too long.".into());
    }
    if card.wishes.len() > MOST_WISHES {
        faults.push(format!("It has more than {MOST_WISHES} wishes."));
    }
    for (index, wish) in card.wishes.iter().enumerate() {
        let own = wish_faults(wish, catalogue);
        faults.extend(
            own.into_iter()
                .map(|it| format!("Wish {}: {it}", index + 1)),
        );
    }
    faults
}

/// What is wrong with one wish, in the ends of sentences.
pub fn wish_faults(wish: &Wish, catalogue: &Catalogue) -> Vec<String> {
    let (items, procedures) = wish.names();
    let mut faults: Vec<String> = Vec::new();
    for item in &items {
        if catalogue.item(item).is_none() {
            faults.push(format!("the catalogue has no thing “{item}”."));
        }
    }
    for procedure in procedures {
        if catalogue.procedure(procedure).is_none() {
            faults.push(format!("the catalogue has no procedure “{procedure}”."));
        }
    }
    if items.len() == 2 && items[0] == items[1] {
        faults.push("it names one thing twice.".into());
    }
    match wish {
        Wish::HandOver { how, .. }
            if how.trim().is_empty() || how.chars().count() > LONGEST_TEXT =>
        {
            faults.push("how it is handed over is missing or too long.".into());
        }
        Wish::Prefer { item, role } => {
            let material = catalogue.material(item);
            if catalogue.item(item).is_some() && !material.is_some_and(|m| m.roles.contains(role)) {
                let name = catalogue.item_name(item);
                faults.push(format!("{name} does not serve in that role."));
            }
        }
        Wish::PreferPlan { plan } if catalogue.plan(plan).is_none() => {
            faults.push(format!("the catalogue has no plan “{plan}”."));
        }
        Wish::Recall { plan, days } => {
            if catalogue.plan(plan).is_none() {
                faults.push(format!("the catalogue has no plan “{plan}”."));
            }
            if days.from == 0 || days.to > LONGEST_RECALL {
                faults.push(format!("days run from 1 to {LONGEST_RECALL}."));
            }
        }
        _ => {}
    }
    faults
}
