//! Sterilising cycles: how hot, how long, when the load may be taken out; and
//! degrees in the other scale.

use super::{
    entry::Clock,
    exact::Exact,
    unit::{Quantity, Unit},
    working::{Other, Working},
};
use catalogue::{
    ids::SourceId,
    numbers::{Cycle, Numbers},
};

/// When a cycle is over that reached its temperature at `reached`: the end of
/// sterilising, and the earliest end of drying.
pub fn ends(cycle: &Cycle, reached: Clock) -> (Clock, Clock) {
    let end = reached.minutes() + cycle.minutes.from;
    let dry = end + cycle.drying.map_or(0, |d| d.from);
    (Clock::at(end), Clock::at(dry))
}

/// A cycle from when the temperature was reached, step by step.
pub fn cycle_working(numbers: &Numbers, cycle: &Cycle, reached: Clock) -> Working {
    let mut working = Working::default();
    let (end, dry) = ends(cycle, reached);
    working.line(
        "Time at temperature",
        "from the table",
        format!(
            "{}, {}, {} °C: {} min",
            cycle.method, cycle.load, cycle.celsius, cycle.minutes.from
        ),
        &cycle.sources,
    );
    working.reckon(
        "End of sterilising",
        "temperature reached + minutes",
        format!(
            "{} + {} min = {}",
            reached.text(),
            cycle.minutes.from,
            end.text()
        ),
    );
    if let Some(drying) = cycle.drying {
        working.line(
            "End of drying, at the earliest",
            "end + least drying",
            format!("{} + {} min = {}", end.text(), drying.from, dry.text()),
            &cycle.sources,
        );
        working.heed(format!(
            "Drying takes {} to {} minutes; a wet pack is not sterile for long.",
            drying.from, drying.to
        ));
    }
    for other in numbers
        .cycles
        .iter()
        .filter(|c| c.id != cycle.id && c.load == cycle.load && c.celsius == cycle.celsius)
    {
        working.others.push(Other {
            rule: other.method.clone(),
            result: format!("{} min at {} °C", other.minutes.from, other.celsius),
            sources: other.sources.clone(),
        });
    }
    working.heed(cycle.note.as_str());
    working.heed("The time counts from when the temperature is reached, not from the button. The label of the machine and of the load comes before any table.");
    working.comes_to(dry.text(), None);
    working
}

/// A temperature told in the other scale, step by step.
pub fn temperature_working(typed: Quantity) -> Working {
    let mut working = Working::default();
    let (to, formula, numbers) = if typed.unit == Unit::Fahrenheit {
        let value = typed.told_in(Unit::Celsius).unwrap_or(Exact::ZERO);
        let numbers = format!("({} − 32) ÷ 1.8 {} °C", typed.value.text(2), value.shown(1));
        (Unit::Celsius, "(°F − 32) ÷ 1.8", numbers)
    } else {
        let value = typed.told_in(Unit::Fahrenheit).unwrap_or(Exact::ZERO);
        let numbers = format!("{} × 1.8 + 32 {} °F", typed.value.text(2), value.shown(1));
        (Unit::Fahrenheit, "°C × 1.8 + 32", numbers)
    };
    let value = typed.told_in(to).unwrap_or(Exact::ZERO);
    working.line(
        "In the other scale",
        formula,
        numbers,
        &[SourceId::from("arithmetic")],
    );
    working.comes_to(
        format!("{} {}", value.text(1), to.sign()),
        Some(Quantity { value, unit: to }),
    );
    working
}
