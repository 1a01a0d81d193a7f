//! Exercises in the arithmetic of local anaesthesia.

use super::{Answer, Draft, Slip, draw::Draw};
use crate::numbers::{
    dose::{Given, Second, Sitting, contents, dilution_of, drug_limit, drug_working},
    entry::{Strength, Volume, Weight},
    exact::Exact,
    unit::{Quantity, Unit},
    working::Working,
};
use catalogue::{
    numbers::{DoseRules, Heart, Numbers, Solution, Whom},
    quantity::Milli,
};

const TEN: Exact = Exact::whole(10);

/// Every solution with each of its volumes.
fn cartridges_of(numbers: &Numbers) -> Vec<(&Solution, Milli)> {
    numbers
        .solutions
        .iter()
        .flat_map(|s| s.volumes.iter().map(move |v| (s, *v)))
        .collect()
}

/// Every named rule with each solution that it limits and that may be graded.
fn ruled(numbers: &Numbers, whom: Option<Whom>) -> Vec<(&DoseRules, &Solution, Milli)> {
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
fn rule_words(rules: &DoseRules, solution: &Solution) -> String {
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

fn weight_of(kg: u32) -> Option<Weight> {
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

/// A question for whole cartridges, with its slips.
fn whole(numbers: &Numbers, sitting: &Sitting<'_>, stem: String) -> Option<Draft> {
    let most = sitting.maximum(numbers).ok()?;
    let answer = Answer::cartridges(most.whole());
    let mut slips = vec![
        Slip::number(
            Exact::from(most.whole() + 1),
            "It was rounded up; a rule is a most, so cartridges are rounded down.",
        ),
        Slip::number(
            Exact::from((most.by_drug * TEN).count()),
            "The ten that turns per cent into mg/mL was forgotten.",
        ),
    ];
    if let Some(by) = most.by_vasoconstrictor {
        slips.insert(
            0,
            Slip::number(
                Exact::from(by.count()),
                "That is by the vasoconstrictor alone; the drug limits sooner.",
            ),
        );
        slips.insert(
            0,
            Slip::number(
                Exact::from(most.by_drug.count()),
                "That is by the drug alone; the vasoconstrictor limits sooner.",
            ),
        );
        let healthy = Sitting {
            heart: Heart::Healthy,
            ..*sitting
        }
        .maximum(numbers)
        .ok()?;
        slips.push(Slip::number(
            Exact::from(healthy.whole()),
            "That is for a healthy heart.",
        ));
    }
    let limit = drug_limit(sitting.rules, sitting.solution)?;
    if let Some(per_kg) = limit.per_kg {
        let unceiled = sitting.weight.kg() * Exact::from(per_kg) / most.in_one;
        slips.push(Slip::number(
            Exact::from(unceiled.count()),
            "The ceiling was forgotten.",
        ));
    }
    let difficulty = if most.by_vasoconstrictor.is_some() {
        3
    } else {
        2
    };
    Some(Draft {
        stem,
        answer,
        working: most.working,
        slips,
        difficulty,
        seconds: 90,
    })
}

/// What a vasoconstrictor's limit is, for the stem.
fn vasoconstrictor_words(numbers: &Numbers, solution: &Solution, heart: Heart) -> String {
    solution
        .vasoconstrictor
        .as_ref()
        .and_then(|v| {
            numbers
                .vasoconstrictor_limits
                .iter()
                .find(|l| l.name == v.name && l.heart == heart)
        })
        .map(|l| format!("; of {} at most {} mg", l.name, l.most))
        .unwrap_or_default()
}

/// Whole cartridges for an adult.
pub(super) fn cartridges(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let all = ruled(numbers, Some(Whom::Anyone));
    let (rules, solution, volume) = *draw.pick(&all)?;
    let kg = draw.span(42, 110, 2);
    let sitting = Sitting {
        rules,
        solution,
        volume: Volume::stated(volume),
        weight: weight_of(kg)?,
        heart: Heart::Healthy,
        years: None,
    };
    let stem = format!(
        "A healthy adult of {kg} kg; {} in cartridges of {volume} mL. By {}: {}{}. How many whole cartridges are the most?",
        solution.name,
        rules.name,
        rule_words(rules, solution),
        vasoconstrictor_words(numbers, solution, Heart::Healthy)
    );
    whole(numbers, &sitting, stem)
}

/// Whole cartridges with heart disease.
pub(super) fn heart_disease(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let all: Vec<_> = ruled(numbers, Some(Whom::Anyone))
        .into_iter()
        .filter(|(rules, solution, _)| {
            rules.id == "us-labels" && solution.vasoconstrictor.is_some()
        })
        .collect();
    let (rules, solution, volume) = *draw.pick(&all)?;
    let kg = draw.span(42, 110, 2);
    let sitting = Sitting {
        rules,
        solution,
        volume: Volume::stated(volume),
        weight: weight_of(kg)?,
        heart: Heart::Diseased,
        years: None,
    };
    let stem = format!(
        "An adult of {kg} kg with significant heart disease, whom the dentist allows a vasoconstrictor; {} in cartridges of {volume} mL. By {}: {}{}. How many whole cartridges are the most?",
        solution.name,
        rules.name,
        rule_words(rules, solution),
        vasoconstrictor_words(numbers, solution, Heart::Diseased)
    );
    whole(numbers, &sitting, stem)
}

/// Whole cartridges for a child.
pub(super) fn child(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let all: Vec<_> = ruled(numbers, None)
        .into_iter()
        .filter(|(rules, solution, _)| {
            (rules.whom == Whom::Children || rules.id == "us-labels")
                && solution.not_under_years.is_none_or(|least| least <= 4)
        })
        .collect();
    let (rules, solution, volume) = *draw.pick(&all)?;
    let kg = draw.span(15, 40, 1);
    let pounds_wanted = drug_limit(rules, solution)?.per_kg.is_none();
    let weight = if pounds_wanted {
        format!("{} lb", kg * 2)
    } else {
        format!("{kg} kg")
    };
    let sitting = Sitting {
        rules,
        solution,
        volume: Volume::stated(volume),
        weight: Weight::read(&weight).ok()?,
        heart: Heart::Healthy,
        years: None,
    };
    let stem = format!(
        "A child of {weight}; {} in cartridges of {volume} mL. By {}: {}{}. How many whole cartridges are the most?",
        solution.name,
        rules.name,
        rule_words(rules, solution),
        vasoconstrictor_words(numbers, solution, Heart::Healthy)
    );
    let mut draft = whole(numbers, &sitting, stem)?;
    for other in &numbers.dose_rules {
        let other = Sitting {
            rules: other,
            ..sitting
        };
        if let Ok(most) = other.maximum(numbers) {
            draft.slips.push(Slip::number(
                Exact::from(most.whole()),
                &format!(
                    "That is by {}; another rule was asked for.",
                    other.rules.name
                ),
            ));
        }
    }
    Some(draft)
}

/// What is left for a second solution.
pub(super) fn second(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let rules = numbers.rules("us-labels")?;
    let all: Vec<_> = ruled(numbers, Some(Whom::Anyone))
        .into_iter()
        .filter(|(r, solution, volume)| {
            r.id == rules.id
                && solution.drug != "bupivacaine"
                && solution.volumes.last() == Some(volume)
        })
        .map(|(_, solution, volume)| (solution, volume))
        .collect();
    let pairs: Vec<_> = all
        .iter()
        .flat_map(|a| all.iter().map(move |b| (*a, *b)))
        .filter(|(a, b)| a.0.drug != b.0.drug)
        .collect();
    let ((first, first_volume), (next, volume)) = *draw.pick(&pairs)?;
    let cartridges = draw.span(1, 4, 1);
    let kg = draw.span(50, 100, 5);
    let weight = weight_of(kg)?;
    let second = Second {
        rules,
        given: vec![Given {
            solution: first,
            volume: Volume::stated(first_volume),
            cartridges: Exact::from(cartridges),
        }],
        solution: next,
        volume: Volume::stated(volume),
        weight,
        heart: Heart::Healthy,
    };
    let (left, working) = second.remaining(numbers).ok()?;
    let alone = Sitting {
        rules,
        solution: next,
        volume: Volume::stated(volume),
        weight,
        heart: Heart::Healthy,
        years: None,
    }
    .maximum(numbers)
    .ok()?;
    let whole = alone.whole();
    Some(Draft {
        stem: format!(
            "A healthy adult of {kg} kg has had {cartridges} × {first_volume} mL of {} ({}). Now {} in {volume} mL is wanted ({}{}). By {}, with the smaller maximum less what was given: how many whole cartridges are left?",
            first.name,
            rule_words(rules, first),
            next.name,
            rule_words(rules, next),
            vasoconstrictor_words(numbers, next, Heart::Healthy),
            rules.name
        ),
        answer: Answer::cartridges(left),
        working,
        slips: vec![
            Slip::number(Exact::from(whole), "What was given already was left out."),
            Slip::number(
                Exact::from(whole.saturating_sub(cartridges)),
                "Cartridges were subtracted from cartridges; they hold different drugs, so milligrams count.",
            ),
            Slip::number(
                Exact::from(left + 1),
                "It was rounded up; a rule is a most, so cartridges are rounded down.",
            ),
        ],
        difficulty: 3,
        seconds: 150,
    })
}
