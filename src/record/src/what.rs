//! What can happen: the kinds of event, open to kinds of later versions.
//!
//! To add a kind: a struct with its fields, a variant of [`What`], and a line
//! in [`What::kind`], [`What::body`] and [`What::from_parts`]. A field added
//! to an existing kind must be optional with a default, so that old lines are
//! read for ever; a version that does not know the field keeps the event
//! whole, as [`Unknown`].

use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

use crate::bench::MixHandedOver;
use crate::class::{AssignmentTaken, HandedIn, SkillChecked, TaskBegun};
use crate::study::{
    FormBegun, FormFinished, FormFlagged, FormPaused, QuestionAnswered, QuestionSetAside,
    SittingBegun, SittingEnded,
};
use crate::values::{PerCent, SittingId, Verdict};

/// What happened.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum What {
    /// A case was opened.
    CaseStarted(CaseStarted),
    /// A decision of a case was answered and judged.
    CaseAnswered(CaseAnswered),
    /// A case was brought to its end.
    CaseFinished(CaseFinished),
    /// A lesson was read to its end.
    LessonRead(LessonRead),
    /// A setting was given a value.
    SettingChanged(SettingChanged),
    /// A sitting of questions was begun.
    SittingBegun(SittingBegun),
    /// A sitting of questions was ended.
    SittingEnded(SittingEnded),
    /// A question was answered and judged.
    QuestionAnswered(QuestionAnswered),
    /// A practice form was begun.
    FormBegun(FormBegun),
    /// A question of a form was flagged to return to, or not any more.
    FormFlagged(FormFlagged),
    /// A form was paused, or gone on with.
    FormPaused(FormPaused),
    /// A form was handed in.
    FormFinished(FormFinished),
    /// A question was set aside, or taken back.
    QuestionSetAside(QuestionSetAside),
    /// A mix was handed over and judged.
    MixHandedOver(MixHandedOver),
    /// An assignment was taken up at a seat.
    AssignmentTaken(AssignmentTaken),
    /// A task of an assignment was begun.
    TaskBegun(TaskBegun),
    /// An assignment was handed in.
    HandedIn(HandedIn),
    /// A skill was checked off.
    SkillChecked(SkillChecked),
    /// Something a later version wrote: kept as it is, counted, not understood.
    Unknown(Unknown),
}

/// A case was opened. Its patient follows from the frame, the seed and what it
/// was asked for with.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CaseStarted {
    /// The sitting that begins.
    pub sitting: SittingId,
    /// The id of the case frame in the catalogue.
    pub case: String,
    /// The seed from which the patient was drawn.
    pub seed: u64,
    /// The id of a finding that the patient had to have beyond the frame.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub with: Option<String>,
    /// The preference card that the case is played with, in its stored form, so
    /// that a later change of the card changes nothing under way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub card: Option<String>,
}

/// A decision of a case was answered and judged.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CaseAnswered {
    /// The sitting it belongs to.
    pub sitting: SittingId,
    /// The id of the decision within the case.
    pub decision: String,
    /// The ids of the chosen options, in the order they were laid or chosen.
    pub answer: Vec<String>,
    /// How the answer was judged.
    pub verdict: Verdict,
    /// Marks for the answer.
    pub per_cent: PerCent,
    /// The id of the competency that the decision speaks for.
    pub competency: String,
    /// Seconds from seeing the decision to answering it.
    pub seconds: u32,
}

/// A case was brought to its end.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CaseFinished {
    /// The sitting that ends.
    pub sitting: SittingId,
    /// Marks for the whole case.
    pub per_cent: PerCent,
}

/// A lesson was read to its end.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LessonRead {
    /// The id of the lesson in the catalogue.
    pub lesson: String,
}

/// A setting was given a value.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SettingChanged {
    /// The name of the setting.
    pub key: String,
    /// Its value from now on.
    pub value: String,
}

/// An event of a kind, or with a field, that this version does not know.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Unknown {
    kind: String,
    body: String,
}

impl Unknown {
    /// The name of the kind, as written.
    pub fn kind(&self) -> &str {
        &self.kind
    }

    /// The JSON it was written with, letter by letter.
    pub fn body(&self) -> &str {
        &self.body
    }
}

const CASE_STARTED: &str = "case-started";
const CASE_ANSWERED: &str = "case-answered";
const CASE_FINISHED: &str = "case-finished";
const LESSON_READ: &str = "lesson-read";
const SETTING_CHANGED: &str = "setting-changed";
const SITTING_BEGUN: &str = "sitting-begun";
const SITTING_ENDED: &str = "sitting-ended";
const QUESTION_ANSWERED: &str = "question-answered";
const FORM_BEGUN: &str = "form-begun";
const FORM_FLAGGED: &str = "form-flagged";
const FORM_PAUSED: &str = "form-paused";
const FORM_FINISHED: &str = "form-finished";
const QUESTION_SET_ASIDE: &str = "question-set-aside";
const MIX_HANDED_OVER: &str = "mix-handed-over";
const ASSIGNMENT_TAKEN: &str = "assignment-taken";
const TASK_BEGUN: &str = "task-begun";
const HANDED_IN: &str = "handed-in";
const SKILL_CHECKED: &str = "skill-checked";

impl What {
    /// The name of the kind in the stored form.
    pub fn kind(&self) -> &str {
        match self {
            Self::CaseStarted(_) => CASE_STARTED,
            Self::CaseAnswered(_) => CASE_ANSWERED,
            Self::CaseFinished(_) => CASE_FINISHED,
            Self::LessonRead(_) => LESSON_READ,
            Self::SettingChanged(_) => SETTING_CHANGED,
            Self::SittingBegun(_) => SITTING_BEGUN,
            Self::SittingEnded(_) => SITTING_ENDED,
            Self::QuestionAnswered(_) => QUESTION_ANSWERED,
            Self::FormBegun(_) => FORM_BEGUN,
            Self::FormFlagged(_) => FORM_FLAGGED,
            Self::FormPaused(_) => FORM_PAUSED,
            Self::FormFinished(_) => FORM_FINISHED,
            Self::QuestionSetAside(_) => QUESTION_SET_ASIDE,
            Self::MixHandedOver(_) => MIX_HANDED_OVER,
            Self::AssignmentTaken(_) => ASSIGNMENT_TAKEN,
            Self::TaskBegun(_) => TASK_BEGUN,
            Self::HandedIn(_) => HANDED_IN,
            Self::SkillChecked(_) => SKILL_CHECKED,
            Self::Unknown(unknown) => &unknown.kind,
        }
    }

    /// The particulars as compact JSON on one line.
    pub fn body(&self) -> String {
        match self {
            Self::CaseStarted(it) => to_json(it),
            Self::CaseAnswered(it) => to_json(it),
            Self::CaseFinished(it) => to_json(it),
            Self::LessonRead(it) => to_json(it),
            Self::SettingChanged(it) => to_json(it),
            Self::SittingBegun(it) => to_json(it),
            Self::SittingEnded(it) => to_json(it),
            Self::QuestionAnswered(it) => to_json(it),
            Self::FormBegun(it) => to_json(it),
            Self::FormFlagged(it) => to_json(it),
            Self::FormPaused(it) => to_json(it),
            Self::FormFinished(it) => to_json(it),
            Self::QuestionSetAside(it) => to_json(it),
            Self::MixHandedOver(it) => to_json(it),
            Self::AssignmentTaken(it) => to_json(it),
            Self::TaskBegun(it) => to_json(it),
            Self::HandedIn(it) => to_json(it),
            Self::SkillChecked(it) => to_json(it),
            Self::Unknown(unknown) => unknown.body.clone(),
        }
    }

    /// Puts together what [`kind`](Self::kind) and [`body`](Self::body) took
    /// apart. A kind or a form of it that this version does not know becomes
    /// [`Unknown`]; `None` only when `body` is not JSON on one line.
    ///
    /// ```
    /// # use record::What;
    /// let read = What::from_parts("lesson-read", r#"{"lesson":"amalgam"}"#);
    /// assert!(matches!(read, Some(What::LessonRead(_))));
    /// let later = What::from_parts("spore-test-logged", "[1,2]").unwrap();
    /// assert_eq!((later.kind(), later.body().as_str()), ("spore-test-logged", "[1,2]"));
    /// assert_eq!(What::from_parts("lesson-read", "no JSON"), None);
    /// ```
    pub fn from_parts(kind: &str, body: &str) -> Option<Self> {
        let known = match kind {
            CASE_STARTED => serde_json::from_str(body).map(Self::CaseStarted).ok(),
            CASE_ANSWERED => serde_json::from_str(body).map(Self::CaseAnswered).ok(),
            CASE_FINISHED => serde_json::from_str(body).map(Self::CaseFinished).ok(),
            LESSON_READ => serde_json::from_str(body).map(Self::LessonRead).ok(),
            SETTING_CHANGED => serde_json::from_str(body).map(Self::SettingChanged).ok(),
            SITTING_BEGUN => serde_json::from_str(body).map(Self::SittingBegun).ok(),
            SITTING_ENDED => serde_json::from_str(body).map(Self::SittingEnded).ok(),
            QUESTION_ANSWERED => serde_json::from_str(body).map(Self::QuestionAnswered).ok(),
            FORM_BEGUN => serde_json::from_str(body).map(Self::FormBegun).ok(),
            FORM_FLAGGED => serde_json::from_str(body).map(Self::FormFlagged).ok(),
            FORM_PAUSED => serde_json::from_str(body).map(Self::FormPaused).ok(),
            FORM_FINISHED => serde_json::from_str(body).map(Self::FormFinished).ok(),
            QUESTION_SET_ASIDE => serde_json::from_str(body).map(Self::QuestionSetAside).ok(),
            MIX_HANDED_OVER => serde_json::from_str(body).map(Self::MixHandedOver).ok(),
            ASSIGNMENT_TAKEN => serde_json::from_str(body).map(Self::AssignmentTaken).ok(),
            TASK_BEGUN => serde_json::from_str(body).map(Self::TaskBegun).ok(),
            HANDED_IN => serde_json::from_str(body).map(Self::HandedIn).ok(),
            SKILL_CHECKED => serde_json::from_str(body).map(Self::SkillChecked).ok(),
            _ => None,
        };
        known.or_else(|| unknown(kind, body))
    }
}

fn unknown(kind: &str, body: &str) -> Option<What> {
    let raw: &RawValue = serde_json::from_str(body).ok()?;
    let body = raw.get();
    // JSON may spread over lines, but a stored event is one line.
    if body.contains('\n') {
        return None;
    }
    Some(What::Unknown(Unknown {
        kind: kind.to_owned(),
        body: body.to_owned(),
    }))
}

/// Infallible for the structs above: only text, whole numbers and lists.
pub(crate) fn to_json<T: Serialize + ?Sized>(value: &T) -> String {
    serde_json::to_string(value).expect("text, whole numbers and lists always make JSON")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_known_kind_in_a_form_of_tomorrow_is_kept_whole() {
        for body in [
            r#"{"lesson":"amalgam","minutes":4}"#,
            r#"{"lesson":7}"#,
            "{}",
            r#"{"sitting":"0000000000000001","per_cent":101}"#,
        ] {
            for kind in ["lesson-read", "case-finished"] {
                let what = What::from_parts(kind, body).unwrap();
                assert!(matches!(what, What::Unknown(_)), "{kind} {body}");
                assert_eq!((what.kind(), what.body().as_str()), (kind, body));
            }
        }
    }

    #[test]
    fn a_body_is_one_json_value_on_one_line() {
        for wrong in ["", "{", "{} {}", "[1,\n2]", "'a'"] {
            assert_eq!(What::from_parts("later", wrong), None, "{wrong}");
        }
        let trimmed = What::from_parts("later", " 1.50 \n").unwrap();
        assert_eq!(trimmed.body(), "1.50");
    }
}
