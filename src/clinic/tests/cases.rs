//! Laws of drawn cases: the same for ever, with a way to full marks and tempting
//! ways off it, and as hard as their frames say.

mod common;

use catalogue::cases::Level;
use clinic::{case::Form, standing::Standing};
use common::clinic;

/// How many seeds of each frame are drawn.
const SEEDS: u64 = 8;

#[test]
fn the_same_seed_draws_the_same_case() {
    let clinic = clinic();
    for frame in &clinic.catalogue().cases {
        for seed in [0, 7, u64::MAX] {
            let case = clinic.case(frame, seed);
            assert!(case.is_some(), "{} with seed {seed}", frame.id);
            assert_eq!(clinic.case(frame, seed), case, "{} with {seed}", frame.id);
        }
    }
}

#[test]
fn every_choice_has_a_full_mark_path_and_two_tempting_wrong_ones() {
    let clinic = clinic();
    let mut lacking = Vec::new();
    for frame in &clinic.catalogue().cases {
        for seed in 0..SEEDS {
            let case = clinic.case(frame, seed).expect("a possible patient");
            for decision in &case.decisions {
                let best = decision.grade(&decision.best_answer());
                assert_eq!(
                    (best.per_cent, best.standing),
                    (100, Standing::Right),
                    "{} of {} {seed}",
                    decision.id,
                    frame.id
                );
                if let Form::Number(sum) = &decision.form {
                    // The wrong ways are the slips of reckoning.
                    assert!(!sum.problem.slips.is_empty(), "{}", decision.question);
                    continue;
                }
                if matches!(decision.form, Form::Order(_)) {
                    // The wrong ways are the other orders.
                    assert!(decision.choices.len() > 2 || decision.choices.len() == 2);
                    continue;
                }
                let wrong = decision
                    .choices
                    .iter()
                    .filter(|c| c.standing >= Standing::Wrong);
                if wrong.count() < 2 {
                    lacking.push(format!(
                        "{} of {} {seed}: {:?}",
                        decision.id,
                        frame.id,
                        decision
                            .choices
                            .iter()
                            .map(|c| (c.label.clone(), c.standing))
                            .collect::<Vec<_>>()
                    ));
                }
            }
        }
    }
    assert!(lacking.is_empty(), "{}", lacking.join("\n"));
}

/// The estimate of a case lies at most one level from what its frame says.
#[test]
fn a_case_is_about_as_hard_as_its_frame_says() {
    let clinic = clinic();
    let rank = |level: Level| match level {
        Level::Basic => 0i8,
        Level::Core => 1,
        Level::Demanding => 2,
    };
    let mut far = Vec::new();
    for frame in &clinic.catalogue().cases {
        let levels: Vec<i8> = (0..SEEDS)
            .filter_map(|seed| clinic.case(frame, seed))
            .map(|case| rank(case.level()))
            .collect();
        println!("{} {:?}: {levels:?}", frame.id, frame.level);
        if levels.iter().any(|l| (l - rank(frame.level)).abs() > 1) {
            far.push(format!(
                "{} says {:?} and is {levels:?}",
                frame.id, frame.level
            ));
        }
    }
    assert!(far.is_empty(), "{}", far.join("\n"));
}
