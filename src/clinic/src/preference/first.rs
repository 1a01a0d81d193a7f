//! One material before the others in a role: right where it is admissible,
//! refused with the rule where it is not.

use super::ready::plays;
use crate::{
    Clinic, Reason,
    layers::{LayerVerdict, Stack},
    patient::Patient,
    standing::Standing,
    tray::PlacedStep,
};
use catalogue::{
    Item,
    findings::Known,
    ids::{ItemId, PlanId, ProcedureId},
    items::Role,
    plans::Plan,
    preference::Wish,
};

/// What a wish for one material first comes to in a procedure, for a patient.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Judged {
    /// Nothing in the procedure plays the role.
    Elsewhere,
    /// The material may come first.
    Open,
    /// It may not.
    Refused(Reason),
}

impl Clinic {
    /// The verdicts on a role with the card's preference: what it prefers is
    /// right where it is admissible, and what was as good becomes acceptable.
    pub(crate) fn preferred(
        &self,
        role: Role,
        mut verdicts: Vec<LayerVerdict>,
    ) -> Vec<LayerVerdict> {
        let wanted = self.wishes().find_map(|(_, w)| match w {
            Wish::Prefer { item, role: own } if *own == role => Some(item),
            _ => None,
        });
        let Some(wanted) = wanted else {
            return verdicts;
        };
        let open = |v: &LayerVerdict| {
            v.item.as_ref() == Some(wanted) && v.standing <= Standing::Acceptable
        };
        if !verdicts.iter().any(open) {
            return verdicts;
        }
        for verdict in &mut verdicts {
            if verdict.item.as_ref() == Some(wanted) {
                verdict.standing = Standing::Right;
                verdict.reasons.insert(0, self.card_reason());
            } else if verdict.standing == Standing::Right {
                verdict.standing = Standing::Acceptable;
            }
        }
        verdicts
    }

    /// The wishes for one material first: of several for one role, the first counts.
    pub(crate) fn preferences(&self) -> Vec<(usize, &ItemId, Role)> {
        let mut all: Vec<(usize, &ItemId, Role)> = Vec::new();
        for (place, wish) in self.wishes() {
            if let Wish::Prefer { item, role } = wish
                && !all.iter().any(|(.., own)| own == role)
            {
                all.push((place, item, *role));
            }
        }
        all
    }

    /// Among equally right plans, those that close the tooth in a role for which
    /// the card names a material that is open to the patient; all of them where
    /// it names none, or where none of the plans closes so.
    pub(crate) fn leaning(&self, patient: &Patient, plans: Vec<PlanId>) -> Vec<PlanId> {
        let wanted = self.preferences();
        let leans = |id: &PlanId| {
            let plan = self.catalogue.plan(id)?;
            let closes = plan.closes?;
            let (_, item, _) = wanted.iter().find(|(.., role)| *role == closes)?;
            let all = self.reason(&self.settled(patient, plan));
            let verdicts = self.layer_verdicts(&all, closes, &Stack::default());
            let own = verdicts
                .into_iter()
                .find(|v| v.item.as_ref() == Some(*item))?;
            (own.standing <= Standing::Acceptable).then_some(())
        };
        let own: Vec<PlanId> = plans
            .iter()
            .filter(|p| leans(p).is_some())
            .cloned()
            .collect();
        if own.is_empty() { plans } else { own }
    }

    /// What a wish for one material first comes to.
    ///
    /// Before the tooth is open the floor is not known. The wish stands then if
    /// the material is admissible in some tooth that this one may turn out to be.
    pub(crate) fn judged(
        &self,
        (item, role): (&ItemId, Role),
        procedure: &ProcedureId,
        patient: &Patient,
        steps: &[PlacedStep],
    ) -> Judged {
        let catalogue = self.catalogue();
        let plan = self.plan_for(procedure);
        let closing = self.closing_of(steps, plan);
        let played = |id: &ItemId| plays(catalogue, id, role, closing.as_ref());
        let uses = |s: &PlacedStep, id: &ItemId| {
            let mut all = s.step.uses.0.iter().chain(&s.step.at_hand.0);
            all.any(|u| u.item == *id)
        };
        let mut used = steps
            .iter()
            .flat_map(|s| s.step.uses.0.iter().chain(&s.step.at_hand.0));
        if !used.any(|u| played(&u.item)) {
            return Judged::Elsewhere;
        }
        if !catalogue
            .material(item)
            .is_some_and(|m| m.roles.contains(&role))
        {
            return Judged::Refused(self.cannot_serve(item, role));
        }
        let stack = Stack {
            closing: closing.filter(|_| !matches!(role, Role::Temporary | Role::Permanent)),
            ..Stack::default()
        };
        let settled = plan.map_or_else(|| patient.clone(), |plan| self.settled(patient, plan));
        if let Some(reason) = self.allergen(&self.reason(&settled), item) {
            return Judged::Refused(reason);
        }
        // No plan means this procedure, so no rule weighs its materials: what it
        // keeps ready itself is admissible.
        if plan.is_none() {
            let own = steps.iter().any(|s| uses(s, item));
            return if own {
                Judged::Open
            } else {
                Judged::Refused(nothing_asks())
            };
        }
        let openings = if self.is_open(patient) {
            vec![settled]
        } else {
            self.openings(&settled)
        };
        let mut mildest: Option<LayerVerdict> = None;
        for opening in &openings {
            let verdicts = self.layer_verdicts(&self.reason(opening), role, &stack);
            let Some(own) = verdicts.into_iter().find(|v| v.item.as_ref() == Some(item)) else {
                continue;
            };
            if own.standing <= Standing::Acceptable {
                return Judged::Open;
            }
            if mildest.as_ref().is_none_or(|m| own.standing < m.standing) {
                mildest = Some(own);
            }
        }
        let reason = mildest.and_then(|v| v.reasons.into_iter().next());
        Judged::Refused(reason.unwrap_or_else(nothing_asks))
    }

    fn cannot_serve(&self, item: &ItemId, role: Role) -> Reason {
        let name = self.catalogue().item(item).map_or("It", Item::name);
        plain(format!("{name} does not serve as {}.", word(role)))
    }

    /// What closes the tooth: the last material of the procedure that can do it.
    pub(super) fn closing_of(&self, steps: &[PlacedStep], plan: Option<&Plan>) -> Option<ItemId> {
        let closes = plan.map_or(Some(Role::Permanent), |p| p.closes)?;
        let mut used = steps.iter().rev().flat_map(|s| s.step.uses.0.iter().rev());
        used.find(|u| plays(self.catalogue(), &u.item, closes, None))
            .map(|u| u.item.clone())
    }

    /// The first plan that can mean a procedure.
    pub(crate) fn plan_for(&self, procedure: &ProcedureId) -> Option<&Plan> {
        let mut plans = self.catalogue().plans.iter();
        plans.find(|plan| plan.procedures.iter().any(|p| p.procedure == *procedure))
    }

    /// Whether anything is known that only the opened tooth shows.
    pub(crate) fn is_open(&self, patient: &Patient) -> bool {
        let mut findings = self.catalogue().findings.iter().enumerate();
        findings.any(|(place, f)| f.known == Known::Opening && patient.at(place).is_some())
    }
}

fn nothing_asks() -> Reason {
    plain("Nothing in the findings asks for it.".into())
}

fn plain(because: String) -> Reason {
    Reason {
        because,
        sources: Vec::new(),
        rule: None,
    }
}

fn word(role: Role) -> &'static str {
    match role {
        Role::Liner => "a liner",
        Role::Base => "a base",
        Role::Sealer => "a varnish or sealer",
        Role::Temporary => "a temporary filling",
        Role::Permanent => "a permanent filling",
    }
}
