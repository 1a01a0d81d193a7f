//! A patient's variation: what leaves the tray, or takes its place, because of one finding.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::within,
};
use crate::question::{Form, Shown};
use catalogue::{
    condition::Expr,
    findings::Scale,
    ids::ItemId,
    procedures::{Procedure, Variation},
};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "patient",
    name: "What this patient changes on the tray",
    facts,
    write,
};

/// A treatment, the item that goes, and whether the question is what goes or what comes.
fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in desk.treatments() {
        for (item, takes) in changes(desk, procedure) {
            facts.push(format!("{}.{item}.goes", procedure.id));
            if takes {
                facts.push(format!("{}.{item}.comes", procedure.id));
            }
        }
    }
    facts
}

/// What one flag of a patient takes from a treatment's tray, and whether something comes for it.
fn changes<'d>(desk: &'d Desk, procedure: &'d Procedure) -> Vec<(&'d ItemId, bool)> {
    let mut changes: Vec<(&ItemId, bool)> = Vec::new();
    for variation in reached(desk, procedure) {
        let lies = desk
            .laid(&procedure.id)
            .iter()
            .any(|l| l.item == variation.instead_of);
        if lies
            && flag(desk, variation).is_some()
            && !changes.iter().any(|(i, _)| **i == variation.instead_of)
        {
            changes.push((&variation.instead_of, variation.take.is_some()));
        }
    }
    changes
}

/// The variations of a treatment and of the set-ups it includes.
fn reached<'d>(desk: &'d Desk, procedure: &'d Procedure) -> Vec<&'d Variation> {
    let mut all: Vec<&Variation> = procedure.variations.iter().collect();
    let sets = procedure
        .steps
        .iter()
        .filter_map(|s| desk.procedure(s.include.as_ref()?.as_str()));
    for set in sets {
        all.extend(reached(desk, set));
    }
    all
}

/// The one flag that a variation turns on.
fn flag<'v>(desk: &Desk, variation: &'v Variation) -> Option<&'v str> {
    let Expr::Flag(finding) = variation.when.expr() else {
        return None;
    };
    let known = desk.catalogue().finding(finding)?;
    matches!(known.scale, Scale::Flag { .. }).then_some(finding.as_str())
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, item, asked] = fact else {
        return None;
    };
    let procedure = desk.treatment(procedure)?;
    let variation = reached(desk, procedure)
        .into_iter()
        .find(|v| v.instead_of.as_str() == item && flag(desk, v).is_some())?;
    let finding = flag(desk, variation)?;
    let patient = desk
        .clinic
        .reason(&desk.clinic.with(&desk.usual, finding, "yes"))
        .patient;
    let changed = desk.clinic.tray(&procedure.id, &patient);
    let lies = |id: &ItemId| changed.items().any(|(_, l)| l.item == *id);
    let item = desk.item(item)?;
    if lies(item.id()) {
        return None;
    }
    let says = says(desk, finding)?;
    let (right, pool, wordings): (_, Vec<Offer>, &[&str]) = if asked == "goes" {
        let pool = desk
            .laid(&procedure.id)
            .iter()
            .filter(|l| lies(&l.item))
            .filter_map(|l| {
                let other = desk.item(l.item.as_str())?;
                Some(
                    Offer::of(other.id(), other.name())
                        .close(Desk::close(item, other))
                        .because("It stays on the tray of this patient."),
                )
            })
            .collect();
        (
            item,
            pool,
            &[
                "A patient for {} is {}. Which of these leaves the tray?",
                "The chart says: {1}. What has to come off the standard tray for {0}?",
            ],
        )
    } else {
        let take = desk
            .item(variation.take.as_ref()?.as_str())
            .filter(|t| lies(t.id()))?;
        let other_takes = desk
            .catalogue()
            .procedures
            .iter()
            .flat_map(|p| &p.variations)
            .filter_map(|v| desk.item(v.take.as_ref()?.as_str()))
            .filter(|o| o.id() != take.id())
            .map(|o| (o, Desk::close(take, o) + 0.1));
        let pool = desk
            .foreign(&procedure.id, take, chance)
            .into_iter()
            .chain(other_takes)
            .filter(|(other, _)| !lies(other.id()) && other.id() != item.id())
            .map(|(other, close)| {
                Offer::of(other.id(), other.name())
                    .close(close)
                    .because("The tray of this patient does not use it.")
            })
            .chain([Offer::of(item.id(), item.name())
                .close(0.95)
                .because(variation.because.as_str())])
            .collect();
        (
            take,
            pool,
            &[
                "A patient for {} is {}. The standard tray has this: “{2}”. What is laid in its place?",
                "The chart says: {1}. On the tray for {0}, what takes the place of “{2}”?",
            ],
        )
    };
    let competency = match finding {
        "sulfite-sensitivity" => "anaesthesia".into(),
        _ => "patient-care".into(),
    };
    let (choices, closeness) = one(Offer::of(right.id(), right.name()), pool, chance)?;
    let pattern = chance.pick(wordings).copied().unwrap_or_default();
    let with = [within(&procedure.name), says, item.name().to_string()];
    Some(Draft {
        competency,
        stem: filled(pattern, &with, chance),
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(variation.because.as_str(), &variation.sources),
        study: Desk::study(Some(procedure), Some(right.id())),
    })
}

/// A wording with numbered gaps.
fn filled(pattern: &str, with: &[String], chance: &mut Seed) -> String {
    let mut numbered = pattern.replacen("{}", "{0}", 1).replacen("{}", "{1}", 1);
    for (n, each) in with.iter().enumerate() {
        numbered = numbered.replace(&format!("{{{n}}}"), each);
    }
    wording(chance, &[&numbered], &[])
}

fn says(desk: &Desk, finding: &str) -> Option<String> {
    match &desk.catalogue().finding(&finding.into())?.scale {
        Scale::Flag { yes, .. } => Some(yes.clone()),
        _ => None,
    }
}
