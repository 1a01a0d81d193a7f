//! Spot the slip in a told order: one item was used before what it has to wait for.

use super::{Desk, Draft, Family, draft::wording, text::within, texts::own_uses};
use crate::question::{Choice, Form, Shown};
use catalogue::ids::ItemId;
use clinic::{case::Seed, standing::Standing};

pub(super) const FAMILY: Family = Family {
    id: "too-soon",
    name: "Which one was used too soon",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        let uses = own_uses(procedure);
        for pair in &procedure.must_before {
            let place = |id: &ItemId| uses.iter().position(|u| u.item == *id);
            if let (Some(first), Some(then)) = (place(&pair.first), place(&pair.then))
                && first < then
                && uses.len() - (then - first) > 2
            {
                facts.push(format!("{}.{}.{}", procedure.id, pair.first, pair.then));
            }
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, first, then] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let pair = procedure
        .must_before
        .iter()
        .find(|m| m.first.as_str() == first && m.then.as_str() == then)?;
    let uses = own_uses(procedure);
    let first = uses.iter().position(|u| u.item == pair.first)?;
    let then = uses.iter().position(|u| u.item == pair.then)?;
    if first >= then {
        return None;
    }
    // Three others in their right places round the pair; only the last of the
    // pair is moved, to stand right before the first.
    let mut others: Vec<usize> = (0..uses.len())
        .filter(|i| *i < first || *i > then)
        .collect();
    others.sort_by_key(|i| i.abs_diff(first).min(i.abs_diff(then)));
    others.truncate(5);
    chance.shuffle(&mut others);
    others.truncate(3);
    if others.len() < 2 {
        return None;
    }
    let mut told: Vec<usize> = others;
    told.push(first);
    told.sort_unstable();
    let at = told.iter().position(|i| *i == first)?;
    told.insert(at, then);
    let lines = told
        .iter()
        .map(|i| {
            let item = &uses[*i].item;
            let slipped = *i == then;
            Choice {
                key: item.to_string(),
                text: desk.name(item).into(),
                item: Some(item.clone()),
                standing: if slipped {
                    Standing::Right
                } else {
                    Standing::Wrong
                },
                because: if slipped {
                    pair.because.clone()
                } else {
                    "It stands in its place.".into()
                },
            }
        })
        .collect();
    Some(Draft {
        competency: desk.laying(&procedure.id),
        stem: wording(
            chance,
            &[
                "A student tells in which order these were taken up in {}. Which one came too soon?",
                "This is how {} was told, from first to last. Which one was used before what it has to wait for?",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Nothing,
        form: Form::Slip(lines),
        closeness: 0.6,
        reasons: Desk::by(
            procedure,
            format!(
                "“{}” comes before “{}”. {}",
                desk.name(&pair.first),
                desk.name(&pair.then),
                pair.because
            ),
        ),
        study: Desk::study(Some(procedure), Some(&pair.then)),
    })
}
