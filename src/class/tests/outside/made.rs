//! Assignments, keys and classes made for the tests.

use class::assignment::{Assignment, Day, Seat, Set};
use class::bank::Version;
use class::handin::{HandIn, Table};
use class::task::{
    Answer, Draw, Graded, Grader, Item, Offered, Places, Response, Task, TaskId, Way,
};
use clinic::standing::Standing;
use std::rc::Rc;

/// Grades a form by a key: the place of the right option of each item; option
/// 3 of every item could hurt somebody, unless it is right.
pub struct Key {
    items: Vec<(u16, Rc<Item>)>,
    harm: bool,
}

impl Key {
    /// Letters A to D, an item each.
    pub fn new(key: &str, harm: bool) -> Self {
        let items = key.bytes().enumerate().map(|(number, right)| {
            let right = u16::from(right - b'A');
            (right, Rc::new(item(number, right, harm)))
        });
        Self {
            items: items.collect(),
            harm,
        }
    }
}

fn item(number: usize, right: u16, harm: bool) -> Item {
    let option = |place: u16| Offered {
        id: ["A", "B", "C", "D"][usize::from(place)].into(),
        label: format!("Option {place}, \"quoted\"").into(),
        standing: standing(place, right, harm),
        left_out: Standing::Right,
        because: format!("Because of {place}.").into(),
    };
    Item {
        id: format!("question-{number}").into(),
        name: format!("=Question {number}").into(),
        competency: ["mixing", "chairside"][number % 2].into(),
        one: true,
        way: Way::Options,
        places: Places::Chosen,
        offered: (0..4).map(option).collect(),
    }
}

fn standing(place: u16, right: u16, harm: bool) -> Standing {
    match place {
        _ if place == right => Standing::Right,
        3 if harm => Standing::Unsafe,
        _ => Standing::Wrong,
    }
}

impl Grader for Key {
    fn parts(&self, _: &Rc<Task>, _: Draw) -> Option<u16> {
        u16::try_from(self.items.len()).ok()
    }

    fn seconds(&self, _: &Rc<Task>, _: Draw) -> Option<u32> {
        u32::try_from(20 * self.items.len()).ok()
    }

    fn grade(&self, task: &TaskId, _: Draw, response: &Response) -> Option<Graded> {
        let (right, item) = self.items.get(usize::from(task.part))?;
        let (standing, taken) = match &response.answer {
            Answer::Blank => (Standing::Wrong, Vec::new()),
            Answer::Options(taken) => match taken[..] {
                [place] if place < 4 => (standing(place, *right, self.harm), vec![place]),
                _ => return None,
            },
            _ => return None,
        };
        Some(Graded {
            item: item.clone(),
            standing,
            per_cent: standing.per_cent(),
            taken: taken.into(),
            said: None,
        })
    }
}

/// A form of so many questions, passed at 75 per cent.
pub fn assignment(questions: u16) -> Assignment {
    Assignment {
        bank: Version(0xcbf4_3926),
        title: 7,
        seed: 42,
        due: Some(Day(20_500)),
        pass_mark: 75,
        tries: 0,
        hints: false,
        alike: true,
        card: None,
        tasks: vec![Set {
            task: Task::Form {
                blueprint: "all".into(),
                questions,
            },
            times: 1,
        }],
    }
}

/// A hand-in of letters; a point is a blank.
pub fn hand_in(assignment: &Assignment, seat: u16, letters: &str) -> HandIn {
    let response = |letter: u8| Response {
        answer: match letter {
            b'.' => Answer::Blank,
            letter => Answer::Options(vec![u16::from(letter - b'A')]),
        },
        seconds: 20,
        hinted: false,
    };
    HandIn {
        bank: assignment.bank,
        assignment: assignment.id(),
        seat: Seat(seat),
        attempt: 1,
        finished: 20_499 * 24 * 60,
        responses: vec![letters.bytes().map(response).collect()],
    }
}

/// A class, seat by seat from 1.
pub fn table(assignment: &Assignment, key: &Key, rows: &[&str]) -> Table {
    let mut table = Table::default();
    let slots = assignment.slots();
    for (seat, letters) in (1..).zip(rows) {
        let hand_in = hand_in(assignment, seat, letters);
        table
            .add(assignment, &slots, &hand_in, key)
            .expect("it fits");
    }
    table
}

/// The public class of 26 seats and 20 items, with its key and its other fields.
pub fn public() -> serde_json::Value {
    let text = include_str!("../../../../tests/fixtures/class-report.json");
    let mut all: serde_json::Value = serde_json::from_str(text).expect("the fixture is JSON");
    all["classes"][0].take()
}

/// The letters of the public class.
pub fn rows(public: &serde_json::Value) -> Vec<&str> {
    let rows = public["responses"].as_array().expect("a list");
    rows.iter().map(|r| r.as_str().expect("letters")).collect()
}
