//! Inputs of the tools about sterilising, limits, proportions and dates.

use super::{
    Tool,
    form::{Entries, Fault, Form, Input},
};
use crate::numbers::{
    entry::{AMOUNT, Field, Refusal, TEMPERATURE, clock, date, number, refuse},
    exact::Exact,
    fluoride, limit, proportion, recall_date, spore,
    spore::{Control, Load, Spores},
    sterilising,
    unit::Unit,
    working::Working,
};
use catalogue::numbers::Numbers;

/// Strength of a fluoride salt.
const SALT: Field = Field {
    what: "strength of sodium fluoride",
    unit: Unit::Percent,
    bare: true,
    from: Exact::of(1, 100),
    to: Exact::whole(10),
    example: "5 %",
};

/// Days since something.
const DAYS: Field = Field {
    what: "number of days",
    unit: Unit::Day,
    bare: true,
    from: Exact::ZERO,
    to: Exact::whole(3650),
    example: "8",
};

const SPORES: [(&str, &str, Spores); 4] = [
    ("not-in", "none was in this load", Spores::NotIn),
    ("waiting", "it is incubating", Spores::Waiting),
    ("negative", "nothing grew", Spores::Negative),
    ("positive", "something grew", Spores::Positive),
];

const INTERVALS: [(&str, Unit); 4] = [
    ("days", Unit::Day),
    ("weeks", Unit::Week),
    ("months", Unit::Month),
    ("years", Unit::Year),
];

pub(super) fn inputs(tool: Tool, numbers: &Numbers) -> Vec<Input> {
    let pair = |a: &str, b: &str| (a.to_owned(), b.to_owned());
    match tool {
        Tool::Cycle => {
            let all = numbers.cycles.iter();
            let words = |c: &catalogue::numbers::Cycle| {
                format!("{}, {}, {} °C", c.method, c.load, c.celsius)
            };
            vec![
                Input::choice("cycle", "Cycle", all.map(|c| (c.id.clone(), words(c)))),
                Input::text("reached", "Temperature reached at", "10:35"),
            ]
        }
        Tool::Temperature => vec![Input::field("temperature", "Temperature", &TEMPERATURE)],
        Tool::Spores => vec![
            Input::field("days", "Days since the last spore test", &DAYS),
            Input::yes_or_no("implant", "Something to be implanted in the load"),
            Input::choice(
                "spores",
                "Spore test of this load",
                SPORES.iter().map(|(id, words, _)| pair(id, words)),
            ),
            Input::yes_or_no("control", "The control outside grew"),
            Input::yes_or_no("indicators", "Display and chemical indicators in order"),
            Input::yes_or_no("repeat", "It is the repeat after a positive test"),
        ],
        Tool::Reading => vec![
            Input::choice(
                "of",
                "What was measured",
                limit::measured(numbers).into_iter().map(|of| pair(of, of)),
            ),
            Input::text("reading", "Reading", "501"),
        ],
        Tool::Proportion => {
            let all = numbers.proportions.iter();
            let words = |p: &catalogue::numbers::Proportion| {
                (p.id.clone(), format!("{}, in {}", p.name, p.powder_unit))
            };
            vec![
                Input::choice("material", "Material", all.map(words)),
                Input::text("powder", "Powder", AMOUNT.example),
            ]
        }
        Tool::Fluoride => vec![Input::field("salt", "Sodium fluoride", &SALT)],
        _ => vec![
            Input::text("date", "Date of this visit", "14 March 2026"),
            Input::field(
                "count",
                "Interval",
                &Field {
                    example: "3",
                    unit: Unit::Day,
                    ..DAYS
                },
            ),
            Input::choice("unit", "In", INTERVALS.iter().map(|(id, _)| pair(id, id))),
        ],
    }
}

pub(super) fn work(
    tool: Tool,
    numbers: &Numbers,
    entries: &Entries,
) -> Result<Working, Vec<Fault>> {
    let mut form = Form::new(entries);
    let done: Option<Result<Working, Refusal>> = match tool {
        Tool::Cycle => {
            let cycle = form.chosen("cycle", |id| numbers.cycles.iter().find(|c| c.id == id));
            let reached = form.read("reached", clock);
            (|| Some(Ok(sterilising::cycle_working(numbers, cycle?, reached?))))()
        }
        Tool::Temperature => form
            .read("temperature", |text| TEMPERATURE.read(text))
            .map(|(_, typed)| Ok(sterilising::temperature_working(typed))),
        Tool::Spores => load(&mut form).map(|load| Ok(spore::working(numbers, &load))),
        Tool::Reading => reading(&mut form, numbers).map(Ok),
        Tool::Proportion => powder(&mut form, numbers).map(Ok),
        Tool::Fluoride => form
            .read("salt", |text| SALT.read(text))
            .map(|(salt, _)| Ok(fluoride::working(numbers, salt))),
        _ => recall(&mut form),
    };
    match done {
        Some(Ok(working)) if form.faults.is_empty() => Ok(working),
        Some(Err(why)) => Err(form.failed(Some(why))),
        _ => Err(form.failed(None)),
    }
}

fn whole(value: Exact) -> Result<u32, Refusal> {
    if value.under() == 1 {
        Ok(value.count())
    } else {
        refuse("Write a whole number.")
    }
}

fn load(form: &mut Form<'_>) -> Option<Load> {
    let days = form.read("days", |text| whole(DAYS.read(text)?.0));
    let implant = form.flag("implant");
    let spores = form.chosen("spores", |id| {
        SPORES.iter().find(|s| s.0 == id).map(|s| s.2)
    });
    let control_grew = form.flag("control");
    let indicators = form.flag("indicators");
    let repeat = form.flag("repeat");
    Some(Load {
        days: days?,
        implant: implant?,
        spores: spores?,
        control: if control_grew? {
            Control::Grew
        } else {
            Control::DidNotGrow
        },
        indicators: indicators?,
        repeat: repeat?,
    })
}

/// A reading, in the unit of its limit or bare.
fn reading(form: &mut Form<'_>, numbers: &Numbers) -> Option<Working> {
    let limit = form.chosen("of", |of| numbers.limits.iter().find(|l| l.of == of))?;
    let value = form.read("reading", |text| {
        let unit = Unit::spelled(&limit.unit).unwrap_or(Unit::Ppm);
        let field = Field {
            what: "reading",
            unit,
            bare: true,
            from: Exact::ZERO,
            to: Exact::whole(1_000_000),
            example: "501",
        };
        Ok(field.read(text)?.0)
    })?;
    Some(limit::working(numbers, &limit.of, value))
}

/// An amount of powder: grams where the table weighs, a number where it counts.
fn powder(form: &mut Form<'_>, numbers: &Numbers) -> Option<Working> {
    let material = form.chosen("material", |id| {
        numbers.proportions.iter().find(|p| p.id == id)
    })?;
    let amount = form.read("powder", |text| {
        if material.powder_unit == "g" {
            return Ok(AMOUNT.read(text)?.0);
        }
        let digits = text.trim_end_matches(|c: char| c.is_alphabetic() || c.is_whitespace());
        let value = number(digits)?;
        if value > Exact::ZERO && value <= Exact::whole(50) {
            Ok(value)
        } else {
            refuse(format!(
                "Write how many: 1 to 50, counted by the {}.",
                material.powder_unit
            ))
        }
    })?;
    Some(proportion::working(material, amount))
}

fn recall(form: &mut Form<'_>) -> Option<Result<Working, Refusal>> {
    let visit = form.read("date", date);
    let count = form.read("count", |text| whole(number(text)?));
    let unit = form.chosen("unit", |id| {
        INTERVALS.iter().find(|i| i.0 == id).map(|i| i.1)
    });
    Some(recall_date::working(visit?, count?, unit?))
}
