//! How many whole cartridges of one solution a named rule allows in a sitting.

use super::{heart_words, limit, smaller, strength, vasoconstrictor_limit};
use crate::numbers::{
    entry::{Refusal, Strength, Volume, Weight},
    exact::Exact,
    unit::{Quantity, Unit},
    working::{Other, Working, whole_cartridges},
};
use catalogue::numbers::{DoseRules, Heart, Numbers, Solution};

/// What a sitting begins with.
#[derive(Clone, Copy, Debug)]
pub struct Sitting<'n> {
    /// The named rule.
    pub rules: &'n DoseRules,
    /// The solution.
    pub solution: &'n Solution,
    /// What a cartridge of it holds.
    pub volume: Volume,
    /// The patient's weight.
    pub weight: Weight,
    /// How the heart bears a vasoconstrictor.
    pub heart: Heart,
    /// The patient's age in years, where it is known: labels advise against
    /// some solutions below an age.
    pub years: Option<Exact>,
}

/// Which limit counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Binding {
    /// The drug.
    Drug,
    /// The vasoconstrictor.
    Vasoconstrictor,
}

/// The most of one solution.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Maximum {
    /// The most of the drug in mg.
    pub drug: Exact,
    /// The drug in one cartridge in mg.
    pub in_one: Exact,
    /// Cartridges by the drug, not rounded.
    pub by_drug: Exact,
    /// Cartridges by the vasoconstrictor, not rounded; none in a plain solution.
    pub by_vasoconstrictor: Option<Exact>,
    /// Which limit counts.
    pub binding: Binding,
    /// The steps.
    pub working: Working,
}

impl Maximum {
    /// Cartridges that both limits allow, not rounded.
    pub fn cartridges(&self) -> Exact {
        smaller(self.by_drug, self.by_vasoconstrictor)
    }

    /// Whole cartridges, rounded down.
    pub fn whole(&self) -> u32 {
        self.cartridges().count()
    }

    /// The drug in these whole cartridges, in mg.
    pub fn milligrams(&self) -> Exact {
        self.in_one * Exact::from(self.whole())
    }
}

impl Sitting<'_> {
    /// The most of the solution, step by step, with what other named rules say.
    ///
    /// # Errors
    /// A sentence, if the rule names no limit for the solution.
    pub fn maximum(&self, numbers: &Numbers) -> Result<Maximum, Refusal> {
        let mut most = self.alone(numbers)?;
        self.cautions(&mut most);
        for rules in &numbers.dose_rules {
            if rules.id == self.rules.id {
                continue;
            }
            let other = Sitting { rules, ..*self };
            let (Ok(other), Some(limit)) = (
                other.alone(numbers),
                limit::drug_limit(rules, self.solution),
            ) else {
                continue;
            };
            if other.whole() == most.whole() && other.drug == most.drug {
                continue;
            }
            let unsure = if limit.unsure { "; unsure" } else { "" };
            most.working.others.push(Other {
                rule: rules.name.clone(),
                result: format!(
                    "{} mg of the drug, {}{unsure}",
                    other.drug.text(1),
                    whole_cartridges(other.whole())
                ),
                sources: limit.sources.clone(),
            });
        }
        Ok(most)
    }

    /// The same without looking at other rules.
    fn alone(&self, numbers: &Numbers) -> Result<Maximum, Refusal> {
        let mut working = Working::dose();
        let vasoconstrictor = self.solution.vasoconstrictor.as_ref();
        let dilution = vasoconstrictor.zip(strength::dilution_of(self.solution));
        let allowed = limit::add_lines(&mut working, self.rules, self.solution, self.weight)?;
        let (in_one, thin_in_one) = strength::add_lines(
            &mut working,
            Strength::percent(self.solution.percent),
            dilution.map(|(v, d)| (v.name.as_str(), d)),
            self.volume,
        );
        working.rest_on(&self.solution.sources);
        let by_drug = allowed.most / in_one;
        working.reckon(
            "Cartridges by the drug",
            "most mg ÷ mg in one, rounded down",
            format!(
                "{} mg ÷ {} mg = {} → {}",
                allowed.most.text(2),
                in_one.text(4),
                by_drug.cut(),
                by_drug.count()
            ),
        );
        let by_vasoconstrictor = match (
            vasoconstrictor_limit(numbers, self.solution, self.heart)?,
            thin_in_one,
        ) {
            (Some(limit), Some(one)) => {
                let by = Exact::from(limit.most) / one;
                working.line(
                    &format!("Cartridges by {}", limit.name),
                    "most mg ÷ mg in one, rounded down",
                    format!(
                        "{} mg for {} ÷ {} mg = {} → {}",
                        limit.most,
                        heart_words(self.heart),
                        one.text(5),
                        by.cut(),
                        by.count()
                    ),
                    &limit.sources,
                );
                working.heed(limit.note.as_str());
                Some(by)
            }
            _ => None,
        };
        let binding = match by_vasoconstrictor {
            Some(by) if by < by_drug => Binding::Vasoconstrictor,
            _ => Binding::Drug,
        };
        let mut most = Maximum {
            drug: allowed.most,
            in_one,
            by_drug,
            by_vasoconstrictor,
            binding,
            working,
        };
        self.finish(&mut most);
        Ok(most)
    }

    fn finish(&self, most: &mut Maximum) {
        let whole = most.whole();
        if let Some(by) = most.by_vasoconstrictor {
            let counts = match most.binding {
                Binding::Drug => "the drug",
                Binding::Vasoconstrictor => "the vasoconstrictor",
            };
            most.working.reckon(
                "Which limit counts",
                "the smaller of both",
                format!(
                    "{} by the drug, {} by the vasoconstrictor: {counts} limits, so {whole}",
                    most.by_drug.count(),
                    by.count()
                ),
            );
        }
        let (mg, ml) = (most.milligrams(), self.volume.ml() * Exact::from(whole));
        most.working.reckon(
            "What that is",
            "whole cartridges × mg and mL in one",
            format!(
                "{whole} × {} mg {} mg in {} mL",
                most.in_one.text(4),
                mg.shown(4),
                ml.text(3)
            ),
        );
        let halves = most.cartridges().halves();
        if halves > Exact::from(whole) {
            most.working.heed(format!(
                "With half cartridges it would be {}.",
                halves.text(1)
            ));
        }
        most.working.comes_to(
            format!("{} by {}", whole_cartridges(whole), self.rules.name),
            Some(Quantity {
                value: Exact::from(whole),
                unit: Unit::Cartridge,
            }),
        );
    }

    fn cautions(&self, most: &mut Maximum) {
        let (whole, vasoconstricted) = (most.whole(), most.by_vasoconstrictor.is_some());
        let working = &mut most.working;
        working.heed(self.solution.note.as_str());
        working.heed(self.rules.note.as_str());
        if let (Some(years), Some(least)) = (self.years, self.solution.not_under_years) {
            if years < Exact::from(u32::from(least)) {
                working.heed(format!(
                    "{} is not advised under {least} years: the number says nothing about that.",
                    self.solution.name
                ));
            }
        } else if let Some(least) = self.solution.not_under_years {
            working.heed(format!("It is not advised under {least} years."));
        }
        if self.weight.kg() < Exact::whole(30) && vasoconstricted {
            working.heed(
                "The limit of the vasoconstrictor is one for adults; in a child the limit by weight is the one to look at.",
            );
        }
        if whole == 0 {
            working.heed("Not even one whole cartridge is within the limit.");
        }
    }
}
