//! A large class: run with `--release` to be timed, as the budget asks.

use crate::made::{Key, assignment, hand_in};
use class::handin::Inbox;
use class::report::{Report, Tries, Work};
use std::time::Instant;

#[test]
fn ten_thousand_hand_ins_of_sixty_responses() {
    let set = assignment(60);
    let key = Key::new(&"ABCD".repeat(15), true);
    let mut chance = clinic::case::Seed::new(7);
    let lines: Vec<String> = (0..10_000_u16)
        .map(|seat| {
            let able = chance.below(100);
            let letters: String = (0..60)
                .map(|item| {
                    let right = b"ABCD"[item % 4];
                    let letter = if chance.below(120) < able {
                        right
                    } else {
                        b"ABCD"[chance.below(4)]
                    };
                    char::from(letter)
                })
                .collect();
            hand_in(&set, seat, &letters).letters()
        })
        .collect();
    let begun = Instant::now();
    let mut inbox = Inbox::new(&set, &key);
    for line in &lines {
        inbox.read(line);
    }
    let read = begun.elapsed();
    let report = Report::of(&set, inbox.table(), Tries::First, &[]);
    println!(
        "read and graded in {read:?}, with the report {:?}",
        begun.elapsed()
    );
    assert_eq!(report.seats.len(), 10_000);
    assert!(report.reliability.unwrap().alpha > 0.8);
    let sum: f64 = report.items.iter().map(|i| i.p).sum();
    assert!((sum - report.scores.mean).abs() < 1e-9);
    let mut work = Work::new(&set, inbox.table(), Tries::First);
    assert_eq!((work.progress().done, work.progress().of), (0, 60));
    work.step();
    assert_eq!(work.progress().done, 1);
    assert_eq!(work.finish(&[]), report);
}
