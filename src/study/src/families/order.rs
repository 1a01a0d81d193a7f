//! Put in order: items of a tray from different stages, in order of use.

use super::{Desk, Draft, Family, draft::wording, text::within};
use crate::question::{Form, Piece, Shown};
use catalogue::ids::ProcedureId;
use clinic::{case::Seed, sequence::Target};

pub(super) const FAMILY: Family = Family {
    id: "order",
    name: "Put the tray in order of use",
    facts,
    write,
};

/// The item that the order is built round, and the treatment.
fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in desk.treatments() {
        let mut stages: Vec<&str> = Vec::new();
        for each in desk.laid(&procedure.id).iter().filter(|l| !l.again) {
            if !stages.contains(&each.stage.as_str()) {
                stages.push(&each.stage);
            }
        }
        if stages.len() >= 3 {
            facts.push(procedure.id.to_string());
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure] = fact else { return None };
    let procedure = desk.treatment(procedure)?;
    let mut stages: Vec<(&str, Vec<&str>)> = Vec::new();
    for each in desk
        .laid(&ProcedureId::from(procedure.id.as_str()))
        .iter()
        .filter(|l| !l.again)
    {
        match stages.iter_mut().find(|(s, _)| *s == each.stage) {
            Some((_, items)) => items.push(each.item.as_str()),
            None => stages.push((&each.stage, vec![each.item.as_str()])),
        }
    }
    while stages.len() > 5 {
        stages.remove(chance.below(stages.len()));
    }
    if stages.len() < 3 {
        return None;
    }
    let mut target = Vec::new();
    let mut pieces = Vec::new();
    for (_, items) in &stages {
        let item = desk.item(chance.pick(items)?)?;
        target.push(vec![item.id().to_string()]);
        pieces.push(Piece {
            key: item.id().to_string(),
            text: item.name().into(),
            item: Some(item.id().clone()),
        });
    }
    mix(&mut pieces, chance);
    let order: Vec<&str> = stages.iter().map(|(s, _)| *s).collect();
    Some(Draft {
        competency: "tray-set-ups".into(),
        stem: wording(
            chance,
            &[
                "In which order are these first used in {}?",
                "Put these in the order in which {} needs them first.",
                "The tray for {} is laid from left to right in order of first use. Put these in that order.",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Nothing,
        form: Form::Order {
            pieces,
            target: Target {
                stages: target,
                must_before: Vec::new(),
            },
        },
        closeness: 0.5,
        reasons: Desk::by(
            procedure,
            format!("The stages are: {}", order.join(", then ")),
        ),
        study: Desk::study(Some(procedure), None),
    })
}

/// Mixes pieces up so that they do not stand in order already.
pub(super) fn mix(pieces: &mut [Piece], chance: &mut Seed) {
    let right: Vec<String> = pieces.iter().map(|p| p.key.clone()).collect();
    chance.shuffle(pieces);
    if pieces.iter().map(|p| &p.key).eq(&right) {
        pieces.rotate_left(1);
    }
}
