//! Exercises in naming teeth and in when they come.

use super::{Answer, Draft, Entered, Slip, draw::Draw};
use crate::{
    numbers::teeth::{Moment, System, eruption, facts, working, written},
    tooth::Tooth,
};
use catalogue::numbers::Numbers;

/// From one system to another: every tooth, every pair of systems.
pub(super) fn notation(draw: &mut Draw) -> Option<Draft> {
    let pairs: Vec<(System, System)> = System::ALL
        .into_iter()
        .flat_map(|a| System::ALL.into_iter().map(move |b| (a, b)))
        .filter(|(a, b)| a != b)
        .collect();
    let teeth: Vec<Tooth> = Tooth::all().collect();
    let (from, to) = *draw.pick(&pairs)?;
    let tooth = *draw.pick(&teeth)?;
    Some(named(tooth, from, to))
}

/// One tooth from one system to another.
pub(super) fn named(tooth: Tooth, from: System, to: System) -> Draft {
    let code = written(tooth, from);
    let slip = |tooth: Tooth, because: &str| Slip {
        entered: Entered::Tooth(tooth),
        because: because.into(),
    };
    let mut slips = Vec::new();
    if let Some(other) = tooth.mirrored() {
        slips.push(slip(
            other,
            "Right and left changed places: right is the patient's right.",
        ));
    }
    if let Some(opposed) = Tooth::all().find(|t| {
        t.is_upper() != tooth.is_upper()
            && t.is_right() == tooth.is_right()
            && t.is_primary() == tooth.is_primary()
            && t.place() == tooth.place()
    }) {
        slips.push(slip(opposed, "Upper and lower changed places."));
    }
    if let Ok(same) = crate::numbers::teeth::read(&code, to) {
        slips.push(slip(
            same,
            "The same sign was kept; in the other system it is another tooth.",
        ));
    }
    let number = |t: &Tooth| u16::from(t.fdi());
    if let Some(next) = Tooth::all()
        .find(|t| number(t) == number(&tooth) + 1 && t.is_primary() == tooth.is_primary())
    {
        slips.push(slip(
            next,
            "It is one place off: count from the middle, beginning with 1.",
        ));
    }
    if let Some(before) = Tooth::all().find(|t| number(t) + 1 == number(&tooth)) {
        slips.push(slip(
            before,
            "It is one place off: count from the middle, beginning with 1.",
        ));
    }
    let primary = tooth.is_primary();
    Draft {
        stem: format!(
            "A letter names tooth {code} in the {} system. What is it in {}?",
            from.name(),
            match to {
                System::Palmer => "Palmer's way, as corner and place (UR, UL, LL, LR)",
                System::Fdi => "FDI",
                System::Universal => "the Universal system",
            }
        ),
        answer: Answer::Tooth { tooth, system: to },
        working: working(tooth, from, to),
        slips,
        difficulty: 1
            + u8::from(primary)
            + u8::from(to == System::Universal || from == System::Universal),
        seconds: 30,
    }
}

/// An age against a tooth: every tooth of one side, ages about its window.
pub(super) fn eruptions(numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
    let teeth: Vec<Tooth> = Tooth::all().filter(|t| t.is_right()).collect();
    let tooth = *draw.pick(&teeth)?;
    let at = draw.span(0, 14, 1);
    let facts = facts(numbers, tooth)?;
    let scale = if tooth.is_primary() { 1 } else { 12 };
    let (from, to) = (facts.erupts.from * scale, facts.erupts.to * scale);
    // Fifteen ages: five before the window, five in it, five behind it.
    let step = if tooth.is_primary() { 1 } else { 3 };
    let months = match at {
        0..=4 => from.saturating_sub(step * (5 - at)),
        5..=9 => from + (to - from) * (at - 5) / 4,
        _ => to + step * (at - 9),
    };
    let (moment, working) = eruption(numbers, tooth, months)?;
    let age = if tooth.is_primary() {
        format!("{months} months")
    } else {
        format!("{} years and {} months", months / 12, months % 12)
    };
    let right = Moment::ALL.iter().position(|m| *m == moment)?;
    let slips = Moment::ALL
        .iter()
        .enumerate()
        .filter(|(i, _)| *i != right)
        .map(|(i, _)| Slip {
            entered: Entered::Option(i),
            because: format!(
                "The chart gives {} to {} {} for this tooth.",
                facts.erupts.from,
                facts.erupts.to,
                if tooth.is_primary() {
                    "months"
                } else {
                    "years"
                }
            ),
        })
        .collect();
    Some(Draft {
        stem: format!(
            "A child of {age}. By the chart, what is to be said of the {} (FDI {})?",
            tooth.name(),
            tooth.fdi()
        ),
        answer: Answer::Choice {
            options: Moment::ALL.iter().map(|m| m.words().into()).collect(),
            right,
        },
        working,
        slips,
        difficulty: if (5..=9).contains(&at) { 2 } else { 1 },
        seconds: 25,
    })
}
