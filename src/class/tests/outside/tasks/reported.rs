//! Tasks in the report of a class: what differs by seat is one item, by kinds of
//! outcome, and what is the same for all goes by its options.

use super::{doing::Taught, one_of_each, set, there_and_back};
use class::assignment::Seat;
use class::handin::{Inbox, Outcome, Table};
use class::questions;
use class::report::{Report, Tries};
use class::task::{Task, Way};
use std::collections::HashSet;

/// Where all draw alike, the options of the question are those of the report.
#[test]
fn where_all_draw_alike_the_options_are_compared() {
    let taught = Taught::new();
    let graders = taught.graders();
    let set = set(vec![Task::Question("missing".into())], 7, true);
    let slots = set.slots();
    let question = questions::drawn(&taught.written, "missing", set.draw(Seat(1), &slots[0]));
    let question = question.expect("a question");
    let mut inbox = Inbox::new(&set, &graders);
    for seat in 1..=12 {
        let hand_in = there_and_back(&taught, &graders, &set, seat);
        assert_eq!(
            inbox.read(&hand_in.letters()),
            Outcome::Accepted(Seat(seat))
        );
    }
    let report = Report::of(&set, inbox.table(), Tries::First, &[]);
    let [item] = &report.items[..] else {
        panic!("{} items", report.items.len())
    };
    assert_eq!(*item.id, *question.id.to_string());
    let labels: HashSet<&str> = item.options.iter().map(|it| &*it.label).collect();
    for choice in question.form.choices() {
        assert!(labels.contains(choice.text.as_str()), "{}", choice.text);
    }
}

/// The report of a class: seats draw different questions, and the item is one.
pub fn what_differs_by_seat_is_one_item(taught: &Taught) {
    let graders = taught.graders();
    let set = set(one_of_each(&taught.clinic)[2..].to_vec(), 7, false);
    let mut inbox = Inbox::new(&set, &graders);
    for seat in 1..=30 {
        let hand_in = there_and_back(taught, &graders, &set, seat);
        assert_eq!(
            inbox.read(&hand_in.letters()),
            Outcome::Accepted(Seat(seat))
        );
    }
    let table: &Table = inbox.table();
    let report = Report::of(&set, table, Tries::First, &[]);
    for place in 0..3 {
        let own: Vec<_> = report.items.iter().filter(|it| it.place == place).collect();
        let [item] = &own[..] else {
            panic!("task {place} has {} items", own.len())
        };
        assert!(item.common && item.asked == 30, "{}", item.id);
        let right = item.options.iter().find(|it| &*it.id == "right");
        let right = right.expect("somebody is right");
        assert!(right.count >= 1 && right.count <= item.right, "{item:?}");
        let taken: u32 = item.options.iter().map(|it| it.count).sum();
        assert!(taken >= 30 - item.blank, "{item:?}");
    }
    for item in report.items.iter().filter(|it| it.place == 3) {
        assert!(item.asked <= 30);
    }
    let own = table.columns.iter().filter(|it| it.place == 0);
    assert!(own.clone().all(|it| it.way == Way::Outcome) && own.count() == 1);
}
