//! Rules: what follows from findings, how firmly, why, and by whose authority.

use crate::{
    condition::When,
    ids::{ClassId, CompetencyId, FindingId, ItemId, PlanId, RuleId, SourceId, SubstanceId},
    items::Role,
};
use serde::{Deserialize, Serialize};

/// How firmly a conclusion stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Strength {
    /// It is to be done.
    Must,
    /// It is one acceptable way.
    May,
    /// It is not indicated: of no use, though nobody is hurt.
    Not,
    /// It would do harm.
    MustNot,
}

/// What follows.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Conclusion {
    /// A derived finding has this value.
    Find {
        /// The derived finding.
        finding: FindingId,
        /// Its value: a word of its scale, or `yes` for a flag.
        is: String,
    },
    /// A plan is or is not admissible.
    Plan {
        /// The plan.
        plan: PlanId,
        /// How firmly.
        strength: Strength,
    },
    /// A material is or is not to be used in a role.
    Material {
        /// The material.
        item: ItemId,
        /// The role.
        role: Role,
        /// How firmly.
        strength: Strength,
    },
    /// A role is or is not to be filled at all.
    Layer {
        /// The role.
        role: Role,
        /// How firmly.
        strength: Strength,
    },
    /// Nothing that contains this substance may be used.
    Avoid {
        /// The substance.
        substance: SubstanceId,
    },
    /// Nothing of this class may lie straight on the floor of the cavity.
    NotOnFloor {
        /// The class.
        class: ClassId,
    },
    /// The assistant tells the dentist something before going on.
    Tell {
        /// What is told.
        what: String,
    },
}

/// One rule.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Rule {
    /// Its id.
    pub id: RuleId,
    /// When it holds.
    pub when: When,
    /// What follows.
    pub then: Vec<Conclusion>,
    /// Why, in a sentence a student can repeat.
    pub because: String,
    /// The competency that knowing it shows.
    pub competency: CompetencyId,
    /// Where it is from.
    pub sources: Vec<SourceId>,
}
