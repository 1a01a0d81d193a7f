//! Laws that every question keeps, over the whole catalogue.

mod families;
mod whole;

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
    // A family of a few questions says little; from thirty on its share counts.
    let telling: Vec<_> = by_family
        .iter()
        .filter(|(_, (of, longest))| *of >= 30 && longest * 100 > of * 45)
        .collect();
    assert!(
        telling.is_empty(),
        "by its length the right option can be told in {telling:?}"
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
