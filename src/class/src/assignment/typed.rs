//! The form of an assignment that is short enough to be typed: five groups of
//! five, such as `22Y9C-0A5...`. It has room for one task without conditions.
//!
//! ```text
//! version and kind of task   1 byte, the version in the high four bits
//! bank                       2 bytes
//! place of the task's name   1 byte
//! how often                  1 byte; for a form, the number of questions
//! seed                       4 bytes
//! due day                    2 bytes
//! flags                      1 byte: pass mark in steps of 5 from 25, tries, hints, alike
//! title                      1 byte
//! CRC-16                     2 bytes
//! ```
//!
//! That is 24 letters, and the check symbol.

use super::{Assignment, Day, Set};
use crate::bank::Bank;
use crate::refusal::{Check, Refusal};
use crate::task::{Order, Task};
use crate::wire::{
    base32,
    bytes::{Reader, Writer},
    check,
};

/// The latest version; numbers to be worked out came with it, and everything
/// else is still written in the first.
const VERSION: u8 = 2;

/// The letters of a code, with the check symbol.
const LETTERS: usize = 25;

/// The letters of a group.
const GROUP: usize = 5;

impl Assignment {
    /// As a code that can be typed; none where it does not fit one: more than
    /// one task, conditions on a case, a preference card, a pass mark that is
    /// not a multiple of 5 from 25, more than three tries.
    pub fn typed(&self, bank: &Bank) -> Option<String> {
        let [set] = &self.tasks[..] else { return None };
        if self.card.is_some() || self.bank != bank.version {
            return None;
        }
        let (kind, name, times) = kind(set, bank)?;
        let mut writer = Writer::default();
        writer
            .byte(version(kind) << 4 | kind)
            .two(self.bank.short())
            .byte(name)
            .byte(times)
            .four(self.seed)
            .two(self.due.map_or(0, |day| day.0))
            .byte(self.flags()?)
            .byte(self.title);
        let sum = check::crc16(&writer.0);
        writer.two(sum);
        let letters = base32::encode(&writer.0);
        let symbol = base32::symbol(&letters)?;
        Some(grouped(&format!("{letters}{symbol}")))
    }

    fn flags(&self) -> Option<u8> {
        let steps = self
            .pass_mark
            .checked_sub(25)
            .filter(|over| over % 5 == 0)?
            / 5;
        let tries = Some(self.tries).filter(|&tries| tries < 4)?;
        Some(steps << 4 | tries << 2 | u8::from(self.hints) << 1 | u8::from(self.alike))
    }

    /// Reads a code that was typed. Any case is read, `o` as 0, `i` and `l` as
    /// 1; hyphens and blanks are passed over.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn read_typed(text: &str, bank: &Bank) -> Result<Self, Refusal> {
        if text.len() > 4 * LETTERS {
            return Err(Refusal::TooLarge);
        }
        let kept: Vec<char> = text
            .chars()
            .filter(|c| !u8::try_from(*c).is_ok_and(base32::passed_over))
            .collect();
        let (symbol, letters) = kept.split_last().ok_or(Refusal::Foreign)?;
        let symbol = base32::tidied(*symbol).ok_or(Refusal::Damaged(Check::Letters))?;
        let letters: String = letters.iter().collect();
        let due = base32::symbol(&letters).ok_or(Refusal::Damaged(Check::Letters))?;
        if kept.len() != LETTERS {
            return Err(Refusal::Damaged(Check::Length));
        }
        if due != symbol {
            return Err(Refusal::Damaged(Check::Symbol));
        }
        let bytes = base32::decode(&letters).ok_or(Refusal::Damaged(Check::Length))?;
        let (before, sum) = bytes.split_at(bytes.len() - 2);
        if Reader(sum).two() != Some(check::crc16(before)) {
            return Err(Refusal::Damaged(Check::Checksum));
        }
        match before[0] >> 4 {
            1..=VERSION => {}
            newer if newer > VERSION => return Err(Refusal::Newer(newer)),
            _ => return Err(Refusal::Foreign),
        }
        let mut reader = Reader(&before[1..]);
        if reader.two() != Some(bank.version.short()) {
            return Err(Refusal::OtherBank);
        }
        let kind = before[0] & 15;
        Some(kind)
            .filter(|kind| version(*kind) <= before[0] >> 4)
            .and_then(|kind| read(kind, reader, bank))
            .filter(Self::sensible)
            .ok_or(Refusal::Damaged(Check::Sense))
    }
}

/// The version that knows a kind of task.
fn version(kind: u8) -> u8 {
    if kind < 5 { 1 } else { 2 }
}

fn grouped(letters: &str) -> String {
    let mut text = String::new();
    for (place, letter) in letters.chars().enumerate() {
        if place > 0 && place % GROUP == 0 {
            text.push('-');
        }
        text.push(letter);
    }
    text
}

/// The kind of a task, the place of its name, and how often it is set.
fn kind(set: &Set, bank: &Bank) -> Option<(u8, u8, u8)> {
    let place = |names: &[String], id: &str| {
        let place = names.iter().position(|name| name == id)?;
        u8::try_from(place).ok()
    };
    Some(match &set.task {
        Task::Form {
            blueprint,
            questions,
        } if set.times == 1 => (
            0,
            place(&bank.blueprints, blueprint)?,
            u8::try_from(*questions).ok()?,
        ),
        Task::Reading => (1, 0, set.times),
        Task::Case(order) => {
            let frame = order.frame.clone()?;
            let bare = Order {
                frame: Some(frame.clone()),
                ..Order::default()
            };
            if *order != bare {
                return None;
            }
            (2, place(&bank.frames, &frame)?, set.times)
        }
        Task::Mix {
            material,
            usage: None,
        } => (3, place(&bank.materials, material)?, set.times),
        Task::Form { .. } | Task::Mix { .. } => return None,
        Task::Question(family) => (4, place(&bank.families, family)?, set.times),
        Task::Number(family) => (5, place(&bank.numbers, family)?, set.times),
    })
}

fn read(kind: u8, mut reader: Reader<'_>, bank: &Bank) -> Option<Assignment> {
    let place = usize::from(reader.byte()?);
    let times = reader.byte()?;
    let name = |names: &[String]| names.get(place).cloned();
    let task = match kind {
        0 => Task::Form {
            blueprint: name(&bank.blueprints)?,
            questions: u16::from(times),
        },
        1 => Task::Reading,
        2 => Task::Case(Order {
            frame: Some(name(&bank.frames)?),
            ..Order::default()
        }),
        3 => Task::Mix {
            material: name(&bank.materials)?,
            usage: None,
        },
        4 => Task::Question(name(&bank.families)?),
        5 => Task::Number(name(&bank.numbers)?),
        _ => return None,
    };
    let times = if kind == 0 { 1 } else { times };
    let seed = reader.four()?;
    let due = Some(reader.two()?).filter(|&day| day > 0).map(Day);
    let flags = reader.byte()?;
    let title = reader.byte()?;
    reader.end()?;
    Some(Assignment {
        bank: bank.version,
        title,
        seed,
        due,
        pass_mark: 25 + 5 * (flags >> 4),
        tries: flags >> 2 & 3,
        hints: flags & 2 != 0,
        alike: flags & 1 != 0,
        card: None,
        tasks: vec![Set { task, times }],
    })
}

#[cfg(test)]
mod tests;
