//! One tooth in three systems, read and written.

use crate::{
    numbers::{
        entry::{Refusal, refuse},
        working::Working,
    },
    tooth::Tooth,
};
use catalogue::ids::SourceId;

/// A way to number teeth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum System {
    /// Two digits.
    Fdi,
    /// One sweep: 1 to 32, A to T.
    Universal,
    /// A corner and a place: `UR6`.
    Palmer,
}

impl System {
    /// All three.
    pub const ALL: [Self; 3] = [Self::Fdi, Self::Universal, Self::Palmer];

    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Fdi => "FDI",
            Self::Universal => "Universal",
            Self::Palmer => "Palmer",
        }
    }

    fn source(self) -> SourceId {
        match self {
            Self::Fdi => "iso-3950",
            Self::Universal => "universal-notation",
            Self::Palmer => "palmer-notation",
        }
        .into()
    }
}

/// A tooth as a system writes it: `16`, `3`, `UR6`.
pub fn written(tooth: Tooth, system: System) -> String {
    match system {
        System::Fdi => tooth.fdi().to_string(),
        System::Universal => tooth.universal(),
        System::Palmer => {
            let (jaw, side) = (
                if tooth.is_upper() { 'U' } else { 'L' },
                if tooth.is_right() { 'R' } else { 'L' },
            );
            format!("{jaw}{side}{}", sign(tooth))
        }
    }
}

fn sign(tooth: Tooth) -> String {
    tooth
        .palmer()
        .chars()
        .last()
        .map(String::from)
        .unwrap_or_default()
}

/// Reads a tooth in a system: `16` or `1-6`; `3`, `#3` or `T`; `UR6`, `6 upper right` or `6⏌`.
///
/// # Errors
/// A sentence, if the system has no such tooth.
pub fn read(text: &str, system: System) -> Result<Tooth, Refusal> {
    let text = text.trim();
    if text.is_empty() {
        return refuse("Nothing is written here yet. Write a tooth.");
    }
    match system {
        System::Fdi => fdi(text),
        System::Universal => universal(text),
        System::Palmer => palmer(text),
    }
}

fn fdi(text: &str) -> Result<Tooth, Refusal> {
    let digits: String = text.chars().filter(|c| !"-. ".contains(*c)).collect();
    let number: Option<u8> = digits.parse().ok().filter(|_| digits.len() == 2);
    let Some(number) = number else {
        return refuse(format!(
            "'{text}' is not two digits: quarter and place, such as 16."
        ));
    };
    Tooth::from_fdi(number).ok_or_else(|| {
        Refusal(match number / 10 {
            0 | 9 => format!(
                "{number} has no such quarter: 1 to 4 are permanent teeth, 5 to 8 primary ones."
            ),
            1..=4 => {
                format!("{number} is no tooth: the places in a permanent quarter run from 1 to 8.")
            }
            _ => format!("{number} is no tooth: the places in a primary quarter run from 1 to 5."),
        })
    })
}

fn universal(text: &str) -> Result<Tooth, Refusal> {
    let wanted = text.trim_start_matches('#').trim().to_uppercase();
    Tooth::all()
        .find(|tooth| tooth.universal() == wanted)
        .ok_or_else(|| {
            Refusal(format!(
                "'{text}' is no tooth in the Universal system: permanent ones are 1 to 32, primary ones A to T."
            ))
        })
}

fn palmer(text: &str) -> Result<Tooth, Refusal> {
    let corners = [
        ('⏌', "UR"),
        ('┘', "UR"),
        ('⎿', "UL"),
        ('└', "UL"),
        ('⎾', "LL"),
        ('┌', "LL"),
        ('⏋', "LR"),
        ('┐', "LR"),
    ];
    let mut upper = text.to_uppercase();
    for (corner, letters) in corners {
        upper = upper.replace(corner, &format!(" {letters} "));
    }
    for (word, letters) in [
        ("UPPER", "U"),
        ("LOWER", "L"),
        ("RIGHT", "R"),
        ("LEFT", "L"),
    ] {
        upper = upper.replace(word, letters);
    }
    let letters: String = upper.chars().filter(|c| c.is_alphanumeric()).collect();
    Tooth::all()
        .find(|tooth| {
            let code = written(*tooth, System::Palmer);
            letters == code || letters == format!("{}{}", &code[2..], &code[..2])
        })
        .ok_or_else(|| {
            Refusal(format!(
                "'{text}' is no tooth in Palmer's way: write the corner and the place, such as UR6 or LLE."
            ))
        })
}

/// From one system to another, step by step.
pub fn working(tooth: Tooth, from: System, to: System) -> Working {
    let mut working = Working::default();
    working.line(
        &format!("Read in {}", from.name()),
        "quarter and place from the middle",
        format!(
            "{}: {}, place {}",
            written(tooth, from),
            tooth.name(),
            tooth.place()
        ),
        &[from.source()],
    );
    let place = tooth.place();
    let (formula, numbers) = match to {
        System::Fdi => (
            "digit of the quarter, then the place".to_owned(),
            format!("{} and {place}: {}", tooth.fdi() / 10, tooth.fdi()),
        ),
        System::Palmer => (
            "corner, then the place, as a letter in primary teeth".to_owned(),
            tooth.palmer(),
        ),
        System::Universal => sweep(tooth),
    };
    working.line(
        &format!("Written in {}", to.name()),
        &formula,
        numbers,
        &[to.source(), SourceId::from("arithmetic")],
    );
    working.heed("Always write which system it is: a bare number is half of it.");
    working.comes_to(written(tooth, to), None);
    working
}

/// The rule of the Universal system for a quarter, and this tooth by it.
fn sweep(tooth: Tooth) -> (String, String) {
    let place = tooth.place();
    let primary = tooth.is_primary();
    let (start, less) = match (primary, tooth.is_upper(), tooth.is_right()) {
        (false, true, true) => (9, true),
        (false, true, false) => (8, false),
        (false, false, false) => (25, true),
        (false, false, true) => (24, false),
        (true, true, true) => (6, true),
        (true, true, false) => (5, false),
        (true, false, false) => (16, true),
        (true, false, true) => (15, false),
    };
    let (sign, number) = if less {
        ('−', start - place)
    } else {
        ('+', start + place)
    };
    let last = if primary {
        format!(", and letter {number} is {}", tooth.universal())
    } else {
        String::new()
    };
    (
        format!("{start} {sign} place in this quarter"),
        format!("{start} {sign} {place} = {number}{last}"),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_tooth_comes_back_in_every_system() {
        for tooth in Tooth::all() {
            for system in System::ALL {
                assert_eq!(read(&written(tooth, system), system), Ok(tooth));
                for to in System::ALL {
                    let working = working(tooth, system, to);
                    assert!(working.lines[1].numbers.contains(&match to {
                        System::Palmer => tooth.palmer(),
                        _ => written(tooth, to),
                    }));
                }
            }
            assert_eq!(read(&tooth.palmer(), System::Palmer), Ok(tooth));
        }
    }

    #[test]
    fn what_is_typed() {
        for (text, system, fdi) in [
            ("1-6", System::Fdi, Some(16)),
            ("4.6", System::Fdi, Some(46)),
            ("19", System::Fdi, None),
            ("56", System::Fdi, None),
            ("90", System::Fdi, None),
            ("6", System::Fdi, None),
            ("#30", System::Universal, Some(46)),
            ("t", System::Universal, Some(85)),
            ("33", System::Universal, None),
            ("U", System::Universal, None),
            ("6⏌", System::Palmer, Some(16)),
            ("⎿E", System::Palmer, Some(65)),
            ("lower left 6", System::Palmer, Some(36)),
            ("6 LR", System::Palmer, Some(46)),
            ("UR9", System::Palmer, None),
            ("URF", System::Palmer, None),
            ("", System::Palmer, None),
        ] {
            assert_eq!(read(text, system).ok().map(Tooth::fdi), fdi, "{text}");
        }
    }
}
