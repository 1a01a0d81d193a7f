//! Readiness behind its gates.

use super::*;

fn worked_through(bank: &Bank, theta: f64, day: Day) -> Mastery {
    let mut chance = Chance::new(3);
    let record: Vec<Answer> = (0..bank.items().len())
        .map(|place| {
            let b = bank.items()[place].difficulty.mean;
            let right = chance.happens(1.0 / (1.0 + (b - theta).exp()));
            answer(bank, place, right, day)
        })
        .collect();
    Mastery::of(bank, &FirstTries::of(bank, &record))
}

#[test]
fn readiness_is_gated_and_banded() {
    let bank = bank(200, 5);
    let target = Target {
        items: 100,
        percent: 75,
    };
    let nothing = Mastery::of(&bank, &FirstTries::default());
    let found = Readiness::of(&bank, &nothing, target, Day(0));
    assert_eq!((found.band, found.rounded), (None, None));
    let said = found.words.join(" ");
    assert!(
        said.contains("40 first answers are needed; there are 0."),
        "{said}"
    );
    let rows = [
        (-1.0, Band::NotYet),
        (0.0, Band::NotYet),
        (3.0, Band::OnCourse),
    ];
    for (theta, band) in rows {
        let mastery = worked_through(&bank, theta, Day(10));
        let found = Readiness::of(&bank, &mastery, target, Day(20));
        assert_eq!(found.band, Some(band), "{theta}: {:?}", found.words);
        assert!(found.rounded.is_some_and(|n| n % 5 == 0));
        let said = found.words.join(" ");
        for wanted in ["on THIS bank", "we have not checked that", "Not validated"] {
            assert!(said.contains(wanted), "{said}");
        }
        let old = Readiness::of(&bank, &mastery, target, Day(41));
        assert_eq!(old.band, None);
        assert!(
            old.words.join(" ").contains("31 days old"),
            "{:?}",
            old.words
        );
    }
}
