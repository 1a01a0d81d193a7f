//! What an instructor sets. It holds no free text and no name: a title is a
//! number, a student a seat. Each seat draws its own cases and questions, so
//! that neighbours cannot copy.

mod day;
mod long;
mod typed;

pub use day::Day;
pub use typed::MOST_TYPED_TASKS;

use crate::bank::Version;
use crate::task::{Draw, Task};
use clinic::case::Seed;
use std::rc::Rc;

/// The most tasks that one assignment lists.
pub const MOST_TASKS: usize = 64;

/// The most times that one task is set.
pub const MOST_TIMES: u8 = 100;

/// The most bytes of a preference card in its text form.
pub const MOST_CARD: usize = 8 * 1024;

/// The most bytes of an id.
const MOST_ID: usize = 80;

/// A student's place in the class. Who sits there, only the roster on the
/// instructor's device knows. Seat 0 is the instructor's own, to look at what was set.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Seat(pub u16);

/// A task and how often it is set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Set {
    /// The task.
    pub task: Task,
    /// How often, from 1 to [`MOST_TIMES`].
    pub times: u8,
}

/// What is set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Assignment {
    /// The bank that it is drawn from.
    pub bank: Version,
    /// Its title, a number that the class knows it by; 0 where it has none.
    pub title: u8,
    /// What every seat's chance starts from.
    pub seed: u32,
    /// The last day on which it can be handed in.
    pub due: Option<Day>,
    /// The share of right answers that passes, in per cent, up to 100.
    pub pass_mark: u8,
    /// How often it may be tried; 0 for as often as one likes.
    pub tries: u8,
    /// Whether hints may be looked at.
    pub hints: bool,
    /// Whether every seat draws the same, so that items can be compared.
    pub alike: bool,
    /// The preference card that cases are played with, in its text form.
    pub card: Option<String>,
    /// What is to be done.
    pub tasks: Vec<Set>,
}

/// One task of an assignment, to be done once.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slot {
    /// Its place in the assignment, from 0.
    pub place: u16,
    /// Which of the times it is that the task is set, from 0.
    pub nth: u16,
    /// The task.
    pub task: Rc<Task>,
}

impl Assignment {
    /// What is to be done, one after another.
    pub fn slots(&self) -> Vec<Slot> {
        self.tasks
            .iter()
            .flat_map(|set| {
                let task = Rc::new(set.task.clone());
                (0..u16::from(set.times)).map(move |nth| (nth, task.clone()))
            })
            .zip(0..)
            .map(|((nth, task), place)| Slot { place, nth, task })
            .collect()
    }

    /// The seed by which a seat draws the task at a place. The same arguments
    /// give the same seed for ever.
    pub fn seed(&self, seat: Seat, place: u16) -> u64 {
        let seat = if self.alike { 0 } else { seat.0 };
        let mixed = u64::from(self.seed) << 32 | u64::from(seat) << 16 | u64::from(place);
        Seed::new(mixed).bits()
    }

    /// By what a seat draws one of its tasks.
    pub fn draw(&self, seat: Seat, slot: &Slot) -> Draw {
        Draw {
            seed: self.seed(seat, slot.place),
            of_set: self.seed(seat, slot.place - slot.nth.min(slot.place)),
            nth: slot.nth,
            alike: self.alike,
        }
    }

    /// What tells it from every other assignment: the checksum of all it says.
    pub fn id(&self) -> u32 {
        crate::wire::check::crc32(&self.bytes())
    }

    /// What it is called: `Assignment 7`.
    pub fn name(&self) -> String {
        match self.title {
            0 => "Assignment".into(),
            number => format!("Assignment {number}"),
        }
    }

    /// The share of right answers that passes, out of `items`, rounded up to a whole item.
    pub fn cut(&self, items: usize) -> usize {
        (items * usize::from(self.pass_mark)).div_ceil(100)
    }

    /// Whether the numbers are ones that an assignment can have.
    fn sensible(&self) -> bool {
        let id_fits = |id: &str| id.len() <= MOST_ID;
        let fits = |task: &Task| match task {
            Task::Case(order) => [&order.frame, &order.booked, &order.competency, &order.with]
                .into_iter()
                .flatten()
                .all(|id| id_fits(id)),
            Task::Reading => true,
            Task::Mix { material, usage } => {
                id_fits(material) && usage.as_ref().is_none_or(|id| id_fits(id))
            }
            Task::Question(id) | Task::Number(id) => id_fits(id),
            Task::Form { blueprint, .. } => id_fits(blueprint),
        };
        self.pass_mark <= 100
            && self.tasks.len() <= MOST_TASKS
            && self
                .tasks
                .iter()
                .all(|set| (1..=MOST_TIMES).contains(&set.times) && fits(&set.task))
            && self
                .card
                .as_ref()
                .is_none_or(|card| card.len() <= MOST_CARD)
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::task::Order;

    pub(crate) fn example() -> Assignment {
        Assignment {
            bank: Version(0xcbf4_3926),
            title: 7,
            seed: 42,
            due: Some(Day(20_500)),
            pass_mark: 75,
            tries: 2,
            hints: false,
            alike: false,
            card: Some("name = \"Dam always\"".into()),
            tasks: vec![
                Set {
                    task: Task::Case(Order {
                        frame: Some("deep-caries".into()),
                        ..Order::default()
                    }),
                    times: 2,
                },
                Set {
                    task: Task::Reading,
                    times: 1,
                },
                Set {
                    task: Task::Form {
                        blueprint: "all".into(),
                        questions: 20,
                    },
                    times: 1,
                },
            ],
        }
    }

    #[test]
    fn neighbours_draw_differently_unless_all_draw_alike() {
        let mut set = example();
        assert_ne!(set.seed(Seat(1), 0), set.seed(Seat(2), 0));
        assert_ne!(set.seed(Seat(1), 0), set.seed(Seat(1), 1));
        set.alike = true;
        assert_eq!(set.seed(Seat(1), 0), set.seed(Seat(2), 0));
        assert_ne!(set.seed(Seat(1), 0), set.seed(Seat(1), 1));
    }

    #[test]
    fn slots_follow_the_tasks() {
        let slots = example().slots();
        assert_eq!(slots.len(), 4);
        assert_eq!(slots[0].task, slots[1].task);
        assert_eq!(
            slots.iter().map(|s| s.place).collect::<Vec<_>>(),
            [0, 1, 2, 3]
        );
    }

    #[test]
    fn the_cut_is_a_whole_item() {
        let set = example();
        for (items, cut) in [(0, 0), (4, 3), (5, 4), (20, 15), (60, 45)] {
            assert_eq!(set.cut(items), cut, "{items}");
        }
    }
}
