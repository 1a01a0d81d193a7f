//! Codes made to do harm: valid ones that were changed and sealed again, so
//! that no checksum stands in the way of what reads their insides. Nothing
//! panics, nothing hangs, and nothing grows beyond what was sent.

use crate::made::{Key, assignment, hand_in};
use class::{
    assignment::{Assignment, Set},
    checksum,
    handin::{HandIn, Inbox, MOST_RESPONSES, Outcome},
    qr::{Joiner, split},
    roster::{self, Roster},
    task::{Order, Task},
};
use proptest::{collection::vec, prelude::*, sample::Index};
use std::sync::LazyLock;

const PREFIX: &str = "https://practice.example.org/#/hand-in/";

/// A change of bytes.
#[derive(Clone, Debug)]
pub enum Change {
    /// Another byte at a place.
    Set(Index, u8),
    /// The largest number at a place, as a length would be.
    Huge(Index),
    /// Bytes taken out from a place on.
    Cut(Index, u8),
    /// Bytes put in.
    Put(Index, Vec<u8>),
    /// What stands before a place, once more.
    Double(Index),
}

pub fn change() -> impl Strategy<Value = Change> {
    prop_oneof![
        (any::<Index>(), any::<u8>()).prop_map(|(at, byte)| Change::Set(at, byte)),
        any::<Index>().prop_map(Change::Huge),
        (any::<Index>(), any::<u8>()).prop_map(|(at, count)| Change::Cut(at, count)),
        (any::<Index>(), vec(any::<u8>(), 0..12)).prop_map(|(at, bytes)| Change::Put(at, bytes)),
        any::<Index>().prop_map(Change::Double),
    ]
}

fn changed(bytes: &[u8], changes: &[Change]) -> Vec<u8> {
    let mut bytes = bytes.to_vec();
    for change in changes {
        let at = |index: &Index| index.index(bytes.len() + 1);
        match change {
            Change::Set(index, byte) => {
                let at = at(index);
                bytes.splice(at..(at + 1).min(bytes.len()), [*byte]);
            }
            Change::Huge(index) => {
                let at = at(index);
                let number = [255, 255, 255, 255, 255, 255, 255, 255, 255, 1];
                bytes.splice(at..(at + 1).min(bytes.len()), number);
            }
            Change::Cut(index, count) => {
                let at = at(index);
                let end = (at + usize::from(*count)).min(bytes.len());
                bytes.drain(at..end);
            }
            Change::Put(index, put) => {
                let at = at(index);
                bytes.splice(at..at, put.iter().copied());
            }
            Change::Double(index) => {
                let at = at(index);
                bytes.extend_from_within(..at);
            }
        }
    }
    bytes
}

/// Bytes with their checksum put right again, as the envelope has it: the last
/// four bytes, the high one first.
pub fn resealed(sealed: &[u8], changes: &[Change]) -> Vec<u8> {
    let mut bytes = changed(&sealed[..sealed.len() - 4], changes);
    let sum = checksum(&bytes);
    bytes.extend(sum.to_be_bytes());
    bytes
}

/// An assignment that has one of everything.
fn full() -> Assignment {
    let order = Order {
        frame: Some("deep-caries".into()),
        booked: Some("amalgam".into()),
        competency: Some("set-up".into()),
        level: None,
        with: Some("latex-allergy".into()),
    };
    let tasks = [
        Task::Case(order),
        Task::Reading,
        Task::Mix {
            material: "zinc-oxide".into(),
            usage: Some("base".into()),
        },
        Task::Question("what-is-missing".into()),
        Task::Form {
            blueprint: "all".into(),
            questions: 300,
        },
    ];
    let tasks = tasks.into_iter().map(|task| Set { task, times: 2 });
    Assignment {
        card: Some("name = \"Dam always\"".into()),
        tasks: tasks.collect(),
        ..assignment(1)
    }
}

/// A long hand-in in parts; making symbols takes a while, so it is done once.
static PARTS: LazyLock<Vec<Vec<u8>>> = LazyLock::new(|| {
    let sent = hand_in(&assignment(300), 12, &"ABCD".repeat(75));
    let parts = split(PREFIX, &sent.bytes()).expect("it fits");
    parts.iter().map(|part| bytes_of(part)).collect()
});

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn a_changed_assignment_is_read_or_refused(changes in vec(change(), 0..4)) {
        let set = full();
        let bytes = resealed(&set.bytes(), &changes);
        if let Ok(read) = Assignment::from_bytes(&bytes, set.bank) {
            prop_assert!(read.slots().len() <= 64 * 100);
            prop_assert_eq!(Assignment::from_bytes(&read.bytes(), set.bank), Ok(read));
        }
    }

    #[test]
    fn a_changed_hand_in_is_read_or_refused(changes in vec(change(), 0..4)) {
        let set = assignment(4);
        let sent = hand_in(&set, 12, "AB.D");
        let bytes = resealed(&sent.bytes(), &changes);
        if let Ok(read) = HandIn::from_bytes(&bytes) {
            prop_assert!(read.responses.len() <= bytes.len());
            prop_assert!(read.responses.iter().map(Vec::len).sum::<usize>() <= MOST_RESPONSES);
            prop_assert_eq!(HandIn::from_bytes(&read.bytes()), Ok(read));
        }
    }

    #[test]
    fn a_changed_hand_in_is_graded_or_named(changes in vec(change(), 1..4)) {
        let set = assignment(4);
        let key = Key::new("AAAA", true);
        let mut inbox = Inbox::new(&set, &key);
        let bytes = resealed(&hand_in(&set, 12, "AB.D").bytes(), &changes);
        let outcome = inbox.read(&spelled(&bytes));
        prop_assert!(outcome.to_string().ends_with('.'));
        if let Outcome::Accepted(_) = outcome {
            prop_assert!(inbox.table().rows[0].cells.len() == 4);
        }
    }

    #[test]
    fn changed_parts_are_joined_or_refused(changes in vec((any::<Index>(), change()), 0..4), turn: Index) {
        let mut parts = PARTS.clone();
        for (which, change) in changes {
            let at = which.index(parts.len());
            parts[at] = resealed(&parts[at], &[change]);
        }
        let turn = turn.index(parts.len());
        parts.rotate_left(turn);
        let mut joiner = Joiner::default();
        for part in &parts {
            if let Ok(joined) = joiner.add(part) {
                prop_assert!((1..=joined.of).contains(&joined.number) && joined.missing < joined.of);
                if let Some(whole) = joined.whole {
                    prop_assert!(whole.len() <= parts.iter().map(Vec::len).sum());
                }
            }
        }
    }

    #[test]
    fn a_changed_roster_is_read_or_refused(changes in vec(change(), 0..4)) {
        let mut roster = Roster::default();
        for seat in [1, 7, u16::MAX] {
            roster.set(class::assignment::Seat(seat), "By the window, left \u{1f9b7}");
        }
        let text = roster::write(&roster);
        let end = text.rfind("end ").expect("it ends");
        let mut bytes = changed(&text.as_bytes()[..end], &changes);
        let lines = bytes.split(|byte| *byte == b'\n').count().saturating_sub(2);
        let sum = checksum(&bytes);
        bytes.extend(format!("end {lines} {sum:08x}\n").bytes());
        if let Ok(read) = roster::read(&bytes) {
            prop_assert_eq!(roster::read(roster::write(&read).as_bytes()), Ok(read));
        }
    }

    #[test]
    fn any_line_has_an_outcome(line in prop_oneof![".{0,120}", "[0-9A-HJKMNP-TV-Z#/:-]{0,200}"]) {
        let set = assignment(4);
        let key = Key::new("AAAA", false);
        let outcome = Inbox::new(&set, &key).read(&line);
        prop_assert!(!matches!(outcome, Outcome::Accepted(_)));
        prop_assert!(outcome.to_string().ends_with('.'));
    }
}

/// The letters of a hand-in with these bytes, of the bank of the tests: as its only part, bytes come in whatever they are.
pub fn spelled(bytes: &[u8]) -> String {
    let mut part = vec![0x13, 0xcb, 0xf4, 0x39, 0x26, 1, 1];
    part.extend(checksum(bytes).to_be_bytes());
    part.extend(bytes);
    let sum = checksum(&part);
    part.extend(sum.to_be_bytes());
    letters(&part)
}

/// Bytes as letters, by the table of Crockford's base 32, written a second time.
fn letters(bytes: &[u8]) -> String {
    let bits: Vec<u8> = bytes
        .iter()
        .flat_map(|byte| (0..8).rev().map(move |at| byte >> at & 1))
        .collect();
    let letter = |five: &[u8]| {
        let value = (0..5).fold(0, |value, at| {
            value << 1 | five.get(at).copied().unwrap_or(0)
        });
        char::from(b"0123456789ABCDEFGHJKMNPQRSTVWXYZ"[usize::from(value)])
    };
    bits.chunks(5).map(letter).collect()
}

/// Letters as bytes.
fn bytes_of(letters: &str) -> Vec<u8> {
    let bits: Vec<u8> = letters
        .bytes()
        .flat_map(|letter| {
            let all = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";
            let value = all.iter().position(|it| *it == letter).expect("a letter");
            (0..5).rev().map(move |at| u8::from(value >> at & 1 == 1))
        })
        .collect();
    let whole = bits.chunks_exact(8);
    whole
        .map(|byte| byte.iter().fold(0, |value, bit| value << 1 | bit))
        .collect()
}
