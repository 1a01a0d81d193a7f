//! The form of an assignment that is short enough to be typed: five groups of
//! five, such as `22Y9C-0A5...`, for one task without conditions, and a group
//! more for each further one.
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
//! further tasks              3 bytes each: kind, place of the name, how often
//! CRC-16                     2 bytes
//! ```
//!
//! That is 24 letters for one task, and the check symbol.

use super::{Assignment, Day, Set};
use crate::bank::Bank;
use crate::refusal::{Check, Refusal};
use crate::task::{Order, Task};
use crate::wire::{
    base32,
    bytes::{Reader, Writer},
    check,
};

/// The latest version. Each code is written in the first that has room for it.
///
/// - 1: one task
/// - 2: numbers to be worked out
/// - 3: further tasks
const VERSION: u8 = 3;

/// The version that came with further tasks.
const FURTHER: u8 = 3;

/// The letters of a code of one task, with the check symbol.
const LETTERS: usize = 25;

/// The letters of a group.
const GROUP: usize = 5;

/// The most tasks of a code that anybody would type: eight groups.
pub const MOST_TYPED_TASKS: usize = 4;

/// The letters of the longest code.
const MOST_LETTERS: usize = LETTERS + (MOST_TYPED_TASKS - 1) * GROUP;

impl Assignment {
    /// As a code that can be typed; none where it does not fit one: more than
    /// [`MOST_TYPED_TASKS`], conditions on a case, a preference card, a pass mark
    /// that is not a multiple of 5 from 25, more than three tries.
    pub fn typed(&self, bank: &Bank) -> Option<String> {
        let sets = self.tasks.iter().map(|set| kind(set, bank));
        let sets: Vec<_> = sets.collect::<Option<_>>()?;
        let (&(kind, name, times), further) = sets.split_first()?;
        if self.card.is_some() || self.bank != bank.version || sets.len() > MOST_TYPED_TASKS {
            return None;
        }
        let version = match further {
            [] => since(kind),
            _ => FURTHER,
        };
        let mut writer = Writer::default();
        writer
            .byte(version << 4 | kind)
            .two(self.bank.short())
            .byte(name)
            .byte(times)
            .four(self.seed)
            .two(self.due.map_or(0, |day| day.0))
            .byte(self.flags()?)
            .byte(self.title);
        for &(kind, name, times) in further {
            writer.byte(kind).byte(name).byte(times);
        }
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
        if text.len() > 4 * MOST_LETTERS {
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
        if !kept.len().is_multiple_of(GROUP) || !(LETTERS..=MOST_LETTERS).contains(&kept.len()) {
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
        read(before[0] >> 4, before[0] & 15, reader, bank)
            .filter(Self::sensible)
            .ok_or(Refusal::Damaged(Check::Sense))
    }

    /// Reads a link, a line of letters, or a code that was typed.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn read_any(text: &str, bank: &Bank) -> Result<Self, Refusal> {
        let text = text.trim();
        let letters = text.bytes().filter(|b| !base32::passed_over(*b)).count();
        let may_be_typed = letters <= MOST_LETTERS && !text.contains(['/', '#']);
        match Self::read(text, bank.version) {
            // The long form has the stronger sum: what passes it is no typed code.
            Err(Refusal::Foreign | Refusal::Damaged(_)) if may_be_typed => {
                Self::read_typed(text, bank)
            }
            read => read,
        }
    }
}

/// The version that came with a kind of task.
fn since(kind: u8) -> u8 {
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

fn read(version: u8, first: u8, mut reader: Reader<'_>, bank: &Bank) -> Option<Assignment> {
    let mut sets = vec![set(version, first, &mut reader, bank)?];
    let seed = reader.four()?;
    let due = Some(reader.two()?).filter(|&day| day > 0).map(Day);
    let flags = reader.byte()?;
    let title = reader.byte()?;
    while version >= FURTHER && !reader.0.is_empty() {
        let kind = reader.byte()?;
        sets.push(set(version, kind, &mut reader, bank)?);
    }
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
        tasks: sets,
    })
}

/// A task of a kind that a version knows, and how often it is set.
fn set(version: u8, kind: u8, reader: &mut Reader<'_>, bank: &Bank) -> Option<Set> {
    let place = usize::from(reader.byte()?);
    let times = reader.byte()?;
    let name = |names: &[String]| names.get(place).cloned();
    let task = match kind {
        _ if since(kind) > version => return None,
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
    Some(Set { task, times })
}

#[cfg(test)]
mod tests;
