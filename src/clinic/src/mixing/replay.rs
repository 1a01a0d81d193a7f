//! A mix as the list of what was done. The state follows from it exactly, so
//! that a mix can be graded again elsewhere.

use super::{action::Action, mix::Mix, recipe::Recipe, room::Room};
use catalogue::{Catalogue, ids::ItemId};
use serde::{Deserialize, Serialize};

/// How many actions a replay may have; a hand makes a few dozen.
const MOST: usize = 5000;

/// What was done, where, and with what.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Replay {
    /// The version of the model; another version may come to another state.
    pub version: u16,
    /// The material.
    pub material: ItemId,
    /// The key of its use.
    pub usage: String,
    /// The room.
    pub room: Room,
    /// What was done, in order. Times lie in the actions that take some.
    pub actions: Vec<Action>,
}

impl Replay {
    /// The version that this model writes and reads.
    pub const VERSION: u16 = 1;

    pub(super) fn of(mix: &Mix, actions: Vec<Action>) -> Self {
        Self {
            version: Self::VERSION,
            material: mix.recipe.kinetics.material.clone(),
            usage: mix.recipe.target.id.clone(),
            room: mix.room,
            actions,
        }
    }

    /// Does it all again.
    ///
    /// # Errors
    /// A sentence: another version, a material or use that is not there, or an
    /// action that cannot be done where it stands.
    pub fn run(&self, catalogue: &Catalogue) -> Result<Mix, String> {
        self.run_with(Recipe::new(catalogue, &self.material, Some(&self.usage))?)
    }

    /// Does it all again with a recipe that is ready, which has to be that of
    /// its material and use.
    ///
    /// # Errors
    /// As [`Replay::run`].
    pub fn run_with(&self, recipe: Recipe) -> Result<Mix, String> {
        if self.version != Self::VERSION {
            return Err(format!(
                "This mix was made with version {} of the model, and this is version {}; mix it again.",
                self.version,
                Self::VERSION
            ));
        }
        if self.actions.len() > MOST {
            return Err(format!(
                "This mix has {} actions; nobody makes more than {MOST}.",
                self.actions.len()
            ));
        }
        let mut mix = Mix::of(recipe, self.room.checked()?);
        for (i, action) in self.actions.iter().enumerate() {
            mix.act(*action)
                .map_err(|why| format!("Action {}: {why}", i + 1))?;
        }
        Ok(mix)
    }
}
