//! Powder and liquid.

use super::{exact::Exact, working::Working};
use catalogue::numbers::Proportion;

/// How much liquid so much powder takes: least and most.
pub fn liquid(proportion: &Proportion, powder: Exact) -> (Exact, Exact) {
    let per = powder / Exact::from(proportion.powder);
    (
        per * Exact::from(proportion.liquid.from),
        per * Exact::from(proportion.liquid.to),
    )
}

/// The same step by step.
pub fn working(proportion: &Proportion, powder: Exact) -> Working {
    let mut working = Working::default();
    let (from, to) = liquid(proportion, powder);
    let unit = &proportion.liquid_unit;
    let per = |liquid: u32, all: Exact| {
        format!(
            "{} {p} ÷ {} {p} × {liquid} {unit} {} {unit}",
            powder.text(2),
            proportion.powder,
            all.shown(1),
            p = proportion.powder_unit
        )
    };
    let formula = "powder ÷ powder of the table × liquid of the table";
    if from == to {
        working.line(
            "Liquid",
            formula,
            per(proportion.liquid.from, from),
            &proportion.sources,
        );
        working.comes_to(format!("{} {unit}", from.text(1)), None);
    } else {
        working.line(
            "At least",
            formula,
            per(proportion.liquid.from, from),
            &proportion.sources,
        );
        working.line(
            "At most",
            formula,
            per(proportion.liquid.to, to),
            &proportion.sources,
        );
        working.comes_to(format!("{} to {} {unit}", from.text(1), to.text(1)), None);
    }
    working.heed(proportion.otherwise.as_str());
    working.heed("The packet in hand comes first.");
    working
}
