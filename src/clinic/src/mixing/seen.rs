//! Testing a mix: a putty is rolled, anything thinner is drawn up with the
//! spatula. What is seen is told, not what to make of it.

use super::{
    feel::{self, Firmness},
    mix::Mix,
    units::Millimetres,
};
use catalogue::kinetics::Consistency;

/// How it was tested.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trial {
    /// Rolled into a ball.
    Rolled,
    /// Drawn up with the spatula.
    Drawn,
}

/// What a test showed.
#[derive(Clone, Debug, PartialEq)]
pub struct TestSeen {
    /// How it was tested.
    pub trial: Trial,
    /// The word for its consistency.
    pub consistency: Consistency,
    /// How long a string it drew.
    pub string: Millimetres,
    /// How it clung, from 0 to 1.
    pub stickiness: f64,
    /// Whether it held its shape.
    pub holds: bool,
    /// From dull, 0, to shining, 1.
    pub gloss: f64,
    /// How well it is mixed through, from 0 to 1.
    pub homogeneity: f64,
    /// What was seen, in a sentence or two.
    pub sentence: String,
}

pub(super) fn seen(mix: &Mix) -> TestSeen {
    let firm = mix.firmness().unwrap_or(Firmness(0.0));
    let trial = if mix.recipe.target.consistency >= Consistency::Putty {
        Trial::Rolled
    } else {
        Trial::Drawn
    };
    let homogeneity = mix.homogeneity();
    let mut sentence = words(trial, firm);
    if homogeneity < 0.95 {
        sentence += if mix.recipe.is_pastes() {
            " Two colours show in it."
        } else {
            " Dry specks show in it."
        };
    }
    let gloss = feel::gloss(&mix.recipe, &mix.mass);
    if gloss < 0.25 * mix.recipe.kinetics.gloss.number() {
        sentence += " Its surface is dull.";
    }
    TestSeen {
        trial,
        consistency: firm.consistency(),
        string: Millimetres::of(firm.string_mm()),
        stickiness: firm.stickiness(),
        holds: firm >= Firmness::middle(Consistency::Sticky),
        gloss,
        homogeneity,
        sentence,
    }
}

fn words(trial: Trial, firm: Firmness) -> String {
    let string = Millimetres::of(firm.string_mm().round());
    match (trial, firm.consistency()) {
        (Trial::Rolled, Consistency::Runny) => {
            "It runs between the fingers and cannot be rolled.".into()
        }
        (Trial::Rolled, Consistency::Creamy | Consistency::String) => {
            "It smears over the glove and cannot be rolled.".into()
        }
        (Trial::Rolled, Consistency::Sticky) => {
            format!("It sticks to the glove and pulls strings of {string}.")
        }
        (Trial::Rolled, Consistency::Putty) => {
            "It rolls into a ball, lets go of the glove and holds its shape.".into()
        }
        (Trial::Rolled, Consistency::Stiff) => {
            "It rolls only under force, does not stick at all, and its edge splits.".into()
        }
        (Trial::Drawn, Consistency::Runny) => {
            format!("It runs off the spatula; the string breaks at once, after {string}.")
        }
        (Trial::Drawn, Consistency::Creamy) => {
            format!("It follows the spatula as cream does, in a string of {string}.")
        }
        (Trial::Drawn, Consistency::String) => {
            format!("It draws a string of {string} before it breaks.")
        }
        (Trial::Drawn, Consistency::Sticky) => {
            format!("It clings to the spatula and pulls a tough string of {string}.")
        }
        (Trial::Drawn, Consistency::Putty | Consistency::Stiff) => {
            "It draws no string; a lump lifts off with the spatula.".into()
        }
        (_, Consistency::Crumbly) => "It breaks into crumbs and will not hold together.".into(),
        (_, Consistency::Set) => "It is hard; the spatula leaves no mark.".into(),
    }
}
