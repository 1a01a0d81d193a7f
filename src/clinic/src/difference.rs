//! What a preference card changes for one procedure and one patient: as a
//! difference of two trays, and wish by wish.

use crate::{
    Clinic, Reason,
    patient::Patient,
    preference::Judged,
    tray::{Need, Tray},
};
use catalogue::{
    ids::{ItemId, PlanId, ProcedureId},
    items::Role,
    plans::Plan,
    preference::{Card, Wish},
    quantity::Span,
};

/// The difference between the standard set-up and the set-up with a card.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Difference {
    /// What the standard set-up has and the card takes away.
    pub goes: Vec<ItemId>,
    /// What the card brings, or makes certain where it was only called for.
    pub comes: Vec<ItemId>,
    /// What stands in another stage.
    pub moves: Vec<Move>,
    /// What each wish comes to, in the order of the card.
    pub wishes: Vec<Outcome>,
}

/// An item that stands in another stage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Move {
    /// The item.
    pub item: ItemId,
    /// The title of its stage in the standard set-up.
    pub from: String,
    /// The title of its stage with the card.
    pub to: String,
}

/// What a wish comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// It is granted.
    Granted,
    /// It changes nothing here: the procedure does not touch on it, or has it
    /// so already.
    Nothing,
    /// It counts once the tooth is open and what goes into it is settled.
    Later,
    /// It is refused.
    Refused(Reason),
}

impl Clinic {
    /// What the card of this reasoning changes; nothing where it has none.
    pub fn difference(&self, procedure: &ProcedureId, patient: &Patient) -> Difference {
        let Some(card) = self.card() else {
            return Difference::default();
        };
        let standard = self.with_card(None).tray(procedure, patient);
        let own = self.tray(procedure, patient);
        Difference {
            goes: gone(&standard, &own),
            comes: come(&standard, &own),
            moves: moves(&standard, &own),
            wishes: (0..card.wishes.len())
                .map(|place| self.outcome(card, place, &own, procedure, patient))
                .collect(),
        }
    }

    /// Whether the card changes what lies on the tray, or in which stage.
    pub fn card_changes(&self, procedure: &ProcedureId, patient: &Patient) -> bool {
        let standard = self.with_card(None).tray(procedure, patient);
        standard.stages != self.tray(procedure, patient).stages
    }

    fn outcome(
        &self,
        card: &Card,
        place: usize,
        tray: &Tray,
        procedure: &ProcedureId,
        patient: &Patient,
    ) -> Outcome {
        if let Some(refusal) = tray.refused.iter().find(|r| r.wish == place) {
            return Outcome::Refused(refusal.reason.clone());
        }
        match &card.wishes[place] {
            Wish::Prefer { item, role } => {
                let changes = self.changes_with(card, place, procedure, patient);
                self.prefers(item, *role, procedure, patient, changes)
            }
            Wish::PreferPlan { plan } => match self.judged_plan(plan, procedure, patient) {
                Judged::Refused(reason) => Outcome::Refused(reason),
                Judged::Open if !self.is_open(patient) => Outcome::Later,
                Judged::Open if self.plan_wish_changes(plan, patient) => Outcome::Granted,
                Judged::Elsewhere | Judged::Open => Outcome::Nothing,
            },
            Wish::Recall { plan, days } => self.recalls(plan, *days, procedure, patient),
            _ if self.changes_with(card, place, procedure, patient) => Outcome::Granted,
            _ => Outcome::Nothing,
        }
    }

    /// Whether the tray or the steps are others with this wish than with only
    /// those before it.
    fn changes_with(
        &self,
        card: &Card,
        place: usize,
        procedure: &ProcedureId,
        patient: &Patient,
    ) -> bool {
        let up_to = |count: usize| {
            let card = Card {
                wishes: card.wishes[..count].to_vec(),
                ..card.clone()
            };
            let clinic = self.with_card(Some(card));
            let tray = clinic.tray(procedure, patient);
            (
                clinic.steps(procedure, patient),
                tray.stages,
                tray.must_before,
            )
        };
        up_to(place) != up_to(place + 1)
    }

    /// A material first: it counts once its role is known to be played, and
    /// what lies ready already may change before the tooth is open.
    fn prefers(
        &self,
        item: &ItemId,
        role: Role,
        procedure: &ProcedureId,
        patient: &Patient,
        changes: bool,
    ) -> Outcome {
        let counts = self
            .preferences()
            .iter()
            .any(|(_, i, r)| (*i, *r) == (item, role));
        let steps = self.with_card(None).steps(procedure, patient);
        match self.judged((item, role), procedure, patient, &steps) {
            Judged::Refused(reason) => Outcome::Refused(reason),
            Judged::Elsewhere => Outcome::Nothing,
            Judged::Open if !counts => Outcome::Nothing,
            Judged::Open if changes || self.is_open(patient) => Outcome::Granted,
            Judged::Open => Outcome::Later,
        }
    }

    fn recalls(
        &self,
        plan: &PlanId,
        days: Span,
        procedure: &ProcedureId,
        patient: &Patient,
    ) -> Outcome {
        let Some(plan) = self.catalogue().plan(plan).filter(|p| means(p, procedure)) else {
            return Outcome::Nothing;
        };
        let visit = self.return_visit(plan, patient);
        match (visit.preferred, visit.spans.first()) {
            (Some((preferred, _)), _) if preferred == days => Outcome::Granted,
            (_, Some((span, reason))) => Outcome::Refused(Reason {
                because: format!(
                    "No source brings the patient back then. Published: {} to {} days. {}",
                    span.from, span.to, reason.because
                ),
                ..reason.clone()
            }),
            (_, None) => Outcome::Refused(plain("This plan asks for no return visit.".into())),
        }
    }
}

fn means(plan: &Plan, procedure: &ProcedureId) -> bool {
    plan.procedures.iter().any(|p| p.procedure == *procedure)
}

fn gone(standard: &Tray, own: &Tray) -> Vec<ItemId> {
    standard
        .items()
        .filter(|(_, i)| !own.items().any(|(_, o)| o.item == i.item))
        .map(|(_, i)| i.item.clone())
        .collect()
}

fn come(standard: &Tray, own: &Tray) -> Vec<ItemId> {
    let needed = |tray: &Tray, item: &ItemId| {
        let mut items = tray.items();
        items.any(|(_, i)| i.item == *item && i.need == Need::Needed)
    };
    own.items()
        .filter(|(_, i)| i.need == Need::Needed && !needed(standard, &i.item))
        .map(|(_, i)| i.item.clone())
        .collect()
}

fn moves(standard: &Tray, own: &Tray) -> Vec<Move> {
    let stage = |tray: &Tray, item: &ItemId| {
        let found = tray.items().find(|(_, i)| i.item == *item);
        found.map(|(title, _)| title.to_owned())
    };
    own.items()
        .filter_map(|(to, i)| {
            let from = stage(standard, &i.item)?;
            (from != to).then(|| Move {
                item: i.item.clone(),
                from,
                to: to.into(),
            })
        })
        .collect()
}

fn plain(because: String) -> Reason {
    Reason {
        because,
        sources: Vec::new(),
        rule: None,
    }
}
