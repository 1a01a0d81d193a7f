//! A decision that is answered with a number: what stands in its box, and how
//! it is given.

use super::{Draft, Play};
use crate::place::Place;
use clinic::case::Form;
use leptos::prelude::*;
use record::folds;

impl Play {
    /// What stands in the box of a decision that is answered with a number.
    pub fn typed(self, at: usize) -> Memo<String> {
        let decision = self.asked(at).id.clone();
        Memo::new(move |_| {
            self.draft.with(|draft| {
                if draft.decision == decision {
                    draft.typed().unwrap_or_default()
                } else {
                    String::new()
                }
            })
        })
    }

    /// Keeps what is typed for now.
    pub fn take_typed(self, at: usize, typed: &str) {
        self.take(at, vec![Draft::of_typed(typed)]);
    }

    /// Answers with what is typed.
    ///
    /// # Errors
    /// A sentence, if it is not understood: that is no answer, and can be mended.
    pub fn give_typed(self, at: usize) -> Result<(), String> {
        let asked = self.asked(at);
        let Form::Number(sum) = &asked.form else {
            return Ok(());
        };
        let typed = self.draft.with_untracked(Draft::typed).unwrap_or_default();
        let answer = sum.answer(&typed).map_err(|why| why.to_string())?;
        self.give_this(at, answer);
        Ok(())
    }

    /// Where this case is played.
    pub fn place(self) -> Place {
        let case = self.case();
        Place::Case(case.frame.clone(), case.seed, case.with.clone())
    }

    /// Whether the sitting belongs to an assignment.
    pub fn is_assigned(self) -> bool {
        let id = self.id();
        id.is_some_and(|id| {
            self.log
                .look(|events| folds::assigned(events, id).is_some())
        })
    }
}
