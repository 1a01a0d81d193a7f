//! What can happen in study: sittings of questions, practice forms, and
//! questions set aside.

use serde::{Deserialize, Serialize};

use crate::values::{PerCent, SittingId, Verdict};

/// A sitting of questions was begun.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SittingBegun {
    /// The sitting.
    pub sitting: SittingId,
    /// The minutes that were chosen.
    pub minutes: u16,
    /// The ids of the questions it was composed of, in the order in which they
    /// are asked, so that a reload goes on with the same ones.
    pub questions: Vec<String>,
}

/// A sitting of questions was ended, at its last question or before.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SittingEnded {
    /// The sitting.
    pub sitting: SittingId,
}

/// What was answered, by the keys of the question.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Given {
    /// One choice.
    One(String),
    /// Several choices, in any order.
    Many(Vec<String>),
    /// Pieces in the order given.
    Order(Vec<String>),
    /// Left with right.
    Pairs(Vec<(String, String)>),
    /// A number as a plain decimal.
    Number(String),
}

/// A question was answered and judged, in a sitting or in a practice form. In a
/// form a later answer to the same question takes the place of an earlier one.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct QuestionAnswered {
    /// The sitting or the form it belongs to.
    pub sitting: SittingId,
    /// The id of the question.
    pub question: String,
    /// The seed of its wording.
    pub wording: u64,
    /// The id of the competency that it speaks for.
    pub competency: String,
    /// What was answered.
    pub answer: Given,
    /// How the answer was judged.
    pub verdict: Verdict,
    /// Marks for the answer.
    pub per_cent: PerCent,
    /// Whether a hint was shown first.
    #[serde(default, skip_serializing_if = "is_not")]
    pub hint: bool,
    /// Whether the student marked it as unsure.
    #[serde(default, skip_serializing_if = "is_not")]
    pub unsure: bool,
    /// Seconds from seeing the question to answering it, over all visits.
    pub seconds: u32,
}

/// A practice form was begun.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FormBegun {
    /// The form, named as a sitting.
    pub form: SittingId,
    /// The ids of its questions, in order.
    pub questions: Vec<String>,
    /// The code that it was built from; none for a personal form.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub code: Option<String>,
    /// The minutes allowed; none where it is untimed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minutes: Option<u16>,
    /// The per cent right at which the programme counts it as passed.
    pub pass: PerCent,
}

/// A question of a form was flagged to return to, or the flag taken away.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FormFlagged {
    /// The form.
    pub form: SittingId,
    /// The id of the question.
    pub question: String,
    /// Whether it is flagged from now on.
    pub flagged: bool,
}

/// A form was paused, or gone on with.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FormPaused {
    /// The form.
    pub form: SittingId,
    /// Whether it rests from now on.
    pub paused: bool,
}

/// A form was handed in.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FormFinished {
    /// The form.
    pub form: SittingId,
}

/// A question was set aside with a note, or taken back.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct QuestionSetAside {
    /// The id of the question.
    pub question: String,
    /// The note, which may be empty; none where the question is taken back.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "a test for leaving a field out is handed a reference"
)]
pub(crate) fn is_not(flag: &bool) -> bool {
    !flag
}
