//! Findings to plans: what is right, acceptable, wrong and unsafe. Every row of
//! the decision table of deep caries, and both sides where sources differ.

use crate::bedside::{clinic, patient};
use clinic::standing::Standing::{self, Acceptable, Right, Unsafe, Wrong};

const CUSTOM: &str = "common practice, no source";
const ESE: &str = "ESE position statement, Int Endod J 2019;52:923-934; value from memory";
const AAE: &str = "AAE terminology 2009 and position statement on vital pulp therapy 2021";
const BJORNDAL: &str = "Bjørndal et al., Eur J Oral Sci 2010;118:290-297";
const MALTZ: &str = "Maltz et al., Caries Res 2013;47:103-109";
const ICCC: &str = "Schwendicke et al., Adv Dent Res 2016;28:58-67; value from memory";
const AAPD: &str = "AAPD best practice, pulp therapy, rev. 2020; value from memory";

/// Findings, plan, standing, source.
type Row = (&'static str, &'static str, Standing, &'static str);

#[test]
fn findings_admit_and_refuse_plans() {
    const ROWS: [Row; 52] = [
        // Shallow or moderate, no symptoms, more than 2 mm left.
        ("", "permanent-today", Right, CUSTOM),
        ("", "temporary-then-review", Wrong, CUSTOM),
        ("", "root-canal", Wrong, CUSTOM),
        ("remaining-dentine=1.6", "permanent-today", Right, CUSTOM),
        // Deep, reversible signs, 0.5 to 1.5 mm left.
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=1",
            "permanent-today",
            Right,
            CUSTOM,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=1",
            "stepwise",
            Wrong,
            CUSTOM,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0.6",
            "permanent-today",
            Right,
            CUSTOM,
        ),
        // Very deep, reversible, 0.5 mm or less, no exposure: same day or wait.
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0.5",
            "permanent-today",
            Right,
            MALTZ,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0.5",
            "temporary-then-review",
            Right,
            CUSTOM,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0.3",
            "stepwise",
            Right,
            BJORNDAL,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0.3; dentition=primary",
            "stepwise",
            Wrong,
            ICCC,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0.3; dentition=immature-permanent",
            "stepwise",
            Right,
            BJORNDAL,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0.3",
            "root-canal",
            Wrong,
            CUSTOM,
        ),
        // Symptoms unclear: a sedative temporary and a date, no resin today.
        (
            "cold=ebbs; pain=on-stimulus; remaining-dentine=0.8",
            "temporary-then-review",
            Right,
            CUSTOM,
        ),
        (
            "cold=ebbs; pain=on-stimulus; remaining-dentine=0.8",
            "permanent-today",
            Wrong,
            CUSTOM,
        ),
        (
            "cold=ebbs; remaining-dentine=0.3",
            "stepwise",
            Acceptable,
            BJORNDAL,
        ),
        (
            "percussion=tender; remaining-dentine=1",
            "temporary-then-review",
            Right,
            CUSTOM,
        ),
        // Pin-point exposure, bleeding stops within five minutes.
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "direct-cap",
            Right,
            ESE,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "pulpotomy",
            Acceptable,
            BJORNDAL,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "temporary-then-review",
            Unsafe,
            ESE,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "permanent-today",
            Unsafe,
            ESE,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "stepwise",
            Unsafe,
            ESE,
        ),
        // Bleeding time: five minutes against ten; both acceptable.
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=late",
            "direct-cap",
            Right,
            "success factors of capping, 5 to 10 minutes; value from memory",
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=late",
            "pulpotomy",
            Right,
            ESE,
        ),
        // Larger exposure or bleeding not controlled.
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=larger; bleeding=stops",
            "pulpotomy",
            Right,
            ESE,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=larger; bleeding=stops",
            "direct-cap",
            Wrong,
            ESE,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=goes-on",
            "pulpotomy",
            Right,
            ESE,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=goes-on",
            "root-canal",
            Acceptable,
            CUSTOM,
        ),
        (
            "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=goes-on",
            "direct-cap",
            Wrong,
            ESE,
        ),
        // An exposure in a pulp whose state is in doubt.
        (
            "cold=ebbs; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "pulpotomy",
            Right,
            ESE,
        ),
        (
            "cold=ebbs; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "root-canal",
            Right,
            ESE,
        ),
        (
            "cold=ebbs; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "direct-cap",
            Wrong,
            ESE,
        ),
        // Spontaneous or lingering pain: root canal, or pulpotomy where the dentist so decides.
        (
            "pain=spontaneous; cold=lingers; remaining-dentine=0.5",
            "root-canal",
            Right,
            AAE,
        ),
        (
            "pain=spontaneous; cold=lingers; remaining-dentine=0.5",
            "pulpotomy",
            Right,
            AAE,
        ),
        (
            "pain=spontaneous; cold=lingers; remaining-dentine=0.5",
            "temporary-then-review",
            Unsafe,
            CUSTOM,
        ),
        (
            "pain=spontaneous; cold=lingers; remaining-dentine=0.5",
            "permanent-today",
            Unsafe,
            CUSTOM,
        ),
        (
            "cold=lingers; remaining-dentine=2.2",
            "permanent-today",
            Unsafe,
            CUSTOM,
        ),
        // Necrosis.
        (
            "cold=silent; remaining-dentine=0.5",
            "root-canal",
            Right,
            AAE,
        ),
        (
            "cold=silent; remaining-dentine=0.5",
            "pulpotomy",
            Unsafe,
            AAE,
        ),
        (
            "cold=silent; remaining-dentine=0.5",
            "temporary-then-review",
            Unsafe,
            CUSTOM,
        ),
        // The irreversible term without signs: both sides.
        (
            "radiograph-depth=no-zone; remaining-dentine=0.3",
            "temporary-then-review",
            Right,
            ESE,
        ),
        (
            "radiograph-depth=no-zone; remaining-dentine=0.3",
            "root-canal",
            Right,
            AAE,
        ),
        // Not restorable.
        ("not-restorable=yes", "extraction", Right, CUSTOM),
        (
            "not-restorable=yes; cold=silent",
            "root-canal",
            Wrong,
            CUSTOM,
        ),
        // No dam: no canal, no cap.
        (
            "cold=silent; remaining-dentine=0.5; isolation=cotton-rolls",
            "root-canal",
            Unsafe,
            ESE,
        ),
        (
            "cold=silent; remaining-dentine=0.5; isolation=cotton-rolls",
            "refer",
            Right,
            CUSTOM,
        ),
        (
            "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops; isolation=cotton-rolls",
            "direct-cap",
            Unsafe,
            ESE,
        ),
        // Primary teeth.
        (
            "dentition=primary; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "pulpotomy",
            Right,
            AAPD,
        ),
        (
            "dentition=primary; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "direct-cap",
            Wrong,
            AAPD,
        ),
        (
            "dentition=primary; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=goes-on",
            "pulpotomy",
            Wrong,
            AAPD,
        ),
        // No time left.
        (
            "time-left=15; remaining-dentine=2",
            "temporary-then-review",
            Right,
            CUSTOM,
        ),
        (
            "time-left=15; remaining-dentine=2",
            "permanent-today",
            Wrong,
            CUSTOM,
        ),
    ];
    let clinic = clinic();
    for (findings, plan, wanted, source) in ROWS {
        let verdicts = clinic.plan_verdicts(&clinic.reason(&patient(findings)));
        let verdict = verdicts
            .iter()
            .find(|v| v.plan.as_str() == plan)
            .expect("a plan of the catalogue");
        assert_eq!(
            verdict.standing, wanted,
            "{plan} for '{findings}' ({source})"
        );
        assert!(
            wanted == Wrong || !verdict.reasons.is_empty(),
            "{plan} for '{findings}' has no reason"
        );
    }
}
