//! Grading what was entered: read like any other entry, so that `2,2 mg/mL`
//! and `0.49 g` are understood; and where a wrong result is a common one, told
//! what causes it.

use super::{Answer, Entered, Exercise, Slip};
use crate::numbers::{
    entry::{Field, Refusal, clock, date, refuse},
    exact::Exact,
    teeth,
};

/// What became of an entry.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Grade {
    /// Whether it is right.
    pub right: bool,
    /// How it was understood: `0.018 mg`.
    pub understood: String,
    /// What commonly leads to this wrong result.
    pub slip: Option<String>,
    /// All of it in a sentence or two.
    pub sentence: String,
}

/// Grades what was typed, or the text of the option that was chosen.
///
/// # Errors
/// A sentence, if it is not understood. That is no wrong answer: it can be
/// entered again.
pub fn grade(exercise: &Exercise, typed: &str) -> Result<Grade, Refusal> {
    let entered = read(&exercise.answer, typed)?;
    Ok(judged(&exercise.answer, &exercise.slips, &entered))
}

/// Grades what was understood.
pub(super) fn judged(answer: &Answer, slips: &[Slip], entered: &Entered) -> Grade {
    let understood = answer.told(entered);
    let right = answer.accepts(entered);
    let slip = slips
        .iter()
        .find(|slip| !right && answer.same(&slip.entered, entered))
        .map(|slip| slip.because.clone());
    let sentence = match (right, &slip) {
        (true, _) => format!("Right: {}.", answer.words()),
        (false, Some(because)) => format!("Not {understood}. {because} It is {}.", answer.words()),
        (false, None) => format!("Not {understood}. It is {}.", answer.words()),
    };
    Grade {
        right,
        understood,
        slip,
        sentence,
    }
}

/// What was typed, understood as this answer asks for it.
pub(super) fn read(answer: &Answer, typed: &str) -> Result<Entered, Refusal> {
    let typed = typed.trim();
    match answer {
        Answer::Number { unit, .. } | Answer::Between { unit, .. } => {
            let field = Field {
                what: "answer",
                unit: *unit,
                bare: true,
                from: Exact::whole(-1_000_000),
                to: Exact::whole(1_000_000_000),
                example: "a number with its unit",
            };
            Ok(Entered::Number(field.read(typed)?.0))
        }
        Answer::Choice { options, .. } => options
            .iter()
            .position(|o| o.eq_ignore_ascii_case(typed))
            .map(Entered::Option)
            .ok_or_else(|| Refusal("Choose one of the answers.".into())),
        Answer::Tooth { system, .. } => Ok(Entered::Tooth(teeth::read(typed, *system)?)),
        Answer::Time(_) => Ok(Entered::Time(clock(typed)?)),
        Answer::Date(_) => Ok(Entered::Date(date(typed)?)),
        Answer::Digits(digits) => {
            let plain: String = typed.chars().filter(|c| !c.is_whitespace()).collect();
            if plain.len() == digits.len() && plain.bytes().all(|b| b.is_ascii_digit()) {
                Ok(Entered::Digits(plain))
            } else {
                refuse(format!(
                    "{} digits are wanted, with the noughts in front.",
                    digits.len()
                ))
            }
        }
    }
}
