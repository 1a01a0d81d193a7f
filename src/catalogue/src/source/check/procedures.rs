//! Procedures: every item a step names exists, set-ups are included and never
//! include themselves, and every variation can take effect.

use super::{At, Checker};
use crate::{
    Catalogue,
    ids::{ItemId, ProcedureId},
    procedures::{Procedure, ProcedureKind, Step, Uses},
};
use std::collections::{HashMap, HashSet};

impl Checker<'_, '_> {
    pub(super) fn procedures(&mut self, catalogue: &Catalogue) {
        let mut sizes = Sizes::default();
        for (i, procedure) in catalogue.procedures.iter().enumerate() {
            let size = sizes.of(procedure, catalogue);
            self.procedure(&At::new("procedure", i), procedure, size, catalogue);
        }
    }

    fn procedure(
        &mut self,
        at: &At,
        procedure: &Procedure,
        size: Option<usize>,
        catalogue: &Catalogue,
    ) {
        self.text(at, "purpose", &procedure.purpose);
        self.wants(
            &at.field("competency"),
            "competency",
            procedure.competency.as_str(),
            |k| &k.competencies,
        );
        self.sources(at, &procedure.sources);
        self.phases(at, procedure);
        let mut ids = HashSet::new();
        for (i, step) in procedure.steps.iter().enumerate() {
            let at = at.field("step").entry(i);
            if !ids.insert(&step.id) {
                self.report(
                    &at.field("id"),
                    format!("the step '{}' stands twice; each needs its own id", step.id),
                );
            }
            self.step(&at, step, catalogue);
            self.placing(&at, step, procedure, i);
        }
        let size_fault = match size {
            None => Some(
                "the procedure, or a set-up in it, includes itself by way of its set-ups"
                    .to_owned(),
            ),
            Some(size) if size > MOST_STEPS => Some(format!(
                "the procedure has {size} steps with those of its set-ups; {MOST_STEPS} are the most"
            )),
            Some(_) => None,
        };
        if let Some(message) = size_fault {
            return self.report(&at.field("id"), message);
        }
        let mut used = HashSet::new();
        collect_items(procedure, catalogue, &mut used);
        self.changes(at, procedure, &used);
    }

    /// Phases follow one another; none is taken up again after another began.
    fn phases(&mut self, at: &At, procedure: &Procedure) {
        let mut closed: Vec<&str> = Vec::new();
        for (i, step) in procedure.steps.iter().enumerate() {
            let current = step.phase.as_str();
            if closed.last() == Some(&current) {
                continue;
            }
            if closed.contains(&current) {
                let message = format!(
                    "the phase '{current}' is taken up again; phases follow one another, so give it another title"
                );
                self.report(&at.field("step").entry(i).field("phase"), message);
            }
            closed.push(current);
        }
    }

    fn step(&mut self, at: &At, step: &Step, catalogue: &Catalogue) {
        self.maybe_condition(at, step.when.as_ref());
        self.uses(&at.field("uses"), &step.uses);
        self.uses(&at.field("at-hand"), &step.at_hand);
        if let Some(included) = &step.include {
            self.include(&at.field("include"), included, catalogue);
        } else {
            self.text(at, "does", &step.does);
            if step.seconds.is_none() {
                let message = "the step has no duration; write seconds = [least, most]";
                self.report(at, message.into());
            }
            self.lasts(&at.field("seconds"), step.seconds);
        }
        if let Some(material) = &step.mixes {
            self.wants(&at.field("mixes"), "material", material.as_str(), |k| {
                &k.materials
            });
            if catalogue
                .material(material)
                .is_some_and(|m| m.mixing.is_none())
            {
                self.report(
                    &at.field("mixes"),
                    format!("'{material}' has no mixing data; add them to the material"),
                );
            }
        }
        if let Some(hand_over) = &step.hand_over {
            let at = at.field("hand-over");
            self.wants(&at.field("item"), "item", hand_over.item.as_str(), |k| {
                &k.items
            });
            self.sources(&at, &hand_over.sources);
            if hand_over.not.len() < 2 {
                self.report(
                    &at.field("not"),
                    "a hand-over needs at least two wrong ways with their reasons".into(),
                );
            }
        }
    }

    /// What is mixed is placed by a later step, and what is placed was mixed by
    /// an earlier one: only then can it be said when the mix has to begin.
    fn placing(&mut self, at: &At, step: &Step, procedure: &Procedure, index: usize) {
        let (before, after) = (&procedure.steps[..index], &procedure.steps[index + 1..]);
        if let Some(material) = &step.mixes
            && !after.iter().any(|s| s.places.as_ref() == Some(material))
        {
            let message = format!(
                "no later step places '{material}'; write places = \"{material}\" in each step that brings it to its place"
            );
            self.report(&at.field("mixes"), message);
        }
        if let Some(material) = &step.places
            && !before.iter().any(|s| s.mixes.as_ref() == Some(material))
        {
            let message = format!("no earlier step mixes '{material}'");
            self.report(&at.field("places"), message);
        }
    }

    fn include(&mut self, at: &At, included: &ProcedureId, catalogue: &Catalogue) {
        self.wants(at, "procedure", included.as_str(), |k| &k.procedures);
        if catalogue
            .procedure(included)
            .is_some_and(|p| p.kind != ProcedureKind::SetUp)
        {
            self.report(
                at,
                format!("'{included}' is a treatment; only set-ups are included"),
            );
        }
    }

    fn uses(&mut self, at: &At, uses: &Uses) {
        for each in &uses.0 {
            let at = at.field(each.item.as_str());
            self.wants(&at, "item", each.item.as_str(), |k| &k.items);
            if each.reason.trim().is_empty() {
                self.report(&at, format!("say what '{}' is there for", each.item));
            }
        }
    }

    fn changes(&mut self, at: &At, procedure: &Procedure, used: &HashSet<&ItemId>) {
        for (i, variation) in procedure.variations.iter().enumerate() {
            let at = at.field("variation").entry(i);
            self.condition(&at.field("when"), &variation.when);
            self.text(&at, "because", &variation.because);
            self.sources(&at, &variation.sources);
            if !used.contains(&variation.instead_of) {
                let message = format!(
                    "no step uses '{}', so this variation never takes effect",
                    variation.instead_of
                );
                self.report(&at.field("instead-of"), message);
            }
            if let Some(take) = &variation.take {
                self.wants(&at.field("take"), "item", take.as_str(), |k| &k.items);
            }
        }
        for (i, not_for) in procedure.not_for.iter().enumerate() {
            let at = at.field("not-for").entry(i);
            self.condition(&at.field("when"), &not_for.when);
            self.text(&at, "because", &not_for.because);
            self.sources(&at, &not_for.sources);
            if let Some(instead) = &not_for.instead {
                self.wants(&at.field("instead"), "procedure", instead.as_str(), |k| {
                    &k.procedures
                });
            }
        }
        for (i, pair) in procedure.must_before.iter().enumerate() {
            let at = at.field("must-before").entry(i);
            self.text(&at, "because", &pair.because);
            for (field, item) in [("first", &pair.first), ("then", &pair.then)] {
                if !used.contains(item) {
                    self.report(
                        &at.field(field),
                        format!("no step uses '{item}', so this pair never matters"),
                    );
                }
            }
        }
        for (i, advice) in procedure.advice.iter().enumerate() {
            self.maybe_condition(&at.field("advice").entry(i), advice.when.as_ref());
        }
    }
}

/// The most steps of a procedure with those of its set-ups: far more than a
/// visit has. Set-ups that include one another double with every one.
const MOST_STEPS: usize = 400;

/// How many steps procedures have with those of their set-ups; none for one
/// that comes back to itself. Each is worked out once.
#[derive(Default)]
struct Sizes<'c>(HashMap<&'c ProcedureId, Option<usize>>);

impl<'c> Sizes<'c> {
    fn of(&mut self, procedure: &'c Procedure, catalogue: &'c Catalogue) -> Option<usize> {
        if let Some(known) = self.0.get(&procedure.id) {
            return *known;
        }
        // As long as it is not worked out, coming back to it is a circle.
        self.0.insert(&procedure.id, None);
        let mut size = Some(procedure.steps.len());
        for included in procedure.steps.iter().filter_map(|s| s.include.as_ref()) {
            if let Some(inner) = catalogue.procedure(included) {
                let inner = self.of(inner, catalogue);
                size = size
                    .zip(inner)
                    .map(|(size, inner)| size.saturating_add(inner));
            }
        }
        self.0.insert(&procedure.id, size);
        size
    }
}

fn collect_items<'c>(
    procedure: &'c Procedure,
    catalogue: &'c Catalogue,
    into: &mut HashSet<&'c ItemId>,
) {
    for step in &procedure.steps {
        into.extend(step.uses.0.iter().chain(&step.at_hand.0).map(|u| &u.item));
        if let Some(included) = step.include.as_ref().and_then(|id| catalogue.procedure(id)) {
            collect_items(included, catalogue, into);
        }
    }
    into.extend(procedure.variations.iter().filter_map(|v| v.take.as_ref()));
}
