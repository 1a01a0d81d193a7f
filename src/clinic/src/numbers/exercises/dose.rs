//! Exercises in milligrams: strength, ratio, weight and the most of a drug.

use super::{Answer, Draft, Slip, draw::Draw};
use crate::numbers::{
    dose::{contents, dilution_of, drug_limit, drug_working},
    entry::{Strength, Volume, Weight},
    exact::Exact,
    unit::{Quantity, Unit},
    working::Working,
};
use catalogue::{
    numbers::{DoseRules, Numbers, Solution, Whom},
    quantity::Milli,
};

pub(super) const TEN: Exact = Exact::whole(10);

/// Every solution with each of its volumes.
fn cartridges_of(numbers: &Numbers) -> Vec<(&Solution, Milli)> {
    numbers
        .solutions
        .iter()
        .flat_map(|s| s.volumes.iter().map(move |v| (s, *v)))
        .collect()
}

/// Every named rule with each solution that it limits and that may be graded.
pub(super) fn ruled(numbers: &Numbers, whom: Option<Whom>) -> Vec<(&DoseRules, &Solution, Milli)> {
    let mut all = Vec::new();
    for rules in numbers
        .dose_rules
        .iter()
        .filter(|r| whom.is_none_or(|w| r.whom == w))
    {
        for (solution, volume) in cartridges_of(numbers) {
            if drug_limit(rules, solution).is_some_and(|l| !l.unsure) {
                all.push((rules, solution, volume));
            }
        }
    }
    all
}

/// What a rule says of a drug, so that nothing has to be known by heart.
pub(super) fn rule_words(rules: &DoseRules, solution: &Solution) -> String {
    let Some(limit) = drug_limit(rules, solution) else {
        return String::new();
    };
    let mut parts = Vec::new();
    if let Some(share) = limit.share {
        parts.push(format!(
            "pounds by {}, times {} mg",
            share.adult_lb, share.adult_mg
        ));
    }
    match (limit.per_kg, limit.per_lb) {
        (Some(kg), Some(lb)) => parts.push(format!("{kg} mg/kg ({lb} mg/lb)")),
        (Some(kg), None) => parts.push(format!("{kg} mg/kg")),
        (None, Some(lb)) => parts.push(format!("{lb} mg/lb")),
        (None, None) => {}
    }
    match limit.ceiling {
        Some(most) => parts.push(format!("at most {most} mg")),
        None => parts.push("no ceiling".into()),
    }
    parts.join(", ")
}

pub(super) fn weight_of(kg: u32) -> Option<Weight> {
    Weight::read(&format!("{kg} kg")).ok()
}

fn mg(value: Exact, tolerance: Exact) -> Answer {
    Answer::Number {
        value,
        unit: Unit::Milligram,
        tolerance,
    }
}

/// Milligrams of drug in some cartridges.
pub(super) fn milligrams(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let all = cartridges_of(numbers);
    let (solution, volume) = *draw.pick(&all)?;
    let halves = draw.span(1, 24, 1);
    let cartridges = Exact::of(i128::from(halves), 2);
    let strength = Strength::percent(solution.percent);
    let ml = Exact::from(volume);
    let done = contents(strength, None, Volume::stated(volume), cartridges);
    let value = done.drug * cartridges;
    let percent = strength.in_percent();
    Some(Draft {
        stem: format!(
            "How many milligrams of {} are in {} cartridges of {volume} mL of {}?",
            solution.drug,
            cartridges.text(1),
            solution.name
        ),
        answer: mg(value, Exact::ZERO),
        working: done.working,
        slips: vec![
            Slip::number(
                percent * ml * cartridges,
                "The ten that turns per cent into mg/mL was forgotten.",
            ),
            Slip::number(
                value * TEN,
                "One per cent was taken for 100 mg/mL; it is 10.",
            ),
            Slip::number(done.drug, "That is one cartridge alone."),
            Slip::number(
                strength.mg_per_ml() * cartridges,
                "The volume of the cartridge was left out.",
            ),
            Slip::number(
                strength.mg_per_ml()
                    * cartridges
                    * (if ml == Exact::of(18, 10) {
                        Exact::of(17, 10)
                    } else {
                        Exact::of(18, 10)
                    }),
                "The other volume was taken; the label in hand prints which one it is.",
            ),
        ],
        difficulty: if halves == 2 { 1 } else { 2 },
        seconds: 45,
    })
}

/// Milligrams of vasoconstrictor in some cartridges.
pub(super) fn vasoconstrictor(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let all: Vec<_> = cartridges_of(numbers)
        .into_iter()
        .filter(|(s, _)| s.vasoconstrictor.is_some())
        .collect();
    let (solution, volume) = *draw.pick(&all)?;
    let halves = draw.span(1, 24, 1);
    let cartridges = Exact::of(i128::from(halves), 2);
    let dilution = dilution_of(solution)?;
    let name = &solution.vasoconstrictor.as_ref()?.name;
    let done = contents(
        Strength::percent(solution.percent),
        Some((name, dilution)),
        Volume::stated(volume),
        cartridges,
    );
    let in_one = done.vasoconstrictor?;
    let value = in_one * cartridges;
    let mut working = done.working;
    working.comes_to(
        format!("{} mg of {name}", value.text(5)),
        Some(Quantity {
            value,
            unit: Unit::Milligram,
        }),
    );
    Some(Draft {
        stem: format!(
            "How many milligrams of {name} are in {} cartridges of {volume} mL of {}?",
            cartridges.text(1),
            solution.name
        ),
        answer: mg(value, Exact::ZERO),
        working,
        slips: vec![
            Slip::number(
                done.drug * cartridges,
                "That is the drug, not the vasoconstrictor.",
            ),
            Slip::number(
                value * TEN,
                "A nought is missing: 1000 is divided by the second number of the ratio.",
            ),
            Slip::number(
                value / TEN,
                "There is a nought too many: 1000 is divided by the second number of the ratio.",
            ),
            Slip::number(
                value / Exact::whole(1000),
                "1 was divided by the ratio: that gives grams, and 1000 of them are milligrams.",
            ),
            Slip::number(in_one, "That is one cartridge alone."),
            Slip::number(
                dilution.mg_per_ml() * cartridges,
                "The volume of the cartridge was left out.",
            ),
        ],
        difficulty: 2,
        seconds: 60,
    })
}

/// Pounds to kilograms.
pub(super) fn pounds(draw: &mut Draw) -> Option<Draft> {
    let tenths = draw.span(200, 2600, 5);
    let pounds = Exact::of(i128::from(tenths), 10);
    let value = Unit::Pound.told_in(pounds, Unit::Kilogram)?;
    let weight = Weight::read(&format!("{} lb", pounds.text(1))).ok()?;
    let mut working = Working::dose();
    crate::numbers::dose::kilograms(&mut working, weight);
    working.comes_to(
        format!("{} kg", value.text(1)),
        Some(Quantity {
            value,
            unit: Unit::Kilogram,
        }),
    );
    Some(Draft {
        stem: format!(
            "A patient weighs {} lb. How many kilograms are that, to one decimal?",
            pounds.text(1)
        ),
        answer: Answer::Number {
            value,
            unit: Unit::Kilogram,
            // Dividing by 2.2, as handbooks do, is 0.21 % off; rounding adds a twentieth.
            tolerance: value * Exact::of(22, 10_000) + Exact::of(1, 20),
        },
        working,
        slips: vec![
            Slip::number(
                pounds * Exact::of(22, 10),
                "It was multiplied by 2.2; a kilogram is the larger unit, so there are fewer of them.",
            ),
            Slip::number(
                pounds / Exact::whole(2),
                "Half is a guess; it is a tenth too much.",
            ),
        ],
        difficulty: 1,
        seconds: 40,
    })
}

/// The most of a drug in mg.
pub(super) fn drug_maximum(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let all: Vec<_> = ruled(numbers, None)
        .into_iter()
        .filter(|(rules, solution, volume)| {
            solution.volumes.first() == Some(volume)
                && drug_limit(rules, solution).is_some_and(|l| l.per_kg.is_some())
        })
        .collect();
    let (rules, solution, _) = *draw.pick(&all)?;
    let kg = draw.span(12, 110, 1);
    let weight = weight_of(kg)?;
    let (allowed, working) = drug_working(numbers, rules, solution, weight).ok()?;
    let limit = drug_limit(rules, solution)?;
    let by_weight = weight.kg() * Exact::from(limit.per_kg?);
    let mut slips = vec![
        Slip::number(by_weight, "The ceiling was forgotten."),
        Slip::number(Exact::from(limit.per_kg?), "That is for one kilogram."),
        Slip::number(
            by_weight * Exact::of(22, 10),
            "The kilograms were turned into pounds first; the figure is for kilograms.",
        ),
    ];
    if let Some(ceiling) = limit.ceiling {
        slips.push(Slip::number(
            ceiling.into(),
            "That is the ceiling; the weight allows less.",
        ));
    }
    Some(Draft {
        stem: format!(
            "By {}, {} has this limit: {}. How many milligrams of it are the most for {kg} kg?",
            rules.name,
            solution.name,
            rule_words(rules, solution)
        ),
        answer: mg(allowed.most, Exact::of(1, 20)),
        working,
        slips,
        difficulty: if allowed.most == by_weight { 1 } else { 2 },
        seconds: 50,
    })
}
