//! What of a sitting is on screen. It follows from the record and the draft
//! alone, so a reload, another tab or a merge from another device shows the
//! same scene.

use super::draft::Draft;
use clinic::case::Case;
use record::folds::Sitting;

/// What is on screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scene {
    /// The patient, before anything is asked.
    Opening,
    /// A decision waits for its answer.
    Decide(usize),
    /// A decision was answered and is explained.
    Explain(usize),
    /// All decisions, looked back on.
    Debrief,
}

impl Scene {
    /// The scene of a sitting; without one, the opening.
    ///
    /// The draft says where the student is, but never past a decision that has
    /// no answer: a later version of the case may have brought a new one.
    pub fn of(case: &Case, sitting: Option<&Sitting>, draft: &Draft) -> Self {
        let Some(sitting) = sitting else {
            return Self::Opening;
        };
        if sitting.finish.is_some() || case.decisions.is_empty() {
            return Self::Debrief;
        }
        let answered = |at: usize| sitting.answer_to(&case.decisions[at].id).is_some();
        let last = case.decisions.len() - 1;
        let open = (0..=last).find(|&at| !answered(at));
        let looked_at = case.decisions.iter().position(|d| d.id == draft.decision);
        let at = match (looked_at, open) {
            (Some(at), Some(open)) => at.min(open),
            (Some(at), None) => at,
            (None, open) => open.unwrap_or(last),
        };
        if answered(at) {
            Self::Explain(at)
        } else {
            Self::Decide(at)
        }
    }
}
