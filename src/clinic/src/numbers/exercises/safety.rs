//! Exercises about sterilising, limits, proportions and dates.

use super::{Answer, Draft, Entered, Slip, draw::Draw};
use crate::numbers::{
    civil::Civil,
    entry::Clock,
    exact::Exact,
    limit, proportion, recall_date,
    spore::{self, Control, Decision, Load, Spores},
    sterilising,
    unit::{Quantity, Unit},
};
use catalogue::numbers::Numbers;

/// Degrees in the other scale.
pub(super) fn temperature(draw: &mut Draw) -> Option<Draft> {
    let at = draw.span(0, 349, 1);
    let (value, unit, other) = if at < 150 {
        (100 + at, Unit::Celsius, Unit::Fahrenheit)
    } else {
        (212 + (at - 150), Unit::Fahrenheit, Unit::Celsius)
    };
    let typed = Quantity {
        value: Exact::from(value),
        unit,
    };
    let right = typed.told_in(other)?;
    let (nine, thirty_two) = (Exact::of(9, 5), Exact::whole(32));
    let slips = if unit == Unit::Celsius {
        vec![
            Slip::number(typed.value * nine, "The 32 was forgotten."),
            Slip::number(
                (typed.value + thirty_two) * nine,
                "The 32 is added after multiplying, not before.",
            ),
            Slip::number(
                (typed.value - thirty_two) / nine,
                "That is the way from Fahrenheit to Celsius.",
            ),
        ]
    } else {
        vec![
            Slip::number(typed.value / nine, "The 32 was forgotten."),
            Slip::number(
                typed.value / nine - thirty_two,
                "The 32 is subtracted before dividing, not after.",
            ),
            Slip::number(
                typed.value * nine + thirty_two,
                "That is the way from Celsius to Fahrenheit.",
            ),
        ]
    };
    Some(Draft {
        stem: format!(
            "A steriliser shows {value} {}. How many {} are that, to one decimal?",
            unit.sign(),
            other.sign()
        ),
        answer: Answer::Number {
            value: right,
            unit: other,
            tolerance: Exact::of(1, 20),
        },
        working: sterilising::temperature_working(typed),
        slips,
        difficulty: 1,
        seconds: 40,
    })
}

/// When a cycle is over.
pub(super) fn cycle(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let cycle = draw.pick(&numbers.cycles)?;
    let reached = Clock::at(draw.span(7 * 60, 19 * 60, 7));
    let (end, dry) = sterilising::ends(cycle, reached);
    let slip = |time: Clock, because: &str| Slip {
        entered: Entered::Time(time),
        because: because.into(),
    };
    let mut slips = vec![
        slip(end, "The pack is still wet then: drying comes after it."),
        slip(reached, "That is when the time begins to count."),
    ];
    for other in numbers.cycles.iter().filter(|c| c.id != cycle.id) {
        slips.push(slip(
            sterilising::ends(other, reached).1,
            &format!(
                "That would be right for {}, {}, {} °C.",
                other.method, other.load, other.celsius
            ),
        ));
    }
    if let Some(drying) = cycle.drying {
        let least = Clock::at(reached.minutes() + drying.from);
        slips.push(slip(least, "That is the drying alone."));
    }
    let asks = match cycle.drying {
        Some(drying) => format!(
            "{} min at temperature, then {} to {} min of drying. At what time is it dry at the earliest?",
            cycle.minutes.from, drying.from, drying.to
        ),
        None => format!(
            "{} min at temperature. At what time is that over?",
            cycle.minutes.from
        ),
    };
    Some(Draft {
        stem: format!(
            "{}, {}, {} °C. The temperature is reached at {}. By the table: {asks}",
            super::super::dose::capital(&cycle.method),
            cycle.load,
            cycle.celsius,
            reached.text()
        ),
        answer: Answer::Time(dry),
        working: sterilising::cycle_working(numbers, cycle, reached),
        slips,
        difficulty: if cycle.drying.is_some() { 2 } else { 1 },
        seconds: 40,
    })
}

/// What a spore test decides.
pub(super) fn spores(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let days = draw.span(1, 14, 1);
    let implant = draw.below(2) == 1;
    let indicators = draw.below(2) == 0;
    let (spores, control, repeat) = *draw.pick(&[
        (Spores::NotIn, Control::Grew, false),
        (Spores::Waiting, Control::Grew, false),
        (Spores::Negative, Control::Grew, false),
        (Spores::Negative, Control::DidNotGrow, false),
        (Spores::Positive, Control::Grew, false),
        (Spores::Negative, Control::Grew, true),
        (Spores::Positive, Control::Grew, true),
    ])?;
    let load = Load {
        days,
        implant,
        spores,
        control,
        indicators,
        repeat,
    };
    let (decision, because) = spore::decide(numbers, &load);
    let right = Decision::ALL.iter().position(|d| *d == decision)?;
    let test = match (spores, control) {
        (Spores::NotIn, _) => "No spore test was in it",
        (Spores::Waiting, _) => "Its spore test is still incubating",
        (Spores::Negative, Control::Grew) => "Its spore test did not grow, and the control did",
        (Spores::Negative, Control::DidNotGrow) => "Neither its spore test nor the control grew",
        (Spores::Positive, _) => "Its spore test grew",
    };
    Some(Draft {
        stem: format!(
            "A load {}. {test}. The last test before was {days} {} ago{}. Display and chemical indicators: {}. What is done?",
            if implant {
                "with something to be implanted"
            } else {
                "without anything to be implanted"
            },
            if days == 1 { "day" } else { "days" },
            if repeat {
                ", and this one is the repeat after a positive test"
            } else {
                ""
            },
            if indicators {
                "in order"
            } else {
                "one has failed"
            }
        ),
        answer: Answer::Choice {
            options: Decision::ALL.iter().map(|d| d.words().into()).collect(),
            right,
        },
        working: spore::working(numbers, &load),
        slips: Decision::ALL
            .iter()
            .enumerate()
            .filter(|(i, _)| *i != right)
            .map(|(i, _)| Slip {
                entered: Entered::Option(i),
                because: because.clone(),
            })
            .collect(),
        difficulty: if repeat || control == Control::DidNotGrow {
            3
        } else {
            2
        },
        seconds: 40,
    })
}

/// A reading against one limit.
pub(super) fn reading(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let limit = draw.pick(&numbers.limits)?;
    // A hundred and fifty readings up to three times the limit, the limit and one
    // a hair above it among them.
    let exact = match draw.span(0, 149, 1) {
        0 => Exact::from(limit.most) * Exact::of(501, 500),
        at => Exact::of(i128::from(limit.most) * i128::from(at), 50),
    };
    let over = limit::above(limit, exact);
    let options = ["within the limit", "above the limit"];
    let right = usize::from(over);
    let because = if exact == Exact::from(limit.most) {
        "Exactly at the limit is within it: it may be reached and not passed.".to_owned()
    } else {
        format!("{} has to be held against {}.", exact.text(1), limit.most)
    };
    Some(Draft {
        stem: format!(
            "{}: a reading of {} {}. By this limit: {}, at most {} {}. Where does it lie?",
            super::super::dose::capital(&limit.of),
            exact.text(1),
            limit.unit,
            limit.body,
            limit.most,
            limit.unit
        ),
        answer: Answer::Choice {
            options: options.map(String::from).to_vec(),
            right,
        },
        working: limit::working(numbers, &limit.of, exact),
        slips: vec![Slip {
            entered: Entered::Option(1 - right),
            because,
        }],
        difficulty: 1,
        seconds: 15,
    })
}

/// Water to powder.
pub(super) fn powder(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let weighed: Vec<_> = weighed(numbers).collect();
    let proportion = *draw.pick(&weighed)?;
    let grams = draw.span(20, 500, 5);
    Some(water(numbers, proportion, grams))
}

/// Proportions by weight and volume, which alone can be reckoned with.
pub(super) fn weighed(numbers: &Numbers) -> impl Iterator<Item = &catalogue::numbers::Proportion> {
    let all = numbers.proportions.iter();
    all.filter(|p| p.powder_unit == "g" && p.liquid_unit == "mL")
}

/// Water to so many grams.
pub(super) fn water(
    numbers: &Numbers,
    proportion: &catalogue::numbers::Proportion,
    grams: u32,
) -> Draft {
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

/// The date of a return visit.
pub(super) fn recall(draw: &mut Draw) -> Option<Draft> {
    let start = Civil::new(2026, 1, 1)?.after_days(draw.span(0, 3 * 365, 3))?;
    let (count, unit) = *draw.pick(&[
        (8, Unit::Week),
        (12, Unit::Week),
        (7, Unit::Day),
        (10, Unit::Day),
        (1, Unit::Month),
        (3, Unit::Month),
        (6, Unit::Month),
        (1, Unit::Year),
    ])?;
    back(start, count, unit)
}

/// The date of a return visit so much later.
pub(super) fn back(start: Civil, count: u32, unit: Unit) -> Option<Draft> {
    let right = recall_date::after(start, count, unit).ok()?;
    let slip = |date: Option<Civil>, because: &str| {
        Some(Slip {
            entered: Entered::Date(date?),
            because: because.into(),
        })
    };
    let mut slips: Vec<Option<Slip>> = vec![
        slip(
            right.after_days(1),
            "It is a day off: the day of the visit itself is not counted.",
        ),
        slip(
            Civil::from_days(right.days() - 1),
            "It is a day off: the day of the visit itself is not counted.",
        ),
    ];
    match unit {
        Unit::Month => slips.push(slip(
            start.after_days(count * 30),
            "Months were counted as 30 days; by the calendar it is the same day of the month.",
        )),
        Unit::Week if count.is_multiple_of(4) => slips.push(slip(
            start.after_months(count / 4),
            "Four weeks were taken for a month; a month is two or three days longer.",
        )),
        _ => {}
    }
    let words = if count == 1 {
        unit.sign().trim_end_matches('s')
    } else {
        unit.sign()
    };
    Some(Draft {
        stem: format!(
            "The visit is on {} {}. The patient is to come back after {count} {words}. On which date is that?",
            start.weekday(),
            start.text()
        ),
        answer: Answer::Date(right),
        working: recall_date::working(start, count, unit).ok()?,
        slips: slips.into_iter().flatten().collect(),
        difficulty: if unit == Unit::Week { 2 } else { 1 },
        seconds: 45,
    })
}
