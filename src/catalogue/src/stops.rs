//! Moments at which the assistant speaks up.

use crate::{
    condition::When,
    ids::{CompetencyId, ItemId, SourceId, StopId},
    procedures::WrongWay,
};
use serde::{Deserialize, Serialize};

/// A moment at which silence could hurt somebody.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Stop {
    /// Its id.
    pub id: StopId,
    /// A short name: `A dropped instrument`.
    pub name: String,
    /// For which patients it can come up; for all if none.
    pub when: Option<When>,
    /// The item it turns on: it can come up only where that lies ready.
    pub item: Option<ItemId>,
    /// What is seen or heard. `{tooth}` stands for the tooth.
    pub sees: String,
    /// What the assistant says and does.
    pub speak: String,
    /// Why.
    pub because: String,
    /// Other ways, wrong or unsafe; keeping silent is one of them.
    pub not: Vec<WrongWay>,
    /// The competency it shows.
    pub competency: CompetencyId,
    /// Where it is from.
    pub sources: Vec<SourceId>,
}
