//! What a school's system keeps of a run between two sittings.

use crate::handin::HandIn;
use crate::refusal::Refusal;
use crate::task::Answer;
use std::collections::BTreeSet;

/// Stands between the hand-in and the tasks that are closed: no code has it.
const CLOSED: char = ';';

/// A run that is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// What was answered so far.
    pub hand_in: HandIn,
    /// The tasks, by their places, that were handed in though something in them
    /// was left open: what was answered does not tell that they are at their end.
    pub closed: BTreeSet<u16>,
}

impl Kept {
    /// A run, with the places of the tasks that are at their end.
    pub fn new(hand_in: HandIn, finished: impl IntoIterator<Item = u16>) -> Self {
        let open = |place: &u16| {
            let given = hand_in.responses.get(usize::from(*place));
            given.is_none_or(|all| all.iter().any(|it| it.answer == Answer::Blank))
        };
        let closed = finished.into_iter().filter(open).collect();
        Self { hand_in, closed }
    }

    /// In letters that every system keeps.
    pub fn letters(&self) -> String {
        let mut letters = self.hand_in.letters();
        for (nth, place) in self.closed.iter().enumerate() {
            letters.push(if nth == 0 { CLOSED } else { ',' });
            letters.push_str(&place.to_string());
        }
        letters
    }

    /// Reads what a system kept. A place that cannot be read is passed over, so
    /// that its task opens again.
    ///
    /// # Errors
    /// What is wrong with the hand-in.
    pub fn read(letters: &str) -> Result<Self, Refusal> {
        let (hand_in, closed) = letters.split_once(CLOSED).unwrap_or((letters, ""));
        Ok(Self {
            hand_in: HandIn::read(hand_in)?,
            closed: closed.split(',').filter_map(|it| it.parse().ok()).collect(),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assignment::Seat;
    use crate::bank::Version;
    use crate::task::Response;
    use proptest::prelude::*;

    fn hand_in(tasks: &[&[bool]]) -> HandIn {
        let response = |given: &bool| Response {
            answer: if *given {
                Answer::Options(vec![1])
            } else {
                Answer::Blank
            },
            ..Response::default()
        };
        let task = |parts: &&[bool]| parts.iter().map(response).collect();
        HandIn {
            bank: Version(7),
            assignment: 5,
            seat: Seat(3),
            attempt: 1,
            finished: 9,
            responses: tasks.iter().map(task).collect(),
        }
    }

    #[test]
    fn only_what_was_left_open_has_to_be_said() {
        let whole = hand_in(&[&[true, true], &[true]]);
        let kept = Kept::new(whole.clone(), [0, 1]);
        assert_eq!(kept.letters(), whole.letters());
        let open = hand_in(&[&[true, false], &[true], &[]]);
        let kept = Kept::new(open.clone(), [0, 1]);
        assert_eq!(kept.letters(), format!("{};0", open.letters()));
    }

    proptest! {
        #[test]
        fn what_is_kept_is_read_again(
            tasks in prop::collection::vec(prop::collection::vec(any::<bool>(), 1..5), 1..6),
            finished in prop::collection::btree_set(0_u16..6, 0..6),
        ) {
            let tasks: Vec<&[bool]> = tasks.iter().map(Vec::as_slice).collect();
            let finished = finished.into_iter().filter(|it| usize::from(*it) < tasks.len());
            let kept = Kept::new(hand_in(&tasks), finished);
            prop_assert_eq!(Kept::read(&kept.letters()), Ok(kept));
        }

        #[test]
        fn anything_is_read_or_refused(text in ".{0,60}", near in "[0-9A-Z;,]{0,200}") {
            let _ = Kept::read(&text);
            let _ = Kept::read(&near);
        }

        #[test]
        fn a_torn_list_keeps_what_was_answered(tail in "[ -~]{0,20}") {
            let hand_in = hand_in(&[&[true, false]]);
            let kept = Kept::read(&format!("{};{tail}", hand_in.letters()));
            prop_assert_eq!(kept.map(|it| it.hand_in), Ok(hand_in));
        }
    }
}
