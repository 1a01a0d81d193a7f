//! One material before the others: what lies ready, how the case is graded for
//! it, which plan is taken, and where safety has the last word.

mod common;

use catalogue::{
    cases::CaseFrame,
    ids::ItemId,
    items::Role,
    preference::{Card, Wish},
    quantity::Milli,
};
use clinic::{
    Clinic,
    difference::Outcome,
    patient::Patient,
    standing::Standing,
    tray::{Need, Tray},
};
use common::clinic;

fn prefers(item: &str, role: Role) -> Clinic {
    clinic().with_card(Some(Card {
        id: "own".into(),
        name: "A card".into(),
        about: "For the test.".into(),
        wishes: vec![Wish::Prefer {
            item: item.into(),
            role,
        }],
    }))
}

/// How many seeds of each frame are drawn.
const SEEDS: u64 = 4;

/// The frames in which a tooth is opened.
fn opening(clinic: &Clinic) -> Vec<&CaseFrame> {
    let cases = clinic.catalogue().cases.iter();
    cases.filter(|f| !f.opening.is_empty()).collect()
}

fn usual() -> Patient {
    clinic().reason(&clinic().usual_patient()).patient
}

/// A tooth opened with this much dentine left, in thousandths of a millimetre.
fn opened(dentine: i32) -> Patient {
    let clinic = clinic();
    let patient = clinic.with(&clinic.usual_patient(), "exposure", "none");
    let patient = clinic.with(&patient, "bleeding", "none");
    let patient = clinic.with_number(&patient, "remaining-dentine", Milli(dentine));
    clinic.reason(&patient).patient
}

fn need(tray: &Tray, item: &str) -> Option<Need> {
    let mut items = tray.items();
    items
        .find(|(_, i)| i.item.as_str() == item)
        .map(|(_, i)| i.need)
}

#[test]
fn the_preferred_of_two_liners_lies_ready_with_what_it_is_mixed_with() {
    let silicate = prefers("calcium-silicate-cement", Role::Liner);
    let procedure = "indirect-pulp-cap".into();
    for patient in [usual(), opened(400)] {
        let standard = clinic().tray(&procedure, &patient);
        assert_eq!(
            need(&standard, "calcium-hydroxide-liner"),
            Some(Need::Needed)
        );
        assert_eq!(need(&standard, "glass-slab"), None);
        let tray = silicate.tray(&procedure, &patient);
        assert!(tray.refused.is_empty());
        for item in ["calcium-silicate-cement", "glass-slab", "cement-spatula"] {
            assert_eq!(need(&tray, item), Some(Need::Needed), "{item}");
        }
        assert_eq!(need(&tray, "paper-pad-small"), None);
        assert_eq!(need(&tray, "calcium-hydroxide-liner"), Some(Need::IfCalled));
        let first: ItemId = "calcium-silicate-cement".into();
        let pair =
            |(a, b, _): &(ItemId, ItemId, String)| *a == first && b.as_str() == "rmgi-capsule";
        assert!(tray.must_before.iter().any(pair), "it goes under the cover");
        let steps = silicate.steps(&procedure, &patient);
        let mix = steps.iter().find(|s| s.step.mixes.as_ref() == Some(&first));
        let mix = mix.expect("a step that mixes it");
        assert!(mix.step.does.contains("wet sand"), "{}", mix.step.does);
        assert!(steps.iter().any(|s| s.step.places.as_ref() == Some(&first)));
        let difference = silicate.difference(&procedure, &patient);
        assert_eq!(difference.wishes, [Outcome::Granted]);
        assert!(difference.comes.contains(&first));
        let times = |clinic: &Clinic| {
            let line = clinic.timeline(&procedure, &patient);
            line.windows
                .into_iter()
                .map(|w| w.material)
                .collect::<Vec<_>>()
        };
        assert!(times(&silicate).contains(&first));
        assert!(!times(&clinic()).contains(&first));
    }
}

#[test]
fn a_temporary_is_exchanged_as_the_procedure_itself_would() {
    let paste = prefers("non-eugenol-zinc-oxide", Role::Temporary);
    let procedure = "deep-caries-temporary".into();
    let tray = paste.tray(&procedure, &usual());
    assert_eq!(need(&tray, "non-eugenol-zinc-oxide"), Some(Need::Needed));
    assert_eq!(need(&tray, "reinforced-zoe"), Some(Need::IfCalled));
    assert_eq!(need(&tray, "powder-scoop"), None, "pastes need no scoop");
    assert_eq!(need(&tray, "mixing-pad"), Some(Need::Needed));
    let changed = |c: &clinic::tray::Change| c.from.as_str() == "reinforced-zoe";
    let change = tray.changes.iter().find(|c| changed(c)).expect("it shows");
    assert!(change.reason.because.contains("A card"));
}

#[test]
fn safety_has_the_last_word_and_nothing_is_half_applied() {
    let allergic = {
        let patient = clinic().with(&clinic().usual_patient(), "allergy-eugenol", "yes");
        clinic().reason(&patient).patient
    };
    let zoe = prefers("reinforced-zoe", Role::Temporary);
    let procedure = "deep-caries-temporary".into();
    let tray = zoe.tray(&procedure, &allergic);
    assert_eq!(tray.refused.len(), 1);
    assert_eq!(tray.refused[0].reason.rule, Some("avoid-eugenol".into()));
    assert_eq!(tray.stages, clinic().tray(&procedure, &allergic).stages);
    assert_eq!(
        zoe.steps(&procedure, &allergic),
        clinic().steps(&procedure, &allergic)
    );

    let base = prefers("reinforced-zoe", Role::Base);
    let procedure = "posterior-composite".into();
    for patient in [usual(), opened(1000)] {
        let found = base.difference(&procedure, &patient);
        let Outcome::Refused(reason) = &found.wishes[0] else {
            panic!("eugenol under composite: {:?}", found.wishes);
        };
        assert!(!reason.sources.is_empty(), "{}", reason.because);
        let tray = base.tray(&procedure, &patient);
        assert_eq!(tray.stages, clinic().tray(&procedure, &patient).stages);
    }
}

#[test]
fn what_cannot_serve_or_is_not_known_is_refused_by_name() {
    for item in ["amalgam-capsule", "moon-dust"] {
        let card = prefers(item, Role::Liner);
        let tray = card.tray(&"indirect-pulp-cap".into(), &usual());
        assert_eq!(tray.refused.len(), 1, "{item}");
        let because = &tray.refused[0].reason.because;
        assert!(because.contains("does not serve as a liner"), "{because}");
        let standard = clinic().tray(&"indirect-pulp-cap".into(), &usual());
        assert_eq!(tray.stages, standard.stages, "{item}");
    }
}

/// A case reaches the tray of the indirect cap when what was booked turns out deep.
#[test]
fn the_grade_of_a_case_follows_the_card() {
    let silicate = prefers("calcium-silicate-cement", Role::Liner);
    let mut fetched = 0;
    let plain = clinic();
    for frame in opening(&plain) {
        for seed in 0..SEEDS {
            let standard = clinic().case(frame, seed).expect("a case");
            let own = silicate.case(frame, seed).expect("a case");
            assert_eq!(
                own.plan, standard.plan,
                "a liner is no reason for another plan"
            );
            let decision = |case: &clinic::case::Case| {
                let mut all = case.decisions.iter();
                all.find(|d| d.id == "fetch").cloned()
            };
            let (Some(own), Some(standard)) = (decision(&own), decision(&standard)) else {
                continue;
            };
            if !own.best_answer().contains(&"glass-slab".to_owned()) {
                continue;
            }
            if standard.best_answer().contains(&"glass-slab".to_owned()) {
                continue;
            }
            fetched += 1;
            assert_eq!(own.grade(&own.best_answer()).per_cent, 100);
            let with_standard = own.grade(&standard.best_answer());
            assert!(with_standard.per_cent < 100, "{} {seed}", frame.id);
        }
    }
    assert!(fetched > 0, "no case asks for what the card brings");
}

#[test]
fn among_equally_right_plans_the_card_decides_and_never_beyond() {
    let plain = clinic();
    let zoe = prefers("reinforced-zoe", Role::Temporary);
    let closes = |clinic: &Clinic, plan: &catalogue::ids::PlanId| {
        clinic.catalogue().plan(plan).and_then(|p| p.closes)
    };
    let (mut turned, mut kept) = (0, 0);
    for frame in opening(&plain) {
        for seed in 0..SEEDS {
            let own = zoe.case(frame, seed).expect("a case");
            let standard = plain.case(frame, seed).expect("a case");
            let (Some(plan), Some(before)) = (own.plan, standard.plan) else {
                continue;
            };
            let open = plain.open_plans(&plain.reason(&own.opened));
            assert!(
                open.contains(&plan),
                "{} {seed}: {plan} is not open",
                frame.id
            );
            let temporary = open
                .iter()
                .any(|p| closes(&plain, p) == Some(Role::Temporary));
            let allergic = plain.word(&own.opened, "allergy-eugenol") == Some("yes");
            if temporary && !allergic {
                assert_eq!(closes(&plain, &plan), Some(Role::Temporary), "{}", frame.id);
                turned += usize::from(plan != before);
            } else {
                assert_eq!(plan, before, "{} {seed}", frame.id);
                kept += 1;
            }
        }
    }
    assert!(turned > 0 && kept > 0, "{turned} turned, {kept} kept");
}

fn prefers_plan(plan: &str) -> Clinic {
    clinic().with_card(Some(Card {
        id: "own".into(),
        name: "A card".into(),
        about: "For the test.".into(),
        wishes: vec![Wish::PreferPlan { plan: plan.into() }],
    }))
}

#[test]
fn an_open_plan_comes_first_and_the_case_is_graded_for_it() {
    let plain = clinic();
    let (mut turned, mut refused) = (0, 0);
    for wanted in plain.catalogue().plans.iter().map(|p| p.id.clone()) {
        let own = prefers_plan(wanted.as_str());
        for frame in opening(&plain) {
            let standard = plain.case(frame, 1).expect("a case");
            let case = own.case(frame, 1).expect("a case");
            assert_eq!(case.opened, standard.opened, "the patient stays");
            let all = plain.reason(&case.opened);
            let verdict = |clinic: &Clinic| {
                let mut all = clinic.plan_verdicts(&all).into_iter();
                all.find(|v| v.plan == wanted).expect("a verdict")
            };
            let (before, now) = (verdict(&plain), verdict(&own));
            let asked = case.decisions.iter().find(|d| d.id == "plan");
            let asked = asked.expect("a plan is asked for");
            let graded = asked.grade(&[wanted.to_string()]);
            if before.standing <= Standing::Acceptable {
                assert_eq!(now.standing, Standing::Right);
                assert_eq!(case.plan.as_ref(), Some(&wanted), "{}", frame.id);
                assert_eq!(graded.standing, Standing::Right);
                assert!(now.reasons[0].because.contains("preference card"));
                turned += usize::from(case.plan != standard.plan);
            } else {
                assert_eq!(now.standing, before.standing, "safety has the last word");
                assert_eq!(case.plan, standard.plan, "{}", frame.id);
                assert!(graded.standing >= Standing::Wrong);
                let tray = own.tray(&case.booked, &case.opened);
                assert_eq!(tray.refused.len(), 1, "{}", frame.id);
                let found = own.difference(&case.booked, &case.opened);
                assert!(matches!(found.wishes[0], Outcome::Refused(_)));
                refused += 1;
            }
            let later = own.difference(&case.booked, &case.chart);
            assert_eq!(later.wishes, [Outcome::Later]);
        }
    }
    assert!(
        turned > 0 && refused > 0,
        "{turned} turned, {refused} refused"
    );
    let elsewhere = prefers_plan("stepwise").difference(&"suture-removal".into(), &usual());
    assert_eq!(elsewhere.wishes, [Outcome::Nothing]);
}
