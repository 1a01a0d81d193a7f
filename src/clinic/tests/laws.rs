//! Laws that hold for every patient, every tray and every case.

mod common;

use catalogue::{
    findings::{Known, Scale},
    ids::{ItemId, PlanId},
    items::Role,
    quantity::Milli,
};
use clinic::{
    Clinic,
    layers::Stack,
    patient::Patient,
    sequence::{CAP, Target, compare},
    standing::Standing,
};
use common::clinic;
use proptest::prelude::*;
use std::collections::BTreeMap;

/// Any patient, possible or not: one number a finding picks its value.
fn any_patient(clinic: &Clinic, picks: &[u32]) -> Patient {
    let mut patient = clinic.usual_patient();
    for (finding, pick) in clinic.catalogue().findings.clone().iter().zip(picks) {
        if !matches!(finding.known, Known::Chart | Known::Opening) {
            continue;
        }
        let pick = usize::try_from(*pick).unwrap_or(0);
        patient = match &finding.scale {
            Scale::Words(words) => {
                clinic.with(&patient, finding.id.as_str(), &words[pick % words.len()].id)
            }
            Scale::Flag { .. } => clinic.with(
                &patient,
                finding.id.as_str(),
                if pick % 3 == 0 { "yes" } else { "no" },
            ),
            Scale::Number {
                least, most, step, ..
            } => {
                let steps = usize::try_from((most.0 - least.0) / step.0).unwrap_or(0) + 1;
                let taken = i32::try_from(pick % steps).unwrap_or(0);
                clinic.with_number(
                    &patient,
                    finding.id.as_str(),
                    Milli(least.0 + taken * step.0),
                )
            }
        };
    }
    patient
}

fn picks() -> impl Strategy<Value = Vec<u32>> {
    prop::collection::vec(any::<u32>(), 64)
}

/// How each material stands in each role of each plan.
fn options(clinic: &Clinic, patient: &Patient) -> BTreeMap<(PlanId, Role, ItemId), Standing> {
    let mut options = BTreeMap::new();
    for plan in &clinic.catalogue().plans {
        let all = clinic.reason(&clinic.settled(patient, plan));
        let verdicts = clinic.plan_verdicts(&all);
        let open = verdicts
            .iter()
            .any(|v| v.plan == plan.id && v.standing <= Standing::Acceptable);
        for role in [Role::Liner, Role::Base, Role::Temporary, Role::Permanent] {
            for verdict in clinic.layer_verdicts(&all, role, &Stack::default()) {
                let Some(item) = verdict.item else { continue };
                // In a plan that is not open nothing is an option.
                let standing = if open {
                    verdict.standing
                } else {
                    verdict.standing.max(Standing::Wrong)
                };
                options.insert((plan.id.clone(), role, item), standing);
            }
        }
    }
    options
}

/// What is admitted for a patient: materials in each role of each open plan.
fn admitted(clinic: &Clinic, patient: &Patient) -> Vec<(PlanId, Role, ItemId)> {
    let options = options(clinic, patient).into_iter();
    options
        .filter(|(_, standing)| *standing <= Standing::Acceptable)
        .map(|(option, _)| option)
        .collect()
}

const ALLERGIES: [(&str, &str); 4] = [
    ("allergy-eugenol", "eugenol"),
    ("allergy-latex", "latex"),
    ("allergy-methacrylate", "methacrylate"),
    ("sulfite-sensitivity", "sulfite"),
];

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn the_same_patient_gives_the_same_conclusions(picks in picks()) {
        let clinic = clinic();
        let patient = any_patient(&clinic, &picks);
        prop_assert_eq!(clinic.reason(&patient), clinic.reason(&patient));
    }

    #[test]
    fn no_findings_whatever_admit_what_the_patient_is_allergic_to(picks in picks()) {
        let clinic = clinic();
        let patient = any_patient(&clinic, &picks);
        for (allergy, substance) in ALLERGIES {
            let patient = clinic.with(&patient, allergy, "yes");
            for entry in admitted(&clinic, &patient) {
                let material = clinic.catalogue().material(&entry.2).expect("a material");
                prop_assert!(
                    !material.contains.iter().any(|s| s.as_str() == substance),
                    "{:?} with {}", entry, allergy
                );
            }
        }
    }

    #[test]
    fn an_allergy_adds_no_plan_and_a_material_only_in_the_stead_of_another(picks in picks(), which in 0usize..4) {
        let clinic = clinic();
        let patient = clinic.with(&any_patient(&clinic, &picks), ALLERGIES[which].0, "no");
        let plans = |p: &Patient| clinic.open_plans(&clinic.reason(p));
        let with = clinic.with(&patient, ALLERGIES[which].0, "yes");
        for plan in plans(&with) {
            prop_assert!(plans(&patient).contains(&plan), "{} opens {}", ALLERGIES[which].0, plan);
        }
        // A material comes only in the stead of one that the allergy rules out,
        // and never one that would have done harm.
        let before = options(&clinic, &patient);
        let after = options(&clinic, &with);
        for (option, standing) in &after {
            let was = before[option];
            if *standing > Standing::Acceptable || was <= Standing::Acceptable {
                continue;
            }
            prop_assert!(was != Standing::Unsafe, "{} makes safe {:?}", ALLERGIES[which].0, option);
            let (plan, role, _) = option;
            let gone = before.iter().any(|((p, r, item), s)| {
                p == plan && r == role && *s <= Standing::Acceptable && after[&(p.clone(), *r, item.clone())] == Standing::Unsafe
            });
            prop_assert!(gone, "{} admits {:?} in nobody's stead", ALLERGIES[which].0, option);
        }
    }

    #[test]
    fn a_tray_holds_every_item_of_every_step(picks in picks()) {
        let clinic = clinic();
        let all = clinic.reason(&any_patient(&clinic, &picks));
        for procedure in &clinic.catalogue().procedures {
            let tray = clinic.tray(&procedure.id, &all.patient);
            for placed in clinic.steps(&procedure.id, &all.patient) {
                for each in &placed.step.uses.0 {
                    prop_assert!(tray.items().any(|(_, i)| i.item == each.item), "{} of {}", each.item, procedure.id);
                }
            }
        }
    }

    #[test]
    fn every_case_has_a_full_mark_path_and_tempting_ways_off_it(seed in any::<u64>(), frame in 0usize..64) {
        let clinic = clinic();
        let frames = &clinic.catalogue().cases;
        let frame = &frames[frame % frames.len()];
        let case = clinic.case(frame, seed).expect("a possible patient");
        let again = clinic.case(frame, seed);
        prop_assert_eq!(again.as_ref(), Some(&case));
        prop_assert!(clinic.impossible(&case.opened).is_none());
        for decision in &case.decisions {
            let best = decision.grade(&decision.best_answer());
            prop_assert_eq!((best.per_cent, best.standing), (100, Standing::Right), "{} of {}", decision.id, case.title);
            let mut ids: Vec<&str> = decision.choices.iter().map(|c| c.id.as_str()).collect();
            ids.sort_unstable();
            ids.dedup();
            prop_assert_eq!(ids.len(), decision.choices.len(), "ids of {}", decision.id);
            let mut labels: Vec<&str> = decision.choices.iter().map(|c| c.label.as_str()).collect();
            labels.sort_unstable();
            labels.dedup();
            prop_assert_eq!(labels.len(), decision.choices.len(), "{} of {} says one thing twice", decision.id, case.title);
        }
        let tempting = case.decisions.iter().flat_map(|d| &d.choices).filter(|c| c.standing >= Standing::Wrong).count();
        prop_assert!(tempting >= 2);
    }

    #[test]
    fn the_score_of_a_tray_is_bounded_and_fair(
        sizes in prop::collection::vec(1usize..4, 1..5),
        answer in prop::collection::vec(0u8..16, 0..14),
        swap in any::<prop::sample::Index>(),
    ) {
        let mut next = 0u8;
        let stages: Vec<Vec<u8>> = sizes
            .iter()
            .map(|n| (0..*n).map(|_| { next += 1; next - 1 }).collect())
            .collect();
        let target = Target { stages: stages.clone(), must_before: if stages.len() > 1 { vec![(0, next - 1)] } else { Vec::new() } };
        let found = compare(&answer, &target, &[]);
        prop_assert!((0.0..=100.0).contains(&found.score));
        let perfect: Vec<u8> = stages.concat();
        prop_assert!((compare(&perfect, &target, &[]).score - 100.0).abs() < 1e-9);
        // Inside a stage any order is as good.
        let mut turned = stages.clone();
        let stage = swap.index(turned.len());
        turned[stage].reverse();
        prop_assert!((compare(&turned.concat(), &target, &[]).score - 100.0).abs() < 1e-9);
        // A must-before pair the wrong way round caps the score.
        if stages.len() > 1 {
            let mut wrong = perfect.clone();
            wrong.rotate_right(1);
            let found = compare(&wrong, &target, &[]);
            prop_assert!(found.score <= CAP && found.violated.len() == 1);
        }
    }
}

#[test]
fn nothing_that_can_be_leaves_the_rules_without_an_answer() {
    let report = clinic().prove();
    assert!(report.faults.is_empty(), "{}", report.faults.join("\n"));
    assert!(report.combinations > 1_000_000);
}
