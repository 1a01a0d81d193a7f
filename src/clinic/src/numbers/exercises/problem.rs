//! A number to be worked out for one stated patient, visit or mix: the same
//! questions as the families draw, with figures that come from elsewhere.

use super::{
    Answer, Draft, Entered, Grade, Slip, apart, cartridges, dates,
    grade::{judged, read},
    proportions, teeth,
};
use crate::{
    numbers::{
        civil::Civil,
        dose::{Sitting, drug_limit},
        entry::{Clock, Refusal},
        exact::Exact,
        teeth::{System, written},
        unit::Unit,
        working::Working,
    },
    tooth::Tooth,
};
use catalogue::numbers::{Numbers, Proportion, Whom};

/// What is asked, its answer, and the way to it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// What is asked, with every figure that is not to be known by heart.
    pub stem: String,
    /// The answer, computed.
    pub answer: Answer,
    /// The way to it, with its sources.
    pub working: Working,
    /// Wrong results that are common, with what causes them.
    pub slips: Vec<Slip>,
}

impl Problem {
    fn of(draft: Draft) -> Self {
        Self {
            slips: apart(&draft.answer, draft.slips),
            stem: draft.stem,
            answer: draft.answer,
            working: draft.working,
        }
    }

    /// The most whole cartridges of a sitting; `who` opens the question, such
    /// as `A healthy adult of 70 kg`. None where the rule has no limit for the
    /// solution, or an unsure one, which is not graded by.
    pub fn cartridges(numbers: &Numbers, sitting: &Sitting<'_>, who: &str) -> Option<Self> {
        drug_limit(sitting.rules, sitting.solution).filter(|limit| !limit.unsure)?;
        let draft = match sitting.rules.whom {
            Whom::Children => cartridges::of_child(numbers, sitting, who),
            Whom::Anyone => cartridges::asked(numbers, sitting, who),
        };
        draft.map(Self::of)
    }

    /// A tooth in another system.
    pub fn tooth(tooth: Tooth, from: System, to: System) -> Self {
        Self::of(teeth::named(tooth, from, to))
    }

    /// Proportions that can be reckoned with: grams of powder to millilitres.
    pub fn proportions(numbers: &Numbers) -> impl Iterator<Item = &Proportion> {
        proportions::weighed(numbers)
    }

    /// The water that so many grams take.
    pub fn water(numbers: &Numbers, proportion: &Proportion, grams: u32) -> Self {
        Self::of(proportions::water(numbers, proportion, grams))
    }

    /// The date so much after a visit; none where it lies too far off.
    pub fn back(visit: Civil, count: u32, unit: Unit) -> Option<Self> {
        dates::back(visit, count, unit).map(Self::of)
    }

    /// What was typed as a whole number, in thousandths where it is a number:
    /// a date as its day from 1 January 1970, a tooth as its FDI number, a time
    /// as its minute. It is what a record and a hand-in carry.
    ///
    /// # Errors
    /// A sentence, if it is not understood: that is no wrong answer.
    pub fn code(&self, typed: &str) -> Result<i64, Refusal> {
        let code = match read(&self.answer, typed)? {
            Entered::Number(number) => {
                let whole = (number * Exact::whole(1000)).rounded(0).floor();
                i64::try_from(whole).ok()
            }
            Entered::Option(at) => i64::try_from(at).ok(),
            Entered::Tooth(tooth) => Some(i64::from(tooth.fdi())),
            Entered::Time(time) => Some(i64::from(time.minutes())),
            Entered::Date(date) => Some(date.days()),
            Entered::Digits(digits) => digits.parse().ok(),
        };
        code.ok_or_else(|| Refusal("That number is too large to be meant.".into()))
    }

    /// The code of the right answer.
    pub fn right(&self) -> i64 {
        let text = match &self.answer {
            Answer::Number { value, .. } => value.text(3),
            Answer::Between { from, to, .. } => ((*from + *to) / Exact::whole(2)).text(3),
            Answer::Choice { options, right } => options.get(*right).cloned().unwrap_or_default(),
            Answer::Tooth { tooth, system } => written(*tooth, *system),
            Answer::Time(time) => time.text(),
            Answer::Date(date) => date.iso(),
            Answer::Digits(digits) => digits.clone(),
        };
        self.code(&text).unwrap_or_default()
    }

    /// Grades a code; none where it cannot have been typed in answer to this.
    pub fn grade(&self, code: i64) -> Option<Grade> {
        Some(judged(&self.answer, &self.slips, &self.entered(code)?))
    }

    /// Whether a code is more than is right: what a limit is there to prevent.
    pub fn over(&self, code: i64) -> bool {
        match (&self.answer, self.entered(code)) {
            (
                Answer::Number {
                    value, tolerance, ..
                },
                Some(Entered::Number(number)),
            ) => number > *value + *tolerance,
            _ => false,
        }
    }

    /// The answer among three common wrong results, each with whether it is
    /// right, for places where nothing can be typed; in an order that says nothing.
    pub fn options(&self) -> Vec<(String, bool)> {
        let right = self.entered(self.right()).into_iter();
        let right = right.map(|it| (self.answer.told(&it), true));
        let wrong = self.slips.iter().take(3);
        let wrong = wrong.map(|slip| (self.answer.told(&slip.entered), false));
        let mut all: Vec<(String, bool)> = right.chain(wrong).collect();
        all.sort();
        all
    }

    fn entered(&self, code: i64) -> Option<Entered> {
        Some(match &self.answer {
            Answer::Number { .. } | Answer::Between { .. } => {
                Entered::Number(Exact::of(i128::from(code), 1000))
            }
            Answer::Choice { options, .. } => Entered::Option(
                usize::try_from(code)
                    .ok()
                    .filter(|at| *at < options.len())?,
            ),
            Answer::Tooth { .. } => Entered::Tooth(Tooth::from_fdi(u8::try_from(code).ok()?)?),
            Answer::Time(_) => Entered::Time(Clock::at(u32::try_from(code).ok()?)),
            Answer::Date(_) => Entered::Date(Civil::from_days(code)?),
            Answer::Digits(digits) => {
                let text = format!("{code:0width$}", width = digits.len());
                Entered::Digits((code >= 0 && text.len() == digits.len()).then_some(text)?)
            }
        })
    }
}
