//! The argument for a plan.

use crate::bedside::{clinic, patient};

#[test]
fn the_argument_for_a_plan_runs_from_the_signs() {
    let clinic = clinic();
    let all = clinic.reason(&patient(
        "pain=spontaneous; cold=lingers; remaining-dentine=0.5",
    ));
    let rule = clinic
        .catalogue()
        .rule(&"irreversible-treat-the-pulp".into())
        .expect("the rule");
    let proof = clinic.proof(&all, rule);
    let pulp = proof
        .grounds
        .iter()
        .find(|g| g.finding.as_str() == "pulp")
        .expect("rests on the pulp");
    let inner = pulp.proof.as_ref().expect("which follows from signs");
    assert!(
        inner
            .grounds
            .iter()
            .any(|g| g.finding.as_str() == "cold" && g.says.contains("half a minute"))
    );
}
