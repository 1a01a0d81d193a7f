//! The vocabulary of findings: what can be true of a patient and a tooth, in
//! which words or which unit, and when it becomes known.

use crate::{ids::FindingId, quantity::Milli};
use serde::{Deserialize, Serialize};

/// When a finding becomes known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Known {
    /// It stands in the chart before treatment starts.
    Chart,
    /// The dentist finds it when the tooth is opened.
    Opening,
    /// The dentist has settled on it in the course of the visit.
    Chosen,
    /// It follows from other findings by the rules.
    Derived,
}

/// One word of a scale.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Word {
    /// The value's id, unique in its finding.
    pub id: String,
    /// How a chart says it, without the finding's name: `lingers for about half a minute`.
    pub says: String,
    /// Other ways in which a story may say it, as whole sentences.
    #[serde(default)]
    pub told: Vec<String>,
}

/// How a finding is measured or worded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Scale {
    /// One of several words; the first is the usual, unremarkable one.
    Words(Vec<Word>),
    /// Set or not set; the usual is not set.
    Flag {
        /// How a chart says that it is set.
        yes: String,
        /// How a chart says that it is not.
        no: String,
        /// Other ways in which a story may say that it is set, as whole sentences.
        #[serde(default)]
        told: Vec<String>,
    },
    /// A number.
    Number {
        /// The unit: `mm`, `s`, `years`, `kg`, `min`.
        unit: String,
        /// The least that can be.
        least: Milli,
        /// The most that can be.
        most: Milli,
        /// The step in which it is recorded.
        step: Milli,
        /// The usual, unremarkable value.
        usual: Milli,
    },
}

/// One finding.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Finding {
    /// Its id.
    pub id: FindingId,
    /// Its name on a chart: `Cold test`.
    pub name: String,
    /// When it becomes known.
    pub known: Known,
    /// How it is worded or measured.
    pub scale: Scale,
    /// Whether its usual value goes without saying. The cavity, the dentition and the
    /// planned filling are never ordinary: every value of them says something.
    #[serde(default = "yes")]
    pub ordinary: bool,
    /// What it is and how it is found out, for a student, in a sentence or two.
    pub about: String,
}

fn yes() -> bool {
    true
}

/// A combination of findings that cannot be: keeps impossible patients out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Impossible {
    /// What cannot be.
    pub when: crate::condition::When,
    /// Why not.
    pub because: String,
}
