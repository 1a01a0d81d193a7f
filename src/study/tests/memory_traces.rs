//! Memory against traces of the Python package `fsrs` 6.3.2 with fuzz off (the file gives
//! versions and tolerance): stability, difficulty, recall and interval after each
//! review, by whole days and with repeats within a day.

use serde::Deserialize;
use std::collections::BTreeMap;
use study::memory::{Grade, Model, Parameters, Phase, Steps, Within};

#[derive(Deserialize)]
struct Fixture {
    tolerance: Tolerance,
    default_parameters: [f64; 21],
    day_model: Vec<DayTrace>,
    with_steps: Vec<StepTrace>,
}

#[derive(Deserialize)]
struct Tolerance {
    relative: f64,
}

#[derive(Deserialize)]
struct DayTrace {
    id: String,
    desired_retention: f64,
    maximum_interval: u32,
    parameters: [f64; 21],
    steps: Vec<DayStep>,
}

#[derive(Deserialize)]
struct DayStep {
    grade: u8,
    elapsed_days: u32,
    retrievability_before: Option<f64>,
    stability: f64,
    difficulty: f64,
    interval_days: u32,
    retrievability_after_days: BTreeMap<u32, f64>,
}

#[derive(Deserialize)]
struct StepTrace {
    id: String,
    desired_retention: f64,
    steps: Vec<Step>,
}

#[derive(Deserialize)]
struct Step {
    grade: u8,
    elapsed_seconds: i64,
    stability: f64,
    difficulty: f64,
    phase: String,
    #[serde(rename = "step")]
    on: Option<usize>,
    due_in_seconds: f64,
}

fn fixture() -> Fixture {
    let text = include_str!("../../../tests/fixtures/memory-traces.json");
    serde_json::from_str(text).expect("the fixture is JSON")
}

fn grade(number: u8) -> Grade {
    Grade::of_number(number).expect("grades are 1 to 4")
}

fn agree(found: f64, wanted: f64, relative: f64, what: &str) {
    // The file rounds to twelve figures.
    let off = (found - wanted).abs();
    assert!(
        off <= relative * wanted.abs(),
        "{what}: {found} against {wanted}"
    );
}

#[test]
fn the_defaults_are_the_published_ones() {
    let published = fixture().default_parameters.map(f64::to_bits);
    assert_eq!(Parameters::default().0.map(f64::to_bits), published);
}

#[test]
fn every_trace_by_whole_days_agrees() {
    let fixture = fixture();
    assert!(fixture.day_model.len() >= 29);
    let near = fixture.tolerance.relative;
    for trace in fixture.day_model {
        let model = Model::new(Parameters(trace.parameters));
        let mut state = None;
        for (at, step) in trace.steps.iter().enumerate() {
            let what = format!("{} step {at}", trace.id);
            let before = state.map(|s: study::memory::State| {
                model.recall(s.stability, f64::from(step.elapsed_days))
            });
            assert_eq!(
                before.is_some(),
                step.retrievability_before.is_some(),
                "{what}"
            );
            if let (Some(found), Some(wanted)) = (before, step.retrievability_before) {
                agree(found, wanted, near, &what);
            }
            let next = match state {
                None => model.first(grade(step.grade)),
                Some(state) => model.next(state, step.elapsed_days, grade(step.grade)),
            };
            agree(next.stability, step.stability, near, &what);
            agree(next.difficulty, step.difficulty, near, &what);
            let interval = model.interval(
                next.stability,
                trace.desired_retention,
                trace.maximum_interval,
            );
            assert_eq!(interval, step.interval_days, "{what}");
            for (&days, &wanted) in &step.retrievability_after_days {
                agree(
                    model.recall(next.stability, f64::from(days)),
                    wanted,
                    near,
                    &what,
                );
            }
            state = Some(next);
        }
    }
}

#[test]
fn every_trace_with_repeats_within_a_day_agrees() {
    let fixture = fixture();
    assert!(fixture.with_steps.len() >= 7);
    let (model, steps) = (Model::default(), Steps::default());
    for trace in fixture.with_steps {
        let retention = trace.desired_retention;
        let mut now = 0;
        let mut before: Option<Within> = None;
        for (at, step) in trace.steps.iter().enumerate() {
            let what = format!("{} step {at}", trace.id);
            now += step.elapsed_seconds;
            let next = match before {
                None => steps.first(&model, retention, grade(step.grade), now),
                Some(within) => steps.next(&model, retention, within, grade(step.grade), now),
            };
            agree(
                next.state.stability,
                step.stability,
                fixture.tolerance.relative,
                &what,
            );
            agree(
                next.state.difficulty,
                step.difficulty,
                fixture.tolerance.relative,
                &what,
            );
            let phase = match next.phase {
                Phase::Learning(_) => "learning",
                Phase::Review => "review",
                Phase::Relearning(_) => "relearning",
            };
            assert_eq!(
                (phase, next.phase.step()),
                (step.phase.as_str(), step.on),
                "{what}"
            );
            let wait = f64::from(u32::try_from(next.wait).unwrap());
            agree(wait, step.due_in_seconds, 1e-12, &what);
            before = Some(next);
        }
    }
}
