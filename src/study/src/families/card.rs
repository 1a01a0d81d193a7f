//! Preference card: what one dentist's wishes change on a tray.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{echoes, sentence, within},
};
use crate::question::{Form, Shown};
use catalogue::{
    ids::{CardId, ItemId, ProcedureId},
    preference::{Card, Wish},
};
use clinic::{
    case::Seed,
    tray::{Need, Tray},
};

pub(super) const FAMILY: Family = Family {
    id: "card",
    name: "What a preference card changes",
    facts,
    write,
};

/// A card, a treatment, and an item that goes or comes.
fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for card in &desk.catalogue().cards {
        for procedure in desk.treatments() {
            for (item, way) in card
                .wishes
                .iter()
                .flat_map(|w| touched(desk, &procedure.id, w))
            {
                facts.push(format!("{}.{}.{item}.{way}", card.id, procedure.id));
            }
        }
    }
    facts
}

/// What a wish may take from a tray and bring to it.
fn touched<'w>(
    desk: &Desk,
    procedure: &ProcedureId,
    wish: &'w Wish,
) -> Vec<(&'w ItemId, &'static str)> {
    let here = |only: &[ProcedureId]| only.is_empty() || only.contains(procedure);
    let lies = |item: &ItemId| desk.laid(procedure).iter().any(|l| l.item == *item);
    match wish {
        Wish::Exchange {
            instead_of,
            take,
            procedures,
        } if here(procedures) && lies(instead_of) && !lies(take) => {
            vec![(instead_of, "goes"), (take, "comes")]
        }
        Wish::Add {
            item,
            beside,
            procedures,
        } if here(procedures) && lies(beside) && !lies(item) => vec![(item, "comes")],
        Wish::LeaveOut { item, procedures }
            if here(procedures) && lies(item) && !bound(desk, procedure, item) =>
        {
            vec![(item, "goes")]
        }
        _ => Vec::new(),
    }
}

/// Whether a critical step or a fixed order counts on an item, so that no card takes it away.
fn bound(desk: &Desk, procedure: &ProcedureId, item: &ItemId) -> bool {
    desk.procedure(procedure.as_str()).is_some_and(|p| {
        let critical = p.steps.iter().filter(|s| s.critical);
        p.must_before
            .iter()
            .any(|m| m.first == *item || m.then == *item)
            || critical.flat_map(|s| &s.uses.0).any(|u| u.item == *item)
    })
}

/// What a tray needs for certain.
fn needed(tray: &Tray) -> Vec<ItemId> {
    let items = tray.items().filter(|(_, i)| i.need == Need::Needed);
    items.map(|(_, i)| i.item.clone()).collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[card, procedure, item, way] = fact else {
        return None;
    };
    let card: &Card = desk
        .catalogue()
        .cards
        .iter()
        .find(|c| c.id == CardId::from(card))?;
    let procedure = desk.treatment(procedure)?;
    let with_card = desk.clinic.with_card(Some(card.clone()));
    let own = needed(&with_card.tray(&procedure.id, &desk.usual));
    let standard = needed(&desk.clinic.tray(&procedure.id, &desk.usual));
    let goes: Vec<&ItemId> = standard.iter().filter(|i| !own.contains(i)).collect();
    let comes: Vec<&ItemId> = own.iter().filter(|i| !standard.contains(i)).collect();
    let item = desk.item(item)?;
    let (changed, wordings): (&Vec<&ItemId>, &[&str]) = if way == "goes" {
        (
            &goes,
            &[
                "A dentist's card says this. Which of these is not laid for {} any more?",
                "With this card, what leaves the standard tray for {}?",
            ],
        )
    } else {
        (
            &comes,
            &[
                "A dentist's card says this. Which of these is laid for {} as well?",
                "With this card, what comes on to the standard tray for {}?",
            ],
        )
    };
    if !changed.contains(&item.id()) {
        return None;
    }
    let stays = |id: &ItemId| !goes.contains(&id) && !comes.contains(&id);
    let pool = if way == "goes" {
        let laid = desk.laid(&procedure.id).iter().filter(|l| stays(&l.item));
        laid.filter_map(|l| desk.item(l.item.as_str()))
            .map(|o| {
                Offer::of(o.id(), o.name())
                    .close(Desk::close(item, o))
                    .because("The card leaves it as it is.")
            })
            .collect()
    } else {
        let foreign = desk.foreign(&procedure.id, item, chance).into_iter();
        foreign
            .filter(|(o, _)| stays(o.id()) && !echoes(o.name(), item.name()))
            .map(|(o, close)| {
                Offer::of(o.id(), o.name())
                    .close(close)
                    .because("The card does not ask for it.")
            })
            .collect()
    };
    let (choices, closeness) = one(Offer::of(item.id(), item.name()), pool, chance)?;
    Some(Draft {
        competency: "tray-set-ups".into(),
        stem: wording(chance, wordings, &[&within(&procedure.name)]),
        shown: Shown::Lines(vec![sentence(&card.about)]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(
            format!(
                "The card “{}” asks for it, and no safety rule speaks against it",
                card.name
            ),
            &[],
        ),
        study: Desk::study(Some(procedure), Some(item.id())),
    })
}
