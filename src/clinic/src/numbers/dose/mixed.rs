//! A second solution in the same sitting: what has been given counts.
//!
//! The way taught here takes the smaller of the maxima of all the drugs and
//! subtracts the milligrams already given. Another way takes the part of each
//! maximum that is used up; it is shown beside it.

use super::{heart_words, limit, smaller, strength, vasoconstrictor_limit};
use crate::numbers::{
    entry::{Refusal, Strength, Volume, Weight},
    exact::Exact,
    unit::{Quantity, Unit},
    working::{Other, Working, whole_cartridges},
};
use catalogue::{
    ids::SourceId,
    numbers::{DoseRules, Heart, Numbers, Solution},
};

/// What has been given already.
#[derive(Clone, Copy, Debug)]
pub struct Given<'n> {
    /// The solution.
    pub solution: &'n Solution,
    /// What a cartridge of it holds.
    pub volume: Volume,
    /// How many cartridges.
    pub cartridges: Exact,
}

impl Given<'_> {
    fn drug(&self) -> Exact {
        Strength::percent(self.solution.percent).mg_per_ml() * self.volume.ml() * self.cartridges
    }

    fn vasoconstrictor(&self) -> Exact {
        strength::dilution_of(self.solution).map_or(Exact::ZERO, |d| {
            d.mg_per_ml() * self.volume.ml() * self.cartridges
        })
    }
}

/// A second solution after others.
#[derive(Clone, Debug)]
pub struct Second<'n> {
    /// The named rule.
    pub rules: &'n DoseRules,
    /// What has been given.
    pub given: Vec<Given<'n>>,
    /// The solution that is wanted now.
    pub solution: &'n Solution,
    /// What a cartridge of it holds.
    pub volume: Volume,
    /// The patient's weight.
    pub weight: Weight,
    /// How the heart bears a vasoconstrictor.
    pub heart: Heart,
}

impl Second<'_> {
    /// How many whole cartridges are left, step by step.
    ///
    /// # Errors
    /// A sentence, if the rule names no limit for one of the solutions.
    pub fn remaining(&self, numbers: &Numbers) -> Result<(u32, Working), Refusal> {
        let mut working = Working::dose();
        let mut lowest: Option<(Exact, &str)> = None;
        let all = self.given.iter().map(|g| g.solution).chain([self.solution]);
        for solution in all {
            let allowed =
                limit::add_lines(&mut Working::dose(), self.rules, solution, self.weight)?;
            let from = limit::drug_limit(self.rules, solution).map_or(&[][..], |l| &l.sources);
            working.line(
                &format!("Most of {}", solution.drug),
                "as for one drug alone",
                format!("{} mg by {}", allowed.most.text(2), self.rules.name),
                from,
            );
            if lowest.is_none_or(|(least, _)| allowed.most < least) {
                lowest = Some((allowed.most, &solution.drug));
            }
        }
        let (least, drug) = lowest.unwrap_or((Exact::ZERO, ""));
        working.line(
            "Which maximum counts",
            "the smaller of them",
            format!("{} mg, that of {drug}", least.text(2)),
            &[SourceId::from("malamed")],
        );
        let mut given = Exact::ZERO;
        for each in &self.given {
            given = given + each.drug();
            working.reckon(
                &format!("Given: {}", each.solution.drug),
                "mg/mL × mL × cartridges",
                format!(
                    "{} mg/mL × {} mL × {} {} mg",
                    Strength::percent(each.solution.percent).mg_per_ml().text(4),
                    each.volume.ml().text(3),
                    each.cartridges.text(3),
                    each.drug().shown(3)
                ),
            );
        }
        let left = (least - given).max(Exact::ZERO);
        working.reckon(
            "Left",
            "smaller maximum − mg given",
            format!(
                "{} mg − {} mg {} mg",
                least.text(2),
                given.text(3),
                left.shown(3)
            ),
        );
        let one = Strength::percent(self.solution.percent).mg_per_ml() * self.volume.ml();
        let by_drug = left / one;
        working.reckon(
            "Cartridges by the drug",
            "mg left ÷ mg in one, rounded down",
            format!(
                "{} mg ÷ {} mg = {} → {}",
                left.text(3),
                one.text(4),
                by_drug.cut(),
                by_drug.count()
            ),
        );
        let by_vasoconstrictor = self.by_vasoconstrictor(numbers, &mut working)?;
        let whole = smaller(by_drug, by_vasoconstrictor).count();
        self.by_shares(&mut working, by_vasoconstrictor)?;
        working
            .heed("Cartridges alone are no record: write drug, per cent, volume and milligrams.");
        working.comes_to(
            format!("{} by {}", whole_cartridges(whole), self.rules.name),
            Some(Quantity {
                value: Exact::from(whole),
                unit: Unit::Cartridge,
            }),
        );
        Ok((whole, working))
    }

    /// The other way: the part of each maximum that is used up.
    fn by_shares(
        &self,
        working: &mut Working,
        by_vasoconstrictor: Option<Exact>,
    ) -> Result<(), Refusal> {
        let mut used = Exact::ZERO;
        for each in &self.given {
            let most = limit::allowed_drug(self.rules, each.solution, self.weight)?.most;
            // Rounded far behind anything that is given, so that many shares stay in range.
            used = used + (each.drug() / most).rounded(12);
        }
        let most = limit::allowed_drug(self.rules, self.solution, self.weight)?.most;
        let left = ((Exact::whole(1) - used) * most).max(Exact::ZERO);
        let one = Strength::percent(self.solution.percent).mg_per_ml() * self.volume.ml();
        let whole = smaller(left / one, by_vasoconstrictor).count();
        working.others.push(Other {
            rule: "the way by shares: each drug uses up a part of its own maximum".into(),
            result: format!(
                "{} % used, {} mg left, {}",
                (used * Exact::whole(100)).text(1),
                left.text(1),
                whole_cartridges(whole)
            ),
            sources: vec![SourceId::from("common-practice")],
        });
        Ok(())
    }

    fn by_vasoconstrictor(
        &self,
        numbers: &Numbers,
        working: &mut Working,
    ) -> Result<Option<Exact>, Refusal> {
        let other = |name: &str| {
            self.given.iter().any(|g| {
                g.solution
                    .vasoconstrictor
                    .as_ref()
                    .is_some_and(|v| v.name != name)
            })
        };
        let Some(limit) = vasoconstrictor_limit(numbers, self.solution, self.heart)? else {
            return Ok(None);
        };
        if other(&limit.name) {
            working.heed(
                "Two different vasoconstrictors add up in the patient; no published rule tells how. The dentist decides.",
            );
        }
        let given = self
            .given
            .iter()
            .filter(|g| {
                g.solution
                    .vasoconstrictor
                    .as_ref()
                    .is_some_and(|v| v.name == limit.name)
            })
            .fold(Exact::ZERO, |sum, g| sum + g.vasoconstrictor());
        let left = (Exact::from(limit.most) - given).max(Exact::ZERO);
        let one = strength::dilution_of(self.solution)
            .map_or(Exact::ZERO, |d| d.mg_per_ml() * self.volume.ml());
        let by = left / one;
        working.line(
            &format!("Cartridges by {}", limit.name),
            "(most mg − mg given) ÷ mg in one, rounded down",
            format!(
                "({} mg for {} − {} mg) ÷ {} mg = {} → {}",
                limit.most,
                heart_words(self.heart),
                given.text(5),
                one.text(5),
                by.cut(),
                by.count()
            ),
            &limit.sources,
        );
        working.heed(limit.note.as_str());
        Ok(Some(by))
    }
}
