//! Laying the tray, and fetching what a change of plan asks for.

use super::{
    choice::{Choice, Decision, Form},
    draw::Visit,
    seed::Seed,
    sets::Sets,
};
use crate::{
    Reason,
    engine::Conclusions,
    standing::Standing,
    tray::{Need, Tray},
};
use catalogue::{
    Item,
    ids::{ItemId, ProcedureId},
    items::Place,
    procedures::ProcedureKind,
};

/// How many items that do not belong lie among those to choose from.
const TEMPTING: usize = 10;

impl Visit<'_> {
    /// Lay the tray for the booked procedure and this patient.
    pub fn lay(&self, chance: &mut Seed) -> Decision {
        let tray = self.clinic.tray(&self.case.booked, &self.before.patient);
        let sets = Sets::of(self.clinic, &tray);
        let mut choices: Vec<Choice> = tray
            .items()
            .filter(|(_, i)| i.place == Place::Tray && sets.set_of(i).is_none())
            .map(|(_, i)| {
                let standing = if i.need == Need::Needed {
                    Standing::Right
                } else {
                    Standing::Acceptable
                };
                self.item_choice(
                    &i.item,
                    standing,
                    &format!("It is there {}.", i.reason),
                    &self.before,
                )
            })
            .collect();
        for set in &sets.all {
            choices.extend(set.variants(self));
        }
        choices.extend(self.tempting(&tray, chance));
        let sources = self
            .clinic
            .catalogue()
            .procedure(&self.case.booked)
            .map(|p| p.sources.clone())
            .unwrap_or_default();
        let because =
            "The tray follows from the steps of the procedure, in the order in which they need it.";
        let question = "Lay what this patient needs, in order of use.";
        Decision {
            lead: self.booking(),
            reasons: vec![Reason {
                because: because.into(),
                sources,
                rule: None,
            }],
            ..Decision::new(
                "tray",
                "Lay the tray",
                question,
                sets.form(&tray),
                choices,
                "tray-set-ups",
            )
        }
    }

    /// What the visit is for, and how that changed if the chart speaks against it.
    fn booking(&self) -> String {
        let name = |id: &ProcedureId| {
            let procedure = self.clinic.catalogue().procedure(id);
            procedure
                .map(|p| super::cavity::lower_first(&p.name))
                .unwrap_or_default()
        };
        let booked = name(&self.case.booked);
        match &self.case.instead_of {
            None => format!("The visit is booked as: {booked}."),
            Some(first) => format!(
                "The visit was booked as: {}. The dentist reads the chart and changes that to: {booked}.",
                name(first)
            ),
        }
    }

    pub(super) fn item_choice(
        &self,
        item: &ItemId,
        standing: Standing,
        because: &str,
        all: &Conclusions,
    ) -> Choice {
        let catalogue = self.clinic.catalogue();
        let mut reasons = vec![Reason {
            because: because.into(),
            sources: Vec::new(),
            rule: None,
        }];
        let mut standing = standing;
        for (substance, reason) in self.clinic.avoided(all) {
            if catalogue
                .item(item)
                .is_some_and(|i| i.contains().contains(&substance))
            {
                standing = Standing::Unsafe;
                reasons.insert(0, reason);
            }
        }
        Choice::new(item.as_str(), catalogue.item_name(item), standing)
            .showing(item)
            .because(reasons)
    }

    /// Items that do not belong but might be taken: what the standard set-up had
    /// before it was changed for this patient, lookalikes, and items of other treatments.
    fn tempting(&self, tray: &Tray, chance: &mut Seed) -> Vec<Choice> {
        let on_tray = |id: &ItemId| tray.items().any(|(_, i)| i.item == *id);
        // What a set has exchanged stands among the variants of the set.
        let sets = Sets::of(self.clinic, tray);
        let exchanged = tray
            .changes
            .iter()
            .filter(|c| !sets.exchanged(self.clinic, &c.from))
            .map(|c| c.from.clone());
        let mut lookalikes: Vec<ItemId> = tray
            .items()
            .filter_map(|(_, i)| self.clinic.catalogue().item(&i.item))
            .flat_map(|i| i.lookalikes().iter().map(|l| l.item.clone()))
            .collect();
        chance.shuffle(&mut lookalikes);
        let mut others = self.other_treatments();
        chance.shuffle(&mut others);
        let mut chosen: Vec<ItemId> = Vec::new();
        for id in exchanged.chain(lookalikes).chain(others) {
            let laid = self.clinic.catalogue().item(&id).map(Item::place) == Some(Place::Tray);
            if laid
                && !on_tray(&id)
                && !sets.exchanged(self.clinic, &id)
                && !chosen.contains(&id)
                && chosen.len() < TEMPTING
            {
                chosen.push(id);
            }
        }
        chosen
            .iter()
            .map(|id| {
                let because = match self.clinic.catalogue().item(id) {
                    Some(item) => format!("Nothing in this set-up uses it. {}", item.purpose()),
                    None => "Nothing in this set-up uses it.".into(),
                };
                self.item_choice(id, Standing::Wrong, &because, &self.before)
            })
            .collect()
    }

    fn other_treatments(&self) -> Vec<ItemId> {
        self.clinic
            .catalogue()
            .procedures
            .iter()
            .filter(|p| p.kind == ProcedureKind::Treatment && p.id != self.case.booked)
            .flat_map(|p| {
                p.steps
                    .iter()
                    .flat_map(|s| s.uses.0.iter().map(|u| u.item.clone()))
            })
            .collect()
    }

    /// What has to be fetched now that the plan is settled: needed by its
    /// procedure for this patient, and not on the tray that was laid.
    pub fn fetch(&self, chance: &mut Seed) -> Option<Decision> {
        self.case.plan.as_ref()?;
        let procedure = self.procedure.as_ref()?;
        let laid = self.clinic.tray(&self.case.booked, &self.before.patient);
        let now = self.clinic.tray(procedure, &self.after.patient);
        let was = |id: &ItemId| laid.items().any(|(_, i)| i.item == *id);
        let mut choices: Vec<Choice> = now
            .items()
            .filter(|(_, i)| i.need == Need::Needed && i.place == Place::Tray && !was(&i.item))
            .map(|(_, i)| {
                let because = format!("It is there {}.", i.reason);
                self.item_choice(&i.item, Standing::Right, &because, &self.after)
            })
            .collect();
        if choices.is_empty() {
            return None;
        }
        let wanted = choices.len();
        choices.extend(
            self.no_longer(&laid, &now, procedure, chance)
                .into_iter()
                .take(wanted.clamp(3, 6)),
        );
        Some(Decision::new(
            "fetch",
            "Fetch what is missing",
            "What is not on your tray and is needed now?",
            Form::All,
            choices,
            "tray-set-ups",
        ))
    }

    fn no_longer(
        &self,
        laid: &Tray,
        now: &Tray,
        procedure: &ProcedureId,
        chance: &mut Seed,
    ) -> Vec<Choice> {
        let needed = |id: &ItemId| now.items().any(|(_, i)| i.item == *id);
        let mut ids: Vec<ItemId> = now.changes.iter().map(|c| c.from.clone()).collect();
        let mut others: Vec<ItemId> = self
            .clinic
            .catalogue()
            .procedures
            .iter()
            .filter(|p| p.kind == ProcedureKind::Treatment && p.id != *procedure)
            .flat_map(|p| {
                p.steps
                    .iter()
                    .flat_map(|s| s.uses.0.iter().chain(&s.at_hand.0).map(|u| u.item.clone()))
            })
            .collect();
        chance.shuffle(&mut others);
        ids.extend(others);
        let mut chosen: Vec<Choice> = Vec::new();
        for id in ids {
            let on_laid = laid.items().any(|(_, i)| i.item == id);
            let tray = self.clinic.catalogue().item(&id).map(Item::place) == Some(Place::Tray);
            if tray && !on_laid && !needed(&id) && !chosen.iter().any(|c| c.id == id.as_str()) {
                let because = "No step of what follows uses it.";
                chosen.push(self.item_choice(&id, Standing::Wrong, because, &self.after));
            }
        }
        chosen
    }
}
