//! Cases to order: what a case has to be about, and how hard.

use super::{choice::Form, draw::Case};
use crate::{Clinic, standing::Standing};
use catalogue::{
    Catalogue,
    cases::{CaseFrame, Level},
    findings::{Finding, Known, Scale},
    ids::{CompetencyId, FindingId, ProcedureId},
    rules::Conclusion,
};

/// How many seeds are tried for one order.
const TRIES: u64 = 60;

/// What a case has to be. What is left open can be anything.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Wanted {
    /// The procedure that the visit is booked for.
    pub booked: Option<ProcedureId>,
    /// The competency that the frame mainly shows.
    pub competency: Option<CompetencyId>,
    /// How hard the case is, as [`Case::level`] estimates it.
    pub level: Option<Level>,
    /// A flag, such as an allergy, that the patient has to have.
    pub with: Option<FindingId>,
}

/// The flags of a chart from which it follows that a substance is avoided:
/// allergies and sensitivities.
pub fn avoidances(catalogue: &Catalogue) -> impl Iterator<Item = &Finding> {
    let avoids = |finding: &Finding| {
        catalogue.rules.iter().any(|rule| {
            rule.then
                .iter()
                .any(|it| matches!(it, Conclusion::Avoid { .. }))
                && rule
                    .when
                    .expr()
                    .atoms()
                    .iter()
                    .any(|atom| atom.finding() == Some(&finding.id))
        })
    };
    let charted = |it: &Finding| it.known == Known::Chart && matches!(it.scale, Scale::Flag { .. });
    catalogue
        .findings
        .iter()
        .filter(move |it| charted(it) && avoids(it))
}

impl Clinic {
    /// The first case, counted from `seed`, that is as wanted, with the frame
    /// it comes from; none where no frame yields one. The same order and seed
    /// give the same case for ever.
    pub fn case_to_order(&self, wanted: &Wanted, seed: u64) -> Option<Case> {
        let fits = |frame: &&CaseFrame| {
            wanted.booked.as_ref().is_none_or(|b| *b == frame.booked)
                && wanted
                    .competency
                    .as_ref()
                    .is_none_or(|c| *c == frame.competency)
        };
        let frames: Vec<&CaseFrame> = self.catalogue.cases.iter().filter(fits).collect();
        let count = u64::try_from(frames.len()).ok().filter(|&n| n > 0)?;
        (0..TRIES).find_map(|i| {
            let place = usize::try_from((seed + i) % count).ok()?;
            let case = self.case_with(frames[place], seed.wrapping_add(i), wanted.with.as_ref())?;
            wanted
                .level
                .is_none_or(|level| case.level() == level)
                .then_some(case)
        })
    }
}

impl Case {
    /// How hard the case is, from how close the wrong options are: an estimate
    /// of our own, without a published scale. One point for each line of the
    /// chart that matters, one where the plan is not the one that was booked, one
    /// for each question on which more than one way is taught, and one for each
    /// three options that would do harm.
    pub fn level(&self) -> Level {
        let count = |d: &super::Decision, s| d.choices.iter().filter(|c| c.standing == s).count();
        let matters: usize = self
            .decisions
            .iter()
            .filter(|d| d.id == "chart")
            .map(|d| count(d, Standing::Right))
            .sum();
        let changed = usize::from(self.instead_of.is_some())
            + usize::from(
                self.plan
                    .as_ref()
                    .is_some_and(|p| p.as_str() != "permanent-today"),
            );
        let asks = self.decisions.iter().filter(|d| d.form == Form::One);
        let divided = asks
            .clone()
            .filter(|d| count(d, Standing::Acceptable) > 0)
            .count();
        let harmful: usize = asks.map(|d| count(d, Standing::Unsafe)).sum();
        match matters + changed + divided + harmful / 3 {
            0..=2 => Level::Basic,
            3..=5 => Level::Core,
            _ => Level::Demanding,
        }
    }
}
