//! The code of a hand-in.
//!
//! A response takes two bytes as a rule: one for a hint (1 bit), the kind of
//! answer (2 bits) and a place or a count below 31 (5 bits), one for the seconds.
//! What was typed or mixed stands behind a blank with a number of its own, in a
//! code of the second version.

use super::{HandIn, MOST_RESPONSES, made};
use crate::assignment::Seat;
use crate::bank::Version;
use crate::refusal::{Check, Refusal};
use crate::task::{Answer, Response};
use crate::wire::{
    base32,
    bytes::{Reader, Writer},
    envelope::{self, Kind},
};

const HINTED: u8 = 1 << 7;
const BLANK: u8 = 0;
const ONE: u8 = 1;
const SEVERAL: u8 = 2;
const NUMBER: u8 = 3;

/// What follows a blank that is none, from the second version on.
const TYPED: usize = 1;
const MIXED: usize = 2;

/// The most bytes of what is typed.
pub const MOST_TYPED: usize = 160;

/// Says that the value follows as a number of its own.
const FOLLOWS: u8 = 31;

impl HandIn {
    /// As bytes.
    pub fn bytes(&self) -> Vec<u8> {
        let mut body = Writer::default();
        body.four(self.assignment)
            .two(self.seat.0)
            .byte(self.attempt)
            .four(self.finished)
            .count(self.responses.len());
        for task in &self.responses {
            body.count(task.len());
            for response in task {
                write(response, &mut body);
            }
        }
        let mut all = self.responses.iter().flatten();
        let later = all.any(|it| matches!(it.answer, Answer::Typed(_) | Answer::Mixed(_)));
        let version = if later { 2 } else { 1 };
        envelope::seal_as(version, Kind::HandIn, self.bank, &body.0)
    }

    /// As letters, for a line of a file or behind a prefix of a link.
    pub fn letters(&self) -> String {
        base32::encode(&self.bytes())
    }

    /// As a link. The prefix ends in the fragment, so that nothing reaches a server.
    pub fn link(&self, prefix: &str) -> String {
        format!("{prefix}{}", self.letters())
    }

    /// Reads what a link or a line says, for whatever bank and assignment.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn read(line: &str) -> Result<Self, Refusal> {
        Self::from_bytes(&envelope::bytes(line)?)
    }

    /// Reads bytes, put together again from parts for instance.
    ///
    /// # Errors
    /// What is wrong with them.
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, Refusal> {
        let opened = envelope::open(bytes)?;
        if opened.kind != Kind::HandIn {
            return Err(Refusal::Foreign);
        }
        read_body(opened.body, opened.version, opened.bank).ok_or(Refusal::Damaged(Check::Sense))
    }
}

fn write(response: &Response, to: &mut Writer) {
    let hint = if response.hinted { HINTED } else { 0 };
    let mut head = |kind: u8, value: usize| match u8::try_from(value) {
        Ok(small) if small < FOLLOWS => {
            to.byte(hint | kind << 5 | small);
        }
        _ => {
            to.byte(hint | kind << 5 | FOLLOWS).count(value);
        }
    };
    match &response.answer {
        Answer::Blank => head(BLANK, 0),
        Answer::Options(taken) => {
            if let [one] = taken[..] {
                head(ONE, usize::from(one));
            } else {
                head(SEVERAL, taken.len());
                for place in taken {
                    to.number(u64::from(*place));
                }
            }
        }
        Answer::Number(value) => {
            head(NUMBER, 0);
            to.signed(*value);
        }
        Answer::Typed(text) => {
            head(BLANK, TYPED);
            to.text(text);
        }
        Answer::Mixed(mix) => {
            head(BLANK, MIXED);
            made::write(mix, to);
        }
    }
    to.number(u64::from(response.seconds));
}

fn read_body(body: &[u8], version: u8, bank: Version) -> Option<HandIn> {
    let mut reader = Reader(body);
    let assignment = reader.four()?;
    let seat = Seat(reader.two()?);
    let attempt = reader.byte()?;
    let finished = reader.four()?;
    let tasks = reader.count()?;
    let mut responses = Vec::new();
    let mut all = 0;
    for _ in 0..tasks {
        let count = reader.count()?;
        all += count;
        if all > MOST_RESPONSES {
            return None;
        }
        let task: Option<Vec<Response>> = (0..count).map(|_| read(&mut reader, version)).collect();
        responses.push(task?);
    }
    reader.end()?;
    Some(HandIn {
        bank,
        assignment,
        seat,
        attempt,
        finished,
        responses,
    })
}

fn read(reader: &mut Reader<'_>, version: u8) -> Option<Response> {
    let head = reader.byte()?;
    let value = match head & FOLLOWS {
        FOLLOWS => reader.narrow()?,
        small => usize::from(small),
    };
    let answer = match head >> 5 & 3 {
        BLANK => match (value, version) {
            (0, _) | (_, 1) => Answer::Blank,
            (TYPED, _) => {
                let text = reader.text()?;
                (text.len() <= MOST_TYPED).then(|| Answer::Typed(text.to_owned()))?
            }
            (MIXED, _) => Answer::Mixed(made::read(reader)?),
            _ => return None,
        },
        ONE => Answer::Options(vec![u16::try_from(value).ok()?]),
        SEVERAL => {
            // Each place takes at least one byte: a larger count is no count.
            if value > reader.0.len() {
                return None;
            }
            let taken: Option<Vec<u16>> = (0..value).map(|_| reader.narrow()).collect();
            Answer::Options(taken?)
        }
        _ => Answer::Number(reader.signed()?),
    };
    Some(Response {
        answer,
        seconds: reader.narrow()?,
        hinted: head & HINTED != 0,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn response() -> impl Strategy<Value = Response> {
        let answer = prop_oneof![
            Just(Answer::Blank),
            prop::collection::vec(any::<u16>(), 0..40).prop_map(Answer::Options),
            any::<i64>().prop_map(Answer::Number),
            "[0-9a-z ,.]{0,30}".prop_map(Answer::Typed),
            made::tests::made().prop_map(Answer::Mixed),
        ];
        (answer, any::<u32>(), any::<bool>()).prop_map(|(answer, seconds, hinted)| Response {
            answer,
            seconds,
            hinted,
        })
    }

    prop_compose! {
        fn hand_in()(
            bank: u32, assignment: u32, seat: u16, attempt: u8, finished: u32,
            responses in prop::collection::vec(prop::collection::vec(response(), 0..8), 0..6),
        ) -> HandIn {
            HandIn { bank: Version(bank), assignment, seat: Seat(seat), attempt, finished, responses }
        }
    }

    proptest! {
        #[test]
        fn what_was_handed_in_is_read(hand_in in hand_in()) {
            let link = hand_in.link("https://practice.example.org/#/hand-in/");
            prop_assert_eq!(HandIn::read(&link), Ok(hand_in));
        }

        #[test]
        fn a_wrong_letter_or_a_swap_is_caught(hand_in in hand_in(), place: prop::sample::Index, other in 0_usize..32) {
            let letters: Vec<char> = hand_in.letters().chars().collect();
            let place = place.index(letters.len() - 1);
            let mut wrong = letters.clone();
            wrong[place] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ".chars().nth(other).unwrap();
            let mut swapped = letters.clone();
            swapped.swap(place, place + 1);
            for tried in [wrong, swapped] {
                if tried != letters {
                    let text: String = tried.into_iter().collect();
                    prop_assert!(HandIn::read(&text).is_err());
                }
            }
        }

        #[test]
        fn anything_can_be_read(text: String, bytes: Vec<u8>) {
            let _ = HandIn::read(&text);
            let _ = HandIn::from_bytes(&bytes);
            for version in [1, 2] {
                let sealed = envelope::seal_as(version, Kind::HandIn, Version(0), &bytes);
                let _ = HandIn::from_bytes(&sealed);
            }
        }
    }

    #[test]
    fn sixty_answers_with_their_times_fit_one_symbol() {
        let answered = Response {
            answer: Answer::Options(vec![3]),
            seconds: 45,
            hinted: false,
        };
        let hand_in = HandIn {
            bank: Version(0xcbf4_3926),
            assignment: 7,
            seat: Seat(12),
            attempt: 1,
            finished: 29_000_000,
            responses: vec![vec![answered; 60]],
        };
        assert!(hand_in.bytes().len() <= 160, "{}", hand_in.bytes().len());
    }
}
