//! Tell lookalikes apart: drawings without labels, to be matched with names.

use super::{Desk, Draft, Family, draft::wording};
use crate::question::{Form, Piece, Shown};
use catalogue::{Item, ids::ItemId};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "lookalikes",
    name: "Tell lookalikes apart",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for item in desk.catalogue().items() {
        for other in item.lookalikes() {
            let told_from_there = desk
                .item(other.item.as_str())
                .is_some_and(|o| o.lookalikes().iter().any(|l| l.item == *item.id()));
            // A pair that both sides name is listed once.
            if !(told_from_there && other.item < *item.id())
                && drawn_apart(desk, item.id(), &other.item)
            {
                facts.push(format!("{}.{}", item.id(), other.item));
            }
        }
    }
    facts
}

fn drawn_apart(desk: &Desk, a: &ItemId, b: &ItemId) -> bool {
    match (desk.shape(a), desk.shape(b)) {
        (Some(a), Some(b)) => Desk::apart(a, b),
        _ => false,
    }
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[a, b] = fact else { return None };
    let (a, b) = (desk.item(a)?, desk.item(b)?);
    let tell = a.lookalikes().iter().find(|l| l.item == *b.id())?;
    if !drawn_apart(desk, a.id(), b.id()) {
        return None;
    }
    let mut all: Vec<Item<'_>> = vec![a, b];
    for other in a.lookalikes().iter().chain(b.lookalikes()) {
        let fits = all.len() < 3
            && all
                .iter()
                .all(|i| *i.id() != other.item && drawn_apart(desk, i.id(), &other.item));
        if fits && let Some(other) = desk.item(other.item.as_str()) {
            all.push(other);
        }
    }
    let drawing = |i: &Item<'_>| Piece {
        key: i.id().to_string(),
        text: String::new(),
        item: Some(i.id().clone()),
    };
    let name = |i: &Item<'_>| Piece {
        key: i.id().to_string(),
        text: i.name().into(),
        item: None,
    };
    let (mut left, mut right): (Vec<Piece>, Vec<Piece>) = (
        all.iter().map(drawing).collect(),
        all.iter().map(name).collect(),
    );
    chance.shuffle(&mut left);
    chance.shuffle(&mut right);
    let pairs = left
        .iter()
        .map(|p| (p.key.clone(), p.key.clone()))
        .collect();
    Some(Draft {
        competency: desk.knowing(a),
        stem: wording(
            chance,
            &[
                "These are easily taken for one another. Which name belongs to which drawing?",
                "Match each drawing with its name.",
                "Tell these apart: put each name to its drawing.",
            ],
            &[],
        ),
        shown: Shown::Nothing,
        form: Form::Match { left, right, pairs },
        closeness: 0.7,
        reasons: Desk::reason(tell.tell.as_str(), a.sources()),
        study: [
            Desk::study(None, Some(a.id())),
            Desk::study(None, Some(b.id())),
        ]
        .concat(),
    })
}
