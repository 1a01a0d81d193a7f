//! Exercises in whole cartridges: by both limits, with heart disease, for a
//! child, and after another solution.

use super::{
    Answer, Draft, Slip,
    dose::{TEN, rule_words, ruled, weight_of},
    draw::Draw,
};
use crate::numbers::{
    dose::{Given, Second, Sitting, drug_limit},
    entry::{Volume, Weight},
    exact::Exact,
};
use catalogue::numbers::{Heart, Numbers, Solution, Whom};

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

/// The question for whole cartridges that a sitting asks, with what the rule says.
pub(super) fn asked(numbers: &Numbers, sitting: &Sitting<'_>, who: &str) -> Option<Draft> {
    let Sitting {
        rules, solution, ..
    } = *sitting;
    let stem = format!(
        "{who}; {} in cartridges of {} mL. By {}: {}{}. How many whole cartridges are the most?",
        solution.name,
        sitting.volume.ml().text(2),
        rules.name,
        rule_words(rules, solution),
        vasoconstrictor_words(numbers, solution, sitting.heart)
    );
    whole(numbers, sitting, stem)
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
    asked(numbers, &sitting, &format!("A healthy adult of {kg} kg"))
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
    let who = format!(
        "An adult of {kg} kg with significant heart disease, whom the dentist allows a vasoconstrictor"
    );
    asked(numbers, &sitting, &who)
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
    of_child(numbers, &sitting, &format!("A child of {weight}"))
}

/// Whole cartridges for a child, with what the other rules would come to.
pub(super) fn of_child(numbers: &Numbers, sitting: &Sitting<'_>, who: &str) -> Option<Draft> {
    let mut draft = asked(numbers, sitting, who)?;
    for other in &numbers.dose_rules {
        let other = Sitting {
            rules: other,
            ..*sitting
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
