//! Laws that every question of every family keeps.

use super::*;

#[test]
fn there_are_thousands_and_no_family_crowds_out_the_others() {
    with_bank(|clinic, bank| {
        let mut families: BTreeMap<&str, usize> = BTreeMap::new();
        let mut competencies: BTreeMap<String, usize> = BTreeMap::new();
        for id in bank.ids() {
            *families.entry(id.family()).or_default() += 1;
            let question = bank.write(id, 1).expect("a listed question is written");
            *competencies
                .entry(question.competency.to_string())
                .or_default() += 1;
        }
        println!(
            "{} questions\n{families:#?}\n{competencies:#?}",
            bank.ids().len()
        );
        assert!(bank.ids().len() >= 5000, "{} questions", bank.ids().len());
        assert!(families.len() >= 22, "{} families", families.len());
        assert_eq!(
            families.len(),
            bank.families().len(),
            "a family yields nothing"
        );
        for (family, count) in &families {
            assert!(count * 3 <= bank.ids().len(), "{family} holds {count}");
        }
        for competency in &clinic.catalogue().competencies {
            let count = competencies
                .get(competency.id.as_str())
                .copied()
                .unwrap_or(0);
            assert!(count >= 40, "{} has {count}", competency.id);
        }
    });
}

#[test]
fn ids_are_unique_and_those_of_the_fixture_are_still_there() {
    with_bank(|_, bank| {
        let all: BTreeSet<&QuestionId> = bank.ids().iter().collect();
        assert_eq!(all.len(), bank.ids().len());
        // Ids once given out stand in students' records for ever.
        for line in include_str!("../fixtures/question-ids.txt")
            .lines()
            .filter(|l| !l.starts_with('#'))
        {
            assert!(all.contains(&QuestionId(line.into())), "{line} has gone");
        }
    });
}

#[test]
fn ids_do_not_hang_on_names_and_wordings() {
    let mut renamed = read();
    for instrument in &mut renamed.instruments {
        instrument.name.push_str(" (new)");
    }
    for material in &mut renamed.materials {
        material.name.push_str(" (new)");
    }
    for procedure in &mut renamed.procedures {
        procedure.name.push_str(" (new)");
        for step in &mut procedure.steps {
            for slip in &mut step.slips {
                slip.mend.push_str(" So it is.");
            }
        }
    }
    let renamed = Bank::new(&Clinic::new(Rc::new(renamed)));
    with_bank(|_, bank| {
        let ids = |bank: &Bank| bank.ids().iter().cloned().collect::<BTreeSet<_>>();
        let (before, after) = (ids(bank), ids(&renamed));
        let other: Vec<_> = before.symmetric_difference(&after).collect();
        assert!(other.is_empty(), "these ids hang on a name: {other:?}");
    });
}

#[test]
fn a_fact_that_vanished_gives_nothing() {
    let mut less = read();
    less.procedures
        .retain(|p| p.id.as_str() != "fissure-sealant");
    less.materials.retain(|m| m.id.as_str() != "copal-varnish");
    less.checks.clear();
    let less = Bank::new(&Clinic::new(Rc::new(less)));
    with_bank(|_, bank| {
        for id in bank.ids() {
            let written = less.write(id, 3);
            let of_procedure =
                ["missing", "why", "slip", "next", "advice", "order"].contains(&id.family());
            if of_procedure && id.fact()[0] == "fissure-sealant" || id.family() == "checked" {
                assert!(written.is_none(), "{id}");
            }
        }
    });
    for id in [
        "",
        "missing",
        "missing.",
        "told.a.b.0",
        "slip.a.b.99999999999999999999",
        "tooth.99.fdi.name",
        "nothing.at.all",
    ] {
        assert_eq!(less.write(&QuestionId(id.into()), 0), None, "{id}");
    }
}

#[test]
fn each_has_what_its_form_needs_and_no_option_twice() {
    every(&[1, 2, 3], |_, question| {
        let id = &question.id;
        let choices = question.form.choices();
        let (good, bad) = (right(question).len(), wrong(question).len());
        match &question.form {
            Form::One(_) | Form::Name(_) | Form::Slip(_) => {
                assert_eq!(good, 1, "{id} has {good} right options");
                assert!(bad >= 2, "{id} has {bad} wrong options");
            }
            Form::All(_) | Form::Place(_) => {
                assert!(good >= 1 && bad >= 2, "{id}: {good} and {bad}");
            }
            Form::Order { pieces, target } => {
                let keys: BTreeSet<_> = pieces.iter().map(|p| &p.key).collect();
                let wanted: BTreeSet<_> = target.stages.iter().flatten().collect();
                assert!(
                    keys.len() >= 3 && keys.len() == pieces.len() && keys == wanted,
                    "{id}"
                );
                let texts: BTreeSet<_> = pieces.iter().map(|p| &p.text).collect();
                assert_eq!(texts.len(), pieces.len(), "{id} says a piece twice");
                assert!(
                    !pieces
                        .iter()
                        .map(|p| &p.key)
                        .eq(target.stages.iter().flatten()),
                    "{id} lies in order"
                );
            }
            Form::Match { left, right, pairs } => {
                let keys: BTreeSet<_> = left.iter().map(|p| &p.key).collect();
                let names: BTreeSet<_> = right.iter().map(|p| &p.text).collect();
                assert!(
                    keys.len() == pairs.len() && names.len() == pairs.len() && pairs.len() >= 2,
                    "{id}"
                );
            }
            Form::Number { from, to, .. } => assert!(from <= to && from.0 >= 0, "{id}"),
        }
        let keys: BTreeSet<_> = choices.iter().map(|c| &c.key).collect();
        let texts: BTreeSet<_> = choices.iter().map(|c| c.text.to_lowercase()).collect();
        assert!(
            keys.len() == choices.len() && texts.len() == choices.len(),
            "{id} offers something twice"
        );
        for choice in choices {
            let text = choice.text.to_lowercase();
            assert!(
                !text.contains("of the above") && !text.contains("none of these"),
                "{id}"
            );
        }
    });
}

#[test]
fn each_reads_as_a_sentence() {
    every(&[1, 2, 5], |_, question| {
        let options = question.form.choices().iter().map(|c| c.text.as_str());
        for text in options.chain([question.stem.as_str()]) {
            let words: Vec<&str> = text.split(' ').collect();
            assert!(
                !text.contains("  ") && !text.contains('{') && !text.contains(" ."),
                "{}: {text}",
                question.id
            );
            for pair in words.windows(2) {
                let twice = pair[0].len() > 1
                    && pair[0].eq_ignore_ascii_case(pair[1])
                    && pair[0].chars().all(char::is_alphabetic);
                assert!(!twice && pair != ["a", "an"], "{}: {text}", question.id);
            }
        }
        let stem = &question.stem;
        assert!(stem.ends_with(['?', '.']), "{}: {stem}", question.id);
        assert!(
            !stem.starts_with(char::is_lowercase),
            "{}: {stem}",
            question.id
        );
    });
}

#[test]
fn each_has_a_reason_with_a_known_source_and_something_to_study() {
    every(&[4], |clinic, question| {
        let id = &question.id;
        let catalogue = clinic.catalogue();
        assert!(!question.reasons.is_empty(), "{id} gives no reason");
        for reason in &question.reasons {
            assert!(
                !reason.because.is_empty() && !reason.sources.is_empty(),
                "{id}"
            );
            for source in &reason.sources {
                assert!(catalogue.source(source).is_some(), "{id}: {source}");
            }
        }
        assert!(catalogue.competency(&question.competency).is_some(), "{id}");
        for study in &question.study {
            let known = match study {
                Study::Lesson(lesson) => catalogue.lesson(lesson).is_some(),
                Study::Procedure(procedure) => catalogue.procedure(procedure).is_some(),
                Study::Item(item) => catalogue.item(item).is_some(),
            };
            assert!(known, "{id}: {study:?}");
        }
        assert!(!question.study.is_empty(), "{id} leads nowhere");
        assert!(
            question.difficulty.abs() <= 3.0 && (8..=120).contains(&question.seconds),
            "{id}"
        );
    });
}

#[test]
fn the_best_answer_is_right_and_any_wrong_choice_is_not() {
    every(&[6], |_, question| {
        let best = question.grade(&question.best());
        assert!(
            best.right && best.per_cent == 100 && !best.harm,
            "{}: {best:?}",
            question.id
        );
        for choice in wrong(question) {
            let answer = match question.form {
                Form::All(_) | Form::Place(_) => Answer::Many(vec![choice.key.clone()]),
                _ => Answer::One(choice.key.clone()),
            };
            let verdict = question.grade(&answer);
            assert!(
                !verdict.right && verdict.per_cent == 0,
                "{}: {verdict:?}",
                question.id
            );
            assert_eq!(
                verdict.harm,
                choice.standing == Standing::Unsafe,
                "{}",
                question.id
            );
        }
    });
}

#[test]
fn orders_and_choices_earn_part_marks() {
    of_family("steps", |_, question| {
        let Answer::Order(mut keys) = question.best() else {
            panic!("{}", question.id)
        };
        keys.swap(0, 1);
        let swapped = question.grade(&Answer::Order(keys.clone()));
        // One of six pairs of four pieces stands the wrong way round.
        assert_eq!(
            (swapped.per_cent, swapped.right),
            (83, false),
            "{}",
            question.id
        );
        keys.reverse();
        assert!(
            question.grade(&Answer::Order(keys)).per_cent < 20,
            "{}",
            question.id
        );
    });
    of_family("lay", |_, question| {
        let Answer::Many(mut keys) = question.best() else {
            panic!("{}", question.id)
        };
        keys.pop();
        let verdict = question.grade(&Answer::Many(keys.clone()));
        assert_eq!(verdict.missed.len(), 1);
        assert!(
            (50..100).contains(&verdict.per_cent) && !verdict.right || keys.is_empty(),
            "{verdict:?}"
        );
        assert_eq!(
            question
                .grade(&Answer::Number(catalogue::quantity::Milli(1)))
                .per_cent,
            0
        );
    });
}
