//! Intervals, beta posteriors, forecasts, the sequential test and knowledge
//! tracing against scipy, statsmodels and hmmlearn (the file gives versions
//! and tolerances).

use serde::Deserialize;
use std::collections::BTreeMap;
use study::mastery::{
    BetaPosterior, Decision, Interval, KnowledgeTracing, Sequential, agresti_coull,
    clopper_pearson, jeffreys, wilson, wilson_corrected,
};

#[derive(Deserialize)]
struct Fixture {
    tolerance: f64,
    tolerance_hdi: f64,
    proportions: Vec<Proportion>,
    beta_posteriors: Vec<Posterior>,
    beta_binomial_forecasts: Vec<Forecast>,
    sequential_tests: Vec<Test>,
    knowledge_tracing: Vec<Tracing>,
}

type Ends = [f64; 2];

type Method = fn(usize, usize, f64) -> Interval;

#[derive(Deserialize)]
struct Proportion {
    successes: usize,
    trials: usize,
    #[serde(rename = "level_0.8")]
    level_80: Option<BTreeMap<String, Ends>>,
    #[serde(rename = "level_0.95")]
    level_95: Option<BTreeMap<String, Ends>>,
}

#[derive(Deserialize)]
struct Posterior {
    prior: Ends,
    successes: usize,
    trials: usize,
    mean: f64,
    sd: f64,
    equal_tail_90: Ends,
    equal_tail_95: Ends,
    hdi_90: Option<Ends>,
    #[serde(rename = "p_above_0.75")]
    above_75: f64,
    #[serde(rename = "p_above_0.6")]
    above_60: f64,
}

#[derive(Deserialize)]
struct Forecast {
    alpha: f64,
    beta: f64,
    items: u32,
    need: usize,
    p_pass: f64,
    mean_score: f64,
    sd_score: f64,
    score_interval_90: [usize; 2],
}

#[derive(Deserialize)]
struct Test {
    p0: f64,
    p1: f64,
    alpha: f64,
    beta: f64,
    log_upper: f64,
    log_lower: f64,
    answers: Vec<u8>,
    decision: String,
    decided_after: Option<usize>,
    llr_path: Vec<f64>,
}

#[derive(Deserialize)]
struct Tracing {
    p_init: f64,
    p_learn: f64,
    p_guess: f64,
    p_slip: f64,
    answers: Vec<u8>,
    p_known_given_answers: Vec<f64>,
    p_known_after_learning: Vec<f64>,
    p_next_correct: Vec<f64>,
    log_likelihood: f64,
}

fn fixture() -> Fixture {
    let text = include_str!("../../../tests/fixtures/intervals.json");
    serde_json::from_str(text).expect("the fixture is JSON")
}

fn agree(found: f64, wanted: f64, tolerance: f64, what: &str) {
    assert!(
        (found - wanted).abs() <= tolerance,
        "{what}: {found} against {wanted}"
    );
}

fn ends(found: Interval, wanted: Ends, tolerance: f64, what: &str) {
    agree(found.low, wanted[0], tolerance, what);
    agree(found.high, wanted[1], tolerance, what);
}

fn right(answers: &[u8]) -> Vec<bool> {
    answers.iter().map(|&answer| answer == 1).collect()
}

#[test]
fn every_interval_for_a_share_agrees() {
    let fixture = fixture();
    let methods: [(&str, Method); 7] = [
        ("wilson", wilson),
        ("scipy_wilson", wilson),
        ("scipy_wilsoncc", wilson_corrected),
        ("beta", clopper_pearson),
        ("scipy_exact", clopper_pearson),
        ("jeffreys", jeffreys),
        ("agresti_coull", agresti_coull),
    ];
    for p in &fixture.proportions {
        for (level, rows) in [(0.8, &p.level_80), (0.95, &p.level_95)] {
            assert_eq!(rows.is_none(), p.trials == 0);
            for (name, &wanted) in rows.iter().flatten() {
                let what = format!("{name} {level}: {} of {}", p.successes, p.trials);
                let method = methods.iter().find(|m| m.0 == name).expect(&what).1;
                ends(
                    method(p.successes, p.trials, level),
                    wanted,
                    fixture.tolerance,
                    &what,
                );
            }
        }
    }
}

#[test]
fn nothing_out_of_nothing_says_nothing() {
    for method in [wilson, wilson_corrected, clopper_pearson, agresti_coull] {
        ends(method(0, 0, 0.95), [0.0, 1.0], 0.0, "0 of 0");
    }
}

#[test]
fn every_beta_posterior_agrees() {
    let fixture = fixture();
    let near = fixture.tolerance;
    for p in &fixture.beta_posteriors {
        let what = format!("{:?}: {} of {}", p.prior, p.successes, p.trials);
        let prior = BetaPosterior {
            a: p.prior[0],
            b: p.prior[1],
        };
        let found = prior.after(p.successes, p.trials);
        agree(found.mean(), p.mean, near, &what);
        agree(found.sd(), p.sd, near, &what);
        ends(found.equal_tails(0.90), p.equal_tail_90, near, &what);
        ends(found.equal_tails(0.95), p.equal_tail_95, near, &what);
        agree(found.above(0.75), p.above_75, near, &what);
        agree(found.above(0.6), p.above_60, near, &what);
        let shortest = found.shortest(0.9);
        assert_eq!(shortest.is_some(), p.hdi_90.is_some(), "{what}");
        if let (Some(found), Some(wanted)) = (shortest, p.hdi_90) {
            ends(found, wanted, fixture.tolerance_hdi, &what);
        }
    }
}

#[test]
fn every_forecast_of_a_score_agrees() {
    let fixture = fixture();
    for f in &fixture.beta_binomial_forecasts {
        let what = format!("Beta({}, {}) over {}", f.alpha, f.beta, f.items);
        let found = BetaPosterior {
            a: f.alpha,
            b: f.beta,
        }
        .forecast(f.items);
        agree(found.pass(f.need), f.p_pass, fixture.tolerance, &what);
        agree(found.mean(), f.mean_score, fixture.tolerance, &what);
        agree(found.sd(), f.sd_score, fixture.tolerance, &what);
        let [low, high] = f.score_interval_90;
        assert_eq!(found.interval(0.9), (low, high), "{what}");
    }
}

#[test]
fn every_sequential_test_agrees() {
    let fixture = fixture();
    for t in &fixture.sequential_tests {
        let test = Sequential {
            p0: t.p0,
            p1: t.p1,
            alpha: t.alpha,
            beta: t.beta,
            longest: usize::MAX,
        };
        let what = format!("{} against {}", t.p0, t.p1);
        let (low, high) = test.bounds();
        agree(low, t.log_lower, fixture.tolerance, &what);
        agree(high, t.log_upper, fixture.tolerance, &what);
        let answers = right(&t.answers);
        let path = test.path(&answers);
        assert_eq!(path.len(), t.llr_path.len(), "{what}");
        for (found, wanted) in path.iter().zip(&t.llr_path) {
            agree(*found, *wanted, fixture.tolerance, &what);
        }
        let decision = match t.decision.as_str() {
            "mastered" => Decision::Mastered,
            "not_mastered" => Decision::NotMastered,
            _ => Decision::Undecided,
        };
        assert_eq!(test.decide(&answers), (decision, t.decided_after), "{what}");
    }
}

#[test]
fn every_trace_of_knowledge_agrees() {
    let fixture = fixture();
    for t in &fixture.knowledge_tracing {
        let (found, likelihood) = KnowledgeTracing {
            start: t.p_init,
            learn: t.p_learn,
            guess: t.p_guess,
            slip: t.p_slip,
        }
        .trace(&right(&t.answers));
        agree(
            likelihood,
            t.log_likelihood,
            fixture.tolerance,
            "likelihood",
        );
        assert_eq!(found.len(), t.answers.len());
        for (at, traced) in found.iter().enumerate() {
            agree(
                traced.known,
                t.p_known_given_answers[at],
                fixture.tolerance,
                "known",
            );
            agree(
                traced.after,
                t.p_known_after_learning[at],
                fixture.tolerance,
                "after",
            );
            agree(traced.next, t.p_next_correct[at], fixture.tolerance, "next");
        }
    }
}
