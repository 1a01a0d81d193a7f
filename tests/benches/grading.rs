//! How many whole cases are graded in a minute on one core: every decision of a
//! case, with an answer that is right and one that is not.

use clinic::{Clinic, case::Case};
use std::{hint::black_box, path::Path, rc::Rc, time::Instant};

/// Gradings of whole cases that one core has to manage in a minute.
const BUDGET: f64 = 1_000_000.0;

/// How often all the cases are graded.
const ROUNDS: usize = 200;

fn main() {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../content");
    let Ok(read) = catalogue::source::read(&content) else {
        println!("The content has faults: run `cargo site check`.");
        return;
    };
    let clinic = Clinic::new(Rc::new(read));
    let begun = Instant::now();
    let cases: Vec<Case> = clinic
        .catalogue()
        .cases
        .iter()
        .flat_map(|frame| (0..4).filter_map(|seed| clinic.case(frame, seed)))
        .collect();
    let drawn = begun.elapsed().as_secs_f64() * 1000.0 / to_f64(cases.len());
    let answered: Vec<(&Case, [Vec<Vec<String>>; 2])> =
        cases.iter().map(|case| (case, answers(case))).collect();
    let begun = Instant::now();
    let mut gradings = 0;
    for _ in 0..ROUNDS {
        for (case, answers) in &answered {
            for all in answers {
                black_box(case.marks(black_box(all)));
                gradings += 1;
            }
        }
    }
    let a_minute = to_f64(gradings) * 60.0 / begun.elapsed().as_secs_f64();
    let verdict = if a_minute >= BUDGET { "within" } else { "OVER" };
    println!("{:<44} {drawn:>9.3} ms", "a case: draw");
    println!(
        "{:<44} {a_minute:>9.0} {verdict:>6} {BUDGET}",
        "cases graded a minute, one core"
    );
}

/// The best answers of a case, and answers that take every option there is.
fn answers(case: &Case) -> [Vec<Vec<String>>; 2] {
    let best = case
        .decisions
        .iter()
        .map(clinic::case::Decision::best_answer);
    let every = case
        .decisions
        .iter()
        .map(|d| d.choices.iter().map(|c| c.id.clone()).collect());
    [best.collect(), every.collect()]
}

fn to_f64(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::MAX, f64::from)
}
