//! Forms against the exact optimum of an integer program (scipy milp with `HiGHS`;
//! the file gives versions): quotas exactly, every hard rule, and at least
//! 0.97 of the most information.

use serde::Deserialize;
use std::collections::BTreeMap;
use study::{
    form::{Mode, Request, assemble, quotas},
    item::{Bank, Blueprint, Difficulty, Item, Share},
};

#[derive(Deserialize)]
struct Fixture {
    tolerance: f64,
    quotas: Vec<Quota>,
    forms: Vec<Case>,
}

#[derive(Deserialize)]
struct Quota {
    weights: Vec<f64>,
    n: usize,
    #[serde(rename = "quota")]
    wanted: Vec<usize>,
}

#[derive(Deserialize)]
struct Case {
    id: String,
    n: usize,
    quota: Vec<usize>,
    second_limit: u32,
    theta_cut: f64,
    pool: Vec<Pooled>,
    max_information: Option<f64>,
    min_seen: Option<u32>,
    max_information_at_min_seen: Option<f64>,
}

#[derive(Deserialize)]
struct Pooled {
    id: u32,
    domain: usize,
    b: f64,
    seconds: u32,
    enemy: Option<u32>,
    seen: u32,
}

fn fixture() -> Fixture {
    let text = include_str!("../../../tests/fixtures/assembly.json");
    serde_json::from_str(text).expect("the fixture is JSON")
}

/// The case as a bank whose weights are its quotas.
fn bank(case: &Case) -> Bank {
    let share = |(domain, &quota): (usize, &usize)| Share {
        id: domain.to_string(),
        name: format!("Domain {domain}"),
        weight: f64::from(u32::try_from(quota).unwrap()),
    };
    let item = |p: &Pooled| Item {
        id: format!("{:04}", p.id),
        competency: p.domain.to_string(),
        family: format!("family of {}", p.id),
        difficulty: Difficulty { mean: p.b, sd: 0.0 },
        seconds: p.seconds,
        guess: 0.25,
        procedures: Vec::new(),
        enemies: p.enemy.iter().map(ToString::to_string).collect(),
    };
    let blueprint = Blueprint(case.quota.iter().enumerate().map(share).collect());
    let (bank, flaws) = Bank::new(blueprint, case.pool.iter().map(item));
    assert_eq!(flaws, []);
    bank
}

fn information(case: &Case, places: &[usize]) -> f64 {
    let info = |place: &usize| {
        let p = 1.0 / (1.0 + (case.pool[*place].b - case.theta_cut).exp());
        p * (1.0 - p)
    };
    places.iter().map(info).sum()
}

fn check_hard_rules(case: &Case, places: &[usize], what: &str) {
    let mut sorted = places.to_vec();
    sorted.sort_unstable();
    sorted.dedup();
    assert_eq!((places.len(), sorted.len()), (case.n, case.n), "{what}");
    let mut enemies: BTreeMap<u32, u32> = BTreeMap::new();
    let mut counts = vec![0; case.quota.len()];
    for &place in places {
        counts[case.pool[place].domain] += 1;
        if let Some(group) = case.pool[place].enemy {
            *enemies.entry(group).or_default() += 1;
        }
    }
    assert_eq!(counts, case.quota, "{what}");
    assert!(enemies.values().all(|&n| n == 1), "{what}: {enemies:?}");
    let seconds: u32 = places.iter().map(|&place| case.pool[place].seconds).sum();
    assert!(seconds <= case.second_limit, "{what}: {seconds}");
}

#[test]
fn every_quota_agrees() {
    for q in fixture().quotas {
        assert_eq!(quotas(&q.weights, q.n), q.wanted, "{:?} {}", q.weights, q.n);
    }
}

#[test]
fn the_sharpest_form_is_near_the_optimum_for_every_seed() {
    let fixture = fixture();
    for case in &fixture.forms {
        let Some(most) = case.max_information else {
            continue;
        };
        let bank = bank(case);
        for seed in 0..40 {
            let what = format!("{} seed {seed}", case.id);
            let request = Request {
                size: case.n,
                seconds: Some(case.second_limit),
                cut: case.theta_cut,
                seed,
                mode: Mode::Sharpest,
            };
            let form = assemble(&bank, &request).expect(&what);
            check_hard_rules(case, &form.places, &what);
            let found = information(case, &form.places);
            assert!((form.information - found).abs() < 1e-4, "{what}");
            assert!(
                found <= most + fixture.tolerance,
                "{what}: beyond the optimum"
            );
            assert!(found >= 0.97 * most, "{what}: {found} of {most}");
        }
    }
}

#[test]
fn the_freshest_form_shows_what_was_shown_least() {
    for case in &fixture().forms {
        let (Some(least), Some(most)) = (case.min_seen, case.max_information_at_min_seen) else {
            continue;
        };
        let bank = bank(case);
        let mode = Mode::Freshest {
            showings: case.pool.iter().map(|p| p.seen).collect(),
        };
        let request = Request {
            size: case.n,
            seconds: Some(case.second_limit),
            cut: case.theta_cut,
            seed: 1,
            mode,
        };
        let form = assemble(&bank, &request).expect(&case.id);
        check_hard_rules(case, &form.places, &case.id);
        let seen: u32 = form.places.iter().map(|&place| case.pool[place].seen).sum();
        let found = information(case, &form.places);
        assert_eq!(seen, least, "{}", case.id);
        assert!(found >= 0.97 * most, "{}: {found} of {most}", case.id);
    }
}
