//! Plans: what a visit turns into once the tooth is open, and when the patient
//! comes back.

use crate::{
    condition::When,
    ids::{CheckId, PlanId, ProcedureId, SourceId},
    items::Role,
    quantity::Span,
};
use serde::{Deserialize, Serialize};

/// A plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Plan {
    /// Its id.
    pub id: PlanId,
    /// What it is, as an answer a student can choose: `Temporary now, permanent filling after review`.
    pub name: String,
    /// What it amounts to, in one or two sentences.
    pub about: String,
    /// What closes the tooth at the end of this visit; none where no filling does.
    pub closes: Option<Role>,
    /// Which procedure it is, by the patient; the first whose condition holds.
    #[serde(default)]
    pub procedures: Vec<PlanProcedure>,
    /// When the patient comes back.
    #[serde(default)]
    pub recalls: Vec<Recall>,
}

/// The procedure of a plan for some patients.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PlanProcedure {
    /// The procedure.
    pub procedure: ProcedureId,
    /// For whom; everybody if none.
    pub when: Option<When>,
}

/// When the patient returns, and what is looked at then. Where sources differ
/// there are several, and each is acceptable.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Recall {
    /// For whom; everybody if none.
    pub when: Option<When>,
    /// The interval from this visit, in days. A month counts 30, a year 365.
    pub days: Span,
    /// What is checked then.
    pub checks: Vec<CheckId>,
    /// What brings the patient back sooner.
    pub sooner: Vec<CheckId>,
    /// Why then.
    pub because: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// Something looked at when the patient returns, or a sign to return sooner.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Check {
    /// Its id.
    pub id: CheckId,
    /// Whether it is done at the visit, or felt by the patient.
    pub kind: CheckKind,
    /// What it is: `a radiograph of the tooth`.
    pub name: String,
    /// Why it matters.
    pub because: String,
}

/// What kind of check.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CheckKind {
    /// Done or looked at by the team at the recall visit.
    AtVisit,
    /// Felt or seen by the patient; a reason to come sooner.
    Sign,
    /// Felt or seen by the patient; to be expected for a while and no reason to come.
    Expected,
}
