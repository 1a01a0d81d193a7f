//! What goes into the cavity, from the floor outwards: which material in which
//! role, given the patient and the layers above.
//!
//! Three kinds of facts meet here: rules about roles and materials, substances
//! the patient must not meet, and what a material may lie under.

use crate::{
    Clinic, Reason,
    engine::Conclusions,
    standing::{Standing, standing},
};
use catalogue::{
    ids::{ClassId, ItemId},
    items::{Material, Role},
    rules::{Conclusion, Strength},
};

/// The layers settled so far.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Stack {
    /// The liner or cap, if one is placed.
    pub liner: Option<ItemId>,
    /// The base, if one is placed.
    pub base: Option<ItemId>,
    /// What closes the cavity, once settled.
    pub closing: Option<ItemId>,
}

/// One option for a role.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LayerVerdict {
    /// The material; none for leaving the role empty.
    pub item: Option<ItemId>,
    /// How good it is.
    pub standing: Standing,
    /// Why.
    pub reasons: Vec<Reason>,
}

impl Clinic {
    /// Every option for a role: each material that can serve in it and, for a
    /// liner, base or sealer, leaving it out.
    pub fn layer_verdicts(
        &self,
        all: &Conclusions,
        role: Role,
        stack: &Stack,
    ) -> Vec<LayerVerdict> {
        let said = self.said_of_role(all, role);
        let a_must = |except: Option<&ItemId>| {
            said.iter().any(|(item, s, _)| {
                Some(*item) != except
                    && *s == Strength::Must
                    && self.refusals(all, role, item, stack).is_empty()
            })
        };
        let mut verdicts: Vec<LayerVerdict> = self
            .catalogue
            .materials
            .iter()
            .filter(|m| m.roles.contains(&role))
            .map(|m| {
                let own: Vec<_> = said.iter().filter(|(item, ..)| **item == m.id).collect();
                let strengths: Vec<_> = own.iter().map(|(_, s, _)| *s).collect();
                let verdict = LayerVerdict {
                    item: Some(m.id.clone()),
                    standing: standing(&strengths, a_must(Some(&m.id))),
                    reasons: own.iter().map(|(.., r)| r.clone()).collect(),
                };
                self.refined(all, role, verdict, stack)
            })
            .collect();
        if !matches!(role, Role::Temporary | Role::Permanent) {
            verdicts.push(self.left_out(all, role, stack));
        }
        self.preferred(role, verdicts)
    }

    fn said_of_role<'c>(
        &'c self,
        all: &'c Conclusions,
        wanted: Role,
    ) -> Vec<(&'c ItemId, Strength, Reason)> {
        self.held(all)
            .filter_map(|(rule, conclusion)| match conclusion {
                Conclusion::Material {
                    item,
                    role,
                    strength,
                } if *role == wanted => Some((item, *strength, Reason::of(rule))),
                _ => None,
            })
            .collect()
    }

    fn said_of_layer(&self, all: &Conclusions, wanted: Role) -> Vec<(Strength, Reason)> {
        self.held(all)
            .filter_map(|(rule, conclusion)| match conclusion {
                Conclusion::Layer { role, strength } if *role == wanted => {
                    Some((*strength, Reason::of(rule)))
                }
                _ => None,
            })
            .collect()
    }

    /// Takes the patient, the layers and the role as a whole into account.
    fn refined(
        &self,
        all: &Conclusions,
        role: Role,
        mut verdict: LayerVerdict,
        stack: &Stack,
    ) -> LayerVerdict {
        let Some(item) = verdict.item.clone() else {
            return verdict;
        };
        let refusals = self.refusals(all, role, &item, stack);
        if !refusals.is_empty() {
            verdict.standing = refusals
                .iter()
                .map(|(s, _)| *s)
                .fold(Standing::Wrong, Ord::max);
            verdict.reasons = refusals.into_iter().map(|(_, r)| r).collect();
            return verdict;
        }
        let layer = self.said_of_layer(all, role);
        let said = |s| layer.iter().any(|(strength, _)| *strength == s);
        let useless = said(Strength::Not) && !said(Strength::May) && !said(Strength::Must);
        let harmful = said(Strength::MustNot);
        if harmful || useless {
            let floor = if harmful {
                Standing::Unsafe
            } else {
                Standing::Wrong
            };
            verdict.standing = verdict.standing.max(floor);
            verdict.reasons = layer.into_iter().map(|(_, r)| r).collect();
        } else if role == Role::Liner && verdict.standing <= Standing::Acceptable {
            verdict.reasons.extend(
                layer
                    .into_iter()
                    .filter(|(s, _)| *s == Strength::Must)
                    .map(|(_, r)| r),
            );
        }
        verdict
    }

    /// What speaks outright against a material in a role: a substance, the
    /// layer above, or the open pulp below.
    fn refusals(
        &self,
        all: &Conclusions,
        role: Role,
        item: &ItemId,
        stack: &Stack,
    ) -> Vec<(Standing, Reason)> {
        let Some(material) = self.catalogue.material(item) else {
            return Vec::new();
        };
        let mut refusals: Vec<_> = self
            .avoided(all)
            .into_iter()
            .filter(|(substance, _)| material.contains.contains(substance))
            .map(|(_, reason)| (Standing::Unsafe, reason))
            .collect();
        refusals.extend(self.above(role, stack).filter_map(|above| {
            let conflict = material.not_under.iter().find(|c| c.class == above.class)?;
            let reason = Reason {
                because: conflict.because.clone(),
                sources: conflict.sources.clone(),
                rule: None,
            };
            Some((Standing::Wrong, reason))
        }));
        let lowest = match role {
            Role::Liner => true,
            Role::Base => stack.liner.is_none(),
            _ => stack.liner.is_none() && stack.base.is_none(),
        };
        if lowest {
            refusals.extend(
                self.not_on_floor(all, &material.class)
                    .map(|r| (Standing::Unsafe, r)),
            );
        }
        refusals
    }

    fn above<'c>(&'c self, role: Role, stack: &'c Stack) -> impl Iterator<Item = &'c Material> {
        let base = if role == Role::Liner {
            stack.base.as_ref()
        } else {
            None
        };
        let closing = if matches!(role, Role::Temporary | Role::Permanent) {
            None
        } else {
            stack.closing.as_ref()
        };
        base.into_iter()
            .chain(closing)
            .filter_map(|id| self.catalogue.material(id))
    }

    fn not_on_floor(&self, all: &Conclusions, wanted: &ClassId) -> Option<Reason> {
        self.held(all)
            .find_map(|(rule, conclusion)| match conclusion {
                Conclusion::NotOnFloor { class } if class == wanted => Some(Reason::of(rule)),
                _ => None,
            })
    }

    /// Leaving a role empty.
    fn left_out(&self, all: &Conclusions, role: Role, stack: &Stack) -> LayerVerdict {
        let layer = self.said_of_layer(all, role);
        let reasons_of = |wanted: &[Strength]| {
            layer
                .iter()
                .filter(|(s, _)| wanted.contains(s))
                .map(|(_, r)| r.clone())
                .collect::<Vec<_>>()
        };
        let said = |s| layer.iter().any(|(strength, _)| *strength == s);
        let exposed = self
            .word(&all.patient, "exposure")
            .is_some_and(|w| w != "none");
        let (standing, reasons) = if let Some(reason) = self.uncovered(role, stack) {
            (Standing::Wrong, vec![reason])
        } else if said(Strength::Must) && said(Strength::May) {
            (Standing::Acceptable, reasons_of(&[Strength::May]))
        } else if said(Strength::Must) {
            let floor = if exposed {
                Standing::Unsafe
            } else {
                Standing::Wrong
            };
            (floor, reasons_of(&[Strength::Must]))
        } else {
            (
                Standing::Right,
                reasons_of(&[Strength::May, Strength::Not, Strength::MustNot]),
            )
        };
        LayerVerdict {
            item: None,
            standing,
            reasons,
        }
    }

    /// Why a liner may not be left without this role over it: it needs a cover
    /// that what closes the cavity does not give.
    fn uncovered(&self, role: Role, stack: &Stack) -> Option<Reason> {
        let liner = self.catalogue.material(stack.liner.as_ref()?)?;
        let closing = self.catalogue.material(stack.closing.as_ref()?)?;
        let cover = liner.cover.as_ref()?;
        (role == Role::Base && !cover.by.contains(&closing.class)).then(|| Reason {
            because: cover.because.clone(),
            sources: cover.sources.clone(),
            rule: None,
        })
    }
}
