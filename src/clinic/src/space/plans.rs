//! Plans do not contradict one another, and each leaves a material for every role.

use crate::{Clinic, engine::Conclusions, layers::Stack, standing::Standing};
use catalogue::{
    ids::PlanId,
    items::Role,
    rules::{Conclusion, Strength},
};
use std::collections::BTreeMap;

impl Clinic {
    pub(super) fn check_plans(&self, all: &Conclusions, fault: &mut impl FnMut(String)) {
        let mut said: BTreeMap<&PlanId, Vec<(Strength, &str)>> = BTreeMap::new();
        for (rule, conclusion) in self.held(all) {
            if let Conclusion::Plan { plan, strength } = conclusion {
                said.entry(plan)
                    .or_default()
                    .push((*strength, rule.id.as_str()));
            }
        }
        for (plan, strengths) in &said {
            let by = |wanted: &[Strength]| {
                strengths
                    .iter()
                    .find(|(s, _)| wanted.contains(s))
                    .map(|(_, r)| *r)
            };
            if let (Some(yes), Some(no)) = (
                by(&[Strength::Must]),
                by(&[Strength::Not, Strength::MustNot]),
            ) {
                fault(format!(
                    "rule '{yes}' says that '{plan}' must be and rule '{no}' that it must not"
                ));
            }
            if let (Some(yes), Some(no)) = (by(&[Strength::May]), by(&[Strength::MustNot])) {
                fault(format!(
                    "rule '{yes}' says that '{plan}' may be and rule '{no}' that it must not"
                ));
            }
        }
        let musts: Vec<_> = said
            .iter()
            .filter(|(_, s)| s.iter().any(|(s, _)| *s == Strength::Must))
            .map(|(p, _)| p)
            .collect();
        if let [first, second, ..] = musts[..] {
            fault(format!("'{first}' and '{second}' are both a must"));
        }
    }

    /// Every role of the plan has an admissible option, and none that the
    /// patient must not meet is admissible.
    pub(super) fn check_layers(
        &self,
        plan: &PlanId,
        closes: Role,
        all: &Conclusions,
        fault: &mut impl FnMut(String),
    ) {
        let mut stack = Stack::default();
        for role in [closes, Role::Liner, Role::Base] {
            let verdicts = self.layer_verdicts(all, role, &stack);
            for verdict in verdicts
                .iter()
                .filter(|v| v.standing <= Standing::Acceptable)
            {
                let Some(material) = verdict
                    .item
                    .as_ref()
                    .and_then(|id| self.catalogue.material(id))
                else {
                    continue;
                };
                for (substance, _) in self.avoided(all) {
                    if material.contains.contains(&substance) {
                        fault(format!(
                            "'{}' is admitted although it contains {substance}",
                            material.id
                        ));
                    }
                }
            }
            let best = verdicts.into_iter().min_by_key(|v| v.standing);
            match best {
                Some(best) if best.standing <= Standing::Acceptable => match role {
                    Role::Liner => stack.liner = best.item,
                    Role::Base => stack.base = best.item,
                    _ => stack.closing = best.item,
                },
                _ => fault(format!("the plan '{plan}' leaves no material for {role:?}")),
            }
        }
    }
}
