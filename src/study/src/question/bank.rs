//! All questions there are, by the facts they ask about.

use super::{Question, QuestionId, estimate};
use crate::{
    families::{self, Desk, Family},
    numeric::hash,
    slices::{at_once, never},
};
use clinic::{Clinic, case::Seed};

/// What to say where [`Bank::write`] gives nothing for an id that was known once.
pub const VANISHED: &str = "What this question asked about is no longer taught in this form. Your answers to it are kept, and it will not come up again.";

/// The questions of a catalogue. Listing them is cheap; one is written when it
/// is asked.
pub struct Bank {
    desk: Desk,
    ids: Vec<QuestionId>,
}

impl Bank {
    /// Lists every question that the catalogue yields.
    pub fn new(clinic: &Clinic) -> Self {
        at_once(Self::in_slices(clinic, &mut never))
    }

    /// The same in slices, with a pause after each family.
    pub async fn in_slices(clinic: &Clinic, pause: &mut impl AsyncFnMut()) -> Self {
        let desk = Desk::in_slices(clinic, pause).await;
        let mut ids = Vec::new();
        for family in families::ALL {
            pause().await;
            let facts = (family.facts)(&desk).into_iter();
            ids.extend(facts.map(|fact| QuestionId::of(family.id, &fact)));
        }
        Self { desk, ids }
    }

    /// The ids, family by family.
    pub fn ids(&self) -> &[QuestionId] {
        &self.ids
    }

    /// The ids of the questions of one family.
    pub fn of_family(&self, family: &str) -> &[QuestionId] {
        // Family by family, so that those of one stand together.
        let is_own = |id: &QuestionId| id.family() == family;
        let from = self.ids.iter().position(is_own).unwrap_or(self.ids.len());
        let own = self.ids[from..].iter().take_while(|id| is_own(id)).count();
        &self.ids[from..from + own]
    }

    /// The families, in the order of the ids.
    pub fn families(&self) -> &'static [Family] {
        families::ALL
    }

    /// Writes a question. The same id and seed give the same question for ever
    /// from the same catalogue; another seed gives another wording and other
    /// wrong options for the same fact. Nothing where the fact is no longer in
    /// the catalogue: say [`VANISHED`].
    pub fn write(&self, id: &QuestionId, seed: u64) -> Option<Question> {
        let family = families::ALL.iter().find(|f| f.id == id.family())?;
        // A number of the id's own: two questions written from one seed do not
        // hide their right options in the same place.
        let draft = (family.write)(&self.desk, &id.fact(), &mut Seed::new(seed ^ hash(&id.0)))?;
        let (level, difficulty, seconds) =
            estimate(&draft.stem, &draft.shown, &draft.form, draft.closeness);
        Some(Question {
            id: id.clone(),
            family: family.id,
            competency: draft.competency,
            level,
            difficulty,
            seconds,
            stem: draft.stem,
            shown: draft.shown,
            form: draft.form,
            reasons: draft.reasons,
            study: draft.study,
        })
    }
}
