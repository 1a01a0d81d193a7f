//! Ability against adaptive quadrature and root finding in scipy, and against
//! the Python packages mirt, girth and catsim (the files give versions and tolerances);
//! LSAT section 6 (Bock and Lieberman 1970) with item parameters fitted there.

use serde::Deserialize;
use study::mastery::{Normal, Responses, information, pass_chance, scores};

#[derive(Deserialize)]
struct Fixture {
    tolerance: Tolerance,
    sets: Vec<Set>,
}

#[derive(Deserialize)]
struct Tolerance {
    eap: f64,
    posterior_sd: f64,
    p_theta_ge_cut: f64,
    map: f64,
    ml: f64,
    wle: f64,
}

#[derive(Deserialize)]
struct Set {
    id: String,
    discrimination: Vec<f64>,
    difficulty: Vec<f64>,
    prior_mean: f64,
    prior_sd: f64,
    cut_theta: f64,
    records: Vec<Record>,
    score_given_theta: Vec<Scores>,
}

#[derive(Deserialize)]
struct Record {
    answers: Vec<Option<u8>>,
    eap: f64,
    posterior_sd: f64,
    p_theta_ge_cut: f64,
    map: f64,
    map_se: f64,
    ml: Option<f64>,
    ml_se: Option<f64>,
    wle: Option<f64>,
}

#[derive(Deserialize)]
struct Scores {
    theta: f64,
    score_pmf: Vec<f64>,
    test_information: f64,
    pass_if_at_least: usize,
    p_pass: f64,
}

fn agree(found: f64, wanted: f64, tolerance: f64, what: &str) {
    assert!(
        (found - wanted).abs() <= tolerance,
        "{what}: {found} against {wanted}"
    );
}

#[test]
fn every_record_of_the_fixture_agrees() {
    let text = include_str!("../../../tests/fixtures/ability.json");
    let fixture: Fixture = serde_json::from_str(text).expect("the fixture is JSON");
    let near = &fixture.tolerance;
    for set in &fixture.sets {
        let prior = Normal {
            mean: set.prior_mean,
            sd: set.prior_sd,
        };
        for (row, record) in set.records.iter().enumerate() {
            let what = format!("{} record {row}", set.id);
            let mut responses = Responses::default();
            for ((a, b), answer) in set
                .discrimination
                .iter()
                .zip(&set.difficulty)
                .zip(&record.answers)
            {
                if let Some(answer) = answer {
                    responses.add(*a, *b, *answer == 1, 1.0);
                }
            }
            let posterior = responses.posterior(prior);
            agree(posterior.mean, record.eap, near.eap, &what);
            agree(posterior.sd, record.posterior_sd, near.posterior_sd, &what);
            let over = responses.at_least(prior, set.cut_theta);
            agree(over, record.p_theta_ge_cut, near.p_theta_ge_cut, &what);
            let map = responses.likeliest(prior);
            agree(map.theta, record.map, near.map, &what);
            agree(map.error, record.map_se, near.map, &what);
            let ml = responses.maximum_likelihood();
            assert_eq!(ml.is_some(), record.ml.is_some(), "{what}");
            if let (Some(found), Some(theta), Some(error)) = (ml, record.ml, record.ml_se) {
                agree(found.theta, theta, near.ml, &what);
                agree(found.error, error, near.ml, &what);
            }
            let wle = responses.weighted_likelihood();
            assert_eq!(wle.is_some(), record.wle.is_some(), "{what}");
            if let (Some(found), Some(wanted)) = (wle, record.wle) {
                agree(found.theta, wanted, near.wle, &what);
            }
        }
        let form: Vec<(f64, f64)> = set
            .discrimination
            .iter()
            .copied()
            .zip(set.difficulty.iter().copied())
            .collect();
        for row in &set.score_given_theta {
            let what = format!("{} at {}", set.id, row.theta);
            let chances: Vec<f64> = form
                .iter()
                .map(|(a, b)| 1.0 / (1.0 + (-a * (row.theta - b)).exp()))
                .collect();
            let found = scores(&chances);
            assert_eq!(found.len(), row.score_pmf.len());
            for (found, wanted) in found.iter().zip(&row.score_pmf) {
                agree(*found, *wanted, 1e-11, &what);
            }
            agree(
                information(row.theta, &form),
                row.test_information,
                1e-10,
                &what,
            );
            agree(
                pass_chance(row.theta, &form, row.pass_if_at_least),
                row.p_pass,
                1e-10,
                &what,
            );
        }
    }
}

#[derive(Deserialize)]
struct Lsat {
    patterns: Vec<String>,
    frequencies: Vec<f64>,
    mml: std::collections::BTreeMap<String, Fitted>,
}

#[derive(Deserialize)]
struct Fitted {
    discrimination: Vec<f64>,
    difficulty: Vec<f64>,
    eap_by_pattern: Vec<f64>,
    posterior_sd_by_pattern: Vec<f64>,
}

#[test]
fn abilities_on_lsat_section_6_agree_for_all_patterns_and_models() {
    let text = include_str!("../../../tests/fixtures/lsat6.json");
    let lsat: Lsat = serde_json::from_str(text).expect("the fixture is JSON");
    // The true data, not another set that goes by its name.
    agree(lsat.frequencies.iter().sum(), 1000.0, 0.0, "examinees");
    assert_eq!(lsat.mml.len(), 3);
    for (name, model) in &lsat.mml {
        for (at, pattern) in lsat.patterns.iter().enumerate() {
            let mut responses = Responses::default();
            for ((a, b), answer) in model
                .discrimination
                .iter()
                .zip(&model.difficulty)
                .zip(pattern.chars())
            {
                responses.add(*a, *b, answer == '1', 1.0);
            }
            let found = responses.posterior(Normal::STANDARD);
            let what = format!("{name} {pattern}");
            agree(found.mean, model.eap_by_pattern[at], 1e-5, &what);
            agree(found.sd, model.posterior_sd_by_pattern[at], 1e-5, &what);
        }
    }
}

#[test]
fn long_and_one_sided_records_stay_exact() {
    // No published value: a finer grid of its own is the yardstick.
    for count in [0_u32, 1, 60, 1000, 20_000] {
        for right in [true, false] {
            let mut responses = Responses::default();
            for n in 0..count {
                let b = f64::from(n % 21) / 10.0 - 1.0;
                responses.add(1.0, b, right || n % 3 == 0, 1.0);
            }
            let found = responses.posterior(Normal::STANDARD);
            let (mut sum, mut mean) = (0.0, 0.0);
            let ln = |theta: f64| {
                let each = |n: u32| {
                    let z = theta - (f64::from(n) / 10.0 - 1.0);
                    (-(1.0 + (-z).exp()).ln(), -(1.0 + z.exp()).ln())
                };
                let mut ln = -0.5 * theta * theta;
                for n in 0..21 {
                    let (yes, no) = each(n);
                    let all = f64::from((count + 20 - n) / 21);
                    // Of the numbers n, n + 21, n + 42 ... every third is a multiple of 3
                    // only where n is, and then all of them are.
                    let good = if right || n % 3 == 0 { all } else { 0.0 };
                    ln += good * yes + (all - good) * no;
                }
                ln
            };
            let at = |k: u32| f64::from(k) / 2000.0 - 12.0;
            let most = (0..48_000)
                .map(|k| ln(at(k)))
                .fold(f64::NEG_INFINITY, f64::max);
            for k in 0..48_000 {
                let p = (ln(at(k)) - most).exp();
                sum += p;
                mean += p * at(k);
            }
            agree(found.mean, mean / sum, 1e-5, &format!("{count} {right}"));
            let half = responses.at_least(Normal::STANDARD, found.mean);
            assert!((0.4..0.6).contains(&half), "{count} {right}: {half}");
        }
    }
}
