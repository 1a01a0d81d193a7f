//! Hand-ins of every kind of task made to do harm: valid ones that were changed
//! and sealed again, and answers that no page would give. Nothing panics, nothing
//! hangs, and what cannot have been given is named.

use super::{
    doing::{Taught, done},
    families, handed_in, mixes_of, numbers_of, set,
};
use crate::hostile::{change, resealed, spelled};
use catalogue::kinetics::{Area, Surface};
use catalogue::quantity::Milli;
use class::assignment::{Assignment, Seat};
use class::handin::{HandIn, Inbox};
use class::task::{Answer, Draw, Grader, Made, Response, Task, TaskId};
use clinic::mixing::{Action, Millis, Replay, Room, Stroke, Vigour};
use proptest::{collection::vec, prelude::*};
use std::rc::Rc;

/// The seat that hands in.
const SEAT: u16 = 5;

thread_local! {
    static TAUGHT: Taught = Taught::new();
}

/// Tasks that are quickly drawn, a few of each kind that is made, typed or taken.
fn tasks(taught: &Taught, at: usize) -> Vec<Task> {
    let one = |all: Vec<Task>| all[at % all.len()].clone();
    vec![
        one(mixes_of(&taught.clinic)),
        one(numbers_of()),
        one(families()),
    ]
}

fn handed(taught: &Taught, set: &Assignment) -> HandIn {
    let slots = set.slots();
    let one = |slot: &class::assignment::Slot| done(taught, &slot.task, set.draw(Seat(SEAT), slot));
    let done: Vec<_> = slots.iter().map(one).collect();
    handed_in(set, SEAT, &done)
}

/// Any action, with sizes up to the largest that there are.
fn action() -> impl Strategy<Value = Action> {
    let time = prop_oneof![
        4 => 0..90_000_u32,
        1 => any::<u32>(),
        1 => Just(u32::MAX),
    ];
    let size = prop_oneof![
        4 => 0..5_000_i32,
        1 => any::<i32>(),
        1 => Just(i32::MAX),
        1 => Just(i32::MIN),
    ];
    let size = size.prop_map(Milli);
    (0..15_u8, 0..=100_u8, time, size.clone(), size).prop_map(|(kind, hard, time, one, other)| {
        let lasts = Millis(time);
        match kind {
            0 => Action::Wait(lasts),
            1 => Action::BringIn(one.into()),
            2 => Action::DispensePowder(one.into()),
            3 => Action::DispenseLiquid(one.into()),
            4 => Action::LayOut {
                surface: [Surface::Pad, Surface::Slab, Surface::Bowl][usize::from(hard % 3)],
                temperature: one.into(),
            },
            5 => Action::WaterAt(one.into()),
            6 => Action::Test,
            7 => Action::AddPowder(one.into()),
            8 => Action::AddLiquid(one.into()),
            9 => Action::DrawOff(one.into()),
            10 => Action::Cure(lasts),
            11 => Action::Discard,
            12 => Action::HandOver {
                ready: one.into(),
                placing: other.into(),
            },
            more => Action::Spatulate {
                stroke: Stroke {
                    vigour: Vigour::per_cent(hard),
                    area: if more == 13 { Area::Small } else { Area::Wide },
                },
                lasts,
            },
        }
    })
}

/// An answer of any kind, whatever was asked.
fn answer() -> impl Strategy<Value = Answer> {
    prop_oneof![
        Just(Answer::Blank),
        vec(0..12_u16, 0..8).prop_map(Answer::Options),
        vec(any::<u16>(), 0..300).prop_map(Answer::Options),
        any::<i64>().prop_map(Answer::Number),
        ".{0,60}".prop_map(Answer::Typed),
        "[-+]?[0-9.,/: ]{0,40}(mg|mL|kg|%)?".prop_map(Answer::Typed),
        (any::<u16>(), vec(action(), 0..6)).prop_map(|(version, actions)| Answer::Mixed(Made {
            version,
            room: Room::usual(),
            actions,
        })),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(if cfg!(debug_assertions) { 150 } else { 2000 }))]

    #[test]
    fn a_changed_hand_in_of_new_kinds_is_graded_or_named(
        at in 0..40_usize, changes in vec(change(), 1..4),
    ) {
        TAUGHT.with(|taught| {
            let graders = taught.graders();
            let set = set(tasks(taught, at), 7, at % 2 == 0);
            let bytes = resealed(&handed(taught, &set).bytes(), &changes);
            if let Ok(read) = HandIn::from_bytes(&bytes) {
                prop_assert_eq!(HandIn::from_bytes(&read.bytes()), Ok(read));
            }
            let mut inbox = Inbox::new(&set, &graders);
            let outcome = inbox.read(&spelled(&bytes));
            prop_assert!(outcome.to_string().ends_with('.'), "{outcome}");
            for row in &inbox.table().rows {
                prop_assert_eq!(row.cells.len(), 3);
            }
            Ok(())
        })?;
    }

    #[test]
    fn a_mix_changed_within_is_made_again_or_refused(
        at in 0..40_usize, put in vec((any::<prop::sample::Index>(), action()), 1..4), last: bool,
    ) {
        TAUGHT.with(|taught| {
            let graders = taught.graders();
            let set = set(vec![tasks(taught, at).remove(0)], 7, false);
            let mut hand_in = handed(taught, &set);
            let Answer::Mixed(made) = &mut hand_in.responses[0][0].answer else {
                panic!("a mix")
            };
            for (place, action) in put {
                // Before the hand-over, or anywhere.
                let most = made.actions.len() + usize::from(!last);
                made.actions.insert(place.index(most), action);
            }
            let sent = hand_in.letters();
            let outcome = Inbox::new(&set, &graders).read(&sent);
            prop_assert!(outcome.to_string().ends_with('.'), "{outcome}");
            Ok(())
        })?;
    }

    #[test]
    fn any_answer_to_any_task_is_graded_or_refused(
        at in 0..40_usize, seed: u64, alike: bool, answer in answer(), hinted: bool,
    ) {
        TAUGHT.with(|taught| {
            let graders = taught.graders();
            let mut all = tasks(taught, at);
            all.extend([Task::Reading, Task::Case(class::task::Order::default())]);
            let response = Response { answer, seconds: u32::MAX, hinted };
            for task in all {
                let id = TaskId { task: Rc::new(task), part: 0 };
                let draw = Draw { alike, ..Draw::once(seed) };
                let Some(graded) = graders.grade(&id, draw, &response) else { continue };
                prop_assert!(graded.per_cent <= 100);
                let offered = graded.item.offered.len();
                prop_assert!(graded.taken.iter().all(|it| usize::from(*it) < offered));
            }
            Ok(())
        })?;
    }
}

/// The longest mix that a hand-in has room for, of the longest that is followed.
#[test]
fn the_longest_mix_is_soon_graded() {
    TAUGHT.with(|taught| {
        let set = set(vec![tasks(taught, 0).remove(0)], 7, false);
        let mut hand_in = handed(taught, &set);
        let Answer::Mixed(made) = &mut hand_in.responses[0][0].answer else {
            panic!("a mix")
        };
        assert_eq!(made.version, Replay::VERSION);
        let strokes = [Vigour::FIRM, Vigour::GENTLE].map(|vigour| Action::Spatulate {
            stroke: Stroke {
                vigour,
                area: Area::Wide,
            },
            lasts: Millis(4_300),
        });
        let end = made.actions.len() - 1;
        let more = strokes.into_iter().cycle().take(4_900);
        made.actions.splice(end..end, more);
        let graders = taught.graders();
        let outcome = Inbox::new(&set, &graders).read(&hand_in.letters());
        assert!(outcome.to_string().ends_with('.'), "{outcome}");
    });
}
