//! What does not belong: an item lies on a tray that no step uses.

use super::{
    Desk, Draft, Family,
    draft::{Offer, several, wording},
    text::{lower, within},
};
use crate::question::{Form, Shown};
use catalogue::ids::ProcedureId;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "stray",
    name: "What does not belong on this tray",
    facts,
    write,
};

/// Strays that are listed for one stage; more would ask the same again.
const STRAYS: usize = 3;

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in desk.treatments() {
        let laid = desk.laid(&procedure.id);
        let mut listed: Vec<(&str, &str)> = Vec::new();
        for each in laid {
            let Some(item) = desk.item(each.item.as_str()) else {
                continue;
            };
            let enough = laid.iter().filter(|l| l.stage == each.stage).count() >= 3;
            // A stray with the longest name would be found by its length.
            let longest = laid
                .iter()
                .filter(|l| l.stage == each.stage)
                .map(|l| desk.name(&l.item).len())
                .max();
            let alike = item.lookalikes().iter().map(|l| &l.item);
            for stray in alike.chain(desk.family(item.family())) {
                let listed_here = listed.iter().filter(|(s, _)| *s == each.stage).count();
                if enough
                    && listed_here < STRAYS
                    && Some(desk.name(stray).len()) <= longest
                    && can_stray(desk, &procedure.id, stray.as_str())
                    && !listed.iter().any(|(_, s)| *s == stray.as_str())
                {
                    listed.push((&each.stage, stray.as_str()));
                    facts.push(format!("{}.{}.{stray}", procedure.id, each.item));
                }
            }
        }
    }
    facts
}

/// An item that waits on the tray, if anywhere, and that no patient's steps use.
fn can_stray(desk: &Desk, procedure: &ProcedureId, stray: &str) -> bool {
    desk.item(stray).is_some_and(|i| {
        i.place() == catalogue::items::Place::Tray && !desk.uses(procedure, i.id())
    })
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, beside, stray] = fact else {
        return None;
    };
    let id = ProcedureId::from(procedure);
    let procedure = desk.treatment(procedure)?;
    if !can_stray(desk, &id, stray) {
        return None;
    }
    let laid = desk.laid(&id);
    let beside = laid.iter().find(|l| l.item.as_str() == beside)?;
    let (stray, near) = (desk.item(stray)?, desk.item(beside.item.as_str())?);
    let pool: Vec<_> = laid
        .iter()
        .filter(|l| l.stage == beside.stage)
        .filter_map(|l| {
            let item = desk.item(l.item.as_str())?;
            Some(
                Offer::of(item.id(), item.name())
                    .close(Desk::close(stray, item))
                    .because(format!("It belongs: it is there {}.", l.reason)),
            )
        })
        .collect();
    let (choices, closeness) = several(vec![Offer::of(stray.id(), stray.name())], pool, 4, chance)?;
    Some(Draft {
        competency: desk.laying(&beside.from),
        stem: wording(
            chance,
            &[
                "Part of the tray for {} has been laid for the stage “{}”. Which of these does not belong there?",
                "Somebody has laid this for {}, stage “{}”. Which item goes back into the drawer?",
                "Which of these is used in no step of {}, although it was laid for “{}”?",
            ],
            &[&within(&procedure.name), &beside.stage],
        ),
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness: closeness.max(Desk::close(near, stray)),
        reasons: [
            Desk::by(
                procedure,
                format!("No step of {} uses it", within(&procedure.name)),
            ),
            Desk::reason(
                format!("{}: {}", stray.name(), lower(stray.purpose())),
                stray.sources(),
            ),
        ]
        .concat(),
        study: Desk::study(Some(procedure), Some(stray.id())),
    })
}
