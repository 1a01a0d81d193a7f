//! Laws that every question keeps, over the whole catalogue.

use catalogue::{Catalogue, plans::CheckKind, procedures::Procedure};
use clinic::{Clinic, standing::Standing, tooth::Tooth};
use proptest::prelude::*;
use std::{
    collections::{BTreeMap, BTreeSet},
    path::Path,
    rc::Rc,
};
use study::question::{Answer, Bank, Choice, Form, Question, QuestionId, Shown, Study};

fn read() -> Catalogue {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    catalogue::source::read(&content).expect("content without faults")
}

thread_local! {
    static CLINIC: Clinic = Clinic::new(Rc::new(read()));
    static BANK: Bank = CLINIC.with(Bank::new);
}

fn with_bank<T>(does: impl FnOnce(&Clinic, &Bank) -> T) -> T {
    CLINIC.with(|clinic| BANK.with(|bank| does(clinic, bank)))
}

/// Every question, once for each seed.
fn every(seeds: &[u64], mut looks: impl FnMut(&Clinic, &Question)) {
    with_bank(|clinic, bank| {
        for id in bank.ids() {
            for seed in seeds {
                let question = bank.write(id, *seed);
                let question = question.unwrap_or_else(|| panic!("{id} is listed and not written"));
                looks(clinic, &question);
            }
        }
    });
}

/// The questions of one family, for one seed.
fn of_family(family: &str, mut looks: impl FnMut(&Clinic, &Question)) {
    let mut count = 0;
    every_of(family, |clinic, question| {
        count += 1;
        looks(clinic, question);
    });
    assert!(count > 0, "{family} yields nothing");
}

fn every_of(family: &str, mut looks: impl FnMut(&Clinic, &Question)) {
    with_bank(|clinic, bank| {
        for id in bank.ids().iter().filter(|id| id.family() == family) {
            looks(
                clinic,
                &bank.write(id, 11).expect("a listed question is written"),
            );
        }
    });
}

fn right(question: &Question) -> Vec<&Choice> {
    let all = question.form.choices().iter();
    all.filter(|c| c.standing <= Standing::Acceptable).collect()
}

fn wrong(question: &Question) -> Vec<&Choice> {
    let all = question.form.choices().iter();
    all.filter(|c| c.standing >= Standing::Wrong).collect()
}

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
        for line in include_str!("fixtures/question-ids.txt")
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

#[test]
fn what_is_missing_is_used_and_what_is_offered_beside_it_never_is() {
    // By another route: the tray as `clinic` lays it, and its reader's profiles.
    with_bank(|clinic, _| {
        let reader = clinic.tray_reader();
        let usual = clinic.reason(&clinic.usual_patient()).patient;
        for family in ["missing", "stray", "lay"] {
            of_family(family, |_, question| {
                let procedure = question.id.fact()[0].into();
                let wanted: Vec<_> = clinic.tray(&procedure, &usual).target().stages.concat();
                let item = |c: &Choice| c.item.clone().expect("an item");
                let (belongs, strays) = match family {
                    "stray" => (wrong(question), right(question)),
                    _ => (right(question), wrong(question)),
                };
                assert!(
                    belongs.iter().all(|c| wanted.contains(&item(c))),
                    "{}",
                    question.id
                );
                assert!(
                    strays.iter().all(|c| !reader.uses(&procedure, &item(c))),
                    "{}",
                    question.id
                );
            });
        }
    });
}

#[test]
fn a_tray_reads_as_the_treatment_it_is_laid_for() {
    with_bank(|clinic, _| {
        let reader = clinic.tray_reader();
        of_family("reading", |_, question| {
            let Shown::Items(items) = &question.shown else {
                panic!("{}", question.id)
            };
            let read = reader.read_so_far(items);
            let place = |key: &str| read.iter().position(|r| r.procedure.as_str() == key);
            let own = place(&right(question)[0].key);
            assert!(
                wrong(question).iter().all(|c| place(&c.key) > own),
                "{}",
                question.id
            );
        });
    });
}

#[test]
fn stages_are_those_of_the_laid_tray() {
    with_bank(|clinic, _| {
        let usual = clinic.reason(&clinic.usual_patient()).patient;
        of_family("stage", |_, question| {
            let fact = question.id.fact();
            let tray = clinic.tray(&fact[0].into(), &usual);
            let stage = tray
                .items()
                .find(|(_, i)| i.item.as_str() == fact[1])
                .map(|(s, _)| s.to_lowercase());
            assert_eq!(
                stage,
                Some(right(question)[0].text.to_lowercase()),
                "{}",
                question.id
            );
        });
    });
}

#[test]
fn what_comes_next_comes_next_for_patients_of_every_kind() {
    with_bank(|clinic, _| {
        let usual = clinic.usual_patient();
        let mut patients = vec![usual.clone()];
        for (finding, word) in [
            ("isolation", "cotton-rolls"),
            ("cavity-class", "class-ii"),
            ("dentition", "primary"),
            ("allergy-methacrylate", "yes"),
            ("planned-permanent", "amalgam"),
        ] {
            patients.push(clinic.with(&usual, finding, word));
        }
        let patients: Vec<_> = patients.iter().map(|p| clinic.reason(p).patient).collect();
        of_family("next", |_, question| {
            let fact = question.id.fact();
            for patient in &patients {
                let steps = clinic.steps(&fact[0].into(), patient);
                let at = steps
                    .iter()
                    .position(|s| s.procedure.as_str() == fact[0] && s.step.id.as_str() == fact[1]);
                let next = &steps[at.expect("the step is there for everybody") + 1]
                    .step
                    .id;
                assert_eq!(next.as_str(), right(question)[0].key, "{}", question.id);
                assert!(
                    wrong(question).iter().all(|c| c.key != next.as_str()),
                    "{}",
                    question.id
                );
            }
        });
    });
}

#[test]
fn what_leaves_the_tray_leaves_it() {
    of_family("patient", |clinic, question| {
        let fact = question.id.fact();
        let procedure = fact[0].into();
        let usual = clinic.reason(&clinic.usual_patient()).patient;
        let standard: BTreeSet<_> = clinic
            .tray(&procedure, &usual)
            .items()
            .map(|(_, i)| i.item.clone())
            .collect();
        // Some flag must change exactly so; which one is not asked of the question.
        let flags = [
            "allergy-eugenol",
            "allergy-latex",
            "allergy-methacrylate",
            "sulfite-sensitivity",
        ];
        let proved = flags.iter().any(|flag| {
            let patient = clinic.reason(&clinic.with(&usual, flag, "yes")).patient;
            let own: BTreeSet<_> = clinic
                .tray(&procedure, &patient)
                .items()
                .map(|(_, i)| i.item.clone())
                .collect();
            let changed = |c: &&Choice| {
                let item = c.item.as_ref().expect("an item");
                if fact[2] == "goes" {
                    standard.contains(item) && !own.contains(item)
                } else {
                    own.contains(item)
                }
            };
            right(question).iter().all(changed) && !wrong(question).iter().any(changed)
        });
        assert!(proved, "{}", question.id);
    });
}

#[test]
fn a_tooth_is_called_alike_in_every_system() {
    // By arithmetic of its own: quadrant and place against the Universal count.
    let universal = |fdi: u8| {
        let (quadrant, place) = (fdi / 10, fdi % 10);
        let count = match quadrant {
            1 => 9 - place,
            2 => 8 + place,
            3 => 25 - place,
            4 => 24 + place,
            5 => 6 - place,
            6 => 5 + place,
            7 => 16 - place,
            _ => 15 + place,
        };
        if quadrant > 4 {
            char::from(b'@' + count).to_string()
        } else {
            count.to_string()
        }
    };
    of_family("tooth", |_, question| {
        let fact = question.id.fact();
        let fdi: u8 = fact[0].parse().expect("a number");
        if let Form::Number { from, to, .. } = question.form {
            let wanted = if fact[2] == "fdi" {
                fdi.to_string()
            } else {
                universal(fdi)
            };
            assert_eq!((from, from.to_string()), (to, wanted), "{}", question.id);
        } else {
            for choice in question.form.choices() {
                let tooth: u8 = choice.key.parse().expect("a number");
                assert_eq!(
                    tooth == fdi,
                    choice.standing == Standing::Right,
                    "{}",
                    question.id
                );
                assert!(Tooth::from_fdi(tooth).is_some());
                if fact[2] == "universal" {
                    assert_eq!(choice.text, universal(tooth), "{}", question.id);
                }
            }
        }
    });
}

#[test]
fn dates_and_signs_are_those_of_the_plans() {
    of_family("interval", |clinic, question| {
        let plan = clinic
            .catalogue()
            .plan(&question.id.fact()[0].into())
            .expect("a plan");
        let days = |c: &Choice| {
            c.key
                .trim_start_matches("days-")
                .parse::<u32>()
                .expect("days")
        };
        let some = |d: u32| plan.recalls.iter().any(|r| r.days.contains(d));
        assert!(
            right(question).iter().all(|c| some(days(c))),
            "{}",
            question.id
        );
        // Where no date hangs on the patient, every date of the plan is acceptable.
        if plan.recalls.iter().all(|r| r.when.is_none()) {
            assert!(
                wrong(question).iter().all(|c| !some(days(c))),
                "{}",
                question.id
            );
        }
    });
    of_family("sooner", |clinic, question| {
        let kind = |c: &Choice| {
            clinic
                .catalogue()
                .check(&c.key.as_str().into())
                .map(|c| c.kind)
        };
        assert!(
            right(question)
                .iter()
                .all(|c| kind(c) == Some(CheckKind::Sign)),
            "{}",
            question.id
        );
        assert!(
            wrong(question)
                .iter()
                .all(|c| kind(c) == Some(CheckKind::Expected)),
            "{}",
            question.id
        );
    });
}

#[test]
fn no_wrong_option_is_stated_of_the_thing_anywhere_in_the_procedure() {
    let procedure_of = |clinic: &Clinic, question: &Question| -> Procedure {
        clinic
            .catalogue()
            .procedure(&question.id.fact()[0].into())
            .expect("a procedure")
            .clone()
    };
    of_family("why", |clinic, question| {
        let procedure = procedure_of(clinic, question);
        let item = question.id.fact()[1];
        let said: Vec<String> = procedure
            .steps
            .iter()
            .flat_map(|s| s.uses.0.iter().chain(&s.at_hand.0))
            .filter(|u| u.item.as_str() == item)
            .map(|u| u.reason.to_lowercase())
            .collect();
        let says = |c: &Choice| said.contains(&c.text.trim_end_matches('.').to_lowercase());
        assert!(right(question).into_iter().all(says), "{}", question.id);
        assert!(!wrong(question).into_iter().any(says), "{}", question.id);
    });
    of_family("law", |clinic, question| {
        let procedure = procedure_of(clinic, question);
        for choice in question.form.choices() {
            let step = procedure
                .steps
                .iter()
                .find(|s| s.id.as_str() == choice.key)
                .expect("a step");
            assert_eq!(
                step.local_law,
                choice.standing == Standing::Right,
                "{}",
                question.id
            );
        }
    });
    of_family("contains", |clinic, question| {
        for choice in question.form.choices() {
            let item = clinic
                .catalogue()
                .item(choice.item.as_ref().expect("an item"))
                .expect("known");
            let has = item
                .contains()
                .iter()
                .any(|s| s.as_str() == question.id.fact()[0]);
            assert_eq!(has, choice.standing == Standing::Right, "{}", question.id);
        }
    });
}

#[test]
fn length_and_place_do_not_give_the_right_option_away() {
    let (mut all, mut longest, mut first) = (0, 0, 0);
    let mut by_family: BTreeMap<&str, (usize, usize)> = BTreeMap::new();
    every(&[8, 9], |_, question| {
        let choices = question.form.choices();
        if !matches!(question.form, Form::One(_) | Form::Name(_)) || choices.len() != 4 {
            return;
        }
        let own = right(question)[0];
        let is_longest = choices
            .iter()
            .all(|c| c.key == own.key || c.text.len() < own.text.len());
        all += 1;
        longest += usize::from(is_longest);
        first += usize::from(choices[0].key == own.key);
        let of = by_family.entry(question.family).or_default();
        of.0 += 1;
        of.1 += usize::from(is_longest);
    });
    println!(
        "{all} questions, the right option longest in {longest}, first in {first}\n{by_family:?}"
    );
    // By chance both are a quarter.
    assert!(
        longest * 100 <= all * 33,
        "the right option is the longest in {longest} of {all}"
    );
    assert!(
        (22..=28).contains(&(first * 100 / all)),
        "the right option is first in {first} of {all}"
    );
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn any_seed_writes_the_same_question_twice(place in 0usize..100_000, seed: u64) {
        with_bank(|_, bank| {
            let id = &bank.ids()[place % bank.ids().len()];
            let question = bank.write(id, seed).expect("a listed question is written");
            assert_eq!(bank.write(id, seed), Some(question));
        });
    }

    #[test]
    fn no_answer_is_worth_more_than_all_or_breaks_grading(place in 0usize..100_000, seed: u64, keys in prop::collection::vec("[a-z0-9-]{0,8}", 0..6), number: i32) {
        with_bank(|_, bank| {
            let question = bank.write(&bank.ids()[place % bank.ids().len()], seed).expect("written");
            let pairs = keys.iter().cloned().zip(keys.iter().rev().cloned()).collect();
            for answer in [
                Answer::One(keys.first().cloned().unwrap_or_default()),
                Answer::Many(keys.clone()),
                Answer::Order(keys.clone()),
                Answer::Pairs(pairs),
                Answer::Number(catalogue::quantity::Milli(number)),
            ] {
                let verdict = question.grade(&answer);
                assert!(verdict.per_cent <= 100 && !verdict.says.is_empty());
                assert!(!verdict.right || verdict.per_cent == 100);
            }
        });
    }
}
