//! Preference cards: what one dentist, or one practice's protocol, wants done
//! differently from the standard set-up.

use crate::{
    ids::{CardId, ItemId, PlanId, ProcedureId},
    items::Role,
    quantity::Span,
};
use serde::{Deserialize, Serialize};

/// A card.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Card {
    /// Its id.
    pub id: CardId,
    /// Its name: `Dam always, plain anaesthetic`. Never a person's.
    pub name: String,
    /// What it is about, in a sentence.
    pub about: String,
    /// The wishes.
    #[serde(default)]
    pub wishes: Vec<Wish>,
}

/// One wish. An empty list of procedures means all of them.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(
    rename_all = "kebab-case",
    rename_all_fields = "kebab-case",
    deny_unknown_fields
)]
pub enum Wish {
    /// One item instead of another.
    Exchange {
        /// The item that goes.
        instead_of: ItemId,
        /// The item that comes.
        take: ItemId,
        /// In which procedures.
        #[serde(default)]
        procedures: Vec<ProcedureId>,
    },
    /// One more item.
    Add {
        /// The item.
        item: ItemId,
        /// The item it is laid beside.
        beside: ItemId,
        /// In which procedures.
        #[serde(default)]
        procedures: Vec<ProcedureId>,
    },
    /// One item less.
    LeaveOut {
        /// The item.
        item: ItemId,
        /// In which procedures.
        #[serde(default)]
        procedures: Vec<ProcedureId>,
    },
    /// One item laid before another.
    Before {
        /// The item that comes first.
        first: ItemId,
        /// The item that comes after it.
        then: ItemId,
    },
    /// Something handed over in another way.
    HandOver {
        /// What is handed.
        item: ItemId,
        /// How.
        how: String,
    },
    /// A rubber dam always, or never.
    Dam {
        /// Always if true.
        always: bool,
    },
    /// One material before others in a role.
    Prefer {
        /// The material.
        item: ItemId,
        /// The role.
        role: Role,
    },
    /// One plan before the others that are open to the patient.
    PreferPlan {
        /// The plan.
        plan: PlanId,
    },
    /// The return visit after a plan.
    Recall {
        /// The plan.
        plan: PlanId,
        /// Days from the visit.
        days: Span,
    },
}

impl Wish {
    /// The things and the procedures that it names.
    pub fn names(&self) -> (Vec<&ItemId>, &[ProcedureId]) {
        match self {
            Self::Exchange {
                instead_of,
                take,
                procedures,
            } => (vec![instead_of, take], procedures),
            Self::Add {
                item,
                beside,
                procedures,
            } => (vec![item, beside], procedures),
            Self::LeaveOut { item, procedures } => (vec![item], procedures),
            Self::Before { first, then } => (vec![first, then], &[]),
            Self::HandOver { item, .. } | Self::Prefer { item, .. } => (vec![item], &[]),
            Self::Dam { .. } | Self::Recall { .. } | Self::PreferPlan { .. } => (Vec::new(), &[]),
        }
    }
}
