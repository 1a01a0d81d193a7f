//! Exercises about water to powder.

use super::{Answer, Draft, Slip, draw::Draw};
use crate::numbers::{exact::Exact, proportion, unit::Unit};
use catalogue::numbers::{Numbers, Proportion};

/// Water to powder.
pub(super) fn powder(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let weighed: Vec<_> = weighed(numbers).collect();
    let proportion = *draw.pick(&weighed)?;
    let grams = draw.span(20, 500, 5);
    Some(water(numbers, proportion, grams))
}

/// Proportions by weight and volume, which alone can be reckoned with.
pub(super) fn weighed(numbers: &Numbers) -> impl Iterator<Item = &Proportion> {
    let all = numbers.proportions.iter();
    all.filter(|p| p.powder_unit == "g" && p.liquid_unit == "mL")
}

/// Water to so many grams.
pub(super) fn water(numbers: &Numbers, proportion: &Proportion, grams: u32) -> Draft {
    let amount = Exact::from(grams);
    let (from, to) = proportion::liquid(proportion, amount);
    // What a measuring cup can show where the table gives one figure; rounding where it gives two.
    let tolerance = if from == to {
        Exact::of(1, 2)
    } else {
        Exact::of(1, 20)
    };
    let mut slips = vec![
        Slip::number(
            Exact::from(proportion.liquid.from),
            &format!("That is for {} g.", proportion.powder),
        ),
        Slip::number(
            Exact::from(proportion.liquid.to),
            &format!("That is for {} g.", proportion.powder),
        ),
        Slip::number(
            amount * Exact::from(proportion.powder) / Exact::from(proportion.liquid.from),
            "Powder and water changed places.",
        ),
    ];
    for other in weighed(numbers).filter(|p| p.id != proportion.id) {
        let (a, b) = proportion::liquid(other, amount);
        slips.push(Slip::number(
            (a + b) / Exact::whole(2),
            &format!("That would be {}.", other.name),
        ));
    }
    let table = if proportion.liquid.from == proportion.liquid.to {
        proportion.liquid.from.to_string()
    } else {
        format!("{} to {}", proportion.liquid.from, proportion.liquid.to)
    };
    Draft {
        stem: format!(
            "{} takes {table} mL of water to {} g. How many mL go to {grams} g?",
            super::super::dose::capital(&proportion.name),
            proportion.powder
        ),
        answer: Answer::Between {
            from,
            to,
            unit: Unit::Millilitre,
            tolerance,
        },
        working: proportion::working(proportion, amount),
        slips,
        difficulty: if grams.is_multiple_of(100) { 1 } else { 2 },
        seconds: 40,
    }
}
