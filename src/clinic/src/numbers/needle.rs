//! Needles by their gauge: the larger the number, the thinner the needle.

use super::{
    entry::Refusal,
    exact::Exact,
    unit::{Quantity, Unit},
    working::{Other, Working},
};
use catalogue::{ids::SourceId, numbers::Numbers};

/// What a gauge means.
///
/// # Errors
/// A sentence, if the gauge is not among those taught here.
pub fn working(numbers: &Numbers, gauge: u32) -> Result<Working, Refusal> {
    let needle = numbers
        .needles
        .iter()
        .find(|n| u32::from(n.gauge) == gauge)
        .ok_or_else(|| {
            let known: Vec<String> = numbers
                .needles
                .iter()
                .map(|n| n.gauge.to_string())
                .collect();
            Refusal(format!(
                "Gauge {gauge} is not among those taught here: {}.",
                known.join(", ")
            ))
        })?;
    let mut working = Working::default();
    let diameter = Exact::from(needle.diameter);
    working.line(
        "Outer diameter",
        "from the standard",
        format!("{} mm", diameter.text(2)),
        &needle.sources,
    );
    working.line(
        "Colour",
        "by the standard",
        needle.colour.clone(),
        &needle.sources,
    );
    if let Some(colour) = &needle.custom_colour {
        working.others.push(Other {
            rule: "the custom of dental packs in the United States".into(),
            result: colour.clone(),
            sources: vec![SourceId::from("common-practice")],
        });
    }
    working.heed(
        "Read the marked size: the standard itself says that the colour does not replace it.",
    );
    working.comes_to(
        format!("{} mm, {}", diameter.text(2), needle.colour),
        Some(Quantity {
            value: diameter,
            unit: Unit::Millimetre,
        }),
    );
    Ok(working)
}
