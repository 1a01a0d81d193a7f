//! Tooth notation: the same tooth in the two-digit, the Universal and Palmer's system.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
};
use crate::question::{Form, Shown};
use catalogue::quantity::Milli;
use clinic::{case::Seed, tooth::Tooth};

pub(super) const FAMILY: Family = Family {
    id: "tooth",
    name: "A tooth in another notation",
    facts,
    write,
};

const SYSTEMS: [&str; 4] = ["fdi", "universal", "palmer", "name"];

/// A tooth, the notation given and the notation asked for.
fn facts(_: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for tooth in teeth() {
        for from in SYSTEMS {
            for to in SYSTEMS.into_iter().filter(|to| *to != from) {
                facts.push(format!("{}.{from}.{to}", tooth.fdi()));
            }
        }
    }
    facts
}

fn teeth() -> impl Iterator<Item = Tooth> {
    (11..=85).filter_map(Tooth::from_fdi)
}

fn called(tooth: Tooth, system: &str) -> Option<String> {
    match system {
        "fdi" => Some(tooth.fdi().to_string()),
        "universal" => Some(tooth.universal()),
        "palmer" => Some(tooth.palmer()),
        "name" => Some(tooth.name()),
        _ => None,
    }
}

fn given(tooth: Tooth, system: &str) -> Option<String> {
    let called = called(tooth, system)?;
    Some(match system {
        "fdi" => format!("tooth {called} in the two-digit system"),
        "universal" => format!("tooth {called} in the Universal system"),
        "palmer" => format!("{called} in Palmer's system"),
        _ => format!("the {called}"),
    })
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[number, from, to] = fact else {
        return None;
    };
    let tooth = Tooth::from_fdi(number.parse().ok()?)?;
    let wanted = called(tooth, to)?;
    let given = given(tooth, from).filter(|_| from != to)?;
    let asked = match to {
        "fdi" => "in the two-digit system",
        "universal" => "in the Universal system",
        "palmer" => "in Palmer's system",
        _ => "in words",
    };
    let typed = wanted.parse::<i32>().ok();
    let (form, closeness, stem) = if let Some(number) = typed {
        let number = Milli(number * 1000);
        let stem = wording(
            chance,
            &[
                "Which number {1} is {0}?",
                "The chart speaks of {0}. What is its number {1}?",
            ],
            &[],
        );
        (
            Form::Number {
                unit: String::new(),
                from: number,
                to: number,
            },
            0.5,
            stem,
        )
    } else {
        let place = |t: Tooth| i32::from(t.place());
        let pool = teeth()
            .filter(|t| *t != tooth && t.is_primary() == tooth.is_primary())
            .filter_map(|t| {
                let away = (place(t) - place(tooth)).abs();
                let sides = i32::from(t.is_upper() != tooth.is_upper())
                    + i32::from(t.is_right() != tooth.is_right());
                let close = match (away, sides) {
                    (0, 1) | (1, 0) => 0.9,
                    (0, 2) | (1, 1) => 0.75,
                    _ => return None,
                };
                Some(
                    Offer::new(t.fdi().to_string(), called(t, to)?)
                        .close(close)
                        .because(format!("That is {}.", self::given(t, from)?)),
                )
            })
            .collect();
        let (choices, closeness) = one(
            Offer::new(tooth.fdi().to_string(), wanted.as_str()),
            pool,
            chance,
        )?;
        let stem = wording(
            chance,
            &[
                "What is {0} called {1}?",
                "The chart speaks of {0}. What is it {1}?",
            ],
            &[],
        );
        (Form::One(choices), closeness, stem)
    };
    Some(Draft {
        competency: "chairside".into(),
        stem: super::text::capital(&stem.replace("{0}", &given).replace("{1}", asked)),
        shown: Shown::Nothing,
        form,
        closeness,
        reasons: Desk::reason(
            format!(
                "The {} is {} in the two-digit system, {} in the Universal system and {} in Palmer's",
                tooth.name(),
                tooth.fdi(),
                tooth.universal(),
                tooth.palmer()
            ),
            &[],
        ),
        study: desk.lesson("tooth-notation"),
    })
}
