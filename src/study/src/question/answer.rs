//! An answer, and what it is worth.

use super::{Choice, Form, Question};
use catalogue::quantity::Milli;
use clinic::{
    sequence::{Target, compare},
    standing::Standing,
};
use serde::{Deserialize, Serialize};

/// What a student answered, by keys, so that it can be graded again elsewhere.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Answer {
    /// One choice.
    One(String),
    /// Several choices, in any order.
    Many(Vec<String>),
    /// Pieces in the order given.
    Order(Vec<String>),
    /// Left with right.
    Pairs(Vec<(String, String)>),
    /// A number.
    Number(Milli),
}

/// What an answer is worth, and what it lacks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Verdict {
    /// The mark, out of 100.
    pub per_cent: u8,
    /// Whether nothing is missing and nothing is wrong.
    pub right: bool,
    /// Whether something was chosen that could hurt somebody.
    pub harm: bool,
    /// The keys chosen or placed that are wrong; for pairs, the left side.
    pub wrong: Vec<String>,
    /// The keys that belong and were not chosen.
    pub missed: Vec<String>,
    /// A sentence about it.
    pub says: String,
}

impl Question {
    /// Grades an answer. An answer of another form than the question's is worth
    /// nothing and is told so.
    pub fn grade(&self, answer: &Answer) -> Verdict {
        match (&self.form, answer) {
            (Form::One(all) | Form::Name(all) | Form::Slip(all), Answer::One(key)) => {
                chosen(all, std::slice::from_ref(key))
            }
            (Form::All(all) | Form::Place(all), Answer::Many(keys)) => chosen(all, keys),
            (Form::Order { target, .. }, Answer::Order(keys)) => ordered(target, keys),
            (Form::Match { pairs, .. }, Answer::Pairs(given)) => matched(pairs, given),
            (Form::Number { unit, from, to }, Answer::Number(number)) => {
                typed(unit, *from, *to, *number)
            }
            _ => Verdict {
                per_cent: 0,
                right: false,
                harm: false,
                wrong: Vec::new(),
                missed: Vec::new(),
                says: "This answer was given to a question of another form; it cannot be graded."
                    .into(),
            },
        }
    }

    /// The best answer.
    pub fn best(&self) -> Answer {
        match &self.form {
            Form::One(all) | Form::Name(all) | Form::Slip(all) => {
                Answer::One(good(all).next().map(|c| c.key.clone()).unwrap_or_default())
            }
            Form::All(all) | Form::Place(all) => {
                Answer::Many(good(all).map(|c| c.key.clone()).collect())
            }
            Form::Order { target, .. } => {
                Answer::Order(target.stages.iter().flatten().cloned().collect())
            }
            Form::Match { pairs, .. } => Answer::Pairs(pairs.clone()),
            Form::Number { from, .. } => Answer::Number(*from),
        }
    }
}

fn good(all: &[Choice]) -> impl Iterator<Item = &Choice> {
    all.iter().filter(|c| c.standing <= Standing::Acceptable)
}

/// Marks choices by F1 over what belongs, as a laid tray is marked; a choice
/// that could hurt somebody leaves nothing of the mark.
fn chosen(all: &[Choice], keys: &[String]) -> Verdict {
    let target = Target {
        stages: vec![good(all).map(|c| c.key.clone()).collect()],
        must_before: Vec::new(),
    };
    let compared = compare(keys, &target, &[]);
    let harm = all
        .iter()
        .any(|c| c.standing == Standing::Unsafe && compared.extra.contains(&c.key));
    let per_cent = if harm { 0 } else { whole(compared.score) };
    verdict(per_cent, harm, compared.extra, compared.forgotten)
}

fn ordered(target: &Target<String>, keys: &[String]) -> Verdict {
    let compared = compare(keys, target, &[]);
    let mut wrong = compared.extra;
    wrong.extend(compared.moved);
    verdict(whole(compared.score), false, wrong, compared.forgotten)
}

fn matched(pairs: &[(String, String)], given: &[(String, String)]) -> Verdict {
    // The last word on a left piece counts, and each counts once.
    let said = |left: &String| given.iter().rev().find(|(l, _)| l == left).map(|(_, r)| r);
    let (mut wrong, mut missed) = (Vec::new(), Vec::new());
    for (left, right) in pairs {
        match said(left) {
            None => missed.push(left.clone()),
            Some(r) if r != right => wrong.push(left.clone()),
            Some(_) => {}
        }
    }
    let hit = pairs.len() - wrong.len() - missed.len();
    let per_cent = u8::try_from(hit * 100 / pairs.len().max(1)).unwrap_or(100);
    verdict(per_cent, false, wrong, missed)
}

fn typed(unit: &str, from: Milli, to: Milli, number: Milli) -> Verdict {
    let right = from <= number && number <= to;
    let unit = if unit.is_empty() {
        String::new()
    } else {
        format!(" {unit}")
    };
    let wanted = if from == to {
        format!("It is {from}{unit}.")
    } else {
        format!("Anything from {from} to {to}{unit} is right.")
    };
    Verdict {
        per_cent: if right { 100 } else { 0 },
        right,
        harm: false,
        wrong: Vec::new(),
        missed: Vec::new(),
        says: if right {
            "Right.".into()
        } else {
            format!("Not {number}{unit}. {wanted}")
        },
    }
}

fn verdict(per_cent: u8, harm: bool, wrong: Vec<String>, missed: Vec<String>) -> Verdict {
    let right = wrong.is_empty() && missed.is_empty();
    let says = if harm {
        "This could hurt somebody."
    } else if right {
        "Right."
    } else if per_cent == 0 {
        "Not right."
    } else {
        "Partly right."
    };
    Verdict {
        per_cent,
        right,
        harm,
        wrong,
        missed,
        says: says.into(),
    }
}

// A score lies between 0 and 100.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
fn whole(score: f64) -> u8 {
    score.round().clamp(0.0, 100.0) as u8
}
