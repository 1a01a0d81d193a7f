//! A class report against pingouin, scipy, numpy, R psych and R betafunctions,
//! on a public simulated class (`class-report.json`, which names the versions;
//! tolerance 1e-8, for decision consistency 1e-6).

use crate::made::{Key, assignment, public, rows, table};
use class::report::{Gate, Report, Tries, dependability};
use serde_json::Value;

const CLOSE: f64 = 1e-8;
const DECISION: f64 = 1e-6;

fn close(own: f64, theirs: &Value, tolerance: f64, what: &str) {
    let theirs = theirs
        .as_f64()
        .unwrap_or_else(|| panic!("{what} is a number"));
    assert!(
        (own - theirs).abs() <= tolerance,
        "{what}: {own} against {theirs}"
    );
}

fn maybe(own: Option<f64>, theirs: &Value, what: &str) {
    match own {
        Some(own) => close(own, theirs, CLOSE, what),
        None => assert!(theirs.is_null(), "{what}: none against {theirs}"),
    }
}

fn of(public: &Value, pass_mark: u8) -> Report {
    let mut set = assignment(20);
    set.pass_mark = pass_mark;
    let key = Key::new(public["key"].as_str().unwrap(), false);
    let table = table(&set, &key, &rows(public));
    Report::of(&set, &table, Tries::First, &[])
}

#[test]
fn items_and_options_agree() {
    let public = public();
    let report = of(&public, 75);
    let theirs = public["item_statistics"].as_array().unwrap();
    assert_eq!(report.items.len(), theirs.len());
    for (own, theirs) in report.items.iter().zip(theirs) {
        let what = |part: &str| format!("item {} {part}", theirs["index"]);
        close(own.p, &theirs["p"], CLOSE, &what("p"));
        close(own.variance, &theirs["variance"], CLOSE, &what("variance"));
        assert_eq!(own.blank, theirs["blank"], "{}", what("blank"));
        maybe(own.r, &theirs["r_item_rest"], &what("r"));
        close(
            own.d27.unwrap(),
            &theirs["d_upper_lower_27"],
            CLOSE,
            &what("d27"),
        );
        maybe(
            own.alpha_without,
            &theirs["alpha_if_dropped"],
            &what("alpha without"),
        );
        assert_eq!(own.gate, Gate::Provisional);
        assert!(own.flags.is_empty(), "26 seats are too few for flags");
        for (own, theirs) in own
            .options
            .iter()
            .zip(theirs["options"].as_array().unwrap())
        {
            let what = |part: &str| what(&format!("{} {part}", own.id));
            assert_eq!(*own.id, *theirs["option"].as_str().unwrap());
            assert_eq!(own.fits, theirs["is_key"], "{}", what("key"));
            assert_eq!(own.count, theirs["count"], "{}", what("count"));
            close(own.share, &theirs["share"], CLOSE, &what("share"));
            maybe(own.r, &theirs["r_with_rest"], &what("r"));
            maybe(
                own.mean_score,
                &theirs["mean_total_of_choosers"],
                &what("mean"),
            );
            assert_eq!(
                serde_json::json!(own.thirds),
                theirs["count_low_mid_high_third"]
            );
            assert_eq!(serde_json::json!(own.ends), theirs["count_lower_upper_27"]);
        }
    }
}

#[test]
fn reliability_agrees() {
    let public = public();
    let report = of(&public, 75);
    assert_eq!(serde_json::json!(report.scores.totals), public["totals"]);
    close(report.scores.mean, &public["mean"], CLOSE, "mean");
    close(report.scores.sd(), &public["sd"], CLOSE, "sd");
    let own = report.reliability.expect("it can be estimated");
    close(own.alpha, &public["alpha"], CLOSE, "alpha");
    close(own.alpha, &public["kr20"], CLOSE, "KR-20");
    close(own.kr21, &public["kr21"], CLOSE, "KR-21");
    close(own.error, &public["sem"], CLOSE, "SEM");
    // Their interval is rounded to three digits.
    close(
        own.interval.0,
        &public["alpha_interval_95"][0],
        0.0005,
        "low",
    );
    close(
        own.interval.1,
        &public["alpha_interval_95"][1],
        0.0005,
        "high",
    );
    let phi = dependability(&report.scores, 15.0 / 20.0).unwrap();
    close(
        phi,
        &public["brennan_kane_phi_lambda_75"],
        CLOSE,
        "Phi(lambda)",
    );
    assert_eq!(report.dependability, Ok(phi));
}

#[test]
fn decision_consistency_agrees() {
    let public = public();
    let beside = include_str!("../../../../tests/fixtures/class-crosscheck.json");
    let beside: Value = serde_json::from_str(beside).unwrap();
    for (place, pass_mark) in [60, 75].into_iter().enumerate() {
        let report = of(&public, pass_mark);
        let theirs = &public["decision_consistency"][place];
        assert_eq!(report.cut, theirs["cut_score"]);
        let passed = report.seats.iter().filter(|s| s.passed).count();
        assert_eq!(passed, theirs["observed_pass"]);
        let own = report.consistency.expect("it can be estimated");
        let hb = &theirs["hanson_brennan"];
        close(own.lords_k, &hb["lords_k"], DECISION, "K");
        close(own.beta.0, &hb["alpha"], DECISION, "A");
        close(own.beta.1, &hb["beta"], DECISION, "B");
        close(own.passing, &hb["p_pass"], DECISION, "passing");
        close(own.agreement, &hb["agreement"], DECISION, "agreement");
        close(own.chance, &hb["chance"], DECISION, "chance");
        close(own.kappa, &hb["kappa"], DECISION, "kappa");
        close(own.accuracy, &hb["accuracy"], DECISION, "accuracy");
        // R betafunctions 1.9.0, HB.CA: within 2e-6.
        let r = &beside["classes"][0]["decision"][place]["hanson_brennan"];
        close(own.agreement, &r["agreement"], 2e-6, "agreement in R");
        close(own.kappa, &r["kappa"], 2e-6, "kappa in R");
        close(own.accuracy, &r["accuracy"], 2e-6, "accuracy in R");
        let checks = report.cross_checks.expect("they can be worked out");
        close(
            checks.subkoviak.0,
            &theirs["subkoviak"]["agreement"],
            DECISION,
            "Subkoviak",
        );
        close(
            checks.subkoviak.1,
            &theirs["subkoviak"]["kappa"],
            DECISION,
            "Subkoviak kappa",
        );
        let huynh = checks.huynh.expect("KR-21 is above 0");
        close(huynh.0, &theirs["huynh"]["agreement"], DECISION, "Huynh");
        close(huynh.1, &theirs["huynh"]["kappa"], DECISION, "Huynh kappa");
    }
}

/// R psych 2.2.9 leaves out items without variance, and agrees on the others.
#[test]
fn item_rest_correlations_agree_with_r() {
    let report = of(&public(), 75);
    let beside = include_str!("../../../../tests/fixtures/class-crosscheck.json");
    let beside: Value = serde_json::from_str(beside).unwrap();
    let theirs = &beside["classes"][0];
    for (place, r) in theirs["items_with_variance"]
        .as_array()
        .unwrap()
        .iter()
        .zip(theirs["r_drop"].as_array().unwrap())
    {
        let place = usize::try_from(place.as_u64().unwrap()).unwrap();
        close(report.items[place].r.unwrap(), r, CLOSE, "r.drop");
    }
}
