//! What a card changes, as a whole and wish by wish.

mod common;

use catalogue::{
    ids::ItemId,
    items::Role,
    preference::{Card, Wish},
    quantity::{Milli, Span},
};
use clinic::{
    Clinic,
    difference::{Difference, Outcome},
    patient::Patient,
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
    clinic().reason(&clinic().usual_patient()).patient
}

fn over(wishes: Vec<Wish>, procedure: &str, patient: &Patient) -> Difference {
    carded(wishes).difference(&procedure.into(), patient)
}

fn exchange(instead_of: &str, take: &str) -> Wish {
    Wish::Exchange {
        instead_of: instead_of.into(),
        take: take.into(),
        procedures: Vec::new(),
    }
}

fn leave_out(item: &str) -> Wish {
    Wish::LeaveOut {
        item: item.into(),
        procedures: Vec::new(),
    }
}

fn refused(outcome: &Outcome) -> bool {
    matches!(outcome, Outcome::Refused(_))
}

#[test]
fn without_a_card_there_is_no_difference() {
    let found = clinic().difference(&"posterior-composite".into(), &usual());
    assert_eq!(found, Difference::default());
    assert!(!clinic().card_changes(&"posterior-composite".into(), &usual()));
    let carded = carded(vec![exchange("dam-sheet-latex", "dam-sheet-non-latex")]);
    assert!(carded.card_changes(&"posterior-composite".into(), &usual()));
    assert!(!carded.card_changes(&"alginate-impression".into(), &usual()));
}

#[test]
fn what_goes_and_what_comes_are_told_apart() {
    let wishes = vec![
        exchange("dam-sheet-latex", "dam-sheet-non-latex"),
        Wish::Add {
            item: "periodontal-probe".into(),
            beside: "explorer".into(),
            procedures: Vec::new(),
        },
    ];
    let found = over(wishes, "posterior-composite", &usual());
    assert_eq!(found.goes, [ItemId::from("dam-sheet-latex")]);
    assert!(found.comes.contains(&"dam-sheet-non-latex".into()));
    assert!(found.comes.contains(&"periodontal-probe".into()));
    assert_eq!(found.wishes, [Outcome::Granted, Outcome::Granted]);
}

#[test]
fn a_wish_about_what_is_not_there_changes_nothing() {
    let wishes = vec![
        leave_out("amalgam-carrier"),
        exchange("amalgam-carrier", "explorer"),
    ];
    let found = over(wishes.clone(), "posterior-composite", &usual());
    assert_eq!(found.wishes, [Outcome::Nothing, Outcome::Nothing]);
    let tray = carded(wishes).tray(&"posterior-composite".into(), &usual());
    let standard = clinic().tray(&"posterior-composite".into(), &usual());
    assert_eq!(tray, standard);
}

#[test]
fn a_refused_wish_leaves_the_others_as_they_are() {
    let wishes = vec![leave_out("cement-spatula"), leave_out("alcohol-gauze")];
    let found = over(wishes, "deep-caries-temporary", &usual());
    assert!(refused(&found.wishes[0]));
    assert_eq!(found.wishes[1], Outcome::Granted);
    assert_eq!(found.goes, [ItemId::from("alcohol-gauze")]);
}

#[test]
fn an_order_moves_a_thing_to_the_stage_of_the_other() {
    let clinic = clinic();
    let tray = clinic.tray(&"posterior-composite".into(), &usual());
    let (early, late) = (&tray.stages[1], &tray.stages[tray.stages.len() - 1]);
    let (then, first) = (&early.items[0].item, &late.items[0].item);
    let wish = Wish::Before {
        first: first.clone(),
        then: then.clone(),
    };
    let found = over(vec![wish], "posterior-composite", &usual());
    assert_eq!(found.wishes, [Outcome::Granted]);
    let [only] = &found.moves[..] else {
        panic!("one move, not {:?}", found.moves);
    };
    assert_eq!(
        (&only.item, &only.from, &only.to),
        (first, &late.title, &early.title)
    );
}

#[test]
fn a_dam_that_is_placed_anyway_is_nothing_new_and_one_that_is_needed_stays() {
    let dam = |always| vec![Wish::Dam { always }];
    let found = over(dam(true), "posterior-composite", &usual());
    assert_eq!(found.wishes, [Outcome::Nothing]);
    let never = over(dam(false), "amalgam-restoration", &usual());
    assert_eq!(never.wishes, [Outcome::Granted]);
    assert!(never.goes.iter().any(|i| i.as_str() == "clamp-forceps"));
    let root_canal = over(dam(false), "root-canal-access", &usual());
    assert!(refused(&root_canal.wishes[0]));
}

#[test]
fn a_preferred_material_waits_for_the_open_tooth_and_is_then_judged() {
    let prefer = |item: &str| {
        vec![Wish::Prefer {
            item: item.into(),
            role: Role::Liner,
        }]
    };
    let silicate = prefer("calcium-silicate-cement");
    // Both kinds wait then; what waits in any case counts only later.
    let closed = over(silicate.clone(), "posterior-composite", &usual());
    assert_eq!(closed.wishes, [Outcome::Granted]);
    let hydroxide = prefer("calcium-hydroxide-liner");
    let closed = over(hydroxide, "posterior-composite", &usual());
    assert_eq!(closed.wishes, [Outcome::Later]);
    let clinic = clinic();
    let patient = clinic.with(&usual(), "exposure", "none");
    let deep = clinic.with_number(&patient, "remaining-dentine", Milli(300));
    let deep = clinic.reason(&deep).patient;
    let open = over(silicate.clone(), "posterior-composite", &deep);
    assert_eq!(open.wishes, [Outcome::Granted]);
    let cannot = over(prefer("amalgam-capsule"), "posterior-composite", &deep);
    assert!(refused(&cannot.wishes[0]));
    let elsewhere = over(silicate, "alginate-impression", &deep);
    assert_eq!(elsewhere.wishes, [Outcome::Nothing]);
}

#[test]
fn a_date_is_granted_only_where_a_source_agrees() {
    let clinic = clinic();
    let plan = clinic.catalogue().plan(&"stepwise".into()).expect("it");
    let procedure = plan.procedures[0].procedure.clone();
    let recall = |from, to| {
        let wish = Wish::Recall {
            plan: "stepwise".into(),
            days: Span { from, to },
        };
        over(vec![wish], procedure.as_str(), &usual())
    };
    assert_eq!(recall(63, 77).wishes, [Outcome::Granted]);
    let Outcome::Refused(reason) = &recall(700, 760).wishes[0] else {
        panic!("not refused");
    };
    assert!(!reason.sources.is_empty());
}
