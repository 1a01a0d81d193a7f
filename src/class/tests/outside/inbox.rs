//! Thirty seats hand in, some of it damaged, foreign, doubled or in parts.

use crate::made::{Key, assignment, hand_in, public, rows};
use class::bank::Version;
use class::handin::{Inbox, Outcome};
use class::qr;
use class::refusal::Refusal;

const PREFIX: &str = "https://practice.example.org/#/hand-in/";

#[test]
fn what_can_be_read_is_kept_and_the_rest_is_named() {
    let public = public();
    let set = assignment(20);
    let key = Key::new(public["key"].as_str().unwrap(), true);
    let rows = rows(&public);
    let mut inbox = Inbox::new(&set, &key);
    let links: Vec<String> = (1..)
        .zip(&rows)
        .map(|(seat, r)| hand_in(&set, seat, r).link(PREFIX))
        .collect();
    for link in &links {
        assert!(matches!(inbox.read(link), Outcome::Accepted(_)));
    }
    // Damaged: a letter changed in each of five.
    for link in links.iter().take(5) {
        let (before, last) = link.split_at(link.len() - 9);
        let wrong = if last.starts_with('0') { '1' } else { '0' };
        let damaged = format!("{before}{wrong}{}", &last[1..]);
        assert!(matches!(
            inbox.read(&damaged),
            Outcome::Refused(Refusal::Damaged(_))
        ));
    }
    assert!(matches!(inbox.read(&links[3]), Outcome::Duplicate(_)));
    assert!(matches!(inbox.read("  "), Outcome::Nothing));
    assert_eq!(
        inbox.read("Dear class, see you on Monday"),
        Outcome::Refused(Refusal::Foreign)
    );
    let mut other = assignment(20);
    other.title = 8;
    assert!(matches!(
        inbox.read(&hand_in(&other, 1, rows[0]).letters()),
        Outcome::OtherAssignment(_)
    ));
    let mut lessons = hand_in(&set, 1, rows[0]);
    lessons.bank = Version(1);
    assert_eq!(
        inbox.read(&lessons.letters()),
        Outcome::Refused(Refusal::OtherBank)
    );
    let long = hand_in(&set, 27, &"A".repeat(21));
    assert!(matches!(
        inbox.read(&long.letters()),
        Outcome::DoesNotFit(_)
    ));
    assert_eq!(inbox.table().rows.len(), 26);
    // The same try again, finished later: it counts, and the first becomes older.
    let mut later = hand_in(&set, 1, rows[1]);
    later.finished += 1;
    assert!(matches!(inbox.read(&later.letters()), Outcome::Accepted(_)));
    assert!(matches!(inbox.received()[0].outcome, Outcome::Older(_)));
    assert!(matches!(inbox.read(&links[0]), Outcome::Older(_)));
    assert_eq!(inbox.table().rows.len(), 26);
    for each in inbox.received() {
        assert!(each.outcome.to_string().ends_with('.'), "{}", each.outcome);
    }
}

#[test]
fn parts_are_read_in_any_order() {
    let set = assignment(400);
    let key = Key::new(&"ABCD".repeat(100), false);
    let hand_in = hand_in(&set, 5, &"ABCD".repeat(100));
    let mut parts = qr::split(PREFIX, &hand_in.bytes()).unwrap();
    assert!(parts.len() > 2);
    parts.reverse();
    let mut inbox = Inbox::new(&set, &key);
    let outcomes: Vec<Outcome> = parts
        .iter()
        .map(|p| inbox.read(&format!("{PREFIX}{p}")))
        .collect();
    assert!(matches!(outcomes[0], Outcome::Part { .. }));
    assert!(matches!(outcomes.last(), Some(Outcome::Accepted(_))));
    let right = inbox.table().rows[0]
        .cells
        .iter()
        .filter(|c| c.mark.right())
        .count();
    assert_eq!(right, 400);
}

#[test]
fn a_seat_that_left_early_is_blank_for_the_rest() {
    let set = assignment(4);
    let key = Key::new("AAAA", false);
    let mut inbox = Inbox::new(&set, &key);
    inbox.read(&hand_in(&set, 1, "AA").letters());
    let row = &inbox.table().rows[0];
    assert_eq!(row.cells.len(), 4);
    assert!(
        row.cells[2..]
            .iter()
            .all(|c| c.mark == class::handin::Mark::Blank)
    );
}
