//! Case frames: a patient with fixed or ranged findings and a short story.
//! The decisions of a case and their answers are computed by `clinic`.

use crate::{
    given::Given,
    ids::{CaseId, CompetencyId, FindingId, ProcedureId},
    numbers::Heart,
};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A frame from which cases are drawn by a seed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct CaseFrame {
    /// Its id.
    pub id: CaseId,
    /// A title that gives nothing away.
    pub title: String,
    /// The procedure the visit was booked for; its tray is laid first.
    pub booked: ProcedureId,
    /// The competency it mainly shows.
    pub competency: CompetencyId,
    /// The teeth it can happen in, as two-digit FDI numbers; none for a visit
    /// that is not about one tooth.
    #[serde(default)]
    pub teeth: Vec<u8>,
    /// The age in years, least and most.
    pub age: (u8, u8),
    /// The weight in kilograms, least and most, where the visit reckons with it.
    #[serde(default)]
    pub weight: Option<(u16, u16)>,
    /// How the heart can be, each as likely; healthy where nothing is said.
    #[serde(default)]
    pub heart: Vec<Heart>,
    /// Why the patient comes, in several wordings. `{tooth}` stands for the tooth.
    pub reasons: Vec<String>,
    /// What the patient says beside the findings, in several wordings. No finding
    /// is stated in it: those are told by the sentences of the findings.
    #[serde(default)]
    pub words: Vec<String>,
    /// What the dentist says on opening the tooth, in several wordings. Empty
    /// for a visit that opens no tooth and goes as it was booked.
    #[serde(default)]
    pub opening: Vec<String>,
    /// The findings that are not the usual ones; the rest are as usual.
    pub findings: BTreeMap<FindingId, Given>,
    /// How hard it is.
    pub level: Level,
}

/// How hard a case or a question is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Level {
    /// One thing to see.
    Basic,
    /// What a working assistant has to know.
    Core,
    /// Several things at once.
    Demanding,
}
