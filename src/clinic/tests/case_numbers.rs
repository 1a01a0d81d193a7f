//! Numbers in cases: asked where the visit calls for them, worked out from this
//! patient, graded from what was typed, and drawn without touching the patient.

mod common;

use catalogue::numbers::{Heart, Numbers};
use clinic::{
    case::{Case, Decision, Form, Sum},
    standing::Standing,
};
use common::clinic;
use std::{collections::BTreeMap, sync::LazyLock};

const SEEDS: u64 = 6;

static CASES: LazyLock<Vec<Case>> = LazyLock::new(drawn);

fn cases() -> &'static [Case] {
    &CASES
}

fn drawn() -> Vec<Case> {
    let clinic = clinic();
    let mut all = Vec::new();
    for frame in &clinic.catalogue().cases {
        all.extend((0..SEEDS).filter_map(|seed| clinic.case(frame, seed)));
    }
    all
}

fn sum(decision: &Decision) -> Option<&Sum> {
    match &decision.form {
        Form::Number(sum) => Some(sum),
        _ => None,
    }
}

fn found<'c>(case: &'c Case, id: &str) -> Option<(&'c Decision, &'c Sum)> {
    let decision = case.decisions.iter().find(|it| it.id == id)?;
    Some((decision, sum(decision)?))
}

/// The most whole cartridges in whole numbers alone, apart from the rational
/// arithmetic of the bench: micrograms of drug and of vasoconstrictor.
fn most(numbers: &Numbers, sum: &Sum, case: &Case) -> i64 {
    let entry = |id: &str| sum.entries.get(id).to_owned();
    let rules = numbers.rules(&entry("rules")).expect("a rule");
    let solution = numbers.solution(&entry("solution")).expect("a solution");
    let measures = case.measures.expect("a weight");
    let limit = rules
        .limits
        .iter()
        .find(|it| {
            it.drug == solution.drug
                && it.percent.is_none_or(|own| own == solution.percent)
                && it
                    .vasoconstrictor
                    .is_none_or(|with| with == solution.vasoconstrictor.is_some())
        })
        .expect("a limit");
    let kg = i64::from(measures.weight);
    let by_weight = limit.per_kg.map(|it| kg * i64::from(it.0));
    let ceiling = limit.ceiling.map(|it| i64::from(it.0));
    let drug = by_weight.into_iter().chain(ceiling).min().expect("a limit");
    let tenths: i64 = entry("volume")
        .trim_end_matches(" mL")
        .replace('.', "")
        .parse()
        .expect("tenths of a millilitre");
    // Per cent in thousandths times tenths of a millilitre: micrograms, as 1 % is 10 mg/mL.
    let in_one = i64::from(solution.percent.0) * tenths;
    let by_drug = drug / in_one;
    let Some(thin) = &solution.vasoconstrictor else {
        return by_drug;
    };
    let heart = numbers
        .vasoconstrictor_limits
        .iter()
        .find(|it| it.name == thin.name && it.heart == measures.heart)
        .expect("a limit of the vasoconstrictor");
    // 1:ratio is 1 g in so many mL: tenths of a mL hold 100 000 µg / ratio.
    let by_thin = i64::from(heart.most.0) * i64::from(thin.ratio) / (100_000 * tenths);
    by_drug.min(by_thin)
}

#[test]
fn the_dose_is_what_whole_numbers_come_to_as_well() {
    let clinic = clinic();
    let numbers = &clinic.catalogue().numbers;
    let (mut all, mut hearts, mut children) = (0, 0, 0);
    for case in cases() {
        let Some((decision, sum)) = found(case, "cartridges") else {
            continue;
        };
        all += 1;
        hearts += u32::from(case.measures.is_some_and(|it| it.heart == Heart::Diseased));
        children += u32::from(case.age < 12);
        let right = most(numbers, sum, case);
        assert_eq!(sum.problem.right(), right * 1000, "{}", decision.question);
        assert!(sum.problem.working.frame.is_some(), "the safety frame");
        assert!(!sum.problem.working.sources.is_empty());
        let whose = numbers.rules(sum.entries.get("rules")).expect("a rule");
        assert!(decision.question.contains(&whose.name), "whose rule");
        let weight = case.measures.expect("a weight").weight;
        assert!(decision.question.contains(&format!("{weight} kg")));
        assert_eq!(whose.id == "paediatric", case.age < 12);
    }
    assert!(
        all > 100 && hearts > 10 && children > 10,
        "{all} {hearts} {children}"
    );
}

#[test]
fn what_is_typed_is_understood_and_too_much_is_unsafe() {
    for case in cases() {
        let Some((decision, sum)) = found(case, "cartridges") else {
            continue;
        };
        let right = sum.problem.right() / 1000;
        let graded = |typed: &str| {
            let answer = sum.answer(typed).expect("it is understood");
            assert!(sum.is_typed(&answer[0]));
            decision.grade(&answer).standing
        };
        for typed in [
            format!("{right}"),
            format!("{right} cartridges"),
            format!(" {right},0 "),
            format!("{right}.00"),
        ] {
            assert_eq!(graded(&typed), Standing::Right, "{typed}");
        }
        assert_eq!(graded(&format!("{}", right + 1)), Standing::Unsafe);
        assert_eq!(graded(&format!("{right}.5")), Standing::Unsafe);
        if right > 0 {
            assert_eq!(graded(&format!("{}", right - 1)), Standing::Wrong);
        }
        for typed in ["", "many", "8 mL", "8 9"] {
            assert!(sum.answer(typed).is_err(), "{typed} was guessed at");
        }
        assert_eq!(decision.grade(&[]).standing, Standing::Wrong, "a blank");
        assert!(!sum.is_typed("typed:x") && !sum.is_typed("8000"));
    }
}

#[test]
fn every_number_has_its_steps_and_its_tool_comes_to_the_same() {
    let clinic = clinic();
    let numbers = &clinic.catalogue().numbers;
    let mut kinds: BTreeMap<String, usize> = BTreeMap::new();
    for case in cases() {
        for decision in &case.decisions {
            let Some(sum) = sum(decision) else { continue };
            *kinds.entry(decision.id.clone()).or_default() += 1;
            let best = decision.best_answer();
            let code = Sum::code(&best).expect("a number");
            assert_eq!(Sum::of_code(code), best, "it survives its code");
            assert_eq!(decision.grade(&best).standing, Standing::Right);
            let judged = sum.judged(&best).expect("it can be typed");
            assert!(judged.right && judged.sentence.starts_with("Right"));
            assert!(!sum.problem.working.lines.is_empty(), "{}", decision.id);
            for slip in &sum.problem.slips {
                assert!(!sum.problem.answer.accepts(&slip.entered));
            }
            let at_the_bench = sum.tool.work(numbers, &sum.entries);
            let at_the_bench = at_the_bench
                .unwrap_or_else(|faults| panic!("{} of {}: {faults:?}", decision.id, case.title));
            assert_eq!(at_the_bench.result, sum.problem.working.result);
        }
    }
    for id in ["cartridges", "tooth", "water", "return-date"] {
        assert!(kinds.get(id).is_some_and(|count| *count >= 5), "{kinds:?}");
    }
}

#[test]
fn a_number_is_asked_where_the_visit_calls_for_it_and_nowhere_else() {
    for case in cases() {
        let has = |id: &str| case.decisions.iter().any(|it| it.id == id);
        assert!(!(has("cartridges") && has("tooth")), "{}", case.title);
        assert_eq!(has("return-date"), has("interval"), "{}", case.title);
        assert!(!has("water") || has("proportion"), "{}", case.title);
        let parts: Vec<_> = case.decisions.iter().map(Decision::part).collect();
        assert!(parts.is_sorted(), "{} goes back and forth", case.title);
    }
}
