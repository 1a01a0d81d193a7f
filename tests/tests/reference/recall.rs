//! Return visits: intervals, checks and signs.

use crate::bedside::{clinic, patient};

const CUSTOM: &str = "common practice, no source";

/// Findings, plan, days, whether that is a date to give, source.
type Row = (&'static str, &'static str, u32, bool, &'static str);

#[test]
fn the_patient_returns_in_time() {
    const ROWS: [Row; 19] = [
        (
            "cold=ebbs; remaining-dentine=0.8",
            "temporary-then-review",
            90,
            true,
            CUSTOM,
        ),
        (
            "cold=ebbs; remaining-dentine=0.8",
            "temporary-then-review",
            14,
            false,
            CUSTOM,
        ),
        (
            "cold=ebbs; remaining-dentine=0.8",
            "temporary-then-review",
            365,
            false,
            CUSTOM,
        ),
        (
            "cold=sharp; remaining-dentine=0.3",
            "stepwise",
            56,
            true,
            "Bjørndal et al. 2010: re-entry after 8 weeks",
        ),
        (
            "cold=sharp; remaining-dentine=0.3",
            "stepwise",
            84,
            true,
            "Bjørndal et al. 2010: re-entry after 12 weeks",
        ),
        (
            "cold=sharp; remaining-dentine=0.3",
            "stepwise",
            55,
            false,
            "Bjørndal et al. 2010",
        ),
        (
            "cold=sharp; remaining-dentine=0.3",
            "stepwise",
            120,
            true,
            "AAPD: 3 to 6 months; value from memory",
        ),
        (
            "cold=sharp; remaining-dentine=0.3",
            "stepwise",
            180,
            true,
            "AAPD: 3 to 6 months; value from memory",
        ),
        (
            "cold=sharp; remaining-dentine=0.3",
            "stepwise",
            200,
            false,
            "AAPD; value from memory",
        ),
        (
            "cold=sharp; remaining-dentine=0.3; dentition=immature-permanent",
            "stepwise",
            60,
            false,
            "AAPD: 3 to 6 months in growing roots; value from memory",
        ),
        (
            "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "direct-cap",
            7,
            true,
            "Kundzina et al. 2017: one week",
        ),
        (
            "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "direct-cap",
            182,
            true,
            "Kundzina et al. 2017: six months",
        ),
        (
            "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "direct-cap",
            365,
            true,
            "Kundzina et al. 2017: twelve months",
        ),
        (
            "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "direct-cap",
            60,
            false,
            CUSTOM,
        ),
        (
            "cold=sharp; remaining-dentine=1",
            "permanent-today",
            90,
            true,
            CUSTOM,
        ),
        (
            "cold=sharp; remaining-dentine=1",
            "permanent-today",
            400,
            false,
            CUSTOM,
        ),
        ("", "permanent-today", 180, true, CUSTOM),
        ("", "permanent-today", 14, false, CUSTOM),
        (
            "cold=silent; remaining-dentine=0.5",
            "root-canal",
            14,
            true,
            CUSTOM,
        ),
    ];
    let clinic = clinic();
    for (findings, plan, days, wanted, source) in ROWS {
        let plan = clinic.catalogue().plan(&plan.into()).expect("a plan");
        let all = clinic.reason(&clinic.settled(&patient(findings), plan));
        let visit = clinic.return_visit(plan, &all.patient);
        assert_eq!(
            visit.reason_for(days).is_some(),
            wanted,
            "{} after {days} days for '{findings}' ({source})",
            plan.id
        );
    }
}

#[test]
fn what_is_checked_and_what_brings_the_patient_sooner() {
    let clinic = clinic();
    let plan = clinic
        .catalogue()
        .plan(&"temporary-then-review".into())
        .expect("the plan");
    let all = clinic.reason(&clinic.settled(&patient("cold=ebbs; remaining-dentine=0.8"), plan));
    let visit = clinic.return_visit(plan, &all.patient);
    // A radiograph and a cold test before a permanent filling: common practice, no source.
    for check in ["radiograph", "cold-test", "percussion-test", "history"] {
        assert!(visit.checks.iter().any(|c| c.as_str() == check), "{check}");
    }
    // Pain without a stimulus, at night, lingering, swelling, bad taste, loss: common practice, no source.
    for sign in [
        "spontaneous-pain",
        "night-pain",
        "lingering-cold",
        "swelling-sign",
        "lost-filling",
    ] {
        assert!(visit.sooner.iter().any(|c| c.as_str() == sign), "{sign}");
    }
}
