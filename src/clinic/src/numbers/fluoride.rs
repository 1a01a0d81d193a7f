//! Fluoride in a varnish: from per cent of the salt to parts in a million.

use super::{
    exact::Exact,
    figure,
    unit::{Quantity, Unit},
    working::Working,
};
use catalogue::{ids::SourceId, numbers::Numbers};

/// Per cent of fluoride in so many per cent of sodium fluoride.
pub fn fluoride(numbers: &Numbers, salt: Exact) -> Exact {
    salt * figure(numbers, "fluorine") / figure(numbers, "sodium-fluoride")
}

/// The same step by step, down to parts in a million.
pub fn working(numbers: &Numbers, salt: Exact) -> Working {
    let mut working = Working::default();
    let (part, whole) = (
        figure(numbers, "fluorine"),
        figure(numbers, "sodium-fluoride"),
    );
    let percent = fluoride(numbers, salt);
    working.reckon(
        "Fluoride in the salt",
        "mass of fluorine ÷ mass of the salt",
        format!(
            "{} ÷ {} {}",
            part.text(2),
            whole.text(2),
            (part / whole).shown(4)
        ),
    );
    working.reckon(
        "Per cent of fluoride",
        "per cent of the salt × that",
        format!(
            "{} % × {} {} %",
            salt.text(2),
            (part / whole).text(4),
            percent.shown(2)
        ),
    );
    let ppm = percent * Exact::whole(10_000);
    working.reckon(
        "Parts in a million",
        "per cent × 10 000",
        format!("{} % × 10 000 {} ppm", percent.text(2), ppm.shown(0)),
    );
    working.heed("Labels round: 5 % of the salt is printed as 2.26 % or 22 600 ppm.");
    working.rest_on(&[SourceId::from("ada-fluoride-2013")]);
    working.comes_to(
        format!("{} % fluoride, about {} ppm", percent.text(2), ppm.text(0)),
        Some(Quantity {
            value: ppm,
            unit: Unit::Ppm,
        }),
    );
    working
}
