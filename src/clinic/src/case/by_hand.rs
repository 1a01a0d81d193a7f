//! A decision of mixing answered by mixing: the mix that was handed over at
//! the bench is done again and judged by the model, in the place of an option.

use super::choice::{Choice, Grade};
use crate::mixing::{Mix, Recipe, Replay, Verdict, made::Line};
use catalogue::{Catalogue, ids::ItemId, items::MixFault};

/// What a mix among the ids of an answer begins with. No id has a colon.
const MIXED: &str = "mixed:";

/// That a decision can be answered by mixing, and what is to be mixed.
#[derive(Clone, Debug)]
pub struct ByHand {
    recipe: Box<Recipe>,
    /// The faults that options of the decision show, by their ids.
    faults: Vec<(String, MixFault)>,
}

impl PartialEq for ByHand {
    fn eq(&self, other: &Self) -> bool {
        self.material() == other.material()
            && self.usage() == other.usage()
            && self.faults == other.faults
    }
}

impl Eq for ByHand {}

impl ByHand {
    /// For a material in its usual use; none where it is not mixed step by step.
    pub(super) fn new(
        catalogue: &Catalogue,
        material: &ItemId,
        faults: Vec<(String, MixFault)>,
    ) -> Option<Self> {
        let recipe = Recipe::new(catalogue, material, None).ok()?;
        Some(Self {
            recipe: Box::new(recipe),
            faults,
        })
    }

    /// What is to be mixed.
    pub fn material(&self) -> &ItemId {
        &self.recipe.kinetics.material
    }

    /// The key of what it is mixed for.
    pub fn usage(&self) -> &str {
        &self.recipe.target.id
    }

    /// The verdict on a mix, from the text of its replay; none where the text
    /// is no mix of this material that was handed over.
    pub fn verdict(&self, replay: &str) -> Option<Verdict> {
        self.mix(replay)?.verdict().cloned()
    }

    /// What was really made, from the text of its replay; empty where the text
    /// is no mix of this material that was handed over.
    pub fn made(&self, replay: &str) -> Vec<Line> {
        self.mix(replay).map_or_else(Vec::new, |mix| mix.made())
    }

    fn mix(&self, replay: &str) -> Option<Mix> {
        let replay: Replay = serde_json::from_str(replay).ok()?;
        let fits = replay.material == *self.material() && replay.usage == self.usage();
        fits.then(|| replay.run_with((*self.recipe).clone()).ok())?
    }

    /// The answer that a mix is: the option that comes nearest to it, for those
    /// who count options, and the mix itself. Empty where the text is no mix.
    pub fn answer(&self, replay: &str, choices: &[Choice]) -> Vec<String> {
        let Some(verdict) = self.verdict(replay) else {
            return Vec::new();
        };
        let best = choices.iter().map(|choice| choice.standing).min();
        let is_good = Some(verdict.standing) <= best
            || verdict.standing <= crate::standing::Standing::Acceptable;
        let shown = verdict.also.iter().filter_map(|finding| finding.shows);
        let shown: Vec<_> = shown.collect();
        let near = if is_good {
            choices.iter().find(|choice| Some(choice.standing) == best)
        } else {
            let by_fault = self.faults.iter().find(|(_, fault)| {
                fault.shows.is_some_and(|shows| shown.contains(&shows))
                    || (!verdict.mend.is_empty() && fault.mend == verdict.mend)
            });
            let id = by_fault.map(|(id, _)| id.as_str());
            let named = choices.iter().find(|choice| Some(choice.id.as_str()) == id);
            named.or_else(|| choices.iter().find(|choice| Some(choice.standing) != best))
        };
        let near = near.map(|choice| choice.id.clone());
        near.into_iter()
            .chain([format!("{MIXED}{replay}")])
            .collect()
    }

    /// Whether an id in an answer is a mix that answers it.
    pub fn is_mix(&self, id: &str) -> bool {
        let replay = id.strip_prefix(MIXED);
        replay.is_some_and(|replay| self.verdict(replay).is_some())
    }

    /// The replay among the ids of an answer, if it was given by mixing.
    pub fn replay(answer: &[String]) -> Option<&str> {
        answer.iter().find_map(|id| id.strip_prefix(MIXED))
    }

    /// How an answer is graded that was given by mixing; none where it was not.
    pub(super) fn grade(&self, answer: &[String]) -> Option<Grade> {
        let verdict = self.verdict(Self::replay(answer)?)?;
        Some(Grade {
            standing: verdict.standing,
            per_cent: verdict.marks,
            comparison: None,
        })
    }
}
