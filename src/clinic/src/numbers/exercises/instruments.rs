//! Exercises in the numbers on instruments.

use super::{Answer, Draft, Entered, Slip, draw::Draw};
use crate::numbers::{
    black::{self, Margin},
    bur, canal_file,
    exact::Exact,
    unit::{Quantity, Unit},
};
use catalogue::numbers::{BurGroup, Numbers};

/// One question about a formula of three or four numbers.
pub(super) fn formula(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let width = *draw.pick(&[8, 10, 12, 13, 15, 20])?;
    let edge = *draw.pick(&[None, Some(80), Some(85), Some(95), Some(100)])?;
    let length = *draw.pick(&[6, 7, 8, 9])?;
    let angle = *draw.pick(&[6, 12, 14, 18, 23])?;
    let ask = draw.below(4);
    let text = match edge {
        Some(edge) => format!("{width}-{edge}-{length}-{angle}"),
        None => format!("{width}-{length}-{angle}"),
    };
    let formula = black::formula(&text).ok()?;
    let mut working = formula.working(numbers);
    let (stem, value, unit, slips) = match (ask, formula.edge_degrees(numbers)) {
        (0, _) => (
            "How wide is the blade, in mm?",
            formula.width_mm(),
            Unit::Millimetre,
            vec![Slip::number(
                formula.width,
                "The first number is in tenths of a millimetre.",
            )],
        ),
        (1, _) => (
            "How long is the blade, in mm?",
            formula.length,
            Unit::Millimetre,
            vec![
                Slip::number(
                    formula.edge.unwrap_or(formula.angle),
                    "Count the numbers first: of four the second is the edge, of three the last is the angle.",
                ),
                Slip::number(
                    formula.length / Exact::whole(10),
                    "Only the width is in tenths; the length is in whole millimetres.",
                ),
            ],
        ),
        (2, Some(degrees)) => (
            "At how many degrees does the cutting edge stand?",
            degrees,
            Unit::Degree,
            vec![
                Slip::number(
                    formula.edge?,
                    "These are hundredths of a circle, not degrees: times 3.6.",
                ),
                Slip::number(
                    formula.angle_degrees(numbers),
                    "That is the blade; of four numbers the second is the edge.",
                ),
            ],
        ),
        _ => (
            "At how many degrees does the blade stand to the handle?",
            formula.angle_degrees(numbers),
            Unit::Degree,
            vec![
                Slip::number(
                    formula.angle,
                    "These are hundredths of a circle, not degrees: times 3.6.",
                ),
                Slip::number(
                    formula.length * Exact::of(18, 5),
                    "That is the length; the angle stands last.",
                ),
            ],
        ),
    };
    if ask == 2 && formula.edge.is_none() {
        return trimmer_or_hoe(numbers, &text, working);
    }
    working.value = Some(Quantity { value, unit });
    working.result = format!("{} {}", value.text(2), unit.sign());
    Some(Draft {
        stem: format!("An instrument is marked {text}. {stem}"),
        answer: Answer::Number {
            value,
            unit,
            tolerance: if unit == Unit::Degree {
                Exact::of(1, 20)
            } else {
                Exact::ZERO
            },
        },
        working,
        slips,
        difficulty: if formula.edge.is_some() { 2 } else { 1 },
        seconds: 40,
    })
}

/// Of a three-number formula the edge cannot be asked in degrees, so this asks what it is.
fn trimmer_or_hoe(
    numbers: &Numbers,
    text: &str,
    working: crate::numbers::working::Working,
) -> Option<Draft> {
    let formula = black::formula(text).ok()?;
    let options = [
        "square to the blade",
        "slanted, for distal margins",
        "slanted, for mesial margins",
    ];
    let right = match formula.margin(numbers) {
        None => 0,
        Some(Margin::Distal) => 1,
        Some(Margin::Mesial) => 2,
        Some(Margin::Undecided) => return None,
    };
    let wrong = (0..options.len()).filter(|i| *i != right).map(|i| Slip {
        entered: Entered::Option(i),
        because: "Three numbers name no slant: only a fourth one, in second place, does.".into(),
    });
    Some(Draft {
        stem: format!("An instrument is marked {text}. How does its cutting edge stand?"),
        answer: Answer::Choice {
            options: options.map(String::from).to_vec(),
            right,
        },
        working,
        slips: wrong.collect(),
        difficulty: 2,
        seconds: 30,
    })
}

/// A short number: diameter, or last three digits of the long one, on some shank.
pub(super) fn short_bur(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let all: Vec<&String> = numbers
        .burs
        .iter()
        .flat_map(|s| s.sizes.iter().map(|(number, _)| number))
        .collect();
    let shanks: Vec<_> = numbers
        .bur_codes
        .iter()
        .filter(|c| c.group == BurGroup::Shank)
        .collect();
    let number = *draw.pick(&all)?;
    let shank = *draw.pick(&shanks)?;
    let digits = draw.below(2) == 1;
    let bur = bur::short(numbers, number).ok()?;
    let working = bur::short_working(numbers, &bur);
    let tenths = (bur.diameter * Exact::whole(10)).count();
    let lead = format!(
        "A bur number {number} ({}) with this shank: {}.",
        bur.series.shape, shank.says
    );
    if digits {
        let code = format!("{tenths:0>3}");
        let slip = |text: String, because: &str| Slip {
            entered: Entered::Digits(text),
            because: because.into(),
        };
        let mut slips = vec![
            slip(
                format!("{:0>3}", tenths * 10),
                "The last group is in tenths of a millimetre, not in hundredths.",
            ),
            slip(
                shank.code.clone(),
                "That is the group of the shank, the second of five.",
            ),
        ];
        if number.bytes().all(|b| b.is_ascii_digit()) {
            slips.push(slip(
                format!("{number:0>3}"),
                "The short number does not stand in the long one; the diameter does.",
            ));
        }
        return Some(Draft {
            stem: format!("{lead} Which are the last three digits of its fifteen?"),
            answer: Answer::Digits(code),
            working,
            slips,
            difficulty: 2,
            seconds: 35,
        });
    }
    Some(Draft {
        stem: format!("{lead} What is the greatest diameter of its head, in mm?"),
        answer: Answer::Number {
            value: bur.diameter,
            unit: Unit::Millimetre,
            tolerance: Exact::ZERO,
        },
        working,
        slips: vec![
            Slip::number(
                bur.diameter * Exact::whole(10),
                "That is in tenths of a millimetre.",
            ),
            Slip::number(
                shank.diameter.map(Exact::from)?,
                "That is the shank, not the head.",
            ),
        ],
        difficulty: 1,
        seconds: 25,
    })
}

/// A long number: what one of its groups says.
pub(super) fn long_bur(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let codes = |group: BurGroup| -> Vec<_> {
        numbers
            .bur_codes
            .iter()
            .filter(|c| c.group == group)
            .collect()
    };
    let (shanks, shapes, grits) = (
        codes(BurGroup::Shank),
        codes(BurGroup::Shape),
        codes(BurGroup::Cutting),
    );
    let diamond = codes(BurGroup::Material)
        .into_iter()
        .find(|c| c.code == "806")?;
    let shank = *draw.pick(&shanks)?;
    let shape = *draw.pick(&shapes)?;
    let grit = *draw.pick(&grits)?;
    let tenths = draw.span(8, 29, 3);
    let ask = draw.below(4);
    let text = format!(
        "{} {} {} {} {tenths:0>3}",
        diamond.code, shank.code, shape.code, grit.code
    );
    let number = bur::long(&text).ok()?;
    let working = bur::long_working(numbers, &number);
    if ask == 0 {
        return Some(Draft {
            stem: format!(
                "A packet says {text}. What is the greatest diameter of the head, in mm?"
            ),
            answer: Answer::Number {
                value: number.diameter,
                unit: Unit::Millimetre,
                tolerance: Exact::ZERO,
            },
            working,
            slips: vec![
                Slip::number(
                    number.diameter * Exact::whole(10),
                    "The last group is in tenths of a millimetre.",
                ),
                Slip::number(
                    number.diameter / Exact::whole(10),
                    "The last group is in tenths of a millimetre, not in hundredths.",
                ),
            ],
            difficulty: 1,
            seconds: 25,
        });
    }
    let (what, list, code) = match ask {
        1 => ("Which shank has it?", &shanks, shank),
        2 => ("Which shape has its head?", &shapes, shape),
        _ => ("How coarse is it?", &grits, grit),
    };
    let right = list.iter().position(|c| c.code == code.code)?;
    Some(Draft {
        stem: format!("A packet says {text}. {what}"),
        answer: Answer::Choice {
            options: list.iter().map(|c| c.says.clone()).collect(),
            right,
        },
        working,
        slips: list
            .iter()
            .enumerate()
            .filter(|(i, _)| *i != right)
            .map(|(i, other)| Slip {
                entered: Entered::Option(i),
                because: format!(
                    "That would be {}; the packet says {}.",
                    other.code, code.code
                ),
            })
            .collect(),
        difficulty: 2,
        seconds: 35,
    })
}

/// The diameter of a file so far from its tip.
pub(super) fn file(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let size = draw.pick(&numbers.file_sizes)?.size;
    let from_tip = draw.span(0, 16, 1);
    let working = canal_file::working(numbers, size, Exact::from(from_tip)).ok()?;
    let value = canal_file::diameter(numbers, size, Exact::from(from_tip));
    let tip = canal_file::diameter(numbers, size, Exact::ZERO);
    let place = if from_tip == 0 {
        "at its tip".to_owned()
    } else {
        format!("{from_tip} mm from its tip")
    };
    Some(Draft {
        stem: format!("What diameter has a file {size:0>2} of the even 0.02 taper {place}, in mm?"),
        answer: Answer::Number {
            value,
            unit: Unit::Millimetre,
            tolerance: Exact::ZERO,
        },
        working,
        slips: vec![
            Slip::number(
                tip,
                "That is the tip; the file grows by 0.02 mm with each millimetre.",
            ),
            Slip::number(
                tip * Exact::whole(10) + value - tip,
                "The size is in hundredths of a millimetre, not in tenths.",
            ),
            Slip::number(
                tip + (value - tip) * Exact::whole(10),
                "The taper is 0.02 mm for each mm, not 0.2.",
            ),
            Slip::number(
                tip - (value - tip),
                "A file grows thicker away from its tip.",
            ),
            Slip::number(
                Exact::from(u32::from(size)),
                "The number is in hundredths of a millimetre.",
            ),
        ],
        difficulty: if from_tip == 0 { 1 } else { 2 },
        seconds: 40,
    })
}
