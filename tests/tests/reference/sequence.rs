//! Ordered set-ups against an outside count of pairs and sets (rapidfuzz and
//! scipy; the file says which versions). Pairs of the fixture are those present
//! in both and not tied in the target, which is what the score rests on.

use clinic::sequence::{Target, compare};
use serde::Deserialize;

#[derive(Deserialize)]
struct Fixture {
    tolerance: f64,
    cases: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    id: String,
    stages: Vec<Vec<String>>,
    answer: Vec<String>,
    set: Set,
    pairs: Pairs,
}

#[derive(Deserialize)]
struct Set {
    true_positive: usize,
    f1: f64,
}

#[derive(Deserialize)]
struct Pairs {
    concordant: usize,
    discordant: usize,
}

#[test]
fn every_case_of_the_fixture_agrees() {
    let text = include_str!("../../fixtures/sequence.json");
    let fixture: Fixture = serde_json::from_str(text).expect("the fixture is JSON");
    assert!(fixture.cases.len() >= 30);
    for case in fixture.cases {
        let target = Target {
            stages: case.stages,
            must_before: Vec::new(),
        };
        let found = compare(&case.answer, &target, &[]);
        assert_eq!(found.taken.len(), case.set.true_positive, "{}", case.id);
        assert_eq!(found.concordant, case.pairs.concordant, "{}", case.id);
        assert_eq!(found.discordant, case.pairs.discordant, "{}", case.id);
        let ordered = case.pairs.concordant + case.pairs.discordant;
        let order = if ordered == 0 {
            1.0
        } else {
            f64::from(u32::try_from(case.pairs.concordant).unwrap())
                / f64::from(u32::try_from(ordered).unwrap())
        };
        let wanted = 100.0 * case.set.f1 * order;
        // The fixture gives F1 to twelve places.
        assert!(
            (found.score - wanted).abs() <= 100.0 * fixture.tolerance,
            "{}: {} against {wanted}",
            case.id,
            found.score
        );
    }
}
