//! Laws of the number tools and exercises over the whole catalogue.

mod common;

use clinic::numbers::{
    exercises::{Answer, Entered, Exercise, Family, exercise, exercise_at, grade},
    teeth,
    tools::{Ask, Entries, Tool},
    unit::Unit,
};
use common::clinic;
use std::collections::HashSet;

/// Up to about twice `about` exercises of a family, spread over the whole of it.
fn some(family: Family, about: u64) -> impl Iterator<Item = Exercise> {
    let clinic = clinic();
    let count = family.count(&clinic);
    let step = (count / about).max(1);
    (0..count)
        .step_by(usize::try_from(step).expect("a small step"))
        .map(move |i| exercise_at(&clinic, family, i).unwrap_or_else(|| panic!("{family:?} {i}")))
}

#[test]
fn each_family_has_at_least_300_distinct_exercises() {
    for family in Family::ALL {
        let all: Vec<String> = some(family, 400).map(|e| e.stem).collect();
        let seen = all.len();
        let stems: HashSet<String> = all.into_iter().collect();
        println!("{:16} {:6} exercises", family.id(), family.count(&clinic()));
        assert!(stems.len() >= 300, "{family:?}: {} of {seen}", stems.len());
        assert_eq!(stems.len(), seen, "{family:?} repeats itself");
        assert_eq!(Family::with_id(family.id()), Some(family));
        let clinic = clinic();
        let known = clinic.catalogue().competency(&family.competency());
        assert!(
            known.is_some(),
            "{family:?} shows no competency that there is"
        );
    }
}

#[test]
fn a_seed_draws_the_same_exercise_for_ever() {
    let clinic = clinic();
    for family in Family::ALL {
        for seed in [0, 1, 7, u64::MAX] {
            let one = exercise(&clinic, family, seed);
            assert!(one.is_some() && one == exercise(&clinic, family, seed));
        }
        let drawn: HashSet<u64> = (0..400)
            .filter_map(|seed| exercise(&clinic, family, seed))
            .map(|e| e.index)
            .collect();
        assert!(drawn.len() > 200, "{family:?} draws only {}", drawn.len());
    }
}

/// The answer as a student would type it: rounded as the stem asks, with its unit.
fn typed(exercise: &Exercise) -> String {
    match &exercise.answer {
        Answer::Number {
            value,
            unit,
            tolerance,
        } => {
            let places = if tolerance.over() == 0 { 6 } else { 1 };
            format!("{} {}", value.text(places), unit.sign())
        }
        Answer::Between { from, to, unit, .. } => {
            let middle = (*from + *to) / clinic::numbers::exact::Exact::whole(2);
            format!("{} {}", middle.text(2), unit.sign())
        }
        Answer::Choice { options, right } => options[*right].clone(),
        Answer::Tooth { tooth, system } => teeth::written(*tooth, *system),
        Answer::Time(time) => time.text(),
        Answer::Date(date) => date.text(),
        Answer::Digits(digits) => digits.clone(),
    }
}

#[test]
fn the_answer_as_typed_is_right_and_no_slip_is() {
    for family in Family::ALL {
        for exercise in some(family, 120) {
            let text = typed(&exercise);
            let told = grade(&exercise, &text)
                .unwrap_or_else(|why| panic!("{}\n{text}: {why}", exercise.stem));
            assert!(told.right, "{}\n{text}: {}", exercise.stem, told.sentence);
            for slip in &exercise.slips {
                assert!(!exercise.answer.accepts(&slip.entered), "{}", exercise.stem);
            }
            assert!(!exercise.working.lines.is_empty() && !exercise.working.sources.is_empty());
            assert!((1..=3).contains(&exercise.difficulty) && exercise.seconds > 0);
        }
    }
}

#[test]
fn a_common_slip_is_named() {
    let mut named = 0;
    for family in Family::ALL {
        for exercise in some(family, 120) {
            for slip in &exercise.slips {
                let text = match (&slip.entered, &exercise.answer) {
                    (Entered::Number(value), answer) => {
                        let unit = answer.unit().map(Unit::sign).unwrap_or_default();
                        format!("{} {unit}", value.text(8))
                    }
                    (Entered::Option(at), Answer::Choice { options, .. }) => options[*at].clone(),
                    (Entered::Tooth(tooth), Answer::Tooth { system, .. }) => {
                        teeth::written(*tooth, *system)
                    }
                    (Entered::Time(time), _) => time.text(),
                    (Entered::Date(date), _) => date.text(),
                    (Entered::Digits(digits), _) => digits.clone(),
                    other => panic!("{other:?}"),
                };
                let told = grade(&exercise, &text)
                    .unwrap_or_else(|why| panic!("{}\n{text}: {why}", exercise.stem));
                assert!(
                    !told.right && told.slip.is_some(),
                    "{}\n{text}",
                    exercise.stem
                );
                named += 1;
            }
        }
    }
    assert!(named > 1000, "{named}");
}

#[test]
fn every_family_names_a_slip_somewhere() {
    for family in Family::ALL {
        assert!(some(family, 20).any(|e| !e.slips.is_empty()), "{family:?}");
    }
}

#[test]
fn units_commas_and_marks_are_understood_in_answers() {
    let clinic = clinic();
    let exercise = (0..)
        .map_while(|i| exercise_at(&clinic, Family::Vasoconstrictor, i))
        .find(|e| e.working.result.starts_with("0.018 mg"))
        .expect("two cartridges of 1:200 000 or one of 1:100 000");
    for (text, right) in [
        ("0.018 mg", true),
        ("0,018 mg", true),
        ("0,018", true),
        ("18 µg", true),
        ("18 mcg", true),
        ("0.000018 g", true),
        ("0.18 mg", false),
        ("18 mg", false),
    ] {
        assert_eq!(grade(&exercise, text).map(|g| g.right), Ok(right), "{text}");
    }
    for text in ["0.018 mL", "", "a few", "0.018 mg or so", "1,800 mg"] {
        assert!(grade(&exercise, text).is_err(), "{text}");
    }
}

#[test]
fn doses_carry_their_frame_and_nothing_unsure_is_graded() {
    let clinic = clinic();
    for family in Family::ALL {
        for exercise in some(family, 120) {
            let dose = exercise.competency.as_str() == "anaesthesia";
            assert_eq!(exercise.working.frame.is_some(), dose, "{}", exercise.stem);
            let unsure = "This figure is from memory and unsure";
            assert!(
                !exercise
                    .working
                    .cautions
                    .iter()
                    .any(|c| c.starts_with(unsure))
            );
            for source in &exercise.working.sources {
                assert!(clinic.catalogue().source(source).is_some(), "{source}");
            }
        }
    }
}

/// Good entries for every tool: the example or the first choice of each input.
fn example(tool: Tool) -> Vec<(&'static str, String)> {
    let clinic = clinic();
    tool.inputs(&clinic.catalogue().numbers)
        .into_iter()
        .map(|input| {
            let text = match input.ask {
                Ask::Typed { example, .. } => example
                    .split(" or ")
                    .next()
                    .unwrap_or_default()
                    .split(',')
                    .next()
                    .unwrap_or_default()
                    .to_owned(),
                Ask::Choice(options) => options[0].0.clone(),
            };
            (input.id, text)
        })
        .collect()
}

#[test]
fn every_tool_works_on_its_own_examples_and_refuses_empty_boxes() {
    let clinic = clinic();
    let numbers = &clinic.catalogue().numbers;
    for tool in Tool::ALL {
        assert_eq!(Tool::with_id(tool.id()), Some(tool));
        let pairs = example(tool);
        let pairs: Vec<(&str, &str)> = pairs.iter().map(|(a, b)| (*a, b.as_str())).collect();
        let working = tool
            .work(numbers, &Entries::of(&pairs))
            .unwrap_or_else(|why| panic!("{tool:?}: {why:?}"));
        assert!(
            !working.result.is_empty() && !working.lines.is_empty(),
            "{tool:?}"
        );
        for source in &working.sources {
            assert!(clinic.catalogue().source(source).is_some(), "{source}");
        }
        for (left_out, _) in &pairs {
            let rest: Vec<_> = pairs
                .iter()
                .filter(|(id, _)| id != left_out)
                .copied()
                .collect();
            let optional = tool
                .inputs(numbers)
                .iter()
                .any(|i| i.id == *left_out && i.optional);
            let done = tool.work(numbers, &Entries::of(&rest));
            assert_eq!(done.is_ok(), optional, "{tool:?} without {left_out}");
        }
    }
}

#[test]
fn every_box_says_what_is_wrong_with_it() {
    let clinic = clinic();
    let faults = Tool::Maximum
        .work(
            &clinic.catalogue().numbers,
            &Entries::of(&[
                ("rules", "none"),
                ("weight", "700 kg"),
                ("heart", "healthy"),
                ("solution", "lidocaine-100"),
                ("volume", "17 mL"),
            ]),
        )
        .expect_err("three faults");
    let inputs: Vec<&str> = faults.iter().map(|f| f.input).collect();
    assert_eq!(inputs, ["rules", "weight", "volume"]);
}

#[test]
fn arches_hold_every_tooth_once_side_by_side() {
    let clinic = clinic();
    for (primary, count) in [(false, 32), (true, 20)] {
        let arch = teeth::arch(&clinic.catalogue().numbers, primary);
        assert_eq!(arch.len(), count);
        let seen: HashSet<u8> = arch.iter().map(|p| p.tooth.fdi()).collect();
        assert_eq!(seen.len(), count);
        for placed in &arch {
            let tooth = placed.tooth;
            // As one looks at the patient: the patient's right lies on the left.
            assert_eq!(placed.middle.0 < 0.0, tooth.is_right(), "{}", tooth.fdi());
            assert_eq!(placed.middle.1 > 0.0, tooth.is_upper(), "{}", tooth.fdi());
            assert_eq!(placed.outline().len(), 24);
            // The neighbour stands about half of both widths away, along the curve.
            let next = arch.iter().find(|p| p.tooth.fdi() == tooth.fdi() + 1);
            if let Some(next) = next {
                let apart =
                    (next.middle.0 - placed.middle.0).hypot(next.middle.1 - placed.middle.1);
                let wide = f32::midpoint(placed.width, next.width);
                assert!(
                    (apart / wide - 1.0).abs() < 0.08,
                    "{}: {apart} {wide}",
                    tooth.fdi()
                );
            }
        }
    }
}
