//! How a mass feels: the one scale of consistency, and what goes with a place on it.

use super::{
    arithmetic::{along, smooth},
    mass::Mass,
    recipe::Recipe,
};
use catalogue::kinetics::Consistency;

/// A place on the scale: each word takes up 1, from 0 for the thinnest.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Firmness(pub f64);

/// The words in the order of the scale.
pub const WORDS: [(Consistency, &str); 8] = [
    (Consistency::Runny, "runny"),
    (Consistency::Creamy, "creamy"),
    (Consistency::String, "drawing a string"),
    (Consistency::Sticky, "sticky"),
    (Consistency::Putty, "like putty"),
    (Consistency::Stiff, "stiff"),
    (Consistency::Crumbly, "crumbly"),
    (Consistency::Set, "set"),
];

/// The word for a consistency: `sticky`.
pub fn word(consistency: Consistency) -> &'static str {
    WORDS
        .iter()
        .find(|(each, _)| *each == consistency)
        .map_or("set", |(_, word)| word)
}

impl Firmness {
    /// The middle of a word's place.
    pub fn middle(consistency: Consistency) -> Self {
        let place = WORDS.iter().take_while(|(c, _)| *c < consistency).count();
        Self(f64::from(u32::try_from(place).unwrap_or(0)) + 0.5)
    }

    /// The word that it lies in.
    pub fn consistency(self) -> Consistency {
        let mut place = self.0;
        for (each, _) in WORDS {
            place -= 1.0;
            if place < 0.0 {
                return each;
            }
        }
        Consistency::Set
    }

    /// How long a string it draws, in mm. The string of 12 to 20 mm is that of
    /// zinc phosphate for luting (handbooks); the rest of the curve is ours.
    pub fn string_mm(self) -> f64 {
        along(
            &[
                (0.0, 1.0),
                (1.0, 6.0),
                (2.0, 12.0),
                (3.0, 20.0),
                (3.5, 26.0),
                (4.0, 14.0),
                (4.5, 3.0),
                (5.0, 0.0),
            ],
            self.0,
        )
    }

    /// How it clings to gloves and spatula, from 0 to 1; the curve is ours.
    pub fn stickiness(self) -> f64 {
        along(
            &[
                (0.0, 0.1),
                (1.0, 0.3),
                (2.0, 0.5),
                (3.0, 0.8),
                (3.5, 1.0),
                (4.0, 0.6),
                (4.5, 0.2),
                (5.0, 0.05),
                (6.0, 0.0),
            ],
            self.0,
        )
    }

    /// How far it is cracked, from 0 to 1.
    pub fn cracks(self) -> f64 {
        smooth(5.5, 7.0, self.0)
    }
}

/// How firm it is: by what is wetted, and by how ripe it is.
pub(super) fn firmness(recipe: &Recipe, mass: &Mass) -> Firmness {
    if recipe.mixing.light && is_cured(mass) {
        return Firmness(7.5);
    }
    let target = Firmness::middle(recipe.target.consistency).0;
    let thickens = recipe.kinetics.thickens.number();
    let fresh = (target + thickens * (recipe.part_of_ratio(mass) - 1.0)).clamp(0.0, 6.8);
    // Without light a light-cured material ends stiff, never set.
    let hardest = if recipe.ripe_sets.is_some() { 7.2 } else { 5.9 };
    Firmness(fresh + (hardest - fresh).max(0.0) * thickened(recipe, mass.ripe))
}

/// How far ageing has thickened it, from 0 to 1: a tenth by the end of its
/// working time, then quickly. The curve is ours.
fn thickened(recipe: &Recipe, ripe: f64) -> f64 {
    let works = recipe.ripe_works;
    if ripe <= works {
        return 0.1 * (ripe / works) * (ripe / works);
    }
    let sets = recipe.ripe_sets.unwrap_or(works * 4.0);
    if ripe >= sets {
        return 1.0;
    }
    let y = (ripe - works) / (sets - works);
    0.1 + 0.9 * y * (2.0 - y)
}

/// Seconds of light that set a layer: the shorter end of 20 to 30 s
/// (handbooks; value from memory).
pub const LIGHT_SECONDS: f64 = 20.0;

fn is_cured(mass: &Mass) -> bool {
    // Time steps add up to a hair less.
    mass.lit > LIGHT_SECONDS - 0.001
}

/// How much of it has set, from 0 to 1; 0.9 counts as set.
pub(super) fn set_fraction(recipe: &Recipe, mass: &Mass) -> f64 {
    if recipe.mixing.light {
        return (mass.lit / LIGHT_SECONDS).min(1.0);
    }
    let Some(sets) = recipe.ripe_sets else {
        return 0.0;
    };
    let x = mass.ripe / sets;
    let cubed = x * x * x;
    cubed / (cubed + 1.0 / 9.0)
}

/// How it shines, from 0 to 1: dull when its working time is over.
pub(super) fn gloss(recipe: &Recipe, mass: &Mass) -> f64 {
    if mass.powder <= 0.0 {
        return 0.0;
    }
    let fresh = recipe.kinetics.gloss.number();
    let past = smooth(0.7, 1.05, mass.ripe / recipe.ripe_works);
    fresh * (1.0 - past) * mass.homogeneity(recipe)
}
