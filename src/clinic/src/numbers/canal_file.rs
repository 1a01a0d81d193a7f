//! Root canal files: the number is the diameter at the tip in hundredths of a
//! millimetre, and the file grows evenly from there.

use super::{
    entry::{Refusal, refuse},
    exact::Exact,
    figure, figure_sources,
    unit::{Quantity, Unit},
    working::Working,
};
use catalogue::{
    ids::SourceId,
    numbers::{FileSize, Numbers},
};

/// The file of this size.
///
/// # Errors
/// A sentence, if the series has no such size.
pub fn file(numbers: &Numbers, size: u16) -> Result<&FileSize, Refusal> {
    numbers
        .file_sizes
        .iter()
        .find(|f| f.size == size)
        .ok_or_else(|| Refusal(format!("The series has no file {size}.")))
}

/// The diameter in mm so far from the tip.
pub fn diameter(numbers: &Numbers, size: u16, from_tip: Exact) -> Exact {
    Exact::of(i128::from(size), 100) + figure(numbers, "file-taper") * from_tip
}

/// The size that a file becomes when so much is cut off its tip, in hundredths of a mm.
pub fn shortened(numbers: &Numbers, size: u16, cut: Exact) -> Exact {
    diameter(numbers, size, cut) * Exact::whole(100)
}

/// How much thicker the next file is, in per cent; none after the last.
pub fn step(numbers: &Numbers, size: u16) -> Option<(u16, Exact)> {
    let next = numbers
        .file_sizes
        .iter()
        .map(|f| f.size)
        .filter(|s| *s > size)
        .min()?;
    let percent = Exact::of(i128::from(next - size) * 100, i128::from(size));
    Some((next, percent))
}

/// What a file measures so far from its tip, step by step.
///
/// # Errors
/// A sentence, if the series has no such size or the blade is not so long.
pub fn working(numbers: &Numbers, size: u16, from_tip: Exact) -> Result<Working, Refusal> {
    let file = file(numbers, size)?;
    let blade = figure(numbers, "file-blade");
    if from_tip < Exact::ZERO || from_tip > blade {
        return refuse(format!(
            "The blade is {} mm long; write 0 to {} mm from the tip.",
            blade.text(1),
            blade.text(1)
        ));
    }
    let mut working = Working::default();
    let (tip, taper) = (
        Exact::of(i128::from(size), 100),
        figure(numbers, "file-taper"),
    );
    working.line(
        "Diameter at the tip",
        "size ÷ 100",
        format!("{size} ÷ 100 = {} mm", tip.text(2)),
        &[
            SourceId::from("endodontic-notes"),
            SourceId::from("iso-3630-1"),
        ],
    );
    let value = diameter(numbers, size, from_tip);
    working.line(
        "Diameter there",
        "tip + taper × mm from the tip",
        format!(
            "{} + {} × {} = {} mm",
            tip.text(2),
            taper.text(2),
            from_tip.text(2),
            value.text(3)
        ),
        figure_sources(numbers, "file-taper"),
    );
    working.line(
        "Colour of its handle",
        "",
        file.colour.clone(),
        &file.sources,
    );
    if let Some((next, percent)) = step(numbers, size) {
        working.reckon(
            "Next file",
            "(next − this) ÷ this × 100",
            format!("file {next} is {} % thicker at the tip", percent.text(2)),
        );
    }
    working.heed(
        "This holds for the even taper of 0.02 mm for each mm; other files print their taper.",
    );
    working.comes_to(
        format!("{} mm", value.text(3)),
        Some(Quantity {
            value,
            unit: Unit::Millimetre,
        }),
    );
    Ok(working)
}
