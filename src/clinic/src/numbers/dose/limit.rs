//! The most of a drug by weight under a named rule.

use crate::numbers::{
    entry::{Refusal, Weight},
    exact::Exact,
    unit::{Quantity, Unit},
    working::{Other, Working},
};
use catalogue::{
    ids::SourceId,
    numbers::{DoseRules, DrugLimit, Numbers, Solution},
};

/// The limit of these rules that fits a solution; none where they name none.
pub fn drug_limit<'r>(rules: &'r DoseRules, solution: &Solution) -> Option<&'r DrugLimit> {
    rules.limits.iter().find(|limit| {
        limit.drug == solution.drug
            && limit.percent.is_none_or(|p| p == solution.percent)
            && limit
                .vasoconstrictor
                .is_none_or(|with| with == solution.vasoconstrictor.is_some())
    })
}

/// The most of a drug in mg.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AllowedDrug {
    /// The most in mg, under the ceiling.
    pub most: Exact,
    /// What the weight alone would allow; none where the rule goes by the ceiling only.
    pub by_weight: Option<Exact>,
    /// Whether the ceiling is what counts.
    pub capped: bool,
}

/// The most of a drug for this weight, step by step, with what other named
/// rules allow.
///
/// # Errors
/// A sentence, if the rules name no limit for this solution.
pub fn drug_working(
    numbers: &Numbers,
    rules: &DoseRules,
    solution: &Solution,
    weight: Weight,
) -> Result<(AllowedDrug, Working), Refusal> {
    let mut working = Working::dose();
    let allowed = add_lines(&mut working, rules, solution, weight)?;
    working.comes_to(
        format!("{} mg by {}", allowed.most.text(2), rules.name),
        Some(Quantity {
            value: allowed.most,
            unit: Unit::Milligram,
        }),
    );
    for other in numbers.dose_rules.iter().filter(|r| r.id != rules.id) {
        let (Some(limit), Ok(most)) = (
            drug_limit(other, solution),
            allowed_drug(other, solution, weight),
        ) else {
            continue;
        };
        if most.most != allowed.most {
            let unsure = if limit.unsure { "; unsure" } else { "" };
            working.others.push(Other {
                rule: other.name.clone(),
                result: format!("{} mg{unsure}", most.most.text(1)),
                sources: limit.sources.clone(),
            });
        }
    }
    Ok((allowed, working))
}

/// The most of a drug for this weight, without the steps.
///
/// # Errors
/// A sentence, if the rules name no limit for this solution.
pub fn allowed_drug(
    rules: &DoseRules,
    solution: &Solution,
    weight: Weight,
) -> Result<AllowedDrug, Refusal> {
    add_lines(&mut Working::dose(), rules, solution, weight)
}

/// Adds the lines from weight to milligrams.
pub(super) fn add_lines(
    working: &mut Working,
    rules: &DoseRules,
    solution: &Solution,
    weight: Weight,
) -> Result<AllowedDrug, Refusal> {
    let Some(limit) = drug_limit(rules, solution) else {
        return Err(Refusal(format!(
            "By {}, there is no figure for {}. Choose another rule; nothing is worked out from a guess.",
            rules.name, solution.name
        )));
    };
    let by_weight = by_weight(working, limit, weight);
    working.heed(limit.note.as_str());
    if limit.unsure {
        working.heed(
            "This figure is from memory and unsure. It is shown for comparison, and nothing is graded by it.",
        );
    }
    let ceiling = limit.ceiling.map(Exact::from);
    let allowed = match (by_weight, ceiling) {
        (Some(mg), Some(most)) if mg > most => AllowedDrug {
            most,
            by_weight,
            capped: true,
        },
        (Some(mg), _) => AllowedDrug {
            most: mg,
            by_weight,
            capped: false,
        },
        (None, Some(most)) => AllowedDrug {
            most,
            by_weight,
            capped: true,
        },
        (None, None) => {
            return Err(Refusal(format!(
                "By {}, {} has no limit that could be worked out.",
                rules.name, solution.drug
            )));
        }
    };
    ceiling_line(working, limit, &allowed);
    Ok(allowed)
}

fn by_weight(working: &mut Working, limit: &DrugLimit, weight: Weight) -> Option<Exact> {
    if let Some(share) = limit.share {
        return Some(by_share(
            working,
            limit,
            share.adult_mg,
            share.adult_lb,
            weight,
        ));
    }
    match (weight.pounds(), limit.per_lb, limit.per_kg) {
        (Some(pounds), Some(per_lb), per_kg) => {
            let mg = pounds * Exact::from(per_lb);
            working.line(
                "By weight",
                "pounds × mg for each pound",
                format!("{} lb × {per_lb} mg/lb {} mg", pounds.text(3), mg.shown(2)),
                &limit.sources,
            );
            if let Some(per_kg) = per_kg {
                let other = weight.kg() * Exact::from(per_kg);
                working.heed(format!(
                    "The same rule by kilograms, {per_kg} mg/kg, gives {} mg: its two figures are rounded.",
                    other.text(1)
                ));
            }
            Some(mg)
        }
        (_, _, Some(per_kg)) => {
            let kg = kilograms(working, weight);
            let mg = kg * Exact::from(per_kg);
            working.line(
                "By weight",
                "weight × mg for each kg",
                format!("{} kg × {per_kg} mg/kg {} mg", kg.text(3), mg.shown(2)),
                &limit.sources,
            );
            Some(mg)
        }
        (None, Some(per_lb), None) => {
            let pounds = in_pounds(working, weight);
            let mg = pounds * Exact::from(per_lb);
            working.line(
                "By weight",
                "pounds × mg for each pound",
                format!("{} lb × {per_lb} mg/lb {} mg", pounds.text(3), mg.shown(2)),
                &limit.sources,
            );
            Some(mg)
        }
        (_, None, None) => None,
    }
}

fn by_share(
    working: &mut Working,
    limit: &DrugLimit,
    adult_mg: u32,
    adult_lb: u32,
    weight: Weight,
) -> Exact {
    let pounds = weight
        .pounds()
        .unwrap_or_else(|| in_pounds(working, weight));
    let mg = pounds / Exact::from(adult_lb) * Exact::from(adult_mg);
    working.line(
        "By weight",
        "pounds ÷ pounds of an adult × mg of an adult",
        format!(
            "{} lb ÷ {adult_lb} lb × {adult_mg} mg {} mg",
            pounds.text(3),
            mg.shown(2)
        ),
        &limit.sources,
    );
    mg
}

/// The weight in kg, with a line where it was given otherwise.
pub(in crate::numbers) fn kilograms(working: &mut Working, weight: Weight) -> Exact {
    if let Some(pounds) = weight.pounds() {
        working.reckon(
            "Weight in kilograms",
            "pounds × 0.45359237 (or ÷ 2.2046)",
            format!(
                "{} lb × 0.45359237 {} kg",
                pounds.text(3),
                weight.kg().shown(2)
            ),
        );
    }
    weight.kg()
}

fn in_pounds(working: &mut Working, weight: Weight) -> Exact {
    let pounds = weight.kg() / Exact::of(45_359_237, 100_000_000);
    working.reckon(
        "Weight in pounds",
        "kilograms ÷ 0.45359237 (or × 2.2046)",
        format!(
            "{} kg ÷ 0.45359237 {} lb",
            weight.kg().text(3),
            pounds.shown(2)
        ),
    );
    pounds
}

fn ceiling_line(working: &mut Working, limit: &DrugLimit, allowed: &AllowedDrug) {
    let from: &[SourceId] = &limit.sources;
    match (limit.ceiling, allowed.by_weight) {
        (None, _) => working.line(
            "Ceiling",
            "",
            "none is listed: the weight alone counts".into(),
            from,
        ),
        (Some(most), None) => working.line(
            "Ceiling",
            "",
            format!("no figure by weight is listed: {most} mg counts for every weight"),
            from,
        ),
        (Some(most), Some(mg)) if allowed.capped => working.line(
            "Ceiling",
            "the smaller of both",
            format!("{} mg is above {most} mg, so {most} mg", mg.text(2)),
            from,
        ),
        (Some(most), Some(mg)) => working.line(
            "Ceiling",
            "the smaller of both",
            format!(
                "{} mg is not above {most} mg, so {} mg",
                mg.text(2),
                mg.text(2)
            ),
            from,
        ),
    }
}
