//! Where a number would mean nothing, words stand in its place.

use crate::made::{Key, assignment, hand_in, table};
use class::assignment::Seat;
use class::report::{Flag, Missing, Report, Tries, Why};

fn of(key: &str, rows: &[&str]) -> Report {
    let set = assignment(u16::try_from(key.len()).unwrap());
    let key = Key::new(key, true);
    let table = table(&set, &key, rows);
    Report::of(&set, &table, Tries::First, &[])
}

#[test]
fn classes_that_say_nothing_get_words() {
    let rows: [(&[&str], Missing); 7] = [
        (&[], Missing::NoSeats),
        (&["AAAA"], Missing::TooFewSeats(1)),
        (&["AAAA", "ABAA"], Missing::TooFewSeats(2)),
        (&["AAAA", "AAAA", "AAAA"], Missing::AllRight),
        (&["BBBB", "CCCC", "...."], Missing::AllWrong),
        (&["AABB", "BBAA", "ABAB"], Missing::NoSpread),
        // Two halves of the form that exclude each other: alpha is negative.
        (
            &["AABB", "BBAA", "AAAB", "BBAB", "ABBB"],
            Missing::NotTogether,
        ),
    ];
    for (rows, missing) in rows {
        let report = of("AAAA", rows);
        assert_eq!(report.reliability, Err(missing), "{rows:?}");
        assert_eq!(report.consistency, Err(missing), "{rows:?}");
        assert!(report.cross_checks.is_none());
        assert!(missing.to_string().ends_with('.'));
        assert_eq!(report.seats.len(), rows.len());
        for item in &report.items {
            assert!(item.p.is_finite() && item.variance.is_finite());
        }
    }
}

#[test]
fn one_item_has_no_reliability() {
    assert_eq!(
        of("A", &["A", "B", "A"]).reliability,
        Err(Missing::TooFewItems)
    );
}

/// Forty seats of which the good ones take option B of the second item: its key is wrong.
#[test]
fn an_item_that_good_seats_get_wrong_is_flagged() {
    let rows: Vec<&str> = (0..40)
        .map(|seat| match seat {
            0..15 => "ABAAA",
            15..25 => "ACAAB",
            _ => "BABBC",
        })
        .collect();
    let report = of("AAAAA", &rows);
    let second = &report.items[1];
    assert!(
        matches!(&second.flags[..], [Flag::CheckFacts(option), ..] if option.starts_with("Option 1")),
        "{:?}",
        second.flags
    );
    assert!(
        second
            .flags
            .iter()
            .any(|f| matches!(f, Flag::NotWorking(o) if o.starts_with("Option 3")))
    );
}

#[test]
fn what_to_teach_again_names_the_common_fault_and_harm_leads() {
    // Items 0 and 2 show mixing, 1 and 3 chairside; option D could hurt somebody.
    let report = of("AAAA", &["ABAB", "ABAC", "ADAA", "ADAA", "ADBA"]);
    let first = &report.topics[0];
    assert_eq!(&*first.competency, "chairside");
    assert_eq!((first.asked, first.right, first.harmful), (10, 3, 3));
    let fault = first.items[0].fault.as_ref().unwrap();
    assert_eq!((fault.seats, fault.left_out), (3, false));
    assert_eq!(
        fault.words(),
        "3 seats take: Option 3, \"quoted\". Because of 3."
    );
}

#[test]
fn who_needs_a_talk() {
    let set = assignment(4);
    let key = Key::new("AAAA", true);
    let table = table(&set, &key, &["DDDA", "A...", "AAAA"]);
    let seats: Vec<Seat> = (1..=4).map(Seat).collect();
    let report = Report::of(&set, &table, Tries::First, &seats);
    let talks: Vec<(u16, Why)> = report.talks.iter().map(|t| (t.seat.0, t.why)).collect();
    assert_eq!(
        talks,
        [
            (1, Why::Harmful { count: 3, asked: 4 }),
            (2, Why::MostlyOpen { blank: 3, asked: 4 }),
            (4, Why::NothingHandedIn),
        ]
    );
}

#[test]
fn the_first_try_says_how_hard_an_item_is_unless_the_last_is_asked_for() {
    let set = assignment(2);
    let key = Key::new("AA", false);
    let mut table = table(&set, &key, &["AB", "AB"]);
    let mut again = hand_in(&set, 1, "AA");
    again.attempt = 2;
    table.add(&set, &set.slots(), &again, &key).unwrap();
    let p = |tries| Report::of(&set, &table, tries, &[]).items[1].p;
    assert!(p(Tries::First).abs() < 1e-12);
    assert!((p(Tries::Last) - 0.5).abs() < 1e-12);
}
