//! Put in order: the moves of a mix.

use super::{
    Desk, Draft, Family,
    draft::wording,
    mixed::{mixed, of_fact},
    order::mix,
};
use crate::question::{Form, Piece, Shown};
use clinic::{case::Seed, sequence::Target};

pub(super) const FAMILY: Family = Family {
    id: "mix-order",
    name: "Put the moves of a mix in order",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    mixed(desk)
        .filter(|(_, m)| m.order.len() >= 3)
        .map(|(material, _)| material.id.to_string())
        .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let (material, mixing) = of_fact(desk, fact).filter(|(_, m)| m.order.len() >= 3)?;
    let key = |n: usize| format!("move-{}", n + 1);
    let mut pieces: Vec<Piece> = mixing
        .order
        .iter()
        .enumerate()
        .map(|(n, text)| Piece {
            key: key(n),
            text: text.clone(),
            item: None,
        })
        .collect();
    mix(&mut pieces, chance);
    let stages = (0..mixing.order.len()).map(|n| vec![key(n)]).collect();
    Some(Draft {
        competency: "mixing".into(),
        stem: wording(
            chance,
            &[
                "Put the moves of this mix in order: “{}”.",
                "In which order is this mixed: “{}”?",
            ],
            &[&material.name],
        ),
        shown: Shown::Items(vec![material.id.clone()]),
        form: Form::Order {
            pieces,
            target: Target {
                stages,
                must_before: Vec::new(),
            },
        },
        closeness: 0.4,
        reasons: Desk::reason(mixing.order.join(" "), &mixing.sources),
        study: Desk::study(None, Some(&material.id)),
    })
}
