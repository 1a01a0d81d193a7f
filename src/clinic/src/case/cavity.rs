//! The open tooth: the plan, and what goes into the cavity.
//!
//! The student says what the dentist will call for; then the dentist settles
//! on one of the right ways, so that what follows has one course.

use super::{
    choice::{Choice, Decision, Form},
    draw::{Fact, Visit},
    seed::Seed,
};
use crate::{
    Reason,
    layers::{LayerVerdict, Stack},
    standing::Standing,
};
use catalogue::{findings::Known, ids::ItemId, items::Role, plans::Plan};

/// How many bases that do not belong are offered as a first layer.
const BASES_OUT_OF_PLACE: usize = 2;

impl Visit<'_> {
    /// What the visit turns into now.
    pub fn plan(&self) -> Option<Decision> {
        let settled_on = self.case.plan.as_ref()?;
        let catalogue = self.clinic.catalogue();
        let found: Vec<String> = self
            .clinic
            .facts(&self.case.opened, Known::Opening)
            .into_iter()
            .map(found_in_words)
            .collect();
        let choices = self
            .clinic
            .plan_verdicts(&self.after)
            .into_iter()
            .filter_map(|verdict| {
                let plan = catalogue.plan(&verdict.plan)?;
                let reasons = or_say(verdict.reasons, "Nothing in the findings asks for it.");
                Some(
                    Choice::new(plan.id.as_str(), plan.name.clone(), verdict.standing)
                        .because(reasons),
                )
            })
            .collect();
        let proof = self
            .after
            .fired
            .iter()
            .map(|&r| self.clinic.rule(r))
            .find(|rule| {
                rule.then.iter().any(|c| {
                    matches!(c, catalogue::rules::Conclusion::Plan { plan, strength }
                        if plan == settled_on && *strength <= catalogue::rules::Strength::May)
                })
            })
            .map(|rule| self.clinic.proof(&self.after, rule));
        let settled = self
            .plan_data()
            .map(|p| format!("The dentist settles on: {}. {}", p.name, p.about));
        Some(Decision {
            lead: format!(
                "The dentist opens the tooth. “{}” Found: {}.",
                self.case.opening,
                found.join("; ")
            ),
            proof,
            then: settled.unwrap_or_default(),
            ..Decision::new(
                "plan",
                "Foresee the plan",
                "What do you expect the dentist to do now?",
                Form::One,
                choices,
                "pulp-and-depth",
            )
        })
    }

    pub(super) fn plan_data(&self) -> Option<&Plan> {
        self.clinic.catalogue().plan(self.case.plan.as_ref()?)
    }

    /// What closes the tooth, what lies on the floor and what goes between,
    /// where the plan closes the tooth with a filling.
    pub fn cavity(&self, chance: &mut Seed) -> Vec<Decision> {
        let Some(closes) = self.plan_data().and_then(|p| p.closes) else {
            return Vec::new();
        };
        let mut decisions = Vec::new();
        let mut stack = Stack::default();
        stack.closing = settle(&mut decisions, self.closing(closes, &stack), chance);
        stack.liner = settle(&mut decisions, self.layer(Role::Liner, &stack), chance);
        stack.base = settle(&mut decisions, self.layer(Role::Base, &stack), chance);
        if closes == Role::Temporary {
            decisions.extend(self.at_review(&stack));
        }
        decisions
    }

    /// Which material closes the tooth today. Materials of the other kind stand
    /// among the options: a permanent filling where a temporary is planned.
    fn closing(&self, closes: Role, stack: &Stack) -> Decision {
        let other = if closes == Role::Temporary {
            Role::Permanent
        } else {
            Role::Temporary
        };
        let mut choices =
            self.material_choices(self.clinic.layer_verdicts(&self.after, closes, stack));
        let against = self
            .plan_data()
            .map(|p| format!("The plan is “{}”, and this does not serve it.", p.name));
        for verdict in self.clinic.layer_verdicts(&self.after, other, stack) {
            let Some(item) = verdict.item else { continue };
            if choices.iter().any(|c| c.shows.contains(&item)) {
                continue;
            }
            let standing = if verdict.standing == Standing::Unsafe {
                Standing::Unsafe
            } else {
                Standing::Wrong
            };
            let mut reasons = plain(against.clone().unwrap_or_default());
            if standing == Standing::Unsafe {
                reasons.extend(verdict.reasons);
            }
            let name = self.clinic.catalogue().item_name(&item);
            choices.push(
                Choice::new(item.as_str(), name, standing)
                    .showing(&item)
                    .because(reasons),
            );
        }
        material_decision(
            "closing",
            "Close the tooth",
            "Which material will the dentist want for closing the tooth today?",
            choices,
        )
    }

    fn layer(&self, role: Role, stack: &Stack) -> Decision {
        let verdicts = self.clinic.layer_verdicts(&self.after, role, stack);
        let mut choices = self.material_choices(verdicts);
        choices.extend(self.sealers(stack));
        if role == Role::Liner {
            choices.extend(self.bases_out_of_place(stack));
        }
        let (id, name, question) = match role {
            Role::Liner => (
                "liner",
                "Line the floor",
                "What goes on the deepest dentine first?",
            ),
            _ => (
                "base",
                "Base the floor",
                "What goes as a base under what closes the tooth?",
            ),
        };
        material_decision(id, name, question, choices)
    }

    /// Sealers tempt as liners and bases: they too go under a filling, but on
    /// the walls, and are no shield for the pulp.
    fn sealers(&self, stack: &Stack) -> Vec<Choice> {
        self.clinic
            .layer_verdicts(&self.after, Role::Sealer, stack)
            .into_iter()
            .filter_map(|verdict| {
                let item = verdict.item?;
                let mut reasons =
                    plain("A film of it seals the walls; it does not shield the floor.".into());
                if verdict.standing >= Standing::Wrong {
                    reasons.extend(verdict.reasons);
                }
                let name = self.clinic.catalogue().item_name(&item);
                Some(
                    Choice::new(item.as_str(), name, verdict.standing.max(Standing::Wrong))
                        .showing(&item)
                        .because(reasons),
                )
            })
            .collect()
    }

    /// Bases that are no liner and, for this patient and filling, no base either:
    /// they tempt because they too are laid on the floor.
    fn bases_out_of_place(&self, stack: &Stack) -> Vec<Choice> {
        let catalogue = self.clinic.catalogue();
        let no_liner = |item: &ItemId| {
            let material = catalogue.material(item);
            material.is_some_and(|m| !m.roles.contains(&Role::Liner))
        };
        self.clinic
            .layer_verdicts(&self.after, Role::Base, stack)
            .into_iter()
            .filter(|verdict| verdict.standing >= Standing::Wrong)
            .filter_map(|verdict| {
                let item = verdict.item.filter(no_liner)?;
                let mut reasons = plain(
                    "It is laid thick, as a base; it is no film for the deepest spot.".into(),
                );
                reasons.extend(verdict.reasons);
                let name = catalogue.item_name(&item);
                Some(
                    Choice::new(item.as_str(), name, verdict.standing)
                        .showing(&item)
                        .because(reasons),
                )
            })
            .take(BASES_OUT_OF_PLACE)
            .collect()
    }

    fn material_choices(&self, verdicts: Vec<LayerVerdict>) -> Vec<Choice> {
        verdicts
            .into_iter()
            .map(|verdict| {
                let Some(item) = verdict.item else {
                    let reasons = or_say(verdict.reasons, "No rule asks for anything here.");
                    return Choice::new("nothing", "Nothing", verdict.standing).because(reasons);
                };
                let name = self.clinic.catalogue().item_name(&item);
                let reasons = or_say(verdict.reasons, "Nothing here asks for it.");
                Choice::new(item.as_str(), name, verdict.standing)
                    .showing(&item)
                    .because(reasons)
            })
            .collect()
    }
}

/// The dentist takes one of the best options; the decision says which.
fn settle(into: &mut Vec<Decision>, mut decision: Decision, chance: &mut Seed) -> Option<ItemId> {
    let best = decision.choices.iter().map(|c| c.standing).min()?;
    let options: Vec<&Choice> = decision
        .choices
        .iter()
        .filter(|c| c.standing == best)
        .collect();
    let taken = (*chance.pick(&options)?).clone();
    let item = taken.shows.first().cloned();
    decision.then = match item {
        Some(_) => format!("The dentist asks for: {}.", lower_first(&taken.label)),
        None => "The dentist wants nothing there.".into(),
    };
    into.push(decision);
    item
}

fn material_decision(id: &str, name: &str, question: &str, choices: Vec<Choice>) -> Decision {
    Decision::new(id, name, question, Form::One, choices, "materials")
}

/// The reasons, or this sentence where there is none.
pub(super) fn or_say(reasons: Vec<Reason>, sentence: &str) -> Vec<Reason> {
    if reasons.is_empty() {
        plain(sentence.into())
    } else {
        reasons
    }
}

/// A finding as the dentist calls it out: a number needs its name, words do not.
fn found_in_words(fact: Fact) -> String {
    if fact.says.starts_with(|c: char| c.is_ascii_digit()) {
        format!("{}, {}", lower_first(&fact.name), fact.says)
    } else {
        fact.says
    }
}

/// A reason that follows from the case itself and needs no source.
pub(super) fn plain(because: String) -> Vec<Reason> {
    vec![Reason {
        because,
        sources: Vec::new(),
        rule: None,
    }]
}

/// The text with a small first letter, for the middle of a sentence.
pub(super) fn lower_first(text: &str) -> String {
    let mut chars = text.chars();
    match chars.next() {
        Some(first) => first.to_lowercase().chain(chars).collect(),
        None => String::new(),
    }
}

/// The text with a large first letter.
pub(super) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    match chars.next() {
        Some(first) => first.to_uppercase().chain(chars).collect(),
        None => String::new(),
    }
}
