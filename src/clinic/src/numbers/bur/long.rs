//! The long number: material, shank, shape, grit or toothing, diameter.

use crate::numbers::{
    entry::{Refusal, refuse},
    exact::Exact,
    unit::{Quantity, Unit},
    working::Working,
};
use catalogue::{
    ids::SourceId,
    numbers::{BurCode, BurGroup, Numbers},
};

/// A long number in its five groups.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LongNumber {
    /// The first four groups, as they stand.
    pub groups: [String; 4],
    /// Greatest diameter of the head in mm.
    pub diameter: Exact,
}

/// The four groups in their order, and what each is called.
pub(in crate::numbers) const GROUPS: [(BurGroup, &str); 4] = [
    (BurGroup::Material, "Material"),
    (BurGroup::Shank, "Shank"),
    (BurGroup::Shape, "Shape"),
    (BurGroup::Cutting, "Grit or toothing"),
];

impl LongNumber {
    /// What a group says; none where its digits are not among those taught here.
    pub fn code<'n>(&self, numbers: &'n Numbers, group: BurGroup) -> Option<&'n BurCode> {
        let at = GROUPS.iter().position(|(g, _)| *g == group)?;
        numbers
            .bur_codes
            .iter()
            .find(|c| c.group == group && c.code == self.groups[at])
    }

    /// `806 314 001 524 016`.
    pub fn text(&self) -> String {
        let tenths = (self.diameter * Exact::whole(10)).text(0);
        format!("{} {tenths:0>3}", self.groups.join(" "))
    }
}

/// Reads fifteen digits, with or without marks between them.
///
/// # Errors
/// A sentence, if they are not fifteen digits or the head would have no size.
pub fn long(text: &str) -> Result<LongNumber, Refusal> {
    let digits: String = text
        .chars()
        .filter(|c| !(c.is_whitespace() || ".-/".contains(*c)))
        .collect();
    if digits.len() != 15 || !digits.bytes().all(|b| b.is_ascii_digit()) {
        return refuse(format!(
            "The long number has fifteen digits in five groups of three; '{}' has {}.",
            text.trim(),
            digits.chars().count()
        ));
    }
    let group = |i: usize| digits[3 * i..3 * i + 3].to_owned();
    let tenths: u32 = group(4).parse().unwrap_or(0);
    if tenths == 0 {
        return refuse(
            "The last group is the diameter in tenths of a millimetre; it cannot be 000.",
        );
    }
    Ok(LongNumber {
        groups: [group(0), group(1), group(2), group(3)],
        diameter: Exact::of(i128::from(tenths), 10),
    })
}

/// What a long number says, group by group.
pub fn long_working(numbers: &Numbers, bur: &LongNumber) -> Working {
    let mut working = Working::default();
    let mut said = Vec::new();
    for (i, (group, name)) in GROUPS.into_iter().enumerate() {
        if let Some(code) = bur.code(numbers, group) {
            let shank = code
                .diameter
                .map(|d| format!(", {} mm thick", Exact::from(d).text(2)))
                .unwrap_or_default();
            working.line(
                name,
                "from the list",
                format!("{}: {}{shank}", code.code, code.says),
                &code.sources,
            );
            said.push(code.says.clone());
        } else {
            working.line(
                name,
                "from the list",
                format!("{}: not among the codes taught here", bur.groups[i]),
                &[SourceId::from("iso-6360")],
            );
            working.heed(
                "A group is not among the codes taught here; the maker's list tells what it means.",
            );
        }
    }
    working.line(
        "Greatest diameter of the head",
        "last three digits ÷ 10",
        format!(
            "{} ÷ 10 = {} mm",
            (bur.diameter * Exact::whole(10)).text(0),
            bur.diameter.text(2)
        ),
        &[SourceId::from("iso-6360"), SourceId::from("rotary-notes")],
    );
    said.push(format!("{} mm", bur.diameter.text(2)));
    working.comes_to(
        said.join("; "),
        Some(Quantity {
            value: bur.diameter,
            unit: Unit::Millimetre,
        }),
    );
    working
}
