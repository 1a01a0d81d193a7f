//! What of a sitting is on screen. It follows from the record and the draft
//! alone, so a reload, another tab or a merge from another device shows the
//! same scene.

use super::draft::Draft;
use clinic::case::Decision;
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
    pub fn of(decisions: &[Decision], sitting: Option<&Sitting>, draft: &Draft) -> Self {
        let Some(sitting) = sitting else {
            return Self::Opening;
        };
        if sitting.finish.is_some() || decisions.is_empty() {
            return Self::Debrief;
        }
        let answered = |at: usize| sitting.answer_to(&decisions[at].id).is_some();
        let last = decisions.len() - 1;
        let open = (0..=last).find(|&at| !answered(at));
        let looked_at = decisions.iter().position(|d| d.id == draft.decision);
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

#[cfg(test)]
mod tests {
    use super::*;
    use clinic::case::Form;
    use record::{CaseAnswered, Moment, PerCent, SittingId, Verdict, folds::Finish};

    fn decision(id: &str) -> Decision {
        Decision {
            id: id.into(),
            name: String::new(),
            lead: String::new(),
            question: String::new(),
            form: Form::One,
            choices: Vec::new(),
            competency: "materials".into(),
            reasons: Vec::new(),
            proof: None,
            then: String::new(),
            by_hand: None,
        }
    }

    const MOMENT: Moment = Moment {
        utc_ms: 0,
        offset_min: 0,
    };

    fn sitting(answered: &[&str], finished: bool) -> Sitting {
        let answer = |id: &&str| CaseAnswered {
            sitting: SittingId(1),
            decision: (*id).into(),
            answer: Vec::new(),
            verdict: Verdict::Right,
            per_cent: PerCent::of(100),
            competency: "materials".into(),
            seconds: 1,
        };
        Sitting {
            id: SittingId(1),
            case: String::new(),
            seed: 1,
            with: None,
            card: None,
            started: MOMENT,
            answers: answered.iter().map(answer).collect(),
            finish: finished.then_some(Finish {
                at: MOMENT,
                per_cent: PerCent::of(100),
            }),
        }
    }

    #[test]
    fn a_sitting_is_gone_on_with_where_it_was() {
        use Scene::{Debrief, Decide, Explain};
        let decisions = ["chart", "tray", "plan"].map(decision);
        for (answered, looked_at, scene) in [
            (&[][..], "", Decide(0)),
            (&[], "chart", Decide(0)),
            // Answered, and not gone on from.
            (&["chart"], "chart", Explain(0)),
            (&["chart"], "tray", Decide(1)),
            // A draft that was lost, or came from nowhere.
            (&["chart"], "", Decide(1)),
            (&["chart"], "no-such", Decide(1)),
            // A draft past a decision that a later version has put in.
            (&["chart"], "plan", Decide(1)),
            (&["tray", "plan"], "plan", Decide(0)),
            (&["chart", "tray", "plan"], "plan", Explain(2)),
            (&["chart", "tray", "plan"], "", Explain(2)),
        ] {
            let draft = Draft::of(looked_at);
            let found = Scene::of(&decisions, Some(&sitting(answered, false)), &draft);
            assert_eq!(found, scene, "{answered:?} {looked_at}");
        }
        let done = sitting(&["chart"], true);
        assert_eq!(
            Scene::of(&decisions, Some(&done), &Draft::default()),
            Debrief
        );
        assert_eq!(
            Scene::of(&decisions, None, &Draft::of("tray")),
            Scene::Opening
        );
    }
}
