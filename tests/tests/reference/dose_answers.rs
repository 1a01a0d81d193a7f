//! What an answer about a dose amounts to, where rules differ, and a second solution.

use crate::bedside::clinic;
use crate::doses::{exact, maximum};
use catalogue::numbers::Heart;
use clinic::numbers::{
    dose::{Binding, Given, Second},
    entry::{Volume, Weight},
    exact::Exact,
};

#[test]
fn what_an_answer_amounts_to() {
    // Trade article, 150 lb, lidocaine 2 %, 1.8 mL: 13 cartridges hold 468 mg, 8 hold 288, 11 hold 396.
    let label = maximum(
        "us-labels",
        "lidocaine-100",
        "1.8",
        "150 lb",
        Heart::Healthy,
    );
    assert_eq!(
        label.in_one * Exact::from(label.by_drug.count()),
        Exact::whole(468)
    );
    assert_eq!(label.milligrams(), Exact::whole(396));
    assert_eq!(label.binding, Binding::Vasoconstrictor);
    let older = maximum(
        "older-cautious",
        "lidocaine-100",
        "1.8",
        "150 lb",
        Heart::Healthy,
    );
    assert_eq!(older.milligrams(), Exact::whole(288));
    assert_eq!(older.binding, Binding::Drug);
    // Label of articaine, 150 lb: 7 cartridges of 1.7 mL are 11.9 mL and 476 mg.
    let articaine = maximum(
        "us-labels",
        "articaine-100",
        "1.7",
        "150 lb",
        Heart::Healthy,
    );
    assert_eq!(articaine.milligrams(), Exact::whole(476));
    assert_eq!(Exact::from(articaine.whole()) * exact("1.7"), exact("11.9"));
    // Trade article: by epinephrine alone 22 cartridges of 1:200 000 would hold 1584 mg.
    let thin = maximum("us-labels", "articaine-200", "1.8", "70 kg", Heart::Healthy);
    let by_thin = thin.by_vasoconstrictor.expect("a vasoconstrictor").count();
    assert_eq!(thin.in_one * Exact::from(by_thin), Exact::whole(1584));
    assert!(thin.milligrams() <= thin.drug && thin.binding == Binding::Drug);
}

#[test]
fn the_sources_that_differ_are_shown() {
    let most = maximum(
        "us-labels",
        "lidocaine-100",
        "1.8",
        "150 lb",
        Heart::Healthy,
    );
    let older = most
        .working
        .others
        .iter()
        .find(|o| o.rule == "the older, cautious rule")
        .expect("the older rule");
    assert!(
        older.result.contains("8 whole cartridges"),
        "{}",
        older.result
    );
    let most = maximum(
        "us-labels",
        "prilocaine-plain",
        "1.8",
        "80 kg",
        Heart::Healthy,
    );
    for (rule, words) in [
        ("the Canadian table", "500 mg"),
        ("the Australian table", "480 mg"),
    ] {
        let other = most
            .working
            .others
            .iter()
            .find(|o| o.rule == rule)
            .expect(rule);
        assert!(other.result.contains(words), "{}", other.result);
    }
    let unsure = most
        .working
        .others
        .iter()
        .find(|o| o.rule.contains("paediatric"))
        .expect("the guideline");
    assert!(unsure.result.contains("unsure"));
}

#[test]
fn two_solutions_in_one_sitting() {
    let clinic = clinic();
    let numbers = &clinic.catalogue().numbers;
    let second = |given: &str, cartridges: &str, next: &str, weight: &str, heart: Heart| {
        let of = |id: &str| numbers.solution(id).expect("a solution");
        Second {
            rules: numbers.rules("us-labels").expect("the labels"),
            given: vec![Given {
                solution: of(given),
                volume: Volume::read("1.8 mL").expect("a volume"),
                cartridges: exact(cartridges),
            }],
            solution: of(next),
            volume: Volume::read("1.8 mL").expect("a volume"),
            weight: Weight::read(weight).expect("a weight"),
            heart,
        }
        .remaining(numbers)
        .expect("a result")
    };
    // 70 kg, two cartridges of lidocaine (72 mg): 400 − 72 = 328 mg, 328 ÷ 54 = 6.07.
    // The way of subtracting: value from memory (Malamed); the rest arithmetic.
    let (whole, working) = second(
        "lidocaine-100",
        "2",
        "mepivacaine-plain",
        "70 kg",
        Heart::Healthy,
    );
    assert_eq!(whole, 6);
    assert!(
        working
            .lines
            .iter()
            .any(|l| l.numbers == "400 mg − 72 mg = 328 mg"),
        "{working:#?}"
    );
    let shares = &working.others[0].result;
    assert!(
        shares.starts_with("14.7 % used, 341.2 mg left, 6 whole"),
        "{shares}"
    );
    // The vasoconstrictor given counts too: 0.04 − 2 × 0.018 leaves less than one of 0.009.
    let (whole, _) = second(
        "lidocaine-100",
        "2",
        "articaine-200",
        "70 kg",
        Heart::Diseased,
    );
    assert_eq!(whole, 0);
    let (whole, _) = second(
        "lidocaine-100",
        "1",
        "articaine-200",
        "70 kg",
        Heart::Diseased,
    );
    assert_eq!(whole, 2); // (0.04 − 0.018) ÷ 0.009 = 2.44
    // Nothing is left, and not less than nothing.
    let (whole, working) = second(
        "lidocaine-100",
        "12",
        "mepivacaine-plain",
        "60 kg",
        Heart::Healthy,
    );
    assert_eq!(whole, 0);
    assert!(working.result.starts_with("0 whole cartridges"));
}
