//! The form of an assignment that a link, a symbol or a file carries: all of it.

use super::{Assignment, Day, Set};
use crate::bank::Version;
use crate::refusal::{Check, Refusal};
use crate::task::{Order, Task};
use crate::wire::{
    base32,
    bytes::{Reader, Writer, present},
    envelope::{self, Kind},
};
use catalogue::cases::Level;

const HINTS: u8 = 1;
const ALIKE: u8 = 2;

impl Assignment {
    /// As bytes.
    pub fn bytes(&self) -> Vec<u8> {
        let mut body = Writer::default();
        let flags = if self.hints { HINTS } else { 0 } | if self.alike { ALIKE } else { 0 };
        body.byte(self.title)
            .four(self.seed)
            // Day 0 lies in the past of every assignment, and stands for none.
            .two(self.due.map_or(0, |day| day.0))
            .byte(self.pass_mark)
            .byte(self.tries)
            .byte(flags)
            .maybe(self.card.as_deref())
            .count(self.tasks.len());
        for set in &self.tasks {
            body.byte(set.times);
            write_task(&set.task, &mut body);
        }
        let version = self.tasks.iter().map(|set| version(&set.task)).max();
        envelope::seal_as(version.unwrap_or(1), Kind::Assignment, self.bank, &body.0)
    }

    /// As letters, for a line of a file or behind a prefix of a link.
    pub fn letters(&self) -> String {
        base32::encode(&self.bytes())
    }

    /// As a link. The prefix ends in the fragment, so that nothing reaches a server.
    pub fn link(&self, prefix: &str) -> String {
        format!("{prefix}{}", self.letters())
    }

    /// Reads what a link, a line or the only line of a file says.
    ///
    /// # Errors
    /// What is wrong with it, [`Refusal::OtherBank`] where it is for another
    /// state of what is taught than `bank`.
    pub fn read(line: &str, bank: Version) -> Result<Self, Refusal> {
        Self::from_bytes(&envelope::bytes(line)?, bank)
    }

    /// Reads bytes, put together again from parts for instance.
    ///
    /// # Errors
    /// As [`read`](Self::read).
    pub fn from_bytes(bytes: &[u8], bank: Version) -> Result<Self, Refusal> {
        let opened = envelope::open(bytes)?;
        if opened.kind != Kind::Assignment {
            return Err(Refusal::Foreign);
        }
        if opened.bank != bank {
            return Err(Refusal::OtherBank);
        }
        read_body(opened.body, bank)
            .filter(|read| {
                read.tasks
                    .iter()
                    .all(|set| version(&set.task) <= opened.version)
            })
            .filter(Self::sensible)
            .ok_or(Refusal::Damaged(Check::Sense))
    }
}

fn read_body(body: &[u8], bank: Version) -> Option<Assignment> {
    let mut reader = Reader(body);
    let title = reader.byte()?;
    let seed = reader.four()?;
    let due = Some(reader.two()?).filter(|&day| day > 0).map(Day);
    let pass_mark = reader.byte()?;
    let tries = reader.byte()?;
    let flags = reader.byte()?;
    let card = present(reader.text()?);
    let count = reader.count()?;
    let mut tasks = Vec::new();
    for _ in 0..count {
        let times = reader.byte()?;
        let task = read_task(&mut reader)?;
        tasks.push(Set { task, times });
    }
    reader.end()?;
    Some(Assignment {
        bank,
        title,
        seed,
        due,
        pass_mark,
        tries,
        hints: flags & HINTS != 0,
        alike: flags & ALIKE != 0,
        card,
        tasks,
    })
}

/// The version of the form that has room for a task.
fn version(task: &Task) -> u8 {
    match task {
        Task::Mix { usage: Some(_), .. } | Task::Number(_) => 2,
        _ => 1,
    }
}

fn write_task(task: &Task, to: &mut Writer) {
    match task {
        Task::Case(order) => to
            .byte(0)
            .maybe(order.frame.as_deref())
            .maybe(order.booked.as_deref())
            .maybe(order.competency.as_deref())
            .byte(match order.level {
                None => 0,
                Some(Level::Basic) => 1,
                Some(Level::Core) => 2,
                Some(Level::Demanding) => 3,
            })
            .maybe(order.with.as_deref()),
        Task::Reading => to.byte(1),
        Task::Mix {
            material,
            usage: None,
        } => to.byte(2).text(material),
        Task::Question(family) => to.byte(3).text(family),
        Task::Form {
            blueprint,
            questions,
        } => to.byte(4).text(blueprint).number(u64::from(*questions)),
        Task::Mix {
            material,
            usage: Some(usage),
        } => to.byte(5).text(material).text(usage),
        Task::Number(family) => to.byte(6).text(family),
    };
}

fn read_task(reader: &mut Reader<'_>) -> Option<Task> {
    Some(match reader.byte()? {
        0 => Task::Case(Order {
            frame: present(reader.text()?),
            booked: present(reader.text()?),
            competency: present(reader.text()?),
            level: match reader.byte()? {
                0 => None,
                1 => Some(Level::Basic),
                2 => Some(Level::Core),
                3 => Some(Level::Demanding),
                _ => return None,
            },
            with: present(reader.text()?),
        }),
        1 => Task::Reading,
        2 => Task::Mix {
            material: reader.text()?.to_owned(),
            usage: None,
        },
        3 => Task::Question(reader.text()?.to_owned()),
        4 => Task::Form {
            blueprint: reader.text()?.to_owned(),
            questions: reader.narrow()?,
        },
        5 => Task::Mix {
            material: reader.text()?.to_owned(),
            usage: Some(reader.text()?.to_owned()),
        },
        6 => Task::Number(reader.text()?.to_owned()),
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::super::tests::example;
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_link_comes_back() {
        let set = example();
        let link = set.link("https://practice.example.org/#/set/");
        assert_eq!(Assignment::read(&link, set.bank), Ok(set.clone()));
        assert_eq!(
            Assignment::read(&set.letters().to_lowercase(), set.bank),
            Ok(set)
        );
    }

    #[test]
    fn each_refusal_has_its_name() {
        let set = example();
        let letters = set.letters();
        let read = |text: &str| Assignment::read(text, set.bank);
        for (text, refusal) in [
            ("", Refusal::Foreign),
            ("https://example.org/page", Refusal::Foreign),
            (&letters[..40], Refusal::Damaged(Check::Checksum)),
            (
                &format!("{}!", &letters[..39]),
                Refusal::Damaged(Check::Letters),
            ),
            (&"2".repeat(70_000), Refusal::TooLarge),
        ] {
            assert_eq!(read(text), Err(refusal), "{text:.60}");
        }
        let elsewhere = Assignment::read(&letters, Version(1));
        assert_eq!(elsewhere, Err(Refusal::OtherBank));
        let mut newer = Writer::default();
        newer.raw(&[0x31, 1, 2, 3, 4, 5]);
        let sum = crate::wire::check::crc32(&newer.0);
        newer.four(sum);
        assert_eq!(read(&base32::encode(&newer.0)), Err(Refusal::Newer(3)));
    }

    #[test]
    fn every_wrong_letter_and_every_swap_of_neighbours_is_caught() {
        let set = example();
        let letters = set.letters().into_bytes();
        let mut tried = letters.clone();
        for place in 0..letters.len() {
            for other in b"0123456789ABCDEFGHJKMNPQRSTVWXYZ" {
                if *other == letters[place] {
                    continue;
                }
                tried[place] = *other;
                let text = std::str::from_utf8(&tried).unwrap();
                assert!(Assignment::read(text, set.bank).is_err(), "{text}");
            }
            tried[place] = letters[place];
            if place > 0 && letters[place] != letters[place - 1] {
                tried.swap(place, place - 1);
                let text = std::str::from_utf8(&tried).unwrap();
                assert!(Assignment::read(text, set.bank).is_err(), "{text}");
                tried.swap(place, place - 1);
            }
        }
    }

    proptest! {
        #[test]
        fn anything_can_be_read(text: String, bytes: Vec<u8>) {
            let _ = Assignment::read(&text, Version(0));
            let _ = Assignment::from_bytes(&bytes, Version(0));
            let sealed = envelope::seal(Kind::Assignment, Version(0), &bytes);
            if let Ok(read) = Assignment::from_bytes(&sealed, Version(0)) {
                prop_assert_eq!(Assignment::from_bytes(&read.bytes(), Version(0)), Ok(read));
            }
        }
    }
}
