//! Procedures as steps. The tray, its order and who hands what are derived
//! from the steps, never listed beside them.

use crate::{
    condition::When,
    ids::{CompetencyId, ItemId, ProcedureId, SourceId, StepId},
    quantity::Span,
};
use serde::{
    Deserialize, Deserializer, Serialize, Serializer,
    de::{MapAccess, Visitor},
    ser::SerializeMap,
};
use std::fmt;

/// Who acts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Actor {
    /// The dentist.
    Dentist,
    /// The assistant.
    Assistant,
    /// Both, hand in hand.
    Team,
}

/// Whether it stands alone or only serves inside others.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ProcedureKind {
    /// A treatment a patient comes for.
    Treatment,
    /// A set-up that treatments include.
    SetUp,
}

/// An item and why a step uses it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Use {
    /// The item.
    pub item: ItemId,
    /// Why it is there, as the end of 'It is there …': `to lift the soft dentine in one piece`.
    pub reason: String,
}

/// A list of uses, written as a table `item = "reason"` in the order of use.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Uses(pub Vec<Use>);

impl Serialize for Uses {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for each in &self.0 {
            map.serialize_entry(&each.item, &each.reason)?;
        }
        map.end()
    }
}

impl<'de> Deserialize<'de> for Uses {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Table;
        impl<'de> Visitor<'de> for Table {
            type Value = Uses;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a table of items with the reason for each: { cement-spatula = \"…\" }")
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Uses, A::Error> {
                let mut uses = Vec::new();
                while let Some((item, reason)) = map.next_entry()? {
                    uses.push(Use { item, reason });
                }
                Ok(Uses(uses))
            }
        }
        deserializer.deserialize_map(Table)
    }
}

/// A slip and how it is mended.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Slip {
    /// What goes wrong.
    pub slip: String,
    /// How it is mended, or kept from happening.
    pub mend: String,
}

/// How something passes from the assistant to the dentist.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct HandOver {
    /// What is handed.
    pub item: ItemId,
    /// How and where: `on the pad, held near the patient's chin`.
    pub how: String,
    /// Tempting ways that are wrong, each with the reason after ' — '.
    pub not: Vec<WrongWay>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A wrong way and why it is wrong.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct WrongWay {
    /// The way.
    pub way: String,
    /// Why it is wrong.
    pub because: String,
    /// Whether somebody could be hurt by it.
    #[serde(default)]
    pub harm: bool,
}

/// One step.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Step {
    /// Its id, unique in the procedure.
    pub id: StepId,
    /// The phase it belongs to, by its title; phases follow one another in the order of the steps.
    pub phase: String,
    /// Who acts.
    pub who: Actor,
    /// What is done, in one or two sentences. Empty for a step that only includes a set-up.
    #[serde(default)]
    pub does: String,
    /// When the step is part of the procedure; always if none.
    pub when: Option<When>,
    /// What it needs.
    #[serde(default)]
    pub uses: Uses,
    /// What is kept at hand in case the dentist calls for it.
    #[serde(default)]
    pub at_hand: Uses,
    /// The set-up whose steps stand here.
    pub include: Option<ProcedureId>,
    /// What is said aloud, to the patient or the dentist.
    #[serde(default)]
    pub says: String,
    /// How long it takes, in seconds.
    pub seconds: Option<Span>,
    /// The material that is mixed in this step.
    pub mixes: Option<ItemId>,
    /// The mixed material that this step brings to its place while it can still
    /// be worked. Holding it still until it has set is another step.
    pub places: Option<ItemId>,
    /// What is handed over in this step, and how.
    pub hand_over: Option<HandOver>,
    /// What can slip.
    #[serde(default)]
    pub slips: Vec<Slip>,
    /// Whether failing this step fails the skill.
    #[serde(default)]
    pub critical: bool,
    /// Whether an assistant may do it only where local law allows.
    #[serde(default)]
    pub local_law: bool,
}

/// A change of items for some patients.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Variation {
    /// For whom.
    pub when: When,
    /// The item that goes.
    pub instead_of: ItemId,
    /// The item that comes for it; none where it is simply left out.
    pub take: Option<ItemId>,
    /// Why.
    pub because: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// Patients for whom a procedure is not, as it stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct NotFor {
    /// For whom not.
    pub when: When,
    /// The procedure that the dentist would turn to; none where that is open.
    pub instead: Option<ProcedureId>,
    /// Why not.
    pub because: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// Two items whose order matters for safety or success.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct MustBefore {
    /// The item that comes first.
    pub first: ItemId,
    /// The item that comes after it.
    pub then: ItemId,
    /// Why.
    pub because: String,
}

/// Something the patient is told at the end.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Advice {
    /// What is said: `Do not chew on it for about an hour.`
    pub say: String,
    /// Why.
    pub because: String,
    /// When it is said; always if none.
    pub when: Option<When>,
}

/// A treatment or a set-up.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Procedure {
    /// Its id, the name of its folder.
    pub id: ProcedureId,
    /// Its name.
    pub name: String,
    /// A short name for a list on a phone.
    pub short: String,
    /// Whether it stands alone.
    pub kind: ProcedureKind,
    /// What it is for, in two or three sentences.
    pub purpose: String,
    /// When the dentist chooses it, one a line.
    #[serde(default)]
    pub indications: Vec<String>,
    /// The competency it shows.
    pub competency: CompetencyId,
    /// The steps in order.
    #[serde(rename = "step")]
    pub steps: Vec<Step>,
    /// Changes of items for some patients.
    #[serde(default, rename = "variation")]
    pub variations: Vec<Variation>,
    /// Patients for whom it is not, as it stands.
    #[serde(default)]
    pub not_for: Vec<NotFor>,
    /// Pairs whose order matters beyond the order of phases.
    #[serde(default, rename = "must-before")]
    pub must_before: Vec<MustBefore>,
    /// What the patient is told at the end.
    #[serde(default, rename = "advice")]
    pub advice: Vec<Advice>,
    /// Things often said to patients that are wrong after this procedure.
    #[serde(default, rename = "wrong-advice")]
    pub wrong_advice: Vec<WrongWay>,
    /// Hazards to the patient or the team, one a line.
    #[serde(default)]
    pub hazards: Vec<String>,
    /// What is written in the record, one a line.
    #[serde(default)]
    pub records: Vec<String>,
    /// Where the steps are from.
    pub sources: Vec<SourceId>,
}
