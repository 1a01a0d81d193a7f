//! Set-ups laid as one thing. A set-up that comes in a cassette of its own, such
//! as the one for the dam, is one option of the tray decision, in as many
//! variants as the set-up has variations; the patient decides which is right.

use super::{
    choice::{Choice, Form},
    draw::Visit,
};
use crate::{
    Clinic, Reason,
    sequence::Target,
    standing::Standing,
    tray::{Need, Tray, TrayItem},
};
use catalogue::{
    ids::{ItemId, ProcedureId},
    items::Place,
};

/// A set-up with at least this many items to lay is laid as one thing.
const LEAST: usize = 4;

/// The set-ups of a tray that are laid as one thing.
pub(super) struct Sets {
    pub all: Vec<Set>,
}

/// One of them.
pub(super) struct Set {
    procedure: ProcedureId,
    name: String,
    items: Vec<ItemId>,
}

impl Sets {
    pub fn of(clinic: &Clinic, tray: &Tray) -> Self {
        let mut all: Vec<Set> = Vec::new();
        for (_, laid) in tray
            .items()
            .filter(|(_, i)| i.need == Need::Needed && i.place == Place::Tray)
        {
            let Some(id) = &laid.set else { continue };
            match all.iter_mut().find(|s| s.procedure == *id) {
                Some(set) => set.items.push(laid.item.clone()),
                None => all.push(Set {
                    procedure: id.clone(),
                    name: clinic
                        .catalogue()
                        .procedure(id)
                        .map(|p| p.name.clone())
                        .unwrap_or_default(),
                    items: vec![laid.item.clone()],
                }),
            }
        }
        all.retain(|s| s.items.len() >= LEAST);
        Self { all }
    }

    /// The set that an item is laid with, if it comes with one.
    pub fn set_of(&self, laid: &TrayItem) -> Option<&Set> {
        self.all
            .iter()
            .find(|s| Some(&s.procedure) == laid.set.as_ref())
    }

    /// Whether an item belongs to a variation of one of the sets.
    pub fn exchanged(&self, clinic: &Clinic, item: &ItemId) -> bool {
        self.all
            .iter()
            .filter_map(|s| clinic.catalogue().procedure(&s.procedure))
            .any(|p| {
                p.variations
                    .iter()
                    .any(|v| v.instead_of == *item || v.take.as_ref() == Some(item))
            })
    }

    /// The option that stands for an item: its set, or the item itself.
    fn stands_for(&self, tray: &Tray, item: &ItemId) -> String {
        let laid = tray.items().find(|(_, i)| i.item == *item).map(|(_, i)| i);
        laid.and_then(|i| self.set_of(i))
            .map_or_else(|| item.to_string(), Set::id)
    }

    /// The target of the tray, with sets as one thing.
    pub fn form(&self, tray: &Tray) -> Form {
        let target = tray.target();
        let ids = |stage: &Vec<ItemId>| {
            let mut ids: Vec<String> = Vec::new();
            for id in stage.iter().map(|item| self.stands_for(tray, item)) {
                if !ids.contains(&id) {
                    ids.push(id);
                }
            }
            ids
        };
        let orders: Vec<(String, String, String)> = tray
            .must_before
            .iter()
            .map(|(a, b, why)| {
                (
                    self.stands_for(tray, a),
                    self.stands_for(tray, b),
                    why.clone(),
                )
            })
            .filter(|(a, b, _)| a != b)
            .collect();
        Form::Tray {
            target: Target {
                stages: target.stages.iter().map(ids).collect(),
                must_before: orders
                    .iter()
                    .map(|(a, b, _)| (a.clone(), b.clone()))
                    .collect(),
            },
            titles: tray.stages.iter().map(|s| s.title.clone()).collect(),
            neutral: tray.neutral().iter().map(ToString::to_string).collect(),
            orders,
        }
    }
}

impl Set {
    /// The id of the right variant.
    pub fn id(&self) -> String {
        format!("set-{}", self.procedure)
    }

    /// The right variant and the others. The right one is told apart by what is
    /// in it, never by its id.
    pub fn variants(&self, visit: &Visit<'_>) -> Vec<Choice> {
        let catalogue = visit.clinic.catalogue();
        let Some(procedure) = catalogue.procedure(&self.procedure) else {
            return Vec::new();
        };
        let mut choices = vec![self.choice(
            visit,
            self.id(),
            self.items.clone(),
            Standing::Right,
            &procedure.purpose,
        )];
        for (i, variation) in procedure.variations.iter().enumerate() {
            let Some(take) = &variation.take else {
                continue;
            };
            // Turned round: without the change where it applies, with it where it does not.
            let (out, into) = if self.items.contains(take) {
                (take, &variation.instead_of)
            } else {
                (&variation.instead_of, take)
            };
            if !self.items.contains(out) {
                continue;
            }
            let items = self
                .items
                .iter()
                .map(|i| if i == out { into.clone() } else { i.clone() })
                .collect();
            let because = if out == take {
                &variation.because
            } else {
                "Nothing in this chart asks for the exchange."
            };
            choices.push(self.choice(
                visit,
                format!("{}-{i}", self.id()),
                items,
                Standing::Wrong,
                because,
            ));
        }
        self.name_apart(visit, choices)
    }

    fn choice(
        &self,
        visit: &Visit<'_>,
        id: String,
        items: Vec<ItemId>,
        standing: Standing,
        because: &str,
    ) -> Choice {
        let avoided = visit.clinic.avoided(&visit.before);
        let mut reasons = vec![Reason {
            because: because.into(),
            sources: Vec::new(),
            rule: None,
        }];
        let mut standing = standing;
        for item in items
            .iter()
            .filter_map(|id| visit.clinic.catalogue().item(id))
        {
            for (_, reason) in avoided.iter().filter(|(s, _)| item.contains().contains(s)) {
                standing = Standing::Unsafe;
                reasons.insert(0, reason.clone());
            }
        }
        let mut choice = Choice::new(id, self.name.clone(), standing).because(reasons);
        choice.shows = items;
        choice
    }

    /// Names each variant by the items that the others do not have.
    fn name_apart(&self, visit: &Visit<'_>, choices: Vec<Choice>) -> Vec<Choice> {
        let in_all: Vec<ItemId> = self
            .items
            .iter()
            .filter(|i| choices.iter().all(|c| c.shows.contains(i)))
            .cloned()
            .collect();
        choices
            .into_iter()
            .map(|mut choice| {
                let own: Vec<String> = choice
                    .shows
                    .iter()
                    .filter(|i| !in_all.contains(i))
                    .map(|i| super::cavity::lower_first(visit.clinic.catalogue().item_name(i)))
                    .collect();
                if !own.is_empty() {
                    choice.label = format!("{}, with {}", choice.label, own.join(" and "));
                }
                choice
            })
            .collect()
    }
}
