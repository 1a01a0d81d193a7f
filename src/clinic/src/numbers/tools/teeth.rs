//! Inputs of the tooth tools.

use super::{
    Tool,
    form::{Entries, Fault, Form, Input},
};
use crate::numbers::{
    entry::{Field, Refusal},
    exact::Exact,
    teeth::{System, eruption, read, working},
    unit::Unit,
    working::Working,
};
use catalogue::numbers::Numbers;

/// An age in months or years.
const MONTHS: Field = Field {
    what: "age",
    unit: Unit::Month,
    bare: false,
    from: Exact::ZERO,
    to: Exact::whole(1440),
    example: "16 months or 8 years",
};

const YEARS: Field = Field {
    what: "age",
    unit: Unit::Year,
    bare: false,
    from: Exact::ZERO,
    to: Exact::whole(120),
    example: "16 months or 8 years",
};

fn systems(id: &'static str, label: &'static str) -> Input {
    let all = System::ALL.into_iter();
    Input::choice(id, label, all.map(|s| (s.name().into(), s.name().into())))
}

fn system(text: &str) -> Option<System> {
    System::ALL.into_iter().find(|s| s.name() == text)
}

pub(super) fn inputs(tool: Tool) -> Vec<Input> {
    let from = systems("system", "Written in");
    let tooth = Input::text("tooth", "Tooth", "16, 3 or UR6");
    match tool {
        Tool::Notation => vec![from, tooth, systems("to", "Wanted in")],
        _ => vec![
            from,
            tooth,
            Input::text("age", "Age", "16 months or 8 years"),
        ],
    }
}

/// An age in whole months.
fn months(text: &str) -> Result<u32, Refusal> {
    match MONTHS.read(text) {
        Ok((months, _)) => Ok(months.count()),
        Err(why) => match YEARS.read(text) {
            Ok((years, _)) => Ok((years * Exact::whole(12)).count()),
            Err(other) if text.contains('y') => Err(other),
            Err(_) => Err(why),
        },
    }
}

pub(super) fn work(
    tool: Tool,
    numbers: &Numbers,
    entries: &Entries,
) -> Result<Working, Vec<Fault>> {
    let mut form = Form::new(entries);
    let from = form.chosen("system", system);
    let tooth = from.and_then(|from| form.read("tooth", |text| read(text, from)));
    let done = if tool == Tool::Notation {
        let to = form.chosen("to", system);
        (|| Some(working(tooth?, from?, to?)))()
    } else {
        let months = form.read("age", months);
        (|| Some(eruption(numbers, tooth?, months?)?.1))()
    };
    done.filter(|_| form.faults.is_empty())
        .ok_or_else(|| form.failed(None))
}
