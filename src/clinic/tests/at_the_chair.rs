//! Preference cards, time lines and cases to order.

mod common;

use catalogue::{
    cases::Level,
    items::Role,
    preference::{Card, Wish},
    quantity::{Milli, Span},
};
use clinic::{
    Clinic,
    case::Wanted,
    layers::Stack,
    patient::Patient,
    standing::Standing,
    timing::{GRACE, Start, Window},
};
use common::clinic;

fn carded(wishes: Vec<Wish>) -> Clinic {
    clinic().with_card(Some(Card {
        id: "own".into(),
        name: "A card".into(),
        about: "For the test.".into(),
        wishes,
    }))
}

fn usual() -> Patient {
    clinic().usual_patient()
}

fn everywhere(instead_of: &str, take: &str) -> Wish {
    Wish::Exchange {
        instead_of: instead_of.into(),
        take: take.into(),
        procedures: Vec::new(),
    }
}

#[test]
fn an_exchange_within_a_family_is_granted_and_shown() {
    let clinic = carded(vec![everywhere("dam-sheet-latex", "dam-sheet-non-latex")]);
    let tray = clinic.tray(&"posterior-composite".into(), &usual());
    assert!(tray.refused.is_empty());
    assert!(
        tray.items()
            .any(|(_, i)| i.item.as_str() == "dam-sheet-non-latex")
    );
    assert!(
        !tray
            .items()
            .any(|(_, i)| i.item.as_str() == "dam-sheet-latex")
    );
    assert!(
        tray.changes
            .iter()
            .any(|c| c.from.as_str() == "dam-sheet-latex")
    );
}

#[test]
fn a_wish_for_an_allergen_is_refused_with_the_rule() {
    let clinic = carded(vec![everywhere("dam-sheet-non-latex", "dam-sheet-latex")]);
    let allergic = clinic.with(&usual(), "allergy-latex", "yes");
    let tray = clinic.tray(&"posterior-composite".into(), &allergic);
    assert_eq!(tray.refused.len(), 1);
    assert_eq!(tray.refused[0].reason.rule, Some("avoid-latex".into()));
    assert!(
        !tray
            .items()
            .any(|(_, i)| i.item.as_str() == "dam-sheet-latex")
    );
}

#[test]
fn what_a_critical_step_needs_is_not_left_out() {
    let leave_out = |item: &str| Wish::LeaveOut {
        item: item.into(),
        procedures: Vec::new(),
    };
    let clinic = carded(vec![
        leave_out("cement-spatula"),
        leave_out("alcohol-gauze"),
    ]);
    let tray = clinic.tray(&"deep-caries-temporary".into(), &usual());
    let refused: Vec<usize> = tray.refused.iter().map(|r| r.wish).collect();
    assert_eq!(refused, [0]);
    assert!(
        !tray
            .items()
            .any(|(_, i)| i.item.as_str() == "alcohol-gauze")
    );
}

#[test]
fn an_order_that_safety_forbids_is_refused() {
    let clinic = clinic();
    let tray = clinic.tray(&"posterior-composite".into(), &usual());
    let (first, then, _) = tray
        .must_before
        .first()
        .expect("a pair that has to stand in order")
        .clone();
    let clinic = carded(vec![Wish::Before {
        first: then,
        then: first,
    }]);
    assert_eq!(
        clinic
            .tray(&"posterior-composite".into(), &usual())
            .refused
            .len(),
        1
    );
}

#[test]
fn a_preference_decides_among_what_is_admissible_and_never_beyond() {
    let prefer = |item: &str, role| Wish::Prefer {
        item: item.into(),
        role,
    };
    let deep = {
        let clinic = clinic();
        let patient = clinic.with(&usual(), "exposure", "none");
        clinic.with_number(
            &clinic.with(&patient, "cold", "sharp"),
            "remaining-dentine",
            Milli(300),
        )
    };
    let standing = |clinic: &Clinic, role, item: &str| {
        let plan = clinic
            .catalogue()
            .plan(&"permanent-today".into())
            .expect("the plan");
        let all = clinic.reason(&clinic.settled(&deep, plan));
        let verdicts = clinic.layer_verdicts(&all, role, &Stack::default());
        verdicts
            .into_iter()
            .find(|v| v.item == Some(item.into()))
            .expect("an option")
            .standing
    };
    let silicate = carded(vec![prefer("calcium-silicate-cement", Role::Liner)]);
    assert_eq!(
        standing(&silicate, Role::Liner, "calcium-silicate-cement"),
        Standing::Right
    );
    assert_eq!(
        standing(&silicate, Role::Liner, "calcium-hydroxide-liner"),
        Standing::Acceptable
    );
    let amalgam = carded(vec![prefer("amalgam-capsule", Role::Permanent)]);
    assert_eq!(
        standing(&amalgam, Role::Permanent, "amalgam-capsule"),
        Standing::Wrong
    );
}

#[test]
fn a_date_counts_only_where_a_source_agrees() {
    let recall = |from, to| {
        carded(vec![Wish::Recall {
            plan: "stepwise".into(),
            days: Span { from, to },
        }])
    };
    let plan = |clinic: &Clinic| {
        clinic
            .catalogue()
            .plan(&"stepwise".into())
            .expect("the plan")
            .clone()
    };
    let ten_weeks = recall(63, 77);
    assert!(
        ten_weeks
            .return_visit(&plan(&ten_weeks), &usual())
            .preferred
            .is_some()
    );
    let two_years = recall(700, 760);
    assert!(
        two_years
            .return_visit(&plan(&two_years), &usual())
            .preferred
            .is_none()
    );
}

#[test]
fn the_window_of_a_mix_is_the_published_arithmetic() {
    let window = Window {
        material: "reinforced-zoe".into(),
        place: 0,
        earliest: 600 + 90 - 180,
        latest: 600 - 75,
        ready: 600,
        mix: Span { from: 60, to: 90 },
        work: Span { from: 180, to: 300 },
        placing: 90,
    };
    assert!(window.is_open());
    assert_eq!(window.judge(510), Start::InTime);
    assert_eq!(window.judge(525), Start::InTime);
    assert_eq!(window.judge(510 - GRACE), Start::InTime);
    assert_eq!(window.judge(450), Start::TooEarly(60));
    assert_eq!(window.judge(600), Start::TooLate(75));
}

#[test]
fn time_lines_run_without_gaps_and_their_windows_follow_from_the_material() {
    let clinic = clinic();
    let patient = clinic.reason(&usual()).patient;
    for procedure in &clinic.catalogue().procedures {
        let line = clinic.timeline(&procedure.id, &patient);
        for pair in line.flow.windows(2) {
            assert_eq!(pair[0].to, pair[1].from, "{}", procedure.id);
        }
        for window in &line.windows {
            let mixing = clinic
                .catalogue()
                .material(&window.material)
                .and_then(|m| m.mixing.clone())
                .expect("mixing");
            assert_eq!(
                window.latest,
                i64::from(window.ready) - i64::from(mixing.mix_seconds.middle())
            );
            assert_eq!(
                window.earliest,
                i64::from(window.ready) + i64::from(window.placing)
                    - i64::from(mixing.work_seconds.from)
            );
        }
    }
}

#[test]
fn a_case_follows_the_card() {
    let card = carded(vec![everywhere("dam-sheet-latex", "dam-sheet-non-latex")]);
    let frame = card
        .catalogue()
        .case(&"molar-as-planned".into())
        .expect("the frame")
        .clone();
    let plain = clinic().case(&frame, 7).expect("a case");
    let own = card.case(&frame, 7).expect("a case");
    assert_ne!(plain.decisions, own.decisions);
    let tray = own
        .decisions
        .iter()
        .find(|d| d.id == "tray")
        .expect("the tray");
    assert_eq!(tray.grade(&tray.best_answer()).per_cent, 100);
}

#[test]
fn cases_to_order_are_as_wanted_and_repeat() {
    let clinic = clinic();
    for flag in ["allergy-latex", "sulfite-sensitivity", "allergy-eugenol"] {
        let wanted = Wanted {
            with: Some(flag.into()),
            ..Wanted::default()
        };
        let case = clinic.case_to_order(&wanted, 3).expect("a case");
        assert_eq!(clinic.word(&case.opened, flag), Some("yes"));
        assert_eq!(clinic.case_to_order(&wanted, 3), Some(case));
    }
    for level in [Level::Basic, Level::Core, Level::Demanding] {
        let wanted = Wanted {
            level: Some(level),
            ..Wanted::default()
        };
        assert_eq!(
            clinic.case_to_order(&wanted, 1).map(|c| c.level()),
            Some(level)
        );
    }
    let wanted = Wanted {
        competency: Some("materials".into()),
        ..Wanted::default()
    };
    let case = clinic.case_to_order(&wanted, 5).expect("a case");
    let frame = clinic.catalogue().case(&case.frame).expect("its frame");
    assert_eq!(frame.competency.as_str(), "materials");
}
