//! What is published of other classes, and the numbers of the public class that
//! follow from ours by arithmetic alone. Left out of `class-report.json`: the
//! odd-even split, which no report of ours shows; of `lsat6.json`: the models,
//! which `study` is held to, and estimates of them, which nothing here makes.

use crate::made::{Key, assignment, public, rows, table};
use class::report::{Report, Tries};
use serde_json::Value;

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

fn close(own: f64, theirs: &Value, tolerance: f64, what: &str) {
    let theirs = number(theirs);
    assert!(
        (own - theirs).abs() <= tolerance,
        "{what}: {own} against {theirs}"
    );
}

fn of(key: &str, rows: &[&str], pass_mark: u8) -> Report {
    let mut set = assignment(u16::try_from(key.len()).expect("few"));
    set.pass_mark = pass_mark;
    let table = table(&set, &Key::new(key, false), rows);
    Report::of(&set, &table, Tries::First, &[])
}

/// Correlation with the total from that with the rest: the total is the rest
/// and the item.
fn with_total(r: f64, item: f64, total: f64) -> f64 {
    let rest = (total.powi(2) - item.powi(2) * (1.0 - r * r)).sqrt() - r * item;
    (r * rest + item) / total
}

/// LSAT section 6 (Bock and Lieberman 1970), a thousand examinees: R psych and
/// pingouin, tolerance 1e-9.
#[test]
fn the_classical_numbers_of_a_published_class_agree() {
    let text = include_str!("../../../../tests/fixtures/lsat6.json");
    let lsat: Value = serde_json::from_str(text).expect("JSON");
    let list = |name: &str| lsat[name].as_array().expect("a list").clone();
    let mut rows = Vec::new();
    for (pattern, count) in list("patterns").iter().zip(list("frequencies")) {
        let letters = pattern.as_str().expect("a pattern");
        let letters = letters.replace('1', "A").replace('0', "B");
        let count = usize::try_from(count.as_u64().expect("a count")).expect("few");
        rows.extend(vec![letters; count]);
    }
    let rows: Vec<&str> = rows.iter().map(String::as_str).collect();
    let report = of("AAAAA", &rows, 60);
    let theirs = &lsat["classical"];
    assert_eq!(report.seats.len() as u64, theirs["n"].as_u64().expect("n"));
    let exact = number(&lsat["tolerance"]["classical"]);
    close(report.scores.mean, &theirs["total_mean"], exact, "mean");
    close(report.scores.sd(), &theirs["total_sd"], exact, "sd");
    let own = report.reliability.as_ref().expect("it can be estimated");
    close(own.alpha, &theirs["alpha_pingouin"], exact, "alpha");
    close(own.alpha, &theirs["kr20_population"], exact, "KR-20");
    close(own.alpha, &lsat["alpha_psych"], exact, "alpha in R");
    close(own.error, &theirs["sem"], exact, "SEM");
    for (at, item) in report.items.iter().enumerate() {
        let r = item.r.expect("it varies");
        let total = with_total(r, item.variance.sqrt(), report.scores.sd());
        let alpha = item.alpha_without.expect("there are others");
        close(item.p, &theirs["p"][at], exact, "p");
        close(item.p, &lsat["p"][at], exact, "p");
        close(r, &theirs["r_item_rest"][at], exact, "r with the rest");
        close(r, &lsat["r_drop_psych"][at], exact, "r with the rest in R");
        close(
            total,
            &theirs["r_item_total"][at],
            exact,
            "r with the total",
        );
        close(
            alpha,
            &lsat["alpha_if_dropped_psych"][at],
            exact,
            "alpha without",
        );
    }
}

/// What R says of the public class.
fn in_r() -> Value {
    let beside = include_str!("../../../../tests/fixtures/class-crosscheck.json");
    let mut beside: Value = serde_json::from_str(beside).expect("JSON");
    beside["classes"][0].take()
}

#[test]
fn what_decisions_rest_on_agrees_too() {
    let (public, beside) = (public(), in_r());
    let rows = rows(&public);
    let key = public["key"].as_str().expect("letters");
    for (place, decision) in public["decision_consistency"]
        .as_array()
        .expect("a list")
        .iter()
        .enumerate()
    {
        let mark = (number(&decision["cut_fraction"]) * 100.0).round();
        let report = of(key, &rows, [60, 75][place]);
        assert!((mark - f64::from(report.pass_mark)).abs() < 1e-9);
        let reliability = report.reliability.as_ref().expect("it can be estimated");
        let (hb, subkoviak, huynh) = (
            &decision["hanson_brennan"],
            &decision["subkoviak"],
            &decision["huynh"],
        );
        close(
            reliability.alpha,
            &hb["reliability_used"],
            1e-8,
            "alpha used",
        );
        close(
            reliability.alpha,
            &subkoviak["reliability_used"],
            1e-8,
            "alpha used by Subkoviak",
        );
        close(reliability.kr21, &huynh["kr21"], 1e-8, "KR-21 used");
        let checks = report
            .cross_checks
            .as_ref()
            .expect("they can be worked out");
        // Kappa is what agreement is above chance.
        let chance = |(agreement, kappa): (f64, f64)| (agreement - kappa) / (1.0 - kappa);
        close(
            chance(checks.subkoviak),
            &subkoviak["chance"],
            1e-6,
            "chance",
        );
        let own = checks.huynh.expect("KR-21 is above 0");
        close(chance(own), &huynh["chance"], 1e-6, "Huynh's chance");
        // The beta that Huynh takes: from the mean and KR-21.
        let k = number(&public["items"]);
        let alpha = (1.0 / reliability.kr21 - 1.0) * report.scores.mean;
        close(alpha, &huynh["alpha"], 1e-6, "Huynh's A");
        close(
            k / reliability.kr21 - k - alpha,
            &huynh["beta"],
            1e-6,
            "Huynh's B",
        );
        let consistency = report.consistency.as_ref().expect("it can be estimated");
        let r = &beside["decision"][place];
        assert_eq!(report.cut as u64, r["cut_score"].as_u64().expect("a cut"));
        close(
            consistency.lords_k,
            &r["hanson_brennan"]["lords_k"],
            2e-6,
            "K in R",
        );
    }
}

#[test]
fn what_is_said_of_items_agrees_too() {
    let (public, beside) = (public(), in_r());
    let rows = rows(&public);
    let key = public["key"].as_str().expect("letters");
    let report = of(key, &rows, 75);
    assert_eq!(
        report.seats.len() as u64,
        public["students"].as_u64().expect("n")
    );
    let size = public["group_27_size"].as_u64().expect("a count");
    let varying: Vec<_> = report.items.iter().filter(|it| it.variance > 0.0).collect();
    for (item, theirs) in report
        .items
        .iter()
        .zip(public["item_statistics"].as_array().expect("a list"))
    {
        if let Some(r) = item.r {
            let total = with_total(r, item.variance.sqrt(), report.scores.sd());
            close(total, &theirs["r_item_total"], 1e-8, "r with the total");
        }
        let ends = item
            .options
            .iter()
            .map(|it| u64::from(it.ends[0] + it.ends[1]));
        if item.blank == 0 {
            assert_eq!(ends.sum::<u64>(), 2 * size, "{}", item.id);
        }
    }
    // R leaves items without variance out, which changes the count alone.
    let (k, left) = (number(&public["items"]), varying.len());
    let left = f64::from(u32::try_from(left).expect("few"));
    let alpha = report
        .reliability
        .as_ref()
        .expect("it can be estimated")
        .alpha;
    let without = alpha * (k - 1.0) / k * left / (left - 1.0);
    close(
        without,
        &beside["alpha_over_items_with_variance"],
        1e-8,
        "alpha in R",
    );
    for (item, theirs) in varying
        .iter()
        .zip(beside["r_total"].as_array().expect("a list"))
    {
        let r = item.r.expect("it varies");
        let total = with_total(r, item.variance.sqrt(), report.scores.sd());
        close(total, theirs, 1e-8, "r with the total in R");
    }
}
