//! The short number: shape and diameter together.

use crate::numbers::{
    entry::{Refusal, refuse},
    exact::Exact,
    unit::{Quantity, Unit},
    working::Working,
};
use catalogue::numbers::{BurSeries, Numbers};

/// A bur by its short number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Short<'n> {
    /// Its series.
    pub series: &'n BurSeries,
    /// Its number as the list writes it.
    pub number: &'n str,
    /// Diameter of its head in mm.
    pub diameter: Exact,
}

/// The bur with this short number, such as `330`, `1/4` or `33½`. A letter L
/// for a long head changes nothing of the diameter.
///
/// # Errors
/// A sentence, if the lists taught here have no such number.
pub fn short<'n>(numbers: &'n Numbers, text: &str) -> Result<Short<'n>, Refusal> {
    let plain = |text: &str| {
        let spelled = text.replace('½', " 1/2").replace('¼', " 1/4");
        spelled.split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let wanted = plain(text.trim().trim_start_matches('#'));
    let wanted = wanted.trim_end_matches(['L', 'l']).trim_end();
    if wanted.is_empty() {
        return refuse("Nothing is written here yet. Write a bur number, such as 330.");
    }
    numbers
        .burs
        .iter()
        .flat_map(|series| series.sizes.iter().map(move |size| (series, size)))
        .find(|(_, (number, _))| number == wanted)
        .map(|(series, (number, diameter))| Short {
            series,
            number,
            diameter: (*diameter).into(),
        })
        .ok_or_else(|| {
            Refusal(format!(
                "'{}' is in none of the lists taught here. Makers number in ways of their own too.",
                text.trim()
            ))
        })
}

/// What a short number says, step by step.
pub fn short_working(numbers: &Numbers, bur: &Short<'_>) -> Working {
    let mut working = Working::default();
    let from = &bur.series.sources;
    working.line(
        "Shape",
        "from the list",
        format!("{} stands among: {}", bur.number, bur.series.shape),
        from,
    );
    working.line(
        "Diameter of the head",
        "from the list",
        format!("{} mm", bur.diameter.text(2)),
        from,
    );
    let tenths = bur.diameter * Exact::whole(10);
    working.reckon(
        "Last three digits of the long number",
        "mm × 10",
        format!(
            "{} mm × 10 = {}, written {:0>3}",
            bur.diameter.text(2),
            tenths.text(0),
            tenths.text(0)
        ),
    );
    if let Some(partner) = cross_cut(numbers, bur) {
        working.line(
            "Cross-cut bur of the same size",
            "plain straight number + 500",
            format!("{} → {}", bur.number, partner.number),
            from,
        );
    }
    working.heed(bur.series.note.as_str());
    working.comes_to(
        format!("{}, {} mm", bur.series.shape, bur.diameter.text(2)),
        Some(Quantity {
            value: bur.diameter,
            unit: Unit::Millimetre,
        }),
    );
    working
}

/// The cross-cut bur of the same size, where the rule of the series gives one.
pub(in crate::numbers) fn cross_cut<'n>(
    numbers: &'n Numbers,
    bur: &Short<'_>,
) -> Option<Short<'n>> {
    let added = u32::from(bur.series.cross_cut?);
    let number: u32 = bur.number.parse().ok()?;
    short(numbers, &(number + added).to_string()).ok()
}
