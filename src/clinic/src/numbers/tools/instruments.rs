//! Inputs of the tools about instruments.

use super::{
    Tool,
    form::{Entries, Fault, Form, Input},
};
use crate::numbers::{
    black, bur, canal_file,
    entry::{Field, Refusal},
    exact::Exact,
    needle,
    unit::Unit,
    working::Working,
};
use catalogue::numbers::Numbers;

/// A distance along a file.
const FROM_TIP: Field = Field {
    what: "distance from the tip",
    unit: Unit::Millimetre,
    bare: true,
    from: Exact::ZERO,
    to: Exact::whole(16),
    example: "16 mm",
};

pub(super) fn inputs(tool: Tool, numbers: &Numbers) -> Vec<Input> {
    match tool {
        Tool::Formula => vec![Input::text(
            "formula",
            "Numbers on the handle",
            "13-95-8-14",
        )],
        Tool::ShortBur => vec![Input::text("number", "Number of the bur", "330")],
        Tool::LongBur => vec![Input::text(
            "number",
            "The fifteen digits",
            "806 314 001 524 016",
        )],
        Tool::File => {
            let sizes = numbers.file_sizes.iter();
            vec![
                Input::choice(
                    "size",
                    "Size of the file",
                    sizes.map(|f| (f.size.to_string(), format!("{:0>2}, {}", f.size, f.colour))),
                ),
                Input::field("distance", "Distance from the tip", &FROM_TIP),
            ]
        }
        _ => {
            let gauges = numbers.needles.iter();
            vec![Input::choice(
                "gauge",
                "Gauge",
                gauges.map(|n| (n.gauge.to_string(), n.gauge.to_string())),
            )]
        }
    }
}

pub(super) fn work(
    tool: Tool,
    numbers: &Numbers,
    entries: &Entries,
) -> Result<Working, Vec<Fault>> {
    let mut form = Form::new(entries);
    let done: Option<Result<Working, Refusal>> = match tool {
        Tool::Formula => form
            .read("formula", black::formula)
            .map(|f| Ok(f.working(numbers))),
        Tool::ShortBur => form
            .read("number", |text| bur::short(numbers, text))
            .map(|b| Ok(bur::short_working(numbers, &b))),
        Tool::LongBur => form
            .read("number", bur::long)
            .map(|b| Ok(bur::long_working(numbers, &b))),
        Tool::File => {
            let size = form.chosen("size", |text| text.parse().ok());
            let distance = form.read("distance", |text| FROM_TIP.read(text));
            (|| Some(canal_file::working(numbers, size?, distance?.0)))()
        }
        _ => form
            .chosen("gauge", |text| text.parse().ok())
            .map(|gauge| needle::working(numbers, gauge)),
    };
    match done {
        Some(Ok(working)) if form.faults.is_empty() => Ok(working),
        Some(Err(why)) => Err(form.failed(Some(why))),
        _ => Err(form.failed(None)),
    }
}
