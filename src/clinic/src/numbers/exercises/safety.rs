//! Exercises about sterilising and limits.

use super::{Answer, Draft, Entered, Slip, draw::Draw};
use crate::numbers::{
    entry::Clock,
    exact::Exact,
    limit,
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
