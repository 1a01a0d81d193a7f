//! What can happen: the kinds of event, open to kinds of later versions.
//!
//! To add a kind: a struct with its fields, a variant of [`What`], and a line
//! in [`What::kind`], [`What::body`] and [`What::from_parts`]. A field added
//! to an existing kind must be optional with a default, so that old lines are
//! read for ever; a version that does not know the field keeps the event
//! whole, as [`Unknown`].

use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

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

impl What {
    /// The name of the kind in the stored form.
    pub fn kind(&self) -> &str {
        match self {
            Self::CaseStarted(_) => CASE_STARTED,
            Self::CaseAnswered(_) => CASE_ANSWERED,
            Self::CaseFinished(_) => CASE_FINISHED,
            Self::LessonRead(_) => LESSON_READ,
            Self::SettingChanged(_) => SETTING_CHANGED,
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
