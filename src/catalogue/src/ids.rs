//! Identifiers: one type a kind, so that a procedure's id cannot stand where
//! an item's is wanted. All are lower-case words joined by hyphens.

use serde::{Deserialize, Serialize};
use std::fmt;

macro_rules! ids {
    ($($(#[$doc:meta])* $name:ident;)*) => {$(
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub String);

        impl $name {
            /// The id as text.
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl From<&str> for $name {
            fn from(text: &str) -> Self {
                Self(text.into())
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }
    )*};
}

ids! {
    /// A published source, or `common-practice`.
    SourceId;
    /// A finding: something that can be true of a patient or a tooth.
    FindingId;
    /// A thing on a tray: an instrument or a material; the two share one name space.
    ItemId;
    /// A procedure, or a set-up that procedures include.
    ProcedureId;
    /// One step, unique within its procedure.
    StepId;
    /// A plan: what the visit turns into.
    PlanId;
    /// A rule of reasoning.
    RuleId;
    /// A moment at which the assistant speaks up.
    StopId;
    /// A preference card.
    #[derive(Default)]
    CardId;
    /// A case frame.
    CaseId;
    /// A competency of the blueprint.
    CompetencyId;
    /// A lesson; a procedure's lesson has the procedure's id.
    LessonId;
    /// A word of the trade.
    TermId;
    /// A substance that a material or instrument contains, such as `eugenol`.
    SubstanceId;
    /// A class of materials that a compatibility fact speaks of, such as `resin-composite`.
    ClassId;
    /// A test or look at a recall visit, or a sign that brings the patient back sooner.
    CheckId;
}
