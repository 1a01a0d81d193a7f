//! Numbers of a visit: the tooth in hand in another system, the most whole
//! cartridges for this patient, the water to so much powder, the date on which
//! the patient comes back. Each is asked where the visit calls for it, worked
//! out from this patient, and answered with a number.
//!
//! What is drawn for them comes from a chance of its own, so that no other
//! part of a case turns out otherwise for their sake.

use super::{
    choice::{Choice, Decision, Form},
    draw::{Case, Visit},
    seed::Seed,
    sum::Sum,
};
use crate::{
    numbers::{
        civil::Civil,
        dose::Sitting,
        entry::{Volume, Weight},
        exact::Exact,
        exercises::Problem,
        teeth::System,
        tools::{Entries, Tool},
        unit::Unit,
    },
    tooth::Tooth,
};
use catalogue::{
    cases::CaseFrame,
    items::Material,
    numbers::{DoseRules, Heart, Numbers, Solution, Whom},
};

/// Parts the chance of these numbers from that of the rest of the case.
const OWN: u64 = 0x6e75_6d62_6572_7321;

/// From this age on the rules for adults are asked for; the guideline for
/// children names no age, and twelve is the custom of its readers (common
/// practice, no source).
const ADULT: u8 = 12;

/// What a visit reckons with beside the findings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Measures {
    /// The patient's weight in kilograms, on the day of the visit.
    pub weight: u16,
    /// How the patient's heart bears a vasoconstrictor.
    pub heart: Heart,
}

impl Measures {
    /// Drawn from a frame that names a weight.
    pub(super) fn drawn(frame: &CaseFrame, seed: u64) -> Option<Self> {
        let (least, most) = frame.weight?;
        let mut chance = own(seed);
        let above = chance.below(usize::from(most.saturating_sub(least)) + 1);
        Some(Self {
            weight: least.saturating_add(u16::try_from(above).unwrap_or(0)),
            heart: *chance.pick(&frame.heart).unwrap_or(&Heart::Healthy),
        })
    }

    /// The heart as a chart has it.
    pub const fn heart_says(self) -> &'static str {
        match self.heart {
            Heart::Healthy => "no disease known",
            Heart::Diseased => "significant heart disease",
        }
    }
}

fn own(seed: u64) -> Seed {
    Seed::new(seed ^ OWN)
}

impl Case {
    /// A stream of its own for one kind of number.
    fn chance(&self, kind: u64) -> Seed {
        own(self.seed.wrapping_add(kind))
    }
}

impl Visit<'_> {
    /// The tooth in hand in another system, in visits in which nothing is injected.
    pub(super) fn tooth_named(&self) -> Option<Decision> {
        let tooth = Tooth::from_fdi(self.case.tooth?)?;
        if self.anaesthetic().is_some() {
            return None;
        }
        let mut chance = self.case.chance(1);
        let to = *chance.pick(&[System::Universal, System::Palmer])?;
        let sum = Sum {
            problem: Problem::tooth(tooth, System::Fdi, to),
            tool: Tool::Notation,
            entries: Entries::of(&[
                ("system", System::Fdi.name()),
                ("tooth", &tooth.fdi().to_string()),
                ("to", to.name()),
            ]),
            more_harms: false,
        };
        Some(asked("tooth", "Name the tooth", sum, "chairside"))
    }

    /// The most whole cartridges for this patient, where something is injected.
    pub(super) fn cartridges(&self) -> Option<Decision> {
        let measures = self.case.measures?;
        let numbers = &self.clinic.catalogue().numbers;
        let material = self.anaesthetic()?;
        let mut chance = self.case.chance(2);
        let fits: Vec<&Solution> = numbers
            .solutions
            .iter()
            .filter(|it| is_in(it, material))
            .collect();
        let solution = *chance.pick(&fits)?;
        let volume = *chance.pick(&solution.volumes)?;
        let (rules, who) = self.rules(numbers, measures, solution)?;
        let weight = format!("{} kg", measures.weight);
        let sitting = Sitting {
            rules,
            solution,
            volume: Volume::stated(volume),
            weight: Weight::read(&weight).ok()?,
            heart: measures.heart,
            years: Some(Exact::from(u32::from(self.case.age))),
        };
        let heart = match measures.heart {
            Heart::Healthy => "healthy",
            Heart::Diseased => "diseased",
        };
        let sum = Sum {
            problem: Problem::cartridges(numbers, &sitting, &who)?,
            tool: Tool::Maximum,
            entries: Entries::of(&[
                ("rules", &rules.id),
                ("weight", &weight),
                ("heart", heart),
                ("solution", &solution.id),
                ("volume", &format!("{volume} mL")),
                ("age", &format!("{} years", self.case.age)),
            ]),
            more_harms: true,
        };
        Some(Decision {
            lead: "The dentist has named the solution. Before it is loaded you check the most that this patient may have.".into(),
            ..asked("cartridges", "Check the dose", sum, "anaesthesia")
        })
    }

    /// Whose rule is asked for, and how the question names the patient.
    fn rules<'n>(
        &self,
        numbers: &'n Numbers,
        measures: Measures,
        solution: &Solution,
    ) -> Option<(&'n DoseRules, String)> {
        let kg = measures.weight;
        if self.case.age < ADULT {
            let mut all = numbers.dose_rules.iter();
            let rules = all.find(|it| it.whom == Whom::Children)?;
            return Some((rules, format!("A child of {kg} kg")));
        }
        let allowed = if solution.vasoconstrictor.is_some() {
            ", whom the dentist allows a vasoconstrictor"
        } else {
            ""
        };
        let who = match measures.heart {
            Heart::Healthy => format!("A patient of {kg} kg with a healthy heart"),
            Heart::Diseased => {
                format!("A patient of {kg} kg with significant heart disease{allowed}")
            }
        };
        let mut all = numbers.dose_rules.iter();
        Some((all.find(|it| it.whom == Whom::Anyone)?, who))
    }

    /// What is injected: the cartridge that lies on the tray.
    fn anaesthetic(&self) -> Option<&Material> {
        let catalogue = self.clinic.catalogue();
        let tray = self.clinic.tray(&self.case.booked, &self.before.patient);
        let materials = tray
            .items()
            .filter_map(|(_, laid)| catalogue.material(&laid.item));
        let mut injected = materials.filter(|material| {
            let mut solutions = catalogue.numbers.solutions.iter();
            solutions.any(|it| is_in(it, material))
        });
        let found = injected.next()?.id.clone();
        catalogue.material(&found)
    }

    /// The water to so much powder of what is mixed, where a proportion by
    /// weight was published.
    pub(super) fn water(&self) -> Option<Decision> {
        let numbers = &self.clinic.catalogue().numbers;
        let (material, _) = self.mixed()?;
        let proportion =
            Problem::proportions(numbers).find(|it| it.material.as_ref() == Some(&material.id))?;
        let mut chance = self.case.chance(3);
        // So much as one impression or model takes: half to three times the table's measure.
        let tenths = 5 + u32::try_from(chance.below(26)).unwrap_or(0);
        let grams = (proportion.powder * tenths / 10).max(1);
        let sum = Sum {
            problem: Problem::water(numbers, proportion, grams),
            tool: Tool::Proportion,
            entries: Entries::of(&[
                ("material", &proportion.id),
                ("powder", &format!("{grams} g")),
            ]),
            more_harms: false,
        };
        Some(asked("water", "Measure the water", sum, "mixing"))
    }

    /// The date of the return visit, counted from the visit.
    pub(super) fn return_date(&self) -> Option<Decision> {
        let plan = self.plan_data()?;
        let visit = self.clinic.return_visit(plan, &self.after.patient);
        let (span, _) = visit.preferred.as_ref().or(visit.spans.first())?;
        let (count, unit) = match span.from {
            days if days.is_multiple_of(7) => (days / 7, Unit::Week),
            days => (days, Unit::Day),
        };
        let mut chance = self.case.chance(4);
        // Any working day of three years, Monday to Friday; 5 January 2026 is a Monday.
        let (weeks, day) = (chance.below(156), chance.below(5));
        let days = u32::try_from(weeks * 7 + day).unwrap_or(0);
        let today = Civil::new(2026, 1, 5)?.after_days(days)?;
        let sum = Sum {
            problem: Problem::back(today, count, unit)?,
            tool: Tool::Recall,
            entries: Entries::of(&[
                ("date", &today.text()),
                ("count", &count.to_string()),
                ("unit", unit.sign()),
            ]),
            more_harms: false,
        };
        Some(asked(
            "return-date",
            "Count to the date",
            sum,
            "patient-care",
        ))
    }
}

/// Whether a material is this solution: its drug, and its vasoconstrictor or none.
fn is_in(solution: &Solution, material: &Material) -> bool {
    let holds = |name: &str| material.contains.iter().any(|it| it.as_str() == name);
    let thin = solution.vasoconstrictor.as_ref();
    holds(&solution.drug)
        && match thin {
            Some(it) => holds(&it.name),
            None => !["epinephrine", "levonordefrin"].into_iter().any(holds),
        }
}

fn asked(id: &str, name: &str, sum: Sum, competency: &str) -> Decision {
    let question = sum.problem.stem.clone();
    let none: Vec<Choice> = Vec::new();
    Decision::new(
        id,
        name,
        question,
        Form::Number(Box::new(sum)),
        none,
        competency,
    )
}
